package org.setpower.command.print;

import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XDatabaseRange;
import com.sun.star.sheet.XSheetCellRange;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.document.JobCell;
import org.setpower.templates.layout.PlanNames;
import org.setpower.uno.Uno;

/**
 * What the names of a document say about its pages. A copy of it without names is fitted to pages
 * by those of the original.
 *
 * @param units what the job calculates in
 * @param tables where tables stand, with the row that heads them
 * @param charts over which cells charts stand
 * @param papers which of them say how far they are printed
 * @param toFit what they say where more rows are filled
 * @param shown sheets that are shown when something is printed on them
 */
public record PrintAnchors(
    String units,
    List<Table> tables,
    List<Chart> charts,
    List<Paper> papers,
    String toFit,
    List<String> shown) {
  private static final int STAMP = 2;
  private static final Pattern CHART = Pattern.compile("Chart_.*_(\\d+)");

  /** The cells of a table of a sheet. */
  record Table(String sheet, CellRangeAddress cells) {}

  /** The cells below a chart, which is the one with this index on its sheet. */
  record Chart(String sheet, int index, CellRangeAddress cells) {}

  /**
   * A sheet with a cell that holds its last printed row.
   *
   * @param stamp the row of its line that says when more are filled, from 0
   * @param name of that cell
   */
  record Paper(String sheet, int stamp, String name) {}

  /** Those of a document. */
  public static PrintAnchors of(CalcDocument book) throws Exception {
    List<Table> tables = new ArrayList<>();
    XNameAccess ranges = Uno.as(XNameAccess.class, Uno.get(book.document(), "DatabaseRanges"));
    for (String name : ranges.getElementNames()) {
      CellRangeAddress area = Uno.as(XDatabaseRange.class, ranges.getByName(name)).getDataArea();
      if (name.startsWith("Rows_")) {
        tables.add(new Table(CalcDocument.name(book.sheet(area.Sheet)), area));
      }
    }
    List<Chart> charts = new ArrayList<>();
    XNameAccess names = Uno.as(XNameAccess.class, Uno.get(book.document(), "NamedRanges"));
    for (String name : names.getElementNames()) {
      Matcher chart = CHART.matcher(name);
      XCellRange over =
          chart.matches()
              ? Uno.as(XCellRangeReferrer.class, names.getByName(name)).getReferredCells()
              : null;
      if (over != null) {
        CellRangeAddress cells = Uno.as(XCellRangeAddressable.class, over).getRangeAddress();
        charts.add(
            new Chart(
                CalcDocument.name(book.sheet(cells.Sheet)),
                Integer.parseInt(chart.group(1)) - 1,
                cells));
      }
    }
    return new PrintAnchors(
        JobCell.UNITS.in(book),
        tables,
        charts,
        papers(names, PlanNames.PRINTED),
        book.named(PlanNames.TO_FIT),
        papers(names, PlanNames.SHOWN).stream().map(Paper::sheet).toList());
  }

  private static List<Paper> papers(XNameAccess names, String prefix) throws Exception {
    List<Paper> papers = new ArrayList<>();
    for (String name : names.getElementNames()) {
      String top = "Top_" + name.substring(Math.min(name.length(), prefix.length()));
      if (name.startsWith(prefix) && names.hasByName(top)) {
        XCellRange cell = Uno.as(XCellRangeReferrer.class, names.getByName(top)).getReferredCells();
        if (cell != null) {
          XSpreadsheet sheet = Uno.as(XSheetCellRange.class, cell).getSpreadsheet();
          papers.add(new Paper(CalcDocument.name(sheet), STAMP, name));
        }
      }
    }
    return papers;
  }

  /** The same, after a row was inserted on top of each sheet. */
  public PrintAnchors belowInsertedRow() {
    return new PrintAnchors(
        units,
        tables.stream().map(t -> new Table(t.sheet, below(t.cells))).toList(),
        charts.stream().map(c -> new Chart(c.sheet, c.index, below(c.cells))).toList(),
        papers.stream().map(p -> new Paper(p.sheet, p.stamp + 1, p.name)).toList(),
        toFit,
        shown);
  }

  private static CellRangeAddress below(CellRangeAddress at) {
    return new CellRangeAddress(
        at.Sheet, at.StartColumn, at.StartRow + 1, at.EndColumn, at.EndRow + 1);
  }
}
