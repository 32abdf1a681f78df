package org.setpower.templates.spec;

import java.util.List;

/**
 * A flat chart of bars or lines over the rows of a table.
 *
 * @param title the heading above it
 * @param rows its height in rows of a sheet
 * @param lines whether the values are joined by lines instead of standing as bars
 * @param axis the title of the value axis, with its unit
 * @param categories the column with the names; it stands left of the series, in the same table
 * @param series the columns with the values, at most five
 * @param colours of the series, in order
 */
public record BarChart(
    String title,
    int rows,
    boolean lines,
    String axis,
    ColumnSpec categories,
    List<ColumnSpec> series,
    List<Integer> colours)
    implements Block {
  /** Bars, one group per row of the table. */
  public static BarChart bars(
      String title, int rows, String axis, ColumnSpec categories, ColumnSpec... series) {
    return new BarChart(
        title, rows, false, axis, categories, List.of(series), CellStyle.Ink.SERIES);
  }

  /** Lines over the rows of the table. */
  public static BarChart lines(
      String title, int rows, String axis, ColumnSpec categories, ColumnSpec... series) {
    return new BarChart(title, rows, true, axis, categories, List.of(series), CellStyle.Ink.LINES);
  }

  /** The same chart in three shades, from the first leg to the third. */
  public BarChart ofLegs() {
    return new BarChart(title, rows, lines, axis, categories, series, CellStyle.Ink.LEGS);
  }

  @Override
  public int height() {
    return rows;
  }
}
