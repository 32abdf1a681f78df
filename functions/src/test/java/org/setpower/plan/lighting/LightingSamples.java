package org.setpower.plan.lighting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.Ranges;

/** Plans to begin tests from: the invented production on the salt works, and a stage. */
final class LightingSamples {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private LightingSamples() {}

  /** A date as a cell holds it. */
  static double day(String iso) {
    return LocalDate.parse(iso).toEpochDay() - DAY_ZERO.toEpochDay();
  }

  /** A time as a cell holds it. */
  static double clock(int hour, int minute) {
    return (hour * 60 + minute) / 1440.0;
  }

  /** Keys and cells of a row of Outlets, of those that most rows have first. */
  static Object[] outletRow(
      String distro, String numbers, String connector, String breaker, Object... more) {
    List<Object> cells =
        new ArrayList<>(
            List.of(
                "distro", distro, "numbers", numbers, "connector", connector, "breaker", breaker));
    cells.addAll(List.of(more));
    return cells.toArray();
  }

  /** A utility supply of 63 A, a distro of six 16 A outlets on 25 m of 5G16, one lamp. */
  static Ranges quay() {
    return Ranges.of(LightingModel.MODEL)
        .row("project", "units", "metric", "rule", "BS 7671", "installation", "free")
        .row(
            "days",
            "date",
            day("2027-02-01"),
            "call",
            clock(7, 0),
            "wrap",
            clock(18, 0),
            "warmest",
            8)
        .row(
            "supplies",
            "name",
            "quay",
            "type",
            "utility",
            "system",
            "3PH",
            "volts",
            400,
            "breaker",
            63,
            "curve",
            "B",
            "existing",
            12,
            "rcd",
            300,
            "rcdType",
            "S",
            "zs",
            0.15)
        .row(
            "supplies", "name", "A", "type", "distro", "system", "3PH", "breaker", 63, "curve", "B")
        .row(
            "outlets",
            outletRow(
                "A",
                "1–6",
                "IEC 60309 16 A 3-pin",
                "16",
                "legs",
                "in turn",
                "curve",
                "B",
                "rcd",
                "30"))
        .row("runs", "to", "A", "from", "quay", "length", 25, "size", "5G16", "type", "rubber")
        .row(
            "equipment",
            "item",
            "LED 1600",
            "watts",
            1600,
            "powerFactor",
            0.98,
            "harmonic",
            0.1,
            "inrush",
            "electronic")
        .row("loads", "item", "LED 1600", "place", "A-2");
  }

  /** The same with a lamp that is a resistance: its current does not rise as the voltage drops. */
  static Ranges tungsten() {
    return quay().set("equipment", 1, "inrush", "tungsten");
  }

  /** A-7 of 32 A without an RCD of its own feeds distro B. */
  static Ranges feeder(String rcdOfDistro) {
    return quay()
        .row(
            "outlets",
            outletRow("A", "7", "IEC 60309 32 A 5-pin", "32", "curve", "B", "rcd", "none"))
        .row(
            "supplies", "name", "B", "type", "distro", "system", "3PH", "breaker", 32, "curve", "B")
        .row("runs", "to", "B", "from", "A-7", "length", 20, "size", "5G6", "type", "rubber")
        .row(
            "outlets",
            outletRow(
                "B",
                "1–3",
                "IEC 60309 16 A 3-pin",
                "16",
                "legs",
                "in turn",
                "curve",
                "B",
                "rcd",
                rcdOfDistro))
        .row("loads", "item", "LED 1600", "place", "B-1");
  }

  /** A feeder behind a generator whose size and tank are too small. */
  static Ranges shortOfFuel() {
    return feeder("30")
        .set("equipment", 1, "watts", 12_000)
        .set("project", 1, "headroom", 0.2)
        .set("supplies", 1, "type", "generator", "existing", "")
        .row("generators", "name", "quay", "kva", 40, "tank", 5);
  }

  /** A generator on the salt pans with what a gaffer fills in. */
  static Ranges pans() {
    Ranges pans =
        Ranges.of(LightingModel.MODEL)
            .row(
                "project",
                "units",
                "metric",
                "rule",
                "VDE 0298-4",
                "installation",
                "free",
                "maxDrop",
                0.05,
                "dayShown",
                day("2027-02-02"),
                "spareCable",
                0.1,
                "headroom",
                0.2,
                "maxImbalance",
                0.3)
            .row(
                "days",
                "date",
                day("2027-02-02"),
                "call",
                clock(7, 0),
                "wrap",
                clock(17, 30),
                "warmest",
                9)
            .row(
                "days",
                "date",
                day("2027-02-04"),
                "call",
                clock(16, 0),
                "wrap",
                clock(3, 0),
                "warmest",
                2)
            .row("groups", "group", "scene 12", "on", "yes")
            .row("groups", "group", "scene 40", "on", "no")
            .row("sizes", "kva", 25)
            .row("sizes", "kva", 37.5)
            .row("sizes", "kva", 50)
            .row(
                "supplies",
                "name",
                "set",
                "type",
                "generator",
                "location",
                "behind the dike",
                "system",
                "3PH",
                "volts",
                400,
                "breaker",
                63,
                "curve",
                "C",
                "rcd",
                300,
                "rcdType",
                "S",
                "zs",
                0.3,
                "electrician",
                "generator operator")
            .row("supplies", "name", "A2", "type", "distro", "location", "dike", "breaker", 63)
            .row(
                "supplies",
                "name",
                "B2",
                "type",
                "distro",
                "system",
                "3PH",
                "breaker",
                32,
                "curve",
                "C")
            .row(
                "supplies",
                "name",
                "pier",
                "type",
                "socket outlet",
                "system",
                "1PH",
                "volts",
                230,
                "breaker",
                16,
                "curve",
                "C",
                "existing",
                7,
                "rcd",
                30,
                "zs",
                0.4,
                "from",
                clock(17, 0),
                "to",
                clock(20, 30))
            .row(
                "outlets",
                outletRow(
                    "A2",
                    "1–6",
                    "IEC 60309 16 A 3-pin",
                    "16",
                    "legs",
                    "in turn",
                    "curve",
                    "C",
                    "sharing",
                    1,
                    "rcd",
                    "30",
                    "rcdType",
                    "A"))
            .row(
                "outlets",
                outletRow(
                    "A2",
                    "7",
                    "IEC 60309 32 A 5-pin",
                    "32",
                    "curve",
                    "C",
                    "rcd",
                    "100",
                    "rcdType",
                    "S"))
            .row(
                "outlets",
                outletRow(
                    "B2",
                    "1-4",
                    "CEE 7 16 A",
                    "16",
                    "legs",
                    "in turn",
                    "curve",
                    "B",
                    "sharing",
                    2,
                    "rcd",
                    "30"))
            .row(
                "outlets",
                outletRow(
                    "B2",
                    "5",
                    "19-pin",
                    "16",
                    "legs",
                    "in turn",
                    "curve",
                    "C",
                    "circuits",
                    6,
                    "rcd",
                    "30"))
            .row(
                "runs",
                "to",
                "A2",
                "from",
                "set",
                "length",
                70,
                "size",
                "35 mm²",
                "type",
                "feeder",
                "cores",
                "5 single",
                "pieces",
                "25+25+20",
                "connector",
                "single-pole set",
                "parallel",
                1)
            .row(
                "runs",
                "to",
                "B2",
                "from",
                "A2-7",
                "length",
                20,
                "size",
                "5G6",
                "type",
                "rubber",
                "connector",
                "IEC 60309 32 A 5-pin")
            .row(
                "runs",
                "to",
                "bar",
                "from",
                "B2-5",
                "length",
                25,
                "size",
                "2.5 mm²",
                "type",
                "multi-circuit",
                "installation",
                "free")
            .row(
                "runs",
                "to",
                "dike end",
                "from",
                "A2-1",
                "length",
                40,
                "size",
                "3G4",
                "type",
                "rubber",
                "installation",
                "bunched 2",
                "pieces",
                "20+20",
                "temperatureClass",
                "90",
                "air",
                20,
                "makersRating",
                34,
                "ratingSource",
                "data sheet",
                "connector",
                "IEC 60309 32 A 3-pin")
            .row(
                "runs", "to", "deck", "from", "pier", "length", 10, "size", "1.5 mm²", "type",
                "cord")
            .row(
                "equipment",
                "item",
                "LED 1600",
                "watts",
                1600,
                "powerFactor",
                0.98,
                "harmonic",
                0.1,
                "leading",
                "no",
                "inrush",
                "electronic",
                "minVolts",
                200,
                "maxVolts",
                250,
                "leakage",
                1.5,
                "stock",
                3,
                "plug",
                "IEC 60309 16 A 3-pin",
                "start",
                1.5)
            .row(
                "equipment",
                "item",
                "haze",
                "watts",
                1500,
                "inrush",
                "motor",
                "powerFactor",
                0.9,
                "connection",
                "line-neutral",
                "harmonic",
                0)
            .row(
                "equipment", "item", "practical", "watts", 150, "inrush", "tungsten", "harmonic", 0)
            .row(
                "equipment",
                "item",
                "HMI",
                "watts",
                4000,
                "powerFactor",
                0.95,
                "connection",
                "line-line",
                "harmonic",
                0.05)
            .row(
                "equipment",
                "item",
                "wind machine",
                "watts",
                5000,
                "powerFactor",
                0.85,
                "connection",
                "three-phase",
                "inrush",
                "motor",
                "start",
                2)
            .row(
                "loads",
                "item",
                "LED 1600",
                "place",
                "A2-1",
                "quantity",
                1,
                "level",
                0.6,
                "fromDay",
                day("2027-02-02"),
                "toDay",
                day("2027-02-02"),
                "from",
                clock(8, 0),
                "to",
                clock(17, 0),
                "group",
                "scene 12",
                "department",
                "electric",
                "location",
                "dike",
                "connection",
                "line-neutral")
            .row("loads", "item", "LED 1600", "place", "B2-1…4", "quantity", 6)
            .row("loads", "item", "haze", "place", "bar-3")
            .row("loads", "item", "practical", "place", "dike end", "quantity", 4)
            .row("loads", "item", "practical", "place", "A2", "quantity", 2, "leg", "L2")
            .row("loads", "item", "haze", "place", "A2", "group", "scene 40")
            .row("loads", "item", "wind machine", "place", "A2-7")
            .row("loads", "item", "HMI", "place", "A2-7", "leg", "L2-L3")
            .row(
                "loads",
                "item",
                "practical",
                "place",
                "deck",
                "from",
                clock(17, 15),
                "to",
                clock(20, 0))
            .row(
                "generators",
                "name",
                "set",
                "kva",
                50,
                "engine",
                "diesel turbo",
                "altitude",
                5,
                "intake",
                35,
                "bond",
                "at generator",
                "fromDay",
                day("2027-02-01"),
                "toDay",
                day("2027-02-05"),
                "before",
                45,
                "after",
                30,
                "offFrom",
                clock(23, 0),
                "offTo",
                clock(2, 0),
                "tank",
                120,
                "usable",
                0.9,
                "fuelPrice",
                1.62)
            .row(
                "cableStock",
                "type",
                "rubber",
                "size",
                "6 mm²",
                "cores",
                "5",
                "length",
                20,
                "pieces",
                1)
            .row("cableStock", "type", "feeder", "size", "35 mm²", "length", 25, "pieces", 7)
            .row(
                "readings",
                "place",
                "A2",
                "date",
                day("2027-02-02"),
                "time",
                clock(12, 30),
                "l1",
                30,
                "l2",
                12,
                "l3",
                9);
    return pans;
  }

  /** A stage on 120/208 V: a switch of 400 A, single-core 4/0, lunch boxes on pairs. */
  static Ranges stage() {
    return Ranges.of(LightingModel.MODEL)
        .row("project", "units", "US", "rule", "NEC", "installation", "free", "spareCable", 0.1)
        .row(
            "days",
            "date",
            day("2027-02-05"),
            "call",
            clock(8, 0),
            "wrap",
            clock(20, 0),
            "warmest",
            77)
        .row(
            "supplies",
            "name",
            "switch",
            "type",
            "house power",
            "system",
            "3PH",
            "volts",
            208,
            "breaker",
            400,
            "zs",
            0.02)
        .row("supplies", "name", "D1", "type", "distro", "breaker", 400)
        .row("supplies", "name", "lunch box", "type", "distro")
        .row(
            "outlets",
            outletRow("D1", "1-6", "stage pin 100 A", "100", "legs", "in turn", "rcd", "none"))
        .row("outlets", outletRow("D1", "7-9", "4-wire 100 A", "100", "legs", "pairs in turn"))
        .row("outlets", outletRow("D1", "10", "19-pin", "20", "legs", "in turn", "rcd", "5"))
        .row("outlets", outletRow("lunch box", "1-4", "NEMA 5-20", "20", "sharing", 2, "rcd", "5"))
        .row(
            "runs",
            "to",
            "D1",
            "from",
            "switch",
            "length",
            100,
            "size",
            "4/0",
            "type",
            "feeder",
            "cores",
            "5 single",
            "temperatureClass",
            "75",
            "pieces",
            "50+50")
        .row(
            "runs",
            "to",
            "lunch box",
            "from",
            "D1-1",
            "length",
            50,
            "size",
            "2 AWG",
            "type",
            "cord",
            "cores",
            "3")
        .row(
            "runs",
            "to",
            "pipe",
            "from",
            "D1-10",
            "length",
            75,
            "size",
            "12 AWG",
            "type",
            "multi-circuit")
        .row("equipment", "item", "tungsten 2 kW", "watts", 2000, "inrush", "tungsten")
        .row(
            "equipment",
            "item",
            "tungsten 5 kW",
            "watts",
            5000,
            "inrush",
            "tungsten",
            "connection",
            "line-line",
            "maxVolts",
            240)
        .row("loads", "item", "tungsten 2 kW", "place", "lunch box-1")
        .row("loads", "item", "tungsten 2 kW", "place", "pipe-1")
        .row("loads", "item", "tungsten 2 kW", "place", "pipe-2")
        .row("loads", "item", "tungsten 5 kW", "place", "D1-7")
        .row("loads", "item", "tungsten 5 kW", "place", "D1-8")
        .row("loads", "item", "tungsten 5 kW", "place", "D1-9");
  }

  /** What is wrong on a set now and then, each once. */
  static Ranges faults() {
    Ranges faults = quay().set("supplies", 1, "existing", "").set("project", 1, "rule", "BS 7671");
    faults.set("supplies", 1, "rcd", "").set("days", 1, "warmest", 30);
    faults.row(
        "supplies",
        "name",
        "small set",
        "type",
        "generator",
        "system",
        "3PH",
        "breaker",
        63,
        "curve",
        "C",
        "zs",
        0.2);
    faults.row("generators", "name", "small set", "kva", 20, "bond", "both", "altitude", 5000);
    faults.row("supplies", "name", "C", "type", "distro", "breaker", 32);
    faults.row("supplies", "name", "D", "type", "distro", "breaker", 125);
    faults.row("supplies", "name", "wall", "type", "socket outlet", "system", "1PH", "breaker", 16);
    faults.row(
        "supplies", "name", "mains", "type", "utility", "system", "3PH", "breaker", 125, "zs", 0.1);
    faults.row("supplies", "name", "blank", "type", "utility");
    faults.row("supplies", "name", "loop", "type", "distro");
    faults.row(
        "outlets", outletRow("A", "7", "IEC 60309 32 A 5-pin", "32", "curve", "C", "rcd", "none"));
    faults.row(
        "outlets",
        outletRow("A", "8", "19-pin", "16", "legs", "in turn", "curve", "C", "rcd", "30"));
    faults.row(
        "outlets", outletRow("D", "1-3", "single-pole set", "63", "curve", "C", "rcd", "none"));
    faults.row(
        "runs", "to", "C", "from", "small set", "length", 2, "size", "5G10", "type", "rubber");
    faults.row("runs", "to", "D", "from", "mains", "length", 30, "size", "5G35", "type", "rubber");
    faults.row(
        "runs",
        "to",
        "bar",
        "from",
        "A-8",
        "length",
        25,
        "size",
        "2.5 mm²",
        "type",
        "multi-circuit");
    faults.row(
        "runs",
        "to",
        "far",
        "from",
        "A-7",
        "length",
        300,
        "size",
        "5G2.5",
        "type",
        "rubber",
        "makersRating",
        30);
    faults.row(
        "runs", "to", "loop", "from", "loop", "length", 3, "size", "5G2.5", "type", "rubber");
    faults.row(
        "runs", "to", "hot", "from", "A-3", "length", 3, "size", "3G2.5", "type", "cord", "air", 80,
        "pieces", "1+1");
    faults.row(
        "runs",
        "to",
        "drum",
        "from",
        "A-4",
        "length",
        3,
        "size",
        "3G2.5",
        "type",
        "cord",
        "installation",
        "closed drum",
        "pieces",
        "one");
    faults.row(
        "runs", "to", "thin", "from", "A-5", "length", 3, "size", "0.5 mm²", "type", "feeder");
    faults.row(
        "runs", "to", "none", "from", "A-1…3", "length", 3, "size", "thick", "type", "cord",
        "cores", "3");
    faults.row(
        "runs", "to", "few", "from", "D-1", "length", 3, "size", "3G2.5", "type", "rubber", "cores",
        "3");
    faults.row("runs", "to", "weak", "from", "A-6", "length", 900, "size", "3G1.5", "type", "cord");
    faults.row("runs", "to", "wall", "from", "A-6", "length", 9, "size", "3G1.5", "type", "cord");
    faults.row("runs", "to", "tip", "from", "blank", "length", 9, "size", "3G1.5", "type", "cord");
    faults.row("runs", "to", "rest", "from", "D-2", "length", 9, "size", "5G16", "type", "rubber");
    faults.row("equipment", "item", "heater", "watts", 9000, "inrush", "none", "minVolts", 229);
    faults.row(
        "equipment",
        "item",
        "dimmer",
        "watts",
        5200,
        "powerFactor",
        0.6,
        "harmonic",
        1,
        "minVolts",
        229);
    faults.row("equipment", "item", "US lamp", "watts", 500, "harmonic", 0, "maxVolts", 130);
    faults.row("loads", "item", "heater", "place", "weak");
    faults.row("loads", "item", "heater", "place", "wall");
    faults.row("loads", "item", "dimmer", "place", "rest", "quantity", 1, "leg", "L1");
    faults.row("loads", "item", "dimmer", "place", "rest", "quantity", 1, "leg", "L2");
    faults.row("loads", "item", "dimmer", "place", "rest", "quantity", 1, "leg", "L3");
    faults.row("loads", "item", "dimmer", "place", "far", "leg", "L1");
    faults.row("loads", "item", "heater", "place", "C", "leg", "L1", "quantity", 4);
    faults.row("loads", "item", "US lamp", "place", "bar-1");
    faults.row("loads", "item", "US lamp", "place", "bar-2");
    faults.row("loads", "item", "US lamp", "place", "bar-3");
    faults.row("readings", "place", "nowhere", "date", day("2027-02-01"), "time", 0.5, "l1", 9);
    faults.row("readings", "place", "A", "date", day("2027-02-01"), "time", 0.5, "l1", 99);
    faults.row(
        "runs",
        "to",
        "set end",
        "from",
        "small set",
        "length",
        10,
        "size",
        "5G16",
        "type",
        "rubber");
    faults.row("equipment", "item", "ballast", "watts", 500, "leading", "yes");
    faults.row("loads", "item", "ballast", "place", "set end");
    return faults;
  }

  /** Typical cells, so that rows of random tables meet. */
  static List<Object> values(InputColumn column) {
    return switch (column.key()) {
      case "units" -> List.of("metric", "metric", "US");
      case "installation" ->
          List.of("free", "free", "free", "bunched 3", "drum 2 layers", "closed drum");
      case "date", "dayShown", "fromDay", "toDay" ->
          List.of(day("2027-02-01"), day("2027-02-02"), day("2027-02-04"));
      case "call", "wrap", "time", "offFrom", "offTo" ->
          List.of(clock(5, 30), clock(7, 0), clock(12, 0), clock(18, 0), clock(23, 0));
      case "air" ->
          "runs".equals(column.table())
              ? List.of(5.0, 25.0, 38.0, 90.0)
              : List.of(5.0, 25.0, 38.0, 58.0);
      case "warmest", "intake" -> List.of(5.0, 25.0, 38.0, 90.0);
      case "coldest" -> List.of(-20.0, 5.0, 20.0);
      case "consumption" -> List.of(6.0, 9.5);
      case "group" -> List.of("scene 1", "scene 2");
      case "name" -> List.of("S", "A", "B", "C");
      case "distro" -> List.of("A", "B", "A", "S");
      case "system" -> List.of("3PH", "3PH", "1PH", "split");
      case "volts" -> List.of(400.0, 230.0, 208.0);
      case "numbers" -> List.of("1-3", "4", "1–2", "5…6", "x");
      case "connector", "plug" ->
          List.of(
              "IEC 60309 16 A 3-pin",
              "IEC 60309 32 A 5-pin",
              "CEE 7 16 A",
              "19-pin",
              "4-wire 100 A");
      case "breaker" ->
          column.type() == String.class
              ? List.of("16", "32", "through", "20 A", "big")
              : List.of(63.0, 32.0, 400.0);
      case "rcd" ->
          column.type() == String.class
              ? List.of("30", "300", "upstream", "none", "?")
              : List.of(30.0, 300.0);
      case "together" -> List.of("gaffer", "best boy");
      case "sharing" -> List.of(1.0, 2.0);
      case "circuits" -> List.of(1.0, 3.0, 6.0);
      case "to" ->
          "runs".equals(column.table())
              ? List.of("A", "B", "C", "end", "bar")
              : List.of(clock(6, 0), clock(17, 0), clock(23, 0));
      case "from" ->
          "runs".equals(column.table())
              ? List.of("S", "S", "A-1", "A-4", "B-2", "end", "A-1…3", "A")
              : List.of(clock(6, 0), clock(17, 0), clock(23, 0));
      case "place" ->
          List.of("A-1", "A-2", "A-4", "B-1", "B-2", "end", "bar-2", "A-1…3", "A", "S", "A-4.1");
      case "length" -> List.of(2.0, 25.0, 70.0, 400.0);
      case "pieces" ->
          column.type() == String.class ? List.of("25", "20+25", "2x50", "a") : List.of(2.0, 9.0);
      case "size" ->
          List.of("2.5 mm²", "5G16", "35 mm²", "12 AWG", "4/0", "1.5 mm²", "0.5 mm²", "12");
      case "item" -> List.of("lamp", "heater", "motor");
      case "watts" -> List.of(150.0, 1600.0, 9000.0);
      case "quantity" -> List.of(1.0, 2.0, 7.0);
      case "altitude" -> List.of(5.0, 900.0, 3500.0);
      case "kva" -> List.of(20.0, 50.0, 100.0);
      default -> List.of();
    };
  }
}
