package org.setpower.bench;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XEnumeration;
import com.sun.star.container.XEnumerationAccess;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XProtectable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.setpower.office.Office;
import org.setpower.templates.Stress;

/**
 * The lighting plan filled to its last row: its recalculation against as many calls of an empty
 * function and its native formulas, which are timed in a copy whose other cells hold values.
 */
final class StressBench {
  private static final String OURS = "ORG.SETPOWER.FUNCTIONS.";
  private static final int ROUNDS = 5;
  private static final int CALLS = 5_000;

  private StressBench() {}

  static void run(Office office, Path folder, Figures figures) throws Exception {
    Path file = Stress.lighting().draw(office, folder);
    try (Book full = new Book(office, office.open(file));
        Book rest = new Book(office, office.open(file));
        Book empty =
            Book.empty(office)
                .data(0, WholeBench.data(CALLS))
                .down(6, 0, CALLS, "=EMPTY.CABLEDROP(A1;B1;C1)")) {
      rest.recalculate();
      int calls = freeze(rest);
      Book.inTurn(ROUNDS, full, rest, empty);
      double call = empty.seconds() / CALLS;
      figures.atMost(
          1.3,
          String.format(
              Locale.ROOT,
              "lighting plan of 200 loads, 100 runs, 60 packs: %.0f ms; to %d empty calls of"
                  + " %.0f µs and the native formulas (%.0f ms)",
              1e3 * full.seconds(),
              calls,
              1e6 * call,
              1e3 * rest.seconds()),
          full.seconds() / (calls * call + rest.seconds()),
          "%.2f");
    }
  }

  /** Puts values in the place of formulas with functions of ours; gives how many calls they had. */
  private static int freeze(Book book) throws Exception {
    int calls = 0;
    XSpreadsheetDocument document =
        UnoRuntime.queryInterface(XSpreadsheetDocument.class, book.document());
    for (String name : document.getSheets().getElementNames()) {
      XSpreadsheet sheet =
          UnoRuntime.queryInterface(XSpreadsheet.class, document.getSheets().getByName(name));
      UnoRuntime.queryInterface(XProtectable.class, sheet).unprotect("");
      for (XCell cell : formulas(sheet)) {
        String formula = cell.getFormula();
        calls += formula.split(OURS, -1).length - 1;
        if (formula.startsWith("{") && formula.contains(OURS)) {
          freezeArray(sheet, cell);
        } else if (formula.contains(OURS)) {
          freezeCell(cell);
        }
      }
    }
    return calls;
  }

  private static List<XCell> formulas(XSpreadsheet sheet) throws Exception {
    List<XCell> cells = new ArrayList<>();
    XEnumerationAccess all =
        UnoRuntime.queryInterface(XCellRangesQuery.class, sheet)
            .queryContentCells((short) CellFlags.FORMULA)
            .getCells();
    for (XEnumeration e = all.createEnumeration(); e.hasMoreElements(); ) {
      cells.add(UnoRuntime.queryInterface(XCell.class, e.nextElement()));
    }
    return cells;
  }

  private static void freezeCell(XCell cell) throws Exception {
    Object result =
        UnoRuntime.queryInterface(XPropertySet.class, cell).getPropertyValue("FormulaResultType2");
    if (result.equals(FormulaResult.VALUE)) {
      cell.setValue(cell.getValue());
    } else {
      XText text = UnoRuntime.queryInterface(XText.class, cell);
      text.setString(text.getString());
    }
  }

  private static void freezeArray(XSpreadsheet sheet, XCell cell) {
    XSheetCellCursor cursor =
        sheet.createCursorByRange(UnoRuntime.queryInterface(XSheetCellRange.class, cell));
    cursor.collapseToCurrentArray();
    XCellRangeData data = UnoRuntime.queryInterface(XCellRangeData.class, cursor);
    Object[][] values =
        Arrays.stream(data.getDataArray())
            .map(
                row ->
                    Arrays.stream(row)
                        .map(v -> v instanceof Double || v instanceof String ? v : "")
                        .toArray())
            .toArray(Object[][]::new);
    UnoRuntime.queryInterface(XArrayFormulaRange.class, cursor).setArrayFormula("");
    data.setDataArray(values);
  }
}
