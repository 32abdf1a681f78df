package org.setpower.templates.uno;

import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.ValidationAlertStyle;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.table.XCellRange;
import java.util.stream.Collectors;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.Item;
import org.setpower.text.Words;

/** Input help, lists, limits and error messages of the cells to fill. */
final class Validations {
  private static final String HUGE = "1E+300";

  private Validations() {}

  static void put(XCellRange cells, Item<?> item, Layout layout) {
    Words words = layout.words();
    Object validation = Uno.get(cells, "Validation");
    Uno.set(validation, "IgnoreBlankCells", true);
    Uno.set(validation, "ShowInputMessage", !item.help().isEmpty());
    Uno.set(validation, "InputTitle", words.of(item.heading()));
    Uno.set(validation, "InputMessage", words.of(item.help()));
    Uno.set(validation, "ErrorTitle", words.of(item.heading()));
    Uno.set(validation, "ErrorMessage", item.error(words));
    Uno.set(validation, "ErrorAlertStyle", ValidationAlertStyle.STOP);
    Uno.set(validation, "ShowErrorMessage", item.onlyListed());
    limits(validation, item, layout);
    Uno.set(cells, "Validation", validation);
  }

  private static void limits(Object validation, Item<?> item, Layout layout) {
    XSheetCondition condition = Uno.as(XSheetCondition.class, validation);
    if (item.isList()) {
      Uno.set(validation, "Type", ValidationType.LIST);
      Uno.set(validation, "ShowList", (short) 1);
      condition.setFormula1(
          item.wordsFrom() != null
              ? item.wordsFrom().all().text(layout.place())
              : item.words().stream().map(w -> "\"" + w + "\"").collect(Collectors.joining(";")));
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
    Uno.set(validation, "Type", type);
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
