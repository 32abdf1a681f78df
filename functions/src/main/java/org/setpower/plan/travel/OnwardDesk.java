package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.setpower.flight.Packing;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.travel.rules.FreightRule;
import org.setpower.plan.travel.rules.RoadRule;

/** The batteries that nobody carries: by air freight, by road, or not at all. */
final class OnwardDesk {
  private static final double SMALL_BATTERY = 100;

  /** A state of charge below this is a share that was typed without its sign. */
  private static final double LEAST_CHARGE = 0.05;

  private static final double SMALL_CELL = 20;

  /** Share of a charger's watts that gets into batteries; common practice. */
  private static final double CHARGED = 0.85;

  private static final double HOURS_A_DAY = 24;
  private static final double MOST_DAYS = 3650;

  private final Trip trip;
  private final TravelPapers.Direction direction;
  private final Gate<Rest> gate;

  /**
   * What is left of a battery.
   *
   * @param direction out or back
   * @param freight the rule by air; null by road, and where none is held
   * @param road the rule by road; null by air, and where none is held
   */
  record Rest(
      Facts battery,
      int pieces,
      Onward way,
      TravelPapers.Direction direction,
      FreightRule freight,
      RoadRule road) {
    /** The state of charge as typed for this direction; null for a blank. */
    Double charge() {
      return direction == TravelPapers.Direction.OUT
          ? battery.typed().charge()
          : battery.typed().backCharge();
    }

    /** Of how many pieces the state of charge is stated. */
    int stated() {
      Double typed =
          direction == TravelPapers.Direction.OUT
              ? battery.typed().chargePieces()
              : battery.typed().backPieces();
      if (charge() == null) {
        return 0;
      }
      return typed == null ? battery.quantity() == 1 ? 1 : 0 : (int) Math.floor(typed);
    }

    /** The state of charge of all pieces; null where it is not stated of each. */
    Double chargeOfAll() {
      return stated() >= pieces ? charge() : null;
    }

    /** How it travels, and that it is on its way back. */
    String wayWord() {
      return direction == TravelPapers.Direction.OUT
          ? way.word()
          : way.word() + ", " + direction.word();
    }

    /** Net weight of all; null where the weight of one is not known. */
    Double kilograms() {
      Double one = battery.kilograms();
      return one == null ? null : (Double) Facts.dustless(one * pieces);
    }

    /** Highest net weight of a package; null where none is named. */
    Double packageKilograms() {
      if (freight == null) {
        return null;
      }
      double most = way == Onward.PASSENGER_AIRCRAFT ? freight.passengerKg() : freight.cargoKg();
      return Double.isNaN(most) ? null : (Double) most;
    }

    /** Packages of the largest weight; null where they cannot be worked out. */
    Integer packages() {
      Double one = battery.kilograms();
      Double most = packageKilograms();
      if (one == null || most == null || one > most) {
        return null;
      }
      int inOne = (int) Math.floor(Facts.dustless(most / one));
      return -Math.floorDiv(-pieces, Math.max(1, inOne));
    }

    /** Wh to take out of each; null where no state of charge binds. */
    Double discharge() {
      if (freight == null || !freight.bindsAt(battery.wattHours())) {
        return null;
      }
      double now = chargeOfAll() == null ? 1 : chargeOfAll();
      return Facts.dustless(Math.max(0, now - freight.charge()) * battery.wattHours());
    }

    /** Wh of all that they lack of full on arrival. */
    double lacks() {
      // where nobody says of how many it was read, all may have as little
      int read = stated() == 0 && charge() != null ? pieces : Math.min(pieces, stated());
      double lacking = (pieces - read) * (1 - there(1));
      return battery.wattHours() * (lacking + (read == 0 ? 0 : read * (1 - there(charge()))));
    }

    /** The state of charge on arrival. */
    private double there(double now) {
      boolean binds = freight != null && freight.bindsAt(battery.wattHours());
      return binds ? Math.min(now, freight.charge()) : now;
    }

    /** Whether it travels by road as a small battery of small cells. */
    boolean isSmallByRoad() {
      if (road == null) {
        return false;
      }
      double whole = road.cells().equals("lithium metal") ? battery.lithium() : battery.wattHours();
      Double cells = battery.typed().cells();
      return whole <= road.smallBattery()
          && (whole <= road.smallCell()
              || cells != null && Facts.dustless(whole / cells) <= road.smallCell());
    }

    /** Points under ADR 1.1.3.6; null where the weight is not known. */
    Double points() {
      if (road != null && !road.hasPoints()) {
        return null;
      }
      if (road == null || isSmallByRoad()) {
        return road == null ? null : (Double) 0.0;
      }
      return kilograms() == null ? null : (Double) Facts.dustless(kilograms() * road.points());
    }
  }

  /** What goes out. */
  static OnwardDesk out(
      Trip trip, List<Gate.Judged<Facts>> batteries, Carriage carriage, Packings packings) {
    List<Rest> rests = new ArrayList<>();
    for (Gate.Judged<Facts> judged : batteries) {
      Facts battery = judged.item();
      int carried =
          carriage.gate().all().stream()
              .map(Gate.Judged::item)
              .filter(l -> l.battery().row() == battery.row() && !l.decided())
              .mapToInt(Carriage.Line::pieces)
              .sum();
      int left = battery.quantity() - packings.decided(battery) - carried;
      if (judged.fit() && left > 0) {
        rests.add(
            rest(
                trip,
                battery,
                left,
                way(battery, trip.project),
                TravelPapers.Direction.OUT,
                trip.project.handOver()));
      }
    }
    return new OnwardDesk(trip, TravelPapers.Direction.OUT, rests);
  }

  /**
   * What comes back of that which goes out: nothing while its day is not known.
   *
   * @param carried lines whose flights do not bring them back, with another way
   */
  OnwardDesk back(List<Carriage.Line> carried) {
    LocalDate day = trip.project.backOn();
    Map<Integer, Facts> batteries = new LinkedHashMap<>();
    Map<Integer, Map<Onward, Integer>> pieces = new LinkedHashMap<>();
    for (Gate.Judged<Rest> judged : gate.all()) {
      Rest out = judged.item();
      Onward way = trip.project.back() == null ? out.way : trip.project.back();
      if (judged.fit() && out.way != Onward.STAYS && way != Onward.STAYS) {
        batteries.put(out.battery.row(), out.battery);
        pieces
            .computeIfAbsent(out.battery.row(), k -> new EnumMap<>(Onward.class))
            .merge(way, out.pieces, Integer::sum);
      }
    }
    for (Carriage.Line line : carried) {
      batteries.put(line.battery().row(), line.battery());
      pieces
          .computeIfAbsent(line.battery().row(), k -> new EnumMap<>(Onward.class))
          .merge(line.person().typed().back(), line.pieces(), Integer::sum);
    }
    List<Rest> rests = new ArrayList<>();
    if (day != null) {
      pieces.forEach(
          (row, ways) ->
              ways.forEach(
                  (way, n) ->
                      rests.add(
                          rest(
                              trip,
                              batteries.get(row),
                              n,
                              way,
                              TravelPapers.Direction.BACK,
                              day))));
    }
    return new OnwardDesk(trip, TravelPapers.Direction.BACK, rests);
  }

  /** Pieces that go out by freight or road. */
  int away() {
    return gate.paper(r -> r.way != Onward.STAYS).fit().stream()
        .mapToInt(r -> r.item().pieces)
        .sum();
  }

  private OnwardDesk(Trip trip, TravelPapers.Direction direction, List<Rest> rests) {
    this.trip = trip;
    this.direction = direction;
    double kilograms = roadKilograms(rests);
    List<Gate.Candidate<Rest>> candidates = new ArrayList<>();
    for (Rest r : rests) {
      String name = r.battery.id() + " / " + r.way;
      candidates.add(
          new Gate.Candidate<>(candidates.size() + 1, r, name, findings(r, kilograms), false));
    }
    gate = new Gate<>(candidates, trip.stops());
  }

  /** Wh that those on their way lack of full on arrival. */
  double toCharge() {
    double[] each =
        gate.paper(r -> r.way != Onward.STAYS).fit().stream()
            .map(Gate.Judged::item)
            .filter(r -> !Double.isNaN(r.battery.wattHours()))
            .mapToDouble(Rest::lacks)
            .sorted()
            .toArray();
    double sum = 0;
    for (double one : each) {
      sum += one;
    }
    return Facts.dustless(sum);
  }

  /** Hours of charging at the destination; null where the chargers are not known. */
  Double chargeHours() {
    Double watts = trip.project.chargers();
    return watts == null ? null : (Double) Facts.dustless(toCharge() / (CHARGED * watts));
  }

  /** The last day to hand over; null where it cannot be worked out. */
  LocalDate handOverBy() {
    if (trip.project.needed() == null || trip.project.transit() == null || away() == 0) {
      return null;
    }
    double hours = chargeHours() == null ? 0 : chargeHours();
    double days = Math.min(MOST_DAYS, trip.project.transit() + hours / HOURS_A_DAY);
    return trip.project.needed().minusDays((long) Math.ceil(Facts.dustless(days)));
  }

  /** The rest with its verdicts. */
  Gate<Rest> gate() {
    return gate;
  }

  /** How a battery travels that nobody carries. */
  static Onward way(Facts battery, TravelInputs.Project project) {
    return Stream.of(battery.typed().by(), battery.typed().rest(), project.rest())
        .flatMap(Stream::ofNullable)
        .findFirst()
        .orElse(Onward.ROAD);
  }

  private static Rest rest(
      Trip trip,
      Facts battery,
      int pieces,
      Onward way,
      TravelPapers.Direction direction,
      LocalDate day) {
    FreightRule freight = null;
    RoadRule road = null;
    if (way.isAir() && day != null) {
      freight = freight(battery, day).orElse(null);
    } else if (way == Onward.ROAD) {
      RoadBook book = trip.project.roadRules() == null ? RoadBook.ADR : trip.project.roadRules();
      road =
          RoadRule.of(book.word(), cells(battery), roadDay(trip, day).orElse(LocalDate.MAX))
              .orElse(null);
    }
    return new Rest(battery, pieces, way, direction, freight, road);
  }

  /** The day by whose rules it goes by road: that of issue where no other is typed. */
  private static Optional<LocalDate> roadDay(Trip trip, LocalDate day) {
    return Optional.ofNullable(day == null ? trip.project.issued() : day);
  }

  private static Optional<FreightRule> freight(Facts battery, LocalDate day) {
    if (FreightRule.edition(day).isEmpty()) {
      return Optional.empty();
    }
    return FreightRule.of(cells(battery), battery.packed(), isSmall(battery), day);
  }

  private static String cells(Facts battery) {
    return battery.chemistry().isLithiumIon()
        ? TravelChemistry.LI_ION.word()
        : battery.chemistry().word();
  }

  /** Whether it is a small battery of small cells as air freight knows it. */
  private static boolean isSmall(Facts battery) {
    Double cells = battery.typed().cells();
    if (battery.chemistry() == TravelChemistry.LITHIUM_METAL) {
      double grams = battery.lithium();
      return grams <= 2 && (grams <= 1 || cells != null && Facts.dustless(grams / cells) <= 1);
    }
    double energy = battery.wattHours();
    return battery.chemistry().isLithiumIon()
        && energy <= SMALL_BATTERY
        && (energy <= SMALL_CELL || cells != null && Facts.dustless(energy / cells) <= SMALL_CELL);
  }

  /** Dry batteries are no dangerous goods when their terminals are covered. */
  static boolean isUnrestricted(Facts battery) {
    return battery.chemistry().isDry();
  }

  private static double roadKilograms(List<Rest> rests) {
    double[] each =
        rests.stream()
            .filter(r -> r.way == Onward.ROAD && r.road != null && r.road.hasPoints())
            .filter(r -> !r.isSmallByRoad())
            .filter(r -> r.kilograms() != null)
            .mapToDouble(Rest::kilograms)
            .sorted()
            .toArray();
    double sum = 0;
    for (double one : each) {
      sum += one;
    }
    return Facts.dustless(sum);
  }

  private List<Finding> findings(Rest rest, double roadKilograms) {
    List<Finding> findings = new ArrayList<>();
    if (rest.way == Onward.STAYS || isUnrestricted(rest.battery)) {
      return findings;
    }
    LocalDate first = trip.project.handOver();
    LocalDate last = trip.project.backOn();
    boolean back = direction == TravelPapers.Direction.BACK;
    if (back && first != null && last.isBefore(first)) {
      findings.add(Finding.of(TravelFinding.BACK_EARLY, last, first));
    }
    if (rest.battery.isLithium() && rest.battery.typed().un383() == null) {
      findings.add(Finding.of(TravelFinding.FREIGHT_NO_SUMMARY));
    }
    if (rest.battery.kilograms() == null) {
      findings.add(Finding.of(TravelFinding.FREIGHT_NO_WEIGHT));
    }
    if (rest.way == Onward.ROAD) {
      road(rest, roadKilograms, findings);
    } else {
      air(rest, findings);
    }
    return findings;
  }

  private void air(Rest rest, List<Finding> findings) {
    boolean out = direction == TravelPapers.Direction.OUT;
    LocalDate day = out ? trip.project.handOver() : trip.project.backOn();
    if (trip.project.contact() == null) {
      findings.add(Finding.of(TravelFinding.FREIGHT_NO_CONTACT));
    }
    if (day == null) {
      findings.add(Finding.of(TravelFinding.FREIGHT_NO_DATE));
    } else if (FreightRule.edition(day).isEmpty()) {
      findings.add(Finding.of(TravelFinding.FREIGHT_PAST, FreightRule.lastDay()));
    } else if (rest.freight == null) {
      findings.add(
          Finding.of(TravelFinding.FREIGHT_NO_RULE, Phrase.of(rest.battery.chemistry().word())));
    } else {
      rule(rest, findings);
    }
    boolean forbidden =
        rest.way == Onward.PASSENGER_AIRCRAFT
            && rest.battery.isLithium()
            && rest.battery.packed() == Packing.ALONE;
    if (forbidden) {
      findings.add(Finding.of(TravelFinding.FREIGHT_PASSENGER));
    }
  }

  private static void rule(Rest rest, List<Finding> findings) {
    Double one = rest.battery.kilograms();
    Double most = rest.packageKilograms();
    if (one != null && most != null && one > most) {
      findings.add(Finding.of(TravelFinding.FREIGHT_TOO_HEAVY, one, most));
    }
    Double charge = rest.charge();
    double limit = rest.freight.charge();
    if (charge != null && Facts.dustless(charge) < LEAST_CHARGE) {
      findings.add(Finding.of(TravelFinding.FREIGHT_CHARGE_LOW, charge, LEAST_CHARGE));
    }
    if (rest.freight.bindsAt(rest.battery.wattHours())) {
      if (charge == null) {
        findings.add(
            Finding.of(
                rest.direction == TravelPapers.Direction.OUT
                    ? TravelFinding.FREIGHT_CHARGE_BLANK
                    : TravelFinding.FREIGHT_BACK_BLANK,
                limit,
                rest.discharge()));
      } else if (Facts.dustless(charge) > limit) {
        double out = Facts.dustless((charge - limit) * rest.battery.wattHours());
        findings.add(Finding.of(TravelFinding.FREIGHT_CHARGE, charge, limit, out));
      } else if (rest.stated() < rest.pieces) {
        int left = rest.pieces - rest.stated();
        findings.add(
            Finding.of(
                TravelFinding.FREIGHT_CHARGE_PIECES,
                rest.stated(),
                rest.pieces,
                charge,
                left,
                rest.discharge()));
      } else if (rest.stated() > rest.battery.quantity()) {
        findings.add(
            Finding.of(TravelFinding.FREIGHT_CHARGE_MANY, rest.stated(), rest.battery.quantity()));
      }
    } else if (!Double.isNaN(limit)
        && (rest.chargeOfAll() == null || Facts.dustless(charge) > limit)) {
      findings.add(Finding.of(TravelFinding.FREIGHT_RECOMMENDED, limit));
    }
    cells(rest, SMALL_BATTERY, findings);
    sets(rest, findings);
    if (rest.freight.isToConfirm()) {
      findings.add(
          Finding.of(
              TravelFinding.FREIGHT_CONFIRM,
              rest.freight.instruction(),
              Phrase.of(rest.freight.confirm())));
    }
  }

  /** With equipment go what it takes at a time and so many sets more. */
  private static void sets(Rest rest, List<Finding> findings) {
    if (Double.isNaN(rest.freight.spareSets())) {
      return;
    }
    Double inUse = rest.battery.typed().inUse();
    if (inUse == null) {
      findings.add(Finding.of(TravelFinding.FREIGHT_NO_SETS));
    } else if (rest.pieces > rest.freight.withEquipment(inUse)) {
      int most = rest.freight.withEquipment(inUse);
      findings.add(Finding.of(TravelFinding.FREIGHT_SETS, rest.pieces, most));
    }
  }

  private static void cells(Rest rest, double small, List<Finding> findings) {
    boolean decides =
        rest.battery.chemistry().isLithiumIon()
            && rest.battery.wattHours() > SMALL_CELL
            && rest.battery.wattHours() <= small;
    if (decides && rest.battery.typed().cells() == null) {
      findings.add(Finding.of(TravelFinding.FREIGHT_NO_CELLS));
    }
  }

  private void road(Rest rest, double kilograms, List<Finding> findings) {
    if (rest.road == null) {
      findings.add(
          Finding.of(TravelFinding.ROAD_NO_RULE, Phrase.of(rest.battery.chemistry().word())));
      return;
    }
    LocalDate day =
        direction == TravelPapers.Direction.OUT ? trip.project.handOver() : trip.project.backOn();
    if (roadDay(trip, day).filter(d -> d.isAfter(rest.road.validTo())).isPresent()) {
      findings.add(
          trip.project.transport() == null
              ? Finding.of(TravelFinding.ROAD_PAST, rest.road.validTo())
              : Finding.of(
                  TravelFinding.ROAD_PAST_ANSWERED, rest.road.validTo(), trip.project.transport()));
    }
    cells(rest, rest.road.smallBattery(), findings);
    if (rest.road.confirm()) {
      findings.add(Finding.of(TravelFinding.ROAD_CONFIRM));
    }
    if (!rest.road.hasPoints()) {
      if (!rest.isSmallByRoad()) {
        findings.add(
            trip.project.transport() == null
                ? Finding.of(TravelFinding.ROAD_REGULATED)
                : Finding.of(TravelFinding.ROAD_REGULATED_ANSWERED, trip.project.transport()));
      }
      return;
    }
    double most = Math.floor(rest.road.maxPoints() / rest.road.points());
    if (kilograms > most && !rest.isSmallByRoad()) {
      findings.add(
          trip.project.transport() == null
              ? Finding.of(TravelFinding.ROAD_OVER, kilograms, most)
              : Finding.of(
                  TravelFinding.ROAD_OVER_ANSWERED, kilograms, most, trip.project.transport()));
    }
  }
}
