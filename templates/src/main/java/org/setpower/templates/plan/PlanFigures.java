package org.setpower.templates.plan;

import java.util.Arrays;
import java.util.List;
import org.setpower.plan.common.ResultTable;

/**
 * Figures of one row of results.
 *
 * @param title the heading above them
 * @param across how many large ones stand beside each other; 0 for lines one below another
 * @param columns paths
 * @param row the row, from 1
 */
public record PlanFigures(String title, int across, List<String> columns, int row)
    implements PlanPart {
  /** Rows that a large figure takes: label, value, room. */
  public static final int TALL = 3;

  static PlanFigures of(String title, int across, ResultTable<?> results, String... keys) {
    return new PlanFigures(
        title, across, Arrays.stream(keys).map(k -> results.key() + "." + k).toList(), 1);
  }

  /** The same of another row. */
  public PlanFigures ofRow(int number) {
    return new PlanFigures(title, across, columns, number);
  }

  /** How many rows they take. */
  public int height() {
    return across == 0 ? columns.size() : (columns.size() + across - 1) / across * TALL;
  }
}
