package org.setpower.base;

import java.util.Locale;
import java.util.Map;

/** An amount with its unit, read once for lengths, masses and temperatures. */
final class Units {
  private static final int LONGEST_TEXT = 60;

  private Units() {}

  static Numbers.Amount amount(String name, String text) {
    Numbers.Amount amount = text.length() > LONGEST_TEXT ? null : Numbers.amount(name, text);
    if (amount == null) {
      throw new Refusal(BaseReason.NOT_A_NUMBER, name, Word.shortened(text));
    }
    return amount;
  }

  static double convert(String name, String text, Map<String, Double> factors, String known) {
    Numbers.Amount amount = amount(name, text);
    Double factor = factors.get(amount.unit().toLowerCase(Locale.ROOT));
    if (factor == null) {
      throw new Refusal(BaseReason.UNKNOWN_UNIT, name, Word.shortened(text), known);
    }
    return amount.value() * factor;
  }
}
