package org.setpower.plan;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeMovement;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.common.ResultTable;
import org.setpower.uno.Uno;

/**
 * A small document that calls a plan's function as the templates do: a tab for each table to fill,
 * with its results beside it, and a tab with what is asked for and the block.
 */
public final class PlanDocument {
  /** The tab of the block. */
  public static final String BLOCK_TAB = "Plan";

  /** The row of keys of every table, from 1; row 1 holds the note of a copied tab, 3 headings. */
  public static final int KEYS = 4;

  /** Cells above a table: whether it is a copy, what stops all, whether the extension is there. */
  public static final String COPY = "A1";

  public static final String NOTICE = "B1";
  public static final String MISSING = "C1";
  public static final String IS_COPY = "This tab is a copy: it shows the original's figures";
  public static final String IS_MISSING = "The extension is missing here: no figure counts";

  private static final String VERSION = "ORG.SETPOWER.FUNCTIONS.SHEETVERSION()";
  private static final int BLOCK_ROW = 40;

  private final XComponent document;
  private final PlanModel model;
  private final Map<String, Integer> rooms = new LinkedHashMap<>();
  private final Map<String, Integer> firstRows = new LinkedHashMap<>();

  private String blockRange = "";

  private PlanDocument(XComponent document, PlanModel model) {
    this.document = document;
    this.model = model;
  }

  /**
   * A document of a plan.
   *
   * @param most rows of each table at most
   */
  public static PlanDocument of(Office office, PlanModel model, int most, int bandRows)
      throws Exception {
    return of(office.newSpreadsheet(), model, most, bandRows);
  }

  /** The same in a blank document that is open already. */
  public static PlanDocument of(XComponent blank, PlanModel model, int most, int bandRows)
      throws Exception {
    PlanDocument plan = new PlanDocument(blank, model);
    plan.atOnce(() -> plan.build(most, bandRows));
    return plan;
  }

  /** The same tabs in a document that has been stored and opened again. */
  public PlanDocument in(XComponent other) {
    PlanDocument same = new PlanDocument(other, model);
    same.rooms.putAll(rooms);
    same.firstRows.putAll(firstRows);
    return same;
  }

  private void build(int most, int bandRows) throws Exception {
    for (InputTable<?> table : model.inputs()) {
      rooms.put(table.key(), table.isUpright() ? 1 : Math.min(most, table.rows()));
      inputs(table);
    }
    block(bandRows);
    for (InputTable<?> table : model.inputs()) {
      results(table);
      notes(table.key());
    }
  }

  private void inputs(InputTable<?> table) throws Exception {
    TestSheet tab = tab(table.key());
    int columns = table.columns().size();
    int room = rooms.get(table.key());
    for (int i = 0; i < columns; i++) {
      InputColumn column = table.columns().get(i);
      if (table.isUpright()) {
        tab.text("A" + (KEYS + i), column.heading()).text("B" + (KEYS + i), column.key());
      } else {
        tab.text(letters(1 + i) + (KEYS - 1), column.heading());
        tab.text(letters(1 + i) + KEYS, column.key());
      }
    }
    int end = KEYS + (table.isUpright() ? columns : room + 1);
    tab.text("B" + end, InputTable.END);
    String last = letters(table.isUpright() ? 2 : columns);
    String top = table.isUpright() ? "$A$1" : tabAddress(table.key(), "$B$" + KEYS);
    hidden("Row_" + table.key(), "Y" + rooms.size(), "=CELL(\"ROW\";" + top + ")");
    name(name(table.key()), tabAddress(table.key(), "$B$" + KEYS + ":$" + last + "$" + end));
  }

  private void block(int bandRows) throws Exception {
    TestSheet tab = TestSheet.named(document, BLOCK_TAB);
    int width = 1;
    List<ResultTable<?>> shown = new ArrayList<>();
    for (ResultTable<?> table : model.results()) {
      shown.add(table);
      width = Math.max(width, table.columns().size());
    }
    tab.text("A1", "en").text("B1", InputTable.layoutHash(model.inputs()));
    Object[][] layout = InputTable.layout(model.inputs());
    String rows = "AB1:AC" + layout.length;
    UnoRuntime.queryInterface(XCellRangeData.class, tab.range(rows)).setDataArray(layout);
    name("Layout", "$" + BLOCK_TAB + ".$AB$1:$AC$" + layout.length);
    int first = BLOCK_ROW + 1;
    for (int b = 0; b < shown.size(); b++) {
      ResultTable<?> table = shown.get(b);
      int height = rooms.getOrDefault(table.key(), bandRows);
      tab.put("A" + (2 + b), height);
      for (int c = 0; c < table.columns().size(); c++) {
        tab.text(letters(1 + c) + (2 + b), table.columns().get(c).path());
      }
      firstRows.put(table.key(), first);
      String lastColumn = letters(table.columns().size() - 1);
      name(
          "Results_" + table.key(),
          "$" + BLOCK_TAB + ".$A$" + first + ":$" + lastColumn + "$" + (first + height - 1));
      first += height;
    }
    name("Answer", "$" + BLOCK_TAB + ".$A$1:$" + letters(width) + "$" + (1 + shown.size()));
    blockRange = "$A$" + BLOCK_ROW + ":$" + letters(width - 1) + "$" + (first - 1);
    name("Block", "$" + BLOCK_TAB + "." + blockRange);
    hidden("One", "X1", "=CELL(\"ROW\";$A$1)");
    tab.array(blockRange.replace("$", ""), call());
  }

  /** What stands above every table: whether the tab is a copy, and what stops the block. */
  private void notes(String table) throws Exception {
    int place = 1 + new ArrayList<>(rooms.keySet()).indexOf(table);
    hidden("Home_" + table, "Z" + place, "=SHEET(" + name(table) + ")");
    tab(table)
        .put(COPY, "=IF(SHEET(%s)=Home_%s;\"\";\"%s\")".formatted(name(table), table, IS_COPY))
        .put(NOTICE, "=INDEX(Block;One;2)&\"\"")
        .put(MISSING, "=IF(ISERROR(" + VERSION + "&NOW());\"" + IS_MISSING + "\";\"\")");
  }

  /** A named cell of the tab of the block. */
  private void hidden(String name, String cell, String formula) throws Exception {
    TestSheet.named(document, BLOCK_TAB).put(cell, formula);
    name(name, "$" + BLOCK_TAB + ".$" + cell.charAt(0) + "$" + cell.substring(1));
  }

  /** Calls another function at each calculation of the block. */
  public void callAlso(String function) {
    TestSheet tab = TestSheet.named(document, BLOCK_TAB);
    String block = blockRange.replace("$", "");
    tab.array(block, "");
    tab.array(
        block,
        call()
            .replace("IFERROR(Answer", "IF(" + function + ";IFERROR(Answer")
            .replaceFirst("\"#\"\\)", "\"#\"))"));
  }

  /** The formula of the block. */
  private String call() {
    StringBuilder call = new StringBuilder("=ORG.SETPOWER.FUNCTIONS.PLAN" + model.name());
    call.append("(IFERROR(Answer;\"#\")");
    model.inputs().forEach(t -> call.append(";IFERROR(" + name(t.key()) + ";\"#\")"));
    return call.append(")").toString();
  }

  /**
   * How visible cells take their row of a table: by a cell with CELL, which is calculated whenever
   * a file is opened, so that no .xlsx shows the results of its last calculation as if they were
   * new.
   */
  private String row(InputTable<?> table) {
    return table.isUpright() ? "Row_" + table.key() : "ROW()-Row_" + table.key();
  }

  private void results(InputTable<?> table) throws Exception {
    ResultTable<?> results =
        model.results().stream().filter(r -> r.key().equals(table.key())).findFirst().orElseThrow();
    TestSheet tab = tab(table.key());
    int room = rooms.get(table.key());
    String[][] formulas = new String[room][results.columns().size()];
    for (int c = 0; c < results.columns().size(); c++) {
      ResultColumn column = results.columns().get(c);
      String index = "=INDEX(Results_" + table.key() + ";" + row(table) + ";" + (c + 1) + ")";
      String text = isNumber(column) ? "" : "&\"\"";
      for (String[] formula : formulas) {
        formula[c] = index + text;
      }
    }
    int first = 1 + (table.isUpright() ? 2 : table.columns().size());
    int top = KEYS + (table.isUpright() ? 0 : 1);
    String range =
        letters(first) + top + ":" + letters(first + formulas[0].length - 1) + (top + room - 1);
    UnoRuntime.queryInterface(XCellRangeFormula.class, tab.range(range)).setFormulaArray(formulas);
  }

  private static boolean isNumber(ResultColumn column) {
    return Number.class.isAssignableFrom(column.type())
        || column.type() == java.time.LocalDate.class
        || column.type() == int.class
        || column.type() == double.class;
  }

  /** The name of a table's range. */
  public static String name(String table) {
    return Character.toUpperCase(table.charAt(0)) + table.substring(1);
  }

  private String tabAddress(String table, String range) {
    return "$" + name(table) + "." + range;
  }

  /** Names an input column as the cell of this row: absolute column, relative row. */
  public String relativeName(String table, String key) throws Exception {
    String name = name(table) + "_" + key;
    String column = input(table, key, 1).replaceAll("\\d", "");
    name(name, "$" + name(table) + ".$" + column + "1");
    return name;
  }

  /** The sheets of the document. */
  public XSpreadsheets sheets() {
    return Uno.as(XSpreadsheetDocument.class, document).getSheets();
  }

  /** Inserts rows into a tab; {@code at} counts from 1. */
  public void insertRows(String table, int at, int count) {
    Uno.as(XColumnRowRange.class, tab(table).sheet()).getRows().insertByIndex(at - 1, count);
  }

  /** Inserts a column into a tab before the column with this letter. */
  public void insertColumn(String table, String letter) {
    Uno.as(XColumnRowRange.class, tab(table).sheet())
        .getColumns()
        .insertByIndex(letter.charAt(0) - 'A', 1);
  }

  /** Cuts cells and pastes them at another cell of the same tab. */
  public void move(String table, String from, String to) throws Exception {
    CellRangeAddress source =
        Uno.as(XCellRangeAddressable.class, tab(table).range(from)).getRangeAddress();
    CellAddress target = Uno.as(XCellAddressable.class, tab(table).cell(to)).getCellAddress();
    Uno.as(XCellRangeMovement.class, tab(table).sheet()).moveRange(target, source);
  }

  /** Adds a name; its content is relative to A1 of the first tab. */
  public void name(String name, String content) throws Exception {
    XNamedRanges names = Uno.as(XNamedRanges.class, Uno.get(document, "NamedRanges"));
    names.addNewByName(name, content, new CellAddress((short) 0, 0, 0), 0);
  }

  /** The tab of a table. */
  public TestSheet tab(String table) {
    return TestSheet.named(document, name(table));
  }

  /** The cell of an input column in a row, from 1. */
  public String input(String table, String key, int row) {
    InputTable<?> declared = table(table);
    List<String> keys = declared.columns().stream().map(InputColumn::key).toList();
    return declared.isUpright()
        ? "C" + (KEYS + keys.indexOf(key))
        : letters(1 + keys.indexOf(key)) + (KEYS + row);
  }

  /** The cell that shows a result of a table to fill. */
  public String result(String table, String key, int row) {
    InputTable<?> declared = table(table);
    int place = place(table, key);
    return declared.isUpright()
        ? letters(3 + place) + KEYS
        : letters(1 + declared.columns().size() + place) + (KEYS + row);
  }

  private int place(String table, String key) {
    ResultTable<?> results =
        model.results().stream().filter(r -> r.key().equals(table)).findFirst().orElseThrow();
    return results.columns().stream().map(ResultColumn::key).toList().indexOf(key);
  }

  /** The cell of a result within the block. */
  public String blockCell(String table, String key, int row) {
    return letters(place(table, key)) + (firstRows.get(table) + row - 1);
  }

  private InputTable<?> table(String key) {
    return model.inputs().stream().filter(t -> t.key().equals(key)).findFirst().orElseThrow();
  }

  /** Types a number or a text into an input cell. */
  public PlanDocument type(String table, String key, int row, Object value) {
    TestSheet tab = tab(table);
    if (value instanceof Number n) {
      tab.put(input(table, key, row), n.doubleValue());
    } else {
      tab.text(input(table, key, row), (String) value);
    }
    return this;
  }

  /** Types rows of keys and cells at once. */
  public void fill(String table, List<Map<String, Object>> rows) {
    InputTable<?> declared = table(table);
    List<String> keys = declared.columns().stream().map(InputColumn::key).toList();
    if (declared.isUpright()) {
      rows.get(0).forEach((key, value) -> type(table, key, 1, value));
      return;
    }
    Object[][] data = new Object[rows.size()][keys.size()];
    for (int r = 0; r < data.length; r++) {
      Map<String, Object> row = rows.get(r);
      Arrays.setAll(data[r], c -> row.getOrDefault(keys.get(c), ""));
    }
    String range = "B" + (KEYS + 1) + ":" + letters(keys.size()) + (KEYS + data.length);
    UnoRuntime.queryInterface(XCellRangeData.class, tab(table).range(range)).setDataArray(data);
  }

  /** Types rows into several tables. */
  public void fill(Map<String, List<Map<String, Object>>> tables) throws Exception {
    atOnce(() -> tables.forEach(this::fill));
  }

  /** Work on a document. */
  @FunctionalInterface
  public interface Typing {
    void run() throws Exception;
  }

  /** Types cells and calculates once, afterwards. */
  public void atOnce(Typing typing) throws Exception {
    XCalculatable calculation = Uno.as(XCalculatable.class, document);
    calculation.enableAutomaticCalculation(false);
    typing.run();
    calculation.enableAutomaticCalculation(true);
    calculation.calculate();
  }

  /** What a result cell shows. */
  public String shown(String table, String key, int row) {
    return tab(table).shown(result(table, key, row));
  }

  /** Verdict of the block and its reasons. */
  public String status() {
    TestSheet tab = TestSheet.named(document, BLOCK_TAB);
    return tab.shown("A" + BLOCK_ROW) + " " + tab.shown("B" + BLOCK_ROW);
  }

  public XComponent document() {
    return document;
  }

  public void close() {
    Office.discard(document);
  }

  /** Letters of a column, from 0. */
  public static String letters(int column) {
    return column < 26
        ? String.valueOf((char) ('A' + column))
        : letters(column / 26 - 1) + (char) ('A' + column % 26);
  }
}
