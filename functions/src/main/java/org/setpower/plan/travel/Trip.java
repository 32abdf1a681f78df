package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.travel.TravelInputs.Flight;
import org.setpower.plan.travel.TravelInputs.Project;
import org.setpower.plan.travel.TravelInputs.Traveller;
import org.setpower.plan.travel.rules.CabinEdition;

/** Settings, flights and travellers, judged. */
final class Trip {
  private static final Project BLANK =
      new Project(
          null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null, null, null, null);

  private static final String ALL = "ALL";

  final Project project;
  final List<Finding> settings;
  final Gate<Leg> flights;
  final Gate<Person> travellers;

  /** By identity, in an order that does not depend on the order of rows. */
  final List<Leg> legs;

  /** Those whose row can be trusted, in an order that does not depend on the order of rows. */
  final List<Person> people;

  private final Map<String, Leg> byName = new LinkedHashMap<>();
  private final Map<Integer, Integer> order = new LinkedHashMap<>();

  /**
   * A flight.
   *
   * @param rules by whose rules it is judged
   * @param edition their limits on its day
   * @param held whether these rules are read and answer for its day
   */
  record Leg(
      int row,
      String id,
      Flight typed,
      TripRules rules,
      CabinEdition edition,
      boolean held,
      List<Finding> findings) {
    String name() {
      return typed.flight() == null ? "#" + row : typed.flight();
    }

    String carrier() {
      return typed.carrier() == null ? "" : typed.carrier();
    }

    LocalDate date() {
      return typed.date();
    }

    /** The edition to name: one that was not read is never named. */
    CabinEdition shown() {
      return edition.read() ? edition : rules.lastRead();
    }

    /** Whether its carrier's limits stand in place of rules that are not held. */
    boolean isWritten() {
      return typed.writtenReference() != null && hasLimits();
    }

    /** Whether a limit of its carrier is typed. */
    boolean hasLimits() {
      return typed.writtenSpares() != null
          || typed.writtenOver() != null
          || typed.writtenBanks() != null
          || typed.writtenDevices() != null;
    }

    /** Whether its carrier writes more than counts. */
    boolean isWrittenMore() {
      return isMore(typed.writtenSpares(), spares())
          || isMore(typed.writtenOver(), over())
          || isMore(typed.writtenBanks(), banks())
          || isMore(typed.writtenDevices(), devices());
    }

    private static boolean isMore(Double written, int used) {
      return written != null && written >= 1 + (double) used;
    }

    /** What its carrier writes: spares, over the small limit, power banks. */
    List<String> written() {
      return Stream.of(typed.writtenSpares(), typed.writtenOver(), typed.writtenBanks())
          .map(w -> w == null ? "—" : Integer.toString((int) Math.floor(w)))
          .toList();
    }

    /** What counts: spares, over the small limit, power banks. */
    List<String> used() {
      return Stream.of(spares(), over(), banks())
          .map(u -> u == CabinEdition.NONE ? "—" : Integer.toString(u))
          .toList();
    }

    int spares() {
      return limit(typed.writtenSpares(), edition.spares(), "spares");
    }

    int over() {
      return limit(typed.writtenOver(), edition.over(), "over");
    }

    int banks() {
      return limit(typed.writtenBanks(), edition.banks(), "banks");
    }

    int devices() {
      return typed.writtenDevices() == null
          ? edition.devices()
          : limit(typed.writtenDevices(), edition.devices(), "devices");
    }

    private int limit(Double written, int rule, String name) {
      if (written == null) {
        return !held && isWritten() ? 0 : rule;
      }
      boolean approved = held && edition.leaves(name) && typed.writtenReference() != null;
      int most = (int) Math.floor(written);
      return approved ? most : Math.min(rule, most);
    }
  }

  /**
   * A traveller.
   *
   * @param cabinKilograms highest weight of batteries; null for no limit
   * @param legs the flights of the traveller
   */
  record Person(
      int row,
      String id,
      Traveller typed,
      Double cabinKilograms,
      List<Leg> legs,
      List<Finding> findings) {
    String name() {
      return typed.traveller() == null ? "#" + row : typed.traveller();
    }

    /** All own spares, those over the small limit among them. */
    int ownSpares() {
      return whole(typed.ownSpares()) + ownLarge();
    }

    int ownLarge() {
      return whole(typed.ownLarge());
    }

    int ownBanks() {
      return whole(typed.ownBanks());
    }

    int ownDevices() {
      return whole(typed.ownDevices());
    }

    private static int whole(Double own) {
      return own == null ? 0 : (int) Math.ceil(own);
    }
  }

  Trip(TravelInputs inputs) {
    InputRow<Project> row = inputs.project().rows().get(0);
    project = row.isBlank() ? BLANK : row.value();
    settings = new ArrayList<>(row.findings());
    List<Leg> all = inputs.flights().filled().map(this::leg).toList();
    legs =
        all.stream()
            .filter(l -> !l.id.isEmpty())
            .sorted(
                Comparator.comparing((Leg l) -> l.date() == null ? LocalDate.MAX : l.date())
                    .thenComparing(Leg::id)
                    .thenComparing(l -> l.typed.toString()))
            .toList();
    for (Leg leg : legs) {
      byName.put(leg.id, leg);
      order.put(leg.row, order.size());
    }
    List<Person> persons = inputs.travellers().filled().map(this::person).toList();
    if (!persons.isEmpty()) {
      all.stream()
          .filter(
              l -> persons.stream().noneMatch(p -> p.legs.stream().anyMatch(o -> o.row == l.row)))
          .forEach(l -> l.findings.add(Finding.of(TravelFinding.FLIGHT_EMPTY)));
    }
    flights =
        new Gate<>(
            all.stream().map(l -> new Gate.Candidate<>(l.row, l, l.id, l.findings, false)).toList(),
            List.of());
    travellers =
        new Gate<>(
            persons.stream()
                .map(p -> new Gate.Candidate<>(p.row, p, p.id, p.findings, false))
                .toList(),
            List.of());
    people =
        persons.stream()
            .filter(p -> travellers.row(p.row).fit())
            .sorted(Comparator.comparing(Person::id))
            .toList();
    if (people.stream().anyMatch(this::isOrderUnknown)) {
      settings.add(Finding.of(TravelFinding.ORDER_UNKNOWN, legs.get(0).name(), legs.get(0).date()));
    }
    if (all.isEmpty()) {
      settings.add(Finding.of(TravelFinding.NO_FLIGHTS));
    }
    if (persons.isEmpty()) {
      settings.add(Finding.of(TravelFinding.NO_TRAVELLERS));
    }
  }

  /** The findings of the settings that stop every row. */
  List<Finding> stops() {
    return settings.stream()
        .filter(f -> f.severity().compareTo(Severity.STOP) >= 0)
        .filter(f -> f.key() != TravelFinding.NO_FLIGHTS && f.key() != TravelFinding.NO_TRAVELLERS)
        .toList();
  }

  private Leg leg(InputRow<Flight> row) {
    Flight typed = row.value();
    TripRules chosen = typed.rules() == null ? project.flightRules() : typed.rules();
    TripRules rules = chosen == null ? TripRules.ICAO : chosen;
    LocalDate day = typed.date() == null ? LocalDate.MAX : typed.date();
    CabinEdition edition = rules.on(day);
    boolean held = edition.answersFor(day);
    List<Finding> findings = new ArrayList<>(row.findings());
    Leg leg =
        new Leg(row.number(), Identity.of(typed.flight()), typed, rules, edition, held, findings);
    if (typed.date() != null && !held) {
      findings.add(notHeld(leg));
    }
    if (typed.date() != null && project.issued() != null && day.isBefore(project.issued())) {
      findings.add(Finding.of(TravelFinding.FLIGHT_PASSED, project.issued()));
    }
    if (leg.hasLimits() && typed.writtenReference() == null) {
      findings.add(Finding.of(TravelFinding.WRITTEN_UNREFERENCED));
    }
    if (leg.isWrittenMore()) {
      List<Object> figures = new ArrayList<>(leg.written());
      figures.addAll(leg.used());
      findings.add(new Finding(TravelFinding.WRITTEN_MORE, figures));
    }
    return leg;
  }

  private static Finding notHeld(Leg leg) {
    CabinEdition edition = leg.edition;
    if (leg.date().isBefore(edition.validFrom())) {
      return Finding.of(TravelFinding.EDITION_BEFORE, edition.title(), edition.validFrom());
    }
    CabinEdition last = leg.shown();
    return leg.isWritten()
        ? Finding.of(
            TravelFinding.EDITION_WRITTEN,
            last.title(),
            last.validTo(),
            leg.typed.writtenReference())
        : Finding.of(TravelFinding.EDITION_PAST, last.title(), last.validTo());
  }

  private Person person(InputRow<Traveller> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    List<Leg> own = new ArrayList<>();
    if (isAll(row.value().flights(), byName.keySet())) {
      own.addAll(legs);
    } else {
      List<String> names = names(row.value().flights());
      if (names.isEmpty()) {
        findings.add(Finding.of(TravelFinding.TRAVELLER_FLIGHT, row.value().flights()));
      }
      for (String name : names) {
        Leg leg = byName.get(Identity.of(name));
        if (leg == null) {
          findings.add(Finding.of(TravelFinding.TRAVELLER_FLIGHT, name));
        } else if (own.stream().noneMatch(o -> o.row == leg.row)) {
          own.add(leg);
        }
      }
    }
    own.sort(Comparator.comparing(this::order));
    Person person =
        new Person(
            row.number(),
            Identity.of(row.value().traveller()),
            row.value(),
            WeightUnit.kilograms(project.weightUnit(), row.value().cabinKg()),
            own,
            findings);
    own.forEach(leg -> owned(person, leg));
    if (person.ownLarge() > 0) {
      findings.add(Finding.of(TravelFinding.OWN_LARGE, person.ownLarge()));
    }
    findings.addAll(new Route(own).findings());
    if (!new Route(own).isBroken()) {
      findings.addAll(dates(row.value().flights(), own));
    }
    return person;
  }

  /** Whether dates contradict the order in which flights are named, or where the trip begins. */
  private List<Finding> dates(String named, List<Leg> own) {
    List<Finding> findings = new ArrayList<>();
    List<Leg> order =
        names(named).stream()
            .map(n -> byName.get(Identity.of(n)))
            .filter(l -> l != null && l.date() != null)
            .toList();
    for (int i = 1; i < order.size(); i++) {
      Leg before = order.get(i - 1);
      Leg leg = order.get(i);
      if (leg.date().isBefore(before.date())) {
        findings.add(
            Finding.of(
                TravelFinding.TRAVELLER_ORDER,
                leg.name(),
                leg.date(),
                before.name(),
                before.date()));
        break;
      }
    }
    new Route(own)
        .startElsewhere(begin())
        .ifPresent(
            l ->
                findings.add(
                    Finding.of(
                        TravelFinding.TRAVELLER_START,
                        l.name(),
                        l.date(),
                        l.typed().from(),
                        project.begins() == null ? project.freightFrom() : project.begins())));
    return findings;
  }

  /** Where the trip begins; empty where nobody says so. */
  private String begin() {
    return Identity.of(project.begins() == null ? project.freightFrom() : project.begins());
  }

  /** Whether nothing says which of the flights of a traveller is the first. */
  private boolean isOrderUnknown(Person person) {
    List<Leg> dated = person.legs.stream().filter(l -> l.date() != null).toList();
    boolean days = dated.stream().map(Leg::date).distinct().count() > 1;
    boolean named = names(person.typed.flights()).size() > 1;
    return days && !named && !new Route(person.legs).isVia(begin());
  }

  /** What a traveller has of one's own may be too much by itself. */
  private static void owned(Person person, Leg leg) {
    int banks = person.ownBanks();
    int spares = person.ownSpares() + (leg.edition.banksAreSpares() ? banks : 0);
    over(person, TravelFinding.OVER_BANKS, banks, leg.banks(), leg);
    over(person, TravelFinding.OVER_LARGE, person.ownLarge(), leg.over(), leg);
    over(person, TravelFinding.OVER_SPARES, spares, leg.spares(), leg);
    over(person, TravelFinding.OVER_DEVICES, person.ownDevices(), leg.devices(), leg);
  }

  private static void over(Person person, TravelFinding key, int pieces, int most, Leg leg) {
    if (pieces > most) {
      person.findings.add(Finding.of(key, pieces, most, leg.name()));
    }
  }

  /** The day of the last flight, where flights are on more than one day; null for none. */
  LocalDate lastOfMore() {
    List<LocalDate> days =
        legs.stream().map(Leg::date).filter(d -> d != null).distinct().sorted().toList();
    return days.size() < 2 ? null : days.get(days.size() - 1);
  }

  /** The place of a flight in the order of the trip. */
  int order(Leg leg) {
    return order.get(leg.row);
  }

  /** The flight of a name; null for none. */
  Leg leg(String name) {
    return byName.get(Identity.of(name));
  }

  /** Whether a cell names everything: blank, or the word all where nothing has that name. */
  static boolean isAll(String cell, Set<String> names) {
    return cell == null || Identity.of(cell).equals(ALL) && !names.contains(ALL);
  }

  /** Names in one cell, with ; or , between them. */
  static List<String> names(String cell) {
    return cell == null
        ? List.of()
        : Arrays.stream(cell.split("[;,]"))
            .map(String::strip)
            .filter(n -> !Identity.of(n).isEmpty())
            .toList();
  }
}
