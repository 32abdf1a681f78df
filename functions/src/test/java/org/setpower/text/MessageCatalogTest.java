package org.setpower.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts whose English is the key, and the PO files that they stand in. */
class MessageCatalogTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d?}");

  private static InputStream file(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  private static MessageCatalog words(String text) {
    return MessageCatalog.from(file(text), "de", MessageCatalog.Speaker.COMMANDS);
  }

  /** An entry of the commands. */
  private static String entry(String english, String other) {
    return "msgctxt \"commands\"\nmsgid \"%s\"\nmsgstr \"%s\"\n\n".formatted(english, other);
  }

  @Test
  void a_text_is_found_and_one_that_is_missing_stays_english() {
    MessageCatalog words = words("# a note\n\n" + entry("Pack", "Akku") + entry(" of ", " von "));
    assertThat(words.of("Pack")).isEqualTo("Akku");
    assertThat(words.of(" of ")).isEqualTo(" von ");
    assertThat(words.of("Lead")).isEqualTo("Lead");
    assertThat(words.missing()).containsExactly("Lead");
    assertThat(words.orphaned()).isEmpty();
  }

  @Test
  void a_text_that_nobody_asks_for_is_orphaned() {
    assertThat(words(entry("Pack", "Akku")).orphaned()).containsExactly("Pack");
  }

  @Test
  void values_stand_in_turn_or_by_their_numbers() {
    MessageCatalog words = words(entry("{} of {}", "{2} von {1}"));
    assertThat(words.say("{} of {}", 3, "ten")).isEqualTo("ten von 3");
    assertThat(MessageCatalog.english().say("{} of {}", 3, "{}")).isEqualTo("3 of {}");
    assertThat(MessageCatalog.fill("IF(A1;{1;2};{})", "x")).isEqualTo("IF(A1;{1;2};x)");
  }

  @Test
  void more_places_than_values_stay() {
    assertThat(MessageCatalog.fill("{} {} {2}", "x")).isEqualTo("x {} {2}");
    assertThat(MessageCatalog.fill("{1} {2}", "x", "y")).isEqualTo("x y");
    assertThat(MessageCatalog.fill("an open { brace", "x")).isEqualTo("an open { brace");
  }

  /** GNU gettext manual, "The Format of PO Files": escapes of C, strings that go on. */
  @Test
  void escapes_and_strings_of_several_lines_are_read() {
    MessageCatalog words =
        words(
            """
            #. for translators
            #: Some.java:12
            msgctxt "commands"
            msgid ""
            "say \\"a\\"\\n"
            "b\\\\"
            msgstr "sage "
            "\\t„a“"
            """);
    assertThat(words.of("say \"a\"\nb\\")).isEqualTo("sage \t„a“");
  }

  @Test
  void other_contexts_doubtful_and_empty_translations_do_not_count() {
    MessageCatalog words =
        words(
            entry("Pack", "Akku").replace("commands", "sheets")
                + "#, fuzzy\n"
                + entry("Lead", "Blei")
                + entry("Leg", "")
                + entry("Drop", "Fall")
                + "#~ msgid \"old\"\n#~ msgstr \"alt\"\n");
    assertThat(words.translated()).containsExactly("Drop");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "msgid \"a\"\n",
        "\"a\"\n",
        "msgid a\n",
        "msgid \"a\n",
        "msgid \"\n",
        "msgid \"a\"b\"\nmsgstr \"c\"\n",
        "msgid \"a\"\nmsgstr \"b\"\nmsgstr \"c\"\n",
        "msgxx \"a\"\n",
        "msgctxt \"commands\"\nmsgid \"a\"\nmsgid_plural \"b\"\nmsgstr[0] \"c\"\n"
      })
  void what_is_no_po_file_is_refused_with_its_line(String text) {
    assertThatThrownBy(() -> words(text)).hasMessageMatching("PO file, line \\d+: .+");
  }

  @Test
  void a_second_translation_is_refused() {
    assertThatThrownBy(() -> words(entry("a", "b") + entry("a", "c")))
        .hasMessageContaining("twice")
        .hasMessageContaining("“a”");
  }

  @Test
  void a_count_takes_the_form_of_its_language() {
    String counted =
        """
        msgctxt "commands"
        msgid "{} row in {}"
        msgid_plural "{} rows in {}"
        msgstr[0] "{} rang de {}"
        msgstr[1] "{} rangs de {}"
        """;
    MessageCatalog french =
        words("msgid \"\"\nmsgstr \"Plural-Forms: nplurals=2; plural=(n > 1);\\n\"\n\n" + counted);
    assertThat(french.plural("{} row in {}", "{} rows in {}", 0, "A")).isEqualTo("0 rang de A");
    assertThat(french.plural("{} row in {}", "{} rows in {}", 2, "A")).isEqualTo("2 rangs de A");
    assertThat(french.orphaned()).isEmpty();
    MessageCatalog english = MessageCatalog.english();
    assertThat(english.plural("{} row", "{} rows", 1)).isEqualTo("1 row");
    assertThat(english.plural("{} row", "{} rows", 0)).isEqualTo("0 rows");
    assertThat(english.missing()).containsExactly("{} row");
  }

  /** Rules: GNU gettext manual, "Additional functions for plural forms". */
  @ParameterizedTest
  @CsvSource(
      delimiter = '@',
      value = {
        "nplurals=1; plural=0; @ 0 0 0 0 0 0 0",
        "nplurals=2; plural=n != 1; @ 1 0 1 1 1 1 1",
        "nplurals=2; plural=n>1; @ 0 0 1 1 1 1 1",
        "nplurals=3; plural=n%10==1 && n%100!=11 ? 0 : n != 0 ? 1 : 2; @ 2 0 1 1 1 0 1",
        "nplurals=3; plural=n==1 ? 0 : (n==0 || (n%100 > 0 && n%100 < 20)) ? 1 : 2;"
            + " @ 1 0 1 1 1 2 2",
        "nplurals=3; plural=n%10==1 && n%100!=11 ? 0 :"
            + " n%10>=2 && n%10<=4 && (n%100<10 || n%100>=20) ? 1 : 2; @ 2 0 1 2 2 0 1",
        "nplurals=3; plural=(n==1) ? 0 : (n>=2 && n<=4) ? 1 : 2; @ 2 0 1 2 2 2 2",
        "nplurals=4; plural=n%100==1 ? 0 : n%100==2 ? 1 : n%100==3 || n%100==4 ? 2 : 3;"
            + " @ 3 0 1 3 3 3 3"
      })
  void the_usual_rules_are_worked_out(String rule, String forms) {
    PluralForms plurals = PluralForms.of(rule);
    int[] counts = {0, 1, 2, 5, 11, 21, 22};
    assertThat(Arrays.stream(counts).map(plurals::form).boxed())
        .containsExactlyElementsOf(Arrays.stream(forms.split(" ")).map(Integer::valueOf).toList());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "nplurals=2; plural=n;",
        "nplurals=2; plural=n %;",
        "nplurals=2; plural=(n != 1;",
        "nplurals=2; plural=1/n;",
        "nplurals=2; plural=n != 1 1;",
        "nplurals=2; plural=system(n);",
        "plural=n != 1;"
      })
  void a_rule_that_gives_no_form_is_refused(String rule) {
    assertThatThrownBy(() -> PluralForms.of(rule)).hasMessageContaining("Plural-Forms");
  }

  /**
   * A language is one file and one word in {@link MessageCatalog#LANGUAGES}: here only the file.
   */
  @Test
  void a_made_up_language_is_one_file() {
    MessageCatalog made = MessageCatalog.in("qqx", MessageCatalog.Speaker.COMMANDS);
    assertThat(made.language()).isEqualTo("qqx");
    assertThat(made.isEnglish()).isFalse();
    assertThat(made.of("~Cancel")).isEqualTo("~Kelkan");
    assertThat(made.plural("{} row", "{} rows", 1)).isEqualTo("1 rul");
    assertThat(made.plural("{} row", "{} rows", 2)).isEqualTo("2 rulu");
    assertThat(made.plural("{} row", "{} rows", 5)).isEqualTo("5 ruluk");
    assertThat(made.of("C~lose")).isEqualTo("C~lose");
    assertThat(MessageCatalog.in("qqx", MessageCatalog.Speaker.SHEETS).of("Loads"))
        .isEqualTo("Lodu");
    assertThat(MessageCatalog.in("qqx", MessageCatalog.Speaker.SHEETS).of("Batteries"))
        .as("a heading of a plan")
        .isEqualTo("Batriu");
  }

  @Test
  void the_country_comes_before_the_language_and_english_is_the_end() {
    assertThat(MessageCatalog.in("qqx-ZZ", MessageCatalog.Speaker.COMMANDS).of("~Cancel"))
        .isEqualTo("~Kelkan");
    assertThat(MessageCatalog.in("de-AT", MessageCatalog.Speaker.COMMANDS).of("~Cancel"))
        .isEqualTo("~Abbrechen");
    for (String none : new String[] {"xx", "en", "en-GB", "", "../de", "null"}) {
      MessageCatalog english = MessageCatalog.in(none, MessageCatalog.Speaker.COMMANDS);
      assertThat(english.of("~Cancel")).as(none).isEqualTo("~Cancel");
      assertThat(english.language()).isEqualTo("en");
      assertThat(english.isEnglish()).isTrue();
    }
  }

  @Test
  void a_country_has_only_what_differs() {
    MessageCatalog american = MessageCatalog.in("en-US", MessageCatalog.Speaker.COMMANDS);
    assertThat(american.of("~Version, licence, libraries"))
        .isEqualTo("~Version, license, libraries");
    assertThat(american.of("~Cancel")).isEqualTo("~Cancel");
    assertThat(american.language()).isEqualTo("en");
    assertThat(american.isEnglish()).isTrue();
    assertThat(MessageCatalog.known("en_US")).isEqualTo("en-US");
    assertThat(MessageCatalog.known("de-AT")).isEqualTo("de");
    assertThat(MessageCatalog.known("")).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(MessageCatalog.Speaker.class)
  void every_text_has_the_places_of_the_english_one(MessageCatalog.Speaker speaker) {
    for (String language : MessageCatalog.LANGUAGES) {
      MessageCatalog words = MessageCatalog.in(language, speaker);
      assertThat(words.translated()).isNotEmpty();
      for (String english : words.translated()) {
        for (String form : words.forms(english)) {
          assertThat(PLACE.matcher(form).results().count())
              .as(language + ": " + english)
              .isEqualTo(PLACE.matcher(english).results().count());
        }
      }
    }
  }
}
