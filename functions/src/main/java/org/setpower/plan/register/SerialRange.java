package org.setpower.plan.register;

import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A range of serials: letters that are the same and as many digits behind them. Only such a range
 * can be judged, and only for serials of that form; for others somebody compares by hand.
 */
final class SerialRange {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]+)");

  private final String prefix;
  private final int digits;
  private final BigInteger first;
  private final BigInteger last;

  /** Whether a serial is in a range. */
  enum Match {
    YES,
    NO,
    /** It cannot be said: compare with the maker's notice. */
    BY_HAND,
    /** The serial is meant, but with a type that it does not have. */
    DISAGREES
  }

  private final boolean turned;

  private SerialRange(String prefix, int digits, BigInteger one, BigInteger other) {
    this.prefix = prefix;
    this.digits = digits;
    first = one.min(other);
    last = one.max(other);
    turned = one.compareTo(other) > 0;
  }

  /** Whether its last serial was named first. */
  boolean isTurned() {
    return turned;
  }

  /**
   * The range between two serials in either order; null where their letters or the number of their
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
    return new SerialRange(
        a.group(1), a.group(2).length(), new BigInteger(a.group(2)), new BigInteger(b.group(2)));
  }

  /** A serial of digits only without the zeros before it; any other as it is. */
  static String withoutZeros(String serial) {
    boolean zeros = serial.startsWith("0") && serial.chars().allMatch(c -> c >= '0' && c <= '9');
    return zeros ? serial.replaceFirst("^0+(?=[0-9])", "") : serial;
  }

  Match match(String serial) {
    Matcher numbered = NUMBERED.matcher(serial);
    if (!numbered.matches()) {
      return serial.startsWith(prefix) ? Match.BY_HAND : Match.NO;
    }
    if (!numbered.group(1).equals(prefix)) {
      // digits alone may be the maker's number without its letters
      boolean letters = prefix.chars().noneMatch(Character::isDigit);
      return numbered.group(1).isEmpty() && (!letters || isWithin(numbered.group(2)))
          ? Match.BY_HAND
          : Match.NO;
    }
    if (numbered.group(2).length() != digits) {
      return Match.BY_HAND;
    }
    return isWithin(numbered.group(2)) ? Match.YES : Match.NO;
  }

  private boolean isWithin(String typed) {
    BigInteger number = new BigInteger(typed);
    return number.compareTo(first) >= 0 && number.compareTo(last) <= 0;
  }
}
