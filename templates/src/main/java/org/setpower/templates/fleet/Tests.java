package org.setpower.templates.fleet;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import java.util.ArrayList;
import java.util.List;
import org.setpower.registry.groups.FleetFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/**
 * The tests as they come from the bench; for each pack the newest that is fit to compare counts.
 */
final class Tests {
  static final int ROOM = 1000;
  private static final int CELLS = 14;

  final Column serial =
      Column.input("Serial").needed().wide(24).help("As on Packs; a tester's file has it too.");
  final Column date =
      Column.input("Date").as(Format.DATE).needed().wide(32).help("The day of the test.");
  final Column measured =
      Column.input("Measured")
          .unit("Wh")
          .number(Format.ONE, 0.1, 100_000)
          .needed()
          .wide(19)
          .help("What the full pack gave until it cut off: load tester or watt-hour meter.");
  final Column watts =
      Column.input("Test load")
          .unit("W")
          .number(Format.WHOLE, 0.1, 100_000)
          .needed()
          .wide(18)
          .help("Watts that the tester drew. The same load every time compares best.");
  final Column temperature =
      Column.input("Temperature").number(Format.WHOLE, -60, 180).needed().wide(22);
  final Column rested =
      Column.input("Rested")
          .unit("h")
          .number(Format.ONE, 0, 100_000)
          .needed()
          .wide(16)
          .help("Hours off the charger before the test.");
  final Column milliohms =
      Column.input("Resistance")
          .unit("mΩ")
          .number(Format.WHOLE, 0.1, 100_000)
          .wide(20)
          .help("If the tester shows it. A rise by half is a warning.");
  final List<Column> cells = new ArrayList<>();

  final Column compare = Column.result("Compared").wide(20);
  final Column health = Column.result("Health").as(Format.SHARE).wide(16);
  final Column spread =
      Column.result("Cell spread").unit("V").as(Format.THREE).mayBeBlank().wide(17);
  final Column key = Column.working("Serial and date");
  final Column label = Column.working("Wh on the label");

  final Table table = Table.of("Tests", ROOM);

  private final House house;
  private final Packs packs;

  Tests(House house, Packs packs) {
    this.house = house;
    this.packs = packs;
    temperature
        .unit(house.job.degrees())
        .help("Of the pack, or of the room it lay in for half a day.");
    for (int i = 1; i <= CELLS; i++) {
      cells.add(
          Column.input("Cell " + i)
              .unit("V")
              .number(Format.TWO, 0, 5)
              .wide(15)
              .help("Volts of cell " + i + " in the row, rested, no load. Blank: not there."));
    }
    label.by(packs.energy.where(packs.serial, serial));
    health.by(call(FleetFunctions.HEALTH, measured, label));
    compare.by(
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
    spread.by(
        calc(
            "IF(COUNT({})<2;\"\";{}+0*LEN({}))",
            volts,
            call(FleetFunctions.SPREAD, volts),
            serial));
    key.by(calc("IF({}=\"fit\";{}&\"|\"&{};\"\")", compare, serial, date));
    table.columns(serial, date, measured, watts, temperature, rested, milliohms);
    table.columns(cells.toArray(new Column[0]));
    table.columns(compare, health, spread, key, label);
    table.checks(checks());
  }

  private Check[] checks() {
    return new Check[] {
      Check.stop(
          calc("COUNTIF({};{})=0", packs.serial.all(), serial),
          say("Packs has no {}: add the pack there first, or mend the serial.", serial)),
      Check.stop(
          calc("{}>{}", date, house.today()), say("{} has not come yet: correct the date.", date)),
      Check.look(
          calc("OR({}<{};{}>{})", temperature, house.coldest(), temperature, house.warmest()),
          say(
              "At {} {} not compared: cold and heat change what a pack gives. Test again between"
                  + " {} and {}.",
              temperature,
              house.job.degrees(),
              house.coldest(),
              house.warmest())),
      Check.look(
          calc("{}<{}", rested, house.rested),
          say("Rested {} h only, not compared: wait {} h after charging.", rested, house.rested)),
      Check.look(
          calc("{}>{}*{}", watts, house.testLoad, label),
          say("{} W is much for {} Wh and reads low, not compared: test with less.", watts, label)),
      Check.look(
          calc("COUNTIFS({};{};{};{})>1", serial.all(), serial, date.all(), date),
          say("{} was tested twice on {}: the upper row counts; delete one.", serial, date))
    };
  }

  Tab tab() {
    return Tab.of(
            "Tests",
            "Paste the tests as they come, in any order: the newest that can be compared counts."
                + " Serial, date, Wh, load, temperature and rest must be there.")
        .with(table);
  }
}
