package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.flight.CarriageMode;
import org.setpower.flight.Packing;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
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
                String.valueOf((char) ('A' + carrier(leg))),
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
        if (before != null && carrier(before) != carrier(leg)) {
          rows.add(
              new TravelPapers.CheckInRow(
                  ResultTable.NEW_PAGE, null, null, null, null, null, null, null, null, List.of()));
          behind.add(null);
        } else {
          separate(rows, behind);
        }
        boolean first = before == null;
        boolean page = first || carrier(before) != carrier(leg);
        for (TravelPapers.CheckInRow head : heads(leg, page, !first)) {
          rows.add(head);
          behind.add(Behind.of(List.of(), leg));
        }
        before = leg;
      }
      rows.add(checkIn(leg, group.getValue()));
      behind.add(Behind.of(group.getValue(), leg));
    }
    return rows;
  }

  /** The place of a flight's carrier: each gets a page of its own. */
  private int carrier(Trip.Leg leg) {
    return trip.legs.stream()
        .filter(l -> Identity.of(l.carrier()).equals(Identity.of(leg.carrier())))
        .mapToInt(trip::order)
        .min()
        .orElse(trip.order(leg));
  }

  /** A blank row between flights and between cards. */
  private static void separate(List<?> rows, List<Behind> behind) {
    if (!rows.isEmpty()) {
      rows.add(null);
      behind.add(null);
    }
  }

  /**
   * The rows above the types of a flight.
   *
   * @param page whether it begins the page of its carrier
   * @param later whether this is not the first page, which has the head of the sheet
   */
  private List<TravelPapers.CheckInRow> heads(Trip.Leg leg, boolean page, boolean later) {
    List<TravelPapers.CheckInRow> rows = new ArrayList<>();
    if (page) {
      List<Finding> notes = new ArrayList<>();
      notes.add(TravelStatement.DESK.of(leg.carrier()));
      if (later) {
        notes.addAll(alone());
      }
      rows.add(head(leg, null, notes));
      if (later) { // rows of their own: on the screen one has room for four lines
        rows.add(head(leg, null, List.of(TravelStatement.CABIN_ONLY.of())));
        rows.add(
            head(
                leg, null, List.of(TravelStatement.HOT_GROUND.of(), TravelStatement.DAMAGED.of())));
      }
    }
    rows.add(head(leg, null, flight(leg)));
    List<Finding> together = new ArrayList<>();
    together.add(TravelStatement.TOGETHER.of(together(leg)));
    if (leg.devices() != CabinEdition.NONE) {
      together.add(TravelStatement.TOGETHER_DEVICES.of(leg.devices()));
    }
    rows.add(head(leg, null, together));
    carried().stream()
        .map(Carriage.Line::person)
        .filter(p -> p.legs().contains(leg))
        .distinct()
        .sorted(Comparator.comparing(Trip.Person::id))
        .forEach(
            p ->
                rows.add(
                    head(
                        leg,
                        p.name(),
                        List.of(
                            TravelStatement.COUNTED_OWN.of(
                                spares(p, leg), large(p, leg), banks(p), devices(p))))));
    return rows;
  }

  /** What a person may take on a flight; over the small limit what its carrier has answered. */
  private Object[] together(Trip.Leg leg) {
    Object[] most = leg.used().toArray();
    carried().stream()
        .filter(l -> l.person().legs().contains(leg))
        .filter(l -> PersonLimits.isLarge(l.battery(), leg.edition()))
        .map(l -> carriage.large(l.person(), leg))
        .max(Comparator.naturalOrder())
        .ifPresent(answered -> most[1] = Integer.toString(answered));
    return most;
  }

  private static TravelPapers.CheckInRow head(Trip.Leg leg, String traveller, List<Finding> notes) {
    return new TravelPapers.CheckInRow(
        leg.name(), null, null, null, null, null, null, null, traveller, notes);
  }

  /** Date, carrier, route and rules of a flight. */
  private List<Finding> flight(Trip.Leg leg) {
    List<Finding> notes = new ArrayList<>();
    notes.add(
        route(leg).isEmpty()
            ? TravelStatement.FLIGHT.of(leg.date(), leg.carrier())
            : TravelStatement.FLIGHT_ROUTE.of(leg.date(), leg.carrier(), route(leg)));
    notes.add(
        leg.held()
            ? TravelStatement.RULES.of(leg.edition().title(), leg.edition().validTo())
            : TravelStatement.EDITION_ENDED.of(leg.shown().title(), leg.shown().validTo()));
    if (leg.isWritten()) {
      List<Object> written = new ArrayList<>(leg.written());
      written.add(leg.typed().writtenReference());
      notes.add(new Finding(TravelStatement.WRITTEN, written));
      if (leg.isWrittenMore()) {
        notes.add(new Finding(TravelStatement.USED, List.copyOf(leg.used())));
      }
    }
    return notes;
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
    answers
        .answer(leg, first.person(), battery)
        .ifPresent(c -> answer(List.of(leg), battery, c, notes));
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
    return route(leg.typed().from(), leg.typed().to());
  }

  private static String route(String from, String to) {
    return from == null && to == null
        ? ""
        : (from == null ? "" : from) + "–" + (to == null ? "" : to);
  }

  private static Double known(double value) {
    return Double.isNaN(value) ? null : (Double) value;
  }

  private static void answer(
      List<Trip.Leg> legs, Facts battery, AnswerBook.Covers covers, List<Finding> notes) {
    String flights = legs.stream().map(Trip.Leg::name).collect(Collectors.joining(", "));
    notes.add(
        covers.typed().answered() == null
            ? TravelStatement.ANSWER_UNDATED.of(
                flights, covers.number(), covers.typed().reference())
            : TravelStatement.ANSWER.of(
                flights, covers.number(), covers.typed().reference(), covers.typed().answered()));
    for (Trip.Leg leg : legs) {
      int most = PersonLimits.most(battery, leg);
      if (covers.number() > most) {
        notes.add(TravelStatement.ANSWER_USED.of(leg.name(), most));
      }
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
        for (Trip.Leg leg : line.person().legs()) {
          rows.add(card(line.person(), flight(line.person(), leg)));
          behind.add(Behind.of(line.person()));
        }
        before = line.person();
      }
      rows.add(
          new TravelPapers.CardRow(
              line.person().name(),
              line.battery().name(),
              amount(line.battery(), line.pieces()),
              line.battery().carried(),
              known(line.battery().wattHours()),
              line.pieces(),
              line.bag(),
              TravelPapers.Words.BOX,
              notes(line)));
      behind.add(Behind.of(List.of(line)));
    }
    if (before != null) {
      cautions(before, rows, behind);
      held(rows, behind);
    }
    return rows;
  }

  /** For who packs by habit: what is held back is on no card, and how many there are is said. */
  private void held(List<TravelPapers.CardRow> rows, List<Behind> behind) {
    int all = batteries.all().stream().mapToInt(b -> b.item().quantity()).sum();
    int carried = carried().stream().mapToInt(Carriage.Line::pieces).sum();
    int left = onward.gate().paper(r -> true).fit().stream().mapToInt(r -> r.item().pieces()).sum();
    if (all > carried + left) {
      separate(rows, behind);
      separate(rows, behind);
      rows.add(
          new TravelPapers.CardRow(
              null,
              null,
              null,
              null,
              null,
              null,
              null,
              null,
              List.of(TravelStatement.HELD.of(all - carried - left))));
      behind.add(null);
    }
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
    rows.add(card(person, notes));
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

  /** Whose a page is that is handed out alone. */
  private List<Finding> alone() {
    List<Finding> notes = new ArrayList<>();
    stamp().ifPresent(notes::add);
    if (trip.project.contact() != null) {
      notes.add(TravelStatement.CONTACT.of(trip.project.contact()));
    }
    return notes;
  }

  private static TravelPapers.CardRow card(Trip.Person person, List<Finding> notes) {
    return new TravelPapers.CardRow(person.name(), null, null, null, null, null, null, null, notes);
  }

  /** Pieces and Wh of one, as they can be read without the heads of columns. */
  private static Phrase amount(Facts battery, int pieces) {
    return Double.isNaN(battery.wattHours())
        ? Phrase.of(TravelPapers.Words.PIECES, pieces)
        : Phrase.of(TravelPapers.Words.PIECES_OF, pieces, battery.wattHours());
  }

  /** The row above the flights of a traveller: whose card it is, and what is one's own. */
  private TravelPapers.CardRow card(Trip.Person person) {
    List<Finding> notes = alone();
    if (person.ownSpares() + person.ownBanks() > 0) {
      notes.add(TravelStatement.OWN.of(person.ownSpares(), person.ownBanks()));
    }
    return card(person, notes);
  }

  /**
   * A flight with what counts together on it, own batteries among it, and how many there may be.
   */
  private List<Finding> flight(Trip.Person person, Trip.Leg leg) {
    List<Finding> notes = new ArrayList<>();
    notes.add(
        route(leg).isEmpty()
            ? TravelStatement.CARD_FLIGHT.of(leg.name(), leg.date(), leg.carrier())
            : TravelStatement.CARD_ROUTE.of(leg.name(), leg.date(), leg.carrier(), route(leg)));
    notes.add(
        leg.spares() == CabinEdition.NONE
            ? TravelStatement.COUNT_SPARES_OPEN.of(spares(person, leg))
            : TravelStatement.COUNT_SPARES.of(spares(person, leg), leg.spares()));
    if (leg.over() != CabinEdition.NONE) {
      notes.add(TravelStatement.COUNT_LARGE.of(large(person, leg), carriage.large(person, leg)));
    }
    if (leg.banks() != CabinEdition.NONE) {
      notes.add(TravelStatement.COUNT_BANKS.of(banks(person), leg.banks()));
    }
    return notes;
  }

  private int spares(Trip.Person person, Trip.Leg leg) {
    int ownBanks = leg.edition().banksAreSpares() ? person.ownBanks() : 0;
    return person.ownSpares()
        + ownBanks
        + pieces(person, b -> PersonLimits.isSpare(b, leg.edition()));
  }

  private int large(Trip.Person person, Trip.Leg leg) {
    return person.ownLarge() + pieces(person, b -> PersonLimits.isLarge(b, leg.edition()));
  }

  private int banks(Trip.Person person) {
    return person.ownBanks() + pieces(person, Facts::isBank);
  }

  private int devices(Trip.Person person) {
    return person.ownDevices() + pieces(person, b -> b.carried() == CarriageMode.IN_EQUIPMENT);
  }

  private int pieces(Trip.Person person, Predicate<Facts> counts) {
    return carried().stream()
        .filter(l -> l.person().row() == person.row() && counts.test(l.battery()))
        .mapToInt(Carriage.Line::pieces)
        .sum();
  }

  private List<Finding> notes(Carriage.Line line) {
    List<Finding> notes = new ArrayList<>();
    Map<AnswerBook.Covers, List<Trip.Leg>> answered = new LinkedHashMap<>();
    for (Trip.Leg leg : line.person().legs()) {
      answers
          .answer(leg, line.person(), line.battery())
          .ifPresent(c -> answered.computeIfAbsent(c, k -> new ArrayList<>()).add(leg));
    }
    answered.forEach((c, legs) -> answer(legs, line.battery(), c, notes));
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

  /** What the rows of air freight or of the road are made of; null for heads. */
  List<Behind> behindRest(boolean air) {
    List<Behind> behind = new ArrayList<>();
    paged(
        air ? r -> r.way().isAir() : r -> r.way() == Onward.ROAD,
        () -> behind.add(null),
        d ->
            day(d, air ? TravelStatement.GROSS : TravelStatement.PACKAGES)
                .forEach(n -> behind.add(null)),
        r -> behind.add(Behind.of(r.battery(), trip)));
    return behind;
  }

  /** Each direction on a page of its own, below its head. */
  private void paged(
      Predicate<OnwardDesk.Rest> belongs,
      Runnable newPage,
      Consumer<TravelPapers.Direction> head,
      Consumer<OnwardDesk.Rest> each) {
    TravelPapers.Direction before = null;
    for (OnwardDesk.Rest rest : rest(belongs)) {
      if (rest.direction() != before) {
        if (before != null) {
          newPage.run();
        }
        before = rest.direction();
        head.accept(before);
      }
      each.accept(rest);
    }
  }

  /** From where to where freight goes; empty where nobody says so. */
  private String way(TravelPapers.Direction direction) {
    boolean out = direction == TravelPapers.Direction.OUT;
    String from = out ? trip.project.freightFrom() : trip.project.freightTo();
    String to = out ? trip.project.freightTo() : trip.project.freightFrom();
    return route(from, to);
  }

  /** The day, and what is weighed and written by hand. */
  private List<Finding> day(TravelPapers.Direction direction, TravelStatement byHand) {
    boolean out = direction == TravelPapers.Direction.OUT;
    LocalDate day = out ? trip.project.handOver() : trip.project.backOn();
    List<Finding> notes = new ArrayList<>();
    if (day != null) {
      notes.add(TravelStatement.HANDED_OVER.of(day));
    }
    notes.add(byHand.of());
    if (byHand == TravelStatement.GROSS && !out) { // a page without the head of the sheet
      notes.add(TravelStatement.FREIGHT_DATA.of());
      notes.addAll(alone());
      notes.add(TravelStatement.HOT_GROUND.of());
      notes.add(TravelStatement.DAMAGED.of());
    }
    return notes;
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
    List<TravelPapers.FreightRow> rows = new ArrayList<>();
    paged(
        r -> r.way().isAir(),
        () -> rows.add(freightHead(null, ResultTable.NEW_PAGE, null)),
        d -> day(d, TravelStatement.GROSS).forEach(n -> rows.add(freightHead(d, way(d), n))),
        r -> rows.add(freight(r)));
    return rows;
  }

  private static TravelPapers.FreightRow freightHead(
      TravelPapers.Direction direction, String way, Finding note) {
    return new TravelPapers.FreightRow(
        direction,
        way,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        note == null ? List.of() : List.of(note));
  }

  private static TravelPapers.FreightRow freight(OnwardDesk.Rest r) {
    Facts b = r.battery();
    boolean ruled = r.freight() != null;
    List<Finding> notes = new ArrayList<>();
    if (ruled && r.freight().isToConfirm()) {
      notes.add(
          TravelStatement.FREIGHT_CONFIRM.of(
              r.freight().instruction(), Phrase.of(r.freight().confirm())));
    } else if (!ruled) {
      notes.add(
          TravelStatement.FREIGHT_CONFIRM.of("SP A123, A199", Phrase.of(TravelPapers.Words.ALL)));
    }
    return new TravelPapers.FreightRow(
        r.direction(),
        b.name(),
        r.pieces(),
        TravelPapers.Words.BOX,
        known(b.wattHours()),
        r.way(),
        ruled ? r.freight().un() : "",
        ruled ? r.freight().name() : "",
        ruled ? r.freight().hazard() : "",
        ruled
            ? Phrase.of(TravelPapers.Words.NAME, r.freight().instruction())
            : Phrase.of(TravelPapers.Words.UNRESTRICTED),
        ruled ? r.freight().section() : "",
        r.kilograms(),
        r.packages(),
        r.packageKilograms(),
        ruled ? known(r.freight().charge()) : null,
        ruled && r.freight().bindsAt(b.wattHours()),
        r.chargeOfAll(),
        ruled ? words(r.freight().packaging()) : null,
        ruled ? words(r.freight().marks()) : null,
        ruled ? words(r.freight().labels()) : null,
        notes);
  }

  /** Words of a rule, in the reader's language; null for none. */
  private static Phrase words(String english) {
    return english.isEmpty() ? null : Phrase.of(english);
  }

  List<TravelPapers.RoadRow> road() {
    List<TravelPapers.RoadRow> rows = new ArrayList<>();
    paged(
        r -> r.way() == Onward.ROAD,
        () -> rows.add(null),
        d -> day(d, TravelStatement.PACKAGES).forEach(n -> rows.add(roadHead(d, way(d), n))),
        r -> rows.add(road(r)));
    return rows;
  }

  private static TravelPapers.RoadRow roadHead(
      TravelPapers.Direction direction, String way, Finding note) {
    return new TravelPapers.RoadRow(
        direction, way, null, null, null, null, null, null, null, null, null, null, List.of(note));
  }

  private static TravelPapers.RoadRow road(OnwardDesk.Rest r) {
    Facts b = r.battery();
    boolean alone = b.packed() == Packing.ALONE;
    boolean full = r.road() != null && !r.isSmallByRoad();
    List<Finding> notes = new ArrayList<>();
    if (r.road() == null || r.road().confirm()) {
      notes.add(TravelStatement.ROAD_CONFIRM.of());
    } else if (full && !r.road().tunnel().isEmpty()) {
      notes.add(TravelStatement.TUNNEL_CONFIRM.of());
    }
    if (r.isSmallByRoad() && r.road().hasPoints()) {
      notes.add(TravelStatement.SP188.of());
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
        TravelPapers.Words.BOX,
        known(b.wattHours()),
        un,
        name,
        full ? r.road().hazard() : "",
        full ? r.road().tunnel() : "",
        r.isSmallByRoad() ? words(r.road().provision()) : null,
        r.kilograms(),
        r.points(),
        notes);
  }

  List<TravelPapers.PaperRow> papers() {
    int stopped = batteries.paper(b -> true).withheld().size();
    int lines = carriage.gate().paper(l -> true).withheld().size() + stopped;
    int air = withheld(r -> r.way().isAir()) + stopped;
    int byRoad = withheld(r -> r.way() == Onward.ROAD) + stopped;
    int freight = rest(r -> r.way().isAir()).size();
    List<TravelPapers.RoadRow> road =
        road().stream().filter(r -> r != null && r.pieces() != null).toList();
    int types = (int) checkIn().stream().filter(r -> r != null && r.type() != null).count();
    return List.of(
        paper(types, lines, baggageNotes()),
        paper(carried().size(), lines, baggageNotes()),
        paper(freight, air, counted(freight, air, freightNotes())),
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
