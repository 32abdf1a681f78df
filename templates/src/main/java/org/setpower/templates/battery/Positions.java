package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.setpower.registry.groups.PackFunctions;
import org.setpower.templates.shared.Kit;
import org.setpower.templates.shared.PackFeed;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What a pack hangs on, and how long the pack lasts there with everything that is on. */
final class Positions {
  static final int ROOM = 40;

  final PackFeed feed;
  final Column position =
      Column.input("Position")
          .needed()
          .wide(52)
          .help("What a pack hangs on: camera A on sticks, the same on the shoulder, sound bag.");
  final Column department =
      Column.input("Department").wide(24).help("Who carries it: camera, sound, video, electric.");
  final Column quantity =
      Column.input("Quantity")
          .number(Format.COUNT, 1, 99)
          .wide(17)
          .help("How many alike, each with packs of its own, swapped together. Blank: 1.");
  final Column joined =
      Column.input("Joined")
          .oneOf("one", "hot-swap", "parallel", "series")
          .wide(16)
          .help(
              "hot-swap: a plate that supplies from one battery while another is changed. "
                  + "parallel: same type and charge only. series: same type and charge, only where "
                  + "the manufacturer permits it. Blank: one.");
  final Column atOnce =
      Column.input("Packs at once")
          .number(Format.COUNT, 1, 12)
          .wide(13)
          .help("How many packs hang on it at the same time. Blank: 1.");
  final Column swapAt =
      Column.input("Swap at")
          .share(0, 0.9)
          .wide(13)
          .help("Charge left at which you swap, with %: 15 %. Blank: when the device stops.");
  final Column mostMass =
      Column.input("Mass, at most")
          .number(Format.ONE, 0, 1000)
          .wide(14)
          .help("Packs on the shoulder or the rig may weigh so much together. Blank: no matter.");
  final Column staysOn =
      Column.input("On in breaks")
          .oneOf("yes")
          .wide(13)
          .help("yes: it stays on over lunch and the move of Job. Blank: it is switched off.");
  final Column watts = Column.result("Power, at the most").unit("W").as(Format.WHOLE).wide(14);
  final Column hours = Column.result("One set lasts").unit("h").as(Format.ONE).wide(13);
  final Column startsAbove =
      Column.result("Won't start below").as(Format.SHARE).mayBeBlank().wide(14);
  final Column onFor = Column.result("On that day").unit("h").as(Format.ONE).mayBeBlank().wide(13);
  final Column swaps = Column.result("Swaps").as(Format.COUNT).mayBeBlank().wide(11);
  final Column mass = Column.result("Mass").as(Format.ONE).mayBeBlank().wide(13);

  final Column series = Column.working("In series").as(Format.COUNT);
  final Column parallel = Column.working("Side by side").as(Format.COUNT);
  final Column cutOff = Column.working("Lowest volts").unit("V").as(Format.ONE);
  final Column first = Column.working("First on").unit("h").as(Format.TWO);
  final Column last = Column.working("Last off").unit("h").as(Format.TWO);

  final Table table = Table.of("Positions", ROOM);

  private final DayJob day;
  private final Kit kit;

  Positions(DayJob day, Kit kit) {
    this.day = day;
    this.kit = kit;
    feed = new PackFeed(day.job, kit, "device");
    mostMass.unit(day.job.masses());
    mass.unit(day.job.masses());
  }

  void declare(Devices devices, OnHand onHand, Day plan) {
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

  private void works(Devices devices, Day plan) {
    Formula here = devices.position.all();
    watts
        .by(
            calc(
                "IF(MAXIFS({};{};{})=0;\"\";MAXIFS({};{};{}))",
                devices.together.all(),
                here,
                position,
                devices.together.all(),
                here,
                position))
        .mayBeBlank();
    series.by(calc("IF({}=\"series\";{};1)", or(joined, "one"), or(atOnce, 1)));
    parallel.by(
        calc(
            "IF(OR({}=\"hot-swap\";{}=\"parallel\");{};1)",
            or(joined, "one"),
            or(joined, "one"),
            or(atOnce, 1)));
    cutOff.by(calc("MAX(1;MAXIFS({};{};{}))", devices.lowest.all(), here, position));
    feed.works(
        watts,
        calc("IF({}=1;{};{})", cutOff, feed.there, cutOff),
        series,
        parallel,
        calc("IF({}=\"parallel\";{};1)", or(joined, "one"), parallel));
    hours.by(feed.hours(cutOff, day.coldest, or(swapAt, 0)));
    startsAbove.by(feed.startsAbove(cutOff, day.coldest));
    first.by(calc("MINIFS({};{};{})", devices.onFrom.all(), here, position));
    last.by(calc("MAXIFS({};{};{})", devices.onTo.all(), here, position));
    onFor.by(plan.hoursOf(position));
    swaps.by(calc("IF({}=0;0;{}-1)", onFor, call(PackFunctions.COUNT, onFor, hours)));
    mass.by(
        calc(
            "IF(N({})=0;\"\";{}*{}*{})",
            feed.ofPack(kit.packMass),
            feed.ofPack(kit.packMass),
            series,
            parallel));
  }

  private Check[] checks(OnHand onHand) {
    List<Check> checks = new ArrayList<>();
    Collections.addAll(
        checks,
        Check.stop(
            calc("COUNTIF({};{})>1", position.all(), position),
            say("{} stands here twice: give each its own name.", position)),
        Check.stop(
            calc("AND({}=\"one\";{}>1)", or(joined, "one"), or(atOnce, 1)),
            Formula.of("Several packs at once: say in Joined how they hang together.")),
        Check.look(
            calc("{}=\"\"", or(watts, "")),
            Formula.of("Nothing on Devices draws power from it yet.")));
    Collections.addAll(checks, feed.checks("a bigger pack, or less on it"));
    Collections.addAll(
        checks,
        Check.look(
            calc("{}>{}", mass, mostMass),
            say("{} of packs, {} at most: a lighter pack, or off the shoulder.", mass, mostMass)),
        Check.look(
            calc("AND(N({})>0;N({})=0)", or(mostMass, 0), feed.ofPack(kit.packMass)),
            say("Fill in on Kit what {} weighs.", feed.pack)),
        Check.look(
            calc("{}<={}", startsBelow(), or(startsAbove, 0)),
            say(
                "Below {} of charge it does not start again: swap earlier, at Swap at.",
                startsAbove)),
        Check.stop(
            calc("COUNTIF({};{})=0", onHand.kind.all(), feed.pack),
            say("On hand has no {}: add it there.", feed.pack)));
    return checks.toArray(new Check[0]);
  }

  /** The charge at which it is swapped; without one nobody restarts an empty pack. */
  private Formula startsBelow() {
    return or(swapAt, 1);
  }

  Tab tab() {
    return Tab.of(
            "Positions",
            "What a pack hangs on: its plate's volts, the pack and how packs are joined. Each row"
                + " says whether the feed fits, how long a set lasts and how often it is swapped.")
        .with(table);
  }
}
