package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** What a damage waiver is a share of. */
public enum WaiverBasis implements TextEnum {
  AFTER_DISCOUNT("hire after discount"),
  BEFORE_DISCOUNT("hire before discount");

  private final String word;

  WaiverBasis(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
