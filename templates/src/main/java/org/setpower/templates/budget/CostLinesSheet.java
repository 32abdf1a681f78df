package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** What is paid for, line by line. */
final class CostLinesSheet {
  private static final String NONE = "other";
  private static final Formula NONE_YET = calc("NA()");

  final ColumnSpec account =
      ColumnSpec.input("Account").width(28).help("Of your chart of accounts.");
  final ColumnSpec department =
      ColumnSpec.input("Department")
          .width(26)
          .help("Who answers for it: electric, camera, production.");
  final ColumnSpec what =
      ColumnSpec.input("What").required().width(48).help("As it will stand on the bill.");
  final ColumnSpec fromWhom =
      ColumnSpec.input("From whom").width(32).help("Supplier, or who is asked.");
  final ColumnSpec kind =
      ColumnSpec.input("Kind")
          .options(
              "hire",
              "sub-hire",
              "bought",
              "fuel",
              "transport",
              "crew",
              "connection",
              "insurance",
              "loss")
          .required()
          .width(22)
          .help("What sort of cost it is.");
  final ColumnSpec quantity =
      ColumnSpec.input("How many")
          .unit("units")
          .number(CellFormat.TWO, 0, 1_000_000)
          .width(18)
          .help("Pieces, litres, kWh, km, hours. Blank: what the plan says.");
  final ColumnSpec planned =
      ColumnSpec.input("Count from the plan")
          .width(36)
          .help("A row of From the plan, if it counts.");
  final ColumnSpec by =
      ColumnSpec.input("Charged by")
          .options("day", "week", "litre", "kWh", "km", "hour", "once")
          .width(18)
          .help("What the price is for.");
  final ColumnSpec times =
      ColumnSpec.input("For how long")
          .unit("times")
          .number(CellFormat.ONE, 0, 3660)
          .width(18)
          .help("Days or weeks charged. Blank: once.");
  final ColumnSpec least =
      ColumnSpec.input("Least charged")
          .unit("times")
          .number(CellFormat.ONE, 0, 3660)
          .width(18)
          .help("Fewest days or weeks charged. Blank: none.");
  final ColumnSpec hoursADay =
      ColumnSpec.input("Hours a day")
          .unit("h")
          .number(CellFormat.TWO, 0.1, 24)
          .width(18)
          .help("Crew by the hour, for overtime: hours of one day. Blank: as From the plan says.");
  final ColumnSpec currency =
      ColumnSpec.input("Currency").width(22).help("Of the price, if another; rates are on Job.");
  final ColumnSpec price;
  final ColumnSpec discount =
      ColumnSpec.input("Discount")
          .share()
          .width(18)
          .help("All together, off this line. 10% or 0.1. Blank: none.");
  final ColumnSpec ownTax =
      ColumnSpec.input("Own tax").share().width(16).help("Only where it differs from Job.");
  final ColumnSpec due =
      ColumnSpec.input("Due")
          .options("with order", "on delivery", "each week", "on return", "days after")
          .width(24)
          .help("When it is paid. Blank: on delivery.");
  final ColumnSpec ordered;
  final ColumnSpec paid;
  final ColumnSpec struck =
      ColumnSpec.input("Struck")
          .options("yes")
          .width(15)
          .help("yes: looked at and not needed; it costs nothing.");

  final ColumnSpec count =
      ColumnSpec.result("Qty used").unit("units").format(CellFormat.TWO).mayBeBlank().width(18);
  final ColumnSpec charged = ColumnSpec.working("Times charged").format(CellFormat.ONE);
  final ColumnSpec overtime;
  final ColumnSpec net;
  final ColumnSpec tax;
  final ColumnSpec total;
  final ColumnSpec cost;
  final ColumnSpec paidIn = ColumnSpec.working("Paid in the week from").format(CellFormat.DATE);
  final ColumnSpec toCome;
  final ColumnSpec over;

  final ColumnSpec heading = ColumnSpec.working("Account heading");
  final ColumnSpec newHeading = ColumnSpec.working("New account");
  final ColumnSpec section = ColumnSpec.working("Department heading");
  final ColumnSpec newSection = ColumnSpec.working("New department");
  final TableSpec table = TableSpec.of("Lines", 100);

  CostLinesSheet(BudgetTerms terms, PlanFiguresSheet plan) {
    planned.options(plan.what);
    currency.options(terms.other);
    price =
        terms
            .moneyInput("Price each")
            .unit(calc("IF(COUNT({})=0;{};\"its currency\")", terms.rate.all(), terms.currency))
            .help("Offer or price list, without tax.");
    ordered = terms.moneyInput("Ordered").help("As ordered, without tax. Blank: not yet.");
    paid = terms.moneyInput("Paid").help("So far, without tax. Deposits are not a cost.");

    count.formula(
        calc(
            "IF({}=\"\";\"\";IF({}<>\"\";{};IF({}=\"\";\"\";{})))",
            what,
            or(quantity, ""),
            or(quantity, ""),
            or(planned, ""),
            plan.all.lookup(plan.what, or(planned, ""))));
    charged.formula(calc("IF({}=\"\";\"\";MAX({};{}))", what, or(times, 1), or(least, 0)));
    overtime = overtime(terms, plan);
    net =
        terms.money(
            "Net",
            calc(
                "IF({}=\"yes\";0;{}+{})",
                or(struck, ""),
                terms.inOwn(
                    call(
                        HireFunctions.FEE,
                        price,
                        count,
                        charged,
                        optional(discount),
                        or(currency, terms.currency)),
                    currency),
                or(overtime, 0)));
    tax =
        terms
            .money("Tax on it", calc("{}+0*LEN({})", terms.fee(net, or(ownTax, terms.tax)), net))
            .mayBeBlank();
    total = terms.money("With tax", calc("{}+{}", net, tax)).mayBeBlank();
    cost =
        ColumnSpec.working("Cost", calc("IF({}=\"a cost\";{};{})", terms.taxIs, total, net))
            .format(CellFormat.MONEY);
    toCome =
        terms
            .money("Still to come", terms.rounded(calc("{}-{}", or(ordered, net), or(paid, 0))))
            .mayBeBlank();
    over = terms.money("Over or under", terms.rounded(calc("{}-{}", ordered, net))).mayBeBlank();

    paidIn.formula(
        calc(
            "IF({}=\"each week\";\"\";{}+0*{})",
            or(due, ""),
            BudgetTerms.weekOf(paidOn(terms)),
            cost));
    heading.formula(calc("IF({}=\"\";\"\";{})", what, or(account, NONE)));
    newHeading.formula(first(heading, newHeading));
    section.formula(calc("IF({}=\"\";\"\";{})", what, or(department, NONE)));
    newSection.formula(first(section, newSection));

    table
        .columns(
            account,
            department,
            what,
            fromWhom,
            kind,
            quantity,
            price,
            by,
            times,
            planned,
            least,
            hoursADay,
            currency,
            discount,
            ownTax,
            due,
            ordered,
            paid,
            struck,
            count,
            overtime,
            net,
            tax,
            total,
            toCome,
            over,
            charged,
            cost,
            paidIn,
            heading,
            newHeading,
            section,
            newSection)
        .rowLabel(what)
        .checks(
            ValidationRule.wrong(
                calc("AND({}<>\"\";{}=\"yes\")", or(ordered, ""), or(struck, "")),
                Formula.of("Struck, but ordered: take one of the two out.")),
            ValidationRule.wrong(
                terms.noRate(currency),
                say("{}: fill in what one of it costs, under Exchange rates on Job.", currency)),
            ValidationRule.wrong(
                calc(
                    "AND(OR({}=\"each week\";{}=\"on return\");{}<>\"\";{}<>\"\";{}<{})",
                    or(due, ""),
                    or(due, ""),
                    or(terms.back, ""),
                    or(terms.delivered, ""),
                    or(terms.back, 0),
                    or(terms.delivered, 0)),
                Formula.of("Back on is before Delivered on: correct the dates on Job.")),
            ValidationRule.check(
                calc("AND({}<>\"yes\";{}=\"\")", or(struck, ""), or(price, "")),
                Formula.of("No price: enter one, or yes under Struck.")),
            ValidationRule.check(
                calc("AND({}<>\"yes\";{}=\"\")", or(struck, ""), or(count, "")),
                Formula.of("Fill in how many, or pick a count from the plan.")),
            ValidationRule.check(
                calc("{}>0", over), say("Committed {} vs budget {}: {} over.", ordered, net, over)),
            ValidationRule.check(
                calc("{}<0", toCome), say("Paid {}: more than was ordered or planned.", paid)),
            ValidationRule.check(
                calc(
                    "AND({}<>\"yes\";{}<>\"\";OR(AND({}<>\"each week\";{}=\"\");"
                        + "AND({}=\"each week\";OR({}=\"\";{}=\"\"))))",
                    or(struck, ""),
                    or(cost, ""),
                    due,
                    or(paidIn, ""),
                    due,
                    or(terms.delivered, ""),
                    or(terms.back, "")),
                say(
                    "Paid {}: fill in the dates on Job, When it is paid; it is not in Cash yet.",
                    due)),
            ValidationRule.check(
                calc(
                    "AND(OR({}=\"day\";{}=\"week\");{}=\"\";{}<>\"yes\")",
                    or(by, ""),
                    or(by, ""),
                    or(times, ""),
                    or(struck, "")),
                say("Charged by the {}: fill in for how long.", by)));
  }

  /** What overtime adds to a row of crew paid by the hour. */
  private ColumnSpec overtime(BudgetTerms terms, PlanFiguresSheet plan) {
    Formula row = or(planned, "");
    Formula day =
        or(
            hoursADay,
            calc(
                "IF(COUNTIFS({};{};{};\"hours\")=0;0;{})",
                plan.what.all(),
                row,
                plan.measure.all(),
                plan.daily.lookup(plan.what, row)));
    Formula added =
        call(
            HireFunctions.OVERTIME,
            price,
            calc("{}*{}", count, charged),
            day,
            or(terms.overtimeAfter, 24),
            or(terms.overtimeMore, 0),
            or(currency, terms.currency));
    return terms
        .money(
            "Overtime on it",
            calc(
                "IF(AND({}=\"crew\";{}=\"hour\";{}<>\"yes\";{}>{});{};\"\")",
                kind,
                or(by, ""),
                or(struck, ""),
                day,
                or(terms.overtimeAfter, 24),
                terms.inOwn(added, currency)))
        .mayBeBlank();
  }

  /** The day on which a row is paid; an error where its date on Job is blank. */
  private Formula paidOn(BudgetTerms terms) {
    return calc(
        "IF({}=\"with order\";{};IF({}=\"on return\";{};IF({}=\"days after\";{}+{};{})))",
        or(due, ""),
        or(terms.ordered, NONE_YET),
        or(due, ""),
        or(terms.back, NONE_YET),
        or(due, ""),
        or(terms.back, NONE_YET),
        or(terms.daysAfter, 0),
        or(terms.delivered, NONE_YET));
  }

  /** Numbers the first row of each value, from 1. */
  private static Formula first(ColumnSpec values, ColumnSpec number) {
    return calc("IF(COUNTIF({};{})=0;MAX(0;{})+1;\"\")", values.above(), values, number.above());
  }

  SheetSpec tab() {
    table.initialRows(CostLinesSheet.class, "/org/setpower/templates/budget/budget-lines.csv");
    return SheetSpec.of(
            "Lines",
            "One row per cost item. The pre-filled rows are often forgotten: enter a"
                + " price, or yes under Struck.")
        .with(table);
  }
}
