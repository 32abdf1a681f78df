package org.setpower.plan.finding;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The name of a thing as it is compared: two spellings that a person reads as one name are one
 * name. Blanks, invisible characters, case, width and the kind of dash do not matter.
 */
public final class Identity {
  /** By letters, and by the value of the numbers between them: 2 stands before 10. */
  public static final Comparator<String> BY_NUMBER =
      Comparator.comparing(Identity::padded).thenComparing(Comparator.naturalOrder());

  private static final Pattern NUMBER = Pattern.compile("[0-9]+");

  private Identity() {}

  private static String padded(String name) {
    return NUMBER
        .matcher(name)
        .replaceAll(n -> "0".repeat(Math.max(0, 20 - n.group().length())) + n.group());
  }

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
