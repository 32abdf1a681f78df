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

  private static final String RECEIVED =
      "Received complete and undamaged, but for what is noted here:";
  private static final String COUNTED = "Counted by both, state as noted:";
  private static final String STROKES =
      "Place and date __________________   Name __________________   Signature"
          + " __________________";
  private static final String BOTH =
      "Place and date __________________   Client __________________   House"
          + " __________________";

  private final PlanWorkbook book =
      PlanWorkbook.of("rental-quote", "Rental quote", QuotePlan.MODEL)
          .purpose(
              "An order of a rental desk: rates, discounts and tax, the page for the client,"
                  + " picking and returns.")
          .decimals("summary.decimals")
          .closedUp()
          .stamped("order.number", "order.revision");

  /** Declares the quote. */
  public RentalQuote() {
    book.with(
        project(),
        items(),
        client(),
        PlanTab.of(
                "Picking",
                "What was picked for each row of Quote, with serials. The number of the row counts;"
                    + " a name typed must be that of the row.")
            .with(
                book.table("picked")
                    .pick("item", "items.item")
                    .width("serials", 60)
                    .width("itemOf", 40)
                    .shows("itemOf")),
        PlanTab.of(
                "Returns",
                "What came back late, damaged or lost, once Project says that all else is back on"
                    + " time; else all that came back. The order stands right.")
            .with(
                book.table("returns")
                    .pick("item", "items.item")
                    .width("reasons", 60)
                    .width("itemOf", 40)
                    .shows("itemOf", "daysLate", "fee", "feeTax", "charged", "subCost"))
            .beside(book.list("due", "row", "item", "pieces", "backOn", "open").width("item", 50)),
        delivery(),
        check(),
        returnNote(),
        statement(),
        insurer(),
        carnet(),
        PlanTab.of("Equipment", "Price list and stock, one row for each item.")
            .hidden()
            .with(book.table("stock").width("item", 50).width("caution", 60).width("also", 50)),
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
                "exchange",
                "restBack",
                "statedOn"),
            book.lines("", "order", "verdict", "reasons"),
            book.fields(
                "Client",
                "client",
                "name",
                "contact",
                "billing",
                "delivery",
                "site",
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
            book.table("terms").titled("Terms on the quote").width("paragraph", 60),
            book.fields("Last export", "order", "sentRevision", "sentTotal", "sentKey"));
  }

  private PlanTab items() {
    return PlanTab.of(
            "Quote",
            "One row for each item. Fill in item and quantity; rates come from Equipment, a hidden"
                + " tab, dates from Project. Other dates, weeks, sub-hire: open the group with +.")
        .with(
            book.table("items")
                .optional("order", "insteadOf")
                .pick("item", "stock.item")
                .width("item", 50)
                .shows("row", "price", "daysCharged", "amount", "missing")
                .more(
                    "outOn",
                    "backOn",
                    "rateFor",
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
            book.letter("letter", 4, 7).picture(),
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
                    "per",
                    "discount",
                    "taxRate",
                    "amount")
                .width("row", 9)
                .width("label", 60)
                .width("pieces", 12)
                .width("outOn", 27)
                .width("backOn", 27)
                .width("days", 13)
                .width("price", 20)
                .width("per", 20)
                .width("discount", 17)
                .width("taxRate", 15)
                .width("amount", 34)
                .look("kind", "section", CellStyle.GROUP)
                .look("kind", "subtotal", CellStyle.SUM)
                .look("kind", "hire", CellStyle.SUM)
                .look("kind", "net", CellStyle.SUM)
                .look("kind", "total", CellStyle.TOTAL)
                .look("kind", "deposit", CellStyle.SUM)
                .look("kind", "not to be issued", CellStyle.STOP),
            book.list("closing", "text").wide());
  }

  private PlanLetter letterhead() {
    return book.letter("letter", 4, 7)
        .titled("Quote")
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
            "Delivery note", "Goes out with the kit, as Picking says. Export or print it alone.")
        .sent()
        .with(
            book.letter("letter", 3, 5)
                .titled("Delivery note")
                .line("houseName", "quoteNumber")
                .line("houseContact", "quoteRevision")
                .line("clientName", "hireOut")
                .address("deliveryAddress", false, "hireBack")
                .labelled("siteContact", "clientOrder"),
            PlanText.signed(RECEIVED, STROKES),
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
                .width("outOn", 27)
                .width("backOn", 27)
                .width("caution", 60)
                .look("kind", "sum", CellStyle.SUM)
                .look("kind", "not to be issued", CellStyle.STOP));
  }

  private PlanTab returnNote() {
    return PlanTab.of(
            "Return note", "What must come back, and when. Count the pieces with the client.")
        .hidden()
        .sent()
        .with(
            book.letter("letter", 2, 4)
                .titled("Return note")
                .line("houseName", "quoteNumber")
                .address("houseAddress", false, "quoteRevision")
                .line("clientName", "hireBack"),
            PlanText.signed(COUNTED, BOTH),
            PlanText.cautions(HOT, DAMAGED),
            book.list("due", "row", "item", "pieces", "backOn", "counted", "state")
                .width("row", 10)
                .width("item", 70)
                .width("backOn", 34)
                .width("counted", 24)
                .width("state", 40)
                .look("kind", "not to be issued", CellStyle.STOP));
  }

  private PlanTab statement() {
    return PlanTab.of(
            "Return statement",
            "What was late, lost or damaged, less the security deposit: for the client, from"
                + " Returns.")
        .hidden()
        .sent()
        .with(
            book.letter("letter", 4, 6)
                .titled("Return statement")
                .line("houseName", "quoteNumber")
                .address("houseAddress", false, "quoteRevision")
                .labelled("houseTaxNumber", "statementDate")
                .line("clientName", "hireOut")
                .address("billingAddress", false, "hireBack")
                .labelled("bankAccount", "inCurrency")
                .line("", "clientOrder"),
            book.list(
                    "statement",
                    "row",
                    "label",
                    "pieces",
                    "dueOn",
                    "returnedOn",
                    "fee",
                    "taxRate",
                    "tax",
                    "charged",
                    "amount")
                .width("row", 9)
                .width("label", 70)
                .width("pieces", 12)
                .width("dueOn", 27)
                .width("returnedOn", 27)
                .width("fee", 24)
                .width("taxRate", 15)
                .width("tax", 24)
                .width("charged", 28)
                .width("amount", 30)
                .look("kind", "charges", CellStyle.SUM)
                .look("kind", "to give back", CellStyle.TOTAL)
                .look("kind", "to pay", CellStyle.TOTAL)
                .look("kind", "not to be issued", CellStyle.STOP));
  }

  private PlanTab insurer() {
    return PlanTab.of("Insurer's list", "Replacement values of what is hired, with serials.")
        .hidden()
        .sent()
        .with(
            head("Insurer's list", 3, 4),
            book.list("values", "row", "item", "pieces", "serials", "each", "value")
                .width("item", 60)
                .width("serials", 50)
                .width("each", 34)
                .width("value", 34)
                .look("kind", "sum", CellStyle.SUM)
                .look("kind", "not to be issued", CellStyle.STOP));
  }

  private PlanTab carnet() {
    return PlanTab.of("Carnet list", "General list for the customs: rows marked so on Picking.")
        .hidden()
        .sent()
        .with(
            head("Carnet list", 3, 5),
            book.list(
                    "carnet", "number", "row", "item", "serials", "pieces", "weight", "value",
                    "origin")
                .width("row", 10)
                .width("item", 60)
                .width("serials", 50)
                .width("weight", 22)
                .width("value", 34)
                .look("kind", "sum", CellStyle.SUM)
                .look("kind", "not to be issued", CellStyle.STOP));
  }

  /** What paper it is, whose and for whom. */
  private PlanLetter head(String paper, int labels, int values) {
    return book.letter("letter", labels, values)
        .titled(paper)
        .line("houseName", "quoteNumber")
        .line("clientName", "quoteRevision")
        .address("deliveryAddress", false, "hireOut");
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
                "waiver",
                "sold",
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
                "After the return",
                "summary",
                "lateTax",
                "lost",
                "charges",
                "security",
                "giveBack",
                "toPay",
                "openPoints",
                "balance"),
            book.list("Tax by rate", 8, "taxes", "rate", "reason", "base", "tax")
                .width("rate", 32)
                .width("reason", 64)
                .width("base", 48)
                .width("tax", 48),
            PlanText.moreTabs(
                "Return note, Return statement, Insurer's list, Carnet list, Equipment, Booked"
                    + " elsewhere and Assumptions are hidden: show them with Set Power ▸ Show"
                    + " tabs…, or with Show Sheet in the menu of a tab."));
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
                "excess",
                "waivedLoss",
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
