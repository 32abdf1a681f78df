package org.setpower.templates;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.text.XText;
import java.util.Map;
import java.util.TreeMap;

/** The headline figures of an open file, as they are shown. */
public final class Results {
  private static final String PREFIX = "Result_";

  private Results() {}

  /** The figures by name ("Busiest_supply"), from the names of the document. */
  public static Map<String, String> of(XComponent document) {
    XNamedRanges names = Uno.as(XNamedRanges.class, Uno.get(document, "NamedRanges"));
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
