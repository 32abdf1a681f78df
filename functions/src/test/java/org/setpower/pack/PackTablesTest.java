package org.setpower.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.base.TextEnum;

/** What is read from tables, and the limits of a device to the digit. */
class PackTablesTest {
  private static final Pack PACK = Pack.of(Chemistry.LI_ION, 8, 10, 1000, 1, 25);

  @Test
  void points_that_do_not_rise_are_refused() {
    assertThat(PiecewiseLine.rising(-1, 0, 2)).containsExactly(-1, 0, 2);
    assertThat(PiecewiseLine.rising(3)).containsExactly(3);
    for (double[] damaged : new double[][] {{0, 1, 1}, {0, 2, 1}, {1, 0, 2}}) {
      assertThatThrownBy(() -> PiecewiseLine.rising(damaged))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("must rise");
    }
  }

  /** From (0, 1) up to (10, 3) and down to (20, 2). */
  @ParameterizedTest
  @CsvSource({"0, 1", "5, 2", "10, 3", "15, 2.5", "20, 2", "30, 2"})
  void a_line_goes_straight_from_point_to_point(double x, double y) {
    PiecewiseLine line = new PiecewiseLine(new double[] {0, 10, 20}, new double[] {1, 3, 2});
    assertThat(line.at(x)).isCloseTo(y, within(1e-12));
    assertThat(line.first()).isZero();
    assertThat(line.last()).isEqualTo(20);
  }

  /** Chen et al. 2020, ARTS-Lab 2023 and the handbook table, as in open_circuit.csv. */
  @Test
  void the_curves_are_read() {
    Map<Chemistry, OpenCircuit> curves = OpenCircuit.read();
    assertThat(curves)
        .containsOnlyKeys(Chemistry.LI_ION, Chemistry.NCA, Chemistry.LFP, Chemistry.LEAD);
    OpenCircuit li = curves.get(Chemistry.LI_ION);
    assertThat(li.volts(0.5)).isCloseTo(3.7509, within(1e-12));
    assertThat(li.volts(0.55)).isCloseTo((3.7509 + 3.8406) / 2, within(1e-12));
    assertThat(li.charge(3.7509)).isCloseTo(0.5, within(1e-12));
    assertThat(li.charge((3.7509 + 3.8406) / 2)).isCloseTo(0.55, within(1e-12));
    assertThat(li.segments()).isEqualTo(16);
    assertThat(curves.get(Chemistry.NCA).charge(3.6635)).isCloseTo(0.5, within(1e-12));
    assertThat(curves.get(Chemistry.LFP).volts(0.506)).isCloseTo(3.2696, within(1e-12));
    assertThat(curves.get(Chemistry.LFP).segments()).isEqualTo(12);
    OpenCircuit lead = curves.get(Chemistry.LEAD);
    assertThat(lead.volts(0.25)).isCloseTo(2.01, within(1e-12));
    assertThat(lead.volts(0.125)).isCloseTo((1.98167 + 2.01) / 2, within(1e-12));
    assertThat(lead.segments()).isEqualTo(4);
  }

  /** Li-ion: 2.5 V empty, 4.2 V full; the lines begin at 0, 0.02 and 0.05, the last at 0.98. */
  @Test
  void a_curve_has_ends() {
    OpenCircuit li = OpenCircuit.of(Chemistry.LI_ION);
    assertThat(li.charge(2.4)).isZero();
    assertThat(li.charge(2.5)).isZero();
    assertThat(li.charge(4.2)).isEqualTo(1);
    assertThat(li.charge(4.3)).isEqualTo(1);
    assertThat(li.segmentBelow(0)).isZero();
    assertThat(li.segmentBelow(0.02)).isZero();
    assertThat(li.segmentBelow(0.03)).isEqualTo(1);
    assertThat(li.segmentBelow(0.05)).isEqualTo(1);
    assertThat(li.segmentBelow(1)).isEqualTo(15);
  }

  /** 8 cells switch off at 3.0 V each, 24 V; a device that stops at 24 V stops first. */
  @Test
  void of_two_equal_limits_the_device_is_named() {
    assertThat(new DeviceLoad(1, 24, 0).end(PACK)).isEqualTo(Discharge.End.CUT_OFF);
    assertThat(new DeviceLoad(1, 23.9, 0).end(PACK)).isEqualTo(Discharge.End.FLOOR);
  }

  /** Behind 1 Ω no more than 32 V · 32 A come out of 64 V, and the load then sees 32 V. */
  @Test
  void at_half_the_volts_the_watts_collapse() {
    assertThat(new DeviceLoad(1024, 32, 0).end(PACK)).isEqualTo(Discharge.End.COLLAPSE);
    assertThat(new DeviceLoad(1024, 32.1, 0).end(PACK)).isEqualTo(Discharge.End.CUT_OFF);
  }

  /** 100 W through 1 Ω: 20 V at the terminals leave 10 V and 10 A; below that, nothing. */
  @Test
  void a_lead_lets_the_watts_through_or_not() {
    DeviceLoad load = new DeviceLoad(100, 0, 1);
    assertThat(load.atDevice(20)).isCloseTo(10, within(1e-12));
    assertThat(load.atDevice(19.9)).isZero();
    assertThat(load.atDevice(25)).isCloseTo(20, within(1e-12));
  }

  @Test
  void other_ways_to_write_a_chemistry_are_read() {
    TextEnum.Lookup<Chemistry> words = new TextEnum.Lookup<>(Chemistry.class);
    assertThat(words.read("chemistry", "NMC")).isEqualTo(Chemistry.LI_ION);
    assertThat(words.read("chemistry", "LiFePO4")).isEqualTo(Chemistry.LFP);
    assertThat(words.read("chemistry", "NiMH")).isEqualTo(Chemistry.NIMH);
    assertThat(words.read("chemistry", "lead-acid")).isEqualTo(Chemistry.LEAD);
  }
}
