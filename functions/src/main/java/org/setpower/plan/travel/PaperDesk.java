package org.setpower.plan.travel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
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

  PaperDesk(
      Trip trip, AnswerBook answers, Gate<Facts> batteries, Carriage carriage, OnwardDesk onward) {
    this.trip = trip;
    this.answers = answers;
    this.batteries = batteries;
    this.carriage = carriage;
    this.onward = onward;
  }

  private List<Carriage.Line> carried() {
    return carriage.gate().paper(l -> true).fit().stream().map(Gate.Judged::item).toList();
  }

  List<TravelPapers.CheckInRow> checkIn() {
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
    groups.forEach((key, lines) -> rows.add(checkIn(legs.get(key), lines)));
    return rows;
  }

  private TravelPapers.CheckInRow checkIn(Trip.Leg leg, List<Carriage.Line> lines) {
    Carriage.Line first =
        lines.stream()
            .min(
                Comparator.comparing((Carriage.Line l) -> l.battery().typeName())
                    .thenComparing(l -> l.person().id()))
            .orElseThrow();
    Facts battery = first.battery();
    TreeSet<String> people = new TreeSet<>();
    lines.forEach(l -> people.add(l.person().id()));
    Integer most =
        lines.stream()
            .flatMap(l -> carriage.most(l.battery(), l.person(), leg).stream())
            .min(Comparator.naturalOrder())
            .orElse(null);
    List<Finding> notes = new ArrayList<>();
    answers.answer(leg, first.person(), battery).ifPresent(c -> notes.add(answer(leg, c)));
    if (!leg.held()) {
      notes.add(TravelStatement.EDITION_ENDED.of(leg.shown().name(), leg.shown().validTo()));
    }
    if (leg.isWritten()) {
      notes.add(
          TravelStatement.WRITTEN.of(
              leg.name(),
              count(leg.spares()),
              count(leg.over()),
              count(leg.banks()),
              leg.typed().writtenReference()));
    }
    if (battery.workedOut()) {
      notes.add(workedOut(battery));
    }
    if (battery.isToConfirm(leg.edition()) || !leg.held()) {
      notes.add(TravelStatement.CONFIRM.of());
    }
    return new TravelPapers.CheckInRow(
        leg.name(),
        leg.date(),
        leg.carrier(),
        route(leg),
        leg.held() ? leg.edition().name() : "",
        battery.typeName(),
        battery.chemistry(),
        battery.carried(),
        known(battery.wattHours()),
        first.bag(),
        lines.stream().mapToInt(Carriage.Line::pieces).sum(),
        people.size(),
        battery.classUnder(leg.edition()),
        most,
        notes);
  }

  private static String count(int most) {
    return most == CabinEdition.NONE ? "—" : Integer.toString(most);
  }

  private static String route(Trip.Leg leg) {
    String from = leg.typed().from() == null ? "" : leg.typed().from();
    String to = leg.typed().to() == null ? "" : leg.typed().to();
    return from.isEmpty() && to.isEmpty() ? "" : from + "–" + to;
  }

  private static Double known(double value) {
    return Double.isNaN(value) ? null : (Double) value;
  }

  private static Finding answer(Trip.Leg leg, AnswerBook.Covers covers) {
    return covers.typed().answered() == null
        ? TravelStatement.ANSWER_UNDATED.of(leg.name(), covers.number(), covers.typed().reference())
        : TravelStatement.ANSWER.of(
            leg.name(), covers.number(), covers.typed().reference(), covers.typed().answered());
  }

  private static Finding workedOut(Facts battery) {
    return TravelStatement.WORKED_OUT.of(
        battery.wattHours(), battery.typed().volts(), battery.typed().ampHours());
  }

  List<TravelPapers.CardRow> cards() {
    return carried().stream()
        .sorted(
            Comparator.comparing((Carriage.Line l) -> l.person().id())
                .thenComparing(l -> l.battery().id()))
        .map(
            l ->
                new TravelPapers.CardRow(
                    l.person().name(),
                    l.battery().name(),
                    l.battery().carried(),
                    known(l.battery().wattHours()),
                    l.pieces(),
                    l.bag(),
                    notes(l)))
        .toList();
  }

  private List<Finding> notes(Carriage.Line line) {
    List<Finding> notes = new ArrayList<>();
    for (Trip.Leg leg : line.person().legs()) {
      answers.answer(leg, line.person(), line.battery()).ifPresent(c -> notes.add(answer(leg, c)));
    }
    if (line.battery().workedOut()) {
      notes.add(workedOut(line.battery()));
    }
    if (Boolean.TRUE.equals(line.battery().typed().terminals())) {
      notes.add(TravelStatement.TERMINALS.of());
    }
    if (carriage.isUser(line.battery(), line.person())) {
      notes.add(TravelStatement.OWN_WORK.of());
    }
    if (line.person().ownSpares() + line.person().ownBanks() > 0) {
      notes.add(TravelStatement.OWN.of(line.person().ownSpares(), line.person().ownBanks()));
    }
    return notes;
  }

  private List<OnwardDesk.Rest> rest(Predicate<OnwardDesk.Rest> belongs) {
    return onward.gate().paper(belongs).fit().stream()
        .map(Gate.Judged::item)
        .sorted(Comparator.comparing(r -> r.battery().id()))
        .toList();
  }

  List<TravelPapers.FreightRow> freight() {
    return rest(r -> r.way().isAir()).stream()
        .map(
            r -> {
              Facts b = r.battery();
              boolean ruled = r.freight() != null;
              List<Finding> notes = new ArrayList<>();
              if (!ruled || r.freight().confirm()) {
                notes.add(TravelStatement.CONFIRM.of());
              }
              return new TravelPapers.FreightRow(
                  b.name(),
                  r.pieces(),
                  known(b.wattHours()),
                  r.way(),
                  ruled ? r.freight().un() : "",
                  ruled ? r.freight().instruction() : "not restricted (SP A123, A199)",
                  ruled ? r.freight().section() : "",
                  r.kilograms(),
                  r.packages(),
                  r.packageKilograms(),
                  ruled ? known(r.freight().charge()) : null,
                  ruled && r.freight().bindsAt(b.wattHours()),
                  b.typed().charge(),
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
                notes.add(TravelStatement.CONFIRM.of());
              }
              String un = "";
              if (r.road() != null) {
                un = alone ? r.road().alone() : r.road().inEquipment();
              }
              return new TravelPapers.RoadRow(
                  b.name(),
                  r.pieces(),
                  known(b.wattHours()),
                  un,
                  r.isSmallByRoad() ? "SP 188" : "",
                  r.kilograms(),
                  r.points(),
                  notes);
            })
        .toList();
  }

  List<TravelPapers.PaperRow> papers() {
    int stopped = batteries.paper(b -> true).withheld().size();
    int lines = carriage.gate().paper(l -> true).withheld().size() + stopped;
    int air = onward.gate().paper(r -> r.way().isAir()).withheld().size() + stopped;
    int byRoad = onward.gate().paper(r -> r.way() == Onward.ROAD).withheld().size() + stopped;
    List<TravelPapers.FreightRow> freight = freight();
    List<TravelPapers.RoadRow> road = road();
    return List.of(
        paper("Check-in sheet", checkIn().size(), lines, baggageNotes()),
        paper("Passenger cards", cards().size(), lines, baggageNotes()),
        paper("Freight papers", freight.size(), air, freightNotes()),
        paper("Road paper", road.size(), byRoad, roadNotes(road)));
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
            .filter(r -> r.points() != null)
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

  private TravelPapers.PaperRow paper(String name, int rows, int withheld, Finding... notes) {
    List<Finding> all = new ArrayList<>();
    if (withheld > 0) {
      all.add(TravelStatement.WITHHELD.of(withheld));
    }
    all.addAll(List.of(notes));
    return new TravelPapers.PaperRow(name, trip.project.issued(), rows, withheld, all);
  }
}
