package org.setpower.templates.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.ResultColumn;
import org.setpower.templates.plan.InputCells;
import org.setpower.templates.plan.LeafColumn;
import org.setpower.templates.plan.PlanChart;
import org.setpower.templates.plan.PlanFields;
import org.setpower.templates.plan.PlanFigures;
import org.setpower.templates.plan.PlanLetter;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanPart;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanTable;
import org.setpower.templates.plan.PlanText;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.text.MessageCatalog;

/**
 * Where everything of a plan's workbook stands, and its formulas. Rows and columns count from 0.
 */
public final class PlanLayout {
  /**
   * Column of the labels of single cells; the cell, its stand-in and its help stand right of it.
   */
  public static final int LABEL = 1;

  /** The row with which parts begin, below the head of a tab. */
  public static final int FIRST_ROW = 5;

  private static final int GAP = 2;
  private static final int STATUS = 15;
  private static final int WORDS = 24;
  private static final int DATE = 32;
  private static final int NUMBER = 16;
  private static final int MONEY = 24;
  private static final int REASON = 110;
  private static final int REASON_OF_ROW = 160; // of a table, right of all it has
  private static final int BETWEEN = 6;
  private static final int LABEL_WIDTH = 44;
  private static final double LETTER = 1.9; // of a label, in mm

  private final PlanWorkbook workbook;
  private final MessageCatalog words;
  private final PlanNames names;
  private final Map<PlanPart, Place> places = new IdentityHashMap<>();
  private final Map<PlanTable, List<Column>> columns = new IdentityHashMap<>();
  private final Map<PlanList, List<Column>> listed = new IdentityHashMap<>();
  private final Map<PlanTab, List<Integer>> widths = new IdentityHashMap<>();
  private final Map<PlanTab, Integer> lastRow = new IdentityHashMap<>();
  private final Map<String, Place> inputs = new HashMap<>();

  /** The left upper cell of something. */
  public record Place(PlanTab tab, int column, int row) {}

  /**
   * A column of a table or a list.
   *
   * @param input what is filled; null for what is shown
   * @param result what is shown; null for cells to fill and for leaf columns
   * @param leaf a function over the row; else null
   * @param heading its heading with the unit
   * @param at its column on the tab
   * @param span how many columns of the tab it takes
   * @param width millimetres
   * @param grouped whether it stands in a closed outline group
   */
  public record Column(
      InputColumn input,
      ResultColumn result,
      LeafColumn leaf,
      String heading,
      int at,
      int span,
      int width,
      boolean grouped) {
    /** How its cells look. */
    public CellFormat format() {
      if (leaf != null) {
        return leaf.format();
      }
      return input == null ? InputCells.format(result) : InputCells.of(input).format();
    }

    /** Whether it tells what is wrong. */
    public boolean isReason() {
      return result != null && result.type() == List.class;
    }

    /** Its unit; two, as {@code m|ft}, where a cell of the workbook decides. */
    public String unit() {
      if (leaf != null) {
        return leaf.unit();
      }
      return input == null ? InputCells.unit(result) : InputCells.unit(input);
    }

    public boolean isVerdict() {
      return result != null && InputCells.isVerdict(result);
    }
  }

  /** Lays out a workbook in the language of these words. */
  public PlanLayout(PlanWorkbook workbook, MessageCatalog words) {
    this.workbook = workbook;
    this.words = words;
    names = new PlanNames(workbook);
    workbook.tabs().forEach(this::place);
  }

  private void place(PlanTab tab) {
    List<Integer> width = new ArrayList<>();
    widths.put(tab, width);
    if (tab.isPage()) {
      IntStream.range(0, tab.grid()).forEach(i -> width.add(tab.gridWidth()));
    }
    int row = FIRST_ROW;
    for (PlanPart part : tab.parts()) {
      if (tab.isBeside(part)) {
        placeBeside(tab, (PlanList) part);
        continue;
      }
      if (!part.title().isEmpty()) {
        row++;
      }
      places.put(part, new Place(tab, 0, row));
      if (part instanceof PlanTable table) {
        columns.put(table, columns(tab, table));
        placeInputs(tab, table, row);
      } else if (part instanceof PlanList list) {
        listed.put(list, columns(tab, list, 0));
      } else if (part instanceof PlanFields fields) {
        placeFields(tab, fields, row);
      } else if (part instanceof PlanFigures figures && figures.across() == 0 && !tab.isPage()) {
        figures.columns().forEach(p -> label(tab, InputCells.heading(workbook.result(p), words)));
      } else if (part instanceof PlanNotes notes && !tab.isPage()) {
        notes.cells().forEach(c -> label(tab, words.of(c.heading())));
      }
      row += height(part) + GAP;
    }
    lastRow.put(tab, row - GAP - 1);
  }

  /** Its rows are those of the table; a narrow column stands between them. */
  private void placeBeside(PlanTab tab, PlanList list) {
    int column = take(tab, widths.get(tab).size(), BETWEEN) + 1;
    places.put(list, new Place(tab, column, firstRow((PlanTable) tab.parts().get(0)) - 1));
    listed.put(list, columns(tab, list, column));
  }

  private static int height(PlanPart part) {
    if (part instanceof PlanTable table) {
      return table.inputs().rows() + 3; // headings, keys, end
    }
    if (part instanceof PlanList list) {
      return list.rows() + (list.isPartial() ? 2 : 1);
    }
    if (part instanceof PlanFields fields) {
      return fields.columns().size();
    }
    if (part instanceof PlanNotes notes) {
      return notes.cells().size();
    }
    if (part instanceof PlanLetter letter) {
      return letter.lines().size();
    }
    if (part instanceof PlanChart chart) {
      return chart.rows();
    }
    return part instanceof PlanFigures figures
        ? figures.height()
        : ((PlanText) part).lines().size();
  }

  private void placeInputs(PlanTab tab, PlanTable table, int headingRow) {
    columns.get(table).stream()
        .filter(c -> c.input() != null)
        .forEach(c -> inputs.put(c.input().path(), new Place(tab, c.at(), headingRow + 2)));
  }

  private void placeFields(PlanTab tab, PlanFields fields, int row) {
    for (int i = 0; i < fields.columns().size(); i++) {
      InputColumn column = fields.columns().get(i);
      inputs.put(column.path(), new Place(tab, cell(tab), row + i));
      if (!tab.isPage()) {
        label(tab, InputCells.heading(column, words));
      }
    }
  }

  private void label(PlanTab tab, String text) {
    take(tab, 0, STATUS);
    take(tab, LABEL, Math.max(LABEL_WIDTH, (int) Math.ceil(text.length() * LETTER)));
    take(tab, LABEL + 1, DATE);
    take(tab, LABEL + 2, DATE);
  }

  /** The column of a single cell to fill; its label stands left of it. */
  public int cell(PlanTab tab) {
    return tab.isPage() ? tab.twelfths(5) : LABEL + 1;
  }

  /**
   * Columns of results below each other begin with the same one, so that a closed group of the
   * cells to fill of one table hides no result of another.
   */
  private static int resultsAt(PlanTab tab) {
    return tab.parts().stream()
        .filter(p -> p instanceof PlanTable)
        .mapToInt(p -> 1 + ((PlanTable) p).inputs().columns().size())
        .max()
        .orElseThrow();
  }

  /** Reasons stand right of all results of the tab, for the same cause. */
  private static int reasonsAt(PlanTab tab) {
    return resultsAt(tab)
        + tab.parts().stream()
            .filter(p -> p instanceof PlanTable)
            .map(p -> (PlanTable) p)
            .mapToInt(t -> t.leaves().size() + t.results().size() - 2) // status and reasons
            .max()
            .orElseThrow();
  }

  private List<Column> columns(PlanTab tab, PlanTable table) {
    List<Column> all = new ArrayList<>();
    List<String> results = table.results();
    add(all, tab, table, workbook.result(results.get(0)), 0);
    for (InputColumn input : table.inputs().columns()) {
      String heading = InputCells.heading(input, words);
      CellFormat format = InputCells.of(input).format();
      int width = width(heading, table.widthOf(input.key(), usual(format)));
      all.add(
          new Column(
              input,
              null,
              null,
              heading,
              take(tab, all.size(), width),
              1,
              width,
              table.isOptional(input)));
    }
    int next = tab.isAligned() ? resultsAt(tab) : all.size();
    for (LeafColumn leaf : table.leaves()) {
      String heading = InputCells.heading(leaf.heading(), leaf.unit(), words);
      int width = width(heading, NUMBER);
      int at = take(tab, next++, width);
      all.add(new Column(null, null, leaf, heading, at, 1, width, false));
    }
    for (String result : results.subList(1, results.size())) {
      ResultColumn column = workbook.result(result);
      boolean reason = column.type() == List.class;
      add(all, tab, table, column, reason && tab.isAligned() ? reasonsAt(tab) : next++);
    }
    return all;
  }

  private void add(
      List<Column> all, PlanTab tab, PlanTable table, ResultColumn result, int column) {
    String heading = InputCells.heading(result, words);
    boolean alone = tab.isAligned() || tab.parts().size() == 1;
    int usual = alone && result.type() == List.class ? REASON_OF_ROW : usual(result);
    int width = width(heading, table.widthOf(result.key(), usual));
    boolean grouped = table.isMore(result.path());
    int at = take(tab, column, width);
    all.add(new Column(null, result, null, heading, at, 1, width, grouped));
  }

  private List<Column> columns(PlanTab tab, PlanList list, int first) {
    List<Column> all = new ArrayList<>();
    if (list.isWide()) {
      ResultColumn only = workbook.result(list.columns().get(0));
      int span = widths.get(tab).size();
      int width = widths.get(tab).stream().mapToInt(w -> w).sum();
      all.add(new Column(null, only, null, InputCells.heading(only, words), 0, span, width, false));
      return all;
    }
    int at = first;
    for (String path : list.columns()) {
      ResultColumn result = workbook.result(path);
      String heading = InputCells.heading(result, words);
      int usual = list.widthOf(result.key(), usual(result));
      int width = tab.isPage() ? usual : width(heading, usual);
      int span = tab.isPage() ? (width + tab.gridWidth() - 1) / tab.gridWidth() : 1;
      if (!tab.isPage()) {
        take(tab, at, width);
      }
      int shown = tab.isPage() ? span * tab.gridWidth() : width;
      all.add(new Column(null, result, null, heading, at, span, shown, false));
      at += span;
    }
    return all;
  }

  private static int usual(ResultColumn column) {
    if (InputCells.isVerdict(column)) {
      return STATUS;
    }
    if (column.type() == List.class) {
      return REASON;
    }
    return column.type() == Boolean.class ? NUMBER : usual(InputCells.format(column));
  }

  private static int usual(CellFormat format) {
    if (format == CellFormat.MONEY) {
      return MONEY;
    }
    return format == CellFormat.DATE ? DATE : format.isText() ? WORDS : NUMBER;
  }

  private static int width(String heading, int least) {
    return new HeadingLayout(heading, false).width(least);
  }

  private int take(PlanTab tab, int column, int width) {
    List<Integer> all = widths.get(tab);
    while (all.size() <= column) {
      all.add(0);
    }
    all.set(column, Math.max(all.get(column), width));
    return column;
  }

  /** A heading with the end of each line written into it, or the formula of one. */
  public String broken(Column column) {
    if (InputCells.isSwitched(column.unit())) {
      String name =
          column.leaf() != null
              ? column.leaf().heading()
              : column.input() == null ? column.result().heading() : column.input().heading();
      return "=" + formulas().heading(name, column.unit());
    }
    return new HeadingLayout(column.heading(), false).broken(column.width());
  }

  /** The label of a single result, or the formula of one whose unit a cell decides. */
  public String label(ResultColumn column) {
    return InputCells.isSwitched(column.unit())
        ? "=" + formulas().heading(column.heading(), column.unit())
        : InputCells.heading(column, words);
  }

  /** The label of a single cell to fill, or the formula of one whose unit a cell decides. */
  public String label(InputColumn column) {
    return InputCells.isSwitched(column.unit())
        ? "=" + formulas().heading(column.heading(), column.unit())
        : InputCells.heading(column, words);
  }

  /** Words of a heading that its column cuts in the middle. */
  public List<String> cutInHeading(Column column) {
    return new HeadingLayout(column.heading(), false).cutAt(column.width());
  }

  /** How many lines headings take. */
  public int headingLines(List<Column> shown) {
    return shown.stream()
        .mapToInt(c -> new HeadingLayout(c.heading(), false).lines(c.width()))
        .max()
        .orElse(1);
  }

  public PlanWorkbook workbook() {
    return workbook;
  }

  public MessageCatalog words() {
    return words;
  }

  /** What stands in its cells. */
  public PlanFormulas formulas() {
    return new PlanFormulas(this);
  }

  /** The names of the document. */
  public PlanNames names() {
    return names;
  }

  /** What a tab is called. */
  public String name(PlanTab tab) {
    return words.of(tab.name());
  }

  /** Where a part begins, below its heading. */
  public Place place(PlanPart part) {
    return places.get(part);
  }

  /** The row of the headings of a list. */
  public int headingRow(PlanList list) {
    Place place = places.get(list);
    return place.tab().isBeside(list) ? place.row() - 1 : place.row();
  }

  public List<Column> columns(PlanTable table) {
    return columns.get(table);
  }

  public List<Column> columns(PlanList list) {
    return listed.get(list);
  }

  public List<Integer> widths(PlanTab tab) {
    return widths.get(tab);
  }

  /** The first row that is printed. */
  public static int firstPrinted(PlanTab tab) {
    return tab.isSent() ? FIRST_ROW : 0;
  }

  public int lastRow(PlanTab tab) {
    return lastRow.get(tab);
  }

  /**
   * The list whose rows end what is printed of a tab, so that more of them are not printed until
   * print ranges are set again; null where there is none, or no line to say so.
   */
  public PlanList fitted(PlanTab tab) {
    if (!tab.isPaper() || tab.isSent()) {
      return null;
    }
    PlanPart last = tab.parts().get(tab.parts().size() - 1);
    return last instanceof PlanList list && !list.isWide() ? list : null;
  }

  /** The last row that is printed until print ranges are set. */
  public int lastPrinted(PlanTab tab) {
    PlanPart last = tab.parts().get(tab.parts().size() - 1);
    return tab.printed() > 0 ? place(last).row() + tab.printed() : lastRow(tab);
  }

  /** The first row below the headings and keys of a table. */
  public int firstRow(PlanTable table) {
    return places.get(table).row() + 2;
  }

  /** The first cell of a column to fill. */
  public Place place(InputColumn column) {
    return inputs.get(column.path());
  }

  /** The single cell of a column of a table with one row, as an absolute reference. */
  public String cell(InputColumn column) {
    Place place = inputs.get(column.path());
    if (place == null) {
      throw new IllegalStateException(column + " stands on no tab");
    }
    return absolute(place.tab(), place.column(), place.row());
  }

  /** All rows of a column to fill, named {@code table.key}. */
  public String range(String path) {
    InputColumn column = input(path);
    Place place = inputs.get(path);
    return absolute(place.tab(), place.column(), place.row())
        + ":"
        + CellNames.fixed(place.column(), place.row() + workbook.input(column.table()).rows() - 1);
  }

  /** A column to fill by its path. */
  public InputColumn input(String path) {
    int dot = path.indexOf('.');
    return workbook.input(path.substring(0, dot)).column(path.substring(dot + 1));
  }

  public String absolute(PlanTab tab, int column, int row) {
    return sheet(name(tab)) + "." + CellNames.fixed(column, row);
  }

  /** A tab's name as it stands in a formula. */
  public static String sheet(String name) {
    return name.matches("[A-Za-z]+") ? "$" + name : "$'" + name.replace("'", "''") + "'";
  }

  /** What names of the document stand for. */
  public Map<String, String> ranges() {
    Map<String, String> ranges = new TreeMap<>(names.ranges());
    for (PlanTable table : columns.keySet()) {
      InputTable<?> inputs = table.inputs();
      Place first = place(inputs.columns().get(0));
      int last = first.column() + inputs.columns().size() - 1;
      String keys = absolute(first.tab(), first.column(), first.row() - 1);
      ranges.put(
          PlanNames.range(inputs.key()),
          keys + ":" + CellNames.fixed(last, first.row() + inputs.rows()));
      ranges.put(PlanNames.top(inputs.key()), keys);
    }
    if (!names.isShort()) {
      workbook
          .model()
          .inputs()
          .forEach(
              t ->
                  ranges.put(
                      names.argument(t), PlanNames.handed(ranges.get(PlanNames.range(t.key())))));
    }
    for (PlanList list : listed.keySet()) {
      Place top = places.get(list);
      ranges.put(names.top(list), absolute(top.tab(), top.column(), top.row()));
    }
    workbook
        .parts(PlanFields.class)
        .flatMap(f -> f.columns().stream())
        .forEach(c -> ranges.put(PlanNames.cell(c.path()), cell(c)));
    for (PlanNotes notes : workbook.parts(PlanNotes.class).toList()) {
      for (FieldSpec cell : notes.cells()) {
        Place place = place(notes, cell);
        ranges.put(PlanNames.note(cell), absolute(place.tab(), place.column(), place.row()));
      }
    }
    workbook
        .parts(PlanTable.class)
        .flatMap(t -> t.leaves().stream())
        .flatMap(l -> l.paths().stream())
        .distinct()
        .forEach(p -> ranges.put(names.leaf(p), inRow(p)));
    for (PlanFigures figures : workbook.parts(PlanFigures.class).toList()) {
      if (figures.across() > 0) {
        Place top = places.get(figures);
        ranges.put(top(figures), absolute(top.tab(), top.column(), top.row()));
      }
      for (int i = 0; figures.across() > 0 && i < figures.columns().size(); i++) {
        Place place = figure(figures, i);
        ranges.put(
            headline(figures.columns().get(i)), absolute(place.tab(), place.column(), place.row()));
      }
    }
    List<String> tops = new ArrayList<>(tops().values());
    for (int i = 0; i < tops.size(); i++) {
      ranges.put(
          PlanNames.home(tops.get(i)),
          "$" + PlanNames.TAB + "." + CellNames.fixed(PlanNames.ANSWER + i, 1));
    }
    List<String> above = above();
    for (int i = 0; i < above.size(); i++) {
      ranges.put(
          PlanNames.row(above.get(i)),
          "$" + PlanNames.TAB + "." + CellNames.fixed(PlanNames.ANSWER + i, PlanNames.ROWS));
    }
    List<PlanList> fitted = fitted();
    for (int i = 0; i < fitted.size(); i++) {
      ranges.put(
          PlanNames.printed(names.top(fitted.get(i))),
          "$" + PlanNames.TAB + "." + CellNames.fixed(PlanNames.ANSWER + i, 2));
    }
    return ranges;
  }

  /** The lists that end what is printed of their tabs. */
  public List<PlanList> fitted() {
    return workbook.tabs().stream().map(this::fitted).filter(l -> l != null).toList();
  }

  private String top(PlanFigures figures) {
    return PlanNames.top(workbook.result(figures.columns().get(0)).table());
  }

  /** The name of the cell of a large figure. */
  private String headline(String path) {
    return "Result_" + workbook.result(path).heading().replaceAll("[^A-Za-z0-9]+", "_");
  }

  /** A cell of the row: the reference is relative to a name's place in the first row. */
  private String inRow(String path) {
    Place place = inputs.containsKey(path) ? inputs.get(path) : besides(path);
    return sheet(name(place.tab())) + "." + CellNames.inColumn(place.column(), 0);
  }

  /** The first cell of a result beside the cells to fill. */
  private Place besides(String path) {
    for (Map.Entry<PlanTable, List<Column>> table : columns.entrySet()) {
      for (Column column : table.getValue()) {
        if (column.result() != null && column.result().path().equals(path)) {
          return new Place(places.get(table.getKey()).tab(), column.at(), firstRow(table.getKey()));
        }
      }
    }
    throw new IllegalStateException(path + " stands in no row");
  }

  /** The names of the cells above rows of tables and lists. */
  public List<String> above() {
    return Stream.concat(
            workbook.parts(PlanTable.class).map(t -> PlanNames.top(t.inputs().key())),
            workbook.parts(PlanList.class).map(names::top))
        .distinct()
        .toList();
  }

  /** The name of a cell on each tab, by which a copy of the tab knows that it is one. */
  public Map<PlanTab, String> tops() {
    Map<PlanTab, String> tops = new LinkedHashMap<>();
    for (PlanTab tab : workbook.tabs()) {
      for (PlanPart part : tab.parts()) {
        if (part instanceof PlanTable table) {
          tops.putIfAbsent(tab, PlanNames.top(table.inputs().key()));
        } else if (part instanceof PlanList list) {
          tops.putIfAbsent(tab, names.top(list));
        } else if (part instanceof PlanFigures figures && figures.across() > 0) {
          tops.putIfAbsent(tab, top(figures));
        }
      }
      for (PlanPart part : tab.parts()) {
        if (part instanceof PlanFields fields) {
          tops.putIfAbsent(tab, PlanNames.cell(fields.columns().get(0).path()));
        }
      }
    }
    return tops;
  }

  /** The cell of a figure's value; its label stands above a large one, else left of it. */
  public Place figure(PlanFigures figures, int index) {
    Place top = places.get(figures);
    if (figures.across() == 0) {
      return new Place(top.tab(), cell(top.tab()), top.row() + index);
    }
    int span = top.tab().grid() / figures.across();
    return new Place(
        top.tab(),
        index % figures.across() * span,
        top.row() + index / figures.across() * PlanFigures.TALL + 1);
  }

  /** The cell of a typed cell that no plan reads. */
  public Place place(PlanNotes notes, FieldSpec cell) {
    Place top = places.get(notes);
    return new Place(top.tab(), cell(top.tab()), top.row() + notes.cells().indexOf(cell));
  }
}
