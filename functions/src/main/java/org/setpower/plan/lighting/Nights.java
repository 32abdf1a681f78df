package org.setpower.plan.lighting;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.lighting.input.LoadTables.Load;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.network.Node;

/** On which days, with their nights, loads are on, and which of them papers are of. */
final class Nights {
  private static final String DAY = "{0}";
  private static final String SPAN = "{0}–{1}";
  private static final String AND = "{0}, {1}";
  private static final String FROM = "from {0}";
  private static final String TO = "to {0}";
  private static final String EVERY = "all days";
  private static final String WORST = "all days: worst";

  private static final int MINUTES_A_DAY = 1440;

  private final LocalDate shown;
  private final List<LocalDate> days;
  private final Map<PlannedLoad, Set<LocalDate>> ofLoads = new HashMap<>();
  private final Map<Node, Set<LocalDate>> ofPlaces = new HashMap<>();

  /** Without the day shown where it is none of Days. */
  Nights(List<PlannedLoad> loads, Timeline timeline, LocalDate asked) {
    shown = timeline.shown(asked);
    days =
        timeline.windows().stream()
            .map(Timeline.Window::date)
            .filter(d -> d != null)
            .distinct()
            .toList();
    for (PlannedLoad load : loads) {
      Set<LocalDate> dates = new TreeSet<>();
      load.spans().forEach(s -> timeline.dates(s).forEach(dates::add));
      ofLoads.put(load, dates);
      Set<Node> path = new HashSet<>();
      load.parts().forEach(p -> path.addAll(p.node().path()));
      if (!dates.isEmpty()) {
        path.forEach(n -> ofPlaces.computeIfAbsent(n, k -> new TreeSet<>()).addAll(dates));
      }
    }
  }

  /** What stands on papers. */
  static List<String> words() {
    return List.of(DAY, SPAN, AND, FROM, TO, EVERY, WORST);
  }

  /** Which days a paper is of; null without days. */
  Phrase head() {
    if (days.isEmpty()) {
      return null;
    }
    LocalDate one = days.size() == 1 ? days.get(0) : shown;
    return one == null ? Phrase.of(WORST) : Phrase.of(DAY, one);
  }

  /** First and last day; null without days. */
  Phrase period() {
    LocalDate first = days.stream().min(LocalDate::compareTo).orElse(null);
    LocalDate last = days.stream().max(LocalDate::compareTo).orElse(null);
    if (first == null || first.equals(last)) {
      return first == null ? null : Phrase.of(DAY, first);
    }
    // a cell of a paper has room for one year
    Object from = first.getYear() == last.getYear() ? MonthDay.from(first) : first;
    return Phrase.of(SPAN, from, last);
  }

  /** The same as head() where there are several days; else null. */
  Phrase label() {
    return days.size() > 1 ? head() : null;
  }

  /** The day shown; null for all. */
  LocalDate shown() {
    return shown;
  }

  /** Whether a load belongs on papers; one whose hours are not known always does. */
  boolean isShown(PlannedLoad load) {
    return isOf(ofLoads.get(load));
  }

  /** Whether a place feeds something on the day shown, or on no day at all. */
  boolean isShown(Node place) {
    return isOf(ofPlaces.getOrDefault(place, Set.of()));
  }

  private boolean isOf(Set<LocalDate> dates) {
    return shown == null || dates.isEmpty() || dates.contains(shown);
  }

  /** The days of a load; null where they are not known, or a paper is of one day. */
  Phrase of(PlannedLoad load) {
    return words(ofLoads.get(load));
  }

  /** The days of a load with its times as typed; null where a paper says both at its head. */
  Phrase on(PlannedLoad load) {
    Phrase days = of(load);
    Phrase times = times(load.row().value());
    return days == null ? times : times == null ? days : Phrase.of(AND, days, times);
  }

  private static Phrase times(Load typed) {
    LocalTime from = clock(typed.from());
    LocalTime to = clock(typed.to());
    if (from == null) {
      return to == null ? null : Phrase.of(TO, to);
    }
    return to == null ? Phrase.of(FROM, from) : Phrase.of(SPAN, from, to);
  }

  private static LocalTime clock(Double share) {
    return share == null
        ? null
        : LocalTime.ofSecondOfDay(Math.round(share * MINUTES_A_DAY) % MINUTES_A_DAY * 60);
  }

  /** The days of all that a place feeds. */
  Phrase of(Node place) {
    return words(ofPlaces.getOrDefault(place, Set.of()));
  }

  private Phrase words(Set<LocalDate> dates) {
    if (shown != null || dates.isEmpty() || days.size() < 2) {
      return null;
    }
    if (dates.size() == days.size()) {
      return Phrase.of(EVERY);
    }
    List<Phrase> spans = new ArrayList<>();
    for (int i = 0; i < days.size(); i++) {
      int from = i;
      while (i < days.size() && dates.contains(days.get(i))) {
        i++;
      }
      if (i > from) {
        MonthDay first = MonthDay.from(days.get(from));
        MonthDay last = MonthDay.from(days.get(i - 1));
        spans.add(i - from > 1 ? Phrase.of(SPAN, first, last) : Phrase.of(DAY, first));
      }
    }
    return spans.stream().reduce((one, other) -> Phrase.of(AND, one, other)).orElse(null);
  }
}
