package org.setpower.bench;

import com.sun.star.container.XIndexAccess;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.setpower.office.Office;

/** A document whose recalculation is timed. */
final class BenchDocument implements AutoCloseable {
  private final XComponent document;
  private final XSpreadsheet sheet;
  private final Office office;
  private final List<Double> seconds = new ArrayList<>();

  BenchDocument(Office office, XComponent document) throws com.sun.star.uno.Exception {
    this.office = office;
    this.document = document;
    sheet =
        UnoRuntime.queryInterface(
            XSpreadsheet.class,
            UnoRuntime.queryInterface(
                    XIndexAccess.class,
                    UnoRuntime.queryInterface(XSpreadsheetDocument.class, document).getSheets())
                .getByIndex(0));
  }

  static BenchDocument empty(Office office) throws IOException, com.sun.star.uno.Exception {
    return new BenchDocument(office, office.newSpreadsheet());
  }

  XComponent document() {
    return document;
  }

  XCell cell(int column, int row) throws com.sun.star.uno.Exception {
    return sheet.getCellByPosition(column, row);
  }

  BenchDocument data(int column, Object[][] data) throws com.sun.star.uno.Exception {
    UnoRuntime.queryInterface(
            XCellRangeData.class,
            sheet.getCellRangeByPosition(column, 0, column + data[0].length - 1, data.length - 1))
        .setDataArray(data);
    return this;
  }

  /** The formula, filled down from its first row, as a user would. */
  BenchDocument down(int column, int first, int rows, String formula)
      throws com.sun.star.uno.Exception {
    cell(column, first).setFormula(formula);
    if (rows > 1) {
      UnoRuntime.queryInterface(
              XCellSeries.class,
              sheet.getCellRangeByPosition(column, first, column, first + rows - 1))
          .fillAuto(FillDirection.TO_BOTTOM, 1);
    }
    return this;
  }

  /** One array formula over a block. */
  BenchDocument array(int column, int first, int columns, int rows, String formula)
      throws com.sun.star.uno.Exception {
    UnoRuntime.queryInterface(
            XArrayFormulaRange.class,
            sheet.getCellRangeByPosition(column, first, column + columns - 1, first + rows - 1))
        .setArrayFormula(formula);
    return this;
  }

  /** Refuses to time a cell that shows an error. */
  BenchDocument answers(int column, int row, String what)
      throws com.sun.star.uno.Exception, IOException {
    if (cell(column, row).getError() != 0) {
      throw new IOException(what + ": error " + cell(column, row).getError());
    }
    return this;
  }

  /** Recalculates everything. */
  void recalculate() throws IOException {
    XCalculatable calculatable = UnoRuntime.queryInterface(XCalculatable.class, document);
    ProcessorTime before = ProcessorTime.of(office);
    calculatable.calculateAll();
    seconds.add(before.secondsUntil(ProcessorTime.of(office)));
  }

  /** What a recalculation took of the processor, in seconds: a quarter of all took less. */
  double seconds() {
    return ProcessorTime.usual(seconds);
  }

  /** Recalculates in turn, so that a busy machine slows all of them alike. */
  static void inTurn(int rounds, BenchDocument... books) throws IOException {
    for (int round = -2; round < rounds; round++) {
      for (BenchDocument book : books) {
        book.recalculate();
        if (round < 0) {
          book.seconds.clear();
        }
      }
    }
  }

  @Override
  public void close() {
    Office.discard(document);
  }
}
