package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** Where tax is rounded. */
public enum TaxRounding implements TextEnum {
  PER_RATE("per rate"),
  PER_LINE("per line");

  private final String word;

  TaxRounding(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
