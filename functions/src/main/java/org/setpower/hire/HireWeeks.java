package org.setpower.hire;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * What one piece costs by week. Weeks roll from the day out; the first has a price of its own. A
 * part of a week costs its days at the day rate, at most that week's price. Common practice.
 */
public final class HireWeeks {
  private static final int WEEK = 7;

  private HireWeeks() {}

  /**
   * The prices of a piece.
   *
   * @param first price of the first week
   * @param later price of each later week
   * @param day day rate; null where a part of a week costs the whole week
   */
  public record Prices(BigDecimal first, BigDecimal later, BigDecimal day) {}

  /** The price from the day out to the day back; days that the weekend leaves out cost nothing. */
  public static BigDecimal price(LocalDate out, LocalDate back, Weekend weekend, Prices prices) {
    int days = HireDays.calendar(out, back);
    int rest = 0;
    for (int i = days / WEEK * WEEK; i < days; i++) {
      if (weekend.counts(out.plusDays(i), out, back)) {
        rest++;
      }
    }
    return price(days / WEEK, BigDecimal.valueOf(rest), prices);
  }

  /** The price of so many days, of which every seven are a week. */
  public static BigDecimal price(BigDecimal days, Prices prices) {
    BigDecimal[] weeks = days.divideAndRemainder(BigDecimal.valueOf(WEEK));
    return price(weeks[0].intValueExact(), weeks[1], prices);
  }

  private static BigDecimal price(int weeks, BigDecimal rest, Prices prices) {
    BigDecimal price = BigDecimal.ZERO;
    for (int week = 0; week < weeks; week++) {
      price = price.add(week == 0 ? prices.first : prices.later);
    }
    if (rest.signum() == 0) {
      return price;
    }
    BigDecimal whole = weeks == 0 ? prices.first : prices.later;
    return price.add(prices.day == null ? whole : whole.min(prices.day.multiply(rest)));
  }
}
