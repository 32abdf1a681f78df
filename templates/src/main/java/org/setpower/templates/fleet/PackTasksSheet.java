package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** What is to be done with which pack, by whom and until when. */
final class PackTasksSheet {
  static final int ROOM = 40;

  final ColumnSpec serial = ColumnSpec.input("Serial").needed().wide(24);
  final ColumnSpec task =
      ColumnSpec.input("Task")
          .oneOf("test", "service", "storage charge", "set aside", "retire", "warranty claim")
          .needed()
          .wide(30)
          .help("storage charge: about half full before it lies for more than a month.");
  final ColumnSpec due =
      ColumnSpec.input("Until")
          .as(CellFormat.DATE)
          .needed()
          .wide(32)
          .help("The day it must be done.");
  final ColumnSpec taker =
      ColumnSpec.input("Taker").wide(36).help("A role or a firm, no name: bench, recycler, maker.");
  final ColumnSpec done =
      ColumnSpec.input("Done on").as(CellFormat.DATE).wide(32).help("Blank: still open.");
  final ColumnSpec receipt =
      ColumnSpec.input("Receipt").wide(30).help("Number of the recycler's or maker's receipt.");

  final ColumnSpec kind = ColumnSpec.result("Kind").wide(20);
  final ColumnSpec where = ColumnSpec.result("Where").wide(40);
  final ColumnSpec now = ColumnSpec.result("Do now").wide(22);
  final ColumnSpec openKey = ColumnSpec.working("Open for");

  final TableSpec table = TableSpec.of("To do", ROOM);

  private final RegisterSettings house;

  PackTasksSheet(RegisterSettings house) {
    this.house = house;
  }

  void declare(FleetPacksSheet packs, PackTestsSheet tests) {
    serial.oneOf(packs.serial).help("A serial of Packs.");
    String unknown = "Packs has no row with this serial: pick one from the list.";
    kind.by(packs.kind.where(packs.serial, serial)).failing(unknown);
    where.by(
        calc(
            "IF({}=\"\";\"shelf \"&{};\"out to \"&{})",
            packs.outTo.where(packs.serial, serial),
            packs.shelf.where(packs.serial, serial),
            packs.outTo.where(packs.serial, serial)));
    now.by(packs.doNow.where(packs.serial, serial));
    openKey.by(calc("IF({}=\"\";{};\"\")", or(done, ""), serial));
    table
        .columns(serial, task, due, taker, done, receipt, kind, where, now, openKey)
        .checks(
            ValidationRule.stop(
                calc("{}>{}", done, house.today()),
                Formula.of("Done on has not come yet: leave it blank until then.")),
            ValidationRule.look(
                calc("AND({}=\"\";{}<{})", or(done, ""), due, house.today()),
                say("Open since {}: who does it?", due)),
            ValidationRule.look(
                calc("AND({}<>\"\";{}=\"retire\";{}=\"\")", or(done, ""), task, or(receipt, "")),
                Formula.of("Ask the recycler for a receipt and note its number.")),
            ValidationRule.look(
                calc(
                    "AND({}=\"test\";COUNTIFS({};{};{};\">=\"&{})=0)",
                    task,
                    tests.serial.all(),
                    serial,
                    tests.date.all(),
                    done),
                say("Tests has none since {}: paste it.", done)));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "To do",
            "Who does what until when. Result lists what the register asks for; write it here, note"
                + " the day it was done and the receipt.")
        .with(table);
  }
}
