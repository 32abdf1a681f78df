package org.setpower.bench;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.setpower.command.document.CalcDocument;
import org.setpower.office.Office;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.register.RegisterPlan;

/**
 * The battery register of 300 batteries and 1,000 tests: from a typed cell to all results, against
 * a thousand calls of an empty function.
 */
final class RegisterBench {
  private static final PlanModel MODEL = RegisterPlan.MODEL;
  private static final int BATTERIES = 300;
  private static final int TESTS = 1_000;
  private static final int CALLS = 1_000;
  private static final int ROUNDS = 25;
  private static final int BLOCK_ROW = 40;
  private static final int RESULTS = 150;

  private final BenchDocument book;

  private int column;

  private RegisterBench(BenchDocument book) {
    this.book = book;
  }

  static void run(Office office, Measurements figures) throws Exception {
    try (BenchDocument register = BenchDocument.empty(office);
        BenchDocument empty =
            BenchDocument.empty(office)
                .data(0, WholeBench.data(CALLS))
                .down(6, 0, CALLS, "=EMPTY.CABLEDROP(A1;B1;C1)")) {
      new RegisterBench(register).draw();
      List<Double> edits = new ArrayList<>();
      for (int round = -3; round < ROUNDS; round++) {
        double seconds = edit(office, register, round);
        empty.recalculate();
        if (round >= 0) {
          edits.add(seconds);
        }
      }
      double edit = ProcessorTime.usual(edits);
      figures.atMost(
          2.5,
          String.format(
              Locale.ROOT,
              "register of 300 batteries and 1 000 tests, an edit: %.0f ms; to 1 000 empty calls"
                  + " (%.0f ms)",
              1e3 * edit,
              1e3 * empty.seconds()),
          edit / empty.seconds(),
          "%.2f");
    }
  }

  /** Types another rated energy for the first battery and reads its health. */
  private static double edit(Office office, BenchDocument register, int round) throws Exception {
    int energy = places(table("batteries"), "energy");
    XCell typed = register.cell(start("batteries") + energy, 1);
    XCell health = register.cell(RESULTS + 8, BLOCK_ROW);
    double rated = 100 + round;
    ProcessorTime before = ProcessorTime.of(office);
    typed.setValue(rated);
    double shown = health.getValue();
    double seconds = before.secondsUntil(ProcessorTime.of(office));
    if (Math.abs(shown - 90 / rated) > 1e-9) {
      throw new IOException("health " + shown + " of " + rated);
    }
    return seconds;
  }

  private static InputTable<?> table(String key) {
    return MODEL.inputs().stream().filter(t -> t.key().equals(key)).findFirst().orElseThrow();
  }

  private static int places(InputTable<?> table, String key) {
    return table.columns().stream().map(InputColumn::key).toList().indexOf(key);
  }

  private static int width(InputTable<?> table) {
    return table.isUpright() ? 2 : table.columns().size();
  }

  /** The first column of a table to fill: they stand side by side. */
  private static int start(String key) {
    int start = 0;
    for (InputTable<?> table : MODEL.inputs()) {
      if (table.key().equals(key)) {
        return start;
      }
      start += width(table);
    }
    throw new IllegalArgumentException(key);
  }

  private void draw() throws Exception {
    inputs();
    block();
    results("batteries", BATTERIES);
    results("tests", TESTS);
  }

  private void inputs() throws Exception {
    for (InputTable<?> table : MODEL.inputs()) {
      List<Map<String, Object>> rows = rows(table.key());
      Object[][] cells =
          new Object[table.isUpright() ? table.columns().size() + 1 : rows.size() + 2]
              [width(table)];
      for (Object[] row : cells) {
        Arrays.fill(row, "");
      }
      cells[cells.length - 1][0] = InputTable.END;
      for (int c = 0; c < table.columns().size(); c++) {
        String key = table.columns().get(c).key();
        for (int r = 0; r < rows.size(); r++) {
          Object value = rows.get(r).getOrDefault(key, "");
          if (table.isUpright()) {
            cells[c][1] = value;
          } else {
            cells[r + 1][c] = value;
          }
        }
        if (table.isUpright()) {
          cells[c][0] = key;
        } else {
          cells[0][c] = key;
        }
      }
      book.data(column, cells);
      name(capital(table.key()), column, 0, width(table), cells.length);
      column += width(table);
    }
  }

  private static List<Map<String, Object>> rows(String table) {
    List<Map<String, Object>> rows = new ArrayList<>();
    switch (table) {
      case "project" -> rows.add(Map.of("asOf", 46_428.0));
      case "types" -> rows.add(Map.of("type", "P1", "chemistry", "Li-ion"));
      case "batteries" -> {
        for (int i = 0; i < BATTERIES; i++) {
          rows.add(Map.of("serial", "P1-" + i, "type", "P1", "condition", "fine", "energy", 100.0));
        }
      }
      case "tests" -> {
        for (int i = 0; i < TESTS; i++) {
          rows.add(
              Map.of(
                  "serial",
                  "P1-" + i % BATTERIES,
                  "date",
                  46_400.0,
                  "measured",
                  90.0,
                  "load",
                  45.0,
                  "temperature",
                  20.0,
                  "charge",
                  1.0,
                  "rested",
                  2.0,
                  "cell1",
                  4.1,
                  "cell2",
                  4.1));
        }
      }
      default -> rows.add(Map.of());
    }
    return rows;
  }

  private static String capital(String key) {
    return Character.toUpperCase(key.charAt(0)) + key.substring(1);
  }

  private void name(String name, int left, int top, int columns, int rows) throws Exception {
    String range =
        "$Sheet1." + absolute(left, top) + ":" + absolute(left + columns - 1, top + rows - 1);
    UnoRuntime.queryInterface(
            XNamedRanges.class,
            UnoRuntime.queryInterface(XPropertySet.class, book.document())
                .getPropertyValue("NamedRanges"))
        .addNewByName(name, range, new CellAddress(), 0);
  }

  private static String absolute(int column, int row) {
    return CalcDocument.address(column, row).replaceFirst("([A-Z]+)(\\d+)", "\\$$1\\$$2");
  }

  private void block() throws Exception {
    int left = column + 5;
    int width = MODEL.results().stream().mapToInt(t -> t.columns().size()).max().orElseThrow();
    Object[][] answer = new Object[MODEL.results().size() + 1][width + 1];
    for (Object[] row : answer) {
      Arrays.fill(row, "");
    }
    answer[0][0] = "en";
    answer[0][1] = InputTable.layoutHash(MODEL.inputs());
    int first = BLOCK_ROW + 1;
    for (int b = 1; b < answer.length; b++) {
      ResultTable<?> table = MODEL.results().get(b - 1);
      int rows =
          switch (table.key()) {
            case "tests" -> TESTS;
            case "batteries", "actions", "stocktake" -> BATTERIES;
            default -> 40;
          };
      answer[b][0] = (double) rows;
      for (int c = 0; c < table.columns().size(); c++) {
        answer[b][c + 1] = table.columns().get(c).path();
      }
      name("Results_" + table.key(), left, first, table.columns().size(), rows);
      first += rows;
    }
    book.data(left, answer);
    name("Answer", left, 0, width + 1, answer.length);
    StringBuilder call = new StringBuilder("=PLAN.REGISTER(IFERROR(Answer;\"#\")");
    MODEL.inputs().forEach(t -> call.append(";IFERROR(" + capital(t.key()) + ";\"#\")"));
    book.array(left, BLOCK_ROW, width, first - BLOCK_ROW, call.append(")").toString());
  }

  private void results(String key, int rows) throws Exception {
    List<ResultColumn> columns =
        MODEL.results().stream()
            .filter(t -> t.key().equals(key))
            .findFirst()
            .orElseThrow()
            .columns();
    int left = RESULTS + (key.equals("tests") ? 20 : 0);
    name("Row_" + key, left, BLOCK_ROW - 1, 1, 1);
    book.cell(left, BLOCK_ROW - 1).setFormula("=CELL(\"ROW\";A" + BLOCK_ROW + ")");
    for (int c = 0; c < columns.size(); c++) {
      boolean isNumber = Number.class.isAssignableFrom(columns.get(c).type());
      String text = isNumber ? "" : "&\"\"";
      book.down(
          left + c,
          BLOCK_ROW,
          rows,
          "=INDEX(Results_" + key + ";ROW()-Row_" + key + ";" + (c + 1) + ")" + text);
    }
  }
}
