package org.setpower.plan.common;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;

/** Makes random tables from their declarations: valid ones and hostile ones. */
public final class RandomTables {
  private static final Object[] HOSTILE = {
    "#",
    "abc",
    "12.5",
    "12,5",
    " ",
    "\u00a0",
    "-",
    "=1/0",
    "#N/A",
    "fine ",
    "yes\n",
    "İ",
    "\uD83D\uDD0B",
    "\u202E1234",
    "x".repeat(300),
    "0",
    "true",
    "{0} '{'",
    "end of table",
    0.0,
    -0.0,
    -1.0,
    0.5,
    1e300,
    -1e300,
    Double.MIN_VALUE,
    Double.NaN,
    Double.POSITIVE_INFINITY,
    4.5e15,
    46355.25,
    Boolean.TRUE,
    3,
    new Object[] {1.0},
    new StringBuilder("unexpected type")
  };

  private final PlanModel model;
  private final Function<InputColumn, List<Object>> values;
  private final Random random;

  /**
   * @param values typical cells of a column; empty for any that its declaration allows
   */
  public RandomTables(PlanModel model, Function<InputColumn, List<Object>> values, Random random) {
    this.model = model;
    this.values = values;
    this.random = random;
  }

  /** Tables of at most so many rows; every cell is valid, or blank where it may be. */
  public Ranges valid(int mostRows) {
    Ranges ranges = Ranges.of(model);
    for (InputTable<?> table : model.inputs()) {
      int rows = table.isUpright() ? 1 : random.nextInt(mostRows + 1);
      for (int r = 0; r < rows; r++) {
        Map<String, Object> row = new LinkedHashMap<>();
        for (InputColumn column : table.columns()) {
          if (column.isRequired() || random.nextInt(3) > 0) {
            row.put(column.key(), cell(column));
          }
        }
        ranges.rows(table.key()).add(row);
      }
    }
    return ranges;
  }

  /** A cell that a column's declaration allows. */
  public Object cell(InputColumn column) {
    List<Object> typical = values.apply(column);
    if (!typical.isEmpty()) {
      return typical.get(random.nextInt(typical.size()));
    }
    if (!column.words().isEmpty()) {
      return column.words().get(random.nextInt(column.words().size()));
    }
    if (column.type() == Double.class) {
      double share = random.nextDouble();
      return column.min() + share * share * share * (column.max() - column.min());
    }
    if (column.type() == LocalDate.class) {
      return 46_300.0 + random.nextInt(300);
    }
    if (column.type() == LocalTime.class) {
      return random.nextInt(96) / 96.0;
    }
    return "T" + random.nextInt(3);
  }

  /** Ranges in which anything may stand, in a shape that may be wrong. */
  public List<Object> hostile(int mostRows) {
    Ranges ranges = valid(mostRows);
    for (InputTable<?> table : model.inputs()) {
      for (Map<String, Object> row : ranges.rows(table.key())) {
        for (InputColumn column : table.columns()) {
          if (random.nextInt(12) == 0) {
            row.put(column.key(), HOSTILE[random.nextInt(HOSTILE.length)]);
          } else if (random.nextInt(12) == 0) {
            row.remove(column.key());
          }
        }
      }
    }
    List<Object> list = ranges.list();
    if (random.nextInt(8) == 0) {
      int victim = random.nextInt(list.size());
      list.set(victim, broken((Object[][]) list.get(victim)));
    }
    return list;
  }

  private Object broken(Object[][] range) {
    int row = random.nextInt(range.length);
    switch (random.nextInt(8)) {
      case 0:
        return null;
      case 1:
        return "#";
      case 2:
        return new Object[0][0];
      case 3:
        range[row] = null;
        return range;
      case 4:
        range[row] = new Object[] {"#"};
        return range;
      case 5:
        range[0][random.nextInt(range[0].length)] = HOSTILE[random.nextInt(HOSTILE.length)];
        return range;
      case 6:
        range[range.length - 1][0] = "";
        return range;
      default:
        return new Object[][] {{"#"}};
    }
  }
}
