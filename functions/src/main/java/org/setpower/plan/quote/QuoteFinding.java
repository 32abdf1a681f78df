package org.setpower.plan.quote;

import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;

/**
 * What can be wrong in a quote. A stop keeps the client's page back: it is only for a quantity, a
 * price, a date or a tax that is not known.
 */
public enum QuoteFinding implements FindingKey {
  /** Arguments: code. */
  CURRENCY_UNKNOWN("currency", Severity.STOP),
  /** Arguments: currency of the price list, of the quote. */
  EXCHANGE_MISSING("exchange", Severity.STOP),
  /** Arguments: currency of the price list, rate, currency of the quote, usual rate. */
  EXCHANGE_IMPLAUSIBLE("exchange.implausible", Severity.CHECK),
  /** Arguments: back, out. */
  BACK_BEFORE_OUT("dates", Severity.STOP),
  /** Arguments: days allowed. */
  HIRE_TOO_LONG("long", Severity.STOP),
  /** Arguments: quantity. */
  NOT_WHOLE("whole", Severity.STOP),
  NO_RATE("noRate", Severity.STOP),
  NO_WEEK_RATE("noWeekRate", Severity.STOP),
  WEEK_RATE_UNUSED("weekRateUnused", Severity.CHECK),
  /** Arguments: type of day. */
  DAY_TYPE_UNKNOWN("dayType", Severity.STOP),
  /** Arguments: out, back. */
  NOT_SCHEDULED("notScheduled", Severity.STOP),
  TAX_REASON("taxReason", Severity.CHECK),
  /** Arguments: out, date of the quote. */
  OUT_BEFORE_DATE("outBeforeDate", Severity.CHECK),
  /** Arguments: out, date of the quote. */
  OUT_FAR_BEFORE_DATE("outFarBeforeDate", Severity.STOP),
  /** Arguments: days, out, back. */
  ORDER_LONG("orderLong", Severity.CHECK),
  /** Arguments: rate in per cent. */
  TAX_ODD("taxOdd", Severity.CHECK),
  /** Arguments: price by the day, by the week. */
  DEARER_BY_DAY("dearerByDay", Severity.CHECK),
  WAIVER_TAX("waiverTax", Severity.CHECK),
  /** Arguments: heading. */
  WAIVER_TERMS("waiverTerms", Severity.CHECK),
  /** Arguments: date, out of the order, back of the order. */
  ROW_OUTSIDE("row.outside", Severity.CHECK),
  /** Arguments: date, out of the order, back of the order. */
  ROW_FAR_OUTSIDE("row.farOutside", Severity.STOP),
  ROW_ZERO("row.zero", Severity.CHECK),
  ROW_FREE("row.free", Severity.CHECK),
  ORDER_FREE("orderFree", Severity.CHECK),
  /** Arguments: number and revision, total exported, total now. */
  SENT_TOTAL("sent.total", Severity.CHECK),
  /** Arguments: number and revision, total. */
  SENT_OTHER("sent.other", Severity.CHECK),
  /** Arguments: hired rows not ordered, order discount in per cent. */
  PART_ORDERED("partOrdered", Severity.CHECK),
  /** Arguments: rows. */
  DISCOUNT_TELLS("discountTells", Severity.CHECK),
  /** Arguments: rate of the row, of Equipment. */
  RATE_FAR("rateFar", Severity.CHECK),
  /** Arguments: hire of one piece, its replacement value. */
  DEARER_THAN_VALUE("dearerThanValue", Severity.CHECK),
  /** Other rows are picked. */
  NOT_PICKED("notPicked", Severity.CHECK),
  NOT_IN_STOCK("notInStock", Severity.CHECK),
  STOCK_UNCLEAR("stockUnclear", Severity.CHECK),
  /** Arguments: names. */
  ALSO_UNCLEAR("alsoUnclear", Severity.CHECK),
  NOT_OWNED("notOwned", Severity.CHECK),
  /** Arguments: pieces short, pieces out, date, pieces available. */
  SHORT("short", Severity.CHECK),
  NO_VALUE("noValue", Severity.CHECK),
  NO_WEIGHT("noWeight", Severity.CHECK),
  SUB_HIRE_VALUE("subHire.value", Severity.CHECK),
  SUB_HIRE_HALF("subHire.half", Severity.CHECK),
  /** Arguments: days. */
  SUB_HIRE_DAYS("subHire.days", Severity.CHECK),
  /** Arguments: cost, net of the client. */
  SUB_HIRE_LOSS("subHire.loss", Severity.CHECK),
  /** Arguments: last day of the insurance, last day of the hire. */
  INSURANCE_ENDS("insurance.ends", Severity.CHECK),
  NOT_INSURED("insurance.none", Severity.CHECK),
  /** Arguments: valid until, date. */
  VALID_UNTIL("validUntil", Severity.CHECK),
  /** Arguments: valid until, out. */
  VALID_AFTER_OUT("validAfterOut", Severity.CHECK),
  /** Arguments: heading. */
  MISSING_ON_PAGE("missing", Severity.CHECK),
  /** Arguments: to, from. */
  BOOKED_DATES("booked.dates", Severity.STOP),
  /** Arguments: row. */
  PICK_LINE("pick.line", Severity.STOP),
  /** Arguments: row. */
  PICK_TWICE("pick.twice", Severity.STOP),
  /** Arguments: pieces picked, pieces quoted. */
  PICKED_OTHER("pick.other", Severity.CHECK),
  /** Arguments: row, other rows with the item. */
  PICK_SAME_ITEM("pick.same", Severity.CHECK),
  /** Arguments: serials, pieces. */
  PICK_SERIALS("pick.serials", Severity.CHECK),
  /** Arguments: row. */
  PICK_NOT_ORDERED("pick.notOrdered", Severity.STOP),
  /** Several rows whose numbers do not fit their items. */
  NUMBERS_OFF("numbersOff", Severity.STOP),
  NO_ORIGIN("noOrigin", Severity.CHECK),
  /** Arguments: row. */
  RETURN_LINE("return.line", Severity.STOP),
  /** Arguments: row, item of that row. */
  RETURN_ITEM("return.item", Severity.STOP),
  /** Arguments: pieces back, pieces out. */
  RETURN_TOO_MANY("return.many", Severity.STOP),
  /** Arguments: row, other rows with the item. */
  RETURN_SAME_ITEM("return.same", Severity.CHECK),
  /** Arguments: damage, what is charged, excess of one piece. */
  RETURN_EXCESS("return.excess", Severity.CHECK),
  RETURN_NO_EXCESS("return.noExcess", Severity.CHECK),
  RETURN_LOSS_RULE("return.lossRule", Severity.CHECK),
  /** Arguments: days, cost. */
  RETURN_SUB_HIRE("return.subHire", Severity.CHECK),
  /** Arguments: date, day due. */
  RETURN_FAR("return.far", Severity.STOP),
  /** Arguments: returned, out. */
  RETURN_EARLY("return.early", Severity.STOP),
  /** Arguments: row. */
  RETURN_NO_PRICE("return.price", Severity.STOP),
  /** Arguments: days, fee. */
  LATE("return.late", Severity.CHECK),
  /** Arguments: days, fee. */
  LATE_EVERY_DAY("return.lateEveryDay", Severity.CHECK),
  /** Arguments: days. */
  LATE_FREE("return.lateFree", Severity.CHECK),
  /** Arguments: pieces. */
  DAMAGED("return.damaged", Severity.CHECK),
  /** Arguments: pieces. */
  LOST("return.lost", Severity.CHECK),
  /** Arguments: pieces. */
  LOST_NO_VALUE("return.lostNoValue", Severity.CHECK),
  /** Arguments: pieces. */
  NOT_BACK("return.notBack", Severity.CHECK),
  NOTHING_QUOTED("empty", Severity.STOP),
  /** Arguments: rows. */
  NOT_ISSUED_ROWS("notIssued.rows", Severity.STOP),
  /** Arguments: rows of Picking. */
  NOT_ISSUED_PICKED("notIssued.picked", Severity.STOP),
  /** Arguments: table. */
  NOT_ISSUED_TABLE("notIssued.table", Severity.STOP);

  private final String key;
  private final Severity severity;

  QuoteFinding(String key, Severity severity) {
    this.key = "quote." + key;
    this.severity = severity;
  }

  @Override
  public String key() {
    return key;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
