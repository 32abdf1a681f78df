package org.setpower.addin;

import com.sun.star.uno.Any;
import com.sun.star.uno.Type;
import com.sun.star.uno.TypeClass;
import java.util.Arrays;
import org.setpower.base.EvaluationException;

/** Values of cells as the catalogue knows them (null, Double, String, Object[][]) and back. */
final class ValueConverter {
  private static final Any BLANK = new Any(Type.STRING, "");

  private ValueConverter() {}

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
   * one Calc finds no text. One of numbers only becomes a {@code double[][]}, which crosses to the
   * office fastest.
   */
  static Object toCell(Object answer) {
    if (!(answer instanceof Object[][] table)) {
      return answer;
    }
    if (isAll(String.class, table)) {
      return texts(table);
    }
    Object[][] elements = elements(table);
    return isAll(Double.class, elements) ? numbers(elements) : boxed(elements);
  }

  /** With their types, which the office else finds out for each element by its class. */
  private static Object[][] boxed(Object[][] elements) {
    for (Object[] row : elements) {
      for (int c = 0; c < row.length; c++) {
        if (row[c] instanceof String text) {
          row[c] = text.isEmpty() ? BLANK : new Any(Type.STRING, text);
        } else if (row[c] instanceof Double) {
          row[c] = new Any(Type.DOUBLE, row[c]);
        }
      }
    }
    return elements;
  }

  private static boolean isAll(Class<?> type, Object[][] table) {
    for (Object[] row : table) {
      for (Object cell : row) {
        if (!type.isInstance(cell)) {
          return false;
        }
      }
    }
    return true;
  }

  private static String[][] texts(Object[][] table) {
    String[][] texts = new String[table.length][];
    for (int r = 0; r < table.length; r++) {
      texts[r] = Arrays.copyOf(table[r], table[r].length, String[].class);
    }
    return texts;
  }

  private static double[][] numbers(Object[][] table) {
    double[][] numbers = new double[table.length][];
    for (int r = 0; r < table.length; r++) {
      numbers[r] = new double[table[r].length];
      for (int c = 0; c < numbers[r].length; c++) {
        numbers[r][c] = (Double) table[r][c];
      }
    }
    return numbers;
  }

  private static Object[][] elements(Object[][] table) {
    Object[][] elements = new Object[table.length][];
    for (int r = 0; r < table.length; r++) {
      elements[r] = new Object[table[r].length];
      for (int c = 0; c < elements[r].length; c++) {
        Object cell = table[r][c];
        elements[r][c] =
            cell instanceof EvaluationException refusal ? ErrorMapper.inMatrix(refusal) : cell;
      }
    }
    return elements;
  }
}
