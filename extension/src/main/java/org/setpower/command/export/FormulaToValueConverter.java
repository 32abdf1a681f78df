package org.setpower.command.export;

import com.sun.star.awt.FontSlant;
import com.sun.star.beans.XPropertyContainer;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XDocumentProperties;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetPageBreak;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellContentType;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.Exception;
import com.sun.star.util.XProtectable;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/** Says on each sheet of a copy without formulas what it is, and locks it. */
public final class FormulaToValueConverter {
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
      int column = firstSeen(sheet, afterTitles(sheet), used);
      Uno.as(XColumnRowRange.class, sheet).getRows().insertByIndex(0, 1);
      XCellRange row = sheet.getCellRangeByPosition(0, 0, used.EndColumn, 0);
      Uno.set(row, "CellStyle", "Default");
      write(sheet.getCellByPosition(column, 0), line);
      Object first = Uno.as(XColumnRowRange.class, sheet).getRows().getByIndex(0);
      Uno.set(first, "IsVisible", true);
      Uno.set(first, "OptimalHeight", true);
      print(Uno.as(XPrintAreas.class, sheet));
    }
  }

  /** The same line above each page across but the first, once pages are laid out. */
  void headPagesAcross(String line) throws Exception {
    for (XSpreadsheet sheet : book.all()) {
      int last = used(sheet).EndColumn;
      for (var pageBreak : Uno.as(XSheetPageBreak.class, sheet).getColumnPageBreaks()) {
        if (pageBreak.Position > 0 && pageBreak.Position <= last) {
          XCell cell = sheet.getCellByPosition(pageBreak.Position, 0);
          if (cell.getType() == CellContentType.EMPTY) {
            write(cell, line);
          }
        }
      }
    }
  }

  private static void write(XCell cell, String line) throws Exception {
    cell.setFormula("'" + line);
    Uno.set(cell, "CharColor", GREY);
    Uno.set(cell, "CharPosture", FontSlant.ITALIC);
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

  private static CellRangeAddress used(XSpreadsheet sheet) {
    XSheetCellCursor cursor = sheet.createCursor();
    Uno.as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
    CellRangeAddress end = Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress();
    return new CellRangeAddress(end.Sheet, 0, 0, end.EndColumn, end.EndRow);
  }

  /** Columns repeated on each page across would show the line there cut off at their width. */
  private static int afterTitles(XSpreadsheet sheet) {
    XPrintAreas printed = Uno.as(XPrintAreas.class, sheet);
    return printed.getPrintTitleColumns() ? printed.getTitleColumns().EndColumn + 1 : 0;
  }

  /** The first column of the used area, from one on, that is not hidden. */
  private static int firstSeen(XSpreadsheet sheet, int from, CellRangeAddress used)
      throws Exception {
    if (from > used.EndColumn) {
      return firstSeen(sheet, 0, used);
    }
    XCellRange all = sheet.getCellRangeByPosition(from, 0, used.EndColumn, used.EndRow);
    return CalcDocument.ranges(Uno.as(XCellRangesQuery.class, all).queryVisibleCells()).stream()
        .mapToInt(seen -> seen.StartColumn)
        .min()
        .orElse(from);
  }

  /** Takes out who worked on it, and words for the house alone. */
  void forgetPeople() throws Exception {
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
