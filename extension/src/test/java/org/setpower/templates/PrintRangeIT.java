package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.sheet.XPrintAreas;
import com.sun.star.table.CellRangeAddress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableBase;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.UnoAccess;

/** What is printed ends at the last filled row of each table, and nothing filled is left out. */
@Tag("one-office")
@ExtendWith(SharedOffice.class)
class PrintRangeIT {
  private static final Path SHEETS = Path.of("target/sheets");
  private static final int FEW = 15;
  private static final int WHEN_EMPTY = 25;

  @TestFactory
  Stream<DynamicTest> print_ends_at_the_last_filled_row(Office office) {
    return TemplateRegistry.all().stream()
        .flatMap(
            w -> {
              String name = w.template().fileName();
              return Stream.of("examples/" + name + "-example.ods", "templates/en/" + name + ".ots")
                  .map(
                      file ->
                          DynamicTest.dynamicTest(
                              file, () -> fits(office, SHEETS.resolve(file), w.template())));
            });
  }

  private static void fits(Office office, Path file, WorkbookSpec template) throws Exception {
    try (TestWorkbook book = new TestWorkbook(office, file, template).calculated()) {
      for (int time = 0; time < 2; time++) {
        assertThat(CommandDriver.command(office, book.document(), "fit"))
            .contains("last filled row");
        for (SheetSpec tab : template.tabs()) {
          if (!tab.isHidden() && tab.frames().isEmpty()) { // frames are printed whole
            tab.tables().forEach(t -> fits(book, tab, t));
          }
        }
      }
    }
  }

  private static void fits(TestWorkbook book, SheetSpec tab, TableBase table) {
    List<CellRangeAddress> areas =
        List.of(UnoAccess.as(XPrintAreas.class, book.sheet(tab)).getPrintAreas());
    Object[][] data = book.data(tab);
    int first = book.layout().firstRow(table);
    List<Integer> blank = new ArrayList<>();
    int filled = 0;
    for (int i = 0; i < table.room(); i++) {
      boolean shows = Stream.of(data[first + i]).anyMatch(v -> !"".equals(v));
      if (shows) {
        filled = i + 1;
        blank.clear();
        assertThat(isPrinted(areas, first + i)).as(tab.name() + " row " + i).isTrue();
      } else if (isPrinted(areas, first + i)) {
        blank.add(i);
      }
    }
    assertThat(blank.size())
        .as(tab.name() + ": blank rows printed below the last filled")
        .isLessThanOrEqualTo(filled == 0 ? Math.max(FEW, WHEN_EMPTY) : FEW);
  }

  private static boolean isPrinted(List<CellRangeAddress> areas, int row) {
    return areas.stream().anyMatch(a -> a.StartRow <= row && row <= a.EndRow);
  }
}
