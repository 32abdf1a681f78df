package org.setpower.bench;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.setpower.office.Office;
import org.setpower.templates.budget.PowerBudget;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.plan.PlanTable;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.uno.PlanFiller;
import org.setpower.templates.uno.PlanWriter;
import org.setpower.text.MessageCatalog;

/**
 * The power budget as it ships, filled with 200 lines: from a typed quantity to what is planned,
 * against a thousand calls of an empty function.
 */
final class BudgetBench {
  private static final int CALLS = 1_000;
  private static final int ROUNDS = 15;

  private BudgetBench() {}

  static void run(Office office, Measurements figures) throws Exception {
    PlanWorkbook workbook = new PowerBudget().workbook();
    PlanWriter drawing = PlanWriter.of(office, workbook, MessageCatalog.english());
    XComponent document = drawing.document();
    try (BenchDocument empty =
        BenchDocument.empty(office)
            .data(0, WholeBench.data(CALLS))
            .down(6, 0, CALLS, "=EMPTY.CABLEDROP(A1;B1;C1)")) {
      fill(drawing, workbook);
      List<Double> edits = new ArrayList<>();
      for (int round = -3; round < ROUNDS; round++) {
        double seconds = edit(office, drawing, workbook, round);
        empty.recalculate();
        if (round >= 0) {
          edits.add(seconds);
        }
      }
      double edit = ProcessorTime.usual(edits);
      figures.atMost(
          10,
          String.format(
              Locale.ROOT,
              "budget of 200 lines, an edit: %.0f ms; to 1 000 empty calls (%.0f ms)",
              1e3 * edit,
              1e3 * empty.seconds()),
          edit / empty.seconds(),
          "%.2f");
    } finally {
      Office.discard(document);
    }
  }

  private static PlanTable linesTable(PlanWorkbook workbook) {
    return workbook
        .parts(PlanTable.class)
        .filter(t -> t.inputs().key().equals("lines"))
        .findFirst()
        .orElseThrow();
  }

  private static void fill(PlanWriter drawing, PlanWorkbook workbook) {
    PlanFiller filler = new PlanFiller(drawing).example();
    List<Map<String, String>> lines = filler.lines("lines");
    List<Map<String, String>> many = new ArrayList<>();
    PlanTable table = linesTable(workbook);
    for (int i = 0; i < table.inputs().rows(); i++) {
      many.add(new HashMap<>(lines.get(i % lines.size())));
    }
    filler.rows(table, many);
    drawing.finish();
  }

  /**
   * Types another quantity in the first line and reads what is planned: six days of 310 a piece.
   */
  private static double edit(Office office, PlanWriter drawing, PlanWorkbook workbook, int round)
      throws Exception {
    PlanLayout layout = drawing.layout();
    PlanTable table = linesTable(workbook);
    Place typed = layout.place(layout.input("lines.qty"));
    int planned =
        layout.columns(table).stream()
            .filter(c -> c.result() != null && c.result().key().equals("planned"))
            .findFirst()
            .orElseThrow()
            .at();
    XCellRange sheet =
        UnoRuntime.queryInterface(
            XCellRange.class,
            UnoRuntime.queryInterface(XSpreadsheetDocument.class, drawing.document())
                .getSheets()
                .getByName(layout.name(typed.tab())));
    XCell quantity = sheet.getCellByPosition(typed.column(), typed.row());
    XCell shown = sheet.getCellByPosition(planned, typed.row());
    ProcessorTime before = ProcessorTime.of(office);
    quantity.setValue(10.0 + round);
    double value = shown.getValue();
    double seconds = before.secondsUntil(ProcessorTime.of(office));
    if (Math.abs(value - 6 * 310.0 * (10 + round)) > 0.006) {
      throw new IOException("planned " + value + " in round " + round);
    }
    return seconds;
  }
}
