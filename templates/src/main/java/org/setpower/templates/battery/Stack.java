package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.BankFunctions;
import org.setpower.registry.groups.PackFunctions;
import org.setpower.registry.groups.SheetFunctions;
import org.setpower.templates.shared.Kit;
import org.setpower.templates.spec.Answers;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** When you wonder: packs at different charge on one plate, and when each is swapped. */
final class Stack {
  private static final int PACKS = 3;
  private static final int EVENTS = 12;
  private static final int STEPS = 24;

  final Field watts =
      Field.input("Power")
          .unit("W")
          .number(Format.WHOLE, 1, 100_000)
          .help("All that hangs on the stack; type plate, or Power at the most on Positions.");
  final Field cutOff =
      Field.input("Works from")
          .unit("V")
          .number(Format.ONE, 1, 1000)
          .help("The lowest volts of the device: 20 in 20–35 V.");
  final Field plate =
      Field.input("Plate")
          .unit("V class")
          .as(Format.COUNT)
          .oneOf("12", "24", "48")
          .help("The volt class the plate asks for.");
  final Field joined =
      Field.input("Joined")
          .oneOf("hot-swap", "parallel")
          .is("hot-swap")
          .help("hot-swap: a plate made for it. parallel: bare; never at different charge.");
  final Field cold;
  final Field from =
      Field.input("From").as(Format.TIME).help("Switched on, by the clock. Blank: midnight.");

  final Column pack;
  final Column charge =
      Column.input("Charge now")
          .share(0, 1)
          .needed()
          .wide(30)
          .help("The gauge on the pack, with %: 62 %.");
  final Column feed = Column.result("Feed").unit("V class").as(Format.WHOLE).wide(24);
  final Column chemistry = Column.working("Chemistry");
  final Column cells = Column.working("Cells").as(Format.ONE).unit("of 1");
  final Column ampHours = Column.working("Charge, full").unit("Ah").as(Format.TWO);
  final Column milliohms = Column.working("Resistance").unit("mΩ").as(Format.ONE);
  final Column share = Column.working("Charge").as(Format.SHARE);
  final Column energy = Column.working("Energy left").unit("Wh").as(Format.ONE);
  final Column groups = Column.working("Halves side by side").as(Format.ONE).unit("of 1");
  final Table packs = Table.of("The packs", PACKS);

  private final Column hour = Column.result("After").unit("h").as(Format.TWO);
  private final Column number = Column.result("Pack").as(Format.COUNT);
  private final Column amps = Column.result("Current").unit("A").as(Format.ONE);
  private final Column what = Column.result("What");
  private final Answers events;

  final Column clock = Column.result("Clock").as(Format.TIME).mayBeBlank().wide(52);
  final Column after = Column.result("After").unit("h").as(Format.TWO).mayBeBlank().wide(30);
  final Column which = Column.result("Pack").mayBeBlank().wide(24);
  final Column happens = Column.result("What").mayBeBlank().wide(62);
  final Column current = Column.result("Current").unit("A").as(Format.ONE).mayBeBlank().wide(24);
  private final Column row = Column.working("No.").as(Format.COUNT);
  final Table order = Table.of("Who carries when", EVENTS);

  final Column curveHour = Column.result("After").unit("h").as(Format.TWO).wide(52);
  final Column curveVolts = Column.result("Volts at the device").unit("V").as(Format.TWO).wide(30);
  final Column curveAmps = Column.result("Current").unit("A").as(Format.TWO).wide(24);
  final Column curveFirst = charge("First pack");
  final Column curveSecond = charge("Second pack");
  final Column curveThird = charge("Third pack");
  final Answers curve;

  final Field lasts;

  Stack(DayJob day, Kit kit) {
    Formula degrees = day.job.degrees();
    cold =
        Field.input("Packs as cold as")
            .unit(degrees)
            .number(Format.WHOLE, -60, 140)
            .help("Of the packs when they start. Blank: the coldest of the day on Job.");
    Formula temperature =
        calc("IF({}=\"\";{};{})", or(cold, ""), day.coldest, day.job.celsius(or(cold, 0)));
    pack =
        Column.input("Pack").oneOf(kit.pack).needed().wide(52).help("The kind of pack, from Kit.");
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
        Check.stop(
            calc(
                "AND({}=\"parallel\";MAX({})-MIN({})>0.02)",
                or(joined, ""),
                share.all(),
                share.all()),
            Formula.of(
                "Do not connect these directly in parallel: uncontrolled current flows between "
                    + "batteries at different states of charge. Use a hot-swap plate or equally "
                    + "charged batteries.")),
        Check.stop(
            calc("IF({}=1;ISERROR({});FALSE())", pack.rowNumber(), end),
            calc("IFERROR({};\"an input is in error\")", why(all, temperature))),
        Check.look(
            calc("{}<0.2", charge), say("Only {} left: charge it before it goes on.", charge)));
    Formula byEnergy =
        call(PackFunctions.RUNTIME, calc("SUM({})", energy.all()), watts, 1, 1, temperature);
    lasts =
        Field.result("The stack lasts", calc("MIN({};{})", end, byEnergy))
            .unit("h")
            .as(Format.TWO)
            .help("The shorter of two ways: volts, as below, and energy.");
    events =
        Answers.of(
            "Events of the stack",
            EVENTS,
            call(BankFunctions.EVENTS, all, watts, cutOff, optional(joined), temperature),
            hour,
            number,
            amps,
            what);
    order();
    curve =
        Answers.of(
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

  private static Column charge(String heading) {
    return Column.result(heading).as(Format.SHARE).wide(24);
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

  Answers working() {
    return events;
  }

  Tab tab() {
    return Tab.of(
            "Stack",
            "When you wonder: up to three packs at different charge behind one device. How long"
                + " they last together, and which one is empty when.")
        .portrait()
        .with(
            Fields.of("The device", watts, cutOff, plate, joined, cold, from),
            packs,
            Fields.of("Together", lasts),
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
