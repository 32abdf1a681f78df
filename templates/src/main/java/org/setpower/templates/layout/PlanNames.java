package org.setpower.templates.layout;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.ResultColumn;
import org.setpower.templates.plan.PlanFields;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.FieldSpec;

/**
 * The names of a plan's document and the hidden tab that asks the plan. Names are the same in all
 * languages; commands and the plan's function know them.
 */
public final class PlanNames {
  /** The hidden tab. */
  public static final String TAB = "Plan";

  /** Its cell with the sentence for an office without the extension. */
  public static final String MISSING = "Notice_missing";

  /** Its cell with the sentence of a copied tab. */
  public static final String COPIED = "Notice_copied";

  /** Its cell with what to do where more rows are filled than are printed. */
  public static final String TO_FIT = "Notice_fit";

  /** Its cell with production and revision. */
  public static final String JOB = "Job_stamp";

  /** Its cell with the date that papers show. */
  public static final String TODAY = "Date_today";

  /** What the name of the page style of a letter begins with. */
  public static final String LETTER = "Set Power letter paper";

  /** The style of a line of a letter. */
  public static final String LETTER_LINE = "Set Power letter";

  /** What the names of the styles of cells with results begin with, and of those with reasons. */
  public static final String RESULT_CELL = "Set Power result";

  public static final String REASON_CELL = "Set Power reason";

  /** A name that only says that papers are printed without blank rows in tables. */
  public static final String CLOSED_UP = "Papers_closed_up";

  /** What the names of cells with the last printed row of a paper begin with. */
  public static final String PRINTED = "Printed_";

  /**
   * What the names begin with of papers whose tab is shown when they are printed with something.
   */
  public static final String SHOWN = "Shown_";

  /** The cells with the units that may be picked: while figures are typed in some, only those. */
  public static final String UNITS = "Units_offered";

  /** Their column, right of what is handed over. */
  public static final int UNITS_COLUMN = 2;

  /** The block's cell that says how many decimals amounts have. */
  public static final String DECIMALS = "Money_decimals";

  /**
   * The number 1 that is calculated when a file opens, as CELL is in lists: without the extension
   * an .xlsx would show its last verdicts as if they were new.
   */
  static final String ONE = "CELL(\"ROW\";$" + TAB + ".$A$1)";

  /** Its row with the rows of cells that stand above others. */
  public static final int ROWS = 3;

  /** Its first row in use. */
  public static final int TOP = 4;

  /** The first column of the answer. */
  public static final int ANSWER = 3;

  /** What its call begins with in a file, whatever language the office speaks. */
  private static final String STORED = "ORG.SETPOWER.FUNCTIONS.PLAN";

  /** A longer call is read by nobody. */
  private static final int MOST_LETTERS = 250;

  private final PlanWorkbook workbook;
  private final Map<String, List<String>> shown;
  private final BlockPlaces places;

  PlanNames(PlanWorkbook workbook) {
    this.workbook = workbook;
    shown =
        workbook.answer().stream()
            .collect(
                Collectors.groupingBy(PlanNames::table, LinkedHashMap::new, Collectors.toList()));
    places =
        BlockPlaces.of(
            shown.entrySet().stream()
                .map(
                    t ->
                        new BlockPlaces.Size(
                            t.getKey(), workbook.results(t.getKey()).rows(), t.getValue().size()))
                .toList());
  }

  private static String table(String path) {
    return path.substring(0, path.indexOf('.'));
  }

  private static String capital(String key) {
    return Character.toUpperCase(key.charAt(0)) + key.substring(1);
  }

  /**
   * The rows of the answer: language, layout and columns of the block, then one for each table:
   * rows, place in the block, keys.
   */
  public List<List<Object>> answer(String language) {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(padded(List.of(language, workbook.version(), (double) places.columns())));
    places
        .all()
        .forEach(
            p -> {
              List<Object> row = new ArrayList<>();
              row.addAll(List.of((double) p.rows(), (double) p.top(), (double) p.left()));
              row.addAll(shown.get(p.table()));
              rows.add(padded(row));
            });
    return rows;
  }

  private List<Object> padded(List<Object> cells) {
    List<Object> row = new ArrayList<>(cells);
    while (row.size() < answerColumns()) {
      row.add("");
    }
    return row;
  }

  /** Columns of the answer. */
  public int answerColumns() {
    return 3 + shown.values().stream().mapToInt(List::size).max().orElse(1);
  }

  /** The first row of the block, below the answer. */
  public int blockTop() {
    return TOP + places.all().size() + 2;
  }

  /** Rows of the block. */
  public int blockRows() {
    return 1 + places.rows();
  }

  /** Columns of the block. */
  public int blockColumns() {
    return places.columns();
  }

  /** The array formula of the block. */
  public String call() {
    return call(t -> isShort() ? handed(range(t.key())) : argument(t));
  }

  private String call(Function<InputTable<?>, String> argument) {
    return call("PLAN.", argument);
  }

  private String call(String function, Function<InputTable<?>, String> argument) {
    return function
        + workbook.model().name().toUpperCase(Locale.ROOT)
        + "("
        + handed("Answer")
        + workbook.model().inputs().stream()
            .map(t -> ";" + argument.apply(t))
            .collect(Collectors.joining())
        + ")";
  }

  /** Whether the call has the names of the tables themselves, or shorter ones. */
  boolean isShort() {
    return call(STORED, t -> handed(range(t.key()))).length() <= MOST_LETTERS;
  }

  /** A cell in error must not take the whole call with it. */
  static String handed(String range) {
    return "IFERROR(" + range + ";\"#\")";
  }

  /** A name of what a table hands over, for a call that would be too long with its own. */
  String argument(InputTable<?> table) {
    return "_" + (workbook.model().inputs().indexOf(table) + 1);
  }

  /** The name of a table to fill, from its row of keys to its end row. */
  public static String range(String table) {
    return capital(table);
  }

  /** The name of a cell: of its typed row, or of the only one. */
  public static String cell(String path) {
    return capital(path).replace('.', '_');
  }

  /** The name of a cell that no plan reads, by which it comes into a newer file. */
  static String note(FieldSpec cell) {
    return "Note_" + cell.heading().replaceAll("[^A-Za-z0-9]+", "_");
  }

  /** The name of a cell of the row that a leaf column reads: a cell to fill or a result. */
  public String leaf(String path) {
    boolean filled =
        workbook.model().inputs().stream()
            .flatMap(t -> t.columns().stream())
            .anyMatch(c -> c.path().equals(path));
    return (filled ? "" : "Shown_") + cell(path);
  }

  /** The name of the cell above the first row of a table to fill. */
  public static String top(String table) {
    return "Top_" + table;
  }

  /** The name of the cell above the first row of a list. */
  public String top(PlanList list) {
    List<PlanList> alike =
        workbook
            .parts(PlanList.class)
            .filter(l -> l.results().key().equals(list.results().key()))
            .toList();
    boolean taken =
        workbook.model().inputs().stream().anyMatch(t -> t.key().equals(list.results().key()));
    int number = alike.indexOf(list) + (taken ? 2 : 1);
    return top(list.results().key()) + (number == 1 ? "" : "_" + number);
  }

  private static String rest(String top) {
    return top.substring(top.indexOf('_') + 1);
  }

  /** The name that says on which tab the original of a tab stands. */
  public static String home(String top) {
    return "Home_" + rest(top);
  }

  /** The name of the row, from 1, of a cell that stands above rows. */
  public static String row(String top) {
    return "Row_" + top.substring(top.indexOf('_') + 1);
  }

  /** The name of the cell with the last row, from 1, that is printed of the tab of a list. */
  public static String printed(String top) {
    return PRINTED + top.substring(top.indexOf('_') + 1);
  }

  /**
   * The formula of a cell that shows a result in a row below a cell with a name. It is calculated
   * when a file opens, as the row of that cell is.
   */
  public String shown(ResultColumn column, String top) {
    return at(column, "ROW()-" + row(top));
  }

  /**
   * The array formula of a column of a list: row 0 of INDEX is all rows. ROW() would not do, which
   * is that of the first cell in all of them once the file is opened again.
   */
  public String listed(ResultColumn column, String top) {
    return shownAt(column, "CELL(\"ROW\";" + top + ")*0");
  }

  /** A result in the row of a cell below a cell with a name, for the look of that row. */
  public String inRow(String path, String top) {
    int dot = path.indexOf('.');
    int place = shown.get(path.substring(0, dot)).indexOf(path) + 1;
    return "INDEX(Results_"
        + path.substring(0, dot)
        + ";ROW()-ROW("
        + top
        + ");"
        + place
        + ")&\"\"";
  }

  /** The formula of a cell that shows a result of a table with one row. */
  public String single(ResultColumn column) {
    return single(column, 1);
  }

  /** The formula of a cell that shows a result of a row, from 1. */
  public String single(ResultColumn column, int row) {
    return shownAt(column, ONE.replace("$1", "$" + row));
  }

  /** A result; a blank text stays one in an array, and in a comparison. */
  private String shownAt(ResultColumn column, String row) {
    boolean number =
        Number.class.isAssignableFrom(column.type())
            || column.type() == LocalDate.class
            || column.type() == LocalTime.class;
    return number ? at(column, row) : at(column, row) + "&\"\"";
  }

  private String at(ResultColumn column, String row) {
    int place = shown.get(column.table()).indexOf(column.path()) + 1;
    return "INDEX(Results_" + column.table() + ";" + row + ";" + place + ")";
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
    return at(1, top(table) + table.columns().indexOf(column));
  }

  /** The first row of the list of columns and what they mean, which newer versions read. */
  public int layoutTop() {
    InputTable<?> last = uprights().get(uprights().size() - 1);
    return top(last) + last.columns().size() + 2;
  }

  /** Columns and what they mean. */
  public Object[][] layout() {
    return InputTable.layout(workbook.model().inputs());
  }

  private static String at(int column, int row) {
    return "$" + TAB + "." + CellNames.fixed(column, row);
  }

  /** The formula of the cell that hands a column over: what is typed, or its stand-in. */
  public String handedOver(InputColumn column) {
    String typed = cell(column.path());
    String standIn =
        workbook
            .parts(PlanFields.class)
            .filter(f -> f.columns().contains(column))
            .map(f -> f.standIn(column))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException(column + " stands on no tab"));
    return "IF(" + typed + "=\"\";" + (standIn.isEmpty() ? "\"\"" : standIn) + ";" + typed + ")";
  }

  /** What the names of the hidden tab stand for. */
  public Map<String, String> ranges() {
    Map<String, String> ranges = new TreeMap<>();
    ranges.put(MISSING, at(0, 1));
    ranges.put(COPIED, at(0, 2));
    ranges.put(TO_FIT, at(1, 1));
    ranges.put(TODAY, at(1, 2));
    ranges.put(JOB, at(0, 3));
    if (workbook.isClosedUp()) {
      ranges.put(CLOSED_UP, at(0, 0));
    }
    workbook.tabs().stream()
        .filter(PlanTab::isShownToPrint)
        .flatMap(t -> t.parts().stream())
        .filter(p -> p instanceof PlanList)
        .forEach(p -> ranges.put(SHOWN + rest(top((PlanList) p)), at(0, 0)));
    if (!workbook.unitCell().isEmpty()) {
      ranges.put(UNITS, at(UNITS_COLUMN, 0) + ":" + CellNames.fixed(UNITS_COLUMN, 1));
    }
    for (InputTable<?> table : uprights()) {
      int top = top(table);
      ranges.put(
          range(table.key()), at(0, top) + ":" + CellNames.fixed(1, top + table.columns().size()));
      ranges.put(top(table.key()), at(0, top));
    }
    ranges.put(
        "Layout", at(0, layoutTop()) + ":" + CellNames.fixed(1, layoutTop() + layout().length - 1));
    ranges.put(
        "Answer",
        at(ANSWER, TOP)
            + ":"
            + CellNames.fixed(ANSWER + answerColumns() - 1, TOP + places.all().size()));
    int row = blockTop();
    ranges.put(
        "Block",
        at(ANSWER, row)
            + ":"
            + CellNames.fixed(ANSWER + blockColumns() - 1, row + blockRows() - 1));
    for (BlockPlaces.Place place : places.all()) {
      int column = ANSWER + place.left();
      int top = row + 1 + place.top();
      int money = shown.get(place.table()).indexOf(workbook.decimals());
      if (money >= 0) {
        ranges.put(DECIMALS, at(column + money, top));
      }
      ranges.put(
          "Results_" + place.table(),
          at(column, top)
              + ":"
              + CellNames.fixed(column + place.columns() - 1, top + place.rows() - 1));
    }
    return ranges;
  }
}
