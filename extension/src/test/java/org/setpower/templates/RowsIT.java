package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XIndexAccess;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeMovement;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XNamedRange;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.TableSortField;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XTableChart;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.util.XSortable;
import com.sun.star.view.XSelectionSupplier;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.CellContext;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.uno.KeyFigureReader;
import org.setpower.templates.uno.UnoAccess;

/**
 * Rows come, go, change places and are filled down in every table of every example: no formula,
 * chart or total breaks, and a row more computes.
 */
@ExtendWith(SharedOffice.class)
class RowsIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");

  private Office office;
  private TestWorkbook book;

  @TestFactory
  Stream<DynamicTest> tables_take_what_people_do_to_rows(Office shared) {
    office = shared;
    return workbooks()
        .map(
            w ->
                DynamicTest.dynamicTest(
                    w.template().fileName(),
                    () -> {
                      try (TestWorkbook opened = example(w)) {
                        book = opened;
                        for (TableSpec table : opened.plain()) {
                          go(table);
                        }
                      }
                    }));
  }

  @TestFactory
  Stream<DynamicTest> formulas_that_were_dragged_along_are_mended(Office shared) {
    office = shared;
    return workbooks()
        .map(
            w ->
                DynamicTest.dynamicTest(
                    w.template().fileName(),
                    () -> {
                      try (TestWorkbook opened = example(w)) {
                        book = opened;
                        mend();
                      }
                    }));
  }

  /** All of them, unless one is named. */
  private static Stream<TemplateDefinition> workbooks() {
    String one = System.getProperty("rows.workbook", "");
    return TemplateRegistry.all().stream()
        .filter(w -> one.isEmpty() || w.template().fileName().equals(one));
  }

  private TestWorkbook example(TemplateDefinition workbook) throws IOException {
    Path file = EXAMPLES.resolve(workbook.template().fileName() + "-example.ods");
    return new TestWorkbook(office, file, workbook.template()).calculated();
  }

  private void go(TableSpec table) throws Exception {
    String name = book.layout().tab(table).name() + " " + table.title();
    Map<String, String> figures = KeyFigureReader.of(book.document());
    String[][] typed = formulas(inputs(table, 0, table.room()));
    List<String> formulas = formulas(table);
    List<String> charts = charts();
    int filled = filled(typed);
    if (filled == 0) {
      return;
    }
    int middle = filled / 2;
    if (filled == table.room()) {
      assertThatThrownBy(() -> command("add", table, middle, 1)).hasMessageContaining("room for");
    } else {
      command("add", table, middle, 1);
      assertThat(KeyFigureReader.of(book.document()))
          .as(name + " with a blank row")
          .isEqualTo(figures);
      assertThat(book.errors()).as(name + " with a blank row").isEmpty();
      XCellRange two = inputs(table, middle, 2);
      UnoAccess.as(XCellSeries.class, two).fillAuto(FillDirection.TO_BOTTOM, 1);
      copyDown(table, middle, typed[middle]);
      for (ColumnSpec column : table.columns()) {
        boolean shows = !column.isInput() && !column.isWorking();
        if (shows && !TestWorkbook.shown(book.cell(column, middle)).isEmpty()) {
          assertThat(TestWorkbook.shown(book.cell(column, middle + 1)))
              .as(name + ": " + column + " in the row more")
              .isNotEmpty();
        }
      }
      assertThat(book.errors()).as(name + " with a row more").isEmpty();
      command("remove", table, middle + 1, 1);
      assertThat(formulas(inputs(table, 0, table.room()))).as(name).isDeepEqualTo(typed);
    }
    command("remove", table, middle, 1);
    assertThat(book.errors()).as(name + " with a row less").isEmpty();
    undo();
    assertThat(formulas(inputs(table, 0, table.room()))).as(name + " undone").isDeepEqualTo(typed);
    sort(inputs(table, 0, filled));
    assertThat(book.errors()).as(name + " sorted").isEmpty();
    assertThat(formulas(table)).as(name + " formulas").isEqualTo(formulas);
    UnoAccess.as(XCellRangeFormula.class, inputs(table, 0, table.room())).setFormulaArray(typed);
    assertThat(KeyFigureReader.of(book.document())).as(name + " as before").isEqualTo(figures);
    assertThat(charts()).as(name + " charts").isEqualTo(charts);
    calcDoesNot(table, middle);
  }

  /** Filling down may count up; what is wanted is the same row again. */
  private void copyDown(TableSpec table, int row, String... typed) {
    UnoAccess.as(XCellRangeFormula.class, inputs(table, row, 1))
        .setFormulaArray(new String[][] {typed});
    UnoAccess.as(XCellRangeFormula.class, inputs(table, row + 1, 1))
        .setFormulaArray(new String[][] {typed});
  }

  private void mend() throws Exception {
    List<TableSpec> followed = book.plain().stream().filter(this::isFollowed).toList();
    TableSpec table = followed.get(followed.size() / 2);
    List<String> formulas = formulas(table);
    Map<String, String> figures = KeyFigureReader.of(book.document());
    String[][] typed = formulas(inputs(table, 0, table.room()));
    CellRangeAddress from = address(inputs(table, 0, 1));
    Object sheet = book.sheet(book.layout().tab(table));
    int to = from.StartRow + table.room() - 1;
    UnoAccess.as(XCellRangeMovement.class, sheet)
        .moveRange(new CellAddress(from.Sheet, from.StartColumn, to), from);
    assertThat(formulas(table)).isNotEqualTo(formulas);
    Map<String, String> names = names();
    List<FieldSpec> cells = namedCells();
    List<String> filled = cells.stream().map(f -> book.cell(f).getFormula()).toList();
    dragOver(cells);
    assertThat(names().equals(names)).as("names as before").isEqualTo(cells.isEmpty());
    assertThat(CommandDriver.command(office, book.document(), "mend"))
        .matches("\\d+ formulas? restored\\.");
    UnoAccess.as(XCellRangeFormula.class, inputs(table, 0, table.room())).setFormulaArray(typed);
    for (int i = 0; i < cells.size(); i++) {
      book.cell(cells.get(i)).setFormula(filled.get(i));
    }
    assertThat(names()).isEqualTo(names);
    assertThat(CommandDriver.command(office, book.document(), "mend"))
        .startsWith("All formulas match");
    assertThat(KeyFigureReader.of(book.calculated().document())).isEqualTo(figures);
  }

  /** Whether formulas in the cells of a table, not those behind names, read its cells to fill. */
  private boolean isFollowed(TableSpec table) {
    Layout layout = book.layout();
    CellContext place = layout.place(table);
    return table.columns().stream()
        .filter(c -> !c.isInput())
        .map(layout::formula)
        .anyMatch(f -> table.inputs().stream().anyMatch(i -> f.contains(layout.cell(i, place))));
  }

  /** Two cells to fill that bear names, on a tab where they are not merged; or none. */
  private List<FieldSpec> namedCells() {
    List<FieldSpec> cells =
        book.template().fields().stream()
            .filter(f -> f.isInput() && !f.rangeName().isEmpty())
            .filter(f -> !book.layout().tab(f).isGrid())
            .limit(2)
            .toList();
    return cells.size() == 2 ? cells : List.of();
  }

  /** Drags the first of two cells onto the second, whose name then stands for nothing. */
  private void dragOver(List<FieldSpec> cells) throws Exception {
    if (cells.isEmpty()) {
      return;
    }
    Object sheet = book.sheet(book.layout().tab(cells.get(0)));
    CellRangeAddress from = address(UnoAccess.as(XCellRange.class, book.cell(cells.get(0))));
    CellRangeAddress to = address(UnoAccess.as(XCellRange.class, book.cell(cells.get(1))));
    UnoAccess.as(XCellRangeMovement.class, sheet)
        .moveRange(new CellAddress(to.Sheet, to.StartColumn, to.StartRow), from);
  }

  /** What the names of the document stand for. */
  private Map<String, String> names() throws com.sun.star.uno.Exception {
    XNamedRanges all =
        UnoAccess.as(XNamedRanges.class, UnoAccess.get(book.document(), "NamedRanges"));
    Map<String, String> names = new TreeMap<>();
    for (String name : all.getElementNames()) {
      names.put(name, UnoAccess.as(XNamedRange.class, all.getByName(name)).getContent());
    }
    return names;
  }

  /** A row made by Calc would have no formulas: the protection refuses it. */
  private void calcDoesNot(TableSpec table, int row) throws com.sun.star.uno.Exception {
    var controller = UnoAccess.as(XModel.class, book.document()).getCurrentController();
    UnoAccess.as(XSpreadsheetView.class, controller)
        .setActiveSheet(book.sheet(book.layout().tab(table)));
    UnoAccess.as(XSelectionSupplier.class, controller).select(inputs(table, row, 1));
    List<String> before = formulas(table);
    for (String command : new String[] {"InsertRowsBefore", "DeleteRows", "InsertCellsDown"}) {
      office
          .service(XDispatchHelper.class, "com.sun.star.frame.DispatchHelper")
          .executeDispatch(
              UnoAccess.as(XDispatchProvider.class, controller.getFrame()),
              ".uno:" + command,
              "",
              0,
              new PropertyValue[0]);
      assertThat(formulas(table)).as(command).isEqualTo(before);
    }
  }

  private void command(String name, TableSpec table, int row, int rows) {
    SheetSpec tab = book.layout().tab(table);
    String cell = tab.name() + ".A" + (book.layout().firstRow(table) + row + 1);
    CommandDriver.command(
        office, book.document(), name, "cell", cell, "rows", String.valueOf(rows));
  }

  private void undo() throws Exception {
    UnoAccess.as(XUndoManagerSupplier.class, book.document()).getUndoManager().undo();
  }

  private XCellRange inputs(TableSpec table, int row, int rows) {
    int first = book.layout().firstRow(table) + row;
    return UnoAccess.ask(
        () ->
            book.sheet(book.layout().tab(table))
                .getCellRangeByPosition(0, first, table.inputs().size() - 1, first + rows - 1));
  }

  private static String[][] formulas(XCellRange range) {
    return UnoAccess.as(XCellRangeFormula.class, range).getFormulaArray();
  }

  /** The formulas of all columns that are worked out. */
  private List<String> formulas(TableSpec table) {
    List<String> all = new ArrayList<>();
    for (ColumnSpec column : table.columns()) {
      if (!column.isInput()) {
        all.add(column + ": " + Arrays.deepToString(formulas(book.cells(column))));
      }
    }
    return all;
  }

  private static int filled(String[]... rows) {
    int filled = rows.length;
    while (filled > 0 && Arrays.stream(rows[filled - 1]).allMatch(String::isEmpty)) {
      filled--;
    }
    return filled;
  }

  private List<String> charts() throws com.sun.star.uno.Exception {
    Map<String, String> ranges = new TreeMap<>();
    for (SheetSpec tab : book.template().tabs()) {
      XIndexAccess charts =
          UnoAccess.as(
              XIndexAccess.class,
              UnoAccess.as(XTableChartsSupplier.class, book.sheet(tab)).getCharts());
      for (int i = 0; i < charts.getCount(); i++) {
        StringBuilder text = new StringBuilder();
        for (CellRangeAddress at :
            UnoAccess.as(XTableChart.class, charts.getByIndex(i)).getRanges()) {
          text.append(at.Sheet + ":" + at.StartColumn + "," + at.StartRow + "-" + at.EndRow + " ");
        }
        ranges.put(tab.name() + i, text.toString());
      }
    }
    return List.copyOf(ranges.values());
  }

  private static void sort(XCellRange range) {
    TableSortField field = new TableSortField();
    field.Field = 0;
    field.IsAscending = false;
    UnoAccess.as(XSortable.class, range)
        .sort(
            new PropertyValue[] {
              property("SortFields", new TableSortField[] {field}),
              property("ContainsHeader", false)
            });
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }

  private static CellRangeAddress address(XCellRange range) {
    return UnoAccess.as(XCellRangeAddressable.class, range).getRangeAddress();
  }
}
