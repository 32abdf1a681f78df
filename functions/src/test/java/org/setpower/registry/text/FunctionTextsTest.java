package org.setpower.registry.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.text.Allowance;
import org.setpower.text.MessageCatalog;

/** What is translated belongs to something and keeps what must not be translated. */
class FunctionTextsTest {
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");

  static List<String> languages() {
    return MessageCatalog.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_text_is_orphaned(String language) {
    assertThat(FunctionTexts.into(language).orphaned()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_more_texts_are_missing_than_allowed(String language) throws IOException {
    Allowance.check(
        language, MessageCatalog.Speaker.FUNCTIONS, FunctionTexts.into(language).missing());
  }

  /** American texts are of functions that there are, and each differs from the British one. */
  @Test
  void american_texts_belong_to_a_function() {
    FunctionTexts american = FunctionTexts.into("en-US");
    assertThat(american.orphaned()).isEmpty();
    MessageCatalog words = american.asked();
    assertThat(words.translated()).isNotEmpty().allMatch(t -> !words.of(t).equals(t));
    assertThat(words.isEnglish()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void texts_keep_the_words_that_are_typed(String language) {
    MessageCatalog words = FunctionTexts.into(language).asked();
    for (String english : words.translated()) {
      String text = words.of(english);
      assertThat(quoted(text)).as(language + ": " + text).isEqualTo(quoted(english));
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void texts_are_sentences_without_full_stop(String language) {
    FunctionTexts translation = FunctionTexts.into(language);
    MessageCatalog words = translation.asked();
    for (String english : words.translated()) {
      assertThat(words.of(english)).as(language).isNotBlank().doesNotEndWith(".");
    }
    for (FunctionSpec f : FunctionRegistry.all()) {
      String text = translation.sentence(f);
      assertThat(text.substring(0, 1))
          .as(text)
          .isEqualTo(text.substring(0, 1).toUpperCase(Locale.ROOT));
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void a_missing_text_is_english(String language) {
    FunctionTexts translation = FunctionTexts.into(language);
    for (FunctionSpec f : FunctionRegistry.all()) {
      if (translation.missing().contains(f.sentence())) {
        assertThat(translation.sentence(f)).isEqualTo(f.sentence());
      } else {
        assertThat(translation.sentence(f)).isNotEqualTo(f.sentence());
      }
    }
  }

  private static TreeSet<String> quoted(String text) {
    TreeSet<String> all = new TreeSet<>();
    QUOTED.matcher(text).results().forEach(m -> all.add(m.group()));
    return all;
  }

  /** Texts and their translations in turn. */
  private static FunctionTexts of(String... texts) {
    StringBuilder file = new StringBuilder();
    for (int i = 0; i < texts.length; i += 2) {
      file.append("msgctxt \"functions\"\nmsgid \"").append(texts[i]);
      file.append("\"\nmsgstr \"").append(texts[i + 1]).append("\"\n");
    }
    return new FunctionTexts(
        MessageCatalog.from(
            new ByteArrayInputStream(file.toString().getBytes(StandardCharsets.UTF_8)),
            "de",
            MessageCatalog.Speaker.FUNCTIONS));
  }

  private static FunctionSpec function(String name) {
    return FunctionRegistry.find(name).orElseThrow();
  }

  private static Parameter<?> parameter(String function, String name) {
    return function(function).parameters().stream()
        .filter(p -> p.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_phrase_is_translated_for_all_functions_that_say_it() {
    FunctionTexts german = of("Number of equal cables in parallel", "Leitungen nebeneinander");
    assertThat(german.phrase(parameter("CABLE.DROP", "parallel")))
        .isEqualTo("Leitungen nebeneinander");
    assertThat(german.phrase(parameter("CABLE.DROP", "amps"))).isEqualTo("Current in one leg");
    assertThat(german.missing())
        .doesNotContain("Number of equal cables in parallel")
        .contains("Current in one leg", function("CABLE.DROP").sentence());
    assertThat(german.orphaned()).isEmpty();
  }

  @Test
  void a_text_that_no_function_says_is_orphaned() {
    assertThat(of("Returns nothing", "a", "if left out", "b", "days", "c", "V", "d").orphaned())
        .containsExactly("Returns nothing", "V");
  }

  @Test
  void a_file_without_texts_misses_all_of_them() {
    FunctionTexts none = of();
    assertThat(none.missing())
        .contains(
            "required",
            "if left out",
            "days",
            "2, with 3PH 4",
            "Returns the voltage drop of a cable run",
            "Voltage drop of the run")
        .doesNotContain("V", "1", "");
  }

  @Test
  void a_description_joins_phrase_unit_and_default() {
    FunctionTexts german =
        of(
            "required",
            "zwingend",
            "if left out",
            "wenn leer",
            "share",
            "Anteil",
            parameter("CABLE.GAUGE", "loaded_conductors").phrase(),
            "Belastete Adern",
            "pieces",
            "Stück",
            "2, with 3PH 4",
            "2, bei 3PH 4",
            parameter("PACK.RUNTIME", "reserve").phrase(),
            "bleibt im Akku");
    assertThat(german.description(parameter("CABLE.GAUGE", "air_temp")))
        .isEqualTo(
            parameter("CABLE.GAUGE", "air_temp").description().replace("if left out", "wenn leer"));
    assertThat(german.description(parameter("CABLE.GAUGE", "loaded_conductors")))
        .isEqualTo("Belastete Adern (Stück); wenn leer: 2, bei 3PH 4");
    assertThat(german.description(parameter("PACK.RUNTIME", "reserve")))
        .isEqualTo("bleibt im Akku (Anteil); wenn leer: 0, until empty");
    assertThat(german.description(parameter("CABLE.DROP", "length")))
        .isEqualTo("Cable length, one way; also text such as \"100 ft\" (m); zwingend");
  }

  @Test
  void a_made_up_language_is_one_file() {
    assertThat(FunctionTexts.into("qqx").asked().of("required")).isEqualTo("rekwa");
  }

  @Test
  void english_describes_as_the_declaration_does() {
    FunctionTexts english = FunctionTexts.into("en-GB");
    for (FunctionSpec f : FunctionRegistry.all()) {
      assertThat(f.parameters())
          .allSatisfy(p -> assertThat(english.description(p)).isEqualTo(p.description()));
    }
  }

  @Test
  void the_files_of_all_languages_are_read() {
    assertThat(FunctionTexts.into("de").asked().of("days")).isEqualTo("Tage");
    assertThat(FunctionTexts.into("fr").asked().of("days")).isEqualTo("jours");
    assertThat(FunctionTexts.into("es").asked().of("days")).isEqualTo("días");
  }

  @Test
  void a_function_and_its_result_have_texts_of_their_own() {
    FunctionTexts german =
        of(
            "Returns the voltage drop of a cable run", "Gibt den Verlust",
            "Voltage drop of the run", "Volt weniger");
    assertThat(german.sentence(function("CABLE.DROP"))).isEqualTo("Gibt den Verlust");
    assertThat(german.resultWords(function("CABLE.DROP"))).isEqualTo("Volt weniger");
    assertThat(of().sentence(function("CABLE.DROP")))
        .isEqualTo("Returns the voltage drop of a cable run");
    assertThat(of().resultWords(function("CABLE.DROP"))).isEqualTo("Voltage drop of the run");
  }
}
