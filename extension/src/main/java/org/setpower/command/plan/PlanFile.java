package org.setpower.command.plan;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.AnyConverter;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.addin.DocumentCalendar;
import org.setpower.command.document.CalcDocument;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanBlock;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.uno.Uno;

/**
 * A document whose block is calculated by a plan's function. Its tables, what it asks for and the
 * block are found by their names, which every sheet of a plan has.
 */
public final class PlanFile {
  private static final String BLOCK = "Block";
  private static final String ANSWER = "Answer";
  private static final String RESULTS = "Results_";
  private static final Pattern CALL =
      Pattern.compile("ORG\\.SETPOWER\\.FUNCTIONS\\.(PLAN\\w+)\\(", Pattern.CASE_INSENSITIVE);
  private static final Pattern FIGURE =
      Pattern.compile(
          "INDEX\\(Results_(\\w+);(ROW\\(\\)-)?(ROW\\(|CELL\\(\"ROW\";)?([\\w$.]+)\\)?(\\*0)?;(\\d+)\\)");

  private final CalcDocument book;
  private final PlanModel model;

  private PlanFile(CalcDocument book, PlanModel model) {
    this.book = book;
    this.model = model;
  }

  /**
   * A result that a cell shows.
   *
   * @param path {@code table.key}
   * @param row number of the row in its table, from 1
   */
  public record Figure(String path, int row) {
    /** Key of its table. */
    public String table() {
      return path.substring(0, path.indexOf('.'));
    }
  }

  /** The document as a plan; empty if no plan's function calculates it. */
  public static Optional<PlanFile> of(CalcDocument book) throws Exception {
    PlanFile none = new PlanFile(book, null);
    CellRangeAddress block = none.address(BLOCK);
    if (block == null) {
      return Optional.empty();
    }
    XCell first = book.cell(new CellAddress(block.Sheet, block.StartColumn, block.StartRow));
    Matcher call = CALL.matcher(first.getFormula());
    if (!call.find()) {
      return Optional.empty();
    }
    String method = call.group(1);
    return FunctionRegistry.PLAN.group().functions().stream()
        .filter(f -> f.methodName().equalsIgnoreCase(method))
        .flatMap(f -> f.plan().stream())
        .findFirst()
        .map(m -> new PlanFile(book, m));
  }

  /** Whether a formula shows results of a plan. */
  public static boolean isShownBy(String formula) {
    return formula.contains(RESULTS);
  }

  public PlanModel model() {
    return model;
  }

  public CalcDocument book() {
    return book;
  }

  /** The name of a table's range. */
  public static String name(InputTable<?> table) {
    return Character.toUpperCase(table.key().charAt(0)) + table.key().substring(1);
  }

  /** The name of the cell to fill of an upright table, where its cells have names. */
  static String cellName(InputColumn column) {
    String path = column.path();
    return Character.toUpperCase(path.charAt(0)) + path.substring(1).replace('.', '_');
  }

  /**
   * The cells to fill of a column.
   *
   * @param table its table
   * @return row of the table by row; a single cell of an upright table; null where the column is
   *     not there
   */
  public XCellRange typed(InputTable<?> table, String key) throws Exception {
    XCellRange range = cells(name(table));
    Object[][] values = values(name(table));
    if (range == null) {
      return null;
    }
    if (table.isUpright()) {
      XCellRange named =
          table.columns().stream().anyMatch(c -> c.key().equals(key))
              ? cells(cellName(table.column(key)))
              : null;
      int row = row(values, key);
      return named != null || row < 0 ? named : range.getCellRangeByPosition(1, row, 1, row);
    }
    int column = List.of(values[0]).indexOf(key);
    boolean ends = InputTable.END.equals(values[values.length - 1][0]);
    int last = values.length - (ends ? 2 : 1);
    return column < 0 || last < 1 ? null : range.getCellRangeByPosition(column, 1, column, last);
  }

  private static int row(Object[][] upright, String key) {
    for (int r = 0; r < upright.length; r++) {
      if (key.equals(upright[r][0])) {
        return r;
      }
    }
    return -1;
  }

  /** The range of a name; null if there is no such range. */
  public CellRangeAddress address(String name) throws Exception {
    XCellRange cells = cells(name);
    return cells == null ? null : Uno.as(XCellRangeAddressable.class, cells).getRangeAddress();
  }

  /** The cells of a name; null if there are none. */
  public XCellRange cells(String name) throws Exception {
    XNameAccess names = Uno.as(XNameAccess.class, Uno.get(book.document(), "NamedRanges"));
    return names.hasByName(name)
        ? Uno.as(XCellRangeReferrer.class, names.getByName(name)).getReferredCells()
        : null;
  }

  /** The names that begin with some letters. */
  public List<String> names(String first) throws Exception {
    XNameAccess names = Uno.as(XNameAccess.class, Uno.get(book.document(), "NamedRanges"));
    return Arrays.stream(names.getElementNames())
        .filter(n -> n.startsWith(first))
        .sorted()
        .toList();
  }

  /** The values of a name as the plan's function gets them, "#" for errors; null without range. */
  public Object[][] values(String name) throws Exception {
    XCellRange cells = cells(name);
    if (cells == null) {
      return null;
    }
    Object[][] data = Uno.as(XCellRangeData.class, cells).getDataArray();
    for (Object[] row : data) {
      for (int c = 0; c < row.length; c++) {
        row[c] = AnyConverter.isVoid(row[c]) ? "#" : row[c];
      }
    }
    return data;
  }

  /** Days to be added to a date of the document to make it one of ours. */
  public long days() {
    return DocumentCalendar.of(Uno.as(XPropertySet.class, book.document())).offset();
  }

  /** The plan, calculated from what the document holds now. */
  public PlanResult calculated() throws Exception {
    return PlanBlock.calculated(model, ranges(), days());
  }

  /** The tables as the plan's function gets them, with the dates of the document. */
  private List<Object> ranges() throws Exception {
    List<Object> ranges = new ArrayList<>();
    for (InputTable<?> table : model.inputs()) {
      ranges.add(values(name(table)));
    }
    return ranges;
  }

  /** The tables as a plan reads them, in our own dates. */
  public List<Object> read() throws Exception {
    return PlanBlock.read(model, ranges(), days());
  }

  /** Whether its cells mean what those of this version mean. */
  public boolean isOfThisLayout() throws Exception {
    Object[][] answer = values(ANSWER);
    return answer != null && InputTable.layoutHash(model.inputs()).equals(answer[0][1]);
  }

  /** Why every row stops, as the block says it; empty when it does not. */
  public String fault() throws Exception {
    Object[][] block = values(BLOCK);
    if ("#".equals(block[0][0])) {
      return say(
          "Recalculate with Ctrl+Shift+F9; a cell set not to calculate keeps its old figure.");
    }
    return "ok".equals(block[0][0]) || block[0].length < 2 ? "" : String.valueOf(block[0][1]);
  }

  /** The language of the document's sentences. */
  public Locale locale() throws Exception {
    Object[][] answer = values(ANSWER);
    return answer == null ? Locale.ENGLISH : Locale.forLanguageTag(String.valueOf(answer[0][0]));
  }

  /** The results that a cell shows: those of its formula, or the one of the block that it is. */
  public List<Figure> figures(XCell cell) throws Exception {
    CellAddress at = CalcDocument.address(cell);
    List<Figure> figures = new ArrayList<>();
    CellRangeAddress block = address(BLOCK);
    if (block.Sheet == at.Sheet && inside(block, at)) {
      figure(at.Column - block.StartColumn, at.Row - block.StartRow).ifPresent(figures::add);
      return figures;
    }
    for (Shown shown : shownBy(cell.getFormula(), at.Row)) {
      shown.figure().filter(f -> !figures.contains(f)).ifPresent(figures::add);
    }
    return figures;
  }

  /**
   * A result in a formula.
   *
   * @param byRow whether it takes the row of the table from the row of its cell
   */
  record Shown(Optional<Figure> figure, boolean byRow) {}

  /** The results that a formula in a row of a tab (from 0) names. */
  List<Shown> shownBy(String formula, int row) throws Exception {
    List<Shown> shown = new ArrayList<>();
    Matcher calls = FIGURE.matcher(formula);
    CellRangeAddress block = address(BLOCK);
    while (calls.find()) {
      CellRangeAddress part = address(RESULTS + calls.group(1));
      if (part != null) {
        // row 0 is all rows of an array, which begins below the cell that it names
        boolean byRow = calls.group(2) != null || calls.group(5) != null;
        int number = number(calls.group(4), calls.group(3) != null);
        int inPart = (byRow ? row + 1 - number : number) - 1;
        int column = part.StartColumn - block.StartColumn + Integer.parseInt(calls.group(6)) - 1;
        shown.add(new Shown(figure(column, part.StartRow - block.StartRow + inPart), byRow));
      }
    }
    return shown;
  }

  /** A row, from 1: a number, the value of a named cell, or the row in which that stands. */
  private int number(String word, boolean isPlace) throws Exception {
    if (word.matches("\\d+")) {
      return Integer.parseInt(word);
    }
    if (isPlace && word.matches(".*\\$\\d+")) {
      return Integer.parseInt(word.replaceFirst(".*\\$", ""));
    }
    XCellRange cell = cells(word);
    if (cell == null) {
      return 0;
    }
    return isPlace ? address(word).StartRow + 1 : (int) cell.getCellByPosition(0, 0).getValue();
  }

  private static boolean inside(CellRangeAddress range, CellAddress at) {
    return at.Column >= range.StartColumn
        && at.Column <= range.EndColumn
        && at.Row >= range.StartRow
        && at.Row <= range.EndRow;
  }

  /** What stands at a place of the block; its first row is the state of the whole. */
  private Optional<Figure> figure(int column, int row) throws Exception {
    return Answer.read(values(ANSWER)).stream()
        .flatMap(a -> a.bands().stream())
        .filter(b -> row > b.top() && row <= b.top() + b.rows())
        .filter(b -> column >= b.left() && column < b.left() + b.keys().size())
        .map(b -> new Figure(b.keys().get(column - b.left()), row - b.top()))
        .filter(f -> f.path().contains("."))
        .findFirst();
  }
}
