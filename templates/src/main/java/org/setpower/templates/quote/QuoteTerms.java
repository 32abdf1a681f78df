package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.shared.JobSheet;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldBlock;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;

/** What holds for the whole quote: client, dates, how days are counted, money. */
final class QuoteTerms {
  final JobSheet job = new JobSheet();

  final FieldSpec number =
      FieldSpec.input("Quote number").help("Your own number.").rangeName("Job_Quote_number");
  final FieldSpec client =
      FieldSpec.input("Client").help("The company that pays.").rangeName("Job_Client");
  final FieldSpec validUntil =
      FieldSpec.input("Valid until")
          .format(CellFormat.DATE)
          .help("The last day on which the client can accept.")
          .rangeName("Job_Valid_until");
  final FieldSpec handOver =
      FieldSpec.input("Hand-over")
          .options("client collects", "we deliver")
          .help("we deliver: add the way as a row of Quote that is sold.");
  final FieldSpec prices =
      FieldSpec.input("Prices shown")
          .options("each line", "each section")
          .is("each line")
          .help("What the client sees on Offer.");

  final FieldSpec sparePacks =
      FieldSpec.input("Spare packs")
          .share(0, 2)
          .help("What Packs in the order proposes on top of each kind. Blank: none.");

  final FieldSpec out =
      FieldSpec.input("Out")
          .format(CellFormat.DATE)
          .help("Dispatch date; counts as a hire day.")
          .rangeName("Job_Out");
  final FieldSpec back =
      FieldSpec.input("Back")
          .format(CellFormat.DATE)
          .help("Return date; counts as a hire day.")
          .rangeName("Job_Back");
  final FieldSpec firstUse =
      FieldSpec.input("First use")
          .format(CellFormat.DATE)
          .help("First working day. Blank: not compared.");
  final FieldSpec lastUse =
      FieldSpec.input("Last use")
          .format(CellFormat.DATE)
          .help("Last working day. Blank: not compared.");
  final FieldSpec counted =
      FieldSpec.input("Days counted")
          .options("by dates", "by kind of day")
          .is("by dates")
          .help("by dates: weeks are capped. by kind of day: the shares below the schedule.");
  final FieldSpec perWeek =
      FieldSpec.input("Days a week")
          .unit("days")
          .number(CellFormat.ONE, 0.5, 7)
          .is(3)
          .help("By dates: the most that is charged for seven days. 7: every day.")
          .rangeName("Job_Days_a_week");
  final FieldSpec weekend =
      FieldSpec.input("Weekend")
          .options("two days", "one day", "Friday to Monday")
          .is("two days")
          .help("Friday to Monday: one day, and Friday's pick-up and Monday's return are free.");
  final FieldSpec least =
      FieldSpec.input("Least hire")
          .unit("days")
          .number(CellFormat.ONE, 0, 99)
          .is(1)
          .help("Fewest days charged; an item on Kit may have its own.");
  final FieldSpec agreed =
      FieldSpec.input("Days agreed")
          .unit("days")
          .number(CellFormat.ONE, 0, 3660)
          .help("Of rows without dates of their own. Blank: the rule counts.")
          .rangeName("Job_Days_agreed");

  final FieldSpec currency = JobSheet.currency();
  final FieldSpec discount =
      FieldSpec.input("Order discount")
          .share()
          .is(0)
          .help("Taken off all hired rows, after their own discount.")
          .rangeName("Job_Order_discount");
  final FieldSpec taxName =
      FieldSpec.input("Tax is called").says("VAT").help("What stands on your invoices.");
  final FieldSpec tax =
      FieldSpec.input("Tax")
          .share()
          .help("The usual rate; a row of Quote may have its own. None: 0%.")
          .rangeName("Job_Tax");
  final FieldSpec deposit =
      FieldSpec.input("Deposit")
          .share()
          .is(0)
          .help("Share of the total with tax, due before the kit goes out.")
          .rangeName("Job_Deposit");
  final FieldSpec insured =
      FieldSpec.input("Client insured until")
          .format(CellFormat.DATE)
          .help("From the insurer's certificate. Blank: no certificate seen.");
  final FieldSpec waiver =
      FieldSpec.input("Damage waiver")
          .share()
          .help("Share of the hire, where the client has no insurance. Blank: none.");

  final FieldSpec late =
      FieldSpec.input("Late")
          .says("charged by the same rule")
          .help("What the client reads about kit that comes back late.");
  final FieldSpec loss =
      FieldSpec.input("Lost or damaged")
          .says("at replacement value")
          .help("What the client reads about kit that is lost or beyond repair.");
  final FieldSpec cancelled =
      FieldSpec.input("Cancelled")
          .says("as agreed in writing")
          .help("What the client reads about an order that is cancelled.");

  final ColumnSpec shareKind =
      ColumnSpec.input("Kind of day")
          .options("prep", "rig", "travel", "shoot", "night", "move", "hold", "wrap", "off")
          .width(52)
          .help("As in the schedule above.");
  final ColumnSpec share =
      ColumnSpec.input("Share charged").share().width(38).help("Of a day's rate. 50% or 0.5.");
  final TableSpec shares =
      TableSpec.of("Share charged by kind of day", 12)
          .columns(shareKind, share)
          .checks()
          .reasonWide(40);

  final FieldSpec calendar = shown("Calendar days", byDates(out, back, 7, 0));
  final FieldSpec byDates = shown("Charged by dates", byDates(out, back, perWeek, optional(least)));
  final FieldSpec byKind = shown("Charged by kind of day", byKind(out, back, optional(least)));
  final FieldSpec charged =
      shown("Charged", or(agreed, calc("IF({}=\"by dates\";{};{})", counted, byDates, byKind)));

  private static FieldSpec shown(String heading, Formula formula) {
    return FieldSpec.result(heading, formula).unit("days").format(CellFormat.ONE);
  }

  /** Charged days between two dates. */
  Formula byDates(Formula from, Formula to, Object daysAWeek, Object leastDays) {
    return call(
        HireFunctions.DAYS,
        from,
        to,
        daysAWeek,
        leastDays,
        daysAWeek == perWeek ? optional(weekend) : null);
  }

  /** Charged days of the schedule between two dates. */
  Formula byKind(Formula from, Formula to, Object leastDays) {
    return call(
        HireFunctions.KINDS,
        job.date.all(),
        job.kind.all(),
        calc("{}:{}", shareKind.all(), share.all()),
        from,
        to,
        leastDays);
  }

  /** Charged days of a hire with its own dates, by the rule of the quote. */
  Formula days(Formula from, Formula to, Formula leastDays) {
    return calc(
        "IF({}=\"by dates\";{};{})",
        counted,
        byDates(from, to, perWeek, leastDays),
        byKind(from, to, leastDays));
  }

  SheetSpec tab() {
    shares.initialRows(QuoteTerms.class, "/org/setpower/templates/quote/quote-shares.csv");
    return job.tab(
            "Rental quote",
            "What a hire costs, for the client and for the desk. Fill the yellow cells: dates and"
                + " tax here, then Quote; send Result and Offer.",
            FieldBlock.of("The quote", number, client, validUntil, handOver, prices, sparePacks),
            FieldBlock.of(
                "The hire", out, back, firstUse, lastUse, counted, perWeek, weekend, least, agreed),
            FieldBlock.of("What the days come to", calendar, byDates, byKind, charged),
            FieldBlock.of("Money", currency, discount, taxName, tax, deposit, insured, waiver),
            FieldBlock.of("Terms on the quote (put in your own)", late, loss, cancelled))
        .with(shares);
  }
}
