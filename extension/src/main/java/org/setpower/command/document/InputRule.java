package org.setpower.command.document;

import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.uno.Exception;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.base.Numbers;
import org.setpower.command.message.UserMessageException;
import org.setpower.uno.Uno;

/**
 * What a cell to fill takes, read from the rule of the cell itself.
 *
 * @param isNumber whether it takes numbers only
 * @param isWhole whether they must be whole
 * @param least the least number
 * @param most the most
 * @param words the words it takes; empty where any text goes
 */
public record InputRule(
    boolean isNumber, boolean isWhole, double least, double most, List<String> words) {
  private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
  private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(?:[.,]\\d+)?(?:[eE][-+]?\\d+)?");

  public static InputRule of(Object cell) throws Exception {
    Object rule = Uno.get(cell, "Validation");
    Object type = rule == null ? ValidationType.ANY : Uno.get(rule, "Type");
    XSheetCondition condition = Uno.as(XSheetCondition.class, rule);
    if (type == ValidationType.WHOLE || type == ValidationType.DECIMAL) {
      return new InputRule(
          true,
          type == ValidationType.WHOLE,
          bound(condition.getFormula1(), Double.NEGATIVE_INFINITY),
          bound(condition.getFormula2(), Double.POSITIVE_INFINITY),
          List.of());
    }
    List<String> words = new ArrayList<>();
    if (type == ValidationType.LIST && (Boolean) Uno.get(rule, "ShowErrorMessage")) {
      Matcher quoted = QUOTED.matcher(condition.getFormula1());
      while (quoted.find()) {
        words.add(quoted.group(1));
      }
    }
    return new InputRule(false, false, 0, 0, List.copyOf(words));
  }

  private static double bound(String formula, double otherwise) {
    try {
      return formula.isBlank() ? otherwise : Double.parseDouble(formula);
    } catch (NumberFormatException aFormula) {
      return otherwise;
    }
  }

  /**
   * The value for the cell: a Double, or a text that stays text; a {@link UserMessageException} for
   * a bad one.
   */
  public Object value(String text) {
    if (text.isEmpty()) {
      return "";
    }
    return isNumber ? (Object) number(text) : word(text);
  }

  private Double number(String text) {
    if (!NUMBER.matcher(text).matches()) {
      throw new UserMessageException("“{}” is not a number", text);
    }
    if (Numbers.isAmbiguous(text)) {
      throw new UserMessageException(
          "“{}” could be thousands or decimals: write a thousand as 1000, decimals as 1.2 or"
              + " 1.2500",
          text);
    }
    double value = Double.parseDouble(text.replace(',', '.'));
    if (value < least || value > most) {
      throw new UserMessageException("{} is not from {} to {}", text, plain(least), plain(most));
    }
    if (isWhole && value != Math.rint(value)) {
      throw new UserMessageException("{} is not a whole number", text);
    }
    return value;
  }

  private static String plain(double bound) {
    return Numbers.format(bound);
  }

  private String word(String text) {
    if (words.isEmpty()) {
      return text;
    }
    for (String word : words) {
      if (word.equalsIgnoreCase(text)) {
        return word;
      }
    }
    throw new UserMessageException("“{}” is none of {}", text, String.join(", ", words));
  }
}
