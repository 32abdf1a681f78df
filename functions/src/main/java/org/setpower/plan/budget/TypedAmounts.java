package org.setpower.plan.budget;

import org.setpower.base.TextEnum;

/** How amounts of the budget are typed. */
public enum TypedAmounts implements TextEnum {
  NET("without tax"),
  GROSS("with tax");

  private final String word;

  TypedAmounts(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
