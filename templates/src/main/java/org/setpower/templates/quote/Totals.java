package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.Answers;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What the quote comes to. */
final class Totals {
  private static final int RATES = 6;
  private static final int GROUPS = 12;

  final Field lines;
  final Field discount;
  final Field net;
  final Field tax;
  final Field waiver;
  final Field total;
  final Field deposit;
  final Field value;
  final Field mass;
  final Field addsUp;
  final Field late;
  final Field loss;
  final Field finalAmount;
  final Field toPay;

  final Column rate = Column.result("Rate").as(Format.SHARE).wide(60);
  final Column base = Column.result("Base").as(Format.MONEY).wide(46);
  final Column ofRate = Column.result("Tax").as(Format.MONEY).wide(30);
  final Column gross = Column.result("With tax").as(Format.MONEY).wide(30);
  final Answers byRate;

  final Column section;
  final Column sectionAmount;
  final Table bySection;
  final Column departmentAmount;
  final Table byDepartment;

  private final Hire hire;

  Totals(Hire hire, Quote quote, Return picked) {
    this.hire = hire;
    byRate =
        Answers.of(
            "Tax by rate",
            RATES,
            call(
                HireFunctions.TAX,
                quote.amount.all(),
                quote.tax.all(),
                quote.orderDiscount.all(),
                hire.currency),
            rate,
            base.unit(hire.currency),
            ofRate.unit(hire.currency),
            gross.unit(hire.currency));
    lines = money("All rows", rounded(sum(quote.amount)));
    net = money("Net", rounded(sum(base)));
    discount = money("Order discount", rounded(calc("{}-{}", net, lines)));
    tax = money("Tax", rounded(sum(ofRate)));
    waiver =
        money(
            "Damage waiver with tax",
            calc(
                "IF({}=\"\";0;{})",
                or(hire.waiver, ""),
                call(
                    HireFunctions.TOTAL,
                    call(
                        HireFunctions.FEE,
                        calc("SUMIFS({};{};\"hired\")", quote.amount.all(), quote.sort.all()),
                        or(hire.waiver, 0),
                        1,
                        or(hire.discount, 0),
                        hire.currency),
                    hire.tax,
                    0,
                    hire.currency)));
    total = money("Total with tax", rounded(calc("{}+{}+{}", net, tax, waiver)));
    deposit =
        money("Deposit", call(HireFunctions.FEE, total, or(hire.deposit, 0), 1, 0, hire.currency));
    value = money("Value to insure", rounded(calc("IF({}=\"\";NA();{})", net, sum(quote.value))));
    mass = Field.result("Mass", sum(quote.mass)).unit(hire.job.masses()).as(Format.ONE);

    late =
        money(
            "Late fees with tax",
            calc(
                "IF(COUNT({})=0;0;{})",
                picked.lateFee.all(),
                call(
                    HireFunctions.TOTAL,
                    picked.lateFee.all(),
                    picked.lateTax.all(),
                    0,
                    hire.currency)));
    loss = money("Loss and damage", rounded(calc("SUM({})", picked.loss.all())));
    finalAmount = money("Final amount", rounded(calc("{}+{}+{}", total, late, loss)));
    toPay = money("Still to pay after the deposit", rounded(calc("{}-{}", finalAmount, deposit)));

    section = Column.result("Section").mayBeBlank().wide(60);
    sectionAmount =
        Column.result("Amount").unit(hire.currency).as(Format.MONEY).mayBeBlank().wide(46);
    bySection = group("By section", section, sectionAmount, quote.newHeading, quote.heading, quote);
    Column department = Column.result("Department").mayBeBlank().wide(60);
    departmentAmount =
        Column.result("Amount").unit(hire.currency).as(Format.MONEY).mayBeBlank().wide(46);
    byDepartment =
        group(
            "By department",
            department,
            departmentAmount,
            quote.newDepartment,
            quote.department,
            quote);
    addsUp =
        Field.result(
                "Adds up",
                calc(
                    "IF(AND(ABS(SUM({})-{})<0.005;ABS(SUM({})-{})<0.005);\"yes\";\"no\")",
                    sectionAmount.all(),
                    lines,
                    departmentAmount.all(),
                    lines))
            .help("Both lists come to all rows.");
  }

  private static Table group(
      String title, Column name, Column amount, Column first, Column of, Quote quote) {
    Column number = Column.working("No.");
    number.by(number.rowNumber());
    name.by(calc("INDEX({};MATCH({};{};0))", of.all(), number, first.all()));
    amount.by(calc("SUMIFS({};{};{})", quote.amount.all(), of.all(), name));
    return Table.of(title, GROUPS).columns(name, amount, number);
  }

  private Field money(String heading, Formula formula) {
    return Field.result(heading, formula).unit(hire.currency).as(Format.MONEY);
  }

  private Formula rounded(Formula amount) {
    return call(HireFunctions.ROUND, amount, hire.currency);
  }

  /** A sum; nothing when there is nothing to add. */
  private static Formula sum(Column column) {
    return calc("IF(COUNT({})=0;NA();SUM({}))", column.all(), column.all());
  }

  Tab tab() {
    return Tab.of("Totals", "What the quote comes to; nothing to fill here.")
        .portrait()
        .with(
            Fields.of(
                "The order",
                lines,
                discount,
                net,
                tax,
                waiver,
                total,
                deposit,
                value,
                mass,
                addsUp),
            Fields.of("After the return", late, loss, finalAmount, toPay),
            byRate)
        .newPage(bySection)
        .with(byDepartment);
  }
}
