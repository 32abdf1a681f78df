package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The packs that are to travel: where each kind may go, and where it goes. */
final class Packs {
  static final int ROOM = 60;

  final Column kind =
      Column.input("Pack")
          .needed()
          .wide(36)
          .help("What the crew calls it. One row for each kind and way to carry it.");
  final Column energy =
      Column.input("Energy")
          .unit("Wh")
          .number(Format.WHOLE, 0, 1_000_000)
          .needed()
          .wide(18)
          .help("The Wh printed on the label; 0 if none are printed. Nothing else counts.");
  final Column quantity =
      Column.input("Quantity").number(Format.COUNT, 0, 9999).needed().wide(18).help("Pieces.");
  final Column carried =
      Column.input("How carried")
          .oneOf("spare", "in equipment", "power bank")
          .needed()
          .wide(24)
          .help(
              "spare: by itself. in equipment: in the device it feeds. power bank: made to"
                  + " charge.");
  final Column chemistry =
      Column.input("Chemistry")
          .oneOf("Li-ion", "LFP", "NiMH", "lead", "sodium-ion")
          .wide(20)
          .help("On the label. Blank: Li-ion.");
  final Column readable =
      Column.input("Label readable")
          .oneOf("yes", "no")
          .needed()
          .wide(19)
          .help("Wh on every piece?");
  final Column sound =
      Column.input("Undamaged")
          .oneOf("yes", "no")
          .needed()
          .wide(22)
          .help("no if one was dropped, is wet, swollen or recalled. Do not fly it.");
  final Column summary =
      Column.input("UN 38.3 summary")
          .oneOf("yes", "no")
          .wide(20)
          .help("Is the maker's UN 38.3 test summary to hand? Freight asks for it.");
  final Column mass = Column.input("Mass").number(Format.TWO, 0, 1000).wide(18).help("Of one.");
  final Column ampHours =
      Column.input("Charge")
          .unit("Ah")
          .number(Format.ONE, 0.01, 100_000)
          .wide(18)
          .help("On the label; only for the hours on the charger.");
  final Column cells =
      Column.input("Cells in series")
          .number(Format.COUNT, 1, 400)
          .wide(18)
          .help("Nominal volts over 3.6: 14.4 V has 4, 28.8 V has 8. Blank: 1.");

  final Column verdict = Column.result("Class").wide(42);
  final Column most = Column.result("Most a person").as(Format.COUNT).mayBeBlank().wide(18);
  final Column byHand = Column.result("May go by hand").as(Format.COUNT).wide(20);
  final Column taken = Column.result("By hand").as(Format.COUNT).wide(20);
  final Column cargo = Column.result("Cargo").as(Format.COUNT).wide(17);
  final Column road = Column.result("Road").as(Format.COUNT).wide(17);
  final Column hired = Column.result("Hired there").as(Format.COUNT).wide(17);
  final Column left = Column.result("Left over").as(Format.COUNT).wide(17);

  final Column sort = Column.working("Sort");
  final Column counted = Column.working("Energy that counts").unit("Wh").as(Format.WHOLE);
  final Column carriedAs = Column.working("Carried as");
  final Column spares = Column.working("Spares taken").as(Format.COUNT);
  final Column rule = Column.working("Rule");

  final Table table = Table.of("Packs", ROOM);

  private final Trip trip;

  Packs(Trip trip) {
    this.trip = trip;
    mass.unit(trip.job.masses());
  }

  void declare(Flights flights, Carry carry, Freight freight) {
    sort.by(
        calc(
            "IF({}=\"power bank\";\"power bank\";IF({}>100;\"over 100 Wh\";IF({}=\"spare\";\"to 100"
                + " Wh\";\"in equipment\")))",
            carried,
            energy,
            carried));
    counted.by(calc("IF({}=\"no\";0;{})", readable, energy));
    carriedAs.by(calc("IF({}=\"no\";\"damaged\";{})", sound, carried));
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
      counted, flights.date.all(), flights.rulesHeld.all(), answers, carriedAs, optional(chemistry)
    };
    verdict.by(call(FlightFunctions.STRICTEST, asked));
    most.by(call(FlightFunctions.FEWEST, asked));
    byHand.by(
        calc(
            "IF(OR({};{});0;IF({}=\"\";{};MIN({};{}*{})))",
            stays(),
            asks(),
            or(most, ""),
            quantity,
            quantity,
            or(most, 0),
            trip.travellers));
    taken.by(calc("SUMIFS({};{};{})", carry.pieces.all(), carry.kind.all(), kind));
    cargo.by(freight.sum(kind, "cargo"));
    road.by(freight.sum(kind, "road"));
    hired.by(freight.sum(kind, "hire there"));
    left.by(calc("{}-{}-{}-{}-{}", quantity, taken, cargo, road, hired));
    spares.by(calc("IF({}=\"in equipment\";0;{})", carried, taken));
    Formula last = calc("MAX({})", flights.date.all());
    rule.by(
        call(
            FlightFunctions.RULE,
            counted,
            carriedAs,
            optional(chemistry),
            flights.rulesHeld.where(flights.date, last),
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

  private Check[] checks() {
    return new Check[] {
      Check.stop(
          calc("COUNTIF({};{})>1", kind.all(), kind),
          say("{} stands here twice: give each way of carrying it its own name.", kind)),
      Check.stop(
          calc("{}=\"no\"", sound),
          Formula.of(
              "Do not fly damaged, swollen or recalled batteries. Leave them behind. Inform "
                  + "the owner.")),
      Check.stop(
          calc("{}<0", left),
          say("{} more are placed than there are: take them out of one of the lists.", less(left))),
      Check.stop(
          calc("AND({};{}>0)", stays(), taken),
          say("{}: {} must leave the hand luggage.", verdict, taken)),
      Check.stop(
          calc("AND(NOT({});{}>{})", asks(), taken, byHand),
          say("{} by hand, {} may: the rest by road or cargo.", taken, byHand)),
      Check.look(
          calc("{}=\"no\"", readable),
          Formula.of("Without printed Wh an airline often turns a pack away: ask, or leave it.")),
      Check.look(
          asks(), say("{}: ask before travel; until then none is counted to go by hand.", verdict)),
      Check.look(
          calc("{}>0", left),
          say("{} are nowhere yet: a traveller, cargo, road, or hire there.", left)),
      Check.look(
          calc("AND({}>0;{}<>\"yes\")", cargo, or(summary, "")),
          Formula.of("Freight asks for the UN 38.3 test summary: get it from the maker."))
    };
  }

  private static Formula less(Column column) {
    return calc("-{}", column);
  }

  Tab tab() {
    return Tab.of(
            "Packs",
            "Every kind of pack that is to be there. Fill pack, energy, quantity and how it is"
                + " carried; the Wh on the label decide.")
        .with(table);
  }
}
