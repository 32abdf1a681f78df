package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What a change of plan costs, and what it leaves of the contingency. */
final class WhatIf {
  final Column change =
      Column.input("What if").needed().wide(58).help("A day over, a night more, a late return.");
  final Column more;
  final Column then;
  final Column left;
  final Table table = Table.of("What if", 12);

  WhatIf(Terms terms, CostLines lines, Sums sums) {
    Column hireDay = terms.moneyInput("Hire a day").help("Of what stays out longer, as paid.");
    Column days =
        Column.input("Days more")
            .unit("days")
            .number(Format.ONE, 0, 3660)
            .wide(18)
            .help("Charged.");
    Column litres = number("Fuel more", "litres", "At the price on Job.");
    Column dearer =
        Column.input("Fuel dearer")
            .share(0, 10)
            .wide(20)
            .help("On all lines of fuel. 15% or 0.15.");
    Column crew = number("Crew hours more", "h", "At the price on Job.");
    Column operator = number("Operator hours more", "h", "At the price on Job.");
    Column other = terms.moneyInput("Other").help("Anything else it costs.");
    more =
        terms.money(
            "More cost",
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
    then = terms.money("Lines then", terms.rounded(calc("{}+{}", sums.lines, more)));
    left = terms.money("Contingency left", terms.rounded(calc("{}-{}", sums.left, more)));
    table
        .columns(change, hireDay, days, litres, dearer, crew, operator, other, more, then, left)
        .checks(
            Check.look(
                calc("({}<>\"\")<>({}<>\"\")", or(hireDay, ""), or(days, "")),
                Formula.of("Fill in both hire a day and days more, or neither.")),
            terms.unpriced(litres, terms.fuelPrice),
            terms.unpriced(crew, terms.crewPrice),
            terms.unpriced(operator, terms.operatorPrice),
            Check.look(
                calc("{}<0", left),
                say(
                    "After this change the contingency is overspent by {}.",
                    calc("ROUND(-{};2)", left))));
  }

  private static Column number(String heading, String unit, String help) {
    return Column.input(heading).unit(unit).number(Format.TWO, 0, 1_000_000).wide(22).help(help);
  }

  Tab tab() {
    return Tab.of(
            "What if",
            "Each row is one change, beside the plan and alone: what it costs more, without tax,"
                + " and what is left.")
        .with(table);
  }
}
