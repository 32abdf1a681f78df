package org.setpower.base;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words, dates and texts with units, read as people write them. */
class TextEnumAndDatesTest {
  private static final TextEnum.Lookup<PhaseSystem> SYSTEMS =
      new TextEnum.Lookup<>(PhaseSystem.class);

  @ParameterizedTest
  @CsvSource({
    "DC, DC",
    "dc, DC",
    "' D-C ', DC",
    "1 phase, ONE",
    "single phase, ONE",
    "Single-Phase, ONE",
    "3 phase, THREE",
    "THREE PHASE, THREE",
    "three\u00a0phase, THREE",
  })
  void a_word_however_it_is_written(String text, PhaseSystem expected) {
    assertThat(SYSTEMS.read("system", text)).isEqualTo(expected);
  }

  @Test
  void a_word_that_is_not_known_is_refused_with_those_that_are() {
    assertThatThrownBy(() -> SYSTEMS.read("system", "two phase"))
        .isInstanceOf(EvaluationException.class)
        .hasMessageContaining("two phase")
        .hasMessageContaining("\"DC\", \"1PH\", \"3PH\"");
    assertThatThrownBy(() -> SYSTEMS.read("system", " ".repeat(200) + "dc"))
        .isInstanceOf(EvaluationException.class);
    assertThat(SYSTEMS.read("system", " ".repeat(198) + "dc")).isEqualTo(PhaseSystem.DC);
  }

  @Test
  void a_text_of_forty_characters_is_shown_whole_and_a_longer_one_cut() {
    assertThat(TextEnum.shortened("x".repeat(40))).isEqualTo("x".repeat(40));
    assertThat(TextEnum.shortened("x".repeat(41))).isEqualTo("x".repeat(39) + "…");
  }

  @ParameterizedTest
  @CsvSource({"46050, 2026-01-28", "46050.99, 2026-01-28", "32874, 1990-01-01"})
  void a_date_counts_from_30_December_1899(double serial, LocalDate expected) {
    assertThat(Dates.of("day", serial)).isEqualTo(expected);
  }

  @ParameterizedTest
  @ValueSource(doubles = {32873.99, 109575, 1e6, -1e6, 0, 1e300})
  void a_day_before_1990_or_after_2199_is_a_slip(double serial) {
    assertThatThrownBy(() -> Dates.of("day", serial)).isInstanceOf(EvaluationException.class);
  }

  @Test
  void the_first_and_the_last_day_count() {
    assertThat(Dates.of("day", "1990-01-01")).isEqualTo(LocalDate.of(1990, 1, 1));
    assertThat(Dates.of("day", " 2199-12-31 ")).isEqualTo(LocalDate.of(2199, 12, 31));
    assertThatThrownBy(() -> Dates.of("day", "2200-01-01")).isInstanceOf(EvaluationException.class);
    assertThatThrownBy(() -> Dates.of("day", "28.1.2026")).isInstanceOf(EvaluationException.class);
  }

  @Test
  void a_text_with_a_unit_has_sixty_characters_at_most() {
    String number = "0".repeat(58) + "5";
    assertThat(QuantityText.amount("length", number + " ").value()).isEqualTo(5);
    assertThatThrownBy(() -> QuantityText.amount("length", number + "  "))
        .isInstanceOf(EvaluationException.class)
        .satisfies(
            r ->
                assertThat(((EvaluationException) r).errorCode())
                    .isEqualTo(BaseErrorCode.NOT_A_NUMBER));
  }

  @Test
  void every_fault_has_the_code_that_Calc_gives_it() {
    assertThat(ErrorKind.DOMAIN.code()).isEqualTo(502);
    assertThat(ErrorKind.WRONG_KIND.code()).isEqualTo(519);
    assertThat(ErrorKind.NO_CONVERGENCE.code()).isEqualTo(523);
    assertThat(ErrorKind.NO_ANSWER.code()).isEqualTo(32767);
  }
}
