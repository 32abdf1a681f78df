package org.setpower.templates.battery;

import org.setpower.plan.batteryday.BatteryDayPlan;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.plan.PlanChart;
import org.setpower.templates.plan.PlanList;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanText;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldSpec;

/** The battery plan of camera assistant, sound and video. */
public final class BatteryPlan implements PlanTemplate {
  private static final String HOT =
      "Hot, smoking, leaking or smelling: do not touch it. Clear the area. Call the fire service.";
  private static final String DAMAGED =
      "Dropped, wet or swollen, and cold: quarantine it outdoors, away from people and batteries."
          + " Do not charge it. Do not fly it.";
  private static final String CHARGING =
      "Do not charge lithium batteries below 0 °C (32 °F). Let them warm up first. Charge attended,"
          + " on a non-combustible surface, with the matching charger.";
  private static final String GAUGES =
      "Planning figures. Check the gauge of each battery before it goes on.";
  private static final String JOINED =
      "Do not connect batteries at different states of charge in parallel. Connect in series only"
          + " batteries of the same type and state of charge, where the manufacturer permits it.";

  private final PlanWorkbook book =
      PlanWorkbook.of("battery-plan", "Battery plan", BatteryDayPlan.MODEL)
          .purpose(
              "Batteries and chargers for shooting days: how many are enough, when each is changed,"
                  + " where it charges.")
          .unitsBy("project.units", "US")
          .closedUp()
          .basis("run.day");

  private final PlanList hours =
      book.list("hours", "at", "on", "charging", "shelf", "dark").width("at", 44);

  /** Declares the plan. */
  public BatteryPlan() {
    book.with(
        project(),
        PlanTab.of(
                "Battery stock",
                "What batteries there are. Fill in the types from their labels, then how many of"
                    + " each; the plan numbers them B1, B2 … The + above the headings opens more"
                    + " columns.")
            .with(
                book.table("types").titled("Battery types").optional("mount", "resistance"),
                book.table("stock")
                    .titled("Battery stock")
                    .pick("type", "types.type")
                    .optional("lentTo", "inHandFrom")
                    .shows("fromNumber", "planned", "fewest", "fewestOfAll", "shortOf")
                    .more("toNumber", "fewestAlone", "uncharged")),
        PlanTab.of(
                "Positions",
                "What batteries are on, one row each, with power and input voltage of its device."
                    + " Enter devices that are not on all day, or more than one, below. Fill in"
                    + " position, battery type, power and input voltage first. The + above the"
                    + " headings opens more columns.")
            .aligned()
            .with(
                book.table("positions")
                    .titled("Positions")
                    .pick("type", "types.type")
                    .width("position", 38)
                    .optional("mount", "toDay")
                    .shows("runtime", "changes", "dark")
                    .more("watts", "onHours", "changeBelow", "arrives", "amps", "maxAmps"),
                book.table("devices")
                    .titled("Devices")
                    .pick("position", "positions.position")
                    .width("position", 38)
                    .shows("drawn")),
        PlanTab.of(
                "Chargers",
                "What charges them. Fill in the supplies and their hours first, then one row for"
                    + " each charger with the types that it takes. The + above the headings opens"
                    + " more columns.")
            .aligned()
            .with(
                book.table("supplies").titled("Supplies").shows("peak"),
                book.table("chargers")
                    .titled("Chargers")
                    .pick("supply", "supplies.supply")
                    .optional("mount", "roundTrip")
                    .shows("hours", "charges")),
        today(),
        PlanTab.of(
                "Change schedule",
                "All that goes on and comes off, in order of time: first what goes on at call.")
            .upright()
            .with(
                book.list(
                        "card",
                        "by",
                        "department",
                        "position",
                        "piece",
                        "type",
                        "what",
                        "on",
                        "off",
                        "to",
                        "done")
                    .width("by", 12)
                    .width("department", 18)
                    .width("position", 27)
                    .width("piece", 9)
                    .width("type", 20)
                    .width("what", 28)
                    .width("on", 13)
                    .width("off", 13)
                    .width("to", 42)
                    .width("done", 10)),
        summary(),
        PlanTab.of(
                "Charging",
                "What charges on which channel, from when until when, charger by charger.")
            .shownToPrint()
            .upright()
            .with(
                PlanText.cautions(HOT, DAMAGED, CHARGING),
                book.list(
                        "charging",
                        "charger",
                        "channel",
                        "battery",
                        "type",
                        "from",
                        "until",
                        "ready")
                    .width("charger", 34)
                    .width("channel", 18)
                    .width("battery", 16)
                    .width("type", 28)
                    .width("from", 36)
                    .width("until", 36)
                    .width("ready", 22)),
        PlanTab.of(
                "Positions and lent-out",
                "Which batteries go on what, and who has which batteries, on the day shown.")
            .hidden()
            .upright()
            .with(
                book.list(
                        "lentOut",
                        "battery",
                        "type",
                        "to",
                        "pieces",
                        "runtime",
                        "changeAt",
                        "changes",
                        "backOn",
                        "verdict")
                    .width("battery", 32)
                    .width("type", 24)
                    .width("to", 28)
                    .width("pieces", 14)
                    .width("runtime", 16)
                    .width("changeAt", 16)
                    .width("changes", 17)
                    .width("backOn", 28)
                    .width("verdict", 15)),
        PlanTab.of(
                "Battery labels",
                "Every battery by its number, and whether the plan uses it. Mark the batteries so.")
            .hidden()
            .upright()
            .with(
                book.list("batteries", "number", "type", "use", "atCall", "atEnd", "next")
                    .width("type", 40)
                    .width("use", 64)
                    .width("atCall", 20)
                    .width("atEnd", 20)
                    .width("next", 22)),
        PlanTab.of("Timeline", "Which battery is on which position from when to when.")
            .hidden()
            .with(
                PlanChart.lines(
                    "Batteries in use over the day",
                    16,
                    "Batteries",
                    hours,
                    "at",
                    "on",
                    "charging",
                    "shelf",
                    "dark"),
                PlanText.notes(
                    "How the day is run",
                    "At a change the least charged battery goes on that reaches the next break,"
                        + " else the fullest. Part-used batteries stay on through breaks.",
                    "A battery that comes off goes to the charger that has it back first, if it"
                        + " takes it, has power, a free channel and watts left.",
                    "What is short loses power piece by piece, the highest priority figure first."),
                book.list("timeline", "position", "piece", "type", "batteries", "from", "to"),
                hours),
        PlanTab.of(
                "Disposables",
                "Cells that are thrown away: radios, headsets, transmitters. Fill in item, cell,"
                    + " cells each and how long a set lasts.")
            .hidden()
            .with(
                book.table("disposables").titled("Disposables").shows("sets", "day", "all"),
                book.list("Cells to buy", 20, "cells", "cell", "day", "all")),
        PlanTab.of(
                "Hot-swap stack",
                "Each hot-swap plate of Positions: one battery supplies alone while the other is"
                    + " changed.")
            .hidden()
            .with(
                book.list(
                        "hotSwap",
                        "position",
                        "batteries",
                        "amps",
                        "maxAmps",
                        "carries",
                        "one",
                        "stack")
                    .width("position", 42)),
        PlanTab.of(
                "Voltage comparison",
                "Each position at 12, 24 and 48 V: current, and what its DC cable loses. Check the"
                    + " input voltage of the device before you change it.")
            .hidden()
            .with(
                book.list("voltages", "position", "watts", "volts", "amps", "drop", "lost", "has")
                    .width("position", 42)));
  }

  private PlanTab project() {
    return PlanTab.of(
            "Project",
            "Whether the batteries last the day, and who changes which when. Fill in units and days"
                + " here, then Battery stock, Positions and Chargers; read Summary.")
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
                    "day",
                    "chargersAir",
                    "warmUp",
                    "health",
                    "changeAt",
                    "lastChange",
                    "dayBegins",
                    "near",
                    "touchLimit")
                .pick("day", "days.date"),
            book.lines("", "project", "verdict", "reasons"),
            book.table("days").titled("Days").optional("minFrom", "shelf").shows("shown", "dark"),
            PlanText.moreTabs(
                "Charging, Positions and lent-out, Battery labels, Timeline, Disposables,"
                    + " Hot-swap stack and Voltage comparison are hidden: show them with Set Power"
                    + " ▸ Show tabs…, or with Show Sheet in the menu of a tab."));
  }

  /** What is typed at call and at lunch. */
  private PlanTab today() {
    return PlanTab.of(
            "Today",
            "At call: batteries that are not full or not there. At lunch: the time, and batteries"
                + " that are not as planned. Quarantine holds on all days as long as it is here.")
        .with(
            book.fields("Date", "project", "today"),
            book.table("atCall").titled("Found at call"),
            book.fields("Now", "project", "now"),
            book.lines("", "dayToday", "verdict", "reasons"),
            book.table("atNow")
                .titled("Found now")
                .pick("position", "positions.position")
                .pick("charger", "chargers.charger"));
  }

  private PlanTab summary() {
    return PlanTab.page(
            "Summary",
            "Whether the batteries last, and the open issues, stops first. A column that an issue"
                + " names and that is not on its tab: press + above the headings there.")
        .result()
        .with(
            book.figures(
                4,
                "summary",
                "verdict",
                "changes",
                "dark",
                "shortOf",
                "planned",
                "withheld",
                "stopped",
                "notReady"),
            book.lines("", "run", "day", "coldest", "warmest", "attended"),
            book.list("Open issues", 16, "issues", "verdict", "where", "rows", "reasons")
                .width("where", 48)
                .width("reasons", 112),
            PlanText.cautions(HOT, DAMAGED, CHARGING, JOINED, GAUGES));
  }

  @Override
  public PlanWorkbook workbook() {
    return book;
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – battery plan";
  }
}
