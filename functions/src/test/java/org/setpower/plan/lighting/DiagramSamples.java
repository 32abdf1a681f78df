package org.setpower.plan.lighting;

import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;

import org.setpower.plan.common.Ranges;

/** Plans as they are drawn: an exterior at night, a stage, plans of any size. */
public final class DiagramSamples {
  private static final String[] LAMPS = {"LED 1600", "large panel", "fresnel", "haze", "practical"};

  private DiagramSamples() {}

  private static Ranges begin(String units, String rule) {
    return Ranges.of(LightingModel.MODEL)
        .row("project", "units", units, "rule", rule, "installation", "free")
        .row(
            "days",
            "date",
            day("2027-02-04"),
            "call",
            clock(16, 0),
            "wrap",
            clock(3, 0),
            "warmest",
            "US".equals(units) ? 77 : 2)
        .row("equipment", "item", "LED 1600", "watts", 1600, "powerFactor", 0.98, "harmonic", 0.05)
        .row(
            "equipment", "item", "large panel", "watts", 400, "powerFactor", 0.96, "harmonic", 0.05)
        .row("equipment", "item", "fresnel", "watts", 650, "inrush", "tungsten")
        .row("equipment", "item", "haze", "watts", 1500, "inrush", "motor")
        .row("equipment", "item", "practical", "watts", 150, "inrush", "tungsten");
  }

  private static void outlets(
      Ranges plan, String distro, String numbers, String connector, String breaker, String rcd) {
    plan.row(
        "outlets",
        "distro",
        distro,
        "numbers",
        numbers,
        "connector",
        connector,
        "breaker",
        breaker,
        "curve",
        "C",
        "rcd",
        rcd,
        "rcdType",
        "30".equals(rcd) ? "A" : "S");
  }

  private static void run(Ranges plan, String to, String from, int length, String size) {
    plan.row("runs", "to", to, "from", from, "length", length, "size", size, "type", "rubber");
  }

  /** The salt pans at night: 20 cable runs over four distros. */
  public static Ranges night() {
    Ranges plan = begin("metric", "VDE 0298-4");
    plan.set("project", 1, "dayShown", day("2027-02-04"));
    plan.row(
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
        125,
        "curve",
        "C",
        "rcd",
        300,
        "rcdType",
        "S",
        "zs",
        0.1);
    plan.row(
        "generators",
        "name",
        "set",
        "kva",
        100,
        "engine",
        "diesel turbo",
        "altitude",
        5,
        "intake",
        20,
        "bond",
        "at generator");
    plan.row("supplies", "name", "A1", "type", "distro", "location", "dike", "breaker", 125);
    plan.row("supplies", "name", "B1", "type", "distro", "location", "pans, north", "breaker", 32);
    plan.row("supplies", "name", "B2", "type", "distro", "location", "pans, south", "breaker", 32);
    plan.row("supplies", "name", "C", "type", "distro", "location", "jetty", "breaker", 63);
    outlets(plan, "A1", "1–6", "IEC 60309 16 A 3-pin", "16", "30");
    outlets(plan, "A1", "7–8", "IEC 60309 32 A 5-pin", "32", "30");
    outlets(plan, "A1", "9", "IEC 60309 63 A 5-pin", "63", "100");
    outlets(plan, "B1", "1–6", "IEC 60309 16 A 3-pin", "16", "30");
    outlets(plan, "B2", "1–6", "IEC 60309 16 A 3-pin", "16", "30");
    outlets(plan, "C", "1–6", "IEC 60309 16 A 3-pin", "16", "30");
    plan.row(
        "runs",
        "to",
        "A1",
        "from",
        "set",
        "length",
        70,
        "size",
        "35 mm²",
        "type",
        "feeder",
        "cores",
        "5 single");
    run(plan, "B1", "A1-7", 40, "5G6");
    run(plan, "B2", "A1-8", 50, "5G6");
    run(plan, "C", "A1-9", 30, "5G16");
    String[] from = {
      "A1-1", "A1-2", "A1-3", "A1-4", "B1-1", "B1-2", "B1-3", "B1-4", "B2-1", "B2-2", "B2-3",
      "B2-4", "C-1", "C-2", "C-3", "C-4"
    };
    for (int i = 0; i < from.length; i++) {
      String end = "T" + (i + 1);
      run(plan, end, from[i], 10 + 5 * (i % 4), "3G2.5");
      plan.row("loads", "item", LAMPS[i % LAMPS.length], "place", end, "quantity", 1 + i % 2);
    }
    return plan;
  }

  /** The same with a cable too thin for its breaker and a load on a place that does not exist. */
  public static Ranges nightWithStops() {
    Ranges plan = night();
    plan.set("runs", 2, "size", "5G1.5");
    plan.row("loads", "item", "haze", "place", "B2-9");
    return plan;
  }

  /** A stage on 120/208 V with two distros and a multi-circuit cable. */
  public static Ranges stage() {
    Ranges plan = LightingSamples.stage();
    plan.row("supplies", "name", "D2", "type", "distro", "location", "grid", "breaker", 400);
    plan.row(
        "outlets",
        "distro",
        "D2",
        "numbers",
        "1-6",
        "connector",
        "stage pin 60 A",
        "legs",
        "in turn",
        "breaker",
        "60");
    plan.row(
        "outlets",
        "distro",
        "D1",
        "numbers",
        "20",
        "connector",
        "single-pole set",
        "breaker",
        "through");
    plan.row(
        "runs",
        "to",
        "D2",
        "from",
        "D1-20",
        "length",
        60,
        "size",
        "4/0",
        "type",
        "feeder",
        "cores",
        "5 single",
        "temperatureClass",
        "75");
    for (int i = 1; i <= 4; i++) {
      plan.row(
          "runs",
          "to",
          "tail " + i,
          "from",
          "D2-" + i,
          "length",
          25,
          "size",
          "6 AWG",
          "type",
          "cord",
          "cores",
          "3");
      plan.row(
          "loads", "item", "tungsten 5 kW", "place", "tail " + i, "connection", "line-neutral");
    }
    return plan;
  }

  /** Distros on a source, with as many tails each. */
  public static Ranges tails(int distros, int tails) {
    Ranges plan = begin("metric", "VDE 0298-4");
    plan.row(
        "supplies",
        "name",
        "mains",
        "type",
        "utility",
        "system",
        "3PH",
        "volts",
        400,
        "breaker",
        250,
        "curve",
        "C",
        "rcd",
        300,
        "rcdType",
        "S",
        "zs",
        0.05);
    for (int d = 1; d <= distros; d++) {
      plan.row("supplies", "name", "D" + d, "type", "distro", "breaker", 63);
      outlets(plan, "D" + d, "1-" + tails, "IEC 60309 16 A 3-pin", "16", "30");
      run(plan, "D" + d, "mains", 20, "5G95");
      for (int t = 1; t <= tails; t++) {
        String end = "T" + d + "." + t;
        run(plan, end, "D" + d + "-" + t, 5 + t, "3G2.5");
        plan.row("loads", "item", LAMPS[t % 2], "place", end, "quantity", 1);
      }
    }
    return plan;
  }
}
