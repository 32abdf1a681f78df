package org.setpower.templates.travel;

import org.setpower.plan.travel.TravelPlan;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanText;
import org.setpower.templates.plan.PlanWorkbook;

/** The battery travel list: who flies with which batteries, and what goes another way. */
public final class BatteryTravelList implements PlanTemplate {
  private static final int LINES = 240;
  private static final String HOT =
      "Hot, smoking, leaking or smelling: do not touch it. Clear the area. Call the fire service.";
  private static final String DAMAGED =
      "Dropped, wet or swollen, and cold: quarantine it outdoors, away from people and batteries."
          + " Do not charge it. Do not fly it.";
  private static final String CARRIER =
      "The operating carrier and the security staff decide what flies, whatever this list says.";

  private final PlanWorkbook book =
      PlanWorkbook.of("battery-travel-list", "Battery travel list", TravelPlan.MODEL)
          .purpose(
              "Which batteries fly with whom under which rules, what goes as freight or by road, and the papers.")
          .stamped("project.production", "project.revision");

  /** Declares the list. */
  public BatteryTravelList() {
    book.with(
        project(),
        flights(),
        PlanTab.of(
                "Batteries",
                "One row for each type, or for each serial. Weight, UN 38.3 and state of charge count"
                    + " for what does not fly as baggage. Goes by sends a battery by road or"
                    + " freight on purpose. The + above the columns shows user, outputs, V, Ah,"
                    + " cells.")
            .with(
                book.table("batteries")
                    .optional("type", "backPieces")
                    .pick("user", "travellers.traveller")
                    .unit("kilograms", "project.weightUnit", "kg")
                    .more(
                        "carriedPieces",
                        "heldPieces",
                        "freightPieces",
                        "roadPieces",
                        "stayPieces",
                        "carriage",
                        "maxCarried",
                        "usedEnergy")),
        PlanTab.of(
                "Packing",
                "The proposal stands right. Decided rows win, the rest is proposed again. To fix the"
                    + " proposal, copy its rows with a traveller, from Battery to Bag, and paste"
                    + " them into Battery here, values only.")
            .with(
                book.table("packing")
                    .titled("Decided")
                    .optional("bag", "decided")
                    .pick("battery", "batteries.battery")
                    .pick("traveller", "travellers.traveller")
                    .width("reasons", 60))
            .beside(
                book.list(
                        "Where each battery goes",
                        LINES,
                        "lines",
                        "verdict",
                        "battery",
                        "traveller",
                        "pieces",
                        "bag",
                        "energy",
                        "discharge",
                        "decided",
                        "reasons")
                    .width("traveller", 34)
                    .width("reasons", 130)
                    .tall(3)),
        summary(),
        checkIn(),
        questions(),
        cards(),
        freight(),
        road(),
        PlanTab.of("Rule check", "Each type under the rules of each flight, before any answer.")
            .hidden()
            .with(
                book.list("rules", "flight", "battery", "carriage", "edition", "confirm", "source")
                    .width("edition", 120)
                    .width("source", 200)
                    .tall(4)),
        PlanTab.of("Assumptions", "What the list takes as given.")
            .hidden()
            .with(
                book.fields("Road", "project", "roadRules", "transport"),
                PlanText.notes(
                    "Rules held",
                    "ICAO until 31 December 2026 and US until 31 December 2026. After that day only"
                        + " the carrier's written limits of a flight count.",
                    "Spare nickel and dry batteries count as spares, in the cabin only: a national"
                        + " authority's reading since 2021. Confirm it.",
                    "Power banks and spares are counted apart from 27 March 2026 under ICAO rules."
                        + " Confirm it.",
                    "An answer covers the carrier, flight, date, travellers, type, Wh and number"
                        + " that it names, and nothing else."),
                PlanText.notes(
                    "Proposal",
                    "In this order: the most needed Wh carried, by priority; the fewest batteries"
                        + " over 100 Wh; the smallest heaviest load, to half a kilogram; with the"
                        + " user; the fewest changes.",
                    "A battery in equipment is no load to its user, who brings the equipment"
                        + " anyway.",
                    "A battery without a weight counts as 1 kg for 140 Wh where loads are shared,"
                        + " and nowhere else.")));
  }

  private PlanTab project() {
    return PlanTab.of(
            "Project",
            "Who carries which batteries, and what goes by road or as freight. Fill in the travellers,"
                + " then Flights and Batteries; read Packing and Summary. More tabs: Set Power ▸ Show"
                + " tabs…")
        .first()
        .with(
            book.fields("The trip", "project", "production", "revision", "begins"),
            book.fields(
                    "Rules and papers",
                    "project",
                    "flightRules",
                    "weightUnit",
                    "issued",
                    "contact",
                    "confirmed")
                .standIn("issued", "TODAY()"),
            book.fields(
                "Freight and road",
                "project",
                "rest",
                "freightFrom",
                "freightTo",
                "handOver",
                "needed",
                "transit",
                "chargers",
                "back",
                "backOn"),
            book.lines("", "project", "verdict", "reasons"),
            book.table("travellers")
                .titled("Travellers")
                .width("flights", 70)
                .unit("cabinKg", "project.weightUnit", "kg")
                .shows("pieces", "wattHours", "weight"));
  }

  private PlanTab flights() {
    return PlanTab.of(
            "Flights",
            "Every flight, also those that change planes, and what its operating carrier answered in"
                + " writing. An answer covers what it names, nothing else.")
        .with(
            book.table("flights")
                .titled("Flights")
                .width("edition", 48)
                .shows("edition")
                .more("maxSpares", "maxOver", "maxBanks", "rulesUsed", "until", "maxDevices"),
            book.table("answers").titled("Carriers' answers").pick("carrier", "flights.carrier"));
  }

  private PlanTab summary() {
    return PlanTab.page(
            "Summary", "What goes how, what is held back, and the open issues, stops first.")
        .result()
        .with(
            book.figures(
                4,
                "summary",
                "verdict",
                "pieces",
                "carried",
                "held",
                "freight",
                "road",
                "stay",
                "over",
                "heaviest",
                "fewestTravellers",
                "toCharge",
                "chargeHours",
                "handOverBy"),
            PlanText.cautions(HOT, DAMAGED, CARRIER),
            book.list("Open issues", 16, "issues", "verdict", "where", "reasons")
                .width("where", 60)
                .width("reasons", 108)
                .tall(3));
  }

  private PlanTab checkIn() {
    return PlanTab.of(
            "Check-in sheet", "For the desk: what is carried on each flight, and by which answer.")
        .paper()
        .with(
            PlanText.cautions(HOT, DAMAGED, CARRIER),
            book.lines("", "papers", "issued", "notes"),
            book.list(
                    "checkin",
                    "flight",
                    "type",
                    "chemistry",
                    "carried",
                    "energy",
                    "bag",
                    "pieces",
                    "maxCarried",
                    "travellers",
                    "notes")
                .width("flight", 20)
                .width("type", 20)
                .width("chemistry", 18)
                .width("bag", 14)
                .width("travellers", 70)
                .width("notes", 118)
                .tall(4));
  }

  private PlanTab questions() {
    return PlanTab.of(
            "Questions to carriers",
            "One text for each carrier that has still to answer: copy it into a mail. Enter the"
                + " answer in Flights.")
        .with(
            book.list("questions", "carrier", "flights", "text")
                .width("flights", 40)
                .width("text", 190)
                .tall(4));
  }

  private PlanTab cards() {
    return PlanTab.of(
            "Passenger cards",
            "One for each traveller: tick what is in the bag, then cut between the blank rows.")
        .hidden()
        .upright()
        .with(
            book.list(
                    "cards", "traveller", "battery", "amount", "carried", "bag", "packed", "notes")
                .width("packed", 16)
                .width("traveller", 32)
                .width("battery", 32)
                .width("amount", 24)
                .width("carried", 24)
                .width("bag", 16)
                .width("notes", 172)
                .tall(6));
  }

  private PlanTab freight() {
    return PlanTab.of("Freight papers", "For the forwarder: what goes by air as freight.")
        .hidden()
        .paper()
        .with(
            PlanText.cautions(HOT, DAMAGED),
            book.lines("", "papers", "issued", "notes").ofRow(3),
            book.list(
                    "freight",
                    "direction",
                    "battery",
                    "pieces",
                    "packed",
                    "energy",
                    "un",
                    "name",
                    "hazard",
                    "instruction",
                    "section",
                    "aircraft",
                    "packages",
                    "weight",
                    "maxPackage",
                    "charge",
                    "maxCharge",
                    "packaging",
                    "marks",
                    "labels",
                    "notes")
                .width("direction", 14)
                .width("packed", 18)
                .width("un", 20)
                .width("name", 36)
                .width("section", 16)
                .width("packaging", 30)
                .width("marks", 36)
                .width("labels", 34)
                .width("notes", 50)
                .tall(4));
  }

  private PlanTab road() {
    return PlanTab.of("Road paper", "For the driver: what goes by road.")
        .hidden()
        .paper()
        .with(
            PlanText.cautions(
                HOT,
                DAMAGED,
                "Secure the batteries against moving and their terminals against contact. Keep them"
                    + " dry and away from heat."),
            book.lines("", "papers", "issued", "notes").ofRow(4),
            book.list(
                    "road",
                    "direction",
                    "battery",
                    "pieces",
                    "packed",
                    "energy",
                    "un",
                    "name",
                    "hazard",
                    "tunnel",
                    "provision",
                    "weight",
                    "points",
                    "notes")
                .width("direction", 14)
                .width("packed", 18)
                .width("name", 44)
                .width("notes", 50)
                .tall(3));
  }

  @Override
  public PlanWorkbook workbook() {
    return book;
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – battery travel list";
  }
}
