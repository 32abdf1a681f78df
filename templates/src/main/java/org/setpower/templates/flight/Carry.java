package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** Which traveller carries how many of which kind. */
final class Carry {
  static final int ROOM = 60;

  final Column traveller =
      Column.input("Traveller")
          .number(Format.COUNT, 1, 99)
          .needed()
          .wide(20)
          .help("1, 2, 3: a number, no name.");
  final Column kind = Column.input("Pack").needed().wide(40);
  final Column pieces =
      Column.input("Pieces").number(Format.COUNT, 0, 999).needed().wide(18).help("How many of it.");
  final Column bag = Column.input("Bag").wide(30).help("Which bag they are in: cabin bag 1.");
  final Column bagMass =
      Column.input("Bag weighs").number(Format.ONE, 0, 200).wide(22).help("On the scales, full.");
  final Column covered =
      Column.input("Terminals covered")
          .oneOf("yes", "no")
          .needed()
          .wide(22)
          .help("Each by itself: cap, tape, or a bag of its own.");

  final Column energy = Column.result("Energy of one").unit("Wh").as(Format.WHOLE).wide(20);
  final Column verdict = Column.result("Class").wide(42);
  final Column ofSort = Column.result("Of this sort").as(Format.COUNT).wide(18);
  final Column most = Column.result("Most a person").as(Format.COUNT).mayBeBlank().wide(18);
  final Column spares = Column.result("All spares").as(Format.COUNT).wide(18);
  final Column sparesMost =
      Column.result("Most spares a person").as(Format.COUNT).mayBeBlank().wide(22);
  final Column packMass = Column.result("Packs weigh").as(Format.ONE).mayBeBlank().wide(20);
  final Column sort = Column.working("Sort");
  final Column spare = Column.working("Spares").as(Format.COUNT);
  final Column words = Column.working("On the card");

  final Table table = Table.of("Who carries what", ROOM);

  private final Trip trip;

  Carry(Trip trip) {
    this.trip = trip;
    bagMass.unit(trip.job.masses());
    packMass.unit(trip.job.masses());
  }

  void declare(Flights flights, Packs packs) {
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
            Check.stop(
                calc("{}>{}", traveller, trip.travellers),
                say("There are {} travellers on Job, not {}.", trip.travellers, traveller)),
            Check.stop(
                calc("OR({}=\"cargo only\";{}=\"not by air\")", verdict, verdict),
                say("{}: take it out of the hand luggage of {}.", verdict, traveller)),
            Check.stop(
                calc("{}=\"no\"", covered),
                Formula.of("Cover the terminals one by one before you go to the counter.")),
            Check.stop(
                calc("{}>{}", ofSort, most),
                say(
                    "Traveller {} has {} of this sort, at most {}: give some to another.",
                    traveller,
                    ofSort,
                    most)),
            Check.stop(
                calc("{}>{}", spares, sparesMost),
                say("Traveller {} has {} spares, at most {}.", traveller, spares, sparesMost)),
            Check.look(
                calc("RIGHT({};10)=\"must agree\"", verdict),
                say("{}: not before it has.", verdict)),
            Check.look(
                calc("{}=\"ask the airline\"", verdict),
                Formula.of("Ask the airline first: no number is confirmed for this.")),
            Check.look(
                calc("IF({}=\"\";FALSE();{}>{})", or(trip.bag, ""), bagMass, or(trip.bag, 0)),
                say("The bag weighs {}, at most {}.", bagMass, trip.bag)));
  }

  Tab tab() {
    return Tab.of(
            "Carry",
            "One row for each traveller and kind, until Left over on Packs is 0. Travellers are"
                + " numbers; spares never go into the hold.")
        .titled("Who carries what")
        .with(table);
  }
}
