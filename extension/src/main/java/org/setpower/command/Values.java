package org.setpower.command;

import com.sun.star.sheet.FormulaResult;
import com.sun.star.table.CellContentType;
import com.sun.star.table.XCell;
import com.sun.star.uno.Exception;

/** Values of cells as functions get them. */
final class Values {
  private Values() {}

  /** Double or String; a blank cell is 0; a {@link Sorry} for a cell in error. */
  static Object of(XCell cell) throws Exception {
    if (cell.getError() != 0) {
      throw new Sorry("it is in error itself (" + Book.shown(cell) + ")");
    }
    return isText(cell) ? Book.shown(cell) : (Object) cell.getValue();
  }

  static boolean isText(XCell cell) throws Exception {
    if (cell.getType() == CellContentType.FORMULA) {
      return ((Integer) Uno.get(cell, "FormulaResultType2")) == FormulaResult.STRING;
    }
    return cell.getType() == CellContentType.TEXT;
  }
}
