package org.setpower.hire;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The tax of an order, rate by rate: the lines of a rate are added, the discount of the order comes
 * off, that base is rounded, and the tax on the rounded base is rounded. So the printed figures add
 * up.
 */
public final class OrderTax {
  private OrderTax() {}

  /**
   * A line of the order.
   *
   * @param amount net of the line's own discount
   * @param rate share of tax
   * @param discount share of the order's discount that the line takes part in
   */
  public record Line(double amount, double rate, double discount) {}

  /**
   * What one rate comes to.
   *
   * @param base net after the order's discount, rounded
   * @param tax on the rounded base, rounded
   */
  public record Rate(BigDecimal rate, BigDecimal base, BigDecimal tax) {
    /** Base and tax together. */
    public BigDecimal gross() {
      return base.add(tax);
    }
  }

  /** A row per rate, the lowest first. */
  public static List<Rate> rates(List<Line> lines, Currency currency) {
    Map<BigDecimal, BigDecimal> nets = new TreeMap<>(Comparator.naturalOrder());
    for (Line line : lines) {
      BigDecimal net =
          Money.decimal(line.amount)
              .multiply(BigDecimal.ONE.subtract(Money.decimal(line.discount)));
      nets.merge(Money.decimal(line.rate), net, BigDecimal::add);
    }
    return nets.entrySet().stream()
        .map(
            e -> {
              BigDecimal base = Money.rounded(e.getValue(), currency);
              return new Rate(e.getKey(), base, Money.rounded(base.multiply(e.getKey()), currency));
            })
        .toList();
  }

  /** What the order comes to: the bases and taxes of all rates. */
  public static BigDecimal total(List<Line> lines, Currency currency) {
    return rates(lines, currency).stream()
        .map(Rate::gross)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
