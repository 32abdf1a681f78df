package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.EquipmentSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The drawer of the rental desk: what it hires out, at what price, and how many it has. */
final class StockSheet {
  final ColumnSpec item =
      ColumnSpec.input("Item")
          .required()
          .width(52)
          .help("As it stands on the shelf and on the quote.");
  final ColumnSpec department =
      ColumnSpec.input("Department").width(24).help("Who works with it: electric, camera, sound.");
  final ColumnSpec mass = EquipmentSheet.massOfItem();
  final ColumnSpec pieces =
      ColumnSpec.input("Pieces")
          .number(CellFormat.COUNT, 0, 9999)
          .width(16)
          .help("How many are on the shelf. Blank: not counted.");
  final ColumnSpec goesWith = EquipmentSheet.thatGoesWithIt();
  final ColumnSpec dayRate = EquipmentSheet.rateOfDay();
  final ColumnSpec value = EquipmentSheet.replacementValue();
  final ColumnSpec origin = EquipmentSheet.countryOfOrigin();
  final ColumnSpec least =
      ColumnSpec.input("Least hire")
          .unit("days")
          .number(CellFormat.ONE, 0, 99)
          .width(18)
          .help("Fewest days charged for this item. Blank: what Job says.");
  final ColumnSpec worksTo =
      ColumnSpec.input("Works to")
          .unit("V")
          .number(CellFormat.ONE, 0, 1000)
          .width(17)
          .help("DC devices: the highest volts of the input, such as 17 in 11–17 V.");
  final ColumnSpec outputs =
      ColumnSpec.input("Outputs")
          .unit("nominal V")
          .width(24)
          .help("Batteries: nominal voltages, separated by a slash: 12, 12/24, 24, 48.");
  final ColumnSpec wattHours =
      ColumnSpec.input("Energy")
          .unit("Wh")
          .number(CellFormat.WHOLE, 0.1, 10_000_000)
          .width(17)
          .help("Packs: the Wh printed on the label; flight rules go by it.");
  final ColumnSpec channels =
      ColumnSpec.input("Charger channels")
          .number(CellFormat.COUNT, 0, 999)
          .width(20)
          .help("Chargers: how many packs at a time.");

  /** The class of the lowest output, in V. */
  final ColumnSpec lowest =
      ColumnSpec.working(
          "Lowest output",
          calc("VALUE(TRIM(LEFT({};IFERROR(FIND(\"/\";{})-1;9))))", outputs, outputs));

  final TableSpec table =
      TableSpec.of("Kit", 200)
          .columns(
              item,
              department,
              mass,
              pieces,
              goesWith,
              dayRate,
              value,
              origin,
              least,
              worksTo,
              outputs,
              wattHours,
              channels,
              lowest)
          .checks(
              ValidationRule.wrong(
                  calc("COUNTIF({};{})>1", item.all(), item),
                  say("Duplicate: {}. One row for each kind.", item)),
              ValidationRule.check(
                  calc("AND({}<>\"\";{}=\"\")", outputs, or(wattHours, "")),
                  say("{} is a pack without energy: fill in the Wh on its label.", item)));

  StockSheet(QuoteTerms hire) {
    mass.unit(hire.job.masses());
    dayRate.unit(hire.currency);
    value.unit(hire.currency);
  }

  SheetSpec tab() {
    table.initialRows(StockSheet.class, "/org/setpower/templates/quote/quote-kit.csv");
    return SheetSpec.of(
            "Kit",
            "Rental stock: items, rates and values. Edit it to match your own stock;"
                + " drop-down lists on the other tabs use it.")
        .with(table);
  }
}
