package org.setpower.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.registry.groups.FunctionRegistry;

/** What is translated belongs to something and keeps what must not be translated. */
class FunctionTextsTest {
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");

  static List<String> languages() {
    return FunctionTexts.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_text_is_orphaned(String language) {
    assertThat(FunctionTexts.into(language).orphaned()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void texts_keep_the_words_that_are_typed(String language) {
    FunctionTexts translation = FunctionTexts.into(language);
    translation
        .english()
        .forEach(
            (key, english) ->
                translation
                    .text(key)
                    .ifPresent(
                        text ->
                            assertThat(quoted(text))
                                .as(language + " " + key + ": " + text)
                                .isEqualTo(quoted(english))));
  }

  @ParameterizedTest
  @MethodSource("languages")
  void texts_are_sentences_without_full_stop(String language) {
    FunctionTexts translation = FunctionTexts.into(language);
    for (String key : translation.english().keySet()) {
      translation
          .text(key)
          .ifPresent(
              text -> assertThat(text).as(language + " " + key).isNotBlank().doesNotEndWith("."));
    }
    for (FunctionSpec f : FunctionRegistry.all()) {
      translation
          .text(f.name())
          .ifPresent(
              text ->
                  assertThat(text.substring(0, 1))
                      .as(text)
                      .isEqualTo(text.substring(0, 1).toUpperCase(Locale.ROOT)));
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void a_missing_text_is_english(String language) {
    FunctionTexts translation = FunctionTexts.into(language);
    for (FunctionSpec f : FunctionRegistry.all()) {
      if (translation.missing().contains(f.name())) {
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

  private static FunctionTexts of(String... lines) {
    Properties file = new Properties();
    for (String line : lines) {
      String[] parts = line.split(" = ", 2);
      file.setProperty(parts[0], parts[1]);
    }
    return new FunctionTexts(file);
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
  void a_name_that_means_one_thing_is_translated_for_all_functions() {
    FunctionTexts german = of("length = Leitungslänge");
    assertThat(german.phrase(parameter("CABLE.DROP", "length"))).isEqualTo("Leitungslänge");
    assertThat(german.phrase(parameter("CABLE.LOOP", "length"))).isEqualTo("Leitungslänge");
    assertThat(german.phrase(parameter("CABLE.DROP", "amps"))).isEqualTo("Current in one leg");
    assertThat(german.missing()).doesNotContain("length").contains("amps", "CABLE.DROP");
  }

  @Test
  void a_name_that_means_several_things_is_translated_for_those_that_mean_the_same() {
    FunctionTexts german = of("parallel@BANK.AMPHOURS = Akkus nebeneinander");
    assertThat(german.phrase(parameter("BANK.AMPHOURS", "parallel")))
        .isEqualTo("Akkus nebeneinander");
    assertThat(german.phrase(parameter("BANK.MAXAMPS", "parallel")))
        .isEqualTo("Akkus nebeneinander");
    assertThat(german.phrase(parameter("CABLE.DROP", "parallel")))
        .isEqualTo("Number of equal cables in parallel");
    assertThat(german.missing()).contains("parallel@CABLE.DROP");
    assertThat(german.missing()).doesNotContain("parallel@BANK.AMPHOURS");
    assertThat(german.orphaned()).isEmpty();
  }

  @Test
  void a_name_alone_says_nothing_where_it_means_several_things() {
    FunctionTexts german = of("parallel = nebeneinander");
    assertThat(german.phrase(parameter("CABLE.DROP", "parallel")))
        .isEqualTo("Number of equal cables in parallel");
    assertThat(german.orphaned()).isEmpty();
  }

  @Test
  void keys_of_what_there_is_not_are_orphaned() {
    assertThat(
            of(
                    "CABLE.DROP = a",
                    "CABLE.DROPP = b",
                    "size@CABLE.DROP = c",
                    "size@CABLE.DROPP = d",
                    "sice@CABLE.DROP = e",
                    "if_left_out = f",
                    "unit.days = g",
                    "unit.V = h")
                .orphaned())
        .containsExactly("CABLE.DROPP", "sice@CABLE.DROP", "size@CABLE.DROPP", "unit.V");
  }

  @Test
  void a_file_without_texts_misses_all_of_them() {
    FunctionTexts none = of();
    assertThat(none.missing()).containsExactlyInAnyOrderElementsOf(none.english().keySet());
    assertThat(none.english())
        .containsEntry("if_left_out", "if left out")
        .containsEntry("unit.days", "days")
        .containsEntry("breaker.default", "CABLE.BREAKER of the current")
        .containsEntry("CABLE.DROP", "Returns the voltage drop of a cable run")
        .containsEntry("CABLE.DROP.result", "Voltage drop of the run")
        .doesNotContainKeys("power_factor.default", "standard.default", "unit.V");
  }

  @Test
  void a_description_joins_phrase_unit_and_default() {
    FunctionTexts german =
        of(
            "required = zwingend",
            "if_left_out = wenn leer",
            "unit.share = Anteil",
            "breaker = Nennstrom davor",
            "breaker.default = CABLE.BREAKER des Stroms",
            "reserve = bleibt im Akku");
    assertThat(german.description(parameter("CABLE.GAUGE", "air_temp")))
        .isEqualTo(
            parameter("CABLE.GAUGE", "air_temp").description().replace("if left out", "wenn leer"));
    assertThat(german.description(parameter("CABLE.GAUGE", "breaker")))
        .isEqualTo("Nennstrom davor (A); wenn leer: CABLE.BREAKER des Stroms");
    assertThat(german.description(parameter("PACK.RUNTIME", "reserve")))
        .isEqualTo("bleibt im Akku (Anteil); wenn leer: 0");
    assertThat(german.description(parameter("CABLE.DROP", "length")))
        .isEqualTo("Cable length, one way; also text such as \"100 ft\" (m); zwingend");
  }

  @Test
  void the_files_of_all_languages_are_read() {
    assertThat(FunctionTexts.into("de").text("unit.days")).hasValue("Tage");
    assertThat(FunctionTexts.into("fr").text("unit.days")).hasValue("jours");
    assertThat(FunctionTexts.into("es").text("unit.days")).hasValue("días");
  }

  @Test
  void a_function_and_its_result_have_texts_of_their_own() {
    FunctionTexts german = of("CABLE.DROP = Gibt den Verlust", "CABLE.DROP.result = Volt weniger");
    assertThat(german.sentence(function("CABLE.DROP"))).isEqualTo("Gibt den Verlust");
    assertThat(german.resultWords(function("CABLE.DROP"))).isEqualTo("Volt weniger");
    assertThat(of().sentence(function("CABLE.DROP")))
        .isEqualTo("Returns the voltage drop of a cable run");
    assertThat(of().resultWords(function("CABLE.DROP"))).isEqualTo("Voltage drop of the run");
  }
}
