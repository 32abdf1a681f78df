package org.setpower.plan.budget;

import org.setpower.base.TextEnum;

/** What a price of the budget is for. */
public enum PriceUnit implements TextEnum {
  DAY("day"),
  HOUR("hour"),
  WEEK("week"),
  LITRE("litre"),
  GALLON("gallon"),
  KWH("kWh"),
  KM("km"),
  ONCE("once");

  private final String word;

  PriceUnit(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
