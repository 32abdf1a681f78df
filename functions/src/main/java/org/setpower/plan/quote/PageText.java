package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.setpower.plan.common.Phrase;

/** What the client's page says beside what is typed. */
enum PageText {
  OTHER("Other items"),
  PLAIN("{0}"),
  INSTEAD("{0} (instead of {1})"),
  BY_WEEK("{0}: first week {1}, each later week {2}"),
  BY_WEEK_DAY("{0}: first week {1}, each later week {2}, further days {3} each, at most a week"),
  ON_REQUEST("{0}: price on request, not in the total"),
  SUBTOTAL("Subtotal {0}"),
  HIRE("Hire"),
  DISCOUNT("Order discount {0,number,0.##} % of {1}"),
  DISCOUNT_UNDISCOUNTED("Order discount {0,number,0.##} % of {1}, rows without own discount"),
  MINIMUM("Difference to the minimum hire"),
  WAIVER("Damage waiver {0,number,0.##} % of {1}, not insurance"),
  NET("Net"),
  NET_AT("Net at {0,number,0.##} %"),
  NOT_TAXED("Net, not taxed"),
  NOT_TAXED_WHY("Net, not taxed: {0}"),
  DAMAGE_WAIVER("damage waiver"),
  VAT("VAT"),
  TAX("{0} {1,number,0.##} %"),
  TOTAL("Total {0}"),
  DOWN_PAYMENT("Down payment {0,number,0.##} %"),
  BALANCE("Balance"),
  SECURITY("Refundable security, not part of the total"),
  VALUE("Replacement value to insure"),
  VALUE_INCOMPLETE("Replacement value to insure, incomplete: rows without a value: {0,number,0}"),
  BY_DATES(
      "Charged days: every day from out to back, both included; of seven days at most"
          + " {0,number,0.#}."),
  BY_DAY_TYPE("Charged days: each day of the schedule by its type."),
  MIN_DAYS("{0} At least {1,number,0.#} days."),
  ONE_DAY_WEEKEND("{0} A weekend counts as one day."),
  PAYMENT("Payment: {0}"),
  BANK("Bank: {0}"),
  ACCEPTANCE("Accepted (place, date, name, signature):"),
  EXCLUDED("Rows on request: {0,number,0}. Their price is not in the total.");

  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final String pattern;

  PageText(String pattern) {
    this.pattern = pattern;
  }

  Phrase of(Object... arguments) {
    return Phrase.of(pattern, arguments);
  }

  /** A share as a percentage; money is shown with all its decimals, a double as the text says. */
  static double percent(BigDecimal share) {
    return share.multiply(HUNDRED).doubleValue();
  }

  /** Those that have words: the others are the same in every language. */
  static List<String> patterns() {
    return Arrays.stream(values())
        .map(t -> t.pattern)
        .filter(p -> !p.replaceAll("\\{[^}]*}|[ %]", "").isEmpty())
        .toList();
  }
}
