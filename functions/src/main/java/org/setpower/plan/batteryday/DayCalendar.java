package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setpower.charge.Charging;
import org.setpower.plan.batteryday.BatteryDayInputs.Day;
import org.setpower.plan.batteryday.simulation.AirTemperature;
import org.setpower.plan.batteryday.simulation.DaySpec;
import org.setpower.plan.batteryday.typed.ChargeAtCall;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;

/** The dates of Days, each with its stays, and which date is shown. */
final class DayCalendar {
  /** °C that is assumed where it is not typed: colder than most sets, and told. */
  static final double ASSUMED = -20;

  private final DaySettings settings;
  private final Map<Integer, List<Finding>> findings = new HashMap<>();
  private final NavigableMap<LocalDate, List<Stay>> dates = new TreeMap<>();
  private final List<Finding> ofProject = new ArrayList<>();
  private final DayFrame shown;

  /**
   * A row.
   *
   * @param pause its break; null where there is none, or none that can be
   */
  private record Stay(
      InputRow<Day> row, double call, double wrap, double coldest, DaySpec.Pause pause) {}

  DayCalendar(DaySettings settings, InputRows<Day> rows) {
    this.settings = settings;
    rows.filled().forEach(this::judge);
    dates.values().forEach(this::judgeMoves);
    LocalDate date = settings.day() == null ? coldest() : settings.day();
    if (dates.isEmpty()) {
      ofProject.add(Finding.of(BatteryDayFinding.NO_DAY));
    } else if (!dates.containsKey(date)) {
      ofProject.add(Finding.of(BatteryDayFinding.DAY_UNKNOWN, date));
    } else if (!isClear(date)) {
      ofProject.add(Finding.of(BatteryDayFinding.DAY_UNCLEAR, date));
    }
    shown = ofProject.isEmpty() ? frame(date) : null;
    if (shown != null && settings.now() != null) {
      double now = settings.hour(settings.now());
      if (now < shown.call() || now > shown.wrap()) {
        ofProject.add(
            Finding.of(
                BatteryDayFinding.NOW_OUTSIDE,
                settings.now(),
                DaySettings.time(shown.call()),
                DaySettings.time(shown.wrap())));
      }
    }
  }

  private void judge(InputRow<Day> row) {
    List<Finding> own = new ArrayList<>(row.findings());
    findings.put(row.number(), own);
    Day day = row.value();
    if (day.min() == null) {
      own.add(Finding.of(BatteryDayFinding.MIN_BLANK, ASSUMED));
    } else if (day.max() == null) {
      own.add(Finding.of(BatteryDayFinding.MAX_BLANK));
    } else if (day.max() < day.min()) {
      own.add(Finding.of(BatteryDayFinding.DAY_CROSSED));
    } else if (day.max() > day.min() && (day.minFrom() == null || day.maxFrom() == null)) {
      own.add(Finding.of(BatteryDayFinding.MAX_UNUSED));
    }
    double hottest =
        Math.max(
            day.min() == null ? ASSUMED : settings.units().toCelsius(day.min()),
            day.max() == null ? ASSUMED : settings.units().toCelsius(day.max()));
    if (hottest >= Charging.WARM_AIR) {
      own.add(Finding.of(BatteryDayFinding.DAY_HOT, hottest));
    }
    if ((day.breakFrom() == null) != (day.breakTo() == null)) {
      own.add(Finding.of(BatteryDayFinding.BREAK_HALF));
    }
    if (day.call() != null && day.call().equals(day.wrap())) {
      own.add(Finding.of(BatteryDayFinding.DAY_TIMES, day.call()));
    }
    if (day.date() != null) {
      double call = day.call() == null ? 0 : settings.hour(day.call());
      double wrap = day.wrap() == null ? call + 1 : settings.end(day.wrap(), call);
      double coldest = day.min() == null ? ASSUMED : settings.units().toCelsius(day.min());
      DaySpec.Pause pause = pause(day, call, wrap, own);
      dates
          .computeIfAbsent(day.date(), d -> new ArrayList<>())
          .add(new Stay(row, call, wrap, coldest, pause));
    }
  }

  private DaySpec.Pause pause(Day day, double call, double wrap, List<Finding> own) {
    if (day.breakFrom() == null || day.breakTo() == null || day.call() == null) {
      return null;
    }
    double from = settings.hour(day.breakFrom());
    double to = settings.end(day.breakTo(), from);
    if (from < call || to > wrap) {
      own.add(Finding.of(BatteryDayFinding.BREAK_OUTSIDE, day.breakFrom(), day.breakTo()));
      return null;
    }
    return new DaySpec.Pause(from, to);
  }

  private void judgeMoves(List<Stay> stays) {
    stays.sort(
        Comparator.comparingDouble(Stay::call)
            .thenComparingDouble(Stay::wrap)
            .thenComparing(s -> s.row.value().toString()));
    for (int i = 1; i < stays.size(); i++) {
      if (stays.get(i).call < stays.get(i - 1).wrap) {
        for (Stay stay : List.of(stays.get(i - 1), stays.get(i))) {
          List<Finding> own = findings.get(stay.row.number());
          Finding overlap = Finding.of(BatteryDayFinding.DAY_OVERLAP);
          if (!own.contains(overlap)) {
            own.add(overlap);
          }
        }
      }
    }
  }

  /** The coldest date, the first of equals. */
  private LocalDate coldest() {
    LocalDate coldest = null;
    double least = Double.POSITIVE_INFINITY;
    for (Map.Entry<LocalDate, List<Stay>> date : dates.entrySet()) {
      double here = date.getValue().stream().mapToDouble(Stay::coldest).min().orElseThrow();
      if (here < least) {
        least = here;
        coldest = date.getKey();
      }
    }
    return coldest;
  }

  private boolean isClear(LocalDate date) {
    return dates.get(date).stream()
        .flatMap(s -> findings.get(s.row.number()).stream())
        .allMatch(f -> f.severity() == Severity.CHECK);
  }

  /** A date that can be planned; null for one that cannot. */
  private DayFrame frame(LocalDate date) {
    List<Stay> stays = dates.get(date);
    if (stays == null || !isClear(date)) {
      return null;
    }
    List<AirTemperature.Part> parts = new ArrayList<>();
    List<DaySpec.Pause> breaks = new ArrayList<>();
    double shelf = Double.POSITIVE_INFINITY;
    for (int i = 0; i < stays.size(); i++) {
      Stay stay = stays.get(i);
      Day day = stay.row.value();
      parts.add(part(stay, i == 0 ? 0 : stay.call));
      if (i > 0 && stay.call > stays.get(i - 1).wrap) {
        breaks.add(new DaySpec.Pause(stays.get(i - 1).wrap, stay.call));
      }
      if (stay.pause != null) {
        breaks.add(stay.pause);
      }
      shelf =
          day.shelf() == null || Double.isNaN(shelf)
              ? Double.NaN
              : Math.min(shelf, settings.units().toCelsius(day.shelf()));
    }
    breaks.sort(Comparator.comparingDouble(DaySpec.Pause::from));
    ChargeAtCall atCall = stays.get(0).row.value().atCall();
    return new DayFrame(
        date,
        stays.stream()
            .map(x -> x.row.value().location())
            .filter(l -> l != null)
            .distinct()
            .collect(Collectors.joining(", ")),
        stays.get(0).call,
        stays.stream().mapToDouble(Stay::wrap).max().orElseThrow(),
        nextCall(date),
        new AirTemperature(parts),
        shelf,
        List.copyOf(breaks),
        atCall == null ? ChargeAtCall.AS_LEFT : atCall);
  }

  private AirTemperature.Part part(Stay stay, double from) {
    Day day = stay.row.value();
    boolean profile =
        day.max() != null && day.min() != null && day.minFrom() != null && day.maxFrom() != null;
    if (!profile) { // leads are rated in the warmest, whenever it is
      double warmest = day.max() == null ? stay.coldest : settings.units().toCelsius(day.max());
      return AirTemperature.Part.constant(from, stay.coldest, Math.max(stay.coldest, warmest));
    }
    double cold = settings.hour(day.minFrom());
    double warm = settings.hour(day.maxFrom());
    return new AirTemperature.Part(
        from,
        stay.coldest,
        settings.units().toCelsius(day.max()),
        cold,
        day.minTo() == null ? cold : settings.end(day.minTo(), cold),
        warm,
        day.maxTo() == null ? warm : settings.end(day.maxTo(), warm));
  }

  private double nextCall(LocalDate date) {
    LocalDate next = dates.higherKey(date);
    if (next == null) {
      return Double.POSITIVE_INFINITY;
    }
    long days = Math.min(30, ChronoUnit.DAYS.between(date, next));
    return 24.0 * days + dates.get(next).get(0).call;
  }

  /** Whether Days has more than one date. */
  boolean hasSeveral() {
    return dates.size() > 1;
  }

  /** The date that is planned; null if none can be. */
  DayFrame shown() {
    return shown;
  }

  /** All dates that can be planned, in order. */
  List<DayFrame> all() {
    return dates.keySet().stream().map(this::frame).filter(Objects::nonNull).toList();
  }

  /** The dates before the one shown whose charge is handed on to it, in order. */
  List<DayFrame> before() {
    List<DayFrame> chain = new ArrayList<>();
    DayFrame day = shown;
    while (day != null && day.atCall() == ChargeAtCall.AS_LEFT && chain.size() < 14) {
      LocalDate earlier = dates.lowerKey(day.date());
      day = earlier == null ? null : frame(earlier);
      if (day == null && earlier != null && !ofProject.contains(unclear(earlier))) {
        ofProject.add(unclear(earlier));
      }
      if (day != null) {
        chain.add(0, day);
      }
    }
    return chain;
  }

  private static Finding unclear(LocalDate earlier) {
    return Finding.of(BatteryDayFinding.DAY_BEFORE_UNCLEAR, earlier);
  }

  /** Hours from first call to last wrap of each date that can be planned. */
  Map<LocalDate, Double> lengths() {
    Map<LocalDate, Double> lengths = new TreeMap<>();
    dates.forEach(
        (date, stays) -> {
          if (isClear(date)) {
            double wrap = stays.stream().mapToDouble(Stay::wrap).max().orElseThrow();
            lengths.put(date, wrap - stays.get(0).call);
          }
        });
    return lengths;
  }

  /** What is wrong with the day shown, for Project. */
  List<Finding> ofProject() {
    return ofProject;
  }

  /** What is wrong with a row of Days. */
  List<Finding> findings(int row) {
    return findings.get(row).stream().distinct().sorted(Finding.WORST_FIRST).toList();
  }
}
