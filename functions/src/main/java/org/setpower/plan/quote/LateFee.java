package org.setpower.plan.quote;

import java.math.BigDecimal;
import org.setpower.hire.Money;
import org.setpower.plan.common.Phrase;

/**
 * What a late return costs, and how that comes about, so that the client can follow it.
 *
 * @param amount of one piece until it is taken {@link #of} all pieces
 * @param how in words, without the item
 */
record LateFee(BigDecimal amount, Phrase how) {
  /** Of a row that is paid once. */
  static LateFee none(QuoteRules rules) {
    return new LateFee(rules.rounded(BigDecimal.ZERO), PageText.LATE_FREE.of());
  }

  /**
   * By the day.
   *
   * @param charged days of those that are late
   */
  static LateFee byDay(QuoteRules rules, BigDecimal charged, long late, BigDecimal rate) {
    Phrase how = PageText.LATE_BY_DAY.of(charged.doubleValue(), (double) late, shown(rules, rate));
    return new LateFee(rate.multiply(charged), how);
  }

  /** A rate with the coins of its currency; one that is finer as it is. */
  private static BigDecimal shown(QuoteRules rules, BigDecimal rate) {
    BigDecimal coins = rules.rounded(rate);
    return coins.compareTo(rate) == 0 ? coins : rate;
  }

  /** By the week: the price to the day of return, less that to the day due. */
  static LateFee byWeek(
      QuoteRules rules, int days, BigDecimal price, int due, BigDecimal priceDue) {
    Phrase how =
        PageText.LATE_BY_WEEK.of(
            (double) days, rules.rounded(price), (double) due, rules.rounded(priceDue));
    return new LateFee(price.subtract(priceDue), how);
  }

  /** After a discount. */
  LateFee less(Double discount) {
    BigDecimal share = QuoteRules.share(discount);
    return share.signum() == 0
        ? this
        : new LateFee(
            amount.multiply(QuoteRules.rest(discount)),
            PageText.LESS.of(how, PageText.percent(share)));
  }

  /** Of all pieces, rounded. */
  LateFee of(QuoteRules rules, Double pieces) {
    BigDecimal all = rules.rounded(amount.multiply(Money.decimal(pieces)));
    return amount.signum() == 0 ? none(rules) : new LateFee(all, how);
  }
}
