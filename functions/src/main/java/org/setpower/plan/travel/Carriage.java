package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.setpower.flight.FlightClass;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.travel.rules.CabinEdition;

/** Who carries what: decided and proposed lines, judged on every flight of their traveller. */
final class Carriage {
  private final Trip trip;
  private final AnswerBook answers;
  private final PersonLimits limits;
  private final Packings packings;
  private final Map<Integer, List<Finding>> overs = new LinkedHashMap<>();
  private final Map<Integer, Integer> lineOfPacking = new LinkedHashMap<>();
  private Gate<Line> gate;
  private boolean proven;

  /**
   * A line of the packing.
   *
   * @param decided whether somebody decided it by hand
   */
  record Line(Facts battery, Trip.Person person, int pieces, Bag bag, boolean decided) {}

  /**
   * What is too much.
   *
   * @param rows rows of Batteries that count
   */
  private record Over(Finding finding, Set<Integer> rows) {}

  Carriage(Trip trip, AnswerBook answers, PersonLimits limits, Packings packings) {
    this.trip = trip;
    this.answers = answers;
    this.limits = limits;
    this.packings = packings;
  }

  /** Proposes the rest and judges all lines. */
  void judge(Gate<Facts> batteries) {
    List<Facts> fit =
        batteries.all().stream()
            .filter(Gate.Judged::fit)
            .map(Gate.Judged::item)
            .filter(b -> b.typed().by() == null)
            .toList();
    Proposer.Outcome outcome = new Proposer(packings, trip.people, limits, this).propose(fit);
    proven = outcome.proven();
    List<Line> lines = new ArrayList<>();
    List<List<Finding>> known = new ArrayList<>();
    for (Packings.Decided d : packings.decided()) {
      if (d.pieces() > 0) {
        lines.add(new Line(d.battery(), d.person(), d.pieces(), d.bag(), true));
        List<Finding> own = new ArrayList<>(packings.gate.row(d.row()).findings());
        if (d.bag() == Bag.HOLD && isCabinOnly(d.battery(), d.person())) {
          own.add(Finding.of(TravelFinding.PACKED_HOLD));
        }
        known.add(own);
        lineOfPacking.put(d.row(), lines.size());
      }
    }
    for (Proposer.Proposed p : outcome.lines()) {
      lines.add(new Line(p.battery(), p.person(), p.pieces(), Bag.CABIN, false));
      known.add(List.of());
    }
    List<Gate.Candidate<Line>> candidates = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      List<Finding> findings = new ArrayList<>(known.get(i));
      findings.removeIf(f -> f.key() == CommonFinding.DOUBLE_IDENTITY);
      findings.addAll(blocks(line.battery, line.person));
      findings.addAll(stops(line, batteries));
      overs(line.person, lines).stream()
          .filter(o -> o.rows.contains(line.battery.row()))
          .forEach(o -> findings.add(o.finding));
      String name = line.battery.id() + " / " + line.person.id();
      candidates.add(new Gate.Candidate<>(i + 1, line, name, findings, false));
    }
    gate = new Gate<>(candidates, trip.stops());
    for (Gate.Judged<Trip.Person> person : trip.travellers.all()) {
      for (Over over : overs(person.item(), lines)) {
        overs.computeIfAbsent(person.row(), k -> new ArrayList<>()).add(over.finding);
      }
    }
    weights(lines);
  }

  /** The lines with their verdicts. */
  Gate<Line> gate() {
    return gate;
  }

  /** What is wrong with the line that a row of Packing decides; empty for no line. */
  List<Finding> ofPacking(int row) {
    Integer line = lineOfPacking.get(row);
    return line == null ? List.of() : gate.row(line).findings();
  }

  boolean isProven() {
    return proven;
  }

  /** What is too much for a traveller, over all lines. */
  List<Finding> overs(int traveller) {
    return overs.getOrDefault(traveller, List.of());
  }

  boolean isUser(Facts battery, Trip.Person person) {
    return Identity.of(battery.typed().user()).equals(person.id());
  }

  private static boolean isCabinOnly(Facts battery, Trip.Person person) {
    return person.legs().isEmpty()
        || person.legs().stream()
            .map(l -> battery.classUnder(l.edition()))
            .anyMatch(c -> c != FlightClass.HOLD_OR_CABIN && c != FlightClass.HOLD_OR_CABIN_AGREED);
  }

  /** Why a traveller cannot carry a battery at all; empty if the rules leave it open. */
  List<Finding> blocks(Facts battery, Trip.Person person) {
    List<Finding> blocks = new ArrayList<>();
    if (person.legs().isEmpty()) {
      blocks.add(Finding.of(TravelFinding.NO_FLIGHTS));
    }
    for (Trip.Leg leg : person.legs()) {
      FlightClass found = battery.classUnder(leg.edition());
      if (found.compareTo(FlightClass.ASK) > 0) {
        blocks.add(
            battery.isUnknown()
                ? Finding.of(TravelFinding.LINE_BATTERY, battery.name())
                : Finding.of(TravelFinding.LINE_CLASS, leg.name(), found.word()));
      } else if (found.needsAnswer() && answers.answer(leg, person, battery).isEmpty()) {
        blocks.add(Finding.of(TravelFinding.LINE_UNANSWERED, leg.name(), leg.carrier()));
      }
    }
    return blocks;
  }

  private List<Finding> stops(Line line, Gate<Facts> batteries) {
    List<Finding> stops = new ArrayList<>();
    if (!batteries.row(line.battery.row()).fit()) {
      stops.add(Finding.of(TravelFinding.LINE_BATTERY, line.battery.name()));
    }
    if (line.battery.typed().by() != null) {
      stops.add(Finding.of(TravelFinding.LINE_GOES_BY, line.battery.typed().by().word()));
    }
    if (!trip.travellers.row(line.person.row()).fit()) {
      stops.add(Finding.of(TravelFinding.LINE_TRAVELLER, line.person.name()));
    }
    for (Trip.Leg leg : line.person.legs()) {
      if (!trip.flights.row(leg.row()).fit()) {
        stops.add(Finding.of(TravelFinding.LINE_FLIGHT, leg.name()));
      }
      stops.addAll(answers.unclear(leg, line.battery));
    }
    return stops;
  }

  /** What is too much for a traveller: of limits that count the same the least, once. */
  private List<Over> overs(Trip.Person person, List<Line> lines) {
    Map<List<Object>, List<PersonLimits.Limit>> exceeded = new LinkedHashMap<>();
    for (PersonLimits.Limit limit : limits.of(person)) {
      List<Line> counted =
          lines.stream()
              .filter(l -> l.person.id().equals(person.id()))
              .filter(l -> limit.rows().contains(l.battery.row()))
              .toList();
      int pieces = limit.own() + counted.stream().mapToInt(Line::pieces).sum();
      if (pieces > limit.most() && !counted.isEmpty()) {
        Set<Integer> rows =
            counted.stream()
                .map(l -> l.battery.row())
                .collect(Collectors.toCollection(TreeSet::new));
        exceeded.computeIfAbsent(List.of(rows, pieces), k -> new ArrayList<>()).add(limit);
      }
    }
    List<Over> found = new ArrayList<>();
    exceeded.forEach(
        (counted, all) -> {
          PersonLimits.Limit least =
              all.stream()
                  .min(
                      Comparator.comparingInt(PersonLimits.Limit::most)
                          .thenComparing(PersonLimits.Limit::kind))
                  .orElseThrow();
          String flights =
              all.stream()
                  .filter(l -> l.most() == least.most() && l.kind() == least.kind())
                  .map(l -> l.leg().name())
                  .distinct()
                  .collect(Collectors.joining(", "));
          found.add(
              new Over(
                  Finding.of(least.kind().finding, counted.get(1), least.most(), flights),
                  all.stream().flatMap(l -> l.rows().stream()).collect(Collectors.toSet())));
        });
    return found;
  }

  private void weights(List<Line> lines) {
    for (Gate.Judged<Trip.Person> judged : trip.travellers.all()) {
      Trip.Person person = judged.item();
      double kilograms = kilograms(lines, person);
      Double most = person.cabinKilograms();
      if (most != null && kilograms > Facts.dustless(most)) {
        overs
            .computeIfAbsent(person.row(), k -> new ArrayList<>())
            .add(Finding.of(TravelFinding.OVER_WEIGHT, kilograms, most));
      }
    }
  }

  /** Weight of a traveller's batteries, as far as weights are known. */
  private static double kilograms(List<Line> lines, Trip.Person person) {
    double[] each =
        lines.stream()
            .filter(l -> l.person.row() == person.row())
            .filter(l -> l.battery.kilograms() != null)
            .mapToDouble(l -> l.pieces * l.battery.kilograms())
            .sorted()
            .toArray();
    double sum = 0;
    for (double one : each) {
      sum += one;
    }
    return Facts.dustless(sum);
  }

  /** The flights on which an answer is needed and some traveller has none. */
  List<String> unanswered(Facts battery) {
    return trip.people.stream()
        .flatMap(
            p ->
                p.legs().stream()
                    .filter(l -> battery.classUnder(l.edition()).needsAnswer())
                    .filter(l -> answers.answer(l, p, battery).isEmpty()))
        .sorted(Comparator.comparing(trip::order))
        .map(Trip.Leg::name)
        .distinct()
        .toList();
  }

  /** The flights on which a carrier's answer to some traveller is none. */
  List<String> refused(Facts battery) {
    return trip.people.stream()
        .flatMap(
            p ->
                p.legs().stream()
                    .filter(
                        l -> answers.answer(l, p, battery).filter(c -> c.number() < 1).isPresent()))
        .sorted(Comparator.comparing(trip::order))
        .map(Trip.Leg::name)
        .distinct()
        .toList();
  }

  /** The rules from memory by which batteries are judged, each with its flights. */
  List<Finding> fromMemory(List<Facts> batteries) {
    Map<TravelFinding, Set<String>> flights = new EnumMap<>(TravelFinding.class);
    for (Trip.Leg leg : trip.legs) {
      batteries.stream()
          .filter(b -> leg.held() && b.typed().by() == null)
          .filter(b -> b.classUnder(leg.edition()).compareTo(FlightClass.ASK) <= 0)
          .flatMap(b -> b.fromMemory(leg.edition()).stream())
          .forEach(r -> flights.computeIfAbsent(r, k -> new LinkedHashSet<>()).add(leg.name()));
    }
    return flights.entrySet().stream()
        .map(r -> Finding.of(r.getKey(), String.join(", ", r.getValue())))
        .toList();
  }

  /** Lines that may travel and whose traveller flies out and not back. */
  List<Line> stranded() {
    LocalDate last =
        trip.legs.stream()
            .map(Trip.Leg::date)
            .filter(Objects::nonNull)
            .max(Comparator.naturalOrder())
            .orElse(LocalDate.MIN);
    return gate.paper(l -> !new Route(l.person.legs()).returns(last)).fit().stream()
        .map(Gate.Judged::item)
        .toList();
  }

  /** The strictest class over all flights; null without a flight. */
  FlightClass strictest(Facts battery) {
    return trip.legs.stream()
        .map(l -> battery.classUnder(l.edition()))
        .reduce(FlightClass::and)
        .orElse(null);
  }

  /** How many a traveller may take of spares over the small limit on a flight. */
  int large(Trip.Person person, Trip.Leg leg) {
    return limits.large(person, leg);
  }

  /**
   * How many a traveller may take of a battery on a flight at most, but for what all spares and all
   * equipment have together; empty for no limit.
   */
  Optional<Integer> most(Facts battery, Trip.Person person, Trip.Leg leg) {
    return limits.of(person).stream()
        .filter(l -> l.leg() == leg && l.rows().contains(battery.row()))
        .filter(l -> l.kind() != PersonLimits.Kind.SPARES)
        .filter(l -> l.kind() != PersonLimits.Kind.DEVICES)
        .map(PersonLimits.Limit::most)
        .min(Comparator.naturalOrder());
  }

  /** How many a traveller may take of a battery at most, on any flight; empty for no limit. */
  Optional<Integer> most(Facts battery, Trip.Person person) {
    return limits.of(person).stream()
        .filter(l -> l.rows().contains(battery.row()))
        .map(PersonLimits.Limit::most)
        .min(Comparator.naturalOrder());
  }

  /** The fewest travellers that the rules alone ask for, answers apart. */
  int fewestTravellers(List<Facts> batteries) {
    int fewest = 0;
    for (Trip.Leg leg : trip.legs) {
      CabinEdition edition = leg.edition();
      List<Facts> carried =
          batteries.stream()
              .filter(b -> b.typed().by() == null)
              .filter(b -> b.classUnder(edition).compareTo(FlightClass.ASK) <= 0)
              .toList();
      int any = carried.isEmpty() ? 0 : 1;
      fewest = Math.max(fewest, any);
      fewest =
          Math.max(
              fewest, shared(carried, edition.spares(), b -> PersonLimits.isSpare(b, edition)));
      fewest =
          Math.max(fewest, shared(carried, edition.over(), b -> PersonLimits.isLarge(b, edition)));
      fewest = Math.max(fewest, shared(carried, edition.banks(), Facts::isBank));
      fewest =
          Math.max(
              fewest,
              shared(
                  carried,
                  edition.leadSpares(),
                  b -> b.chemistry() == TravelChemistry.LEAD_SEALED && b.isSpare()));
    }
    return fewest;
  }

  private static int shared(List<Facts> batteries, int most, Predicate<Facts> counts) {
    int sum = batteries.stream().filter(counts).mapToInt(Facts::quantity).sum();
    return most == CabinEdition.NONE || most == 0 ? 0 : -Math.floorDiv(-sum, most);
  }
}
