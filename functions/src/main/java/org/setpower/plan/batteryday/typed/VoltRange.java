package org.setpower.plan.batteryday.typed;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The input voltage of a device, as on its label.
 *
 * @param min V
 * @param max V
 */
public record VoltRange(double min, double max) {
  private static final String NUMBER = "(\\d{1,3}(?:[.,]\\d{1,2})?)";
  private static final Pattern TEXT =
      Pattern.compile(
          NUMBER + "\\s*V?\\s*(?:-|–|—|−|…|\\.\\.+)\\s*" + NUMBER + "\\s*(?:V(?:\\s*DC)?)?",
          Pattern.CASE_INSENSITIVE);

  /** Reads "11-17", "11 – 17 V", "11.5…16.8 V DC"; null for anything else. */
  public static VoltRange parse(String typed) {
    Matcher matcher = TEXT.matcher(typed.strip());
    return matcher.matches()
        ? new VoltRange(number(matcher.group(1)), number(matcher.group(2)))
        : null;
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }
}
