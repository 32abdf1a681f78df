package org.setpower.addin;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.setpower.registry.groups.FunctionCases;

/** The formula of a call, as typed into a cell. */
final class CellFormula {
  private CellFormula() {}

  static String of(FunctionCases.Case c) {
    return Arrays.stream(c.arguments())
        .map(CellFormula::argument)
        .collect(Collectors.joining(";", "=" + c.function() + "(", ")"));
  }

  private static String argument(Object value) {
    return value instanceof Object[][] range ? inline(range) : element(value);
  }

  /** In an array, semicolons part columns and bars part rows. */
  static String inline(Object[][] range) {
    return Arrays.stream(range)
        .map(row -> Arrays.stream(row).map(CellFormula::element).collect(Collectors.joining(";")))
        .collect(Collectors.joining("|", "{", "}"));
  }

  /** A number, a text or, for null, nothing. */
  static String element(Object value) {
    if (value == null) {
      return "";
    }
    return value instanceof String text
        ? '"' + text.replace("\"", "\"\"").replace("\u0000", "") + '"'
        : value.toString();
  }
}
