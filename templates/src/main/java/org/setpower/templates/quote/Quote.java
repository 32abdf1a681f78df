package org.setpower.templates.quote;

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

/** The rows of the quote. */
final class Quote {
  static final int ROOM = 300;

  /** What stands for a section or department that nobody named. */
  static final String NONE = "other";

  private static final int NO_ROW = 9999;

  final Column section =
      Column.input("Section").wide(42).help("Headings of the quote: camera, lights, packs.");
  final Column item =
      Column.input("Item").orOther().needed().wide(52).help("From Kit, or anything else you type.");
  final Column quantity =
      Column.input("Quantity")
          .number(Format.COUNT, 0, 99_999)
          .needed()
          .wide(18)
          .help("Pieces; of a way in km, the kilometres.");
  final Column out = Column.input("Out").as(Format.DATE).wide(32).help("Blank: the date on Job.");
  final Column back = Column.input("Back").as(Format.DATE).wide(32).help("Blank: the date on Job.");
  final Column kind =
      Column.input("Hired or sold")
          .oneOf("hired", "sold")
          .wide(18)
          .help("sold: paid once, as tape, delivery, an operator. Blank: hired.");
  final Column ownRate =
      Column.input("Own rate")
          .number(Format.MONEY, 0, 10_000_000)
          .wide(20)
          .help("A day, of one piece; of what is sold, the price of one. Blank: as on Kit.");
  final Column discount =
      Column.input("Discount").share().wide(18).help("Off this row. 10% or 0.1. Blank: none.");
  final Column ownTax =
      Column.input("Own tax").share().wide(16).help("Only where it differs from Job.");
  final Column subFrom =
      Column.input("Sub-hired from").wide(32).help("Never printed for the client.");
  final Column subRate =
      Column.input("Sub-hire rate")
          .number(Format.MONEY, 0, 10_000_000)
          .wide(20)
          .help("What one costs you a day. Never printed for the client.");
  final Column insteadOf =
      Column.input("Instead of").wide(36).help("What the client asked for, if this replaces it.");
  final Column agreed =
      Column.input("Days agreed")
          .number(Format.ONE, 0, 3660)
          .unit("days")
          .wide(18)
          .help("Blank: what is proposed beside this cell.");

  final Column proposed = Column.result("Days proposed").unit("days").as(Format.ONE).wide(20);
  final Column days = Column.result("Days charged").unit("days").as(Format.ONE).wide(18);
  final Column rate = Column.result("Rate").as(Format.MONEY).wide(20);
  final Column amount = Column.result("Amount").as(Format.MONEY).wide(24);
  final Column department = Column.result("Department").wide(24);
  final Column value = Column.result("Value of all").as(Format.MONEY).mayBeBlank().wide(26);
  final Column mass = Column.result("Mass of all").as(Format.ONE).mayBeBlank().wide(18);
  final Column onShelf = Column.result("On the shelf").as(Format.COUNT).mayBeBlank().wide(16);
  final Column shortBy = Column.result("Short").as(Format.COUNT).mayBeBlank().wide(16);
  final Column goesWith = Column.result("Goes with").mayBeBlank().wide(36);
  final Column cost = Column.result("Cost of sub-hire").as(Format.MONEY).mayBeBlank().wide(22);

  final Column stockRow = Column.working("Row of Kit");
  final Column from = Column.working("From").as(Format.DATE);
  final Column to = Column.working("To").as(Format.DATE);
  final Column sort = Column.working("Sort");
  final Column least = Column.working("Least hire");
  final Column inUse = Column.working("Out at once");
  final Column tax = Column.working("Tax").as(Format.SHARE);
  final Column orderDiscount = Column.working("Order discount").as(Format.SHARE);
  final Column heading = Column.working("Heading");
  final Column newHeading = Column.working("New heading");
  final Column newDepartment = Column.working("New department");
  final Column worksTo = Column.working("Works to").as(Format.COUNT);
  final Column lowest = Column.working("Lowest output").as(Format.COUNT);
  final Column below = Column.working("Items of less volts").as(Format.COUNT);
  final Column packNumber = Column.working("Number among the packs");
  final Column channels = Column.working("Charger channels").as(Format.COUNT);

  final Table table = Table.of("Quote", ROOM);

  Quote(Hire hire, Stock stock) {
    item.oneOf(stock.item);
    ownRate.unit(hire.currency);
    subRate.unit(hire.currency);
    rate.unit(hire.currency);
    amount.unit(hire.currency);
    value.unit(hire.currency);
    cost.unit(hire.currency);
    mass.unit(hire.job.masses());

    stockRow.by(calc("MATCH({};{};0)", item, stock.item.all()));
    sort.by(calc("IF({}=\"\";\"\";{})", item, or(kind, "hired")));
    from.by(calc("IF({}=\"\";\"\";{})", item, or(out, hire.out)));
    to.by(calc("IF({}=\"\";\"\";{})", item, or(back, hire.back)));
    least.by(calc("MAX({};N({}))+0*LEN({})", or(hire.least, 0), of(stock.least), item));
    proposed.by(
        calc(
            "IF({}=\"sold\";1;IF(AND({}=\"\";{}=\"\";{}<>\"\");{};{}))",
            sort,
            or(out, ""),
            or(back, ""),
            or(hire.agreed, ""),
            or(hire.agreed, ""),
            hire.days(from, to, least)));
    days.by(
        calc(
            "IF({}=\"sold\";1;IF({}=\"\";{};{}))",
            sort,
            or(agreed, ""),
            or(proposed, ""),
            or(agreed, "")));
    rate.by(
            calc(
                "IF({}<>\"\";{};IF({}=\"\";NA();{}))",
                or(ownRate, ""),
                or(ownRate, ""),
                of(stock.dayRate),
                of(stock.dayRate)))
        .failing("No rate here and none on Kit: fill in Own rate.");
    amount.by(call(HireFunctions.FEE, rate, quantity, days, optional(discount), hire.currency));
    department.by(
        calc(
            "IF(OR({}=\"\";{}=\"\");\"" + NONE + "\";{})",
            item,
            of(stock.department),
            of(stock.department)));
    value.by(
        calc(
            "IF(OR({}=\"sold\";{}=\"\");\"\";{})",
            sort,
            of(stock.value),
            call(HireFunctions.FEE, of(stock.value), quantity, 1, 0, hire.currency)));
    mass.by(calc("IF({}=\"\";\"\";{}*{})", of(stock.mass), of(stock.mass), quantity));
    onShelf.by(of(stock.pieces));
    inUse.by(
        calc(
            "SUMIFS({};{};{};{};\"hired\";{};\"<=\"&{};{};\">=\"&{};{};\"\")",
            quantity.all(),
            item.all(),
            item,
            sort.all(),
            from.all(),
            to,
            to.all(),
            from,
            subFrom.all()));
    shortBy.by(
        calc(
            "IF(OR({}=\"\";{}=\"sold\";{}<>\"\");\"\";MAX(0;{}-{}))",
            or(onShelf, ""),
            sort,
            or(subFrom, ""),
            inUse,
            or(onShelf, 0)));
    goesWith.by(of(stock.goesWith));
    cost.by(call(HireFunctions.FEE, subRate, quantity, days, null, hire.currency));
    tax.by(calc("IF({}=\"\";\"\";{})", item, or(ownTax, hire.tax)));
    orderDiscount.by(calc("IF({}=\"sold\";0;{})", sort, or(hire.discount, 0)));
    heading.by(calc("IF({}=\"\";\"\";{})", item, or(section, NONE)));
    newHeading.by(first(heading, newHeading));
    newDepartment.by(first(department, newDepartment));
    worksTo.by(of(stock.worksTo));
    lowest.by(of(stock.lowest));
    below.by(
        calc(
            "IF({}=\"\";0;COUNTIFS({};\">0\";{};\"<\"&{}))",
            or(lowest, ""),
            worksTo.all(),
            worksTo.all(),
            or(lowest, 0)));
    packNumber.by(
        calc(
            "IF(OR({}=\"\";COUNTIF({};{})>0);\"\";MAX(0;{})+1)",
            of(stock.wattHours),
            item.above(),
            item,
            packNumber.above()));
    channels.by(calc("IF({}=\"\";\"\";{}*{})", of(stock.channels), of(stock.channels), quantity));

    table
        .columns(
            item,
            section,
            quantity,
            out,
            back,
            kind,
            ownRate,
            discount,
            ownTax,
            subFrom,
            subRate,
            insteadOf,
            agreed,
            proposed,
            days,
            rate,
            amount,
            department,
            value,
            mass,
            onShelf,
            shortBy,
            goesWith,
            cost,
            stockRow,
            from,
            to,
            sort,
            least,
            inUse,
            tax,
            orderDiscount,
            heading,
            newHeading,
            newDepartment,
            worksTo,
            lowest,
            below,
            packNumber,
            channels)
        .called(item)
        .checks(checks(hire, stock));
  }

  /** A cell of the item's row of Kit; blank where there is none. */
  private Formula of(Column column) {
    Formula cell = calc("INDEX({};{})", column.all(), or(stockRow, NO_ROW));
    return calc("IFERROR(IF({}=\"\";\"\";{});\"\")", cell, cell);
  }

  /** Numbers the first row of each value, from 1. */
  private static Formula first(Column values, Column number) {
    return calc("IF(COUNTIF({};{})=0;MAX(0;{})+1;\"\")", values.above(), values, number.above());
  }

  private Check[] checks(Hire hire, Stock stock) {
    return new Check[] {
      Check.wrong(calc("{}>{}", from, to), say("Back {} is before out {}: swap them.", to, from)),
      Check.look(
          calc("{}>0", shortBy),
          say(
              "{} short: {} on the shelf. Sub-hire, offer something else, or move a date.",
              shortBy,
              onShelf)),
      Check.look(
          calc("{}>{}", cost, amount), say("Sub-hire costs {}, the client pays {}.", cost, amount)),
      Check.look(
          calc("({}<>\"\")<>({}<>\"\")", or(subFrom, ""), or(subRate, "")),
          Formula.of("Fill in both whom it is sub-hired from and the rate, or neither.")),
      Check.look(
          calc(
              "AND(COUNTIF({};{})>0;COUNTIF({};{})=0)",
              stock.item.all(),
              goesWith,
              item.all(),
              goesWith),
          say("{} should go with it and is not on the quote.", goesWith)),
      Check.look(
          calc("{}>0", below),
          say(
              "It gives no less than {} V, and {} rows here take less, such as {}: mark it, and"
                  + " keep it off them.",
              lowest,
              below,
              calc(
                  "INDEX({};MATCH(MINIFS({};{};\">0\");{};0))",
                  item.all(),
                  worksTo.all(),
                  worksTo.all(),
                  worksTo.all()))),
      Check.look(
          calc("AND({}=\"hired\";{}=\"\")", sort, or(value, "")),
          Formula.of("No replacement value on Kit: the insurer's list will lack it.")),
      Check.look(
          calc(
              "IF(OR({}=\"\";{}<>\"\");FALSE();{}>{})",
              or(hire.firstUse, ""),
              or(out, ""),
              from,
              or(hire.firstUse, 0)),
          say("Goes out {}, after the first use on Job: mend the dates there.", from)),
      Check.look(
          calc(
              "IF(OR({}=\"\";{}<>\"\");FALSE();{}<{})",
              or(hire.lastUse, ""),
              or(back, ""),
              to,
              or(hire.lastUse, 0)),
          say("Back {}, before the last use on Job: mend the dates there.", to)),
    };
  }

  Tab tab() {
    return Tab.of(
            "Quote",
            "One row for each item. Fill item, section and quantity; dates, rates and days come"
                + " from Job and Kit until you type your own.")
        .with(table);
  }
}
