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
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;
import org.setpower.templates.spec.Template;
import org.setpower.templates.uno.Uno;
import org.setpower.text.Words;

/** An open file of ours, whose cells are reached by its declaration. */
final class OpenBook implements AutoCloseable {
  /** An error code, or the date that a blank cell counts as: 30 December 1899. */
  private static final Pattern NAKED =
      Pattern.compile("(Err:\\d+|#[A-Z/0]+[!?]?)( .*)?|.*\\b1899\\b.*", Pattern.DOTALL);

  private final Template template;
  private final Layout layout;
  private final XComponent document;

  OpenBook(Office office, Path file, Template template) throws IOException {
    this(office, file, template, Words.english());
  }

  OpenBook(Office office, Path file, Template template, Words words) throws IOException {
    this.template = template;
    layout = new Layout(template, words);
    document = office.open(file);
  }

  XComponent document() {
    return document;
  }

  Template template() {
    return template;
  }

  Layout layout() {
    return layout;
  }

  OpenBook calculated() {
    Uno.as(XCalculatable.class, document).calculateAll();
    return this;
  }

  XSpreadsheet sheet(Tab tab) {
    return Uno.ask(
        () ->
            Uno.as(
                XSpreadsheet.class,
                Uno.as(XSpreadsheetDocument.class, document)
                    .getSheets()
                    .getByName(layout.name(tab))));
  }

  Tab tab(String name) {
    return template.tabs().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  /** The first table of a tab. */
  Table table(String tab) {
    return (Table)
        tab(tab).tables().stream().filter(Table.class::isInstance).findFirst().orElseThrow();
  }

  /** A visible column of a table by its heading. */
  static Column column(Table table, String heading) {
    return table.columns().stream()
        .filter(c -> !c.isWorking() && c.heading().equals(heading))
        .findFirst()
        .orElseThrow();
  }

  /** The tables that have cells to fill. */
  List<Table> toFill() {
    return template.tables().stream()
        .filter(Table.class::isInstance)
        .map(Table.class::cast)
        .filter(t -> !t.inputs().isEmpty())
        .toList();
  }

  /** Those of them that stand as plain rows, not among merged cells. */
  List<Table> plain() {
    return toFill().stream().filter(t -> !layout.tab(t).isGrid()).toList();
  }

  XCellRange cells(Column column) {
    Layout.Spot spot = layout.spot(column);
    int last = spot.row() + column.owner().room();
    return Uno.ask(
        () ->
            sheet(spot.tab())
                .getCellRangeByPosition(spot.column(), spot.row() + 1, spot.column(), last));
  }

  /** The cell of a column in a row of its table, counted from 0. */
  XCell cell(Column column, int row) {
    return Uno.ask(() -> cells(column).getCellByPosition(0, row));
  }

  XCell cell(Field field) {
    Layout.Spot spot = layout.spot(field);
    return Uno.ask(() -> sheet(spot.tab()).getCellByPosition(spot.column(), spot.row()));
  }

  /** Numbers and texts of a column from top to bottom. */
  List<Object> values(Column column) {
    List<Object> values = new ArrayList<>();
    for (Object[] row : Uno.as(XCellRangeData.class, cells(column)).getDataArray()) {
      values.add(row[0]);
    }
    return values;
  }

  double sum(Column column) {
    return values(column).stream()
        .filter(Double.class::isInstance)
        .mapToDouble(Double.class::cast)
        .sum();
  }

  static String shown(Object cell) {
    return Uno.as(XText.class, cell).getString();
  }

  /** The cells that are shown and are in error, or show an error code or the date of a blank. */
  List<String> errors() {
    List<String> errors = new ArrayList<>();
    for (Tab tab : template.tabs()) {
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
  Object[][] data(Tab tab) {
    XCellRange shown =
        Uno.ask(
            () ->
                sheet(tab)
                    .getCellRangeByPosition(0, 0, layout.visible(tab) - 1, layout.lastRow(tab)));
    return Uno.as(XCellRangeData.class, shown).getDataArray();
  }

  @Override
  public void close() {
    Office.discard(document);
  }
}
