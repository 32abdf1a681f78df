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
          .needed()
          .wide(20)
          .help("1, 2, 3: a number, no name.");
  final ColumnSpec kind = ColumnSpec.input("Pack").needed().wide(40);
  final ColumnSpec pieces =
      ColumnSpec.input("Pieces")
          .number(CellFormat.COUNT, 0, 999)
          .needed()
          .wide(18)
          .help("How many of it.");
  final ColumnSpec bag =
      ColumnSpec.input("Bag").wide(30).help("Which bag they are in: cabin bag 1.");
  final ColumnSpec bagMass =
      ColumnSpec.input("Bag weighs")
          .number(CellFormat.ONE, 0, 200)
          .wide(22)
          .help("On the scales, full.");
  final ColumnSpec covered =
      ColumnSpec.input("Terminals covered")
          .oneOf("yes", "no")
          .needed()
          .wide(22)
          .help("Each by itself: cap, tape, or a bag of its own.");

  final ColumnSpec energy =
      ColumnSpec.result("Energy of one").unit("Wh").as(CellFormat.WHOLE).wide(20);
  final ColumnSpec verdict = ColumnSpec.result("Class").wide(42);
  final ColumnSpec ofSort = ColumnSpec.result("Of this sort").as(CellFormat.COUNT).wide(18);
  final ColumnSpec most =
      ColumnSpec.result("Most a person").as(CellFormat.COUNT).mayBeBlank().wide(18);
  final ColumnSpec spares = ColumnSpec.result("All spares").as(CellFormat.COUNT).wide(18);
  final ColumnSpec sparesMost =
      ColumnSpec.result("Most spares a person").as(CellFormat.COUNT).mayBeBlank().wide(22);
  final ColumnSpec packMass =
      ColumnSpec.result("Packs weigh").as(CellFormat.ONE).mayBeBlank().wide(20);
  final ColumnSpec sort = ColumnSpec.working("Sort");
  final ColumnSpec spare = ColumnSpec.working("Spares").as(CellFormat.COUNT);
  final ColumnSpec words = ColumnSpec.working("On the card");

  final TableSpec table = TableSpec.of("Who carries what", ROOM);

  private final TripSettings trip;

  CarriageSheet(TripSettings trip) {
    this.trip = trip;
    bagMass.unit(trip.job.masses());
    packMass.unit(trip.job.masses());
  }

  void declare(FlightsSheet flights, FlightPacksSheet packs) {
    kind.oneOf(packs.kind).help("A row of Packs.");
    String unknown = "Packs has no such row: pick one from the list.";
    energy.by(packs.energy.where(packs.kind, kind)).failing(unknown);
    verdict.by(packs.verdict.where(packs.kind, kind)).failing(unknown);
    sort.by(packs.sort.where(packs.kind, kind));
    ofSort.by(
        calc("SUMIFS({};{};{};{};{})", pieces.all(), traveller.all(), traveller, sort.all(), sort));
    most.by(packs.most.where(packs.kind, kind));
    spare.by(calc("IF({}=\"in equipment\";0;{})", packs.carried.where(packs.kind, kind), pieces));
    spares.by(calc("SUMIFS({};{};{})", spare.all(), traveller.all(), traveller));
    sparesMost.by(
        calc(
            "{}+0*{}",
            call(
                FlightFunctions.FEWEST,
                100,
                flights.date.all(),
                flights.rulesHeld.all(),
                flights.none.all()),
            traveller));
    packMass.by(calc("{}*{}", pieces, packs.mass.where(packs.kind, kind)));
    words.by(
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
        .called(kind)
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
            ValidationRule.look(
                calc("RIGHT({};10)=\"must agree\"", verdict),
                say("{}: not before it has.", verdict)),
            ValidationRule.look(
                calc("{}=\"ask the airline\"", verdict),
                Formula.of("Ask the airline first: no number is confirmed for this.")),
            ValidationRule.look(
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
