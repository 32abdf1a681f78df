package org.setpower.base;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

/** Dates as a sheet passes them: a day number, day 0 being 1899-12-30, or text in ISO 8601. */
public final class Dates {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final LocalDate FIRST = LocalDate.of(1990, 1, 1);
  private static final LocalDate LAST = LocalDate.of(2199, 12, 31);

  private Dates() {}

  /**
   * The day of a number (a time of day in its fraction is dropped) or of a text such as
   * "2027-01-28". Days before 1990 or after 2199 are refused: they come from blank cells and typing
   * errors.
   */
  public static LocalDate of(String name, Object raw) {
    LocalDate day = null;
    if (raw instanceof Double serial && Math.abs(serial) < 1e6) {
      day = DAY_ZERO.plusDays((long) Math.floor(serial));
    } else if (raw instanceof String text) {
      day = parse(text.strip());
    }
    if (day == null || day.isBefore(FIRST) || day.isAfter(LAST)) {
      Object shown = raw instanceof Double ? raw : TextEnum.shortened(String.valueOf(raw));
      throw new EvaluationException(BaseErrorCode.NOT_A_DATE, name, shown);
    }
    return day;
  }

  private static LocalDate parse(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      return null;
    }
  }
}
