package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** How charged days are counted. */
public enum DayCounting implements TextEnum {
  /** Days from out to back, of a week at most those of the house. */
  BY_DATES("by dates"),
  /** Each day of the schedule with the share of its type. */
  BY_DAY_TYPE("by type of day");

  private final String word;

  DayCounting(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
