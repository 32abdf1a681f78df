package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** What is charged for a late return. */
public enum LateRule implements TextEnum {
  /** The rule of the hire to the day of return, less the same rule to the day due. */
  SAME_RULE("same rule"),
  /** Every late day at the day rate. */
  EVERY_DAY("every day");

  private final String word;

  LateRule(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
