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
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.plan.PlanTable;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.quote.RentalQuote;
import org.setpower.templates.uno.PlanFiller;
import org.setpower.templates.uno.PlanWriter;
import org.setpower.text.MessageCatalog;

/**
 * The rental quote as it ships, filled with 300 rows: from a typed quantity to the row's amount,
 * against a thousand calls of an empty function.
 */
final class QuoteBench {
  private static final int CALLS = 1_000;
  private static final int ROUNDS = 15;

  private QuoteBench() {}

  static void run(Office office, Measurements figures) throws Exception {
    PlanWorkbook workbook = new RentalQuote().workbook();
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
              "quote of 300 rows, an edit: %.0f ms; to 1 000 empty calls (%.0f ms)",
              1e3 * edit,
              1e3 * empty.seconds()),
          edit / empty.seconds(),
          "%.2f");
    } finally {
      Office.discard(document);
    }
  }

  private static PlanTable items(PlanWorkbook workbook) {
    return workbook
        .parts(PlanTable.class)
        .filter(t -> t.inputs().key().equals("items"))
        .findFirst()
        .orElseThrow();
  }

  private static void fill(PlanWriter drawing, PlanWorkbook workbook) {
    PlanFiller filler = new PlanFiller(drawing).example();
    List<Map<String, String>> lines = filler.lines("items");
    List<Map<String, String>> many = new ArrayList<>();
    PlanTable items = items(workbook);
    for (int i = 0; i < items.inputs().rows(); i++) {
      many.add(new HashMap<>(lines.get(i % lines.size())));
    }
    filler.rows(items, many);
    drawing.finish();
  }

  /** Types another quantity in the first row and reads its amount: 310 a day, six days agreed. */
  private static double edit(Office office, PlanWriter drawing, PlanWorkbook workbook, int round)
      throws Exception {
    PlanLayout layout = drawing.layout();
    PlanTable items = items(workbook);
    Place typed = layout.place(layout.input("items.qty"));
    int amount =
        layout.columns(items).stream()
            .filter(c -> c.result() != null && c.result().key().equals("amount"))
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
    XCell shown = sheet.getCellByPosition(amount, typed.row());
    ProcessorTime before = ProcessorTime.of(office);
    quantity.setValue(10.0 + round);
    double value = shown.getValue();
    double seconds = before.secondsUntil(ProcessorTime.of(office));
    if (Math.abs(value - 1860.0 * (10 + round)) > 1e-6) {
      throw new IOException("amount " + value + " in round " + round);
    }
    return seconds;
  }
}
