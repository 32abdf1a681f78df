package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import java.util.ArrayList;
import java.util.List;
import org.setpower.registry.groups.FleetFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/**
 * The tests as they come from the bench; for each pack the newest that is fit to compare counts.
 */
final class PackTestsSheet {
  static final int ROOM = 1000;
  private static final int CELLS = 14;

  final ColumnSpec serial =
      ColumnSpec.input("Serial")
          .required()
          .width(24)
          .help("As on Packs; a tester's file has it too.");
  final ColumnSpec date =
      ColumnSpec.input("Date")
          .format(CellFormat.DATE)
          .required()
          .width(32)
          .help("The day of the test.");
  final ColumnSpec measured =
      ColumnSpec.input("Measured")
          .unit("Wh")
          .number(CellFormat.ONE, 0.1, 100_000)
          .required()
          .width(19)
          .help("What the full pack gave until it cut off: load tester or watt-hour meter.");
  final ColumnSpec watts =
      ColumnSpec.input("Test load")
          .unit("W")
          .number(CellFormat.WHOLE, 0.1, 100_000)
          .required()
          .width(18)
          .help("Watts that the tester drew. The same load every time compares best.");
  final ColumnSpec temperature =
      ColumnSpec.input("Temperature").number(CellFormat.WHOLE, -60, 180).required().width(22);
  final ColumnSpec rested =
      ColumnSpec.input("Rested")
          .unit("h")
          .number(CellFormat.ONE, 0, 100_000)
          .required()
          .width(16)
          .help("Hours off the charger before the test.");
  final ColumnSpec milliohms =
      ColumnSpec.input("Resistance")
          .unit("mΩ")
          .number(CellFormat.WHOLE, 0.1, 100_000)
          .width(20)
          .help("If the tester shows it. A rise by half is a warning.");
  final List<ColumnSpec> cells = new ArrayList<>();

  final ColumnSpec compare = ColumnSpec.result("Compared").width(20);
  final ColumnSpec health = ColumnSpec.result("Health").format(CellFormat.SHARE).width(16);
  final ColumnSpec spread =
      ColumnSpec.result("Cell spread").unit("V").format(CellFormat.THREE).mayBeBlank().width(17);
  final ColumnSpec key = ColumnSpec.working("Serial and date");
  final ColumnSpec label = ColumnSpec.working("Wh on the label");

  final TableSpec table = TableSpec.of("Tests", ROOM);

  private final RegisterSettings house;
  private final FleetPacksSheet packs;

  PackTestsSheet(RegisterSettings house, FleetPacksSheet packs) {
    this.house = house;
    this.packs = packs;
    temperature
        .unit(house.job.degrees())
        .help("Of the pack, or of the room it lay in for half a day.");
    for (int i = 1; i <= CELLS; i++) {
      cells.add(
          ColumnSpec.input("Cell " + i)
              .unit("V")
              .number(CellFormat.TWO, 0, 5)
              .width(15)
              .help("Volts of cell " + i + " in the row, rested, no load. Blank: not there."));
    }
    label.formula(packs.energy.lookup(packs.serial, serial));
    health.formula(call(FleetFunctions.HEALTH, measured, label));
    compare.formula(
        calc(
            "IF(AND({}>0;{}<>\"\";{}>={};{}<={};{}>={};{}<={}*{};{}<={});\"fit\";\"no\")",
            label,
            or(health, ""),
            temperature,
            house.coldest(),
            temperature,
            house.warmest(),
            rested,
            house.rested,
            watts,
            house.testLoad,
            label,
            date,
            house.today()));
    Formula volts = cells.get(0).to(cells.get(CELLS - 1));
    spread.formula(
        calc(
            "IF(COUNT({})<2;\"\";{}+0*LEN({}))",
            volts,
            call(FleetFunctions.IMBALANCE, volts),
            serial));
    key.formula(calc("IF({}=\"fit\";{}&\"|\"&{};\"\")", compare, serial, date));
    table.columns(serial, date, measured, watts, temperature, rested, milliohms);
    table.columns(cells.toArray(new ColumnSpec[0]));
    table.columns(compare, health, spread, key, label);
    table.checks(checks());
  }

  private ValidationRule[] checks() {
    return new ValidationRule[] {
      ValidationRule.stop(
          calc("COUNTIF({};{})=0", packs.serial.all(), serial),
          say("Packs has no {}: add the pack there first, or correct the serial.", serial)),
      ValidationRule.stop(
          calc("{}>{}", date, house.today()), say("{} has not come yet: correct the date.", date)),
      ValidationRule.check(
          calc("OR({}<{};{}>{})", temperature, house.coldest(), temperature, house.warmest()),
          say(
              "At {} {} not compared: cold and heat change what a pack gives. Test again between"
                  + " {} and {}.",
              temperature,
              house.job.degrees(),
              house.coldest(),
              house.warmest())),
      ValidationRule.check(
          calc("{}<{}", rested, house.rested),
          say("Rested {} h only, not compared: wait {} h after charging.", rested, house.rested)),
      ValidationRule.check(
          calc("{}>{}*{}", watts, house.testLoad, label),
          say("{} W is much for {} Wh and reads low, not compared: test with less.", watts, label)),
      ValidationRule.check(
          calc("COUNTIFS({};{};{};{})>1", serial.all(), serial, date.all(), date),
          say("{} was tested twice on {}: the upper row counts; delete one.", serial, date))
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Tests",
            "Paste the tests as they come, in any order: the newest that can be compared counts."
                + " Serial, date, Wh, load, temperature and rest must be there.")
        .with(table);
  }
}
