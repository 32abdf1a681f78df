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

  TemperatureUnit other() {
    return this == CELSIUS ? FAHRENHEIT : CELSIUS;
  }

  double fromCelsius(double celsius) {
    return this == CELSIUS ? celsius : celsius * 1.8 + 32;
  }

  /** Degrees Celsius of a typed temperature. */
  double toCelsius(double typed) {
    return this == CELSIUS ? typed : (typed - 32) / 1.8;
  }
}
