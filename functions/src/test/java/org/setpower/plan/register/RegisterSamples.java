package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.Ranges;

/** Registers to begin tests from: invented stock of the rental desk. */
final class RegisterSamples {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  /** One of 55 drifts, one is far from the others, one is far too low. */
  private static final List<Object> CELLS = cells();

  private RegisterSamples() {}

  private static List<Object> cells() {
    List<Object> cells = new ArrayList<>(Collections.nCopies(52, 4.15));
    cells.addAll(List.of(4.0, 3.6, 1.2));
    return List.copyOf(cells);
  }

  /** A date as a cell holds it. */
  static double day(String iso) {
    return LocalDate.parse(iso).toEpochDay() - DAY_ZERO.toEpochDay();
  }

  /** A register of one sound battery, P1-01, tested, inspected, fit to go out. */
  static Ranges sound() {
    return Ranges.of(RegisterPlan.MODEL)
        .row("project", "asOf", day("2027-02-10"))
        .set("project", 1, "job", "The Salt Road", "issue", "2027-017")
        .row("types", "type", "P1", "chemistry", "Li-ion", "required", 2)
        .row("batteries", fine("P1-01"))
        .row(
            "tests",
            "serial",
            "P1-01",
            "date",
            day("2026-11-03"),
            "measured",
            93,
            "load",
            45,
            "temperature",
            20,
            "charge",
            1,
            "rested",
            2,
            "resistance",
            55,
            "cell1",
            4.15,
            "cell2",
            4.14,
            "cell3",
            4.15,
            "cell4",
            4.15)
        .row("checkout", "serial", "P1-01");
  }

  /** A battery that an inspection found fine. */
  static Object[] fine(String serial) {
    return new Object[] {
      "serial",
      serial,
      "type",
      "P1",
      "condition",
      "fine",
      "energy",
      98,
      "inspected",
      day("2027-01-15"),
      "inspectedBy",
      "bench"
    };
  }

  /** Adds a battery like the sound one. */
  static Ranges add(Ranges ranges, String serial, double measured, double resistance) {
    ranges.row("batteries", fine(serial));
    ranges.row(
        "tests",
        "serial",
        serial,
        "date",
        day("2026-11-03"),
        "measured",
        measured,
        "load",
        45,
        "temperature",
        20,
        "charge",
        1,
        "rested",
        2,
        "resistance",
        resistance,
        "cell1",
        4.15,
        "cell2",
        4.14,
        "cell3",
        4.15,
        "cell4",
        4.15);
    return ranges;
  }

  /** Seven batteries of a type, one below its type, and what a house notes of them. */
  static Ranges stock() {
    Ranges stock = sound();
    stock.set(
        "batteries",
        1,
        "cycles",
        120,
        "inspected",
        day("2026-11-01"),
        "inspectedBy",
        "bench",
        "place",
        "A1",
        "outTo",
        "documentary",
        "backBy",
        day("2027-02-01"),
        "un383",
        "no",
        "warranty",
        day("2028-01-01"),
        "decided",
        "watch");
    stock.set("project", 1, "temperatureUnit", "°C", "coldestTest", 10, "warmestTest", 25);
    stock.set("project", 1, "rest", 1, "maxLoad", 0.5, "validDays", 365, "untested", "goes out");
    stock.set("project", 1, "retireBelow", 0.7, "watchBelow", 0.8);
    stock.row(
        "limits",
        "chemistry",
        "Li-ion",
        "minVolts",
        2.8,
        "maxVolts",
        4.2,
        "maxSpread",
        0.02,
        "maxApart",
        0.3,
        "maxResistance",
        1.5);
    stock.set("project", 1, "job", "The Salt Road", "jobBack", day("2027-02-26"));
    stock.set("project", 1, "issue", "2027-017");
    stock.row("checkout", "serial", "P1-02");
    stock.row("checkout", "serial", "p1-02");
    stock.row("checkout", "serial", "P1-05");
    add(stock, "P1-02", 92, 52);
    add(stock, "P1-03", 91.5, 60);
    add(stock, "P1-04", 92.5, 56);
    add(stock, "P1-05", 75, 500);
    add(stock, "P1-06", 93.5, 57);
    add(stock, "P1-07", 80, 54);
    stock.row("batteries", "serial", "P1-08", "type", "P1", "energy", 98);
    stock.set("batteries", 5, "warranty", day("2028-01-01"));
    stock.row("batteries", "serial", "P1-09", "type", "P1", "condition", "fine");
    stock.set("batteries", 9, "inspected", day("2027-01-15"), "inspectedBy", "bench");
    stock.set("batteries", 3, "returned", day("2027-01-10"));
    stock.set("project", 1, "contact", "rental desk", "inspectionDays", 60);
    for (int cell = 1; cell <= 14; cell++) {
      stock.set("tests", 2, "cell" + cell, 4.15);
    }
    stock.set("tests", 2, "cell14", 4.12);
    return add(stock, "P1-11", 77, 55);
  }

  /** Newer tests that do not count: good and low ones, with a date and without. */
  static Ranges refused() {
    Ranges ranges = sound();
    List<Double> measured = List.of(90.0, 50.0, 90.0, 50.0);
    for (int i = 0; i < measured.size(); i++) {
      String serial = "P1-0" + (i + 2);
      add(ranges, serial, 92, 55);
      ranges.row("tests", "serial", serial, "measured", measured.get(i), "load", 45);
      ranges.set("tests", 3 + 2 * i, "temperature", 4, "rested", 2);
      ranges.set("tests", 3 + 2 * i, "date", i < 2 ? (Object) day("2027-02-01") : "");
    }
    add(ranges, "P1-06", 92, 55);
    ranges.set("tests", 10, "cell1", 4.15, "cell2", 3.0);
    return ranges;
  }

  /** Incidents: closed as it should be, recalled by range, by type, and left open. */
  static Ranges incidents() {
    Ranges ranges = add(add(sound(), "P1-02", 92, 52), "P1-010", 90, 55);
    ranges.row("types", "type", "P2", "chemistry", "LFP", "required", 1);
    ranges.row("batteries", "serial", "P2-01", "type", "P2", "condition", "wet", "energy", 150);
    ranges.set(
        "batteries", 1, "inspected", day("2026-11-02"), "inspectedBy", "bench", "cycles", 300);
    ranges.row(
        "incidents",
        "number",
        1,
        "serial",
        "P1-01",
        "happened",
        "dropped",
        "date",
        day("2026-10-01"),
        "reportedBy",
        "camera assistant",
        "closed",
        day("2026-11-04"),
        "closedBy",
        "technician",
        "reason",
        "no damage seen, test as before",
        "reference",
        "none");
    ranges.row(
        "incidents",
        "number",
        2,
        "serial",
        "P1-02",
        "lastSerial",
        "P1-05",
        "type",
        "P1",
        "happened",
        "recalled",
        "date",
        day("2026-10-01"),
        "reportedBy",
        "rental desk",
        "closed",
        day("2026-11-04"),
        "closedBy",
        "technician",
        "reason",
        "exchanged by the maker");
    ranges.set("batteries", 2, "inspected", day("2026-11-02"), "inspectedBy", "bench");
    ranges.set("project", 1, "inspectionDays", 120);
    ranges.row("incidents", "number", 4, "type", "P2", "happened", "contacts");
    ranges.set("incidents", 3, "date", day("2026-10-01"));
    return ranges;
  }

  /**
   * Watched ones whose test is due, cells not measured, zeros lost, closings too early and late.
   */
  static Ranges due(String untested) {
    Ranges ranges = add(add(incidents(), "P1-03", 82, 55), "P1-04", 92, 55);
    ranges.set("project", 1, "untested", untested);
    ranges.set("batteries", 1, "condition", "dropped");
    ranges.set("incidents", 2, "closed", day("2026-11-02"), "serial", "P1-02", "lastSerial", "");
    ranges.set("tests", 4, "date", day("2026-03-01"));
    ranges.set("tests", 5, "date", day("2026-03-01"));
    ranges.set("batteries", 6, "decided", "watch");
    add(add(ranges, "0012", 92, 55), "12", 92, 55).set("batteries", 8, "serial", 12.0);
    add(ranges, "P1-09", 82, 55).set("tests", 8, "temperature", 28);
    return ranges.set("tests", 6, "cell1", "", "cell2", "", "cell3", "", "cell4", "");
  }

  /** Figures out of reason, and an incident closed by energy alone. */
  static Ranges odd() {
    Ranges ranges = incidents();
    ranges.set("tests", 1, "cell1", "", "cell2", "", "cell3", "", "cell4", "");
    for (int i = 3; i <= 8; i++) {
      add(ranges, "P1-1" + i, 92, 55);
    }
    ranges.set("tests", 4, "measured", 104, "resistance", 9);
    ranges.row("tests", "serial", "P1-14", "date", day("2026-11-03"), "measured", 84, "load", 45);
    ranges.set("tests", 10, "temperature", 20, "rested", 2);
    ranges.set("types", 1, "required", 6);
    ranges.set("incidents", 2, "closed", day("2027-03-01"));
    return ranges
        .set("tests", 6, "cell4", 3.9)
        .row("limits", "chemistry", "Li-ion", "maxApart", 0.2);
  }

  /** One of every fault that is not met by chance. */
  static Ranges faults() {
    Ranges ranges = sound();
    ranges.set("project", 1, "coldestTest", 30, "warmestTest", 20);
    ranges.set("checkout", 1, "serial", "P9-99");
    ranges.set("project", 1, "retireBelow", 0.9, "watchBelow", 0.5);
    ranges.row("limits", "chemistry", "Li-ion", "minVolts", 1, "maxVolts", 9);
    ranges.row("limits", "chemistry", "LFP", "minVolts", 4, "maxVolts", 3);
    ranges.row("batteries", "serial", "P1-02", "type", "P1", "condition", "swollen");
    ranges.set("batteries", 2, "inspected", day("2027-12-01"), "retired", day("2026-12-01"));
    ranges.row(
        "incidents",
        "serial",
        "P1-02",
        "happened",
        "swollen",
        "date",
        day("2026-10-01"),
        "closed",
        day("2026-09-01"),
        "closedBy",
        "runner",
        "reportedBy",
        "runner");
    ranges.row(
        "incidents", "serial", "X", "lastSerial", "P1-2", "type", "none", "happened", "fine");
    ranges.row("incidents", "happened", "wet", "date", day("2026-10-01"));
    ranges.set("project", 1, "jobBack", day("2027-01-01"));
    for (String serial : List.of("P1-03", "P1-04", "P1-05", "P1-06")) {
      ranges.row("batteries", fine(serial));
    }
    ranges.set("batteries", 3, "inspectedBy", "");
    ranges.set("batteries", 4, "inspected", day("2026-10-01"));
    ranges.set("batteries", 5, "returned", day("2027-02-01"));
    ranges.set("batteries", 6, "returned", day("2027-12-01"), "retired", day("2027-12-02"));
    return ranges;
  }

  /** Cells that make rows of random tables meet, and fit batteries likely. */
  static List<Object> values(InputColumn column) {
    return switch (column.key()) {
      case "serial" ->
          List.of("A-01", "A-02", "A-03", "A-04", "A-05", "A-06", "A-07", "B-1", "B-2", 77.0);
      case "lastSerial" -> List.of("", "", "", "", "A-02", "A-04", "A-004", "B-2", "nonsense");
      case "type" -> List.of("A", "A", "A", "B");
      case "condition" ->
          List.of(
              "fine",
              "fine",
              "fine",
              "fine",
              "fine",
              "fine",
              "fine",
              "fine",
              "fine",
              "fine",
              "dropped",
              "swollen",
              "contacts",
              "recalled",
              "lost",
              "not charging");
      case "number" -> List.of(1.0, 2.0, 3.0, 4.0, 7.0, 1.5);
      case "happened" -> List.of("dropped", "wet", "recalled", "contacts", "hot", "lost");
      case "asOf" -> List.of(46_500.0, 46_600.0);
      case "date" -> List.of(46_300.0, 46_400.0, 46_450.0, 46_700.0);
      case "inspected" -> List.of(46_420.0, 46_480.0, 46_480.0, 46_480.0);
      case "inspectionDays" -> List.of(60.0, 200.0, 400.0);
      case "returned" -> List.of("", "", "", "", "", "", 46_410.0, 46_450.0, 46_900.0);
      case "closed" -> List.of(46_470.0, 46_490.0);
      case "retired" -> List.of("", "", "", "", "", "", 46_400.0);
      case "chemistry" -> List.of("Li-ion", "Li-ion", "Li-ion", "Li-ion", "LFP", "NiMH");
      case "decided" -> List.of("", "", "", "keep", "keep", "watch", "service", "quarantine");
      case "minVolts" -> List.of(2.5, 2.8, 1.0);
      case "maxVolts" -> List.of(4.2, 4.25, 5.0);
      case "maxSpread" -> List.of(0.05, 0.02);
      case "maxApart" -> List.of(0.3, 0.2, 0.05);
      case "maxResistance" -> List.of(1.5, 1.2);
      case "retireBelow" -> List.of(0.7, 0.8);
      case "watchBelow" -> List.of(0.85, 0.95);
      case "temperatureUnit" -> List.of("°C", "°C", "°C", "°F");
      case "closedBy" -> List.of("technician", "technician 2", "runner");
      case "reportedBy", "inspectedBy" -> List.of("technician", "runner", "bench");
      case "energy" ->
          List.of(98.0, 98.0, 98.0, 98.0, 98.0, 98.0, 98.0, 98.0, 98.0, 98.0, 99.0, 150.0);
      case "measured" -> List.of(96.0, 95.0, 94.0, 93.0, 92.0, 80.0, 60.0, 170.0);
      case "load" -> List.of(40.0, 45.0, 200.0);
      case "temperature" -> List.of(20.0, 20.0, 21.0, 22.0, 68.0, 4.0);
      case "coldestTest" -> List.of(10.0, 15.0);
      case "warmestTest" -> List.of(25.0, 30.0);
      case "charge" -> List.of(1.0, 0.95, 0.5);
      case "rested" -> List.of(0.5, 2.0, 3.0);
      case "rest" -> List.of(1.0, 3.0);
      case "resistance" -> List.of(50.0, 52.0, 55.0, 60.0, 100.0);
      case "validDays" -> List.of(180.0, 400.0);
      default -> column.key().startsWith("cell") ? CELLS : List.of();
    };
  }
}
