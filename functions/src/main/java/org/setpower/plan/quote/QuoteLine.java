package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.setpower.hire.HireDays;
import org.setpower.hire.HireWeeks;
import org.setpower.hire.Money;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.quote.QuoteInputs.Item;
import org.setpower.plan.quote.QuoteInputs.Stock;
import org.setpower.plan.quote.terms.LineType;
import org.setpower.plan.quote.terms.OrderStatus;
import org.setpower.plan.quote.terms.RateBasis;

/** A row of the quote with its dates, days and price. Null stands for what is not known. */
final class QuoteLine {
  /** A row so many days outside the order is more likely a slip than a hire. */
  private static final int FAR_DAYS = 90;

  /** A rate so many times that of the price list, or so small a part of it, is hardly meant. */
  private static final int FAR_RATE = 3;

  private final InputRow<Item> row;
  private final Item item;
  private final QuoteRules rules;
  private final ChargedDays charged;
  private final PriceList list;
  private final Stock stock;
  private final List<Finding> findings = new ArrayList<>();
  private final LocalDate out;
  private final LocalDate back;
  private final RateBasis basis;
  private BigDecimal ruleDays;
  private BigDecimal days;
  private BigDecimal rate;
  private HireWeeks.Prices weeks;
  private BigDecimal each;
  private BigDecimal amount;
  private BigDecimal net;
  private BigDecimal subCost;

  QuoteLine(InputRow<Item> row, QuoteRules rules, ChargedDays charged, PriceList list) {
    this.row = row;
    this.item = row.value();
    this.rules = rules;
    this.charged = charged;
    this.list = list;
    this.stock = list.of(item.item()).orElse(null);
    this.basis = judgedBasis();
    out = date("out", item.out(), rules.order().out());
    back = date("back", item.back(), rules.order().back());
    if (!isDropped()) {
      judge();
    }
    if (!isDropped() && row.findings().isEmpty() && rules.stops().isEmpty() && datesAreRight()) {
      price();
    }
  }

  private LocalDate date(String key, LocalDate own, LocalDate ofOrder) {
    boolean typed = row.cells().containsKey(key);
    return typed ? own : ofOrder;
  }

  private RateBasis judgedBasis() {
    if (item.basis() != null || row.unreadable().contains("basis")) {
      return item.basis();
    }
    if (type() != LineType.HIRED) {
      return RateBasis.ONCE;
    }
    return row.cells().containsKey("weekRate") ? RateBasis.WEEK : RateBasis.DAY;
  }

  private void add(FindingKey key, Object... arguments) {
    findings.add(Finding.of(key, arguments));
  }

  private void judge() {
    if (row.cells().containsKey("out") || row.cells().containsKey("back")) {
      QuoteRules.dates(out, back).ifPresent(findings::add);
      outside(item.out()).or(() -> outside(item.back())).ifPresent(findings::add);
    }
    if (item.qty() != null && item.qty() == 0) {
      add(QuoteFinding.ROW_ZERO);
    }
    if (isHired() && item.qty() != null && item.qty() != Math.rint(item.qty())) {
      add(QuoteFinding.NOT_WHOLE, item.qty());
    }
    boolean weekly = item.weekRate() != null || item.secondWeekRate() != null;
    if (weekly && basis != RateBasis.WEEK) {
      add(QuoteFinding.WEEK_RATE_UNUSED);
    }
    boolean reasoned = or(item.taxReason(), rules.order().taxReason()) != null;
    if (item.tax() != null && item.tax() == 0 && !reasoned) {
      add(QuoteFinding.TAX_REASON);
    }
    QuoteRules.oddTax(item.tax()).ifPresent(findings::add);
    if (list.isUnclear(item.item())) {
      add(QuoteFinding.STOCK_UNCLEAR);
    } else if (isHired()) {
      judgeStock();
    }
    if ((item.subFrom() == null) != (item.subRate() == null)) {
      add(QuoteFinding.SUB_HIRE_HALF);
    }
  }

  private void judgeStock() {
    if (stock == null) {
      add(isSubHired() ? QuoteFinding.SUB_HIRE_VALUE : QuoteFinding.NOT_IN_STOCK);
      return;
    }
    if (stock.owned() == null && !isSubHired()) {
      add(QuoteFinding.NOT_OWNED);
    }
    if (stock.value() == null) {
      add(QuoteFinding.NO_VALUE);
    }
    if (stock.weight() == null) {
      add(QuoteFinding.NO_WEIGHT);
    }
  }

  /** Whether a date typed in the row lies outside the order, and how far. */
  private Optional<Finding> outside(LocalDate date) {
    LocalDate first = rules.order().out();
    LocalDate last = rules.order().back();
    if (date == null || first == null || last == null || !isOutside(date, first, last)) {
      return Optional.empty();
    }
    boolean isFar = isOutside(date, first.minusDays(FAR_DAYS), last.plusDays(FAR_DAYS));
    boolean isOtherYear =
        date.getYear() != first.getYear() && !isOutside(date.withYear(first.getYear()), first, last)
            || date.getYear() != last.getYear()
                && !isOutside(date.withYear(last.getYear()), first, last);
    return Optional.of(
        Finding.of(
            isFar || isOtherYear ? QuoteFinding.ROW_FAR_OUTSIDE : QuoteFinding.ROW_OUTSIDE,
            date,
            first,
            last));
  }

  private static boolean isOutside(LocalDate date, LocalDate first, LocalDate last) {
    return date.isBefore(first) || date.isAfter(last);
  }

  private boolean datesAreRight() {
    return findings.stream().noneMatch(f -> f.key() == QuoteFinding.ROW_FAR_OUTSIDE)
        && findings.stream().noneMatch(f -> f.key() == QuoteFinding.BACK_BEFORE_OUT)
        && findings.stream().noneMatch(f -> f.key() == QuoteFinding.HIRE_TOO_LONG);
  }

  private void price() {
    if (basis == RateBasis.DAY) {
      if (!charged.isScheduled(out, back)) {
        add(QuoteFinding.NOT_SCHEDULED, out, back);
        return;
      }
      ruleDays =
          type() == LineType.SERVICE ? charged.everyDay(out, back) : charged.count(out, back);
      days = agreed().orElse(ruleDays);
    } else if (basis == RateBasis.WEEK) {
      ruleDays = BigDecimal.valueOf(HireDays.calendar(out, back));
      days = item.agreedDays() == null ? ruleDays : Money.decimal(item.agreedDays());
    }
    if (!findRates()) {
      return;
    }
    compareWithList();
    if (basis != RateBasis.ON_REQUEST) {
      each = unit();
      compareWithValue();
      amount = charge(each, item.qty(), item.discount());
      if (amount.signum() == 0 && item.qty() != 0) {
        add(QuoteFinding.ROW_FREE);
      }
      net =
          isDiscounted()
              ? rules.rounded(amount.multiply(QuoteRules.rest(rules.order().discount())))
              : amount;
    }
    if (isSubHired()) {
      subHire();
    }
    if (basis == RateBasis.DAY && item.basis() == null) {
      compareWithWeek();
    }
  }

  /** A rate far from that of the price list is likely a slip of the keys. */
  private void compareWithList() {
    boolean weekly = basis == RateBasis.WEEK;
    Double own = weekly ? item.weekRate() : item.rate();
    Double listed = stock == null ? null : weekly ? stock.weekRate() : stock.dayRate();
    if (own == null || listed == null || listed <= 0 || own <= 0 || !isHired()) {
      return;
    }
    rules
        .inQuote(listed)
        .filter(l -> own > FAR_RATE * l.doubleValue() || own * FAR_RATE < l.doubleValue())
        .ifPresent(
            l -> add(QuoteFinding.RATE_FAR, rules.rounded(Money.decimal(own)), rules.rounded(l)));
  }

  /** Who pays more for the hire than the piece is worth has a slip in a rate or a date. */
  private void compareWithValue() {
    BigDecimal value =
        isHired() && stock != null && stock.value() != null && stock.value() > 0
            ? rules.inQuote(stock.value()).orElse(null)
            : null;
    if (value != null && each.compareTo(value) > 0) {
      add(QuoteFinding.DEARER_THAN_VALUE, rules.rounded(each), rules.rounded(value));
    }
  }

  /** A row that nobody set to the day is dearer so than the week of the price list. */
  private void compareWithWeek() {
    if (each == null || stock == null || stock.weekRate() == null || item.rate() != null) {
      return;
    }
    BigDecimal first = rules.inQuote(stock.weekRate()).orElse(null);
    Double later = stock.secondWeekRate() == null ? stock.weekRate() : stock.secondWeekRate();
    BigDecimal second = rules.inQuote(later).orElse(null);
    if (first != null && second != null) {
      BigDecimal week =
          HireWeeks.price(out, back, rules.weekend(), new HireWeeks.Prices(first, second, rate));
      if (each.compareTo(week) > 0) {
        add(QuoteFinding.DEARER_BY_DAY, rules.rounded(each), rules.rounded(week));
      }
    }
  }

  private Optional<BigDecimal> agreed() {
    boolean ownDates = row.cells().containsKey("out") || row.cells().containsKey("back");
    Double agreed =
        item.agreedDays() != null || ownDates ? item.agreedDays() : rules.order().agreedDays();
    return Optional.ofNullable(agreed).map(Money::decimal);
  }

  private boolean findRates() {
    Double listed = stock == null ? null : stock.dayRate();
    switch (basis) {
      case ON_REQUEST -> {
        return true;
      }
      case WEEK -> {
        return findWeekRates(listed);
      }
      default -> {
        rate = rate(item.rate(), listed).orElse(null);
        if (rate == null && listed == null) {
          add(QuoteFinding.NO_RATE);
        }
        return rate != null;
      }
    }
  }

  private boolean findWeekRates(Double listedDay) {
    Double first = stock == null ? null : stock.weekRate();
    Double later = stock == null ? null : stock.secondWeekRate();
    if (item.weekRate() == null && first == null) {
      add(QuoteFinding.NO_WEEK_RATE);
      return false;
    }
    BigDecimal week = rate(item.weekRate(), first).orElse(null);
    if (week == null) {
      return false;
    }
    BigDecimal second =
        item.secondWeekRate() == null && (item.weekRate() != null || later == null)
            ? week
            : rate(item.secondWeekRate(), later).orElse(null);
    rate = rate(item.rate(), listedDay).orElse(null);
    boolean clear = second != null && (rate != null || item.rate() == null && listedDay == null);
    if (clear) {
      weeks = new HireWeeks.Prices(week, second, rate);
    }
    return clear;
  }

  /** The rate of the row, else that of the price list in the currency of the quote. */
  private Optional<BigDecimal> rate(Double own, Double listed) {
    if (own != null) {
      return Optional.of(Money.decimal(own));
    }
    if (listed == null) {
      return Optional.empty();
    }
    Optional<BigDecimal> converted = rules.inQuote(listed);
    if (converted.isEmpty() && !findings.contains(rules.noExchange())) {
      findings.add(rules.noExchange());
    }
    return converted;
  }

  /** What one piece costs, before discounts. */
  private BigDecimal unit() {
    return switch (basis) {
      case DAY -> rate.multiply(days);
      case WEEK ->
          item.agreedDays() == null
              ? HireWeeks.price(out, back, rules.weekend(), weeks)
              : HireWeeks.price(days, weeks);
      default -> rate;
    };
  }

  private BigDecimal charge(BigDecimal unit, Double qty, Double discount) {
    return rules.rounded(unit.multiply(Money.decimal(qty)).multiply(QuoteRules.rest(discount)));
  }

  /** The other house charges its own days, whatever the client pays. */
  private void subHire() {
    if (item.subRate() == null) {
      return;
    }
    Double theirs = item.subDays();
    if (theirs == null) {
      theirs = (double) HireDays.calendar(out, back);
      add(QuoteFinding.SUB_HIRE_DAYS, theirs);
    }
    subCost =
        charge(Money.decimal(item.subRate()).multiply(Money.decimal(theirs)), item.qty(), 0.0);
    if (net != null && subCost.compareTo(net) > 0) {
      add(QuoteFinding.SUB_HIRE_LOSS, subCost, net);
    }
  }

  /**
   * What so many pieces returned after the day due cost more: the same rule to the day of return,
   * less the rule to the day due, with the discounts of the hire. Empty where the row has no price.
   */
  Optional<LateFee> lateFee(Double pieces, LocalDate returned) {
    if (amount == null) {
      return Optional.empty();
    }
    if (basis == RateBasis.ONCE) {
      return Optional.of(LateFee.none(rules));
    }
    long late = ChronoUnit.DAYS.between(back, returned);
    LateFee fee;
    if (rules.everyLateDay() && rate != null) {
      fee = LateFee.byDay(rules, BigDecimal.valueOf(late), late, rate);
    } else if (basis == RateBasis.DAY) {
      BigDecimal days = charged.count(out, returned).subtract(charged.count(out, back));
      fee = LateFee.byDay(rules, days, late, rate);
    } else {
      fee =
          LateFee.byWeek(
              rules,
              HireDays.calendar(out, returned),
              HireWeeks.price(out, returned, rules.weekend(), weeks),
              HireDays.calendar(out, back),
              HireWeeks.price(out, back, rules.weekend(), weeks));
    }
    LateFee own = fee.less(item.discount());
    return Optional.of(
        (isDiscounted() ? own.less(rules.order().discount()) : own).of(rules, pieces));
  }

  /** What the other house charges for pieces that are late; empty for our own. */
  Optional<BigDecimal> lateSubCost(Double pieces, LocalDate returned) {
    return isSubHired() && item.subRate() != null && subCost != null
        ? Optional.of(
            rules.rounded(
                Money.decimal(item.subRate())
                    .multiply(Money.decimal(pieces))
                    .multiply(BigDecimal.valueOf(ChronoUnit.DAYS.between(back, returned)))))
        : Optional.empty();
  }

  /** The value of so many pieces at replacement; empty where it is not known. */
  Optional<BigDecimal> value(Double pieces) {
    if (stock == null || stock.value() == null || rules.currency() == null || pieces == null) {
      return Optional.empty();
    }
    return rules.inQuote(stock.value()).map(v -> rules.rounded(v.multiply(Money.decimal(pieces))));
  }

  /** The weight of so many pieces; empty where it is not known. */
  Optional<BigDecimal> weight(Double pieces) {
    return stock == null || stock.weight() == null || pieces == null
        ? Optional.empty()
        : Optional.of(Money.decimal(stock.weight()).multiply(Money.decimal(pieces)));
  }

  /** Whether late days can be charged by a day's rate. */
  boolean isByRate() {
    return rate != null && basis != RateBasis.ONCE;
  }

  /** Whether its days are those agreed for the order. */
  boolean isAsAgreedForOrder() {
    return basis == RateBasis.DAY
        && item.agreedDays() == null
        && rules.order().agreedDays() != null
        && agreed().isPresent();
  }

  /** What one piece costs a day, the first week, or once. */
  BigDecimal unitPrice() {
    return weeks == null ? rate : weeks.first();
  }

  LineType type() {
    return item.type() == null ? LineType.HIRED : item.type();
  }

  boolean isHired() {
    return type() == LineType.HIRED;
  }

  boolean isSubHired() {
    return row.cells().containsKey("subFrom");
  }

  /** Whether the client takes it: it is on papers and in sums. */
  boolean isOrdered() {
    return item.order() == null || item.order() == OrderStatus.ORDERED;
  }

  boolean isOption() {
    return item.order() == OrderStatus.OPTION;
  }

  boolean isDropped() {
    return item.order() == OrderStatus.DROPPED;
  }

  /** What it is known by in stock, whichever of its names is typed. */
  String identity() {
    return list.identity(item.item());
  }

  /** Whether a name is one of its own. */
  boolean isCalled(String name) {
    return identity().equals(list.identity(name));
  }

  /** Whether it has pieces. */
  boolean isSome() {
    return item.qty() == null || item.qty() != 0;
  }

  /** Whether the order discount is taken off it. */
  boolean isDiscounted() {
    return isHired()
        && !Boolean.TRUE.equals(item.netPrice())
        && rules.discounts(isSubHired(), item.discount());
  }

  /** Whether it has no order discount for another reason than a discount of its own. */
  boolean isNetPriced() {
    return Boolean.TRUE.equals(item.netPrice()) || !rules.discounts(isSubHired(), null);
  }

  TaxRate tax() {
    return item.tax() == null
        ? TaxRate.of(rules.order().tax(), or(item.taxReason(), rules.order().taxReason()))
        : TaxRate.of(item.tax(), or(item.taxReason(), rules.order().taxReason()));
  }

  private static String or(String own, String otherwise) {
    return own == null ? otherwise : own;
  }

  /** Adds a finding of another table that concerns the row. */
  void add(Finding finding) {
    findings.add(finding);
  }

  /** What is wrong with the row, its cells included. */
  List<Finding> findings() {
    List<Finding> all = new ArrayList<>(row.findings());
    all.addAll(findings);
    return all;
  }

  InputRow<Item> row() {
    return row;
  }

  Item item() {
    return item;
  }

  Optional<Stock> stock() {
    return Optional.ofNullable(stock);
  }

  LocalDate out() {
    return out;
  }

  LocalDate back() {
    return back;
  }

  RateBasis basis() {
    return basis;
  }

  BigDecimal ruleDays() {
    return ruleDays;
  }

  BigDecimal days() {
    return days;
  }

  /** Day rate, or price of what is paid once. */
  BigDecimal rate() {
    return rate;
  }

  /** Prices by week; null for a row that is not by the week. */
  HireWeeks.Prices weeks() {
    return weeks;
  }

  /** What one piece costs for the whole hire, before discounts. */
  BigDecimal each() {
    return each;
  }

  /** After the discount of the row, rounded. */
  BigDecimal amount() {
    return amount;
  }

  /** After the discount of the order too, rounded. */
  BigDecimal net() {
    return net;
  }

  BigDecimal subCost() {
    return subCost;
  }
}
