package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;

/**
 * Texts that users read hold no retired word. The words, what replaces them and the places that
 * still hold some are in {@code retired-words.tsv}; the number there is the most a place may have,
 * and goes down when its texts are rewritten.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RetiredWordsTest {
  private static final Path LIST = Path.of("src/test/resources/retired-words.tsv");
  private static final Path SHEETS = Path.of("src/main/java/org/setpower/templates");
  private static final Path FUNCTIONS = Path.of("../functions/src/main/java");
  private static final Path EXTENSION = Path.of("../extension/src/main");
  private static final Pattern COMMENT = Pattern.compile("(?m)^\\s*(?://|\\*|/\\*).*$");
  private static final Pattern JOINED = Pattern.compile("\"\\s*\\+\\s*\"");
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

  /** What is not read: code, addresses, and markup. */
  private static final Pattern MARKUP =
      Pattern.compile("(?m)^Index:.*$|`[^`]*`|<[^>]*>|\\]\\([^)]*\\)|\\{[^}]*}");

  /**
   * A word that is not used any more.
   *
   * @param name how the list of exceptions calls it
   * @param pattern where it stands in a text
   * @param replacement what to write
   */
  private record Word(String name, Pattern pattern, String replacement) {
    long in(String text) {
      return pattern.matcher(text).results().count();
    }
  }

  /** The texts of each place: functions, a package of sheets, commands, handbook, README. */
  private final Map<String, String> texts = new TreeMap<>();

  @BeforeAll
  void read() throws IOException {
    try (Stream<Path> files = Files.walk(SHEETS)) {
      for (Path file : java(files)) {
        Path folder = SHEETS.relativize(file).getParent();
        texts.merge("sheets/" + (folder == null ? "" : folder), literals(file), String::concat);
      }
    }
    code("functions", FUNCTIONS);
    code("commands", EXTENSION.resolve("java"));
    code("commands", EXTENSION.resolveSibling("entry/java"));
    texts.merge("commands", Files.readString(EXTENSION.resolve("oxt/Addons.xcu")), this::titles);
    texts.merge(
        "commands", Files.readString(EXTENSION.resolve("oxt/about-en.txt")), String::concat);
    try (Stream<Path> pages = Files.list(EXTENSION.resolve("handbook"))) {
      for (Path page : pages.filter(p -> p.toString().endsWith(".md")).sorted().toList()) {
        texts.merge("handbook", prose(page), String::concat);
      }
    }
    texts.put("README", prose(Path.of("../README.md")));
  }

  private void code(String place, Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : java(files)) {
        texts.merge(place, literals(file), String::concat);
      }
    }
  }

  private static List<Path> java(Stream<Path> files) {
    return files.filter(p -> p.toString().endsWith(".java")).sorted().toList();
  }

  private static String literals(Path file) throws IOException {
    String code = COMMENT.matcher(Files.readString(file)).replaceAll("");
    StringBuilder all = new StringBuilder();
    LITERAL
        .matcher(JOINED.matcher(code).replaceAll(""))
        .results()
        .forEach(m -> all.append(m.group(1)).append('\n'));
    return all.toString();
  }

  private String titles(String before, String configuration) {
    return before
        + configuration.replaceAll("(?s)<(?!/?value)[^>]*>", "").replaceAll("<[^>]*>|~", "\n");
  }

  private static String prose(Path page) throws IOException {
    return MARKUP.matcher(Files.readString(page)).replaceAll("") + "\n";
  }

  private static List<String[]> rows(String kind) throws IOException {
    return Files.readAllLines(LIST).stream()
        .map(l -> l.split("\t", -1))
        .filter(r -> r[0].equals(kind))
        .toList();
  }

  private static List<Word> words() throws IOException {
    return rows("word").stream()
        .map(
            r ->
                new Word(
                    r[1],
                    Pattern.compile(
                        "(?<![\\p{L}_.])(?:" + r[2] + ")(?![\\p{L}_])",
                        Pattern.CASE_INSENSITIVE | Pattern.MULTILINE),
                    r[3]))
        .toList();
  }

  @TestFactory
  Stream<DynamicTest> no_text_holds_a_retired_word() throws IOException {
    Map<String, Integer> allowed = new TreeMap<>();
    for (String[] row : rows("allowed")) {
      allowed.put(row[1] + " in " + row[2], Integer.parseInt(row[3]));
    }
    return words().stream()
        .flatMap(
            w ->
                texts.keySet().stream()
                    .map(
                        place ->
                            DynamicTest.dynamicTest(
                                w.name() + " in " + place,
                                () ->
                                    assertThat(w.in(texts.get(place)))
                                        .as("%s: write %s", found(w, place), w.replacement())
                                        .isLessThanOrEqualTo(
                                            allowed.getOrDefault(w.name() + " in " + place, 0)))));
  }

  private String found(Word word, String place) {
    return texts
        .get(place)
        .lines()
        .filter(l -> word.in(l) > 0)
        .map(l -> l.length() > 160 ? l.substring(0, 160) + "…" : l)
        .toList()
        .toString();
  }

  @Test
  void each_exception_is_of_a_place_and_a_word_that_exist_and_has_a_reason() throws IOException {
    List<String> names = words().stream().map(Word::name).toList();
    assertThat(names).isNotEmpty().doesNotHaveDuplicates();
    assertThat(rows("allowed"))
        .allMatch(r -> r.length == 5 && names.contains(r[1]) && texts.containsKey(r[2]))
        .noneMatch(r -> r[4].isBlank());
  }

  /** A status is found wherever it stands, a verb in all its forms, and no part of another word. */
  @Test
  void words_are_found_in_texts() throws IOException {
    Map<String, Word> words = new TreeMap<>();
    words().forEach(w -> words.put(w.name(), w));
    assertThat(words.get("mend").in("Mended; mends, amends")).isEqualTo(2);
    assertThat(words.get("look").in("look: 3 rows\nA row to look at\nlook")).isEqualTo(2);
    assertThat(words.get("bear").in("one cable bears 16 A; bear in mind")).isEqualTo(1);
  }
}
