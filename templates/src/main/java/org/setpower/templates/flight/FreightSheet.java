package org.setpower.templates.flight;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.ChargeFunctions;
import org.setpower.registry.groups.FlightFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The packs that do not fly with a traveller: as declared cargo, by road, or hired there. */
final class FreightSheet {
  static final int ROOM = 40;

  final ColumnSpec kind = ColumnSpec.input("Pack").required().width(36);
  final ColumnSpec pieces =
      ColumnSpec.input("Pieces")
          .number(CellFormat.COUNT, 0, 9999)
          .required()
          .width(18)
          .help("How many of it.");
  final ColumnSpec way =
      ColumnSpec.input("Goes")
          .options("cargo", "road", "hire there")
          .required()
          .width(22)
          .help("cargo: declared air freight by a trained shipper. road: in the truck.");
  final ColumnSpec packed =
      ColumnSpec.input("Packed")
          .options("alone", "with equipment", "in equipment")
          .width(26)
          .help("Cargo: by themselves, in one box with the device, or in the device.");
  final ColumnSpec chargeNow =
      ColumnSpec.input("Charge now").share().width(20).help("The pack's own gauge. 40% or 0.4.");
  final ColumnSpec handOver =
      ColumnSpec.input("Hand over")
          .format(CellFormat.DATE)
          .width(32)
          .help("The day the forwarder or the truck takes them.");
  final ColumnSpec days =
      ColumnSpec.input("Days on the way")
          .number(CellFormat.COUNT, 0, 99)
          .width(20)
          .help("What the forwarder says, door to door.");

  final ColumnSpec declared = ColumnSpec.result("How it is declared").mayBeBlank().width(62);
  final ColumnSpec limit =
      ColumnSpec.result("Max. state of charge").format(CellFormat.SHARE).mayBeBlank().width(20);
  final ColumnSpec out =
      ColumnSpec.result("Take out of each")
          .unit("Wh")
          .format(CellFormat.ONE)
          .mayBeBlank()
          .width(20);
  final ColumnSpec outAll =
      ColumnSpec.result("Total to discharge")
          .unit("Wh")
          .format(CellFormat.WHOLE)
          .mayBeBlank()
          .width(20);
  final ColumnSpec hours =
      ColumnSpec.result("Charge time, one").unit("h").format(CellFormat.ONE).width(18);
  final ColumnSpec hoursAll =
      ColumnSpec.result("To full, all").unit("h").format(CellFormat.ONE).mayBeBlank().width(18);
  final ColumnSpec arrives =
      ColumnSpec.result("Arrives").format(CellFormat.DATE).mayBeBlank().width(32);
  final ColumnSpec by =
      ColumnSpec.result("Hand over by").format(CellFormat.DATE).mayBeBlank().width(32);
  final ColumnSpec kilograms =
      ColumnSpec.result("Mass").format(CellFormat.ONE).mayBeBlank().width(18);

  final ColumnSpec newest = ColumnSpec.working("Declared by the newest rules");
  final ColumnSpec energy = ColumnSpec.working("Energy").unit("Wh").format(CellFormat.WHOLE);
  final ColumnSpec chemistry = ColumnSpec.working("Chemistry");
  final ColumnSpec ampHours = ColumnSpec.working("Charge").unit("Ah").format(CellFormat.ONE);
  final ColumnSpec cells = ColumnSpec.working("Cells").format(CellFormat.COUNT);
  final ColumnSpec sound = ColumnSpec.working("Undamaged");
  final ColumnSpec from = ColumnSpec.working("Charge on arrival").format(CellFormat.SHARE);

  final TableSpec table = TableSpec.of("Cargo and road", ROOM);

  private final TripSettings trip;

  FreightSheet(TripSettings trip) {
    this.trip = trip;
    kilograms.unit(trip.job.masses());
  }

  /** The pieces of a kind that go one way. */
  Formula sum(ColumnSpec ofKind, String goes) {
    return calc("SUMIFS({};{};{};{};{})", pieces.all(), kind.all(), ofKind, way.all(), goes);
  }

  void declare(FlightPacksSheet packs) {
    kind.options(packs.kind).help("A row of Packs.");
    energy.formula(packs.counted.lookup(packs.kind, kind));
    chemistry.formula(filled(packs.chemistry, packs));
    ampHours.formula(filled(packs.ampHours, packs));
    cells.formula(filled(packs.cells, packs));
    sound.formula(packs.sound.lookup(packs.kind, kind));
    declared.formula(
        calc(
            "IF({}<>\"cargo\";\"\";{})",
            way,
            call(
                FlightFunctions.CARGO,
                energy,
                or(packed, "alone"),
                or(chemistry, "Li-ion"),
                handOver)));
    newest.formula(
        calc(
            "IF({}<>\"cargo\";\"\";{})",
            way,
            call(
                FlightFunctions.CARGO,
                energy,
                or(packed, "alone"),
                or(chemistry, "Li-ion"),
                "2026-12-31")));
    limit.formula(
        calc(
            "IF({}<>\"cargo\";\"\";{})",
            way,
            call(FlightFunctions.CARGOCHARGE, or(packed, "alone"), energy, handOver)));
    out.formula(calc("MAX(0;{}-{})*{}", chargeNow, limit, energy));
    outAll.formula(calc("{}*{}", out, pieces));
    from.formula(calc("MIN({};{})", chargeNow, or(limit, 1)));
    hours.formula(
        call(
            ChargeFunctions.HOURS,
            ampHours,
            trip.amps,
            or(chemistry, "Li-ion"),
            trip.airCelsius(),
            from,
            1,
            optional(cells)));
    hoursAll.formula(calc("{}*ROUNDUP({}/{};0)", hours, pieces, trip.channels));
    arrives.formula(calc("{}+{}", handOver, days));
    by.formula(calc("INT({}-1-{}/24)-{}", trip.needed(), or(hoursAll, 0), days));
    kilograms.formula(calc("{}*{}", pieces, packs.mass.lookup(packs.kind, kind)));
    table.columns(
        kind, pieces, way, packed, chargeNow, handOver, days, declared, limit, out, outAll, hours,
        hoursAll, arrives, by, kilograms, energy, chemistry, ampHours, cells, sound, from, newest);
    table.checks(checks(packs));
  }

  private Formula filled(ColumnSpec column, FlightPacksSheet packs) {
    Formula cell = column.lookup(packs.kind, kind);
    return calc("IF({}=\"\";\"\";{})", cell, cell);
  }

  private ValidationRule[] checks(FlightPacksSheet packs) {
    return new ValidationRule[] {
      ValidationRule.stop(
          calc("COUNTIF({};{})=0", packs.kind.all(), kind),
          say("Packs has no {}: pick one from the list.", kind)),
      ValidationRule.stop(
          calc("AND({}=\"no\";{}=\"cargo\")", sound, way),
          Formula.of("Damaged packs do not fly, not even as cargo: ask a specialist.")),
      ValidationRule.check(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(packed, "")),
          Formula.of("Fill in Packed: alone, with equipment or in equipment.")),
      ValidationRule.stop(
          calc("AND({}=\"cargo\";{}=\"\";{}<>\"\")", way, or(declared, ""), or(newest, "")),
          say(
              "The rules held here do not answer for cargo on {}: ask the airline that flies it.",
              calc("TEXT({};\"d mmm yyyy\")", handOver))),
      ValidationRule.stop(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(declared, "")),
          Formula.of("No packing instruction is known for this: ask the forwarder.")),
      ValidationRule.check(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(handOver, "")),
          Formula.of("Fill in Hand over and Days on the way.")),
      ValidationRule.check(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(chargeNow, "")),
          Formula.of("Fill in Charge now: cargo may hold only little.")),
      ValidationRule.check(
          calc("AND({}=\"cargo\";{}=\"\")", way, or(hours, "")),
          Formula.of("Fill in Charge (Ah) on Packs: it tells how long they charge on arrival.")),
      ValidationRule.stop(
          calc("AND({}<>\"hire there\";{}>{})", way, handOver, by),
          say("Too late: hand over by {} to be full on {}.", by, trip.neededOn)),
      ValidationRule.check(
          calc("{}>0", out), say("Discharge each by {} Wh: max. {} SoC as cargo.", out, limit)),
      ValidationRule.check(
          calc("AND({}=\"cargo\";{}<>\"\";{}=\"\")", way, or(declared, ""), or(limit, "")),
          Formula.of("No share of charge binds here; 30 % of the rated Wh is recommended."))
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Cargo, road",
            "What does not fly with a traveller: pieces, which way, and for cargo how packed, how"
                + " full and when handed over.")
        .titled("Cargo and road")
        .with(table);
  }
}
