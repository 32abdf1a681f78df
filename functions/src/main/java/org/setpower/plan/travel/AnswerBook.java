package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.flight.CarriageMode;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.travel.TravelInputs.CarrierAnswer;

/** What the operating carriers answered in writing. An answer covers what it names, no more. */
final class AnswerBook {
  private final Trip trip;
  private final List<Facts> batteries;
  private final Map<Integer, List<Finding>> findings = new LinkedHashMap<>();
  private final List<Covers> usable = new ArrayList<>();
  private final List<InputRow<CarrierAnswer>> unclear = new ArrayList<>();

  /**
   * A usable answer.
   *
   * @param legs rows of the flights it names
   * @param travellers roles it names; empty for each traveller
   * @param type the type as it is compared
   */
  record Covers(
      int row, CarrierAnswer typed, Set<Integer> legs, Set<String> travellers, String type) {
    int number() {
      return (int) Math.floor(typed.number());
    }

    boolean covers(Trip.Leg leg, Trip.Person person, Facts battery) {
      return type.equals(battery.type())
          && carried(typed) == battery.carried()
          && legs.contains(leg.row())
          && (travellers.isEmpty() || travellers.contains(person.id()))
          && battery.wattHours() <= Facts.dustless(typed.energy());
    }
  }

  AnswerBook(Trip trip, InputRows<CarrierAnswer> rows, List<Facts> batteries) {
    this.trip = trip;
    this.batteries = batteries;
    rows.filled().forEach(r -> add(r, batteries));
    usable.sort(Comparator.comparingInt(Covers::number).thenComparing(c -> c.typed().toString()));
  }

  private static CarriageMode carried(CarrierAnswer typed) {
    return typed.carried() == null ? CarriageMode.SPARE : typed.carried();
  }

  /** The roles that an answer names; none for each traveller. */
  private List<String> travellers(CarrierAnswer typed) {
    Set<String> roles =
        trip.travellers.all().stream().map(t -> t.item().id()).collect(Collectors.toSet());
    return Trip.isAll(typed.travellers(), roles) ? List.of() : Trip.names(typed.travellers());
  }

  private static boolean names(CarrierAnswer typed, Facts battery) {
    return Identity.of(typed.type()).equals(battery.type()) && carried(typed) == battery.carried();
  }

  private void add(InputRow<CarrierAnswer> row, List<Facts> batteries) {
    CarrierAnswer typed = row.value();
    List<Finding> found = new ArrayList<>(row.findings());
    List<Trip.Leg> legs = new ArrayList<>();
    List<String> names = Trip.names(typed.flight());
    if (typed.flight() != null && names.isEmpty()) {
      found.add(Finding.of(TravelFinding.ANSWER_FLIGHT, typed.flight()));
    }
    for (String name : names) {
      Trip.Leg leg = trip.leg(name);
      if (leg == null) {
        found.add(Finding.of(TravelFinding.ANSWER_FLIGHT, name));
      } else {
        legs.add(leg);
        flight(typed, leg, found);
      }
    }
    for (String name : travellers(typed)) {
      if (trip.travellers.all().stream().noneMatch(t -> t.item().id().equals(Identity.of(name)))) {
        found.add(Finding.of(TravelFinding.ANSWER_TRAVELLER, name));
      }
    }
    if (typed.travellers() != null && Trip.names(typed.travellers()).isEmpty()) {
      found.add(Finding.of(TravelFinding.ANSWER_TRAVELLER, typed.travellers()));
    }
    dates(typed, legs, found);
    dated(row, legs, found);
    if (typed.number() != null && typed.number() < 1) {
      found.add(Finding.of(TravelFinding.ANSWER_REFUSED));
    }
    battery(typed, batteries, found);
    across(typed, legs, batteries, found);
    more(typed, legs, batteries, found);
    findings.put(row.number(), found.stream().distinct().sorted(Finding.WORST_FIRST).toList());
    if (Finding.verdict(found) == Verdict.STOP || row.isUnreadable()) {
      unclear.add(row);
    } else {
      usable.add(
          new Covers(
              row.number(),
              typed,
              legs.stream().map(Trip.Leg::row).collect(Collectors.toSet()),
              travellers(typed).stream().map(Identity::of).collect(Collectors.toSet()),
              Identity.of(typed.type())));
    }
  }

  private static void flight(CarrierAnswer typed, Trip.Leg leg, List<Finding> found) {
    if (typed.carrier() != null
        && !Identity.of(typed.carrier()).equals(Identity.of(leg.carrier()))) {
      found.add(Finding.of(TravelFinding.ANSWER_CARRIER, leg.name(), leg.carrier()));
    }
    if (typed.date() != null
        && leg.date() != null
        && !leg.date().equals(typed.date())
        && !leg.date().equals(typed.date2())) {
      found.add(Finding.of(TravelFinding.ANSWER_DATE, leg.name(), leg.date()));
    }
  }

  /** Of two dates each belongs to one of the flights: one that has moved is covered no more. */
  private static void dates(CarrierAnswer typed, List<Trip.Leg> legs, List<Finding> found) {
    if (typed.date2() == null || legs.isEmpty()) {
      return;
    }
    Stream.of(typed.date(), typed.date2())
        .filter(d -> d != null && legs.stream().noneMatch(l -> d.equals(l.date())))
        .forEach(d -> found.add(Finding.of(TravelFinding.ANSWER_DATE2, d)));
  }

  private void dated(InputRow<CarrierAnswer> row, List<Trip.Leg> legs, List<Finding> found) {
    LocalDate answered = row.value().answered();
    if (answered == null) {
      if (!row.unreadable().contains("answered")) {
        found.add(Finding.of(TravelFinding.ANSWER_UNDATED));
      }
      return;
    }
    boolean afterIssue = trip.project.issued() != null && answered.isAfter(trip.project.issued());
    boolean afterFlight =
        legs.stream().anyMatch(l -> l.date() != null && answered.isAfter(l.date()));
    if (afterIssue || afterFlight) {
      found.add(Finding.of(TravelFinding.ANSWER_LATE, answered));
    }
    if (legs.stream()
        .anyMatch(l -> l.date() != null && answered.isBefore(l.date().minusYears(1)))) {
      found.add(Finding.of(TravelFinding.ANSWER_OLD, answered));
    }
  }

  private static void battery(CarrierAnswer typed, List<Facts> batteries, List<Finding> found) {
    List<Facts> named = batteries.stream().filter(b -> names(typed, b)).toList();
    if (typed.type() != null && named.isEmpty()) {
      found.add(Finding.of(TravelFinding.ANSWER_TYPE, typed.type()));
    }
    if (typed.energy() != null) {
      named.stream()
          .mapToDouble(Facts::wattHours)
          .filter(wh -> wh > Facts.dustless(typed.energy()))
          .max()
          .ifPresent(wh -> found.add(Finding.of(TravelFinding.ANSWER_ENERGY, typed.energy(), wh)));
    }
  }

  /** A carrier that was asked about a type over the small limit knows another label than ours. */
  private static void across(
      CarrierAnswer typed, List<Trip.Leg> legs, List<Facts> batteries, List<Finding> found) {
    if (typed.energy() == null) {
      return;
    }
    for (Trip.Leg leg : legs) {
      double line = leg.edition().smallWattHours();
      batteries.stream()
          .filter(b -> names(typed, b) && b.isLithium() && b.wattHours() <= line)
          .filter(b -> Facts.dustless(typed.energy()) > line)
          .mapToDouble(Facts::wattHours)
          .min()
          .ifPresent(
              wh -> found.add(Finding.of(TravelFinding.ANSWER_ACROSS, typed.energy(), wh, line)));
    }
  }

  /** An answer above what the rules leave does not lift them. */
  private static void more(
      CarrierAnswer typed, List<Trip.Leg> legs, List<Facts> batteries, List<Finding> found) {
    if (typed.number() == null) {
      return;
    }
    int number = (int) Math.floor(typed.number());
    for (Trip.Leg leg : legs) {
      batteries.stream()
          .filter(b -> names(typed, b))
          .map(b -> PersonLimits.most(b, leg))
          .min(Comparator.naturalOrder())
          .filter(most -> number > most)
          .ifPresent(
              most -> found.add(Finding.of(TravelFinding.ANSWER_MORE, number, leg.name(), most)));
    }
  }

  /** What is wrong with an answer, worst first. */
  List<Finding> findings(int row) {
    return findings.get(row);
  }

  /** Every row with its findings. */
  Map<Integer, List<Finding>> all() {
    return findings;
  }

  /** Whether a row may be about what a result is made of: a usable one by what it names. */
  boolean isAbout(int row, Behind behind) {
    return usable.stream()
        .filter(c -> c.row() == row)
        .allMatch(
            c ->
                c.legs().stream().anyMatch(behind.flights()::contains)
                    && batteries.stream()
                        .filter(b -> behind.batteries().contains(b.row()))
                        .anyMatch(b -> names(c.typed(), b)));
  }

  /** The answer that covers a battery of a traveller on a flight; of several the least. */
  Optional<Covers> answer(Trip.Leg leg, Trip.Person person, Facts battery) {
    return usable.stream().filter(c -> c.covers(leg, person, battery)).findFirst();
  }

  /** Answers that cannot be used and may be about the battery on the flight. */
  List<Finding> unclear(Trip.Leg leg, Facts battery) {
    return unclear.stream()
        .filter(
            r -> {
              CarrierAnswer typed = r.value();
              boolean type =
                  typed.type() == null
                      || Identity.of(typed.type()).equals(battery.type())
                          && (carried(typed) == battery.carried()
                              || r.unreadable().contains("carried"));
              List<String> names = Trip.names(typed.flight());
              boolean flight =
                  names.isEmpty() || names.stream().anyMatch(n -> Identity.of(n).equals(leg.id()));
              return type && flight;
            })
        .map(r -> Finding.of(TravelFinding.LINE_ANSWER_UNCLEAR, r.number()))
        .toList();
  }
}
