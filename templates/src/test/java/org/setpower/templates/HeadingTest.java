package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanLayout.Column;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.plan.PlanPart;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanTable;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.text.MessageCatalog;

/** Headings have room: no word of one is cut in the middle, in any language, on any tab. */
class HeadingTest {
  static Stream<String> languages() {
    return Stream.concat(Stream.of(MessageCatalog.ENGLISH), MessageCatalog.files().stream());
  }

  @ParameterizedTest
  @MethodSource("languages")
  void no_word_is_cut(String language) {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    List<String> cut =
        TemplateRegistry.plans().stream()
            .flatMap(w -> cut(w.workbook(), new PlanLayout(w.workbook(), words)))
            .toList();
    assertThat(cut).isEmpty();
  }

  private static Stream<String> cut(PlanWorkbook workbook, PlanLayout layout) {
    return workbook.tabs().stream()
        .flatMap(
            t ->
                t.parts().stream()
                    .flatMap(p -> columns(layout, p))
                    .flatMap(c -> cut(workbook, layout, t, c)));
  }

  private static Stream<Column> columns(PlanLayout layout, PlanPart part) {
    if (part instanceof PlanTable table) {
      return layout.columns(table).stream();
    }
    return part instanceof PlanList list && !list.isWide()
        ? layout.columns(list).stream()
        : Stream.empty();
  }

  private static Stream<String> cut(
      PlanWorkbook workbook, PlanLayout layout, PlanTab tab, Column column) {
    return layout.cutInHeading(column).stream()
        .map(w -> workbook.fileName() + ", " + tab.name() + ", " + column.heading() + ": " + w);
  }
}
