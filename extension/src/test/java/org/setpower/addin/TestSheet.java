package org.setpower.addin;

import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import org.setpower.office.Office;

/** A sheet of a document, as short calls for tests. */
public final class TestSheet {
  private final XComponent document;
  private final XSpreadsheet sheet;

  private TestSheet(XComponent document, XSpreadsheet sheet) {
    this.document = document;
    this.sheet = sheet;
  }

  /** The first sheet of a document. */
  public static TestSheet firstOf(XComponent document) {
    try {
      XIndexAccess sheets = UnoRuntime.queryInterface(XIndexAccess.class, sheets(document));
      return new TestSheet(
          document, UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByIndex(0)));
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** A sheet by name, made if it is not there. */
  public static TestSheet named(XComponent document, String name) {
    try {
      var sheets = sheets(document);
      if (!sheets.hasByName(name)) {
        sheets.insertNewByName(name, (short) 32_000);
      }
      return new TestSheet(
          document, UnoRuntime.queryInterface(XSpreadsheet.class, sheets.getByName(name)));
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static com.sun.star.sheet.XSpreadsheets sheets(XComponent document) {
    return UnoRuntime.queryInterface(XSpreadsheetDocument.class, document).getSheets();
  }

  public XComponent document() {
    return document;
  }

  public XSpreadsheet sheet() {
    return sheet;
  }

  public void calculate() {
    UnoRuntime.queryInterface(XCalculatable.class, document).calculateAll();
  }

  public void close() {
    Office.discard(document);
  }

  public XCell cell(String address) {
    try {
      return range(address).getCellByPosition(0, 0);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new IllegalStateException(e);
    }
  }

  public XCellRange range(String address) {
    return sheet.getCellRangeByName(address);
  }

  public TestSheet put(String address, double value) {
    cell(address).setValue(value);
    return this;
  }

  public TestSheet put(String address, String formulaOrText) {
    cell(address).setFormula(formulaOrText);
    return this;
  }

  public TestSheet text(String address, String text) {
    UnoRuntime.queryInterface(XText.class, cell(address)).setString(text);
    return this;
  }

  public TestSheet array(String address, String formula) {
    UnoRuntime.queryInterface(XArrayFormulaRange.class, range(address)).setArrayFormula(formula);
    return this;
  }

  public double number(String address) {
    return cell(address).getValue();
  }

  /** What the cell shows. */
  public String shown(String address) {
    return UnoRuntime.queryInterface(XText.class, cell(address)).getString();
  }

  public int error(String address) {
    return cell(address).getError();
  }

  public Object[][] data(String address) {
    return UnoRuntime.queryInterface(XCellRangeData.class, range(address)).getDataArray();
  }

  /** Sets a property of a range, such as CellBackColor. */
  public TestSheet style(String address, String property, Object value) {
    try {
      UnoRuntime.queryInterface(XPropertySet.class, range(address))
          .setPropertyValue(property, value);
      return this;
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** Sets a property of a column, such as Width (1/100 mm). */
  public TestSheet column(String address, String property, Object value) {
    try {
      var columns =
          UnoRuntime.queryInterface(com.sun.star.table.XColumnRowRange.class, range(address))
              .getColumns();
      UnoRuntime.queryInterface(XPropertySet.class, columns).setPropertyValue(property, value);
      return this;
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** A heading without the ends of its lines. */
  public static String inOneLine(String heading) {
    return heading.replace("-\n", "-").replace('\n', ' ');
  }
}
