package org.setpower.command.update;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.sheet.FormulaResult;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.AnyConverter;
import com.sun.star.uno.Exception;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.base.Numbers;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.message.UserMessageException;
import org.setpower.command.plan.PlanFile;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Messages;
import org.setpower.uno.Uno;

/**
 * Takes what is typed in a file over into another of the same plan, by table and column key. A cell
 * that means something else there, or has no place, is reported and not taken over.
 */
final class FileUpdate {
  private static final String LAYOUT = "Layout";
  private static final String NOTE = "Note_";

  private final PlanFile old;
  private final PlanFile fresh;
  private final Map<String, String> layout;
  private final List<Lost> lost = new ArrayList<>();
  private int copied;

  /**
   * A cell that was not taken over as it is.
   *
   * @param where its cell in the old file
   * @param column its table and column
   * @param value what it shows
   * @param reason why, and what to do
   */
  record Lost(String where, String column, String value, String reason) {
    Object[] cells() {
      return new Object[] {where, column, value, reason};
    }
  }

  private FileUpdate(PlanFile old, PlanFile fresh) throws Exception {
    this.old = old;
    this.fresh = fresh;
    layout = layout(old);
  }

  /** Takes everything over that can be. */
  static FileUpdate of(PlanFile old, PlanFile fresh) throws Exception {
    FileUpdate update = new FileUpdate(old, fresh);
    fresh
        .book()
        .withoutCalculation(
            () -> {
              for (InputTable<?> table : fresh.model().inputs()) {
                update.take(table);
              }
              update.takeNotes();
            });
    update.tablesWithoutPlace();
    return update;
  }

  /** Whether a file has the layout of this version. */
  static boolean isCurrent(PlanFile plan) throws Exception {
    return plan.isOfThisLayout() && plan.fault().isEmpty();
  }

  List<Lost> lost() {
    return lost;
  }

  int copied() {
    return copied;
  }

  /** What the columns of a file mean, by path. */
  private static Map<String, String> layout(PlanFile plan) throws Exception {
    Map<String, String> layout = new HashMap<>();
    Object[][] rows = plan.values(LAYOUT);
    if (rows == null && plan.isOfThisLayout()) {
      rows = InputTable.layout(plan.model().inputs());
    }
    if (rows == null) {
      throw new UserMessageException(
          "This file does not say which units its cells have, so that nothing can be taken over."
              + " Begin a new file and copy what is typed, table by table.");
    }
    for (Object[] row : rows) {
      layout.put(String.valueOf(row[0]), String.valueOf(row[1]));
    }
    return layout;
  }

  private void take(InputTable<?> table) throws Exception {
    Set<String> keys = new HashSet<>();
    for (InputColumn column : table.columns()) {
      keys.add(column.key());
      XCellRange from = old.typed(table, column.key());
      XCellRange to = fresh.typed(table, column.key());
      if (from != null && to != null) {
        String was = layout.getOrDefault(column.path(), column.layout());
        if (meaning(was).equals(meaning(column.layout()))) {
          take(column, from, to);
        } else {
          String reason =
              say(
                  "The column was “{}” and is now “{}”: convert the value and type it.",
                  meaning(was),
                  meaning(column.layout()));
          lose(heading(table, column), from, 0, reason);
        }
      }
    }
    columnsWithoutPlace(table, keys);
  }

  /**
   * Kind and unit, without limits and words: a value outside them is a finding of the new file.
   * Words of a list, yes and no are texts.
   */
  private static String meaning(String layout) {
    String[] parts = layout.split("\\|", -1);
    if (parts.length < 3) {
      return layout;
    }
    String kind =
        switch (parts[1]) {
          case "Double", "Integer" -> say("number");
          case "LocalDate" -> say("date");
          case "LocalTime" -> say("time");
          default -> say("text");
        };
    return (kind + " " + parts[2]).strip();
  }

  private static String heading(InputTable<?> table, InputColumn column) {
    return heading(table, column.heading(words()));
  }

  private static String heading(InputTable<?> table, String column) {
    return words().text(table.heading()) + ": " + column;
  }

  /** The words of plans in the language of the office. */
  private static Messages words() {
    return Messages.in(CommandMessages.tag());
  }

  /** Cells that no plan reads, such as whose stock it is. */
  private void takeNotes() throws Exception {
    for (String name : old.names(NOTE)) {
      XCellRange from = old.cells(name);
      XCellRange to = fresh.cells(name);
      if (from != null && to != null) {
        Object[][] values = Uno.as(XCellRangeData.class, from).getDataArray();
        if (AnyConverter.isVoid(values[0][0])) {
          lose(label(name), from, 0, say("The cell is in error: type it again."));
        } else {
          calculated(label(name), from);
          Uno.as(XCellRangeData.class, to).setDataArray(values);
          copied += "".equals(values[0][0]) ? 0 : 1;
        }
      } else if (from != null) {
        lose(label(name), from, 0, say("This version has no such cell."));
      }
    }
  }

  private static String label(String name) {
    return name.substring(NOTE.length()).replace('_', ' ');
  }

  private void take(InputColumn column, XCellRange from, XCellRange to) throws Exception {
    Object[][] values = Uno.as(XCellRangeData.class, from).getDataArray();
    Object[][] taken = Uno.as(XCellRangeData.class, to).getDataArray();
    InputTable<?> table = table(column);
    calculated(heading(table, column), from);
    long days = column.type() == LocalDate.class ? old.days() - fresh.days() : 0;
    for (int r = 0; r < taken.length; r++) {
      Object value = r < values.length ? values[r][0] : "";
      if (AnyConverter.isVoid(value)) {
        lose(heading(table, column), cell(from, r), 0, say("The cell is in error: type it again."));
        value = "";
      }
      taken[r][0] = value instanceof Double day ? (Object) (day + days) : value;
      copied += "".equals(value) ? 0 : 1;
    }
    Uno.as(XCellRangeData.class, to).setDataArray(taken);
    lose(
        heading(table, column),
        from,
        taken.length,
        say("The table of this version has fewer rows: type the value into a second file."));
  }

  private InputTable<?> table(InputColumn column) {
    return fresh.model().inputs().stream()
        .filter(t -> t.key().equals(column.table()))
        .findFirst()
        .orElseThrow();
  }

  /** Formulas become values, as the cells that they read may stand elsewhere. */
  private void calculated(String column, XCellRange from) throws Exception {
    int results = FormulaResult.VALUE | FormulaResult.STRING;
    for (CellRangeAddress at :
        CalcDocument.ranges(Uno.as(XCellRangesQuery.class, from).queryFormulaCells(results))) {
      lose(column, old.book().range(at), 0, say("It was calculated; its value was taken over."));
    }
  }

  private static XCellRange cell(XCellRange column, int row) throws Exception {
    return column.getCellRangeByPosition(0, row, 0, row);
  }

  /** Reports the filled cells of a column from a row on. */
  private void lose(String column, XCellRange cells, int first, String reason) throws Exception {
    CellRangeAddress at = Uno.as(XCellRangeAddressable.class, cells).getRangeAddress();
    Object[][] values = Uno.as(XCellRangeData.class, cells).getDataArray();
    String tab = CalcDocument.name(old.book().sheet(at.Sheet));
    for (int r = first; r < values.length; r++) {
      for (int c = 0; c < values[r].length; c++) {
        if (!"".equals(values[r][c])) {
          String where = tab + "." + CalcDocument.address(at.StartColumn + c, at.StartRow + r);
          lost.add(new Lost(where, column, shown(cells, c, r), reason));
        }
      }
    }
  }

  private static String shown(XCellRange cells, int column, int row) throws Exception {
    String shown = CalcDocument.shown(cells.getCellByPosition(column, row));
    return shown.isEmpty()
        ? Numbers.format(cells.getCellByPosition(column, row).getValue())
        : shown;
  }

  /** Columns of an old table that this version does not have, or that have no key. */
  private void columnsWithoutPlace(InputTable<?> table, Set<String> known) throws Exception {
    XCellRange range = old.cells(PlanFile.name(table));
    Object[][] values = old.values(PlanFile.name(table));
    if (range == null || values.length < 3) {
      return;
    }
    Set<String> seen = new HashSet<>();
    int last = values.length - 2;
    int count = table.isUpright() ? values.length - 1 : values[0].length;
    for (int i = 0; i < count; i++) {
      String key = String.valueOf(table.isUpright() ? values[i][0] : values[0][i]);
      if (!known.contains(key) || !seen.add(key)) {
        XCellRange cells =
            table.isUpright()
                ? range.getCellRangeByPosition(1, i, 1, i)
                : range.getCellRangeByPosition(i, 1, i, last);
        lose(heading(table, key), cells, 0, say("This version has no such column."));
      }
    }
  }

  /** Tables that this version does not have. */
  private void tablesWithoutPlace() throws Exception {
    Set<String> tables = new HashSet<>();
    layout.keySet().forEach(path -> tables.add(path.replaceFirst("\\..*", "")));
    fresh.model().inputs().forEach(t -> tables.remove(t.key()));
    for (String table : tables) {
      XCellRange range = old.cells(Character.toUpperCase(table.charAt(0)) + table.substring(1));
      if (range != null) {
        lose(table, range, 1, say("This version has no such table."));
      }
    }
  }
}
