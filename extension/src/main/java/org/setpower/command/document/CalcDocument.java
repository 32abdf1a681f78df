package org.setpower.command.document;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNameAccess;
import com.sun.star.container.XNamed;
import com.sun.star.document.XDocumentProperties;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XSheetCellRanges;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.command.message.FallibleAction;
import org.setpower.command.message.UserMessageException;
import org.setpower.text.MessageCatalog;
import org.setpower.uno.Uno;

/** A spreadsheet document. */
public record CalcDocument(XComponent document) {
  private static final String ORIGIN = "Set Power template";
  private static final Pattern LANGUAGE = Pattern.compile("-([a-z]{2}(?:-[A-Z]{2})?)$");
  private static final Pattern CELL = Pattern.compile("(?:(.*)\\.)?\\$?([A-Za-z]+)\\$?(\\d+)");

  public XSpreadsheets sheets() {
    return Uno.as(XSpreadsheetDocument.class, document).getSheets();
  }

  public List<XSpreadsheet> all() throws Exception {
    XIndexAccess sheets = Uno.as(XIndexAccess.class, sheets());
    List<XSpreadsheet> all = new ArrayList<>();
    for (int i = 0; i < sheets.getCount(); i++) {
      all.add(Uno.as(XSpreadsheet.class, sheets.getByIndex(i)));
    }
    return all;
  }

  public XSpreadsheet sheet(int index) throws Exception {
    return Uno.as(XSpreadsheet.class, Uno.as(XIndexAccess.class, sheets()).getByIndex(index));
  }

  /** The sheet of this name, made at the end if it is not there. */
  public XSpreadsheet sheet(String name) throws Exception {
    if (!sheets().hasByName(name)) {
      try {
        sheets().insertNewByName(name, Short.MAX_VALUE);
      } catch (com.sun.star.uno.RuntimeException e) {
        throw new UserMessageException(
                "No sheet can be added: the structure of this document is protected (Tools -"
                    + " Protect Spreadsheet Structure).")
            .because(e);
      }
    }
    return Uno.as(XSpreadsheet.class, sheets().getByName(name));
  }

  public static String name(XSpreadsheet sheet) {
    return Uno.as(XNamed.class, sheet).getName();
  }

  public XCell cell(CellAddress at) throws Exception {
    return sheet(at.Sheet).getCellByPosition(at.Column, at.Row);
  }

  public XCellRange range(CellRangeAddress at) throws Exception {
    return sheet(at.Sheet)
        .getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow);
  }

  /** The cell at an address such as {@code CableRunsSheet.D5}; without a sheet, of the first. */
  public XCell cell(String address) throws Exception {
    Matcher parts = CELL.matcher(address);
    if (!parts.matches()) {
      throw new UserMessageException("“{}” is not the address of a cell.", address);
    }
    XSpreadsheet sheet = parts.group(1) == null ? sheet(0) : existing(parts.group(1));
    return sheet.getCellRangeByName(parts.group(2) + parts.group(3)).getCellByPosition(0, 0);
  }

  private XSpreadsheet existing(String name) throws Exception {
    if (!sheets().hasByName(name)) {
      throw new UserMessageException("There is no sheet “{}” in this document.", name);
    }
    return sheet(name);
  }

  /** What the first cell of a name shows; empty where there is none. */
  public String named(String name) throws Exception {
    XNameAccess names = Uno.as(XNameAccess.class, Uno.get(document, "NamedRanges"));
    if (!names.hasByName(name)) {
      return "";
    }
    XCellRange cells = Uno.as(XCellRangeReferrer.class, names.getByName(name)).getReferredCells();
    return cells == null ? "" : shown(cells.getCellByPosition(0, 0));
  }

  public static CellAddress address(XCell cell) {
    return Uno.as(XCellAddressable.class, cell).getCellAddress();
  }

  public static String shown(XCell cell) {
    return Uno.as(XText.class, cell).getString();
  }

  /** D5. */
  public static String address(int column, int row) {
    StringBuilder letters = new StringBuilder();
    for (int c = column; c >= 0; c = c / 26 - 1) {
      letters.insert(0, (char) ('A' + c % 26));
    }
    return letters.toString() + (row + 1);
  }

  public static String address(CellAddress at) {
    return address(at.Column, at.Row);
  }

  public static List<CellRangeAddress> ranges(XSheetCellRanges ranges) {
    return List.of(ranges.getRangeAddresses());
  }

  /** Whether it was made from one of our templates, which note that in the document. */
  public boolean isFromTemplate() {
    return own().getPropertySetInfo().hasPropertyByName(ORIGIN);
  }

  /** File name and version of the template it was made from; empty if it is none of ours. */
  public String origin() throws Exception {
    return isFromTemplate() ? String.valueOf(own().getPropertyValue(ORIGIN)) : "";
  }

  /** The language of its template, which stands behind the version; empty if it is none of ours. */
  public String language() throws Exception {
    return language(origin());
  }

  /** The language of a template, as de or en-US; nothing behind the version means English. */
  public static String language(String origin) {
    if (origin.isEmpty()) {
      return "";
    }
    Matcher language = LANGUAGE.matcher(origin);
    return language.find() ? language.group(1) : MessageCatalog.ENGLISH;
  }

  private XPropertySet own() {
    XDocumentProperties properties =
        Uno.as(XDocumentPropertiesSupplier.class, document).getDocumentProperties();
    return Uno.as(XPropertySet.class, properties.getUserDefinedProperties());
  }

  /** Writes many cells and calculates once, afterwards. */
  public void withoutCalculation(FallibleAction writing) throws Exception {
    XCalculatable calculation = Uno.as(XCalculatable.class, document);
    boolean automatic = calculation.isAutomaticCalculationEnabled();
    calculation.enableAutomaticCalculation(false);
    try {
      writing.run();
    } finally {
      calculation.enableAutomaticCalculation(automatic);
    }
  }

  public XMultiServiceFactory factory() {
    return Uno.as(XMultiServiceFactory.class, document);
  }
}
