package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.TableBase;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.text.Allowance;
import org.setpower.text.MessageCatalog;

/** The texts of the templates in other languages. */
class SheetMessagesTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d?}");
  private static final Pattern QUOTED = Pattern.compile("\"(?:[^\"]|\"\")*\"");
  private static final Pattern SHEET = Pattern.compile("\\$('[^']*'|[\\p{L}]+)\\.");

  static List<String> languages() {
    return MessageCatalog.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_text_is_orphaned(String language) {
    assertThat(TextCollector.asked(language).orphaned()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_more_texts_are_missing_than_allowed(String language) throws IOException {
    Allowance.check(
        language, MessageCatalog.Speaker.SHEETS, TextCollector.asked(language).missing());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void every_value_has_its_place(String language) {
    MessageCatalog words = TextCollector.asked(language);
    for (String english : words.asked()) {
      assertThat(PLACE.matcher(words.of(english)).results().count())
          .as(english)
          .isEqualTo(PLACE.matcher(english).results().count());
    }
  }

  @TestFactory
  Stream<DynamicTest> tabs_have_names_of_their_own_and_formulas_the_same_parts() {
    return languages().stream()
        .flatMap(
            l ->
                TemplateRegistry.all().stream()
                    .map(w -> w.template())
                    .map(t -> DynamicTest.dynamicTest(t.fileName() + " " + l, () -> check(t, l))));
  }

  private static void check(WorkbookSpec template, String language) {
    Layout english = new Layout(template);
    Layout other = new Layout(template, MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS));
    List<String> names = template.tabs().stream().map(other::name).toList();
    assertThat(names).doesNotHaveDuplicates().noneMatch(n -> n.matches(".*[\\[\\]*?:/\\\\'].*"));
    for (TableBase rows : template.tables()) {
      if (rows instanceof TableSpec) {
        for (ColumnSpec column : rows.columns()) {
          if (!column.isInput()) {
            assertThat(parts(TableSpec.guarded(column, other.place(rows))))
                .as(column.heading())
                .isEqualTo(parts(TableSpec.guarded(column, english.place(rows))));
          }
        }
      }
    }
  }

  /** What stands in a formula besides texts and names of sheets, in whatever order. */
  private static Map<String, Long> parts(String formula) {
    String bare = SHEET.matcher(QUOTED.matcher(formula).replaceAll("~")).replaceAll("");
    Map<String, Long> parts = new TreeMap<>();
    for (String part : bare.split("[&;(){}=<>+*/-]+")) {
      if (!part.equals("~")) {
        parts.merge(part, 1L, Long::sum);
      }
    }
    return parts;
  }
}
