package org.setpower.plan.batteryday;

import org.setpower.plan.finding.ResultWord;

/** What happens at a position. */
public enum ScheduleEntry implements ResultWord {
  START("start"),
  CHANGE("change"),
  OFF("off"),
  DARK("no battery"),
  ON_AGAIN("on again"),
  FOUND("found"),
  END("end"),
  /** Its position has a stop. */
  NOT_PLANNED("not planned");

  private final String word;

  ScheduleEntry(String word) {
    this.word = word;
  }

  /** Whether somebody changes a battery: what all counts of changes count. */
  public boolean isChange() {
    return this == CHANGE || this == ON_AGAIN;
  }

  @Override
  public String word() {
    return word;
  }
}
