package org.setpower.templates.uno;

import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.ValidationAlertStyle;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.table.XCellRange;
import java.util.stream.Collectors;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.CellSpec;
import org.setpower.text.MessageCatalog;

/** Input help, lists, limits and error messages of the cells to fill. */
final class ValidationWriter {
  private static final String HUGE = "1E+300";

  private ValidationWriter() {}

  static void put(XCellRange cells, CellSpec<?> item, Layout layout) {
    MessageCatalog words = layout.words();
    Object validation = UnoAccess.get(cells, "Validation");
    UnoAccess.set(validation, "IgnoreBlankCells", true);
    UnoAccess.set(validation, "ShowInputMessage", !item.help().isEmpty());
    UnoAccess.set(validation, "InputTitle", words.of(item.heading()));
    UnoAccess.set(validation, "InputMessage", words.of(item.help()));
    UnoAccess.set(validation, "ErrorTitle", words.of(item.heading()));
    UnoAccess.set(validation, "ErrorMessage", item.error(words));
    UnoAccess.set(validation, "ErrorAlertStyle", ValidationAlertStyle.STOP);
    UnoAccess.set(validation, "ShowErrorMessage", item.onlyListed());
    limits(validation, item, layout);
    UnoAccess.set(cells, "Validation", validation);
  }

  private static void limits(Object validation, CellSpec<?> item, Layout layout) {
    XSheetCondition condition = UnoAccess.as(XSheetCondition.class, validation);
    if (item.isList()) {
      UnoAccess.set(validation, "Type", ValidationType.LIST);
      UnoAccess.set(validation, "ShowList", (short) 1);
      condition.setFormula1(
          item.wordsFrom() != null
              ? item.wordsFrom().all().text(layout.place())
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
