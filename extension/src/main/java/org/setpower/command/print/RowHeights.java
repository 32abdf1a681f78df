package org.setpower.command.print;

import com.sun.star.awt.Size;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.Exception;
import java.util.List;
import org.setpower.command.document.CalcDocument;
import org.setpower.templates.layout.PlanNames;
import org.setpower.uno.Uno;

/**
 * Rows as tall as what they show: what comes by recalculation may need more lines than its row has,
 * or fewer. The office sees to that only in a row that somebody types in, and never where cells are
 * merged, as they are on pages.
 */
final class RowHeights {
  private static final int LINE = 480; // of 10 pt in 1/100 mm, as the sheets are drawn
  private static final int ROOM = 120;
  private static final int LEAST = 2; // lines of a row that has room for more than one
  private static final int MARGINS = 200; // of a cell, and its indent
  private static final double MM_100_A_POINT = 35.28;

  /** Shorter texts never need a second line: no column of words is that narrow. */
  private static final int SHORT = 4;

  private RowHeights() {}

  /** Fits rows of the tables of a sheet, and of the lists of a page. */
  static void fit(XSpreadsheet sheet, List<CellRangeAddress> tables, CellRangeAddress used)
      throws Exception {
    for (CellRangeAddress table : tables) {
      if (table.EndRow > table.StartRow) {
        Uno.set(rows(sheet, table.StartRow + 1, table.EndRow), "OptimalHeight", true);
      }
    }
    if (tables.isEmpty()) {
      XPrintAreas printed = Uno.as(XPrintAreas.class, sheet);
      int list = printed.getPrintTitleRows() ? printed.getTitleRows().EndRow : used.EndRow;
      fitMerged(sheet, used, list);
    }
  }

  /** Rows below the heading of a list get lower again where its texts are shorter now. */
  private static void fitMerged(XSpreadsheet sheet, CellRangeAddress used, int heading)
      throws Exception {
    Object[][] values =
        Uno.as(
                XCellRangeData.class,
                sheet.getCellRangeByPosition(0, 0, used.EndColumn, used.EndRow))
            .getDataArray();
    for (int row = 0; row < values.length; row++) {
      int needed = needed(sheet, row, values[row]);
      if (needed > 0) {
        Object height = Uno.get(rows(sheet, row, row), "Height");
        boolean lower = row > heading && (int) height > ROOM + LINE * LEAST;
        int least = ROOM + LINE * LEAST;
        int set = lower ? Math.max(least, needed) : Math.max((int) height, needed);
        if (set != (int) height) {
          Uno.set(rows(sheet, row, row), "Height", set);
        }
      }
    }
  }

  /** The height that a row of a list on a page needs on paper; 0 where it is none. */
  static int needed(XSpreadsheet sheet, int row, int lastColumn) throws Exception {
    XCellRange cells = sheet.getCellRangeByPosition(0, row, lastColumn, row);
    return needed(sheet, row, Uno.as(XCellRangeData.class, cells).getDataArray()[0]);
  }

  private static int needed(XSpreadsheet sheet, int row, Object... values) throws Exception {
    int lines = 0;
    for (int column = 0; column < values.length; column++) {
      if (values[column] instanceof String text && text.length() > SHORT) {
        lines = Math.max(lines, lines(sheet, column, row));
      }
    }
    return lines == 0 ? 0 : ROOM + LINE * lines;
  }

  /** Lines of a merged cell of a list; 0 where it is none. */
  private static int lines(XSpreadsheet sheet, int column, int row) throws Exception {
    XCellRange cell = sheet.getCellRangeByPosition(column, row, column, row);
    String style = (String) Uno.get(cell, "CellStyle");
    boolean listed =
        style.startsWith(PlanNames.RESULT_CELL) || style.startsWith(PlanNames.REASON_CELL);
    if (!listed || !(boolean) Uno.get(cell, "IsTextWrapped")) {
      return 0;
    }
    XSheetCellCursor area = sheet.createCursorByRange(Uno.as(XSheetCellRange.class, cell));
    area.collapseToMergedArea();
    CellRangeAddress at = Uno.as(XCellRangeAddressable.class, area).getRangeAddress();
    if (at.EndColumn == at.StartColumn || at.EndRow > at.StartRow) {
      return 0;
    }
    XCell first = cell.getCellByPosition(0, 0);
    int wide = ((Size) Uno.get(area, "Size")).Width - MARGINS;
    double letter = (float) Uno.get(cell, "CharHeight") * MM_100_A_POINT;
    return lines(CalcDocument.shown(first), wide / letter);
  }

  /** Lines of a text in a cell so many times as wide as its letters are tall. */
  static int lines(String text, double wide) {
    int lines = 0;
    for (String paragraph : text.split("\n")) {
      lines++;
      double used = 0;
      for (String word : paragraph.split("(?<=[ -])")) {
        double width = width(word.stripTrailing());
        if (used > 0 && used + width > wide) {
          lines++;
          used = 0;
        }
        int more = (int) Math.max(0, Math.ceil(width / wide) - 1); // it is cut in two
        lines += more;
        used += width(word) - more * wide;
      }
    }
    return lines;
  }

  /** The width of a text in letters' heights, of a plain sans-serif typeface, rather more. */
  private static double width(String text) {
    return text.chars().mapToDouble(RowHeights::width).sum();
  }

  private static double width(int letter) {
    if (Character.isSpaceChar(letter) || ".,:;'|!ijlIft()[]/-".indexOf(letter) >= 0) {
      return 0.34;
    }
    if ("mwMW%@—…".indexOf(letter) >= 0) {
      return 0.9;
    }
    if (Character.isIdeographic(letter) || letter >= 0x3000) {
      return 1;
    }
    return Character.isUpperCase(letter) ? 0.73 : 0.57;
  }

  private static Object rows(XSpreadsheet sheet, int first, int last) throws Exception {
    return Uno.as(XColumnRowRange.class, sheet.getCellRangeByPosition(0, first, 0, last)).getRows();
  }
}
