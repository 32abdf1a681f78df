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
import org.setpower.templates.spec.ArrayResult;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Block;
import org.setpower.templates.spec.CellContext;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.CellStyle;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.IssueList;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.MatrixBlock;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableBase;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.text.MessageCatalog;

/**
 * A template drawn in an office: values and formulas, styles, validation, names, charts, print
 * set-up. It may then be filled; {@link #finish()} freezes panes and protects, and comes last.
 */
public final class WorkbookWriter {
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

  private final WorkbookSpec template;
  private final MessageCatalog words;
  private final Layout layout;
  private final XComponent document;
  private final XSpreadsheetDocument book;
  private final StyleWriter styles;
  private final Map<SheetSpec, XSpreadsheet> sheets = new IdentityHashMap<>();
  private final Map<TableBase, Integer> filled = new IdentityHashMap<>();

  private WorkbookWriter(
      XComponent document, WorkbookSpec template, MessageCatalog words, StyleWriter styles) {
    this.template = template;
    this.words = words;
    this.document = document;
    this.styles = styles;
    layout = new Layout(template, words);
    book = UnoAccess.as(XSpreadsheetDocument.class, document);
  }

  /** Draws a template into a new document, in English. */
  public static WorkbookWriter of(Office office, WorkbookSpec template) throws IOException {
    return of(office, template, MessageCatalog.english());
  }

  /** Draws a template into a new document, in the language of these words. */
  public static WorkbookWriter of(Office office, WorkbookSpec template, MessageCatalog words)
      throws IOException {
    XComponent document = office.newSpreadsheet();
    StyleWriter styles = new StyleWriter(document, words.language());
    WorkbookWriter drawing = new WorkbookWriter(document, template, words, styles);
    drawing.draw();
    return drawing;
  }

  /** A finished drawing, opened again to be filled. */
  public static WorkbookWriter over(
      XComponent document, WorkbookSpec template, MessageCatalog words) {
    WorkbookWriter drawing =
        new WorkbookWriter(document, template, words, null); // it has its styles
    drawing.reopen();
    return drawing;
  }

  public XComponent document() {
    return document;
  }

  public Layout layout() {
    return layout;
  }

  WorkbookSpec template() {
    return template;
  }

  private void draw() {
    UnoAccess.set(document, "Wildcards", false);
    UnoAccess.set(document, "RegularExpressions", false);
    UnoAccess.set(document, "MatchWholeCell", true);
    UnoAccess.set(document, "IgnoreCase", true);
    XModel model = UnoAccess.as(XModel.class, document);
    UnoAccess.as(XCalculatable.class, document).enableAutomaticCalculation(false);
    model.lockControllers();
    makeTabs();
    names();
    template.tabs().forEach(this::draw);
    model.unlockControllers();
    template.tabs().forEach(this::charts);
    template.tabs().forEach(this::hideWorking);
    ExampleLoader start = new ExampleLoader(this, words);
    template.tables().stream()
        .filter(TableSpec.class::isInstance)
        .forEach(r -> start.start((TableSpec) r));
    properties(words.of(template.title()));
  }

  private void makeTabs() {
    var sheets = book.getSheets();
    for (int i = 0; i < template.tabs().size(); i++) {
      String name = layout.name(template.tabs().get(i));
      if (i == 0) {
        Object only = UnoAccess.ask(() -> UnoAccess.as(XIndexAccess.class, sheets).getByIndex(0));
        UnoAccess.as(XNamed.class, only).setName(name);
      } else {
        sheets.insertNewByName(name, (short) i);
      }
    }
  }

  XSpreadsheet sheet(SheetSpec tab) {
    return sheets.computeIfAbsent(
        tab,
        t ->
            UnoAccess.ask(
                () ->
                    UnoAccess.as(XSpreadsheet.class, book.getSheets().getByName(layout.name(t)))));
  }

  XCellRange range(SheetSpec tab, int column, int row, int columns, int rows) {
    return UnoAccess.ask(
        () -> sheet(tab).getCellRangeByPosition(column, row, column + columns - 1, row + rows - 1));
  }

  private void frame(SheetSpec tab, SheetSpec.Frames frames) {
    int top = top(tab, frames.first());
    int rows = layout.spot(frames.last()).row() + frames.last().height() - top;
    int columns = layout.visible(tab) / frames.across();
    for (int i = 0; i < frames.across(); i++) {
      styles.frame(range(tab, i * columns, top, columns, rows));
    }
  }

  /** The first row of a block, its heading included. */
  private int top(SheetSpec tab, Block block) {
    return layout.spot(block).row() - (Layout.hasHeading(tab, block) ? 1 : 0);
  }

  private void write(SheetSpec tab, int column, int row, String text, String style) {
    XCellRange cell = range(tab, column, row, 1, 1);
    UnoAccess.set(cell, "CellStyle", style);
    UnoAccess.tell(() -> cell.getCellByPosition(0, 0).setFormula(asText(text)));
  }

  /** A text that would be read as something else is marked as text. */
  private static String asText(String text) {
    return text.matches("[-+0-9.'].*") ? "'" + text : text;
  }

  private void draw(SheetSpec tab) {
    Object sheet = sheet(tab);
    Object columns = UnoAccess.as(XColumnRowRange.class, sheet).getColumns();
    List<Integer> widths = layout.widths(tab);
    for (int i = 0; i < widths.size(); i++) {
      int index = i;
      Object column =
          UnoAccess.ask(() -> UnoAccess.as(XIndexAccess.class, columns).getByIndex(index));
      UnoAccess.set(column, "Width", 100 * widths.get(i));
    }
    String title = words.of(tab.title());
    String lead = words.of(tab.lead());
    boolean wide = layout.pagesAcross(tab) > 1; // then column A is printed on each page
    boolean fits = !wide || title.length() * TITLE_LETTER < layout.widths(tab).get(0);
    write(tab, fits ? 0 : 1, 0, title, styles.of(CellStyle.TITLE));
    int besideNames = wide ? 1 : 0;
    write(tab, besideNames, 1, lead, styles.of(CellStyle.LEAD));
    if (wide || lead.length() > (tab.isPortrait() ? LEAD_UPRIGHT : LEAD_LETTERS)) {
      wrapLead(tab, lead, besideNames);
    }
    if (template.tabs().indexOf(tab) == 0) {
      write(tab, 0, 2, missingExtensionNotice(layout), styles.of(CellStyle.MISSING));
      UnoAccess.set(range(tab, 0, 2, 1, 1), "IsTextWrapped", false);
    } else {
      String stamp = "=" + layout.errorFirstNotice() + "&" + template.stamp().text(layout.place());
      write(tab, besideNames, 2, stamp, styles.of(CellStyle.STAMP));
      StatusColours.putSentence(
          range(tab, besideNames, 2, 1, 1), styles, CellStyle.STAMP, CellStyle.STOP);
    }
    if (!tab.isGrid() && !tab.isHidden()) {
      firstFinding(tab, besideNames);
    }
    tab.blocks().forEach(b -> draw(tab, b));
    tab.frames().forEach(f -> frame(tab, f));
    if (tab.ink() != CellStyle.Ink.NONE) {
      UnoAccess.set(sheet, "TabColor", tab.ink());
    }
    UnoAccess.set(sheet, "PageStyle", styles.page(tab, layout.pagesAcross(tab)));
  }

  /** The line that says what to do stays on the first page, and on the screen. */
  private void wrapLead(SheetSpec tab, String lead, int first) {
    int span = headSpan(tab, first);
    merge(tab, first, 1, span);
    UnoAccess.set(range(tab, first, 1, 1, 1), "IsTextWrapped", true);
    headLines(tab, 1, first, span, lead.length());
  }

  /** Below the stamp: what is the matter with the first row that stops, or is to be looked at. */
  private void firstFinding(SheetSpec tab, int first) {
    List<TableSpec> tables = IssueList.explained(tab);
    if (!tables.isEmpty()) {
      String text = "=IFERROR(" + IssueList.first(tables).text(layout.place()) + ";\"\")";
      write(tab, first, FINDING_ROW, text, styles.of(CellStyle.FINDING));
      int span = headSpan(tab, first);
      XCellRange cell = merge(tab, first, FINDING_ROW, span);
      StatusColours.putSentence(cell, styles, CellStyle.FINDING, CellStyle.STOP, CellStyle.CHECK);
      headLines(tab, FINDING_ROW, first, span, LONGEST_FINDING);
    }
  }

  /** How many columns a line of the head spans. */
  private int headSpan(SheetSpec tab, int first) {
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
  private void headLines(SheetSpec tab, int row, int first, int span, int letters) {
    int width =
        layout.widths(tab).subList(first, first + span).stream().mapToInt(Integer::intValue).sum();
    int lines = 1 + (int) (letters / (width * LETTERS_PER_MM));
    height(tab, row, 120 + lines * LINE);
  }

  /** What a reader without the extension sees. */
  public static String missingExtensionNotice(Layout layout) {
    return "=IF(ISERROR(SHEET.VERSION());"
        + Formula.of(PlanBlockWriter.MISSING).text(layout.place())
        + ";\"\")";
  }

  /** Hidden cells take no fill and no chart: they are hidden when all is drawn. */
  private void hideWorking(SheetSpec tab) {
    int shown = layout.visible(tab);
    int hidden = layout.widths(tab).size() - shown;
    if (hidden > 0) {
      XCellRange working = range(tab, shown, 0, hidden, 1);
      UnoAccess.set(UnoAccess.as(XColumnRowRange.class, working).getColumns(), "IsVisible", false);
    }
    UnoAccess.set(sheet(tab), "IsVisible", !tab.isHidden());
  }

  private void draw(SheetSpec tab, Block block) {
    int row = layout.spot(block).row();
    if (tab.isGrid()) {
      height(tab, row + block.height(), GRID_GAP);
      height(tab, row + block.height() + 1, GRID_GAP);
    }
    if (Layout.hasHeading(tab, block)) {
      int column = block instanceof BarChart ? layout.chartColumn(tab) : 0;
      write(tab, column, row - 1, words.of(block.title()), styles.of(CellStyle.SECTION));
      height(tab, row - 1, 800);
    }
    if (block instanceof FieldBlock f) {
      f.fields().forEach(this::draw);
    } else if (block instanceof TableSpec t) {
      draw(tab, t);
    } else if (block instanceof ArrayResult a) {
      draw(tab, a);
    } else if (block instanceof KeyFigures f) {
      f.figures().forEach(figure -> draw(tab, f, figure));
    } else if (block instanceof TextBlock l) {
      draw(tab, l, row);
    } else if (block instanceof MatrixBlock g) {
      array(range(tab, 0, row, g.columns(), g.rows()), g.formula().text(layout.place()));
    }
  }

  private void draw(FieldSpec field) {
    Layout.CellPosition spot = layout.spot(field);
    SheetSpec tab = spot.tab();
    int row = spot.row();
    write(tab, 0, row, field.headingText(layout.place()), styles.of(CellStyle.LABEL));
    merge(tab, 0, row, spot.column());
    XCellRange cell = merge(tab, spot.column(), row, spot.span());
    if (field.isInput()) {
      UnoAccess.set(cell, "CellStyle", styles.of(CellStyle.TO_FILL, field.format()));
      ValidationWriter.put(cell, field, layout);
      if (field.initial(words) != null) {
        put(cell, 0, 0, field.initial(words));
      }
    } else {
      UnoAccess.set(cell, "CellStyle", styles.of(CellStyle.RESULT, field.format()));
      String text = "=IFERROR(" + field.formula().text(layout.place()) + ";\"\")";
      UnoAccess.tell(() -> cell.getCellByPosition(0, 0).setFormula(text));
    }
    int help = layout.help(field).column();
    String beside =
        field.isInput() ? TableSpec.beside(field, layout.place()) : words.of(field.help());
    write(tab, help, row, beside, styles.of(CellStyle.HELP));
    int rest = layout.visible(tab) - help;
    UnoAccess.set(range(tab, help, row, rest, 1), "CellStyle", styles.of(CellStyle.HELP));
    if (beside.startsWith("=")) {
      StatusColours.putSentence(
          range(tab, help, row, 1, 1), styles, CellStyle.HELP, CellStyle.STOP);
    }
    if (tab.isGrid()) { // merged cells do not grow
      height(tab, row, FIELD);
      merge(tab, help, row, rest); // or Calc 7.4 forgets the line below blank cells when it loads
      shrink(cell);
    } else { // grows with what is typed
      XCellRange padded = range(tab, 0, row, 1, 1);
      UnoAccess.set(padded, "ParaTopMargin", FIELD_PADDING);
      UnoAccess.set(padded, "ParaBottomMargin", FIELD_PADDING);
    }
  }

  private static void put(XCellRange range, int column, int row, Object value) {
    UnoAccess.tell(
        () -> {
          var cell = range.getCellByPosition(column, row);
          if (value instanceof Number n) {
            cell.setValue(n.doubleValue());
          } else {
            cell.setFormula(asText(value.toString()));
          }
        });
  }

  private XCellRange merge(SheetSpec tab, int column, int row, int span) {
    XCellRange cells = range(tab, column, row, span, 1);
    if (span > 1) {
      UnoAccess.as(XMergeable.class, cells).merge(true);
    }
    return cells;
  }

  private void headings(SheetSpec tab, TableBase rows) {
    int row = layout.firstRow(rows) - 1;
    for (ColumnSpec column : rows.columns()) {
      Layout.CellPosition spot = layout.spot(column);
      String style =
          column.isWorking()
              ? styles.of(CellStyle.STAMP) // a hidden heading that wrapped would make the row tall
              : styles.heading(column == statusOf(rows) ? CellFormat.TEXT : column.format());
      write(tab, spot.column(), row, layout.headingText(column), style);
      merge(tab, spot.column(), row, spot.span());
    }
    height(tab, row, 150 + layout.headingLines(rows) * HEADING_LINE);
  }

  private static ColumnSpec statusOf(TableBase rows) {
    return rows instanceof TableSpec t ? t.status() : null;
  }

  private void draw(SheetSpec tab, TableSpec table) {
    headings(tab, table);
    for (ColumnSpec column : table.columns()) {
      XCellRange cells = cells(column);
      if (column.isInput()) {
        UnoAccess.set(cells, "CellStyle", styles.of(CellStyle.TO_FILL, column.format()));
        ValidationWriter.put(cells, column, layout);
      } else {
        boolean plain = column.isWorking() || column == table.status();
        CellStyle style =
            column.isWorking() ? CellStyle.STAMP : plain ? CellStyle.WORD : CellStyle.RESULT;
        UnoAccess.set(
            cells, "CellStyle", plain ? styles.of(style) : styles.of(style, column.format()));
      }
      if (column == table.status()) {
        StatusColours.put(cells, styles, CellStyle.WORD);
      }
    }
    formulas(table);
    if (table.inputs().isEmpty()) {
      blanks(tab, table);
    }
    if (tab.isGrid()) {
      mergeCells(tab, table);
    } else if (!tab.isHidden()) {
      filter(tab, table);
    }
  }

  /** Rows of results that show nothing have no line; inside a frame there is room to write. */
  private void blanks(SheetSpec tab, TableBase rows) {
    if (tab.frames().isEmpty() && !tab.isHidden()) {
      int columns = layout.visible(tab);
      XCellRange shown = range(tab, 0, layout.firstRow(rows), columns, rows.room());
      rows.columns().stream()
          .filter(c -> !c.isWorking())
          .forEach(c -> StatusColours.putBlank(shown, cells(c), styles));
    }
  }

  private void formulas(ColumnSpec column) {
    XCellRange cells = cells(column);
    String text = "=" + layout.formula(column);
    UnoAccess.tell(() -> cells.getCellByPosition(0, 0).setFormula(text));
    UnoAccess.as(XCellSeries.class, cells).fillAuto(FillDirection.TO_BOTTOM, 1);
  }

  /** Merges the cells of a table on a tab with a grid; its rows hold two lines. */
  private void mergeCells(SheetSpec tab, TableSpec table) {
    for (int i = 0; i < table.room(); i++) {
      int row = layout.firstRow(table) + i;
      for (ColumnSpec column : table.columns()) {
        Layout.CellPosition spot = layout.spot(column);
        merge(tab, spot.column(), row, spot.span());
      }
      height(tab, row, 120 + table.linesPerRow() * LINE);
    }
    if (table.linesPerRow() == 1) { // merged cells do not grow
      table.columns().stream()
          .filter(c -> !c.isWorking())
          .map(this::cells)
          .forEach(WorkbookWriter::shrink);
    }
  }

  private static void shrink(XCellRange cells) {
    UnoAccess.set(cells, "IsTextWrapped", false);
    UnoAccess.set(cells, "ShrinkToFit", true);
  }

  /** A filter; the office keeps the words of headings clear of its buttons. */
  private void filter(SheetSpec tab, TableSpec table) {
    XDatabaseRanges ranges =
        UnoAccess.as(XDatabaseRanges.class, UnoAccess.get(document, "DatabaseRanges"));
    String name = "Rows_" + tab.name().replace(' ', '_') + "_" + layout.firstRow(table);
    long shown = table.columns().stream().filter(c -> !c.isWorking()).count();
    CellRangeAddress address =
        address(range(tab, 0, layout.firstRow(table) - 1, (int) shown, table.room() + 1));
    ranges.addNewByName(name, address);
    Object made = UnoAccess.ask(() -> ranges.getByName(name));
    UnoAccess.set(made, "AutoFilter", true);
  }

  /** The cells of a column below its heading; the left ones where it spans several. */
  XCellRange cells(ColumnSpec column) {
    Layout.CellPosition spot = layout.spot(column);
    return range(spot.tab(), spot.column(), spot.row() + 1, 1, column.owner().room());
  }

  private void draw(SheetSpec tab, ArrayResult answers) {
    headings(tab, answers);
    CellContext place = layout.place(answers);
    Layout.CellPosition count = layout.count(answers);
    String counted = layout.absolute(tab, count.column(), count.row());
    write(
        tab,
        count.column(),
        count.row(),
        "=" + answers.countText(place),
        styles.of(CellStyle.NOTE));
    write(tab, 0, count.row(), "=" + answers.stateText(counted, place), styles.of(CellStyle.HELP));
    for (ColumnSpec column : answers.columns()) {
      UnoAccess.set(cells(column), "CellStyle", styles.of(CellStyle.RESULT, column.format()));
    }
    array(answers);
    blanks(tab, answers);
  }

  private void array(ArrayResult answers) {
    SheetSpec tab = layout.tab(answers);
    int columns = answers.columns().size();
    Layout.CellPosition count = layout.count(answers);
    array(
        range(tab, 0, layout.firstRow(answers), columns, answers.room()),
        answers.arrayText(
            layout.absolute(tab, count.column(), count.row()),
            layout.blockRange(answers),
            layout.place(answers)));
  }

  private static void array(XCellRange block, String formula) {
    UnoAccess.as(XArrayFormulaRange.class, block).setArrayFormula("=" + formula);
  }

  private void draw(SheetSpec tab, KeyFigures block, KeyFigure figure) {
    Layout.CellPosition spot = layout.spot(block, figure);
    int row = spot.row();
    String label = figure.labelText(layout.place());
    write(tab, spot.column(), row - 1, label, styles.of(CellStyle.FIGURE_LABEL));
    merge(tab, spot.column(), row - 1, spot.span());
    String value = "=IFERROR(" + figure.value().text(layout.place()) + ";\"–\")";
    write(tab, spot.column(), row, value, styles.of(CellStyle.FIGURE, figure.format()));
    StatusColours.put(merge(tab, spot.column(), row, spot.span()), styles, CellStyle.FIGURE);
    String note = "=IFERROR(" + figure.note().text(layout.place()) + ";\"\")";
    write(tab, spot.column(), row + 1, note, styles.of(CellStyle.FIGURE_NOTE));
    merge(tab, spot.column(), row + 1, spot.span());
    height(tab, row, 1200);
    height(tab, row + 1, 850);
    height(tab, row + 2, 150);
  }

  private void draw(SheetSpec tab, TextBlock block, int firstRow) {
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

  private void height(SheetSpec tab, int row, int height) {
    Object rows = UnoAccess.as(XColumnRowRange.class, range(tab, 0, row, 1, 1)).getRows();
    UnoAccess.set(rows, "Height", height);
  }

  private void charts(SheetSpec tab) {
    int number = 0;
    for (Block block : tab.blocks()) {
      if (block instanceof BarChart chart) {
        List<CellRangeAddress> ranges = new ArrayList<>();
        ranges.add(withHeading(chart.categories()));
        chart.series().forEach(s -> ranges.add(withHeading(s)));
        Set<TableBase> charted = chart.series().stream().map(ColumnSpec::owner).collect(toSet());
        charted.forEach(this::clearResults);
        ChartWriter.draw(
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

  private XCellRange over(SheetSpec tab, BarChart chart) {
    int first = layout.chartColumn(tab);
    int columns = layout.firstPage(tab) - first;
    return range(tab, first, layout.spot(chart).row(), columns, chart.rows());
  }

  /** Charts stand where their rows are now, which may have grown. */
  private void placeCharts(SheetSpec tab) {
    int number = 0;
    for (Block block : tab.blocks()) {
      if (block instanceof BarChart chart) {
        ChartWriter.place(sheet(tab), number++, over(tab, chart));
      }
    }
  }

  /** A chart made over texts gets no series: its cells are empty while it is made. */
  private void clearResults(TableBase rows) {
    if (rows instanceof ArrayResult) {
      clear(range(layout.tab(rows), 0, layout.firstRow(rows), rows.columns().size(), rows.room()));
    } else {
      rows.columns().stream().filter(c -> !c.isInput()).forEach(c -> clear(cells(c)));
    }
  }

  private void formulas(TableBase rows) {
    if (rows instanceof ArrayResult answers) {
      array(answers);
    } else {
      rows.columns().stream().filter(c -> !c.isInput()).forEach(this::formulas);
    }
  }

  static void clear(XCellRange cells) {
    UnoAccess.as(XSheetOperation.class, cells)
        .clearContents(CellFlags.VALUE | CellFlags.STRING | CellFlags.DATETIME | CellFlags.FORMULA);
  }

  private CellRangeAddress withHeading(ColumnSpec column) {
    CellRangeAddress address = address(cells(column));
    address.StartRow--;
    return address;
  }

  private static CellRangeAddress address(XCellRange range) {
    return UnoAccess.as(com.sun.star.sheet.XCellRangeAddressable.class, range).getRangeAddress();
  }

  private void names() {
    XNamedRanges names = UnoAccess.as(XNamedRanges.class, UnoAccess.get(document, "NamedRanges"));
    CellAddress origin = new CellAddress();
    layout.names().forEach((name, cells) -> names.addNewByName(name, cells, origin, 0));
    layout.shared().forEach((c, name) -> names.addNewByName(name, layout.sharedText(c), origin, 0));
  }

  /** The title that the document shows, and the version of its template. */
  public void properties(String title) {
    XDocumentProperties properties =
        UnoAccess.as(XDocumentPropertiesSupplier.class, document).getDocumentProperties();
    properties.setTitle(title);
    XPropertyContainer own = properties.getUserDefinedProperties();
    String version = template.fileName() + " " + template.version();
    if (!words.isEnglish()) {
      version += "-" + words.language();
    }
    String origin = version;
    if (!UnoAccess.as(com.sun.star.beans.XPropertySet.class, own)
        .getPropertySetInfo()
        .hasPropertyByName(VERSION_PROPERTY)) {
      UnoAccess.tell(() -> own.addProperty(VERSION_PROPERTY, (short) 0, origin));
    }
  }

  /**
   * Recalculates everything; until now nothing was, as every cell that is written would cost one.
   */
  void calculate() {
    XCalculatable calculation = UnoAccess.as(XCalculatable.class, document);
    calculation.calculateAll();
    calculation.enableAutomaticCalculation(true);
  }

  /** Notes that the first rows of a table have been filled, so that they are printed. */
  void filled(TableBase rows, int count) {
    filled.put(rows, count);
  }

  /** How many rows are printed. */
  int filled(TableBase rows) {
    return filled.getOrDefault(rows, PRINTED_WHEN_EMPTY);
  }

  /** As {@link #finish}, for a file to fill: a row filled later is printed too. */
  public void finishTemplate() {
    template.tables().forEach(t -> filled.put(t, t.room()));
    finish();
  }

  /** Print areas, frozen panes, protection: the last step before storing. */
  public void finish() {
    calculate();
    XController controller = UnoAccess.as(XModel.class, document).getCurrentController();
    XSpreadsheetView view = UnoAccess.as(XSpreadsheetView.class, controller);
    for (SheetSpec tab : template.tabs()) {
      if (!tab.isHidden()) {
        fitRows(tab);
        placeCharts(tab);
        print(tab);
        view.setActiveSheet(sheet(tab));
        UnoAccess.set(controller, "ShowGrid", false);
        UnoAccess.set(controller, "ShowPageBreaks", false);
        XCellRange first = firstToFill(tab);
        UnoAccess.as(XSelectionSupplier.class, controller).select(first);
        freeze(tab, UnoAccess.as(XViewFreezable.class, controller));
      }
    }
    view.setActiveSheet(sheet(template.tabs().get(0)));
    template.tabs().forEach(t -> UnoAccess.as(XProtectable.class, sheet(t)).protect(""));
  }

  /** Rows are as tall as what they show now; merged cells keep the height they have. */
  private void fitRows(SheetSpec tab) {
    if (!tab.isGrid()) {
      for (TableBase rows : tab.tables()) {
        XCellRange cells = range(tab, 0, layout.firstRow(rows), 1, rows.room());
        UnoAccess.set(UnoAccess.as(XColumnRowRange.class, cells).getRows(), "OptimalHeight", true);
      }
    }
  }

  /** Names and headings stay in sight; the headings only where all rows below are theirs. */
  private void freeze(SheetSpec tab, XViewFreezable view) {
    if (!tab.isGrid() && tab.blocks().get(0) instanceof TableBase rows) {
      boolean alone = tab.tables().size() == 1;
      view.freezeAtPosition(1, alone ? layout.firstRow(rows) : 0);
    }
  }

  /** Takes a finished drawing up again, to fill it. */
  public void reopen() {
    filled.clear();
    UnoAccess.as(XCalculatable.class, document).enableAutomaticCalculation(false);
    template
        .tabs()
        .forEach(
            t -> UnoAccess.tell(() -> UnoAccess.as(XProtectable.class, sheet(t)).unprotect("")));
  }

  /** Where the cursor waits on a tab: its first cell to fill, or its title where that is far. */
  private XCellRange firstToFill(SheetSpec tab) {
    for (Block block : tab.blocks()) {
      if (layout.spot(block).row() > FIRST_SCREEN) {
        break;
      }
      if (block instanceof FieldBlock f) {
        for (FieldSpec field : f.fields()) {
          if (field.isInput()) {
            Layout.CellPosition spot = layout.spot(field);
            return range(tab, spot.column(), spot.row(), 1, 1);
          }
        }
      } else if (block instanceof TableSpec t && !t.inputs().isEmpty()) {
        return range(tab, 0, layout.firstRow(t), 1, 1);
      }
    }
    return range(tab, 0, 0, 1, 1);
  }

  private void print(SheetSpec tab) {
    int last = layout.lastRow(tab);
    int from = tab.printsFrom() == null ? 0 : top(tab, tab.printsFrom());
    List<Block> blocks = tab.blocks();
    XPrintAreas areas = UnoAccess.as(XPrintAreas.class, sheet(tab));
    if (blocks.get(blocks.size() - 1) instanceof TableSpec t) {
      int rows = Math.min(t.room(), filled(t));
      last = layout.firstRow(t) + rows - 1;
    }
    areas.setPrintAreas(
        new CellRangeAddress[] {
          address(range(tab, 0, from, layout.visible(tab), last + 1 - from))
        });
    for (Block block : tab.pages()) {
      Object rows =
          UnoAccess.as(XColumnRowRange.class, range(tab, 0, top(tab, block), 1, 1)).getRows();
      UnoAccess.set(rows, "IsStartOfNewPage", true);
    }
    if (!tab.isGrid() && blocks.get(0) instanceof TableBase rows && tab.tables().size() == 1) {
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
