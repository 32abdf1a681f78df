package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.registry.groups.Calls.call;
import static org.setpower.registry.groups.Calls.number;
import static org.setpower.registry.groups.Calls.table;

import org.junit.jupiter.api.Test;
import org.setpower.base.ErrorKind;
import org.setpower.base.EvaluationException;

/**
 * What the crew of "The Salt Road" asks of its packs. P98: 4 cells, 6.8 Ah, 60 mΩ; P150: 8, 5.2,
 * 75; P294: 8, 10.2, 45; P588: 8, 20.4, 30; B1200: 14 cells, 24 Ah. Figures by hand, except where a
 * line says otherwise.
 */
class BatteryScenarioTest {
  /** Half power on 24 V and full power on 48 V: the same amps from each pack, the same hours. */
  @Test
  void large_panel_on_one_pack_and_on_two_in_series() {
    assertThat(number("PACK.FEED", "12/24", 24)).isEqualTo(24);
    assertThat(number("PACK.RUNTIME", 294, 200, 1, 1, 25, "Li-ion")).isCloseTo(1.47, within(1e-9));
    assertThat(number("BANK.VOLTS", 28.8, 2)).isCloseTo(57.6, within(1e-9));
    double half = number("PACK.DISCHARGE", 8, 10.2, 45, 200, 20, "Li-ion", 1, 1, 25);
    assertThat(number("PACK.DISCHARGE", 16, 10.2, 90, 400, 40, "Li-ion", 1, 1, 25))
        .isCloseTo(half, within(1e-9));
    Object[][] curve = table("PACK.CURVE", 8, 10.2, 45, 200, 20, "Li-ion", 1, 1, 25);
    assertThat((Double) curve[0][3])
        .isCloseTo(6.0006, within(1e-4)); // 2·200/(33.6 + √(33.6² − 36))
    assertThat((Double) curve[24][2]).isCloseTo(24, within(1e-9)); // 8 · 3.0 V
    assertThat((Double) curve[24][3]).isCloseTo(200 / 24.0, within(1e-9));
    assertThat((Double) curve[24][0]).isCloseTo(half, within(1e-12));
  }

  @Test
  void a_24_volt_pack_on_a_12_volt_plate_gives_no_power() {
    assertThatThrownBy(() -> call("PACK.FEED", 24, 12))
        .isInstanceOfSatisfying(
            EvaluationException.class, r -> assertThat(r.kind()).isEqualTo(ErrorKind.NO_ANSWER))
        .hasMessage("no power: battery output 24 V, plate requires 12 V");
    assertThat(number("PACK.FEED", "12/24", 12)).isEqualTo(12);
    assertThat(number("PACK.FEED", "12/24", 24)).isEqualTo(24);
  }

  /**
   * Three P294 at 100, 62 and 35 % behind camera A. Hours: scipy, see cases/BANK.EVENTS.csv. The
   * charge at which the next one takes part, by hand: 30.8965 + 0.045·92/30.8965 V is 63.6 %.
   */
  @Test
  void a_hot_swap_stack_of_unequal_packs() {
    Object[][] stack = {
      {"Li-ion", 8, 10.2, 45, 1}, {"Li-ion", 8, 10.2, 45, 0.62}, {"Li-ion", 8, 10.2, 45, 0.35}
    };
    Object[][] events = table("BANK.EVENTS", stack, 92, 20, "hot-swap", 25);
    assertThat(events[0]).startsWith(0.0, 1.0).endsWith("carries the load");
    assertThat(events[1][1]).isEqualTo(2.0);
    assertThat((Double) events[1][0]).isCloseTo(1.30082, within(1e-5));
    assertThat(events[2][1]).isEqualTo(3.0);
    assertThat((Double) events[2][0]).isCloseTo(3.07439, within(1e-5));
    assertThat(number("BANK.DISCHARGE", stack, 92, 20, "hot-swap", 25))
        .isCloseTo(5.99072, within(1e-5));
    Object[][] share =
        table("BANK.SHARE", new Object[][] {{33.6, 45}, {30.8965, 45}, {28.9936, 45}}, 92);
    assertThat((Double) share[0][0]).isCloseTo(55, within(0.5));
    assertThat((Double) share[1][0]).isCloseTo(-5, within(0.5));
    assertThat((Double) share[2][0]).isCloseTo(-47, within(0.5));
  }

  /** 16:00 to 03:00 at −6 °C; 79.036 % of the energy is left. */
  @Test
  void night_on_the_salt_pans() {
    assertThat(number("PACK.RUNTIME", 294, 92, 1, 1, -6, "Li-ion"))
        .isCloseTo(2.52572, within(1e-4));
    double camera = number("PACK.DISCHARGE", 8, 10.2, 45, 92, 20, "Li-ion", 1, 1, -6);
    assertThat(camera).isBetween(2.52572, 294 / 92.0);
    assertThat(number("PACK.COUNT", 11, 2.52572, 0)).isEqualTo(5); // 4.36
    assertThat(number("PACK.RUNTIME", 98, 38, 1, 1, -6, "Li-ion")).isCloseTo(2.03830, within(1e-4));
    assertThat(number("PACK.COUNT", 11, 2.0383, 0)).isEqualTo(6); // monitor: 5.40
    assertThat(number("PACK.RUNTIME", 98, 14, 1, 1, -6, "Li-ion")).isCloseTo(5.53252, within(1e-4));
    assertThat(number("PACK.COUNT", 11, 5.53252, 0)).isEqualTo(2); // link: 1.99
    assertThat(number("PACK.RUNTIME", 150, 50, 1, 1, -6, "Li-ion"))
        .isCloseTo(2.37108, within(1e-4));
    assertThat(8 * number("PACK.COUNT", 11, 2.37108, 0)).isEqualTo(40); // tubes: 4.64 each
  }

  @Test
  void full_packs_over_a_highest_voltage() {
    assertThat(number("BANK.FULLVOLTS", 4)).isGreaterThan(16); // P98 on the link
    assertThat(number("BANK.FULLVOLTS", 8, 2)).isGreaterThan(60).isLessThan(70);
    assertThat(number("BANK.FULLVOLTS", 14)).isLessThan(60); // B1200
    assertThat(number("BANK.SHORTAMPS", 33.6, 30)).isGreaterThan(1000); // P588
  }

  @Test
  void packs_from_the_cold_are_not_charged_before_they_are_warm() {
    assertThatThrownBy(() -> call("CHARGE.HOURS", 10.2, 5, "Li-ion", -6, 0, 1))
        .isInstanceOfSatisfying(
            EvaluationException.class, r -> assertThat(r.kind()).isEqualTo(ErrorKind.NO_ANSWER))
        .hasMessage(
            "battery_temp is -6 °C (21.2 °F); do not charge a lithium battery below 0 °C (32 °F): let"
                + " it warm up first");
    double alone = number("CHARGE.HOURS", 10.2, 5, "Li-ion", 12, 0.1, 1, 8, 45);
    double all = number("CHARGE.HOURS", 10.2, 3, "Li-ion", 12, 0.1, 1, 8, 45);
    assertThat(alone).isBetween(0.8 * 10.2 / 5, 10.2 / 5 * 1.3);
    assertThat(all).isBetween(alone, alone * 5 / 3);
    assertThat(number("CHARGE.CHANNELS", 10, 11, 3.5)).isEqualTo(4); // 3 turns of 3.5 h
  }

  /** At −20 °C 28 % stay in the battery; a fifth of the other 72 % is kept: 1 − 0.8 · 0.72. */
  @Test
  void what_is_kept_is_a_share_of_what_the_cold_leaves() {
    Object[][] curve = table("PACK.CURVE", 8, 10.2, 45, 10, 0, "Li-ion", 1, 1, -20, null, 1, 0.2);
    assertThat((Double) curve[curve.length - 1][1]).isCloseTo(0.424, within(0.001));
  }
}
