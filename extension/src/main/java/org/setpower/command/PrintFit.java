package org.setpower.command;

import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XDatabaseRange;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Ends what is printed of each table at its last filled row. A sheet can only name the cells to
 * print, not work them out: so this is done anew before printing.
 */
final class PrintFit {
  private static final int SHOWN_WHEN_EMPTY = 25;

  /** So many blank rows may stand between two tables on one page. */
  private static final int FEW = 12;

  private final Book book;

  private PrintFit(Book book) {
    this.book = book;
  }

  /** Does so on all sheets of a document from our templates; gives on how many. */
  static int in(Book book) throws Exception {
    Paper.of(book);
    PrintFit fit = new PrintFit(book);
    int fitted = 0;
    var sheets = book.all();
    for (int i = 0; i < sheets.size(); i++) {
      fitted += fit.fit(sheets.get(i), fit.tables(i)) ? 1 : 0;
    }
    return fitted;
  }

  private List<CellRangeAddress> tables(int sheet) throws Exception {
    XNameAccess ranges = Uno.as(XNameAccess.class, Uno.get(book.document(), "DatabaseRanges"));
    List<CellRangeAddress> tables = new ArrayList<>();
    for (String name : ranges.getElementNames()) {
      CellRangeAddress area = Uno.as(XDatabaseRange.class, ranges.getByName(name)).getDataArea();
      if (name.startsWith("Rows_") && area.Sheet == sheet) {
        tables.add(area);
      }
    }
    tables.sort(Comparator.comparing(a -> a.StartRow));
    return tables;
  }

  private boolean fit(XSpreadsheet sheet, List<CellRangeAddress> tables) throws Exception {
    XPrintAreas printed = Uno.as(XPrintAreas.class, sheet);
    CellRangeAddress[] before = printed.getPrintAreas();
    if (tables.isEmpty() || before.length == 0) {
      return false;
    }
    CellRangeAddress lastTable = tables.get(tables.size() - 1);
    int end = Math.max(before[before.length - 1].EndRow, lastTable.EndRow);
    List<CellRangeAddress> areas = new ArrayList<>();
    int from = before[0].StartRow;
    for (CellRangeAddress table : tables) {
      int filled = filled(sheet, table);
      boolean last = table == lastTable && end == table.EndRow;
      if (last || table.EndRow - filled > FEW) {
        areas.add(area(before[0], from, filled));
        from = table.EndRow + 1;
      }
    }
    if (from <= end) {
      areas.add(area(before[0], firstWritten(sheet, before[0], from, end), end));
    }
    for (int i = 1; i < areas.size(); i++) {
      CellRangeAddress area = areas.get(i);
      area.StartRow = firstWritten(sheet, before[0], area.StartRow, area.EndRow);
    }
    printed.setPrintAreas(areas.toArray(CellRangeAddress[]::new));
    return true;
  }

  private static CellRangeAddress area(CellRangeAddress like, int from, int to) {
    return new CellRangeAddress(like.Sheet, like.StartColumn, from, like.EndColumn, to);
  }

  private static int firstWritten(XSpreadsheet sheet, CellRangeAddress like, int from, int to)
      throws Exception {
    int row = from;
    while (row < to && isBlank(data(sheet, area(like, row, row))[0])) {
      row++;
    }
    return row;
  }

  /** The last row of a table that shows something. */
  private static int filled(XSpreadsheet sheet, CellRangeAddress table) throws Exception {
    Object[][] rows = data(sheet, table);
    int row = rows.length - 1;
    while (row > 0 && isBlank(rows[row])) {
      row--;
    }
    return table.StartRow + (row == 0 ? Math.min(SHOWN_WHEN_EMPTY, rows.length - 1) : row);
  }

  private static Object[][] data(XSpreadsheet sheet, CellRangeAddress at) throws Exception {
    return Uno.as(
            XCellRangeData.class,
            sheet.getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow))
        .getDataArray();
  }

  private static boolean isBlank(Object... row) {
    return Arrays.stream(row).allMatch(""::equals);
  }
}
