package org.setpower.plan.transfer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.finding.ItemNames;

/** Reads the table into which rows are brought, in the form in which cells are compared. */
public final class TargetReader {
  /** The column of other names in a list of items. */
  public static final String ALSO = "also";

  private final PlanModel model;
  private final List<?> ranges;
  private final TransferTarget target;
  private final InputTable<?> table;
  private final List<? extends InputRow<?>> read;

  /**
   * @param ranges as {@link PlanModel#calculate} takes them
   */
  public TargetReader(PlanModel model, List<?> ranges, TransferTarget target) {
    this.model = model;
    this.ranges = List.copyOf(ranges);
    this.target = target;
    table = table(target.table());
    read = read(table);
  }

  private InputTable<?> table(String key) {
    return model.inputs().stream().filter(t -> t.key().equals(key)).findFirst().orElseThrow();
  }

  private List<? extends InputRow<?>> read(InputTable<?> some) {
    return some.read(ranges.get(model.inputs().indexOf(some))).rows();
  }

  /** The table itself. */
  public InputTable<?> table() {
    return table;
  }

  /** The table that names have to be in. */
  public InputTable<?> known() {
    return table(target.known());
  }

  /** Rows that there is room for. */
  public int room() {
    return read.size();
  }

  /**
   * As a comparison takes it.
   *
   * @param formulas numbers of the rows whose cell holds a formula, by column
   * @param ofOthers numbers of rows that other sources have brought in
   */
  public ThreeWayMerge.Table compared(Map<String, Set<Integer>> formulas, Set<Integer> ofOthers) {
    List<TargetRow> rows = new ArrayList<>();
    for (InputRow<?> row : read) {
      if (!row.isBlank()) {
        Set<String> calculated = new HashSet<>();
        formulas.forEach((key, numbers) -> add(calculated, key, numbers.contains(row.number())));
        Map<String, Object> cells = new LinkedHashMap<>();
        row.cells().forEach((key, cell) -> cells.put(key, table.column(key).compared(cell)));
        rows.add(new TargetRow(row.number(), cells, calculated));
      }
    }
    return new ThreeWayMerge.Table(rows, ofOthers, blanks(), knownNames());
  }

  private static void add(Set<String> calculated, String key, boolean isFormula) {
    if (isFormula) {
      calculated.add(key);
    }
  }

  /** What a blank cell stands for, as the help of its column says. */
  private Map<String, Object> blanks() {
    Map<String, Object> blanks = new HashMap<>();
    if (target == TransferTarget.BUDGET_LINES) {
      blanks.put("qty", 1.0);
      blanks.put("unit", "once");
      InputTable<?> project = table("project");
      for (InputRow<?> row : read(project)) {
        for (String key : List.of("currency", "tax")) {
          Object cell = project.column(key).compared(row.cells().get(key));
          if (cell != null) {
            blanks.put(key, cell);
          }
        }
      }
    } else if (target == TransferTarget.BUDGET_COUNTS) {
      blanks.put("inAll", "no");
    }
    return blanks;
  }

  /** The items that rows can be, and their other names; those of the source without a list. */
  public ItemNames items() {
    return new ItemNames(listed());
  }

  /** The rows of the list of items, blank ones too; none where rows need no list. */
  public List<ItemNames.Item> listed() {
    List<ItemNames.Item> items = new ArrayList<>();
    if (target == TransferTarget.QUOTE_ITEMS) {
      for (InputRow<?> row : read(known())) {
        items.add(new ItemNames.Item(known(row, target.nameColumn()), known(row, ALSO)));
      }
    }
    return items;
  }

  private String known(InputRow<?> row, String key) {
    Object cell = known().column(key).compared(row.cells().get(key));
    return cell == null ? null : String.valueOf(cell);
  }

  private Set<String> knownNames() {
    Set<String> names = new HashSet<>();
    if (!target.known().isEmpty()) {
      InputColumn name = known().columns().get(0);
      for (InputRow<?> row : read(known())) {
        Object cell = name.compared(row.cells().get(name.key()));
        if (cell != null) {
          names.add(String.valueOf(cell));
        }
      }
    }
    return names;
  }
}
