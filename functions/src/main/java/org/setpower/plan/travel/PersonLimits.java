package org.setpower.plan.travel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.setpower.flight.CarriageMode;
import org.setpower.plan.travel.rules.CabinEdition;

/** How many batteries a traveller may take on a flight, by each limit that counts some together. */
final class PersonLimits {
  private final AnswerBook answers;
  private final List<Facts> batteries;
  private final Map<Integer, List<Limit>> byPerson = new HashMap<>();

  /** What a limit counts. */
  enum Kind {
    SPARES(TravelFinding.OVER_SPARES),
    LARGE(TravelFinding.OVER_LARGE),
    BANKS(TravelFinding.OVER_BANKS),
    DEVICES(TravelFinding.OVER_DEVICES),
    LEAD(TravelFinding.OVER_LEAD),
    /** One type, as the carrier answered. */
    ANSWER(TravelFinding.OVER_ANSWER);

    final TravelFinding finding;

    Kind(TravelFinding finding) {
      this.finding = finding;
    }
  }

  /**
   * A limit.
   *
   * @param rows rows of Batteries that count together
   * @param own pieces of one's own that count too
   */
  record Limit(Trip.Leg leg, Kind kind, Set<Integer> rows, int own, int most) {}

  PersonLimits(AnswerBook answers, List<Facts> batteries) {
    this.answers = answers;
    this.batteries = batteries;
  }

  /** The limits of a traveller, over all flights. */
  List<Limit> of(Trip.Person person) {
    return byPerson.computeIfAbsent(person.row(), row -> found(person));
  }

  /** The same, and what carriers may take for power banks counted as such. */
  List<Limit> cautious(Trip.Person person) {
    List<Limit> limits = new ArrayList<>(of(person));
    if (batteries.stream().anyMatch(b -> b.mayBeBank() && !b.isBank())) {
      for (Trip.Leg leg : person.legs()) {
        add(limits, leg, Kind.BANKS, Facts::mayBeBank, person.ownBanks(), leg.banks());
      }
    }
    return limits;
  }

  private List<Limit> found(Trip.Person person) {
    List<Limit> limits = new ArrayList<>();
    for (Trip.Leg leg : person.legs()) {
      CabinEdition edition = leg.edition();
      boolean together = edition.banksAreSpares();
      int ownBanks = together ? person.ownBanks() : 0;
      add(
          limits,
          leg,
          Kind.SPARES,
          b -> isSpare(b, edition),
          person.ownSpares() + ownBanks,
          leg.spares());
      add(limits, leg, Kind.LARGE, b -> isLarge(b, edition), person.ownLarge(), leg.over());
      add(limits, leg, Kind.BANKS, Facts::isBank, person.ownBanks(), leg.banks());
      add(
          limits,
          leg,
          Kind.DEVICES,
          b -> b.isLithium() && b.carried() == CarriageMode.IN_EQUIPMENT,
          person.ownDevices(),
          leg.devices());
      add(
          limits,
          leg,
          Kind.LEAD,
          b -> b.chemistry() == TravelChemistry.LEAD_SEALED && b.isSpare(),
          0,
          edition.leadSpares());
      answered(person, leg).forEach((covers, rows) -> limits.add(answer(leg, covers, rows)));
    }
    return limits;
  }

  private static Limit answer(Trip.Leg leg, AnswerBook.Covers covers, Set<Integer> rows) {
    return new Limit(leg, Kind.ANSWER, rows, 0, covers.number());
  }

  private Map<AnswerBook.Covers, Set<Integer>> answered(Trip.Person person, Trip.Leg leg) {
    Map<AnswerBook.Covers, Set<Integer>> rows = new LinkedHashMap<>();
    for (Facts battery : batteries) {
      answers
          .answer(leg, person, battery)
          .ifPresent(c -> rows.computeIfAbsent(c, k -> new TreeSet<>()).add(battery.row()));
    }
    return rows;
  }

  private void add(
      List<Limit> limits, Trip.Leg leg, Kind kind, Predicate<Facts> counts, int own, int most) {
    Set<Integer> rows =
        batteries.stream().filter(counts).map(Facts::row).collect(Collectors.toSet());
    if (most != CabinEdition.NONE && !(rows.isEmpty() && own == 0)) {
      limits.add(new Limit(leg, kind, rows, own, most));
    }
  }

  /**
   * How many spares over the small limit a person may take on a flight: the rules' figure, or what
   * its carrier has answered for all types together where that is less.
   */
  int large(Trip.Person person, Trip.Leg leg) {
    Set<Integer> large =
        batteries.stream()
            .filter(b -> isLarge(b, leg.edition()))
            .map(Facts::row)
            .collect(Collectors.toSet());
    long answered =
        answered(person, leg).entrySet().stream()
            .filter(a -> a.getValue().stream().anyMatch(large::contains))
            .mapToLong(a -> a.getKey().number())
            .sum();
    return (int) Math.min(leg.over(), answered + person.ownLarge());
  }

  /** How many of a battery a person may take on a flight at most, answers apart. */
  static int most(Facts battery, Trip.Leg leg) {
    CabinEdition edition = leg.edition();
    int most = CabinEdition.NONE;
    if (isSpare(battery, edition)) {
      most = Math.min(most, leg.spares());
    }
    if (isLarge(battery, edition)) {
      most = Math.min(most, leg.over());
    }
    if (battery.isBank()) {
      most = Math.min(most, leg.banks());
    }
    if (battery.isLithium() && battery.carried() == CarriageMode.IN_EQUIPMENT) {
      most = Math.min(most, leg.devices());
    }
    if (battery.chemistry() == TravelChemistry.LEAD_SEALED && battery.isSpare()) {
      most = Math.min(most, edition.leadSpares());
    }
    return most;
  }

  static boolean isSpare(Facts battery, CabinEdition edition) {
    boolean counted =
        battery.isLithium()
            || battery.chemistry() == TravelChemistry.LEAD_SEALED
            || battery.chemistry().isDry() && edition.nickelAreSpares();
    return counted && (battery.isSpare() || battery.isBank() && edition.banksAreSpares());
  }

  static boolean isLarge(Facts battery, CabinEdition edition) {
    return battery.isOver(edition)
        && (battery.isSpare() || battery.isBank() && edition.banksAreSpares());
  }
}
