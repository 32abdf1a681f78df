package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.ArrayResult;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;

/** What the quote comes to. */
final class QuoteTotals {
  private static final int RATES = 6;
  private static final int GROUPS = 12;

  final FieldSpec lines;
  final FieldSpec discount;
  final FieldSpec net;
  final FieldSpec tax;
  final FieldSpec waiver;
  final FieldSpec total;
  final FieldSpec deposit;
  final FieldSpec value;
  final FieldSpec mass;
  final FieldSpec addsUp;
  final FieldSpec late;
  final FieldSpec loss;
  final FieldSpec finalAmount;
  final FieldSpec toPay;

  final ColumnSpec rate = ColumnSpec.result("Rate").format(CellFormat.SHARE).width(60);
  final ColumnSpec base = ColumnSpec.result("Base").format(CellFormat.MONEY).width(46);
  final ColumnSpec ofRate = ColumnSpec.result("Tax").format(CellFormat.MONEY).width(30);
  final ColumnSpec gross = ColumnSpec.result("With tax").format(CellFormat.MONEY).width(30);
  final ArrayResult byRate;

  final ColumnSpec section;
  final ColumnSpec sectionAmount;
  final TableSpec bySection;
  final ColumnSpec departmentAmount;
  final TableSpec byDepartment;

  private final QuoteTerms hire;

  QuoteTotals(QuoteTerms hire, QuoteLinesSheet quote, ReturnSheet picked) {
    this.hire = hire;
    byRate =
        ArrayResult.of(
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
    mass = FieldSpec.result("Mass", sum(quote.mass)).unit(hire.job.masses()).format(CellFormat.ONE);

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

    section = ColumnSpec.result("Section").mayBeBlank().width(60);
    sectionAmount =
        ColumnSpec.result("Amount")
            .unit(hire.currency)
            .format(CellFormat.MONEY)
            .mayBeBlank()
            .width(46);
    bySection = group("By section", section, sectionAmount, quote.newHeading, quote.heading, quote);
    ColumnSpec department = ColumnSpec.result("Department").mayBeBlank().width(60);
    departmentAmount =
        ColumnSpec.result("Amount")
            .unit(hire.currency)
            .format(CellFormat.MONEY)
            .mayBeBlank()
            .width(46);
    byDepartment =
        group(
            "By department",
            department,
            departmentAmount,
            quote.newDepartment,
            quote.department,
            quote);
    addsUp =
        FieldSpec.result(
                "Totals match",
                calc(
                    "IF(AND(ABS(SUM({})-{})<0.005;ABS(SUM({})-{})<0.005);\"yes\";\"no\")",
                    sectionAmount.all(),
                    lines,
                    departmentAmount.all(),
                    lines))
            .help("Both lists come to all rows.");
  }

  private static TableSpec group(
      String title,
      ColumnSpec name,
      ColumnSpec amount,
      ColumnSpec first,
      ColumnSpec of,
      QuoteLinesSheet quote) {
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    name.formula(calc("INDEX({};MATCH({};{};0))", of.all(), number, first.all()));
    amount.formula(calc("SUMIFS({};{};{})", quote.amount.all(), of.all(), name));
    return TableSpec.of(title, GROUPS).columns(name, amount, number);
  }

  private FieldSpec money(String heading, Formula formula) {
    return FieldSpec.result(heading, formula).unit(hire.currency).format(CellFormat.MONEY);
  }

  private Formula rounded(Formula amount) {
    return call(HireFunctions.ROUND, amount, hire.currency);
  }

  /** A sum; nothing when there is nothing to add. */
  private static Formula sum(ColumnSpec column) {
    return calc("IF(COUNT({})=0;NA();SUM({}))", column.all(), column.all());
  }

  SheetSpec tab() {
    return SheetSpec.of("Totals", "What the quote comes to; nothing to fill here.")
        .portrait()
        .with(
            FieldBlock.of(
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
            FieldBlock.of("After the return", late, loss, finalAmount, toPay),
            byRate)
        .newPage(bySection)
        .with(byDepartment);
  }
}
