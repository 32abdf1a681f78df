package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.setpower.base.EvaluationException;
import org.setpower.hire.HireDays;
import org.setpower.hire.Money;
import org.setpower.hire.UsualRates;
import org.setpower.hire.Weekend;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.quote.QuoteInputs.Client;
import org.setpower.plan.quote.QuoteInputs.House;
import org.setpower.plan.quote.QuoteInputs.Order;
import org.setpower.plan.quote.terms.DayCounting;
import org.setpower.plan.quote.terms.DiscountBasis;
import org.setpower.plan.quote.terms.LateRule;
import org.setpower.plan.quote.terms.TaxRounding;
import org.setpower.plan.quote.terms.WaiverBasis;

/** House, client and order, blanks replaced by what they mean. */
final class QuoteRules {
  private static final double ALL_DAYS = 7;

  // Sales taxes of one rate stand between these (from memory: 2.1 % is the least reduced rate of
  // VAT in use, 27 % the highest standard rate); another is more likely a slip than a tax.
  /** A quote so many days younger than its hire has a wrong year. */
  private static final int FAR_DAYS = 183;

  /** A hire of more days is rare, and one with a wrong year or month is longer. */
  private static final int LONG_DAYS = 92;

  private static final double LEAST_TAX = 0.021;
  private static final double MOST_TAX = 0.27;

  private static final House BLANK_HOUSE =
      new House(
          null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null, null, null, null, null, null);
  private static final Client BLANK_CLIENT = new Client(null, null, null, null, null, null, null);
  private static final Order BLANK_ORDER = QuoteInputs.ORDER.none();

  private final House house;
  private final Client client;
  private final Order order;
  private final Currency currency;
  private final List<Finding> houseFindings;
  private final List<Finding> clientFindings;
  private final List<Finding> orderFindings;
  private final boolean exchanged;

  QuoteRules(InputRow<House> house, InputRow<Client> client, InputRow<Order> order) {
    this.house = house.isBlank() ? BLANK_HOUSE : house.value();
    this.client = client.isBlank() ? BLANK_CLIENT : client.value();
    this.order = order.isBlank() ? BLANK_ORDER : order.value();
    houseFindings = new ArrayList<>(house.findings());
    clientFindings = new ArrayList<>(client.findings());
    orderFindings = new ArrayList<>(order.findings());
    if (order.isBlank()) {
      QuoteInputs.ORDER.columns().stream()
          .filter(c -> c.isRequired())
          .forEach(c -> orderFindings.add(Finding.of(CommonFinding.BLANK_CELL, c)));
    }
    currency = currency(this.order.currency(), orderFindings).orElse(null);
    Optional<Currency> own = currency(this.house.currency(), houseFindings);
    exchanged = own.isPresent() && currency != null && !own.get().equals(currency);
    if (exchanged && this.order.exchange() != null) {
      UsualRates.insteadOf(this.order.exchange(), own.get(), currency)
          .ifPresent(
              usual ->
                  orderFindings.add(
                      Finding.of(
                          QuoteFinding.EXCHANGE_IMPLAUSIBLE,
                          own.get().getCurrencyCode(),
                          this.order.exchange(),
                          currency.getCurrencyCode(),
                          usual)));
    }
    checkPage(house, client, order);
    checkOrder(house.cells().containsKey("waiverTax"));
  }

  private static Optional<Currency> currency(String code, List<Finding> findings) {
    if (code == null) {
      return Optional.empty();
    }
    try {
      Currency currency = Money.currency("currency", code);
      Money.rounded(BigDecimal.ZERO, currency);
      return Optional.of(currency);
    } catch (EvaluationException unknown) {
      findings.add(Finding.of(QuoteFinding.CURRENCY_UNKNOWN, code));
      return Optional.empty();
    }
  }

  /** What the client's page should have. */
  private void checkPage(
      InputRow<House> houseRow, InputRow<Client> clientRow, InputRow<Order> orderRow) {
    for (String key : List.of("name", "address", "taxNumber", "contact", "bank", "payment")) {
      missing(houseRow.cells(), QuoteInputs.HOUSE, key, houseFindings);
    }
    for (String key : List.of("name", "billing")) {
      missing(clientRow.cells(), QuoteInputs.CLIENT, key, clientFindings);
    }
    for (String key : List.of("number", "date", "validUntil")) {
      missing(orderRow.cells(), QuoteInputs.ORDER, key, orderFindings);
    }
  }

  private static void missing(
      Map<String, Object> cells, InputTable<?> table, String key, List<Finding> findings) {
    if (!cells.containsKey(key)) {
      findings.add(Finding.of(QuoteFinding.MISSING_ON_PAGE, table.column(key)));
    }
  }

  private void checkOrder(boolean isWaiverTaxTyped) {
    dates(order.out(), order.back()).ifPresent(orderFindings::add);
    if (order.validUntil() != null
        && order.date() != null
        && order.validUntil().isBefore(order.date())) {
      orderFindings.add(Finding.of(QuoteFinding.VALID_UNTIL, order.validUntil(), order.date()));
    }
    if (order.validUntil() != null
        && order.out() != null
        && order.validUntil().isAfter(order.out())) {
      orderFindings.add(Finding.of(QuoteFinding.VALID_AFTER_OUT, order.validUntil(), order.out()));
    }
    if (order.date() != null && order.out() != null && order.out().isBefore(order.date())) {
      boolean isFar = order.out().isBefore(order.date().minusDays(FAR_DAYS));
      orderFindings.add(
          Finding.of(
              isFar ? QuoteFinding.OUT_FAR_BEFORE_DATE : QuoteFinding.OUT_BEFORE_DATE,
              order.out(),
              order.date()));
    }
    if (order.out() != null
        && order.back() != null
        && order.back().isAfter(order.out().plusDays(LONG_DAYS))) {
      orderFindings.add(
          Finding.of(
              QuoteFinding.ORDER_LONG,
              (double) HireDays.calendar(order.out(), order.back()),
              order.out(),
              order.back()));
    }
    oddTax(order.tax()).ifPresent(orderFindings::add);
    if (order.tax() != null && order.tax() == 0 && order.taxReason() == null) {
      orderFindings.add(Finding.of(QuoteFinding.TAX_REASON));
    }
    if (order.discount() != null && order.discount() == 1) {
      orderFindings.add(Finding.of(QuoteFinding.ORDER_FREE));
    }
    if (isWaived()) {
      judgeWaiver("excess", house.excess());
      judgeWaiver("waivedLoss", house.waivedLoss());
    }
    if (isWaived() && !isWaiverTaxTyped) {
      houseFindings.add(Finding.of(QuoteFinding.WAIVER_TAX));
    }
  }

  /** What the waiver covers is said to the client before he signs, not after the return. */
  private void judgeWaiver(String key, Object typed) {
    if (typed == null) {
      houseFindings.add(Finding.of(QuoteFinding.WAIVER_TERMS, QuoteInputs.HOUSE.column(key)));
    }
  }

  /** Says that a rate is hardly one of a tax; none is not odd. */
  static Optional<Finding> oddTax(Double tax) {
    boolean odd = tax != null && tax > 0 && (tax < LEAST_TAX || tax > MOST_TAX);
    return odd
        ? Optional.of(Finding.of(QuoteFinding.TAX_ODD, PageText.percent(Money.decimal(tax))))
        : Optional.empty();
  }

  /** What is wrong with the two ends of a hire. */
  static Optional<Finding> dates(LocalDate out, LocalDate back) {
    if (out == null || back == null) {
      return Optional.empty();
    }
    if (back.isBefore(out)) {
      return Optional.of(Finding.of(QuoteFinding.BACK_BEFORE_OUT, back, out));
    }
    return out.plusDays(HireDays.MOST_DAYS).isAfter(back)
        ? Optional.empty()
        : Optional.of(Finding.of(QuoteFinding.HIRE_TOO_LONG, HireDays.MOST_DAYS));
  }

  House house() {
    return house;
  }

  Client client() {
    return client;
  }

  Order order() {
    return order;
  }

  /** The currency of the quote; null when it is not known, and then every row stops. */
  Currency currency() {
    return currency;
  }

  List<Finding> houseFindings() {
    return houseFindings;
  }

  List<Finding> clientFindings() {
    return clientFindings;
  }

  List<Finding> orderFindings() {
    return orderFindings;
  }

  /** The findings that stop every row: without a known rule there is no price. */
  List<Finding> stops() {
    List<Finding> all = new ArrayList<>(houseFindings);
    all.addAll(orderFindings);
    return stops(all);
  }

  static List<Finding> stops(List<Finding> findings) {
    return findings.stream().filter(f -> f.severity().compareTo(Severity.STOP) >= 0).toList();
  }

  boolean isWaived() {
    return order.waiver() != null && order.waiver() > 0;
  }

  boolean isDiscounted() {
    return order.discount() != null && order.discount() > 0;
  }

  /** Whether a waiver stands where a certificate of insurance would. */
  boolean isWaivedInstead() {
    return isWaived() && order.insuredUntil() == null;
  }

  /** The most that damage costs a client who pays a waiver; empty without either. */
  Optional<BigDecimal> excess() {
    return isWaived() && house.excess() != null && currency != null
        ? Optional.of(rounded(Money.decimal(house.excess())))
        : Optional.empty();
  }

  BigDecimal rounded(BigDecimal amount) {
    return Money.rounded(amount, currency);
  }

  /** An amount of the price list in the currency of the quote; empty without an exchange rate. */
  Optional<BigDecimal> inQuote(Double listed) {
    if (!exchanged) {
      return Optional.of(Money.decimal(listed));
    }
    return order.exchange() == null
        ? Optional.empty()
        : Optional.of(Money.converted(listed, order.exchange(), currency));
  }

  /** Says that the price list has another currency and there is no rate. */
  Finding noExchange() {
    return Finding.of(QuoteFinding.EXCHANGE_MISSING, house.currency(), order.currency());
  }

  private static <V> V or(V typed, V otherwise) {
    return typed == null ? otherwise : typed;
  }

  /** A share typed; 0 for a blank. */
  static BigDecimal share(Double typed) {
    return Money.decimal(or(typed, 0.0));
  }

  /** What is left of 1. */
  static BigDecimal rest(Double share) {
    return BigDecimal.ONE.subtract(share(share));
  }

  DayCounting counted() {
    return or(house.counted(), DayCounting.BY_DATES);
  }

  double daysPerWeek() {
    return or(house.daysPerWeek(), ALL_DAYS);
  }

  Weekend weekend() {
    return or(house.weekend(), Weekend.TWO_DAYS);
  }

  double minDays() {
    return or(house.minDays(), 1.0);
  }

  long turnaround() {
    return (long) Math.ceil(or(house.turnaround(), 0.0));
  }

  boolean everyLateDay() {
    return house.late() == LateRule.EVERY_DAY;
  }

  boolean taxPerLine() {
    return house.taxPer() == TaxRounding.PER_LINE;
  }

  boolean waiverBeforeDiscount() {
    return house.waiverOn() == WaiverBasis.BEFORE_DISCOUNT;
  }

  /** Whether the order discount is taken off a hired row. */
  boolean discounts(boolean subHired, Double ownDiscount) {
    boolean own = ownDiscount != null && ownDiscount > 0;
    return !(subHired && Boolean.FALSE.equals(house.subHireDiscounted()))
        && !(own && house.discountOn() == DiscountBasis.UNDISCOUNTED);
  }
}
