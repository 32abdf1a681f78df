package org.setpower.sheet;

import org.setpower.base.BaseReason;
import org.setpower.base.Refusal;

/**
 * A function of single values, mapped over ranges as native functions are in array formulas: every
 * range has the result's shape or is a single row, column or cell. A blank cell in the place of an
 * argument that must be there gives a blank; a refused cell holds its {@link Refusal} alone.
 */
final class Mapping {
  /** More cells than anybody fills: a whole column passed by mistake. */
  static final int MOST_CELLS = 200_000;

  private Mapping() {}

  static Object[][] over(FunctionSpec spec, Object[] raw) {
    int rows = 1;
    int columns = 1;
    for (int i = 0; i < raw.length; i++) {
      if (isMapped(spec, raw, i)) {
        Object[][] range = (Object[][]) raw[i];
        rows = Math.max(rows, range.length);
        columns = Math.max(columns, range.length == 0 ? 0 : range[0].length);
      }
    }
    if ((long) rows * columns > MOST_CELLS) {
      throw new Refusal(BaseReason.TOO_MANY_CELLS, (double) rows * columns, MOST_CELLS);
    }
    for (int i = 0; i < raw.length; i++) {
      if (isMapped(spec, raw, i)) {
        checkShape(spec.parameters().get(i), (Object[][]) raw[i], rows, columns);
      }
    }
    Object[][] result = new Object[rows][columns];
    Object[] cell = new Object[raw.length];
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        result[r][c] = at(spec, raw, cell, r, c);
      }
    }
    return result;
  }

  private static boolean isMapped(FunctionSpec spec, Object[] raw, int i) {
    return raw[i] instanceof Object[][] && spec.shapeAt(i) == Parameter.Shape.SINGLE;
  }

  private static void checkShape(Parameter<?> parameter, Object[][] range, int rows, int columns) {
    int height = range.length;
    int width = height == 0 ? 0 : range[0].length;
    if ((height != rows && height != 1) || (width != columns && width != 1)) {
      throw new Refusal(
          BaseReason.SHAPES_DIFFER, parameter.name(), size(height, width), size(rows, columns));
    }
  }

  private static String size(int rows, int columns) {
    return rows + " × " + columns + " cells";
  }

  private static Object at(FunctionSpec spec, Object[] raw, Object[] cell, int r, int c) {
    for (int i = 0; i < raw.length; i++) {
      cell[i] = raw[i];
      if (isMapped(spec, raw, i)) {
        Object[][] range = (Object[][]) raw[i];
        Object[] row = range[range.length == 1 ? 0 : r];
        cell[i] = row[row.length == 1 ? 0 : c];
        boolean blank = cell[i] == null || (cell[i] instanceof String s && s.isEmpty());
        if (blank && !spec.parameters().get(i).isOptional()) {
          return "";
        }
      }
    }
    try {
      Object result = spec.callOnce(cell.clone());
      return result instanceof Object[][] table ? single(spec, table) : result;
    } catch (Refusal refusal) {
      return refusal;
    }
  }

  private static Object single(FunctionSpec spec, Object[][] table) {
    if (table.length == 1 && table[0].length == 1) {
      return table[0][0];
    }
    return new Refusal(BaseReason.ONE_VALUE, spec.name(), table.length * table[0].length);
  }
}
