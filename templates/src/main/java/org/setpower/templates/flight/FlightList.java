package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.IssueList;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableExcerpt;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.ExampleLoader;

/** Template 6: the flight packing list of whoever flies. */
public final class FlightList implements TemplateDefinition {
  private static final int FINDINGS = 9;
  private static final int KINDS = 13;

  private final TripSettings trip = new TripSettings();
  private final FlightsSheet flights = new FlightsSheet();
  private final FlightPacksSheet packs = new FlightPacksSheet(trip);
  private final CarriageSheet carry = new CarriageSheet(trip);
  private final FreightSheet freight = new FreightSheet(trip);
  private final OtherDatesSheet otherDays = new OtherDatesSheet(trip);
  private final WorkbookSpec template;
  private final IssueList findings;

  /** Declares the list. */
  public FlightList() {
    flights.declare(trip, packs);
    packs.declare(flights, carry, freight);
    carry.declare(flights, packs);
    freight.declare(packs);
    template =
        WorkbookSpec.of("flight-packing-list", "Flight packing list", 1)
            .stamped(trip.job.stamp())
            .with(
                trip.tab(),
                flights.tab(),
                packs.tab(),
                carry.tab(),
                freight.tab(),
                otherDays.tab());
    findings = IssueList.on(FINDINGS, template.tabs());
    template.with(result(), counter(), cards(), notes());
  }

  @Override
  public WorkbookSpec template() {
    return template;
  }

  private SheetSpec result() {
    TableExcerpt ofPacks =
        TableExcerpt.of(packs.table)
            .column(packs.kind, 30)
            .column(packs.energy, 15)
            .column(packs.quantity, 15)
            .column(packs.taken, 15)
            .column(packs.cargo, 15)
            .column(packs.road, 15)
            .column(packs.verdict, 45)
            .column(packs.most, 15)
            .column(packs.table.status(), 15);
    TableExcerpt wondered =
        TableExcerpt.of(otherDays.table)
            .column(otherDays.pack, 30)
            .column(otherDays.energy, 15)
            .column(otherDays.date, 45)
            .column(otherDays.pieces, 15)
            .column(otherDays.verdict, 45)
            .column(otherDays.most, 15)
            .column(otherDays.table.status(), 15);
    return SheetSpec.result(
            "For whoever packs: what goes how, and open issues. Counter is the page to show;"
                + " the airline decides.")
        .with(
            KeyFigures.of("", 3, headlines()),
            BarChart.bars(
                "Where the packs go",
                9,
                "Pieces",
                ofPacks.shown(packs.kind),
                ofPacks.shown(packs.taken),
                ofPacks.shown(packs.cargo),
                ofPacks.shown(packs.road)),
            ofPacks.rows("The packs", KINDS))
        .newPage(findings.list())
        .with(cautions(), wondered.rows("Other days", 8));
  }

  private SheetSpec counter() {
    TableExcerpt taken =
        TableExcerpt.of(packs.table)
            .column(packs.kind, 75)
            .column(packs.energy, 30)
            .column(packs.taken, 30)
            .column(packs.most, 30)
            .column(packs.verdict, 75);
    TableExcerpt answers =
        TableExcerpt.of(flights.table)
            .column(flights.date, 45)
            .column(flights.from, 15)
            .column(flights.to, 15)
            .column(flights.airline, 45)
            .column(flights.over, 30)
            .column(flights.reference, 60)
            .column(flights.answered, 30);
    TableExcerpt rules =
        TableExcerpt.of(packs.table).column(packs.kind, 45).column(packs.rule, 195);
    return SheetSpec.of(
            "Counter",
            "Spare packs for our own work, in the cabin, terminals covered one by one. Bring the"
                + " airlines' answers printed.")
        .titled("Packs in our hand luggage")
        .grid(16, 15)
        .onePage()
        .with(
            taken.rows("The packs", 7),
            answers.rows("The flights and the airlines' answers", 4).linesPerRow(2),
            rules.rows("The rule for each, on the day of the last flight", 7).linesPerRow(4),
            TextBlock.notes(
                "",
                calc(
                    "\"Travellers: \"&{}&\". Packs by hand: \"&SUM({})&\", over 100 Wh:"
                        + " \"&SUMIFS({};{};\"over 100 Wh\")&\". The other packs go by road or as"
                        + " declared cargo.\"",
                    trip.travellers,
                    packs.taken.all(),
                    packs.taken.all(),
                    packs.sort.all())));
  }

  private KeyFigure[] headlines() {
    return new KeyFigure[] {
      findings.stops(),
      findings.checks(),
      KeyFigure.of(
          "Travellers (people)",
          CellFormat.COUNT,
          calc("{}", trip.travellers),
          calc(
              "\"the rules alone ask for \"&{}",
              call(
                  FlightFunctions.PEOPLE,
                  packs.energy.all(),
                  packs.spares.all(),
                  calc("INDEX({};1)", flights.rulesHeld.all()),
                  calc("MAX({})", flights.date.all())))),
      KeyFigure.of(
          "Packs by hand (pieces)",
          CellFormat.COUNT,
          calc("SUM({})", packs.taken.all()),
          calc(
              "SUMIFS({};{};\"over 100 Wh\")&\" of them over 100 Wh\"&IF(COUNT({})>"
                  + KINDS
                  + ";\"; first "
                  + KINDS
                  + " rows below\";\"\")",
              packs.taken.all(),
              packs.sort.all(),
              packs.energy.all())),
      KeyFigure.of(
          "By cargo (pieces)",
          CellFormat.COUNT,
          calc("SUM({})", packs.cargo.all()),
          calc(
              "IF(SUM({})=0;\"\";\"at most \"&ROUND(100*MIN({});0)&\" % charged\")",
              packs.cargo.all(), freight.limit.all())),
      KeyFigure.of(
          "By road (pieces)",
          CellFormat.COUNT,
          calc("SUM({})", packs.road.all()),
          calc(
              "ROUND(SUMIFS({};{};\"road\");1)&\" \"&{}",
              freight.kilograms.all(),
              freight.way.all(),
              trip.job.masses())),
      KeyFigure.of(
          "Left over (pieces)", CellFormat.COUNT, calc("SUM({})", packs.left.all()), "Must be 0."),
      KeyFigure.of(
          "To discharge for cargo (Wh)",
          CellFormat.WHOLE,
          calc("SUM({})", freight.outAll.all()),
          calc(
              "IF(COUNT({})=0;\"\";\"at most \"&ROUND(MAX({});1)&\" Wh of a pack\")",
              freight.out.all(),
              freight.out.all())),
      KeyFigure.of(
          "Charge time on arrival (h)",
          CellFormat.ONE,
          KeyFigure.max(freight.hoursAll),
          calc(
              "IF(COUNTIF({};\"cargo\")=0;\"\";\"hand over cargo by"
                  + " \"&TEXT(MINIFS({};{};\"cargo\");\"d mmm\"))",
              freight.way.all(),
              freight.by.all(),
              freight.way.all()))
    };
  }

  private SheetSpec cards() {
    ColumnSpec traveller =
        ColumnSpec.result("Traveller").format(CellFormat.COUNT).mayBeBlank().width(20);
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    traveller.formula(calc("IF(COUNTIF({};{})=0;\"\";{})", carry.traveller.all(), number, number));
    ColumnSpec what =
        ColumnSpec.result(
                "Carries in the cabin",
                calc(
                    "SUBSTITUTE({};\"; \";CHAR(10))",
                    carry.words.lookup(carry.traveller, traveller)))
            .mayBeBlank()
            .width(70);
    ColumnSpec pieces =
        ColumnSpec.result(
                "Pieces",
                calc("SUMIFS({};{};{})", carry.pieces.all(), carry.traveller.all(), traveller))
            .format(CellFormat.COUNT)
            .mayBeBlank()
            .width(20);
    ColumnSpec over =
        ColumnSpec.result(
                "Over 100 Wh",
                calc(
                    "SUMIFS({};{};{};{};\"over 100 Wh\")",
                    carry.pieces.all(),
                    carry.traveller.all(),
                    traveller,
                    carry.sort.all()))
            .format(CellFormat.COUNT)
            .mayBeBlank()
            .width(20);
    ColumnSpec mass =
        ColumnSpec.result(
                "Packs weigh",
                calc("SUMIFS({};{};{})", carry.packMass.all(), carry.traveller.all(), traveller))
            .unit(trip.job.masses())
            .format(CellFormat.ONE)
            .mayBeBlank()
            .width(24);
    ColumnSpec say =
        ColumnSpec.result(
                "At the counter",
                calc(
                    "IF({}=\"\";\"\";\"Spare packs for our own camera work, in the cabin, terminals"
                        + " covered one by one.\"&IF({}>0;\" Over 100 Wh: the airlines agreed in"
                        + " writing, see Counter.\";\"\"))",
                    traveller,
                    or(over, 0)))
            .mayBeBlank()
            .width(110);
    return SheetSpec.of(
            "Cards",
            "A card for each traveller: print, cut along the lines, carry it with the boarding"
                + " pass.")
        .with(TableSpec.of("Cards", 20).columns(traveller, what, pieces, over, mass, say, number));
  }

  private static TextBlock cautions() {
    return TextBlock.cautions(
        "Check-in staff, the airline and the states concerned decide. Get approvals"
            + " early and in writing. This page is not a permission.",
        "Do not put spare batteries in the hold. Carry them in the cabin. Take them out"
            + " of a bag that is taken at the gate.",
        "Do not fly damaged, swollen, wet or recalled batteries. Cover the terminals of"
            + " each battery.",
        "Only what the traveller uses, nothing for sale. Packs bolted into one block count"
            + " together.",
        "Have cargo declared by a trained shipper. Ship batteries without equipment by "
            + "cargo aircraft only.",
        "By road batteries are dangerous goods too (UN 3480, UN 3481). Ask a "
            + "dangerous-goods adviser (DGSA) which exemptions apply.");
  }

  private SheetSpec notes() {
    return SheetSpec.notes(
        TextBlock.reckoned(
            "The Wh on the label decide, up to 100, over 100 to 160, over 160. The strictest of all"
                + " flights counts, and the fewest of the rules and the airlines' answers.",
            "Until an airline that must agree has answered, none of that kind is counted to go by"
                + " hand.",
            "A label that cannot be read counts as none; a damaged pack as damaged, whatever else"
                + " is filled in.",
            "Packs sent ahead are counted as there at the end of the day of arrival, and charge in"
                + " turns on the channels on Job. The share of charge is of the rated Wh: the gauge"
                + " of an aged pack reads higher.",
            "Without cells in series and resistance the charging hours take 0.3/Ah ohms a cell."),
        TextBlock.leftOut(
            "Rules of single airlines and countries; limits on mass of cargo packages; insurance.",
            "By sea. By road the papers of the transport office."),
        TextBlock.sources(
            calc(
                "IF(COUNT({})=0;\"Rules held here: each row of Flights says since when they are in"
                    + " force. Ask for a newer edition.\";\"Rules held here: in force since"
                    + " \"&TEXT(MAX({});\"yyyy-mm-dd\")&IF(COUNT({})=0;\"\";\", edition until"
                    + " \"&TEXT(MIN({});\"yyyy-mm-dd\"))&\". Ask for a newer edition.\")",
                flights.since.all(),
                flights.since.all(),
                flights.until.all(),
                flights.until.all()),
            "ICAO Technical Instructions and the IATA regulations after them; 49 CFR 175.10 and"
                + " 173.185: document, edition and date stand in the rule on Counter and at FLIGHT"
                + " in the handbook.",
            "Whether a power bank over 100 Wh may fly since 27 March 2026 is not confirmed: the"
                + " sheet says ask the airline."));
  }

  @Override
  public void fill(ExampleLoader filling) {
    filling
        .fields("flight-job")
        .rows(flights.table, "flight-flights")
        .rows(packs.table, "flight-packs")
        .rows(carry.table, "flight-carry")
        .rows(freight.table, "flight-freight")
        .rows(otherDays.table, "flight-other-days");
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – flight packing list";
  }
}
