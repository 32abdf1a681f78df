package org.setpower.plan.register;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.register.SerialRange.Match;

class SerialRangeTest {
  @ParameterizedTest
  @CsvSource({
    "P1-07,YES",
    "P1-01,NO",
    "P1-13,NO",
    "P1-007,BY_HAND",
    "P1-7,BY_HAND",
    "P1-0013,BY_HAND",
    "07,BY_HAND",
    "P2-07,NO",
    "P1-0A,BY_HAND",
    "X,NO",
    "P1-02,YES",
    "P1-12,YES"
  })
  void serials_of_the_same_form_are_compared(String serial, Match match) {
    assertThat(SerialRange.between("P1-02", "P1-12").match(serial)).isEqualTo(match);
    assertThat(SerialRange.between("P1-12", "P1-02").match(serial)).isEqualTo(match);
  }

  @Test
  void ends_with_other_letters_or_digits_are_no_range() {
    assertThat(SerialRange.between("B26-9", "B26-11")).isNull();
    assertThat(SerialRange.between("P1-02", "P2-12")).isNull();
    assertThat(SerialRange.between("P1", "P")).isNull();
  }
}
