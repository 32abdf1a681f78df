package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Lines;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What is printed from the register: the list by shelf and the slip that goes with a pack. */
final class Papers {
  private final Packs packs;
  private final Column row = Column.working("Row");

  Papers(Packs packs) {
    this.packs = packs;
  }

  Tab shelfList() {
    Formula order = packs.order.all();
    row.by(calc("MATCH(SMALL({};{});{};0)", order, row.rowNumber(), order));
    Column place =
        shown("Place", calc("LEFT({};FIND(\"|\";{})-1)", at(packs.shelfKey), at(packs.shelfKey)))
            .wide(45);
    Column serial = shown("Serial", at(packs.serial)).wide(24);
    Table list =
        Table.of("Shelf list", Packs.ROOM)
            .columns(
                place,
                serial,
                shown("Kind", at(packs.kind)).wide(20),
                shown("Back by", blank(packs.backBy)).as(Format.DATE).wide(30),
                shown("Condition", at(packs.condition)).wide(30),
                shown("Health", at(packs.health)).as(Format.SHARE).wide(18),
                shown("Last test that counts", at(packs.lastTest)).as(Format.DATE).wide(30),
                shown("Do now", at(packs.doNow)).wide(22),
                shown("Seen", Formula.of("")).wide(18),
                row);
    return Tab.of(
            "Shelf list",
            "For the walk along the shelves: by place, then by serial. Nothing to fill; tick Seen"
                + " on paper.")
        .with(list);
  }

  private Formula at(Column column) {
    return calc("INDEX({};{})", column.all(), row);
  }

  private Formula blank(Column column) {
    return calc("IF({}=\"\";\"\";{})", at(column), at(column));
  }

  private static Column shown(String heading, Formula formula) {
    return Column.result(heading, formula).mayBeBlank();
  }

  Tab slip() {
    Field serial =
        Field.input("Serial")
            .oneOf(packs.serial)
            .help("The pack that goes out.")
            .named("Slip_Serial");
    return Tab.of("Slip", "To go out with a pack: pick the serial, print, put it into the case.")
        .grid(12, 15)
        .portrait()
        .with(
            Fields.of(
                "The pack",
                serial,
                of("May it go out?", serial, packs.fit, "IF({}=1;\"yes\";\"no: \"&{})"),
                of("Kind", serial, packs.kind),
                of("On the label", serial, packs.energy).unit("Wh").as(Format.WHOLE),
                of("Last test that counts", serial, packs.lastTest).as(Format.DATE),
                of("Health", serial, packs.health).as(Format.SHARE),
                of("Cell spread", serial, packs.spread).unit("V").as(Format.THREE),
                of("Cycles", serial, packs.cycles).as(Format.COUNT),
                of("Condition", serial, packs.condition),
                of("UN 38.3 summary on file", serial, packs.summary),
                of("Out to", serial, packs.outTo),
                of("Back by", serial, packs.backBy).as(Format.DATE)),
            Lines.warning(
                "Goes with it",
                Lines.HOT,
                "Dropped, wet or swollen, and cold: switch the device off. Unplug the battery."
                    + " Quarantine it outdoors, away from people and batteries. Do not charge it."
                    + " Do not fly it. Call us.",
                Lines.CHARGING,
                "Cover the terminals one by one for travel. By air the Wh on the label count: see"
                    + " the flight packing list.",
                "Bring it back about half full, and say what happened to it."));
  }

  private Field of(String heading, Field serial, Column column) {
    return of(heading, serial, column, null);
  }

  private Field of(String heading, Field serial, Column column, String pattern) {
    Formula cell = column.where(packs.serial, serial);
    return Field.result(
        heading,
        pattern == null
            ? calc("IF({}=\"\";\"\";{})", cell, cell)
            : calc(pattern, cell, packs.doNow.where(packs.serial, serial)));
  }
}
