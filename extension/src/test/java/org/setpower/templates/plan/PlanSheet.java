package org.setpower.templates.plan;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.office.Office;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.layout.PlanLayout.Column;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.uno.UnoAccess;
import org.setpower.text.MessageCatalog;

/** An open workbook of a plan: typed into and read by paths of columns, {@code table.key}. */
final class PlanSheet implements AutoCloseable {
  private static final Map<Path, Kept> KEPT = new HashMap<>();

  private final PlanWorkbook workbook;
  private final PlanLayout layout;
  private final XComponent document;
  private final boolean isKept;

  /**
   * A workbook as its template makes it. Opening costs more than most tests: the same document is
   * lent again, with what its template has typed in it. For tests that type and read, and do
   * nothing else to it.
   */
  static PlanSheet blank(Office office, Path template, PlanWorkbook workbook) throws IOException {
    Kept kept = KEPT.get(template);
    if (kept == null) {
      PlanSheet first =
          new PlanSheet(office.open(template), workbook, MessageCatalog.english(), true);
      KEPT.put(template, new Kept(first.document, first.allTyped()));
      return first;
    }
    PlanSheet again = new PlanSheet(kept.document, workbook, MessageCatalog.english(), true);
    again.typeAll(kept.typed);
    return again;
  }

  /** A document that stays open, and the cells of each table as its template has them. */
  private record Kept(XComponent document, Map<String, Object[][]> typed) {}

  private Map<String, Object[][]> allTyped() {
    Map<String, Object[][]> typed = new HashMap<>();
    for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
      typed.put(table.inputs().key(), cells(table).getDataArray());
    }
    for (InputColumn single : singles()) {
      typed.put(single.path(), new Object[][] {{typed(single.path())}});
    }
    return typed;
  }

  private void typeAll(Map<String, Object[][]> typed) {
    XCalculatable calculation = UnoRuntime.queryInterface(XCalculatable.class, document);
    calculation.enableAutomaticCalculation(false);
    for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
      cells(table).setDataArray(typed.get(table.inputs().key()));
    }
    singles().forEach(s -> type(s.path(), typed.get(s.path())[0][0]));
    calculation.enableAutomaticCalculation(true);
    calculation.calculate();
  }

  private XCellRangeData cells(PlanTable table) {
    return UnoRuntime.queryInterface(
        XCellRangeData.class, inputs(table.inputs().key(), 0, table.inputs().rows()));
  }

  /** The cells to fill that stand in no table. */
  private List<InputColumn> singles() {
    return workbook.model().inputs().stream()
        .filter(InputTable::isUpright)
        .flatMap(t -> t.columns().stream())
        .toList();
  }

  private final Map<String, Integer> typedCells = new HashMap<>();

  PlanSheet(Office office, Path file, PlanWorkbook workbook) throws IOException {
    this(office, file, workbook, MessageCatalog.english());
  }

  PlanSheet(Office office, Path file, PlanWorkbook workbook, MessageCatalog words)
      throws IOException {
    this(office.open(file), workbook, words);
  }

  /** A document that is open already. */
  PlanSheet(XComponent document, PlanWorkbook workbook) {
    this(document, workbook, MessageCatalog.english());
  }

  PlanSheet(XComponent document, PlanWorkbook workbook, MessageCatalog words) {
    this(document, workbook, words, false);
  }

  private PlanSheet(
      XComponent document, PlanWorkbook workbook, MessageCatalog words, boolean isKept) {
    this.isKept = isKept;
    this.workbook = workbook;
    layout = new PlanLayout(workbook, words);
    this.document = document;
  }

  XComponent document() {
    return document;
  }

  PlanLayout layout() {
    return layout;
  }

  PlanWorkbook workbook() {
    return workbook;
  }

  XSpreadsheet sheet(String name) {
    return UnoAccess.ask(
        () ->
            UnoRuntime.queryInterface(
                XSpreadsheet.class,
                UnoRuntime.queryInterface(XSpreadsheetDocument.class, document)
                    .getSheets()
                    .getByName(name)));
  }

  XCellRange range(PlanTab tab, int column, int row, int columns, int rows) {
    return UnoAccess.ask(
        () ->
            sheet(layout.name(tab))
                .getCellRangeByPosition(column, row, column + columns - 1, row + rows - 1));
  }

  PlanTable table(String key) {
    return workbook
        .parts(PlanTable.class)
        .filter(t -> t.inputs().key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  /** The cells to fill of some rows, counted from 0. */
  XCellRange inputs(String table, int row, int rows) {
    List<InputColumn> columns = table(table).inputs().columns();
    Place first = layout.place(columns.get(0));
    return range(first.tab(), first.column(), first.row() + row, columns.size(), rows);
  }

  /** Types rows, each by key; all rows below become blank. */
  @SafeVarargs
  final PlanSheet rows(String table, Map<String, Object>... typed) {
    List<InputColumn> columns = table(table).inputs().columns();
    int room = table(table).inputs().rows();
    Object[][] cells = new Object[room][columns.size()];
    for (Object[] row : cells) {
      Arrays.fill(row, "");
    }
    int filled = 0;
    for (int r = 0; r < typed.length; r++) {
      for (int c = 0; c < columns.size(); c++) {
        cells[r][c] = typed[r].getOrDefault(columns.get(c).key(), "");
        filled += "".equals(cells[r][c]) ? 0 : 1;
      }
    }
    typedCells.put(table, filled);
    UnoRuntime.queryInterface(XCellRangeData.class, inputs(table, 0, room)).setDataArray(cells);
    return this;
  }

  /** How many cells somebody has to fill to get here. */
  int typedCells() {
    return typedCells.values().stream().mapToInt(n -> n).sum();
  }

  /** Types a single cell. */
  PlanSheet type(String path, Object value) {
    typedCells.put(path, 1);
    Place place = layout.place(layout.input(path));
    UnoRuntime.queryInterface(
            XCellRangeData.class, range(place.tab(), place.column(), place.row(), 1, 1))
        .setDataArray(new Object[][] {{value}});
    return this;
  }

  /** What is typed in a single cell. */
  Object typed(String path) {
    Place place = layout.place(layout.input(path));
    return UnoRuntime.queryInterface(
            XCellRangeData.class, range(place.tab(), place.column(), place.row(), 1, 1))
        .getDataArray()[0][0];
  }

  /** Types many cells, calculated once. */
  PlanSheet typing(Runnable cells) {
    XCalculatable calculation = UnoRuntime.queryInterface(XCalculatable.class, document);
    calculation.enableAutomaticCalculation(false);
    cells.run();
    calculation.enableAutomaticCalculation(true);
    return this;
  }

  PlanSheet calculated() {
    UnoRuntime.queryInterface(XCalculatable.class, document).calculateAll();
    return this;
  }

  /** What the cells of a result column show, blanks left out at the end. */
  List<String> column(String path) {
    for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
      for (Column column : layout.columns(table)) {
        if (column.result() != null && column.result().path().equals(path)) {
          Place top = layout.place(table);
          return shown(range(top.tab(), column.at(), top.row() + 2, 1, table.inputs().rows()));
        }
      }
    }
    for (PlanList list : workbook.parts(PlanList.class).toList()) {
      for (Column column : layout.columns(list)) {
        if (column.result().path().equals(path)) {
          Place top = layout.place(list);
          return shown(range(top.tab(), column.at(), top.row() + 1, 1, list.rows()));
        }
      }
    }
    throw new IllegalArgumentException(path);
  }

  /** What the cells of a leaf column show, by its heading; blanks left out at the end. */
  List<String> leaf(String table, String heading) {
    Place top = layout.place(table(table));
    Column column =
        layout.columns(table(table)).stream()
            .filter(c -> c.leaf() != null && c.leaf().heading().equals(heading))
            .findFirst()
            .orElseThrow();
    return shown(range(top.tab(), column.at(), top.row() + 2, 1, table(table).inputs().rows()));
  }

  private static List<String> shown(XCellRange cells) {
    List<String> shown = new ArrayList<>();
    Object[][] data = UnoRuntime.queryInterface(XCellRangeData.class, cells).getDataArray();
    for (Object[] row : data) {
      shown.add(String.valueOf(row[0]));
    }
    while (!shown.isEmpty() && shown.get(shown.size() - 1).isEmpty()) {
      shown.remove(shown.size() - 1);
    }
    return shown;
  }

  /** What the cell of a result with one row shows. */
  String single(String path) {
    for (PlanFigures figures : workbook.parts(PlanFigures.class).toList()) {
      int index = figures.columns().indexOf(path);
      if (index >= 0) {
        Place place = layout.figure(figures, index);
        return text(range(place.tab(), place.column(), place.row(), 1, 1));
      }
    }
    throw new IllegalArgumentException(path);
  }

  private static String text(XCellRange cell) {
    return UnoRuntime.queryInterface(XText.class, UnoAccess.ask(() -> cell.getCellByPosition(0, 0)))
        .getString();
  }

  /** All that a tab shows. */
  String page(String name) {
    PlanTab tab =
        workbook.tabs().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    Object[][] data =
        UnoRuntime.queryInterface(
                XCellRangeData.class,
                range(tab, 0, 0, layout.widths(tab).size(), layout.lastRow(tab) + 1))
            .getDataArray();
    StringBuilder page = new StringBuilder();
    for (Object[] row : data) {
      page.append(String.join("\t", Arrays.stream(row).map(String::valueOf).toList()));
      page.append('\n');
    }
    return page.toString();
  }

  @Override
  public void close() {
    if (!isKept) {
      Office.discard(document);
    }
  }
}
