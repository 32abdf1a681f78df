package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** What draws power from which position, from when to when. */
final class DevicesSheet {
  static final int ROOM = 80;

  final ColumnSpec item;
  final ColumnSpec position;
  final ColumnSpec quantity =
      ColumnSpec.input("Quantity")
          .number(CellFormat.COUNT, 1, 99)
          .width(17)
          .help("How many of them on one position. Blank: 1.");
  final ColumnSpec converted =
      ColumnSpec.input("Through a converter")
          .options("yes")
          .width(19)
          .help("yes: a converter or inverter makes its volts. Blank: straight from the pack.");
  final ColumnSpec from =
      ColumnSpec.input("From")
          .format(CellFormat.TIME)
          .required()
          .width(14)
          .help("Switched on, by the clock.");
  final ColumnSpec to =
      ColumnSpec.input("To")
          .format(CellFormat.TIME)
          .required()
          .width(14)
          .help("Switched off. At or before From means the next morning.");
  final ColumnSpec mainsFirst =
      ColumnSpec.input("Mains first")
          .options("yes")
          .width(14)
          .help("yes: it runs on mains, and the pack only carries it when mains fail.");

  final ColumnSpec watts =
      ColumnSpec.result("From the pack").unit("W").format(CellFormat.WHOLE).width(16);
  final ColumnSpec gets =
      ColumnSpec.result("Volts at the device")
          .unit("V")
          .format(CellFormat.ONE)
          .mayBeBlank()
          .width(19);
  final ColumnSpec full =
      ColumnSpec.result("With full packs").unit("V").format(CellFormat.ONE).mayBeBlank().width(18);
  final ColumnSpec minutes =
      ColumnSpec.result("Runtime on mains failure")
          .unit("min")
          .format(CellFormat.WHOLE)
          .mayBeBlank()
          .width(22);

  final ColumnSpec fromHour = ColumnSpec.working("From hour").unit("h").format(CellFormat.TWO);
  final ColumnSpec toHour = ColumnSpec.working("To hour").unit("h").format(CellFormat.TWO);
  final ColumnSpec together = ColumnSpec.working("On together").unit("W").format(CellFormat.WHOLE);
  final ColumnSpec lowest = ColumnSpec.working("Works from").unit("V").format(CellFormat.ONE);
  final ColumnSpec onFrom = ColumnSpec.working("On the pack from").unit("h").format(CellFormat.TWO);
  final ColumnSpec onTo = ColumnSpec.working("On the pack to").unit("h").format(CellFormat.TWO);

  final TableSpec table = TableSpec.of("Devices", ROOM);

  private final EquipmentSheet kit;

  DevicesSheet(EquipmentSheet kit, PositionsSheet positions) {
    this.kit = kit;
    item =
        ColumnSpec.input("Device")
            .options(kit.item)
            .required()
            .width(48)
            .help("From the list; kept on Kit.");
    position =
        ColumnSpec.input("Position")
            .options(positions.position)
            .required()
            .width(38)
            .help("What its pack hangs on: a row of Positions.");
  }

  private Formula ofItem(ColumnSpec column) {
    return column.lookup(kit.item, item);
  }

  void declare(BatteryJobSheet day, PositionsSheet positions) {
    Formula direct = calc("{}<>\"yes\"", or(converted, ""));
    watts
        .formula(
            calc("{}*{}/IF({};1;{})", ofItem(kit.watts), or(quantity, 1), direct, day.converter))
        .errorMessage("Kit has no such device: add it there, with its watts.");
    gets.formula(
        calc("IF({};{};\"\")", direct, positions.feed.there.lookup(positions.position, position)));
    full.formula(
        calc("IF({};{};\"\")", direct, positions.feed.full.lookup(positions.position, position)));
    minutes.formula(
        calc(
            "IF({}=\"yes\";60*{};\"\")",
            or(mainsFirst, ""),
            positions.hours.lookup(positions.position, position)));
    fromHour.formula(day.hour(from));
    toHour.formula(day.end(to, fromHour));
    together.formula(
        calc(
            "SUMIFS({};{};{};{};\"<=\"&{};{};\">\"&{})",
            watts.all(),
            position.all(),
            position,
            fromHour.all(),
            fromHour,
            toHour.all(),
            fromHour));
    lowest.formula(calc("IF({};{};\"\")", direct, ofItem(kit.worksFrom)));
    onFrom.formula(calc("IF({}=\"yes\";\"\";{})", or(mainsFirst, ""), fromHour));
    onTo.formula(calc("IF({}=\"yes\";\"\";{})", or(mainsFirst, ""), toHour));
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

  private ValidationRule[] checks(Formula direct, PositionsSheet positions) {
    Formula worksFrom = ofItem(kit.worksFrom);
    Formula worksTo = ofItem(kit.worksTo);
    return new ValidationRule[] {
      ValidationRule.stop(
          calc("COUNTIF({};{})=0", positions.position.all(), position),
          say("Positions has no {}: pick one from the list.", position)),
      ValidationRule.stop(
          calc("AND({};{}=\"mains\")", direct, ofItem(kit.feed)),
          say(
              "{} runs on mains: write yes at Through a converter, or take its DC row of Kit.",
              item)),
      ValidationRule.stop(
          calc("AND({};OR(N({})=0;N({})=0))", direct, worksFrom, worksTo),
          say("Fill in on Kit from and to how many volts {} works.", item)),
      ValidationRule.stop(
          calc("{}>{}", full, worksTo),
          calc(
              "ROUND({};1)&\" V just off the charger, \"&{}&\" works to \"&ROUND({};1)&\" V:"
                  + " another pack, or a converter.\"",
              full,
              item,
              worksTo)),
      ValidationRule.stop(
          calc("{}<{}", gets, worksFrom),
          calc(
              "ROUND({};1)&\" V arrive, \"&{}&\" works from \"&ROUND({};1)&\" V.\"",
              gets,
              item,
              worksFrom))
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Devices",
            "What draws power from which position, and when. 12 V devices on a 24 V"
                + " battery need a converter.")
        .with(table);
  }
}
