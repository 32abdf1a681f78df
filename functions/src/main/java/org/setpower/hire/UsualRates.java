package org.setpower.hire;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.setpower.base.ReferenceTable;

/**
 * What currencies have cost for years, in round figures: an exchange rate far from it is a slip of
 * the decimal point, or the wrong way round.
 */
public final class UsualRates {
  /** So many times more or less is no movement of a market. */
  private static final double FAR = 5;

  private static final MathContext ROUND = new MathContext(2);

  private static final Map<String, Double> PER_EURO =
      ReferenceTable.read(UsualRates.class, "currencies.csv").stream()
          .collect(Collectors.toUnmodifiableMap(r -> r.text("code"), r -> r.number("per_euro")));

  private UsualRates() {}

  /**
   * The usual price of one unit of a currency where a rate is more than five times or less than a
   * fifth of it; empty where it is plausible, or one of the two is not known.
   */
  public static Optional<Double> insteadOf(double rate, Currency from, Currency to) {
    Double one = PER_EURO.get(from.getCurrencyCode());
    Double other = PER_EURO.get(to.getCurrencyCode());
    if (one == null || other == null) {
      return Optional.empty();
    }
    double usual = other / one;
    return rate > usual * FAR || rate < usual / FAR
        ? Optional.of(BigDecimal.valueOf(usual).round(ROUND).doubleValue())
        : Optional.empty();
  }
}
