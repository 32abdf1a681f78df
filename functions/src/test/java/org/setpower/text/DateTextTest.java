package org.setpower.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Common practice: DIN 5008 writes the day of a German date with a point. */
class DateTextTest {
  private static final LocalDate DAY = LocalDate.of(2027, 5, 4);

  @Test
  void the_day_of_a_german_date_has_a_point() {
    assertThat(DateText.of(DAY, Locale.GERMANY)).isEqualTo("4. Mai 2027");
    assertThat(DateText.of(MonthDay.from(DAY), Locale.GERMANY)).isEqualTo("4. Mai");
  }

  @Test
  void others_have_none() {
    assertThat(DateText.of(DAY, Locale.UK)).isEqualTo("4 May 2027");
    assertThat(DateText.of(DAY, Locale.FRANCE)).isEqualTo("4 mai 2027");
    assertThat(DateText.of(MonthDay.from(DAY), Locale.UK)).isEqualTo("4 May");
  }
}
