package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.setpower.registry.groups.PackFunctions;
import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.shared.PackFeed;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** What a pack hangs on, and how long the pack lasts there with everything that is on. */
final class PositionsSheet {
  static final int ROOM = 40;

  final PackFeed feed;
  final ColumnSpec position =
      ColumnSpec.input("Position")
          .required()
          .width(52)
          .help("What a pack hangs on: camera A on sticks, the same on the shoulder, sound bag.");
  final ColumnSpec department =
      ColumnSpec.input("Department")
          .width(24)
          .help("Who carries it: camera, sound, video, electric.");
  final ColumnSpec quantity =
      ColumnSpec.input("Quantity")
          .number(CellFormat.COUNT, 1, 99)
          .width(17)
          .help("How many alike, each with packs of its own, swapped together. Blank: 1.");
  final ColumnSpec joined =
      ColumnSpec.input("Joined")
          .options("one", "hot-swap", "parallel", "series")
          .width(16)
          .help(
              "hot-swap: a plate that supplies from one battery while another is changed. "
                  + "parallel: same type and charge only. series: same type and charge, only where "
                  + "the manufacturer permits it. Blank: one.");
  final ColumnSpec atOnce =
      ColumnSpec.input("Packs at once")
          .number(CellFormat.COUNT, 1, 12)
          .width(13)
          .help("How many packs hang on it at the same time. Blank: 1.");
  final ColumnSpec swapAt =
      ColumnSpec.input("Swap at")
          .share(0, 0.9)
          .width(13)
          .help("Charge left at which you swap, with %: 15 %. Blank: when the device stops.");
  final ColumnSpec mostMass =
      ColumnSpec.input("Mass, at most")
          .number(CellFormat.ONE, 0, 1000)
          .width(14)
          .help("Packs on the shoulder or the rig may weigh so much together. Blank: no matter.");
  final ColumnSpec staysOn =
      ColumnSpec.input("On in breaks")
          .options("yes")
          .width(13)
          .help("yes: it stays on over lunch and the move of Job. Blank: it is switched off.");
  final ColumnSpec watts =
      ColumnSpec.result("Max. power").unit("W").format(CellFormat.WHOLE).width(14);
  final ColumnSpec hours =
      ColumnSpec.result("One set lasts").unit("h").format(CellFormat.ONE).width(13);
  final ColumnSpec startsAbove =
      ColumnSpec.result("Min. charge to start").format(CellFormat.SHARE).mayBeBlank().width(14);
  final ColumnSpec onFor =
      ColumnSpec.result("Hours on").unit("h").format(CellFormat.ONE).mayBeBlank().width(13);
  final ColumnSpec swaps =
      ColumnSpec.result("Swaps").format(CellFormat.COUNT).mayBeBlank().width(11);
  final ColumnSpec mass = ColumnSpec.result("Mass").format(CellFormat.ONE).mayBeBlank().width(13);

  final ColumnSpec series = ColumnSpec.working("In series").format(CellFormat.COUNT);
  final ColumnSpec parallel = ColumnSpec.working("Side by side").format(CellFormat.COUNT);
  final ColumnSpec cutOff = ColumnSpec.working("Lowest volts").unit("V").format(CellFormat.ONE);
  final ColumnSpec first = ColumnSpec.working("First on").unit("h").format(CellFormat.TWO);
  final ColumnSpec last = ColumnSpec.working("Last off").unit("h").format(CellFormat.TWO);

  final TableSpec table = TableSpec.of("Positions", ROOM);

  private final BatteryJobSheet day;
  private final EquipmentSheet kit;

  PositionsSheet(BatteryJobSheet day, EquipmentSheet kit) {
    this.day = day;
    this.kit = kit;
    feed = new PackFeed(day.job, kit, "device");
    mostMass.unit(day.job.masses());
    mass.unit(day.job.masses());
  }

  void declare(DevicesSheet devices, PacksOnHandSheet onHand, DaySheet plan) {
    works(devices, plan);
    table.columns(
        position,
        department,
        quantity,
        feed.plate,
        feed.pack,
        joined,
        atOnce,
        feed.leadLength,
        feed.leadSize,
        swapAt,
        mostMass,
        staysOn,
        feed.touchSafe,
        watts,
        feed.feed,
        feed.full,
        feed.there,
        feed.amps,
        feed.atCutOff,
        feed.limit,
        hours,
        startsAbove,
        onFor,
        swaps,
        mass,
        series,
        parallel,
        cutOff,
        first,
        last);
    table.columns(feed.working());
    table.checks(checks(onHand));
  }

  private void works(DevicesSheet devices, DaySheet plan) {
    Formula here = devices.position.all();
    watts
        .formula(
            calc(
                "IF(MAXIFS({};{};{})=0;\"\";MAXIFS({};{};{}))",
                devices.together.all(),
                here,
                position,
                devices.together.all(),
                here,
                position))
        .mayBeBlank();
    series.formula(calc("IF({}=\"series\";{};1)", or(joined, "one"), or(atOnce, 1)));
    parallel.formula(
        calc(
            "IF(OR({}=\"hot-swap\";{}=\"parallel\");{};1)",
            or(joined, "one"),
            or(joined, "one"),
            or(atOnce, 1)));
    cutOff.formula(calc("MAX(1;MAXIFS({};{};{}))", devices.lowest.all(), here, position));
    feed.works(
        watts,
        calc("IF({}=1;{};{})", cutOff, feed.there, cutOff),
        series,
        parallel,
        calc("IF({}=\"parallel\";{};1)", or(joined, "one"), parallel));
    hours.formula(feed.hours(cutOff, day.coldest, or(swapAt, 0)));
    startsAbove.formula(feed.startsAbove(cutOff, day.coldest));
    first.formula(calc("MINIFS({};{};{})", devices.onFrom.all(), here, position));
    last.formula(calc("MAXIFS({};{};{})", devices.onTo.all(), here, position));
    onFor.formula(plan.hoursOf(position));
    swaps.formula(calc("IF({}=0;0;{}-1)", onFor, call(PackFunctions.COUNT, onFor, hours, 0)));
    mass.formula(
        calc(
            "IF(N({})=0;\"\";{}*{}*{})",
            feed.ofPack(kit.packMass),
            feed.ofPack(kit.packMass),
            series,
            parallel));
  }

  private ValidationRule[] checks(PacksOnHandSheet onHand) {
    List<ValidationRule> checks = new ArrayList<>();
    Collections.addAll(
        checks,
        ValidationRule.stop(
            calc("COUNTIF({};{})>1", position.all(), position),
            say("Duplicate: {}. Give each its own name.", position)),
        ValidationRule.stop(
            calc("AND({}=\"one\";{}>1)", or(joined, "one"), or(atOnce, 1)),
            Formula.of("Several packs at once: say in Joined how they hang together.")),
        ValidationRule.check(
            calc("{}=\"\"", or(watts, "")),
            Formula.of("Nothing on Devices draws power from it yet.")));
    Collections.addAll(checks, feed.checks("a bigger pack, or less on it"));
    Collections.addAll(
        checks,
        ValidationRule.check(
            calc("{}>{}", mass, mostMass),
            say("{} of packs, {} at most: a lighter pack, or off the shoulder.", mass, mostMass)),
        ValidationRule.check(
            calc("AND(N({})>0;N({})=0)", or(mostMass, 0), feed.ofPack(kit.packMass)),
            say("Fill in on Kit what {} weighs.", feed.pack)),
        ValidationRule.check(
            calc("{}<={}", startsBelow(), or(startsAbove, 0)),
            say(
                "Below {} of charge it does not start again: swap earlier, at Swap at.",
                startsAbove)),
        ValidationRule.stop(
            calc("COUNTIF({};{})=0", onHand.kind.all(), feed.pack),
            say("On hand has no {}: add it there.", feed.pack)));
    return checks.toArray(new ValidationRule[0]);
  }

  /** The charge at which it is swapped; without one nobody restarts an empty pack. */
  private Formula startsBelow() {
    return or(swapAt, 1);
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Positions",
            "Battery positions: plate voltage, battery and connection. Each row shows"
                + " compatibility, runtime and number of changes.")
        .with(table);
  }
}
