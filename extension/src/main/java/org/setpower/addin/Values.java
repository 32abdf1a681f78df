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
      return Arrays.stream(range).map(Values::row).toArray(Object[][]::new);
    }
    return argument.toString();
  }

  /** Cells of a range; a blank is an empty text. */
  private static Object[] row(Object[] cells) {
    Object[] row = fromCell(cells);
    Arrays.setAll(row, c -> row[c] == null ? "" : row[c]);
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
    if (Arrays.stream(table).flatMap(Arrays::stream).allMatch(String.class::isInstance)) {
      return Arrays.stream(table)
          .map(row -> Arrays.copyOf(row, row.length, String[].class))
          .toArray(String[][]::new);
    }
    return Arrays.stream(table)
        .map(row -> Arrays.stream(row).map(Values::element).toArray())
        .toArray(Object[][]::new);
  }

  private static Object element(Object cell) {
    return cell instanceof Refusal refusal ? FaultMapper.inMatrix(refusal) : cell;
  }
}
