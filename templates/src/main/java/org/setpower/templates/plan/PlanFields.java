package org.setpower.templates.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;

/**
 * Cells to fill of a table with one row, one below another: label, cell, what is used, help. They
 * may stand on several tabs; the plan reads them through cells of the hidden tab, so that a cell
 * left blank can have a stand-in, such as today, without a typed cell that depends on a result.
 */
public final class PlanFields implements PlanPart {
  private final String title;
  private final InputTable<?> inputs;
  private final List<String> keys;
  private final Map<String, String> picks = new HashMap<>();
  private final Map<String, String> standIns = new HashMap<>();

  private PlanFields(String title, InputTable<?> inputs, List<String> keys) {
    this.title = title;
    this.inputs = inputs;
    this.keys = keys;
  }

  static PlanFields of(String title, InputTable<?> inputs, String... keys) {
    return new PlanFields(title, inputs, List.of(keys));
  }

  /** A cell is picked from a column to fill, named {@code table.key}. */
  public PlanFields pick(String key, String path) {
    picks.put(inputs.column(key).key(), path);
    return this;
  }

  /** What is handed to the plan while a cell is blank: a formula without references. */
  public PlanFields standIn(String key, String formula) {
    standIns.put(inputs.column(key).key(), formula);
    return this;
  }

  public InputTable<?> inputs() {
    return inputs;
  }

  public List<InputColumn> columns() {
    return keys.stream().map(inputs::column).toList();
  }

  public String pick(InputColumn column) {
    return picks.get(column.key());
  }

  /** What is handed over while a cell is blank; empty for a blank. */
  public String standIn(InputColumn column) {
    return standIns.getOrDefault(column.key(), "");
  }

  @Override
  public String title() {
    return title;
  }
}
