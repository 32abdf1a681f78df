package org.setpower.templates.battery;

import static org.setpower.templates.Formula.calc;
import static org.setpower.templates.Formula.call;
import static org.setpower.templates.Formula.optional;
import static org.setpower.templates.Formula.or;
import static org.setpower.templates.Formula.say;

import org.setpower.sheet.BankFunctions;
import org.setpower.sheet.CableFunctions;
import org.setpower.sheet.LoadFunctions;
import org.setpower.sheet.PackFunctions;
import org.setpower.templates.Check;
import org.setpower.templates.Column;
import org.setpower.templates.Format;
import org.setpower.templates.Formula;
import org.setpower.templates.Kit;
import org.setpower.templates.Tab;
import org.setpower.templates.Table;

/** What a pack hangs on, and how long the pack lasts there with everything that is on. */
final class Positions {
  static final int ROOM = 40;

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
  final Column plate =
      Column.input("Plate")
          .unit("V class")
          .as(Format.COUNT)
          .oneOf("12", "24", "48")
          .needed()
          .wide(13)
          .help("The volt class the plate or lead asks for: 12, 24 or 48.");
  final Column pack;
  final Column joined =
      Column.input("Joined")
          .oneOf("one", "hot-swap", "parallel", "series")
          .wide(16)
          .help(
              "hot-swap: a plate that lets one pack go while another carries. parallel: equal,"
                  + " equally full packs. series: only where the maker allows it. Blank: one.");
  final Column atOnce =
      Column.input("Packs at once")
          .number(Format.COUNT, 1, 12)
          .wide(13)
          .help("How many packs hang on it at the same time. Blank: 1.");
  final Column leadLength;
  final Column leadSize =
      Column.input("Lead size")
          .oneOf(
              "18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "6 AWG", "1.5 mm²", "2.5 mm²",
              "4 mm²", "6 mm²", "10 mm²")
          .orOther()
          .wide(16)
          .help("Printed on the lead between pack and device. Blank: no lead to speak of.");
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
  final Column touchSafe =
      Column.input("Touch-safe")
          .oneOf("yes")
          .wide(13)
          .help("Over the touch limit on Job: yes, when no bare part can be touched.");

  final Column watts = Column.result("Power, at the most").unit("W").as(Format.WHOLE).wide(14);
  final Column feed = Column.result("Feed").unit("V class").as(Format.WHOLE).wide(13);
  final Column full = Column.result("Full packs").unit("V").as(Format.ONE).wide(13);
  final Column there = Column.result("Volts at the device").unit("V").as(Format.ONE).wide(14);
  final Column amps = Column.result("Current").unit("A").as(Format.ONE).wide(16);
  final Column atCutOff = Column.result("At cut-off").unit("A").as(Format.ONE).wide(13);
  final Column limit = Column.result("Packs may give").unit("A").as(Format.ONE).wide(14);
  final Column hours = Column.result("One set lasts").unit("h").as(Format.ONE).wide(13);
  final Column startsAbove =
      Column.result("Won't start below").as(Format.SHARE).mayBeBlank().wide(14);
  final Column onFor = Column.result("On that day").unit("h").as(Format.ONE).mayBeBlank().wide(13);
  final Column swaps = Column.result("Swaps").as(Format.COUNT).mayBeBlank().wide(11);
  final Column mass = Column.result("Mass").as(Format.ONE).mayBeBlank().wide(13);

  final Column highest = Column.working("Highest output").as(Format.COUNT);
  final Column series = Column.working("In series").as(Format.COUNT);
  final Column parallel = Column.working("Side by side").as(Format.COUNT);
  final Column groups = Column.working("Halves side by side").as(Format.ONE).unit("of 1");
  final Column cells = Column.working("Cells seen").as(Format.ONE).unit("of 1");
  final Column resistance = Column.working("Resistance").unit("mΩ").as(Format.ONE);
  final Column lead = Column.working("Lead").unit("mΩ").as(Format.ONE);
  final Column cutOff = Column.working("Lowest volts").unit("V").as(Format.ONE);
  final Column first = Column.working("First on").unit("h").as(Format.TWO);
  final Column last = Column.working("Last off").unit("h").as(Format.TWO);

  final Table table = Table.of("Positions", ROOM);

  private final DayJob day;
  private final Kit kit;

  Positions(DayJob day, Kit kit) {
    this.day = day;
    this.kit = kit;
    pack =
        Column.input("Pack").oneOf(kit.pack).needed().wide(18).help("The kind of pack, from Kit.");
    leadLength =
        Column.input("Lead")
            .unit(day.job.lengths())
            .number(Format.ONE, 0, 1000)
            .wide(12)
            .help("From the pack to the device, one way. Blank: the pack sits on the device.");
    mostMass.unit(day.job.masses());
    mass.unit(day.job.masses());
  }

  private Formula ofPack(Column column) {
    return column.where(kit.pack, pack);
  }

  void declare(Devices devices, OnHand onHand, Day plan) {
    works(devices, plan);
    table.columns(
        position,
        department,
        quantity,
        plate,
        pack,
        joined,
        atOnce,
        leadLength,
        leadSize,
        swapAt,
        mostMass,
        staysOn,
        touchSafe,
        watts,
        feed,
        full,
        there,
        amps,
        atCutOff,
        limit,
        hours,
        startsAbove,
        onFor,
        swaps,
        mass,
        highest,
        series,
        parallel,
        groups,
        cells,
        resistance,
        lead,
        cutOff,
        first,
        last);
    table.checks(checks(onHand));
  }

  private void works(Devices devices, Day plan) {
    Formula here = devices.position.all();
    Formula chemistry = calc("{}&\"\"", ofPack(kit.chemistry));
    Formula health = calc("IF({}=\"\";1;{})", ofPack(kit.health), ofPack(kit.health));
    Formula metres = day.job.metres(or(leadLength, 0));
    Formula warm = day.job.conductorCelsius();
    Formula noLead = calc("OR({}=\"\";{}=0)", optional(leadSize), or(leadLength, 0));
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
    feed.by(
        call(
            BankFunctions.VOLTS,
            call(
                PackFunctions.FEED,
                calc("{}&\"\"", ofPack(kit.outputs)),
                calc("{}/{}", plate, series)),
            series));
    highest.by(ofPack(kit.highest));
    groups.by(calc("MAX(1;{}*{}/{})", highest, series, plate));
    cells.by(calc("{}/{}", ofPack(kit.cells), groups));
    full.by(
        calc("IF({}=\"\";\"\";{})", feed, call(BankFunctions.FULLVOLTS, cells, series, chemistry)));
    there.by(
        calc(
            "IF({};{};{})",
            noLead,
            feed,
            call(
                CableFunctions.ENDVOLTS,
                or(leadSize, "1.5 mm²"),
                metres,
                watts,
                feed,
                "DC",
                1,
                warm)));
    cutOff.by(calc("MAX(1;MAXIFS({};{};{}))", devices.lowest.all(), here, position));
    amps.by(call(LoadFunctions.AMPS, watts, there, "DC"));
    atCutOff.by(
        call(LoadFunctions.AMPS, watts, calc("IF({}=1;{};{})", cutOff, there, cutOff), "DC"));
    limit.by(
        call(
            BankFunctions.MAXAMPS,
            ofPack(kit.maxAmps),
            calc("IF({}=\"parallel\";{};1)", or(joined, "one"), parallel)));
    lead.by(
        calc(
            "IF({};0;1000*{})",
            noLead,
            call(CableFunctions.DROP, or(leadSize, "1.5 mm²"), metres, 1, "DC", 1, warm)));
    resistance.by(
        call(
            BankFunctions.MILLIOHMS,
            calc("{}/{}/{}", ofPack(kit.milliohms), groups, groups),
            series,
            parallel));
    hours.by(
        calc(
            "IF({}=\"\";\"\";MIN({};{}))",
            feed,
            call(
                PackFunctions.LASTS,
                calc("{}*{}", cells, series),
                call(BankFunctions.AMPHOURS, calc("{}*{}", ofPack(kit.ampHours), groups), parallel),
                resistance,
                watts,
                cutOff,
                chemistry,
                1,
                health,
                day.coldest,
                lead,
                or(swapAt, 0)),
            call(
                PackFunctions.RUNTIME,
                calc("{}*{}*{}", ofPack(kit.wattHours), series, parallel),
                watts,
                1,
                health,
                day.coldest,
                or(swapAt, 0),
                chemistry)));
    startsAbove.by(
        call(
            PackFunctions.STARTS,
            calc("{}*{}", cells, series),
            resistance,
            watts,
            cutOff,
            chemistry,
            day.coldest,
            lead));
    first.by(calc("MINIFS({};{};{})", devices.onFrom.all(), here, position));
    last.by(calc("MAXIFS({};{};{})", devices.onTo.all(), here, position));
    onFor.by(plan.hoursOf(position));
    swaps.by(calc("IF({}=0;0;{}-1)", onFor, call(PackFunctions.COUNT, onFor, hours)));
    mass.by(
        calc(
            "IF(N({})=0;\"\";{}*{}*{})",
            ofPack(kit.packMass),
            ofPack(kit.packMass),
            series,
            parallel));
  }

  private Check[] checks(OnHand onHand) {
    return new Check[] {
      Check.stop(
          calc("COUNTIF({};{})>1", position.all(), position),
          say("{} stands here twice: give each its own name.", position)),
      Check.stop(
          calc("AND({}=\"one\";{}>1)", or(joined, "one"), or(atOnce, 1)),
          Formula.of("Several packs at once: say in Joined how they hang together.")),
      Check.look(
          calc("{}=\"\"", or(watts, "")),
          Formula.of("Nothing on Devices draws power from it yet.")),
      Check.stop(
          calc("AND({}>{};{}<>\"yes\")", full, day.job.touchLimit, or(touchSafe, "")),
          say(
              "{} V DC is over the touch limit of {} V: nothing bare, then write yes at Touch-safe.",
              full,
              day.job.touchLimit)),
      Check.stop(
          calc("{}>{}", atCutOff, limit),
          say(
              "{} A when nearly empty, the packs may give {} A: a bigger pack, or less on it.",
              atCutOff,
              limit)),
      Check.stop(
          calc(
              "IF(OR({}=\"\";{}=0);FALSE();{}>{})",
              optional(leadSize),
              or(leadLength, 0),
              atCutOff,
              call(CableFunctions.AMPACITY, or(leadSize, "1.5 mm²"))),
          say("{} A when nearly empty are too many for a lead of {}.", atCutOff, leadSize)),
      Check.look(
          calc("(N({})=0)+({}=\"\")=1", or(leadLength, 0), optional(leadSize)),
          Formula.of("Fill in both lead and lead size, or neither.")),
      Check.look(
          calc("{}>{}", mass, mostMass),
          say("{} of packs, {} at most: a lighter pack, or off the shoulder.", mass, mostMass)),
      Check.look(
          calc("AND(N({})>0;N({})=0)", or(mostMass, 0), ofPack(kit.packMass)),
          say("Fill in on Kit what {} weighs.", pack)),
      Check.look(
          calc("{}<={}", startsBelow(), or(startsAbove, 0)),
          say(
              "Below {} of charge it does not start again: swap earlier, at Swap at.",
              startsAbove)),
      Check.stop(
          calc("COUNTIF({};{})=0", onHand.kind.all(), pack),
          say("On hand has no {}: add it there.", pack))
    };
  }

  /** The charge at which it is swapped; without one nobody restarts an empty pack. */
  private Formula startsBelow() {
    return or(swapAt, 1);
  }

  Tab tab() {
    return Tab.of(
            "Positions",
            "What a pack hangs on: its plate's volts, the pack and how packs are joined. Each row says"
                + " whether the feed fits, how long a set lasts and how often it is swapped.")
        .with(table);
  }
}
