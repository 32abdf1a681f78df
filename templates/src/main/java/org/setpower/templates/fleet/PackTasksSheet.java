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

  final ColumnSpec serial = ColumnSpec.input("Serial").required().width(24);
  final ColumnSpec task =
      ColumnSpec.input("Task")
          .options("test", "service", "storage charge", "set aside", "retire", "warranty claim")
          .required()
          .width(30)
          .help("storage charge: about half full before it lies for more than a month.");
  final ColumnSpec due =
      ColumnSpec.input("Until")
          .format(CellFormat.DATE)
          .required()
          .width(32)
          .help("The day it must be done.");
  final ColumnSpec taker =
      ColumnSpec.input("Taker")
          .width(36)
          .help("A role or a firm, no name: bench, recycler, maker.");
  final ColumnSpec done =
      ColumnSpec.input("Done on").format(CellFormat.DATE).width(32).help("Blank: still open.");
  final ColumnSpec receipt =
      ColumnSpec.input("Receipt").width(30).help("Number of the recycler's or maker's receipt.");

  final ColumnSpec kind = ColumnSpec.result("Kind").width(20);
  final ColumnSpec where = ColumnSpec.result("Where").width(40);
  final ColumnSpec now = ColumnSpec.result("Status now").width(22);
  final ColumnSpec openKey = ColumnSpec.working("Open for");

  final TableSpec table = TableSpec.of("To do", ROOM);

  private final RegisterSettings house;

  PackTasksSheet(RegisterSettings house) {
    this.house = house;
  }

  void declare(FleetPacksSheet packs, PackTestsSheet tests) {
    serial.options(packs.serial).help("A serial of Packs.");
    String unknown = "Packs has no row with this serial: pick one from the list.";
    kind.formula(packs.kind.lookup(packs.serial, serial)).errorMessage(unknown);
    where.formula(
        calc(
            "IF({}=\"\";\"shelf \"&{};\"out to \"&{})",
            packs.outTo.lookup(packs.serial, serial),
            packs.shelf.lookup(packs.serial, serial),
            packs.outTo.lookup(packs.serial, serial)));
    now.formula(packs.doNow.lookup(packs.serial, serial));
    openKey.formula(calc("IF({}=\"\";{};\"\")", or(done, ""), serial));
    table
        .columns(serial, task, due, taker, done, receipt, kind, where, now, openKey)
        .checks(
            ValidationRule.stop(
                calc("{}>{}", done, house.today()),
                Formula.of("Done on has not come yet: leave it blank until then.")),
            ValidationRule.check(
                calc("AND({}=\"\";{}<{})", or(done, ""), due, house.today()),
                say("Overdue since {}.", due)),
            ValidationRule.check(
                calc("AND({}<>\"\";{}=\"retire\";{}=\"\")", or(done, ""), task, or(receipt, "")),
                Formula.of("Ask the recycler for a receipt and note its number.")),
            ValidationRule.check(
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
