package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** Which hired rows the discount of an order is taken off. */
public enum DiscountBasis implements TextEnum {
  HIRED("hired rows"),
  UNDISCOUNTED("rows without a discount");

  private final String word;

  DiscountBasis(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
