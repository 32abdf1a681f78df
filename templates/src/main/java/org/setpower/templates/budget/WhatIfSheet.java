package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** What a change of plan costs, and what it leaves of the contingency. */
final class WhatIfSheet {
  final ColumnSpec change =
      ColumnSpec.input("What if")
          .required()
          .width(58)
          .help("A day over, a night more, a late return.");
  final ColumnSpec more;
  final ColumnSpec then;
  final ColumnSpec left;
  final TableSpec table = TableSpec.of("What if", 12);

  WhatIfSheet(BudgetTerms terms, CostLinesSheet lines, BudgetTotals sums) {
    ColumnSpec hireDay = terms.moneyInput("Hire a day").help("Of what stays out longer, as paid.");
    ColumnSpec days =
        ColumnSpec.input("Days more")
            .unit("days")
            .number(CellFormat.ONE, 0, 3660)
            .width(18)
            .help("Charged.");
    ColumnSpec litres = number("Fuel more", "litres", "At the price on Job.");
    ColumnSpec dearer =
        ColumnSpec.input("Fuel dearer")
            .share(0, 10)
            .width(20)
            .help("On all lines of fuel. 15% or 0.15.");
    ColumnSpec crew = number("Crew hours more", "h", "At the price on Job.");
    ColumnSpec operator = number("Operator hours more", "h", "At the price on Job.");
    ColumnSpec other = terms.moneyInput("Other").help("Anything else it costs.");
    more =
        terms.money(
            "Extra cost",
            terms.rounded(
                calc(
                    "{}+{}+{}+{}+{}+{}+0*LEN({})",
                    terms.fee(hireDay, days),
                    terms.fee(terms.fuelPrice, litres),
                    terms.fee(
                        calc("SUMIFS({};{};\"fuel\")", lines.net.all(), lines.kind.all()), dearer),
                    terms.fee(terms.crewPrice, crew),
                    terms.fee(terms.operatorPrice, operator),
                    or(other, 0),
                    change)));
    then = terms.money("Revised total", terms.rounded(calc("{}+{}", sums.lines, more)));
    left = terms.money("Contingency left", terms.rounded(calc("{}-{}", sums.left, more)));
    table
        .columns(change, hireDay, days, litres, dearer, crew, operator, other, more, then, left)
        .checks(
            ValidationRule.check(
                calc("({}<>\"\")<>({}<>\"\")", or(hireDay, ""), or(days, "")),
                Formula.of("Fill in both hire a day and days more, or neither.")),
            terms.unpriced(litres, terms.fuelPrice),
            terms.unpriced(crew, terms.crewPrice),
            terms.unpriced(operator, terms.operatorPrice),
            ValidationRule.check(
                calc("{}<0", left),
                say(
                    "After this change the contingency is overspent by {}.",
                    calc("ROUND(-{};2)", left))));
  }

  private static ColumnSpec number(String heading, String unit, String help) {
    return ColumnSpec.input(heading)
        .unit(unit)
        .number(CellFormat.TWO, 0, 1_000_000)
        .width(22)
        .help(help);
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "What if",
            "Each row is one change, beside the plan and alone: what it costs more, without tax,"
                + " and what is left.")
        .with(table);
  }
}
