package org.setpower;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.setpower.base.PhaseSystem;
import org.setpower.cable.CableRun;
import org.setpower.cable.CableSize;
import org.setpower.cable.Conductor;
import org.setpower.pack.Peukert;
import org.setpower.registry.groups.Calls;

/** Figures that are printed wrong in well-known places; the inputs given there give others. */
class PublishedMistakesTest {
  /** Table 11-8 prints 0.366 V for 19.5 ft of 10 AWG at 0.00126 Ω/ft and 20 A: 0.491 V. */
  @Test
  void faa_ac_43_13_1b_table_11_8_second_row() {
    double wholeConductor = 0.00126 * 19.5;
    double drop = new CableRun(PhaseSystem.DC, 1, wholeConductor / 2, 0).drop(20);
    assertThat(drop).isCloseTo(0.4914, within(1e-9));
  }

  /** EC&M example 1 prints 7.7 V for 200 ft at 1.1 Ω/kft and 20 A, three-phase: 7.62 V. */
  @Test
  void ecm_voltage_drop_example_1() {
    double drop = new CableRun(PhaseSystem.THREE, 1, 0.2 * 1.1, 0).drop(20);
    assertThat(drop).isCloseTo(7.621, within(5e-4));
  }

  /** The one-line form t = C/I^k holds for one-hour ratings only; 100 Ah in 20 h is none. */
  @Test
  void peukert_in_one_line() {
    double hours = Peukert.hours(100, 20, 1.2, 10);
    assertThat(hours).isCloseTo(20 * Math.pow(100 / (10.0 * 20), 1.2), within(1e-9));
    assertThat(Math.abs(hours - 100 / Math.pow(10, 1.2))).isGreaterThan(2);
  }

  /** A forum answer gives 15.1 A in the neutral of 10, 8 and 6 A; it lost the minus signs. */
  @Test
  void neutral_of_ten_eight_and_six() {
    assertThat(Calls.number("PHASE.NEUTRAL", 10, 8, 6, 1, 1, 1, 0))
        .isCloseTo(Math.sqrt(12), within(1e-9));
  }

  /** Many copies of NEC Table 8 print the solid 3.07, 1.93, 1.21, 0.764 Ω/kft as stranded. */
  @Test
  void nec_table_8_solid_printed_as_stranded() {
    double[] stranded = {3.14, 1.98, 1.24, 0.778};
    int[] gauges = {14, 12, 10, 8};
    for (int i = 0; i < gauges.length; i++) {
      double perKilofoot = Conductor.of(CableSize.ofGauge(gauges[i])).ohms(75) * 0.3048;
      assertThat(perKilofoot).isCloseTo(stranded[i], within(1e-9));
    }
  }
}
