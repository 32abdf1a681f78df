package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.templates.layout.HeadingLayout;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.text.MessageCatalog;

/** Help beside a single cell runs on to the right: it ends before the printed page does. */
class HelpTest {
  /** Regular letters against the bold ones of headings, as measured on printed pages. */
  private static final double REGULAR = 0.93;

  static Stream<String> languages() {
    return Stream.concat(Stream.of(MessageCatalog.ENGLISH), MessageCatalog.LANGUAGES.stream());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void help_ends_on_its_page(String language) {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    List<String> cut =
        TemplateRegistry.all().stream()
            .flatMap(w -> cut(w.template(), new Layout(w.template(), words), words))
            .toList();
    assertThat(cut).isEmpty();
  }

  private static Stream<String> cut(WorkbookSpec template, Layout layout, MessageCatalog words) {
    return template.fields().stream()
        .filter(f -> !layout.help(f).tab().isHidden())
        .filter(f -> millimetres(words.of(f.help())) > room(layout, layout.help(f)))
        .map(f -> layout.help(f).tab().name() + ", " + f.heading() + ": " + words.of(f.help()));
  }

  private static int room(Layout layout, Layout.CellPosition help) {
    return layout.widths(help.tab()).subList(help.column(), layout.visible(help.tab())).stream()
        .mapToInt(Integer::intValue)
        .sum();
  }

  private static double millimetres(String text) {
    return text.chars().mapToDouble(HeadingLayout::of).sum() * HeadingLayout.EM * REGULAR;
  }
}
