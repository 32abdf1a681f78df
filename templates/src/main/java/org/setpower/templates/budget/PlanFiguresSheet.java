package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.shared.PlanHandover;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** What the lighting plan and the battery day say that will be used. */
final class PlanFiguresSheet {
  final ColumnSpec what =
      ColumnSpec.input(PlanHandover.TITLE)
          .required()
          .width(60)
          .help("The first rows are those of a plan's result; add your own below them.");
  final ColumnSpec measure =
      ColumnSpec.input(PlanHandover.MEASURE)
          .options("kWh", "litres", "hours", "pieces", "kg", "km")
          .required()
          .width(45)
          .help("What is counted.");
  final ColumnSpec daily =
      ColumnSpec.input(PlanHandover.DAILY)
          .unit("units")
          .number(CellFormat.TWO, 0, 10_000_000)
          .rangeName(PlanHandover.DAILY_NAME)
          .width(22)
          .help("Copied as values with Days from the plan's Result, or typed.");
  final ColumnSpec days =
      ColumnSpec.input(PlanHandover.DAYS)
          .unit("days")
          .number(CellFormat.ONE, 0, 3660)
          .rangeName(PlanHandover.DAYS_NAME)
          .width(18)
          .help("On so many days.");
  private final ColumnSpec source =
      ColumnSpec.input("Plan and revision")
          .width(50)
          .help("Which plan it comes from, and its revision: lights at the pans, revision 3.");
  final ColumnSpec all =
      ColumnSpec.result("In all", calc("{}*{}", daily, days))
          .unit("units")
          .format(CellFormat.TWO)
          .width(22);
  final TableSpec table =
      TableSpec.of("From the plan", 40)
          .columns(what, measure, daily, days, source, all)
          .checks(
              ValidationRule.wrong(
                  calc("COUNTIF({};{})>1", what.all(), what),
                  say("Duplicate: {}. Give each its own name.", what)),
              ValidationRule.check(
                  calc("({}=\"\")<>({}=\"\")", or(daily, ""), or(days, "")),
                  Formula.of("Fill in both a day and days, or neither.")),
              ValidationRule.check(
                  calc("AND({}<>\"\";{}=\"\")", all, or(source, "")),
                  Formula.of("Note the plan and its revision, so that an old figure is seen.")));

  SheetSpec tab() {
    table.initialRows(PlanFiguresSheet.class, "/org/setpower/templates/budget/budget-plan.csv");
    return SheetSpec.of(
            PlanHandover.TITLE,
            "What the plans say will be used: copy A day and Days from the block of the same rows"
                + " on their Result, paste values only. Lines takes its counts from here.")
        .with(table);
  }
}
