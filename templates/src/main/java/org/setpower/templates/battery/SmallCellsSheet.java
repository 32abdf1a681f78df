package org.setpower.templates.battery;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.PackFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** Small cells: how many a day and for the job. */
final class SmallCellsSheet {
  final ColumnSpec device =
      ColumnSpec.input("Device")
          .required()
          .width(52)
          .help("What takes small cells: transmitter, receiver, meter, torch.");
  final ColumnSpec department = ColumnSpec.input("Department").width(24).help("Who changes them.");
  final ColumnSpec size =
      ColumnSpec.input("Cell")
          .options("AA", "AAA", "9 V", "CR123", "CR2032")
          .orOther()
          .required()
          .width(20)
          .help("The size printed beside the lid: AA, AAA, 9 V.");
  final ColumnSpec quantity =
      ColumnSpec.input("Quantity")
          .number(CellFormat.COUNT, 1, 999)
          .width(19)
          .help("How many. Blank: 1.");
  final ColumnSpec each =
      ColumnSpec.input("Cells each")
          .number(CellFormat.COUNT, 1, 24)
          .required()
          .width(19)
          .help("How many cells one device takes.");
  final ColumnSpec lasts =
      ColumnSpec.input("A set lasts")
          .unit("h")
          .number(CellFormat.ONE, 0.1, 10_000)
          .required()
          .width(19)
          .help("Manual, or what sound counts on. Less in the cold.");
  final ColumnSpec on =
      ColumnSpec.input("On a day")
          .unit("h")
          .number(CellFormat.ONE, 0, 24)
          .required()
          .width(19)
          .help("Hours it is on, on a usual day.");
  final ColumnSpec stock =
      ColumnSpec.input("We have")
          .number(CellFormat.COUNT, 0, 100_000)
          .width(19)
          .help("Cells of this device in stock. Blank: not counted.");

  final ColumnSpec aDay = ColumnSpec.result("Cells a day").format(CellFormat.COUNT).width(19);
  final ColumnSpec forJob = ColumnSpec.result("For the job").format(CellFormat.COUNT).width(19);
  final ColumnSpec missing =
      ColumnSpec.result("To buy").format(CellFormat.COUNT).mayBeBlank().width(19);

  final TableSpec table = TableSpec.of("Small cells", 40);

  SmallCellsSheet(BatteryJobSheet day) {
    aDay.formula(calc("{}*{}*{}", call(PackFunctions.COUNT, on, lasts, 0), each, or(quantity, 1)));
    forJob.formula(calc("{}*{}", aDay, day.shootingDays));
    missing.formula(calc("IF({}=\"\";\"\";MAX(0;{}-{}))", or(stock, ""), forJob, or(stock, 0)));
    table
        .columns(device, department, size, quantity, each, lasts, on, stock, aDay, forJob, missing)
        .checks(
            ValidationRule.check(
                calc("{}=0", day.shootingDays), say("Job has no day of kind shoot or night yet.")),
            ValidationRule.check(
                calc("{}>0", missing), say("{} more {} cells to buy.", missing, size)));
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Small cells",
            "What runs on small cells: how many a day and for all shooting days of Job. Fresh ones"
                + " go in whole sets.")
        .with(table);
  }
}
