package org.setpower.command.print;

import com.sun.star.awt.Size;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.UndoStep;
import org.setpower.templates.layout.PlanNames;
import org.setpower.uno.Uno;

/**
 * Blank rows between others, as of tables that stand above something else, hidden while a document
 * is printed, so that what follows is not pushed to another page. They are shown again at once: on
 * the screen a row that fills later must not be missing. Both belong to the step of undo that sets
 * print ranges.
 */
final class BlankRows {
  private static final int LINE = 480; // of 10 pt in 1/100 mm
  private static final int ROOM = 120;
  private static final double LETTERS = 0.0058; // of 10 pt a 1/100 mm, on the safe side
  private static final String STROKE = "____";

  private final CalcDocument book;
  private final boolean hides;
  private final List<Object> hidden = new ArrayList<>();
  private final Map<Object, Object> tightened = new LinkedHashMap<>();

  private BlankRows(CalcDocument book, boolean hides) {
    this.book = book;
    this.hides = hides;
  }

  /** Those of a document; of one whose papers do not ask for it none. */
  static BlankRows of(CalcDocument book) throws Exception {
    XNameAccess names = Uno.as(XNameAccess.class, Uno.get(book.document(), "NamedRanges"));
    return new BlankRows(book, names.hasByName(PlanNames.CLOSED_UP));
  }

  /** None: what is fitted stays as it is. */
  static BlankRows none(CalcDocument book) {
    return new BlankRows(book, false);
  }

  /**
   * Hides those of a sheet that stand between rows that show something, but for one each.
   *
   * @param shown rows that show something
   * @return rows that are hidden now
   */
  BitSet hide(XSpreadsheet sheet, BitSet shown) throws Exception {
    BitSet rows = new BitSet();
    if (!hides) {
      return rows;
    }
    for (int row = shown.nextSetBit(0); row >= 0; ) {
      int end = shown.nextClearBit(row);
      row = shown.nextSetBit(end);
      for (int blank = end + 1; blank < row; blank++) {
        rows.set(blank, isVisible(sheet, blank));
      }
    }
    for (int first = rows.nextSetBit(0); first >= 0; ) {
      int end = rows.nextClearBit(first);
      Object run = rows(sheet, first, end - 1);
      Uno.set(run, "IsVisible", false);
      hidden.add(run);
      first = rows.nextSetBit(end);
    }
    return rows;
  }

  /**
   * Lines of a letter across the page have room for two, and so have rows of a list on a page:
   * those that need one get no more.
   */
  void tighten(XSpreadsheet sheet, CellRangeAddress all, BitSet shown) throws Exception {
    int wide = hides ? ((Size) Uno.get(cells(sheet, all, all.StartRow), "Size")).Width : 0;
    for (int row = shown.nextSetBit(0); hides && row >= 0; row = shown.nextSetBit(row + 1)) {
      XCellRange first = sheet.getCellRangeByPosition(0, row, 0, row);
      if (PlanNames.LETTER_LINE.equals(Uno.get(first, "CellStyle"))
          && isAcross(sheet, first, all.EndColumn)) {
        String text = CalcDocument.shown(first.getCellByPosition(0, 0));
        int needed = ROOM + LINE * (1 + (int) (text.length() / (wide * LETTERS)));
        if (!text.contains(STROKE)) {
          tighten(sheet, row, needed);
        }
      } else {
        tighten(sheet, row, RowHeights.needed(sheet, row, all.EndColumn));
      }
    }
  }

  private void tighten(XSpreadsheet sheet, int row, int needed) throws Exception {
    Object line = rows(sheet, row, row);
    Object height = Uno.get(line, "Height");
    if (needed > 0 && needed < (int) height) {
      Uno.set(line, "Height", needed);
      tightened.put(line, height);
    }
  }

  private static boolean isAcross(XSpreadsheet sheet, XCellRange first, int last) throws Exception {
    XSheetCellCursor area = sheet.createCursorByRange(Uno.as(XSheetCellRange.class, first));
    area.collapseToMergedArea();
    return Uno.as(XCellRangeAddressable.class, area).getRangeAddress().EndColumn >= last;
  }

  private static XCellRange cells(XSpreadsheet sheet, CellRangeAddress all, int row)
      throws Exception {
    return sheet.getCellRangeByPosition(all.StartColumn, row, all.EndColumn, row);
  }

  XComponent document() {
    return book.document();
  }

  /** Shows them again. */
  void show() throws Exception {
    if (hidden.isEmpty() && tightened.isEmpty()) {
      return;
    }
    UndoStep.asPartOf(
        book,
        FitPrintCommand.TITLE,
        () -> {
          for (Object run : hidden) {
            Uno.set(run, "IsVisible", true);
          }
          for (Map.Entry<Object, Object> line : tightened.entrySet()) {
            Uno.set(line.getKey(), "Height", line.getValue());
          }
        });
    hidden.clear();
    tightened.clear();
  }

  private static boolean isVisible(XSpreadsheet sheet, int row) throws Exception {
    return (boolean) Uno.get(rows(sheet, row, row), "IsVisible");
  }

  private static Object rows(XSpreadsheet sheet, int first, int last) throws Exception {
    return Uno.as(XColumnRowRange.class, sheet.getCellRangeByPosition(0, first, 0, last)).getRows();
  }
}
