package org.setpower.plan.budget;

import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;

/** What can be wrong in a budget. */
public enum BudgetFinding implements FindingKey {
  /** Arguments: code. */
  CURRENCY_UNKNOWN("currency", Severity.STOP),
  /** Arguments: currency of the line. */
  NO_EXCHANGE("exchange", Severity.STOP),
  RATE_UNDATED("rateUndated", Severity.CHECK),
  /** Arguments: currency, rate, currency of the budget, usual rate. */
  RATE_IMPLAUSIBLE("rateImplausible", Severity.CHECK),
  /** Arguments: count. */
  COUNT_UNKNOWN("count.unknown", Severity.STOP),
  /** Arguments: count, × days typed. */
  COUNT_IN_ALL("count.inAll", Severity.STOP),
  /** Arguments: unit of the price. */
  TIMES_BLANK("times", Severity.CHECK),
  PRICE_BLANK("price", Severity.CHECK),
  STRUCK_ORDERED("struck", Severity.STOP),
  /** Counted in all, with days away: persons are not known. */
  PERSONS_UNKNOWN("persons", Severity.STOP),
  TIERS_UNCLEAR("tiers", Severity.STOP),
  /** Arguments: hours. */
  COVERED_BLANK("covered", Severity.CHECK),
  /** Arguments: hours, hours covered. */
  NO_TIERS("noTiers", Severity.CHECK),
  CREW_ONLY("crewOnly", Severity.CHECK),
  /** Hours of crew whose price is for neither a day, a week nor an hour. */
  HOURS_UNUSED("hours", Severity.CHECK),
  /** Arguments: × days, days of the hire. */
  HOURS_AS_DAYS("hoursAsDays", Severity.CHECK),
  /** Arguments: × days, weeks of the hire. */
  WEEKS_AS_DAYS("weeksAsDays", Severity.CHECK),
  /** Arguments: type. */
  SIGN_MINUS("sign.minus", Severity.CHECK),
  SIGN_PLUS("sign.plus", Severity.CHECK),
  /** Arguments: ordered. */
  COMPLETE_NO_INVOICE("complete.noInvoice", Severity.STOP),
  /** Arguments: ordered less invoiced. */
  COMPLETE_LESS("complete.less", Severity.CHECK),
  /** Arguments: total kept at the approval, approved amounts of the lines now. */
  APPROVED_DIFFERS("approved.differs", Severity.STOP),
  APPROVED_CHANGED("approved.changed", Severity.STOP),
  APPROVED_OPEN("approved.open", Severity.CHECK),
  /** Arguments: taken out of the contingency, contingency. */
  CONTINGENCY_USED_UP("contingency", Severity.STOP),
  /** Arguments: contingency approved, what the share comes to now. */
  CONTINGENCY_MOVED("contingency.moved", Severity.CHECK),
  /** Arguments: from contingency, approved changes. */
  FROM_CONTINGENCY("fromContingency", Severity.CHECK),
  SALES_TAX("salesTax", Severity.CHECK),
  TAX_LEFT_OUT("taxLeft", Severity.CHECK),
  TAX_LEFT_OUT_LINE("taxLeft.line", Severity.CHECK),
  NO_AS_AT("asAt", Severity.CHECK),
  /** Arguments: day of the report, day of the approval. */
  APPROVED_LATER("asAt.approved", Severity.CHECK),
  /** Arguments: heading, date, first and last day of the production. */
  DATE_FAR("dateFar", Severity.CHECK),
  /** Arguments: last day, first day. */
  SHOOT_DATES("shoot", Severity.CHECK),
  /** Arguments: estimated final cost, budget, over. */
  OVERSPENT("overspent", Severity.CHECK),
  /** Arguments: the same, currency of the line, rate, currency of the budget. */
  OVERSPENT_ABROAD("overspent.abroad", Severity.CHECK),
  /** Arguments: budget. */
  SAVED("saved", Severity.CHECK),
  ADDED_LATER("addedLater", Severity.CHECK),
  STILL_DRAFT("draft", Severity.CHECK),
  /** Arguments: × days, days of the production. */
  DAYS_BEYOND("daysBeyond", Severity.CHECK),
  /** Arguments: days away, days worked. */
  DAYS_AWAY_MANY("daysAwayMany", Severity.CHECK),
  /** Arguments: total approved before. */
  APPROVAL_CLEARED("approved.cleared", Severity.CHECK),
  /** Arguments: approvals before. */
  APPROVED_BEFORE("approved.before", Severity.CHECK),
  NO_PO("noPo", Severity.CHECK),
  NO_SUPPLIER("noSupplier", Severity.CHECK),
  NO_INVOICE("noInvoice", Severity.CHECK),
  /** Arguments: invoice number, rows, amount. */
  INVOICE_TWICE("invoiceTwice", Severity.CHECK),
  /** Arguments: paid, cost to date with tax. */
  PAID_OVER("paidOver", Severity.CHECK),
  /** Arguments: paid. */
  PAID_MINUS("paidMinus", Severity.CHECK),
  /** Arguments: estimate, complete or struck. */
  ESTIMATE_AFTER_END("estimate", Severity.CHECK),
  /** Arguments: when due, heading of the date. */
  NOT_IN_CASH("notInCash", Severity.CHECK),
  /** Arguments: hours. */
  NO_TIERS_HOURLY("noTiers.hourly", Severity.CHECK),
  /** Arguments: lines. */
  NO_FRINGES("noFringes", Severity.CHECK),
  /** Arguments: invoiced, ordered, over. */
  INVOICED_OVER("invoicedOver", Severity.CHECK),
  /** Arguments: amount, currency of the line, of the budget. */
  FOREIGN_AMOUNT("foreign", Severity.CHECK),
  /** Arguments: still to come. */
  CLOSED_TO_COME("closedToCome", Severity.CHECK),
  /** Arguments: last day, back. */
  SHOOT_AFTER_BACK("shootAfterBack", Severity.CHECK),
  /** Arguments: back, delivered. */
  BACK_BEFORE_DELIVERED("dates", Severity.CHECK),
  /** Arguments: weeks, allowed. */
  TOO_MANY_WEEKS("weeks", Severity.CHECK),
  /** Arguments: back, out. */
  DEPOSIT_DATES("deposit.dates", Severity.STOP),
  DEPOSIT_OPEN("deposit.open", Severity.CHECK),
  DEPOSIT_UNDATED("deposit.undated", Severity.CHECK),
  SCENARIO_EMPTY("scenario.empty", Severity.CHECK),
  /** Arguments: type. */
  SCENARIO_NO_LINES("scenario.noLines", Severity.CHECK),
  /** Arguments: heading of the setting. */
  SCENARIO_WEEK("scenario.week", Severity.CHECK),
  SCENARIO_NOTHING("scenario.nothing", Severity.CHECK),
  /** Arguments: lines that stay, lines, their names. */
  SCENARIO_SAME("scenario.same", Severity.CHECK),
  /** Arguments: more cost. */
  SCENARIO_UNCOVERED("scenario.uncovered", Severity.CHECK),
  /** Arguments: more cost, overspent by. */
  SCENARIO_OVER("scenario.over", Severity.CHECK),
  /** Arguments: heading of the price. */
  OPTION_PRICE("option.price", Severity.STOP),
  OPTION_RISK("option.risk", Severity.CHECK),
  /** Arguments: energy, power. */
  MIX_NONE("mix.none", Severity.STOP),
  MIX_ALIKE("mix.alike", Severity.STOP),
  /** Batteries, but no job for them. */
  MIX_NO_JOB("mix.noJob", Severity.STOP),
  MIX_NO_BATTERIES("mix.noBatteries", Severity.CHECK),
  MIX_USABLE("mix.usable", Severity.CHECK),
  /** Arguments: rows that are a stop. */
  MIX_LEFT_OUT("mix.leftOut", Severity.CHECK),
  /** Arguments: heading. */
  MIX_WHOLE("mix.whole", Severity.STOP),
  BATTERY_WEIGHT("battery.weight", Severity.STOP),
  BATTERY_LIMIT("battery.limit", Severity.CHECK);

  private final String key;
  private final Severity severity;

  BudgetFinding(String key, Severity severity) {
    this.key = "budget." + key;
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
