package org.setpower.command;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.XNamedRanges;
import com.sun.star.table.CellAddress;
import com.sun.star.uno.UnoRuntime;
import org.setpower.addin.TestSheet;

/** Named expressions of a document. */
public final class NamedExpressions {
  private NamedExpressions() {}

  public static void define(TestSheet sheet, String name, String content) {
    try {
      Object names =
          UnoRuntime.queryInterface(XPropertySet.class, sheet.document())
              .getPropertyValue("NamedRanges");
      UnoRuntime.queryInterface(XNamedRanges.class, names)
          .addNewByName(name, content, new CellAddress(), 0);
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
