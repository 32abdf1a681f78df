package org.setpower.plan.batteryday;

import org.setpower.base.TextEnum;

/** What happens at a position. */
public enum ScheduleEntry implements TextEnum {
  START("start"),
  CHANGE("change"),
  DARK("no battery"),
  ON_AGAIN("on again"),
  END("end"),
  /** Its position has a stop. */
  NOT_PLANNED("not planned");

  private final String word;

  ScheduleEntry(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
