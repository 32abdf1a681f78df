package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.templates.TestWorkbook.column;
import static org.setpower.templates.TestWorkbook.shown;

import com.sun.star.text.XText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.UnoAccess;

/** A generator that feeds nothing yet: nothing is rated, and no function gets 0 W to refuse. */
@ExtendWith(SharedOffice.class)
class IdleSetIT {
  @Test
  void a_generator_without_a_load_is_not_in_error(Office office) throws Exception {
    WorkbookSpec template = TemplateRegistry.all().get(0).template();
    Path file = Path.of("target/sheets/examples", template.fileName() + "-example.ods");
    try (TestWorkbook book = new TestWorkbook(office, file, template).calculated()) {
      TableSpec supply = book.table("Supply");
      int row = book.values(supply.inputs().get(0)).indexOf("");
      type(book.cell(column(supply, "Name"), row), "spare set");
      type(book.cell(column(supply, "Kind"), row), "generator");
      type(book.cell(column(supply, "System"), row), "3PH");
      book.cell(column(supply, "Volts"), row).setValue(400);
      type(book.cell(field(template, "Set")), "spare set");
      book.calculated();
      TableSpec rating = tableWith(template, "Required kVA");
      assertThat(shown(book.cell(column(rating, "Set that is rated"), 0))).isEqualTo("spare set");
      for (String heading : List.of("3 × busiest leg", "Required kVA", "Size proposed")) {
        assertThat(shown(book.cell(column(rating, heading), 0))).as(heading).isEmpty();
      }
      assertThat(shown(book.cell(rating.reason(), 0))).doesNotContain("blank cell");
      assertThat(book.errors()).isEmpty();
    }
  }

  private static void type(Object cell, String words) {
    UnoAccess.as(XText.class, cell).setString(words);
  }

  private static FieldSpec field(WorkbookSpec template, String label) {
    return template.fields().stream()
        .filter(f -> f.isInput() && f.heading().equals(label))
        .findFirst()
        .orElseThrow();
  }

  private static TableSpec tableWith(WorkbookSpec template, String heading) {
    return template.tables().stream()
        .filter(TableSpec.class::isInstance)
        .map(TableSpec.class::cast)
        .filter(
            t -> t.columns().stream().anyMatch(c -> !c.isWorking() && c.heading().equals(heading)))
        .findFirst()
        .orElseThrow();
  }
}
