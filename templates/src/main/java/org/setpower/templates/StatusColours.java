package org.setpower.templates;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.table.XCellRange;

/** Colours the words ok, look and stop in cells of some style. */
final class StatusColours {
  private StatusColours() {}

  static void put(XCellRange cells, Styles styles, Style over) {
    XSheetConditionalEntries entries =
        Uno.as(XSheetConditionalEntries.class, Uno.get(cells, "ConditionalFormat"));
    for (Style style : Style.values()) {
      if (style.isStatus()) {
        String word = style.name().toLowerCase(java.util.Locale.ROOT);
        entries.addNew(
            new PropertyValue[] {
              property("Operator", ConditionOperator.EQUAL),
              property("Formula1", "\"" + word + "\""),
              property("StyleName", styles.status(style, over))
            });
      }
    }
    Uno.set(cells, "ConditionalFormat", entries);
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }
}
