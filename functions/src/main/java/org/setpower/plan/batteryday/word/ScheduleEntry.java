package org.setpower.plan.batteryday.word;

import org.setpower.plan.batteryday.simulation.DayEvent;
import org.setpower.plan.finding.ResultWord;

/** What happens at a position. */
public enum ScheduleEntry implements ResultWord {
  START("start"),
  CHANGE("change"),
  /** Nothing comes off: the others of its plate work on. */
  PUT_ON("put on"),
  OFF("take off"),
  DARK("no battery"),
  ON_AGAIN("on again"),
  FOUND("found"),
  END("end"),
  /** Its position has a stop. */
  NOT_PLANNED("not planned");

  private final String word;

  /** What an event of the day is on paper. */
  public static ScheduleEntry of(DayEvent event) {
    boolean puts = event.what() == DayEvent.What.CHANGE && event.off().isEmpty();
    return puts ? PUT_ON : valueOf(event.what().name());
  }

  ScheduleEntry(String word) {
    this.word = word;
  }

  /** Whether somebody changes a battery: what all counts of changes count. */
  public boolean isChange() {
    return this == CHANGE || this == PUT_ON || this == ON_AGAIN;
  }

  @Override
  public String word() {
    return word;
  }
}
