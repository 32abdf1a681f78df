package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.ChargeFunctions;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The chargers: how long a pack takes there, and whether all are ready by the next call. */
final class ChargersSheet {
  private static final double ROOM_TEMPERATURE = 20;
  private static final double ALWAYS = 300;

  final ColumnSpec charger =
      ColumnSpec.input("Charger").required().width(52).help("What it is called on the cart.");
  final ColumnSpec place = ColumnSpec.input("Place").width(26).help("Where it stands.");
  final ColumnSpec channels =
      ColumnSpec.input("Channels")
          .number(CellFormat.COUNT, 1, 200)
          .required()
          .width(19)
          .help("How many packs it charges at the same time.");
  final ColumnSpec amps =
      ColumnSpec.input("A channel, all in use")
          .unit("A")
          .number(CellFormat.ONE, 0.1, 1000)
          .required()
          .width(16)
          .help("Label of the charger: what each gets when all are in use. Alone it may be more.");
  final ColumnSpec takes;
  final ColumnSpec pieces =
      ColumnSpec.input("To be ready")
          .number(CellFormat.COUNT, 1, 999)
          .width(14)
          .help("Packs of this kind to charge here before the next call. Blank: none.");
  final ColumnSpec mainsFrom =
      ColumnSpec.input("Mains from")
          .format(CellFormat.TIME)
          .width(14)
          .help("Blank: mains all the time.");
  final ColumnSpec mainsTo =
      ColumnSpec.input("Mains to")
          .format(CellFormat.TIME)
          .width(14)
          .help("At or before Mains from means the next morning.");
  final ColumnSpec deadFrom =
      ColumnSpec.input("Dead from")
          .format(CellFormat.TIME)
          .width(14)
          .help("Generator off for quiet: from.");
  final ColumnSpec deadTo =
      ColumnSpec.input("Dead to")
          .format(CellFormat.TIME)
          .width(14)
          .help("Generator off for quiet: to.");
  final ColumnSpec runner =
      ColumnSpec.input("There and back")
          .unit("min")
          .number(CellFormat.WHOLE, 0, 1440)
          .width(15)
          .help("The runner from set to this charger and back. Blank: it stands on set.");
  final ColumnSpec air;
  final ColumnSpec warming =
      ColumnSpec.input("Warming")
          .unit("h")
          .number(CellFormat.ONE, 0, 24)
          .width(18)
          .help(
              "Hours indoors until the whole battery is above 0 °C (32 °F). Measure; large "
                  + "ones take over an hour.");
  final ColumnSpec counts =
      ColumnSpec.input("In the day")
          .options("yes")
          .width(14)
          .help("yes: it charges while the day runs, and Day plans with it.");
  final ColumnSpec watched =
      ColumnSpec.input("Watched")
          .options("yes")
          .width(18)
          .help("yes: somebody is near as long as it charges, at night too.");

  final ColumnSpec hours =
      ColumnSpec.result("Charge time per battery").unit("h").format(CellFormat.TWO).width(15);
  final ColumnSpec free =
      ColumnSpec.result("Hours before the next call")
          .unit("h")
          .format(CellFormat.ONE)
          .mayBeBlank()
          .width(17);
  final ColumnSpec needed =
      ColumnSpec.result("Channels needed").format(CellFormat.COUNT).mayBeBlank().width(19);
  final ColumnSpec ready = ColumnSpec.result("Ready by next call?").mayBeBlank().width(16);

  final ColumnSpec celsius = ColumnSpec.working("Air").unit("°C").format(CellFormat.ONE);
  final ColumnSpec fromHour =
      ColumnSpec.working("Mains from hour").unit("h").format(CellFormat.TWO);
  final ColumnSpec toHour = ColumnSpec.working("Mains to hour").unit("h").format(CellFormat.TWO);
  final ColumnSpec deadFromHour =
      ColumnSpec.working("Dead from hour").unit("h").format(CellFormat.TWO);
  final ColumnSpec deadToHour = ColumnSpec.working("Dead to hour").unit("h").format(CellFormat.TWO);
  final ColumnSpec begins = ColumnSpec.working("Begins").unit("h").format(CellFormat.TWO);
  final ColumnSpec ends = ColumnSpec.working("Ends").unit("h").format(CellFormat.TWO);

  final TableSpec table = TableSpec.of("Chargers", 40);

  private final BatteryJobSheet day;
  private final EquipmentSheet kit;

  ChargersSheet(BatteryJobSheet day, EquipmentSheet kit) {
    this.day = day;
    this.kit = kit;
    takes =
        ColumnSpec.input("Takes")
            .options(kit.pack)
            .required()
            .width(18)
            .help("A kind of pack, from Kit.");
    air =
        ColumnSpec.input("Air there")
            .unit(day.job.degrees())
            .number(CellFormat.WHOLE, -60, 140)
            .width(14)
            .help("At the charger while it charges. Blank: indoors, 20 °C (68 °F).");
    works();
    table.columns(
        charger,
        place,
        channels,
        amps,
        takes,
        pieces,
        mainsFrom,
        mainsTo,
        deadFrom,
        deadTo,
        runner,
        air,
        warming,
        counts,
        watched,
        hours,
        free,
        needed,
        ready,
        celsius,
        fromHour,
        toHour,
        deadFromHour,
        deadToHour,
        begins,
        ends);
    table.checks(checks());
  }

  /** Hours that a kind of pack takes at these amps. */
  Formula hoursOf(Formula pack, Formula each, Formula temperature) {
    return call(
        ChargeFunctions.HOURS,
        kit.ampHours.lookup(kit.pack, pack),
        each,
        calc("{}&\"\"", kit.chemistry.lookup(kit.pack, pack)),
        temperature,
        0,
        1,
        kit.cells.lookup(kit.pack, pack),
        kit.milliohms.lookup(kit.pack, pack));
  }

  private void works() {
    celsius.formula(
        calc("IF({}=\"\";" + ROOM_TEMPERATURE + ";{})", or(air, ""), day.job.celsius(or(air, 20))));
    hours.formula(hoursOf(takes, amps, celsius));
    fromHour.formula(calc("IF({}=\"\";0;{})", or(mainsFrom, ""), day.hour(or(mainsFrom, 0))));
    toHour.formula(
        calc("IF({}=\"\";" + ALWAYS + ";{})", or(mainsTo, ""), day.end(or(mainsTo, 0), fromHour)));
    deadFromHour.formula(calc("IF({}=\"\";\"\";{})", or(deadFrom, ""), day.hour(or(deadFrom, 0))));
    deadToHour.formula(
        calc("IF({}=\"\";\"\";{})", or(deadTo, ""), day.end(or(deadTo, 0), deadFromHour)));
    begins.formula(
        calc(
            "MAX({}+24*({}<=24*{});24*{}+{}/120)+{}",
            fromHour,
            toHour,
            day.wrap,
            day.wrap,
            or(runner, 0),
            or(warming, 0)));
    ends.formula(calc("MIN({}+24*({}<=24*{});24*{})", toHour, toHour, day.wrap, day.nextCall));
    free.formula(
        calc(
            "IF({}=\"\";\"\";MAX(0;{}-{}-MAX(0;MIN({};N({}))-MAX({};N({})))))",
            or(pieces, ""),
            ends,
            begins,
            ends,
            or(deadToHour, 0),
            begins,
            or(deadFromHour, 0)));
    needed.formula(call(ChargeFunctions.CHANNELS, pieces, free, hours));
    ready.formula(calc("IF({}<={};\"yes\";\"no\")", needed, channels));
  }

  private ValidationRule[] checks() {
    return new ValidationRule[] {
      ValidationRule.stop(
          calc("AND({}<0;{}=\"\")", day.coldest, or(warming, "")),
          say(
              "Packs come back at {} °C and must not charge below 0 °C: warm them first, and write"
                  + " for how long at Warming.",
              day.coldest)),
      ValidationRule.check(
          calc("({}=\"\")<>({}=\"\")", or(mainsFrom, ""), or(mainsTo, "")),
          Formula.of("Enter both Mains from and Mains to, or leave both blank.")),
      ValidationRule.check(
          calc("({}=\"\")<>({}=\"\")", or(deadFrom, ""), or(deadTo, "")),
          Formula.of("Fill in both Dead from and Dead to, or neither.")),
      ValidationRule.check(
          calc("AND({}<>\"\";OR({}=\"\";{}=\"\"))", or(pieces, ""), day.wrap, day.nextCall),
          Formula.of("Pick Day shown on Job, and give that day a wrap and a later day a call.")),
      ValidationRule.stop(
          calc("{}<{}", free, hours),
          say(
              "{} h until the next call, one pack takes {} h: charge elsewhere, or swap kinds.",
              free,
              hours)),
      ValidationRule.stop(
          calc("{}>{}", needed, channels),
          say(
              "{} channels needed, it has {}: share them out, or begin earlier.",
              needed,
              channels)),
      ValidationRule.check(
          calc("AND({}<>\"\";{}<>\"yes\")", or(pieces, ""), or(watched, "")),
          Formula.of(
              "Charging overnight: nobody near? Then not on this shelf; else yes at Watched."))
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Chargers",
            "Where packs charge, how fast with all channels in use, and when there is mains. Write"
                + " yes at In the day for the one that travels with the unit.")
        .with(table);
  }
}
