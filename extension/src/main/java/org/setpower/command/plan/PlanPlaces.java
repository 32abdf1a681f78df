package org.setpower.command.plan;

import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.CellValues;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.uno.Uno;

/** Where a plan's columns stand on the tabs that users see, and under which headings. */
public final class PlanPlaces {
  /** Rows and columns of a tab in which results are looked for. */
  private static final int MOST_ROWS = 2_000;

  private static final int MOST_COLUMNS = 200;

  private final PlanFile plan;
  private final Map<String, Place> places = new HashMap<>();

  /**
   * The first row of a column on a tab.
   *
   * @param heading what stands above it, or beside it; empty without a heading
   * @param first its cell in the first row of its table
   * @param byRow whether further rows stand below
   */
  private record Place(String heading, CellAddress first, boolean byRow) {}

  public PlanPlaces(PlanFile plan) throws Exception {
    this.plan = plan;
    for (XSpreadsheet sheet : plan.book().all()) {
      if ((Boolean) Uno.get(sheet, "IsVisible")) {
        results(sheet);
      }
    }
    for (InputTable<?> table : plan.model().inputs()) {
      inputs(table);
    }
  }

  /** The heading that users see; empty where the column stands on no visible tab. */
  public String heading(String path) {
    return Optional.ofNullable(places.get(path)).map(Place::heading).orElse("");
  }

  /** The cell of a row, such as Batteries.E5; empty where the column stands on no visible tab. */
  public String cell(String path, int row) throws Exception {
    Place place = places.get(path);
    if (place == null) {
      return "";
    }
    CellAddress at = place.first;
    String tab = CalcDocument.name(plan.book().sheet(at.Sheet));
    int below = place.byRow ? row - 1 : 0;
    return tab + "." + CalcDocument.address(at.Column, at.Row + below);
  }

  private void inputs(InputTable<?> table) throws Exception {
    for (InputColumn column : table.columns()) {
      XCellRange cells = plan.typed(table, column.key());
      if (cells != null) {
        CellRangeAddress at = Uno.as(XCellRangeAddressable.class, cells).getRangeAddress();
        String heading =
            table.isUpright()
                ? beside(at.Sheet, at.StartColumn - 1, at.StartRow)
                : above(at.Sheet, at.StartColumn, at.StartRow - 2);
        places.put(
            column.path(),
            place(heading, at.Sheet, at.StartColumn, at.StartRow, !table.isUpright()));
      }
    }
  }

  private void results(XSpreadsheet sheet) throws Exception {
    XSheetCellCursor cursor = sheet.createCursor();
    Uno.as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
    CellRangeAddress end = Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
    int lastRow = Math.min(end.EndRow, MOST_ROWS);
    int lastColumn = Math.min(end.EndColumn, MOST_COLUMNS);
    String[][] formulas =
        Uno.as(XCellRangeFormula.class, sheet.getCellRangeByPosition(0, 0, lastColumn, lastRow))
            .getFormulaArray();
    for (int c = 0; c <= lastColumn; c++) {
      String before = "";
      for (int r = 0; r <= lastRow; r++) {
        String formula = formulas[r][c];
        if (PlanFile.isShownBy(formula) && !formula.equals(before)) {
          result(end.Sheet, c, r, formula);
        }
        before = formula;
      }
    }
  }

  private void result(short sheet, int column, int row, String formula) throws Exception {
    List<PlanFile.Shown> shown = plan.shownBy(formula, row);
    if (shown.size() == 1 && shown.get(0).figure().isPresent()) {
      PlanFile.Figure figure = shown.get(0).figure().get();
      boolean byRow = shown.get(0).byRow();
      if (!places.containsKey(figure.path())) {
        String label = byRow ? "" : beside(sheet, column - 1, row);
        String heading = label.isEmpty() ? above(sheet, column, row - 1) : label;
        int first = byRow ? row - figure.row() + 1 : row;
        places.put(figure.path(), place(heading, sheet, column, first, byRow));
      }
    }
  }

  private static Place place(String heading, short sheet, int column, int row, boolean byRow) {
    return new Place(heading, new CellAddress(sheet, column, row), byRow);
  }

  /** The nearest text above a cell. */
  private String above(short sheet, int column, int row) throws Exception {
    for (int r = row; r >= 0; r--) {
      String text = text(sheet, column, r);
      if (!text.isEmpty()) {
        return text;
      }
    }
    return "";
  }

  /** The nearest text to the left of a cell. */
  private String beside(short sheet, int column, int row) throws Exception {
    for (int c = column; c >= 0; c--) {
      String text = text(sheet, c, row);
      if (!text.isEmpty()) {
        return text;
      }
    }
    return "";
  }

  /** A heading may be a formula, where a cell decides its unit. */
  private String text(short sheet, int column, int row) throws Exception {
    XCell cell = plan.book().cell(new CellAddress(sheet, column, row));
    boolean isText = CellValues.isText(cell) && !PlanFile.isShownBy(cell.getFormula());
    return isText ? CalcDocument.shown(cell).replace("-\n", "-").replace('\n', ' ').strip() : "";
  }
}
