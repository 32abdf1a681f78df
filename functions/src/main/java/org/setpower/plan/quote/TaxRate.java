package org.setpower.plan.quote;

import java.math.BigDecimal;
import java.util.Comparator;
import org.setpower.hire.Money;
import org.setpower.plan.finding.Identity;

/**
 * A rate of tax. Rates of 0 are told apart by their reason, as an invoice must.
 *
 * @param share of the net
 * @param reason of a rate of 0; empty otherwise
 */
record TaxRate(BigDecimal share, String reason) implements Comparable<TaxRate> {
  private static final Comparator<TaxRate> ORDER =
      Comparator.comparing(TaxRate::share).thenComparing(r -> Identity.of(r.reason));

  static TaxRate of(Double share, String reason) {
    BigDecimal decimal = Money.decimal(share).stripTrailingZeros();
    return new TaxRate(decimal, decimal.signum() > 0 || reason == null ? "" : reason);
  }

  @Override
  public int compareTo(TaxRate other) {
    return ORDER.compare(this, other);
  }
}
