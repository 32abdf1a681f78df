package org.setpower.hire;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prices by week; expected by hand from 190 the first week, 140 each later, 63.35 a day. */
class HireWeeksTest {
  private static final HireWeeks.Prices PRICES =
      new HireWeeks.Prices(
          BigDecimal.valueOf(190), BigDecimal.valueOf(140), new BigDecimal("63.35"));

  @ParameterizedTest
  @CsvSource({
    "2027-02-01, 2027-02-01, 63.35",
    "2027-02-01, 2027-02-02, 126.70",
    "2027-02-01, 2027-02-03, 190",
    "2027-02-01, 2027-02-07, 190",
    "2027-02-01, 2027-02-08, 253.35",
    "2027-02-01, 2027-02-10, 330",
    "2027-02-01, 2027-02-14, 330",
    "2027-02-01, 2027-02-16, 456.70",
    "2027-02-01, 2027-02-21, 470"
  })
  void a_part_of_a_week_costs_its_days_at_most_its_week(
      LocalDate out, LocalDate back, BigDecimal price) {
    assertThat(HireWeeks.price(out, back, Weekend.TWO_DAYS, PRICES)).isEqualByComparingTo(price);
    assertThat(HireWeeks.price(BigDecimal.valueOf(HireDays.calendar(out, back)), PRICES))
        .isEqualByComparingTo(price);
  }

  @Test
  void without_a_day_rate_a_part_of_a_week_costs_the_week() {
    HireWeeks.Prices whole = new HireWeeks.Prices(PRICES.first(), PRICES.later(), null);
    assertThat(HireWeeks.price(BigDecimal.valueOf(8), whole)).isEqualByComparingTo("330");
  }

  @Test
  void days_that_the_weekend_leaves_out_cost_nothing() {
    // Friday to Monday: a week ends on Thursday; Friday, Saturday and Sunday count two
    LocalDate friday = LocalDate.of(2027, 2, 5);
    assertThat(HireWeeks.price(friday, friday.plusDays(2), Weekend.ONE_DAY, PRICES))
        .isEqualByComparingTo("126.70");
  }
}
