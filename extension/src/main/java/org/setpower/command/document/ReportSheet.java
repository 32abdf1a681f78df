package org.setpower.command.document;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.awt.FontWeight;
import com.sun.star.frame.XController;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetCellCursor;
import com.sun.star.sheet.XSheetOperation;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.sheet.XUsedAreaCursor;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import com.sun.star.text.XTextContent;
import com.sun.star.uno.Exception;
import com.sun.star.util.XProtectable;
import java.util.LinkedHashSet;
import java.util.Set;
import org.setpower.command.message.UserMessageException;
import org.setpower.text.MessageCatalog;
import org.setpower.uno.Uno;

/** A sheet of a command at the end of a document. */
public final class ReportSheet {
  private final CalcDocument book;
  private final XSpreadsheet sheet;

  private ReportSheet(CalcDocument book, XSpreadsheet sheet) {
    this.book = book;
    this.sheet = sheet;
  }

  /** What it is called in all languages: a document may come from an office in another one. */
  public static Set<String> names(String english) {
    Set<String> names = new LinkedHashSet<>(Set.of(english));
    MessageCatalog.files()
        .forEach(l -> names.add(MessageCatalog.in(l, MessageCatalog.Speaker.COMMANDS).of(english)));
    return names;
  }

  /**
   * The sheet, made in the office's language if it is there in none; its columns get these widths
   * in millimetres.
   */
  public static ReportSheet named(CalcDocument book, String english, int... widths)
      throws Exception {
    String name =
        names(english).stream().filter(book.sheets()::hasByName).findFirst().orElse(say(english));
    ReportSheet own = new ReportSheet(book, book.sheet(name));
    if (Uno.as(XProtectable.class, own.sheet).isProtected()) {
      throw new UserMessageException(
          "The sheet “{}” is protected: take the protection off and ask again.", name);
    }
    // without a print range: what it lists is old once the document changes
    Uno.as(XPrintAreas.class, own.sheet).setPrintAreas(new CellRangeAddress[0]);
    var columns = Uno.as(XColumnRowRange.class, own.sheet).getColumns();
    for (int i = 0; i < widths.length; i++) {
      Uno.set(columns.getByIndex(i), "Width", widths[i] * 100);
    }
    return own;
  }

  public void clear() {
    Uno.as(XSheetOperation.class, sheet)
        .clearContents(
            CellFlags.VALUE
                | CellFlags.DATETIME
                | CellFlags.STRING
                | CellFlags.ANNOTATION
                | CellFlags.FORMULA
                | CellFlags.HARDATTR
                | CellFlags.STYLES);
  }

  /** The first row with room below everything, from 0. */
  public int nextRow() throws Exception {
    XSheetCellCursor cursor = sheet.createCursor();
    Uno.as(XUsedAreaCursor.class, cursor).gotoEndOfUsedArea(false);
    int last = Uno.as(XCellRangeAddressable.class, cursor).getRangeAddress().EndRow;
    return last == 0 && cell(0, 0).getFormula().isEmpty() ? 0 : last + 3;
  }

  XCell cell(int column, int row) throws Exception {
    return sheet.getCellByPosition(column, row);
  }

  /** Writes texts and numbers; text stays text, whatever it begins with. */
  public void write(int row, Object[]... rows) throws Exception {
    var range = sheet.getCellRangeByPosition(0, row, rows[0].length - 1, row + rows.length - 1);
    Uno.as(XCellRangeData.class, range).setDataArray(rows);
  }

  /** Writes a row cell by cell: LibreOffice 7.4 does not undo setDataArray of blank cells. */
  public void type(int row, Object... cells) throws Exception {
    for (int c = 0; c < cells.length; c++) {
      if (cells[c] instanceof Double number) {
        cell(c, row).setValue(number);
      } else if (!"".equals(cells[c])) {
        Uno.as(XText.class, cell(c, row)).setString(String.valueOf(cells[c]));
      }
    }
  }

  public void hide() throws Exception {
    Uno.set(sheet, "IsVisible", false);
  }

  public void bold(int row, int columns) throws Exception {
    Uno.set(sheet.getCellRangeByPosition(0, row, columns - 1, row), "CharWeight", FontWeight.BOLD);
  }

  /** Long texts of a column go on in the next line of their cell. */
  public void wrap(int column) throws Exception {
    Uno.set(
        Uno.as(XColumnRowRange.class, sheet).getColumns().getByIndex(column),
        "IsTextWrapped",
        true);
  }

  /** A link to a cell of this document, in place of the cell's text. */
  public void link(int column, int row, String sheetName, String address) throws Exception {
    XText text = Uno.as(XText.class, cell(column, row));
    Object field = book.factory().createInstance("com.sun.star.text.TextField.URL");
    String quoted = "'" + sheetName.replace("'", "''") + "'";
    Uno.set(field, "URL", "#" + quoted + "." + address);
    Uno.set(field, "Representation", sheetName + "." + address);
    text.setString("");
    text.insertTextContent(text.createTextCursor(), Uno.as(XTextContent.class, field), false);
  }

  /** Brings it to the front. */
  public void show(XController controller) {
    if (controller != null) {
      Uno.as(XSpreadsheetView.class, controller).setActiveSheet(sheet);
    }
  }
}
