package org.setpower.templates.quote;

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

/** The rows of the quote. */
final class QuoteLinesSheet {
  static final int ROOM = 300;

  /** What stands for a section or department that nobody named. */
  static final String NONE = "other";

  private static final int NO_ROW = 9999;

  final ColumnSpec section =
      ColumnSpec.input("Section").width(42).help("Headings of the quote: camera, lights, packs.");
  final ColumnSpec item =
      ColumnSpec.input("Item")
          .orOther()
          .required()
          .width(52)
          .help("From Kit, or anything else you type.");
  final ColumnSpec quantity =
      ColumnSpec.input("Quantity")
          .number(CellFormat.COUNT, 0, 99_999)
          .required()
          .width(18)
          .help("Pieces; of a way in km, the kilometres.");
  final ColumnSpec out =
      ColumnSpec.input("Out").format(CellFormat.DATE).width(32).help("Blank: the date on Job.");
  final ColumnSpec back =
      ColumnSpec.input("Back").format(CellFormat.DATE).width(32).help("Blank: the date on Job.");
  final ColumnSpec kind =
      ColumnSpec.input("Hired or sold")
          .options("hired", "sold")
          .width(18)
          .help("sold: paid once, as tape, delivery, an operator. Blank: hired.");
  final ColumnSpec ownRate =
      ColumnSpec.input("Rate override")
          .number(CellFormat.MONEY, 0, 10_000_000)
          .width(20)
          .help("A day, of one piece; of what is sold, the price of one. Blank: as on Kit.");
  final ColumnSpec discount =
      ColumnSpec.input("Discount").share().width(18).help("Off this row. 10% or 0.1. Blank: none.");
  final ColumnSpec ownTax =
      ColumnSpec.input("Own tax").share().width(16).help("Only where it differs from Job.");
  final ColumnSpec subFrom =
      ColumnSpec.input("Sub-hired from").width(32).help("Never printed for the client.");
  final ColumnSpec subRate =
      ColumnSpec.input("Sub-hire rate")
          .number(CellFormat.MONEY, 0, 10_000_000)
          .width(20)
          .help("What one costs you a day. Never printed for the client.");
  final ColumnSpec insteadOf =
      ColumnSpec.input("Substitute for")
          .width(36)
          .help("What the client asked for, if this replaces it.");
  final ColumnSpec agreed =
      ColumnSpec.input("Days agreed")
          .number(CellFormat.ONE, 0, 3660)
          .unit("days")
          .width(18)
          .help("Blank: what is proposed beside this cell.");

  final ColumnSpec proposed =
      ColumnSpec.result("Days (by rule)").unit("days").format(CellFormat.ONE).width(20);
  final ColumnSpec days =
      ColumnSpec.result("Days charged").unit("days").format(CellFormat.ONE).width(18);
  final ColumnSpec rate = ColumnSpec.result("Rate").format(CellFormat.MONEY).width(20);
  final ColumnSpec amount = ColumnSpec.result("Amount").format(CellFormat.MONEY).width(24);
  final ColumnSpec department = ColumnSpec.result("Department").width(24);
  final ColumnSpec value =
      ColumnSpec.result("Value of all").format(CellFormat.MONEY).mayBeBlank().width(26);
  final ColumnSpec mass =
      ColumnSpec.result("Mass of all").format(CellFormat.ONE).mayBeBlank().width(18);
  final ColumnSpec onShelf =
      ColumnSpec.result("On the shelf").format(CellFormat.COUNT).mayBeBlank().width(16);
  final ColumnSpec shortBy =
      ColumnSpec.result("Short").format(CellFormat.COUNT).mayBeBlank().width(16);
  final ColumnSpec goesWith = ColumnSpec.result("Goes with").mayBeBlank().width(36);
  final ColumnSpec cost =
      ColumnSpec.result("Cost of sub-hire").format(CellFormat.MONEY).mayBeBlank().width(22);

  final ColumnSpec stockRow = ColumnSpec.working("Row of Kit");
  final ColumnSpec from = ColumnSpec.working("From").format(CellFormat.DATE);
  final ColumnSpec to = ColumnSpec.working("To").format(CellFormat.DATE);
  final ColumnSpec sort = ColumnSpec.working("Sort");
  final ColumnSpec least = ColumnSpec.working("Least hire");
  final ColumnSpec inUse = ColumnSpec.working("Out at once");
  final ColumnSpec tax = ColumnSpec.working("Tax").format(CellFormat.SHARE);
  final ColumnSpec orderDiscount = ColumnSpec.working("Order discount").format(CellFormat.SHARE);
  final ColumnSpec heading = ColumnSpec.working("Heading");
  final ColumnSpec newHeading = ColumnSpec.working("New heading");
  final ColumnSpec newDepartment = ColumnSpec.working("New department");
  final ColumnSpec worksTo = ColumnSpec.working("Works to").format(CellFormat.COUNT);
  final ColumnSpec lowest = ColumnSpec.working("Lowest output").format(CellFormat.COUNT);
  final ColumnSpec below = ColumnSpec.working("Items of less volts").format(CellFormat.COUNT);
  final ColumnSpec packNumber = ColumnSpec.working("Number among the packs");
  final ColumnSpec channels = ColumnSpec.working("Charger channels").format(CellFormat.COUNT);

  final TableSpec table = TableSpec.of("Quote", ROOM);

  QuoteLinesSheet(QuoteTerms hire, StockSheet stock) {
    item.options(stock.item);
    ownRate.unit(hire.currency);
    subRate.unit(hire.currency);
    rate.unit(hire.currency);
    amount.unit(hire.currency);
    value.unit(hire.currency);
    cost.unit(hire.currency);
    mass.unit(hire.job.masses());

    stockRow.formula(calc("MATCH({};{};0)", item, stock.item.all()));
    sort.formula(calc("IF({}=\"\";\"\";{})", item, or(kind, "hired")));
    from.formula(calc("IF({}=\"\";\"\";{})", item, or(out, hire.out)));
    to.formula(calc("IF({}=\"\";\"\";{})", item, or(back, hire.back)));
    least.formula(calc("MAX({};N({}))+0*LEN({})", or(hire.least, 0), of(stock.least), item));
    proposed.formula(
        calc(
            "IF({}=\"sold\";1;IF(AND({}=\"\";{}=\"\";{}<>\"\");{};{}))",
            sort,
            or(out, ""),
            or(back, ""),
            or(hire.agreed, ""),
            or(hire.agreed, ""),
            hire.days(from, to, least)));
    days.formula(
        calc(
            "IF({}=\"sold\";1;IF({}=\"\";{};{}))",
            sort,
            or(agreed, ""),
            or(proposed, ""),
            or(agreed, "")));
    rate.formula(
            calc(
                "IF({}<>\"\";{};IF({}=\"\";NA();{}))",
                or(ownRate, ""),
                or(ownRate, ""),
                of(stock.dayRate),
                of(stock.dayRate)))
        .errorMessage("No rate here and none on Kit: fill in Rate override.");
    amount.formula(
        call(HireFunctions.FEE, rate, quantity, days, optional(discount), hire.currency));
    department.formula(
        calc(
            "IF(OR({}=\"\";{}=\"\");\"" + NONE + "\";{})",
            item,
            of(stock.department),
            of(stock.department)));
    value.formula(
        calc(
            "IF(OR({}=\"sold\";{}=\"\");\"\";{})",
            sort,
            of(stock.value),
            call(HireFunctions.FEE, of(stock.value), quantity, 1, 0, hire.currency)));
    mass.formula(calc("IF({}=\"\";\"\";{}*{})", of(stock.mass), of(stock.mass), quantity));
    onShelf.formula(of(stock.pieces));
    inUse.formula(
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
    shortBy.formula(
        calc(
            "IF(OR({}=\"\";{}=\"sold\";{}<>\"\");\"\";MAX(0;{}-{}))",
            or(onShelf, ""),
            sort,
            or(subFrom, ""),
            inUse,
            or(onShelf, 0)));
    goesWith.formula(of(stock.goesWith));
    cost.formula(call(HireFunctions.FEE, subRate, quantity, days, null, hire.currency));
    tax.formula(calc("IF({}=\"\";\"\";{})", item, or(ownTax, hire.tax)));
    orderDiscount.formula(calc("IF({}=\"sold\";0;{})", sort, or(hire.discount, 0)));
    heading.formula(calc("IF({}=\"\";\"\";{})", item, or(section, NONE)));
    newHeading.formula(first(heading, newHeading));
    newDepartment.formula(first(department, newDepartment));
    worksTo.formula(of(stock.worksTo));
    lowest.formula(of(stock.lowest));
    below.formula(
        calc(
            "IF({}=\"\";0;COUNTIFS({};\">0\";{};\"<\"&{}))",
            or(lowest, ""),
            worksTo.all(),
            worksTo.all(),
            or(lowest, 0)));
    packNumber.formula(
        calc(
            "IF(OR({}=\"\";COUNTIF({};{})>0);\"\";MAX(0;{})+1)",
            of(stock.wattHours),
            item.above(),
            item,
            packNumber.above()));
    channels.formula(
        calc("IF({}=\"\";\"\";{}*{})", of(stock.channels), of(stock.channels), quantity));

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
        .rowLabel(item)
        .checks(checks(hire, stock));
  }

  /** A cell of the item's row of Kit; blank where there is none. */
  private Formula of(ColumnSpec column) {
    Formula cell = calc("INDEX({};{})", column.all(), or(stockRow, NO_ROW));
    return calc("IFERROR(IF({}=\"\";\"\";{});\"\")", cell, cell);
  }

  /** Numbers the first row of each value, from 1. */
  private static Formula first(ColumnSpec values, ColumnSpec number) {
    return calc("IF(COUNTIF({};{})=0;MAX(0;{})+1;\"\")", values.above(), values, number.above());
  }

  private ValidationRule[] checks(QuoteTerms hire, StockSheet stock) {
    return new ValidationRule[] {
      ValidationRule.wrong(
          calc("{}>{}", from, to), say("Back {} is before out {}: swap them.", to, from)),
      ValidationRule.check(
          calc("{}>0", shortBy),
          say(
              "{} short: {} on the shelf. Sub-hire, offer something else, or move a date.",
              shortBy,
              onShelf)),
      ValidationRule.check(
          calc("{}>{}", cost, amount), say("Sub-hire costs {}, the client pays {}.", cost, amount)),
      ValidationRule.check(
          calc("({}<>\"\")<>({}<>\"\")", or(subFrom, ""), or(subRate, "")),
          Formula.of("Fill in both whom it is sub-hired from and the rate, or neither.")),
      ValidationRule.check(
          calc(
              "AND(COUNTIF({};{})>0;COUNTIF({};{})=0)",
              stock.item.all(),
              goesWith,
              item.all(),
              goesWith),
          say("{} should go with it and is not on the quote.", goesWith)),
      ValidationRule.check(
          calc("{}>0", below),
          say(
              "Output {} V or more; {} items accept less (e.g. {}). Label the battery.",
              lowest,
              below,
              calc(
                  "INDEX({};MATCH(MINIFS({};{};\">0\");{};0))",
                  item.all(),
                  worksTo.all(),
                  worksTo.all(),
                  worksTo.all()))),
      ValidationRule.check(
          calc("AND({}=\"hired\";{}=\"\")", sort, or(value, "")),
          Formula.of("No replacement value on Kit: the insurer's list will lack it.")),
      ValidationRule.check(
          calc(
              "IF(OR({}=\"\";{}<>\"\");FALSE();{}>{})",
              or(hire.firstUse, ""),
              or(out, ""),
              from,
              or(hire.firstUse, 0)),
          say("Goes out {}, after the first use on Job: correct the dates there.", from)),
      ValidationRule.check(
          calc(
              "IF(OR({}=\"\";{}<>\"\");FALSE();{}<{})",
              or(hire.lastUse, ""),
              or(back, ""),
              to,
              or(hire.lastUse, 0)),
          say("Back {}, before the last use on Job: correct the dates there.", to)),
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Quote",
            "One row for each item. Fill item, section and quantity; dates, rates and days come"
                + " from Job and Kit until you type your own.")
        .with(table);
  }
}
