package org.setpower.command.document;

import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.AnyConverter;
import com.sun.star.uno.Exception;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/** Values of cells as functions get them. */
public final class CellValues {
  private CellValues() {}

  /** Double or String; a blank cell is 0; a {@link UserMessageException} for a cell in error. */
  public static Object of(XCell cell) throws Exception {
    if (cell.getError() != 0) {
      throw new UserMessageException("it is in error itself ({})", CalcDocument.shown(cell));
    }
    return isText(cell) ? CalcDocument.shown(cell) : (Object) cell.getValue();
  }

  /** The values of a range; a {@link UserMessageException} if one is in error. */
  public static Object[][] of(XCellRange range) throws Exception {
    Object[][] data = Uno.as(XCellRangeData.class, range).getDataArray();
    CellRangeAddress at = Uno.as(XCellRangeAddressable.class, range).getRangeAddress();
    for (int r = 0; r < data.length; r++) {
      for (int c = 0; c < data[r].length; c++) {
        if (AnyConverter.isVoid(data[r][c])) {
          throw new UserMessageException(
              "{} in it is in error", CalcDocument.address(at.StartColumn + c, at.StartRow + r));
        }
      }
    }
    return data;
  }

  public static boolean isText(XCell cell) throws Exception {
    if (cell.getType() == CellContentType.FORMULA) {
      return ((Integer) Uno.get(cell, "FormulaResultType2")) == FormulaResult.STRING;
    }
    return cell.getType() == CellContentType.TEXT;
  }
}
