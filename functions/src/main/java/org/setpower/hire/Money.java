package org.setpower.hire;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.setpower.base.EvaluationException;
import org.setpower.base.TextEnum;

/** Money in decimals, rounded to the minor unit of its currency, half up (away from zero). */
public final class Money {
  /** The digits of a number that a sheet keeps: 1.005 is 1.005, not the binary number below it. */
  private static final MathContext SHEET_DIGITS = new MathContext(15, RoundingMode.HALF_UP);

  private Money() {}

  /** The currency of an ISO 4217 code. */
  public static Currency currency(String name, String code) {
    try {
      return Currency.getInstance(code.strip().toUpperCase(Locale.ROOT));
    } catch (IllegalArgumentException e) {
      throw new EvaluationException(HireErrorCode.UNKNOWN_CURRENCY, name, TextEnum.shortened(code));
    }
  }

  /** A number of a sheet as the decimal it stands for, at most 15 digits. */
  public static BigDecimal decimal(double value) {
    return BigDecimal.valueOf(value).round(SHEET_DIGITS);
  }

  /**
   * Rounds to the minor unit (ISO 4217: 2 digits for EUR, 0 for JPY, 3 for KWD), half up: 2.5 → 3,
   * −2.5 → −3.
   */
  public static BigDecimal rounded(BigDecimal amount, Currency currency) {
    int digits = currency.getDefaultFractionDigits();
    if (digits < 0) {
      throw new EvaluationException(HireErrorCode.NO_MINOR_UNIT, currency.getCurrencyCode());
    }
    return amount.setScale(digits, RoundingMode.HALF_UP);
  }

  /**
   * The fee of a line: day rate × quantity × charged days × (1 − discount), rounded once, at the
   * end.
   */
  public static BigDecimal fee(
      double dayRate, double quantity, double days, double discount, Currency currency) {
    BigDecimal full = decimal(dayRate).multiply(decimal(quantity)).multiply(decimal(days));
    return rounded(full.multiply(BigDecimal.ONE.subtract(decimal(discount))), currency);
  }

  /** An amount of another currency in one's own: amount × rate, rounded. */
  public static BigDecimal converted(double amount, double rate, Currency own) {
    return rounded(decimal(amount).multiply(decimal(rate)), own);
  }

  /**
   * One of equal instalments: what is paid after it, rounded, less what was paid before it; so all
   * of them together are the amount to the smallest coin.
   */
  public static BigDecimal instalment(double amount, int number, int of, Currency currency) {
    BigDecimal all = rounded(decimal(amount), currency);
    return part(all, number, of, currency).subtract(part(all, number - 1, of, currency));
  }

  private static BigDecimal part(BigDecimal all, int number, int of, Currency currency) {
    BigDecimal exact = all.multiply(BigDecimal.valueOf(number));
    int digits = currency.getDefaultFractionDigits();
    return exact.divide(BigDecimal.valueOf(of), digits, RoundingMode.HALF_UP);
  }

  /**
   * What overtime adds: rate × the hours beyond × the share more, rounded. Of days of equal length
   * the same part is overtime: hours × (1 − after / a day), none where a day is not longer.
   */
  public static BigDecimal overtime(
      double rate, double hours, double perDay, double after, double more, Currency currency) {
    BigDecimal day = decimal(perDay);
    BigDecimal beyond = day.subtract(decimal(after)).max(BigDecimal.ZERO);
    BigDecimal full = decimal(rate).multiply(decimal(hours)).multiply(beyond);
    return rounded(full.multiply(decimal(more)).divide(day, MathContext.DECIMAL128), currency);
  }

  /**
   * Splits a rounded amount in proportion to weights, by largest remainder: every part is rounded
   * down to the minor unit, and what is left goes unit by unit to the parts that lost most. So the
   * parts together are the amount.
   *
   * @param weights none below 0, not all 0 unless the amount is 0
   */
  public static List<BigDecimal> split(
      BigDecimal amount, List<BigDecimal> weights, Currency currency) {
    BigDecimal all = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal unit = BigDecimal.ONE.movePointLeft(currency.getDefaultFractionDigits());
    List<BigDecimal> parts = new ArrayList<>();
    List<BigDecimal> lost = new ArrayList<>();
    BigDecimal left = amount;
    for (BigDecimal weight : weights) {
      BigDecimal exact =
          all.signum() == 0
              ? BigDecimal.ZERO
              : amount.multiply(weight).divide(all, MathContext.DECIMAL128);
      BigDecimal part = exact.setScale(unit.scale(), RoundingMode.FLOOR);
      parts.add(part);
      lost.add(exact.subtract(part));
      left = left.subtract(part);
    }
    List<Integer> most =
        IntStream.range(0, parts.size())
            .boxed()
            .sorted(Comparator.comparing((Integer i) -> lost.get(i)).reversed())
            .toList();
    for (int i = 0; i < most.size() && left.signum() > 0; i++) {
      parts.set(most.get(i), parts.get(most.get(i)).add(unit));
      left = left.subtract(unit);
    }
    return List.copyOf(parts);
  }
}
