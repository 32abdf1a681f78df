package org.setpower.templates.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.ResultColumn;
import org.setpower.templates.plan.PlanFields;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.plan.PlanWorkbook;

/**
 * The names of a plan's document and the hidden tab that asks the plan. Names are the same in all
 * languages.
 */
public final class PlanNames {
  /** The hidden tab. */
  public static final String TAB = "Plan";

  /** Its first row in use. */
  public static final int TOP = 2;

  /** Tables with more rows are asked for in a block of their own: a block is a full rectangle. */
  private static final int TALL = 300;

  private static final int FIRST_BLOCK = 3; // column

  private final PlanWorkbook workbook;
  private final List<Block> blocks = new ArrayList<>();

  /**
   * A call of the plan's function: a row of keys, then as many rows as its tables have at most.
   *
   * @param name of its cells in the document, keys included
   * @param answer name of its row of keys that it is asked for
   * @param keys paths of results
   * @param rows rows below the row of keys
   * @param column its first column on the hidden tab
   */
  public record Block(String name, String answer, List<String> keys, int rows, int column) {}

  PlanNames(PlanWorkbook workbook) {
    this.workbook = workbook;
    Map<Boolean, List<String>> byHeight =
        workbook.answer().stream()
            .collect(Collectors.partitioningBy(p -> rows(p) > TALL, Collectors.toList()));
    int column = FIRST_BLOCK;
    for (boolean tall : new boolean[] {false, true}) {
      List<String> keys = byHeight.get(tall);
      if (!keys.isEmpty()) {
        String suffix = tall ? "Tall" : "";
        int rows = keys.stream().mapToInt(this::rows).max().orElseThrow();
        blocks.add(new Block("Plan_Block" + suffix, "Plan_Answer" + suffix, keys, rows, column));
        column += keys.size() + 1;
      }
    }
  }

  private int rows(String path) {
    return workbook.results(path.substring(0, path.indexOf('.'))).rows();
  }

  private static String capital(String key) {
    return Character.toUpperCase(key.charAt(0)) + key.substring(1);
  }

  public List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** The formula of a block. */
  public String call(Block block) {
    return "PLAN."
        + workbook.model().name().toUpperCase(java.util.Locale.ROOT)
        + "("
        + block.answer()
        + workbook.model().inputs().stream()
            .map(t -> ";IFERROR(" + table(t.key()) + ";\"#\")")
            .collect(Collectors.joining())
        + ")";
  }

  /** The name of a table to fill, from its row of keys to its end row. */
  public String table(String key) {
    return "Plan_" + capital(key);
  }

  /** The name of a list, from its headings down. */
  public String list(PlanList list) {
    List<PlanList> alike =
        workbook
            .parts(PlanList.class)
            .filter(l -> l.results().key().equals(list.results().key()))
            .toList();
    int index = alike.indexOf(list);
    return "List_" + capital(list.results().key()) + (index == 0 ? "" : "_" + (index + 1));
  }

  /** What stands for a cell of the row in a leaf column: a relative name. */
  public String cell(String path) {
    return "Row_" + path.replace('.', '_');
  }

  /** The formula of a cell that shows a result in the row of a name. */
  public String shown(ResultColumn column, String name) {
    return shown(column, "ROW()-ROW(" + name + ")", true);
  }

  /** The formula of a cell that shows a result of a table with one row. */
  public String single(ResultColumn column) {
    return shown(column, "2", false);
  }

  private String shown(ResultColumn column, String row, boolean fromKeys) {
    Block block =
        blocks.stream().filter(b -> b.keys().contains(column.path())).findFirst().orElseThrow();
    int place = block.keys().indexOf(column.path()) + 1;
    String cell = "INDEX(" + block.name() + ";" + row + (fromKeys ? "+1;" : ";") + place + ")";
    boolean number =
        Number.class.isAssignableFrom(column.type()) || column.type() == LocalDate.class;
    return number ? cell : cell + "&\"\"";
  }

  /** The tables with one row, whose cells are handed over on the hidden tab. */
  public List<InputTable<?>> uprights() {
    List<InputTable<?>> uprights = new ArrayList<>(workbook.model().inputs());
    uprights.removeIf(t -> !t.isUpright());
    return uprights;
  }

  /** The first row of such a table on the hidden tab. */
  public int top(InputTable<?> upright) {
    int row = TOP;
    for (InputTable<?> before : uprights().subList(0, uprights().indexOf(upright))) {
      row += before.columns().size() + 2;
    }
    return row;
  }

  /** The cell that hands a column over. */
  public String used(InputColumn column) {
    InputTable<?> table = workbook.input(column.table());
    int row = top(table) + table.columns().indexOf(column);
    return "$" + TAB + "." + Layout.cellName(1, row);
  }

  /** The formula of the cell that hands a column over: what is typed, or its stand-in. */
  public String handedOver(InputColumn column, PlanLayout layout) {
    String typed = layout.cell(column);
    String standIn =
        workbook
            .parts(PlanFields.class)
            .filter(f -> f.columns().contains(column))
            .map(f -> f.standIn(column))
            .findFirst()
            .orElseThrow();
    return "IF(" + typed + "=\"\";" + (standIn.isEmpty() ? "\"\"" : standIn) + ";" + typed + ")";
  }

  /** What the names of the hidden tab stand for. */
  public Map<String, String> ranges() {
    Map<String, String> ranges = new TreeMap<>();
    String tab = "$" + TAB + ".";
    for (InputTable<?> table : uprights()) {
      int top = top(table);
      ranges.put(
          table(table.key()),
          tab + Layout.cellName(0, top) + ":" + Layout.cellName(1, top + table.columns().size()));
    }
    for (Block block : blocks) {
      int last = block.column() + block.keys().size() - 1;
      ranges.put(
          block.answer(),
          tab + Layout.cellName(block.column(), TOP) + ":" + Layout.cellName(last, TOP));
      ranges.put(
          block.name(),
          tab
              + Layout.cellName(block.column(), TOP + 1)
              + ":"
              + Layout.cellName(last, TOP + 1 + block.rows()));
    }
    return ranges;
  }
}
