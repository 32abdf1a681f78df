package org.setpower.command.csv;

import com.sun.star.uno.Exception;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.setpower.command.CommandContext;
import org.setpower.command.FileStore;

/**
 * What headings of equipment lists mean, in whichever of our languages they are: a list that was
 * written in one office is read in another.
 */
final class CsvHeadings {
  /** A narrow column divides words, and its lines end anywhere. */
  private static final String WHERE_BROKEN = "[\\s" + (char) 0xAD + "-]";

  private static final String FILE = "kit-headings.txt";

  private final Map<String, String> english = new HashMap<>();

  /** From lines of an English text and its translations, with tabs between. */
  CsvHeadings(String lines) {
    for (String line : lines.lines().toList()) {
      String[] texts = line.split("\t");
      for (String text : texts) {
        english.putIfAbsent(key(text), key(texts[0]));
      }
    }
  }

  static CsvHeadings shipped(CommandContext desk) throws Exception {
    byte[] file = new FileStore(desk).read(desk.shipped(FILE));
    return new CsvHeadings(new String(file, StandardCharsets.UTF_8));
  }

  /** Whether both mean the same column, whatever stands in brackets behind them. */
  boolean sameColumn(String one, String other) {
    return meaning(name(one)).equals(meaning(name(other)));
  }

  /** Whether what stands in brackets is the same; a missing one matches any. */
  boolean sameUnit(String one, String other) {
    return unit(one).isEmpty() || meaning(unit(one)).equals(meaning(unit(other)));
  }

  private String meaning(String text) {
    return english.getOrDefault(key(text), key(text));
  }

  private static String key(String text) {
    return text.replaceAll(WHERE_BROKEN, "").toLowerCase(Locale.ROOT);
  }

  private static String name(String heading) {
    return heading.replaceFirst("\\s*\\([^)]*\\)\\s*$", "").strip();
  }

  private static String unit(String heading) {
    return heading.strip().endsWith(")")
        ? heading.replaceFirst("(?s)^.*\\(", "").replace(")", "")
        : "";
  }
}
