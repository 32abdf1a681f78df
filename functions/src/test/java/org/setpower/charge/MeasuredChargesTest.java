package org.setpower.charge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.ReferenceTable;
import org.setpower.pack.Chemistry;

/**
 * The charger against cells that others have charged CC-CV, with the usual resistance of 0.3/Ah Ω:
 * hours within 10 %, of the cell that was charged warm and cold within 2 %, and longer in the cold.
 * Left out: a used cell (2.35 of 2.9 Ah), used cells of unknown chemistry (NASA 2007), and a
 * two-wire tester that charged to 4.26 V, which took 116 min at 1C where 95 are given.
 */
class MeasuredChargesTest {
  static List<ReferenceTable.Row> charges() {
    return ReferenceTable.read(MeasuredChargesTest.class, "measured_charge.csv");
  }

  @ParameterizedTest
  @MethodSource("charges")
  void hours_on_the_charger(ReferenceTable.Row charge) {
    assertThat(hours(charge))
        .as(charge.text("cell") + " at " + charge.text("temp") + " °C")
        .isCloseTo(charge.number("hours"), Percentage.withPercentage(charge.number("within")));
  }

  private static double hours(ReferenceTable.Row charge) {
    return Charging.of(
            charge.text("chemistry").equals("LFP") ? Chemistry.LFP : Chemistry.LI_ION,
            1,
            charge.number("ah"),
            null,
            charge.number("amps"),
            charge.number("temp"))
        .hours(0, 1);
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
          assertThat(hours(cold)).isGreaterThan(hours(warm));
          pairs++;
        }
      }
    }
    assertThat(pairs).isPositive();
  }
}
