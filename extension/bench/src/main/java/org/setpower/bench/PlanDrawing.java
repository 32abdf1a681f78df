package org.setpower.bench;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellAddress;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.setpower.command.document.CalcDocument;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.common.ResultTable;

/** A plan in a bare document: its tables side by side, its block below, visible results right. */
final class PlanDrawing {
  private static final int RESULTS = 150;

  private final BenchDocument book;
  private final PlanModel model;
  private final int blockRow;
  private final Map<String, Integer> starts = new HashMap<>();
  private final Map<String, Integer> shown = new HashMap<>();

  private int column;
  private int results = RESULTS;

  /**
   * A plan in a document.
   *
   * @param blockRow row of the block, above which the answer stands
   */
  PlanDrawing(BenchDocument book, PlanModel model, int blockRow) {
    this.book = book;
    this.model = model;
    this.blockRow = blockRow;
  }

  /** Writes rows into the tables to fill; a table without any has one blank row. */
  PlanDrawing fill(Map<String, List<Map<String, Object>>> tables) throws Exception {
    for (InputTable<?> table : model.inputs()) {
      fill(table, tables.getOrDefault(table.key(), List.of(Map.of())));
    }
    return this;
  }

  private void fill(InputTable<?> table, List<Map<String, Object>> rows) throws Exception {
    int width = table.isUpright() ? 2 : table.columns().size();
    Object[][] cells =
        new Object[table.isUpright() ? table.columns().size() + 1 : rows.size() + 2][width];
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
    starts.put(table.key(), column);
    name(capital(table.key()), column, 0, width, cells.length);
    column += width;
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

  /**
   * Writes the answer and the block that is asked for.
   *
   * @param rows rows of the band of a table of results; others have 40
   */
  PlanDrawing block(Map<String, Integer> rows) throws Exception {
    int left = column + 5;
    int width = model.results().stream().mapToInt(t -> t.columns().size()).max().orElseThrow();
    Object[][] answer = new Object[model.results().size() + 1][width + 1];
    for (Object[] row : answer) {
      Arrays.fill(row, "");
    }
    answer[0][0] = "en";
    answer[0][1] = InputTable.layoutHash(model.inputs());
    int first = blockRow + 1;
    for (int b = 1; b < answer.length; b++) {
      ResultTable<?> table = model.results().get(b - 1);
      int band = rows.getOrDefault(table.key(), 40);
      answer[b][0] = (double) band;
      for (int c = 0; c < table.columns().size(); c++) {
        answer[b][c + 1] = table.columns().get(c).path();
      }
      name("Results_" + table.key(), left, first, table.columns().size(), band);
      first += band;
    }
    book.data(left, answer);
    name("Answer", left, 0, width + 1, answer.length);
    List<String> ranges = new ArrayList<>(List.of("IFERROR(Answer;\"#\")"));
    model.inputs().forEach(t -> ranges.add("IFERROR(" + capital(t.key()) + ";\"#\")"));
    String call = "=PLAN." + model.name().toUpperCase(Locale.ROOT);
    book.array(
        left, blockRow, width, first - blockRow, call + "(" + String.join(";", ranges) + ")");
    return this;
  }

  /** Shows the first rows of a table of results, as the cells of a sheet do. */
  PlanDrawing show(String key, int rows) throws Exception {
    List<ResultColumn> columns = results(key).columns();
    name("Row_" + key, results, blockRow - 1, 1, 1);
    book.cell(results, blockRow - 1).setFormula("=CELL(\"ROW\";A" + blockRow + ")");
    for (int c = 0; c < columns.size(); c++) {
      boolean isNumber = Number.class.isAssignableFrom(columns.get(c).type());
      String text = isNumber ? "" : "&\"\"";
      book.down(
          results + c,
          blockRow,
          rows,
          "=INDEX(Results_" + key + ";ROW()-Row_" + key + ";" + (c + 1) + ")" + text);
    }
    shown.put(key, results);
    results += columns.size() + 1;
    return this;
  }

  private ResultTable<?> results(String key) {
    return model.results().stream().filter(t -> t.key().equals(key)).findFirst().orElseThrow();
  }

  /** A cell to fill of a table, rows from 0. */
  XCell typed(String table, String key, int row) throws Exception {
    List<String> keys =
        model.inputs().stream()
            .filter(t -> t.key().equals(table))
            .flatMap(t -> t.columns().stream())
            .map(InputColumn::key)
            .toList();
    return book.cell(starts.get(table) + keys.indexOf(key), 1 + row);
  }

  /** A visible cell of a result, rows from 0. */
  XCell shown(String table, String key, int row) throws Exception {
    List<String> keys = results(table).columns().stream().map(ResultColumn::key).toList();
    return book.cell(shown.get(table) + keys.indexOf(key), blockRow + row);
  }
}
