package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.FromPlan;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What the lighting plan and the battery day say that will be used. */
final class PlanFigures {
  final Column what =
      Column.input(FromPlan.TITLE)
          .needed()
          .wide(60)
          .help("The first rows are those of a plan's result; add your own below them.");
  final Column measure =
      Column.input(FromPlan.MEASURE)
          .oneOf("kWh", "litres", "hours", "pieces", "kg", "km")
          .needed()
          .wide(45)
          .help("What is counted.");
  final Column daily =
      Column.input(FromPlan.DAILY)
          .unit("units")
          .number(Format.TWO, 0, 10_000_000)
          .named(FromPlan.DAILY_NAME)
          .wide(22)
          .help("Copied as values with Days from the plan's Result, or typed.");
  final Column days =
      Column.input(FromPlan.DAYS)
          .unit("days")
          .number(Format.ONE, 0, 3660)
          .named(FromPlan.DAYS_NAME)
          .wide(18)
          .help("On so many days.");
  private final Column source =
      Column.input("Plan and revision")
          .wide(50)
          .help("Which plan it comes from, and its revision: lights at the pans, revision 3.");
  final Column all =
      Column.result("In all", calc("{}*{}", daily, days)).unit("units").as(Format.TWO).wide(22);
  final Table table =
      Table.of("From the plan", 40)
          .columns(what, measure, daily, days, source, all)
          .checks(
              Check.wrong(
                  calc("COUNTIF({};{})>1", what.all(), what),
                  say("{} stands here twice: give each its own name.", what)),
              Check.look(
                  calc("({}=\"\")<>({}=\"\")", or(daily, ""), or(days, "")),
                  Formula.of("Fill in both a day and days, or neither.")),
              Check.look(
                  calc("AND({}<>\"\";{}=\"\")", all, or(source, "")),
                  Formula.of("Note the plan and its revision, so that an old figure is seen.")));

  Tab tab() {
    table.starts(PlanFigures.class, "/org/setpower/templates/budget/budget-plan.csv");
    return Tab.of(
            FromPlan.TITLE,
            "What the plans say will be used: copy A day and Days from the block of the same rows"
                + " on their Result, paste values only. Lines takes its counts from here.")
        .with(table);
  }
}
