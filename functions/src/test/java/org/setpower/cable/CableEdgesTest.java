package org.setpower.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;

/** The first and the last that is allowed, and what lies just past them. */
class CableEdgesTest {
  @ParameterizedTest
  @CsvSource({"24, 24 AWG", "1, 1 AWG", "0, 1/0 AWG", "-3, 4/0 AWG"})
  void gauges_go_from_24_to_4_0(int gauge, String words) {
    CableSize size = CableSize.ofGauge(gauge);
    assertThat(size).hasToString(words);
    assertThat(CableSize.parse(words)).isEqualTo(size);
  }

  @ParameterizedTest
  @ValueSource(ints = {25, -4})
  void other_gauges_are_refused(int gauge) {
    assertThatThrownBy(() -> CableSize.ofGauge(gauge)).isInstanceOf(EvaluationException.class);
  }

  @ParameterizedTest
  @ValueSource(strings = {"25 AWG", "5/0", "0/0", "12", "awg", "#", "12 mm", "2.5 mm³"})
  void what_is_no_size_is_refused(String text) {
    assertThatThrownBy(() -> CableSize.parse(text)).isInstanceOf(EvaluationException.class);
  }

  /** ASTM B258: 36 AWG is 0.005 in, 4/0 is 0.46 in, and 39 equal steps lie between them. */
  @Test
  void the_thickest_gauge_is_0_46_inch_across() {
    double diameter = 0.46 * 25.4;
    assertThat(CableSize.parse("4/0").area())
        .isCloseTo(Math.PI / 4 * diameter * diameter, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"63, 63", "63.00000001, 63", "63.001, 80", "64, 80"})
  void a_breaker_of_just_the_amps_is_enough(double amps, double rating) {
    assertThat(Protection.breaker(amps, Protection.Standard.IEC, false)).isEqualTo(rating);
  }

  /** 0.8 · 230 V / (5 · 16 A) = 2.3 Ω. */
  @ParameterizedTest
  @CsvSource({"2.3, true", "2.29, true", "2.31, false"})
  void a_loop_of_just_the_ohms_trips(double ohms, boolean trips) {
    assertThat(Protection.trips(ohms, 16, Protection.Curve.B, 230)).isEqualTo(trips);
  }

  /** A source gives the most to a load that takes half of its volts, whatever the resistance. */
  @Test
  void the_most_watts_arrive_at_half_the_volts() {
    CableRun run = CableRun.of(CableSize.ofArea(2.5), 10, PhaseSystem.DC, 1, 20, 1);
    double most = run.mostWatts(100);
    assertThat(run.endVolts(most * (1 - 1e-12), 100)).isCloseTo(50, within(1e-3));
    assertThatThrownBy(() -> run.endVolts(most * 1.0001, 100))
        .isInstanceOf(EvaluationException.class);
  }
}
