package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.templates.layout.Hyphenation;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.text.MessageCatalog;

/** Headings have room: no word of one is cut in the middle, in any language, on any tab. */
class HeadingTest {
  static Stream<String> languages() {
    return Stream.concat(Stream.of(MessageCatalog.ENGLISH), MessageCatalog.LANGUAGES.stream());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_word_is_cut(String language) {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    List<String> cut =
        TemplateRegistry.all().stream()
            .flatMap(w -> cut(w.template(), new Layout(w.template(), words)))
            .toList();
    assertThat(cut).isEmpty();
  }

  private static Stream<String> cut(WorkbookSpec template, Layout layout) {
    return headings(template)
        .flatMap(
            c ->
                layout.cutInHeading(c).stream()
                    .map(w -> layout.spot(c).tab().name() + ", " + c.heading() + ": " + w));
  }

  private static Stream<ColumnSpec> headings(WorkbookSpec template) {
    return template.tabs().stream()
        .filter(t -> !t.isHidden())
        .flatMap(t -> t.tables().stream())
        .flatMap(t -> t.columns().stream())
        .filter(c -> !c.isWorking());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void every_word_that_may_be_divided_stands_in_a_heading(String language) {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    Set<String> written =
        TemplateRegistry.all().stream()
            .flatMap(w -> written(w.template(), new Layout(w.template(), words)))
            .collect(Collectors.toSet());
    assertThat(written).containsAll(Hyphenation.in(language).known());
  }

  private static Stream<String> written(WorkbookSpec template, Layout layout) {
    return headings(template)
        .flatMap(c -> Arrays.stream(layout.wholeHeading(c).split("[\\s-]")))
        .map(Hyphenation::bare);
  }

  @Test
  void a_word_is_divided_into_parts_that_fit() {
    Hyphenation german = Hyphenation.in("de");
    assertThat(german.divided("Kraftstoff", 15)).isEqualTo("Kraft-stoff");
    assertThat(german.divided("(Kraftstoff,", 40)).isEqualTo("(Kraftstoff,");
    assertThat(german.divided("Kohlrabi", 5)).isEqualTo("Kohlrabi");
  }
}
