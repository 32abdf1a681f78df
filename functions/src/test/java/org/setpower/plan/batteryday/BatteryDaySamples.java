package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.Ranges;

/** Plans to begin tests from: the invented production's kit. */
final class BatteryDaySamples {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private BatteryDaySamples() {}

  /** A date as a cell holds it. */
  static double day(String iso) {
    return LocalDate.parse(iso).toEpochDay() - DAY_ZERO.toEpochDay();
  }

  /** A time as a cell holds it. */
  static double at(int hour, int minute) {
    return hour / 24.0 + minute / 1440.0;
  }

  /** The time of the clock in a cell of Charging. */
  static LocalTime clock(Phrase hour) {
    return (LocalTime) hour.arguments().get(0);
  }

  /** One camera of 92 W from 7 to 17 h at 20 °C, five P294, no charger. */
  static Ranges camera() {
    return Ranges.of(BatteryDayPlan.MODEL)
        .row("project", "day", day("2027-02-02"))
        .row(
            "days",
            "date",
            day("2027-02-02"),
            "call",
            at(7, 0),
            "wrap",
            at(17, 0),
            "min",
            20,
            "max",
            20)
        .row(
            "types",
            "type",
            "P294",
            "chemistry",
            "Li-ion",
            "cells",
            8,
            "ampHours",
            10.2,
            "wattHours",
            294,
            "outputs",
            "12/24",
            "maxAmps",
            30,
            "resistance",
            45,
            "health",
            1)
        .row("stock", "type", "P294", "owned", 5)
        .row("positions", "position", "camera A", "volts", 24, "type", "P294")
        .row(
            "devices",
            "device",
            "camera A",
            "position",
            "camera A",
            "watts",
            92,
            "minVolts",
            20,
            "maxVolts",
            35);
  }

  /** A second type, P98 of 12 V. */
  static Ranges withP98(Ranges ranges, int owned) {
    return ranges
        .row(
            "types",
            "type",
            "P98",
            "chemistry",
            "Li-ion",
            "cells",
            4,
            "ampHours",
            6.8,
            "wattHours",
            98,
            "outputs",
            "12",
            "maxAmps",
            12,
            "resistance",
            60,
            "health",
            1)
        .row("stock", "type", "P98", "owned", owned);
  }

  /** A position with one device. */
  static Ranges position(
      Ranges ranges, String name, double volts, String type, double watts, double min, double max) {
    return ranges
        .row("positions", "position", name, "volts", volts, "type", type)
        .row(
            "devices",
            "device",
            name,
            "position",
            name,
            "watts",
            watts,
            "minVolts",
            min,
            "maxVolts",
            max);
  }

  /** A charger on a supply without practical limit, at 20 °C. */
  static Ranges charger(Ranges ranges, String name, String types, int channels, double amps) {
    if (ranges.rows("supplies").isEmpty()) {
      ranges.row("supplies", "supply", "socket", "watts", 100_000);
    }
    return ranges.row(
        "chargers",
        "charger",
        name,
        "supply",
        "socket",
        "channels",
        channels,
        "amps",
        amps,
        "volts",
        24,
        "types",
        types,
        "air",
        20);
  }

  /** The night on the salt pans: every column is used. */
  static Ranges night() {
    Ranges ranges = camera();
    ranges.set("project", 1, "units", "metric", "near", 20, "touchLimit", 60, "day", "");
    ranges.set("project", 1, "dayBegins", at(5, 0), "now", at(21, 0));
    ranges.row(
        "days",
        "date",
        day("2027-02-04"),
        "call",
        at(16, 0),
        "wrap",
        at(3, 0),
        "location",
        "salt pans",
        "min",
        -6,
        "max",
        2,
        "minFrom",
        at(1, 0),
        "minTo",
        at(4, 0),
        "maxFrom",
        at(15, 0),
        "maxTo",
        at(17, 0),
        "shelf",
        15,
        "breakFrom",
        at(21, 30),
        "breakTo",
        at(22, 15),
        "atCall",
        "as left");
    ranges.row(
        "days",
        "date",
        day("2027-02-05"),
        "call",
        at(14, 0),
        "wrap",
        at(17, 30),
        "min",
        2,
        "max",
        6);
    ranges.set("types", 1, "mount", "V");
    ranges.set("stock", 1, "owned", 4, "hired", 6, "reserve", 1, "lent", "B2", "lentTo", "sound");
    ranges.set("stock", 1, "lentFrom", day("2027-02-03"), "backOn", day("2027-02-05"));
    ranges.set("stock", 1, "out", "B5", "first", 1);
    ranges.set("stock", 1, "inHandOn", day("2027-02-04"), "inHandFrom", at(18, 0));
    ranges.set("project", 1, "changeAt", 0.05, "lastChange", at(4, 30));
    withP98(ranges, 5);
    ranges.set("stock", 2, "first", 21);
    ranges.set("positions", 1, "department", "camera", "priority", 1, "mount", "V");
    ranges.set("positions", 1, "connection", "hot-swap", "atOnce", 2, "changeAt", 0.1);
    ranges.set("positions", 1, "staysOn", "yes", "cable", 2, "cableSize", "2.5 mm²");
    ranges.set("positions", 1, "fromDay", day("2027-02-01"), "toDay", day("2027-02-05"));
    position(ranges, "sound bag", 12, "P98", 22, 11, 18);
    position(ranges, "tube", 24, "P294", 50, 11, 36);
    ranges.set("positions", 3, "quantity", 4, "priority", 60, "touchSafe", "yes");
    ranges.set("devices", 3, "from", at(16, 30), "to", at(22, 0), "quantity", 1);
    ranges.row("devices", "device", "link", "position", "camera A", "watts", 14, "converter", 0.92);
    ranges.row("supplies", "supply", "inverter", "watts", 900, "wattHours", 2000);
    ranges.set("supplies", 1, "fromDay", day("2027-02-02"), "toDay", day("2027-02-05"));
    ranges.set("supplies", 1, "goneOn", day("2027-02-04"), "goneFrom", at(19, 0));
    ranges.set("supplies", 1, "goneTo", at(19, 30));
    ranges.row(
        "chargers",
        "charger",
        "charger 1",
        "supply",
        "inverter",
        "channels",
        4,
        "amps",
        4,
        "volts",
        24,
        "types",
        "P294, P98",
        "mount",
        "V",
        "atOnce",
        3,
        "efficiency",
        0.85,
        "usable",
        0.9,
        "powerFrom",
        at(15, 15),
        "powerTo",
        at(3, 30),
        "offFrom",
        at(23, 0),
        "offTo",
        at(2, 0),
        "roundTrip",
        20,
        "air",
        12,
        "warmUp",
        1);
    ranges.row("atCall", "number", "B4", "charge", 0.5);
    ranges.row("atCall", "number", "B22", "absence", "lent");
    ranges.row("atNow", "number", "B3", "charge", 0.4, "position", "camera A");
    ranges.row("atNow", "number", "B23", "absence", "quarantine");
    ranges.row("disposables", "item", "radio", "cell", "AA", "quantity", 4, "cells", 2);
    ranges.set("disposables", 1, "hours", 6, "use", 9);
    ranges.row("disposables", "item", "headset", "cell", "aa", "cells", 1, "hours", 20);
    return ranges;
  }

  /**
   * A day of two cameras, a wireless link and three lights from −5 °C in the morning, with fourteen
   * batteries of three types and three chargers, in as few cells as it takes.
   */
  static Ranges shortDay() {
    return Ranges.of(BatteryDayPlan.MODEL)
        .row("project", "chargersAir", 20, "warmUp", 1.5, "health", 0.95)
        .row(
            "days",
            "date",
            day("2027-02-02"),
            "call",
            at(7, 0),
            "wrap",
            at(17, 0),
            "min",
            -5,
            "max",
            8,
            "breakFrom",
            at(12, 0),
            "breakTo",
            at(13, 0))
        .row("types", "type", "P98", "ampHours", 6.8, "wattHours", 98, "maxAmps", 12)
        .row(
            "types",
            "type",
            "P150",
            "ampHours",
            5.2,
            "wattHours",
            150,
            "outputs",
            "12/24",
            "maxAmps",
            20)
        .row("types", "type", "P294", "ampHours", 10.2, "wattHours", 294, "maxAmps", 30)
        .row("stock", "type", "P98", "owned", 3)
        .row("stock", "type", "P150", "owned", 6)
        .row("stock", "type", "P294", "owned", 5)
        .row("positions", "position", "camera A", "type", "P294", "power", 70, "input", "20-35")
        .row("positions", "position", "camera B", "type", "P294", "power", 62, "input", "20–35 V")
        .row("positions", "position", "link", "type", "P98", "power", 14, "input", "11-17")
        .row(
            "positions",
            "position",
            "light",
            "volts",
            24,
            "type",
            "P150",
            "power",
            15,
            "input",
            "11-36",
            "quantity",
            3)
        .row("supplies", "watts", 2000)
        .row("chargers", "channels", 4, "amps", 3, "volts", 24, "types", "P294")
        .row("chargers", "channels", 2, "amps", 3, "volts", 24, "types", "P150")
        .row("chargers", "channels", 2, "amps", 2, "types", "P98");
  }

  /** One of most faults. */
  static Ranges faults() {
    Ranges ranges = camera();
    ranges.set("project", 1, "now", at(20, 0));
    ranges.set("days", 1, "min", "", "max", "", "breakFrom", at(6, 0), "breakTo", at(6, 30));
    ranges.row(
        "days",
        "date",
        day("2027-02-03"),
        "call",
        at(7, 0),
        "wrap",
        at(12, 0),
        "min",
        5,
        "max",
        2,
        "breakFrom",
        at(9, 0));
    ranges.row("days", "date", day("2027-02-03"), "call", at(11, 0), "wrap", at(11, 0), "min", 5);
    type(ranges, "odd", "Li-ion", "9/24", 294);
    type(ranges, "light", "Li-ion", "24", 30);
    type(ranges, "LFP", "LFP", "24", 261);
    type(ranges, "lead", "lead", "24", 480);
    ranges.set("types", 4, "health", "");
    ranges.row("stock", "type", "LFP", "owned", 2.5, "lent", "B99", "reserve", 1);
    ranges.row("stock", "type", "lead", "owned", 2, "out", "the red one");
    ranges.row("stock", "type", "light", "owned", 2, "first", 1, "reserve", 7);
    ranges.row(
        "stock",
        "type",
        "light",
        "owned",
        1,
        "first",
        40,
        "lent",
        "B40",
        "lentFrom",
        day("2027-02-05"),
        "backOn",
        day("2027-02-01"));
    ranges.row(
        "stock",
        "type",
        "light",
        "owned",
        1,
        "first",
        50,
        "lent",
        "B50",
        "backOn",
        day("2027-02-01"),
        "out",
        "B50");
    ranges.row("stock", "type", "odd", "reserve", 1);
    ranges.row("stock", "type", "nothing");
    position(ranges, "lead light", 24, "lead", 20, 18, 40);
    position(ranges, "nowhere", 24, "odd", 20, 18, 40);
    position(ranges, "too much", 24, "light", 9000, 20, 35);
    position(ranges, "panel", 48, "light", 20, 20, 60);
    ranges.set("positions", 5, "connection", "series", "atOnce", 3);
    position(ranges, "two", 24, "light", 20, 20, 35);
    ranges.set(
        "positions", 6, "atOnce", 2, "fromDay", day("2027-02-05"), "toDay", day("2027-02-01"));
    position(ranges, "alone", 24, "light", 20, 20, 35);
    ranges.set("positions", 7, "atOnce", 1, "connection", "parallel", "cable", 5);
    ranges.row("positions", "position", "idle", "volts", 24, "type", "light", "cable", 1);
    ranges.set("positions", 8, "cableSize", "thick");
    ranges.row(
        "positions", "position", "wide", "volts", 24, "type", "light", "power", 9, "input", "wide");
    ranges.row("positions", "position", "half", "volts", 24, "type", "light", "power", 9);
    ranges.row("devices", "device", "lost", "position", "moon", "watts", 5, "minVolts", 9);
    ranges.row(
        "devices",
        "device",
        "turned",
        "position",
        "two",
        "watts",
        5,
        "minVolts",
        9,
        "maxVolts",
        5,
        "from",
        at(3, 0));
    ranges.row("atCall", "number", "X1", "charge", 0.5);
    ranges.row("atCall", "number", "B1", "charge", 0.5);
    ranges.row("atCall", "number", "B1", "absence", "quarantine");
    ranges.row("atNow", "number", "B2", "charge", 0.5, "position", "moon");
    ranges.row("atNow", "number", "B3", "charge", 0.5, "position", "alone");
    return ranges;
  }

  /** Faults of chargers, by night at −6 °C and by day. */
  static Ranges chargerFaults() {
    Ranges ranges = camera().set("days", 1, "min", -6, "max", 2);
    type(ranges, "odd", "Li-ion", "9/24", 294);
    type(ranges, "lead", "lead", "24", 200);
    ranges.row("stock", "type", "lead", "owned", 2);
    ranges.row("supplies", "supply", "toy", "watts", 20);
    ranges.row("supplies", "supply", "twice", "watts", 20);
    ranges.row("supplies", "supply", "twice", "watts", 20);
    ranges.row(
        "chargers",
        "charger",
        "A",
        "supply",
        "toy",
        "channels",
        2,
        "amps",
        6,
        "atOnce",
        3,
        "powerFrom",
        at(9, 0));
    ranges.row(
        "chargers",
        "charger",
        "B",
        "supply",
        "no such",
        "channels",
        2,
        "amps",
        6,
        "types",
        "nothing, odd",
        "air",
        20,
        "warmUp",
        0.01);
    ranges.row(
        "chargers",
        "charger",
        "C",
        "supply",
        "twice",
        "channels",
        2,
        "amps",
        60,
        "air",
        20,
        "warmUp",
        0.2);
    ranges.row(
        "chargers",
        "charger",
        "D",
        "supply",
        "toy",
        "channels",
        2,
        "amps",
        1,
        "air",
        20,
        "types",
        "P294, lead");
    charger(ranges, "E", "lead", 2, 4);
    charger(ranges, "F", "P294", 2, 4);
    ranges.set("chargers", 6, "supply", "toy", "warmUp", 1);
    charger(ranges, "G", "P588", 2, 4);
    charger(ranges, "H", "P294", 2, 30);
    ranges.set("positions", 1, "changeAt", 0.01);
    return ranges;
  }

  /** A 48 V set with a break, a position that is too short of batteries, and a wet floor. */
  static Ranges series() {
    Ranges ranges = camera().set("project", 1, "near", 30);
    ranges.set("days", 1, "breakFrom", at(10, 0), "breakTo", at(11, 0));
    position(ranges, "panel", 48, "P294", 300, 40, 70);
    ranges.set("positions", 2, "connection", "series", "atOnce", 2, "touchSafe", "yes");
    position(ranges, "cabled", 24, "P294", 120, 20, 36);
    ranges.set("positions", 3, "cable", 100, "cableSize", "1 mm²");
    position(ranges, "thin", 24, "P294", 400, 11, 36);
    ranges.set("positions", 4, "cable", 1, "cableSize", "0.5 mm²");
    position(ranges, "plate", 24, "P294", 650, 20, 36);
    ranges.set("positions", 5, "connection", "hot-swap");
    position(ranges, "far", 24, "P294", 60, 23.5, 36);
    ranges.set("positions", 6, "cable", 20, "cableSize", "1.5 mm²");
    position(ranges, "small", 24, "P294", 60, 11, 30);
    position(ranges, "bare", 48, "P294", 60, 40, 70);
    ranges.set("positions", 8, "connection", "series");
    position(ranges, "hungry", 24, "P294", 900, 11, 36);
    position(ranges, "other", 24, "P150", 60, 11, 36);
    ranges.row(
        "types",
        "type",
        "P150",
        "chemistry",
        "Li-ion",
        "cells",
        8,
        "ampHours",
        5.2,
        "wattHours",
        150,
        "outputs",
        "24",
        "maxAmps",
        200,
        "health",
        1,
        "mount",
        "V",
        "resistance",
        5);
    position(ranges, "flash", 24, "P150", 1200, 11, 36);
    ranges.set("positions", 11, "mount", "B");
    position(ranges, "minutes", 24, "P150", 1500, 11, 36);
    return ranges;
  }

  /** A plan that is too large, on a date that Days has not. */
  static Ranges large() {
    Ranges ranges = camera();
    for (int i = 0; i < 5; i++) {
      position(ranges, "wall " + i, 24, "P294", 10, 11, 36);
      ranges.set("positions", i + 2, "quantity", 40);
    }
    return ranges;
  }

  /** Days that follow a date that cannot be planned, with a call before the batteries are full. */
  static Ranges handedOn() {
    Ranges ranges = charger(camera(), "slow", "P294", 1, 1);
    ranges.set("project", 1, "day", day("2027-02-03"));
    ranges.set("days", 1, "wrap", at(7, 0));
    ranges.row(
        "days",
        "date",
        day("2027-02-03"),
        "call",
        at(7, 0),
        "wrap",
        at(17, 0),
        "min",
        20,
        "max",
        20);
    ranges.row(
        "days",
        "date",
        day("2027-02-04"),
        "call",
        at(7, 0),
        "wrap",
        at(17, 0),
        "min",
        20,
        "max",
        20);
    return ranges;
  }

  /** More entries than a crew can follow. */
  static Ranges restless() {
    Ranges ranges = camera().set("devices", 1, "watts", 350).set("positions", 1, "quantity", 36);
    for (int i = 0; i < 3; i++) {
      ranges.row("positions", "position", "wall " + i, "volts", 24, "type", "P294", "quantity", 38);
      for (int window = 0; window < 3; window++) {
        ranges.row(
            "devices",
            "device",
            "panel",
            "position",
            "wall " + i,
            "watts",
            20,
            "minVolts",
            11,
            "maxVolts",
            36,
            "from",
            at(8 + 3 * window, 0),
            "to",
            at(9 + 3 * window, 0));
      }
    }
    return ranges;
  }

  /** A day in a hot car: what works and what charges. */
  static Ranges heat() {
    Ranges ranges = camera().set("days", 1, "max", 62);
    charger(ranges, "van", "P294", 2, 4);
    ranges.set("chargers", 1, "air", 46);
    charger(ranges, "tent", "P294", 2, 4);
    return ranges.set("chargers", 2, "air", 41);
  }

  /** All, and some whose day cannot be shown. */
  static List<Ranges> all() {
    return List.of(
        heat(),
        night(),
        shortDay(),
        faults(),
        chargerFaults(),
        series(),
        handedOn(),
        large(),
        camera().set("project", 1, "day", day("2027-03-01")),
        handedOn().set("project", 1, "day", day("2027-02-02")),
        night().set("project", 1, "now", ""),
        Ranges.of(BatteryDayPlan.MODEL).row("project", "near", 10),
        restless(),
        crowded(),
        roomy(),
        moved(),
        otherDay(),
        camera().set("days", 1, "min", -55, "max", -55),
        lunch(),
        elsewhere(),
        measured(),
        labels(),
        carried(),
        emptied(),
        emptied().set("stock", 1, "owned", 6, "reserve", 1),
        reserves());
  }

  /** Runtimes that were measured, right and wrong, and batteries found on a charger. */
  static Ranges measured() {
    Ranges ranges = withP98(camera().set("stock", 1, "owned", 12), 2);
    ranges.set("project", 1, "now", at(12, 0));
    position(ranges, "long", 24, "P294", 92, 20, 35).set("positions", 2, "measured", at(5, 0));
    position(ranges, "short", 24, "P294", 92, 20, 35).set("positions", 3, "measured", at(0, 20));
    position(ranges, "none", 24, "P294", 92, 20, 35).set("positions", 4, "measured", 0);
    position(ranges, "high", 24, "P294", 92, 29, 35);
    charger(ranges, "one", "P294", 2, 4);
    ranges.row("atNow", "number", "B12", "charger", "one");
    return ranges.row("atNow", "number", "B13", "charger", "one");
  }

  /** Two days on batteries for one, with a charger that takes the night for one of them. */
  static Ranges carried() {
    Ranges ranges = charger(camera(), "slow", "P294", 1, 0.5);
    ranges.row("days", "date", day("2027-02-03"), "call", at(7, 0), "wrap", at(17, 0));
    ranges.set("days", 2, "min", 20, "max", 20, "atCall", "as left");
    return ranges.set("project", 1, "day", day("2027-02-03"));
  }

  /** A battery of which nothing is known but its label, at as many watts as it has Wh, in frost. */
  static Ranges labels() {
    Ranges ranges = withP98(camera().set("days", 1, "min", -4, "max", -4), 2);
    ranges.set("types", 2, "resistance", "");
    return position(ranges, "lamp", 12, "P98", 98, 10, 18);
  }

  /** Too few batteries, reserves in the case, and numbers that hired ones have moved. */
  static Ranges reserves() {
    Ranges ranges = withP98(camera().set("stock", 1, "owned", 4, "hired", 1, "reserve", 1), 3);
    position(ranges, "lamp", 12, "P98", 45, 10, 18).set("stock", 2, "reserve", 1);
    return ranges.row("atCall", "number", "B2", "absence", "quarantine");
  }

  /** Enough batteries for the day, all found empty at noon. */
  static Ranges emptied() {
    Ranges ranges = camera().set("project", 1, "now", at(12, 0));
    for (int number = 1; number <= 5; number++) {
      ranges.row("atNow", "number", "B" + number, "charge", 0);
    }
    return ranges;
  }

  /** Batteries that are said to be where they cannot be, and an inverter for one channel of two. */
  static Ranges lunch() {
    Ranges ranges = charger(withP98(camera(), 4), "van", "P98", 2, 2);
    ranges.set("supplies", 1, "watts", 60).set("project", 1, "now", at(13, 10));
    ranges.row("atNow", "number", "B1", "position", "camera A", "absence", "quarantine");
    ranges.row("atNow", "number", "B3", "position", "camera A");
    ranges.row("atNow", "number", "B5", "position", "camera A");
    position(ranges, "lamp", 12, "P98", 20, 10, 18);
    ranges.set("devices", 2, "to", at(13, 0)).set("stock", 2, "reserve", 2, "out", "B7");
    ranges.set("positions", 2, "quantity", 3);
    ranges.row("atNow", "number", "B6", "position", "lamp");
    ranges.row("atNow", "number", "B7", "position", "lamp");
    ranges.row("atNow", "number", "B8", "position", "lamp");
    ranges.row("atNow", "number", "B9", "charge", 0.5);
    ranges.row("atNow", "number", "B2").row("atCall", "number", "B9", "charge", 0.5);
    return ranges;
  }

  /** Two pieces of the first class that change together, and a battery found in another place. */
  static Ranges elsewhere() {
    Ranges ranges = camera().set("positions", 1, "priority", 1, "quantity", 2);
    ranges.set("stock", 1, "owned", 12).set("project", 1, "now", at(9, 0));
    return ranges.row("atNow", "number", "B12", "position", "camera A");
  }

  /** The same with more batteries than it takes. */
  static Ranges roomy() {
    Ranges ranges = crowded();
    for (int row = 1; row <= ranges.rows("positions").size(); row++) {
      ranges.set("positions", row, "quantity", 2);
    }
    for (int row = 1; row <= ranges.rows("stock").size(); row++) {
      ranges.set("stock", row, "owned", 100);
    }
    return ranges;
  }

  /** Chargers that may be one, power typed twice, batteries found in two places and in a set. */
  static Ranges moved() {
    Ranges ranges = charger(camera(), "quad", "P294", 4, 3);
    ranges.row("supplies", "supply", "base", "watts", 3000);
    charger(ranges, "quad base", "P294", 4, 3);
    ranges.set("chargers", 1, "powerFrom", at(7, 0), "powerTo", at(19, 0));
    ranges.set("chargers", 2, "supply", "base", "powerFrom", at(18, 0), "powerTo", at(6, 0));
    ranges.set("positions", 1, "power", 20, "input", "11-36").set("stock", 1, "owned", 9);
    position(ranges, "panel", 48, "P294", 100, 40, 70);
    ranges.set("positions", 2, "connection", "series", "atOnce", 2, "touchSafe", "yes");
    position(ranges, "lamp", 24, "P294", 40, 20, 36);
    position(ranges, "plate", 48, "P294", 40, 40, 70);
    ranges.set("chargers", 1, "air", 5).set("project", 1, "now", at(12, 0));
    ranges.row("atNow", "number", "B5", "position", "camera A");
    ranges.row("atNow", "number", "B5", "position", "lamp");
    ranges.row("atNow", "number", "B6", "position", "panel");
    return ranges;
  }

  /** Today of another date, and an inverter that makes positions dark. */
  static Ranges otherDay() {
    Ranges ranges = camera().set("positions", 1, "quantity", 3).set("stock", 1, "owned", 6);
    charger(ranges, "six", "P294", 6, 4);
    ranges.set("supplies", 1, "watts", 300);
    ranges.set("project", 1, "now", at(12, 0), "today", day("2027-02-03"));
    ranges.row("days", "date", day("2027-02-03"), "call", at(7, 0), "wrap", at(9, 0), "min", 9);
    ranges.row("atNow", "number", "B2", "absence", "quarantine");
    return ranges;
  }

  /** More ways to charge than can be tried: eighty pieces on chargers with few watts. */
  static Ranges crowded() {
    Ranges ranges = BatteryDayBenchmark.full().set("supplies", 1, "watts", 780);
    for (int row = 1; row <= ranges.rows("positions").size(); row++) {
      ranges.set("positions", row, "quantity", 4);
    }
    return ranges;
  }

  private static void type(Ranges r, String name, String chemistry, String outputs, double wh) {
    r.row(
        "types",
        "type",
        name,
        "chemistry",
        chemistry,
        "cells",
        8,
        "ampHours",
        10.2,
        "wattHours",
        wh,
        "outputs",
        outputs,
        "maxAmps",
        30,
        "resistance",
        45,
        "health",
        1);
  }

  /** Cells that make rows of random tables meet, and days that can be planned likely. */
  static List<Object> values(InputColumn column) {
    return switch (column.path()) {
      case "project.day" -> List.of("", "", "", 46_420.0);
      case "project.now" -> List.of("", "", at(12, 0), at(16, 30));
      case "project.dayBegins" -> List.of(at(4, 0), at(5, 0), at(6, 0), at(22, 30));
      case "project.touchLimit" -> List.of(60.0, 60.0, 30.0);
      case "project.chargersAir" -> List.of("", 20.0, 12.0);
      case "project.warmUp" -> List.of("", 1.0, 2.0);
      case "project.health" -> List.of("", 0.9, 1.0);
      case "project.changeAt" -> List.of("", "", 0.2);
      case "project.lastChange" -> List.of("", at(19, 0), at(23, 0), at(1, 0));
      case "stock.inHandOn" -> List.of("", "", "", 46_419.0, 46_420.0, 46_421.0);
      case "stock.inHandFrom" -> List.of("", at(6, 0), at(12, 0));
      case "supplies.fromDay" -> List.of("", "", 46_418.0, 46_420.0, 46_422.0);
      case "supplies.toDay", "supplies.goneOn" -> List.of("", "", 46_419.0, 46_420.0, 46_423.0);
      case "supplies.goneFrom" -> List.of("", at(9, 0), at(15, 0));
      case "supplies.goneTo" -> List.of("", at(10, 0), at(16, 0), at(2, 0));
      case "project.units" -> List.of("metric", "metric", "metric", "US");
      case "days.date" ->
          List.of(
              46_414.0, 46_415.0, 46_416.0, 46_417.0, 46_418.0, 46_419.0, 46_420.0, 46_421.0,
              46_422.0, 46_423.0, 46_424.0);
      case "days.call" -> List.of(at(7, 0), at(8, 0), at(15, 0));
      case "days.wrap" -> List.of(at(12, 0), at(18, 0), at(19, 0), at(20, 0));
      case "days.min" -> List.of(20.0, 10.0, 5.0, -3.0, -8.0);
      case "days.max" -> List.of(20.0, 22.0, 25.0);
      case "days.minFrom" -> List.of(at(6, 0), at(23, 0));
      case "days.minTo" -> List.of(at(8, 0), at(23, 30));
      case "days.maxFrom" -> List.of(at(13, 0), at(14, 0));
      case "days.maxTo" -> List.of(at(15, 0), at(16, 0));
      case "days.shelf" -> List.of(15.0, 20.0, 5.0);
      case "days.breakFrom" -> List.of(at(11, 0), at(12, 0), at(16, 0));
      case "days.breakTo" -> List.of(at(11, 30), at(13, 0), at(16, 45));
      case "types.type", "stock.type", "positions.type" ->
          List.of("P294", "P98", "P150", "P588", "P1");
      case "chargers.types" -> List.of("P294", "P98", "P294, P98", "P150;P294", "P588");
      case "types.chemistry" ->
          List.of(
              "Li-ion", "Li-ion", "Li-ion", "Li-ion", "Li-ion", "Li-ion", "Li-ion", "LFP", "lead");
      case "types.cells" -> List.of(8.0, 8.0, 4.0);
      case "types.ampHours" -> List.of(10.2, 5.2, 6.8);
      case "types.wattHours" -> List.of(294.0, 150.0, 98.0);
      case "types.outputs" -> List.of("12/24", "12/24", "12/24", "24", "24", "12", "12;48", "13");
      case "types.maxAmps" -> List.of(30.0, 20.0, 12.0);
      case "types.mount", "positions.mount" -> List.of("", "", "V", "V", "V", "B");
      case "chargers.mount" -> List.of("V", "V", "V, B", "B");
      case "types.resistance" -> List.of(45.0, 75.0);
      case "types.health" -> List.of(1.0, 0.9);
      case "stock.owned" -> List.of(2.0, 3.0, 4.0, 3.0, 4.0, 2.0, 1.0, 2.5);
      case "stock.hired" -> List.of(1.0, 2.0);
      case "stock.reserve" -> List.of(0.0, 1.0);
      case "stock.lent" -> List.of("", "", "", "", "", "B1", "B2", "B3-B4");
      case "stock.out" -> List.of("", "", "", "", "", "B1", "B4", "b2");
      case "stock.lentFrom", "stock.backOn" -> List.of("", 46_419.0, 46_420.0, 46_422.0);
      case "stock.first" -> List.of("", "", "", "", "", "", "", "", 61.0, 81.0);
      case "positions.position", "devices.position", "atNow.position" ->
          List.of("a", "b", "c", "d", "e", "f");
      case "disposables.cell" -> List.of("AA", "AAA", "9 V", "aa");
      case "disposables.hours" -> List.of(4.0, 8.0, 20.0);
      case "disposables.cells" -> List.of(1.0, 2.0, 1.5);
      case "positions.power" -> List.of("", "", "", 50.0, 92.0);
      case "positions.input" -> List.of("", "", "", "11-36", "11-36", "11–17 V", "12");
      case "positions.volts" -> List.of(24.0, 24.0, 24.0, 24.0, 12.0, 48.0);
      case "positions.priority" -> List.of(1.0, 2.0, 50.0, 70.0);
      case "positions.quantity" -> List.of(1.0, 2.0, 3.0);
      case "positions.connection" ->
          List.of("", "", "", "", "one", "hot-swap", "series", "parallel");
      case "positions.atOnce" -> List.of("", "", "", "", "", 1.0, 2.0);
      case "positions.changeAt" -> List.of(0.0, 0.1, 0.2);
      case "positions.cable" -> List.of("", "", 2.0, 10.0);
      case "positions.cableSize" -> List.of("2.5 mm²", "12 AWG", "1.5 mm²", "4 mm²");
      case "positions.fromDay" -> List.of("", "", 46_419.0, 46_420.0, 46_421.0);
      case "positions.toDay" -> List.of("", "", 46_420.0, 46_421.0);
      case "devices.watts" -> List.of(92.0, 38.0, 14.0, 120.0, 50.0, 9.0);
      case "devices.minVolts" -> List.of(11.0, 11.0, 11.0, 20.0, 10.0);
      case "devices.maxVolts" -> List.of(36.0, 36.0, 36.0, 36.0, 35.0, 18.0, 70.0);
      case "devices.quantity" -> List.of("", "", 1.0, 2.0);
      case "devices.converter" -> List.of("", "", 0.92, 0.85);
      case "devices.from" -> List.of("", "", at(9, 0), at(11, 30));
      case "devices.to" -> List.of("", "", at(12, 30), at(17, 0));
      case "supplies.supply", "chargers.supply" -> List.of("s", "t", "u", "v", "w");
      case "supplies.watts" -> List.of(1000.0, 400.0, 300.0, 200.0, 20_000.0);
      case "supplies.wattHours" -> List.of("", "", 1000.0, 400.0);
      case "chargers.charger" -> List.of("c1", "c2", "c3", "c4", "c5", "c6", "c7", "c8");
      case "chargers.channels" -> List.of(1.0, 2.0, 4.0);
      case "chargers.amps" -> List.of(3.0, 4.0, 5.0, 8.0);
      case "chargers.atOnce" -> List.of("", 1.0, 2.0, 3.0);
      case "chargers.usable" -> List.of("", 0.9, 0.8);
      case "chargers.powerFrom" -> List.of("", "", at(7, 0), at(19, 0));
      case "chargers.powerTo" -> List.of("", "", at(18, 0), at(7, 0));
      case "chargers.offFrom" -> List.of("", "", at(10, 0));
      case "chargers.offTo" -> List.of("", "", at(12, 0));
      case "chargers.roundTrip" -> List.of("", 20.0, 35.0);
      case "chargers.air" -> List.of(12.0, 20.0, 20.0, 8.0, 2.0);
      case "chargers.warmUp" -> List.of(1.0, 1.0, 1.5, 0.3, 0.01);
      case "atCall.number", "atNow.number" -> List.of("B1", "B2", "B3", "B4", 5.0, "B77");
      case "atCall.charge", "atNow.charge" -> List.of(0.2, 0.5, 0.8, 1.0);
      default -> List.of();
    };
  }
}
