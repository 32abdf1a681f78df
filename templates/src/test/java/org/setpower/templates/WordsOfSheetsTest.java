package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Rows;
import org.setpower.templates.spec.Table;
import org.setpower.templates.spec.Template;
import org.setpower.text.Translation;
import org.setpower.text.Words;

/** The texts of the templates in other languages. */
class WordsOfSheetsTest {
  private static final Pattern PLACE = Pattern.compile("\\{\\d?}");
  private static final Pattern QUOTED = Pattern.compile("\"(?:[^\"]|\"\")*\"");
  private static final Pattern SHEET = Pattern.compile("\\$('[^']*'|[\\p{L}]+)\\.");

  static List<String> languages() {
    return Translation.LANGUAGES;
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_text_is_orphaned(String language) {
    assertThat(Texts.asked(language).orphaned()).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("languages")
  void every_value_has_its_place(String language) {
    Words words = Texts.asked(language);
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
                Shelf.all().stream()
                    .map(w -> w.template())
                    .map(t -> DynamicTest.dynamicTest(t.fileName() + " " + l, () -> check(t, l))));
  }

  private static void check(Template template, String language) {
    Layout english = new Layout(template);
    Layout other = new Layout(template, Words.in(language, Shelf.class));
    List<String> names = template.tabs().stream().map(other::name).toList();
    assertThat(names).doesNotHaveDuplicates().noneMatch(n -> n.matches(".*[\\[\\]*?:/\\\\'].*"));
    for (Rows rows : template.tables()) {
      if (rows instanceof Table) {
        for (Column column : rows.columns()) {
          if (!column.isInput()) {
            assertThat(parts(Table.guarded(column, other.place(rows))))
                .as(column.heading())
                .isEqualTo(parts(Table.guarded(column, english.place(rows))));
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
