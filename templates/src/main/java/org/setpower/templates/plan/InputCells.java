package org.setpower.templates.plan;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.finding.Verdict;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.text.MessageCatalog;

/** What the records of a plan say about cells, in the words of a language. */
public final class InputCells {
  private InputCells() {}

  /** A column to fill with its format, limits and list. */
  public static ColumnSpec of(InputColumn column) {
    ColumnSpec cells = ColumnSpec.input(column.heading()).options(words(column));
    if (column.type() == Double.class) {
      cells.number(format(column.form()), column.min(), column.max());
    } else if (column.type() == LocalDate.class) {
      cells.format(CellFormat.DATE);
    }
    return column.unit().isEmpty() ? cells : cells.unit(column.unit());
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
    return heading(column.heading(), unit(column.unit(), column.form()), words);
  }

  /** A heading with its unit in brackets. */
  public static String heading(ResultColumn column, MessageCatalog words) {
    return heading(column.heading(), unit(column.unit(), column.form()), words);
  }

  /** A heading with a unit in brackets. */
  public static String heading(String heading, String unit, MessageCatalog words) {
    return words.of(heading) + (unit.isEmpty() ? "" : " (" + words.of(unit) + ")");
  }

  private static String unit(String unit, NumberForm form) {
    return form == NumberForm.SHARE || form == NumberForm.FINE_SHARE ? "%" : unit;
  }

  /** How a result is shown. */
  public static CellFormat format(ResultColumn column) {
    if (column.type() == Integer.class) {
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
