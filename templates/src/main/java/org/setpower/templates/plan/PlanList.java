package org.setpower.templates.plan;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.common.ResultTable;
import org.setpower.templates.spec.CellStyle;

/** Rows of a table of results; the plan decides which and in which order. */
public final class PlanList implements PlanPart {
  private final ResultTable<?> results;
  private final String title;
  private final int rows;
  private final List<String> keys;
  private final Map<String, Integer> widths = new HashMap<>();
  private final Map<String, String> marks = new LinkedHashMap<>();
  private final Map<String, CellStyle> looks = new LinkedHashMap<>();
  private String kind = "";
  private boolean wide;
  private int tall = 1;

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

  /** Its only column takes the width of the tab and has no heading. */
  public PlanList wide() {
    wide = true;
    return this;
  }

  /**
   * The heading of a column, which is repeated on each page, shows a result as well.
   *
   * @param path of a table with one row
   */
  public PlanList marked(String key, String path) {
    marks.put(results.key() + "." + key, path);
    return this;
  }

  /** Results in headings, by the path of the column. */
  public Map<String, String> marks() {
    return Collections.unmodifiableMap(marks);
  }

  /** Rows in which a result that is not shown has this word look so. */
  public PlanList look(String key, String word, CellStyle style) {
    kind = results.key() + "." + key;
    looks.put(word, style);
    return this;
  }

  /** Its blank rows have room for so many lines: rows do not grow when figures change. */
  public PlanList tall(int lines) {
    tall = lines;
    return this;
  }

  /** Lines that a blank row has room for. */
  public int tall() {
    return tall;
  }

  public boolean isWide() {
    return wide;
  }

  /** The result that decides how a row looks; empty for none. */
  public String kind() {
    return kind;
  }

  /** How rows look, by the word of that result. */
  public Map<String, CellStyle> looks() {
    return Collections.unmodifiableMap(looks);
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
