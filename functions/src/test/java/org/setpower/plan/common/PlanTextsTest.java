package org.setpower.plan.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.text.Allowance;
import org.setpower.text.MessageCatalog;

/** A plan answers in the language of the document. */
class PlanTextsTest {
  private static final Pattern ARGUMENT = Pattern.compile("\\{\\d[^}]*}");

  /** A count with a form for one and another for more. */
  private static final Pattern CHOICE =
      Pattern.compile("\\{(\\d),choice,1#([^|{}]*)\\|1<((?:[^{}]|\\{[^}]*})*)}");

  static List<String> languages() {
    return MessageCatalog.LANGUAGES;
  }

  static List<String> files() {
    return MessageCatalog.files();
  }

  private static MessageCatalog words(String language) {
    return MessageCatalog.in(language, MessageCatalog.Speaker.PLANS);
  }

  @Test
  void every_plan_is_found() {
    assertThat(PlanTexts.models()).extracting(PlanModel::name).contains("register");
    assertThat(PlanTexts.all()).hasSizeGreaterThan(200);
  }

  /** What is missing is listed as lines for the file. */
  @ParameterizedTest
  @MethodSource("languages")
  void no_more_texts_are_missing_than_allowed(String language) throws IOException {
    MessageCatalog words = words(language);
    PlanTexts.all().forEach(words::of);
    Allowance.check(language, MessageCatalog.Speaker.PLANS, words.missing());
  }

  @ParameterizedTest
  @MethodSource("files")
  void no_text_is_orphaned(String language) {
    Set<String> orphaned = new TreeSet<>(words(language).translated());
    orphaned.removeAll(PlanTexts.all());
    assertThat(orphaned).as(language).isEmpty();
  }

  /**
   * A sentence keeps its figures and how they are written; a straight apostrophe begins a quote.
   */
  @ParameterizedTest
  @MethodSource("files")
  void sentences_keep_their_figures(String language) {
    MessageCatalog words = words(language);
    for (String english : PlanTexts.sentences()) {
      String text = words.of(english);
      assertThat(arguments(text)).as(text).isEqualTo(arguments(english));
      assertThat(text.replace("''", "")).as(text).doesNotContain("'");
      assertThat(text).as(text).endsWith(".");
    }
  }

  private static List<String> arguments(String pattern) {
    Matcher choice = CHOICE.matcher(pattern);
    String plain = choice.replaceAll("{$1,choice} $3");
    return ARGUMENT.matcher(plain).results().map(m -> m.group()).sorted().distinct().toList();
  }

  /** One and many have words of their own in each language. */
  @ParameterizedTest
  @MethodSource("files")
  void a_sentence_about_one_is_not_about_many(String language) {
    int counted = 0;
    Messages messages = Messages.in(language);
    for (FindingKey key : RegisterPlan.MODEL.findings()) {
      if (new EnglishMessages().pattern(key.key()).contains(",choice,")) {
        String one = messages.sentence(Finding.of(key, 1.0), Locale.forLanguageTag(language));
        String many = messages.sentence(Finding.of(key, 12.0), Locale.forLanguageTag(language));
        assertThat(many).contains("12").doesNotContain("{");
        assertThat(one).doesNotContain("{").isNotEqualTo(many.replace("12", "1"));
        counted++;
      }
    }
    assertThat(counted).isEqualTo(5);
    assertThat(
            Messages.in("en")
                .sentence(Finding.of(key("register.incident.rowOpen"), 1.0), Locale.UK))
        .isEqualTo("Open for 1 battery.");
  }

  private static InputTable<?> table(String key) {
    return RegisterPlan.MODEL.inputs().stream()
        .filter(t -> t.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static FindingKey key(String key) {
    return RegisterPlan.MODEL.findings().stream()
        .filter(f -> f.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_sentence_comes_in_the_language_with_its_numbers_and_headings() {
    Finding blank = Finding.of(CommonFinding.BLANK_CELL, table("batteries").column("serial"));
    Finding later = Finding.of(key("register.test.later"), LocalDate.of(2026, 11, 30));
    Finding overflow = Finding.of(CommonFinding.OVERFLOW, "Tests", 1234, 1000);
    Messages made = Messages.in("qqx");
    assertThat(made.sentence(blank, Locale.ENGLISH)).isEqualTo("Vaku: Seriu.");
    assertThat(made.text("Batteries")).isEqualTo("Batriu");
    assertThat(made.sentence(later, Locale.ENGLISH)).startsWith("The test of 30 Nov 2026 is later");
    assertThat(Messages.in("de-AT").sentence(overflow, Locale.GERMAN))
        .contains("1.234", "1.000")
        .startsWith("Tests hat");
    assertThat(Messages.in("it").sentence(blank, Locale.ITALIAN))
        .isEqualTo("Serial is blank. Fill it in.");
  }

  @Test
  void messages_are_made_once_a_language_and_american_words_differ() {
    assertThat(Messages.in("de-AT")).isSameAs(Messages.in("de"));
    assertThat(Messages.in("de x9")).isSameAs(Messages.in("it"));
    assertThat(Messages.in("en-US").text("Stocktake list")).isEqualTo("Inventory list");
    assertThat(Messages.in("en").text("Stocktake list")).isEqualTo("Stocktake list");
  }

  @Test
  void a_column_of_a_list_keeps_its_number() {
    InputColumn cell =
        table("tests").columns().stream()
            .filter(c -> c.key().endsWith("2"))
            .findFirst()
            .orElseThrow();
    String heading = cell.heading(new EnglishMessages());
    assertThat(heading).isEqualTo(cell.heading()).endsWith(" 2");
    assertThat(PlanTexts.all()).doesNotContain(heading).contains(heading.replace(" 2", ""));
  }
}
