package org.setpower.plan.common;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.setpower.plan.finding.Finding;

/**
 * What a range holds.
 *
 * @param table its declaration
 * @param rows every row of the range between the row of keys and the end row, blank ones too
 * @param fault why the range as a whole cannot be trusted: then every row of the plan stops
 */
public record InputRows<T extends Record>(
    InputTable<T> table, List<InputRow<T>> rows, Optional<Finding> fault) {
  /** The rows in which something is typed. */
  public Stream<InputRow<T>> filled() {
    return rows.stream().filter(r -> !r.isBlank());
  }
}
