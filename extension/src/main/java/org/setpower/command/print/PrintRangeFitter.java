package org.setpower.command.print;

import com.sun.star.awt.Point;
import com.sun.star.awt.Size;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNameAccess;
import com.sun.star.drawing.XDrawPageSupplier;
import com.sun.star.drawing.XShape;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetPageBreak;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.BorderLine;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.setpower.command.document.CalcDocument;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.ResultTable;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.uno.HeldShapes;
import org.setpower.uno.Uno;

/**
 * Prints no blank rows at the end of tables, and of what stands one below another on a sheet each
 * whole where a page can hold it. A sheet cannot calculate its print range, so this is done again
 * before printing.
 */
public final class PrintRangeFitter {
  private static final int SHOWN_WHEN_EMPTY = 25;
  private static final int SHOWN_BESIDE_OTHERS = 6;

  /** A single blank row is part of what stands around it. */
  private static final int APART = 2;

  private final CalcDocument book;
  private final PrintAnchors anchors;
  private final BlankRows blank;

  private PrintRangeFitter(CalcDocument book, PrintAnchors anchors, BlankRows blank) {
    this.book = book;
    this.anchors = anchors;
    this.blank = blank;
  }

  /** Does so on all sheets of a document from our templates; gives on how many. */
  public static int in(CalcDocument book) throws Exception {
    return in(book, BlankRows.none(book));
  }

  /** The same, with blank rows hidden that push what follows to another page. */
  static int in(CalcDocument book, BlankRows blank) throws Exception {
    PrintAnchors anchors = PrintAnchors.of(book);
    int fitted = in(book, anchors, blank);
    for (String paper : anchors.shown()) {
      XSpreadsheet sheet = book.sheet(paper);
      if (Uno.as(XPrintAreas.class, sheet).getPrintAreas().length > 0) {
        Uno.set(sheet, "IsVisible", true);
      }
    }
    return fitted;
  }

  /** The same for a document whose own names do not say where its tables are. */
  public static int in(CalcDocument book, PrintAnchors anchors) throws Exception {
    return in(book, anchors, BlankRows.none(book));
  }

  private static int in(CalcDocument book, PrintAnchors anchors, BlankRows blank) throws Exception {
    PageFormat.of(book, anchors.units());
    PrintRangeFitter fit = new PrintRangeFitter(book, anchors, blank);
    int fitted = 0;
    for (XSpreadsheet sheet : book.all()) {
      fitted += fit.fit(sheet, fit.tables(CalcDocument.name(sheet))) ? 1 : 0;
    }
    for (PrintAnchors.Paper paper : anchors.papers()) {
      fit.note(paper);
    }
    return fitted;
  }

  /**
   * Writes down how far a paper is printed, with which its line compares what is filled; a copy
   * without names has no such cell, and no such line from now on.
   */
  private void note(PrintAnchors.Paper paper) throws Exception {
    XSpreadsheet sheet = book.sheets().hasByName(paper.sheet()) ? book.sheet(paper.sheet()) : null;
    if (sheet == null) {
      return; // not among the sheets of a copy
    }
    XNameAccess names = Uno.as(XNameAccess.class, Uno.get(book.document(), "NamedRanges"));
    if (names.hasByName(paper.name())) {
      int last = 0;
      for (CellRangeAddress area : Uno.as(XPrintAreas.class, sheet).getPrintAreas()) {
        last = Math.max(last, area.EndRow + 1);
      }
      Uno.as(XCellRangeReferrer.class, names.getByName(paper.name()))
          .getReferredCells()
          .getCellByPosition(0, 0)
          .setValue(last);
    } else {
      XText stamp = Uno.as(XText.class, sheet.getCellByPosition(0, paper.stamp()));
      if (!anchors.toFit().isEmpty() && stamp.getString().endsWith(anchors.toFit())) {
        String line = stamp.getString();
        stamp.setString(line.substring(0, line.length() - anchors.toFit().length()));
      }
    }
  }

  private List<CellRangeAddress> tables(String sheet) {
    return anchors.tables().stream()
        .filter(table -> table.sheet().equals(sheet))
        .map(PrintAnchors.Table::cells)
        .toList();
  }

  private boolean fit(XSpreadsheet sheet, List<CellRangeAddress> tables) throws Exception {
    XPrintAreas printed = Uno.as(XPrintAreas.class, sheet);
    CellRangeAddress[] before = printed.getPrintAreas();
    boolean list = printed.getPrintTitleRows();
    CellRangeAddress used = used(sheet);
    RowHeights.fit(sheet, tables, used); // also where nothing is printed: it is read on the screen
    if (before.length == 0 && !list) {
      return false;
    }
    if (list && OtherPapers.isLetter(sheet) && !(boolean) Uno.get(sheet, "IsVisible")) {
      // its title rows say that it is a paper: it is printed once somebody shows it
      printed.setPrintAreas(new CellRangeAddress[0]);
      return false;
    }
    placeCharts(sheet);
    CellRangeAddress all =
        area(
            before.length == 0 ? used : before[0],
            before.length == 0 ? firstRow(sheet) : before[0].StartRow,
            used.EndRow);
    for (CellRangeAddress area : before) { // a part may have been narrower
      all.EndColumn = Math.max(all.EndColumn, area.EndColumn);
    }
    Object[][] values = data(sheet, all);
    if (list
        && !tables.isEmpty()
        && tables.stream().allMatch(t -> isResults(sheet, t) && isEmpty(values, all, t))) {
      printed.setPrintAreas(new CellRangeAddress[0]); // its title rows say that it is a paper
      return false;
    }
    BitSet shown = shown(sheet, all, values, tables);
    BitSet hidden = blank.hide(sheet, shown);
    blank.tighten(sheet, all, shown);
    List<Pagination.Stretch> stretches =
        stretches(
            sheet, all, shown, hidden, newPages(values, all), list ? printed.getTitleRows() : null);
    PageFormat.Fit paper = PageFormat.fit(style(sheet), widths(sheet, all));
    int last = stretches.get(stretches.size() - 1).last();
    List<Pagination.Part> parts =
        paper.onePage()
            ? List.of(new Pagination.Part(all.StartRow, last))
            : Pagination.of(stretches, paper.height(), head(sheet, printed));
    CellRangeAddress[] areas = new CellRangeAddress[parts.size()];
    for (int i = 0; i < areas.length; i++) {
      int first = i == 0 ? all.StartRow : parts.get(i).first();
      areas[i] = area(all, first, parts.get(i).last());
      if (lastColumn(values, areas[i], all) < paper.columns()) {
        areas[i].EndColumn = all.StartColumn + paper.columns() - 1;
      }
    }
    printed.setPrintAreas(areas);
    return true;
  }

  /** Where a paper begins that had nothing to print so far: letters without the head of a tab. */
  private static int firstRow(XSpreadsheet sheet) throws Exception {
    return OtherPapers.isLetter(sheet) ? PlanLayout.FIRST_ROW : 0;
  }

  /**
   * Puts charts back over the cells that are named for them: rows above may have grown. Tied to a
   * cell they would go with it, but LibreOffice 7.4 then stores endless rows.
   */
  private void placeCharts(XSpreadsheet sheet) throws Exception {
    XIndexAccess shapes =
        Uno.as(XIndexAccess.class, Uno.as(XDrawPageSupplier.class, sheet).getDrawPage());
    for (PrintAnchors.Chart chart : anchors.charts()) {
      if (chart.sheet().equals(CalcDocument.name(sheet)) && chart.index() < shapes.getCount()) {
        XCellRange over =
            sheet.getCellRangeByPosition(
                chart.cells().StartColumn,
                chart.cells().StartRow,
                chart.cells().EndColumn,
                chart.cells().EndRow);
        HeldShapes.hold(shapes.getByIndex(chart.index()))
            .setPosition((Point) Uno.get(over, "Position"));
      }
    }
  }

  /** The height of the rows that head each page. */
  private static double head(XSpreadsheet sheet, XPrintAreas printed) throws Exception {
    CellRangeAddress rows = printed.getTitleRows();
    return printed.getPrintTitleRows() ? height(sheet, rows.StartRow, rows.EndRow) : 0;
  }

  /** The last column of an area that shows something, counted from the first. */
  private static int lastColumn(Object[][] values, CellRangeAddress area, CellRangeAddress all) {
    int last = 0;
    for (int row = area.StartRow; row <= area.EndRow; row++) {
      Object[] cells = values[row - all.StartRow];
      for (int column = last + 1; column < cells.length; column++) {
        last = "".equals(cells[column]) ? last : column;
      }
    }
    return last;
  }

  private static double[] widths(XSpreadsheet sheet, CellRangeAddress all) throws Exception {
    double[] widths = new double[all.EndColumn - all.StartColumn + 1];
    for (int i = 0; i < widths.length; i++) {
      widths[i] = ((Size) Uno.get(rows(sheet, all.StartColumn + i, 0, 0), "Size")).Width;
    }
    return widths;
  }

  private static CellRangeAddress used(XSpreadsheet sheet) {
    XSheetCellCursor cursor = sheet.createCursor();
    Uno.as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
    CellRangeAddress end = Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
    return new CellRangeAddress(end.Sheet, 0, 0, end.EndColumn, end.EndRow);
  }

  /** Whether a table shows what is calculated, so that there is nothing to fill by hand. */
  private static boolean isResults(XSpreadsheet sheet, CellRangeAddress table) {
    try {
      return sheet
          .getCellByPosition(table.StartColumn, table.StartRow + 1)
          .getFormula()
          .matches("\\{?=.*");
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean isEmpty(Object[][] values, CellRangeAddress all, CellRangeAddress table) {
    for (int row = table.StartRow + 1; row <= Math.min(table.EndRow, all.EndRow); row++) {
      Object[] cells = values[row - all.StartRow];
      for (int column = table.StartColumn; column <= table.EndColumn; column++) {
        if (column < cells.length && !"".equals(cells[column])) {
          return false;
        }
      }
    }
    return true;
  }

  private static CellRangeAddress area(CellRangeAddress like, int from, int to) {
    return new CellRangeAddress(like.Sheet, like.StartColumn, from, like.EndColumn, to);
  }

  private static XCellRange rows(XSpreadsheet sheet, int column, int from, int to)
      throws Exception {
    return sheet.getCellRangeByPosition(column, from, column, to);
  }

  private static Object[][] data(XSpreadsheet sheet, CellRangeAddress at) throws Exception {
    return Uno.as(
            XCellRangeData.class,
            sheet.getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow))
        .getDataArray();
  }

  /** The rows that show something: values, drawings, or the cells of an empty table to fill. */
  private static BitSet shown(
      XSpreadsheet sheet, CellRangeAddress all, Object[][] rows, List<CellRangeAddress> tables)
      throws Exception {
    BitSet shown = new BitSet();
    for (int i = 0; i < rows.length; i++) {
      shown.set(all.StartRow + i, !Arrays.stream(rows[i]).allMatch(PrintRangeFitter::isBlank));
    }
    List<CellRangeAddress> empty =
        new ArrayList<>(tables.stream().filter(t -> isEmpty(t, shown)).toList());
    for (CellRangeAddress table : tables) {
      if (empty.contains(table) && isResults(sheet, table)) {
        empty.remove(table); // a list of nothing needs neither heads nor title
        shown.clear(Math.max(all.StartRow, table.StartRow - 1), table.StartRow + 1);
      }
    }
    int form = empty.size() == tables.size() ? SHOWN_WHEN_EMPTY : SHOWN_BESIDE_OTHERS;
    empty.forEach(t -> shown.set(t.StartRow, Math.min(t.StartRow + form, t.EndRow) + 1));
    if (tables.isEmpty()) {
      for (int row = shown.nextClearBit(all.StartRow); row <= all.EndRow; ) {
        shown.set(row, isFramed(rows(sheet, all.StartColumn, row, row)));
        row = shown.nextClearBit(row + 1);
      }
    }
    XIndexAccess shapes =
        Uno.as(XIndexAccess.class, Uno.as(XDrawPageSupplier.class, sheet).getDrawPage());
    for (int i = 0; i < shapes.getCount(); i++) {
      XShape shape = HeldShapes.hold(shapes.getByIndex(i));
      int top = shape.getPosition().Y;
      int bottom = top + shape.getSize().Height - 100;
      shown.set(rowAt(sheet, top + 100, all), rowAt(sheet, bottom, all) + 1);
    }
    return shown;
  }

  /** Nothing, the mark below the rows of a table, or that of a new page. */
  private static boolean isBlank(Object value) {
    return value.equals("") || value.equals(InputTable.END) || value.equals(ResultTable.NEW_PAGE);
  }

  /** The rows after which a plan begins a page. */
  private static BitSet newPages(Object[][] values, CellRangeAddress all) {
    BitSet begins = new BitSet();
    for (int i = 0; i < values.length; i++) {
      begins.set(all.StartRow + i, Arrays.stream(values[i]).anyMatch(ResultTable.NEW_PAGE::equals));
    }
    return begins;
  }

  private static boolean isEmpty(CellRangeAddress table, BitSet shown) {
    int next = shown.nextSetBit(table.StartRow + 1);
    return next < 0 || next > table.EndRow;
  }

  private static boolean isFramed(XCellRange cell) throws Exception {
    return ((BorderLine) Uno.get(cell, "LeftBorder")).OuterLineWidth > 0;
  }

  /** The row at this height below the top of the sheet. */
  private static int rowAt(XSpreadsheet sheet, int height, CellRangeAddress all) throws Exception {
    int first = all.StartRow;
    int last = all.EndRow;
    while (first < last) {
      int middle = (first + last + 1) / 2;
      Point at = (Point) Uno.get(rows(sheet, 0, middle, middle), "Position");
      if (at.Y <= height) {
        first = middle;
      } else {
        last = middle - 1;
      }
    }
    return first;
  }

  private static List<Pagination.Stretch> stretches(
      XSpreadsheet sheet,
      CellRangeAddress all,
      BitSet shown,
      BitSet hidden,
      BitSet begins,
      CellRangeAddress heads)
      throws Exception {
    for (var pageBreak : Uno.as(XSheetPageBreak.class, sheet).getRowPageBreaks()) {
      if (pageBreak.ManualBreak) {
        begins.set(pageBreak.Position);
      }
    }
    List<Pagination.Stretch> stretches = new ArrayList<>();
    int before = all.StartRow;
    int first = shown.nextSetBit(all.StartRow);
    while (first >= 0) {
      int last = first;
      int next = shown.nextSetBit(last + 1);
      while (next >= 0
          && next - last - count(hidden, last, next) <= APART
          && !anyOf(begins, last + 1, next)) {
        last = next;
        next = shown.nextSetBit(last + 1);
      }
      double gap = first == before ? 0 : height(sheet, before, first - 1);
      stretches.add(
          new Pagination.Stretch(
              first,
              last,
              first - before - count(hidden, before, first),
              gap,
              height(sheet, first, last),
              anyOf(begins, before, first),
              heads != null && heads.EndRow >= first && heads.EndRow <= last));
      before = last + 1;
      first = next;
    }
    return stretches;
  }

  private static int count(BitSet rows, int from, int to) {
    return rows.get(from, to).cardinality();
  }

  private static boolean anyOf(BitSet rows, int from, int to) {
    int next = rows.nextSetBit(from);
    return next >= 0 && next <= to;
  }

  private static double height(XSpreadsheet sheet, int from, int to) throws Exception {
    return ((Size) Uno.get(rows(sheet, 0, from, to), "Size")).Height;
  }

  private Object style(XSpreadsheet sheet) throws Exception {
    Object styles =
        Uno.as(XStyleFamiliesSupplier.class, book.document())
            .getStyleFamilies()
            .getByName("PageStyles");
    return Uno.as(XNameAccess.class, styles).getByName((String) Uno.get(sheet, "PageStyle"));
  }
}
