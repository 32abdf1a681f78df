package org.setpower.templates.layout;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where the long words of headings may be divided. They stand in {@code syllables_<language>.txt},
 * a word a line, with | between the syllables; lines that begin with # are comments.
 */
public final class Hyphenation {
  private final Map<String, String[]> words;

  private Hyphenation(Map<String, String[]> words) {
    this.words = words;
  }

  /** The words of a language; none where there is no list. */
  public static Hyphenation in(String language) {
    Map<String, String[]> words = new TreeMap<>();
    try (InputStream in = Hyphenation.class.getResourceAsStream("syllables_" + language + ".txt")) {
      if (in != null) {
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
            .lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .forEach(line -> words.put(line.strip().replace("|", ""), line.strip().split("\\|")));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Hyphenation(words);
  }

  /** All words of the list. */
  public Set<String> known() {
    return words.keySet();
  }

  /**
   * The word with hyphens, so that each part stands in a column of a width and holds as much as it
   * can; as it is where the list does not have it. Brackets and commas around it do not matter.
   */
  public String divided(String word, int width) {
    String bare = bare(word);
    String[] syllables = words.get(bare);
    if (syllables == null) {
      return word;
    }
    int at = word.indexOf(bare);
    String after = word.substring(at + bare.length());
    StringBuilder divided = new StringBuilder();
    String part = word.substring(0, at);
    for (int i = 0; i < syllables.length; i++) {
      boolean last = i == syllables.length - 1;
      String longer = part + syllables[i];
      if (!part.isEmpty() && !HeadingLayout.fits(longer + (last ? after : "-"), width)) {
        divided.append(part).append('-');
        longer = syllables[i];
      }
      part = longer;
    }
    return divided.append(part).append(after).toString();
  }

  /** A word without what stands around it. */
  public static String bare(String word) {
    return word.replaceAll("^\\P{L}+|\\P{L}+$", "");
  }
}
