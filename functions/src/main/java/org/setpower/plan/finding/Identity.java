package org.setpower.plan.finding;

import java.text.Normalizer;
import java.util.Locale;

/**
 * The name of a thing as it is compared: two spellings that a person reads as one name are one
 * name. Blanks, invisible characters, case, width and the kind of dash do not matter.
 */
public final class Identity {
  private Identity() {}

  /** The compared form of a name; empty for null. */
  public static String of(String name) {
    if (name == null) {
      return "";
    }
    boolean plain = name.chars().allMatch(c -> c > ' ' && c < 127);
    String compared =
        plain
            ? name
            : Normalizer.normalize(name, Normalizer.Form.NFKC)
                .replaceAll("[\\s\\p{C}\\p{Z}]+", "")
                .replaceAll("\\p{Pd}|\u2212", "-");
    return compared.toUpperCase(Locale.ROOT);
  }
}
