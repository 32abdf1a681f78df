package org.setpower.templates.uno;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import org.setpower.plan.finding.Verdict;
import org.setpower.templates.layout.CellNames;
import org.setpower.templates.layout.PlanNames;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.CellStyle;

/** Colours the words ok, check and stop in cells of some style. */
final class StatusColours {
  /** Decimals of currencies that have not two. */
  private static final int[] OTHER_DECIMALS = {0, 3};

  private StatusColours() {}

  /** Colours the words ok, check and stop. */
  static void putVerdict(XCellRange cells, StyleWriter styles, CellStyle over) {
    XSheetConditionalEntries entries =
        UnoAccess.as(XSheetConditionalEntries.class, UnoAccess.get(cells, "ConditionalFormat"));
    for (Verdict verdict : Verdict.values()) {
      CellStyle style =
          switch (verdict) {
            case OK -> CellStyle.OK;
            case CHECK -> CellStyle.CHECK;
            case STOP -> CellStyle.STOP;
          };
      entries.addNew(
          new PropertyValue[] {
            property("Operator", ConditionOperator.EQUAL),
            property("Formula1", "\"" + verdict.code() + "\""),
            property("StyleName", styles.status(style, over))
          });
    }
    UnoAccess.set(cells, "ConditionalFormat", entries);
  }

  /** Shows a no as a stop: nobody reads it for a yes. */
  static void putNo(XCellRange cells, StyleWriter styles, CellStyle over) {
    XSheetConditionalEntries entries =
        UnoAccess.as(XSheetConditionalEntries.class, UnoAccess.get(cells, "ConditionalFormat"));
    entries.addNew(
        new PropertyValue[] {
          property("Operator", ConditionOperator.EQUAL),
          property("Formula1", "\"no\""),
          property("StyleName", styles.status(CellStyle.STOP, over))
        });
    UnoAccess.set(cells, "ConditionalFormat", entries);
  }

  /** Shows amounts with the decimals of their currency. */
  static void putMoney(XCellRange cells, StyleWriter styles, CellStyle over) {
    XSheetConditionalEntries entries =
        UnoAccess.as(XSheetConditionalEntries.class, UnoAccess.get(cells, "ConditionalFormat"));
    for (int decimals : OTHER_DECIMALS) {
      String style = styles.money(over, decimals);
      add(entries, cells, PlanNames.DECIMALS + "=" + decimals, style);
    }
    UnoAccess.set(cells, "ConditionalFormat", entries);
  }

  /**
   * Lets the rows of a list look as a result in them says.
   *
   * @param word a formula that gives the word
   */
  static void putLooks(
      XCellRange cells, StyleWriter styles, String word, PlanList list, CellFormat format) {
    XSheetConditionalEntries entries =
        UnoAccess.as(XSheetConditionalEntries.class, UnoAccess.get(cells, "ConditionalFormat"));
    list.looks()
        .forEach(
            (value, style) -> {
              String is = word + "=\"" + value + "\"";
              if (format == CellFormat.MONEY) {
                for (int decimals : OTHER_DECIMALS) {
                  String both = "AND(" + is + ";" + PlanNames.DECIMALS + "=" + decimals + ")";
                  add(entries, cells, both, styles.money(style, decimals));
                }
              }
              add(entries, cells, is, styles.of(style, format));
            });
    UnoAccess.set(cells, "ConditionalFormat", entries);
  }

  private static void add(
      XSheetConditionalEntries entries, XCellRange cells, String formula, String style) {
    CellRangeAddress at = UnoAccess.as(XCellRangeAddressable.class, cells).getRangeAddress();
    entries.addNew(
        new PropertyValue[] {
          property("Operator", ConditionOperator.FORMULA),
          property("Formula1", formula),
          property("SourcePosition", new CellAddress(at.Sheet, at.StartColumn, at.StartRow)),
          property("StyleName", style)
        });
  }

  /** Draws no line below rows of results that show nothing: so no page is full of lines. */
  static void putBlank(XCellRange rows, XCellRange cells, StyleWriter styles) {
    CellRangeAddress at = UnoAccess.as(XCellRangeAddressable.class, rows).getRangeAddress();
    XSheetConditionalEntries entries =
        UnoAccess.as(XSheetConditionalEntries.class, UnoAccess.get(cells, "ConditionalFormat"));
    String row =
        CellNames.inColumn(at.StartColumn, at.StartRow)
            + ":"
            + CellNames.inColumn(at.EndColumn, at.StartRow);
    int column = UnoAccess.as(XCellRangeAddressable.class, cells).getRangeAddress().StartColumn;
    entries.addNew(
        new PropertyValue[] {
          property("Operator", ConditionOperator.FORMULA),
          property("Formula1", "SUMPRODUCT(LEN(" + row + "))=0"),
          property("SourcePosition", new CellAddress(at.Sheet, column, at.StartRow)),
          property("StyleName", styles.of(CellStyle.BLANK))
        });
    UnoAccess.set(cells, "ConditionalFormat", entries);
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }
}
