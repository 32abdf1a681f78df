package org.setpower.hire;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Currency;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips of the decimal point and rates the wrong way round; usual rates are from memory. */
class UsualRatesTest {
  @ParameterizedTest
  @CsvSource({
    "1.17, GBP, EUR, true",
    "117, GBP, EUR, false",
    "11.7, GBP, EUR, false",
    "0.117, GBP, EUR, false",
    "0.0117, GBP, EUR, false",
    "0.92, USD, EUR, true",
    "160, EUR, JPY, true",
    "0.0062, JPY, EUR, true",
    "160, JPY, EUR, false",
    "0.00255, HUF, EUR, true",
    "117, GBP, ARS, true",
    "7, GBP, GBP, false",
  })
  void a_rate_far_from_the_usual_is_noticed(
      double rate, String from, String to, boolean plausible) {
    assertThat(
            UsualRates.insteadOf(rate, Currency.getInstance(from), Currency.getInstance(to))
                .isEmpty())
        .isEqualTo(plausible);
  }
}
