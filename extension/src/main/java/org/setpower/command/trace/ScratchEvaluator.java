package org.setpower.command.trace;

import com.sun.star.document.EmptyUndoStackException;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XStorable;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.FormulaToken;
import com.sun.star.sheet.XArrayFormulaTokens;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XFormulaTokens;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XProtectable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.CellValues;
import org.setpower.command.document.FormulaOpcodes;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/**
 * Calculates parts of formulas in the last cells of a sheet without a trace: the undo list and the
 * modified state of the document stay as they were.
 */
final class ScratchEvaluator implements AutoCloseable {
  private static final int MOST_CELLS = 20_000;

  private final XSpreadsheet sheet;
  private final FormulaOpcodes opcodes;
  private final XModifiable document;
  private final XUndoManager undo;
  private final boolean wasModified;
  private final boolean hidden;
  private final boolean unlocked;
  private final int lastRow;
  private final int lastColumn;

  ScratchEvaluator(CalcDocument book, FormulaOpcodes opcodes) throws Exception {
    this.opcodes = opcodes;
    document = Uno.as(XModifiable.class, book.document());
    wasModified = document.isModified();
    undo = Uno.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
    if (Uno.as(XStorable.class, book.document()).isReadonly()) {
      throw new UserMessageException(
          "the document is open for reading only, so that it cannot be worked out here");
    }
    XSpreadsheet open = open(book);
    unlocked = open == null;
    if (unlocked && !book.isFromTemplate()) {
      throw new UserMessageException(
          "every sheet is protected, so that it cannot be worked out here");
    }
    hidden = hide(); // first, as taking the protection off would be a step of its own
    try {
      sheet = unlocked ? unlock(book) : open;
    } catch (Exception | RuntimeException nothingUnlocked) {
      leave();
      throw nothingUnlocked;
    }
    CellRangeAddress all = Uno.as(XCellRangeAddressable.class, sheet).getRangeAddress();
    lastRow = all.EndRow;
    lastColumn = all.EndColumn;
  }

  /** A sheet that is not protected; null if there is none. */
  private static XSpreadsheet open(CalcDocument book) throws Exception {
    for (XSpreadsheet sheet : book.all()) {
      if (!Uno.as(XProtectable.class, sheet).isProtected()) {
        return sheet;
      }
    }
    return null;
  }

  /**
   * The first sheet without a password, unlocked for a moment. Only in documents made from our
   * templates, whose sheets are protected in the usual way: what else a user allowed on a protected
   * sheet cannot be read, so it could not be put back.
   */
  private static XSpreadsheet unlock(CalcDocument book) throws Exception {
    for (XSpreadsheet sheet : book.all()) {
      XProtectable lock = Uno.as(XProtectable.class, sheet);
      try {
        lock.unprotect("");
      } catch (com.sun.star.lang.IllegalArgumentException hasPassword) {
        continue;
      }
      if (!lock.isProtected()) {
        return sheet;
      }
    }
    throw new UserMessageException("every sheet is protected with a password");
  }

  private boolean hide() {
    try {
      undo.enterHiddenUndoContext();
      return true;
    } catch (EmptyUndoStackException nothingToUndoYet) {
      return false;
    }
  }

  /**
   * The value of an expression: Double, String, or Object[][]; a {@link UserMessageException} if it
   * has none.
   */
  Object value(FormulaToken... expression) throws Exception {
    int rows = size(opcodes.rows, expression);
    int columns = size(opcodes.columns, expression);
    if ((long) rows * columns > MOST_CELLS) {
      throw new UserMessageException("it gives {} × {} cells, too many to show", rows, columns);
    }
    XCellRange area =
        sheet.getCellRangeByPosition(
            lastColumn - columns + 1, lastRow - rows + 1, lastColumn, lastRow);
    XCell first = area.getCellByPosition(0, 0);
    if (first.getType() != CellContentType.EMPTY) {
      throw new UserMessageException("the last cells of this sheet are in use");
    }
    try {
      if (rows == 1 && columns == 1) {
        Uno.as(XFormulaTokens.class, first).setTokens(expression);
        return CellValues.of(first);
      }
      Uno.as(XArrayFormulaTokens.class, area).setArrayTokens(expression);
      return CellValues.of(area);
    } finally {
      Uno.as(XSheetOperation.class, area).clearContents(CellFlags.FORMULA);
    }
  }

  private int size(FormulaToken word, FormulaToken... expression) throws Exception {
    List<FormulaToken> asked = new ArrayList<>();
    asked.add(word);
    asked.add(opcodes.open);
    asked.addAll(Arrays.asList(expression));
    asked.add(opcodes.close);
    XCellRange last = sheet.getCellRangeByPosition(lastColumn, lastRow, lastColumn, lastRow);
    XCell cell = last.getCellByPosition(0, 0);
    if (cell.getType() != CellContentType.EMPTY) {
      return 1;
    }
    try {
      Uno.as(XArrayFormulaTokens.class, last).setArrayTokens(asked.toArray(FormulaToken[]::new));
      return cell.getError() == 0 ? Math.max(1, (int) cell.getValue()) : 1;
    } finally {
      Uno.as(XSheetOperation.class, last).clearContents(CellFlags.FORMULA);
    }
  }

  /** Each step is done whatever the one before did. */
  @Override
  public void close() throws Exception {
    try {
      if (unlocked) {
        Uno.as(XProtectable.class, sheet).protect("");
      }
    } finally {
      leave();
    }
  }

  private void leave() throws Exception {
    try {
      if (hidden) {
        undo.leaveUndoContext();
      } else {
        undo.clear();
      }
    } finally {
      if (document.isModified() != wasModified) {
        document.setModified(wasModified);
      }
    }
  }
}
