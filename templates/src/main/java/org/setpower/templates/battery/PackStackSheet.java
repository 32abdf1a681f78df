package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.BankFunctions;
import org.setpower.registry.groups.PackFunctions;
import org.setpower.registry.groups.SheetFunctions;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.ArrayResult;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** When you wonder: packs at different charge on one plate, and when each is swapped. */
final class PackStackSheet {
  private static final int PACKS = 3;
  private static final int EVENTS = 12;
  private static final int STEPS = 24;

  final FieldSpec watts =
      FieldSpec.input("Power")
          .unit("W")
          .number(CellFormat.WHOLE, 1, 100_000)
          .help("All that hangs on the stack; type plate, or Power at the most on Positions.");
  final FieldSpec cutOff =
      FieldSpec.input("Works from")
          .unit("V")
          .number(CellFormat.ONE, 1, 1000)
          .help("The lowest volts of the device: 20 in 20–35 V.");
  final FieldSpec plate =
      FieldSpec.input("Plate")
          .unit("V class")
          .as(CellFormat.COUNT)
          .oneOf("12", "24", "48")
          .help("The volt class the plate asks for.");
  final FieldSpec joined =
      FieldSpec.input("Joined")
          .oneOf("hot-swap", "parallel")
          .is("hot-swap")
          .help("hot-swap: a plate made for it. parallel: bare; never at different charge.");
  final FieldSpec cold;
  final FieldSpec from =
      FieldSpec.input("From")
          .as(CellFormat.TIME)
          .help("Switched on, by the clock. Blank: midnight.");

  final ColumnSpec pack;
  final ColumnSpec charge =
      ColumnSpec.input("Charge now")
          .share(0, 1)
          .needed()
          .wide(30)
          .help("The gauge on the pack, with %: 62 %.");
  final ColumnSpec feed = ColumnSpec.result("Feed").unit("V class").as(CellFormat.WHOLE).wide(24);
  final ColumnSpec chemistry = ColumnSpec.working("Chemistry");
  final ColumnSpec cells = ColumnSpec.working("Cells").as(CellFormat.ONE).unit("of 1");
  final ColumnSpec ampHours = ColumnSpec.working("Charge, full").unit("Ah").as(CellFormat.TWO);
  final ColumnSpec milliohms = ColumnSpec.working("Resistance").unit("mΩ").as(CellFormat.ONE);
  final ColumnSpec share = ColumnSpec.working("Charge").as(CellFormat.SHARE);
  final ColumnSpec energy = ColumnSpec.working("Energy left").unit("Wh").as(CellFormat.ONE);
  final ColumnSpec groups =
      ColumnSpec.working("Halves side by side").as(CellFormat.ONE).unit("of 1");
  final TableSpec packs = TableSpec.of("The packs", PACKS);

  private final ColumnSpec hour = ColumnSpec.result("After").unit("h").as(CellFormat.TWO);
  private final ColumnSpec number = ColumnSpec.result("Pack").as(CellFormat.COUNT);
  private final ColumnSpec amps = ColumnSpec.result("Current").unit("A").as(CellFormat.ONE);
  private final ColumnSpec what = ColumnSpec.result("What");
  private final ArrayResult events;

  final ColumnSpec clock = ColumnSpec.result("Clock").as(CellFormat.TIME).mayBeBlank().wide(52);
  final ColumnSpec after =
      ColumnSpec.result("After").unit("h").as(CellFormat.TWO).mayBeBlank().wide(30);
  final ColumnSpec which = ColumnSpec.result("Pack").mayBeBlank().wide(24);
  final ColumnSpec happens = ColumnSpec.result("What").mayBeBlank().wide(62);
  final ColumnSpec current =
      ColumnSpec.result("Current").unit("A").as(CellFormat.ONE).mayBeBlank().wide(24);
  private final ColumnSpec row = ColumnSpec.working("No.").as(CellFormat.COUNT);
  final TableSpec order = TableSpec.of("Who carries when", EVENTS);

  final ColumnSpec curveHour = ColumnSpec.result("After").unit("h").as(CellFormat.TWO).wide(52);
  final ColumnSpec curveVolts =
      ColumnSpec.result("Volts at the device").unit("V").as(CellFormat.TWO).wide(30);
  final ColumnSpec curveAmps = ColumnSpec.result("Current").unit("A").as(CellFormat.TWO).wide(24);
  final ColumnSpec curveFirst = charge("First pack");
  final ColumnSpec curveSecond = charge("Second pack");
  final ColumnSpec curveThird = charge("Third pack");
  final ArrayResult curve;

  final FieldSpec lasts;

  PackStackSheet(BatteryJobSheet day, EquipmentSheet kit) {
    Formula degrees = day.job.degrees();
    cold =
        FieldSpec.input("Packs as cold as")
            .unit(degrees)
            .number(CellFormat.WHOLE, -60, 140)
            .help("Of the packs when they start. Blank: the coldest of the day on Job.");
    Formula temperature =
        calc("IF({}=\"\";{};{})", or(cold, ""), day.coldest, day.job.celsius(or(cold, 0)));
    pack =
        ColumnSpec.input("Pack")
            .oneOf(kit.pack)
            .needed()
            .wide(52)
            .help("The kind of pack, from Kit.");
    Formula health =
        calc(
            "IF({}=\"\";1;{})", kit.health.where(kit.pack, pack), kit.health.where(kit.pack, pack));
    feed.by(call(PackFunctions.FEED, calc("{}&\"\"", kit.outputs.where(kit.pack, pack)), plate));
    groups.by(calc("MAX(1;{}/{})", kit.highest.where(kit.pack, pack), feed));
    chemistry.by(
        calc(
            "IF({}=\"\";\"Li-ion\";{})",
            kit.chemistry.where(kit.pack, pack),
            kit.chemistry.where(kit.pack, pack)));
    cells.by(calc("{}/{}", kit.cells.where(kit.pack, pack), groups));
    ampHours.by(calc("{}*{}*{}", kit.ampHours.where(kit.pack, pack), groups, health));
    milliohms.by(calc("{}/{}/{}", kit.milliohms.where(kit.pack, pack), groups, groups));
    energy.by(calc("{}*{}*{}", kit.wattHours.where(kit.pack, pack), health, share));
    share.by(calc("IF({}=\"\";\"\";{})", groups, charge));
    packs.columns(pack, charge, feed, chemistry, cells, ampHours, milliohms, share, energy, groups);
    Formula all = chemistry.block(share);
    Formula end = call(BankFunctions.LASTS, all, watts, cutOff, optional(joined), temperature);
    packs.checks(
        ValidationRule.stop(
            calc(
                "AND({}=\"parallel\";MAX({})-MIN({})>0.02)",
                or(joined, ""),
                share.all(),
                share.all()),
            Formula.of(
                "Do not connect these directly in parallel: uncontrolled current flows between "
                    + "batteries at different states of charge. Use a hot-swap plate or equally "
                    + "charged batteries.")),
        ValidationRule.stop(
            calc("IF({}=1;ISERROR({});FALSE())", pack.rowNumber(), end),
            calc("IFERROR({};\"an input is in error\")", why(all, temperature))),
        ValidationRule.look(
            calc("{}<0.2", charge), say("Only {} left: charge it before it goes on.", charge)));
    Formula byEnergy =
        call(PackFunctions.RUNTIME, calc("SUM({})", energy.all()), watts, 1, 1, temperature);
    lasts =
        FieldSpec.result("The stack lasts", calc("MIN({};{})", end, byEnergy))
            .unit("h")
            .as(CellFormat.TWO)
            .help("The shorter of two ways: volts, as below, and energy.");
    events =
        ArrayResult.of(
            "Events of the stack",
            EVENTS,
            call(BankFunctions.EVENTS, all, watts, cutOff, optional(joined), temperature),
            hour,
            number,
            amps,
            what);
    order();
    curve =
        ArrayResult.of(
            "The stack over the hours",
            STEPS + 1,
            call(BankFunctions.CURVE, all, watts, cutOff, optional(joined), temperature, 0, STEPS),
            curveHour,
            curveVolts,
            curveAmps,
            curveFirst,
            curveSecond,
            curveThird);
  }

  private static ColumnSpec charge(String heading) {
    return ColumnSpec.result(heading).as(CellFormat.SHARE).wide(24);
  }

  private Formula why(Formula all, Formula temperature) {
    return call(
        SheetFunctions.WHY, "BANK.LASTS", all, watts, cutOff, optional(joined), temperature);
  }

  private void order() {
    row.by(row.rowNumber()).inBlankRowsToo();
    after.by(calc("INDEX({};{})", hour.all(), row));
    clock.by(calc("MOD({}+{}/24;1)", or(from, 0), after));
    which.by(
        calc(
            "IF(N(INDEX({};{}))=0;\"\";INDEX({};{})&\". \"&INDEX({};INDEX({};{})))",
            number.all(),
            row,
            number.all(),
            row,
            pack.all(),
            number.all(),
            row));
    happens.by(calc("INDEX({};{})", what.all(), row));
    current.by(calc("INDEX({};{})", amps.all(), row));
    order.columns(clock, after, which, current, happens, row);
  }

  ArrayResult working() {
    return events;
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Stack",
            "When you wonder: up to three packs at different charge behind one device. How long"
                + " they last together, and which one is empty when.")
        .portrait()
        .with(
            FieldBlock.of("The device", watts, cutOff, plate, joined, cold, from),
            packs,
            FieldBlock.of("Together", lasts),
            order)
        .newPage(
            BarChart.lines(
                "Volts of the stack over the hours",
                11,
                "Volts at the device (V)",
                curveHour,
                curveVolts))
        .with(
            BarChart.lines(
                "Charge of each pack",
                11,
                "Charge",
                curveHour,
                curveFirst,
                curveSecond,
                curveThird),
            curve);
  }
}
