package org.setpower.hire;

import org.setpower.base.EvaluationException;

/** Owning against hiring, and what energy from packs costs. */
public final class BreakEven {
  private BreakEven() {}

  /**
   * Hire days after which owning is cheaper: (purchase − resale) / (day rate − upkeep a day); 0
   * where the resale covers the purchase.
   *
   * @throws EvaluationException where a hire day costs no more than the upkeep of an owned one
   */
  public static double breakEvenDays(
      double purchase, double resale, double dayRate, double upkeepPerDay) {
    if (dayRate <= upkeepPerDay) {
      throw new EvaluationException(HireErrorCode.NEVER_PAYS, dayRate, upkeepPerDay);
    }
    return Math.max(0, purchase - resale) / (dayRate - upkeepPerDay);
  }

  /**
   * Cost of a delivered kWh: price / (Wh/1000 · cycles · (1 + health at the end)/2 · efficiency).
   * The mean capacity over the life is taken as the mean of the first and the last.
   */
  public static double perKilowattHour(
      double price, double wattHours, double cycles, double healthAtEnd, double efficiency) {
    double delivered = wattHours / 1000 * cycles * (1 + healthAtEnd) / 2 * efficiency;
    return price / delivered;
  }
}
