package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.setpower.hire.Money;

/**
 * What an order comes to. Lines are rounded; the order discount rounds once and is split over the
 * tax rates by largest remainder; waiver on the hire; sold rows and services undiscounted; net by
 * rate; tax on it.
 */
final class OrderSums {
  private final QuoteRules rules;
  private final Map<TaxRate, Rate> rates = new TreeMap<>();
  private BigDecimal hire;
  private BigDecimal discountable;
  private BigDecimal discount;
  private BigDecimal minimum;
  private BigDecimal waived;
  private BigDecimal waiver;
  private BigDecimal sold;

  /** What one rate comes to; parts add up to its base. */
  static final class Rate {
    private final Map<String, BigDecimal> parts = new LinkedHashMap<>();
    private BigDecimal discountable = BigDecimal.ZERO;
    private BigDecimal lineTax = BigDecimal.ZERO;
    private BigDecimal tax;

    BigDecimal part(String name) {
      return parts.getOrDefault(name, BigDecimal.ZERO);
    }

    BigDecimal base() {
      return parts.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    BigDecimal tax() {
      return tax;
    }
  }

  static final String HIRE = "hire";
  static final String DISCOUNT = "discount";
  static final String MINIMUM = "minimum";
  static final String WAIVER = "waiver";
  static final String SOLD = "sold";

  /**
   * Sums rows.
   *
   * @param lines rows that are fit; those on request count nothing
   */
  OrderSums(QuoteRules rules, List<QuoteLine> lines) {
    this.rules = rules;
    List<QuoteLine> priced = lines.stream().filter(l -> l.amount() != null).toList();
    hire = rules.rounded(BigDecimal.ZERO);
    sold = hire;
    for (QuoteLine line : priced) {
      book(line.tax(), line.isHired() ? HIRE : SOLD, line.amount());
      if (line.isHired()) {
        hire = hire.add(line.amount());
      } else {
        sold = sold.add(line.amount());
      }
      if (line.isDiscounted()) {
        Rate rate = rates.get(line.tax());
        rate.discountable = rate.discountable.add(line.amount());
      }
    }
    takeDiscount();
    addMinimum(priced);
    addWaiver();
    rates.forEach(this::tax);
  }

  private void book(TaxRate rate, String part, BigDecimal amount) {
    Rate booked = rates.computeIfAbsent(rate, k -> new Rate());
    booked.parts.merge(part, amount, BigDecimal::add);
    booked.lineTax = booked.lineTax.add(rules.rounded(amount.multiply(rate.share())));
  }

  private void takeDiscount() {
    List<TaxRate> keys = List.copyOf(rates.keySet());
    List<BigDecimal> bases = keys.stream().map(k -> rates.get(k).discountable).toList();
    discountable = rules.rounded(bases.stream().reduce(BigDecimal.ZERO, BigDecimal::add));
    discount = rules.rounded(discountable.multiply(QuoteRules.share(rules.order().discount())));
    List<BigDecimal> parts = Money.split(discount, bases, rules.currency());
    for (int i = 0; i < keys.size(); i++) {
      if (parts.get(i).signum() != 0) {
        book(keys.get(i), DISCOUNT, parts.get(i).negate());
      }
    }
  }

  private void addMinimum(List<QuoteLine> priced) {
    minimum = rules.rounded(BigDecimal.ZERO);
    Double least = rules.house().minAmount();
    if (least != null && priced.stream().anyMatch(QuoteLine::isHired)) {
      BigDecimal missing = rules.rounded(Money.decimal(least)).subtract(hire.subtract(discount));
      minimum = missing.max(minimum);
    }
    if (minimum.signum() > 0) {
      book(TaxRate.of(rules.order().tax(), rules.order().taxReason()), MINIMUM, minimum);
    }
  }

  private void addWaiver() {
    waived = rules.waiverBeforeDiscount() ? hire : hire.subtract(discount);
    waiver = rules.rounded(waived.multiply(QuoteRules.share(rules.order().waiver())));
    if (waiver.signum() > 0) {
      Double tax = rules.house().waiverTax();
      book(TaxRate.of(tax == null ? 0.0 : tax, LineKind.WAIVER.word()), WAIVER, waiver);
    }
  }

  private void tax(TaxRate key, Rate rate) {
    rate.tax = rules.taxPerLine() ? rate.lineTax : rules.rounded(rate.base().multiply(key.share()));
  }

  /** By rate, the lowest first. */
  Map<TaxRate, Rate> rates() {
    return rates;
  }

  BigDecimal hire() {
    return hire;
  }

  /** What the order discount is a share of. */
  BigDecimal discountable() {
    return discountable;
  }

  /** What the waiver is a share of. */
  BigDecimal waived() {
    return waived;
  }

  /** What the order discount takes off, not below 0. */
  BigDecimal discount() {
    return discount;
  }

  BigDecimal minimum() {
    return minimum;
  }

  BigDecimal waiver() {
    return waiver;
  }

  /** Sold rows and services. */
  BigDecimal sold() {
    return sold;
  }

  BigDecimal net() {
    return hire.subtract(discount).add(minimum).add(waiver).add(sold);
  }

  BigDecimal tax() {
    return rates.values().stream()
        .map(Rate::tax)
        .reduce(rules.rounded(BigDecimal.ZERO), BigDecimal::add);
  }

  BigDecimal total() {
    return net().add(tax());
  }

  BigDecimal downPayment() {
    return rules.rounded(total().multiply(QuoteRules.share(rules.order().downPayment())));
  }

  BigDecimal balance() {
    return total().subtract(downPayment());
  }

  BigDecimal security() {
    return rules.rounded(QuoteRules.share(rules.order().security()));
  }
}
