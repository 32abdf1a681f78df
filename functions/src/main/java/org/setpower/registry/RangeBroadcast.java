package org.setpower.registry;

import org.setpower.base.BaseErrorCode;
import org.setpower.base.ErrorKind;
import org.setpower.base.EvaluationException;

/**
 * A function of single values, mapped over ranges as native functions are in array formulas: every
 * range has the result's shape or is a single row, column or cell. A blank cell in the place of an
 * argument that must be there gives a blank; a refused cell holds its {@link EvaluationException}
 * alone. What is the same for all cells is read once; when it is refused, the whole call is. So it
 * is when a cell would need a table, and when the search of several cells had to be given up.
 */
final class RangeBroadcast {
  /** The max. number of cells; more means a whole column passed by mistake. */
  static final int MOST_CELLS = 200_000;

  /** Cells whose search was given up, after which the rest of a range is not tried. */
  private static final int MOST_GIVEN_UP = 3;

  private final FunctionSpec spec;

  /** The ranges that are mapped, by place; {@code null} where an argument is not mapped. */
  private final Object[][][] ranges;

  private final int rows;
  private final int columns;

  private RangeBroadcast(FunctionSpec spec, Object[] raw) {
    this.spec = spec;
    ranges = new Object[spec.parameters().size()][][];
    int most = 1;
    int widest = 1;
    for (int i = 0; i < raw.length; i++) {
      if (raw[i] instanceof Object[][] range && spec.shapeAt(i) == Parameter.Shape.SINGLE) {
        ranges[i] = range;
        most = Math.max(most, range.length);
        widest = Math.max(widest, range[0].length);
      }
    }
    rows = most;
    columns = widest;
  }

  static Object[][] over(FunctionSpec spec, Object[] raw) {
    RangeBroadcast mapping = new RangeBroadcast(spec, raw);
    mapping.checkShapes();
    return mapping.cells(raw);
  }

  private void checkShapes() {
    if ((long) rows * columns > spec.mostCells()) {
      throw new EvaluationException(
          BaseErrorCode.TOO_MANY_CELLS, (double) rows * columns, spec.mostCells());
    }
    for (int i = 0; i < ranges.length; i++) {
      if (ranges[i] != null) {
        int height = ranges[i].length;
        int width = ranges[i][0].length;
        if ((height != rows && height != 1) || (width != columns && width != 1)) {
          throw new EvaluationException(
              BaseErrorCode.SHAPES_DIFFER,
              spec.parameters().get(i).name(),
              size(height, width),
              size(rows, columns));
        }
      }
    }
  }

  private static String size(int rows, int columns) {
    return rows + " × " + columns + " cells";
  }

  private Object[][] cells(Object[] raw) {
    Object[] same = new Object[ranges.length];
    for (int i = 0; i < ranges.length; i++) {
      if (ranges[i] == null) {
        same[i] = spec.read(raw, i);
      }
    }
    Object[][] result = new Object[rows][columns];
    int givenUp = 0;
    for (int r = 0; r < rows; r++) {
      for (int c = 0; c < columns; c++) {
        result[r][c] = cell(same, r, c);
        if (result[r][c] instanceof EvaluationException refusal) {
          givenUp += refusal.kind() == ErrorKind.NO_CONVERGENCE ? 1 : 0;
          if (givenUp == MOST_GIVEN_UP || isTable(refusal)) {
            throw refusal;
          }
        }
      }
    }
    return result;
  }

  private boolean isTable(EvaluationException refusal) {
    return spec.kind() == FunctionSpec.Kind.TABLE && refusal.errorCode() == BaseErrorCode.ONE_VALUE;
  }

  private Object cell(Object[] same, int r, int c) {
    Object[] values = same.clone();
    try {
      for (int i = 0; i < ranges.length; i++) {
        if (ranges[i] != null) {
          Object[] row = ranges[i][ranges[i].length == 1 ? 0 : r];
          Object raw = row[row.length == 1 ? 0 : c];
          if (isBlank(raw) && !spec.parameters().get(i).isOptional()) {
            return "";
          }
          values[i] = spec.parameters().get(i).read(raw);
        }
      }
      Object result = spec.apply(values);
      return result instanceof Object[][] table ? single(table) : result;
    } catch (EvaluationException refusal) {
      return refusal;
    }
  }

  private static boolean isBlank(Object raw) {
    return raw == null || (raw instanceof String s && s.isEmpty());
  }

  private Object single(Object[][] table) {
    if (table.length == 1 && table[0].length == 1) {
      return table[0][0];
    }
    return new EvaluationException(
        BaseErrorCode.ONE_VALUE, spec.name(), table.length * table[0].length);
  }
}
