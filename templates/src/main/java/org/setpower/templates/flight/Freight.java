package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.ChargeFunctions;
import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The packs that do not fly with a traveller: as declared cargo, by road, or hired there. */
final class Freight {
  static final int ROOM = 40;

  final Column kind = Column.input("Pack").needed().wide(36);
  final Column pieces =
      Column.input("Pieces")
          .number(Format.COUNT, 0, 9999)
          .needed()
          .wide(18)
          .help("How many of it.");
  final Column way =
      Column.input("Goes")
          .oneOf("cargo", "road", "hire there")
          .needed()
          .wide(22)
          .help("cargo: declared air freight by a trained shipper. road: in the truck.");
  final Column packed =
      Column.input("Packed")
          .oneOf("alone", "with equipment", "in equipment")
          .wide(26)
          .help("Cargo: by themselves, in one box with the device, or in the device.");
  final Column chargeNow =
      Column.input("Charge now").share().wide(20).help("The pack's own gauge. 40% or 0.4.");
  final Column handOver =
      Column.input("Hand over")
          .as(Format.DATE)
          .wide(32)
          .help("The day the forwarder or the truck takes them.");
  final Column days =
      Column.input("Days on the way")
          .number(Format.COUNT, 0, 99)
          .wide(20)
          .help("What the forwarder says, door to door.");

  final Column declared = Column.result("How it is declared").mayBeBlank().wide(62);
  final Column limit = Column.result("Charge, at most").as(Format.SHARE).mayBeBlank().wide(20);
  final Column out =
      Column.result("Take out of each").unit("Wh").as(Format.ONE).mayBeBlank().wide(20);
  final Column outAll =
      Column.result("Take out in all").unit("Wh").as(Format.WHOLE).mayBeBlank().wide(20);
  final Column hours = Column.result("To full, one").unit("h").as(Format.ONE).wide(18);
  final Column hoursAll =
      Column.result("To full, all").unit("h").as(Format.ONE).mayBeBlank().wide(18);
  final Column arrives = Column.result("Arrives").as(Format.DATE).mayBeBlank().wide(32);
  final Column by = Column.result("Hand over by").as(Format.DATE).mayBeBlank().wide(32);
  final Column kilograms = Column.result("Mass").as(Format.ONE).mayBeBlank().wide(18);

  final Column newest = Column.working("Declared by the newest rules");
  final Column energy = Column.working("Energy").unit("Wh").as(Format.WHOLE);
  final Column chemistry = Column.working("Chemistry");
  final Column ampHours = Column.working("Charge").unit("Ah").as(Format.ONE);
  final Column cells = Column.working("Cells").as(Format.COUNT);
  final Column sound = Column.working("Undamaged");
  final Column from = Column.working("Charge on arrival").as(Format.SHARE);

  final Table table = Table.of("Cargo and road", ROOM);

  private final Trip trip;

  Freight(Trip trip) {
    this.trip = trip;
    kilograms.unit(trip.job.masses());
  }

  /** The pieces of a kind that go one way. */
  Formula sum(Column ofKind, String goes) {
    return calc("SUMIFS({};{};{};{};{})", pieces.all(), kind.all(), ofKind, way.all(), goes);
  }

  void declare(Packs packs) {
    kind.oneOf(packs.kind).help("A row of Packs.");
    energy.by(packs.counted.where(packs.kind, kind));
    chemistry.by(filled(packs.chemistry, packs));
    ampHours.by(filled(packs.ampHours, packs));
    cells.by(filled(packs.cells, packs));
    sound.by(packs.sound.where(packs.kind, kind));
    declared.by(
        calc(
            "IF({}<>\"cargo\";\"\";{})",
            way,
            call(
                FlightFunctions.CARGO,
                energy,
                or(packed, "alone"),
                optional(chemistry),
                optional(handOver))));
    newest.by(
        calc(
            "IF({}<>\"cargo\";\"\";{})",
            way,
            call(FlightFunctions.CARGO, energy, or(packed, "alone"), optional(chemistry))));
    limit.by(
        calc(
            "IF({}<>\"cargo\";\"\";{})",
            way,
            call(FlightFunctions.CARGOCHARGE, or(packed, "alone"), energy, optional(handOver))));
    out.by(calc("MAX(0;{}-{})*{}", chargeNow, limit, energy));
    outAll.by(calc("{}*{}", out, pieces));
    from.by(calc("MIN({};{})", chargeNow, or(limit, 1)));
    hours.by(
        call(
            ChargeFunctions.HOURS,
            ampHours,
            trip.amps,
            from,
            1,
            optional(chemistry),
            optional(cells),
            null,
            trip.airCelsius()));
    hoursAll.by(calc("{}*ROUNDUP({}/{};0)", hours, pieces, trip.channels));
    arrives.by(calc("{}+{}", handOver, days));
    by.by(calc("INT({}-1-{}/24)-{}", trip.needed(), or(hoursAll, 0), days));
    kilograms.by(calc("{}*{}", pieces, packs.mass.where(packs.kind, kind)));
    table.columns(
        kind, pieces, way, packed, chargeNow, handOver, days, declared, limit, out, outAll, hours,
        hoursAll, arrives, by, kilograms, energy, chemistry, ampHours, cells, sound, from, newest);
    table.checks(checks(packs));
  }

  private Formula filled(Column column, Packs packs) {
    Formula cell = column.where(packs.kind, kind);
    return calc("IF({}=\"\";\"\";{})", cell, cell);
  }

  private Check[] checks(Packs packs) {
    return new Check[] {
      Check.stop(
          calc("COUNTIF({};{})=0", packs.kind.all(), kind),
          say("Packs has no {}: pick one from the list.", kind)),
      Check.stop(
          calc("AND({}=\"no\";{}=\"cargo\")", sound, way),
          Formula.of("Damaged packs do not fly, not even as cargo: ask a specialist.")),
      Check.look(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(packed, "")),
          Formula.of("Fill in Packed: alone, with equipment or in equipment.")),
      Check.stop(
          calc("AND({}=\"cargo\";{}=\"\";{}<>\"\")", way, or(declared, ""), or(newest, "")),
          say(
              "The rules held here do not answer for cargo on {}: ask the airline that flies it.",
              calc("TEXT({};\"d mmm yyyy\")", handOver))),
      Check.stop(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(declared, "")),
          Formula.of("No packing instruction is known for this: ask the forwarder.")),
      Check.look(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(handOver, "")),
          Formula.of("Fill in Hand over and Days on the way.")),
      Check.look(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(chargeNow, "")),
          Formula.of("Fill in Charge now: cargo may hold only little.")),
      Check.look(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(hours, "")),
          Formula.of("Fill in Charge (Ah) on Packs: it tells how long they charge on arrival.")),
      Check.stop(
          calc("AND({}<>\"hire there\";{}>{})", way, handOver, by),
          say("Too late: hand over by {} to be full on {}.", by, trip.neededOn)),
      Check.look(
          calc("{}>0", out),
          say("Take {} Wh out of each before: at most {} as cargo.", out, limit)),
      Check.look(
          calc("AND({}=\"cargo\";{}<>\"\";{}=\"\")", way, or(declared, ""), or(limit, "")),
          Formula.of("No share of charge binds here; 30 % of the rated Wh is recommended."))
    };
  }

  Tab tab() {
    return Tab.of(
            "Cargo, road",
            "What does not fly with a traveller: pieces, which way, and for cargo how packed, how"
                + " full and when handed over.")
        .titled("Cargo and road")
        .with(table);
  }
}
