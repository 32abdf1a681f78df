package org.setpower.charge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.base.ReferenceTable;
import org.setpower.pack.Chemistry;
import org.setpower.pack.TemperatureDerating;

/**
 * The charger against cells that others have charged CC-CV, warm and cold: a whole charge, and the
 * minutes until 50, 80, 90 and 95 % of it were in, all within 5 %.
 *
 * <p>Left out: a used cell (2.35 of 2.9 Ah), used cells of unknown chemistry (NASA 2007), and a
 * two-wire tester that charged to 4.26 V: its 95 % took 81 min at 1C where 69 are given.
 */
class MeasuredChargesTest {
  private static final Map<String, Double> PARTS =
      Map.of("half", 0.5, "most", 0.8, "nine", 0.9, "last", 0.95);

  static List<ReferenceTable.Row> charges() {
    return ReferenceTable.read(MeasuredChargesTest.class, "measured_charge.csv");
  }

  static List<ReferenceTable.Row> warm() {
    return charges().stream().filter(c -> c.number("temp") >= 25).toList();
  }

  static List<ReferenceTable.Row> cold() {
    return charges().stream().filter(c -> c.number("temp") < 25).toList();
  }

  private static String name(ReferenceTable.Row charge, String part) {
    return charge.text("cell") + " at " + charge.text("temp") + " °C, " + part;
  }

  /** The share of the charge that is reached when a part of all that was taken is in. */
  private static double share(ReferenceTable.Row charge, String part) {
    return PARTS.get(part) * charge.number("taken") / charge.number("ah");
  }

  private static Charging charging(ReferenceTable.Row charge, Double milliohms) {
    return Charging.of(
        charge.text("chemistry").equals("LFP") ? Chemistry.LFP : Chemistry.LI_ION,
        1,
        charge.number("ah"),
        milliohms,
        charge.number("amps"),
        charge.number("temp"));
  }

  /** With the resistance of the cell. */
  @ParameterizedTest
  @MethodSource("warm")
  void minutes_until_a_part_is_in(ReferenceTable.Row charge) {
    Charging charging = charging(charge, charge.number("milliohms"));
    for (String part : PARTS.keySet()) {
      assertThat(charging.hours(0, share(charge, part)) * 60)
          .as(name(charge, part))
          .isCloseTo(charge.number(part), Percentage.withPercentage(5));
    }
  }

  /** With the usual resistance: no charger is free too early. */
  @ParameterizedTest
  @MethodSource("warm")
  void minutes_by_the_label(ReferenceTable.Row charge) {
    Charging charging = charging(charge, null);
    for (String part : PARTS.keySet()) {
      double measured = charge.number(part);
      assertThat(charging.hours(0, share(charge, part)) * 60)
          .as(name(charge, part))
          .isBetween(0.97 * measured, 1.1 * measured);
    }
  }

  /** As in the warm, by the Ah that are in: of those that the model takes for full in the cold. */
  @ParameterizedTest
  @MethodSource("cold")
  void minutes_until_a_part_is_in_in_the_cold(ReferenceTable.Row charge) {
    double full = TemperatureDerating.chargeLeft(Chemistry.LI_ION, charge.number("temp"));
    for (Double milliohms : new Double[] {null, charge.number("milliohms")}) {
      Charging charging = charging(charge, milliohms);
      for (String part : PARTS.keySet()) {
        assertThat(charging.hours(0, share(charge, part) / full) * 60)
            .as(name(charge, part))
            .isCloseTo(charge.number(part), Percentage.withPercentage(5));
      }
    }
  }

  /** And by the share of the whole charge that the cell took in the cold. */
  @ParameterizedTest
  @MethodSource("cold")
  void minutes_until_a_share_of_the_cold_charge_is_in(ReferenceTable.Row charge) {
    for (Double milliohms : new Double[] {null, charge.number("milliohms")}) {
      Charging charging = charging(charge, milliohms);
      for (String part : PARTS.keySet()) {
        assertThat(charging.hours(0, PARTS.get(part)) * 60)
            .as(name(charge, part))
            .isBetween(charge.number(part), 1.06 * charge.number(part));
      }
    }
  }

  /** A whole charge is never faster in the cold, and its parts never take fewer hours than it. */
  @ParameterizedTest
  @ValueSource(doubles = {0.2, 0.33, 0.5, 1})
  void a_whole_charge_is_never_faster_in_the_cold(double rate) {
    double warm = Charging.of(Chemistry.LI_ION, 1, 5, null, 5 * rate, 25).hours(0, 1);
    for (double temp = 0; temp < 25; temp += 5) {
      Charging cold = Charging.of(Chemistry.LI_ION, 1, 5, null, 5 * rate, temp);
      assertThat(cold.hours(0, 1)).isGreaterThanOrEqualTo(warm - 1e-12);
      double before = 0;
      for (double to = 0.05; to <= 1; to += 0.05) {
        assertThat(cold.hours(0, to)).isGreaterThan(before);
        before = cold.hours(0, to);
      }
      assertThat(cold.hours(0, 0.97) + cold.hours(0.97, 1))
          .isGreaterThanOrEqualTo(cold.hours(0, 1) - 1e-12)
          .isCloseTo(cold.hours(0, 1), Percentage.withPercentage(5));
    }
  }

  @Test
  void hours_of_a_whole_charge() {
    List<ReferenceTable.Row> whole = charges().stream().filter(c -> !c.blank("hours")).toList();
    assertThat(whole).hasSize(3);
    for (ReferenceTable.Row charge : whole) {
      for (Double milliohms : new Double[] {null, charge.number("milliohms")}) {
        assertThat(charging(charge, milliohms).hours(0, 1))
            .as(name(charge, "whole"))
            .isCloseTo(charge.number("hours"), Percentage.withPercentage(3));
      }
    }
  }

  /** Where a cell was charged at 25 °C and colder, both took longer in the cold. */
  @Test
  void the_cold_lengthens_what_it_lengthened() {
    int pairs = 0;
    for (ReferenceTable.Row warm : charges()) {
      for (ReferenceTable.Row cold : charges()) {
        if (warm.text("cell").equals(cold.text("cell"))
            && warm.number("temp") == 25
            && cold.number("temp") < 25) {
          assertThat(cold.number("hours")).isGreaterThan(warm.number("hours"));
          assertThat(charging(cold, null).hours(0, 1))
              .isGreaterThan(charging(warm, null).hours(0, 1));
          pairs++;
        }
      }
    }
    assertThat(pairs).isPositive();
  }
}
