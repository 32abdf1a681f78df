package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.ChargeFunctions;
import org.setpower.templates.shared.Kit;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The chargers: how long a pack takes there, and whether all are ready by the next call. */
final class Chargers {
  private static final double ROOM_TEMPERATURE = 20;
  private static final double ALWAYS = 300;

  final Column charger =
      Column.input("Charger").needed().wide(52).help("What it is called on the cart.");
  final Column place = Column.input("Place").wide(26).help("Where it stands.");
  final Column channels =
      Column.input("Channels")
          .number(Format.COUNT, 1, 200)
          .needed()
          .wide(19)
          .help("How many packs it charges at the same time.");
  final Column amps =
      Column.input("A channel, all in use")
          .unit("A")
          .number(Format.ONE, 0.1, 1000)
          .needed()
          .wide(16)
          .help("Label of the charger: what each gets when all are in use. Alone it may be more.");
  final Column takes;
  final Column pieces =
      Column.input("To be ready")
          .number(Format.COUNT, 1, 999)
          .wide(14)
          .help("Packs of this kind to charge here before the next call. Blank: none.");
  final Column mainsFrom =
      Column.input("Mains from").as(Format.TIME).wide(14).help("Blank: mains all the time.");
  final Column mainsTo =
      Column.input("Mains to")
          .as(Format.TIME)
          .wide(14)
          .help("At or before Mains from means the next morning.");
  final Column deadFrom =
      Column.input("Dead from").as(Format.TIME).wide(14).help("Generator off for quiet: from.");
  final Column deadTo =
      Column.input("Dead to").as(Format.TIME).wide(14).help("Generator off for quiet: to.");
  final Column runner =
      Column.input("There and back")
          .unit("min")
          .number(Format.WHOLE, 0, 1440)
          .wide(15)
          .help("The runner from set to this charger and back. Blank: it stands on set.");
  final Column air;
  final Column warming =
      Column.input("Warming")
          .unit("h")
          .number(Format.ONE, 0, 24)
          .wide(18)
          .help(
              "Hours indoors until the whole battery is above 0 °C (32 °F). Measure; large "
                  + "ones take over an hour.");
  final Column counts =
      Column.input("In the day")
          .oneOf("yes")
          .wide(14)
          .help("yes: it charges while the day runs, and Day plans with it.");
  final Column watched =
      Column.input("Watched")
          .oneOf("yes")
          .wide(18)
          .help("yes: somebody is near as long as it charges, at night too.");

  final Column hours = Column.result("One pack takes").unit("h").as(Format.TWO).wide(15);
  final Column free =
      Column.result("Hours before the next call").unit("h").as(Format.ONE).mayBeBlank().wide(17);
  final Column needed = Column.result("Channels needed").as(Format.COUNT).mayBeBlank().wide(19);
  final Column ready = Column.result("Ready by next call?").mayBeBlank().wide(16);

  final Column celsius = Column.working("Air").unit("°C").as(Format.ONE);
  final Column fromHour = Column.working("Mains from hour").unit("h").as(Format.TWO);
  final Column toHour = Column.working("Mains to hour").unit("h").as(Format.TWO);
  final Column deadFromHour = Column.working("Dead from hour").unit("h").as(Format.TWO);
  final Column deadToHour = Column.working("Dead to hour").unit("h").as(Format.TWO);
  final Column begins = Column.working("Begins").unit("h").as(Format.TWO);
  final Column ends = Column.working("Ends").unit("h").as(Format.TWO);

  final Table table = Table.of("Chargers", 40);

  private final DayJob day;
  private final Kit kit;

  Chargers(DayJob day, Kit kit) {
    this.day = day;
    this.kit = kit;
    takes =
        Column.input("Takes").oneOf(kit.pack).needed().wide(18).help("A kind of pack, from Kit.");
    air =
        Column.input("Air there")
            .unit(day.job.degrees())
            .number(Format.WHOLE, -60, 140)
            .wide(14)
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
        kit.ampHours.where(kit.pack, pack),
        each,
        0,
        1,
        calc("{}&\"\"", kit.chemistry.where(kit.pack, pack)),
        kit.cells.where(kit.pack, pack),
        kit.milliohms.where(kit.pack, pack),
        temperature);
  }

  private void works() {
    celsius.by(
        calc("IF({}=\"\";" + ROOM_TEMPERATURE + ";{})", or(air, ""), day.job.celsius(or(air, 20))));
    hours.by(hoursOf(takes, amps, celsius));
    fromHour.by(calc("IF({}=\"\";0;{})", or(mainsFrom, ""), day.hour(or(mainsFrom, 0))));
    toHour.by(
        calc("IF({}=\"\";" + ALWAYS + ";{})", or(mainsTo, ""), day.end(or(mainsTo, 0), fromHour)));
    deadFromHour.by(calc("IF({}=\"\";\"\";{})", or(deadFrom, ""), day.hour(or(deadFrom, 0))));
    deadToHour.by(
        calc("IF({}=\"\";\"\";{})", or(deadTo, ""), day.end(or(deadTo, 0), deadFromHour)));
    begins.by(
        calc(
            "MAX({}+24*({}<=24*{});24*{}+{}/120)+{}",
            fromHour,
            toHour,
            day.wrap,
            day.wrap,
            or(runner, 0),
            or(warming, 0)));
    ends.by(calc("MIN({}+24*({}<=24*{});24*{})", toHour, toHour, day.wrap, day.nextCall));
    free.by(
        calc(
            "IF({}=\"\";\"\";MAX(0;{}-{}-MAX(0;MIN({};N({}))-MAX({};N({})))))",
            or(pieces, ""),
            ends,
            begins,
            ends,
            or(deadToHour, 0),
            begins,
            or(deadFromHour, 0)));
    needed.by(call(ChargeFunctions.CHANNELS, pieces, free, hours));
    ready.by(calc("IF({}<={};\"yes\";\"no\")", needed, channels));
  }

  private Check[] checks() {
    return new Check[] {
      Check.stop(
          calc("AND({}<0;{}=\"\")", day.coldest, or(warming, "")),
          say(
              "Packs come back at {} °C and must not charge below 0 °C: warm them first, and write"
                  + " for how long at Warming.",
              day.coldest)),
      Check.look(
          calc("({}=\"\")<>({}=\"\")", or(mainsFrom, ""), or(mainsTo, "")),
          Formula.of("Fill in both Mains from and Mains to, or neither.")),
      Check.look(
          calc("({}=\"\")<>({}=\"\")", or(deadFrom, ""), or(deadTo, "")),
          Formula.of("Fill in both Dead from and Dead to, or neither.")),
      Check.look(
          calc("AND({}<>\"\";OR({}=\"\";{}=\"\"))", or(pieces, ""), day.wrap, day.nextCall),
          Formula.of("Pick Day shown on Job, and give that day a wrap and a later day a call.")),
      Check.stop(
          calc("{}<{}", free, hours),
          say(
              "{} h until the next call, one pack takes {} h: charge elsewhere, or swap kinds.",
              free,
              hours)),
      Check.stop(
          calc("{}>{}", needed, channels),
          say(
              "{} channels needed, it has {}: share them out, or begin earlier.",
              needed,
              channels)),
      Check.look(
          calc("AND({}<>\"\";{}<>\"yes\")", or(pieces, ""), or(watched, "")),
          Formula.of(
              "Charging overnight: nobody near? Then not on this shelf; else yes at Watched."))
    };
  }

  Tab tab() {
    return Tab.of(
            "Chargers",
            "Where packs charge, how fast with all channels in use, and when there is mains. Write"
                + " yes at In the day for the one that travels with the unit.")
        .with(table);
  }
}
