package org.setpower.plan.lighting.load;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
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
  private final int[] nights;
  private final LocalDate first;

  /**
   * A row of Days.
   *
   * @param date null where the plan has no days
   * @param midnight quarter hour of its midnight
   * @param call quarter hour
   * @param wrap quarter hour, behind the last
   * @param clock of its date
   * @param warmest °C
   * @param coldest °C
   */
  public record Window(
      LocalDate date,
      int midnight,
      int call,
      int wrap,
      DayClock clock,
      double warmest,
      double coldest) {}

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
    Map<LocalDate, DayClock> clocks = new HashMap<>();
    for (InputRow<ShootDay> row : rows) {
      DayClock own = DayClock.of(row.value().call(), row.value().wrap());
      clocks.merge(row.value().date(), own, DayClock::and);
    }
    for (InputRow<ShootDay> row : rows) {
      ShootDay day = row.value();
      int midnight = DAY * (int) (day.date().toEpochDay() - first.toEpochDay());
      DayClock own = DayClock.of(day.call(), day.wrap());
      int call = midnight + down(own.call());
      int wrap = midnight + up(own.wrap());
      double warmest = day.warmest() == null ? USUAL_AIR : units.toCelsius(day.warmest());
      double coldest = day.coldest() == null ? warmest - COOLING : units.toCelsius(day.coldest());
      windows.add(
          new Window(day.date(), midnight, call, wrap, clocks.get(day.date()), warmest, coldest));
    }
    if (windows.isEmpty()) {
      windows.add(
          new Window(null, 0, 0, DAY, DayClock.of(null, null), USUAL_AIR, USUAL_AIR - COOLING));
    }
    nights = windows.stream().mapToInt(this::night).toArray();
  }

  /** The day shown; null for all days, and where it is none of Days. */
  public LocalDate shown(LocalDate asked) {
    boolean known = asked != null && windows.stream().anyMatch(w -> asked.equals(w.date()));
    return known ? asked : null;
  }

  /** The days, with their nights, on which a span of hours falls. */
  public Stream<LocalDate> dates(Span span) {
    return windows.stream()
        .filter(w -> w.date() != null)
        .filter(w -> span.from() < end(w) && span.to() > begin(w))
        .map(Window::date);
  }

  private static int end(Window day) {
    return Math.max(day.midnight() + DAY, day.wrap());
  }

  /** Whether a date is before the first or after the last day. */
  boolean isAway(LocalDate date) {
    return first != null && (date.isBefore(first) || date.isAfter(last()));
  }

  /** The first day; null where the plan has none. */
  public LocalDate first() {
    return first;
  }

  /** The last day; null where the plan has none. */
  public LocalDate last() {
    return windows.get(windows.size() - 1).date();
  }

  private static int down(double clock) {
    return (int) Math.floor(clock * DAY + ROUNDING);
  }

  private static int up(double clock) {
    return (int) Math.ceil(clock * DAY - ROUNDING);
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
      for (double[] hours : read(w, from, to).hours()) {
        add(spans, w, hours);
      }
    }
    return spans;
  }

  /** Hours at which a source has power; a blank end is that of the day or its night. */
  List<Span> powered(Double from, Double to) {
    List<Span> spans = new ArrayList<>();
    for (Window w : windows) {
      double begin = from == null ? share(w, begin(w)) : w.clock().time(from);
      double end =
          to == null
              ? Math.max(1, w.clock().wrap())
              : from == null ? w.clock().time(to) : DayClock.after(to, begin);
      if (begin < end) {
        add(spans, w, begin, end);
      }
    }
    return spans;
  }

  private static void add(List<Span> spans, Window w, double... hours) {
    Span span = new Span(w.midnight() + down(hours[0]), w.midnight() + up(hours[1]), w.warmest());
    if (!spans.contains(span)) {
      spans.add(span);
    }
  }

  private static DayClock.Reading read(Window w, Double from, Double to) {
    DayClock clock = w.clock();
    double call = share(w, w.call());
    double wrap = share(w, w.wrap());
    if (from == null) {
      double end = to == null ? wrap : DayClock.after(to, call);
      return new DayClock.Reading(List.of(new double[] {call, end}), false);
    }
    if (to == null) {
      double begin = clock.begin(from);
      boolean behind = begin >= clock.wrap() - ROUNDING;
      double own = begin < wrap - ROUNDING ? wrap : clock.wrap();
      double end = behind ? DayClock.after(own, begin) : own;
      return new DayClock.Reading(List.of(new double[] {begin, end}), behind);
    }
    return clock.read(from, to);
  }

  private static double share(Window w, int quarter) {
    return (quarter - w.midnight()) / (double) DAY;
  }

  /** The first day on which typed times are away from its call and wrap; null where none is. */
  Window away(LocalDate fromDay, LocalDate toDay, Double from, Double to) {
    return windows(fromDay, toDay).stream()
        .filter(w -> read(w, from, to).away())
        .findFirst()
        .orElse(null);
  }

  /** Whether a time of a day may be that of two mornings. */
  static boolean isUnclear(Window w, Double from, Double to) {
    return read(w, from, to).isUnclear();
  }

  /** Whole quarter hours between two times of each day; one that is only touched is none. */
  List<Span> inner(double from, double to) {
    List<Span> spans = new ArrayList<>();
    for (Window w : windows) {
      DayClock.Reading reading = w.clock().read(from, to);
      // where it may be another morning nothing is taken off
      if (from != to && !reading.isUnclear()) {
        double[] hours = reading.hours().get(0);
        int begin = w.midnight() + up(hours[0]);
        int end = w.midnight() + down(hours[1]);
        if (begin < end) {
          spans.add(new Span(begin, end, w.warmest()));
        }
      }
    }
    return spans;
  }

  /** Whether some of spans lies between two times of any day, to the minute. */
  boolean isWithin(double from, double to, List<Span> spans) {
    for (Window w : windows) {
      for (double[] hours : from == to ? List.<double[]>of() : w.clock().read(from, to).hours()) {
        double begin = w.midnight() + hours[0] * DAY;
        double end = w.midnight() + hours[1] * DAY;
        if (spans.stream().anyMatch(s -> begin < s.to() && end > s.from())) {
          return true;
        }
      }
    }
    return false;
  }

  /** The time of a share of a day, such as 05:30. */
  public static String text(double clock) {
    int minutes = (int) Math.round(clock * 24 * 60);
    return "%02d:%02d".formatted(Math.floorMod(minutes / 60, 24), minutes % 60);
  }

  /** The quarter hour of a time on a day; −1 before the plan begins. */
  public int quarter(LocalDate date, double clock) {
    if (first == null || date.isBefore(first)) {
      return -1;
    }
    double time =
        windows.stream()
            .filter(w -> date.equals(w.date()))
            .map(w -> w.clock().time(clock))
            .findFirst()
            .orElse(clock);
    return DAY * (int) Math.min(100_000, date.toEpochDay() - first.toEpochDay()) + down(time);
  }

  /**
   * Whether a quarter hour belongs to a day: its calendar day without the night before, and its own
   * night until wrap.
   */
  public boolean isOn(int quarter, LocalDate date) {
    return windows.stream()
        .filter(w -> date.equals(w.date()))
        .anyMatch(w -> quarter >= begin(w) && quarter < end(w));
  }

  /** Where the calendar day of a row begins: behind the wrap of a night before. */
  private int begin(Window day) {
    int begin = day.midnight();
    for (Window w : windows) {
      if (w.midnight() < day.midnight()) {
        begin = Math.max(begin, Math.min(w.wrap(), day.call()));
      }
    }
    return begin;
  }

  /** The midnight that begins the shooting day of a quarter hour. */
  public int midnight(int quarter) {
    int midnight = Math.floorDiv(quarter, DAY) * DAY;
    for (int i = 0; i < nights.length; i++) {
      if (windows.get(i).midnight() < midnight && quarter < nights[i]) {
        return windows.get(i).midnight();
      }
    }
    return midnight;
  }

  /** Where the night of a row ends: half way from its wrap to the next call, if there is one. */
  private int night(Window day) {
    int next = day.wrap() + DAY;
    for (Window w : windows) {
      next = w.call() >= day.wrap() ? Math.min(next, w.call()) : next;
    }
    return (day.wrap() + next) / 2;
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
