package org.setpower.base;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as people write and read them. */
public final class Numbers {
  private static final MathContext SIX_DIGITS = new MathContext(6, RoundingMode.HALF_UP);
  private static final Pattern AMOUNT =
      Pattern.compile("([-+−]?(?:\\d{1,3}(?: \\d{3})+(?!\\d)|\\d*)(?:[.,]\\d+)?)\\s*(.*)");
  private static final Pattern AMBIGUOUS = Pattern.compile("[-+−]?0*[1-9]\\d{0,2}[.,]\\d{3}");

  private Numbers() {}

  /** A number in a sentence: at most six significant digits, a point, no trailing zeros. */
  public static String format(double value) {
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
   * A number followed by a unit, split; {@code null} when the text does not start with a number. A
   * space may separate its thousands. A number that {@link #isAmbiguous} is refused.
   *
   * @param name of the parameter, for the refusal
   */
  public static Amount amount(String name, String text) {
    Matcher m = AMOUNT.matcher(plainSpaces(text));
    if (!m.matches() || m.group(1).chars().noneMatch(Character::isDigit)) {
      return null;
    }
    String number = m.group(1).replace(" ", "");
    if (isAmbiguous(number)) {
      throw new EvaluationException(BaseErrorCode.AMBIGUOUS_NUMBER, name, TextEnum.shortened(text));
    }
    String digits = number.replace(',', '.').replace('−', '-');
    return new Amount(Double.parseDouble(digits), m.group(2).strip());
  }

  /** The text with its hard and narrow spaces as plain ones, none of them at its ends. */
  public static String plainSpaces(String text) {
    return text.replaceAll("[\\u00a0\\u2009\\u202f]", " ").strip();
  }

  /**
   * Whether a comma or a point in a number can separate thousands or decimals: one to three digits
   * before it, not 0, and exactly three behind it.
   */
  public static boolean isAmbiguous(String number) {
    return AMBIGUOUS.matcher(number).matches();
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
