package org.setpower.templates.uno;

import com.sun.star.container.XIndexAccess;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.text.XText;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The headline figures of an open file, as they are shown. */
public final class Results {
  private static final String PREFIX = "Result_";

  private Results() {}

  /**
   * The figures in the order of the page, each with the words and the unit that stand above or left
   * of it: "Shortest pack time (h): 1.2".
   */
  public static List<String> lines(XComponent document) {
    Map<Long, String> lines = new TreeMap<>();
    of(document)
        .forEach(
            (name, value) -> {
              CellRangeAddress at = address(document, name);
              long place = ((long) at.Sheet << 40) + ((long) at.StartRow << 16) + at.StartColumn;
              lines.put(place, label(sheet(document, at.Sheet), at, name) + ": " + value);
            });
    return List.copyOf(lines.values());
  }

  private static CellRangeAddress address(XComponent document, String name) {
    Object range = Uno.ask(() -> names(document).getByName(PREFIX + name));
    XCellRange cells = Uno.as(XCellRangeReferrer.class, range).getReferredCells();
    return Uno.as(XCellRangeAddressable.class, cells).getRangeAddress();
  }

  private static XCellRange sheet(XComponent document, int index) {
    Object sheets = Uno.as(XSpreadsheetDocument.class, document).getSheets();
    return Uno.as(
        XCellRange.class, Uno.ask(() -> Uno.as(XIndexAccess.class, sheets).getByIndex(index)));
  }

  private static String label(XCellRange sheet, CellRangeAddress at, String name) {
    String words = name.replace('_', ' ');
    return Stream.of(
            text(sheet, at.StartColumn, at.StartRow - 1),
            text(sheet, at.StartColumn - 1, at.StartRow))
        .filter(t -> t.startsWith(words))
        .findFirst()
        .orElse(words);
  }

  private static String text(XCellRange sheet, int column, int row) {
    return column < 0 || row < 0
        ? ""
        : Uno.as(XText.class, Uno.ask(() -> sheet.getCellByPosition(column, row))).getString();
  }

  private static XNamedRanges names(XComponent document) {
    return Uno.as(XNamedRanges.class, Uno.get(document, "NamedRanges"));
  }

  /** The figures by name ("Busiest_supply"), from the names of the document. */
  public static Map<String, String> of(XComponent document) {
    XNamedRanges names = names(document);
    Map<String, String> figures = new TreeMap<>();
    for (String name : names.getElementNames()) {
      if (name.startsWith(PREFIX)) {
        Object range = Uno.ask(() -> names.getByName(name));
        var cells = Uno.as(XCellRangeReferrer.class, range).getReferredCells();
        Object cell = Uno.ask(() -> cells.getCellByPosition(0, 0));
        figures.put(name.substring(PREFIX.length()), Uno.as(XText.class, cell).getString());
      }
    }
    return figures;
  }
}
