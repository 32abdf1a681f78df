package org.setpower.templates.lighting;

import org.setpower.plan.lighting.LightingModel;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.registry.groups.CableFunctions;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.plan.LeafColumn;
import org.setpower.templates.plan.PlanChart;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanText;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.CellStyle;
import org.setpower.templates.spec.FieldSpec;

/** The lighting power plan of gaffer, best boy and generator operator. */
public final class LightingPowerPlan implements PlanTemplate {
  private static final String ISOLATE =
      "Planning figures. Isolate the supply before any connection is changed.";
  private static final String ELECTRICIAN =
      "A competent person connects, tests and signs for every source. Local codes decide.";
  private static final String SINGLES =
      "Single-core feeders: switch the supply off before you connect them. Connect earth (ground)"
          + " first, then neutral, then phases. Disconnect in reverse order.";
  private static final String DRUMS = "Unwind every cable drum before it is loaded.";
  private static final String RCDS =
      "Press the test button of every RCD (GFCI) before use. Do not bridge one that trips.";
  private static final String BATTERIES =
      "Do not charge lithium batteries below 0 °C (32 °F). Do not use a dropped, wet or swollen"
          + " battery.";
  private static final String FUMES =
      "Do not run a generator where fumes can collect. Do not refuel it while it runs or is hot.";

  private static final int NARROW = 16;

  private final PlanWorkbook book =
      PlanWorkbook.of("lighting-power-plan", "Lighting power plan", LightingModel.MODEL)
          .purpose(
              "Sources, distros, cables and loads of a set: amps on each leg, cable sizes,"
                  + " generator, what to order.")
          .unitsBy("project.units", "US")
          .unitsAsked(MeasureSystem::asked);

  /** Declares the plan. */
  public LightingPowerPlan() {
    PlanList hours = book.list("", 24, "hours", "at", "first", "second", "third", "fourth");
    book.with(
        project(),
        PlanTab.of(
                "Sources & distro",
                "One row for each source and each distro. A cable run feeds each distro; its"
                    + " outlets are listed below, from row 52. Outlet 3 of distro A is called A-3.")
            .aligned()
            .with(
                book.table("supplies")
                    .width("curve", NARROW)
                    .optional("existing", "electrician")
                    .shows("available", "amps1", "amps2", "amps3", "headroom")
                    .more("neutral", "imbalance", "peakDate", "peakAt", "fedFrom"),
                book.table("outlets")
                    .titled("Outlets")
                    .pick("distro", "supplies.name")
                    .width("connector", 40)
                    .width("breaker", NARROW)
                    .width("curve", NARROW)
                    .optional("rcdType", "together")
                    .shows("legsOf", "used", "peak", "peakPlace", "protects")
                    .width("legsOf", 52)
                    .width("peakPlace", NARROW)),
        PlanTab.of(
                "Loads",
                "One row for each item and place. Fill in item, place and qty first; the place"
                    + " decides leg and breaker. Items are those of the tab Equipment: show it with"
                    + " Set Power ▸ Show tabs….")
            .with(
                book.table("loads")
                    .width("item", 38)
                    .pick("item", "equipment.item")
                    .pick("group", "groups.group")
                    .optional("connection", "location")
                    .shows("legUsed", "amps", "shared")
                    .more("upstream", "volts", "power")),
        PlanTab.of(
                "Cable runs",
                "One row for each cable run: destination, from, length, size and type first. From names an"
                    + " outlet, a source or the end of another run.")
            .with(
                book.table("runs")
                    .width("ratingTable", 160)
                    .optional("pieces", "ratingSource")
                    .leaf(
                        LeafColumn.of("Voltage drop", CableFunctions.DROP)
                            .with("size", "runs.size")
                            .with("length", "runs.metres")
                            .with("amps", "runs.dropAmps")
                            .with("system", "runs.system")
                            .with("power_factor", "runs.powerFactor")
                            .with("parallel", "runs.parallel")
                            .where("runs.powerFactor")
                            .shown("V", CellFormat.TWO))
                    .shows("rating", "upstream", "amps", "totalDrop", "minSize")
                    .more(
                        "protects",
                        "maxLength",
                        "volts",
                        "neutral",
                        "peakAt",
                        "airUsed",
                        "ratingTable",
                        "disconnects",
                        "loop",
                        "metres",
                        "system",
                        "dropAmps",
                        "powerFactor")),
        PlanTab.of(
                "Generator",
                "One row for each generator of Sources & distro. Decide its size last, beside the"
                    + " proposed one.")
            .aligned()
            .with(
                book.table("generators")
                    .optional("fuelPrice", "usable")
                    .pick("name", "supplies.name")
                    .shows("proposed", "needed", "share", "fuel", "refuelAt")
                    .more(
                        "refuelOn",
                        "left",
                        "load",
                        "power",
                        "engineLeft",
                        "starting",
                        "imbalance",
                        "derating",
                        "airUsed",
                        "hours",
                        "mean",
                        "cost",
                        "co2"),
                book.table("sizes").titled("Generators on offer"),
                PlanChart.lines(
                    "Load by hour", 16, "kW", hours, "at", "first", "second", "third", "fourth"),
                hours),
        PlanTab.of(
                "Batteries",
                BATTERIES
                    + " One row for each kind of light on batteries; their types are on Battery"
                    + " stock.")
            .with(
                book.table("batteryLoads")
                    .titled("Lights on batteries")
                    .width("item", 38)
                    .pick("item", "equipment.item")
                    .pick("battery", "batteryTypes.type")
                    .pick("group", "groups.group")
                    .optional("converter", "group")
                    .shows("runtime", "changes", "dark")),
        summary());
    hidden();
  }

  private PlanTab project() {
    return PlanTab.of(
            "Project",
            "Whether every cable, breaker and leg stands the load. Fill in units and days here,"
                + " then Sources & distro, Loads and Cable runs; read Summary.")
        .first()
        .with(
            PlanNotes.of(
                "The production",
                FieldSpec.input("Production").help("Printed on each page."),
                FieldSpec.input("Revision")
                    .number(CellFormat.COUNT, 0, 999)
                    .help("Add one whenever a paper goes out.")),
            book.fields(
                    "Rules",
                    "project",
                    "units",
                    "rule",
                    "installation",
                    "maxDrop",
                    "dayShown",
                    "headroom")
                .pick("dayShown", "days.date"),
            book.lines("Status of the plan", "summary", "verdict", "stops", "checks"),
            book.lines("Only this tab", "project", "verdict", "reasons"),
            book.table("days").titled("Days"),
            book.table("groups").titled("Groups of loads"));
  }

  private PlanTab summary() {
    return PlanTab.page("Summary", "What stops the plan, the legs of each source, open issues.")
        .grid(24)
        .prints(6)
        .result()
        .with(
            book.lines("", "summary", "day"),
            book.figures(
                4,
                "summary",
                "verdict",
                "stops",
                "checks",
                "power",
                "loadsFit",
                "loadsWithheld",
                "runsFit",
                "runsWithheld"),
            book.list(
                    "Sources and distros, each leg at its own peak",
                    10,
                    "legs",
                    "verdict",
                    "name",
                    "amps1",
                    "amps2",
                    "amps3",
                    "neutral",
                    "headroom",
                    "peakDate",
                    "peakAt")
                .width("name", 32)
                .width("neutral", 24)
                .width("headroom", 24)
                .width("peakDate", 24)
                .width("peakAt", 24),
            PlanText.cautions(ISOLATE, ELECTRICIAN, RCDS, SINGLES, DRUMS, FUMES),
            PlanText.moreTabs(
                "Equipment, Battery stock, Battery changes, Distribution, Loads by outlet, Cable"
                    + " pull, Diagram, Generator sheet, Order list, Distro labels, Load balance,"
                    + " Voltage comparison and Assumptions are hidden: show them with Set Power ▸"
                    + " Show tabs…, or with Show Sheet in the menu of a tab."),
            book.list("Open issues", 16, "issues", "verdict", "where", "reasons")
                .width("where", 48)
                .width("reasons", 128));
  }

  private void hidden() {
    book.with(
        PlanTab.of("Equipment", "One row for each type of device. Fill in item and power first.")
            .hidden()
            .with(
                book.table("equipment")
                    .width("item", 38)
                    .width("plug", 44)
                    .optional("leading", "leakage")
                    .shows("atOnce", "toHire")),
        PlanTab.of("Battery changes", "What goes on and what comes off. " + BATTERIES)
            .hidden()
            .upright()
            .with(
                book.list(
                        "",
                        120,
                        "batteryChanges",
                        "tick",
                        "date",
                        "by",
                        "item",
                        "piece",
                        "what",
                        "on",
                        "off",
                        "to")
                    .width("tick", 14)
                    .width("item", 38)
                    .width("on", 18)
                    .width("off", 18)
                    .width("to", 56)),
        PlanTab.of(
                "Battery stock",
                "One row for each type of battery, then one for each kind of charger. A charger is"
                    + " also an item of Loads, where its power counts. The + above the headings opens"
                    + " more columns.")
            .hidden()
            .aligned()
            .with(
                book.table("batteryTypes")
                    .titled("Battery types")
                    .optional("cells", "health")
                    .shows("fewest", "uncharged", "shortOf"),
                book.table("batteryChargers")
                    .titled("Chargers")
                    .pick("charger", "equipment.item")
                    .shows("power", "charges")),
        PlanTab.of("Distribution", "What is plugged where. " + ISOLATE)
            .hidden()
            .paper()
            .with(
                book.lines("", "summary", "day"),
                book.list(
                        "",
                        80,
                        "distribution",
                        "place",
                        "connector",
                        "plugged",
                        "breaker",
                        "rcd",
                        "legs",
                        "amps",
                        "neutral",
                        "clamp",
                        "nights",
                        "upstream",
                        "withheld")
                    .width("place", 22)
                    .width("connector", 38)
                    .width("plugged", 70)
                    .width("clamp", 18)
                    .width("breaker", 16)
                    .width("rcd", 14)
                    .width("legs", 18)
                    .width("amps", 16)
                    .width("neutral", 16)
                    .width("nights", 28)
                    .width("upstream", 18)
                    .width("withheld", 16)),
        PlanTab.of("Loads by outlet", "What to plug where. " + RCDS)
            .hidden()
            .upright()
            .with(
                book.lines("", "summary", "day", "loadsWithheld"),
                book.list(
                        "",
                        120,
                        "plugging",
                        "protectedOutlet",
                        "device",
                        "cable",
                        "on",
                        "quantity",
                        "legs",
                        "amps",
                        "location",
                        "verdict",
                        "tick")
                    .width("tick", 11)
                    .width("protectedOutlet", 26)
                    .width("device", 44)
                    .width("cable", 32)
                    .width("on", 32)
                    .width("quantity", 11)
                    .width("legs", 12)
                    .width("amps", 14)
                    .width("location", 18)
                    .width("verdict", 12)),
        PlanTab.of("Cable pull", "Which cable is laid where. " + DRUMS)
            .hidden()
            .upright()
            .with(
                PlanText.cautions(SINGLES),
                book.lines("", "summary", "day", "runsWithheld"),
                book.list("Cable by size", 8, "lengths", "size", "cores", "length", "runs")
                    .width("size", 20),
                book.list(
                        "Cable pull",
                        60,
                        "pull",
                        "end",
                        "feeds",
                        "cable",
                        "connector",
                        "from",
                        "length",
                        "laying",
                        "nights",
                        "verdict",
                        "tick")
                    .width("tick", 11)
                    .width("end", 28)
                    .width("feeds", 44)
                    .width("cable", 32)
                    .width("connector", 32)
                    .width("from", 17)
                    .width("length", 14)
                    .width("laying", 21)
                    .width("nights", 18)
                    .width("verdict", 12)),
        PlanTab.page(
                "Generator sheet",
                "For the generator operator: what to connect, running times, fuel, log.")
            .hidden()
            .grid(29, 8)
            .flowing()
            .prints(12)
            .with(
                book.lines("", "summary", "day"),
                book.list(
                        "What to connect",
                        2,
                        "sheet",
                        "name",
                        "location",
                        "electrician",
                        "size",
                        "breaker",
                        "rcd",
                        "outlet")
                    .width("name", 32)
                    .width("location", 32)
                    .width("electrician", 32)
                    .width("size", 16)
                    .width("breaker", 24)
                    .width("rcd", 24)
                    .width("outlet", 72)
                    .tall(3),
                book.list(
                        "Load and bonding",
                        2,
                        "sheet",
                        "name",
                        "bond",
                        "dayShown",
                        "amps1",
                        "amps2",
                        "amps3",
                        "neutral",
                        "needed",
                        "left",
                        "share")
                    .width("name", 32)
                    .width("bond", 32)
                    .width("dayShown", 24)
                    .width("amps1", 16)
                    .width("amps2", 16)
                    .width("amps3", 16)
                    .width("neutral", 24)
                    .width("needed", 24)
                    .width("left", 24)
                    .width("share", 24),
                book.list(
                        "Reasons", 2, "sheet", "verdict", "name", "refuelOn", "refuelAt", "reasons")
                    .width("verdict", 16)
                    .width("name", 32)
                    .width("refuelOn", 32)
                    .width("refuelAt", 24)
                    .width("reasons", 128)
                    .tall(3),
                PlanText.cautions(FUMES, RCDS, SINGLES, ELECTRICIAN),
                PlanText.notes("Log", "RCD tested by:                    at:"),
                book.list(
                        "Running times and log",
                        60,
                        "nights",
                        "generator",
                        "date",
                        "start",
                        "stop",
                        "hours",
                        "mean",
                        "fuel",
                        "meter",
                        "delivered")
                    .width("generator", 24)
                    .width("date", 32)
                    .width("start", 24)
                    .width("stop", 24)
                    .width("hours", 16)
                    .width("mean", 24)
                    .width("fuel", 24)
                    .width("meter", 32)
                    .width("delivered", 32)),
        PlanTab.of("Order list", "What the plan needs on all its days, and what of it is short.")
            .hidden()
            .upright()
            .with(
                book.lines("", "summary", "period", "runsWithheld"),
                book.list(
                        "",
                        80,
                        "order",
                        "kind",
                        "article",
                        "cable",
                        "connector",
                        "length",
                        "required",
                        "spare",
                        "stock",
                        "short")
                    .width("kind", 18)
                    .width("article", 52)
                    .width("cable", 34)
                    .width("connector", 38)
                    .width("length", 14)
                    .width("required", 15)
                    .width("spare", 12)
                    .width("stock", 12)
                    .width("short", 12)),
        PlanTab.of("Distro labels", "A label for each distro, to be cut out and taped to it.")
            .hidden()
            .upright()
            .with(
                book.list("", 240, "labels", "place", "plugged", "legs", "breaker", "rcd", "amps")
                    .width("place", 36)
                    .width("plugged", 92)
                    .width("legs", 24)
                    .look("kind", "name", CellStyle.TOTAL)
                    .look("kind", "line", CellStyle.SUM)
                    .look("kind", "stop", CellStyle.STOP)
                    .look("kind", "caution", CellStyle.SUM)),
        PlanTab.of(
                "Diagram",
                "Single-line diagram. Draw it with Set Power ▸ Draw diagram; printing draws it"
                    + " again.")
            .hidden(),
        PlanTab.of(
                "Load balance", "Loads to exchange between legs, and readings of the clamp meter.")
            .hidden()
            .with(
                book.table("readings").shows("planned1", "planned2", "planned3"),
                book.list(
                    "",
                    12,
                    "balance",
                    "supply",
                    "item",
                    "place",
                    "fromLeg",
                    "otherItem",
                    "otherPlace",
                    "toLeg",
                    "before",
                    "after")),
        PlanTab.of(
                "Voltage comparison",
                "The same power over the same cable on other systems. Fill in the first row; below"
                    + " it system and voltage are enough.")
            .hidden()
            .with(book.table("comparison").shows("amps", "drop", "share", "loss")),
        PlanTab.of("Assumptions", "Spare cable and the cable that there is.")
            .hidden()
            .with(
                book.fields("Order", "project", "spareCable"),
                book.fields("Rules", "project", "maxImbalance", "tablesCompared"),
                book.table("cableStock").titled("Cable stock")));
  }

  @Override
  public PlanWorkbook workbook() {
    return book;
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – lighting power plan";
  }
}
