package org.setpower.templates.register;

import org.setpower.plan.common.PlanModel;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanText;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.FieldSpec;

/** The battery register of a rental house. */
public final class BatteryRegister implements PlanTemplate {
  private static final String HOT =
      "Hot, smoking, leaking or smelling: do not touch it. Clear the area. Call the fire service.";
  private static final String DAMAGED =
      "Dropped, wet or swollen, and cold: quarantine it outdoors, away from people and batteries."
          + " Do not charge it. Do not send it by air.";
  private static final String CHARGING =
      "Do not charge lithium batteries below 0 °C (32 °F). Let them warm up first. Charge attended,"
          + " on a non-combustible surface, with the matching charger.";

  private final PlanWorkbook book;

  /** Declares the register. */
  public BatteryRegister() {
    this(RegisterPlan.MODEL);
  }

  /** A register on a model that has other columns to fill: a file of another version. */
  public BatteryRegister(PlanModel model) {
    book =
        PlanWorkbook.of("battery-register", "Battery register", model)
            .purpose(
                "All batteries of a house by serial, with tests and incidents: what may go out,"
                    + " what is quarantined.");
    book.with(
        project(),
        PlanTab.of(
                "Batteries",
                "One row for each battery. Fill in serial, type, condition and rated energy first;"
                    + " a list can be pasted. Decided may be stricter than proposed, never milder.")
            .with(
                book.table("batteries")
                    .optional("cycles", "retired")
                    .pick("type", "types.type")
                    .width("type", 22)
                    .width("action", 26)
                    .shows("proposed", "status", "fit", "health", "action")
                    .more("tested", "due", "cyclesLeft", "imbalance", "resistance", "timesType")),
        PlanTab.of(
                "Tests",
                "Paste tests as they come, in any order: the newest that can be compared counts.")
            .with(
                book.table("tests")
                    .optional("cell1", "cell14")
                    .pick("serial", "batteries.serial")
                    .unit("temperature", "project.temperatureUnit", "°C")
                    .shows("compared", "health")),
        PlanTab.of(
                "Check-out",
                "The serials that are to go out with a job; a list can be pasted. Print Issue"
                    + " list.")
            .with(
                book.fields("", "project", "job", "issue", "jobBack", "contact"),
                book.lines("", "handover", "verdict", "reasons", "out", "held"),
                book.table("checkout")
                    .pick("serial", "batteries.serial")
                    .width("mayGoOut", 46)
                    .shows("mayGoOut")),
        PlanTab.of("Actions", "What to do with which battery, the most urgent first.")
            .paper()
            .with(
                PlanText.cautions(HOT, DAMAGED),
                book.list(
                    "actions", "verdict", "serial", "type", "place", "outTo", "action", "reasons")),
        summary(),
        issueList(),
        PlanTab.of(
                "Stocktake list",
                "For the walk along the shelves, by place; what is out comes last.")
            .hidden()
            .paper()
            .with(
                book.list(
                    "stocktake",
                    "verdict",
                    "place",
                    "serial",
                    "type",
                    "outTo",
                    "backBy",
                    "status",
                    "fit",
                    "counted")),
        PlanTab.of(
                "Incidents",
                "Damage and recalls, numbered 1, 2, 3 and so on; never clear a row. A battery with"
                    + " an open incident stays in until it is inspected and tested, every cell"
                    + " measured.")
            .hidden()
            .with(
                book.table("incidents")
                    .pick("type", "types.type")
                    .width("reportedBy", 34)
                    .shows("open")
                    .more("batteries")),
        PlanTab.of(
                "Assumptions",
                "Limits of the house; blank cells have the limit that their help names.")
            .hidden()
            .with(
                book.fields(
                    "Tests that can be compared",
                    "project",
                    "coldestTest",
                    "warmestTest",
                    "rest",
                    "maxLoad"),
                book.table("limits").titled("Limits by chemistry").shows("usedMin", "usedMax")));
  }

  private PlanTab project() {
    return PlanTab.of(
            "Project",
            "Which batteries may go out, and what the others need. Fill in the types here, then"
                + " Batteries and Tests; read Actions and Summary.")
        .first()
        .with(
            PlanNotes.of(
                "The register",
                FieldSpec.input("Stock").help("Whose batteries these are; printed on each page."),
                FieldSpec.input("Revision")
                    .number(CellFormat.COUNT, 0, 999)
                    .help("Add one whenever a paper goes out."),
                FieldSpec.input("Place").help("Where the batteries are kept.")),
            book.fields(
                    "Rules",
                    "project",
                    "asOf",
                    "temperatureUnit",
                    "validDays",
                    "inspectionDays",
                    "untested",
                    "retireBelow",
                    "watchBelow")
                .standIn("asOf", "TODAY()"),
            book.lines("", "project", "verdict", "reasons"),
            book.table("types")
                .titled("Types")
                .shows(
                    "batteries",
                    "out",
                    "fit",
                    "fitIn",
                    "service",
                    "quarantine",
                    "meanHealth",
                    "lowestHealth",
                    "toBuy"));
  }

  /** One paper for a job, however many batteries it has. */
  private PlanTab issueList() {
    return PlanTab.of(
            "Issue list", "Goes out with the batteries of a job. It lists only what may go out.")
        .upright()
        .with(
            book.lines(
                "", "handover", "verdict", "issue", "job", "issued", "backBy", "contact", "out"),
            PlanText.signatures(
                "The batteries listed below, handed out by, date: ................................",
                "The batteries listed below, received by, date: ................................"),
            PlanText.cautions(
                HOT,
                "Dropped, wet or swollen, and cold: switch the device off. Unplug the battery."
                    + " Quarantine it outdoors, away from people and batteries. Do not charge"
                    + " it. Do not send it by air. Call us.",
                CHARGING,
                "Cover the terminals one by one for travel.",
                "Return the battery about half full, and report what happened to it."),
            book.list(
                    "slip", "serial", "type", "energy", "health", "tested", "state", "taken",
                    "back")
                .width("type", 30)
                .width("back", 52)
                .marked("back", "handover.issue"));
  }

  private PlanTab summary() {
    return PlanTab.page(
            "Summary", "What is fit, what is withheld, and the open issues, stops first.")
        .result()
        .with(
            book.figures(
                4,
                "summary",
                "batteries",
                "fit",
                "fitIn",
                "withheld",
                "toBuy",
                "quarantine",
                "retire",
                "service",
                "notInspected",
                "notTested",
                "unclear",
                "lost",
                "incidentsMissing",
                "meanHealth",
                "notCompared"),
            book.list("Open issues", 16, "issues", "verdict", "where", "rows", "reasons")
                .width("where", 48)
                .width("reasons", 112),
            PlanText.cautions(
                HOT,
                DAMAGED,
                "A good health figure is the result of one test. It is no proof that a battery is"
                    + " sound."),
            PlanText.moreTabs(
                "Incidents, Stocktake list and Assumptions are hidden: show them with Set Power ▸"
                    + " Show tabs…, or with Show Sheet in the menu of a tab."));
  }

  @Override
  public PlanWorkbook workbook() {
    return book;
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – battery register";
  }
}
