package org.setpower.plan.batteryday.word;

import org.setpower.plan.finding.ResultWord;

/** What the plan does with a battery. */
public enum BatteryUse implements ResultWord {
  PLANNED("in the plan"),
  RESERVE("reserve"),
  LENT("lent"),
  /** Hired for a later date. */
  COMES("not there yet"),
  QUARANTINE("quarantine"),
  /** Its row cannot be read. */
  UNCLEAR("not clear");

  private final String word;

  BatteryUse(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
