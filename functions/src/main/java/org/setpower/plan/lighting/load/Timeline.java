package org.setpower.plan.lighting.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.ProjectTables.ShootDay;

/** The days of the plan in quarter hours, counted from the first midnight. */
public final class Timeline {
  /** Quarter hours of a day. */
  public static final int DAY = 96;

  /** Air that counts where a day has no temperature, °C: ratings begin there. */
  public static final double USUAL_AIR = 30;

  /** How far air cools down where the lowest temperature is not known, K: common practice. */
  private static final double COOLING = 10;

  private static final double ROUNDING = 1e-6;

  private final List<Window> windows = new ArrayList<>();
  private final LocalDate first;

  /**
   * A row of Days.
   *
   * @param date null where the plan has no days
   * @param midnight quarter hour of its midnight
   * @param call quarter hour
   * @param wrap quarter hour, behind the last
   * @param warmest °C
   * @param coldest °C
   */
  public record Window(
      LocalDate date, int midnight, int call, int wrap, double warmest, double coldest) {}

  /**
   * Hours in which something is on.
   *
   * @param from quarter hour
   * @param to behind the last
   * @param warmest of its day, °C
   */
  public record Span(int from, int to, double warmest) {}

  public Timeline(InputRows<ShootDay> days, MeasureSystem units) {
    List<InputRow<ShootDay>> rows =
        days.filled()
            .filter(r -> r.value().date() != null)
            .sorted(
                Comparator.comparing((InputRow<ShootDay> r) -> r.value().date())
                    .thenComparing(r -> r.cells().toString()))
            .toList();
    first = rows.isEmpty() ? null : rows.get(0).value().date();
    for (InputRow<ShootDay> row : rows) {
      ShootDay day = row.value();
      int midnight = DAY * (int) (day.date().toEpochDay() - first.toEpochDay());
      int call = midnight + down(LightingSettings.or(day.call(), 0.0));
      int wrap = behind(call, midnight, LightingSettings.or(day.wrap(), 1.0));
      double warmest = day.warmest() == null ? USUAL_AIR : units.toCelsius(day.warmest());
      double coldest = day.coldest() == null ? warmest - COOLING : units.toCelsius(day.coldest());
      windows.add(new Window(day.date(), midnight, call, wrap, warmest, coldest));
    }
    if (windows.isEmpty()) {
      windows.add(new Window(null, 0, 0, DAY, USUAL_AIR, USUAL_AIR - COOLING));
    }
  }

  private static int down(double clock) {
    return (int) Math.floor(clock * DAY + ROUNDING);
  }

  private static int up(double clock) {
    return (int) Math.ceil(clock * DAY - ROUNDING);
  }

  /** The end of hours: at or before their begin means the next morning. */
  private static int behind(int from, int midnight, double clock) {
    int to = midnight + up(clock);
    return to <= from ? to + DAY : to;
  }

  public List<Window> windows() {
    return windows;
  }

  /** The hottest air of all days, °C. */
  public double warmest() {
    return windows.stream().mapToDouble(Window::warmest).max().orElse(USUAL_AIR);
  }

  /** Rows of Days within a range of days; a blank end is open. */
  public List<Window> windows(LocalDate fromDay, LocalDate toDay) {
    return windows.stream()
        .filter(w -> w.date() == null || fromDay == null || !w.date().isBefore(fromDay))
        .filter(w -> w.date() == null || toDay == null || !w.date().isAfter(toDay))
        .toList();
  }

  /** Hours on each day of a range; a blank time is that of call or wrap. */
  public List<Span> spans(LocalDate fromDay, LocalDate toDay, Double from, Double to) {
    List<Span> spans = new ArrayList<>();
    for (Window w : windows(fromDay, toDay)) {
      int begin = from == null ? w.call() : w.midnight() + down(from);
      int end = to == null ? w.wrap() : behind(begin, w.midnight(), to);
      if (to == null && end <= begin) {
        end += DAY;
      }
      Span span = new Span(begin, end, w.warmest());
      if (!spans.contains(span)) {
        spans.add(span);
      }
    }
    return spans;
  }

  /** Whole quarter hours between two times of each day; one that is only touched is none. */
  List<Span> inner(double from, double to) {
    List<Span> spans = new ArrayList<>();
    for (Window w : windows) {
      int begin = w.midnight() + up(from);
      int end = w.midnight() + down(to) + (to < from ? DAY : 0);
      if (begin < end) {
        spans.add(new Span(begin, end, w.warmest()));
      }
    }
    return spans;
  }

  /** Whether some of spans lies between two times of any day, to the minute. */
  boolean isWithin(double from, double to, List<Span> spans) {
    for (Window w : windows) {
      double begin = w.midnight() + from * DAY;
      double end = w.midnight() + (to <= from ? to + 1 : to) * DAY;
      if (from != to && spans.stream().anyMatch(s -> begin < s.to() && end > s.from())) {
        return true;
      }
    }
    return false;
  }

  /** The time of a share of a day, such as 05:30. */
  static String text(double clock) {
    int minutes = (int) Math.round(clock * 24 * 60);
    return "%02d:%02d".formatted(Math.floorMod(minutes / 60, 24), minutes % 60);
  }

  /** The quarter hour of a time on a day; −1 before the plan begins. */
  public int quarter(LocalDate date, double clock) {
    return first == null || date.isBefore(first)
        ? -1
        : DAY * (int) Math.min(100_000, date.toEpochDay() - first.toEpochDay()) + down(clock);
  }

  /** Whether a quarter hour belongs to a day: its calendar day, or its night until wrap. */
  public boolean isOn(int quarter, LocalDate date) {
    return windows.stream()
        .filter(w -> date.equals(w.date()))
        .anyMatch(w -> quarter >= w.midnight() && quarter < Math.max(w.midnight() + DAY, w.wrap()));
  }

  /** The date of a quarter hour; null where the plan has no days. */
  public LocalDate date(int quarter) {
    return first == null ? null : first.plusDays(Math.floorDiv(quarter, DAY));
  }

  /** The time of a quarter hour as a share of a day. */
  public static double clock(int quarter) {
    return Math.floorMod(quarter, DAY) / (double) DAY;
  }

  /** The time of a quarter hour, such as 05:30. */
  public static String text(int quarter) {
    int minutes = Math.floorMod(quarter, DAY) * 15;
    return "%02d:%02d".formatted(minutes / 60, minutes % 60);
  }
}
