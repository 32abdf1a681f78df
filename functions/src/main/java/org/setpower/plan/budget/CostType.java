package org.setpower.plan.budget;

import org.setpower.base.TextEnum;

/** What sort of cost a line is. */
public enum CostType implements TextEnum {
  RENTAL("rental"),
  SUB_HIRE("sub-hire"),
  PURCHASE("purchase"),
  FUEL("fuel"),
  TRANSPORT("transport"),
  CREW("crew"),
  CONNECTION("connection"),
  /** Delivery, an operator of a rental house. */
  SERVICE("service"),
  INSURANCE("insurance"),
  LOSS("loss"),
  /** A discount of a whole order. */
  REDUCTION("reduction");

  private final String word;

  CostType(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
