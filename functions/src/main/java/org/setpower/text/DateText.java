package org.setpower.text;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as sentences and papers show them: day, month in letters, year. */
public final class DateText {
  private DateText() {}

  /** As in 4 Feb 2027, and 4. Feb. 2027 in German. */
  public static String of(LocalDate date, Locale locale) {
    return DateTimeFormatter.ofPattern(day(locale) + " MMM uuuu", locale).format(date);
  }

  /** As in 4 Feb, and 4. Feb. in German. */
  public static String of(MonthDay day, Locale locale) {
    return DateTimeFormatter.ofPattern(day(locale) + " MMM", locale).format(day);
  }

  /** In German the day of a date is an ordinal number, with a point. */
  private static String day(Locale locale) {
    return locale.getLanguage().equals("de") ? "d." : "d";
  }
}
