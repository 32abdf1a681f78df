package org.setpower.command;

import static org.setpower.command.Say.say;

import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.AnyConverter;
import com.sun.star.uno.Exception;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts values in the place of the formulas with our functions; all others stay formulas. */
final class Freezer {
  private final Book book;
  private final Mentions mentions;
  private int frozen;

  Freezer(Book book) throws Exception {
    this.book = book;
    mentions = new Mentions(book);
  }

  /** Freezes the whole document; gives how many cells. */
  int freeze(Progress progress) throws Exception {
    var sheets = book.all();
    for (int i = 0; i < sheets.size(); i++) {
      progress.at(100 * i / sheets.size(), say("Values of the sheet {}", Book.name(sheets.get(i))));
      freeze(sheets.get(i));
    }
    mentions.clearOutsideCells();
    for (XSpreadsheet sheet : sheets) {
      check(sheet);
    }
    return frozen;
  }

  private void check(XSpreadsheet sheet) throws Exception {
    for (CellRangeAddress at : formulas(sheet)) {
      for (String[] row : texts(book.range(at))) {
        for (String formula : row) {
          if (mentions.in(formula)) {
            throw new Sorry("A formula on the sheet “{}” stayed: {}", Book.name(sheet), formula);
          }
        }
      }
    }
  }

  private static List<CellRangeAddress> formulas(XSpreadsheet sheet) {
    return Book.ranges(
        Uno.as(XCellRangesQuery.class, sheet).queryContentCells((short) CellFlags.FORMULA));
  }

  private void freeze(XSpreadsheet sheet) throws Exception {
    boolean wasLocked = unlock(sheet);
    List<CellRangeAddress> areas = formulas(sheet);
    List<String[][]> texts = new ArrayList<>();
    for (CellRangeAddress at : areas) {
      texts.add(texts(book.range(at)));
    }
    arrays(sheet, areas, texts);
    for (int i = 0; i < texts.size(); i++) {
      plain(book.range(areas.get(i)), texts.get(i));
    }
    if (wasLocked) {
      Uno.as(XProtectable.class, sheet).protect("");
    }
  }

  /** Takes the protection off a sheet; whether there was one. */
  static boolean unlock(XSpreadsheet sheet) {
    XProtectable lock = Uno.as(XProtectable.class, sheet);
    if (!lock.isProtected()) {
      return false;
    }
    try {
      lock.unprotect("");
    } catch (com.sun.star.lang.IllegalArgumentException e) {
      throw locked(sheet);
    }
    if (lock.isProtected()) {
      throw locked(sheet);
    }
    return true;
  }

  private static Sorry locked(XSpreadsheet sheet) {
    return new Sorry(
        "The sheet “{}” is protected with a password. Take the protection off (Tools - Protect Sheet)"
            + " and ask again; nothing was written.",
        Book.name(sheet));
  }

  private static String[][] texts(XCellRange range) {
    return Uno.as(XCellRangeFormula.class, range).getFormulaArray();
  }

  /** Runs of cells below each other. */
  private void plain(XCellRange range, String[][] formulas) throws Exception {
    Object[][] values = null;
    for (int c = 0; c < formulas[0].length; c++) {
      for (int r = 0; r < formulas.length; r++) {
        int end = r;
        while (end < formulas.length && isPlain(formulas[end][c])) {
          end++;
        }
        if (end > r) {
          values = values == null ? values(range) : values;
          write(range, values, c, r, end - 1);
          r = end;
        }
      }
    }
  }

  private boolean isPlain(String formula) {
    return !formula.startsWith("{") && mentions.in(formula);
  }

  private void write(XCellRange range, Object[][] values, int column, int first, int last)
      throws Exception {
    Object[][] some = new Object[last - first + 1][1];
    for (int r = first; r <= last; r++) {
      some[r - first][0] = values[r][column];
    }
    XCellRange cells = range.getCellRangeByPosition(column, first, column, last);
    put(cells, some);
  }

  private void put(XCellRange cells, Object[][] values) throws Exception {
    Object[][] plain = new Object[values.length][values[0].length];
    for (int r = 0; r < plain.length; r++) {
      for (int c = 0; c < plain[r].length; c++) {
        plain[r][c] = values[r][c] instanceof ErrorFormula ? "" : values[r][c];
      }
    }
    Uno.as(XCellRangeData.class, cells).setDataArray(plain);
    for (int r = 0; r < plain.length; r++) {
      for (int c = 0; c < plain[r].length; c++) {
        if (values[r][c] instanceof ErrorFormula error) {
          cells.getCellByPosition(c, r).setFormula(error.text());
        }
      }
    }
    frozen += plain.length * plain[0].length;
  }

  /** Array formulas, each as a whole. */
  private void arrays(XSpreadsheet sheet, List<CellRangeAddress> areas, List<String[][]> texts)
      throws Exception {
    Map<String, CellRangeAddress> arrays = new LinkedHashMap<>();
    for (int i = 0; i < areas.size(); i++) {
      CellRangeAddress at = areas.get(i);
      XCellRange range = book.range(at);
      String[][] formulas = texts.get(i);
      Set<String> covered = new HashSet<>();
      for (int r = 0; r < formulas.length; r++) {
        for (int c = 0; c < formulas[r].length; c++) {
          String cell = Book.words(at.StartColumn + c, at.StartRow + r);
          if (formulas[r][c].startsWith("{")
              && !covered.contains(cell)
              && mentions.in(formulas[r][c])) {
            CellRangeAddress array = array(sheet, range.getCellRangeByPosition(c, r, c, r));
            arrays.put(Book.words(array.StartColumn, array.StartRow), array);
            cover(array, covered);
          }
        }
      }
    }
    for (CellRangeAddress array : arrays.values()) {
      XCellRange cells = book.range(array);
      Object[][] values = values(cells);
      Uno.as(XSheetOperation.class, cells).clearContents(CellFlags.FORMULA);
      put(cells, values);
    }
  }

  private static CellRangeAddress array(XSpreadsheet sheet, XCellRange cell) {
    XSheetCellCursor cursor = sheet.createCursorByRange(Uno.as(XSheetCellRange.class, cell));
    cursor.collapseToCurrentArray();
    return Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
  }

  private static void cover(CellRangeAddress array, Set<String> covered) {
    for (int r = array.StartRow; r <= array.EndRow; r++) {
      for (int c = array.StartColumn; c <= array.EndColumn; c++) {
        covered.add(Book.words(c, r));
      }
    }
  }

  /** The values; for an error the formula that gives it. */
  private static Object[][] values(XCellRange range) throws Exception {
    Object[][] values = Uno.as(XCellRangeData.class, range).getDataArray();
    for (int r = 0; r < values.length; r++) {
      for (int c = 0; c < values[r].length; c++) {
        if (AnyConverter.isVoid(values[r][c])) {
          XCell cell = range.getCellByPosition(c, r);
          values[r][c] = ErrorFormula.of(cell.getError(), Book.shown(cell));
        }
      }
    }
    return values;
  }
}
