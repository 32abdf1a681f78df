package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** What a row of a quote is. */
public enum LineType implements TextEnum {
  HIRED("hired"),
  /** Paid once and kept. */
  SOLD("sold"),
  /** Delivery, an operator: paid once. */
  SERVICE("service");

  private final String word;

  LineType(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
