package org.setpower.hire;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class HirePropertiesTest {
  private static final LocalDate OUT = LocalDate.of(2027, 1, 28);
  private static final Currency EUR = Currency.getInstance("EUR");
  private static final BigDecimal CENT = new BigDecimal("0.01");

  @Property
  void a_day_longer_costs_one_day_more_or_none(
      @ForAll @IntRange(max = 400) int later,
      @ForAll @IntRange(max = 6) int weekday,
      @ForAll @IntRange(min = 1, max = 7) int daysPerWeek) {
    LocalDate out = OUT.plusDays(weekday);
    double days = HireDays.charged(out, out.plusDays(later), daysPerWeek, 0, Weekend.TWO_DAYS);
    double more = HireDays.charged(out, out.plusDays(later + 1), daysPerWeek, 0, Weekend.TWO_DAYS);
    assertThat(more - days).isIn(0.0, 1.0);
    assertThat(days).isLessThanOrEqualTo(later + 1);
  }

  @Property
  void a_kinder_weekend_never_costs_more(
      @ForAll @IntRange(max = 60) int later,
      @ForAll @IntRange(max = 6) int weekday,
      @ForAll @IntRange(min = 1, max = 7) int daysPerWeek) {
    LocalDate out = OUT.plusDays(weekday);
    LocalDate back = out.plusDays(later);
    double plain = HireDays.charged(out, back, daysPerWeek, 0, Weekend.TWO_DAYS);
    double one = HireDays.charged(out, back, daysPerWeek, 0, Weekend.ONE_DAY);
    double free = HireDays.charged(out, back, daysPerWeek, 0, Weekend.FRIDAY_TO_MONDAY);
    assertThat(one).isLessThanOrEqualTo(plain);
    assertThat(free).isBetween(1.0, one);
  }

  @Property
  void a_fee_scales_with_its_quantity_but_for_rounding(
      @ForAll @DoubleRange(max = 5000) double rate,
      @ForAll @IntRange(min = 1, max = 50) int quantity,
      @ForAll @IntRange(max = 30) int days,
      @ForAll @IntRange(max = 100) int percentOff) {
    BigDecimal one = Money.fee(rate, 1, days, percentOff / 100.0, EUR);
    BigDecimal many = Money.fee(rate, quantity, days, percentOff / 100.0, EUR);
    BigDecimal apart = many.subtract(one.multiply(BigDecimal.valueOf(quantity))).abs();
    assertThat(apart).isLessThanOrEqualTo(CENT.multiply(BigDecimal.valueOf((quantity + 1) / 2.0)));
  }

  @Property
  void the_printed_figures_of_an_order_add_up(
      @ForAll @Size(min = 1, max = 30) List<@IntRange(max = 100_000) Integer> cents,
      @ForAll @IntRange(max = 30) int percentOff) {
    List<OrderTax.Line> lines =
        cents.stream()
            .map(c -> new OrderTax.Line(c / 100.0, c % 3 * 0.1, percentOff / 100.0))
            .toList();
    BigDecimal sum = BigDecimal.ZERO;
    for (OrderTax.Rate rate : OrderTax.rates(lines, EUR)) {
      assertThat(rate.base().scale()).isEqualTo(2);
      assertThat(rate.tax().subtract(rate.base().multiply(rate.rate())).abs())
          .isLessThanOrEqualTo(new BigDecimal("0.005"));
      sum = sum.add(rate.base()).add(rate.tax());
    }
    assertThat(OrderTax.total(lines, EUR)).isEqualTo(sum);
  }
}
