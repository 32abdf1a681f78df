package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.registry.groups.Calls.column;
import static org.setpower.registry.groups.Calls.number;
import static org.setpower.registry.groups.Calls.row;
import static org.setpower.registry.groups.Calls.table;

import org.junit.jupiter.api.Test;

/**
 * The questions of "The Salt Road" about cables and supplies. Expected values are worked out by
 * hand: IEC 60228 class 5 and NEC Table 8 resistances at 60 °C, 0.08 mΩ/m reactance.
 */
class SupplyScenarioTest {
  /** 200 W over 10 m of 12 AWG: R = 2 · 10 m · 6.4961·(1 − 0.00323·15) mΩ/m = 0.12363 Ω. */
  @Test
  void at_24_volts_half_the_current_and_a_quarter_of_the_heat() {
    assertThat(number("LOAD.AMPS", 200, 12, "DC")).isCloseTo(16.667, within(1e-3));
    assertThat(number("LOAD.AMPS", 200, 24, "DC")).isCloseTo(8.333, within(1e-3));
    assertThat(number("CABLE.HEAT", "12 AWG", 10, 16.6666667, "DC")).isCloseTo(34.34, within(0.01));
    assertThat(number("CABLE.HEAT", "12 AWG", 10, 8.3333333, "DC")).isCloseTo(8.585, within(0.005));
  }

  /** With the watts held: I = (24 − √(24² − 4·200·0.12363)) / (2·0.12363), and so for 12 V. */
  @Test
  void with_the_watts_held_the_gap_is_wider_still() {
    assertThat(number("CABLE.LOADAMPS", "12 AWG", 10, 200, 12, "DC")).isCloseTo(21.4, within(0.05));
    assertThat(number("CABLE.LOADAMPS", "12 AWG", 10, 200, 24, "DC")).isCloseTo(8.7, within(0.05));
    assertThat(number("CABLE.HEAT", "12 AWG", 10, 21.37, "DC")).isCloseTo(56.5, within(0.5));
    assertThat(number("CABLE.HEAT", "12 AWG", 10, 8.73, "DC")).isCloseTo(9.4, within(0.05));
  }

  /** 2 · 15.459 A · 45 m · (1.4002·0.9 + 0.08·0.4359) mΩ/m = 1.80 V of 230: 0.8 %, under 3 %. */
  @Test
  void forty_five_metres_to_the_make_up_trailer() {
    double amps = number("LOAD.AMPS", 3200, 230, "1PH", 0.9);
    assertThat(amps).isCloseTo(15.459, within(1e-3));
    assertThat(number("CABLE.DROP", "16 mm²", 45, 15.459, "1PH", 0.9))
        .isCloseTo(1.802, within(0.002));
  }

  /** 2.9135 A: 2·70 m·14.404 A·0.6413 mΩ/m at pf 0.97 = 1.29 V, then 2.62 V more: 3.91 V. */
  @Test
  void the_drop_adds_up_from_the_set_to_the_fresnel_and_the_drum_is_caught() {
    assertThat(number("LOAD.AMPS", 650, 230, "1PH", 0.97)).isCloseTo(2.9135, within(1e-4));
    double first = number("CABLE.DROP", 35, 70, 14.404, "1PH", 0.97);
    double second = number("CABLE.DROP", 2.5, 50, 2.9135, "1PH", 0.97);
    assertThat(first).isCloseTo(1.293, within(0.002));
    assertThat(second).isCloseTo(2.616, within(0.002));
    assertThat(number("CABLE.AMPACITY", 2.5, "cord", 30, 2, "drum 3 layers"))
        .as("25 A · 0.45, behind a breaker of 16 A")
        .isCloseTo(11.25, within(1e-9))
        .isLessThan(16);
  }

  /** By day 4 160 + 800 + 1 300 + 1 500 + 900 = 8 660 W; by night 1 600 + 400 + 1 500 + 900 W. */
  @Test
  void the_set_for_the_pans_and_its_low_load_at_night() {
    double kva = number("GENSET.KVA", 8660, 5, 35, "diesel turbo", 0.96, 0.2);
    assertThat(kva).as("8.66 · 1.2 / 0.8 over the derate").isBetween(12.98, 14.5);
    assertThat(number("GENSET.SIZE", kva, column(25, 37.5, 50, 75))).isEqualTo(25);
    assertThat(number("GENSET.KW", 25)).isEqualTo(20);
    assertThat(number("GENSET.LOADSHARE", 8.66, 20)).isCloseTo(0.433, within(1e-9));
    assertThat(number("GENSET.LOADSHARE", 4.4, 20)).as("under 30 %").isCloseTo(0.22, within(1e-9));
  }

  /** 8.237 A of two charging stations and 13.043 A of the kettle on one outlet of 16 A. */
  @Test
  void the_second_kettle_is_over_and_a_new_row_takes_the_emptiest_leg() {
    double stations = number("LOAD.AMPS", 1800, 230, "1PH", 0.95);
    double kettle = number("LOAD.AMPS", 3000, 230, "1PH", 1);
    assertThat(stations + kettle).isCloseTo(21.281, within(1e-3)).isGreaterThan(16);
    Object[][] leg = table("PHASE.ASSIGN", row(13.04), 3, row(15.5, 13, 8.2));
    assertThat(leg).isDeepEqualTo(new Object[][] {{3.0}});
  }
}
