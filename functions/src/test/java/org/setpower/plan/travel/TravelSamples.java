package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.List;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;

/** Trips to begin tests from: the invented production and its kit. */
final class TravelSamples {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private TravelSamples() {}

  /** A date as a cell holds it. */
  static double day(String iso) {
    return LocalDate.parse(iso).toEpochDay() - DAY_ZERO.toEpochDay();
  }

  /** One flight under ICAO rules on a day, one traveller, no battery. */
  static Ranges flight(String date) {
    return flight(date, "ICAO");
  }

  static Ranges flight(String date, String rules) {
    return Ranges.of(TravelPlan.MODEL)
        .row(
            "project", "issued", day(date) - 10, "contact", "unit desk, +00 000", "flightRules", "")
        .row("flights", "flight", "SA 101", "date", day(date), "carrier", "Salt Air")
        .set("flights", 1, "rules", rules)
        .row("travellers", "traveller", "gaffer");
  }

  /** Adds a sound battery. */
  static Ranges add(Ranges ranges, String battery, Object energy, int quantity, Object... more) {
    ranges.row(
        "batteries",
        "battery",
        battery,
        "energy",
        energy,
        "quantity",
        quantity,
        "condition",
        "fine",
        "un383",
        "yes");
    return ranges.set("batteries", ranges.rows("batteries").size(), more);
  }

  /** Adds an answer for the only flight. */
  static Ranges answer(Ranges ranges, String type, Object energy, int number, Object... more) {
    ranges.row(
        "answers",
        "carrier",
        ranges.rows("flights").get(0).get("carrier"),
        "flight",
        ranges.rows("flights").get(0).get("flight"),
        "date",
        ranges.rows("flights").get(0).get("date"),
        "type",
        type,
        "energy",
        energy,
        "number",
        number,
        "reference",
        "mail 17",
        "answered",
        (double) ranges.rows("project").get(0).get("issued") - 1);
    return ranges.set("answers", ranges.rows("answers").size(), more);
  }

  /** Decides a line of the packing. */
  static Ranges decide(Ranges ranges, String battery, String traveller, int pieces) {
    return ranges.row("packing", "battery", battery, "traveller", traveller, "pieces", pieces);
  }

  /**
   * Five of the crew on three flights with 40 batteries: out in two legs by two carriers, back by
   * the first. The year has no rules held, so the carriers' written limits stand in.
   */
  static Ranges scenario() {
    Ranges trip =
        Ranges.of(TravelPlan.MODEL)
            .row("project", "issued", day("2027-01-27"))
            .row("flights", "flight", "SA 101", "date", day("2027-01-29"), "carrier", "Salt Air")
            .row("flights", "flight", "QB 20", "date", day("2027-01-29"), "carrier", "Quay Air")
            .row("flights", "flight", "SA 102", "date", day("2027-02-09"), "carrier", "Salt Air");
    for (int flight = 1; flight <= 3; flight++) {
      trip.set("flights", flight, "writtenSpares", 20, "writtenOver", 2);
      trip.set("flights", flight, "writtenReference", flight == 2 ? "mail 21" : "mail 20");
    }
    for (String role :
        List.of("gaffer", "best boy", "first assistant", "second assistant", "sound")) {
      trip.row("travellers", "traveller", role);
    }
    trip.row("batteries", "battery", "P98", "energy", 98, "quantity", 25, "condition", "fine");
    trip.row("batteries", "battery", "P150", "energy", 150, "quantity", 5, "condition", "fine");
    trip.row("batteries", "battery", "P294", "energy", 294, "quantity", 10, "condition", "fine");
    trip.set("batteries", 3, "kilograms", 2.1, "un383", "yes");
    answered(trip, "Salt Air", "SA 101", "2027-01-29", 2, "mail 20");
    answered(trip, "Quay Air", "QB 20", "2027-01-29", 1, "mail 21");
    answered(trip, "Salt Air", "SA 102", "2027-02-09", 2, "mail 20");
    return trip;
  }

  private static void answered(
      Ranges trip, String carrier, String flight, String date, int number, String reference) {
    trip.row(
        "answers",
        "carrier",
        carrier,
        "flight",
        flight,
        "date",
        day(date),
        "type",
        "P150",
        "energy",
        150,
        "number",
        number,
        "reference",
        reference);
  }

  /** A trip in which every column says something. */
  static Ranges full() {
    Ranges trip = flight("2026-06-01");
    trip.set("project", 1, "rest", "road", "handOver", day("2026-05-28"), "transport", "note 4");
    trip.set("project", 1, "needed", day("2026-06-04"), "transit", 2, "chargers", 500);
    trip.set("project", 1, "weightUnit", "kg", "roadRules", "ADR", "flightRules", "US domestic");
    trip.set("flights", 1, "from", "quay", "to", "pans", "writtenSpares", 8, "writtenOver", 3);
    trip.set("flights", 1, "writtenBanks", 1, "writtenReference", "mail 9");
    trip.row("flights", "flight", "QB 20", "date", day("2026-06-02"), "carrier", "Quay Air");
    trip.set("flights", 2, "rules", "");
    trip.set("project", 1, "freightFrom", "quay", "freightTo", "pans", "confirmed", "mail 30");
    trip.set("flights", 1, "writtenDevices", 12).set("travellers", 1, "ownLarge", 1);
    trip.set("travellers", 1, "back", "road");
    trip.set("travellers", 1, "cabinKg", 4, "ownSpares", 1, "ownBanks", 1, "ownDevices", 2);
    trip.row("travellers", "traveller", "sound", "flights", "SA 101; QB 20");
    add(trip, "P98", 98, 8, "kilograms", 0.75, "priority", 2, "user", "gaffer", "cells", 12);
    add(trip, "P150", 150, 4, "kilograms", 1.1, "priority", 1, "terminals", "yes");
    add(trip, "P294", 294, 3, "kilograms", 2.1, "charge", 0.25, "rest", "cargo aircraft");
    add(trip, "V90", "", 2, "volts", 14.4, "ampHours", 6.2, "outputs", "yes", "kilograms", 0.7);
    add(trip, "cell", "", 4, "chemistry", "lithium metal", "lithium", 1.2, "kilograms", 0.1);
    add(trip, "C-07", 98, 1, "type", "P98", "register", "keep", "kilograms", 0.75);
    add(trip, "cam", 150, 1, "carried", "in equipment", "packed", "with equipment");
    add(trip, "P588", 588, 2, "kilograms", 4.3, "rest", "passenger aircraft", "charge", 1);
    answer(trip, "P150", 150, 3, "travellers", "gaffer; sound", "carried", "spare");
    answer(trip, "P150", 150, 1, "flight", "QB 20", "carrier", "Quay Air");
    trip.set("answers", 2, "date", day("2026-06-02"), "answered", day("2025-01-07"));
    trip.row("packing", "battery", "P98", "traveller", "sound", "pieces", 1, "bag", "cabin");
    trip.row("packing", "battery", "V90", "traveller", "sound", "pieces", 1, "decided", "no");
    return trip;
  }

  /** One of every fault that is not met by chance. */
  static Ranges faults() {
    Ranges trip = flight("2026-06-01", "US domestic");
    trip.set("project", 1, "issued", day("2026-06-05"));
    trip.set("project", 1, "rest", "cargo aircraft", "contact", "");
    trip.row("flights", "flight", "Q1", "date", day("2027-06-02"), "carrier", "Quay Air");
    trip.row("flights", "flight", "Q2", "date", day("2017-06-02"), "carrier", "Quay Air");
    trip.row("flights", "flight", "Q3", "date", day("2027-06-02"), "carrier", "Quay Air");
    trip.set("flights", 4, "writtenSpares", 5, "writtenReference", "mail");
    trip.set("flights", 1, "writtenOver", 1);
    trip.set("travellers", 1, "flights", "SA 101", "cabinKg", 1);
    trip.row("travellers", "traveller", "sound", "flights", "X 1");
    trip.row("travellers", "traveller", "runner", "ownBanks", 9, "ownSpares", 30);
    trip.row("travellers", "traveller", "video", "flights", "Q3");
    trip.row("travellers", "traveller", "grip", "ownDevices", 99, "flights", "Q1");
    add(trip, "P98", 98, 30, "kilograms", 0.7, "outputs", "yes", "user", "nobody");
    add(trip, "P150", 150, 9, "kilograms", 1.0, "terminals", "no");
    add(trip, "P151", 151, 9, "kilograms", 1.0, "volts", 10, "ampHours", 10);
    add(trip, "bank", 74, 9, "carried", "power bank");
    add(trip, "lead", 80, 9, "chemistry", "lead, sealed", "volts", 12);
    add(trip, "lead2", 80, 9, "chemistry", "lead, sealed");
    add(trip, "wet", 80, 9, "chemistry", "lead, wet");
    add(trip, "cell", "", 9, "chemistry", "lithium metal");
    add(trip, "zero", 0, 1);
    add(trip, "none", "", 1);
    add(trip, "no383", 50, 1, "un383", "no");
    add(trip, "old", 50, 1, "condition", "wet");
    add(trip, "back", 50, 1, "condition", "recalled");
    add(trip, "dirty", 50, 1, "condition", "contacts");
    add(trip, "serial", 50, 2, "register", "quarantine");
    add(trip, "untested", 50, 1, "register", "not tested");
    add(trip, "heavy", 8000, 1, "kilograms", 80, "packed", "with equipment");
    trip.set("batteries", 17, "charge", 0.2, "inUse", 1);
    add(trip, "cam", 90, 1, "carried", "in equipment");
    add(trip, "metal", "", 1, "chemistry", "lithium metal", "lithium", 5);
    answer(trip, "P150", 100, 0);
    answer(trip, "P98", 98, 5, "carrier", "other");
    answer(trip, "P151", 160, 2, "answered", "");
    answer(trip, "nothing", 160, 2, "flight", "X", "travellers", "nobody");
    answer(trip, "P98", 160, 2, "date", day("2026-07-01"), "answered", day("2026-07-01"));
    decide(trip, "P151", "gaffer", 4);
    decide(trip, "bank", "gaffer", 4);
    decide(trip, "P98", "gaffer", 40);
    decide(trip, "lead", "gaffer", 5);
    decide(trip, "nothing", "nobody", 1);
    decide(trip, "cam", "sound", 1);
    trip.row("packing", "battery", "dirty", "traveller", "gaffer", "pieces", 0.5, "bag", "hold");
    trip.row("packing", "battery", "P98", "traveller", "sound");
    return trip;
  }

  /** Many batteries of one person. */
  static Ranges crowded() {
    Ranges trip = flight("2026-06-01");
    add(trip, "P98", 98, 30, "kilograms", 0.7);
    add(trip, "bank", 74, 9, "carried", "power bank");
    add(trip, "cam", 90, 20, "carried", "in equipment", "kilograms", 1);
    add(trip, "Na", 90, 2, "chemistry", "sodium-ion", "kilograms", 600);
    add(trip, "P97", 97, 3, "kilograms", 0.7);
    decide(trip, "P98", "gaffer", 25);
    decide(trip, "bank", "gaffer", 3);
    decide(trip, "cam", "gaffer", 16);
    decide(trip, "P97", "gaffer", 3);
    answer(trip, "P97", 97, 1);
    answer(trip, "Na", 90, 0);
    trip.set("flights", 1, "writtenSpares", 50, "writtenReference", "mail 8");
    trip.set("travellers", 1, "cabinKg", 2);
    return trip;
  }

  /** Freight with every fault of freight. */
  static Ranges freight() {
    Ranges trip = flight("2026-06-01");
    trip.set("project", 1, "rest", "cargo aircraft", "handOver", day("2026-05-28"));
    trip.rows("travellers").clear();
    add(trip, "P98", 98, 30, "kilograms", 0.7);
    add(trip, "P294", 294, 3, "kilograms", 2.1, "charge", 0.5);
    add(trip, "P295", 295, 3, "kilograms", 2.1, "charge", 0.3, "rest", "passenger aircraft");
    trip.set("batteries", 3, "chargePieces", 4);
    add(trip, "cam", 150, 3, "kilograms", 2.1, "carried", "in equipment");
    add(trip, "big", 1210, 60, "kilograms", 8.2, "rest", "road");
    add(trip, "metal", "", 1, "chemistry", "lithium metal", "lithium", 3, "kilograms", 3);
    trip.set("batteries", 6, "packed", "in equipment");
    add(trip, "lead3", 80, 1, "chemistry", "lead, sealed", "volts", 12, "rest", "road");
    add(trip, "P588", 588, 1, "un383", "");
    add(trip, "block", 8000, 1, "kilograms", 80, "packed", "with equipment", "charge", 0.2);
    add(trip, "sets", 98, 9, "kilograms", 1, "packed", "with equipment", "inUse", 2);
    add(trip, "wet", 98, 9, "chemistry", "lead, wet");
    return trip;
  }

  /** Road and air with what was answered, and past the last edition. */
  static Ranges late() {
    Ranges trip = freight();
    trip.set("project", 1, "handOver", day("2027-05-28"), "transport", "note 4", "contact", "");
    return trip;
  }

  /** What came by freight and road goes back, and a battery in its camera flies in the hold. */
  static Ranges returning() {
    Ranges trip = flight("2026-06-01");
    trip.set("project", 1, "production", "The Salt Road", "handOver", day("2026-05-28"));
    trip.set("project", 1, "back", "cargo aircraft", "backOn", day("2026-06-09"));
    trip.row("flights", "flight", "Q1", "date", day("2027-06-02"), "carrier", "Quay Air");
    trip.row("travellers", "traveller", "sound", "flights", "Q1");
    trip.set("travellers", 1, "flights", "SA 101");
    add(trip, "P294", 294, 3, "kilograms", 2.1, "by", "cargo aircraft", "charge", 0.3);
    add(trip, "P295", 295, 3, "kilograms", 0.9, "by", "cargo aircraft", "charge", 0.3);
    trip.set("batteries", 1, "chargePieces", 3).set("batteries", 2, "chargePieces", 3);
    trip.set("batteries", 2, "backCharge", 0.3, "backPieces", 3, "terminals", "yes");
    add(trip, "cam", 98, 1, "carried", "in equipment");
    add(trip, "P150", 150, 2, "outputs", "yes", "kilograms", 1.1);
    add(trip, "metal", "", 1, "chemistry", "lithium metal", "lithium", 9);
    add(trip, "AGM", 84, 1, "chemistry", "lead, sealed", "volts", 12, "rest", "road");
    trip.set("batteries", 6, "kilograms", 5, "by", "road");
    decide(trip, "cam", "gaffer", 1).set("packing", 1, "bag", "hold");
    decide(trip, "P150", "road", 1);
    return decide(trip, "P294", "gaffer", 1);
  }

  /** The way back is before the way out. */
  private static Ranges backEarly() {
    return returning().set("project", 1, "backOn", day("2026-05-20"), "revision", 2);
  }

  /** By road in the United States, with a day to be full. */
  static Ranges us() {
    Ranges trip = freight();
    trip.set("project", 1, "rest", "road", "roadRules", "US", "needed", day("2026-05-29"));
    trip.set("project", 1, "transit", 2, "chargers", 300, "weightUnit", "lb");
    return trip;
  }

  /** Freight handed over a day after the day that leaves time to charge. */
  private static Ranges handedOverLate() {
    Ranges trip = flight("2026-06-01");
    trip.set("project", 1, "rest", "cargo aircraft", "handOver", day("2026-05-29"));
    trip.set("project", 1, "chargers", 500, "needed", day("2026-06-01"), "transit", 3);
    trip.rows("travellers").clear();
    add(trip, "P294", 294, 10, "kilograms", 2.1, "charge", 0.3);
    return trip.set("batteries", 1, "chargePieces", 10);
  }

  /**
   * Twelve bags with room for less than all, and many types that differ a little: nobody proves in
   * time which is the best.
   */
  static Ranges hard() {
    Ranges trip = flight("2026-06-01").set("project", 1, "rest", "stays");
    for (int t = 1; t < 12; t++) {
      trip.row("travellers", "traveller", "role " + t, "cabinKg", 2.3 + 0.17 * t);
    }
    for (int i = 0; i < 14; i++) {
      add(trip, "P" + i, 60 + 2.7 * i, 5 + i % 4, "kilograms", 0.41 + 0.07 * i % 0.5);
    }
    return trip;
  }

  /** Travellers in two places, on two days, and not back; answers for two days. */
  private static Ranges lost() {
    Ranges trip = flight("2026-06-01").set("flights", 1, "from", "Home", "to", "Coast");
    trip.set("project", 1, "handOver", day("2026-05-01"), "back", "stays");
    trip.row("flights", "flight", "SA 102", "date", day("2026-06-09"), "carrier", "Salt Air");
    trip.row("flights", "flight", "TX 1", "date", day("2026-06-01"), "carrier", "Salt Air");
    trip.set("flights", 2, "from", "Coast", "to", "Home");
    trip.set("flights", 3, "from", "Home", "to", "Coast");
    trip.row("travellers", "traveller", "sound", "flights", "SA 101");
    trip.row("travellers", "traveller", "twin", "flights", "SA 101; TX 1");
    trip.row("travellers", "traveller", "jumper", "flights", "SA 102; TX 1; SA 101");
    trip.row("flights", "flight", "SA 103", "date", day("2026-06-10"), "carrier", "Salt Air");
    trip.set("flights", 4, "from", "Home", "to", "Coast");
    trip.row("travellers", "traveller", "leaper", "flights", "SA 101; SA 103");
    trip.set("travellers", 1, "flights", "SA 101; SA 102");
    add(trip, "P98", 98, 4, "terminals", "yes");
    add(trip, "P150", 150, 1);
    add(trip, "bank", 140, 1, "carried", "power bank");
    add(trip, "P588", 588, 2, "by", "cargo aircraft", "charge", 0.3, "chargePieces", 3);
    trip.set("batteries", 4, "kilograms", 4.3);
    decide(decide(trip, "P98", "gaffer", 2), "P98", "sound", 2);
    answer(trip, "P150", 150, 1, "flight", "SA 101; SA 102", "date2", day("2026-06-09"));
    return answer(trip, "bank", 150, 1, "carried", "power bank");
  }

  /** The flight back has a date before the flight out. */
  private static Ranges backFirst() {
    Ranges trip = flight("2026-06-09").set("flights", 1, "from", "Home", "to", "Coast");
    trip.row("flights", "flight", "SA 102", "date", day("2026-06-01"), "carrier", "Salt Air");
    trip.set("flights", 2, "from", "Coast", "to", "Home").set("project", 1, "begins", "Home");
    trip.row("travellers", "traveller", "sound", "flights", "SA 101; SA 102");
    add(trip, "AA", "", 8, "chemistry", "NiMH");
    add(trip, "Power bank", 74, 1).set("project", 1, "handOver", day("2026-06-20"));
    add(trip, "P294", 294, 1, "by", "cargo aircraft", "charge", 0.006, "kilograms", 2.1);
    add(trip, "box", 98, 1, "by", "road", "kilograms", 0.75, "cells", 12);
    add(trip, "gone", 98, 1, "condition", "lost");
    answer(add(trip, "P95", 95, 1), "P95", 150, 2);
    return add(trip, "P98", 98, 4, "terminals", "yes");
  }

  static List<Ranges> all() {
    return List.of(
        lost(),
        backFirst(),
        full(),
        faults(),
        crowded(),
        freight(),
        late(),
        us(),
        add(us(), "Na", 90, 2, "chemistry", "sodium-ion", "kilograms", 1),
        handedOverLate(),
        returning(),
        backEarly(),
        us().set("project", 1, "transport", "note 4", "handOver", "", "transit", 30),
        scenario(),
        late().set("project", 1, "handOver", ""),
        Ranges.of(TravelPlan.MODEL),
        hard());
  }

  /** The lines that a traveller carries. */
  static List<TravelResults.LineRow> carried(PlanResult result) {
    return result.rows(TravelResults.LINES).stream().filter(l -> l.decided() != null).toList();
  }

  /** The lines that nobody carries. */
  static List<TravelResults.LineRow> rest(PlanResult result) {
    return result.rows(TravelResults.LINES).stream().filter(l -> l.decided() == null).toList();
  }

  /** The cards' rows of batteries. */
  static List<TravelPapers.CardRow> cards(PlanResult result) {
    return result.rows(TravelPapers.CARDS).stream()
        .filter(c -> c != null && c.battery() != null)
        .toList();
  }

  /** The rows of air freight, without heads. */
  static List<TravelPapers.FreightRow> freight(PlanResult result) {
    return result.rows(TravelPapers.FREIGHT).stream().filter(r -> r.pieces() != null).toList();
  }

  /** The rows of the road paper, without heads. */
  static List<TravelPapers.RoadRow> road(PlanResult result) {
    return result.rows(TravelPapers.ROAD).stream()
        .filter(r -> r != null && r.pieces() != null)
        .toList();
  }

  /** The check-in sheet's rows of types. */
  static List<TravelPapers.CheckInRow> types(PlanResult result) {
    return result.rows(TravelPapers.CHECK_IN).stream()
        .filter(c -> c != null && c.type() != null)
        .toList();
  }

  /** The check-in sheet's rows of flights. */
  static List<TravelPapers.CheckInRow> flights(PlanResult result) {
    return result.rows(TravelPapers.CHECK_IN).stream()
        .filter(c -> c != null && c.type() == null)
        .filter(
            c ->
                c.notes().stream()
                    .anyMatch(
                        n ->
                            n.key() == TravelStatement.FLIGHT
                                || n.key() == TravelStatement.FLIGHT_ROUTE))
        .toList();
  }

  /** Cells that make rows of random tables meet, and fit batteries likely. */
  static List<Object> values(InputColumn column) {
    return switch (column.path()) {
      case "project.issued" -> List.of(46_100.0, 46_150.0);
      case "flights.flight" -> List.of("F1", "F2", "F3", "F4", "F5", "F6");
      case "travellers.flights" -> List.of("", "", "F1", "F1; F2", "F2;F3", "F9");
      case "answers.flight" -> List.of("F1", "F2", "F1, F2", "F3", "F9");
      case "flights.date", "answers.date" ->
          List.of(46_100.0, 46_170.0, 46_170.0, 46_170.0, 46_200.0);
      case "answers.answered" -> List.of("", 46_090.0, 46_095.0, 46_160.0);
      case "project.back" -> List.of("", "road", "stays");
      case "project.backOn" -> List.of("", 46_200.0, 46_600.0);
      case "batteries.by" -> List.of("", "", "", "", "", "", "", "", "", "", "", "road");
      case "batteries.backCharge" -> List.of("", 0.2, 0.5);
      case "project.needed" -> List.of("", 46_170.0);
      case "project.transit" -> List.of("", 1.0, 3.5);
      case "project.chargers" -> List.of("", 500.0);
      case "project.roadRules" -> List.of("", "ADR", "US");
      case "project.weightUnit" -> List.of("", "kg", "lb");
      case "batteries.inUse" -> List.of("", 1.0, 3.0);
      case "project.handOver" -> List.of(46_165.0, 46_165.0, 46_600.0);
      case "flights.carrier", "answers.carrier" ->
          List.of("Salt Air", "Salt Air", "Salt Air", "QB");
      case "flights.writtenSpares", "flights.writtenOver", "flights.writtenBanks" ->
          List.of("", "", 1.0, 2.0, 8.0);
      case "travellers.traveller", "packing.traveller" -> List.of("T1", "T2", "T3", "T4", "T5");
      case "batteries.user" -> List.of("T1", "T2", "T3", "nobody");
      case "answers.travellers" -> List.of("", "", "T1", "T1; T2", "T9");
      case "travellers.cabinKg" -> List.of("", 2.0, 5.0);
      case "batteries.chargePieces", "batteries.backPieces" -> List.of("", 3.0, 12.0, 12.0);
      case "travellers.back" -> List.of("", "", "road");
      case "flights.from", "flights.to", "answers.date2", "travellers.ownLarge" -> List.of("");
      case "flights.writtenDevices" -> List.of("", "", 3.0);
      case "travellers.ownSpares", "travellers.ownBanks", "travellers.ownDevices" ->
          List.of("", 0.0, 1.0, 2.0, 16.0);
      case "batteries.battery", "packing.battery" ->
          List.of("B1", "B2", "B3", "B4", "B5", "B6", "B7", "B8");
      case "batteries.type", "answers.type" -> List.of("P1", "P2", "P1");
      case "batteries.energy" -> List.of(98.0, 98.0, 150.0, 150.0, 160.0, 294.0, 0.0);
      case "answers.energy" -> List.of(150.0, 160.0, 100.0);
      case "answers.number" -> List.of(0.0, 1.0, 2.0, 5.0);
      case "batteries.quantity" -> List.of(1.0, 2.0, 3.0, 12.0);
      case "packing.pieces" -> List.of(0.0, 1.0, 2.0, 3.0);
      case "batteries.condition" ->
          List.of(
              "fine", "fine", "fine", "fine", "fine", "fine", "fine", "fine", "wet", "recalled");
      case "batteries.register" -> List.of("", "", "", "keep", "watch", "not tested", "quarantine");
      case "batteries.carried" ->
          List.of("spare", "spare", "spare", "in equipment", "power bank", "damaged");
      case "answers.carried" -> List.of("", "spare", "spare", "in equipment", "power bank");
      case "batteries.chemistry" ->
          List.of(
              "Li-ion",
              "Li-ion",
              "Li-ion",
              "LFP",
              "NiMH",
              "sodium-ion",
              "lithium metal",
              "lead, sealed");
      case "batteries.volts" -> List.of(12.0, 14.4);
      case "batteries.ampHours" -> List.of(6.2, 10.0);
      case "batteries.lithium" -> List.of(0.5, 1.5, 3.0);
      case "batteries.kilograms" -> List.of(0.75, 1.1, 2.1, 4.0);
      case "batteries.charge" -> List.of(0.2, 0.3, 0.31, 1.0);
      case "batteries.cells" -> List.of(4.0, 12.0);
      case "batteries.terminals", "batteries.un383" -> List.of("yes", "yes", "yes", "no");
      default -> List.of();
    };
  }
}
