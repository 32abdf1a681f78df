package org.setpower.templates.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.templates.spec.Addresses;
import org.setpower.templates.spec.ArrayResult;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.CellContext;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.MatrixBlock;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableBase;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.text.MessageCatalog;

/** Where everything of a template stands. Rows and columns count from 0. */
public final class Layout implements Addresses {
  private static final int FIRST_ROW = 4;

  /** Of landscape paper, in mm: 9 pt are then printed with 6.8 pt at least. */
  private static final int WIDEST_PAGE = 365;

  /** The same where help runs on beside single cells, which a page must not cut: 6.4 pt. */
  private static final int WIDEST_WITH_HELP = 390;

  private static final int SHORT = 190; // of A4, the narrower, between its margins
  private static final int LONG = 259; // of Letter, the shorter

  /** What the names of formulas begin with. */
  private static final String SHARED = "Row ";

  /** What the names of cells below charts begin with; the command that fits pages looks for it. */
  private static final String CHART = "Chart_";

  private static final Pattern OF_ROW = Pattern.compile("\\$[A-Z]+(\\d+)");

  private static final int GAP = 2;
  private static final int LABEL = 60;
  private static final int VALUE = 46;
  private static final int WORKING = 20;
  private static final double LETTER = 1.9; // of a label, in mm
  private static final String SOME_END = " (EUR)"; // a unit as long as those that follow a choice

  /** A cell or the left upper cell of something, with the columns it spans. */
  public record CellPosition(SheetSpec tab, int column, int row, int span) {}

  private final WorkbookSpec template;
  private final MessageCatalog words;
  private final Hyphenation syllables;
  private final Set<String> typed = new HashSet<>();
  private final Set<ColumnSpec> charted = Collections.newSetFromMap(new IdentityHashMap<>());
  private final Map<Block, CellPosition> blocks = new IdentityHashMap<>();
  private final Map<FieldSpec, CellPosition> fields = new IdentityHashMap<>();
  private final Map<ColumnSpec, CellPosition> columns = new IdentityHashMap<>();
  private final Map<TableBase, Integer> counts = new IdentityHashMap<>();
  private Map<ColumnSpec, String> shared;
  private final Map<SheetSpec, List<Integer>> widths = new HashMap<>();
  private final Map<SheetSpec, Integer> visible = new HashMap<>();
  private final Map<SheetSpec, Integer> lastRow = new HashMap<>();

  /** Lays out a template in English. */
  public Layout(WorkbookSpec template) {
    this(template, MessageCatalog.english());
  }

  /** Lays out a template in the language of these words. */
  public Layout(WorkbookSpec template, MessageCatalog words) {
    this.template = template;
    this.words = words;
    this.syllables = Hyphenation.in(words.language());
    template.tabs().forEach(this::place);
    template.fields().forEach(f -> typed.addAll(f.options()));
    template.tables().forEach(t -> t.columns().forEach(c -> typed.addAll(c.options())));
    template
        .blocks()
        .filter(BarChart.class::isInstance)
        .forEach(chart -> charted.addAll(((BarChart) chart).series()));
  }

  private void place(SheetSpec tab) {
    List<Integer> width = new ArrayList<>();
    for (int i = 0; i < tab.gridColumns(); i++) {
      width.add(tab.gridWidth());
    }
    widths.put(tab, width);
    int row = FIRST_ROW;
    for (Block block : tab.blocks()) {
      if (hasHeading(tab, block)) {
        row++;
      }
      blocks.put(block, new CellPosition(tab, 0, row, 1));
      if (block instanceof FieldBlock f) {
        placeFields(tab, f, row);
      } else if (block instanceof TableBase r) {
        placeVisible(tab, r, row + r.before());
      }
      row += block.height() + GAP;
    }
    lastRow.put(tab, row - GAP - 1);
    visible.put(tab, width.size());
    tab.tables().forEach(r -> placeWorking(tab, r));
  }

  /** Whether a block's heading is shown; a lone table is headed by the tab's title. */
  public static boolean hasHeading(SheetSpec tab, Block block) {
    return !block.title().isEmpty() && !block.title().equals(tab.title());
  }

  private void placeFields(SheetSpec tab, FieldBlock block, int firstRow) {
    int longest =
        tab.isGrid() // where wider labels would move the cells
            ? 0
            : block.fields().stream().mapToInt(f -> f.headingLength(place())).max().orElse(0);
    int label = take(tab, 0, Math.max(LABEL, (int) Math.ceil(longest * LETTER)));
    int value = take(tab, label, VALUE);
    for (int i = 0; i < block.fields().size(); i++) {
      fields.put(block.fields().get(i), new CellPosition(tab, label, firstRow + i, value));
    }
  }

  private void placeVisible(SheetSpec tab, TableBase rows, int headingRow) {
    int column = 0;
    for (ColumnSpec c : rows.columns()) {
      if (!c.isWorking()) {
        int span =
            take(
                tab,
                column,
                tab.isGrid() ? c.width() : heading(tab, rows, wholeHeading(c)).width(c.width()));
        columns.put(c, new CellPosition(tab, column, headingRow, span));
        column += span;
      }
    }
  }

  private static HeadingLayout heading(SheetSpec tab, TableBase rows, String text) {
    return new HeadingLayout(text, !tab.isGrid() && rows instanceof TableSpec);
  }

  /** A heading with its unit, or with room for one. */
  public String wholeHeading(ColumnSpec column) {
    return hasChosenUnit(column)
        ? words.of(column.heading()) + SOME_END
        : column.headingText(place());
  }

  private static boolean hasChosenUnit(ColumnSpec column) {
    return column.unit() != null && !(column.unit() instanceof Formula.Literal);
  }

  /** The most lines that a heading of these rows takes. */
  public int headingLines(TableBase rows) {
    return rows.columns().stream()
        .filter(c -> !c.isWorking())
        .mapToInt(c -> heading(c).lines(width(c)))
        .max()
        .orElse(1);
  }

  /**
   * A heading as it is written over its column: its lines, and the words divided that it cuts. In
   * the legend of a chart lines would be in the way.
   */
  public String headingText(ColumnSpec column) {
    String text = column.headingText(place());
    if (column.isWorking()) {
      return text;
    }
    String broken = charted.contains(column) ? divided(column) : broken(column);
    return hasChosenUnit(column)
        ? text.replace(
            words.of(column.heading()) + " (",
            broken.substring(0, broken.length() - SOME_END.length() + 2))
        : broken;
  }

  private String broken(ColumnSpec column) {
    return heading(column).broken(width(column));
  }

  private HeadingLayout heading(ColumnSpec column) {
    return heading(spot(column).tab(), column.owner(), divided(column));
  }

  private String divided(ColumnSpec column) {
    int width = width(column);
    String divided = wholeHeading(column);
    for (String word : new HeadingLayout(divided, false).cutAt(width)) {
      divided = divided.replace(word, syllables.divided(word, width));
    }
    return divided;
  }

  /** The words of a heading that its column cuts in the middle. */
  public List<String> cutInHeading(ColumnSpec column) {
    return new HeadingLayout(divided(column), false).cutAt(width(column));
  }

  /** The width of a column as it is shown, in millimetres. */
  public int width(ColumnSpec column) {
    CellPosition spot = spot(column);
    return widths.get(spot.tab()).subList(spot.column(), spot.column() + spot.span()).stream()
        .mapToInt(Integer::intValue)
        .sum();
  }

  /** Takes a width from a column on: one column of a plain tab, some of a tab with a grid. */
  private int take(SheetSpec tab, int column, int millimetres) {
    List<Integer> width = widths.get(tab);
    if (tab.isGrid()) {
      return (millimetres + tab.gridWidth() - 1) / tab.gridWidth();
    }
    if (column < width.size()) {
      width.set(column, Math.max(width.get(column), millimetres));
    } else {
      width.add(millimetres);
    }
    return 1;
  }

  private void placeWorking(SheetSpec tab, TableBase rows) {
    List<Integer> width = widths.get(tab);
    int headingRow = blocks.get(rows).row() + rows.before();
    for (ColumnSpec c : rows.columns()) {
      if (c.isWorking()) {
        columns.put(c, new CellPosition(tab, width.size(), headingRow, 1));
        width.add(WORKING);
      }
    }
    if (rows instanceof ArrayResult) {
      counts.put(rows, width.size());
      width.add(WORKING);
    }
  }

  /**
   * Hidden columns hold the name of their formula, which stands in the file once: thousands of
   * formulas that differ in the number of their row would make most of it. A name cannot look at
   * the rows above or below its own, as files of Excel count them from the first row of a tab.
   */
  private void share(TableBase rows) {
    for (ColumnSpec column : rows.columns()) {
      if (rows instanceof TableSpec && column.isWorking() && looksAlong(column)) {
        String words = SHARED + tab(rows).name() + " " + column.heading();
        String first = words.replaceAll("\\W+", "_").replaceAll("_$", "");
        String name = first;
        for (int i = 2; shared.containsValue(name); i++) {
          name = first + "_" + i;
        }
        shared.put(column, name);
      }
    }
  }

  /** Whether a formula reads no other row of its table in particular. */
  private boolean looksAlong(ColumnSpec column) {
    CellContext place = place(column.owner());
    Matcher rows = OF_ROW.matcher(TableSpec.guarded(column, place));
    return rows.results().allMatch(r -> r.group(1).equals(String.valueOf(place.row() + 1)));
  }

  /** The columns whose cells hold a name, and that name. */
  public Map<ColumnSpec, String> shared() {
    if (shared == null) {
      shared = new LinkedHashMap<>();
      template.tables().forEach(this::share);
    }
    return shared;
  }

  /** The formula that a name stands for, as in the first row of a tab: files of Excel want that. */
  public String sharedText(ColumnSpec column) {
    return TableSpec.guarded(column, new CellContext(this, column.owner(), 0, true));
  }

  /** What stands in the cells of a column, as in the first row. */
  public String formula(ColumnSpec column) {
    String name = shared().get(column);
    return name == null ? TableSpec.guarded(column, place(column.owner())) : name;
  }

  WorkbookSpec template() {
    return template;
  }

  @Override
  public MessageCatalog words() {
    return words;
  }

  /** Whether a word is an entry of a list from which users pick. */
  @Override
  public boolean isTyped(String word) {
    return typed.contains(word);
  }

  /** What a tab is called; nobody sees the name of a hidden one. */
  @Override
  public String name(SheetSpec tab) {
    return tab.isHidden() ? tab.name() : words.of(tab.name());
  }

  @Override
  public SheetSpec tab(Block block) {
    return blocks.get(block).tab();
  }

  @Override
  public SheetSpec tab(FieldSpec field) {
    return spot(field).tab();
  }

  /** Widths of the columns of a tab in millimetres. */
  public List<Integer> widths(SheetSpec tab) {
    return widths.get(tab);
  }

  /** How many columns of a tab are shown. */
  public int visible(SheetSpec tab) {
    return visible.get(tab);
  }

  /** On how many pages beside each other it is printed, so that it can be read. */
  public int pagesAcross(SheetSpec tab) {
    List<Integer> shown = widths.get(tab).subList(0, visible(tab));
    if (shown.isEmpty() || tab.isGrid()) {
      return 1;
    }
    boolean hasHelp = tab.blocks().stream().anyMatch(b -> b instanceof FieldBlock);
    int landscape = hasHelp ? WIDEST_WITH_HELP : WIDEST_PAGE;
    int widest = tab.isPortrait() ? landscape * SHORT / LONG : landscape;
    int named = shown.get(0); // the column that says which row it is, on each page
    int rest = shown.stream().mapToInt(Integer::intValue).sum() - named;
    int pages = 1;
    while (named + rest / pages > widest) {
      pages++;
    }
    return pages;
  }

  /** How many columns of a tab stand on the first of its pages beside each other. */
  public int firstPage(SheetSpec tab) {
    List<Integer> shown = widths.get(tab).subList(0, visible(tab));
    int pages = pagesAcross(tab);
    int page = tab.isPortrait() ? SHORT : LONG; // or more, printed smaller
    int first = shown.size();
    while (pages > 1 && pagesOf(page, shown) > pages) {
      page++;
    }
    for (int i = 0, used = 0; pages > 1 && i < first; i++) {
      used += shown.get(i);
      first = used > page ? i : first;
    }
    return first;
  }

  /** How many pages of a width these columns take, the first on each of them. */
  private static int pagesOf(int page, List<Integer> shown) {
    int pages = 1;
    int used = shown.get(0);
    for (int width : shown.subList(1, shown.size())) {
      if (used + width > page) {
        pages++;
        used = shown.get(0);
      }
      used += width;
    }
    return pages;
  }

  public int lastRow(SheetSpec tab) {
    return lastRow.get(tab);
  }

  /** Where a block begins, below its heading. */
  public CellPosition spot(Block block) {
    return blocks.get(block);
  }

  /** The cell of a field; its label stands left of it. */
  public CellPosition spot(FieldSpec field) {
    CellPosition label = fields.get(field);
    if (label == null) {
      throw new IllegalStateException("the field " + field + " stands on no tab");
    }
    int labelSpan = label.column();
    return new CellPosition(label.tab(), labelSpan, label.row(), label.span());
  }

  /** Where the help of a field stands, or what is wrong with it. */
  public CellPosition help(FieldSpec field) {
    CellPosition spot = spot(field);
    return new CellPosition(spot.tab(), spot.column() + spot.span(), spot.row(), 1);
  }

  /** A formula text with a sentence that names a tab whose single cells are filled wrongly. */
  public String errorFirstNotice() {
    StringBuilder text = new StringBuilder();
    int open = 0;
    for (SheetSpec tab : template.tabs()) {
      List<CellPosition> helps =
          fields.keySet().stream()
              .filter(f -> f.isInput() && spot(f).tab() == tab)
              .map(this::help)
              .sorted(java.util.Comparator.comparing(CellPosition::row))
              .toList();
      if (!helps.isEmpty()) {
        CellPosition last = helps.get(helps.size() - 1);
        String range =
            absolute(tab, helps.get(0).column(), helps.get(0).row())
                + ":"
                + cellName(last.column(), last.row());
        text.append("IF(SUMPRODUCT((LEFT(" + range + ";6)=\"" + TableSpec.STOP + "\")*1)>0;\"");
        text.append(
            TableSpec.STOP + words.say("correct a cell on {} first", name(tab)) + "  ·  \";");
        open++;
      }
    }
    return text + "\"\"" + ")".repeat(open);
  }

  /** The heading of a column. */
  public CellPosition spot(ColumnSpec column) {
    CellPosition spot = columns.get(column);
    if (spot == null) {
      throw new IllegalStateException("the column " + column + " stands on no tab");
    }
    return spot;
  }

  /** The first row of a table below its heading row. */
  public int firstRow(TableBase rows) {
    return blocks.get(rows).row() + rows.before() + 1;
  }

  /** The place of the first row of a table. */
  public CellContext place(TableBase rows) {
    return new CellContext(this, rows, firstRow(rows), false);
  }

  /** A place outside of tables. */
  public CellContext place() {
    return new CellContext(this, null, 0, false);
  }

  @Override
  public String address(FieldSpec field) {
    CellPosition spot = spot(field);
    return absolute(spot.tab(), spot.column(), spot.row());
  }

  /** The cell of a column in the row of the place. */
  @Override
  public String cell(ColumnSpec column, CellContext place) {
    if (place.rows() != column.owner() || place.rows() == null) {
      throw new IllegalStateException(
          column + " is not a column of this row: say all(), above() or where() for another table");
    }
    return onTab(column, place) + "$" + letters(spot(column).column()) + (place.row() + 1);
  }

  /** A name says on which tab the cells of its row are. */
  private String onTab(ColumnSpec column, CellContext place) {
    return place.inName() ? sheet(spot(column).tab()) + "." : "";
  }

  /** The cell of the heading of a column, from anywhere. */
  String headingCell(ColumnSpec column) {
    CellPosition spot = spot(column);
    return absolute(spot.tab(), spot.column(), spot.row());
  }

  @Override
  public String range(ColumnSpec column, ColumnSpec.Part.Extent extent, CellContext place) {
    TableBase owner = column.owner();
    CellPosition spot = spot(column);
    int first = firstRow(owner);
    int last = first + owner.room() - 1;
    String letters = "$" + letters(spot.column());
    if (extent == ColumnSpec.Part.Extent.ALL) {
      return sheet(spot.tab())
          + "."
          + letters
          + "$"
          + (first + 1)
          + ":"
          + letters
          + "$"
          + (last + 1);
    }
    cell(column, place);
    return extent == ColumnSpec.Part.Extent.ABOVE
        ? letters + "$" + first + ":" + letters + place.row()
        : letters + (place.row() + 2) + ":" + letters + "$" + (last + 2);
  }

  /** The cells of a row from the first to the last of these columns. */
  @Override
  public String rowRange(List<ColumnSpec> from, CellContext place) {
    return cell(from.get(0), place) + ":" + cell(from.get(from.size() - 1), place);
  }

  @Override
  public String grid(MatrixBlock grid) {
    CellPosition spot = spot(grid);
    return absolute(spot.tab(), spot.column(), spot.row())
        + ":"
        + cellName(spot.column() + grid.columns() - 1, spot.row() + grid.rows() - 1);
  }

  /** The cells of an array result. */
  public String blockRange(ArrayResult answers) {
    List<ColumnSpec> all = answers.columns();
    int first = firstRow(answers);
    return cellName(spot(all.get(0)).column(), first)
        + ":"
        + cellName(spot(all.get(all.size() - 1)).column(), first + answers.room() - 1);
  }

  /** The names of the document: what people refer to, and the headline figures. */
  public Map<String, String> names() {
    Map<String, String> names = new LinkedHashMap<>();
    for (FieldSpec field : template.fields()) {
      if (!field.rangeName().isEmpty()) {
        names.put(field.rangeName(), address(field));
      }
    }
    for (TableBase rows : template.tables()) {
      for (ColumnSpec column : rows.columns()) {
        if (!column.rangeName().isEmpty()) {
          names.put(column.rangeName(), column.all().text(place()));
        }
      }
    }
    names.putAll(figures());
    template.tabs().forEach(t -> names.putAll(charts(t)));
    return names;
  }

  /** The cells that charts stand over: rows above may grow, and a chart does not go with them. */
  private Map<String, String> charts(SheetSpec tab) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (Block block : tab.blocks()) {
      if (block instanceof BarChart) {
        String name = CHART + tab.name().replaceAll("\\W", "_") + "_" + (cells.size() + 1);
        cells.put(name, absolute(tab, chartColumn(tab), spot(block).row()));
      }
    }
    return cells;
  }

  /** A chart stands on one of several pages beside each other; column A is printed on each. */
  public int chartColumn(SheetSpec tab) {
    return pagesAcross(tab) > 1 ? 1 : 0;
  }

  /** The cell that counts the rows of an array result. */
  public CellPosition count(ArrayResult answers) {
    CellPosition spot = spot(answers);
    return new CellPosition(spot.tab(), counts.get(answers), spot.row(), 1);
  }

  /** The cells of the headline figures, by name. */
  public Map<String, String> figures() {
    Map<String, String> cells = new LinkedHashMap<>();
    template
        .blocks()
        .filter(KeyFigures.class::isInstance)
        .map(KeyFigures.class::cast)
        .forEach(
            b ->
                b.figures().stream()
                    .filter(f -> !f.label().isEmpty())
                    .forEach(
                        f -> {
                          CellPosition spot = spot(b, f);
                          cells.put(f.rangeName(), absolute(spot.tab(), spot.column(), spot.row()));
                        }));
    return cells;
  }

  /** The cell of a figure's value; its label stands above it, its note below. */
  public CellPosition spot(KeyFigures block, KeyFigure figure) {
    CellPosition spot = spot(block);
    int index = block.figures().indexOf(figure);
    int span = spot.tab().gridColumns() / block.across();
    return new CellPosition(
        spot.tab(),
        index % block.across() * span,
        spot.row() + index / block.across() * KeyFigures.TALL + 1,
        span);
  }

  public String absolute(SheetSpec tab, int column, int row) {
    return sheet(tab) + "." + cellName(column, row);
  }

  public static String cellName(int column, int row) {
    return "$" + letters(column) + "$" + (row + 1);
  }

  /** A cell of a fixed column in a row that follows. */
  public static String inColumn(int column, int row) {
    return "$" + letters(column) + (row + 1);
  }

  private String sheet(SheetSpec tab) {
    String name = name(tab);
    return name.matches("[A-Za-z]+") ? "$" + name : "$'" + name.replace("'", "''") + "'";
  }

  private static String letters(int column) {
    return column < 26
        ? String.valueOf((char) ('A' + column))
        : letters(column / 26 - 1) + (char) ('A' + column % 26);
  }
}
