package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.CellSpec;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.TableBase;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;

/** What every shipped file must keep to. */
class TemplateRegistryTest {
  @TestFactory
  Stream<DynamicTest> every_file_keeps_the_rules() {
    return TemplateRegistry.all().stream()
        .map(TemplateDefinition::template)
        .map(t -> DynamicTest.dynamicTest(t.title(), () -> assertThat(faults(t)).isEmpty()));
  }

  private static List<String> faults(WorkbookSpec template) {
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
              boolean read = !(i instanceof ColumnSpec c && c.isWorking());
              if (read && i.format().wantsUnit() && i.unit() == null) {
                faults.add(i + " has no unit");
              }
            });
    for (TableBase rows : template.tables()) {
      boolean results = false;
      for (ColumnSpec column : rows.columns()) {
        if (column.isInput() && results) {
          faults.add(column + " is to fill but stands right of a result");
        }
        results |= !column.isInput();
        if (rows instanceof TableSpec && !column.isInput()) {
          assertThat(TableSpec.guarded(column, layout.place(rows))).isNotBlank();
        }
      }
    }
    template
        .figures()
        .forEach(f -> assertThat(f.value().text(layout.place())).as(f.label()).isNotBlank());
    return faults;
  }

  private static Stream<CellSpec<?>> items(WorkbookSpec template) {
    return Stream.concat(
        template.fields().stream(), template.tables().stream().flatMap(r -> r.columns().stream()));
  }
}
