package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** When the money goes out: the lines by week, and deposits, which come back. */
final class Cash {
  private static final int WEEKS = 26;

  final Column toWhom =
      Column.input("Deposit to").needed().wide(60).help("Who asks for it: rental desk, harbour.");
  final Column deposit;
  final Column outOn =
      Column.input("Out on").as(Format.DATE).wide(36).help("Blank: Ordered on, from Job.");
  final Column backOn =
      Column.input("Comes back on").as(Format.DATE).wide(36).help("As agreed, after the return.");
  private final Column outIn = Column.working("Out in the week from").as(Format.DATE);
  private final Column backIn = Column.working("Back in the week from").as(Format.DATE);
  final Table deposits = Table.of("Deposits", 8);

  final Field planned;
  final Field addsUp;
  final Field most;
  final Field mostIn;
  private final Field first;
  private final Field last;
  private final Field spread;

  final Column week = Column.result("Week from").as(Format.DATE).mayBeBlank().wide(60);
  final Column lines;
  final Column tax;
  final Column depositsOut;
  final Column depositsBack;
  final Column cash;
  final Column soFar;
  final Table weeks = Table.of("Cash by week", WEEKS);

  private final Column part = Column.working("Part of weekly pay").as(Format.COUNT);
  private final Terms terms;

  Cash(Terms terms, CostLines rows, Sums sums) {
    this.terms = terms;
    deposit =
        terms
            .moneyInput("Amount")
            .needed()
            .help("What is not given back later is a line of the kind loss.");
    outIn.by(calc("{}+0*{}", Terms.weekOf(or(outOn, or(terms.ordered, calc("NA()")))), deposit));
    backIn.by(calc("{}+0*{}", Terms.weekOf(backOn), deposit));
    deposits
        .columns(toWhom, deposit, outOn, backOn, outIn, backIn)
        .checks(
            Check.wrong(
                calc("{}<{}", backOn, or(outOn, or(terms.ordered, 0))),
                Formula.of("It comes back before it goes out: correct the dates.")),
            Check.look(
                calc("AND({}<>\"\";{}=\"\")", deposit, or(outIn, "")),
                Formula.of("Fill in when it goes out; it is not in Cash by week yet.")),
            Check.look(
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
        Field.result(
                "Weeks with weekly pay",
                calc(
                    "IF({};({}-{})/7+1;NA())",
                    isWeekly,
                    Terms.weekOf(or(terms.back, 0)),
                    Terms.weekOf(or(terms.delivered, 0))))
            .as(Format.COUNT)
            .help("From Delivered on to Back on, on Job: equal parts.");

    Column number = Column.working("No.");
    number.by(number.rowNumber());
    Formula monday = calc("{}+7*({}-1)", first, number);
    week.by(calc("IF({}>{};\"\";{})", monday, last, monday));
    Formula start = Terms.weekOf(or(terms.delivered, 0));
    part.by(
        calc(
            "IF(AND({};{}>={};{}<={});({}-{})/7+1;0)",
            isWeekly,
            week,
            start,
            week,
            Terms.weekOf(or(terms.back, 0)),
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
    soFar = money("Out so far", null);
    soFar.by(terms.rounded(calc("SUM({};{})", cash.above(), cash)));
    weeks.columns(week, lines.wide(46), tax, depositsOut, depositsBack, cash, soFar, number, part);

    planned =
        field("All weeks", calc("SUM({})", lines.all()))
            .help("Their lines; tax to reclaim and deposits stand beside them.");
    addsUp =
        Field.result(
                "Weeks add up",
                calc("IF(ABS({}-{})<0.005;\"yes\";\"no\")", or(planned, 0), sums.lines))
            .help("All weeks come to all lines. no: a date is missing, or weeks have no room.");
    most =
        field("Most out at a time", calc("MAX({})", soFar.all()))
            .help("With tax and deposits: what has to be found.");
    mostIn = Field.result("In the week from", week.where(soFar, most)).as(Format.DATE);
  }

  /** The first or the last week in which money moves. */
  private Field end(
      String heading, String which, Formula isWeekly, Field weekly, int none, CostLines rows) {
    return Field.result(
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
                Terms.weekOf(or(weekly, 0)),
                none))
        .as(Format.DATE);
  }

  /** What of the lines falls due in the week of the row, with its part of weekly pay. */
  private Formula inWeek(Column amounts, CostLines rows) {
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

  private Formula inWeek(Column amounts, Column paidIn) {
    return calc("SUMIFS({};{};{})", amounts.all(), paidIn.all(), week);
  }

  private Column money(String heading, Formula formula) {
    return terms.money(heading, formula).mayBeBlank().wide(30);
  }

  /** An amount of all weeks; nothing while there is no week. */
  private Field field(String heading, Formula amount) {
    return Field.result(
            heading, terms.rounded(calc("IF(COUNT({})=0;NA();{})", lines.all(), amount)))
        .unit(terms.currency)
        .as(Format.MONEY);
  }

  Tab tab() {
    return Tab.of(
            "Cash",
            "When the money is needed: deposits to fill, the weeks come by themselves from Due on"
                + " Lines and the dates on Job.")
        .with(
            deposits,
            Fields.of("In all", first, last, spread, planned, addsUp, most, mostIn),
            weeks);
  }
}
