package org.setpower.templates.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Comparator;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.finding.Verdict;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.text.MessageCatalog;

/** What the records of a plan say about cells, in the words of a language. */
public final class InputCells {
  /** Between the metric unit and the US one. */
  public static final String EITHER = "\\|";

  private static final String CLOCK = "hh:mm";
  private static final String DURATION = "h:mm";

  private InputCells() {}

  /** A column to fill with its format, limits and list. */
  public static FieldSpec of(InputColumn column) {
    FieldSpec cells = FieldSpec.input(column.heading()).options(words(column));
    if (isTime(column.type(), column.unit())) {
      return cells.format(CellFormat.TIME);
    }
    if (column.type() == Double.class) {
      cells.number(format(column.form()), column.min(), column.max());
    } else if (column.type() == LocalDate.class) {
      cells.format(CellFormat.DATE);
    }
    return cells;
  }

  private static String[] words(InputColumn column) {
    return column.words().toArray(new String[0]);
  }

  /** What to type, and what a blank means. */
  public static String help(InputColumn column, MessageCatalog words) {
    return (words.of(column.help()) + " " + words.of(column.blank())).strip();
  }

  /** A heading with its unit in brackets. */
  public static String heading(InputColumn column, MessageCatalog words) {
    return heading(column.heading(), unit(column), words);
  }

  /** A heading with its unit in brackets. */
  public static String heading(ResultColumn column, MessageCatalog words) {
    return heading(column.heading(), unit(column), words);
  }

  /** A heading with a unit in brackets; of units that Project decides, the longer. */
  public static String heading(String heading, String unit, MessageCatalog words) {
    String shown =
        Arrays.stream(unit.split(EITHER))
            .map(words::of)
            .max(Comparator.comparingInt(String::length))
            .orElseThrow();
    return words.of(heading) + (unit.isEmpty() ? "" : " (" + shown + ")");
  }

  /** The unit in a heading. */
  public static String unit(InputColumn column) {
    return unit(column.unit(), column.form());
  }

  /** The unit in a heading. */
  public static String unit(ResultColumn column) {
    return unit(column.unit(), column.form());
  }

  private static String unit(String unit, NumberForm form) {
    return unit.equals(CLOCK) ? "" : isShare(form) ? "%" : isDuration(form) ? DURATION : unit;
  }

  private static boolean isDuration(NumberForm form) {
    return form == NumberForm.DURATION || form == NumberForm.DURATION_UP;
  }

  private static boolean isShare(NumberForm form) {
    return form == NumberForm.SHARE || form == NumberForm.FINE_SHARE;
  }

  /** Whether a unit is one of two, such as {@code m|ft}. */
  public static boolean isSwitched(String unit) {
    return unit.contains("|");
  }

  private static boolean isTime(Class<?> type, String unit) {
    return type == LocalTime.class || unit.equals(CLOCK);
  }

  /** How a result is shown. */
  public static CellFormat format(ResultColumn column) {
    if (isTime(column.type(), column.unit())) {
      return CellFormat.TIME;
    }
    if (column.type() == Integer.class || column.type() == Long.class) {
      return CellFormat.COUNT;
    }
    if (column.type() == Double.class || column.type() == BigDecimal.class) {
      return format(column.form());
    }
    if (column.type() == LocalDate.class) {
      return column.form() == NumberForm.DAY ? CellFormat.DAY : CellFormat.DATE;
    }
    return CellFormat.TEXT;
  }

  private static CellFormat format(NumberForm form) {
    return switch (form) {
      case EXACT -> CellFormat.EXACT;
      case WHOLE -> CellFormat.WHOLE;
      case ONE_DECIMAL -> CellFormat.ONE;
      case TWO_DECIMALS -> CellFormat.TWO;
      case THREE_DECIMALS -> CellFormat.THREE;
      case DURATION, DURATION_UP -> CellFormat.DURATION;
      case SHARE -> CellFormat.SHARE;
      case FINE_SHARE -> CellFormat.FINE_SHARE;
      case MONEY -> CellFormat.MONEY;
      case DAY -> throw new IllegalArgumentException("a number is no day");
    };
  }

  /** Whether a result is one of the words ok, check, stop. */
  public static boolean isVerdict(ResultColumn column) {
    return column.type() == Verdict.class;
  }
}
