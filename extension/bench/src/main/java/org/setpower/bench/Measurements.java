package org.setpower.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** A table of what was measured and what is wanted; printed line by line and kept in a file. */
final class Measurements {
  private final StringBuilder text = new StringBuilder();
  private final Path file;

  Measurements(Path file, String title) {
    this.file = file;
    line(title + ":\n");
    line("| | measured | wanted |\n| --- | --- | --- |");
  }

  private void line(String line) {
    System.out.println(line);
    text.append(line).append('\n');
  }

  /** A figure that only tells. */
  void add(String what, String format, Object... values) {
    line("| %s | %s | |".formatted(what, String.format(Locale.ROOT, format, values)));
  }

  void atMost(double limit, String what, double value, String format) {
    add(what, value, format, "at most ", limit, value <= limit);
  }

  void atLeast(double limit, String what, double value, String format) {
    add(what, value, format, "at least ", limit, value >= limit);
  }

  private void add(
      String what, double value, String format, String word, double limit, boolean met) {
    line(
        "| %s | %s | %s%s: %s |"
            .formatted(
                what,
                String.format(Locale.ROOT, format, value),
                word,
                String.format(Locale.ROOT, format, limit),
                met ? "met" : "MISSED"));
  }

  void write() throws IOException {
    Files.writeString(file, text);
  }
}
