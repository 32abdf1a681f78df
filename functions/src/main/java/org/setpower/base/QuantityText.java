package org.setpower.base;

import java.util.Locale;
import java.util.Map;

/** An amount with its unit, read once for lengths, masses and temperatures. */
final class QuantityText {
  private static final int LONGEST_TEXT = 60;

  private QuantityText() {}

  static Numbers.Amount amount(String name, String text) {
    Numbers.Amount amount = text.length() > LONGEST_TEXT ? null : Numbers.amount(name, text);
    if (amount == null) {
      throw new EvaluationException(BaseErrorCode.NOT_A_NUMBER, name, TextEnum.shortened(text));
    }
    return amount;
  }

  static double convert(String name, String text, Map<String, Double> factors, String known) {
    Numbers.Amount amount = amount(name, text);
    Double factor = factors.get(amount.unit().toLowerCase(Locale.ROOT));
    if (factor == null) {
      throw new EvaluationException(
          BaseErrorCode.UNKNOWN_UNIT, name, TextEnum.shortened(text), known);
    }
    return amount.value() * factor;
  }
}
