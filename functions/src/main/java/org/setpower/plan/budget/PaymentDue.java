package org.setpower.plan.budget;

import org.setpower.base.TextEnum;

/** When a line is paid. */
public enum PaymentDue implements TextEnum {
  WITH_ORDER("with order"),
  ON_DELIVERY("on delivery"),
  EACH_WEEK("each week"),
  ON_RETURN("on return"),
  DAYS_AFTER("days after");

  private final String word;

  PaymentDue(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
