package org.setpower.templates.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.common.ResultTable;

/** Rows of a table of results; the plan decides which and in which order. */
public final class PlanList implements PlanPart {
  private final ResultTable<?> results;
  private final String title;
  private final int rows;
  private final List<String> keys;
  private final Map<String, Integer> widths = new HashMap<>();

  private PlanList(ResultTable<?> results, String title, int rows, List<String> keys) {
    this.results = results;
    this.title = title;
    this.rows = rows;
    this.keys = keys;
  }

  static PlanList of(ResultTable<?> results, String title, int rows, String... keys) {
    return new PlanList(results, title, rows, List.of(keys));
  }

  /** The width of a column in millimetres. */
  public PlanList width(String key, int millimetres) {
    widths.put(key, millimetres);
    return this;
  }

  public ResultTable<?> results() {
    return results;
  }

  public int rows() {
    return rows;
  }

  /** Whether the plan may have more rows than it shows. */
  public boolean isPartial() {
    return rows < results.rows();
  }

  /** Paths of the columns. */
  public List<String> columns() {
    return keys.stream().map(k -> results.key() + "." + k).toList();
  }

  /** The width of a column, or what is usual. */
  public int widthOf(String key, int usual) {
    return widths.getOrDefault(key, usual);
  }

  @Override
  public String title() {
    return title;
  }
}
