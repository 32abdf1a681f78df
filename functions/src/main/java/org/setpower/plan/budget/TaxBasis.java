package org.setpower.plan.budget;

import org.setpower.base.TextEnum;

/** What the columns of the cost report hold. */
public enum TaxBasis implements TextEnum {
  /** Tax is reclaimed. */
  NET("net"),
  COST("with unrecoverable tax");

  private final String word;

  TaxBasis(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
