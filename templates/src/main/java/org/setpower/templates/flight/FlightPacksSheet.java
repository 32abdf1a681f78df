package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The packs that are to travel: where each kind may go, and where it goes. */
final class FlightPacksSheet {
  static final int ROOM = 60;

  final ColumnSpec kind =
      ColumnSpec.input("Pack")
          .required()
          .width(36)
          .help("What the crew calls it. One row for each kind and way to carry it.");
  final ColumnSpec energy =
      ColumnSpec.input("Energy")
          .unit("Wh")
          .number(CellFormat.WHOLE, 0, 1_000_000)
          .required()
          .width(18)
          .help("The Wh printed on the label; 0 if none are printed. Nothing else counts.");
  final ColumnSpec quantity =
      ColumnSpec.input("Quantity")
          .number(CellFormat.COUNT, 0, 9999)
          .required()
          .width(18)
          .help("Pieces.");
  final ColumnSpec carried =
      ColumnSpec.input("How carried")
          .options("spare", "in equipment", "power bank")
          .required()
          .width(24)
          .help(
              "spare: by itself. in equipment: in the device it feeds. power bank: made to"
                  + " charge.");
  final ColumnSpec chemistry =
      ColumnSpec.input("Chemistry")
          .options("Li-ion", "LFP", "NiMH", "lead", "sodium-ion")
          .width(20)
          .help("On the label. Blank: Li-ion.");
  final ColumnSpec readable =
      ColumnSpec.input("Label readable")
          .options("yes", "no")
          .required()
          .width(19)
          .help("Wh on every piece?");
  final ColumnSpec sound =
      ColumnSpec.input("Undamaged")
          .options("yes", "no")
          .required()
          .width(22)
          .help("no if one was dropped, is wet, swollen or recalled. Do not fly it.");
  final ColumnSpec summary =
      ColumnSpec.input("UN 38.3 summary")
          .options("yes", "no")
          .width(20)
          .help("Is the maker's UN 38.3 test summary to hand? Freight asks for it.");
  final ColumnSpec mass =
      ColumnSpec.input("Mass").number(CellFormat.TWO, 0, 1000).width(18).help("Of one.");
  final ColumnSpec ampHours =
      ColumnSpec.input("Charge")
          .unit("Ah")
          .number(CellFormat.ONE, 0.01, 100_000)
          .width(18)
          .help("On the label; only for the hours on the charger.");
  final ColumnSpec cells =
      ColumnSpec.input("Cells in series")
          .number(CellFormat.COUNT, 1, 400)
          .width(18)
          .help("Nominal volts over 3.6: 14.4 V has 4, 28.8 V has 8. Blank: 1.");

  final ColumnSpec verdict = ColumnSpec.result("Class").width(42);
  final ColumnSpec most =
      ColumnSpec.result("Max. per person").format(CellFormat.COUNT).mayBeBlank().width(18);
  final ColumnSpec byHand =
      ColumnSpec.result("Carry-on allowed").format(CellFormat.COUNT).width(20);
  final ColumnSpec taken = ColumnSpec.result("Carry-on").format(CellFormat.COUNT).width(20);
  final ColumnSpec cargo = ColumnSpec.result("Cargo").format(CellFormat.COUNT).width(17);
  final ColumnSpec road = ColumnSpec.result("Road").format(CellFormat.COUNT).width(17);
  final ColumnSpec hired = ColumnSpec.result("Hired locally").format(CellFormat.COUNT).width(17);
  final ColumnSpec left = ColumnSpec.result("Left over").format(CellFormat.COUNT).width(17);

  final ColumnSpec sort = ColumnSpec.working("Sort");
  final ColumnSpec counted =
      ColumnSpec.working("Energy that counts").unit("Wh").format(CellFormat.WHOLE);
  final ColumnSpec carriedAs = ColumnSpec.working("Carried as");
  final ColumnSpec spares = ColumnSpec.working("Spares taken").format(CellFormat.COUNT);
  final ColumnSpec rule = ColumnSpec.working("Rule");

  final TableSpec table = TableSpec.of("Packs", ROOM);

  private final TripSettings trip;

  FlightPacksSheet(TripSettings trip) {
    this.trip = trip;
    mass.unit(trip.job.masses());
  }

  void declare(FlightsSheet flights, CarriageSheet carry, FreightSheet freight) {
    sort.formula(
        calc(
            "IF({}=\"power bank\";\"power bank\";IF({}>100;\"over 100 Wh\";IF({}=\"spare\";\"to 100"
                + " Wh\";\"in equipment\")))",
            carried,
            energy,
            carried));
    counted.formula(calc("IF({}=\"no\";0;{})", readable, energy));
    carriedAs.formula(calc("IF({}=\"no\";\"damaged\";{})", sound, carried));
    Formula answers =
        calc(
            "IF({}=\"no\";{};IF({}=\"over 100 Wh\";{};IF({}=\"power bank\";{};IF({}=\"to 100"
                + " Wh\";{};{}))))",
            readable,
            flights.none.all(),
            sort,
            flights.over.all(),
            sort,
            flights.banks.all(),
            sort,
            flights.small.all(),
            flights.none.all());
    Object[] asked = {
      counted,
      flights.date.all(),
      flights.rulesHeld.all(),
      answers,
      carriedAs,
      or(chemistry, "Li-ion")
    };
    verdict.formula(call(FlightFunctions.STRICTEST, asked));
    most.formula(call(FlightFunctions.MINLIMIT, asked));
    byHand.formula(
        calc(
            "IF(OR({};{});0;IF({}=\"\";{};MIN({};{}*{})))",
            stays(),
            asks(),
            or(most, ""),
            quantity,
            quantity,
            or(most, 0),
            trip.travellers));
    taken.formula(calc("SUMIFS({};{};{})", carry.pieces.all(), carry.kind.all(), kind));
    cargo.formula(freight.sum(kind, "cargo"));
    road.formula(freight.sum(kind, "road"));
    hired.formula(freight.sum(kind, "hire there"));
    left.formula(calc("{}-{}-{}-{}-{}", quantity, taken, cargo, road, hired));
    spares.formula(calc("IF({}=\"in equipment\";0;{})", carried, taken));
    Formula last = calc("MAX({})", flights.date.all());
    rule.formula(
        call(
            FlightFunctions.RULE,
            counted,
            carriedAs,
            or(chemistry, "Li-ion"),
            flights.rulesHeld.lookup(flights.date, last),
            last));
    table.columns(
        kind, energy, quantity, carried, chemistry, readable, sound, summary, mass, ampHours, cells,
        verdict, most, byHand, taken, cargo, road, hired, left, sort, counted, carriedAs, spares,
        rule);
    table.checks(checks());
  }

  /** True for what no traveller takes. */
  private Formula stays() {
    return calc("OR({}=\"cargo only\";{}=\"not by air\")", verdict, verdict);
  }

  /** True while an airline has to agree. */
  private Formula asks() {
    return calc(
        "OR({}=\"ask the airline\";{}=\"cabin, airline must agree\";{}=\"hold or cabin, airline"
            + " must agree\")",
        verdict,
        verdict,
        verdict);
  }

  private ValidationRule[] checks() {
    return new ValidationRule[] {
      ValidationRule.stop(
          calc("COUNTIF({};{})>1", kind.all(), kind),
          say("Duplicate: {}. Give each way of carrying it its own name.", kind)),
      ValidationRule.stop(
          calc("{}=\"no\"", sound),
          Formula.of(
              "Do not fly damaged, swollen or recalled batteries. Leave them behind. Inform "
                  + "the owner.")),
      ValidationRule.stop(
          calc("{}<0", left),
          say("{} more are placed than there are: take them out of one of the lists.", less(left))),
      ValidationRule.stop(
          calc("AND({};{}>0)", stays(), taken),
          say("{}: Remove {} from carry-on.", verdict, taken)),
      ValidationRule.stop(
          calc("AND(NOT({});{}>{})", asks(), taken, byHand),
          say("{} by hand, {} may: the rest by road or cargo.", taken, byHand)),
      ValidationRule.check(
          calc("{}=\"no\"", readable),
          Formula.of("Without printed Wh an airline often turns a pack away: ask, or leave it.")),
      ValidationRule.check(
          asks(), say("{}: ask before travel; until then none is counted to go by hand.", verdict)),
      ValidationRule.check(
          calc("{}>0", left),
          say("{} are nowhere yet: a traveller, cargo, road, or hire there.", left)),
      ValidationRule.check(
          calc("AND({}>0;{}<>\"yes\")", cargo, or(summary, "")),
          Formula.of("Freight asks for the UN 38.3 test summary: get it from the maker."))
    };
  }

  private static Formula less(ColumnSpec column) {
    return calc("-{}", column);
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Packs",
            "Every kind of pack that is to be there. Fill pack, energy, quantity and how it is"
                + " carried; the Wh on the label decide.")
        .with(table);
  }
}
