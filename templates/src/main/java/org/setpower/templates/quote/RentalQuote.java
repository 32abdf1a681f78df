package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.example.Workbook;
import org.setpower.templates.spec.Column;
import org.setpower.templates.spec.Excerpt;
import org.setpower.templates.spec.Figure;
import org.setpower.templates.spec.Figures;
import org.setpower.templates.spec.Findings;
import org.setpower.templates.spec.Format;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.Lines;
import org.setpower.templates.spec.Tab;
import org.setpower.templates.spec.Table;
import org.setpower.templates.spec.Template;
import org.setpower.templates.uno.Filling;

/** Template 4: the quote of a rental desk. */
public final class RentalQuote implements Workbook {
  /** How many findings the desk sees at once. */
  private static final int FINDINGS = 9;

  private final Hire hire = new Hire();
  private final Stock stock = new Stock(hire);
  private final Quote quote = new Quote(hire, stock);
  private final Asked asked = new Asked(quote);
  private final OrderPacks packs = new OrderPacks(hire, quote, stock);
  private final Return picked = new Return(hire, quote, stock);
  private final Papers papers = new Papers(hire, picked);
  private final Totals totals = new Totals(hire, quote, picked);
  private final Offer offer = new Offer(hire, quote);
  private final Template template;
  private final Findings findings;

  /** Declares the quote. */
  public RentalQuote() {
    template =
        Template.of("rental-quote", "Rental quote", 1)
            .stamped(stamp())
            .with(
                hire.tab(),
                asked.tab(),
                quote.tab(),
                packs.tab(),
                totals.tab(),
                picked.tab(),
                papers.insurerTab(),
                papers.carnetTab());
    Tab drawer = stock.tab();
    findings = Findings.on(FINDINGS, template.tabs(drawer));
    template.with(desk(), result(), offer.tab(), drawer, notes());
  }

  @Override
  public Template template() {
    return template;
  }

  private Formula stamp() {
    return calc(
        "IF({}=\"\";\"\";\"Quote \"&{}&\"  ·  \")&{}", hire.number, hire.number, hire.job.stamp());
  }

  /** What the desk must know and the client must not. */
  private Tab desk() {
    return Tab.of(
            "Desk", "For the desk only: what needs a look before it goes out, and the margin.")
        .grid(12, 15)
        .portrait()
        .with(Figures.of("", 3, deskFigures()), findings.list())
        .newPage(Figures.of("After the return", 3, returnFigures()));
  }

  private Figure[] deskFigures() {
    Formula charged = calc("SUMIFS({};{};\">0\")", quote.amount.all(), quote.cost.all());
    Formula margin = calc("ROUND({}-SUM({});2)", charged, quote.cost.all());
    return new Figure[] {
      findings.stops(),
      findings.looks(),
      Figure.of(
          "Short on the shelf (rows)",
          Format.COUNT,
          calc("COUNTIF({};\">0\")", quote.shortBy.all()),
          "More out at once than Kit has."),
      Figure.of(
          "Calendar days (days)",
          Format.COUNT,
          Figure.shown(hire.calendar),
          "From out to back, both counted."),
      Figure.of(
          "Charged by dates (days)",
          Format.ONE,
          Figure.shown(hire.byDates),
          calc("\"at most \"&{}&\" of seven\"", hire.perWeek)),
      Figure.of(
          "Charged by kind of day (days)",
          Format.ONE,
          Figure.shown(hire.byKind),
          "A date with two rows counts once."),
      Figure.money(
          "Sub-hired, charged on (money)",
          hire.currency,
          calc("IF(SUM({})=0;0;{})", quote.cost.all(), charged),
          ""),
      Figure.money(
          "Sub-hire costs (money)",
          hire.currency,
          calc("SUM({})", quote.cost.all()),
          calc("\"rows: \"&COUNT({})", quote.cost.all())),
      Figure.money(
          "Margin on sub-hire (money)",
          hire.currency,
          margin,
          "Before order discount and tax. Never printed for the client."),
      Figure.of("Packs (pieces)", Format.COUNT, Figure.shown(packs.pieces), "In the order."),
      Figure.of(
          "Packs hold (Wh)",
          Format.WHOLE,
          Figure.shown(packs.energy),
          "By their labels, when new."),
      Figure.of(
          "Turns to charge all (turns)",
          Format.COUNT,
          Figure.shown(packs.turns),
          calc("\"on \"&{}&\" channels\"", packs.channels))
    };
  }

  private Figure[] returnFigures() {
    return new Figure[] {
      Figure.money(
          "Late fees with tax (money)",
          hire.currency,
          Figure.shown(totals.late),
          calc("\"rows late: \"&COUNTIF({};\">0\")", picked.lateDays.all())),
      Figure.money(
          "Loss and damage (money)",
          hire.currency,
          Figure.shown(totals.loss),
          "At replacement value, without tax."),
      Figure.money(
          "Final amount (money)",
          hire.currency,
          Figure.shown(totals.finalAmount),
          "With tax, late and loss."),
      Figure.money(
          "Still to pay (money)",
          hire.currency,
          Figure.shown(totals.toPay),
          "Final amount less the deposit."),
      Figure.of(
          "Pieces out (pieces)",
          Format.COUNT,
          calc("SUM({})", picked.pieces.all()),
          calc(
              "SUM({})&\" back, \"&SUM({})&\" missing, \"&SUM({})&\" damaged\"",
              picked.back.all(),
              picked.missing.all(),
              picked.damaged.all())),
      Figure.of(
          "On the carnet (pieces)",
          Format.COUNT,
          Figure.shown(papers.carnetPieces),
          calc("\"worth \"&TEXT({};\"#,##0\")&\" \"&{}", papers.carnetValue, hire.currency))
    };
  }

  private Tab result() {
    Excerpt sections =
        Excerpt.of(totals.bySection).column(totals.section, 120).column(totals.sectionAmount, 60);
    return Tab.result(
            "Our quote. Prices in the currency shown; what is offered stands on the next pages.")
        .titled("Quote")
        .with(
            Lines.notes(
                "For",
                calc(
                    "{}&IF({}=\"\";\"\";\", for \"\"\"&{}&\"\"\"\")",
                    or(hire.client, "–"),
                    hire.job.production,
                    hire.job.production),
                calc(
                    "IF(COUNT({};{})<2;\"\";\"Out \"&TEXT({};\"d mmm yyyy\")&\", back"
                        + " \"&TEXT({};\"d mmm yyyy\")&IF({}=\"\";\"\";\"; \"&{})&\".\")",
                    hire.out,
                    hire.back,
                    hire.out,
                    hire.back,
                    or(hire.handOver, ""),
                    or(hire.handOver, "")),
                calc(
                    "IF({}=\"\";\"\";\"Valid until \"&TEXT({};\"d mmm yyyy\")&\".\")",
                    or(hire.validUntil, ""),
                    or(hire.validUntil, ""))),
            Figures.of("", 3, clientFigures()),
            taxes(),
            sections.rows("By section, before order discount and tax", 12))
        .newPage(
            Lines.notes(
                "Terms",
                say("Late: {}.", or(hire.late, "–")),
                say("Lost or damaged: {}.", or(hire.loss, "–")),
                say("Cancelled: {}.", or(hire.cancelled, "–")),
                calc(
                    "IF({}=\"\";\"No insurance certificate is on file.\";\"Your insurance"
                        + " certificate on file runs until \"&TEXT({};\"d mmm yyyy\")&\".\")",
                    or(hire.insured, ""),
                    or(hire.insured, ""))))
        .with(Lines.cautions(Lines.HOT, Lines.DAMAGED, Lines.CHARGING))
        .with(
            Lines.notes(
                "Accepted",
                "Place, date:  ______________________________",
                "Name and signature:  ______________________________"));
  }

  private Table taxes() {
    Column number = Column.working("No.");
    number.by(number.rowNumber());
    return Table.of("Tax by rate", 3)
        .columns(
            taxed(totals.rate, number, 45),
            taxed(totals.base, number, 45),
            taxed(totals.ofRate, number, 45),
            taxed(totals.gross, number, 45),
            number);
  }

  private Column taxed(Column of, Column number, int width) {
    Column shown =
        Column.result(of.heading(), calc("INDEX({};{})", of.all(), number))
            .as(of.format())
            .mayBeBlank()
            .wide(width);
    return of.format() == Format.MONEY ? shown.unit(hire.currency) : shown;
  }

  private Figure[] clientFigures() {
    return new Figure[] {
      Figure.money("Total with tax (money)", hire.currency, Figure.shown(totals.total), ""),
      Figure.money(
          "Net (money)",
          hire.currency,
          Figure.shown(totals.net),
          calc(
              "IF({}=0;\"\";\"order discount \"&ROUND(100*{};1)&\" % taken off\")",
              or(hire.discount, 0), or(hire.discount, 0))),
      Figure.money("Tax (money)", hire.currency, Figure.shown(totals.tax), hire.taxName),
      Figure.money(
          "Deposit (money)",
          hire.currency,
          Figure.shown(totals.deposit),
          "Due before the kit goes out."),
      Figure.of(
          "Charged days (days)",
          Format.ONE,
          Figure.shown(hire.charged),
          "Rows with dates of their own: see Offer."),
      Figure.money(
          "Value to insure (money)",
          hire.currency,
          Figure.shown(totals.value),
          "Replacement value of all that is hired.")
    };
  }

  private Tab notes() {
    return Tab.notes(
        Lines.reckoned(
            "The day out and the day back both count. By dates, of every seven days from the day"
                + " out no more than the days a week are charged; the rest likewise.",
            "By kind of day, each date counts once, with the highest share of its kinds.",
            "A row counts with its own dates and days agreed, else with those on Job.",
            "Amount: rate × quantity × days, less the discount, rounded half up to the smallest"
                + " coin. Order discount: off hired rows only. Tax: by rate, on the rounded base.",
            "Short: all hired pieces of the item whose dates overlap, less those on the shelf;"
                + " sub-hired rows are not counted.",
            "Late: the days by dates until the day it is back or off hire, less those until the"
                + " day it was due, of the item's first row on Quote.",
            "Loss and damage carry no tax here: ask an accountant."),
        Lines.leftOut(
            "Whether tax is due, and where: that is for an accountant.",
            "Stock that is out on other quotes: take it off the pieces on Kit."),
        Lines.sources(
            "Days, fees and tax: the functions HIRE; see the handbook. How days are charged is the"
                + " custom of each house: set it on Job."));
  }

  @Override
  public void fill(Filling filling) {
    filling
        .fields("quote-job")
        .rows(hire.job.days, "days")
        .rows(stock.table, "quote-kit")
        .rows(asked.table, "quote-plan")
        .rows(quote.table, "quote-lines")
        .rows(picked.table, "quote-return")
        .shows(offer.table, quote.table)
        .shows(papers.insurer, picked.table)
        .shows(papers.general, picked.table);
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – rental quote";
  }
}
