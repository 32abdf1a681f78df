package org.setpower.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is translated belongs to something and keeps what must not be translated. */
class TranslationTest {
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");

  static List<String> languages() {
    return Translation.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_text_is_orphaned(String language) {
    assertThat(Translation.into(language).orphaned()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void texts_keep_the_words_that_are_typed(String language) {
    Translation translation = Translation.into(language);
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
    Translation translation = Translation.into(language);
    for (String key : translation.english().keySet()) {
      translation
          .text(key)
          .ifPresent(
              text -> assertThat(text).as(language + " " + key).isNotBlank().doesNotEndWith("."));
    }
    for (FunctionSpec f : Catalogue.all()) {
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
    Translation translation = Translation.into(language);
    for (FunctionSpec f : Catalogue.all()) {
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
}
