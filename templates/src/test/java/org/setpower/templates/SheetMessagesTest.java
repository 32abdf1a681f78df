package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.text.Allowance;
import org.setpower.text.MessageCatalog;

/** The texts of the templates in other languages. */
class SheetMessagesTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d?}");

  static List<String> languages() {
    return MessageCatalog.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_text_is_orphaned(String language) {
    assertThat(PlanTextCollector.asked(language).orphaned()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_more_texts_are_missing_than_allowed(String language) throws IOException {
    Allowance.check(
        language, MessageCatalog.Speaker.SHEETS, PlanTextCollector.asked(language).missing());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void every_value_has_its_place(String language) {
    MessageCatalog words = PlanTextCollector.asked(language);
    for (String english : words.asked()) {
      assertThat(PLACE.matcher(words.of(english)).results().count())
          .as(english)
          .isEqualTo(PLACE.matcher(english).results().count());
    }
  }

  @ParameterizedTest
  @MethodSource("languages")
  void tabs_have_names_of_their_own(String language) {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    for (PlanTemplate template : TemplateRegistry.plans()) {
      PlanLayout layout = new PlanLayout(template.workbook(), words);
      assertThat(template.workbook().tabs().stream().map(layout::name))
          .as(template.workbook().fileName())
          .doesNotHaveDuplicates()
          .noneMatch(n -> n.matches(".*[\\[\\]*?:/\\\\'].*"));
    }
  }
}
