package org.setpower.plan.travel;

import org.setpower.base.TextEnum;

/** Where a traveller's battery is during the flight. */
public enum Bag implements TextEnum {
  CABIN("cabin"),
  HOLD("hold");

  private final String word;

  Bag(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
