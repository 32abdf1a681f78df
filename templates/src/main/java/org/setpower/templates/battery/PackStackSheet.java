package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
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
          .unit("nominal V")
          .format(CellFormat.COUNT)
          .options("12", "24", "48")
          .help("Nominal voltage of the plate.");
  final FieldSpec joined =
      FieldSpec.input("Joined")
          .options("hot-swap", "parallel")
          .is("hot-swap")
          .help("hot-swap: a plate made for it. parallel: bare; never at different charge.");
  final FieldSpec cold;
  final FieldSpec from =
      FieldSpec.input("From")
          .format(CellFormat.TIME)
          .help("Switched on, by the clock. Blank: midnight.");

  final ColumnSpec pack;
  final ColumnSpec charge =
      ColumnSpec.input("Charge now")
          .share(0, 1)
          .required()
          .width(30)
          .help("The gauge on the pack, with %: 62 %.");
  final ColumnSpec feed =
      ColumnSpec.result("Feed").unit("nominal V").format(CellFormat.WHOLE).width(24);
  final ColumnSpec chemistry = ColumnSpec.working("Chemistry");
  final ColumnSpec cells = ColumnSpec.working("Cells").format(CellFormat.ONE).unit("of 1");
  final ColumnSpec ampHours = ColumnSpec.working("Charge, full").unit("Ah").format(CellFormat.TWO);
  final ColumnSpec milliohms = ColumnSpec.working("Resistance").unit("mΩ").format(CellFormat.ONE);
  final ColumnSpec share = ColumnSpec.working("Charge").format(CellFormat.SHARE);
  final ColumnSpec energy = ColumnSpec.working("Energy left").unit("Wh").format(CellFormat.ONE);
  final ColumnSpec groups =
      ColumnSpec.working("Halves side by side").format(CellFormat.ONE).unit("of 1");
  final TableSpec packs = TableSpec.of("The packs", PACKS);

  private final ColumnSpec hour = ColumnSpec.result("After").unit("h").format(CellFormat.TWO);
  private final ColumnSpec number = ColumnSpec.result("Pack").format(CellFormat.COUNT);
  private final ColumnSpec amps = ColumnSpec.result("Current").unit("A").format(CellFormat.ONE);
  private final ColumnSpec what = ColumnSpec.result("What");
  private final ArrayResult events;

  final ColumnSpec clock = ColumnSpec.result("Time").format(CellFormat.TIME).mayBeBlank().width(52);
  final ColumnSpec after =
      ColumnSpec.result("After").unit("h").format(CellFormat.TWO).mayBeBlank().width(30);
  final ColumnSpec which = ColumnSpec.result("Pack").mayBeBlank().width(24);
  final ColumnSpec happens = ColumnSpec.result("What").mayBeBlank().width(62);
  final ColumnSpec current =
      ColumnSpec.result("Current").unit("A").format(CellFormat.ONE).mayBeBlank().width(24);
  private final ColumnSpec row = ColumnSpec.working("No.").format(CellFormat.COUNT);
  final TableSpec order = TableSpec.of("Load sharing over time", EVENTS);

  final ColumnSpec curveHour =
      ColumnSpec.result("After").unit("h").format(CellFormat.TWO).width(52);
  final ColumnSpec curveVolts =
      ColumnSpec.result("Volts at the device").unit("V").format(CellFormat.TWO).width(30);
  final ColumnSpec curveAmps =
      ColumnSpec.result("Current").unit("A").format(CellFormat.TWO).width(24);
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
            .options(kit.pack)
            .required()
            .width(52)
            .help("The kind of pack, from Kit.");
    Formula health =
        calc(
            "IF({}=\"\";1;{})",
            kit.health.lookup(kit.pack, pack),
            kit.health.lookup(kit.pack, pack));
    feed.formula(
        call(PackFunctions.FEED, calc("{}&\"\"", kit.outputs.lookup(kit.pack, pack)), plate));
    groups.formula(calc("MAX(1;{}/{})", kit.highest.lookup(kit.pack, pack), feed));
    chemistry.formula(
        calc(
            "IF({}=\"\";\"Li-ion\";{})",
            kit.chemistry.lookup(kit.pack, pack),
            kit.chemistry.lookup(kit.pack, pack)));
    cells.formula(calc("{}/{}", kit.cells.lookup(kit.pack, pack), groups));
    ampHours.formula(calc("{}*{}*{}", kit.ampHours.lookup(kit.pack, pack), groups, health));
    milliohms.formula(calc("{}/{}/{}", kit.milliohms.lookup(kit.pack, pack), groups, groups));
    energy.formula(calc("{}*{}*{}", kit.wattHours.lookup(kit.pack, pack), health, share));
    share.formula(calc("IF({}=\"\";\"\";{})", groups, charge));
    packs.columns(pack, charge, feed, chemistry, cells, ampHours, milliohms, share, energy, groups);
    Formula all = chemistry.block(share);
    Formula end =
        call(BankFunctions.DISCHARGE, all, watts, cutOff, or(joined, "hot-swap"), temperature);
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
        ValidationRule.check(
            calc("{}<0.2", charge), say("Only {} left: charge it before it goes on.", charge)));
    Formula byEnergy =
        call(
            PackFunctions.RUNTIME,
            calc("SUM({})", energy.all()),
            watts,
            1,
            1,
            temperature,
            "Li-ion");
    lasts =
        FieldSpec.result("The stack lasts", calc("MIN({};{})", end, byEnergy))
            .unit("h")
            .format(CellFormat.TWO)
            .help("The shorter of two ways: volts, as below, and energy.");
    events =
        ArrayResult.of(
            "Events of the stack",
            EVENTS,
            call(BankFunctions.EVENTS, all, watts, cutOff, or(joined, "hot-swap"), temperature),
            hour,
            number,
            amps,
            what);
    order();
    curve =
        ArrayResult.of(
            "The stack over the hours",
            STEPS + 1,
            call(
                BankFunctions.CURVE,
                all,
                watts,
                cutOff,
                or(joined, "hot-swap"),
                temperature,
                0,
                STEPS),
            curveHour,
            curveVolts,
            curveAmps,
            curveFirst,
            curveSecond,
            curveThird);
  }

  private static ColumnSpec charge(String heading) {
    return ColumnSpec.result(heading).format(CellFormat.SHARE).width(24);
  }

  private Formula why(Formula all, Formula temperature) {
    return call(
        SheetFunctions.WHY,
        "BANK.DISCHARGE",
        all,
        watts,
        cutOff,
        or(joined, "hot-swap"),
        temperature);
  }

  private void order() {
    row.formula(row.rowNumber()).inBlankRowsToo();
    after.formula(calc("INDEX({};{})", hour.all(), row));
    clock.formula(calc("MOD({}+{}/24;1)", or(from, 0), after));
    which.formula(
        calc(
            "IF(N(INDEX({};{}))=0;\"\";INDEX({};{})&\". \"&INDEX({};INDEX({};{})))",
            number.all(),
            row,
            number.all(),
            row,
            pack.all(),
            number.all(),
            row));
    happens.formula(calc("INDEX({};{})", what.all(), row));
    current.formula(calc("INDEX({};{})", amps.all(), row));
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
            FieldBlock.of("Result", lasts),
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
