package org.setpower.base;

/** Temperatures as text, in °C. */
public final class Temperature {
  /** Nothing is colder than this, °C. */
  public static final double ABSOLUTE_ZERO = -273.15;

  private Temperature() {}

  /** °C from text such as "-5 °C", "23 °F", "23F"; an unknown unit is refused. */
  public static double celsius(String name, String text) {
    Numbers.Amount amount = Units.amount(name, text);
    return switch (amount.unit().replace("°", "").strip()) {
      case "", "C", "c" -> amount.value();
      case "F", "f" -> (amount.value() - 32) * 5 / 9;
      default -> throw new Refusal(BaseReason.UNKNOWN_UNIT, name, Word.shortened(text), "°C or °F");
    };
  }
}
