package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.flight.CarriageMode;
import org.setpower.flight.Packing;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.travel.rules.CabinEdition;

/** Writes the papers. It judges nothing: it takes its rows from the gates. */
final class PaperDesk {
  private final Trip trip;
  private final AnswerBook answers;
  private final Gate<Facts> batteries;
  private final Carriage carriage;
  private final OnwardDesk onward;
  private final OnwardDesk back;

  PaperDesk(
      Trip trip,
      AnswerBook answers,
      Gate<Facts> batteries,
      Carriage carriage,
      OnwardDesk onward,
      OnwardDesk back) {
    this.trip = trip;
    this.answers = answers;
    this.batteries = batteries;
    this.carriage = carriage;
    this.onward = onward;
    this.back = back;
  }

  private List<Carriage.Line> carried() {
    return carriage.gate().paper(l -> true).fit().stream().map(Gate.Judged::item).toList();
  }

  List<TravelPapers.CheckInRow> checkIn() {
    return checkIn(new ArrayList<>());
  }

  /**
   * The check-in sheet.
   *
   * @param behind gets what each row is made of; null for a blank one
   */
  List<TravelPapers.CheckInRow> checkIn(List<Behind> behind) {
    Map<String, List<Carriage.Line>> groups = new TreeMap<>();
    Map<String, Trip.Leg> legs = new LinkedHashMap<>();
    for (Carriage.Line line : carried()) {
      for (Trip.Leg leg : line.person().legs()) {
        Facts b = line.battery();
        String key =
            String.join(
                "\n",
                String.valueOf((char) ('A' + trip.order(leg))),
                b.type(),
                b.chemistry().name(),
                b.carried().name(),
                String.valueOf(b.wattHours()),
                line.bag().name(),
                answers.answer(leg, line.person(), b).map(c -> "" + c.row()).orElse(""),
                String.valueOf(b.workedOut()));
        groups.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
        legs.put(key, leg);
      }
    }
    List<TravelPapers.CheckInRow> rows = new ArrayList<>();
    Trip.Leg before = null;
    for (Map.Entry<String, List<Carriage.Line>> group : groups.entrySet()) {
      Trip.Leg leg = legs.get(group.getKey());
      if (leg != before) {
        separate(rows, behind);
        rows.add(flight(leg));
        behind.add(Behind.of(List.of(), leg));
        before = leg;
      }
      rows.add(checkIn(leg, group.getValue()));
      behind.add(Behind.of(group.getValue(), leg));
    }
    return rows;
  }

  /** A blank row between flights and between cards. */
  private static void separate(List<?> rows, List<Behind> behind) {
    if (!rows.isEmpty()) {
      rows.add(null);
      behind.add(null);
    }
  }

  /** The row above the types of a flight: its date, carrier, route, rules. */
  private TravelPapers.CheckInRow flight(Trip.Leg leg) {
    List<Finding> notes = new ArrayList<>();
    notes.add(
        route(leg).isEmpty()
            ? TravelStatement.FLIGHT.of(leg.date(), leg.carrier())
            : TravelStatement.FLIGHT_ROUTE.of(leg.date(), leg.carrier(), route(leg)));
    notes.add(
        leg.held()
            ? TravelStatement.RULES.of(leg.edition().name(), leg.edition().validTo())
            : TravelStatement.EDITION_ENDED.of(leg.shown().name(), leg.shown().validTo()));
    if (leg.isWritten()) {
      List<Object> written = new ArrayList<>(leg.written());
      written.add(leg.typed().writtenReference());
      notes.add(new Finding(TravelStatement.WRITTEN, written));
      if (leg.isWrittenMore()) {
        notes.add(new Finding(TravelStatement.USED, List.copyOf(leg.used())));
      }
    }
    return new TravelPapers.CheckInRow(
        leg.name(), null, null, null, null, null, null, null, null, notes);
  }

  private TravelPapers.CheckInRow checkIn(Trip.Leg leg, List<Carriage.Line> lines) {
    Carriage.Line first =
        lines.stream()
            .min(
                Comparator.comparing((Carriage.Line l) -> l.battery().typeName())
                    .thenComparing(l -> l.person().id()))
            .orElseThrow();
    Facts battery = first.battery();
    Map<String, Integer> people = new TreeMap<>();
    lines.forEach(l -> people.merge(l.person().name(), l.pieces(), Integer::sum));
    Integer most =
        lines.stream()
            .flatMap(l -> carriage.most(l.battery(), l.person(), leg).stream())
            .min(Comparator.naturalOrder())
            .orElse(null);
    List<Finding> notes = new ArrayList<>();
    answers.answer(leg, first.person(), battery).ifPresent(c -> answer(leg, battery, c, notes));
    if (battery.workedOut()) {
      notes.add(workedOut(battery));
    }
    if (isFittedInHold(first)) {
      notes.add(TravelStatement.FITTED_HOLD.of());
    }
    return new TravelPapers.CheckInRow(
        leg.name(),
        battery.typeName(),
        battery.chemistry(),
        battery.carried(),
        known(battery.wattHours()),
        first.bag(),
        lines.stream().mapToInt(Carriage.Line::pieces).sum(),
        most,
        people.entrySet().stream()
            .map(p -> p.getKey() + " " + p.getValue())
            .collect(Collectors.joining(", ")),
        notes);
  }

  /** Whether a battery in its equipment goes into the hold. */
  private static boolean isFittedInHold(Carriage.Line line) {
    return line.bag() == Bag.HOLD && line.battery().carried() == CarriageMode.IN_EQUIPMENT;
  }

  private static String route(Trip.Leg leg) {
    String from = leg.typed().from() == null ? "" : leg.typed().from();
    String to = leg.typed().to() == null ? "" : leg.typed().to();
    return from.isEmpty() && to.isEmpty() ? "" : from + "–" + to;
  }

  private static Double known(double value) {
    return Double.isNaN(value) ? null : (Double) value;
  }

  private static void answer(
      Trip.Leg leg, Facts battery, AnswerBook.Covers covers, List<Finding> notes) {
    notes.add(
        covers.typed().answered() == null
            ? TravelStatement.ANSWER_UNDATED.of(
                leg.name(), covers.number(), covers.typed().reference())
            : TravelStatement.ANSWER.of(
                leg.name(),
                covers.number(),
                covers.typed().reference(),
                covers.typed().answered()));
    int most = PersonLimits.most(battery, leg);
    if (covers.number() > most) {
      notes.add(TravelStatement.ANSWER_USED.of(leg.name(), most));
    }
  }

  private static Finding workedOut(Facts battery) {
    return TravelStatement.WORKED_OUT.of(
        battery.wattHours(), battery.typed().volts(), battery.typed().ampHours());
  }

  List<TravelPapers.CardRow> cards() {
    return cards(new ArrayList<>());
  }

  /**
   * The passenger cards.
   *
   * @param behind gets what each row is made of; null for a blank one
   */
  List<TravelPapers.CardRow> cards(List<Behind> behind) {
    List<TravelPapers.CardRow> rows = new ArrayList<>();
    Trip.Person before = null;
    for (Carriage.Line line : byTraveller()) {
      if (line.person() != before) {
        if (before != null) {
          cautions(before, rows, behind);
        }
        separate(rows, behind); // two rows: each card is printed whole
        separate(rows, behind);
        rows.add(card(line.person()));
        behind.add(Behind.of(line.person()));
        before = line.person();
      }
      rows.add(
          new TravelPapers.CardRow(
              line.person().name(),
              line.battery().name(),
              line.battery().carried(),
              known(line.battery().wattHours()),
              line.pieces(),
              line.bag(),
              notes(line)));
      behind.add(Behind.of(List.of(line)));
    }
    if (before != null) {
      cautions(before, rows, behind);
    }
    return rows;
  }

  /** The last row of a card. */
  private static void cautions(
      Trip.Person person, List<TravelPapers.CardRow> rows, List<Behind> behind) {
    List<Finding> notes =
        List.of(
            TravelStatement.CABIN_ONLY.of(),
            TravelStatement.HOT.of(),
            TravelStatement.DAMAGED.of(),
            TravelStatement.CARRIER.of());
    rows.add(new TravelPapers.CardRow(person.name(), null, null, null, null, null, notes));
    behind.add(Behind.of(person));
  }

  private List<Carriage.Line> byTraveller() {
    return carried().stream()
        .sorted(
            Comparator.comparing((Carriage.Line l) -> l.person().id())
                .thenComparing(l -> l.battery().id()))
        .toList();
  }

  /** Production, revision and date of issue of a card that is cut out. */
  private Optional<Finding> stamp() {
    TravelInputs.Project project = trip.project;
    LocalDate issued = project.issued();
    if (issued == null) {
      return Optional.empty();
    }
    if (project.production() == null) {
      return Optional.of(TravelStatement.CARD_DATE.of(issued));
    }
    return Optional.of(
        project.revision() == null
            ? TravelStatement.CARD.of(project.production(), issued)
            : TravelStatement.CARD_REVISION.of(project.production(), project.revision(), issued));
  }

  /** The row above the batteries of a traveller: the flights, the counts, what is one's own. */
  private TravelPapers.CardRow card(Trip.Person person) {
    List<Finding> notes = new ArrayList<>();
    stamp().ifPresent(notes::add);
    if (trip.project.contact() != null) {
      notes.add(TravelStatement.CONTACT.of(trip.project.contact()));
    }
    notes.add(
        TravelStatement.FLIGHTS.of(
            String.join(", ", person.legs().stream().map(Trip.Leg::name).toList())));
    person.legs().forEach(leg -> count(person, leg, notes));
    if (person.ownSpares() + person.ownBanks() > 0) {
      notes.add(TravelStatement.OWN.of(person.ownSpares(), person.ownBanks()));
    }
    return new TravelPapers.CardRow(person.name(), null, null, null, null, null, notes);
  }

  /** What counts together on a flight, own batteries among it, and how many there may be. */
  private void count(Trip.Person person, Trip.Leg leg, List<Finding> notes) {
    int ownBanks = leg.edition().banksAreSpares() ? person.ownBanks() : 0;
    int spares =
        person.ownSpares() + ownBanks + pieces(person, b -> PersonLimits.isSpare(b, leg.edition()));
    notes.add(
        leg.spares() == CabinEdition.NONE
            ? TravelStatement.COUNT_SPARES_OPEN.of(leg.name(), spares, leg.date())
            : TravelStatement.COUNT_SPARES.of(leg.name(), spares, leg.spares(), leg.date()));
    if (leg.over() != CabinEdition.NONE) {
      int large = pieces(person, b -> PersonLimits.isLarge(b, leg.edition()));
      notes.add(TravelStatement.COUNT_LARGE.of(large, leg.over()));
    }
    if (leg.banks() != CabinEdition.NONE) {
      int banks = person.ownBanks() + pieces(person, Facts::isBank);
      notes.add(TravelStatement.COUNT_BANKS.of(banks, leg.banks()));
    }
  }

  private int pieces(Trip.Person person, Predicate<Facts> counts) {
    return carried().stream()
        .filter(l -> l.person().row() == person.row() && counts.test(l.battery()))
        .mapToInt(Carriage.Line::pieces)
        .sum();
  }

  private List<Finding> notes(Carriage.Line line) {
    List<Finding> notes = new ArrayList<>();
    for (Trip.Leg leg : line.person().legs()) {
      answers
          .answer(leg, line.person(), line.battery())
          .ifPresent(c -> answer(leg, line.battery(), c, notes));
    }
    if (line.battery().workedOut()) {
      notes.add(workedOut(line.battery()));
    }
    if (isFittedInHold(line)) {
      notes.add(TravelStatement.FITTED_HOLD.of());
    }
    if (Boolean.TRUE.equals(line.battery().typed().terminals())) {
      notes.add(TravelStatement.TERMINALS.of());
    }
    if (carriage.isUser(line.battery(), line.person())) {
      notes.add(TravelStatement.OWN_WORK.of());
    }
    return notes;
  }

  /** What the rows of air freight or of the road are made of. */
  List<Behind> behindRest(boolean air) {
    return rest(r -> air ? r.way().isAir() : r.way() == Onward.ROAD).stream()
        .map(r -> Behind.of(r.battery(), trip))
        .toList();
  }

  private List<OnwardDesk.Rest> rest(Predicate<OnwardDesk.Rest> belongs) {
    return Stream.of(onward, back)
        .flatMap(
            d ->
                d.gate().paper(belongs).fit().stream()
                    .map(Gate.Judged::item)
                    .sorted(Comparator.comparing(r -> r.battery().id())))
        .toList();
  }

  private int withheld(Predicate<OnwardDesk.Rest> belongs) {
    return Stream.of(onward, back).mapToInt(d -> d.gate().paper(belongs).withheld().size()).sum();
  }

  List<TravelPapers.FreightRow> freight() {
    return rest(r -> r.way().isAir()).stream()
        .map(
            r -> {
              Facts b = r.battery();
              boolean ruled = r.freight() != null;
              List<Finding> notes = new ArrayList<>();
              if (ruled && r.freight().isToConfirm()) {
                notes.add(
                    TravelStatement.FREIGHT_CONFIRM.of(
                        r.freight().instruction(), r.freight().confirm()));
              } else if (!ruled) {
                notes.add(TravelStatement.FREIGHT_CONFIRM.of("SP A123, A199", "all of it"));
              }
              return new TravelPapers.FreightRow(
                  r.direction(),
                  b.name(),
                  r.pieces(),
                  known(b.wattHours()),
                  r.way(),
                  ruled ? r.freight().un() : "",
                  ruled ? r.freight().name() : "",
                  ruled ? r.freight().instruction() : "not restricted (SP A123, A199)",
                  ruled ? r.freight().section() : "",
                  r.kilograms(),
                  r.packages(),
                  r.packageKilograms(),
                  ruled ? known(r.freight().charge()) : null,
                  ruled && r.freight().bindsAt(b.wattHours()),
                  r.charge(),
                  ruled ? r.freight().packaging() : "",
                  ruled ? r.freight().marks() : "",
                  ruled ? r.freight().labels() : "",
                  notes);
            })
        .toList();
  }

  List<TravelPapers.RoadRow> road() {
    return rest(r -> r.way() == Onward.ROAD).stream()
        .map(
            r -> {
              Facts b = r.battery();
              boolean alone = b.packed() == Packing.ALONE;
              List<Finding> notes = new ArrayList<>();
              if (r.road() == null || r.road().confirm()) {
                notes.add(TravelStatement.ROAD_CONFIRM.of());
              }
              String un = "";
              String name = "";
              if (r.road() != null) {
                un = alone ? r.road().alone() : r.road().inEquipment();
                name = alone ? r.road().nameAlone() : r.road().nameInEquipment();
              }
              return new TravelPapers.RoadRow(
                  r.direction(),
                  b.name(),
                  r.pieces(),
                  known(b.wattHours()),
                  un,
                  name,
                  r.isSmallByRoad() ? r.road().provision() : "",
                  r.kilograms(),
                  r.points(),
                  notes);
            })
        .toList();
  }

  List<TravelPapers.PaperRow> papers() {
    int stopped = batteries.paper(b -> true).withheld().size();
    int lines = carriage.gate().paper(l -> true).withheld().size() + stopped;
    int air = withheld(r -> r.way().isAir()) + stopped;
    int byRoad = withheld(r -> r.way() == Onward.ROAD) + stopped;
    List<TravelPapers.FreightRow> freight = freight();
    List<TravelPapers.RoadRow> road = road();
    int types = (int) checkIn().stream().filter(r -> r != null && r.type() != null).count();
    return List.of(
        paper(types, lines, baggageNotes()),
        paper(carried().size(), lines, baggageNotes()),
        paper(freight.size(), air, counted(freight.size(), air, freightNotes())),
        paper(road.size(), byRoad, counted(road.size(), byRoad, roadNotes(road))));
  }

  private Finding[] baggageNotes() {
    return trip.project.contact() == null
        ? new Finding[] {TravelStatement.CABIN_ONLY.of()}
        : new Finding[] {
          TravelStatement.CABIN_ONLY.of(), TravelStatement.CONTACT.of(trip.project.contact())
        };
  }

  private Finding[] freightNotes() {
    return trip.project.contact() == null
        ? new Finding[] {TravelStatement.FREIGHT_DATA.of()}
        : new Finding[] {
          TravelStatement.FREIGHT_DATA.of(), TravelStatement.CONTACT.of(trip.project.contact())
        };
  }

  private Finding[] roadNotes(List<TravelPapers.RoadRow> rows) {
    List<Finding> notes = new ArrayList<>();
    double points =
        rows.stream()
            .filter(r -> r.direction() == TravelPapers.Direction.OUT && r.points() != null)
            .mapToDouble(TravelPapers.RoadRow::points)
            .sorted()
            .sum();
    if (points > 0) {
      notes.add(TravelStatement.POINTS.of(points));
    }
    int damaged = (int) batteries.all().stream().filter(b -> Facts.isDamaged(b.findings())).count();
    if (damaged > 0) {
      notes.add(TravelStatement.DAMAGED_ROAD.of(damaged));
    }
    if (trip.project.transport() != null) {
      notes.add(TravelStatement.TRANSPORT.of(trip.project.transport()));
    }
    if (trip.project.contact() != null) {
      notes.add(TravelStatement.CONTACT.of(trip.project.contact()));
    }
    return notes.toArray(Finding[]::new);
  }

  /** Of freight and road the paper says how many of its rows are withheld. */
  private static Finding[] counted(int rows, int withheld, Finding... notes) {
    Stream<Finding> counts =
        withheld > 0 ? Stream.of(TravelStatement.ROWS.of(rows, rows + withheld)) : Stream.empty();
    return Stream.concat(counts, Stream.of(notes)).toArray(Finding[]::new);
  }

  private TravelPapers.PaperRow paper(int rows, int withheld, Finding... notes) {
    return new TravelPapers.PaperRow(trip.project.issued(), rows, withheld, List.of(notes));
  }
}
