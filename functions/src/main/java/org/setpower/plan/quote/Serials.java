package org.setpower.plan.quote;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Counts the serials of a cell, so that they can be compared with the pieces. */
final class Serials {
  private static final Pattern BETWEEN = Pattern.compile("[,;/\\n]+");
  private static final Pattern SPAN =
      Pattern.compile(
          "(\\S*?)(\\d{1,9})\\s*(?:\\s(?:to|bis|à|a)\\s|–|…|\\s-\\s)\\s*(\\S*?)(\\d{1,9})");
  private static final int MOST = 10_000;

  private Serials() {}

  /** How many different serials a cell names; empty where it is written in another way. */
  static Optional<Integer> count(String cell) {
    Set<String> serials = new HashSet<>();
    for (String part : BETWEEN.split(cell)) {
      String serial = part.strip();
      Matcher span = SPAN.matcher(serial);
      if (span.matches()) {
        int first = Integer.parseInt(span.group(2));
        int last = Integer.parseInt(span.group(4));
        if (last < first || last - first >= MOST) {
          return Optional.empty();
        }
        for (int i = first; i <= last; i++) {
          serials.add(span.group(1) + "|" + i);
        }
      } else if (serial.matches("\\S*?\\d{1,9}")) {
        serials.add(serial.replaceFirst("(\\d+)$", "") + "|" + Integer.parseInt(digits(serial)));
      } else if (serial.matches("\\S+")) {
        serials.add(serial);
      } else if (!serial.isEmpty()) {
        return Optional.empty();
      }
    }
    return serials.isEmpty() ? Optional.empty() : Optional.of(serials.size());
  }

  /** The digits at the end. */
  private static String digits(String serial) {
    return serial.replaceFirst("^.*?(\\d{1,9})$", "$1");
  }
}
