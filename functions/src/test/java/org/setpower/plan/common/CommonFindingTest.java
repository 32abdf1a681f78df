package org.setpower.plan.common;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;

class CommonFindingTest {
  @Test
  void every_key_has_its_sentence() {
    assertThat(new EnglishMessages().keys())
        .containsAll(Arrays.stream(CommonFinding.values()).map(CommonFinding::key).toList());
  }

  @Test
  void figures_are_written_as_the_locale_writes_them() {
    Finding overflow = Finding.of(CommonFinding.OVERFLOW, "Tests", 1234, 1000);
    assertThat(new EnglishMessages().sentence(overflow, Locale.GERMAN))
        .isEqualTo(
            "Tests has 1.234 rows and the sheet shows 1.000. Delete rows, or begin a second file.");
  }

  @Test
  void money_keeps_the_digits_of_its_currency() {
    Finding money =
        Finding.of(CommonFinding.OVERFLOW, "Tests", new BigDecimal("1234.50"), BigDecimal.TEN);
    assertThat(new EnglishMessages().sentence(money, Locale.ENGLISH))
        .isEqualTo(
            "Tests has 1,234.50 rows and the sheet shows 10. Delete rows, or begin a second file.");
  }
}
