package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** What a rate is for. */
public enum RateBasis implements TextEnum {
  DAY("day"),
  /** The first week and each later one; a part of a week by days, at most its week. */
  WEEK("week"),
  ONCE("once"),
  /** Quoted without a price, and not in the total. */
  ON_REQUEST("on request");

  private final String word;

  RateBasis(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
