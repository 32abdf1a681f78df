package org.setpower.command;

import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeReferrer;
import org.setpower.uno.Uno;

/** A file that says of itself that another version drew it. */
final class OlderFile {
  private OlderFile() {}

  /** Writes another layout into the cell that names it. */
  static void make(XComponent document) throws Exception {
    Object answer = Uno.as(XNameAccess.class, Uno.get(document, "NamedRanges")).getByName("Answer");
    Uno.as(XCellRangeReferrer.class, answer)
        .getReferredCells()
        .getCellByPosition(1, 0)
        .setFormula("older");
  }
}
