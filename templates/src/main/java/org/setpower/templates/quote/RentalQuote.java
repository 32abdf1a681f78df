package org.setpower.templates.quote;

import static org.setpower.templates.spec.Formula.calc;
import static org.setpower.templates.spec.Formula.or;
import static org.setpower.templates.spec.Formula.say;

import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.spec.CellFormat;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.Formula;
import org.setpower.templates.spec.IssueList;
import org.setpower.templates.spec.KeyFigure;
import org.setpower.templates.spec.KeyFigures;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableExcerpt;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.TextBlock;
import org.setpower.templates.spec.WorkbookSpec;
import org.setpower.templates.uno.ExampleLoader;

/** Template 4: the quote of a rental desk. */
public final class RentalQuote implements TemplateDefinition {
  /** How many findings the desk sees at once. */
  private static final int FINDINGS = 9;

  private final QuoteTerms hire = new QuoteTerms();
  private final StockSheet stock = new StockSheet(hire);
  private final QuoteLinesSheet quote = new QuoteLinesSheet(hire, stock);
  private final RequestedItemsSheet asked = new RequestedItemsSheet(quote);
  private final OrderPacksSheet packs = new OrderPacksSheet(hire, quote, stock);
  private final ReturnSheet picked = new ReturnSheet(hire, quote, stock);
  private final CustomsLists papers = new CustomsLists(hire, picked);
  private final QuoteTotals totals = new QuoteTotals(hire, quote, picked);
  private final OfferSheet offer = new OfferSheet(hire, quote);
  private final WorkbookSpec template;
  private final IssueList findings;

  /** Declares the quote. */
  public RentalQuote() {
    template =
        WorkbookSpec.of("rental-quote", "Rental quote", 1)
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
    SheetSpec drawer = stock.tab();
    findings = IssueList.on(FINDINGS, template.tabs(drawer));
    template.with(desk(), result(), offer.tab(), drawer, notes());
  }

  @Override
  public WorkbookSpec template() {
    return template;
  }

  private Formula stamp() {
    return calc(
        "IF({}=\"\";\"\";\"Quote \"&{}&\"  ·  \")&{}", hire.number, hire.number, hire.job.stamp());
  }

  /** What the desk must know and the client must not. */
  private SheetSpec desk() {
    return SheetSpec.of(
            "Desk", "For the desk only: what to check before it goes out, and the margin.")
        .grid(12, 15)
        .portrait()
        .with(KeyFigures.of("", 3, deskFigures()), findings.list())
        .newPage(KeyFigures.of("After the return", 3, returnFigures()));
  }

  private KeyFigure[] deskFigures() {
    Formula charged = calc("SUMIFS({};{};\">0\")", quote.amount.all(), quote.cost.all());
    Formula margin = calc("ROUND({}-SUM({});2)", charged, quote.cost.all());
    return new KeyFigure[] {
      findings.stops(),
      findings.checks(),
      KeyFigure.of(
          "Short on the shelf (rows)",
          CellFormat.COUNT,
          calc("COUNTIF({};\">0\")", quote.shortBy.all()),
          "More out at once than Kit has."),
      KeyFigure.of(
          "Calendar days (days)",
          CellFormat.COUNT,
          KeyFigure.shown(hire.calendar),
          "From out to back, both counted."),
      KeyFigure.of(
          "Charged by dates (days)",
          CellFormat.ONE,
          KeyFigure.shown(hire.byDates),
          calc("\"at most \"&{}&\" of seven\"", hire.perWeek)),
      KeyFigure.of(
          "Charged by kind of day (days)",
          CellFormat.ONE,
          KeyFigure.shown(hire.byKind),
          "A date with two rows counts once."),
      KeyFigure.money(
          "Sub-hired, charged on (money)",
          hire.currency,
          calc("IF(SUM({})=0;0;{})", quote.cost.all(), charged),
          ""),
      KeyFigure.money(
          "Sub-hire costs (money)",
          hire.currency,
          calc("SUM({})", quote.cost.all()),
          calc("\"rows: \"&COUNT({})", quote.cost.all())),
      KeyFigure.money(
          "Margin on sub-hire (money)",
          hire.currency,
          margin,
          "Before order discount and tax. Never printed for the client."),
      KeyFigure.of(
          "Packs (pieces)", CellFormat.COUNT, KeyFigure.shown(packs.pieces), "In the order."),
      KeyFigure.of(
          "Packs hold (Wh)",
          CellFormat.WHOLE,
          KeyFigure.shown(packs.energy),
          "By their labels, when new."),
      KeyFigure.of(
          "Turns to charge all (turns)",
          CellFormat.COUNT,
          KeyFigure.shown(packs.turns),
          calc("\"on \"&{}&\" channels\"", packs.channels))
    };
  }

  private KeyFigure[] returnFigures() {
    return new KeyFigure[] {
      KeyFigure.money(
          "Late fees with tax (money)",
          hire.currency,
          KeyFigure.shown(totals.late),
          calc("\"rows late: \"&COUNTIF({};\">0\")", picked.lateDays.all())),
      KeyFigure.money(
          "Loss and damage (money)",
          hire.currency,
          KeyFigure.shown(totals.loss),
          "At replacement value, without tax."),
      KeyFigure.money(
          "Final amount (money)",
          hire.currency,
          KeyFigure.shown(totals.finalAmount),
          "With tax, late and loss."),
      KeyFigure.money(
          "Still to pay (money)",
          hire.currency,
          KeyFigure.shown(totals.toPay),
          "Final amount less the deposit."),
      KeyFigure.of(
          "Pieces out (pieces)",
          CellFormat.COUNT,
          calc("SUM({})", picked.pieces.all()),
          calc(
              "SUM({})&\" back, \"&SUM({})&\" missing, \"&SUM({})&\" damaged\"",
              picked.back.all(),
              picked.missing.all(),
              picked.damaged.all())),
      KeyFigure.of(
          "On the carnet (pieces)",
          CellFormat.COUNT,
          KeyFigure.shown(papers.carnetPieces),
          calc("\"worth \"&TEXT({};\"#,##0\")&\" \"&{}", papers.carnetValue, hire.currency))
    };
  }

  private SheetSpec result() {
    TableExcerpt sections =
        TableExcerpt.of(totals.bySection)
            .column(totals.section, 120)
            .column(totals.sectionAmount, 60);
    return SheetSpec.result(
            "Our quote. Prices in the currency shown; items are listed on the next pages.")
        .titled("Quote")
        .with(
            TextBlock.notes(
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
            KeyFigures.of("", 3, clientFigures()),
            taxes(),
            sections.rows("By section, before order discount and tax", 12))
        .newPage(
            TextBlock.notes(
                "Terms",
                say("Late: {}.", or(hire.late, "–")),
                say("Loss and damage: {}.", or(hire.loss, "–")),
                say("Cancelled: {}.", or(hire.cancelled, "–")),
                calc(
                    "IF({}=\"\";\"No insurance certificate is on file.\";\"Your insurance"
                        + " certificate is valid until \"&TEXT({};\"d mmm yyyy\")&\".\")",
                    or(hire.insured, ""),
                    or(hire.insured, ""))))
        .with(TextBlock.cautions(TextBlock.HOT, TextBlock.DAMAGED, TextBlock.CHARGING))
        .with(
            TextBlock.notes(
                "Accepted",
                "Place, date:  ______________________________",
                "Name and signature:  ______________________________"));
  }

  private TableSpec taxes() {
    ColumnSpec number = ColumnSpec.working("No.");
    number.formula(number.rowNumber());
    return TableSpec.of("Tax by rate", 3)
        .columns(
            taxed(totals.rate, number, 45),
            taxed(totals.base, number, 45),
            taxed(totals.ofRate, number, 45),
            taxed(totals.gross, number, 45),
            number);
  }

  private ColumnSpec taxed(ColumnSpec of, ColumnSpec number, int width) {
    ColumnSpec shown =
        ColumnSpec.result(of.heading(), calc("INDEX({};{})", of.all(), number))
            .format(of.format())
            .mayBeBlank()
            .width(width);
    return of.format() == CellFormat.MONEY ? shown.unit(hire.currency) : shown;
  }

  private KeyFigure[] clientFigures() {
    return new KeyFigure[] {
      KeyFigure.money("Total with tax (money)", hire.currency, KeyFigure.shown(totals.total), ""),
      KeyFigure.money(
          "Net (money)",
          hire.currency,
          KeyFigure.shown(totals.net),
          calc(
              "IF({}=0;\"\";\"order discount \"&ROUND(100*{};1)&\" % taken off\")",
              or(hire.discount, 0), or(hire.discount, 0))),
      KeyFigure.money("Tax (money)", hire.currency, KeyFigure.shown(totals.tax), hire.taxName),
      KeyFigure.money(
          "Deposit (money)",
          hire.currency,
          KeyFigure.shown(totals.deposit),
          "Due before the kit goes out."),
      KeyFigure.of(
          "Charged days (days)",
          CellFormat.ONE,
          KeyFigure.shown(hire.charged),
          "Rows with dates of their own: see Offer."),
      KeyFigure.money(
          "Value to insure (money)",
          hire.currency,
          KeyFigure.shown(totals.value),
          "Replacement value of all that is hired.")
    };
  }

  private SheetSpec notes() {
    return SheetSpec.notes(
        TextBlock.reckoned(
            "The day out and the day back both count. By dates, of every seven days from the day"
                + " out no more than the days a week are charged; the rest likewise.",
            "By kind of day, each date counts once, with the highest share of its kinds.",
            "A row counts with its own dates and days agreed, else with those on Job.",
            "Amount: rate × quantity × days, less the discount, rounded half up to the"
                + " minor currency unit. Order discount: off hired rows only. Tax: by rate, on"
                + " the rounded base.",
            "Shortage: overlapping hired quantity less stock; sub-hired rows excluded.",
            "Late: the days by dates until the day it is back or off hire, less those until the"
                + " day it was due, of the item's first row on Quote.",
            "Loss and damage carry no tax here: ask an accountant."),
        TextBlock.leftOut(
            "Whether tax is due, and where: that is for an accountant.",
            "Stock that is out on other quotes: take it off the pieces on Kit."),
        TextBlock.sources(
            "Days, fees and tax: the functions HIRE; see the handbook. How days are charged is the"
                + " custom of each house: set it on Job."));
  }

  @Override
  public void fill(ExampleLoader filling) {
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
