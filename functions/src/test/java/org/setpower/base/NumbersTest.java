package org.setpower.base;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in words, at the edges of how they are written; expected texts and counts by hand. */
class NumbersTest {
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-0.0, 0",
    "2.5, 2.5",
    "-40, -40",
    "1234.5678, 1234.57",
    "0.1234567, 0.123457",
    "999999999, 1000000000",
    "1e9, 1E+9",
    "1000000, 1000000",
    "1e-6, 0.000001",
    "1.5e-7, 1.5E-7",
    "NaN, not a number",
    "Infinity, not a number",
    "-Infinity, not a number",
  })
  void words(double value, String expected) {
    assertThat(Numbers.format(value)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "3, 3",
    "3.000000000001, 3",
    "2.999999999999, 3",
    "3.00001, 4",
    "2.00000001, 3",
    "0, 0",
    "1e-8, 1",
    "0.0000000005, 0",
    "5000000.001, 5000000",
    "5000000.1, 5000001",
    "-0.5, 0",
  })
  void a_count_is_rounded_up_unless_it_is_whole_but_for_rounding(double count, double pieces) {
    assertThat(Numbers.wholeUp(count) + 0.0).isEqualTo(pieces);
  }
}
