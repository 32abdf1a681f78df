package org.setpower.templates.uno;

import static java.util.stream.Collectors.toSet;

import com.sun.star.beans.XPropertyContainer;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNamed;
import com.sun.star.document.XDocumentProperties;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.frame.XController;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XDatabaseRanges;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.sheet.XViewFreezable;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XProtectable;
import com.sun.star.view.XSelectionSupplier;
import java.io.IOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.office.Office;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.Answers;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.CellContext;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Figure;
import org.setpower.templates.spec.Figures;
import org.setpower.templates.spec.Findings;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Grid;
import org.setpower.templates.spec.Lines;
import org.setpower.templates.spec.Rows;
import org.setpower.templates.spec.Style;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;
import org.setpower.templates.spec.Template;
import org.setpower.text.Words;

/**
 * A template drawn in an office: values and formulas, styles, validation, names, charts, print
 * set-up. It may then be filled; {@link #finish()} freezes panes and protects, and comes last.
 */
public final class Drawing {
  /** What stands in the place of a note whose figures are in error. */
  public static final String LINE_IN_ERROR = "A figure in this line is in error.";

  private static final String VERSION_PROPERTY = "Set Power template";
  private static final int PRINTED_WHEN_EMPTY = 25;
  private static final int LINE = 480; // height of a line of 10 pt in 1/100 mm
  private static final double TITLE_LETTER = 3.6; // in mm
  private static final int LEAD_WIDTH = 210;
  private static final int LEAD_END = 255; // on the first page, of Letter too
  private static final int LEAD_LETTERS = 150;
  private static final int LEAD_UPRIGHT = 108;
  private static final int HEAD = 4; // rows: title, what it is for, the job, a gap
  private static final int FINDING_ROW = 3;
  private static final int LONGEST_FINDING = 230; // letters, the name of its row included
  private static final int FIRST_SCREEN = 20; // rows
  private static final int FIELD = 560;
  private static final int FIELD_PADDING = 80;
  private static final int GRID_GAP = 280;
  private static final int HEADING_LINE = 420;
  private static final double LETTERS_PER_MM = 0.58; // of 10 pt, on the safe side

  private final Template template;
  private final Words words;
  private final Layout layout;
  private final XComponent document;
  private final XSpreadsheetDocument book;
  private final Styles styles;
  private final Map<Tab, XSpreadsheet> sheets = new IdentityHashMap<>();
  private final Map<Rows, Integer> filled = new IdentityHashMap<>();

  private Drawing(XComponent document, Template template, Words words, Styles styles) {
    this.template = template;
    this.words = words;
    this.document = document;
    this.styles = styles;
    layout = new Layout(template, words);
    book = Uno.as(XSpreadsheetDocument.class, document);
  }

  /** Draws a template into a new document, in English. */
  public static Drawing of(Office office, Template template) throws IOException {
    return of(office, template, Words.english());
  }

  /** Draws a template into a new document, in the language of these words. */
  public static Drawing of(Office office, Template template, Words words) throws IOException {
    XComponent document = office.newSpreadsheet();
    Styles styles = new Styles(document, words.language());
    Drawing drawing = new Drawing(document, template, words, styles);
    drawing.draw();
    return drawing;
  }

  /** A finished drawing, opened again to be filled. */
  public static Drawing over(XComponent document, Template template, Words words) {
    Drawing drawing = new Drawing(document, template, words, null); // it has its styles
    drawing.takeUp();
    return drawing;
  }

  public XComponent document() {
    return document;
  }

  public Layout layout() {
    return layout;
  }

  Template template() {
    return template;
  }

  private void draw() {
    Uno.set(document, "Wildcards", false);
    Uno.set(document, "RegularExpressions", false);
    Uno.set(document, "MatchWholeCell", true);
    Uno.set(document, "IgnoreCase", true);
    XModel model = Uno.as(XModel.class, document);
    Uno.as(XCalculatable.class, document).enableAutomaticCalculation(false);
    model.lockControllers();
    makeTabs();
    names();
    template.tabs().forEach(this::draw);
    model.unlockControllers();
    template.tabs().forEach(this::charts);
    template.tabs().forEach(this::hideWorking);
    Filling start = new Filling(this, words);
    template.tables().stream().filter(Table.class::isInstance).forEach(r -> start.start((Table) r));
    properties(words.of(template.title()));
  }

  private void makeTabs() {
    var sheets = book.getSheets();
    for (int i = 0; i < template.tabs().size(); i++) {
      String name = layout.name(template.tabs().get(i));
      if (i == 0) {
        Object only = Uno.ask(() -> Uno.as(XIndexAccess.class, sheets).getByIndex(0));
        Uno.as(XNamed.class, only).setName(name);
      } else {
        sheets.insertNewByName(name, (short) i);
      }
    }
  }

  XSpreadsheet sheet(Tab tab) {
    return sheets.computeIfAbsent(
        tab,
        t -> Uno.ask(() -> Uno.as(XSpreadsheet.class, book.getSheets().getByName(layout.name(t)))));
  }

  XCellRange range(Tab tab, int column, int row, int columns, int rows) {
    return Uno.ask(
        () -> sheet(tab).getCellRangeByPosition(column, row, column + columns - 1, row + rows - 1));
  }

  private void frame(Tab tab, Tab.Frames frames) {
    int top = top(tab, frames.first());
    int rows = layout.spot(frames.last()).row() + frames.last().height() - top;
    int columns = layout.visible(tab) / frames.across();
    for (int i = 0; i < frames.across(); i++) {
      styles.frame(range(tab, i * columns, top, columns, rows));
    }
  }

  /** The first row of a block, its heading included. */
  private int top(Tab tab, Block block) {
    return layout.spot(block).row() - (Layout.hasHeading(tab, block) ? 1 : 0);
  }

  private void write(Tab tab, int column, int row, String text, String style) {
    XCellRange cell = range(tab, column, row, 1, 1);
    Uno.set(cell, "CellStyle", style);
    Uno.tell(() -> cell.getCellByPosition(0, 0).setFormula(asText(text)));
  }

  /** A text that would be read as something else is marked as text. */
  private static String asText(String text) {
    return text.matches("[-+0-9.'].*") ? "'" + text : text;
  }

  private void draw(Tab tab) {
    Object sheet = sheet(tab);
    Object columns = Uno.as(XColumnRowRange.class, sheet).getColumns();
    List<Integer> widths = layout.widths(tab);
    for (int i = 0; i < widths.size(); i++) {
      int index = i;
      Object column = Uno.ask(() -> Uno.as(XIndexAccess.class, columns).getByIndex(index));
      Uno.set(column, "Width", 100 * widths.get(i));
    }
    String title = words.of(tab.title());
    String lead = words.of(tab.lead());
    boolean wide = layout.pagesAcross(tab) > 1; // then column A is printed on each page
    boolean fits = !wide || title.length() * TITLE_LETTER < layout.widths(tab).get(0);
    write(tab, fits ? 0 : 1, 0, title, styles.of(Style.TITLE));
    int besideNames = wide ? 1 : 0;
    write(tab, besideNames, 1, lead, styles.of(Style.LEAD));
    if (wide || lead.length() > (tab.isPortrait() ? LEAD_UPRIGHT : LEAD_LETTERS)) {
      wrapLead(tab, lead, besideNames);
    }
    if (template.tabs().indexOf(tab) == 0) {
      write(tab, 0, 2, missing(layout), styles.of(Style.MISSING));
      Uno.set(range(tab, 0, 2, 1, 1), "IsTextWrapped", false);
    } else {
      String stamp = "=" + layout.mendFirst() + "&" + template.stamp().text(layout.place());
      write(tab, besideNames, 2, stamp, styles.of(Style.STAMP));
      StatusColours.putSentence(range(tab, besideNames, 2, 1, 1), styles, Style.STAMP, Style.STOP);
    }
    if (!tab.isGrid() && !tab.isHidden()) {
      firstFinding(tab, besideNames);
    }
    tab.blocks().forEach(b -> draw(tab, b));
    tab.frames().forEach(f -> frame(tab, f));
    if (tab.ink() != Style.Ink.NONE) {
      Uno.set(sheet, "TabColor", tab.ink());
    }
    Uno.set(sheet, "PageStyle", styles.page(tab, layout.pagesAcross(tab)));
  }

  /** The line that says what to do stays on the first page, and on the screen. */
  private void wrapLead(Tab tab, String lead, int first) {
    int span = headSpan(tab, first);
    merge(tab, first, 1, span);
    Uno.set(range(tab, first, 1, 1, 1), "IsTextWrapped", true);
    headLines(tab, 1, first, span, lead.length());
  }

  /** Below the stamp: what is the matter with the first row that stops, or is to be looked at. */
  private void firstFinding(Tab tab, int first) {
    List<Table> tables = Findings.explained(tab);
    if (!tables.isEmpty()) {
      String text = "=IFERROR(" + Findings.first(tables).text(layout.place()) + ";\"\")";
      write(tab, first, FINDING_ROW, text, styles.of(Style.FINDING));
      int span = headSpan(tab, first);
      XCellRange cell = merge(tab, first, FINDING_ROW, span);
      StatusColours.putSentence(cell, styles, Style.FINDING, Style.STOP, Style.LOOK);
      headLines(tab, FINDING_ROW, first, span, LONGEST_FINDING);
    }
  }

  /** How many columns a line of the head spans. */
  private int headSpan(Tab tab, int first) {
    List<Integer> widths = layout.widths(tab);
    int span = 1;
    int width = widths.get(first);
    int most = Math.min(LEAD_WIDTH, LEAD_END - (first == 0 ? 0 : widths.get(0)));
    while (first + span < layout.visible(tab) && width + widths.get(first + span) <= most) {
      width += widths.get(first + span);
      span++;
    }
    return span;
  }

  /** Makes a line of the head as tall as so many letters need; merged cells do not grow. */
  private void headLines(Tab tab, int row, int first, int span, int letters) {
    int width =
        layout.widths(tab).subList(first, first + span).stream().mapToInt(Integer::intValue).sum();
    int lines = 1 + (int) (letters / (width * LETTERS_PER_MM));
    height(tab, row, 120 + lines * LINE);
  }

  /** What a reader without the extension sees. */
  public static String missing(Layout layout) {
    return "=IF(ISERROR(SHEET.VERSION());"
        + Formula.of(
                "The Set Power Sheets extension is missing here, or Java: no figure counts. Install"
                    + " it, or ask the sender for a copy without formulas.")
            .text(layout.place())
        + ";\"\")";
  }

  /** Hidden cells take no fill and no chart: they are hidden when all is drawn. */
  private void hideWorking(Tab tab) {
    int shown = layout.visible(tab);
    int hidden = layout.widths(tab).size() - shown;
    if (hidden > 0) {
      XCellRange working = range(tab, shown, 0, hidden, 1);
      Uno.set(Uno.as(XColumnRowRange.class, working).getColumns(), "IsVisible", false);
    }
    Uno.set(sheet(tab), "IsVisible", !tab.isHidden());
  }

  private void draw(Tab tab, Block block) {
    int row = layout.spot(block).row();
    if (tab.isGrid()) {
      height(tab, row + block.height(), GRID_GAP);
      height(tab, row + block.height() + 1, GRID_GAP);
    }
    if (Layout.hasHeading(tab, block)) {
      int column = block instanceof BarChart ? layout.chartColumn(tab) : 0;
      write(tab, column, row - 1, words.of(block.title()), styles.of(Style.SECTION));
      height(tab, row - 1, 800);
    }
    if (block instanceof Fields f) {
      f.fields().forEach(this::draw);
    } else if (block instanceof Table t) {
      draw(tab, t);
    } else if (block instanceof Answers a) {
      draw(tab, a);
    } else if (block instanceof Figures f) {
      f.figures().forEach(figure -> draw(tab, f, figure));
    } else if (block instanceof Lines l) {
      draw(tab, l, row);
    } else if (block instanceof Grid g) {
      array(range(tab, 0, row, g.columns(), g.rows()), g.formula().text(layout.place()));
    }
  }

  private void draw(Field field) {
    Layout.Spot spot = layout.spot(field);
    Tab tab = spot.tab();
    int row = spot.row();
    write(tab, 0, row, field.headingText(layout.place()), styles.of(Style.LABEL));
    merge(tab, 0, row, spot.column());
    XCellRange cell = merge(tab, spot.column(), row, spot.span());
    if (field.isInput()) {
      Uno.set(cell, "CellStyle", styles.of(Style.TO_FILL, field.format()));
      Validations.put(cell, field, layout);
      if (field.initial(words) != null) {
        put(cell, 0, 0, field.initial(words));
      }
    } else {
      Uno.set(cell, "CellStyle", styles.of(Style.RESULT, field.format()));
      String text = "=IFERROR(" + field.formula().text(layout.place()) + ";\"\")";
      Uno.tell(() -> cell.getCellByPosition(0, 0).setFormula(text));
    }
    int help = layout.help(field).column();
    String beside = field.isInput() ? Table.beside(field, layout.place()) : words.of(field.help());
    write(tab, help, row, beside, styles.of(Style.HELP));
    int rest = layout.visible(tab) - help;
    Uno.set(range(tab, help, row, rest, 1), "CellStyle", styles.of(Style.HELP));
    if (beside.startsWith("=")) {
      StatusColours.putSentence(range(tab, help, row, 1, 1), styles, Style.HELP, Style.STOP);
    }
    if (tab.isGrid()) { // merged cells do not grow
      height(tab, row, FIELD);
      merge(tab, help, row, rest); // or Calc 7.4 forgets the line below blank cells when it loads
      shrink(cell);
    } else { // grows with what is typed
      XCellRange padded = range(tab, 0, row, 1, 1);
      Uno.set(padded, "ParaTopMargin", FIELD_PADDING);
      Uno.set(padded, "ParaBottomMargin", FIELD_PADDING);
    }
  }

  private static void put(XCellRange range, int column, int row, Object value) {
    Uno.tell(
        () -> {
          var cell = range.getCellByPosition(column, row);
          if (value instanceof Number n) {
            cell.setValue(n.doubleValue());
          } else {
            cell.setFormula(asText(value.toString()));
          }
        });
  }

  private XCellRange merge(Tab tab, int column, int row, int span) {
    XCellRange cells = range(tab, column, row, span, 1);
    if (span > 1) {
      Uno.as(XMergeable.class, cells).merge(true);
    }
    return cells;
  }

  private void headings(Tab tab, Rows rows) {
    int row = layout.firstRow(rows) - 1;
    for (Column column : rows.columns()) {
      Layout.Spot spot = layout.spot(column);
      String style =
          column.isWorking()
              ? styles.of(Style.STAMP) // a hidden heading that wrapped would make the row tall
              : styles.heading(column == statusOf(rows) ? Format.TEXT : column.format());
      write(tab, spot.column(), row, layout.headingText(column), style);
      merge(tab, spot.column(), row, spot.span());
    }
    height(tab, row, 150 + layout.headingLines(rows) * HEADING_LINE);
  }

  private static Column statusOf(Rows rows) {
    return rows instanceof Table t ? t.status() : null;
  }

  private void draw(Tab tab, Table table) {
    headings(tab, table);
    for (Column column : table.columns()) {
      XCellRange cells = cells(column);
      if (column.isInput()) {
        Uno.set(cells, "CellStyle", styles.of(Style.TO_FILL, column.format()));
        Validations.put(cells, column, layout);
      } else {
        boolean plain = column.isWorking() || column == table.status();
        Style style = column.isWorking() ? Style.STAMP : plain ? Style.WORD : Style.RESULT;
        Uno.set(cells, "CellStyle", plain ? styles.of(style) : styles.of(style, column.format()));
      }
      if (column == table.status()) {
        StatusColours.put(cells, styles, Style.WORD);
      }
    }
    formulas(table);
    if (table.inputs().isEmpty()) {
      blanks(tab, table);
    }
    if (tab.isGrid()) {
      spread(tab, table);
    } else if (!tab.isHidden()) {
      filter(tab, table);
    }
  }

  /** Rows of results that show nothing have no line; inside a frame there is room to write. */
  private void blanks(Tab tab, Rows rows) {
    if (tab.frames().isEmpty() && !tab.isHidden()) {
      int columns = layout.visible(tab);
      XCellRange shown = range(tab, 0, layout.firstRow(rows), columns, rows.room());
      rows.columns().stream()
          .filter(c -> !c.isWorking())
          .forEach(c -> StatusColours.putBlank(shown, cells(c), styles));
    }
  }

  private void formulas(Column column) {
    XCellRange cells = cells(column);
    String text = "=" + layout.formula(column);
    Uno.tell(() -> cells.getCellByPosition(0, 0).setFormula(text));
    Uno.as(XCellSeries.class, cells).fillAuto(FillDirection.TO_BOTTOM, 1);
  }

  /** Merges the cells of a table on a tab with a grid; its rows hold two lines. */
  private void spread(Tab tab, Table table) {
    for (int i = 0; i < table.room(); i++) {
      int row = layout.firstRow(table) + i;
      for (Column column : table.columns()) {
        Layout.Spot spot = layout.spot(column);
        merge(tab, spot.column(), row, spot.span());
      }
      height(tab, row, 120 + table.lines() * LINE);
    }
    if (table.lines() == 1) { // merged cells do not grow
      table.columns().stream()
          .filter(c -> !c.isWorking())
          .map(this::cells)
          .forEach(Drawing::shrink);
    }
  }

  private static void shrink(XCellRange cells) {
    Uno.set(cells, "IsTextWrapped", false);
    Uno.set(cells, "ShrinkToFit", true);
  }

  /** A filter; the office keeps the words of headings clear of its buttons. */
  private void filter(Tab tab, Table table) {
    XDatabaseRanges ranges = Uno.as(XDatabaseRanges.class, Uno.get(document, "DatabaseRanges"));
    String name = "Rows_" + tab.name().replace(' ', '_') + "_" + layout.firstRow(table);
    long shown = table.columns().stream().filter(c -> !c.isWorking()).count();
    CellRangeAddress address =
        address(range(tab, 0, layout.firstRow(table) - 1, (int) shown, table.room() + 1));
    ranges.addNewByName(name, address);
    Object made = Uno.ask(() -> ranges.getByName(name));
    Uno.set(made, "AutoFilter", true);
  }

  /** The cells of a column below its heading; the left ones where it spans several. */
  XCellRange cells(Column column) {
    Layout.Spot spot = layout.spot(column);
    return range(spot.tab(), spot.column(), spot.row() + 1, 1, column.owner().room());
  }

  private void draw(Tab tab, Answers answers) {
    headings(tab, answers);
    CellContext place = layout.place(answers);
    Layout.Spot count = layout.count(answers);
    String counted = layout.absolute(tab, count.column(), count.row());
    write(tab, count.column(), count.row(), "=" + answers.countText(place), styles.of(Style.NOTE));
    write(tab, 0, count.row(), "=" + answers.stateText(counted, place), styles.of(Style.HELP));
    for (Column column : answers.columns()) {
      Uno.set(cells(column), "CellStyle", styles.of(Style.RESULT, column.format()));
    }
    array(answers);
    blanks(tab, answers);
  }

  private void array(Answers answers) {
    Tab tab = layout.tab(answers);
    int columns = answers.columns().size();
    Layout.Spot count = layout.count(answers);
    array(
        range(tab, 0, layout.firstRow(answers), columns, answers.room()),
        answers.arrayText(
            layout.absolute(tab, count.column(), count.row()),
            layout.blockRange(answers),
            layout.place(answers)));
  }

  private static void array(XCellRange block, String formula) {
    Uno.as(XArrayFormulaRange.class, block).setArrayFormula("=" + formula);
  }

  private void draw(Tab tab, Figures block, Figure figure) {
    Layout.Spot spot = layout.spot(block, figure);
    int row = spot.row();
    String label = figure.labelText(layout.place());
    write(tab, spot.column(), row - 1, label, styles.of(Style.FIGURE_LABEL));
    merge(tab, spot.column(), row - 1, spot.span());
    String value = "=IFERROR(" + figure.value().text(layout.place()) + ";\"–\")";
    write(tab, spot.column(), row, value, styles.of(Style.FIGURE, figure.format()));
    StatusColours.put(merge(tab, spot.column(), row, spot.span()), styles, Style.FIGURE);
    String note = "=IFERROR(" + figure.note().text(layout.place()) + ";\"\")";
    write(tab, spot.column(), row + 1, note, styles.of(Style.FIGURE_NOTE));
    merge(tab, spot.column(), row + 1, spot.span());
    height(tab, row, 1200);
    height(tab, row + 1, 850);
    height(tab, row + 2, 150);
  }

  private void draw(Tab tab, Lines block, int firstRow) {
    int columns = layout.firstPage(tab);
    int width = 0;
    for (int i = 0; i < columns; i++) {
      width += layout.widths(tab).get(i);
    }
    int shown = Math.min(width, 250);
    int span = columns;
    while (span > 1 && width > shown + 20) {
      span--;
      width -= layout.widths(tab).get(span);
    }
    for (int i = 0; i < block.lines().size(); i++) {
      Formula line = block.lines().get(i);
      String text = line.text(layout.place());
      int row = firstRow + i;
      boolean constant = line instanceof Formula.Literal;
      String written =
          constant
              ? text.substring(1, text.length() - 1).replace("\"\"", "\"")
              : "=IFERROR(" + text + ";\"" + words.of(LINE_IN_ERROR) + "\")";
      write(tab, 0, row, written, styles.of(block.style()));
      merge(tab, 0, row, span);
      int lines = constant ? 1 + (int) (written.length() / (width * LETTERS_PER_MM)) : 2;
      height(tab, row, 120 + lines * LINE);
    }
  }

  private void height(Tab tab, int row, int height) {
    Object rows = Uno.as(XColumnRowRange.class, range(tab, 0, row, 1, 1)).getRows();
    Uno.set(rows, "Height", height);
  }

  private void charts(Tab tab) {
    int number = 0;
    for (Block block : tab.blocks()) {
      if (block instanceof BarChart chart) {
        List<CellRangeAddress> ranges = new ArrayList<>();
        ranges.add(withHeading(chart.categories()));
        chart.series().forEach(s -> ranges.add(withHeading(s)));
        Set<Rows> charted = chart.series().stream().map(Column::owner).collect(toSet());
        charted.forEach(this::clearResults);
        Charts.draw(
            sheet(tab),
            tab.name() + " chart " + ++number, // unique in the whole file
            over(tab, chart),
            ranges.toArray(new CellRangeAddress[0]),
            chart,
            words.of(chart.axis()));
        charted.forEach(this::formulas);
      }
    }
  }

  private XCellRange over(Tab tab, BarChart chart) {
    int first = layout.chartColumn(tab);
    int columns = layout.firstPage(tab) - first;
    return range(tab, first, layout.spot(chart).row(), columns, chart.rows());
  }

  /** Charts stand where their rows are now, which may have grown. */
  private void placeCharts(Tab tab) {
    int number = 0;
    for (Block block : tab.blocks()) {
      if (block instanceof BarChart chart) {
        Charts.place(sheet(tab), number++, over(tab, chart));
      }
    }
  }

  /** A chart made over texts gets no series: its cells are empty while it is made. */
  private void clearResults(Rows rows) {
    if (rows instanceof Answers) {
      clear(range(layout.tab(rows), 0, layout.firstRow(rows), rows.columns().size(), rows.room()));
    } else {
      rows.columns().stream().filter(c -> !c.isInput()).forEach(c -> clear(cells(c)));
    }
  }

  private void formulas(Rows rows) {
    if (rows instanceof Answers answers) {
      array(answers);
    } else {
      rows.columns().stream().filter(c -> !c.isInput()).forEach(this::formulas);
    }
  }

  static void clear(XCellRange cells) {
    Uno.as(XSheetOperation.class, cells)
        .clearContents(CellFlags.VALUE | CellFlags.STRING | CellFlags.DATETIME | CellFlags.FORMULA);
  }

  private CellRangeAddress withHeading(Column column) {
    CellRangeAddress address = address(cells(column));
    address.StartRow--;
    return address;
  }

  private static CellRangeAddress address(XCellRange range) {
    return Uno.as(com.sun.star.sheet.XCellRangeAddressable.class, range).getRangeAddress();
  }

  private void names() {
    XNamedRanges names = Uno.as(XNamedRanges.class, Uno.get(document, "NamedRanges"));
    CellAddress origin = new CellAddress();
    layout.names().forEach((name, cells) -> names.addNewByName(name, cells, origin, 0));
    layout.shared().forEach((c, name) -> names.addNewByName(name, layout.sharedText(c), origin, 0));
  }

  /** The title that the document shows, and the version of its template. */
  public void properties(String title) {
    XDocumentProperties properties =
        Uno.as(XDocumentPropertiesSupplier.class, document).getDocumentProperties();
    properties.setTitle(title);
    XPropertyContainer own = properties.getUserDefinedProperties();
    String version = template.fileName() + " " + template.version();
    if (!words.isEnglish()) {
      version += "-" + words.language();
    }
    String origin = version;
    if (!Uno.as(com.sun.star.beans.XPropertySet.class, own)
        .getPropertySetInfo()
        .hasPropertyByName(VERSION_PROPERTY)) {
      Uno.tell(() -> own.addProperty(VERSION_PROPERTY, (short) 0, origin));
    }
  }

  /**
   * Recalculates everything; until now nothing was, as every cell that is written would cost one.
   */
  void calculate() {
    XCalculatable calculation = Uno.as(XCalculatable.class, document);
    calculation.calculateAll();
    calculation.enableAutomaticCalculation(true);
  }

  /** Notes that the first rows of a table have been filled, so that they are printed. */
  void filled(Rows rows, int count) {
    filled.put(rows, count);
  }

  /** How many rows are printed. */
  int filled(Rows rows) {
    return filled.getOrDefault(rows, PRINTED_WHEN_EMPTY);
  }

  /** As {@link #finish}, for a file to fill: a row filled later is printed too. */
  public void finishToFill() {
    template.tables().forEach(t -> filled.put(t, t.room()));
    finish();
  }

  /** Print areas, frozen panes, protection: the last step before storing. */
  public void finish() {
    calculate();
    XController controller = Uno.as(XModel.class, document).getCurrentController();
    XSpreadsheetView view = Uno.as(XSpreadsheetView.class, controller);
    for (Tab tab : template.tabs()) {
      if (!tab.isHidden()) {
        fitRows(tab);
        placeCharts(tab);
        print(tab);
        view.setActiveSheet(sheet(tab));
        Uno.set(controller, "ShowGrid", false);
        Uno.set(controller, "ShowPageBreaks", false);
        XCellRange first = firstToFill(tab);
        Uno.as(XSelectionSupplier.class, controller).select(first);
        freeze(tab, Uno.as(XViewFreezable.class, controller));
      }
    }
    view.setActiveSheet(sheet(template.tabs().get(0)));
    template.tabs().forEach(t -> Uno.as(XProtectable.class, sheet(t)).protect(""));
  }

  /** Rows are as tall as what they show now; merged cells keep the height they have. */
  private void fitRows(Tab tab) {
    if (!tab.isGrid()) {
      for (Rows rows : tab.tables()) {
        XCellRange cells = range(tab, 0, layout.firstRow(rows), 1, rows.room());
        Uno.set(Uno.as(XColumnRowRange.class, cells).getRows(), "OptimalHeight", true);
      }
    }
  }

  /** Names and headings stay in sight; the headings only where all rows below are theirs. */
  private void freeze(Tab tab, XViewFreezable view) {
    if (!tab.isGrid() && tab.blocks().get(0) instanceof Rows rows) {
      boolean alone = tab.tables().size() == 1;
      view.freezeAtPosition(1, alone ? layout.firstRow(rows) : 0);
    }
  }

  /** Takes a finished drawing up again, to fill it. */
  public void takeUp() {
    filled.clear();
    Uno.as(XCalculatable.class, document).enableAutomaticCalculation(false);
    template
        .tabs()
        .forEach(t -> Uno.tell(() -> Uno.as(XProtectable.class, sheet(t)).unprotect("")));
  }

  /** Where the cursor waits on a tab: its first cell to fill, or its title where that is far. */
  private XCellRange firstToFill(Tab tab) {
    for (Block block : tab.blocks()) {
      if (layout.spot(block).row() > FIRST_SCREEN) {
        break;
      }
      if (block instanceof Fields f) {
        for (Field field : f.fields()) {
          if (field.isInput()) {
            Layout.Spot spot = layout.spot(field);
            return range(tab, spot.column(), spot.row(), 1, 1);
          }
        }
      } else if (block instanceof Table t && !t.inputs().isEmpty()) {
        return range(tab, 0, layout.firstRow(t), 1, 1);
      }
    }
    return range(tab, 0, 0, 1, 1);
  }

  private void print(Tab tab) {
    int last = layout.lastRow(tab);
    int from = tab.printsFrom() == null ? 0 : top(tab, tab.printsFrom());
    List<Block> blocks = tab.blocks();
    XPrintAreas areas = Uno.as(XPrintAreas.class, sheet(tab));
    if (blocks.get(blocks.size() - 1) instanceof Table t) {
      int rows = Math.min(t.room(), filled(t));
      last = layout.firstRow(t) + rows - 1;
    }
    areas.setPrintAreas(
        new CellRangeAddress[] {
          address(range(tab, 0, from, layout.visible(tab), last + 1 - from))
        });
    for (Block block : tab.pages()) {
      Object rows = Uno.as(XColumnRowRange.class, range(tab, 0, top(tab, block), 1, 1)).getRows();
      Uno.set(rows, "IsStartOfNewPage", true);
    }
    if (!tab.isGrid() && blocks.get(0) instanceof Rows rows && tab.tables().size() == 1) {
      areas.setTitleRows(address(range(tab, 0, 0, 1, layout.firstRow(rows))));
      areas.setPrintTitleRows(true);
    }
    if (tab.isResult()) {
      areas.setTitleRows(address(range(tab, 0, 0, 1, HEAD)));
      areas.setPrintTitleRows(true);
    }
    if (layout.pagesAcross(tab) > 1) {
      areas.setTitleColumns(address(range(tab, 0, 0, 1, 1)));
      areas.setPrintTitleColumns(true);
    }
  }
}
