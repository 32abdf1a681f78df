package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** When the money goes out: the lines by week, and deposits, which come back. */
final class CashFlowSheet {
  private static final int WEEKS = 26;

  final ColumnSpec toWhom =
      ColumnSpec.input("Deposit to")
          .required()
          .width(60)
          .help("Who asks for it: rental desk, harbour.");
  final ColumnSpec deposit;
  final ColumnSpec outOn =
      ColumnSpec.input("Out on")
          .format(CellFormat.DATE)
          .width(36)
          .help("Blank: Ordered on, from Job.");
  final ColumnSpec backOn =
      ColumnSpec.input("Comes back on")
          .format(CellFormat.DATE)
          .width(36)
          .help("As agreed, after the return.");
  private final ColumnSpec outIn =
      ColumnSpec.working("Out in the week from").format(CellFormat.DATE);
  private final ColumnSpec backIn =
      ColumnSpec.working("Back in the week from").format(CellFormat.DATE);
  final TableSpec deposits = TableSpec.of("Deposits", 8);

  final FieldSpec planned;
  final FieldSpec addsUp;
  final FieldSpec most;
  final FieldSpec mostIn;
  private final FieldSpec first;
  private final FieldSpec last;
  private final FieldSpec spread;

  final ColumnSpec week =
      ColumnSpec.result("Week from").format(CellFormat.DATE).mayBeBlank().width(60);
  final ColumnSpec lines;
  final ColumnSpec tax;
  final ColumnSpec depositsOut;
  final ColumnSpec depositsBack;
  final ColumnSpec cash;
  final ColumnSpec soFar;
  final TableSpec weeks = TableSpec.of("Cash by week", WEEKS);

  private final ColumnSpec part = ColumnSpec.working("Part of weekly pay").format(CellFormat.COUNT);
  private final BudgetTerms terms;

  CashFlowSheet(BudgetTerms terms, CostLinesSheet rows, BudgetTotals sums) {
    this.terms = terms;
    deposit =
        terms
            .moneyInput("Amount")
            .required()
            .help("What is not given back later is a line of the kind loss.");
    outIn.formula(
        calc("{}+0*{}", BudgetTerms.weekOf(or(outOn, or(terms.ordered, calc("NA()")))), deposit));
    backIn.formula(calc("{}+0*{}", BudgetTerms.weekOf(backOn), deposit));
    deposits
        .columns(toWhom, deposit, outOn, backOn, outIn, backIn)
        .checks(
            ValidationRule.wrong(
                calc("{}<{}", backOn, or(outOn, or(terms.ordered, 0))),
                Formula.of("It comes back before it goes out: correct the dates.")),
            ValidationRule.check(
                calc("AND({}<>\"\";{}=\"\")", deposit, or(outIn, "")),
                Formula.of("Fill in when it goes out; it is not in Cash by week yet.")),
            ValidationRule.check(
                calc("AND({}<>\"\";{}=\"\")", deposit, or(backOn, "")),
                Formula.of("Fill in when it comes back; until then it counts as out.")));

    Formula isWeekly =
        calc(
            "AND(COUNTIF({};\"each week\")>0;{}<>\"\";{}<>\"\")",
            rows.due.all(),
            or(terms.delivered, ""),
            or(terms.back, ""));
    first = end("First week", "MIN", isWeekly, terms.delivered, 1_000_000, rows);
    last = end("Last week", "MAX", isWeekly, terms.back, 0, rows);
    spread =
        FieldSpec.result(
                "Weeks with weekly pay",
                calc(
                    "IF({};({}-{})/7+1;NA())",
                    isWeekly,
                    BudgetTerms.weekOf(or(terms.back, 0)),
                    BudgetTerms.weekOf(or(terms.delivered, 0))))
            .format(CellFormat.COUNT)
            .help("From Delivered on to Back on, on Job: equal parts.");

    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    Formula monday = calc("{}+7*({}-1)", first, number);
    week.formula(calc("IF({}>{};\"\";{})", monday, last, monday));
    Formula start = BudgetTerms.weekOf(or(terms.delivered, 0));
    part.formula(
        calc(
            "IF(AND({};{}>={};{}<={});({}-{})/7+1;0)",
            isWeekly,
            week,
            start,
            week,
            BudgetTerms.weekOf(or(terms.back, 0)),
            week,
            start));
    lines = money("Lines", inWeek(rows.cost, rows));
    tax =
        money(
            "Tax to reclaim", calc("IF({}=\"a cost\";0;{})", terms.taxIs, inWeek(rows.tax, rows)));
    depositsOut = money("Deposits out", inWeek(deposit, outIn));
    depositsBack = money("Deposits back", inWeek(deposit, backIn));
    cash =
        money(
            "Cash out", terms.rounded(calc("{}+{}+{}-{}", lines, tax, depositsOut, depositsBack)));
    soFar = money("Cumulative", null);
    soFar.formula(terms.rounded(calc("SUM({};{})", cash.above(), cash)));
    weeks.columns(week, lines.width(46), tax, depositsOut, depositsBack, cash, soFar, number, part);

    planned =
        field("All weeks", calc("SUM({})", lines.all()))
            .help("Their lines, with tax to reclaim and deposits.");
    addsUp =
        FieldSpec.result(
                "Weeks add up",
                calc("IF(ABS({}-{})<0.005;\"yes\";\"no\")", or(planned, 0), sums.lines))
            .help("All weeks come to all lines. no: a date is missing, or weeks have no room.");
    most =
        field("Most out at a time", calc("MAX({})", soFar.all()))
            .help("With tax and deposits: what has to be found.");
    mostIn = FieldSpec.result("In the week from", week.lookup(soFar, most)).format(CellFormat.DATE);
  }

  /** The first or the last week in which money moves. */
  private FieldSpec end(
      String heading,
      String which,
      Formula isWeekly,
      FieldSpec weekly,
      int none,
      CostLinesSheet rows) {
    return FieldSpec.result(
            heading,
            calc(
                "IF(AND(COUNT({};{};{})=0;NOT({}));NA();" + which + "({};{};{};IF({};{};{})))",
                rows.paidIn.all(),
                outIn.all(),
                backIn.all(),
                isWeekly,
                rows.paidIn.all(),
                outIn.all(),
                backIn.all(),
                isWeekly,
                BudgetTerms.weekOf(or(weekly, 0)),
                none))
        .format(CellFormat.DATE);
  }

  /** What of the lines falls due in the week of the row, with its part of weekly pay. */
  private Formula inWeek(ColumnSpec amounts, CostLinesSheet rows) {
    Formula instalment =
        call(
            HireFunctions.INSTALMENT,
            calc("SUMIFS({};{};\"each week\")", amounts.all(), rows.due.all()),
            or(part, 0),
            or(spread, 1),
            terms.currency);
    return terms.rounded(
        calc("{}+IF({}=0;0;{})", inWeek(amounts, rows.paidIn), or(part, 0), instalment));
  }

  private Formula inWeek(ColumnSpec amounts, ColumnSpec paidIn) {
    return calc("SUMIFS({};{};{})", amounts.all(), paidIn.all(), week);
  }

  private ColumnSpec money(String heading, Formula formula) {
    return terms.money(heading, formula).mayBeBlank().width(30);
  }

  /** An amount of all weeks; nothing while there is no week. */
  private FieldSpec field(String heading, Formula amount) {
    return FieldSpec.result(
            heading, terms.rounded(calc("IF(COUNT({})=0;NA();{})", lines.all(), amount)))
        .unit(terms.currency)
        .format(CellFormat.MONEY);
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Cash", "Cash flow by week. Enter deposits; the rest is taken from Lines and Job.")
        .with(
            deposits,
            FieldBlock.of("In all", first, last, spread, planned, addsUp, most, mostIn),
            weeks);
  }
}
