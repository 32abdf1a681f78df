package org.setpower.command.print;

import com.sun.star.container.XNameAccess;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntPredicate;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.FallibleAction;
import org.setpower.templates.layout.PlanNames;
import org.setpower.uno.Uno;

/**
 * Blank rows of tables that stand above something else, hidden while a document is printed, so that
 * what follows is not pushed to another page. They are shown again at once: on the screen a row
 * that fills later must not be missing. Neither is a step of undo.
 */
final class BlankRows {
  private final CalcDocument book;
  private final boolean hides;
  private final List<Object> hidden = new ArrayList<>();

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
   * Hides those of the tables of a sheet.
   *
   * @param last the last row that shows something
   * @param isBlank whether a row shows nothing
   * @return rows that are hidden now
   */
  BitSet hide(XSpreadsheet sheet, List<CellRangeAddress> tables, int last, IntPredicate isBlank)
      throws Exception {
    BitSet rows = new BitSet();
    if (!hides) {
      return rows;
    }
    for (CellRangeAddress table : tables) {
      for (int row = table.StartRow + 1; row <= Math.min(table.EndRow, last); row++) {
        rows.set(row, isBlank.test(row) && isVisible(sheet, row));
      }
    }
    unrecorded(
        () -> {
          for (int first = rows.nextSetBit(0); first >= 0; ) {
            int end = rows.nextClearBit(first);
            Object run = rows(sheet, first, end - 1);
            Uno.set(run, "IsVisible", false);
            hidden.add(run);
            first = rows.nextSetBit(end);
          }
        });
    return rows;
  }

  XComponent document() {
    return book.document();
  }

  /** Shows them again. */
  void show() throws Exception {
    unrecorded(
        () -> {
          for (Object run : hidden) {
            Uno.set(run, "IsVisible", true);
          }
        });
    hidden.clear();
  }

  private void unrecorded(FallibleAction change) throws Exception {
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    undo.lock();
    try {
      change.run();
    } finally {
      undo.unlock();
    }
  }

  private static boolean isVisible(XSpreadsheet sheet, int row) throws Exception {
    return (boolean) Uno.get(rows(sheet, row, row), "IsVisible");
  }

  private static Object rows(XSpreadsheet sheet, int first, int last) throws Exception {
    return Uno.as(XColumnRowRange.class, sheet.getCellRangeByPosition(0, first, 0, last)).getRows();
  }
}
