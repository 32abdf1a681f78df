package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.command.issues.ListIssuesCommand;
import org.setpower.office.Office;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.layout.PlanNames;
import org.setpower.templates.register.BatteryRegister;

/** The commands on a workbook of a plan: the filled battery register. */
@ExtendWith(SharedOffice.class)
class PlanCommandsIT {
  private static final Path EXAMPLE =
      Path.of("target/sheets/examples/battery-register-example.ods");
  private static final int MOST_LETTERS = 250;

  private static PlanSheet open(Office office) throws IOException {
    return new PlanSheet(office, EXAMPLE, new BatteryRegister().workbook()).calculated();
  }

  private static List<String> figures(PlanSheet book) {
    return List.of(
        book.page("Project"),
        book.page("Batteries"),
        book.page("Tests"),
        book.page("Actions"),
        book.page("Summary"),
        book.page("Issue list"));
  }

  private static int lastRow(PlanSheet book, String path) {
    return book.column(path).size();
  }

  @Test
  void a_row_comes_and_goes_with_its_results(Office office) throws Exception {
    try (PlanSheet book = open(office)) {
      List<String> before = figures(book);
      List<String> fit = book.column("batteries.fit");
      Place first = book.layout().place(book.layout().input("batteries.serial"));
      String cell = "Batteries.B" + (first.row() + 3);
      CommandDriver.command(office, book.document(), "add", "cell", cell, "rows", "1");
      List<String> after = book.column("batteries.fit");
      assertThat(after.get(3)).isEmpty();
      assertThat(after.subList(4, after.size())).isEqualTo(fit.subList(3, fit.size()));
      CommandDriver.command(
          office,
          book.document(),
          "remove",
          "cell",
          "Batteries.B" + (first.row() + 4),
          "rows",
          "1");
      assertThat(figures(book)).isEqualTo(before);
      UnoRuntime.queryInterface(XUndoManagerSupplier.class, book.document())
          .getUndoManager()
          .undo();
      assertThat(book.column("batteries.fit")).isEqualTo(after);
    }
  }

  @Test
  void only_papers_are_printed_down_to_their_last_row(Office office) throws Exception {
    try (PlanSheet book = open(office)) {
      CommandDriver.command(office, book.document(), "fit");
      for (PlanTab tab : book.workbook().tabs()) {
        CellRangeAddress[] areas =
            UnoRuntime.queryInterface(XPrintAreas.class, book.sheet(tab.name())).getPrintAreas();
        assertThat(areas.length > 0).as(tab.name()).isEqualTo(tab.isPaper());
      }
      CellRangeAddress[] actions =
          UnoRuntime.queryInterface(XPrintAreas.class, book.sheet("Actions")).getPrintAreas();
      int rows = lastRow(book, "actions.serial");
      assertThat(rows).isPositive();
      int last = actions[actions.length - 1].EndRow;
      assertThat(last).isEqualTo(topOfActions(book) + rows);
    }
  }

  private static int topOfActions(PlanSheet book) {
    PlanLayout layout = book.layout();
    return book.workbook().tabs().stream()
        .filter(t -> t.name().equals("Actions"))
        .flatMap(t -> t.parts().stream())
        .filter(org.setpower.templates.plan.PlanList.class::isInstance)
        .mapToInt(p -> layout.place(p).row())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void open_issues_are_the_plans_one_a_cause_with_a_link_to_the_row(Office office)
      throws Exception {
    try (PlanSheet book = open(office)) {
      List<String> verdicts = book.column("issues.verdict");
      String said = CommandDriver.command(office, book.document(), "look");
      long stops = verdicts.stream().filter("stop"::equals).count();
      assertThat(stops).isPositive();
      assertThat(said).contains("" + stops);
      TestSheet list = TestSheet.named(book.document(), ListIssuesCommand.SHEET);
      Object[][] rows = list.data("A5:D" + (4 + verdicts.size()));
      assertThat(rows[0][0]).isEqualTo("stop");
      assertThat((String) rows[0][1]).startsWith("Batteries.B");
      assertThat(rows[0][3]).isEqualTo(book.column("issues.reasons").get(0));
      assertThat(rows).hasNumberOfRows(verdicts.size());
    }
  }

  @Test
  void damaged_formulas_are_restored(Office office) throws Exception {
    try (PlanSheet book = open(office)) {
      List<String> before = figures(book);
      XSpreadsheet batteries = book.sheet("Batteries");
      XSpreadsheet plan = book.sheet(PlanNames.TAB);
      for (XSpreadsheet sheet : List.of(batteries, plan)) {
        UnoRuntime.queryInterface(XProtectable.class, sheet).unprotect("");
      }
      PlanLayout layout = book.layout();
      int row = layout.place(layout.input("batteries.serial")).row();
      batteries.getCellByPosition(0, row).setFormula("ok");
      XCellRange block =
          plan.getCellRangeByPosition(
              PlanNames.ANSWER,
              layout.names().blockTop(),
              PlanNames.ANSWER + layout.names().blockColumns() - 1,
              layout.names().blockTop() + layout.names().blockRows() - 1);
      UnoRuntime.queryInterface(XSheetOperation.class, block).clearContents(CellFlags.FORMULA);
      plan.getCellByPosition(PlanNames.ANSWER + 3, PlanNames.TOP + 1).setFormula("batteries.none");
      for (XSpreadsheet sheet : List.of(batteries, plan)) {
        UnoRuntime.queryInterface(XProtectable.class, sheet).protect("");
      }
      assertThat(figures(book.calculated())).isNotEqualTo(before);
      plan = book.sheet(PlanNames.TAB);
      UnoRuntime.queryInterface(XProtectable.class, plan).unprotect("");
      plan.getCellByPosition(PlanNames.ANSWER + 3, PlanNames.TOP + 1)
          .setFormula((String) layout.names().answer("en").get(1).get(3));
      String said = CommandDriver.command(office, book.document(), "mend");
      assertThat(said).contains("2 formulas restored");
      assertThat(figures(book.calculated())).isEqualTo(before);
    }
  }

  @Test
  void a_copy_without_formulas_shows_the_same(Office office) throws Exception {
    try (PlanSheet book = open(office)) {
      List<String> before = figures(book);
      Path to = office.newFolder().resolve("copy");
      CommandDriver.command(
          office, book.document(), "copy", "formats", "ods", "to", office.address(to));
      try (PlanSheet copy =
          new PlanSheet(office, to.resolveSibling("copy.ods"), new BatteryRegister().workbook())) {
        assertThat(formulas(copy.document())).isEmpty();
        String summary = before.get(4);
        for (String line : book.column("issues.where")) {
          assertThat(summary).contains(line);
        }
        assertThat(allText(copy.document())).containsAll(book.column("issues.reasons"));
      }
    }
  }

  @Test
  @Tag("one-office")
  void no_formula_is_long(Office office) throws Exception {
    try (PlanSheet book = open(office)) {
      List<String> formulas = formulas(book.document());
      assertThat(formulas).hasSizeGreaterThan(1000);
      assertThat(formulas).allSatisfy(f -> assertThat(f).hasSizeLessThanOrEqualTo(MOST_LETTERS));
      System.out.println("battery register: " + formulas.size() + " cells with formulas");
    }
  }

  private static List<XSpreadsheet> sheets(XComponent document) throws Exception {
    var all = UnoRuntime.queryInterface(XSpreadsheetDocument.class, document).getSheets();
    List<XSpreadsheet> sheets = new ArrayList<>();
    for (String name : all.getElementNames()) {
      sheets.add(UnoRuntime.queryInterface(XSpreadsheet.class, all.getByName(name)));
    }
    return sheets;
  }

  /** Every formula; those of the block once. */
  private static List<String> formulas(XComponent document) throws Exception {
    List<String> formulas = new ArrayList<>();
    for (XSpreadsheet sheet : sheets(document)) {
      for (CellRangeAddress at :
          UnoRuntime.queryInterface(XCellRangesQuery.class, sheet)
              .queryContentCells((short) CellFlags.FORMULA)
              .getRangeAddresses()) {
        XCellRange cells =
            sheet.getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow);
        for (String[] row :
            UnoRuntime.queryInterface(com.sun.star.sheet.XCellRangeFormula.class, cells)
                .getFormulaArray()) {
          for (String formula : row) {
            if (!formula.startsWith("{") || !formulas.contains(formula)) {
              formulas.add(formula);
            }
          }
        }
      }
    }
    return formulas;
  }

  private static List<String> allText(XComponent document) throws Exception {
    List<String> texts = new ArrayList<>();
    for (XSpreadsheet sheet : sheets(document)) {
      for (Object cells :
          List.of(
              UnoRuntime.queryInterface(XCellRangesQuery.class, sheet)
                  .queryContentCells((short) CellFlags.STRING))) {
        for (CellRangeAddress at :
            UnoRuntime.queryInterface(com.sun.star.sheet.XSheetCellRanges.class, cells)
                .getRangeAddresses()) {
          Object[][] data =
              UnoRuntime.queryInterface(
                      com.sun.star.sheet.XCellRangeData.class,
                      sheet.getCellRangeByPosition(
                          at.StartColumn, at.StartRow, at.EndColumn, at.EndRow))
                  .getDataArray();
          for (Object[] row : data) {
            for (Object cell : row) {
              texts.add(String.valueOf(cell));
            }
          }
        }
      }
    }
    return texts;
  }
}
