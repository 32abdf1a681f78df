package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;

/** What the lines come to. */
final class BudgetTotals {
  private static final int GROUPS = 12;

  final FieldSpec net;
  final FieldSpec tax;
  final FieldSpec lines;
  final FieldSpec contingency;
  final FieldSpec total;
  final FieldSpec ordered;
  final FieldSpec paid;
  final FieldSpec toCome;
  final FieldSpec over;
  final FieldSpec left;
  final FieldSpec addsUp;

  final ColumnSpec account = ColumnSpec.result("Account").mayBeBlank().width(60);
  final ColumnSpec accountCost;
  final ColumnSpec accountOrdered;
  final ColumnSpec accountOver;
  final TableSpec byAccount;
  final ColumnSpec department = ColumnSpec.result("Department").mayBeBlank().width(60);
  final ColumnSpec departmentCost;
  final ColumnSpec departmentOrdered;
  final ColumnSpec departmentOver;
  final TableSpec byDepartment;

  private final BudgetTerms terms;

  BudgetTotals(BudgetTerms terms, CostLinesSheet rows) {
    this.terms = terms;
    net = money("Net", sum(rows.net));
    tax = money("Tax", sum(rows.tax));
    lines = money("All lines", sum(rows.cost)).help("With tax where tax is a cost.");
    contingency =
        money(
            "Contingency",
            calc("IF({}=\"\";NA();{})", lines, terms.fee(lines, or(terms.contingency, 0))));
    total = money("Budget", terms.rounded(calc("{}+{}", lines, contingency)));
    ordered = money("Ordered so far", any(rows.ordered));
    paid = money("Paid so far", any(rows.paid));
    toCome = money("Still to come", sum(rows.toCome));
    over = money("Over or under", any(rows.over));
    left =
        money("Contingency left", terms.rounded(calc("{}-{}", contingency, over)))
            .help("Kept, less what is ordered over its lines.");

    accountCost = terms.money("Planned", null).mayBeBlank().width(46);
    accountOrdered = terms.money("Ordered", null).mayBeBlank().width(36);
    accountOver = terms.money("Over or under", null).mayBeBlank().width(36);
    byAccount =
        group(
            "By account",
            account,
            accountCost,
            accountOrdered,
            accountOver,
            rows.newHeading,
            rows.heading,
            rows);
    departmentCost = terms.money("Planned", null).mayBeBlank().width(46);
    departmentOrdered = terms.money("Ordered", null).mayBeBlank().width(36);
    departmentOver = terms.money("Over or under", null).mayBeBlank().width(36);
    byDepartment =
        group(
            "By department",
            department,
            departmentCost,
            departmentOrdered,
            departmentOver,
            rows.newSection,
            rows.section,
            rows);
    addsUp =
        FieldSpec.result(
                "Totals match",
                calc(
                    "IF(AND(ABS(SUM({})-{})<0.005;ABS(SUM({})-{})<0.005);\"yes\";\"no\")",
                    accountCost.all(),
                    lines,
                    departmentCost.all(),
                    lines))
            .help("Accounts and departments both come to all lines.");
  }

  private static TableSpec group(
      String title,
      ColumnSpec name,
      ColumnSpec cost,
      ColumnSpec ordered,
      ColumnSpec over,
      ColumnSpec first,
      ColumnSpec of,
      CostLinesSheet rows) {
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    name.formula(calc("INDEX({};MATCH({};{};0))", of.all(), number, first.all()));
    cost.formula(calc("SUMIFS({};{};{})", rows.cost.all(), of.all(), name));
    ordered.formula(calc("SUMIFS({};{};{})", rows.ordered.all(), of.all(), name));
    over.formula(calc("SUMIFS({};{};{})", rows.over.all(), of.all(), name));
    return TableSpec.of(title, GROUPS).columns(name, cost, ordered, over, number);
  }

  private FieldSpec money(String heading, Formula formula) {
    return FieldSpec.result(heading, formula).unit(terms.currency).format(CellFormat.MONEY);
  }

  /** A sum; nothing when there is nothing to add. */
  private Formula sum(ColumnSpec column) {
    return terms.rounded(calc("IF(COUNT({})=0;NA();SUM({}))", column.all(), column.all()));
  }

  private Formula any(ColumnSpec column) {
    return terms.rounded(calc("SUM({})", column.all()));
  }

  SheetSpec tab() {
    return SheetSpec.of("Totals", "What the lines come to; nothing to fill here.")
        .portrait()
        .with(
            FieldBlock.of(
                "The budget",
                net,
                tax,
                lines,
                contingency,
                total,
                ordered,
                paid,
                toCome,
                over,
                left,
                addsUp),
            byAccount)
        .with(byDepartment);
  }
}
