package org.setpower.plan.travel;

import org.setpower.base.TextEnum;

/** By whose rules batteries travel by road. */
public enum RoadBook implements TextEnum {
  ADR("ADR"),
  US("US");

  private final String word;

  RoadBook(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
