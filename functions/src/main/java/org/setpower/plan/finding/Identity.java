package org.setpower.plan.finding;

import java.text.Normalizer;
import java.util.Locale;

/**
 * The name of a thing as it is compared: two spellings that a person reads as one name are one
 * name. Blanks, invisible characters, case, width and the kind of dash do not matter.
 */
public final class Identity {
  private static final int DIGITS = 20;

  private Identity() {}

  /**
   * A name to sort by letters and by the value of the numbers between them, so that 2 stands before
   * 10: each number has so many zeros before it that all are as long.
   */
  public static String padded(String name) {
    StringBuilder padded = new StringBuilder(name.length() + DIGITS);
    int digits = 0;
    for (int i = 0; i <= name.length(); i++) {
      boolean digit = i < name.length() && name.charAt(i) >= '0' && name.charAt(i) <= '9';
      if (digit) {
        digits++;
      } else if (digits > 0) {
        padded.append("0".repeat(Math.max(0, DIGITS - digits))).append(name, i - digits, i);
        digits = 0;
      }
      if (!digit && i < name.length()) {
        padded.append(name.charAt(i));
      }
    }
    return padded.toString();
  }

  /** The compared form of a name; empty for null. */
  public static String of(String name) {
    if (name == null) {
      return "";
    }
    boolean plain = true;
    boolean upper = true;
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      plain &= c > ' ' && c < 127;
      upper &= c < 'a' || c > 'z';
    }
    if (plain && upper) {
      return name;
    }
    String compared =
        plain
            ? name
            : Normalizer.normalize(name, Normalizer.Form.NFKC)
                .replaceAll("[\\s\\p{C}\\p{Z}]+", "")
                .replaceAll("\\p{Pd}|\u2212", "-");
    return compared.toUpperCase(Locale.ROOT);
  }
}
