package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import org.setpower.plan.batteryday.BatteryDayInputs.Project;
import org.setpower.plan.batteryday.typed.UnitSystem;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;

/**
 * The settings of Project, blanks replaced by what they mean.
 *
 * @param near hours
 * @param touchLimit V DC; 60 V is the limit of IEC 62368-1 for parts that anybody may touch (ES1),
 *     from memory
 * @param begins hour of the clock
 * @param today date on which batteries are found; null where it is blank
 * @param isTodayRead no where it is typed and is no date
 * @param now null: the whole day is planned
 * @param chargersAir as typed; null where it is blank
 * @param warmUp hours; null where it is blank
 * @param health of a type that says nothing; null where it is blank
 * @param changeAt state of charge, of a position that says nothing
 * @param lastChange null: chargers are changed all night
 */
record DaySettings(
    UnitSystem units,
    LocalDate day,
    LocalDate today,
    boolean isTodayRead,
    LocalTime now,
    double near,
    double touchLimit,
    double begins,
    Double chargersAir,
    Double warmUp,
    Double health,
    double changeAt,
    LocalTime lastChange,
    List<Finding> findings) {
  private static final double NEAR = 30;
  private static final double TOUCH_LIMIT = 60;
  private static final double BEGINS = 4;

  static DaySettings of(InputRow<Project> row) {
    Project typed = row.isBlank() ? BatteryDayInputs.PROJECT.none() : row.value();
    return new DaySettings(
        typed.units() == null ? UnitSystem.METRIC : typed.units(),
        typed.day(),
        typed.today(),
        !row.unreadable().contains("today"),
        typed.now(),
        or(typed.near(), NEAR) / 60,
        or(typed.touchLimit(), TOUCH_LIMIT),
        typed.dayBegins() == null ? BEGINS : hours(typed.dayBegins()),
        typed.chargersAir(),
        typed.warmUp(),
        typed.health(),
        or(typed.changeAt(), 0),
        typed.lastChange(),
        row.findings());
  }

  /** A figure, or what its blank means. */
  static double or(Double typed, double otherwise) {
    return typed == null ? otherwise : typed;
  }

  /** Hours after midnight. */
  static double hours(LocalTime time) {
    return time.toSecondOfDay() / 3600.0;
  }

  /** Hours after the midnight that begins the day. */
  double hour(LocalTime time) {
    return hours(time) < begins ? hours(time) + 24 : hours(time);
  }

  /** Hours of an end, later than its begin. */
  double end(LocalTime time, double begun) {
    double hour = hour(time);
    return hour <= begun ? hour + 24 : hour;
  }

  /** Hours and minutes of a duration, rounded up: 0:01. */
  static String duration(double hours) {
    long minutes = (long) Math.ceil(hours * 60 - 1e-6);
    return String.format(Locale.ROOT, "%d:%02d", minutes / 60, minutes % 60);
  }

  /** The time of the clock at an hour, in full minutes: a change is due by then. */
  static LocalTime time(double hour) {
    long minutes = (long) Math.floor(hour * 60 + 1e-6);
    return LocalTime.ofSecondOfDay(Math.floorMod(minutes, 1440L) * 60);
  }
}
