package org.setpower.command.trace;

import static org.setpower.command.message.CommandMessages.say;

/**
 * What a cell passes to a function.
 *
 * @param value null (left out), Double, String, or Object[][]
 * @param where the cells it comes from, or its origin in words
 * @param trouble why there is no value; empty when there is one
 */
record Argument(Object value, String where, String trouble) {
  static Argument of(Object value, String where) {
    return new Argument(value, where, "");
  }

  static Argument troubled(String where, String trouble) {
    return new Argument(null, where, trouble);
  }

  boolean isTroubled() {
    return !trouble.isEmpty();
  }

  /** The element of a range at a place; a range of one row or column repeats. */
  Argument at(int row, int column) {
    if (!(value instanceof Object[][] range) || range.length == 0) {
      return this;
    }
    int r = range.length == 1 ? 0 : row;
    int c = range[0].length == 1 ? 0 : column;
    if (r >= range.length || c >= range[0].length) {
      return troubled(where, say("the range is smaller than the block of results"));
    }
    return of(range[r][c], say("row {}, column {} of {}", r + 1, c + 1, where));
  }
}
