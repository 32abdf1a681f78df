package org.setpower.templates;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.AnyConverter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.setpower.office.Office;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.UnoAccess;
import org.setpower.text.MessageCatalog;

/** An open file of ours, whose cells are reached by its declaration. */
final class TestWorkbook implements AutoCloseable {
  /** An error code, or the date that a blank cell counts as: 30 December 1899. */
  private static final Pattern NAKED =
      Pattern.compile("(Err:\\d+|#[A-Z/0]+[!?]?)( .*)?|.*\\b1899\\b.*", Pattern.DOTALL);

  private final WorkbookSpec template;
  private final Layout layout;
  private final XComponent document;

  TestWorkbook(Office office, Path file, WorkbookSpec template) throws IOException {
    this(office, file, template, MessageCatalog.english());
  }

  TestWorkbook(Office office, Path file, WorkbookSpec template, MessageCatalog words)
      throws IOException {
    this.template = template;
    layout = new Layout(template, words);
    document = office.open(file);
  }

  XComponent document() {
    return document;
  }

  WorkbookSpec template() {
    return template;
  }

  Layout layout() {
    return layout;
  }

  TestWorkbook calculated() {
    UnoAccess.as(XCalculatable.class, document).calculateAll();
    return this;
  }

  XSpreadsheet sheet(SheetSpec tab) {
    return UnoAccess.ask(
        () ->
            UnoAccess.as(
                XSpreadsheet.class,
                UnoAccess.as(XSpreadsheetDocument.class, document)
                    .getSheets()
                    .getByName(layout.name(tab))));
  }

  SheetSpec tab(String name) {
    return template.tabs().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  /** The first table of a tab. */
  TableSpec table(String tab) {
    return (TableSpec)
        tab(tab).tables().stream().filter(TableSpec.class::isInstance).findFirst().orElseThrow();
  }

  /** A visible column of a table by its heading. */
  static ColumnSpec column(TableSpec table, String heading) {
    return table.columns().stream()
        .filter(c -> !c.isWorking() && c.heading().equals(heading))
        .findFirst()
        .orElseThrow();
  }

  /** The tables that have cells to fill. */
  List<TableSpec> toFill() {
    return template.tables().stream()
        .filter(TableSpec.class::isInstance)
        .map(TableSpec.class::cast)
        .filter(t -> !t.inputs().isEmpty())
        .toList();
  }

  /** Those of them that stand as plain rows, not among merged cells. */
  List<TableSpec> plain() {
    return toFill().stream().filter(t -> !layout.tab(t).isGrid()).toList();
  }

  XCellRange cells(ColumnSpec column) {
    Layout.CellPosition spot = layout.spot(column);
    int last = spot.row() + column.owner().room();
    return UnoAccess.ask(
        () ->
            sheet(spot.tab())
                .getCellRangeByPosition(spot.column(), spot.row() + 1, spot.column(), last));
  }

  /** The cell of a column in a row of its table, counted from 0. */
  XCell cell(ColumnSpec column, int row) {
    return UnoAccess.ask(() -> cells(column).getCellByPosition(0, row));
  }

  XCell cell(FieldSpec field) {
    Layout.CellPosition spot = layout.spot(field);
    return UnoAccess.ask(() -> sheet(spot.tab()).getCellByPosition(spot.column(), spot.row()));
  }

  /** Numbers and texts of a column from top to bottom. */
  List<Object> values(ColumnSpec column) {
    List<Object> values = new ArrayList<>();
    for (Object[] row : UnoAccess.as(XCellRangeData.class, cells(column)).getDataArray()) {
      values.add(row[0]);
    }
    return values;
  }

  double sum(ColumnSpec column) {
    return values(column).stream()
        .filter(Double.class::isInstance)
        .mapToDouble(Double.class::cast)
        .sum();
  }

  static String shown(Object cell) {
    return UnoAccess.as(XText.class, cell).getString();
  }

  /** The cells that are shown and are in error, or show an error code or the date of a blank. */
  List<String> errors() {
    List<String> errors = new ArrayList<>();
    for (SheetSpec tab : template.tabs()) {
      if (!tab.isHidden()) {
        Object[][] data = data(tab);
        for (int row = 0; row < data.length; row++) {
          for (int column = 0; column < data[row].length; column++) {
            Object value = data[row][column];
            if (AnyConverter.isVoid(value) || NAKED.matcher(value.toString()).matches()) {
              errors.add(layout.absolute(tab, column, row));
            }
          }
        }
      }
    }
    return errors;
  }

  /** All that is shown on a tab; void where a cell is in error. */
  Object[][] data(SheetSpec tab) {
    XCellRange shown =
        UnoAccess.ask(
            () ->
                sheet(tab)
                    .getCellRangeByPosition(0, 0, layout.visible(tab) - 1, layout.lastRow(tab)));
    return UnoAccess.as(XCellRangeData.class, shown).getDataArray();
  }

  @Override
  public void close() {
    Office.discard(document);
  }
}
