package org.setpower.plan.quote;

import java.time.LocalDate;
import java.util.List;
import org.setpower.hire.Weekend;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Table;
import org.setpower.plan.quote.terms.DayCounting;
import org.setpower.plan.quote.terms.DiscountBasis;
import org.setpower.plan.quote.terms.LateRule;
import org.setpower.plan.quote.terms.LineType;
import org.setpower.plan.quote.terms.OrderStatus;
import org.setpower.plan.quote.terms.RateBasis;
import org.setpower.plan.quote.terms.ReturnState;
import org.setpower.plan.quote.terms.TaxRounding;
import org.setpower.plan.quote.terms.WaivedLoss;
import org.setpower.plan.quote.terms.WaiverBasis;

/**
 * The tables to fill of a rental quote.
 *
 * @param house who hires out, and the rules the house sets once
 * @param client who hires
 * @param order what holds for the whole quote
 * @param items rows of the quote, in the order of the client's page
 * @param stock price list and shelf
 * @param booked what other orders take
 * @param schedule days by type
 * @param shares what a type of day is charged
 * @param picked what was picked, at most one row for each row of the quote
 * @param returns what came back, one row for each row of the quote and day
 * @param terms terms on the quote
 */
public record QuoteInputs(
    InputRows<House> house,
    InputRows<Client> client,
    InputRows<Order> order,
    InputRows<Item> items,
    InputRows<Stock> stock,
    InputRows<Booking> booked,
    InputRows<ScheduleDay> schedule,
    InputRows<DayShare> shares,
    InputRows<Pick> picked,
    InputRows<Return> returns,
    InputRows<Term> terms) {
  static final InputTable<House> HOUSE = InputTable.of(House.class);
  static final InputTable<Client> CLIENT = InputTable.of(Client.class);
  static final InputTable<Order> ORDER = InputTable.of(Order.class);
  static final InputTable<Item> ITEMS = InputTable.of(Item.class);
  static final InputTable<Stock> STOCK = InputTable.of(Stock.class);
  static final InputTable<Booking> BOOKED = InputTable.of(Booking.class);
  static final InputTable<ScheduleDay> SCHEDULE = InputTable.of(ScheduleDay.class);
  static final InputTable<DayShare> SHARES = InputTable.of(DayShare.class);
  static final InputTable<Pick> PICKED = InputTable.of(Pick.class);
  static final InputTable<Return> RETURNS = InputTable.of(Return.class);
  static final InputTable<Term> TERMS = InputTable.of(Term.class);

  /** All tables, in the order of the function's arguments. */
  List<InputRows<?>> all() {
    return List.of(
        house, client, order, items, stock, booked, schedule, shares, picked, returns, terms);
  }

  /** Who hires out, and the rules the house sets once. */
  @Table(key = "house", heading = "Our house", rows = 1, upright = true)
  public record House(
      @Input(
              key = "name",
              heading = "Name",
              blank = "Blank: the page lacks it, check.",
              help = "Our company as it stands on the quote.")
          String name,
      @Input(key = "address", heading = "Address", blank = "Blank: the page lacks it, check.")
          String address,
      @Input(key = "taxNumber", heading = "VAT number", blank = "Blank: the page lacks it, check.")
          String taxNumber,
      @Input(
              key = "contact",
              heading = "Contact",
              blank = "Blank: the page lacks it, check.",
              help = "Role, telephone or mail of the desk.")
          String contact,
      @Input(
              key = "bank",
              heading = "Bank",
              blank = "Blank: the page lacks it, check.",
              help = "Account to pay to.")
          String bank,
      @Input(
              key = "payment",
              heading = "Payment terms",
              blank = "Blank: the page lacks it, check.",
              help = "When and how the client pays.")
          String payment,
      @Input(
              key = "currency",
              heading = "Currency of the price list",
              blank = "Blank: the currency of the quote.",
              help = "Three letters of ISO 4217, of the rates and values of Equipment.")
          String currency,
      @Input(
              key = "discountOn",
              heading = "Order discount on",
              blank = "Blank: hired rows.",
              help = "Which hired rows the order discount is taken off.")
          DiscountBasis discountOn,
      @Input(
              key = "subHireDiscounted",
              heading = "Sub-hire discounted",
              blank = "Blank: yes.",
              help = "Whether the order discount is taken off sub-hired rows too.")
          Boolean subHireDiscounted,
      @Input(
              key = "waiverOn",
              heading = "Waiver on",
              blank = "Blank: hire after discount.",
              help = "What the damage waiver is a share of.")
          WaiverBasis waiverOn,
      @Input(
              key = "waiverTax",
              heading = "Tax on the waiver",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: untaxed, check where there is a waiver.",
              help = "Share. Ask your accountant.")
          Double waiverTax,
      @Input(
              key = "excess",
              heading = "Excess with a waiver",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: damage is charged in full, check.",
              help = "Most charged for each damaged piece where a waiver is paid.")
          Double excess,
      @Input(
              key = "waivedLoss",
              heading = "Loss with a waiver",
              blank = "Blank: charged in full, check.",
              help = "What a lost or stolen piece costs a client who pays the waiver.")
          WaivedLoss waivedLoss,
      @Input(
              key = "taxPer",
              heading = "Tax rounded",
              blank = "Blank: per rate.",
              help = "Once a rate, or on each line.")
          TaxRounding taxPer,
      @Input(
              key = "counted",
              heading = "Days counted",
              blank = "Blank: by dates.",
              help = "By dates with a cap a week, or as Days by type says.")
          DayCounting counted,
      @Input(
              key = "daysPerWeek",
              heading = "Charged days a week",
              form = NumberForm.EXACT,
              min = 0.5,
              max = 7,
              blank = "Blank: 7, every day is charged.",
              help = "Most days charged of seven from the day out on, for rows by the day.")
          Double daysPerWeek,
      @Input(
              key = "weekend",
              heading = "Weekend",
              blank = "Blank: two days.",
              help = "How the days of a weekend count.")
          Weekend weekend,
      @Input(
              key = "minDays",
              heading = "Min. charged days",
              form = NumberForm.EXACT,
              min = 0,
              max = 99,
              blank = "Blank: 1 day.",
              help = "Fewest days charged for a row by the day.")
          Double minDays,
      @Input(
              key = "minAmount",
              heading = "Min. order",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: none.",
              help =
                  "Smallest hire of an order after discount; what is missing is a line of its own.")
          Double minAmount,
      @Input(
              key = "late",
              heading = "Late return",
              blank = "Blank: same rule.",
              help = "What is charged for a return after Back.")
          LateRule late,
      @Input(
              key = "turnaround",
              heading = "Turnaround",
              unit = "days",
              form = NumberForm.EXACT,
              min = 0,
              max = 60,
              blank = "Blank: 0 days.",
              help = "Days after Back on which pieces are not yet on the shelf again.")
          Double turnaround) {}

  /** Who hires. */
  @Table(key = "client", heading = "Client", rows = 1, upright = true)
  public record Client(
      @Input(
              key = "name",
              heading = "Client",
              blank = "Blank: the page lacks it, check.",
              help = "The company that pays.")
          String name,
      @Input(
              key = "contact",
              heading = "Contact",
              blank = "Blank: none is printed.",
              help = "Role that ordered.")
          String contact,
      @Input(
              key = "billing",
              heading = "Billing address",
              blank = "Blank: the page lacks it, check.")
          String billing,
      @Input(key = "delivery", heading = "Delivery address", blank = "Blank: the client collects.")
          String delivery,
      @Input(
              key = "site",
              heading = "Contact on site",
              blank = "Blank: none is printed.",
              help = "Role and telephone at the delivery address, for the driver.")
          String site,
      @Input(
              key = "purchaseOrder",
              heading = "Purchase order",
              blank = "Blank: none is printed.",
              help = "The client's number.")
          String purchaseOrder,
      @Input(
              key = "taxNumber",
              heading = "VAT number",
              blank = "Blank: none is printed.",
              help = "The client's, where the tax needs it.")
          String taxNumber) {}

  /** What holds for the whole quote. */
  @Table(key = "order", heading = "Project", rows = 1, upright = true)
  public record Order(
      @Input(
              key = "number",
              heading = "Quote number",
              blank = "Blank: the page lacks it, check.",
              help = "Your own number.")
          String number,
      @Input(
              key = "revision",
              heading = "Revision",
              blank = "Blank: first.",
              help = "Counts up with each change the client gets.")
          String revision,
      @Input(
              key = "replaces",
              heading = "Replaces",
              blank = "Blank: none.",
              help = "Number and revision that this quote replaces.")
          String replaces,
      @Input(
              key = "date",
              heading = "Date",
              blank = "Blank: the page lacks it, check.",
              help = "Day of the quote.")
          LocalDate date,
      @Input(
              key = "validUntil",
              heading = "Valid until",
              blank = "Blank: the page lacks it, check.",
              help = "Last day on which the client can accept.")
          LocalDate validUntil,
      @Input(
              key = "currency",
              heading = "Currency",
              help = "Three letters of ISO 4217: EUR, USD, GBP.")
          String currency,
      @Input(
              key = "exchange",
              heading = "Exchange rate",
              form = NumberForm.EXACT,
              min = 0.000001,
              max = 1_000_000,
              blank = "Blank: none; needed where the price list has another currency.",
              help = "What one unit of the price list's currency is in the quote's.")
          Double exchange,
      @Input(key = "out", heading = "Out", help = "Day the kit leaves the shelf. It counts.")
          LocalDate out,
      @Input(key = "back", heading = "Back", help = "Day it must be back. It counts too.")
          LocalDate back,
      @Input(
              key = "agreedDays",
              heading = "Days agreed",
              form = NumberForm.EXACT,
              min = 0,
              max = 3660,
              blank = "Blank: the rule counts.",
              help = "Of rows by the day without dates of their own.")
          Double agreedDays,
      @Input(
              key = "discount",
              heading = "Order discount",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: none.",
              help = "Share off hired rows, after their own discount.")
          Double discount,
      @Input(
              key = "waiver",
              heading = "Damage waiver",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: none.",
              help = "Share of the hire, where the client has no insurance.")
          Double waiver,
      @Input(key = "taxName", heading = "Tax is called", blank = "Blank: VAT.") String taxName,
      @Input(
              key = "tax",
              heading = "Tax",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              help = "Usual rate. Type 0 where there is none.")
          Double tax,
      @Input(
              key = "taxReason",
              heading = "Reason of no tax",
              blank = "Blank: none is printed.",
              help = "Of a rate of 0: exempt, export, reverse charge.")
          String taxReason,
      @Input(
              key = "downPayment",
              heading = "Deposit",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: none.",
              help = "Share of the total, due before the kit goes out.")
          Double downPayment,
      @Input(
              key = "security",
              heading = "Security deposit",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: none.",
              help = "Given back after the return. Not part of the total, not taxed.")
          Double security,
      @Input(
              key = "insuredUntil",
              heading = "Client insured until",
              blank = "Blank: no certificate seen, check without a waiver.",
              help = "From the insurer's certificate.")
          LocalDate insuredUntil,
      @Input(
              key = "restBack",
              heading = "All else back on time",
              blank = "Blank: only what Returns lists came back.",
              help = "Yes: what Returns does not list came back complete, fine and when due.")
          Boolean restBack,
      @Input(
              key = "statedOn",
              heading = "Date of return statement",
              blank = "Blank: the return statement has no date.",
              help = "Day on which it goes to the client.")
          LocalDate statedOn,
      @Input(
              key = "sentRevision",
              heading = "Exported as",
              blank = "Blank: not exported yet.",
              help = "Number and revision. Written by Export client quote; do not type here.")
          String sentRevision,
      @Input(
              key = "sentTotal",
              heading = "Exported total",
              form = NumberForm.MONEY,
              min = -1_000_000_000,
              max = 1_000_000_000,
              blank = "Blank: not exported yet.",
              help = "Written by Export client quote; do not type here.")
          Double sentTotal,
      @Input(
              key = "sentKey",
              heading = "Export key",
              form = NumberForm.EXACT,
              min = 0,
              max = 4_294_967_295.0,
              blank = "Blank: later changes pass unnoticed.",
              help = "Written by Export client quote, worked out of what stands on the page.")
          Double sentKey) {}

  /** Rows of the quote, in the order of the client's page. */
  @Table(key = "items", heading = "Quote", rows = 300)
  public record Item(
      @Input(key = "item", heading = "Item", help = "As on Equipment, or anything else.")
          String item,
      @Input(
              key = "section",
              heading = "Section",
              blank = "Blank: other.",
              help = "Heading on the client's page.")
          String section,
      @Input(
              key = "qty",
              heading = "Qty",
              form = NumberForm.EXACT,
              min = 0,
              max = 99_999,
              help = "Pieces; of a service also km or hours.")
          Double qty,
      @Input(key = "type", heading = "Type", blank = "Blank: hired.") LineType type,
      @Input(
              key = "basis",
              heading = "Rate for",
              blank =
                  "Blank: week where a week rate is typed in this row, once where sold or service,"
                      + " day otherwise.",
              help = "on request: no price, not in the total.")
          RateBasis basis,
      @Input(
              key = "rate",
              heading = "Rate",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: that of Equipment.",
              help = "Of one piece, a day; where once, its price.")
          Double rate,
      @Input(
              key = "discount",
              heading = "Discount",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: none.",
              help = "Share off this row.")
          Double discount,
      @Input(
              key = "order",
              heading = "Order status",
              blank = "Blank: ordered.",
              help = "option: offered, in no sum. dropped: on no paper, kept as a record.")
          OrderStatus order,
      @Input(key = "out", heading = "Out", blank = "Blank: that of Project.") LocalDate out,
      @Input(key = "back", heading = "Back", blank = "Blank: that of Project.") LocalDate back,
      @Input(
              key = "weekRate",
              heading = "Week rate",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: that of Equipment where the row is by the week.",
              help = "First week of one piece.")
          Double weekRate,
      @Input(
              key = "secondWeekRate",
              heading = "Second week rate",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: the week rate.",
              help = "Each later week of one piece.")
          Double secondWeekRate,
      @Input(
              key = "tax",
              heading = "Tax",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 1,
              blank = "Blank: that of Project.")
          Double tax,
      @Input(key = "taxReason", heading = "Reason of no tax", blank = "Blank: that of Project.")
          String taxReason,
      @Input(
              key = "agreedDays",
              heading = "Days agreed",
              form = NumberForm.EXACT,
              min = 0,
              max = 3660,
              blank = "Blank: the rule counts.")
          Double agreedDays,
      @Input(
              key = "subFrom",
              heading = "Sub-hired from",
              blank = "Blank: own stock.",
              help = "Never on the client's page.")
          String subFrom,
      @Input(
              key = "subRate",
              heading = "Sub-hire rate",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: none.",
              help = "Of one piece and day, in the quote's currency. Never on the client's page.")
          Double subRate,
      @Input(
              key = "subDays",
              heading = "Sub-hire days",
              form = NumberForm.EXACT,
              min = 0,
              max = 3660,
              blank = "Blank: every day from out to back.",
              help = "Days that the other house charges.")
          Double subDays,
      @Input(
              key = "netPrice",
              heading = "Net price",
              blank = "Blank: no.",
              help = "Yes: no order discount on this row; the client's page marks it.")
          Boolean netPrice,
      @Input(
              key = "insteadOf",
              heading = "Instead of",
              blank = "Blank: nothing is replaced.",
              help = "What the client asked for.")
          String insteadOf) {}

  /** Price list and shelf. */
  @Table(key = "stock", heading = "Equipment", rows = 300)
  public record Stock(
      @Input(key = "item", heading = "Item", help = "One row for each item.") String item,
      @Input(
              key = "owned",
              heading = "Owned",
              form = NumberForm.EXACT,
              min = 0,
              max = 99_999,
              blank = "Blank: not compared with the quote, check.")
          Double owned,
      @Input(
              key = "outOfService",
              heading = "Out of service",
              form = NumberForm.EXACT,
              min = 0,
              max = 99_999,
              blank = "Blank: none.")
          Double outOfService,
      @Input(
              key = "dayRate",
              heading = "Day rate",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: the row needs its own.",
              help = "Of hired items a day, of others the price.")
          Double dayRate,
      @Input(
              key = "weekRate",
              heading = "Week rate",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: the row needs its own.")
          Double weekRate,
      @Input(
              key = "secondWeekRate",
              heading = "Second week rate",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: the week rate.")
          Double secondWeekRate,
      @Input(
              key = "value",
              heading = "Replacement value",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: missing on the insurer's list, check.",
              help = "Of one piece.")
          Double value,
      @Input(
              key = "weight",
              heading = "Weight",
              unit = "kg",
              form = NumberForm.EXACT,
              min = 0,
              max = 100_000,
              blank = "Blank: missing on the delivery note, check.",
              help = "Of one piece.")
          Double weight,
      @Input(
              key = "caution",
              heading = "Caution",
              blank = "Blank: none.",
              help = "Printed on the delivery note.")
          String caution,
      @Input(
              key = "origin",
              heading = "Country of origin",
              blank = "Blank: missing on the carnet list, check.",
              help = "Two letters.")
          String origin,
      @Input(
              key = "also",
              heading = "Also called",
              blank = "Blank: other files call it the same.",
              help =
                  "Names in other files, with ; between. Bring in rows finds the item by each of"
                      + " them.")
          String also) {}

  /** What other orders take. */
  @Table(key = "booked", heading = "Booked elsewhere", rows = 200)
  public record Booking(
      @Input(key = "item", heading = "Item", help = "As on Equipment.") String item,
      @Input(
              key = "qty",
              heading = "Qty",
              form = NumberForm.EXACT,
              min = 0,
              max = 99_999,
              help = "Pieces.")
          Double qty,
      @Input(key = "from", heading = "From", help = "First day out.") LocalDate from,
      @Input(key = "to", heading = "To", help = "Last day, without turnaround.") LocalDate to) {}

  /** Days by type. */
  @Table(key = "schedule", heading = "Days by type", rows = 120)
  public record ScheduleDay(
      @Input(key = "date", heading = "Date", help = "Each date once, or its highest share counts.")
          LocalDate date,
      @Input(key = "dayType", heading = "Type of day", help = "As in Share charged by type of day.")
          String dayType) {}

  /** What a type of day is charged. */
  @Table(key = "shares", heading = "Share charged by type of day", rows = 12)
  public record DayShare(
      @Input(key = "dayType", heading = "Type of day", help = "shoot, prep, travel.")
          String dayType,
      @Input(
              key = "share",
              heading = "Share charged",
              form = NumberForm.FINE_SHARE,
              min = 0,
              max = 5,
              help = "Of a day's rate.")
          Double share) {}

  /** What was picked, at most one row for each row of the quote. */
  @Table(key = "picked", heading = "Picking", rows = 300)
  public record Pick(
      @Input(
              key = "line",
              heading = "Row",
              form = NumberForm.EXACT,
              min = 1,
              max = 100_000,
              help = "No. of the row on Quote.",
              rowOf = "items")
          Double line,
      @Input(
              key = "item",
              heading = "Item",
              blank = "Blank: that of the row.",
              help = "As in that row: typed, it shows that the number still fits.")
          String item,
      @Input(
              key = "qty",
              heading = "Qty",
              form = NumberForm.EXACT,
              min = 0,
              max = 99_999,
              blank = "Blank: all pieces of the row.",
              help = "Pieces picked.")
          Double qty,
      @Input(
              key = "serials",
              heading = "Serials",
              blank = "Blank: none are printed.",
              help = "On the insurer's and the carnet list.")
          String serials,
      @Input(
              key = "carnet",
              heading = "Carnet",
              blank = "Blank: no.",
              help = "Yes: on the list of goods for the carnet.")
          Boolean carnet) {}

  /** What came back, one row for each row of the quote and day. */
  @Table(key = "returns", heading = "Returns", rows = 300)
  public record Return(
      @Input(
              key = "line",
              heading = "Row",
              form = NumberForm.EXACT,
              min = 1,
              max = 100_000,
              help = "No. of the row on Quote.",
              rowOf = "items")
          Double line,
      @Input(
              key = "item",
              heading = "Item",
              blank = "Blank: that of the row.",
              help = "As in that row: typed, it shows that the number still fits.")
          String item,
      @Input(
              key = "qty",
              heading = "Qty",
              form = NumberForm.EXACT,
              min = 0,
              max = 99_999,
              help = "Pieces of this row that came back so.")
          Double qty,
      @Input(
              key = "date",
              heading = "Returned",
              blank = "Blank: where lost, the day due; else stop.",
              help = "Day on which they came back.")
          LocalDate date,
      @Input(key = "state", heading = "State", blank = "Blank: fine.") ReturnState state,
      @Input(
              key = "charge",
              heading = "Charge",
              form = NumberForm.MONEY,
              min = 0,
              max = 10_000_000,
              blank = "Blank: the replacement value where lost; open where damaged.",
              help =
                  "For all these pieces, in the quote's currency, without tax. Pieces with other"
                      + " damage: another row.")
          Double charge) {}

  /** Terms on the quote. */
  @Table(key = "terms", heading = "Terms", rows = 20)
  public record Term(
      @Input(key = "paragraph", heading = "Paragraph", help = "One paragraph of your terms.")
          String paragraph) {}
}
