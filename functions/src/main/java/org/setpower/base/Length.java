package org.setpower.base;

import java.util.Map;

/** Lengths as text, in metres. Exact factors: 1 ft = 0.3048 m (international foot, 1959). */
public final class Length {
  private static final Map<String, Double> METRES =
      Map.ofEntries(
          Map.entry("", 1.0),
          Map.entry("m", 1.0),
          Map.entry("metre", 1.0),
          Map.entry("metres", 1.0),
          Map.entry("cm", 0.01),
          Map.entry("mm", 0.001),
          Map.entry("km", 1000.0),
          Map.entry("ft", 0.3048),
          Map.entry("feet", 0.3048),
          Map.entry("foot", 0.3048),
          Map.entry("'", 0.3048),
          Map.entry("yd", 0.9144),
          Map.entry("in", 0.0254));

  private Length() {}

  /** Metres from text such as "30 m", "100 ft"; an unknown unit is refused. */
  public static double metres(String name, String text) {
    return QuantityText.convert(name, text, METRES, "m or ft");
  }
}
