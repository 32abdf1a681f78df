package org.setpower.templates.uno;

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
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeMovement;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XDatabaseRanges;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSheetOutline;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.sheet.XViewFreezable;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellHoriJustify;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.CellVertJustify2;
import com.sun.star.table.TableOrientation;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.util.XMergeable;
import com.sun.star.util.XProtectable;
import com.sun.star.view.XSelectionSupplier;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.office.Office;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.ResultColumn;
import org.setpower.templates.layout.PlanFormulas;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanLayout.Column;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.layout.PlanNames;
import org.setpower.templates.plan.InputCells;
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
import org.setpower.templates.spec.CellStyle;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.text.MessageCatalog;

/** Draws the workbook of a plan in an office. */
public final class PlanWriter {
  /** What every workbook of a plan says besides its own texts. */
  public static final List<String> TEXTS =
      List.of(
          PlanBlockWriter.HIDDEN,
          PlanBlockWriter.MISSING,
          PlanBlockWriter.COPIED,
          PlanBlockWriter.UNITS_STAY,
          PlanFormulas.MORE,
          PlanFormulas.MORE_ROWS,
          PlanFormulas.TO_FIT,
          ValidationWriter.PICK);

  private static final String VERSION_PROPERTY = "Set Power template";
  private static final int LINE = 480; // height of a line of 10 pt in 1/100 mm
  private static final int HEADING_LINE = 420;
  private static final int KEY_ROW = 10; // not hidden: a filter that is lifted shows hidden rows
  private static final int HEAD = 4; // title, what the tab is for, job, notice
  private static final int JOB = 2;

  /** Rows that are repeated on each page at most. */
  private static final int MOST_REPEATED = 9;

  private static final int SENTENCES = 300; // letters of several sentences
  private static final double LETTERS_PER_MM = 0.55; // of 10 pt, on the safe side

  private final PlanWorkbook workbook;
  private final PlanLayout layout;
  private final PlanFormulas formulas;
  private final MessageCatalog words;
  private final XComponent document;
  private final XSpreadsheetDocument book;
  private final StyleWriter styles;
  private final Map<String, XSpreadsheet> sheets = new HashMap<>();

  private PlanWriter(
      XComponent document, PlanWorkbook workbook, MessageCatalog words, StyleWriter styles) {
    this.workbook = workbook;
    this.words = words;
    this.document = document;
    this.styles = styles;
    layout = new PlanLayout(workbook, words);
    formulas = layout.formulas();
    book = UnoAccess.as(XSpreadsheetDocument.class, document);
  }

  /** Draws a workbook into a new document, in the language of these words. */
  public static PlanWriter of(Office office, PlanWorkbook workbook, MessageCatalog words)
      throws IOException {
    XComponent document = office.newSpreadsheet();
    StyleWriter styles = new StyleWriter(document, words.tag());
    PlanWriter drawing = new PlanWriter(document, workbook, words, styles);
    drawing.draw();
    return drawing;
  }

  public XComponent document() {
    return document;
  }

  public PlanLayout layout() {
    return layout;
  }

  private void draw() {
    UnoAccess.set(document, "Wildcards", false);
    UnoAccess.set(document, "RegularExpressions", false);
    UnoAccess.set(document, "MatchWholeCell", true);
    UnoAccess.set(document, "IgnoreCase", true);
    XModel model = UnoAccess.as(XModel.class, document);
    UnoAccess.as(XCalculatable.class, document).enableAutomaticCalculation(false);
    model.lockControllers();
    List<String> tabs = new ArrayList<>(workbook.tabs().stream().map(layout::name).toList());
    tabs.add(PlanNames.TAB);
    makeTabs(tabs);
    names();
    workbook.tabs().forEach(this::draw);
    new PlanBlockWriter(this).draw(List.copyOf(layout.tops().values()));
    model.unlockControllers();
    properties(words.of(workbook.title()));
  }

  private void makeTabs(List<String> tabs) {
    var all = book.getSheets();
    Object only = UnoAccess.ask(() -> UnoAccess.as(XIndexAccess.class, all).getByIndex(0));
    UnoAccess.as(XNamed.class, only).setName(tabs.get(0));
    for (int i = 1; i < tabs.size(); i++) {
      all.insertNewByName(tabs.get(i), (short) i);
    }
  }

  private void names() {
    XNamedRanges names = UnoAccess.as(XNamedRanges.class, UnoAccess.get(document, "NamedRanges"));
    CellAddress origin = new CellAddress();
    layout.ranges().forEach((name, cells) -> names.addNewByName(name, cells, origin, 0));
  }

  XSpreadsheet sheet(String name) {
    return sheets.computeIfAbsent(
        name,
        n -> UnoAccess.ask(() -> UnoAccess.as(XSpreadsheet.class, book.getSheets().getByName(n))));
  }

  XSpreadsheet sheet(PlanTab tab) {
    return sheet(layout.name(tab));
  }

  static XCellRange range(XSpreadsheet sheet, int column, int row, int columns, int rows) {
    return UnoAccess.ask(
        () -> sheet.getCellRangeByPosition(column, row, column + columns - 1, row + rows - 1));
  }

  private XCellRange range(PlanTab tab, int column, int row, int columns, int rows) {
    return range(sheet(tab), column, row, columns, rows);
  }

  private void write(PlanTab tab, int column, int row, String text, String style) {
    XCellRange cell = range(tab, column, row, 1, 1);
    UnoAccess.set(cell, "CellStyle", style);
    put(cell, text);
  }

  /** Writes a formula, or a text that stays one. */
  static void put(XCellRange cell, String text) {
    UnoAccess.tell(
        () -> {
          if (text.startsWith("=")) {
            cell.getCellByPosition(0, 0).setFormula(text);
          } else {
            UnoAccess.as(com.sun.star.text.XText.class, cell.getCellByPosition(0, 0))
                .setString(text);
          }
        });
  }

  private XCellRange merge(PlanTab tab, int column, int row, int span) {
    XCellRange cells = range(tab, column, row, span, 1);
    if (span > 1) {
      UnoAccess.as(XMergeable.class, cells).merge(true);
    }
    return cells;
  }

  /** Merges the cells of each row; copies of merged cells are merged, and a copy takes no time. */
  private void merge(PlanTab tab, int column, int row, int span, int rows) {
    merge(tab, column, row, span);
    if (span == 1) {
      return;
    }
    XCellRangeMovement sheet = UnoAccess.as(XCellRangeMovement.class, sheet(tab));
    for (int done = 1; done < rows; done *= 2) {
      int next = Math.min(done, rows - done);
      CellAddress to = start(range(tab, column, row + done, 1, 1));
      sheet.copyRange(to, address(range(tab, column, row, span, next)));
    }
  }

  static void height(XSpreadsheet sheet, int row, int height) {
    height(range(sheet, 0, row, 1, 1), height);
  }

  private static void height(XCellRange cells, int height) {
    UnoAccess.set(UnoAccess.as(XColumnRowRange.class, cells).getRows(), "Height", height);
  }

  private void height(PlanTab tab, int row, int height) {
    height(sheet(tab), row, height);
  }

  private void draw(PlanTab tab) {
    XSpreadsheet sheet = sheet(tab);
    Object columns = UnoAccess.as(XColumnRowRange.class, sheet).getColumns();
    List<Integer> widths = layout.widths(tab);
    for (int i = 0; i < widths.size(); i++) {
      int index = i;
      Object column =
          UnoAccess.ask(() -> UnoAccess.as(XIndexAccess.class, columns).getByIndex(index));
      UnoAccess.set(column, "Width", 100 * widths.get(i));
    }
    head(tab);
    for (PlanPart part : tab.parts()) {
      draw(tab, part, layout.place(part).row());
    }
    if (tab.ink() != CellStyle.Ink.NONE) {
      UnoAccess.set(sheet, "TabColor", tab.ink());
    }
    UnoAccess.set(
        sheet,
        "PageStyle",
        tab.isSent()
            ? styles.letter()
            : styles.page(tab.isUpright(), tab.isPage() && !tab.isFlowing(), 1));
    UnoAccess.set(sheet, "IsVisible", !tab.isHidden());
  }

  /** Title, what the tab is for, what it belongs to, whether it is a copy. */
  private void head(PlanTab tab) {
    boolean first = workbook.tabs().indexOf(tab) == 0;
    write(tab, 0, 0, words.of(first ? workbook.title() : tab.name()), styles.of(CellStyle.TITLE));
    write(tab, 0, 1, words.of(tab.lead()), styles.of(CellStyle.LEAD));
    write(tab, 0, JOB, "=" + formulas.stamp(tab), styles.of(CellStyle.STAMP));
    write(tab, 0, 3, "=" + formulas.notice(tab), styles.of(CellStyle.MISSING));
    UnoAccess.set(range(tab, 0, 3, 1, 1), "IsTextWrapped", false);
    if (tab.isPaper()) { // its end would be cut at the edge of the paper
      int width = layout.widths(tab).stream().mapToInt(w -> w).sum();
      merge(tab, 0, 1, layout.widths(tab).size());
      UnoAccess.set(range(tab, 0, 1, 1, 1), "IsTextWrapped", true);
      merge(tab, 0, 2, layout.widths(tab).size());
      UnoAccess.set(range(tab, 0, 2, 1, 1), "ShrinkToFit", true);
      int lines = 1 + (int) (words.of(tab.lead()).length() / (width * LETTERS_PER_MM));
      height(tab, 1, 120 + lines * LINE);
    }
  }

  private void draw(PlanTab tab, PlanPart part, int row) {
    if (!part.title().isEmpty()) {
      int above = (part instanceof PlanList list ? layout.headingRow(list) : row) - 1;
      int column = layout.place(part).column();
      // what paper it is stands above the name of the house
      write(tab, column, above, words.of(part.title()), styles.of(titled(part)));
      height(tab, above, 800);
    }
    if (part instanceof PlanTable table) {
      draw(tab, table, row);
    } else if (part instanceof PlanList list) {
      draw(tab, list, row);
    } else if (part instanceof PlanFields fields) {
      draw(tab, fields, row);
    } else if (part instanceof PlanNotes notes) {
      draw(tab, notes, row);
    } else if (part instanceof PlanFigures figures) {
      draw(tab, figures);
    } else if (part instanceof PlanLetter letter) {
      draw(tab, letter, row);
    } else if (part instanceof PlanChart chart) {
      draw(tab, chart, row);
    } else if (part instanceof PlanText text) {
      draw(tab, text, row);
    }
  }

  /** A chart made over texts gets no series: the cells of its list are still empty now. */
  private void draw(PlanTab tab, PlanChart chart, int row) {
    List<CellRangeAddress> ranges = new ArrayList<>();
    ranges.add(charted(chart, chart.names()));
    chart.series().forEach(s -> ranges.add(charted(chart, s)));
    for (int i = 0; i < chart.rows(); i++) {
      height(tab, row + i, 520);
    }
    int wide = Math.min(layout.widths(tab).size(), layout.columns(chart.list()).size());
    ChartWriter.lines(
        sheet(tab),
        tab.name() + " chart",
        range(tab, 0, row, wide, chart.rows()),
        ranges.toArray(new CellRangeAddress[0]),
        words.of(chart.axis()));
  }

  /** A column of the list with its heading, which is written here, for the legend. */
  private CellRangeAddress charted(PlanChart chart, String key) {
    PlanList list = chart.list();
    PlanTab tab = layout.place(list).tab();
    Column column =
        layout.columns(list).stream()
            .filter(c -> c.result().key().equals(key))
            .findFirst()
            .orElseThrow();
    int heading = layout.headingRow(list);
    put(range(tab, column.at(), heading, 1, 1), column.heading());
    return address(range(tab, column.at(), heading, 1, list.rows() + 1));
  }

  private void headings(PlanTab tab, List<Column> columns, int row) {
    for (Column column : columns) {
      String style = styles.heading(column.isVerdict() ? CellFormat.TEXT : column.format());
      write(tab, column.at(), row, layout.broken(column), style);
      merge(tab, column.at(), row, column.span());
    }
    height(tab, row, 150 + layout.headingLines(columns) * HEADING_LINE);
  }

  private void draw(PlanTab tab, PlanTable table, int row) {
    List<Column> columns = layout.columns(table);
    int rows = table.inputs().rows();
    int first = layout.firstRow(table);
    headings(tab, columns, row);
    keys(tab, table, row + 1, first + rows);
    for (Column column : columns) {
      XCellRange cells = range(tab, column.at(), first, 1, rows);
      if (column.input() != null) {
        toFill(cells, column.input(), table.pick(column.input()));
        PlanTable.Unit unit = table.unit(column.input());
        if (unit != null) {
          put(range(tab, column.at(), row, 1, 1), "=" + formulas.heading(column, unit));
        }
      } else {
        results(cells, column, PlanNames.top(table.inputs().key()));
        money(cells, column.format(), CellStyle.RESULT);
      }
    }
    outline(tab, columns, first, rows);
    filled(tab, columns, row + 1, rows);
  }

  /** The row of keys and the end row, by which the plan finds its columns and rows. */
  private void keys(PlanTab tab, PlanTable table, int keyRow, int endRow) {
    List<Column> inputs = layout.columns(table).stream().filter(c -> c.input() != null).toList();
    for (Column column : inputs) {
      write(tab, column.at(), keyRow, column.input().key(), styles.of(CellStyle.KEYS));
    }
    write(tab, inputs.get(0).at(), endRow, InputTable.END, styles.of(CellStyle.KEYS));
    height(tab, keyRow, KEY_ROW);
    height(tab, endRow, KEY_ROW);
  }

  private void toFill(XCellRange cells, InputColumn column, String pick) {
    CellFormat format = InputCells.of(column).format();
    UnoAccess.set(cells, "CellStyle", styles.of(CellStyle.TO_FILL, format));
    money(cells, format, CellStyle.TO_FILL);
    ValidationWriter.put(
        cells,
        InputCells.of(column),
        words,
        InputCells.help(column, words),
        pick == null ? null : layout.range(pick));
    if (column.path().equals(workbook.unitCell())) {
      ValidationWriter.onlyOf(cells, PlanNames.UNITS, words.of(PlanBlockWriter.UNITS_STAY));
    }
  }

  private void results(XCellRange cells, Column column, String name) {
    style(cells, column);
    put(cells, "=" + formulas.cell(column, name));
    UnoAccess.as(XCellSeries.class, cells).fillAuto(FillDirection.TO_BOTTOM, 1);
  }

  private void style(XCellRange cells, Column column) {
    if (column.isVerdict()) {
      UnoAccess.set(cells, "CellStyle", styles.of(CellStyle.WORD));
      StatusColours.putVerdict(cells, styles, CellStyle.WORD);
    } else {
      CellStyle style = column.isReason() ? CellStyle.REASON : CellStyle.RESULT;
      UnoAccess.set(cells, "CellStyle", styles.of(style, column.format()));
    }
  }

  private void money(XCellRange cells, CellFormat format, CellStyle style) {
    if (format == CellFormat.MONEY && !workbook.decimals().isEmpty()) {
      StatusColours.putMoney(cells, styles, style);
    }
  }

  /**
   * Closed groups of columns that few people need. Their texts are not wrapped: the office counts
   * the lines of hidden cells too, and a long one would make its row ten lines high.
   */
  private void outline(PlanTab tab, List<Column> columns, int row, int rows) {
    XSheetOutline outline = UnoAccess.as(XSheetOutline.class, sheet(tab));
    int first = -1;
    for (int i = 0; i <= columns.size(); i++) {
      boolean grouped = i < columns.size() && columns.get(i).grouped();
      if (grouped && first < 0) {
        first = i;
      } else if (!grouped && first >= 0) {
        int left = columns.get(first).at();
        int wide = columns.get(i - 1).at() + 1 - left;
        UnoAccess.set(range(tab, left, row, wide, rows), "IsTextWrapped", false);
        XCellRange top = range(tab, left, 0, wide, 1);
        if (isShown(top)) { // else the group of a table above hides them
          outline.group(address(top), TableOrientation.COLUMNS);
          outline.hideDetail(address(top));
        }
        first = -1;
      }
    }
  }

  private static boolean isShown(XCellRange cells) {
    Object columns = UnoAccess.as(XColumnRowRange.class, cells).getColumns();
    return (boolean) UnoAccess.get(columns, "IsVisible");
  }

  /** The table as commands find it: its cells to fill first, below its row of keys. */
  private void filled(PlanTab tab, List<Column> columns, int keyRow, int rows) {
    XDatabaseRanges ranges =
        UnoAccess.as(XDatabaseRanges.class, UnoAccess.get(document, "DatabaseRanges"));
    int first = columns.stream().filter(c -> c.input() != null).findFirst().orElseThrow().at();
    String name = "Rows_" + tab.name().replace(' ', '_') + "_" + keyRow;
    int wide = columns.get(columns.size() - 1).at() + 1 - first;
    ranges.addNewByName(name, address(range(tab, first, keyRow, wide, rows + 1)));
  }

  private void draw(PlanTab tab, PlanList list, int row) {
    List<Column> columns = layout.columns(list);
    int left = layout.place(list).column();
    if (list.isWide()) {
      drawWide(tab, list, columns.get(0), row);
      return;
    }
    headings(tab, columns, layout.headingRow(list));
    if (tab.isBeside(list)) {
      List<Column> all = new ArrayList<>(columns);
      all.addAll(layout.columns((PlanTable) tab.parts().get(0)));
      height(tab, layout.headingRow(list), 150 + layout.headingLines(all) * HEADING_LINE);
    }
    for (Column column : columns) {
      XCellRange cells = range(tab, column.at(), row + 1, 1, list.rows());
      if (tab.isPage()) { // its cells are merged, which an array cannot be
        merge(tab, column.at(), row + 1, column.span(), list.rows());
        results(cells, column, layout.names().top(list));
      } else {
        style(cells, column);
        String shown = "=" + formulas.array(column, layout.names().top(list));
        UnoAccess.as(XArrayFormulaRange.class, cells).setArrayFormula(shown);
      }
      String mark = list.marks().get(column.result().path());
      if (mark != null) {
        int heading = layout.headingRow(list);
        put(range(tab, column.at(), heading, 1, 1), "=" + formulas.marked(column, mark));
        height(tab, heading, 150 + Math.max(2, layout.headingLines(columns)) * HEADING_LINE);
      }
    }
    if (tab.isPage()) {
      boolean tall = columns.stream().anyMatch(Column::isReason);
      for (Column column : columns) {
        XCellRange cells = range(tab, column.at(), row + 1, 1, list.rows());
        UnoAccess.set(cells, "VertJustify", CellVertJustify2.CENTER);
        if (!tall && list.tall() == 1) { // one line has no room for two
          UnoAccess.set(cells, "IsTextWrapped", false);
          UnoAccess.set(cells, "ShrinkToFit", true);
        }
      }
      int tallest = 120 + Math.max(tall ? 2 : 1, list.tall()) * LINE;
      height(range(tab, 0, row + 1, 1, list.rows()), tallest);
    } else {
      XDatabaseRanges ranges =
          UnoAccess.as(XDatabaseRanges.class, UnoAccess.get(document, "DatabaseRanges"));
      ranges.addNewByName(
          "Rows_" + tab.name().replace(' ', '_') + "_" + (left == 0 ? row : row + "_" + left),
          address(range(tab, left, row, columns.size(), list.rows() + 1)));
    }
    if (list.isPartial()) {
      String style = styles.of(CellStyle.FINDING);
      write(tab, left, row + 1 + list.rows(), "=" + formulas.more(list), style);
      UnoAccess.set(range(tab, left, row + 1 + list.rows(), 1, 1), "IsTextWrapped", false);
    }
    int wide = layout.widths(tab).size() - left;
    XCellRange shown = range(tab, left, row + 1, wide, list.rows());
    for (Column column : columns) {
      StatusColours.putBlank(
          shown, range(tab, column.at(), row + 1, column.span(), list.rows()), styles);
      XCellRange cells = range(tab, column.at(), row + 1, 1, list.rows());
      if (!list.kind().isEmpty()) {
        String word = layout.names().inRow(list.kind(), layout.names().top(list));
        StatusColours.putLooks(cells, styles, word, list, column.format());
      }
      money(cells, column.format(), CellStyle.RESULT);
    }
  }

  /** Paragraphs across the page. */
  private void drawWide(PlanTab tab, PlanList list, Column column, int row) {
    String name = layout.names().top(list);
    merge(tab, 0, row + 1, column.span(), list.rows());
    XCellRange cells = range(tab, 0, row + 1, 1, list.rows());
    UnoAccess.set(cells, "CellStyle", styles.of(CellStyle.LETTER));
    put(cells, "=" + formulas.cell(column, name));
    UnoAccess.as(XCellSeries.class, cells).fillAuto(FillDirection.TO_BOTTOM, 1);
    height(cells, 120 + 2 * LINE);
  }

  private void draw(PlanTab tab, PlanLetter letter, int row) {
    int columns = layout.widths(tab).size();
    for (int i = 0; i < letter.lines().size(); i++) {
      PlanLetter.Line line = letter.lines().get(i);
      if (line.left() != null) {
        CellStyle style = line.isFirst() ? CellStyle.LETTERHEAD : CellStyle.LETTER;
        String text =
            line.isLabelled()
                ? formulas.labelled(line.left())
                : layout.names().single(workbook.result(line.left()));
        write(tab, 0, row + i, "=" + text, styles.of(style));
        merge(tab, 0, row + i, letter.labels());
      }
      if (line.right() != null) {
        ResultColumn result = workbook.result(line.right());
        int values = letter.values();
        String label = "=" + formulas.label(line.right());
        write(tab, letter.labels(), row + i, label, styles.of(CellStyle.LETTER_LABEL));
        merge(tab, letter.labels(), row + i, values - letter.labels());
        String value = "=" + layout.names().single(result);
        write(tab, values, row + i, value, styles.of(CellStyle.LETTER, InputCells.format(result)));
        merge(tab, values, row + i, columns - values);
      }
      height(tab, row + i, line.isFirst() ? 800 : 40 + line.tall() * LINE);
    }
  }

  private void draw(PlanTab tab, PlanFields fields, int row) {
    boolean plain = fields.columns().stream().allMatch(c -> fields.standIn(c).isEmpty());
    int help = plain ? 1 : 2; // what a blank hands over stands between
    for (int i = 0; i < fields.columns().size(); i++) {
      InputColumn column = fields.columns().get(i);
      String heading = layout.label(column);
      XCellRange cell = field(tab, row + i, heading, InputCells.help(column, words), 1, help);
      toFill(cell, column, fields.pick(column));
      if (!fields.standIn(column).isEmpty()) {
        int used = layout.cell(tab) + 1;
        String text = "=" + layout.names().used(column);
        String style = styles.of(CellStyle.RESULT, InputCells.of(column).format());
        write(tab, used, row + i, text, style);
      }
    }
  }

  private void draw(PlanTab tab, PlanNotes notes, int row) {
    for (int i = 0; i < notes.cells().size(); i++) {
      FieldSpec cell = notes.cells().get(i);
      XCellRange at = field(tab, row + i, words.of(cell.heading()), words.of(cell.help()), 2, 2);
      UnoAccess.set(at, "CellStyle", styles.of(CellStyle.TO_FILL, cell.format()));
      ValidationWriter.put(at, cell, words, words.of(cell.help()), null);
    }
  }

  /**
   * Label, cell and help of a single cell to fill; gives the cell.
   *
   * @param wide columns of the cell
   * @param away columns from there to the help
   */
  private XCellRange field(PlanTab tab, int row, String label, String help, int wide, int away) {
    int at = layout.cell(tab);
    int labelled = tab.isPage() ? 0 : PlanLayout.LABEL;
    write(tab, labelled, row, label, styles.of(CellStyle.LABEL));
    merge(tab, labelled, row, at - labelled);
    int span = tab.isPage() ? tab.twelfths(3) : wide;
    int beside = at + (tab.isPage() ? span : away);
    if (tab.isPage()) {
      XCellRange shown = merge(tab, beside, row, tab.grid() - beside);
      UnoAccess.set(shown, "ShrinkToFit", true);
    }
    write(tab, beside, row, help, styles.of(CellStyle.HELP));
    height(tab, row, 560);
    return merge(tab, at, row, span);
  }

  private void draw(PlanTab tab, PlanFigures figures) {
    for (int i = 0; i < figures.columns().size(); i++) {
      ResultColumn column = workbook.result(figures.columns().get(i));
      Place place = layout.figure(figures, i);
      String value = "=" + layout.names().single(column, figures.row());
      CellFormat format = InputCells.format(column);
      String label = layout.label(column);
      if (figures.across() == 0) {
        boolean reason = column.type() == List.class;
        int labelled = tab.isPage() ? 0 : PlanLayout.LABEL;
        write(tab, labelled, place.row(), label, styles.of(CellStyle.LABEL));
        merge(tab, labelled, place.row(), place.column() - labelled);
        write(
            tab,
            place.column(),
            place.row(),
            value,
            styles.of(reason ? CellStyle.REASON : CellStyle.RESULT, format));
        money(range(tab, place.column(), place.row(), 1, 1), format, CellStyle.RESULT);
        XCellRange cell = merge(tab, place.column(), place.row(), span(tab, column, format));
        height(tab, place.row(), reason ? 120 + sentences(tab) * LINE : 560);
        UnoAccess.set(cell, "HoriJustify", CellHoriJustify.LEFT);
        StatusColours.putVerdict(cell, styles, CellStyle.RESULT);
      } else {
        int span = tab.grid() / figures.across();
        write(tab, place.column(), place.row() - 1, label, styles.of(CellStyle.FIGURE_LABEL));
        merge(tab, place.column(), place.row() - 1, span);
        write(tab, place.column(), place.row(), value, styles.of(CellStyle.FIGURE, format));
        XCellRange cell = merge(tab, place.column(), place.row(), span);
        StatusColours.putVerdict(cell, styles, CellStyle.FIGURE);
        if (column.type() == Boolean.class) {
          StatusColours.putNo(cell, styles, CellStyle.FIGURE);
        }
        money(cell, format, CellStyle.FIGURE);
        height(tab, place.row(), 1200);
        height(tab, place.row() + 1, 150);
      }
    }
  }

  /** How many columns the value of a line takes: a list on the tab has narrow ones. */
  private int span(PlanTab tab, ResultColumn column, CellFormat format) {
    if (tab.isPage()) {
      return tab.grid() - tab.twelfths(5);
    }
    int most = layout.widths(tab).size() - 3;
    if (column.type() == List.class) {
      return most;
    }
    return format.isDate() || column.type() == String.class ? Math.min(3, most) : 1;
  }

  /** Lines of text that several sentences take beside a label. */
  private int sentences(PlanTab tab) {
    if (tab.isPage()) {
      return 6;
    }
    List<Integer> widths = layout.widths(tab);
    int width = widths.subList(2, widths.size() - 1).stream().mapToInt(w -> w).sum();
    return (int) Math.min(6, 1 + SENTENCES / (width * LETTERS_PER_MM));
  }

  private static CellStyle titled(PlanPart part) {
    if (part instanceof PlanText text && text.style() == CellStyle.HINT) {
      return CellStyle.HINT_SECTION;
    }
    return part instanceof PlanLetter ? CellStyle.TITLE : CellStyle.SECTION;
  }

  private void draw(PlanTab tab, PlanText text, int row) {
    int span = layout.widths(tab).size();
    int width = 0;
    for (int i = 0; i < span; i++) {
      width += layout.widths(tab).get(i);
      if (width > 250 && !tab.isPage()) {
        span = i;
      }
    }
    for (int i = 0; i < text.lines().size(); i++) {
      String line = words.of(text.lines().get(i));
      write(tab, 0, row + i, line, styles.of(text.style()));
      merge(tab, 0, row + i, span);
      int lines = 1 + (int) (line.length() / (Math.min(width, 250) * LETTERS_PER_MM));
      height(tab, row + i, 120 + Math.max(lines, text.room()) * LINE);
    }
  }

  private static CellAddress start(XCellRange range) {
    CellRangeAddress cells = address(range);
    return new CellAddress(cells.Sheet, cells.StartColumn, cells.StartRow);
  }

  static CellRangeAddress address(XCellRange range) {
    return UnoAccess.as(com.sun.star.sheet.XCellRangeAddressable.class, range).getRangeAddress();
  }

  StyleWriter styles() {
    return styles;
  }

  PlanWorkbook workbook() {
    return workbook;
  }

  /** Fills the first rows of a table. */
  void fill(PlanTable table, Object[]... rows) {
    Place first = layout.place(table.inputs().columns().get(0));
    int columns = table.inputs().columns().size();
    XCellRange cells =
        range(first.tab(), first.column(), first.row(), columns, table.inputs().rows());
    UnoAccess.as(XSheetOperation.class, cells)
        .clearContents(CellFlags.VALUE | CellFlags.STRING | CellFlags.DATETIME | CellFlags.FORMULA);
    if (rows.length > 0) {
      UnoAccess.as(
              XCellRangeData.class,
              range(first.tab(), first.column(), first.row(), columns, rows.length))
          .setDataArray(rows);
    }
  }

  private XCellRange range(PlanTab tab, Place place) {
    return range(tab, place.column(), place.row(), 1, 1);
  }

  /** Fills a single cell. */
  void fill(Place place, Object value) {
    XCellRange cell = range(place.tab(), place);
    UnoAccess.as(XCellRangeData.class, cell).setDataArray(new Object[][] {{value}});
  }

  /** The title that the document shows, and the version of its template. */
  public void properties(String title) {
    XDocumentProperties properties =
        UnoAccess.as(XDocumentPropertiesSupplier.class, document).getDocumentProperties();
    properties.setTitle(title);
    properties.setDescription(words.of(workbook.purpose()));
    String origin =
        workbook.fileName() + " " + workbook.version() + (words.isKey() ? "" : "-" + words.tag());
    var own = properties.getUserDefinedProperties();
    if (!UnoAccess.as(com.sun.star.beans.XPropertySet.class, own)
        .getPropertySetInfo()
        .hasPropertyByName(VERSION_PROPERTY)) {
      UnoAccess.tell(() -> own.addProperty(VERSION_PROPERTY, (short) 0, origin));
    }
  }

  /** Takes a finished drawing up again, to fill it. */
  public void reopen() {
    UnoAccess.as(XCalculatable.class, document).enableAutomaticCalculation(false);
    workbook.tabs().forEach(t -> unprotect(sheet(t)));
    unprotect(sheet(PlanNames.TAB));
  }

  private static void unprotect(XSpreadsheet sheet) {
    UnoAccess.tell(() -> UnoAccess.as(XProtectable.class, sheet).unprotect(""));
  }

  /** Calculates, freezes, protects: the last step before storing. */
  public void finish() {
    XCalculatable calculation = UnoAccess.as(XCalculatable.class, document);
    calculation.calculateAll();
    calculation.enableAutomaticCalculation(true);
    XController controller = UnoAccess.as(XModel.class, document).getCurrentController();
    XSpreadsheetView view = UnoAccess.as(XSpreadsheetView.class, controller);
    for (PlanTab tab : workbook.tabs()) {
      fitRows(tab);
      print(tab);
      if (!tab.isHidden()) {
        view.setActiveSheet(sheet(tab));
        UnoAccess.set(controller, "ShowGrid", false);
        UnoAccess.set(controller, "ShowPageBreaks", false);
        freeze(tab, controller);
      }
    }
    view.setActiveSheet(sheet(workbook.tabs().get(0)));
    workbook.tabs().forEach(t -> UnoAccess.as(XProtectable.class, sheet(t)).protect(""));
    UnoAccess.as(XProtectable.class, sheet(PlanNames.TAB)).protect("");
  }

  /** Names, status and headings stay in sight where the table stands alone. */
  private void freeze(PlanTab tab, XController controller) {
    PlanPart part = tab.parts().get(0);
    XCellRange first = range(tab, 0, 0, 1, 1);
    XViewFreezable view = UnoAccess.as(XViewFreezable.class, controller);
    if (part instanceof PlanTable table) {
      // the headings of the first of two tables would be over the columns of the second; the head
      // stays, as without it the office opens the file scrolled down by a row
      view.freezeAtPosition(2, tab.isAligned() ? HEAD : layout.firstRow(table));
      first = range(tab, PlanLayout.LABEL, layout.firstRow(table), 1, 1);
    } else if (part instanceof PlanList) {
      view.freezeAtPosition(2, layout.place(part).row() + 1);
    } else if (part instanceof PlanFields || part instanceof PlanNotes) {
      first = range(tab, layout.cell(tab), layout.place(part).row(), 1, 1);
    }
    UnoAccess.as(XSelectionSupplier.class, controller).select(first);
  }

  /** Rows are as tall as what they show now; merged cells keep the height they have. */
  private void fitRows(PlanTab tab) {
    for (PlanPart part : tab.isPage() ? List.<PlanPart>of() : tab.parts()) {
      if (part instanceof PlanTable table) {
        fitRows(tab, layout.firstRow(table), table.inputs().rows());
      } else if (part instanceof PlanList list && !list.isWide()) {
        fitRows(tab, layout.place(list).row() + 1, list.rows());
        if (list.tall() > 1) {
          makeRoom(tab, list);
        }
      }
    }
  }

  /** Rows that show nothing yet get the height that their texts will need. */
  private void makeRoom(PlanTab tab, PlanList list) {
    int first = layout.place(list).row() + 1;
    int left = layout.place(list).column();
    int wide = layout.columns(list).size();
    Object[][] shown =
        UnoAccess.as(XCellRangeData.class, range(tab, left, first, wide, list.rows()))
            .getDataArray();
    int filled = list.rows();
    while (filled > 0 && isBlank(shown[filled - 1])) {
      filled--;
    }
    if (filled < list.rows()) {
      XCellRange blank = range(tab, 0, first + filled, 1, list.rows() - filled);
      Object rows = UnoAccess.as(XColumnRowRange.class, blank).getRows();
      UnoAccess.set(rows, "Height", 120 + list.tall() * LINE);
    }
  }

  private static boolean isBlank(Object... cells) {
    return Arrays.stream(cells).allMatch(c -> !(c instanceof Double) && c.toString().isEmpty());
  }

  private void fitRows(PlanTab tab, int first, int count) {
    XCellRange cells = range(tab, 0, first, 1, count);
    UnoAccess.set(UnoAccess.as(XColumnRowRange.class, cells).getRows(), "OptimalHeight", true);
  }

  /** Whether each page begins with the job and its date: nothing but cautions stands between. */
  private boolean repeatsJob(PlanTab tab, PlanList list) {
    return !tab.isSent()
        && !tab.isPage()
        && layout.headingRow(list) - JOB <= MOST_REPEATED
        && tab.parts().stream().allMatch(p -> p == list || p instanceof PlanText);
  }

  /** Papers have a print range, all else has none and stays on the screen. */
  private void print(PlanTab tab) {
    XPrintAreas areas = UnoAccess.as(XPrintAreas.class, sheet(tab));
    if (!tab.isPaper()) {
      areas.setPrintAreas(new CellRangeAddress[0]);
      return;
    }
    int columns = layout.widths(tab).size();
    int first = PlanLayout.firstPrinted(tab);
    PlanPart last = tab.parts().get(tab.parts().size() - 1);
    int rows = layout.lastPrinted(tab) + 1 - first;
    areas.setPrintAreas(new CellRangeAddress[] {address(range(tab, 0, first, columns, rows))});
    if ((!tab.isPage() || tab.isFlowing()) && last instanceof PlanList list && !list.isWide()) {
      int heading = layout.headingRow(list);
      int repeated = repeatsJob(tab, list) ? JOB : heading;
      areas.setTitleRows(address(range(tab, 0, repeated, 1, heading + 1 - repeated)));
      areas.setPrintTitleRows(true);
    }
  }
}
