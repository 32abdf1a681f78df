package org.setpower.base;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as people write and read them. */
public final class Numbers {
  private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);
  private static final Pattern AMOUNT = Pattern.compile("([-+−]?\\d*(?:[.,]\\d+)?)\\s*(.*)");

  private Numbers() {}

  /** A number in a sentence: at most six digits that count, a point, no needless zeros. */
  public static String words(double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      return "not a number";
    }
    BigDecimal rounded = new BigDecimal(value).round(SIX_DIGITS);
    if (rounded.signum() == 0) {
      return "0";
    }
    double size = Math.abs(value);
    BigDecimal plain = rounded.stripTrailingZeros();
    return size >= 1e9 || size < 1e-6 ? plain.toString() : plain.toPlainString();
  }

  /**
   * A number followed by a unit, split; {@code null} when the text does not start with a number.
   */
  public static Amount amount(String text) {
    Matcher m = AMOUNT.matcher(text.strip().replace(' ', ' '));
    if (!m.matches() || m.group(1).chars().noneMatch(Character::isDigit)) {
      return null;
    }
    String digits = m.group(1).replace(',', '.').replace('−', '-');
    return new Amount(Double.parseDouble(digits), m.group(2).strip());
  }

  /** A number and the unit written behind it, which may be empty. */
  public record Amount(double value, String unit) {}

  /**
   * A count rounded up to whole pieces; a count that misses a whole number by rounding error only
   * (one part in 10⁹) is that number: 3 + 1e-12 packs are 3.
   */
  public static double wholeUp(double count) {
    double nearest = Math.rint(count);
    return Math.abs(count - nearest) <= 1e-9 * Math.max(1, Math.abs(count))
        ? nearest
        : Math.ceil(count);
  }
}
