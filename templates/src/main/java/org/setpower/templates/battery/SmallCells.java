package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.PackFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** Small cells: how many a day and for the job. */
final class SmallCells {
  final Column device =
      Column.input("Device")
          .needed()
          .wide(52)
          .help("What takes small cells: transmitter, receiver, meter, torch.");
  final Column department = Column.input("Department").wide(24).help("Who changes them.");
  final Column size =
      Column.input("Cell")
          .oneOf("AA", "AAA", "9 V", "CR123", "CR2032")
          .orOther()
          .needed()
          .wide(20)
          .help("The size printed beside the lid: AA, AAA, 9 V.");
  final Column quantity =
      Column.input("Quantity").number(Format.COUNT, 1, 999).wide(19).help("How many. Blank: 1.");
  final Column each =
      Column.input("Cells each")
          .number(Format.COUNT, 1, 24)
          .needed()
          .wide(19)
          .help("How many cells one device takes.");
  final Column lasts =
      Column.input("A set lasts")
          .unit("h")
          .number(Format.ONE, 0.1, 10_000)
          .needed()
          .wide(19)
          .help("Manual, or what sound counts on. Less in the cold.");
  final Column on =
      Column.input("On a day")
          .unit("h")
          .number(Format.ONE, 0, 24)
          .needed()
          .wide(19)
          .help("Hours it is on, on a usual day.");
  final Column stock =
      Column.input("We have")
          .number(Format.COUNT, 0, 100_000)
          .wide(19)
          .help("Cells of this device in stock. Blank: not counted.");

  final Column aDay = Column.result("Cells a day").as(Format.COUNT).wide(19);
  final Column forJob = Column.result("For the job").as(Format.COUNT).wide(19);
  final Column missing = Column.result("To buy").as(Format.COUNT).mayBeBlank().wide(19);

  final Table table = Table.of("Small cells", 40);

  SmallCells(DayJob day) {
    aDay.by(calc("{}*{}*{}", call(PackFunctions.COUNT, on, lasts), each, or(quantity, 1)));
    forJob.by(calc("{}*{}", aDay, day.shootingDays));
    missing.by(calc("IF({}=\"\";\"\";MAX(0;{}-{}))", or(stock, ""), forJob, or(stock, 0)));
    table
        .columns(device, department, size, quantity, each, lasts, on, stock, aDay, forJob, missing)
        .checks(
            Check.look(
                calc("{}=0", day.shootingDays), say("Job has no day of kind shoot or night yet.")),
            Check.look(calc("{}>0", missing), say("{} more {} cells to buy.", missing, size)));
  }

  Tab tab() {
    return Tab.of(
            "Small cells",
            "What runs on small cells: how many a day and for all shooting days of Job. Fresh ones"
                + " go in whole sets.")
        .with(table);
  }
}
