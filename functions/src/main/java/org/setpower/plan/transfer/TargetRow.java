package org.setpower.plan.transfer;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * A filled row of the table into which rows are brought.
 *
 * @param number of the row in its table, from 1
 * @param cells by column key: String, Double, LocalDate; a blank cell is not in it
 * @param calculated columns whose cell holds a formula: they are the user's, whatever they show
 */
public record TargetRow(int number, Map<String, Object> cells, Set<String> calculated) {
  public TargetRow {
    cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    calculated = Set.copyOf(calculated);
  }

  /** A row of typed cells. */
  public TargetRow(int number, Map<String, Object> cells) {
    this(number, cells, Set.of());
  }
}
