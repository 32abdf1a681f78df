package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.ValidationRule;

/** The list of the warehouse: what is picked, and what came back. */
final class ReturnSheet {
  final ColumnSpec item =
      ColumnSpec.input("Item")
          .required()
          .width(52)
          .help("A row of Quote; split it where pieces differ.");
  final ColumnSpec pieces =
      ColumnSpec.input("Pieces")
          .number(CellFormat.COUNT, 0, 99_999)
          .required()
          .width(18)
          .help("Going out.");
  final ColumnSpec serials =
      ColumnSpec.input("Serials").width(45).help("On the pieces: P294-01 to -10. For the papers.");
  final ColumnSpec packed =
      ColumnSpec.input("Packed")
          .options("yes", "no")
          .width(18)
          .help("yes when it lies in the case.");
  final ColumnSpec carnet =
      ColumnSpec.input("On the carnet")
          .options("yes", "no")
          .width(18)
          .help("yes for what leaves the customs area and comes back.");
  final ColumnSpec offHire =
      ColumnSpec.input("Off hire on")
          .format(CellFormat.DATE)
          .width(32)
          .help("The day the client gave it back by word, if we fetch it later.");
  final ColumnSpec backOn =
      ColumnSpec.input("Back on").format(CellFormat.DATE).width(32).help("The day it came in.");
  final ColumnSpec back =
      ColumnSpec.input("Back")
          .number(CellFormat.COUNT, 0, 99_999)
          .width(16)
          .help("Pieces that came in.");
  final ColumnSpec damaged =
      ColumnSpec.input("Damaged")
          .number(CellFormat.COUNT, 0, 99_999)
          .width(18)
          .help("Of those back: beyond repair, charged at replacement value.");
  final ColumnSpec missing =
      ColumnSpec.input("Missing")
          .number(CellFormat.COUNT, 0, 99_999)
          .width(18)
          .help("Not back: charged at replacement value.");
  final ColumnSpec reason = ColumnSpec.input("Reason").width(52).help("What happened, as told.");

  final ColumnSpec ordered =
      ColumnSpec.result("On the quote").format(CellFormat.COUNT).mayBeBlank().width(18);
  final ColumnSpec lateDays =
      ColumnSpec.result("Charged days late")
          .unit("days")
          .format(CellFormat.ONE)
          .mayBeBlank()
          .width(20);
  final ColumnSpec lateFee =
      ColumnSpec.result("Late fee").format(CellFormat.MONEY).mayBeBlank().width(22);
  final ColumnSpec loss =
      ColumnSpec.result("Loss and damage").format(CellFormat.MONEY).mayBeBlank().width(24);

  final ColumnSpec value = ColumnSpec.working("Value").format(CellFormat.MONEY);
  final ColumnSpec mass = ColumnSpec.working("Mass").format(CellFormat.ONE);
  final ColumnSpec each = ColumnSpec.working("Unit value").format(CellFormat.MONEY);
  final ColumnSpec from = ColumnSpec.working("From").format(CellFormat.DATE);
  final ColumnSpec due = ColumnSpec.working("Due").format(CellFormat.DATE);
  final ColumnSpec ended = ColumnSpec.working("Ended").format(CellFormat.DATE);
  final ColumnSpec gone = ColumnSpec.working("Damaged and missing").format(CellFormat.COUNT);
  final ColumnSpec lateTax = ColumnSpec.working("Tax").format(CellFormat.SHARE);
  final ColumnSpec carnetNumber = ColumnSpec.working("Number on the carnet");
  final ColumnSpec origin = ColumnSpec.working("Origin");

  final TableSpec table = TableSpec.of("Pick and return", QuoteLinesSheet.ROOM);

  ReturnSheet(QuoteTerms hire, QuoteLinesSheet quote, StockSheet stock) {
    item.options(quote.item);
    lateFee.unit(hire.currency);
    loss.unit(hire.currency);
    value.unit(hire.currency);
    each.unit(hire.currency);
    mass.unit(hire.job.masses());
    ordered.formula(calc("SUMIFS({};{};{})", quote.quantity.all(), quote.item.all(), item));
    from.formula(quote.from.lookup(quote.item, item));
    due.formula(quote.to.lookup(quote.item, item));
    ended.formula(
        calc(
            "IF({}<>\"\";{};IF({}=\"\";NA();{}))+0*LEN({})",
            or(offHire, ""),
            or(offHire, ""),
            or(backOn, ""),
            or(backOn, ""),
            item));
    lateDays.formula(
        calc(
            "IF(OR({}<={};{}=\"sold\");0;{}-{})",
            ended,
            due,
            quote.sort.lookup(quote.item, item),
            hire.byDates(from, ended, hire.perWeek, or(hire.least, 0)),
            hire.byDates(from, due, hire.perWeek, or(hire.least, 0))));
    lateFee.formula(
        call(
            HireFunctions.FEE,
            quote.rate.lookup(quote.item, item),
            or(back, pieces),
            lateDays,
            calc("N({})", quote.discount.lookup(quote.item, item)),
            hire.currency));
    each.formula(blank(stock.value.lookup(stock.item, item)));
    gone.formula(calc("{}+{}+0*LEN({})", or(damaged, 0), or(missing, 0), item));
    loss.formula(
        calc("IF({}=0;\"\";{})", gone, call(HireFunctions.FEE, each, gone, 1, 0, hire.currency)));
    value.formula(call(HireFunctions.FEE, each, pieces, 1, 0, hire.currency));
    mass.formula(calc("{}*{}", blank(stock.mass.lookup(stock.item, item)), pieces));
    lateTax.formula(calc("IF({}=\"\";\"\";{})", lateFee, quote.tax.lookup(quote.item, item)));
    carnetNumber.formula(calc("IF({}=\"yes\";MAX(0;{})+1;\"\")", carnet, carnetNumber.above()));
    origin.formula(blank(stock.origin.lookup(stock.item, item)));
    table
        .columns(
            item,
            pieces,
            serials,
            packed,
            carnet,
            offHire,
            backOn,
            back,
            damaged,
            missing,
            reason,
            ordered,
            lateDays,
            lateFee,
            loss,
            value,
            mass,
            each,
            from,
            due,
            ended,
            gone,
            lateTax,
            carnetNumber,
            origin)
        .checks(checks());
  }

  private static Formula blank(Formula cell) {
    return calc("IF({}=\"\";\"\";{})", cell, cell);
  }

  private ValidationRule[] checks() {
    Formula picked = calc("SUMIFS({};{};{})", pieces.all(), item.all(), item);
    return new ValidationRule[] {
      ValidationRule.stop(
          calc("{}<{}", ended, from), say("Back {}, before it went out {}.", ended, from)),
      ValidationRule.stop(
          calc("IF({}=\"\";FALSE();{}+{}<>{})", or(back, ""), or(back, 0), or(missing, 0), pieces),
          say(
              "{} went out, {} back and {} missing: count again.",
              pieces,
              or(back, 0),
              or(missing, 0))),
      ValidationRule.stop(
          calc("{}>{}", damaged, or(back, 0)),
          say("{} damaged, but only {} back: count again.", damaged, or(back, 0))),
      ValidationRule.stop(
          calc("AND({}>0;{}=\"\")", gone, or(each, "")),
          Formula.of("No replacement value on Kit: fill it in there, or this is charged nothing.")),
      ValidationRule.check(
          calc("{}<>{}", picked, ordered),
          say("{} on the quote, {} on this list.", ordered, picked)),
      ValidationRule.check(
          calc("AND({}>0;{}=\"\")", gone, or(reason, "")),
          Formula.of("Damaged or missing: write down the reason while people remember.")),
      ValidationRule.check(
          calc("{}>0", gone),
          say("{} damaged or missing: {} at replacement value. Tell the client.", gone, loss)),
      ValidationRule.check(
          calc("{}>0", lateDays),
          say("Late: back {}, due {}. Extra days charged: {}.", ended, due, lateDays)),
      ValidationRule.check(
          calc("{}=\"no\"", packed),
          Formula.of("Not packed: put it into its case, then type yes.")),
      ValidationRule.check(
          calc("AND({}=\"yes\";OR({}=\"\";{}=\"\"))", carnet, or(serials, ""), or(origin, "")),
          Formula.of("The carnet wants serials here and the origin on Kit."))
    };
  }

  SheetSpec tab() {
    return SheetSpec.of(
            "Return",
            "For the warehouse. Copy items and quantities from Quote, note serials when picking;"
                + " fill in the rest when they come back.")
        .titled("Pick and return")
        .with(table);
  }
}
