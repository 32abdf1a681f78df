package org.setpower.hire;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.setpower.base.TextEnum;

/** How the days of a weekend within a hire are counted. Trade practice; it varies by house. */
public enum Weekend implements TextEnum {
  TWO_DAYS("two days"),
  /** Saturday and Sunday together count one day. */
  ONE_DAY("one day"),
  /**
   * Saturday and Sunday together count one day; a Friday on which the hire goes out and a Monday on
   * which it comes back count none. Out on Friday and back on Monday is one day.
   */
  FRIDAY_TO_MONDAY("Friday to Monday");

  private final String word;

  Weekend(String word) {
    this.word = word;
  }

  /** Whether a day from {@code out} to {@code back} counts. */
  boolean counts(LocalDate day, LocalDate out, LocalDate back) {
    DayOfWeek weekday = day.getDayOfWeek();
    if (this == TWO_DAYS) {
      return true;
    }
    if (weekday == DayOfWeek.SUNDAY) {
      return day.equals(out);
    }
    boolean pickUp = weekday == DayOfWeek.FRIDAY && day.equals(out) && back.isAfter(out);
    boolean bringBack = weekday == DayOfWeek.MONDAY && day.equals(back) && out.isBefore(back);
    return this == ONE_DAY || !(pickUp || bringBack);
  }

  @Override
  public String word() {
    return word;
  }

  @Override
  public List<String> alsoWritten() {
    return switch (this) {
      case TWO_DAYS -> List.of("2 days", "days");
      case ONE_DAY -> List.of("1 day");
      case FRIDAY_TO_MONDAY -> List.of("Fri-Mon");
    };
  }
}
