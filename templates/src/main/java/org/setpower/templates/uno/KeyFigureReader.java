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
public final class KeyFigureReader {
  private static final String PREFIX = "Result_";

  private KeyFigureReader() {}

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
    Object range = UnoAccess.ask(() -> names(document).getByName(PREFIX + name));
    XCellRange cells = UnoAccess.as(XCellRangeReferrer.class, range).getReferredCells();
    return UnoAccess.as(XCellRangeAddressable.class, cells).getRangeAddress();
  }

  private static XCellRange sheet(XComponent document, int index) {
    Object sheets = UnoAccess.as(XSpreadsheetDocument.class, document).getSheets();
    return UnoAccess.as(
        XCellRange.class,
        UnoAccess.ask(() -> UnoAccess.as(XIndexAccess.class, sheets).getByIndex(index)));
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
        : UnoAccess.as(XText.class, UnoAccess.ask(() -> sheet.getCellByPosition(column, row)))
            .getString();
  }

  private static XNamedRanges names(XComponent document) {
    return UnoAccess.as(XNamedRanges.class, UnoAccess.get(document, "NamedRanges"));
  }

  /** The figures by name ("Busiest_supply"), from the names of the document. */
  public static Map<String, String> of(XComponent document) {
    XNamedRanges names = names(document);
    Map<String, String> figures = new TreeMap<>();
    for (String name : names.getElementNames()) {
      if (name.startsWith(PREFIX)) {
        Object range = UnoAccess.ask(() -> names.getByName(name));
        var cells = UnoAccess.as(XCellRangeReferrer.class, range).getReferredCells();
        Object cell = UnoAccess.ask(() -> cells.getCellByPosition(0, 0));
        figures.put(name.substring(PREFIX.length()), UnoAccess.as(XText.class, cell).getString());
      }
    }
    return figures;
  }
}
