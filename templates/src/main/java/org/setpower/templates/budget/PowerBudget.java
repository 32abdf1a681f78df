package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.spec.BarChart;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.CellSpec;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.IssueList;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableExcerpt;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.ExampleLoader;

/** Template 3: the power budget of a line producer. */
public final class PowerBudget implements TemplateDefinition {
  private static final int FINDINGS = 5;

  private final BudgetTerms terms = new BudgetTerms();
  private final PlanFiguresSheet plan = new PlanFiguresSheet();
  private final CostLinesSheet lines = new CostLinesSheet(terms, plan);
  private final BudgetTotals sums = new BudgetTotals(terms, lines);
  private final PackMixSheet mix = new PackMixSheet(terms);
  private final PowerOptionsSheet ways = new PowerOptionsSheet(terms, mix);
  private final WhatIfSheet whatIf = new WhatIfSheet(terms, lines, sums);
  private final CashFlowSheet cash = new CashFlowSheet(terms, lines, sums);
  private final WorkbookSpec template;
  private final IssueList findings;

  /** Declares the budget. */
  public PowerBudget() {
    template =
        WorkbookSpec.of("power-budget", "Power budget", 2)
            .stamped(terms.job.stamp())
            .with(
                terms.tab(),
                plan.tab(),
                lines.tab(),
                ways.tab(),
                mix.tab(),
                ways.owningTab(),
                whatIf.tab(),
                cash.tab(),
                sums.tab());
    findings = IssueList.on(FINDINGS, template.tabs());
    template.with(result(), notes());
  }

  @Override
  public WorkbookSpec template() {
    return template;
  }

  private SheetSpec result() {
    TableExcerpt ofWays =
        TableExcerpt.of(ways.table)
            .column(ways.way, 75)
            .column(ways.total, 30)
            .column(ways.massOfAll, 30)
            .column(ways.co2, 45);
    return SheetSpec.of(
            "Result",
            "What the power costs, what is ordered, and what else was possible. Planning figures,"
                + " as typed.")
        .titled("Power budget")
        .grid(12, 15)
        .portrait()
        .result()
        .with(
            KeyFigures.of("", 4, figures()),
            TableExcerpt.of(sums.byAccount)
                .column(sums.account, 75)
                .column(sums.accountCost, 30)
                .column(sums.accountOrdered, 30)
                .column(sums.accountOver, 45)
                .rows("By account (all of them: Totals)", 7),
            TableExcerpt.of(sums.byDepartment)
                .column(sums.department, 75)
                .column(sums.departmentCost, 30)
                .column(sums.departmentOrdered, 30)
                .column(sums.departmentOver, 45)
                .rows("By department (all of them: Totals)", 5),
            TextBlock.cautions(
                "Planning figures based on the prices, rates and taxes entered; not tax"
                    + " advice. CO2: combustion and average grid intensity only."))
        .newPage(ofWays.rows("Power options", PowerOptionsSheet.ROOM))
        .with(
            BarChart.bars(
                "What each way costs",
                8,
                "money",
                ofWays.shown(ways.way),
                ofWays.shown(ways.total)),
            BarChart.bars(
                "What each way weighs",
                8,
                "Mass",
                ofWays.shown(ways.way),
                ofWays.shown(ways.massOfAll)),
            BarChart.bars(
                "CO2 of each way", 8, "kg", ofWays.shown(ways.way), ofWays.shown(ways.co2)))
        .with(
            TableExcerpt.of(whatIf.table)
                .column(whatIf.change, 75)
                .column(whatIf.more, 30)
                .column(whatIf.then, 30)
                .column(whatIf.left, 45)
                .rows("What if, each beside the plan", 4),
            TextBlock.notes("Totals match", addsUp()),
            findings.list());
  }

  /** One line about the sums that must agree. */
  private Formula addsUp() {
    return calc(
        "IF({}=\"\";\"Nothing to add up yet.\";IF({}=\"yes\";\"Accounts and departments both come"
            + " to all lines; \";\"check: accounts or departments do not come to all lines, there"
            + " are more of them than Totals has room for; \")&IF({}=\"yes\";\"so do the weeks of"
            + " Cash.\";\"check: the weeks of Cash do not, a date is missing there or on Job.\"))",
        sums.lines,
        KeyFigure.shown(sums.addsUp),
        KeyFigure.shown(cash.addsUp));
  }

  private KeyFigure[] figures() {
    return new KeyFigure[] {
      findings.stops(),
      findings.checks(),
      KeyFigure.of(
          "Without a price (rows)",
          CellFormat.COUNT,
          calc(
              "COUNTIFS({};\"<>\";{};\"\";{};\"\")",
              lines.what.all(),
              lines.price.all(),
              lines.struck.all()),
          "Not in the budget yet."),
      money(
          "Budget",
          sums.total,
          calc(
              "{}&\", with \"&ROUND(100*{};1)&\" % contingency\"",
              terms.currency, or(terms.contingency, 0))),
      money(
          "All lines",
          sums.lines,
          calc(
              "IF({}=\"\";\"No line has a price yet.\";IF({}=\"a cost\";\"with tax, a"
                  + " cost\";\"without tax of \"&{}))",
              sums.lines,
              terms.taxIs,
              words(sums.tax))),
      money("Ordered", sums.ordered, "Without tax."),
      money("Over or under", sums.over, "Ordered against its lines."),
      money(
          "Contingency left",
          sums.left,
          calc(
              "IF({}=\"\";\"\";\"of \"&{}&\" that was kept\")",
              sums.left,
              words(sums.contingency))),
      money("Still to come", sums.toCome, "As ordered, else as planned."),
      money(
          "Most out at a time",
          cash.most,
          calc(
              "IF({}=\"\";\"Fill in the dates on Job.\";\"in the week from \"&TEXT({};\"d mmm\"))",
              cash.most,
              cash.mostIn)),
      KeyFigure.money(
          "Cheapest way (money)", terms.currency, KeyFigure.min(ways.total), best(ways.total)),
      KeyFigure.of("Least CO2 (kg)", CellFormat.ONE, KeyFigure.min(ways.co2), best(ways.co2))
    };
  }

  private KeyFigure money(String label, CellSpec<?> value, Object note) {
    return KeyFigure.money(label + " (money)", terms.currency, KeyFigure.shown(value), note);
  }

  private static Formula words(CellSpec<?> money) {
    return calc("TEXT({};\"#,##0.00\")", money);
  }

  private Formula best(ColumnSpec figures) {
    return calc("IFERROR({};\"See Options.\")", ways.way.lookupAtMin(figures));
  }

  private SheetSpec notes() {
    return SheetSpec.notes(
        TextBlock.reckoned(
            "Net: count × times charged × price, less the discount, rounded half up to"
                + " the minor currency unit. Times charged: for how long, but not less than the"
                + " least charged.",
            "Tax: of each line, rounded. It counts as a cost only if Job says so.",
            "Another currency: the net in it, rounded to its smallest coin, times the rate on Job."
                + " Overtime: the hours of a day beyond Overtime after, paid so much more.",
            "Cash: each line as planned, in the week in which it is due; each week: in equal parts"
                + " from Delivered on to Back on. A deposit that comes back is no cost: it stands"
                + " in Cash, not in Lines.",
            "Mix: the cheapest packs that hold the energy and give the power, proven; it does not"
                + " know how many are on the shelf.",
            "Contingency: its share of all lines. Ordered, paid and still to come are without"
                + " tax.",
            "Options and What if use the prices on Job, without tax. Each row of What if"
                + " is compared with the plan alone; rows do not add up.",
            "A struck line costs nothing; a line without a price is not in the budget."),
        TextBlock.leftOut(
            "Overtime by night, rest and holiday rules of an agreement: type it as a line of its"
                + " own.",
            "When tax that is reclaimed comes back: until then it counts as out in Cash.",
            "Whether tax is due, and whether it comes back: that is for an accountant."),
        TextBlock.sources(
            "Fees, rounding, own or hire: the functions HIRE; see the handbook.",
            "CO2 of fuel: GENSET.CO2, burning only. CO2 of the grid: GENSET.GRIDCO2, the mean of a"
                + " country and a year. Making the kit, and bringing it, are in neither."));
  }

  @Override
  public void fill(ExampleLoader filling) {
    filling
        .fields("budget-job")
        .rows(terms.job.days, "days")
        .rows(mix.needs, "budget-mix-needs")
        .rows(mix.packs, "budget-mix-packs")
        .rows(cash.deposits, "budget-deposits")
        .rows(plan.table, "budget-plan")
        .rows(lines.table, "budget-lines")
        .rows(ways.table, "budget-options")
        .rows(ways.owning, "budget-owning")
        .rows(whatIf.table, "budget-what-if");
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – power budget";
  }
}
