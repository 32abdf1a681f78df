package org.setpower.addin;

import com.sun.star.uno.Any;
import com.sun.star.uno.TypeClass;
import java.util.Arrays;
import org.setpower.base.Refusal;

/** Values of cells as the catalogue knows them (null, Double, String, Object[][]) and back. */
final class Values {
  private Values() {}

  static Object[] fromCell(Object[] arguments) {
    Object[] values = new Object[arguments.length];
    for (int i = 0; i < arguments.length; i++) {
      values[i] = fromCell(arguments[i]);
    }
    return values;
  }

  private static Object fromCell(Object argument) {
    if (argument instanceof Double || argument instanceof String || argument == null) {
      return argument;
    }
    if (argument instanceof Any any) {
      return any.getType().getTypeClass() == TypeClass.VOID ? null : fromCell(any.getObject());
    }
    if (argument instanceof Number number) {
      return number.doubleValue();
    }
    if (argument instanceof Object[][] range) {
      Object[][] cells = new Object[range.length][];
      for (int r = 0; r < range.length; r++) {
        cells[r] = row(range[r]);
      }
      return cells;
    }
    return argument.toString();
  }

  /** Cells of a range; a blank is an empty text. */
  private static Object[] row(Object[] cells) {
    Object[] row = fromCell(cells);
    for (int c = 0; c < row.length; c++) {
      if (row[c] == null) {
        row[c] = "";
      }
    }
    return row;
  }

  /**
   * An answer as a cell takes it. A matrix of texts only becomes a {@code String[][]}: in a mixed
   * one Calc finds no text.
   */
  static Object toCell(Object answer) {
    if (!(answer instanceof Object[][] table)) {
      return answer;
    }
    Object[][] cells = isText(table) ? new String[table.length][] : new Object[table.length][];
    for (int r = 0; r < table.length; r++) {
      cells[r] =
          cells instanceof String[][]
              ? Arrays.copyOf(table[r], table[r].length, String[].class)
              : elements(table[r]);
    }
    return cells;
  }

  private static boolean isText(Object[][] table) {
    for (Object[] row : table) {
      for (Object cell : row) {
        if (!(cell instanceof String)) {
          return false;
        }
      }
    }
    return true;
  }

  private static Object[] elements(Object[] row) {
    Object[] cells = new Object[row.length];
    for (int c = 0; c < row.length; c++) {
      cells[c] = row[c] instanceof Refusal refusal ? FaultMapper.inMatrix(refusal) : row[c];
    }
    return cells;
  }
}
