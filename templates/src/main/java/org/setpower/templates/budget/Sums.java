package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What the lines come to. */
final class Sums {
  private static final int GROUPS = 12;

  final Field net;
  final Field tax;
  final Field lines;
  final Field contingency;
  final Field total;
  final Field ordered;
  final Field paid;
  final Field toCome;
  final Field over;
  final Field left;
  final Field addsUp;

  final Column account = Column.result("Account").mayBeBlank().wide(60);
  final Column accountCost;
  final Column accountOrdered;
  final Column accountOver;
  final Table byAccount;
  final Column department = Column.result("Department").mayBeBlank().wide(60);
  final Column departmentCost;
  final Column departmentOrdered;
  final Column departmentOver;
  final Table byDepartment;

  private final Terms terms;

  Sums(Terms terms, CostLines rows) {
    this.terms = terms;
    net = money("Net", sum(rows.net));
    tax = money("Tax", sum(rows.tax));
    lines = money("All lines", sum(rows.cost)).help("With tax where tax is a cost.");
    contingency =
        money(
            "Contingency kept",
            calc("IF({}=\"\";NA();{})", lines, terms.fee(lines, or(terms.contingency, 0))));
    total = money("Budget", terms.rounded(calc("{}+{}", lines, contingency)));
    ordered = money("Ordered so far", any(rows.ordered));
    paid = money("Paid so far", any(rows.paid));
    toCome = money("Still to come", sum(rows.toCome));
    over = money("Over or under", any(rows.over));
    left =
        money("Contingency left", terms.rounded(calc("{}-{}", contingency, over)))
            .help("Kept, less what is ordered over its lines.");

    accountCost = terms.money("Planned", null).mayBeBlank().wide(46);
    accountOrdered = terms.money("Ordered", null).mayBeBlank().wide(36);
    accountOver = terms.money("Over or under", null).mayBeBlank().wide(36);
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
    departmentCost = terms.money("Planned", null).mayBeBlank().wide(46);
    departmentOrdered = terms.money("Ordered", null).mayBeBlank().wide(36);
    departmentOver = terms.money("Over or under", null).mayBeBlank().wide(36);
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
        Field.result(
                "Adds up",
                calc(
                    "IF(AND(ABS(SUM({})-{})<0.005;ABS(SUM({})-{})<0.005);\"yes\";\"no\")",
                    accountCost.all(),
                    lines,
                    departmentCost.all(),
                    lines))
            .help("Accounts and departments both come to all lines.");
  }

  private static Table group(
      String title,
      Column name,
      Column cost,
      Column ordered,
      Column over,
      Column first,
      Column of,
      CostLines rows) {
    Column number = Column.working("No.");
    number.by(number.rowNumber());
    name.by(calc("INDEX({};MATCH({};{};0))", of.all(), number, first.all()));
    cost.by(calc("SUMIFS({};{};{})", rows.cost.all(), of.all(), name));
    ordered.by(calc("SUMIFS({};{};{})", rows.ordered.all(), of.all(), name));
    over.by(calc("SUMIFS({};{};{})", rows.over.all(), of.all(), name));
    return Table.of(title, GROUPS).columns(name, cost, ordered, over, number);
  }

  private Field money(String heading, Formula formula) {
    return Field.result(heading, formula).unit(terms.currency).as(Format.MONEY);
  }

  /** A sum; nothing when there is nothing to add. */
  private Formula sum(Column column) {
    return terms.rounded(calc("IF(COUNT({})=0;NA();SUM({}))", column.all(), column.all()));
  }

  private Formula any(Column column) {
    return terms.rounded(calc("SUM({})", column.all()));
  }

  Tab tab() {
    return Tab.of("Totals", "What the lines come to; nothing to fill here.")
        .portrait()
        .with(
            Fields.of(
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
