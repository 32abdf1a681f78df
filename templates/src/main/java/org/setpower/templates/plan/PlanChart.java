package org.setpower.templates.plan;

import java.util.List;

/**
 * Lines over the rows of a list of the same workbook, all of whose rows are always filled.
 *
 * @param title the heading above it
 * @param rows its height in rows of the sheet
 * @param axis the title of the value axis, with its unit
 * @param list what it shows; it is drawn after the chart
 * @param names key of the column with the names, the first of the list
 * @param series keys of the columns with the values, at most five
 */
public record PlanChart(
    String title, int rows, String axis, PlanList list, String names, List<String> series)
    implements PlanPart {
  /** Lines, one for each of these columns of a list. */
  public static PlanChart lines(
      String title, int rows, String axis, PlanList list, String names, String... series) {
    return new PlanChart(title, rows, axis, list, names, List.of(series));
  }
}
