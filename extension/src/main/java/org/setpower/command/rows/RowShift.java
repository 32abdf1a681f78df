package org.setpower.command.rows;

import java.util.OptionalDouble;

/**
 * What becomes of the numbers of rows where rows are inserted or deleted.
 *
 * @param from first row that is deleted or that moves, from 1
 * @param more rows inserted before it; negative: deleted from it on
 */
record RowShift(int from, int more) {
  /** The number of a row afterwards; empty where the row is deleted. */
  OptionalDouble of(double number) {
    if (number < from) {
      return OptionalDouble.of(number);
    }
    return more < 0 && number < from - more
        ? OptionalDouble.empty()
        : OptionalDouble.of(number + more);
  }
}
