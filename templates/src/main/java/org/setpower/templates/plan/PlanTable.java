package org.setpower.templates.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;

/**
 * A table to fill with what the plan says beside it: status, the cells to fill as one block, leaf
 * columns, results, reason.
 */
public final class PlanTable implements PlanPart {
  private final InputTable<?> inputs;
  private final Map<String, String> picks = new HashMap<>();
  private final Map<String, Integer> widths = new HashMap<>();
  private final Map<String, Unit> units = new HashMap<>();
  private final List<LeafColumn> leaves = new ArrayList<>();
  private final List<String> shown = new ArrayList<>();
  private final List<String> more = new ArrayList<>();
  private final List<Group> groups = new ArrayList<>();
  private String title = "";
  private String translated = "";

  /**
   * A unit that a cell of another table decides.
   *
   * @param path the cell, as {@code table.key}
   * @param blank the unit while it is blank
   */
  public record Unit(String path, String blank) {}

  /** Columns to fill from one to another, by key. */
  private record Group(String first, String last) {}

  private PlanTable(InputTable<?> inputs) {
    this.inputs = inputs;
  }

  static PlanTable of(InputTable<?> inputs) {
    return new PlanTable(inputs);
  }

  /** Its columns from one to another stand in a closed outline group; there may be several. */
  public PlanTable optional(String from, String to) {
    groups.add(new Group(inputs.column(from).key(), inputs.column(to).key()));
    return this;
  }

  /** The cells of a column are picked from a column to fill, named {@code table.key}. */
  public PlanTable pick(String key, String path) {
    picks.put(inputs.column(key).key(), path);
    return this;
  }

  /** The width of a column in millimetres, where words need more than is usual. */
  public PlanTable width(String key, int millimetres) {
    widths.put(key, millimetres);
    return this;
  }

  /** The unit of a column is what a cell says. */
  public PlanTable unit(String key, String path, String blank) {
    units.put(inputs.column(key).key(), new Unit(path, blank));
    return this;
  }

  /** A column with a function over the row's own cells, right of the cells to fill. */
  public PlanTable leaf(LeafColumn column) {
    leaves.add(column);
    return this;
  }

  /** The results that one comes for, by key; status and reason come by themselves. */
  public PlanTable shows(String... keys) {
    shown.addAll(List.of(keys));
    return this;
  }

  /** Results in a closed outline group. */
  public PlanTable more(String... keys) {
    more.addAll(List.of(keys));
    return this;
  }

  /** What a new file has in this column is said in the language of the file. */
  public PlanTable translated(String key) {
    translated = inputs.column(key).key();
    return this;
  }

  /** The column whose first cells are said in the language of the file; empty for none. */
  public String translated() {
    return translated;
  }

  /** A heading above it, where it does not stand alone on its tab. */
  public PlanTable titled(String words) {
    title = words;
    return this;
  }

  public InputTable<?> inputs() {
    return inputs;
  }

  /** Paths of all results in the order of their columns: the status first, the reason last. */
  public List<String> results() {
    return Stream.of(Stream.of("verdict"), shown.stream(), more.stream(), Stream.of("reasons"))
        .flatMap(s -> s)
        .map(k -> inputs.key() + "." + k)
        .toList();
  }

  public List<LeafColumn> leaves() {
    return List.copyOf(leaves);
  }

  /** Whether a column to fill stands in the closed group. */
  public boolean isOptional(InputColumn column) {
    List<String> keys = inputs.columns().stream().map(InputColumn::key).toList();
    int at = keys.indexOf(column.key());
    return groups.stream()
        .anyMatch(g -> keys.indexOf(g.first()) <= at && at <= keys.indexOf(g.last()));
  }

  /** Whether a result stands in the closed group. */
  public boolean isMore(String path) {
    return more.contains(path.substring(path.indexOf('.') + 1));
  }

  /** The column that a column is picked from; null for none. */
  public String pick(InputColumn column) {
    return picks.get(column.key());
  }

  /** What decides the unit of a column; null for a fixed one. */
  public Unit unit(InputColumn column) {
    return units.get(column.key());
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
