package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.setpower.hire.Weekend;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.quote.terms.DayCounting;
import org.setpower.plan.quote.terms.RateBasis;

/** The tables of results of a quote; a result column is a component. */
public final class QuoteResults {
  public static final ResultTable<HouseResult> HOUSE = ResultTable.of(HouseResult.class);
  public static final ResultTable<ClientResult> CLIENT = ResultTable.of(ClientResult.class);
  public static final ResultTable<OrderResult> ORDER = ResultTable.of(OrderResult.class);
  public static final ResultTable<ItemResult> ITEMS = ResultTable.of(ItemResult.class);
  public static final ResultTable<StockResult> STOCK = ResultTable.of(StockResult.class);
  public static final ResultTable<BookingResult> BOOKED = ResultTable.of(BookingResult.class);
  public static final ResultTable<ScheduleResult> SCHEDULE = ResultTable.of(ScheduleResult.class);
  public static final ResultTable<ShareResult> SHARES = ResultTable.of(ShareResult.class);
  public static final ResultTable<PickResult> PICKED = ResultTable.of(PickResult.class);
  public static final ResultTable<ReturnResult> RETURNS = ResultTable.of(ReturnResult.class);
  public static final ResultTable<Letter> LETTER = ResultTable.of(Letter.class);
  public static final ResultTable<TermResult> TERMS = ResultTable.of(TermResult.class);
  public static final ResultTable<DocumentLine> DOCUMENT = ResultTable.of(DocumentLine.class);
  public static final ResultTable<ClosingLine> CLOSING = ResultTable.of(ClosingLine.class);
  public static final ResultTable<TaxLine> TAXES = ResultTable.of(TaxLine.class);
  public static final ResultTable<PapersResult> PAPERS = ResultTable.of(PapersResult.class);
  public static final ResultTable<DeliveryRow> DELIVERY = ResultTable.of(DeliveryRow.class);
  public static final ResultTable<DueRow> DUE = ResultTable.of(DueRow.class);
  public static final ResultTable<StatementLine> STATEMENT = ResultTable.of(StatementLine.class);
  public static final ResultTable<ValueRow> VALUES = ResultTable.of(ValueRow.class);
  public static final ResultTable<CarnetRow> CARNET = ResultTable.of(CarnetRow.class);
  public static final ResultTable<Summary> SUMMARY = ResultTable.of(Summary.class);
  public static final ResultTable<IssueRow> ISSUES =
      IssueRow.table(
          60,
          "house.reasons",
          "client.reasons",
          "order.reasons",
          "items.reasons",
          "stock.reasons",
          "booked.reasons",
          "schedule.reasons",
          "shares.reasons",
          "picked.reasons",
          "returns.reasons",
          "terms.reasons",
          "document.reasons",
          "items.item",
          "stock.item",
          "booked.item");

  private static final String ITEMS_ALL = "items.*";
  private static final String STOCK_ALL = "stock.*";
  private static final String HOUSE_ALL = "house.*";
  private static final String ORDER_ALL = "order.*";
  private static final String SCHEDULE_ALL = "schedule.*";
  private static final String SHARES_ALL = "shares.*";
  private static final String ISSUED = "document.reasons";

  /** Where somebody writes by hand. */
  static final String TO_WRITE = "................";

  private QuoteResults() {}

  /** Beside our house. */
  @Table(key = "house", heading = "Our house", rows = 1)
  public record HouseResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "house.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"house.*", "order.currency", "order.waiver", "terms.*"},
              rule = "What is wrong, or missing on the client's page.")
          List<Finding> reasons) {}

  /** Beside the client. */
  @Table(key = "client", heading = "Client", rows = 1)
  public record ClientResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "client.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "client.*",
              rule = "What is wrong, or missing on the client's page.")
          List<Finding> reasons) {}

  /** Beside the order. */
  @Table(key = "order", heading = "Project", rows = 1)
  public record OrderResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "order.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "order.*",
                "house.currency",
                ITEMS_ALL,
                STOCK_ALL,
                "returns.*",
                "picked.*",
                "client.*",
                "terms.*",
                HOUSE_ALL,
                SCHEDULE_ALL,
                SHARES_ALL
              },
              rule =
                  "What is wrong with the order, insurance that ends before the last return, and"
                      + " other content than was exported.")
          List<Finding> reasons,
      @Result(
              key = "lastBack",
              heading = "Last return",
              from = {"items.backOn", "returns.date", ITEMS_ALL, "returns.*", "items.reasons"},
              rule = "The last day on which something hired comes back, or came back.")
          LocalDate lastBack) {}

  /** Beside a row of the quote. */
  @Table(key = "items", heading = "Quote", rows = 300)
  public record ItemResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "items.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                ITEMS_ALL,
                STOCK_ALL,
                "booked.*",
                HOUSE_ALL,
                ORDER_ALL,
                SCHEDULE_ALL,
                SHARES_ALL,
                "picked.*",
                "returns.*"
              },
              rule = "What is wrong with the row, with stock on its dates, sub-hire and return.")
          List<Finding> reasons,
      @Result(
              key = "row",
              heading = "No.",
              from = "items.item",
              rule = "Counted from the first row of Quote, blank ones too.")
          Integer row,
      @Result(
              key = "outOn",
              heading = "Goes out",
              from = {"items.out", "order.out"},
              rule = "Out of the row, else of the order.")
          LocalDate outOn,
      @Result(
              key = "backOn",
              heading = "Due back",
              from = {"items.back", "order.back"},
              rule = "Back of the row, else of the order.")
          LocalDate backOn,
      @Result(
              key = "rateFor",
              heading = "Rate for",
              from = {"items.basis", "items.type", "items.weekRate"},
              rule =
                  "As typed, else week where a week rate is filled in, once where sold or service, day.")
          RateBasis rateFor,
      @Result(
              key = "ruleDays",
              heading = "Days by the rule",
              form = NumberForm.EXACT,
              from = {
                "items.outOn",
                "items.backOn",
                "items.rateFor",
                HOUSE_ALL,
                ORDER_ALL,
                SCHEDULE_ALL,
                SHARES_ALL,
                ITEMS_ALL
              },
              rule =
                  "By the house's rule: HIRE.DAYS by dates, HIRE.KINDS by type of day; by the week every day.")
          BigDecimal ruleDays,
      @Result(
              key = "daysCharged",
              heading = "Days charged",
              form = NumberForm.EXACT,
              from = {
                "items.ruleDays",
                "items.agreedDays",
                "order.agreedDays",
                "items.out",
                "items.back"
              },
              rule =
                  "Agreed for the row, else for the order where the row has no dates of its own, else by the rule.")
          BigDecimal daysCharged,
      @Result(
              key = "firstWeek",
              heading = "First week",
              form = NumberForm.MONEY,
              from = {
                "items.rateFor",
                "items.weekRate",
                "stock.weekRate",
                "stock.item",
                "items.item",
                "order.exchange",
                "order.currency",
                "house.currency",
                "items.ruleDays"
              },
              rule = "Of the row, else of Equipment in the quote's currency.")
          BigDecimal firstWeek,
      @Result(
              key = "laterWeek",
              heading = "Later weeks",
              form = NumberForm.MONEY,
              from = {
                "items.firstWeek",
                "items.secondWeekRate",
                "stock.secondWeekRate",
                "order.exchange",
                "order.currency",
                "house.currency",
                "items.ruleDays"
              },
              rule = "Of the row, else of Equipment, else the first week's.")
          BigDecimal laterWeek,
      @Result(
              key = "price",
              heading = "Rate used",
              form = NumberForm.MONEY,
              from = {"items.rateUsed", "items.firstWeek"},
              rule = "A day, the first week, or once: typed, else of Equipment.")
          BigDecimal price,
      @Result(
              key = "rateUsed",
              heading = "Day rate used",
              form = NumberForm.MONEY,
              from = {
                "items.rateFor",
                "items.rate",
                "stock.dayRate",
                "stock.item",
                "items.item",
                "order.exchange",
                "order.currency",
                "house.currency",
                "items.ruleDays",
                "items.firstWeek",
                "items.laterWeek"
              },
              rule = "Of the row, else of Equipment in the quote's currency.")
          BigDecimal rateUsed,
      @Result(
              key = "each",
              heading = "Price of one",
              form = NumberForm.MONEY,
              from = {
                "items.rateUsed",
                "items.daysCharged",
                "items.rateFor",
                "items.firstWeek",
                "items.laterWeek",
                "items.outOn",
                "items.backOn",
                "house.weekend",
                "items.agreedDays"
              },
              rule =
                  "Of one piece before discounts: rate × days; by the week, the prices of its weeks.")
          BigDecimal each,
      @Result(
              key = "amount",
              heading = "Amount",
              form = NumberForm.MONEY,
              from = {"items.qty", "items.each", "items.discount", "order.currency"},
              rule = "Price of one × quantity × (1 − discount), rounded once.")
          BigDecimal amount,
      @Result(
              key = "net",
              heading = "After order discount",
              form = NumberForm.MONEY,
              from = {
                "items.amount",
                "order.discount",
                "house.discountOn",
                "house.subHireDiscounted",
                "items.type",
                "items.subFrom",
                "items.discount",
                "order.currency"
              },
              rule = "Amount × (1 − order discount) where the discount is taken off the row.")
          BigDecimal net,
      @Result(
              key = "peak",
              heading = "Out at a time",
              unit = "pcs",
              form = NumberForm.EXACT,
              from = {
                "items.item",
                "items.qty",
                "items.out",
                "items.back",
                "items.type",
                "items.subFrom",
                "order.out",
                "order.back",
                "items.order",
                "stock.item",
                "stock.also",
                "booked.*",
                "house.turnaround"
              },
              rule =
                  "Most pieces out on a day of the row: rows of the quote and bookings elsewhere.")
          Double peak,
      @Result(
              key = "missing",
              heading = "Short",
              unit = "pcs",
              form = NumberForm.EXACT,
              from = {"items.peak", "stock.owned", "stock.outOfService", "stock.item"},
              rule = "Out at a time less owned and in service, not below 0.")
          Double missing,
      @Result(
              key = "subCost",
              heading = "Cost of sub-hire",
              form = NumberForm.MONEY,
              from = {
                "items.qty",
                "items.subFrom",
                "items.subRate",
                "items.subDays",
                "items.outOn",
                "items.backOn",
                "order.currency",
                "items.ruleDays",
                "items.amount"
              },
              rule = "Sub-hire rate × quantity × days of the other house.")
          BigDecimal subCost,
      @Result(
              key = "margin",
              heading = "Margin on sub-hire",
              form = NumberForm.MONEY,
              from = {"items.net", "items.subCost"},
              rule = "After both discounts less the cost of sub-hire.")
          BigDecimal margin) {}

  /** Beside an item of stock. */
  @Table(key = "stock", heading = "Equipment", rows = 300)
  public record StockResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "stock.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "stock.*",
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a booking. */
  @Table(key = "booked", heading = "Booked elsewhere", rows = 200)
  public record BookingResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "booked.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "booked.*",
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a day. */
  @Table(key = "schedule", heading = "Days by type", rows = 120)
  public record ScheduleResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "schedule.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"schedule.*", "shares.*"},
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a type of day. */
  @Table(key = "shares", heading = "Share charged by type of day", rows = 12)
  public record ShareResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "shares.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "shares.*",
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside what was picked. */
  @Table(key = "picked", heading = "Picking", rows = 300)
  public record PickResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "picked.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "picked.*",
                "items.item",
                "items.qty",
                "items.order",
                "stock.origin",
                "stock.item",
                "stock.also"
              },
              rule = "What is wrong with the row, picked otherwise, no origin.")
          List<Finding> reasons,
      @Result(
              key = "itemOf",
              heading = "Item on Quote",
              from = {"picked.line", "items.item"},
              rule = "Of the row with this number.")
          String itemOf) {}

  /** Beside a return. */
  @Table(key = "returns", heading = "Returns", rows = 300)
  public record ReturnResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "returns.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "returns.*",
                "picked.*",
                ITEMS_ALL,
                "items.amount",
                "items.reasons",
                "stock.item",
                "stock.value",
                "stock.also",
                HOUSE_ALL,
                ORDER_ALL
              },
              rule = "What is wrong with the row, late, lost or damaged.")
          List<Finding> reasons,
      @Result(
              key = "itemOf",
              heading = "Item on Quote",
              from = {"returns.line", "items.item"},
              rule = "Of the row with this number.")
          String itemOf,
      @Result(
              key = "daysLate",
              heading = "Days late",
              from = {
                "returns.date",
                "returns.line",
                "items.backOn",
                "items.amount",
                "items.item",
                "returns.*",
                "items.reasons"
              },
              rule = "Days after due, counted even where they cost nothing.")
          Long daysLate,
      @Result(
              key = "fee",
              heading = "Late fee",
              form = NumberForm.MONEY,
              from = {
                "returns.daysLate",
                "returns.qty",
                "items.rateUsed",
                "items.firstWeek",
                "items.laterWeek",
                "items.discount",
                "order.discount",
                "house.late",
                "items.net",
                HOUSE_ALL,
                ORDER_ALL,
                SCHEDULE_ALL
              },
              rule =
                  "The rule of the hire to the day of return, less the same rule to the day due; both discounts.")
          BigDecimal fee,
      @Result(
              key = "feeTax",
              heading = "Tax on the fee",
              form = NumberForm.MONEY,
              from = {"returns.fee", "items.tax", "order.tax"},
              rule = "At the rate of the row, rounded.")
          BigDecimal feeTax,
      @Result(
              key = "charged",
              heading = "Charged",
              form = NumberForm.MONEY,
              from = {
                "returns.charge",
                "returns.state",
                "returns.qty",
                "stock.value",
                "stock.item",
                "items.item",
                "order.exchange",
                "house.currency",
                "order.currency",
                "returns.daysLate"
              },
              rule = "As typed; the replacement value of what is lost. Without tax.")
          BigDecimal charged,
      @Result(
              key = "subCost",
              heading = "Sub-hire, late",
              form = NumberForm.MONEY,
              from = {
                "returns.daysLate",
                "returns.*",
                "items.subFrom",
                "items.subRate",
                "items.subCost",
                "items.backOn",
                HOUSE_ALL,
                ORDER_ALL
              },
              rule = "Sub-hire rate × pieces × days late.")
          BigDecimal subCost) {}

  /** Head and foot of the client's page; blank while it may not be issued. */
  @Table(key = "letter", heading = "Letter", rows = 1)
  public record Letter(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "letter.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "document.reasons",
              rule = "Why the page may not be issued.")
          List<Finding> reasons,
      @Result(
              key = "houseName",
              heading = "House",
              from = {"house.name", ISSUED},
              rule = "As typed.")
          String houseName,
      @Result(
              key = "houseAddress",
              heading = "Address",
              from = {"house.address", ISSUED},
              rule = "As typed.")
          String houseAddress,
      @Result(
              key = "houseTaxNumber",
              heading = "VAT number",
              from = {"house.taxNumber", ISSUED},
              rule = "As typed.")
          String houseTaxNumber,
      @Result(
              key = "houseContact",
              heading = "Contact",
              from = {"house.contact", ISSUED},
              rule = "As typed.")
          String houseContact,
      @Result(
              key = "clientName",
              heading = "Client",
              from = {"client.name", ISSUED},
              rule = "As typed.")
          String clientName,
      @Result(
              key = "clientContact",
              heading = "Client's contact",
              from = {"client.contact", ISSUED},
              rule = "As typed.")
          String clientContact,
      @Result(
              key = "billingAddress",
              heading = "Billing address",
              from = {"client.billing", ISSUED},
              rule = "As typed.")
          String billingAddress,
      @Result(
              key = "deliveryAddress",
              heading = "Delivery address",
              from = {"client.delivery", ISSUED},
              rule = "As typed.")
          String deliveryAddress,
      @Result(
              key = "siteContact",
              heading = "Contact on site",
              from = {"client.site", ISSUED},
              rule = "As typed.")
          String siteContact,
      @Result(
              key = "clientOrder",
              heading = "Purchase order",
              from = {"client.purchaseOrder", ISSUED},
              rule = "As typed.")
          String clientOrder,
      @Result(
              key = "clientTaxNumber",
              heading = "Client's VAT number",
              from = {"client.taxNumber", ISSUED},
              rule = "As typed.")
          String clientTaxNumber,
      @Result(
              key = "quoteNumber",
              heading = "Quote",
              from = {"order.number", ISSUED},
              rule = "As typed.")
          String quoteNumber,
      @Result(
              key = "quoteRevision",
              heading = "Revision",
              from = {"order.revision", ISSUED},
              rule = "As typed.")
          String quoteRevision,
      @Result(
              key = "replacesQuote",
              heading = "Replaces",
              from = {"order.replaces", ISSUED},
              rule = "As typed.")
          String replacesQuote,
      @Result(
              key = "quoteDate",
              heading = "Date",
              from = {"order.date", ISSUED},
              rule = "As typed.")
          LocalDate quoteDate,
      @Result(
              key = "statementDate",
              heading = "Date",
              from = {"order.statedOn", ISSUED},
              rule = "As typed.")
          LocalDate statementDate,
      @Result(
              key = "valid",
              heading = "Valid until",
              from = {"order.validUntil", ISSUED},
              rule = "As typed.")
          LocalDate valid,
      @Result(
              key = "inCurrency",
              heading = "Currency",
              from = {"order.currency", ISSUED},
              rule = "Code of ISO 4217.")
          String inCurrency,
      @Result(
              key = "hireOut",
              heading = "Out",
              from = {"order.out", ISSUED},
              rule = "As typed.")
          LocalDate hireOut,
      @Result(
              key = "hireBack",
              heading = "Back",
              from = {"order.back", ISSUED},
              rule = "As typed.")
          LocalDate hireBack,
      @Result(
              key = "counting",
              heading = "Days counted",
              from = {"house.counted", ISSUED},
              rule = "As the house counts.")
          DayCounting counting,
      @Result(
              key = "capDays",
              heading = "Charged days a week",
              form = NumberForm.EXACT,
              from = {"house.daysPerWeek", "house.counted", ISSUED},
              rule =
                  "Most days charged of seven, for rows by the day; blank where days count by type.")
          Double capDays,
      @Result(
              key = "weekends",
              heading = "Weekend",
              from = {"house.weekend", "house.counted", ISSUED},
              rule = "As the house counts; blank where days count by type.")
          Weekend weekends,
      @Result(
              key = "leastDays",
              heading = "Min. charged days",
              form = NumberForm.EXACT,
              from = {"house.minDays", ISSUED},
              rule = "As the house counts.")
          Double leastDays,
      @Result(
              key = "taxCalled",
              heading = "Tax is called",
              from = {"order.taxName", ISSUED},
              rule = "As typed.")
          String taxCalled,
      @Result(
              key = "paymentTerms",
              heading = "Payment",
              from = {"house.payment", ISSUED},
              rule = "As typed.")
          String paymentTerms,
      @Result(
              key = "bankAccount",
              heading = "Bank",
              from = {"house.bank", ISSUED},
              rule = "As typed.")
          String bankAccount,
      @Result(
              key = "onRequest",
              heading = "Rows without a price",
              from = {"document.kind", ISSUED, ITEMS_ALL},
              rule = "Rows on request, which the total leaves out.")
          Integer onRequest) {}

  /** Beside a paragraph of terms. */
  @Table(key = "terms", heading = "Terms", rows = 20)
  public record TermResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "terms.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "terms.*",
              rule = "What is wrong with the row.")
          List<Finding> reasons,
      @Result(
              key = "printed",
              heading = "Printed",
              from = {"terms.paragraph", ISSUED},
              rule = "As typed; blank while the page may not be issued.")
          String printed) {}

  /** Lines of the client's page, in order; a single one while a row is a stop. */
  @Table(key = "document", heading = "Client quote", rows = 640)
  public record DocumentLine(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "document.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "items.reasons",
                "house.reasons",
                "client.reasons",
                "order.reasons",
                "schedule.reasons",
                "shares.reasons",
                "terms.reasons",
                "house.counted"
              },
              rule = "Why it may not be issued; nothing else keeps a page back.")
          List<Finding> reasons,
      @Result(
              key = "kind",
              heading = "Line",
              from = {"items.item", ISSUED, ITEMS_ALL, ORDER_ALL, HOUSE_ALL, "items.amount"},
              rule =
                  "Sections with items and subtotals, hire, discount, waiver, sold, services, net, tax by rate, total, payment.")
          LineKind kind,
      @Result(
              key = "label",
              heading = "Item",
              from = {
                ISSUED,
                ITEMS_ALL,
                ORDER_ALL,
                HOUSE_ALL,
                STOCK_ALL,
                SCHEDULE_ALL,
                SHARES_ALL,
                "items.firstWeek",
                "items.laterWeek",
                "document.amount"
              },
              rule = "What the line is, with the figures it is made of.")
          Phrase label,
      @Result(
              key = "row",
              heading = "No.",
              from = {"items.item", ISSUED, ITEMS_ALL},
              rule = "Row of the quote.")
          Integer row,
      @Result(
              key = "text",
              heading = "Item or section",
              from = {"items.item", "items.section", ISSUED, ITEMS_ALL},
              rule = "Item or section.")
          String text,
      @Result(
              key = "instead",
              heading = "Instead of",
              from = {"items.insteadOf", ISSUED},
              rule = "What the client asked for.")
          String instead,
      @Result(
              key = "pieces",
              heading = "Qty",
              form = NumberForm.EXACT,
              from = {"items.qty", ISSUED},
              rule = "As typed.")
          Double pieces,
      @Result(
              key = "outOn",
              heading = "Out",
              form = NumberForm.DAY,
              from = {"items.outOn", ISSUED},
              rule = "First day of the row.")
          LocalDate outOn,
      @Result(
              key = "backOn",
              heading = "Back",
              form = NumberForm.DAY,
              from = {"items.backOn", ISSUED},
              rule = "Last day of the row.")
          LocalDate backOn,
      @Result(
              key = "days",
              heading = "Days",
              form = NumberForm.EXACT,
              from = {"items.daysCharged", ISSUED},
              rule = "Days charged.")
          BigDecimal days,
      @Result(
              key = "rateFor",
              heading = "Rate for",
              from = {"items.rateFor", ISSUED},
              rule = "What the rate is for.")
          RateBasis rateFor,
      @Result(
              key = "per",
              heading = "Rate for",
              from = {"items.rateFor", ISSUED},
              rule = "What the rate is for, in the language of the page.")
          Phrase per,
      @Result(
              key = "rate",
              heading = "Rate",
              form = NumberForm.MONEY,
              from = {"items.rateUsed", ISSUED},
              rule = "A day, or once.")
          BigDecimal rate,
      @Result(
              key = "price",
              heading = "Price",
              form = NumberForm.MONEY,
              from = {"items.rateUsed", "items.firstWeek", ISSUED},
              rule = "A day, the first week, or once.")
          BigDecimal price,
      @Result(
              key = "firstWeek",
              heading = "First week",
              form = NumberForm.MONEY,
              from = {"items.firstWeek", ISSUED},
              rule = "Of one piece.")
          BigDecimal firstWeek,
      @Result(
              key = "laterWeek",
              heading = "Later weeks",
              form = NumberForm.MONEY,
              from = {"items.laterWeek", ISSUED},
              rule = "Of one piece, each.")
          BigDecimal laterWeek,
      @Result(
              key = "each",
              heading = "Price of one",
              form = NumberForm.MONEY,
              from = {"items.each", ISSUED},
              rule = "Of one piece for the whole hire, before discounts.")
          BigDecimal each,
      @Result(
              key = "discount",
              heading = "Discount",
              form = NumberForm.FINE_SHARE,
              from = {"items.discount", ISSUED, ITEMS_ALL},
              rule = "Of the row.")
          BigDecimal discount,
      @Result(
              key = "share",
              heading = "Share",
              form = NumberForm.FINE_SHARE,
              from = {
                "items.discount",
                "order.discount",
                "order.waiver",
                "order.downPayment",
                "order.tax",
                "items.tax",
                "house.waiverTax",
                "document.kind",
                "items.reasons",
                "document.reasons"
              },
              rule =
                  "Discount of the row or the order, share of the waiver, rate of tax, share of the down payment.")
          BigDecimal share,
      @Result(
              key = "taxRate",
              heading = "Tax rate",
              form = NumberForm.FINE_SHARE,
              from = {
                "items.tax",
                "order.tax",
                "house.waiverTax",
                "document.kind",
                "items.reasons",
                "document.reasons"
              },
              rule = "Of the line.")
          BigDecimal taxRate,
      @Result(
              key = "taxReason",
              heading = "Reason",
              from = {
                "items.taxReason",
                "order.taxReason",
                "items.tax",
                "order.tax",
                "house.waiverTax",
                "document.kind",
                "items.reasons",
                "document.reasons"
              },
              rule = "Why the rate is 0.")
          String taxReason,
      @Result(
              key = "amount",
              heading = "Amount",
              form = NumberForm.MONEY,
              from = {
                "items.amount",
                "order.discount",
                "order.waiver",
                "order.tax",
                "items.tax",
                "order.downPayment",
                "order.security",
                "house.minAmount",
                "house.taxPer",
                "house.waiverOn",
                "house.waiverTax",
                "house.discountOn",
                "house.subHireDiscounted",
                "stock.value",
                "items.qty",
                "items.reasons",
                "document.reasons",
                ORDER_ALL,
                STOCK_ALL,
                HOUSE_ALL
              },
              rule =
                  "Sums of the lines above; the discount rounds once and is split over the rates; tax as the house rounds it.")
          BigDecimal amount) {}

  /** What stands below the lines of the client's page; none while it may not be issued. */
  @Table(key = "closing", heading = "Closing", rows = 30)
  public record ClosingLine(
      @Result(
              key = "text",
              heading = "Text",
              from = {HOUSE_ALL, ORDER_ALL, ITEMS_ALL, STOCK_ALL, "terms.*", ISSUED},
              rule =
                  "How days are charged, rows on request, waiver, payment, bank, terms, acceptance.")
          Phrase text) {}

  /** What each rate comes to; blank while the page may not be issued. */
  @Table(key = "taxes", heading = "Tax by rate", rows = 40)
  public record TaxLine(
      @Result(
              key = "rate",
              heading = "Tax rate",
              form = NumberForm.FINE_SHARE,
              from = {"items.reasons", "document.reasons", ORDER_ALL, HOUSE_ALL, ITEMS_ALL},
              rule = "Rates of the lines, the lowest first.")
          BigDecimal rate,
      @Result(
              key = "reason",
              heading = "Reason",
              from = {"items.reasons", "document.reasons", ORDER_ALL, HOUSE_ALL, ITEMS_ALL},
              rule = "Why the rate is 0.")
          String reason,
      @Result(
              key = "hire",
              heading = "Hire",
              form = NumberForm.MONEY,
              from = {
                "items.amount",
                "items.reasons",
                "document.reasons",
                ORDER_ALL,
                HOUSE_ALL,
                ITEMS_ALL
              },
              rule = "Hired lines of the rate.")
          BigDecimal hire,
      @Result(
              key = "discount",
              heading = "Discount",
              form = NumberForm.MONEY,
              from = {
                "items.amount",
                "items.reasons",
                "document.reasons",
                ORDER_ALL,
                HOUSE_ALL,
                ITEMS_ALL
              },
              rule = "Part of the order discount, by largest remainder.")
          BigDecimal discount,
      @Result(
              key = "minimum",
              heading = "Minimum hire",
              form = NumberForm.MONEY,
              from = {
                "items.amount",
                "items.reasons",
                "document.reasons",
                ORDER_ALL,
                HOUSE_ALL,
                ITEMS_ALL
              },
              rule = "What is missing to the smallest order, at the order's rate.")
          BigDecimal minimum,
      @Result(
              key = "waiver",
              heading = "Waiver",
              form = NumberForm.MONEY,
              from = {
                "items.amount",
                "items.reasons",
                "document.reasons",
                ORDER_ALL,
                HOUSE_ALL,
                ITEMS_ALL
              },
              rule = "The waiver, at its own rate.")
          BigDecimal waiver,
      @Result(
              key = "sold",
              heading = "Sold and services",
              form = NumberForm.MONEY,
              from = {
                "items.amount",
                "items.reasons",
                "document.reasons",
                ORDER_ALL,
                HOUSE_ALL,
                ITEMS_ALL
              },
              rule = "Lines of the rate that are not hired.")
          BigDecimal sold,
      @Result(
              key = "base",
              heading = "Net",
              form = NumberForm.MONEY,
              from = {
                "taxes.hire",
                "taxes.discount",
                "taxes.minimum",
                "taxes.waiver",
                "taxes.sold"
              },
              rule = "Sum of the parts.")
          BigDecimal base,
      @Result(
              key = "tax",
              heading = "Tax",
              form = NumberForm.MONEY,
              from = {"taxes.base", "taxes.rate", "house.taxPer", "items.amount"},
              rule = "Net × rate, rounded; or the sum of the lines' taxes.")
          BigDecimal tax) {}

  /** Whether papers that go with the kit may be issued. */
  @Table(key = "papers", heading = "Papers with the kit", rows = 1)
  public record PapersResult(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "papers.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                ISSUED,
                "picked.*",
                "picked.reasons",
                "items.reasons",
                ITEMS_ALL,
                STOCK_ALL,
                ORDER_ALL,
                HOUSE_ALL,
                SCHEDULE_ALL,
                SHARES_ALL
              },
              rule = "What stops Quote, and rows of Picking that are a stop.")
          List<Finding> reasons) {}

  /** Hired and sold rows that are fit, with their cautions; their weight. */
  @Table(key = "delivery", heading = "Delivery note", rows = 302)
  public record DeliveryRow(
      @Result(
              key = "kind",
              heading = "Line",
              from = {"papers.reasons", ISSUED, "picked.*", ITEMS_ALL, ORDER_ALL, HOUSE_ALL},
              rule = "Goods and their sum; one line while Quote or Picking has a stop.")
          PaperKind kind,
      @Result(
              key = "row",
              heading = "No.",
              from = {"papers.reasons", "items.reasons", "document.reasons", ITEMS_ALL},
              rule = "Row of the quote.")
          Integer row,
      @Result(
              key = "item",
              heading = "Item",
              from = {
                "papers.reasons",
                "items.item",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "As typed; the last line names the sum.")
          Phrase item,
      @Result(
              key = "pieces",
              heading = "Qty",
              unit = "pcs",
              form = NumberForm.EXACT,
              from = {
                "papers.reasons",
                "picked.qty",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.qty",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "As picked, else as typed; blank where Picking contradicts itself.")
          Double pieces,
      @Result(
              key = "serials",
              heading = "Serials",
              from = {
                "papers.reasons",
                "picked.serials",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Of what was picked.")
          String serials,
      @Result(
              key = "outOn",
              heading = "Out",
              form = NumberForm.DAY,
              from = {
                "papers.reasons",
                "items.outOn",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Day it goes out.")
          LocalDate outOn,
      @Result(
              key = "backOn",
              heading = "Back",
              form = NumberForm.DAY,
              from = {
                "papers.reasons",
                "items.backOn",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Day it is due.")
          LocalDate backOn,
      @Result(
              key = "weight",
              heading = "Weight",
              unit = "kg",
              form = NumberForm.TWO_DECIMALS,
              from = {
                "papers.reasons",
                "delivery.pieces",
                "stock.weight",
                "stock.item",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Of all pieces.")
          BigDecimal weight,
      @Result(
              key = "caution",
              heading = "Caution",
              from = {
                "papers.reasons",
                "stock.caution",
                "stock.item",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Of the item.")
          String caution) {}

  /** What must come back: hired rows that are fit. */
  @Table(key = "due", heading = "Return note", rows = 300)
  public record DueRow(
      @Result(
              key = "kind",
              heading = "Line",
              from = {"papers.reasons", ISSUED, "picked.*", ITEMS_ALL, ORDER_ALL, HOUSE_ALL},
              rule = "Goods and their sum; one line while Quote or Picking has a stop.")
          PaperKind kind,
      @Result(
              key = "row",
              heading = "No.",
              from = {"papers.reasons", "items.reasons", ITEMS_ALL, ORDER_ALL, HOUSE_ALL},
              rule = "Row of the quote.")
          Integer row,
      @Result(
              key = "item",
              heading = "Item",
              from = {
                "papers.reasons",
                "items.item",
                "items.reasons",
                ITEMS_ALL,
                ORDER_ALL,
                HOUSE_ALL
              },
              rule = "As typed; the last line names the sum.")
          Phrase item,
      @Result(
              key = "pieces",
              heading = "Qty",
              unit = "pcs",
              form = NumberForm.EXACT,
              from = {
                "papers.reasons",
                "picked.*",
                "items.qty",
                "items.reasons",
                ITEMS_ALL,
                ORDER_ALL,
                HOUSE_ALL
              },
              rule = "As picked, else as typed; blank where Picking contradicts itself.")
          Double pieces,
      @Result(
              key = "backOn",
              heading = "Due back",
              from = {
                "papers.reasons",
                "items.backOn",
                "items.reasons",
                ITEMS_ALL,
                ORDER_ALL,
                HOUSE_ALL
              },
              rule = "Last day of the row.")
          LocalDate backOn,
      @Result(
              key = "open",
              heading = "Not yet back",
              unit = "pcs",
              form = NumberForm.EXACT,
              from = {"papers.reasons", "due.pieces", "returns.*", "order.restBack"},
              rule = "Pieces less those on Returns; none where all else is back.")
          Double open,
      @Result(
              key = "counted",
              heading = "Counted",
              from = {"papers.reasons", "items.reasons", ITEMS_ALL, ORDER_ALL, HOUSE_ALL},
              rule = "To be written by hand.")
          String counted,
      @Result(
              key = "state",
              heading = "State",
              from = {"papers.reasons", "items.reasons", ITEMS_ALL, ORDER_ALL, HOUSE_ALL},
              rule = "To be written by hand.")
          String state) {}

  /** What the client owes after the return, and what he gets back. */
  @Table(key = "statement", heading = "Return statement", rows = 610)
  public record StatementLine(
      @Result(
              key = "kind",
              heading = "Line",
              from = {"returns.*", "returns.reasons", "due.open", ISSUED, ITEMS_ALL, ORDER_ALL},
              rule = "What was late, lost, damaged, what is not back; then the sums.")
          StatementKind kind,
      @Result(
              key = "label",
              heading = "Item",
              from = {
                "returns.*",
                "returns.reasons",
                "due.open",
                ISSUED,
                ITEMS_ALL,
                ORDER_ALL,
                STOCK_ALL,
                HOUSE_ALL
              },
              rule = "What the line is.")
          Phrase label,
      @Result(
              key = "row",
              heading = "No.",
              from = {"statement.kind", "returns.line"},
              rule = "Row of the quote.")
          Integer row,
      @Result(
              key = "dueOn",
              heading = "Due back",
              form = NumberForm.DAY,
              from = {"statement.kind", "items.backOn", "returns.line"},
              rule = "Back of the row, else of the order.")
          LocalDate dueOn,
      @Result(
              key = "returnedOn",
              heading = "Returned",
              form = NumberForm.DAY,
              from = {"statement.kind", "returns.date", "returns.state", "items.backOn"},
              rule = "As typed; of a loss without a day the day due.")
          LocalDate returnedOn,
      @Result(
              key = "pieces",
              heading = "Qty",
              unit = "pcs",
              form = NumberForm.EXACT,
              from = {"statement.kind", "returns.qty", "due.open"},
              rule = "Pieces that are late, lost, damaged or not back.")
          Double pieces,
      @Result(
              key = "daysLate",
              heading = "Days late",
              from = {"statement.kind", "returns.daysLate"},
              rule = "Days after due.")
          Long daysLate,
      @Result(
              key = "fee",
              heading = "Late fee",
              form = NumberForm.MONEY,
              from = {"statement.kind", "returns.fee"},
              rule = "Net.")
          BigDecimal fee,
      @Result(
              key = "tax",
              heading = "Tax on the fee",
              form = NumberForm.MONEY,
              from = {"statement.kind", "returns.feeTax"},
              rule = "At the rate of the row, rounded.")
          BigDecimal tax,
      @Result(
              key = "taxRate",
              heading = "Tax rate",
              form = NumberForm.FINE_SHARE,
              from = {"statement.fee", "items.tax", "order.tax", "returns.line"},
              rule = "Of the late fee; what is lost or damaged is not taxed here.")
          BigDecimal taxRate,
      @Result(
              key = "charged",
              heading = "Loss, damage",
              form = NumberForm.MONEY,
              from = {"statement.kind", "returns.charged"},
              rule = "Charged for the pieces, without tax.")
          BigDecimal charged,
      @Result(
              key = "amount",
              heading = "Amount",
              form = NumberForm.MONEY,
              from = {
                "statement.fee",
                "statement.tax",
                "statement.charged",
                "order.security",
                "summary.balance",
                "statement.kind"
              },
              rule = "Late fee, its tax and what is charged; their sum; less the security deposit.")
          BigDecimal amount) {}

  /** Hired rows that are fit, at replacement value. */
  @Table(key = "values", heading = "Insurer's list", rows = 302)
  public record ValueRow(
      @Result(
              key = "kind",
              heading = "Line",
              from = {"papers.reasons", ISSUED, "picked.*", ITEMS_ALL, ORDER_ALL, HOUSE_ALL},
              rule = "Goods and their sum; one line while Quote or Picking has a stop.")
          PaperKind kind,
      @Result(
              key = "row",
              heading = "No.",
              from = {"papers.reasons", "items.reasons", "document.reasons", ITEMS_ALL},
              rule = "Row of the quote.")
          Integer row,
      @Result(
              key = "item",
              heading = "Item",
              from = {
                "papers.reasons",
                "items.item",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "As typed; the last line names the sum.")
          Phrase item,
      @Result(
              key = "pieces",
              heading = "Qty",
              unit = "pcs",
              form = NumberForm.EXACT,
              from = {
                "papers.reasons",
                "picked.*",
                "items.qty",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "As picked, else as typed; blank where Picking contradicts itself.")
          Double pieces,
      @Result(
              key = "serials",
              heading = "Serials",
              from = {
                "papers.reasons",
                "picked.serials",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Of what was picked.")
          String serials,
      @Result(
              key = "each",
              heading = "Value of one",
              form = NumberForm.MONEY,
              from = {
                "papers.reasons",
                "stock.value",
                "stock.item",
                ORDER_ALL,
                HOUSE_ALL,
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "In the quote's currency.")
          BigDecimal each,
      @Result(
              key = "value",
              heading = "Value",
              form = NumberForm.MONEY,
              from = {"papers.reasons", "values.each", "values.pieces"},
              rule = "Of all pieces.")
          BigDecimal value) {}

  /** Goods for the carnet: rows that are fit and marked so. */
  @Table(key = "carnet", heading = "Carnet list", rows = 302)
  public record CarnetRow(
      @Result(
              key = "kind",
              heading = "Line",
              from = {"papers.reasons", ISSUED, "picked.*", ITEMS_ALL, ORDER_ALL, HOUSE_ALL},
              rule = "Goods and their sum; one line while Quote or Picking has a stop.")
          PaperKind kind,
      @Result(
              key = "number",
              heading = "Item no.",
              from = {
                "papers.reasons",
                "picked.carnet",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "In the order of the quote.")
          Integer number,
      @Result(
              key = "row",
              heading = "No.",
              from = {
                "papers.reasons",
                "picked.carnet",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Row of the quote.")
          Integer row,
      @Result(
              key = "item",
              heading = "Item",
              from = {
                "papers.reasons",
                "items.item",
                "picked.carnet",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "As typed; the last line names the sum.")
          Phrase item,
      @Result(
              key = "serials",
              heading = "Serials",
              from = {
                "papers.reasons",
                "picked.serials",
                "picked.carnet",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Of what was picked.")
          String serials,
      @Result(
              key = "pieces",
              heading = "Qty",
              unit = "pcs",
              form = NumberForm.EXACT,
              from = {
                "papers.reasons",
                "picked.qty",
                "items.qty",
                "picked.carnet",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "As picked, else as typed.")
          Double pieces,
      @Result(
              key = "weight",
              heading = "Weight",
              unit = "kg",
              form = NumberForm.TWO_DECIMALS,
              from = {
                "papers.reasons",
                "picked.qty",
                "items.qty",
                "stock.weight",
                "stock.item",
                "picked.carnet",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Of all pieces.")
          BigDecimal weight,
      @Result(
              key = "value",
              heading = "Value",
              form = NumberForm.MONEY,
              from = {
                "papers.reasons",
                "picked.qty",
                "items.qty",
                "stock.value",
                "stock.item",
                ORDER_ALL,
                HOUSE_ALL,
                "picked.carnet",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Of all pieces, in the quote's currency.")
          BigDecimal value,
      @Result(
              key = "origin",
              heading = "Country of origin",
              from = {
                "papers.reasons",
                "stock.origin",
                "stock.item",
                "picked.carnet",
                "picked.line",
                "picked.item",
                "picked.reasons",
                "items.reasons",
                "document.reasons",
                ITEMS_ALL
              },
              rule = "Of the item.")
          String origin) {}

  /** Figures of the whole quote; those of the client are blank while it may not be issued. */
  @Table(key = "summary", heading = "Summary", rows = 1)
  public record Summary(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "issues.verdict",
              rule = "The worst of all open issues.")
          Verdict verdict,
      @Result(
              key = "mayIssue",
              heading = "May be issued",
              from = "document.reasons",
              rule = "No row is a stop.")
          Boolean mayIssue,
      @Result(key = "rows", heading = "Rows", from = ITEMS_ALL, rule = "Rows of the quote.")
          Integer rows,
      @Result(
              key = "withheld",
              heading = "Rows kept back",
              from = {"items.reasons", ITEMS_ALL},
              rule = "Rows that are a stop: on no paper.")
          Integer withheld,
      @Result(
              key = "calendarDays",
              heading = "Calendar days",
              from = {"order.out", "order.back"},
              rule = "From out to back, both count.")
          Integer calendarDays,
      @Result(
              key = "decimals",
              heading = "Decimals",
              from = "order.currency",
              rule = "Of the quote's currency; blank where it is not known.")
          Integer decimals,
      @Result(
              key = "hire",
              heading = "Hire",
              form = NumberForm.MONEY,
              from = {"document.amount", "items.amount"},
              rule = "Hired lines.")
          BigDecimal hire,
      @Result(
              key = "discount",
              heading = "Order discount",
              form = NumberForm.MONEY,
              from = {"document.amount", "items.amount"},
              rule = "Taken off.")
          BigDecimal discount,
      @Result(
              key = "minimum",
              heading = "Minimum hire",
              form = NumberForm.MONEY,
              from = {"document.amount", "items.amount"},
              rule = "What is missing to the smallest order.")
          BigDecimal minimum,
      @Result(
              key = "waiver",
              heading = "Damage waiver",
              form = NumberForm.MONEY,
              from = {"document.amount", "items.amount"},
              rule = "Share of the hire.")
          BigDecimal waiver,
      @Result(
              key = "sold",
              heading = "Sold and services",
              form = NumberForm.MONEY,
              from = {"document.amount", "items.amount"},
              rule = "Not discounted.")
          BigDecimal sold,
      @Result(
              key = "net",
              heading = "Net",
              form = NumberForm.MONEY,
              from = {"document.amount", "items.amount"},
              rule = "Hire − discount + minimum + waiver + sold and services.")
          BigDecimal net,
      @Result(
              key = "tax",
              heading = "Tax",
              form = NumberForm.MONEY,
              from = {"document.amount", "taxes.tax"},
              rule = "Of all rates.")
          BigDecimal tax,
      @Result(
              key = "total",
              heading = "Total",
              form = NumberForm.MONEY,
              from = {"document.amount", "taxes.tax"},
              rule = "Net and tax.")
          BigDecimal total,
      @Result(
              key = "downPayment",
              heading = "Deposit",
              form = NumberForm.MONEY,
              from = {"document.amount", "taxes.tax"},
              rule = "Share of the total.")
          BigDecimal downPayment,
      @Result(
              key = "balance",
              heading = "Balance",
              form = NumberForm.MONEY,
              from = {"document.amount", "taxes.tax"},
              rule = "Total less down payment.")
          BigDecimal balance,
      @Result(
              key = "security",
              heading = "Security deposit",
              form = NumberForm.MONEY,
              from = {"order.security", "document.amount"},
              rule = "Apart from the total, untaxed.")
          BigDecimal security,
      @Result(
              key = "toInsure",
              heading = "Value to insure",
              form = NumberForm.MONEY,
              from = {"papers.reasons", "values.value"},
              rule = "Of all hired rows with a value.")
          BigDecimal toInsure,
      @Result(
              key = "withoutValue",
              heading = "Rows without value",
              from = {"papers.reasons", "values.value"},
              rule = "Hired rows that the value to insure lacks.")
          Integer withoutValue,
      @Result(
              key = "weight",
              heading = "Weight",
              unit = "kg",
              form = NumberForm.TWO_DECIMALS,
              from = {"papers.reasons", "delivery.weight"},
              rule = "Of all rows with a weight.")
          BigDecimal weight,
      @Result(
              key = "withoutWeight",
              heading = "Rows without weight",
              from = {"papers.reasons", "delivery.weight", "items.type"},
              rule = "Hired rows that the weight lacks.")
          Integer withoutWeight,
      @Result(
              key = "lateRows",
              heading = "Rows late",
              from = "returns.daysLate",
              rule = "Returns after due.")
          Integer lateRows,
      @Result(
              key = "lateFees",
              heading = "Late fees",
              form = NumberForm.MONEY,
              from = {"returns.fee", "order.currency"},
              rule = "Net, of all returns.")
          BigDecimal lateFees,
      @Result(
              key = "lateTax",
              heading = "Tax on late fees",
              form = NumberForm.MONEY,
              from = {"returns.feeTax", "order.currency"},
              rule = "Of all returns.")
          BigDecimal lateTax,
      @Result(
              key = "lost",
              heading = "Loss, damage",
              form = NumberForm.MONEY,
              from = {"returns.charged", "order.currency"},
              rule = "Charged for what is lost or damaged, without tax.")
          BigDecimal lost,
      @Result(
              key = "charges",
              heading = "Charges after the return",
              form = NumberForm.MONEY,
              from = {"summary.lateFees", "summary.lateTax", "summary.lost"},
              rule = "Late fees, their tax, loss and damage.")
          BigDecimal charges,
      @Result(
              key = "giveBack",
              heading = "Security deposit to give back",
              form = NumberForm.MONEY,
              from = {"statement.amount", "order.security", ISSUED, "returns.*"},
              rule = "Security deposit less the charges, not below 0; blank before a return.")
          BigDecimal giveBack,
      @Result(
              key = "toPay",
              heading = "Still to pay",
              form = NumberForm.MONEY,
              from = {"statement.amount", "order.security", ISSUED, "returns.*"},
              rule = "Charges less the security deposit, not below 0; blank before a return.")
          BigDecimal toPay,
      @Result(
              key = "openPoints",
              heading = "Open points of the return",
              from = {"statement.amount", "statement.kind", ISSUED, "returns.*"},
              rule = "Lines of the return statement without an amount.")
          Integer openPoints,
      @Result(
              key = "subHire",
              heading = "Cost of sub-hire",
              form = NumberForm.MONEY,
              from = {"returns.subCost", "items.subCost", "order.currency"},
              rule = "Of all rows.")
          BigDecimal subHire,
      @Result(
              key = "margin",
              heading = "Margin on sub-hire",
              form = NumberForm.MONEY,
              from = {"returns.subCost", "returns.fee", "items.margin", "order.currency"},
              rule = "Of rows with a cost and a price, with late days.")
          BigDecimal margin) {}
}
