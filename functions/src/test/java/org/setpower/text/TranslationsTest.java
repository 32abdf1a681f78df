package org.setpower.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Texts whose English is the key. */
class TranslationsTest {
  private static Translations words(String lines) {
    return Translations.from(
        new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)), "de");
  }

  @Test
  void a_text_is_found_and_one_that_is_missing_stays_english() {
    Translations words = words("# a note\n\nPack = Akku\n\" of \" = \" von \"\n");
    assertThat(words.of("Pack")).isEqualTo("Akku");
    assertThat(words.of(" of ")).isEqualTo(" von ");
    assertThat(words.of("Lead")).isEqualTo("Lead");
    assertThat(words.missing()).containsExactly("Lead");
    assertThat(words.orphaned()).isEmpty();
  }

  @Test
  void a_text_that_nobody_asks_for_is_orphaned() {
    assertThat(words("Pack = Akku\n").orphaned()).containsExactly("Pack");
  }

  @Test
  void values_stand_in_turn_or_by_their_numbers() {
    Translations words = words("{} of {} = {2} von {1}\n");
    assertThat(words.say("{} of {}", 3, "ten")).isEqualTo("ten von 3");
    assertThat(Translations.english().say("{} of {}", 3, "{}")).isEqualTo("3 of {}");
    assertThat(Translations.fill("IF(A1;{1;2};{})", "x")).isEqualTo("IF(A1;{1;2};x)");
  }

  @Test
  void a_line_is_read_as_it_is_written() {
    String line = Translations.line(" a\nb", "c");
    assertThat(words(line + "\n").of(" a\nb")).isEqualTo("c");
    assertThat(words(Translations.line("# 2", "c") + "\n").of("# 2")).isEqualTo("c");
    assertThat(words(Translations.line("\"a\"", "c") + "\n").of("\"a\"")).isEqualTo("c");
  }

  @Test
  void a_line_without_translation_or_a_second_one_is_refused() {
    assertThatThrownBy(() -> words("Pack\n")).hasMessageContaining("Pack");
    assertThatThrownBy(() -> words("a = b\na = c\n")).hasMessageContaining("twice");
  }

  @Test
  void a_file_stands_beside_a_class_and_without_one_it_stays_english() {
    assertThat(Translations.fileName("de")).isEqualTo("words_de.txt");
    Translations none = Translations.in("xx", TranslationsTest.class);
    assertThat(none.language()).isEqualTo("en");
    assertThat(none.isEnglish()).isTrue();
    assertThat(words("Pack = Akku\n").language()).isEqualTo("de");
    assertThat(words("Pack = Akku\n").isEnglish()).isFalse();
  }

  @Test
  void a_translation_may_be_one_letter_or_a_quotation_mark() {
    Translations words = words("a = b\nquote = \"\n = c\n");
    assertThat(words.of("a")).isEqualTo("b");
    assertThat(words.of("quote")).isEqualTo("\"");
  }

  @Test
  void more_places_than_values_stay() {
    assertThat(Translations.fill("{} {} {2}", "x")).isEqualTo("x {} {2}");
    assertThat(Translations.fill("{1} {2}", "x", "y")).isEqualTo("x y");
    assertThat(Translations.fill("an open { brace", "x")).isEqualTo("an open { brace");
  }
}
