package org.setpower.templates.budget;

import static org.setpower.templates.Formula.calc;
import static org.setpower.templates.Formula.say;

import org.setpower.templates.Check;
import org.setpower.templates.Column;
import org.setpower.templates.Format;
import org.setpower.templates.Tab;
import org.setpower.templates.Table;

/** What the lighting plan and the battery day say that will be used. */
final class PlanFigures {
  final Column what =
      Column.input("From the plan")
          .needed()
          .wide(60)
          .help("Diesel of the set, kWh at the quay, hours of the operator.");
  final Column measure =
      Column.input("Measure")
          .oneOf("litres", "kWh", "hours", "km", "pieces", "kg", "Wh")
          .needed()
          .wide(45)
          .help("What is counted.");
  final Column daily =
      Column.input("A day")
          .unit("units")
          .number(Format.TWO, 0, 10_000_000)
          .needed()
          .wide(22)
          .help("Lighting plan and battery day, Result.");
  final Column days =
      Column.input("Days")
          .unit("days")
          .number(Format.ONE, 0, 3660)
          .needed()
          .wide(18)
          .help("On so many days.");
  final Column all =
      Column.result("In all", calc("{}*{}", daily, days)).unit("units").as(Format.TWO).wide(22);
  final Table table =
      Table.of("From the plan", 40)
          .columns(what, measure, daily, days, all)
          .checks(
              Check.wrong(
                  calc("COUNTIF({};{})>1", what.all(), what),
                  say("{} stands here twice: give each its own name.", what)));

  Tab tab() {
    return Tab.of(
            "From the plan",
            "What the plans say will be used: copy it from their results. Lines takes its counts"
                + " from here.")
        .with(table);
  }
}
