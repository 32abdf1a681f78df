package org.setpower.templates.budget;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What is paid for, line by line. */
final class CostLines {
  private static final String NONE = "other";
  private static final Formula NONE_YET = calc("NA()");

  final Column account = Column.input("Account").wide(28).help("Of your chart of accounts.");
  final Column department =
      Column.input("Department").wide(26).help("Who answers for it: electric, camera, production.");
  final Column what = Column.input("What").needed().wide(48).help("As it will stand on the bill.");
  final Column fromWhom = Column.input("From whom").wide(32).help("Supplier, or who is asked.");
  final Column kind =
      Column.input("Kind")
          .oneOf(
              "hire",
              "sub-hire",
              "bought",
              "fuel",
              "transport",
              "crew",
              "connection",
              "insurance",
              "loss")
          .needed()
          .wide(22)
          .help("What sort of cost it is.");
  final Column quantity =
      Column.input("How many")
          .unit("units")
          .number(Format.TWO, 0, 1_000_000)
          .wide(18)
          .help("Pieces, litres, kWh, km, hours. Blank: what the plan says.");
  final Column planned =
      Column.input("Count from the plan").wide(36).help("A row of From the plan, if it counts.");
  final Column by =
      Column.input("Charged by")
          .oneOf("day", "week", "litre", "kWh", "km", "hour", "once")
          .wide(18)
          .help("What the price is for.");
  final Column times =
      Column.input("For how long")
          .unit("times")
          .number(Format.ONE, 0, 3660)
          .wide(18)
          .help("Days or weeks charged. Blank: once.");
  final Column least =
      Column.input("Least charged")
          .unit("times")
          .number(Format.ONE, 0, 3660)
          .wide(18)
          .help("Fewest days or weeks charged. Blank: none.");
  final Column hoursADay =
      Column.input("Hours a day")
          .unit("h")
          .number(Format.TWO, 0.1, 24)
          .wide(18)
          .help("Crew by the hour, for overtime: hours of one day. Blank: as From the plan says.");
  final Column currency =
      Column.input("Currency").wide(22).help("Of the price, if another; rates are on Job.");
  final Column price;
  final Column discount =
      Column.input("Discount")
          .share()
          .wide(18)
          .help("All together, off this line. 10% or 0.1. Blank: none.");
  final Column ownTax =
      Column.input("Own tax").share().wide(16).help("Only where it differs from Job.");
  final Column due =
      Column.input("Due")
          .oneOf("with order", "on delivery", "each week", "on return", "days after")
          .wide(24)
          .help("When it is paid. Blank: on delivery.");
  final Column ordered;
  final Column paid;
  final Column struck =
      Column.input("Struck")
          .oneOf("yes")
          .wide(15)
          .help("yes: looked at and not needed; it costs nothing.");

  final Column count = Column.result("Counted").unit("units").as(Format.TWO).mayBeBlank().wide(18);
  final Column charged = Column.working("Times charged").as(Format.ONE);
  final Column overtime;
  final Column net;
  final Column tax;
  final Column total;
  final Column cost;
  final Column paidIn = Column.working("Paid in the week from").as(Format.DATE);
  final Column toCome;
  final Column over;

  final Column heading = Column.working("Account heading");
  final Column newHeading = Column.working("New account");
  final Column section = Column.working("Department heading");
  final Column newSection = Column.working("New department");
  final Table table = Table.of("Lines", 100);

  CostLines(Terms terms, PlanFigures plan) {
    planned.oneOf(plan.what);
    currency.oneOf(terms.other);
    price =
        terms
            .moneyInput("Price each")
            .unit(calc("IF(COUNT({})=0;{};\"its currency\")", terms.rate.all(), terms.currency))
            .help("Offer or price list, without tax.");
    ordered = terms.moneyInput("Ordered").help("As ordered, without tax. Blank: not yet.");
    paid = terms.moneyInput("Paid").help("So far, without tax. Deposits are not a cost.");

    count.by(
        calc(
            "IF({}=\"\";\"\";IF({}<>\"\";{};IF({}=\"\";\"\";{})))",
            what,
            or(quantity, ""),
            or(quantity, ""),
            or(planned, ""),
            plan.all.where(plan.what, or(planned, ""))));
    charged.by(calc("IF({}=\"\";\"\";MAX({};{}))", what, or(times, 1), or(least, 0)));
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
        Column.working("Cost", calc("IF({}=\"a cost\";{};{})", terms.taxIs, total, net))
            .as(Format.MONEY);
    toCome =
        terms
            .money("Still to come", terms.rounded(calc("{}-{}", or(ordered, net), or(paid, 0))))
            .mayBeBlank();
    over = terms.money("Over or under", terms.rounded(calc("{}-{}", ordered, net))).mayBeBlank();

    paidIn.by(
        calc("IF({}=\"each week\";\"\";{}+0*{})", or(due, ""), Terms.weekOf(paidOn(terms)), cost));
    heading.by(calc("IF({}=\"\";\"\";{})", what, or(account, NONE)));
    newHeading.by(first(heading, newHeading));
    section.by(calc("IF({}=\"\";\"\";{})", what, or(department, NONE)));
    newSection.by(first(section, newSection));

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
        .called(what)
        .checks(
            Check.wrong(
                calc("AND({}<>\"\";{}=\"yes\")", or(ordered, ""), or(struck, "")),
                Formula.of("Struck, but ordered: take one of the two out.")),
            Check.wrong(
                terms.noRate(currency),
                say("{}: fill in what one of it costs, under Exchange rates on Job.", currency)),
            Check.wrong(
                calc(
                    "AND(OR({}=\"each week\";{}=\"on return\");{}<>\"\";{}<>\"\";{}<{})",
                    or(due, ""),
                    or(due, ""),
                    or(terms.back, ""),
                    or(terms.delivered, ""),
                    or(terms.back, 0),
                    or(terms.delivered, 0)),
                Formula.of("Back on is before Delivered on: correct the dates on Job.")),
            Check.look(
                calc("AND({}<>\"yes\";{}=\"\")", or(struck, ""), or(price, "")),
                Formula.of("Not forgotten? Fill in a price, or put yes under Struck.")),
            Check.look(
                calc("AND({}<>\"yes\";{}=\"\")", or(struck, ""), or(count, "")),
                Formula.of("Fill in how many, or pick a count from the plan.")),
            Check.look(
                calc("{}>0", over), say("Ordered {}, planned {}: over by {}.", ordered, net, over)),
            Check.look(
                calc("{}<0", toCome), say("Paid {}: more than was ordered or planned.", paid)),
            Check.look(
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
            Check.look(
                calc(
                    "AND(OR({}=\"day\";{}=\"week\");{}=\"\";{}<>\"yes\")",
                    or(by, ""),
                    or(by, ""),
                    or(times, ""),
                    or(struck, "")),
                say("Charged by the {}: fill in for how long.", by)));
  }

  /** What overtime adds to a row of crew paid by the hour. */
  private Column overtime(Terms terms, PlanFigures plan) {
    Formula row = or(planned, "");
    Formula day =
        or(
            hoursADay,
            calc(
                "IF(COUNTIFS({};{};{};\"hours\")=0;0;{})",
                plan.what.all(),
                row,
                plan.measure.all(),
                plan.daily.where(plan.what, row)));
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
  private Formula paidOn(Terms terms) {
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
  private static Formula first(Column values, Column number) {
    return calc("IF(COUNTIF({};{})=0;MAX(0;{})+1;\"\")", values.above(), values, number.above());
  }

  Tab tab() {
    table.starts(CostLines.class, "/org/setpower/templates/budget/budget-lines.csv");
    return Tab.of(
            "Lines",
            "One row for each thing that is paid for. The rows that stand here are easily"
                + " forgotten: give them a price, or strike them.")
        .with(table);
  }
}
