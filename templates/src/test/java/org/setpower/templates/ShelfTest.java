package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.setpower.templates.example.Workbook;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Item;
import org.setpower.templates.spec.Rows;
import org.setpower.templates.spec.Table;
import org.setpower.templates.spec.Template;

/** What every shipped file must keep to. */
class ShelfTest {
  @TestFactory
  Stream<DynamicTest> every_file_keeps_the_rules() {
    return Shelf.all().stream()
        .map(Workbook::template)
        .map(t -> DynamicTest.dynamicTest(t.title(), () -> assertThat(faults(t)).isEmpty()));
  }

  private static List<String> faults(Template template) {
    List<String> faults = new ArrayList<>();
    Layout layout = new Layout(template);
    items(template)
        .forEach(
            i -> {
              if (i.isInput() && i.help().isEmpty()) {
                faults.add(i + " has no input help");
              }
              if (i.isInput() && i.error(layout.words()).isEmpty()) {
                faults.add(i + " has no error message");
              }
              boolean read = !(i instanceof Column c && c.isWorking());
              if (read && i.format().wantsUnit() && i.unit() == null) {
                faults.add(i + " has no unit");
              }
            });
    for (Rows rows : template.tables()) {
      boolean results = false;
      for (Column column : rows.columns()) {
        if (column.isInput() && results) {
          faults.add(column + " is to fill but stands right of a result");
        }
        results |= !column.isInput();
        if (rows instanceof Table && !column.isInput()) {
          assertThat(Table.guarded(column, layout.place(rows))).isNotBlank();
        }
      }
    }
    template
        .figures()
        .forEach(f -> assertThat(f.value().text(layout.place())).as(f.label()).isNotBlank());
    return faults;
  }

  private static Stream<Item<?>> items(Template template) {
    return Stream.concat(
        template.fields().stream(), template.tables().stream().flatMap(r -> r.columns().stream()));
  }
}
