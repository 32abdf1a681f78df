package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.table.XColumnRowRange;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.UnoAccess;

/**
 * The sentence of a row that came by recalculation can be read whole: that of the first row to stop
 * for stands in the head of the tab, and rows are made as tall as their sentences before printing.
 */
@Tag("one-office")
@ExtendWith(SharedOffice.class)
class SentencesIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");
  private static final int HEAD = 3;
  private static final int ONE_LINE = 350; // 10 pt in 1/100 mm, without room between lines

  /** More letters of 10 pt stand on no millimetre, whatever the words: half an em each. */
  private static final double MOST_LETTERS_PER_MM = 0.65;

  @TestFactory
  Stream<DynamicTest> sentences_can_be_read_whole(Office office) {
    return TemplateRegistry.all().stream()
        .map(
            w -> {
              String name = w.template().fileName() + "-example.ods";
              return DynamicTest.dynamicTest(
                  name, () -> read(office, EXAMPLES.resolve(name), w.template()));
            });
  }

  private static void read(Office office, Path file, WorkbookSpec template) throws Exception {
    try (TestWorkbook book = new TestWorkbook(office, file, template).calculated()) {
      for (SheetSpec tab : template.tabs()) {
        List<TableSpec> tables = withReasons(tab);
        if (!tab.isGrid() && !tab.isHidden() && !tables.isEmpty()) {
          assertThat(head(book, tab)).as(tab.name()).isEqualTo(first(book, tables));
        }
      }
      for (TableSpec table : book.plain()) {
        if (table.reason() != null && !book.values(table.status()).get(0).equals("")) {
          mistype(book, table);
        }
      }
      CommandDriver.command(office, book.document(), "fit");
      for (TableSpec table : book.plain()) {
        if (table.reason() != null) {
          tallEnough(book, table);
        }
      }
    }
  }

  /** A wrong cell in the first row is told in the head, with the name of its row. */
  private static void mistype(TestWorkbook book, TableSpec table) {
    ColumnSpec number =
        table.inputs().stream().filter(c -> !c.format().isText()).findFirst().orElse(null);
    if (number != null) {
      book.cell(number, 0).setFormula("twelve");
      book.calculated();
      SheetSpec tab = book.layout().tab(table);
      assertThat(head(book, tab))
          .as(tab.name())
          .startsWith("stop: ")
          .isEqualTo(first(book, withReasons(tab)));
    }
  }

  /** What the head should say, read off the rows. */
  private static String first(TestWorkbook book, List<TableSpec> tables) {
    for (String word : List.of("stop", "check")) {
      for (TableSpec table : tables) {
        int row = book.values(table.status()).indexOf(word);
        if (row >= 0) {
          String key = TestWorkbook.shown(book.cell(table.key(), row));
          String name = key.isEmpty() ? "row " + (book.layout().firstRow(table) + row + 1) : key;
          return word + ": " + name + " – " + TestWorkbook.shown(book.cell(table.reason(), row));
        }
      }
    }
    return "";
  }

  private static void tallEnough(TestWorkbook book, TableSpec table) {
    double letters = book.layout().width(table.reason()) * MOST_LETTERS_PER_MM;
    for (int row = 0; row < table.room(); row++) {
      String reason = TestWorkbook.shown(book.cell(table.reason(), row));
      int lines = (int) Math.ceil(reason.length() / letters);
      Object at = UnoAccess.as(XColumnRowRange.class, book.cell(table.reason(), row)).getRows();
      assertThat((Integer) UnoAccess.get(at, "Height"))
          .as(reason)
          .isGreaterThanOrEqualTo(lines * ONE_LINE);
    }
  }

  private static String head(TestWorkbook book, SheetSpec tab) {
    int column = book.layout().pagesAcross(tab) > 1 ? 1 : 0;
    return TestWorkbook.shown(UnoAccess.ask(() -> book.sheet(tab).getCellByPosition(column, HEAD)));
  }

  private static List<TableSpec> withReasons(SheetSpec tab) {
    return tab.tables().stream()
        .filter(TableSpec.class::isInstance)
        .map(TableSpec.class::cast)
        .filter(t -> t.reason() != null)
        .toList();
  }
}
