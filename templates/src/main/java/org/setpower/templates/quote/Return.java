package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.spec.Check;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** The list of the warehouse: what is picked, and what came back. */
final class Return {
  final Column item =
      Column.input("Item").needed().wide(52).help("A row of Quote; split it where pieces differ.");
  final Column pieces =
      Column.input("Pieces").number(Format.COUNT, 0, 99_999).needed().wide(18).help("Going out.");
  final Column serials =
      Column.input("Serials").wide(45).help("On the pieces: P294-01 to -10. For the papers.");
  final Column packed =
      Column.input("Packed").oneOf("yes", "no").wide(18).help("yes when it lies in the case.");
  final Column carnet =
      Column.input("On the carnet")
          .oneOf("yes", "no")
          .wide(18)
          .help("yes for what leaves the customs area and comes back.");
  final Column offHire =
      Column.input("Off hire on")
          .as(Format.DATE)
          .wide(32)
          .help("The day the client gave it back by word, if we fetch it later.");
  final Column backOn =
      Column.input("Back on").as(Format.DATE).wide(32).help("The day it came in.");
  final Column back =
      Column.input("Back").number(Format.COUNT, 0, 99_999).wide(16).help("Pieces that came in.");
  final Column damaged =
      Column.input("Damaged")
          .number(Format.COUNT, 0, 99_999)
          .wide(18)
          .help("Of those back: beyond repair, charged at replacement value.");
  final Column missing =
      Column.input("Missing")
          .number(Format.COUNT, 0, 99_999)
          .wide(18)
          .help("Not back: charged at replacement value.");
  final Column reason = Column.input("Reason").wide(52).help("What happened, as told.");

  final Column ordered = Column.result("On the quote").as(Format.COUNT).mayBeBlank().wide(18);
  final Column lateDays =
      Column.result("Charged days late").unit("days").as(Format.ONE).mayBeBlank().wide(20);
  final Column lateFee = Column.result("Late fee").as(Format.MONEY).mayBeBlank().wide(22);
  final Column loss = Column.result("Loss and damage").as(Format.MONEY).mayBeBlank().wide(24);

  final Column value = Column.working("Value").as(Format.MONEY);
  final Column mass = Column.working("Mass").as(Format.ONE);
  final Column each = Column.working("Value of one").as(Format.MONEY);
  final Column from = Column.working("From").as(Format.DATE);
  final Column due = Column.working("Due").as(Format.DATE);
  final Column ended = Column.working("Ended").as(Format.DATE);
  final Column gone = Column.working("Damaged and missing").as(Format.COUNT);
  final Column lateTax = Column.working("Tax").as(Format.SHARE);
  final Column carnetNumber = Column.working("Number on the carnet");
  final Column origin = Column.working("Origin");

  final Table table = Table.of("Pick and return", Quote.ROOM);

  Return(Hire hire, Quote quote, Stock stock) {
    item.oneOf(quote.item);
    lateFee.unit(hire.currency);
    loss.unit(hire.currency);
    value.unit(hire.currency);
    each.unit(hire.currency);
    mass.unit(hire.job.masses());
    ordered.by(calc("SUMIFS({};{};{})", quote.quantity.all(), quote.item.all(), item));
    from.by(quote.from.where(quote.item, item));
    due.by(quote.to.where(quote.item, item));
    ended.by(
        calc(
            "IF({}<>\"\";{};IF({}=\"\";NA();{}))+0*LEN({})",
            or(offHire, ""),
            or(offHire, ""),
            or(backOn, ""),
            or(backOn, ""),
            item));
    lateDays.by(
        calc(
            "IF(OR({}<={};{}=\"sold\");0;{}-{})",
            ended,
            due,
            quote.sort.where(quote.item, item),
            hire.byDates(from, ended, hire.perWeek, or(hire.least, 0)),
            hire.byDates(from, due, hire.perWeek, or(hire.least, 0))));
    lateFee.by(
        call(
            HireFunctions.FEE,
            quote.rate.where(quote.item, item),
            or(back, pieces),
            lateDays,
            calc("N({})", quote.discount.where(quote.item, item)),
            hire.currency));
    each.by(blank(stock.value.where(stock.item, item)));
    gone.by(calc("{}+{}+0*LEN({})", or(damaged, 0), or(missing, 0), item));
    loss.by(
        calc("IF({}=0;\"\";{})", gone, call(HireFunctions.FEE, each, gone, 1, 0, hire.currency)));
    value.by(call(HireFunctions.FEE, each, pieces, 1, 0, hire.currency));
    mass.by(calc("{}*{}", blank(stock.mass.where(stock.item, item)), pieces));
    lateTax.by(calc("IF({}=\"\";\"\";{})", lateFee, quote.tax.where(quote.item, item)));
    carnetNumber.by(calc("IF({}=\"yes\";MAX(0;{})+1;\"\")", carnet, carnetNumber.above()));
    origin.by(blank(stock.origin.where(stock.item, item)));
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

  private Check[] checks() {
    Formula picked = calc("SUMIFS({};{};{})", pieces.all(), item.all(), item);
    return new Check[] {
      Check.stop(calc("{}<{}", ended, from), say("Back {}, before it went out {}.", ended, from)),
      Check.stop(
          calc("IF({}=\"\";FALSE();{}+{}<>{})", or(back, ""), or(back, 0), or(missing, 0), pieces),
          say(
              "{} went out, {} back and {} missing: count again.",
              pieces,
              or(back, 0),
              or(missing, 0))),
      Check.stop(
          calc("{}>{}", damaged, or(back, 0)),
          say("{} damaged, but only {} back: count again.", damaged, or(back, 0))),
      Check.stop(
          calc("AND({}>0;{}=\"\")", gone, or(each, "")),
          Formula.of("No replacement value on Kit: fill it in there, or this is charged nothing.")),
      Check.look(
          calc("{}<>{}", picked, ordered),
          say("{} on the quote, {} on this list.", ordered, picked)),
      Check.look(
          calc("AND({}>0;{}=\"\")", gone, or(reason, "")),
          Formula.of("Damaged or missing: write down the reason while people remember.")),
      Check.look(
          calc("{}>0", gone),
          say("{} damaged or missing: {} at replacement value. Tell the client.", gone, loss)),
      Check.look(
          calc("{}>0", lateDays),
          say("Late: back {}, due {}. Days to charge more: {}.", ended, due, lateDays)),
      Check.look(
          calc("{}=\"no\"", packed),
          Formula.of("Not packed: put it into its case, then type yes.")),
      Check.look(
          calc("AND({}=\"yes\";OR({}=\"\";{}=\"\"))", carnet, or(serials, ""), or(origin, "")),
          Formula.of("The carnet wants serials here and the origin on Kit."))
    };
  }

  Tab tab() {
    return Tab.of(
            "Return",
            "For the warehouse. Copy items and quantities from Quote, note serials when picking;"
                + " fill in the rest when they come back.")
        .titled("Pick and return")
        .with(table);
  }
}
