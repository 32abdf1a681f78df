package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.Kit;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The drawer of the rental desk: what it hires out, at what price, and how many it has. */
final class Stock {
  final Column item =
      Column.input("Item").needed().wide(52).help("As it stands on the shelf and on the quote.");
  final Column department =
      Column.input("Department").wide(24).help("Who works with it: electric, camera, sound.");
  final Column mass = Kit.massOfItem();
  final Column pieces =
      Column.input("Pieces")
          .number(Format.COUNT, 0, 9999)
          .wide(16)
          .help("How many are on the shelf. Blank: not counted.");
  final Column goesWith = Kit.thatGoesWithIt();
  final Column dayRate = Kit.rateOfDay();
  final Column value = Kit.replacementValue();
  final Column origin = Kit.countryOfOrigin();
  final Column least =
      Column.input("Least hire")
          .unit("days")
          .number(Format.ONE, 0, 99)
          .wide(18)
          .help("Fewest days charged for this item. Blank: what Job says.");
  final Column worksTo =
      Column.input("Works to")
          .unit("V")
          .number(Format.ONE, 0, 1000)
          .wide(17)
          .help("DC devices: the highest volts of the input, such as 17 in 11–17 V.");
  final Column outputs =
      Column.input("Outputs")
          .unit("V class")
          .wide(24)
          .help("Packs: the volt classes it can give, with a stroke between: 12, 12/24, 24, 48.");
  final Column wattHours =
      Column.input("Energy")
          .unit("Wh")
          .number(Format.WHOLE, 0.1, 10_000_000)
          .wide(17)
          .help("Packs: the Wh printed on the label; flight rules go by it.");
  final Column channels =
      Column.input("Charger channels")
          .number(Format.COUNT, 0, 999)
          .wide(20)
          .help("Chargers: how many packs at a time.");

  /** The class of the lowest output, in V. */
  final Column lowest =
      Column.working(
          "Lowest output",
          calc("VALUE(TRIM(LEFT({};IFERROR(FIND(\"/\";{})-1;9))))", outputs, outputs));

  final Table table =
      Table.of("Kit", 200)
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
              Check.wrong(
                  calc("COUNTIF({};{})>1", item.all(), item),
                  say("{} stands here twice: one row for each kind.", item)),
              Check.look(
                  calc("AND({}<>\"\";{}=\"\")", outputs, or(wattHours, "")),
                  say("{} is a pack without energy: fill in the Wh on its label.", item)));

  Stock(Hire hire) {
    mass.unit(hire.job.masses());
    dayRate.unit(hire.currency);
    value.unit(hire.currency);
  }

  Tab tab() {
    table.starts(Stock.class, "/org/setpower/templates/quote/quote-kit.csv");
    return Tab.of(
            "Kit",
            "A drawer, not a step: what the desk hires out. Correct it to your own shelf; lists on"
                + " the other tabs come from here.")
        .with(table);
  }
}
