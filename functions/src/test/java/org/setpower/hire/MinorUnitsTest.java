package org.setpower.hire;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Amounts end at the minor unit of their currency, and parts of an amount are the amount. */
class MinorUnitsTest {
  private static final Currency EUR = Currency.getInstance("EUR");

  @ParameterizedTest
  @CsvFileSource(resources = "/org/setpower/hire/minor_units.csv", numLinesToSkip = 2)
  void digits_are_those_of_the_standard(String code, int digits) {
    assertThat(Money.rounded(new BigDecimal("1.23456"), Money.currency("currency", code)).scale())
        .isEqualTo(digits);
  }

  private static List<BigDecimal> split(String amount, String... weights) {
    return Money.split(
        new BigDecimal(amount), List.of(weights).stream().map(BigDecimal::new).toList(), EUR);
  }

  @Test
  void largest_remainders_get_what_is_left() {
    // 7.5 % of 1,885.09 and of 240.28 are 141.38175 and 18.021: the first lost more
    assertThat(split("159.40", "1885.09", "240.28"))
        .containsExactly(new BigDecimal("141.38"), new BigDecimal("18.02"));
    assertThat(split("0.05", "1", "1", "1"))
        .containsExactly(new BigDecimal("0.02"), new BigDecimal("0.02"), new BigDecimal("0.01"));
    assertThat(split("0.00", "0", "0")).allMatch(p -> p.signum() == 0);
  }

  @Test
  void parts_are_the_amount() {
    Random random = new Random(4217);
    for (int i = 0; i < 2000; i++) {
      List<BigDecimal> weights = new ArrayList<>();
      for (int k = 0; k <= random.nextInt(6); k++) {
        weights.add(BigDecimal.valueOf(1 + random.nextInt(100_000), 2));
      }
      BigDecimal amount = BigDecimal.valueOf(random.nextInt(1_000_000), 2);
      List<BigDecimal> parts = Money.split(amount, weights, EUR);
      assertThat(parts.stream().reduce(BigDecimal.ZERO, BigDecimal::add))
          .isEqualByComparingTo(amount);
      BigDecimal all = weights.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
      for (int k = 0; k < parts.size(); k++) {
        double exact = amount.doubleValue() * weights.get(k).doubleValue() / all.doubleValue();
        assertThat(parts.get(k).doubleValue()).isBetween(exact - 0.01, exact + 0.01);
      }
    }
  }
}
