package org.setpower.command.export;

import com.sun.star.beans.XMultiPropertySet;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.Locale;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSheetConditionalEntry;
import com.sun.star.style.XStyle;
import com.sun.star.style.XStyleFamiliesSupplier;
import com.sun.star.table.BorderLine2;
import com.sun.star.table.CellHoriJustify;
import com.sun.star.table.XCell;
import com.sun.star.uno.Any;
import com.sun.star.uno.AnyConverter;
import com.sun.star.uno.Exception;
import com.sun.star.util.XNumberFormats;
import com.sun.star.util.XNumberFormatsSupplier;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.setpower.command.document.CalcDocument;
import org.setpower.uno.Uno;

/**
 * What cells of a document look like now, for cells of another. All properties of a cell are read
 * and set in one call each: the office fits a row after each that is set.
 */
final class CellLooks {
  private static final String JUSTIFIED = "HoriJustify";
  private static final String INDENT = "ParaIndent";
  private static final String LINE_BELOW = "BottomBorder2";
  private static final String NUMBER = "NumberFormat";

  /** In the order that the office asks for. */
  private static final String[] TAKEN = {
    LINE_BELOW,
    "CellBackColor",
    "CharColor",
    "CharFontName",
    "CharHeight",
    "CharWeight",
    JUSTIFIED,
    "IsTextWrapped",
    NUMBER,
    INDENT,
    "ShrinkToFit",
    "VertJustify"
  };

  private static final Pattern WORD = Pattern.compile("=\"([^\"]*)\"");
  private static final Pattern DECIMALS = Pattern.compile("Money_decimals=(\\d)");

  private final XNameAccess styles;
  private final XNumberFormats formats;
  private final XNumberFormats own;
  private final int decimals;
  private final Map<String, Map<String, Object>> ofStyles = new HashMap<>();
  private final Map<Object, Object> numbers = new HashMap<>();

  /**
   * Looks.
   *
   * @param decimals of amounts, by which conditions choose a style
   */
  CellLooks(CalcDocument from, CalcDocument to, int decimals) throws Exception {
    styles =
        Uno.as(
            XNameAccess.class,
            Uno.as(XStyleFamiliesSupplier.class, from.document())
                .getStyleFamilies()
                .getByName("CellStyles"));
    formats = Uno.as(XNumberFormatsSupplier.class, from.document()).getNumberFormats();
    own = Uno.as(XNumberFormatsSupplier.class, to.document()).getNumberFormats();
    this.decimals = decimals;
  }

  /**
   * Dresses a cell like another.
   *
   * @param kind of the line that the other stands in, by which conditions choose a style; null
   *     where it is none
   */
  void dress(XCell like, String kind, XCell target) throws Exception {
    String chosen = style(like, kind);
    Map<String, Object> look = new TreeMap<>(chosen == null ? read(like) : ofStyle(chosen));
    // 7.4 draws the indent of numbers below each other in some rows only
    if (look.get(JUSTIFIED) == CellHoriJustify.RIGHT) {
      look.remove(INDENT);
    }
    if (!(look.get(LINE_BELOW) instanceof BorderLine2 line && line.LineWidth > 0)) {
      look.remove(LINE_BELOW);
    }
    if (look.containsKey(NUMBER)) {
      look.put(NUMBER, number(look.get(NUMBER)));
    }
    Uno.as(XMultiPropertySet.class, target)
        .setPropertyValues(
            look.keySet().toArray(String[]::new), look.values().toArray(Object[]::new));
  }

  /** The style that a condition puts on a cell; null where it has its own. */
  private String style(XCell cell, String kind) throws Exception {
    XIndexAccess conditions = Uno.as(XIndexAccess.class, Uno.get(cell, "ConditionalFormat"));
    for (int i = 0; i < conditions.getCount(); i++) {
      Object entry = conditions.getByIndex(i);
      String formula = Uno.as(XSheetCondition.class, entry).getFormula1();
      Matcher word = WORD.matcher(formula);
      Matcher digits = DECIMALS.matcher(formula);
      boolean hasWord = word.find();
      boolean hasDigits = digits.find();
      boolean applies =
          (hasWord || hasDigits)
              && (!hasWord || word.group(1).equals(kind))
              && (!hasDigits || Integer.parseInt(digits.group(1)) == decimals);
      if (applies) {
        return Uno.as(XSheetConditionalEntry.class, entry).getStyleName();
      }
    }
    return null;
  }

  /** A style that does not set a property has it from its parent. */
  private Map<String, Object> ofStyle(String name) throws Exception {
    Map<String, Object> look = ofStyles.get(name);
    if (look == null) {
      Object style = styles.getByName(name);
      String parent = Uno.as(XStyle.class, style).getParentStyle();
      look = new HashMap<>(styles.hasByName(parent) ? ofStyle(parent) : Map.of());
      look.putAll(read(style));
      ofStyles.put(name, look);
    }
    return look;
  }

  private static Map<String, Object> read(Object like) {
    Object[] values = Uno.as(XMultiPropertySet.class, like).getPropertyValues(TAKEN);
    Map<String, Object> look = new HashMap<>();
    for (int i = 0; i < values.length; i++) {
      if (!AnyConverter.isVoid(values[i])) {
        look.put(TAKEN[i], values[i]);
      }
    }
    return look;
  }

  private Object number(Object format) throws Exception {
    // a style gives it as an unsigned number, which Java UNO leaves in an Any
    Object key = format instanceof Any any ? any.getObject() : format;
    Object known = numbers.get(key);
    if (known == null) {
      XPropertySet described = formats.getByKey((Integer) key);
      Locale locale = (Locale) described.getPropertyValue("Locale");
      String code = (String) described.getPropertyValue("FormatString");
      int there = own.queryKey(code, locale, false);
      known = there >= 0 ? there : own.addNew(code, locale);
      numbers.put(key, known);
    }
    return known;
  }
}
