package org.setpower.registry.groups;

import java.util.Arrays;

/** Calls of functions by name, as cells make them. */
public final class Calls {
  private Calls() {}

  /** The function's answer. Whole numbers may be given as such; null is an argument left out. */
  public static Object call(String function, Object... arguments) {
    return FunctionRegistry.find(function)
        .orElseThrow(() -> new AssertionError("no " + function))
        .call(Arrays.stream(arguments).map(Calls::asInCell).toArray());
  }

  /** An answer that is a number. */
  public static double number(String function, Object... arguments) {
    return (Double) call(function, arguments);
  }

  /** An answer that is a range. */
  static Object[][] table(String function, Object... arguments) {
    return (Object[][]) call(function, arguments);
  }

  /** A range of one row. */
  static Object[][] row(Object... cells) {
    return new Object[][] {cells};
  }

  /** A range of one column. */
  static Object[][] column(Object... cells) {
    return Arrays.stream(cells).map(cell -> new Object[] {cell}).toArray(Object[][]::new);
  }

  private static Object asInCell(Object value) {
    if (value instanceof Object[][] range) {
      return Arrays.stream(range)
          .map(row -> Arrays.stream(row).map(Calls::asInCell).toArray())
          .toArray(Object[][]::new);
    }
    return value instanceof Integer whole ? whole.doubleValue() : value;
  }
}
