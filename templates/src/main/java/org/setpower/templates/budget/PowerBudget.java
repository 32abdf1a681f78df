package org.setpower.templates.budget;

import static org.setpower.templates.Formula.calc;
import static org.setpower.templates.Formula.or;

import org.setpower.templates.BarChart;
import org.setpower.templates.Excerpt;
import org.setpower.templates.Figure;
import org.setpower.templates.Figures;
import org.setpower.templates.Filling;
import org.setpower.templates.Findings;
import org.setpower.templates.Format;
import org.setpower.templates.Formula;
import org.setpower.templates.Item;
import org.setpower.templates.Lines;
import org.setpower.templates.Tab;
import org.setpower.templates.Table;
import org.setpower.templates.Template;
import org.setpower.templates.Workbook;

/** Template 3: the power budget of a line producer. */
public final class PowerBudget implements Workbook {
  private static final String SCENARIO = "/org/setpower/templates/scenario/budget-";
  private static final int FINDINGS = 9;

  private final Terms terms = new Terms();
  private final PlanFigures plan = new PlanFigures();
  private final CostLines lines = new CostLines(terms, plan);
  private final Sums sums = new Sums(terms, lines);
  private final Ways ways = new Ways(terms);
  private final WhatIf whatIf = new WhatIf(terms, lines, sums);
  private final Template template;

  /** Declares the budget. */
  public PowerBudget() {
    template =
        Template.of("power-budget", "Power budget", 1)
            .stamped(terms.job.stamp())
            .with(
                terms.tab(),
                plan.tab(),
                lines.tab(),
                ways.tab(),
                whatIf.tab(),
                sums.tab(),
                result(),
                notes());
  }

  @Override
  public Template template() {
    return template;
  }

  private Tab result() {
    Table[] tables = {
      terms.job.days, plan.table, lines.table, ways.table, ways.owning, whatIf.table
    };
    Excerpt options =
        Excerpt.of(ways.table)
            .column(ways.way, 75)
            .column(ways.total, 45)
            .column(ways.mass, 30)
            .column(ways.co2, 30);
    Table beside = options.rows("Ways to power the same days", Ways.ROOM);
    return Tab.of("Result", "What the power costs, what is ordered, and what else was possible.")
        .titled("Power budget")
        .grid(12, 15)
        .portrait()
        .result()
        .with(
            Figures.of("", 3, figures(tables)), Findings.of("What needs a look", FINDINGS, tables))
        .newPage(beside)
        .with(
            BarChart.bars(
                "What each way costs",
                10,
                "money",
                options.shown(ways.way),
                options.shown(ways.total)),
            Excerpt.of(sums.byAccount)
                .column(sums.account, 90)
                .column(sums.accountCost, 45)
                .column(sums.accountOrdered, 45)
                .rows("By account (all of them: Totals)", 8),
            Excerpt.of(sums.byDepartment)
                .column(sums.department, 90)
                .column(sums.departmentCost, 45)
                .column(sums.departmentOrdered, 45)
                .rows("By department (all of them: Totals)", 6),
            Lines.notes(
                "Adds up",
                calc(
                    "IF({}=\"yes\";\"Accounts and departments both come to all lines.\";"
                        + "IF({}=\"\";\"Nothing to add up yet.\";\"look: accounts or departments do not"
                        + " come to all lines; there are more of them than Totals has room"
                        + " for.\"))",
                    shown(sums.addsUp),
                    sums.lines)));
  }

  private Figure[] figures(Table... tables) {
    return new Figure[] {
      Findings.stops(tables),
      Findings.looks(FINDINGS, tables),
      Figure.of(
          "Lines without a price (rows)",
          Format.COUNT,
          calc(
              "COUNTIFS({};\"<>\";{};\"\";{};\"\")",
              lines.what.all(),
              lines.price.all(),
              lines.struck.all()),
          "They are not in the budget yet."),
      Figure.of(
          "Budget (money)",
          Format.MONEY,
          shown(sums.total),
          calc("{}&\", with contingency\"", terms.currency)),
      Figure.of(
          "All lines (money)",
          Format.MONEY,
          shown(sums.lines),
          calc(
              "IF({}=\"a cost\";\"with tax, which is a cost\";\"without tax, which is reclaimed\")",
              terms.taxIs)),
      Figure.of(
          "Contingency (money)",
          Format.MONEY,
          shown(sums.contingency),
          calc("ROUND(100*{};1)&\" % of all lines\"", or(terms.contingency, 0))),
      Figure.of("Ordered (money)", Format.MONEY, shown(sums.ordered), "Without tax."),
      Figure.of(
          "Over or under (money)",
          Format.MONEY,
          shown(sums.over),
          "What is ordered against its lines."),
      Figure.of(
          "Still to come (money)",
          Format.MONEY,
          shown(sums.toCome),
          "Without tax; as ordered, else as planned."),
      Figure.of("Tax (money)", Format.MONEY, shown(sums.tax), "On all lines."),
      Figure.of(
          "Cheapest way (money)",
          Format.MONEY,
          calc("IF(COUNT({})=0;\"–\";MIN({}))", ways.total.all(), ways.total.all()),
          calc(
              "IFERROR(INDEX({};MATCH(MIN({});{};0));\"See Options.\")",
              ways.way.all(),
              ways.total.all(),
              ways.total.all())),
      Figure.of(
          "Least CO2 (kg)",
          Format.ONE,
          calc("IF(COUNT({})=0;\"–\";MIN({}))", ways.co2.all(), ways.co2.all()),
          calc(
              "IFERROR(INDEX({};MATCH(MIN({});{};0))&\"; most: \"&ROUND(MAX({});1)&\" kg\";\"See"
                  + " Options.\")",
              ways.way.all(),
              ways.co2.all(),
              ways.co2.all(),
              ways.co2.all()))
    };
  }

  private static Formula shown(Item<?> field) {
    return calc("IF({}=\"\";\"–\";{})", field, field);
  }

  private Tab notes() {
    return Tab.of("Notes", "What was assumed, what is left out, and where the figures come from.")
        .grid(12, 21)
        .with(
            Lines.notes(
                "How it is reckoned",
                "Net: count × times charged × price, less the discount, rounded half up to the smallest"
                    + " coin. Times charged: for how long, but not less than the least charged.",
                "Tax: of each line, rounded. It counts as a cost only if Job says so.",
                "Contingency: its share of all lines. Ordered, paid and still to come are without"
                    + " tax.",
                "Options and What if use the prices on Job, without tax. Each row of What if stands"
                    + " beside the plan alone; rows do not add up.",
                "A struck line costs nothing; a line without a price is not in the budget."),
            Lines.notes(
                "Left out",
                "Cash by week: when what is due and deposits go out and come back is not worked out. A"
                    + " deposit that comes back is no cost: do not make it a line.",
                "Other currencies: change prices at your own rate before you type them.",
                "Overtime: type it as a line of its own, at its price.",
                "Whether tax is due, and whether it comes back: that is for an accountant."),
            Lines.notes(
                "Where the figures come from",
                "Fees, rounding, own or hire: the functions HIRE; see the handbook.",
                "CO2 of fuel: GENSET.CO2, burning only. CO2 of the grid: GENSET.GRIDCO2, the mean of a"
                    + " country and a year. Making the kit, and bringing it, are in neither.",
                "Every figure can be followed: put the cursor on it and choose How this number came"
                    + " about in the menu Set power."));
  }

  @Override
  public void fill(Filling filling) {
    filling
        .fields(PowerBudget.class, SCENARIO + "job.csv")
        .rows(terms.job.days, PowerBudget.class, "/org/setpower/templates/scenario/days.csv")
        .rows(plan.table, PowerBudget.class, SCENARIO + "plan.csv")
        .rows(lines.table, PowerBudget.class, SCENARIO + "lines.csv")
        .rows(ways.table, PowerBudget.class, SCENARIO + "options.csv")
        .rows(ways.owning, PowerBudget.class, SCENARIO + "owning.csv")
        .rows(whatIf.table, PowerBudget.class, SCENARIO + "what-if.csv");
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – power budget";
  }
}
