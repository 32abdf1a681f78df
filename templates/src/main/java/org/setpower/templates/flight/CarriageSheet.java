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

/** Which traveller carries how many of which kind. */
final class CarriageSheet {
  static final int ROOM = 60;

  final ColumnSpec traveller =
      ColumnSpec.input("Traveller")
          .number(CellFormat.COUNT, 1, 99)
          .required()
          .width(20)
          .help("1, 2, 3: a number, no name.");
  final ColumnSpec kind = ColumnSpec.input("Pack").required().width(40);
  final ColumnSpec pieces =
      ColumnSpec.input("Pieces")
          .number(CellFormat.COUNT, 0, 999)
          .required()
          .width(18)
          .help("How many of it.");
  final ColumnSpec bag =
      ColumnSpec.input("Bag").width(30).help("Which bag they are in: cabin bag 1.");
  final ColumnSpec bagMass =
      ColumnSpec.input("Bag weighs")
          .number(CellFormat.ONE, 0, 200)
          .width(22)
          .help("On the scales, full.");
  final ColumnSpec covered =
      ColumnSpec.input("Terminals covered")
          .options("yes", "no")
          .required()
          .width(22)
          .help("Each by itself: cap, tape, or a bag of its own.");

  final ColumnSpec energy =
      ColumnSpec.result("Energy of one").unit("Wh").format(CellFormat.WHOLE).width(20);
  final ColumnSpec verdict = ColumnSpec.result("Class").width(42);
  final ColumnSpec ofSort = ColumnSpec.result("Of this type").format(CellFormat.COUNT).width(18);
  final ColumnSpec most =
      ColumnSpec.result("Max. per person").format(CellFormat.COUNT).mayBeBlank().width(18);
  final ColumnSpec spares = ColumnSpec.result("All spares").format(CellFormat.COUNT).width(18);
  final ColumnSpec sparesMost =
      ColumnSpec.result("Most spares a person").format(CellFormat.COUNT).mayBeBlank().width(22);
  final ColumnSpec packMass =
      ColumnSpec.result("Packs weigh").format(CellFormat.ONE).mayBeBlank().width(20);
  final ColumnSpec sort = ColumnSpec.working("Sort");
  final ColumnSpec spare = ColumnSpec.working("Spares").format(CellFormat.COUNT);
  final ColumnSpec words = ColumnSpec.working("On the card");

  final TableSpec table = TableSpec.of("Who carries what", ROOM);

  private final TripSettings trip;

  CarriageSheet(TripSettings trip) {
    this.trip = trip;
    bagMass.unit(trip.job.masses());
    packMass.unit(trip.job.masses());
  }

  void declare(FlightsSheet flights, FlightPacksSheet packs) {
    kind.options(packs.kind).help("A row of Packs.");
    String unknown = "Packs has no such row: pick one from the list.";
    energy.formula(packs.energy.lookup(packs.kind, kind)).errorMessage(unknown);
    verdict.formula(packs.verdict.lookup(packs.kind, kind)).errorMessage(unknown);
    sort.formula(packs.sort.lookup(packs.kind, kind));
    ofSort.formula(
        calc("SUMIFS({};{};{};{};{})", pieces.all(), traveller.all(), traveller, sort.all(), sort));
    most.formula(packs.most.lookup(packs.kind, kind));
    spare.formula(
        calc("IF({}=\"in equipment\";0;{})", packs.carried.lookup(packs.kind, kind), pieces));
    spares.formula(calc("SUMIFS({};{};{})", spare.all(), traveller.all(), traveller));
    sparesMost.formula(
        calc(
            "{}+0*{}",
            call(
                FlightFunctions.MINLIMIT,
                100,
                flights.date.all(),
                flights.rulesHeld.all(),
                flights.none.all(),
                "spare",
                "Li-ion"),
            traveller));
    packMass.formula(calc("{}*{}", pieces, packs.mass.lookup(packs.kind, kind)));
    words.formula(
        calc(
            "{}&\" × \"&{}&\", \"&{}&\" Wh\"&IF(COUNTIF({};{})=0;\"\";\";"
                + " \"&INDEX({};MATCH({};{};0)))",
            pieces,
            kind,
            energy,
            traveller.below(),
            traveller,
            words.below(),
            traveller,
            traveller.below()));
    table.columns(
        traveller,
        kind,
        pieces,
        bag,
        bagMass,
        covered,
        energy,
        verdict,
        ofSort,
        most,
        spares,
        sparesMost,
        packMass,
        sort,
        spare,
        words);
    table
        .rowLabel(kind)
        .checks(
            ValidationRule.stop(
                calc("{}>{}", traveller, trip.travellers),
                say("There are {} travellers on Job, not {}.", trip.travellers, traveller)),
            ValidationRule.stop(
                calc("OR({}=\"cargo only\";{}=\"not by air\")", verdict, verdict),
                say("{}: take it out of the hand luggage of {}.", verdict, traveller)),
            ValidationRule.stop(
                calc("{}=\"no\"", covered),
                Formula.of("Cover the terminals one by one before you go to the counter.")),
            ValidationRule.stop(
                calc("{}>{}", ofSort, most),
                say(
                    "Traveller {} has {} of this sort, at most {}: give some to another.",
                    traveller,
                    ofSort,
                    most)),
            ValidationRule.stop(
                calc("{}>{}", spares, sparesMost),
                say("Traveller {} has {} spares, at most {}.", traveller, spares, sparesMost)),
            ValidationRule.check(
                calc("RIGHT({};10)=\"must agree\"", verdict),
                say("{}: not before it has.", verdict)),
            ValidationRule.check(
                calc("{}=\"ask the airline\"", verdict),
                Formula.of("Ask the airline first: no number is confirmed for this.")),
            ValidationRule.check(
                calc("IF({}=\"\";FALSE();{}>{})", or(trip.bag, ""), bagMass, or(trip.bag, 0)),
                say("The bag weighs {}, at most {}.", bagMass, trip.bag)));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Carry",
            "One row for each traveller and kind, until Left over on Packs is 0. Travellers are"
                + " numbers; spares never go into the hold.")
        .titled("Who carries what")
        .with(table);
  }
}
