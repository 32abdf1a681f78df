package org.setpower.plan.batteryday.typed;

import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.plan.finding.Identity;

/** The numbers on batteries: B1, B2 … */
public final class BatteryNumbers {
  private static final int MOST = 9999;
  private static final Pattern ONE = Pattern.compile("B?(\\d{1,4})");
  private static final Pattern PART =
      Pattern.compile("B?(\\d{1,4})(?:(?:-|…|BIS|TO)B?(\\d{1,4}))?");

  private BatteryNumbers() {}

  /** The number as it is printed. */
  public static String shown(int number) {
    return "B" + number;
  }

  /** The number that a text names; 0 if it names none. */
  public static int one(String text) {
    Matcher matcher = ONE.matcher(Identity.of(text));
    return matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
  }

  /** The numbers that a text such as "B3, B5-B7" names; null if it cannot be read for certain. */
  public static Set<Integer> all(String text) {
    Set<Integer> numbers = new TreeSet<>();
    for (String part : text.toUpperCase(Locale.ROOT).split("[,;]", -1)) {
      Matcher matcher = PART.matcher(Identity.of(part));
      if (!matcher.matches()) {
        return null;
      }
      int first = Integer.parseInt(matcher.group(1));
      int last = matcher.group(2) == null ? first : Integer.parseInt(matcher.group(2));
      if (last < first || first < 1 || last > MOST) {
        return null;
      }
      for (int number = first; number <= last; number++) {
        numbers.add(number);
      }
    }
    return numbers;
  }
}
