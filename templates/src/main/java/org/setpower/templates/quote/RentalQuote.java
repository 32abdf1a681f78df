package org.setpower.templates.quote;

import org.setpower.plan.quote.QuotePlan;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.plan.PlanLetter;
import org.setpower.templates.plan.PlanNotes;
import org.setpower.templates.plan.PlanTab;
import org.setpower.templates.plan.PlanText;
import org.setpower.templates.plan.PlanWorkbook;
import org.setpower.templates.spec.CellStyle;
import org.setpower.templates.spec.FieldSpec;

/** The quote of a rental desk: prices, the client's page, what goes out and what comes back. */
public final class RentalQuote implements PlanTemplate {
  /** The tab that alone goes to the client. */
  public static final String CLIENT_TAB = "Client quote";

  private static final String HOT =
      "Hot, smoking, leaking or smelling battery: do not touch it. Clear the area. Call the fire"
          + " service.";
  private static final String DAMAGED =
      "Dropped, wet or swollen battery, and cold: quarantine it outdoors, away from people and"
          + " batteries. Do not charge it. Do not fly it. Call us.";
  private static final String CHARGING =
      "Do not charge lithium batteries below 0 °C (32 °F). Let them warm up first. Charge attended,"
          + " on a non-combustible surface, with the matching charger.";
  private static final String CARRIAGE =
      "Cover the terminals of batteries one by one for transport. Return them about half full.";

  private final PlanWorkbook book =
      PlanWorkbook.of("rental-quote", "Rental quote", QuotePlan.MODEL)
          .decimals("summary.decimals")
          .stamped("order.number", "order.revision");

  /** Declares the quote. */
  public RentalQuote() {
    book.with(
        project(),
        items(),
        client(),
        PlanTab.of(
                "Picking",
                "What was picked for each row of Quote, with serials. The number of the row counts,"
                    + " not the name.")
            .with(book.table("picked").pick("item", "items.item").width("serials", 60)),
        PlanTab.of(
                "Returns",
                "What came back, one row for each row of Quote and day. The rule and the discounts"
                    + " of the hire count for late days too.")
            .with(
                book.table("returns")
                    .pick("item", "items.item")
                    .shows("daysLate", "fee", "feeTax", "replacement")),
        delivery(),
        check(),
        returnNote(),
        insurer(),
        carnet(),
        PlanTab.of("Equipment", "Price list and stock, one row for each item.")
            .hidden()
            .with(book.table("stock").width("item", 50).width("caution", 60)),
        PlanTab.of("Booked elsewhere", "What other orders take, so that Quote knows what is short.")
            .hidden()
            .with(book.table("booked").pick("item", "stock.item").width("item", 50)),
        assumptions());
  }

  private PlanTab project() {
    return PlanTab.of(
            "Project",
            "Prices, days and papers of an order. Fill in the order here, then Quote; read Internal"
                + " check, then export Client quote.")
        .first()
        .with(
            PlanNotes.of(
                "The job",
                FieldSpec.input("Production").help("The client's production; on internal papers.")),
            book.fields(
                "The order",
                "order",
                "number",
                "revision",
                "replaces",
                "date",
                "validUntil",
                "out",
                "back",
                "agreedDays",
                "currency",
                "discount",
                "waiver",
                "taxName",
                "tax",
                "taxReason",
                "downPayment",
                "security",
                "insuredUntil",
                "exchange"),
            book.lines("", "order", "verdict", "reasons"),
            book.fields(
                "Client",
                "client",
                "name",
                "contact",
                "billing",
                "delivery",
                "purchaseOrder",
                "taxNumber"),
            book.lines("", "client", "verdict", "reasons"),
            book.fields(
                "Our house",
                "house",
                "name",
                "address",
                "taxNumber",
                "contact",
                "bank",
                "payment",
                "currency"),
            book.lines("", "house", "verdict", "reasons"),
            book.table("terms").titled("Terms on the quote").width("paragraph", 60));
  }

  private PlanTab items() {
    return PlanTab.of(
            "Quote",
            "One row for each item. Fill in item and quantity; rates come from Equipment, dates"
                + " from Project.")
        .with(
            book.table("items")
                .optional("weekRate", "insteadOf")
                .pick("item", "stock.item")
                .width("item", 50)
                .shows("daysCharged", "amount", "missing")
                .more(
                    "outOn",
                    "backOn",
                    "ruleDays",
                    "rateUsed",
                    "each",
                    "net",
                    "peak",
                    "subCost",
                    "margin"));
  }

  private PlanTab client() {
    return PlanTab.of(
            CLIENT_TAB,
            "The page for the client: nothing to fill. Export it with Set Power ▸ Export client"
                + " quote…")
        .sent()
        .with(
            letterhead(),
            book.list(
                    "document",
                    "row",
                    "label",
                    "pieces",
                    "outOn",
                    "backOn",
                    "days",
                    "price",
                    "rateFor",
                    "discount",
                    "taxRate",
                    "amount")
                .width("row", 9)
                .width("label", 60)
                .width("pieces", 12)
                .width("outOn", 22)
                .width("backOn", 22)
                .width("days", 13)
                .width("price", 20)
                .width("rateFor", 18)
                .width("discount", 17)
                .width("taxRate", 15)
                .width("amount", 26)
                .look("kind", "section", CellStyle.GROUP)
                .look("kind", "subtotal", CellStyle.SUM)
                .look("kind", "hire", CellStyle.SUM)
                .look("kind", "net", CellStyle.SUM)
                .look("kind", "total", CellStyle.TOTAL)
                .look("kind", "down payment", CellStyle.SUM)
                .look("kind", "not to be issued", CellStyle.STOP),
            book.list("closing", "text").wide());
  }

  private PlanLetter letterhead() {
    return book.letter("letter", 4, 7)
        .first("houseName", "quoteNumber")
        .address("houseAddress", false, "quoteRevision")
        .labelled("houseTaxNumber", "replacesQuote")
        .line("houseContact", "quoteDate")
        .line("", "valid")
        .line("clientName", "inCurrency")
        .address("billingAddress", false, "hireOut")
        .labelled("clientTaxNumber", "hireBack")
        .labelled("clientContact", "clientOrder")
        .address("deliveryAddress", true, "");
  }

  private PlanTab delivery() {
    return PlanTab.of(
            "Papers", "Delivery note: goes out with the kit. Rows that are a stop are not on it.")
        .upright()
        .with(
            head(3, 5),
            book.lines("", "letter", "verdict", "reasons"),
            PlanText.cautions(HOT, DAMAGED, CHARGING, CARRIAGE),
            book.list(
                    "delivery",
                    "row",
                    "item",
                    "pieces",
                    "serials",
                    "outOn",
                    "backOn",
                    "weight",
                    "caution")
                .width("row", 10)
                .width("item", 60)
                .width("serials", 40)
                .width("weight", 22)
                .width("outOn", 22)
                .width("backOn", 22)
                .width("caution", 60));
  }

  private PlanTab returnNote() {
    return PlanTab.of(
            "Return note", "What must come back, and when. Count the pieces with the client.")
        .hidden()
        .upright()
        .with(
            head(2, 3),
            book.lines("", "letter", "verdict", "reasons"),
            PlanText.cautions(HOT, DAMAGED),
            book.list("due", "row", "item", "pieces", "backOn")
                .width("row", 10)
                .width("item", 80)
                .width("backOn", 40));
  }

  private PlanTab insurer() {
    return PlanTab.of("Insurer's list", "Replacement values of what is hired, with serials.")
        .hidden()
        .upright()
        .with(
            head(3, 4),
            book.lines("", "summary", "toInsure", "withoutValue"),
            book.list("values", "row", "item", "pieces", "serials", "each", "value")
                .width("item", 60)
                .width("serials", 50)
                .width("each", 28)
                .width("value", 28));
  }

  private PlanTab carnet() {
    return PlanTab.of("Carnet list", "General list for the customs: rows marked so on Picking.")
        .hidden()
        .upright()
        .with(
            head(3, 5),
            book.list("carnet", "number", "item", "serials", "pieces", "weight", "value", "origin")
                .width("item", 60)
                .width("serials", 50)
                .width("weight", 22)
                .width("value", 28));
  }

  /** Whose paper it is and for whom. */
  private PlanLetter head(int labels, int values) {
    return book.letter("letter", labels, values)
        .line("houseName", "quoteNumber")
        .line("clientName", "quoteRevision")
        .address("deliveryAddress", false, "quoteDate");
  }

  private PlanTab check() {
    return PlanTab.page(
            "Internal check", "For the desk only: what to correct, what is short, the margin.")
        .kept()
        .result()
        .with(
            book.figures(
                4,
                "summary",
                "verdict",
                "mayIssue",
                "rows",
                "withheld",
                "calendarDays",
                "hire",
                "discount",
                "net",
                "tax",
                "total",
                "downPayment",
                "weight",
                "withoutWeight",
                "withoutValue",
                "subHire",
                "margin",
                "lateRows",
                "lateFees"),
            book.list("Open issues", 16, "issues", "verdict", "where", "rows", "reasons")
                .width("where", 48)
                .width("reasons", 112),
            book.lines(
                "After the return", "summary", "lost", "security", "balance", "waiver", "sold"),
            book.list("Tax by rate", 8, "taxes", "rate", "reason", "base", "tax")
                .width("rate", 32)
                .width("reason", 64)
                .width("base", 48)
                .width("tax", 48),
            PlanText.notes(
                "More tabs",
                "Return note, Insurer's list, Carnet list, Equipment, Booked elsewhere and"
                    + " Assumptions are hidden: show them with Set Power ▸ Show tabs…, or with Show"
                    + " Sheet in the menu of a tab."));
  }

  private PlanTab assumptions() {
    return PlanTab.of(
            "Assumptions",
            "Rules of the house, set once; blank cells have the rule that their help names.")
        .hidden()
        .with(
            book.fields(
                "Rules of the house",
                "house",
                "counted",
                "daysPerWeek",
                "weekend",
                "minDays",
                "minAmount",
                "late",
                "turnaround",
                "discountOn",
                "subHireDiscounted",
                "waiverOn",
                "waiverTax",
                "taxPer"),
            book.table("shares").titled("Share charged by type of day"),
            book.table("schedule").titled("Days by type").pick("dayType", "shares.dayType"));
  }

  @Override
  public PlanWorkbook workbook() {
    return book;
  }

  @Override
  public String exampleTitle() {
    return "The Salt Road – rental quote";
  }
}
