package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.registry.text.FunctionTexts;
import org.setpower.text.MessageCatalog;

/**
 * Sentences that could hurt somebody, in every language: on the sheets, in the words of functions
 * and commands, in the handbook. Rules: common practice.
 */
class DangerousTextsTest {
  private static final Path EXTENSION = Path.of("../extension/src/main");

  /** Every text of the sheets, in English. */
  private static final Set<String> SHEETS = PlanTextCollector.asked("de").asked();

  private static final Map<String, MessageCatalog> WORDS = new HashMap<>();

  /** A battery that may burn. */
  private static final Pattern HOT =
      word(
          "smoking|smelling|venting|leaking|hissing|rauchend\\p{L}*|mit \\p{L}*\\s?Geruch"
              + "|qui fume|fumante|odorante|dégage\\w* une odeur|qui fuit"
              + "|humeante|con humo|con olor|con fugas");

  private static final Pattern LEFT_ALONE =
      word("do not touch|not touched|nicht anfassen|ne la touchez pas|no la toque");

  private static final Pattern HELP = word("fire service|Feuerwehr|pompiers|bomberos");

  /** What is done to a battery by hand. */
  private static final Pattern HANDLED =
      word(
          "bring|carry|place|unplug|switch off|outdoors|dropped|swollen|set aside"
              + "|bringen|abstecken|draußen|im Freien|heruntergefallen|aussondern|absondern"
              + "|portez-la|débranchez|dehors|à l’extérieur|tombée|gonflée"
              + "|sáquela|desenchufe|desconecte|apártela|al aire libre|caída|hinchada");

  private static final Map<String, Pattern> FEEDERS =
      Map.of(
          "en",
          Pattern.compile(
              "supply off before.*earth \\(ground\\) first, then neutral, then phases\\. Disconnect"
                  + " in reverse"),
          "de",
          Pattern.compile(
              "Versorgung abschalten.*Zuerst den Schutzleiter.*dann den Neutral.*dann die"
                  + " Außen.*umgekehrter"),
          "fr",
          Pattern.compile(
              "coupez l’alimentation avant.*d’abord la terre, puis le neutre, puis les"
                  + " phases.*inverse"),
          "es",
          Pattern.compile(
              "corte la alimentación antes.*primero la tierra, luego el neutro y después las"
                  + " fases.*inverso"));

  /** Words that send somebody the wrong way, with the reason. */
  private static final Map<String, Pattern> WRONG =
      Map.of(
          "a fault to earth is not a dead short, and cables are not thickened",
          word(
              "dead fault|thicken|dicker legen|grossissez|Löst bei Kurzschluss sofort aus|una"
                  + " falla"),
          "volar is to blow up, odorante is fragrant",
          word("volarla|volarlas|la vuele|odorante|odorantes"),
          "a hand does not feel 0 °C",
          word("feel it|fühlen oder messen|touchez, ou mesurez|tóquela o mida"),
          "nobody is told to charge cold",
          word("charge (?:it )?only above 0 °C|nur über 0 °C laden|seulement au-dessus de 0 °C"),
          "a caution is an imperative",
          word("is not charged|wird nicht geladen|ne se charge pas|no se carga"));

  static Stream<String> languages() {
    return Stream.concat(Stream.of("en"), MessageCatalog.LANGUAGES.stream());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void hot_batteries_are_left_alone(String language) throws IOException {
    List<String> hot = all(language).stream().filter(s -> HOT.matcher(s).find()).toList();
    assertThat(hot)
        .isNotEmpty()
        .allMatch(s -> LEFT_ALONE.matcher(s).find() && HELP.matcher(s).find())
        .noneMatch(s -> HANDLED.matcher(beforeCold(s)).find());
  }

  /** A paragraph of the handbook or a caution of a function may go on about cold ones. */
  private static String beforeCold(String text) {
    int help = 0;
    var matcher = HELP.matcher(text);
    while (matcher.find()) {
      help = matcher.end();
    }
    return text.substring(0, help);
  }

  @ParameterizedTest
  @MethodSource("languages")
  void dropped_batteries_are_handled_only_when_cold(String language) throws IOException {
    Pattern unplugged =
        word("Unplug the battery|Akku abstecken|Débranchez la batterie|Desconecte la batería");
    Pattern cold = word("cold|kalt|froide|fría");
    List<String> handled = all(language).stream().filter(s -> unplugged.matcher(s).find()).toList();
    assertThat(handled)
        .isNotEmpty()
        .allMatch(
            s -> cold.matcher(s.substring(0, s.indexOf(':') < 0 ? 0 : s.indexOf(':'))).find());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void feeders_are_connected_earth_neutral_phases(String language) {
    List<String> feeders =
        SHEETS.stream()
            .filter(s -> s.startsWith("Single-core feeders:"))
            .map(s -> in(language, s))
            .toList();
    assertThat(feeders).isNotEmpty().allMatch(s -> FEEDERS.get(language).matcher(s).find());
  }

  @Test
  void functions_and_handbook_connect_feeders_in_the_same_order() throws IOException {
    List<String> texts = new ArrayList<>(cautions());
    texts.addAll(handbook());
    List<String> order = texts.stream().filter(s -> s.contains("then neutral")).toList();
    assertThat(order)
        .hasSizeGreaterThan(1)
        .allMatch(s -> s.matches("(?s).*earth \\(ground\\) first, then neutral, then phases.*"))
        .allMatch(s -> s.matches("(?s).*supply off before.*Disconnect in reverse order.*"));
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_text_sends_somebody_the_wrong_way(String language) throws IOException {
    List<String> all = all(language);
    WRONG.forEach((why, words) -> assertThat(all).as(why).noneMatch(s -> words.matcher(s).find()));
  }

  /** All texts that are shown in a language. */
  private static List<String> all(String language) throws IOException {
    List<String> all = new ArrayList<>();
    SHEETS.forEach(s -> all.add(in(language, s)));
    if (language.equals("en")) {
      all.addAll(cautions());
      all.addAll(handbook());
    } else {
      MessageCatalog words = FunctionTexts.into(language).asked();
      words.asked().forEach(s -> all.add(words.of(s)));
    }
    MessageCatalog commands =
        MessageCatalog.in(language.equals("en") ? "de" : language, MessageCatalog.Speaker.COMMANDS);
    for (String s : commands.translated()) {
      all.addAll(language.equals("en") ? List.of(s) : commands.forms(s));
    }
    return all;
  }

  private static List<String> cautions() {
    return FunctionRegistry.all().stream().map(FunctionSpec::caution).toList();
  }

  private static List<String> handbook() throws IOException {
    List<String> all = new ArrayList<>();
    try (Stream<Path> pages = Files.list(EXTENSION.resolve("handbook"))) {
      for (Path page : pages.filter(p -> p.toString().endsWith(".md")).toList()) {
        for (String part : Files.readString(page).split("\n(?:\n|- )")) {
          if (!part.startsWith("Index:")) {
            all.add(part);
          }
        }
      }
    }
    return all;
  }

  private static String in(String language, String english) {
    return WORDS
        .computeIfAbsent(language, l -> MessageCatalog.in(l, MessageCatalog.Speaker.SHEETS))
        .of(english);
  }

  private static Pattern word(String words) {
    return Pattern.compile(
        "(?<!\\p{L})(?:" + words + ")(?!\\p{L})", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }
}
