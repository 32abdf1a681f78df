package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.Kit;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What draws power from which position, from when to when. */
final class Devices {
  static final int ROOM = 80;

  final Column item;
  final Column position;
  final Column quantity =
      Column.input("Quantity")
          .number(Format.COUNT, 1, 99)
          .wide(17)
          .help("How many of them on one position. Blank: 1.");
  final Column converted =
      Column.input("Through a converter")
          .oneOf("yes")
          .wide(19)
          .help("yes: a converter or inverter makes its volts. Blank: straight from the pack.");
  final Column from =
      Column.input("From").as(Format.TIME).needed().wide(14).help("Switched on, by the clock.");
  final Column to =
      Column.input("To")
          .as(Format.TIME)
          .needed()
          .wide(14)
          .help("Switched off. At or before From means the next morning.");
  final Column mainsFirst =
      Column.input("Mains first")
          .oneOf("yes")
          .wide(14)
          .help("yes: it runs on mains, and the pack only carries it when mains fail.");

  final Column watts = Column.result("From the pack").unit("W").as(Format.WHOLE).wide(16);
  final Column gets =
      Column.result("Volts at the device").unit("V").as(Format.ONE).mayBeBlank().wide(19);
  final Column full =
      Column.result("With full packs").unit("V").as(Format.ONE).mayBeBlank().wide(18);
  final Column minutes =
      Column.result("Covered without mains").unit("min").as(Format.WHOLE).mayBeBlank().wide(22);

  final Column fromHour = Column.working("From hour").unit("h").as(Format.TWO);
  final Column toHour = Column.working("To hour").unit("h").as(Format.TWO);
  final Column together = Column.working("On together").unit("W").as(Format.WHOLE);
  final Column lowest = Column.working("Works from").unit("V").as(Format.ONE);
  final Column onFrom = Column.working("On the pack from").unit("h").as(Format.TWO);
  final Column onTo = Column.working("On the pack to").unit("h").as(Format.TWO);

  final Table table = Table.of("Devices", ROOM);

  private final Kit kit;

  Devices(Kit kit, Positions positions) {
    this.kit = kit;
    item =
        Column.input("Device")
            .oneOf(kit.item)
            .needed()
            .wide(48)
            .help("From the list; kept on Kit.");
    position =
        Column.input("Position")
            .oneOf(positions.position)
            .needed()
            .wide(38)
            .help("What its pack hangs on: a row of Positions.");
  }

  private Formula ofItem(Column column) {
    return column.where(kit.item, item);
  }

  void declare(DayJob day, Positions positions) {
    Formula direct = calc("{}<>\"yes\"", or(converted, ""));
    watts
        .by(calc("{}*{}/IF({};1;{})", ofItem(kit.watts), or(quantity, 1), direct, day.converter))
        .failing("Kit has no such device: add it there, with its watts.");
    gets.by(
        calc("IF({};{};\"\")", direct, positions.feed.there.where(positions.position, position)));
    full.by(
        calc("IF({};{};\"\")", direct, positions.feed.full.where(positions.position, position)));
    minutes.by(
        calc(
            "IF({}=\"yes\";60*{};\"\")",
            or(mainsFirst, ""),
            positions.hours.where(positions.position, position)));
    fromHour.by(day.hour(from));
    toHour.by(day.end(to, fromHour));
    together.by(
        calc(
            "SUMIFS({};{};{};{};\"<=\"&{};{};\">\"&{})",
            watts.all(),
            position.all(),
            position,
            fromHour.all(),
            fromHour,
            toHour.all(),
            fromHour));
    lowest.by(calc("IF({};{};\"\")", direct, ofItem(kit.worksFrom)));
    onFrom.by(calc("IF({}=\"yes\";\"\";{})", or(mainsFirst, ""), fromHour));
    onTo.by(calc("IF({}=\"yes\";\"\";{})", or(mainsFirst, ""), toHour));
    table.columns(
        item,
        position,
        quantity,
        converted,
        from,
        to,
        mainsFirst,
        watts,
        gets,
        full,
        minutes,
        fromHour,
        toHour,
        together,
        lowest,
        onFrom,
        onTo);
    table.checks(checks(direct, positions));
  }

  private Check[] checks(Formula direct, Positions positions) {
    Formula worksFrom = ofItem(kit.worksFrom);
    Formula worksTo = ofItem(kit.worksTo);
    return new Check[] {
      Check.stop(
          calc("COUNTIF({};{})=0", positions.position.all(), position),
          say("Positions has no {}: pick one from the list.", position)),
      Check.stop(
          calc("AND({};{}=\"mains\")", direct, ofItem(kit.feed)),
          say(
              "{} runs on mains: write yes at Through a converter, or take its DC row of Kit.",
              item)),
      Check.stop(
          calc("AND({};OR(N({})=0;N({})=0))", direct, worksFrom, worksTo),
          say("Fill in on Kit from and to how many volts {} works.", item)),
      Check.stop(
          calc("{}>{}", full, worksTo),
          calc(
              "ROUND({};1)&\" V just off the charger, \"&{}&\" works to \"&ROUND({};1)&\" V:"
                  + " another pack, or a converter.\"",
              full,
              item,
              worksTo)),
      Check.stop(
          calc("{}<{}", gets, worksFrom),
          calc(
              "ROUND({};1)&\" V arrive, \"&{}&\" works from \"&ROUND({};1)&\" V.\"",
              gets,
              item,
              worksFrom))
    };
  }

  Tab tab() {
    return Tab.of(
            "Devices",
            "What draws power from which position, and when. Twelve-volt things on a 24 V pack go"
                + " through a converter.")
        .with(table);
  }
}
