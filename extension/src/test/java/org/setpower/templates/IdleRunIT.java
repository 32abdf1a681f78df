package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.text.XText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.UnoAccess;

/** A run that feeds nothing yet passes no amps to the functions, which refuse 0. */
@ExtendWith(SharedOffice.class)
class IdleRunIT {
  @Test
  void a_run_without_a_load_is_not_in_error(Office office) throws Exception {
    WorkbookSpec template = TemplateRegistry.all().get(0).template();
    Path file = Path.of("target/sheets/examples", template.fileName() + "-example.ods");
    try (TestWorkbook book = new TestWorkbook(office, file, template).calculated()) {
      TableSpec runs = book.table("Runs");
      int row = book.values(runs.inputs().get(0)).indexOf("");
      text(book, runs, "To", row, "idle");
      text(book, runs, "From", row, "quay box A1");
      text(book, runs, "Size", row, "2.5 mm²");
      text(book, runs, "Cable kind", row, "cord");
      book.cell(TestWorkbook.column(runs, "Length"), row).setValue(10);
      book.calculated();
      List<String> shown =
          List.of(
              TestWorkbook.shown(book.cell(TestWorkbook.column(runs, "At the busiest"), row)),
              TestWorkbook.shown(book.cell(TestWorkbook.column(runs, "Drop, this run"), row)),
              TestWorkbook.shown(book.cell(TestWorkbook.column(runs, "Heat in the cable"), row)),
              TestWorkbook.shown(book.cell(TestWorkbook.column(runs, "Longest run"), row)));
      assertThat(shown).containsExactly("0.0", "0.0", "0", "");
      assertThat(TestWorkbook.shown(book.cell(runs.reason(), row))).doesNotContain("blank cell");
      assertThat(TestWorkbook.shown(book.cell(TestWorkbook.column(runs, "Rating"), row)))
          .isEqualTo("25.0");
      assertThat(TestWorkbook.shown(book.cell(TestWorkbook.column(runs, "Smallest size"), row)))
          .endsWith("mm²");
    }
  }

  private static void text(
      TestWorkbook book, TableSpec table, String heading, int row, String words) {
    UnoAccess.as(XText.class, book.cell(TestWorkbook.column(table, heading), row)).setString(words);
  }
}
