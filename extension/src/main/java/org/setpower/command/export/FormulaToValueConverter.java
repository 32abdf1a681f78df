package org.setpower.command.export;

import com.sun.star.awt.FontSlant;
import com.sun.star.beans.XPropertyContainer;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameAccess;
import com.sun.star.document.XDocumentProperties;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XDatabaseRanges;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.table.XTableChart;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.uno.Exception;
import com.sun.star.util.XProtectable;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/**
 * Removes hidden parts from a values-only copy, and adds a line to each sheet that identifies it as
 * a copy.
 */
public final class FormulaToValueConverter {
  private static final int CONTENT =
      CellFlags.VALUE
          | CellFlags.DATETIME
          | CellFlags.STRING
          | CellFlags.ANNOTATION
          | CellFlags.FORMULA
          | CellFlags.EDITATTR
          | CellFlags.OBJECTS;

  private static final int GREY = 0x595959;

  private final CalcDocument book;

  FormulaToValueConverter(CalcDocument book) {
    this.book = book;
  }

  /** Takes the protection off a sheet; whether there was one. */
  public static boolean unlock(XSpreadsheet sheet) {
    XProtectable lock = Uno.as(XProtectable.class, sheet);
    if (!lock.isProtected()) {
      return false;
    }
    try {
      lock.unprotect("");
    } catch (com.sun.star.lang.IllegalArgumentException e) {
      throw locked(CalcDocument.name(sheet));
    }
    if (lock.isProtected()) {
      throw locked(CalcDocument.name(sheet));
    }
    return true;
  }

  static UserMessageException locked(String sheet) {
    return new UserMessageException(
        "The sheet “{}” is protected with a password. Take the protection off (Tools - Protect"
            + " Sheet) and ask again; nothing was written.",
        sheet);
  }

  /** A line above all others on each sheet, printed with it. */
  void head(String line) throws Exception {
    for (XSpreadsheet sheet : book.all()) {
      CellRangeAddress used = used(sheet);
      BitSet columns = seen(sheet, used, false);
      Uno.as(XColumnRowRange.class, sheet).getRows().insertByIndex(0, 1);
      XCellRange row = sheet.getCellRangeByPosition(0, 0, used.EndColumn, 0);
      Uno.set(row, "CellStyle", "Default");
      XCell cell = sheet.getCellByPosition(Math.max(0, columns.nextSetBit(0)), 0);
      cell.setFormula("'" + line);
      Uno.set(cell, "CharColor", GREY);
      Uno.set(cell, "CharPosture", FontSlant.ITALIC);
      Object first = Uno.as(XColumnRowRange.class, sheet).getRows().getByIndex(0);
      Uno.set(first, "IsVisible", true);
      Uno.set(first, "OptimalHeight", true);
      print(Uno.as(XPrintAreas.class, sheet));
    }
  }

  /** The first area begins with the line; one that began lower repeats it as a title. */
  private static void print(XPrintAreas printed) {
    CellRangeAddress[] areas = printed.getPrintAreas();
    if (areas.length == 0) {
      return;
    }
    if (areas[0].StartRow == 1) {
      areas[0].StartRow = 0;
      printed.setPrintAreas(areas);
      return;
    }
    CellRangeAddress title = areas[0];
    if (printed.getPrintTitleRows()) {
      title = printed.getTitleRows();
    } else {
      title = new CellRangeAddress(title.Sheet, title.StartColumn, 0, title.EndColumn, 0);
    }
    title.StartRow = 0;
    printed.setTitleRows(title);
    printed.setPrintTitleRows(true);
  }

  /** Leaves these sheets, and of them what is seen. */
  void strip(Set<String> wanted) throws Exception {
    Map<XSpreadsheet, List<BitSet>> shown = new HashMap<>();
    Map<Integer, List<BitSet>> left = new HashMap<>();
    List<XSpreadsheet> all = book.all();
    for (int i = 0; i < all.size(); i++) {
      if (wanted.contains(CalcDocument.name(all.get(i)))) {
        CellRangeAddress used = used(all.get(i));
        List<BitSet> seen = List.of(seen(all.get(i), used, true), seen(all.get(i), used, false));
        shown.put(all.get(i), seen);
        left.put(i, seen);
      }
    }
    for (XSpreadsheet sheet : shown.keySet()) {
      ownData(sheet, left);
    }
    for (XSpreadsheet sheet : all) {
      if (!shown.containsKey(sheet)) {
        book.sheets().removeByName(CalcDocument.name(sheet));
      }
    }
    for (Map.Entry<XSpreadsheet, List<BitSet>> sheet : shown.entrySet()) {
      clearHidden(sheet.getKey(), sheet.getValue());
      removeNames(Uno.get(sheet.getKey(), "NamedRanges"));
    }
    removeNames(Uno.get(book.document(), "NamedRanges"));
    XDatabaseRanges tables =
        Uno.as(XDatabaseRanges.class, Uno.get(book.document(), "DatabaseRanges"));
    for (String name : Uno.as(XNameAccess.class, tables).getElementNames()) {
      tables.removeByName(name);
    }
    forgetPeople();
  }

  /** A chart of cells that go keeps their figures. */
  private static void ownData(XSpreadsheet sheet, Map<Integer, List<BitSet>> left)
      throws Exception {
    XNameAccess charts =
        Uno.as(XNameAccess.class, Uno.as(XTableChartsSupplier.class, sheet).getCharts());
    for (String name : charts.getElementNames()) {
      XTableChart chart = Uno.as(XTableChart.class, charts.getByName(name));
      for (CellRangeAddress range : chart.getRanges()) {
        List<BitSet> seen = left.get((int) range.Sheet);
        if (seen == null
            || seen.get(0).nextClearBit(range.StartRow) <= range.EndRow
            || seen.get(1).nextClearBit(range.StartColumn) <= range.EndColumn) {
          Uno.as(
                  com.sun.star.chart2.XChartDocument.class,
                  Uno.as(XEmbeddedObjectSupplier.class, chart).getEmbeddedObject())
              .createInternalDataProvider(true);
          break;
        }
      }
    }
  }

  private static CellRangeAddress used(XSpreadsheet sheet) {
    XSheetCellCursor cursor = sheet.createCursor();
    Uno.as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
    CellRangeAddress end = Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
    return new CellRangeAddress(end.Sheet, 0, 0, end.EndColumn, end.EndRow);
  }

  /** The rows, or columns, of the used area that are not hidden. */
  private static BitSet seen(XSpreadsheet sheet, CellRangeAddress used, boolean rows)
      throws Exception {
    XCellRange all = sheet.getCellRangeByPosition(0, 0, used.EndColumn, used.EndRow);
    BitSet seen = new BitSet();
    for (CellRangeAddress at :
        CalcDocument.ranges(Uno.as(XCellRangesQuery.class, all).queryVisibleCells())) {
      if (rows) {
        seen.set(at.StartRow, at.EndRow + 1);
      } else {
        seen.set(at.StartColumn, at.EndColumn + 1);
      }
    }
    return seen;
  }

  private static void clearHidden(XSpreadsheet sheet, List<BitSet> seen) throws Exception {
    CellRangeAddress used = used(sheet);
    BitSet rows = seen.get(0);
    for (int from = rows.nextClearBit(0); from <= used.EndRow; ) {
      int next = rows.nextSetBit(from);
      int to = next < 0 ? used.EndRow : Math.min(next - 1, used.EndRow);
      clear(sheet.getCellRangeByPosition(0, from, used.EndColumn, to));
      from = rows.nextClearBit(to + 1);
    }
    BitSet columns = seen.get(1);
    for (int from = columns.nextClearBit(0); from <= used.EndColumn; ) {
      int next = columns.nextSetBit(from);
      int to = next < 0 ? used.EndColumn : Math.min(next - 1, used.EndColumn);
      clear(sheet.getCellRangeByPosition(from, 0, to, used.EndRow));
      from = columns.nextClearBit(to + 1);
    }
    var notes = Uno.as(XSheetAnnotationsSupplier.class, sheet).getAnnotations();
    for (int i = notes.getCount() - 1; i >= 0; i--) {
      var at = Uno.as(com.sun.star.sheet.XSheetAnnotation.class, notes.getByIndex(i)).getPosition();
      if (!rows.get(at.Row) || !columns.get(at.Column)) {
        notes.removeByIndex(i);
      }
    }
  }

  private static void clear(XCellRange range) {
    Uno.as(XSheetOperation.class, range).clearContents(CONTENT);
  }

  private static void removeNames(Object names) throws Exception {
    XNamedRanges list = Uno.as(XNamedRanges.class, names);
    for (String name : list.getElementNames()) {
      list.removeByName(name);
    }
  }

  private void forgetPeople() throws Exception {
    XDocumentProperties properties =
        Uno.as(XDocumentPropertiesSupplier.class, book.document()).getDocumentProperties();
    properties.resetUserData("");
    properties.setSubject("");
    properties.setDescription("");
    properties.setKeywords(new String[0]);
    properties.setTemplateName("");
    properties.setTemplateURL("");
    XPropertyContainer own = properties.getUserDefinedProperties();
    for (var property : Uno.as(XPropertySet.class, own).getPropertySetInfo().getProperties()) {
      own.removeProperty(property.Name);
    }
    Uno.set(
        book.factory().createInstance("com.sun.star.document.Settings"), "ApplyUserData", false);
  }

  /** Locks all sheets, without a password. */
  void lock() throws Exception {
    for (XSpreadsheet sheet : book.all()) {
      Uno.as(XProtectable.class, sheet).protect("");
    }
  }
}
