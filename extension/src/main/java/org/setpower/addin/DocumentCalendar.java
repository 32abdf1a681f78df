package org.setpower.addin;

import com.sun.star.beans.UnknownPropertyException;
import com.sun.star.beans.XPropertySet;
import com.sun.star.lang.WrappedTargetException;
import com.sun.star.util.Date;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalLong;
import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;
import org.setpower.base.EvaluationException;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * Days of a document, which may count from another day than ours (1899-12-30): an option of every
 * spreadsheet document. Asked only when a date is passed as a number, and once a call, since the
 * answer crosses the bridge.
 */
public final class DocumentCalendar {
  private static final LocalDate OUR_DAY_ZERO = LocalDate.of(1899, 12, 30);

  private final XPropertySet document;
  private OptionalLong offset = OptionalLong.empty();

  private DocumentCalendar(XPropertySet document) {
    this.document = document;
  }

  public static DocumentCalendar of(XPropertySet document) {
    return new DocumentCalendar(document);
  }

  /** The arguments with their dates counted from our day zero. */
  public Object[] inOurs(FunctionSpec function, Object[] arguments) {
    if (!function.takesRest()) {
      shift(function, arguments, 0);
    } else if (arguments.length > 0 && arguments[0] instanceof String name) {
      Optional<FunctionSpec> asked = FunctionRegistry.find(name);
      asked.filter(f -> !f.takesRest()).ifPresent(f -> shift(f, arguments, 1));
    }
    return arguments;
  }

  private void shift(FunctionSpec function, Object[] arguments, int first) {
    for (int i = 0; i < function.parameters().size() && first + i < arguments.length; i++) {
      if (function.parameters().get(i).isDate()) {
        arguments[first + i] = shifted(arguments[first + i]);
      }
    }
  }

  private Object shifted(Object value) {
    if (value instanceof Double day) {
      return day + offset();
    }
    if (value instanceof Object[][] range) {
      for (Object[] row : range) {
        for (int c = 0; c < row.length; c++) {
          row[c] = row[c] instanceof Double day ? day + offset() : row[c];
        }
      }
    }
    return value;
  }

  /** Days to be added to a day of the document to make it one of ours. */
  public long offset() {
    if (offset.isEmpty()) {
      offset = OptionalLong.of(asked());
    }
    return offset.getAsLong();
  }

  private long asked() {
    if (document == null) {
      return 0;
    }
    try {
      if (document.getPropertyValue("NullDate") instanceof Date zero) {
        return ChronoUnit.DAYS.between(OUR_DAY_ZERO, LocalDate.of(zero.Year, zero.Month, zero.Day));
      }
    } catch (UnknownPropertyException | WrappedTargetException | DateTimeException unread) {
      throw new EvaluationException(Unreadable.DAY_ZERO);
    }
    throw new EvaluationException(Unreadable.DAY_ZERO);
  }

  /** A wrong day could allow what is no longer allowed. */
  private enum Unreadable implements ErrorCode {
    DAY_ZERO;

    @Override
    public ErrorKind kind() {
      return ErrorKind.NO_ANSWER;
    }

    @Override
    public String sentence() {
      return "the day from which this document counts its dates cannot be read, so it is not"
          + " certain which day is meant: type the date as text, such as \"2026-03-27\"";
    }
  }
}
