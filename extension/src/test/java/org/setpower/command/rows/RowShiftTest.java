package org.setpower.command.rows;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counted by hand on a list of ten rows. */
class RowShiftTest {
  @ParameterizedTest
  @CsvSource({
    // two rows inserted before row 4
    "4, 2, 3, 3",
    "4, 2, 4, 6",
    "4, 2, 10, 12",
    // rows 4 and 5 deleted
    "4, -2, 3, 3",
    "4, -2, 4,",
    "4, -2, 5,",
    "4, -2, 6, 4",
    "4, -2, 10, 8"
  })
  void numbers_follow_their_rows(int from, int more, double number, Double after) {
    assertThat(new RowShift(from, more).of(number).stream().boxed().toList())
        .isEqualTo(after == null ? java.util.List.of() : java.util.List.of(after));
  }
}
