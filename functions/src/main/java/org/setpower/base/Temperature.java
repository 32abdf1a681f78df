package org.setpower.base;

/** Temperatures as text, in °C. */
public final class Temperature {
  /** Absolute zero, °C. */
  public static final double ABSOLUTE_ZERO = -273.15;

  private Temperature() {}

  /** A temperature in a sentence, for readers of both scales: "-21.11 °C (-6 °F)". */
  public static String format(double celsius) {
    return shortened(celsius) + " °C (" + shortened(celsius / 5 * 9 + 32) + " °F)";
  }

  private static String shortened(double degrees) {
    return Numbers.format(Math.rint(degrees * 100) / 100);
  }

  /** °C from text such as "-5 °C", "23 °F", "23F"; an unknown unit is refused. */
  public static double celsius(String name, String text) {
    Numbers.Amount amount = QuantityText.amount(name, text);
    return switch (amount.unit().replace("°", "").strip()) {
      case "", "C", "c" -> amount.value();
      case "F", "f" -> (amount.value() - 32) * 5 / 9;
      default ->
          throw new EvaluationException(
              BaseErrorCode.UNKNOWN_UNIT, name, TextEnum.shortened(text), "°C or °F");
    };
  }
}
