package org.setpower.plan.register;

import org.setpower.base.TextEnum;

/** The unit in which temperatures are typed. */
public enum TemperatureUnit implements TextEnum {
  CELSIUS("°C"),
  FAHRENHEIT("°F");

  private final String word;

  TemperatureUnit(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** Degrees Celsius of a typed temperature. */
  double toCelsius(double typed) {
    return this == CELSIUS ? typed : (typed - 32) / 1.8;
  }
}
