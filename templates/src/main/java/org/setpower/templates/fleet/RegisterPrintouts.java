package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;

import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;

/** What is printed from the register: the list by shelf and the slip that goes with a pack. */
final class RegisterPrintouts {
  private final FleetPacksSheet packs;
  private final ColumnSpec row = ColumnSpec.working("Row");

  RegisterPrintouts(FleetPacksSheet packs) {
    this.packs = packs;
  }

  SheetSpec shelfList() {
    Formula order = packs.order.all();
    row.formula(calc("MATCH(SMALL({};{});{};0)", order, row.rowNumber(), order));
    ColumnSpec place =
        shown("Place", calc("LEFT({};FIND(\"|\";{})-1)", at(packs.shelfKey), at(packs.shelfKey)))
            .width(45);
    ColumnSpec serial = shown("Serial", at(packs.serial)).width(24);
    TableSpec list =
        TableSpec.of("Shelf list", FleetPacksSheet.ROOM)
            .columns(
                place,
                serial,
                shown("Kind", at(packs.kind)).width(20),
                shown("Back by", blank(packs.backBy)).format(CellFormat.DATE).width(30),
                shown("Condition", at(packs.condition)).width(30),
                shown("Health", at(packs.health)).format(CellFormat.SHARE).width(18),
                shown("Last test that counts", at(packs.lastTest))
                    .format(CellFormat.DATE)
                    .width(30),
                shown("Status now", at(packs.doNow)).width(22),
                shown("Seen", Formula.of("")).width(18),
                row);
    return SheetSpec.of(
            "Shelf list",
            "For the walk along the shelves: by place, then by serial. Nothing to fill; tick Seen"
                + " on paper.")
        .with(list);
  }

  private Formula at(ColumnSpec column) {
    return calc("INDEX({};{})", column.all(), row);
  }

  private Formula blank(ColumnSpec column) {
    return calc("IF({}=\"\";\"\";{})", at(column), at(column));
  }

  private static ColumnSpec shown(String heading, Formula formula) {
    return ColumnSpec.result(heading, formula).mayBeBlank();
  }

  SheetSpec slip() {
    FieldSpec serial =
        FieldSpec.input("Serial")
            .options(packs.serial)
            .help("The pack that goes out.")
            .rangeName("Slip_Serial");
    return SheetSpec.of(
            "Slip", "To go out with a pack: pick the serial, print, put it into the case.")
        .grid(12, 15)
        .portrait()
        .with(
            FieldBlock.of(
                "The pack",
                serial,
                of("May it go out?", serial, packs.fit, "IF({}=1;\"yes\";\"no: \"&{})"),
                of("Kind", serial, packs.kind),
                of("On the label", serial, packs.energy).unit("Wh").format(CellFormat.WHOLE),
                of("Last test that counts", serial, packs.lastTest).format(CellFormat.DATE),
                of("Health", serial, packs.health).format(CellFormat.SHARE),
                of("Cell spread", serial, packs.spread).unit("V").format(CellFormat.THREE),
                of("Cycles", serial, packs.cycles).format(CellFormat.COUNT),
                of("Condition", serial, packs.condition),
                of("UN 38.3 summary on file", serial, packs.summary),
                of("Out to", serial, packs.outTo),
                of("Back by", serial, packs.backBy).format(CellFormat.DATE)),
            TextBlock.warning(
                "Goes with it",
                TextBlock.HOT,
                "Dropped, wet or swollen, and cold: switch the device off. Unplug the battery."
                    + " Quarantine it outdoors, away from people and batteries. Do not charge it."
                    + " Do not fly it. Call us.",
                TextBlock.CHARGING,
                "Cover the terminals one by one for travel. By air the Wh on the label count: see"
                    + " the flight packing list.",
                "Bring it back about half full, and say what happened to it."));
  }

  private FieldSpec of(String heading, FieldSpec serial, ColumnSpec column) {
    return of(heading, serial, column, null);
  }

  private FieldSpec of(String heading, FieldSpec serial, ColumnSpec column, String pattern) {
    Formula cell = column.lookup(packs.serial, serial);
    return FieldSpec.result(
        heading,
        pattern == null
            ? calc("IF({}=\"\";\"\";{})", cell, cell)
            : calc(pattern, cell, packs.doNow.lookup(packs.serial, serial)));
  }
}
