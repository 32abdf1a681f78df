package org.setpower.plan.common;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.plan.finding.Finding;

/**
 * A row of a table to fill.
 *
 * @param number 1 for the first row below the row of keys
 * @param value the cells read; null for a blank row. A cell that cannot be read is null in it
 * @param findings what is wrong with its cells
 * @param unreadable keys of the columns whose cell is there and cannot be read
 * @param cells what is typed, by key, without the blank cells
 */
public record InputRow<T>(
    int number,
    T value,
    List<Finding> findings,
    Set<String> unreadable,
    Map<String, Object> cells) {
  /** Whether nothing is typed in the row. */
  public boolean isBlank() {
    return value == null;
  }

  /** Whether some cell of the row is there and cannot be read. */
  public boolean isUnreadable() {
    return !unreadable.isEmpty();
  }
}
