package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;

/**
 * The flights of a traveller as a way from place to place. Flights of one day are in any order.
 *
 * @param legs in the order of the trip
 */
record Route(List<Trip.Leg> legs) {
  private static String from(Trip.Leg leg) {
    return Identity.of(leg.typed().from());
  }

  private static String to(Trip.Leg leg) {
    return Identity.of(leg.typed().to());
  }

  private static LocalDate date(Trip.Leg leg) {
    return leg.date() == null ? LocalDate.MAX : leg.date();
  }

  /** Whether it is known where each flight begins and ends. */
  private boolean isPlaced() {
    return legs.stream().noneMatch(l -> from(l).isEmpty() || to(l).isEmpty());
  }

  /** Whether it is known where each flight begins and ends, and one of these is a place. */
  boolean isVia(String place) {
    return isPlaced() && legs.stream().anyMatch(l -> from(l).equals(place) || to(l).equals(place));
  }

  /** The flight with which a way begins that comes to a place and begins elsewhere. */
  Optional<Trip.Leg> startElsewhere(String place) {
    if (!isVia(place) || legs.get(0).date() == null) {
      return Optional.empty();
    }
    List<Trip.Leg> first = legs.stream().filter(l -> legs.get(0).date().equals(l.date())).toList();
    String start = only(leavings(first), 1);
    return start == null || start.equals(place)
        ? Optional.empty()
        : first.stream().filter(l -> from(l).equals(start)).findFirst();
  }

  /** How often more a way leaves a place than it gets there. */
  private static Map<String, Integer> leavings(List<Trip.Leg> legs) {
    Map<String, Integer> leavings = new HashMap<>();
    for (Trip.Leg leg : legs) {
      leavings.merge(from(leg), 1, Integer::sum);
      leavings.merge(to(leg), -1, Integer::sum);
    }
    return leavings;
  }

  /**
   * Whether it ends where it began. Where places are blank: on the last day of the trip, which is
   * not its first.
   */
  boolean returns(LocalDate lastDay) {
    if (legs.isEmpty()) {
      return false;
    }
    if (isPlaced()) {
      return leavings(legs).values().stream().allMatch(n -> n == 0);
    }
    LocalDate last = date(legs.get(legs.size() - 1));
    return last.isAfter(date(legs.get(0))) && !last.isBefore(lastDay);
  }

  /** What no traveller can do. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < legs.size(); i++) {
      for (int k = 0; k < i; k++) {
        Trip.Leg one = legs.get(k);
        Trip.Leg other = legs.get(i);
        boolean placed = !from(one).isEmpty() && !to(one).isEmpty();
        boolean same = from(one).equals(from(other)) && to(one).equals(to(other));
        if (placed && same && one.date() != null && one.date().equals(other.date())) {
          findings.add(
              Finding.of(TravelFinding.TRAVELLER_TWICE, one.name(), other.name(), one.date()));
        }
      }
    }
    if (findings.isEmpty() && isPlaced()) {
      broken(findings);
    }
    return findings;
  }

  /** Whether a flight leaves from where nobody has brought the traveller. */
  boolean isBroken() {
    return !findings().isEmpty();
  }

  private void broken(List<Finding> findings) {
    Map<LocalDate, List<Trip.Leg>> days =
        legs.stream()
            .collect(Collectors.groupingBy(Route::date, TreeMap::new, Collectors.toList()));
    String place = null;
    for (List<Trip.Leg> day : days.values()) {
      Map<String, Integer> leavings = leavings(day);
      String start = only(leavings, 1);
      String end = only(leavings, -1);
      boolean round = leavings.values().stream().allMatch(n -> n == 0);
      boolean fits =
          round
              ? place == null || leavings.containsKey(place)
              : start != null && end != null && (place == null || place.equals(start));
      if (!fits) {
        String before = place;
        Trip.Leg leg =
            day.stream().filter(l -> !from(l).equals(before)).findFirst().orElse(day.get(0));
        findings.add(Finding.of(TravelFinding.TRAVELLER_BROKEN, leg.name(), leg.typed().from()));
        return;
      }
      if (!round) {
        place = end;
      }
    }
  }

  /** The only place that is left, or reached, once more; null if that is not so. */
  private static String only(Map<String, Integer> leavings, int more) {
    List<String> found = new ArrayList<>();
    int others = 0;
    for (Map.Entry<String, Integer> each : leavings.entrySet()) {
      if (each.getValue() == more) {
        found.add(each.getKey());
      } else if (each.getValue() != 0 && each.getValue() != -more) {
        others++;
      }
    }
    return found.size() == 1 && others == 0 ? found.get(0) : null;
  }
}
