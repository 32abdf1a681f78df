package org.setpower.plan.register;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A range of serials: letters that are the same and digits behind them, as many in each. Only such
 * a range can be judged; for others somebody compares by hand.
 */
final class SerialRange {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d+)");

  private final String prefix;
  private final String first;
  private final String last;

  /** Whether a serial is in a range. */
  enum Match {
    YES,
    NO,
    /** It cannot be said: compare with the maker's notice. */
    BY_HAND
  }

  private SerialRange(String prefix, String first, String last) {
    this.prefix = prefix;
    this.first = first;
    this.last = last;
  }

  /**
   * The range between two serials in either order; null where their letters or their number of
   * digits differ.
   *
   * @param one an {@link org.setpower.plan.finding.Identity}
   * @param other an {@link org.setpower.plan.finding.Identity}
   */
  static SerialRange between(String one, String other) {
    Matcher a = NUMBERED.matcher(one);
    Matcher b = NUMBERED.matcher(other);
    if (!a.matches()
        || !b.matches()
        || !a.group(1).equals(b.group(1))
        || a.group(2).length() != b.group(2).length()) {
      return null;
    }
    boolean rising = a.group(2).compareTo(b.group(2)) <= 0;
    return new SerialRange(
        a.group(1), rising ? a.group(2) : b.group(2), rising ? b.group(2) : a.group(2));
  }

  Match match(String serial) {
    Matcher numbered = NUMBERED.matcher(serial);
    if (!numbered.matches()) {
      return serial.startsWith(prefix) ? Match.BY_HAND : Match.NO;
    }
    if (!numbered.group(1).equals(prefix)) {
      return Match.NO;
    }
    String digits = numbered.group(2);
    if (digits.length() != first.length()) {
      return Match.BY_HAND;
    }
    return digits.compareTo(first) >= 0 && digits.compareTo(last) <= 0 ? Match.YES : Match.NO;
  }
}
