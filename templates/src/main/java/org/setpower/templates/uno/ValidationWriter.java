package org.setpower.templates.uno;

import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.ValidationAlertStyle;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.table.XCellRange;
import java.util.stream.Collectors;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.text.MessageCatalog;

/** Input help, lists, limits and error messages of the cells to fill. */
final class ValidationWriter {
  private static final String HUGE = "1E+300";

  /** What a cell says whose entries stand in other cells. */
  static final String PICK = "Pick {} from the list.";

  private ValidationWriter() {}

  /**
   * Writes those of some cells.
   *
   * @param list the cells whose entries may be picked; null for the words of the item
   */
  static void put(
      XCellRange cells, FieldSpec item, MessageCatalog words, String help, String list) {
    Object validation = UnoAccess.get(cells, "Validation");
    UnoAccess.set(validation, "IgnoreBlankCells", true);
    UnoAccess.set(validation, "ShowInputMessage", !help.isEmpty());
    UnoAccess.set(validation, "InputTitle", words.of(item.heading()));
    UnoAccess.set(validation, "InputMessage", help);
    UnoAccess.set(validation, "ErrorTitle", words.of(item.heading()));
    UnoAccess.set(
        validation,
        "ErrorMessage",
        list == null ? item.error(words) : words.say(PICK, words.of(item.heading())));
    UnoAccess.set(validation, "ErrorAlertStyle", ValidationAlertStyle.STOP);
    UnoAccess.set(validation, "ShowErrorMessage", true);
    limits(validation, item, list);
    UnoAccess.set(cells, "Validation", validation);
  }

  /** Only the entries of other cells may be picked, for a reason. */
  static void onlyOf(XCellRange cells, String list, String reason) {
    Object validation = UnoAccess.get(cells, "Validation");
    UnoAccess.as(XSheetCondition.class, validation).setFormula1(list);
    UnoAccess.set(validation, "ErrorMessage", reason);
    UnoAccess.set(validation, "ShowErrorMessage", true);
    UnoAccess.set(cells, "Validation", validation);
  }

  private static void limits(Object validation, FieldSpec item, String list) {
    XSheetCondition condition = UnoAccess.as(XSheetCondition.class, validation);
    if (list != null || !item.options().isEmpty()) {
      UnoAccess.set(validation, "Type", ValidationType.LIST);
      UnoAccess.set(validation, "ShowList", (short) 1);
      condition.setFormula1(
          list != null
              ? list
              : item.options().stream().map(w -> "\"" + w + "\"").collect(Collectors.joining(";")));
      return;
    }
    ValidationType type =
        switch (item.format()) {
          case TEXT -> ValidationType.ANY;
          case COUNT -> ValidationType.WHOLE;
          case DATE, DAY -> ValidationType.DATE;
          case TIME -> ValidationType.TIME;
          default -> ValidationType.DECIMAL;
        };
    UnoAccess.set(validation, "Type", type);
    if (type == ValidationType.ANY) {
      return;
    }
    condition.setOperator(ConditionOperator.BETWEEN);
    boolean clock = type == ValidationType.TIME;
    condition.setFormula1(clock ? "0" : bound(item.least()));
    condition.setFormula2(clock ? "1" : bound(item.most()));
  }

  private static String bound(double value) {
    if (Double.isInfinite(value)) {
      return value < 0 ? "-" + HUGE : HUGE;
    }
    return String.valueOf(value);
  }
}
