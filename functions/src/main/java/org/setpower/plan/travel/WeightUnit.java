package org.setpower.plan.travel;

import org.setpower.base.Mass;
import org.setpower.base.TextEnum;

/** Unit of the weights typed; papers are in kg, as the rules are. */
public enum WeightUnit implements TextEnum {
  KILOGRAM("kg"),
  POUND("lb");

  private final String word;

  WeightUnit(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** A typed weight in kg; null for a blank. */
  static Double kilograms(WeightUnit unit, Double typed) {
    if (typed == null || unit == null || unit == KILOGRAM) {
      return typed;
    }
    return Facts.dustless(typed * Mass.kilograms("weight", "1 " + unit.word));
  }
}
