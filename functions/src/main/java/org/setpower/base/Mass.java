package org.setpower.base;

import java.util.Map;

/** Masses as text, in kg. Exact factor: 1 lb = 0.45359237 kg (international pound, 1959). */
public final class Mass {
  private static final Map<String, Double> KILOGRAMS =
      Map.of("", 1.0, "kg", 1.0, "g", 0.001, "lb", 0.45359237, "lbs", 0.45359237, "t", 1000.0);

  private Mass() {}

  /** Kilograms from text such as "2.1 kg", "12 lb"; an unknown unit is refused. */
  public static double kilograms(String name, String text) {
    return QuantityText.convert(name, text, KILOGRAMS, "kg or lb");
  }
}
