package org.setpower.text;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;

/**
 * Texts of sheets and commands in another language; the English text is the key, and what is
 * missing stays English. {@link FunctionTexts} does the same for the functions, whose texts have
 * names.
 *
 * <p>They stand in {@code words_<language>.txt}, a text a line: {@code English = translation}.
 * Lines that begin with # are comments; {@code \n} is a new line; a text that begins or ends with a
 * space stands in quotation marks. {@code {}} stands for a value; a translation that needs the
 * values in another order writes {@code {1}}, {@code {2}}.
 */
public final class Translations {
  /** The language that everything is written in. */
  public static final String ENGLISH = "en";

  private static final String IS = " = ";

  private final String language;
  private final Map<String, String> texts;
  private final Set<String> asked = new ConcurrentSkipListSet<>();

  private Translations(String language, Map<String, String> texts) {
    this.language = language;
    this.texts = texts;
  }

  /** The English words themselves. */
  public static Translations english() {
    return new Translations(ENGLISH, Map.of());
  }

  /**
   * The words of a language, from the file beside a class; English where there is no such file.
   *
   * @param language an ISO 639 code
   */
  public static Translations in(String language, Class<?> beside) {
    InputStream in = beside.getResourceAsStream(fileName(language));
    return in == null ? english() : from(in, language);
  }

  /** The name of the file of a language. */
  public static String fileName(String language) {
    return "words_" + language + ".txt";
  }

  /** The words of a language, from a file that is open; closes it. */
  public static Translations from(InputStream in, String language) {
    try (BufferedReader reader =
        new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return new Translations(language, read(reader.lines().toList()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> read(List<String> lines) {
    Map<String, String> texts = new TreeMap<>();
    for (String line : lines) {
      if (line.isBlank() || line.startsWith("#")) {
        continue;
      }
      int is = line.indexOf(IS);
      if (is < 0) {
        throw new IllegalStateException("no translation in the line: " + line);
      }
      String before = texts.put(bare(line.substring(0, is)), bare(line.substring(is + 3)));
      if (before != null) {
        throw new IllegalStateException("translated twice: " + line);
      }
    }
    return texts;
  }

  private static String bare(String written) {
    String text = written.strip().replace("\\n", "\n");
    boolean quoted = text.length() > 1 && text.startsWith("\"") && text.endsWith("\"");
    return quoted ? text.substring(1, text.length() - 1) : text;
  }

  /** How {@link #in} would read this text: a line for the file. */
  public static String line(String english, String other) {
    return written(english) + IS + written(other);
  }

  private static String written(String text) {
    String line = text.replace("\n", "\\n");
    boolean edged = !text.equals(text.strip()) || text.startsWith("#") || text.startsWith("\"");
    return edged ? "\"" + line + "\"" : line;
  }

  /** The ISO 639 code of the language. */
  public String language() {
    return language;
  }

  public boolean isEnglish() {
    return language.equals(ENGLISH);
  }

  /** The text in this language. */
  public String of(String english) {
    if (!english.isBlank()) {
      asked.add(english);
    }
    return texts.getOrDefault(english, english);
  }

  /** A sentence with values in the place of each {}. */
  public String say(String english, Object... values) {
    return fill(of(english), values);
  }

  /** Puts values into the places {} in turn, or into {1}, {2} by number. */
  public static String fill(String pattern, Object... values) {
    StringBuilder text = new StringBuilder();
    int next = 0;
    for (int at = 0; at < pattern.length(); at++) {
      int end = pattern.charAt(at) == '{' ? pattern.indexOf('}', at) : -1;
      String inside = end < 0 ? "-" : pattern.substring(at + 1, end);
      if (inside.isEmpty() && next < values.length) {
        text.append(values[next++]);
        at = end;
      } else if (inside.matches("[1-9]") && Integer.parseInt(inside) <= values.length) {
        text.append(values[Integer.parseInt(inside) - 1]);
        at = end;
      } else {
        text.append(pattern.charAt(at));
      }
    }
    return text.toString();
  }

  /** All texts that have been asked for. */
  public Set<String> asked() {
    return new TreeSet<>(asked);
  }

  /** The texts asked for that have no translation. */
  public Set<String> missing() {
    Set<String> missing = asked();
    missing.removeAll(texts.keySet());
    return missing;
  }

  /** The translations that nobody asked for. */
  public Set<String> orphaned() {
    Set<String> orphaned = new TreeSet<>(texts.keySet());
    orphaned.removeAll(asked);
    return orphaned;
  }
}
