package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.call;
import static org.setpower.templates.spec.Formula.optional;
import static org.setpower.templates.spec.Formula.or;

import org.setpower.registry.groups.HireFunctions;
import org.setpower.templates.shared.Job;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Field;
import org.setpower.templates.spec.Fields;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;

/** What holds for the whole quote: client, dates, how days are counted, money. */
final class Hire {
  final Job job = new Job();

  final Field number =
      Field.input("Quote number").help("Your own number.").named("Job_Quote_number");
  final Field client = Field.input("Client").help("The company that pays.").named("Job_Client");
  final Field validUntil =
      Field.input("Valid until")
          .as(Format.DATE)
          .help("The last day on which the client can accept.")
          .named("Job_Valid_until");
  final Field handOver =
      Field.input("Hand-over")
          .oneOf("client collects", "we deliver")
          .help("we deliver: add the way as a row of Quote that is sold.");
  final Field prices =
      Field.input("Prices shown")
          .oneOf("each line", "each section")
          .is("each line")
          .help("What the client sees on Offer.");

  final Field sparePacks =
      Field.input("Spare packs")
          .share(0, 2)
          .help("What Packs in the order proposes on top of each kind. Blank: none.");

  final Field out =
      Field.input("Out")
          .as(Format.DATE)
          .help("The day the kit leaves the shelf. It counts as a day of hire.")
          .named("Job_Out");
  final Field back =
      Field.input("Back")
          .as(Format.DATE)
          .help("The day it must be back. It counts too.")
          .named("Job_Back");
  final Field firstUse =
      Field.input("First use").as(Format.DATE).help("First working day. Blank: not compared.");
  final Field lastUse =
      Field.input("Last use").as(Format.DATE).help("Last working day. Blank: not compared.");
  final Field counted =
      Field.input("Days counted")
          .oneOf("by dates", "by kind of day")
          .is("by dates")
          .help("by dates: weeks are capped. by kind of day: the shares below the schedule.");
  final Field perWeek =
      Field.input("Days a week")
          .unit("days")
          .number(Format.ONE, 0.5, 7)
          .is(3)
          .help("By dates: the most that is charged for seven days. 7: every day.")
          .named("Job_Days_a_week");
  final Field weekend =
      Field.input("Weekend")
          .oneOf("two days", "one day", "Friday to Monday")
          .is("two days")
          .help("Friday to Monday: one day, and Friday's pick-up and Monday's return are free.");
  final Field least =
      Field.input("Least hire")
          .unit("days")
          .number(Format.ONE, 0, 99)
          .is(1)
          .help("Fewest days charged; an item on Kit may have its own.");
  final Field agreed =
      Field.input("Days agreed")
          .unit("days")
          .number(Format.ONE, 0, 3660)
          .help("Of rows without dates of their own. Blank: the rule counts.")
          .named("Job_Days_agreed");

  final Field currency = Job.currency();
  final Field discount =
      Field.input("Order discount")
          .share()
          .is(0)
          .help("Taken off all hired rows, after their own discount.")
          .named("Job_Order_discount");
  final Field taxName =
      Field.input("Tax is called").says("VAT").help("What stands on your invoices.");
  final Field tax =
      Field.input("Tax")
          .share()
          .help("The usual rate; a row of Quote may have its own. None: 0%.")
          .named("Job_Tax");
  final Field deposit =
      Field.input("Deposit")
          .share()
          .is(0)
          .help("Share of the total with tax, due before the kit goes out.")
          .named("Job_Deposit");
  final Field insured =
      Field.input("Client insured until")
          .as(Format.DATE)
          .help("From the insurer's certificate. Blank: no certificate seen.");
  final Field waiver =
      Field.input("Damage waiver")
          .share()
          .help("Share of the hire, where the client has no insurance. Blank: none.");

  final Field late =
      Field.input("Late")
          .says("charged by the same rule")
          .help("What the client reads about kit that comes back late.");
  final Field loss =
      Field.input("Lost or damaged")
          .says("at replacement value")
          .help("What the client reads about kit that is lost or beyond repair.");
  final Field cancelled =
      Field.input("Cancelled")
          .says("as agreed in writing")
          .help("What the client reads about an order that is called off.");

  final Column shareKind =
      Column.input("Kind of day")
          .oneOf("prep", "rig", "travel", "shoot", "night", "move", "hold", "wrap", "off")
          .wide(52)
          .help("As in the schedule above.");
  final Column share =
      Column.input("Share charged").share().wide(38).help("Of a day's rate. 50% or 0.5.");
  final Table shares =
      Table.of("Share charged by kind of day", 12)
          .columns(shareKind, share)
          .checks()
          .reasonWide(40);

  final Field calendar = shown("Calendar days", byDates(out, back, 7, 0));
  final Field byDates = shown("Charged by dates", byDates(out, back, perWeek, optional(least)));
  final Field byKind = shown("Charged by kind of day", byKind(out, back, optional(least)));
  final Field charged =
      shown("Charged", or(agreed, calc("IF({}=\"by dates\";{};{})", counted, byDates, byKind)));

  private static Field shown(String heading, Formula formula) {
    return Field.result(heading, formula).unit("days").as(Format.ONE);
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

  Tab tab() {
    shares.starts(Hire.class, "/org/setpower/templates/quote/quote-shares.csv");
    return job.tab(
            "Rental quote",
            "What a hire costs, for the client and for the desk. Fill the yellow cells: dates and"
                + " tax here, then Quote; send Result and Offer.",
            Fields.of("The quote", number, client, validUntil, handOver, prices, sparePacks),
            Fields.of(
                "The hire", out, back, firstUse, lastUse, counted, perWeek, weekend, least, agreed),
            Fields.of("What the days come to", calendar, byDates, byKind, charged),
            Fields.of("Money", currency, discount, taxName, tax, deposit, insured, waiver),
            Fields.of("Terms on the quote (put in your own)", late, loss, cancelled))
        .with(shares);
  }
}
