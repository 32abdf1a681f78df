package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What is to be done with which pack, by whom and until when. */
final class ToDo {
  static final int ROOM = 40;

  final Column serial = Column.input("Serial").needed().wide(24);
  final Column task =
      Column.input("Task")
          .oneOf("test", "service", "storage charge", "set aside", "retire", "warranty claim")
          .needed()
          .wide(30)
          .help("storage charge: about half full before it lies for more than a month.");
  final Column due =
      Column.input("Until").as(Format.DATE).needed().wide(32).help("The day it must be done.");
  final Column taker =
      Column.input("Taker").wide(36).help("A role or a firm, no name: bench, recycler, maker.");
  final Column done = Column.input("Done on").as(Format.DATE).wide(32).help("Blank: still open.");
  final Column receipt =
      Column.input("Receipt").wide(30).help("Number of the recycler's or maker's receipt.");

  final Column kind = Column.result("Kind").wide(20);
  final Column where = Column.result("Where").wide(40);
  final Column now = Column.result("Do now").wide(22);
  final Column openKey = Column.working("Open for");

  final Table table = Table.of("To do", ROOM);

  private final House house;

  ToDo(House house) {
    this.house = house;
  }

  void declare(Packs packs, Tests tests) {
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
            Check.stop(
                calc("{}>{}", done, house.today()),
                Formula.of("Done on has not come yet: leave it blank until then.")),
            Check.look(
                calc("AND({}=\"\";{}<{})", or(done, ""), due, house.today()),
                say("Open since {}: who does it?", due)),
            Check.look(
                calc("AND({}<>\"\";{}=\"retire\";{}=\"\")", or(done, ""), task, or(receipt, "")),
                Formula.of("Ask the recycler for a receipt and note its number.")),
            Check.look(
                calc(
                    "AND({}=\"test\";COUNTIFS({};{};{};\">=\"&{})=0)",
                    task,
                    tests.serial.all(),
                    serial,
                    tests.date.all(),
                    done),
                say("Tests has none since {}: paste it.", done)));
  }

  Tab tab() {
    return Tab.of(
            "To do",
            "Who does what until when. Result lists what the register asks for; write it here, note"
                + " the day it was done and the receipt.")
        .with(table);
  }
}
