package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.sheet.Translation;
import org.setpower.sheet.Words;

/** Sentences of the sheets that could hurt somebody, in every language. Rules: common practice. */
class DangerousTextsTest {
  private static final Pattern HOT =
      word("hot|smoking|smelling|heiß|rauchend|chaude?|fumante|odorante|caliente|humeante");
  private static final Pattern HANDLED =
      word(
          "bring|carry|outdoors|dropped|swollen|bringen|draußen|heruntergefallen|portez-la|dehors"
              + "|tombée|gonflée|sáquela|apártela|caída|hinchada");
  private static final Map<String, Pattern> FEEDERS =
      Map.of(
          "en", Pattern.compile("earth \\(ground\\) first, then neutral, then phases.*in reverse"),
          "de", Pattern.compile("den Schutzleiter.*dann den Neutral.*dann die Außen.*umgekehrter"),
          "fr", Pattern.compile("d’abord la terre, puis le neutre, puis les phases.*inverse"),
          "es", Pattern.compile("primero la tierra, luego el neutro y después las fases.*inverso"));

  static Stream<String> languages() {
    return Stream.concat(Stream.of("en"), Translation.LANGUAGES.stream());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void hot_batteries_are_not_handled(String language) {
    List<String> hot = sentences(language).stream().filter(s -> HOT.matcher(s).find()).toList();
    assertThat(hot).isNotEmpty().noneMatch(s -> HANDLED.matcher(s).find());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void feeders_are_connected_earth_neutral_phases(String language) {
    Words words = Texts.asked("de");
    List<String> feeders =
        words.asked().stream()
            .filter(s -> s.startsWith("Single-core feeders:"))
            .map(s -> in(language, s))
            .toList();
    assertThat(feeders).isNotEmpty().allMatch(s -> FEEDERS.get(language).matcher(s).find());
  }

  private static List<String> sentences(String language) {
    List<String> all = new ArrayList<>();
    Texts.asked("de").asked().forEach(s -> all.addAll(List.of(in(language, s).split("[.!?]"))));
    return all;
  }

  private static String in(String language, String english) {
    return language.equals("en") ? english : Words.in(language, Shelf.class).of(english);
  }

  private static Pattern word(String words) {
    return Pattern.compile(
        "(?<!\\p{L})(" + words + ")(?!\\p{L}|-swap)",
        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }
}
