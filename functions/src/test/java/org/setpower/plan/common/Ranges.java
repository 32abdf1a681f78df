package org.setpower.plan.common;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Ranges of a plan as a sheet hands them over, filled by table and key. */
public final class Ranges {
  private final PlanModel model;
  private final Map<String, List<Map<String, Object>>> rows = new LinkedHashMap<>();

  private Ranges(PlanModel model) {
    this.model = model;
    model.inputs().forEach(t -> rows.put(t.key(), new ArrayList<>()));
  }

  /** Ranges without a row. */
  public static Ranges of(PlanModel model) {
    return new Ranges(model);
  }

  /** A copy whose rows can be changed. */
  public Ranges copy() {
    Ranges copy = new Ranges(model);
    rows.forEach((t, list) -> list.forEach(r -> copy.rows.get(t).add(new LinkedHashMap<>(r))));
    return copy;
  }

  /** Adds a row of keys and cells. */
  public Ranges row(String table, Object... keysAndCells) {
    Map<String, Object> row = new LinkedHashMap<>();
    rows.get(table).add(row);
    put(table, row, keysAndCells);
    return this;
  }

  /** Changes cells of a row, which is counted from 1. */
  public Ranges set(String table, int row, Object... keysAndCells) {
    put(table, rows.get(table).get(row - 1), keysAndCells);
    return this;
  }

  private void put(String table, Map<String, Object> row, Object... keysAndCells) {
    InputTable<?> declared = table(table);
    for (int i = 0; i < keysAndCells.length; i += 2) {
      String key = declared.column((String) keysAndCells[i]).key();
      Object cell = keysAndCells[i + 1];
      row.put(key, cell instanceof Integer n ? (Object) n.doubleValue() : cell);
    }
  }

  private InputTable<?> table(String key) {
    return model.inputs().stream().filter(t -> t.key().equals(key)).findFirst().orElseThrow();
  }

  /** The rows of a table, to be changed. */
  public List<Map<String, Object>> rows(String table) {
    return rows.get(table);
  }

  /** The ranges in the order of the function's arguments. */
  public List<Object> list() {
    List<Object> list = new ArrayList<>();
    model.inputs().forEach(t -> list.add(range(t)));
    return list;
  }

  private Object[][] range(InputTable<?> table) {
    List<InputColumn> columns = table.columns();
    List<Map<String, Object>> filled = rows.get(table.key());
    int width = columns.size();
    if (table.isUpright()) {
      Object[][] range = new Object[width + 1][2];
      for (int i = 0; i < width; i++) {
        String key = columns.get(i).key();
        range[i] = new Object[] {key, filled.isEmpty() ? "" : filled.get(0).getOrDefault(key, "")};
      }
      range[width] = new Object[] {InputTable.END, ""};
      return range;
    }
    Object[][] range = new Object[filled.size() + 2][width];
    for (int i = 0; i < width; i++) {
      String key = columns.get(i).key();
      range[0][i] = key;
      for (int r = 0; r < filled.size(); r++) {
        range[r + 1][i] = filled.get(r).getOrDefault(key, "");
      }
      range[filled.size() + 1][i] = i == 0 ? InputTable.END : "";
    }
    return range;
  }

  /** The calculated plan. */
  public PlanResult calculate() {
    return model.calculate(list());
  }

  @Override
  public String toString() {
    return rows.toString();
  }
}
