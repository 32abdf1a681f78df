package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.camera;
import static org.setpower.plan.batteryday.BatteryDaySamples.day;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/** The hidden tabs: other voltages, hot-swap plates, cells that are thrown away. */
class BatteryDayComparisonTest {
  /**
   * 300 W over 10 m of 1.5 mm²: 13.3 Ω/km at 20 °C (IEC 60228, class 5), at 60 °C 15.4, so 0.308 Ω
   * there and back. At 24 V by hand (24 + √(24² − 4 · 0.308 · 300))/2 = 19.2 V and 15.6 A; at 48 V
   * 46.0 V and 6.5 A; at 12 V 4RP is over 12².
   */
  @Test
  void a_position_at_other_voltages() {
    Ranges ranges = camera().set("devices", 1, "watts", 300, "minVolts", 11);
    ranges.set("positions", 1, "cable", 10, "cableSize", "1.5 mm²");
    List<BatteryDayResults.VoltageRow> rows = ranges.calculate().rows(BatteryDayResults.VOLTAGES);
    assertThat(rows).extracting(BatteryDayResults.VoltageRow::volts).containsExactly(12., 24., 48.);
    assertThat(rows)
        .extracting(BatteryDayResults.VoltageRow::has)
        .containsExactly(true, true, false);
    assertThat(rows.get(0).amps()).isNull();
    assertThat(rows.get(1).amps()).isCloseTo(15.63, Percentage.withPercentage(0.5));
    assertThat(rows.get(1).drop()).isCloseTo(4.81, Percentage.withPercentage(0.5));
    assertThat(rows.get(1).lost()).isCloseTo(75.2, Percentage.withPercentage(1));
    assertThat(rows.get(2).amps()).isCloseTo(6.52, Percentage.withPercentage(0.5));
    ranges.set("positions", 1, "cable", "", "cableSize", "");
    BatteryDayResults.VoltageRow bare = ranges.calculate().rows(BatteryDayResults.VOLTAGES).get(0);
    assertThat(bare.amps()).isCloseTo(25, within(1e-9));
    assertThat(bare.drop()).isZero();
  }

  /** Either battery alone carries 92 W over 20 V, 4.6 A; not 900 W, 45 A, of 30 A. */
  @Test
  void a_hot_swap_plate_and_what_one_battery_carries() {
    Ranges ranges = camera().set("positions", 1, "connection", "hot-swap", "atOnce", 2);
    PlanResult result = ranges.calculate();
    BatteryDayResults.HotSwapRow plate = result.rows(BatteryDayResults.HOT_SWAP).get(0);
    assertThat(plate.carries()).isTrue();
    assertThat(plate.amps()).isCloseTo(4.6, within(1e-9));
    assertThat(plate.one())
        .isEqualTo(result.rows(BatteryDayResults.POSITIONS).get(0).runtime())
        .isBetween(2.9, 3.2);
    assertThat(plate.stack()).isCloseTo(2 * plate.one(), within(1e-12));
    BatteryDayResults.HotSwapRow much =
        ranges.set("devices", 1, "watts", 900).calculate().rows(BatteryDayResults.HOT_SWAP).get(0);
    assertThat(much.carries()).isFalse();
    assertThat(much.amps()).isCloseTo(45, within(1e-9));
    assertThat(camera().calculate().rows(BatteryDayResults.HOT_SWAP)).isEmpty();
  }

  /**
   * Ten hours on sets of six are two sets of two cells for four radios: 16 AA; a headset of 20 h
   * takes one. A second day of 5 h takes one set each.
   */
  @Test
  void cells_that_are_thrown_away() {
    Ranges ranges = camera();
    ranges.row(
        "days",
        "date",
        day("2027-02-03"),
        "call",
        at(7, 0),
        "wrap",
        at(12, 0),
        "min",
        20,
        "max",
        20);
    ranges.row("disposables", "item", "radio", "cell", "AA", "quantity", 4, "cells", 2);
    ranges.set("disposables", 1, "hours", 6);
    ranges.row("disposables", "item", "headset", "cell", "aa", "cells", 1, "hours", 20);
    ranges.row("disposables", "item", "remote", "cell", "9 V", "cells", 1, "hours", 3, "use", 6);
    PlanResult result = ranges.calculate();
    assertThat(result.rows(BatteryDayResults.DISPOSABLES))
        .filteredOn(d -> d != null)
        .extracting(
            BatteryDayResults.DisposableResult::sets,
            BatteryDayResults.DisposableResult::day,
            BatteryDayResults.DisposableResult::all)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple(2, 16, 24),
            org.assertj.core.groups.Tuple.tuple(1, 1, 2),
            org.assertj.core.groups.Tuple.tuple(2, 2, 4));
    assertThat(result.rows(BatteryDayResults.CELLS))
        .containsExactlyInAnyOrder(
            new BatteryDayResults.CellRow("AA", 17, 26),
            new BatteryDayResults.CellRow("9 V", 2, 4));
  }

  @Test
  void cells_in_the_cold_and_a_blank() {
    Ranges ranges = camera().set("days", 1, "min", -5, "max", -5);
    ranges.row("disposables", "item", "radio", "cell", "AA", "cells", 2, "hours", 6);
    BatteryDayResults.DisposableResult cold =
        ranges.calculate().rows(BatteryDayResults.DISPOSABLES).get(0);
    assertThat(cold.reasons())
        .extracting(Finding::key)
        .containsExactly(BatteryDayFinding.COLD_CELLS);
    assertThat(cold.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(cold.day()).isEqualTo(4);
    ranges.set("disposables", 1, "hours", "");
    BatteryDayResults.DisposableResult blank =
        ranges.calculate().rows(BatteryDayResults.DISPOSABLES).get(0);
    assertThat(blank.reasons()).extracting(Finding::key).contains(CommonFinding.BLANK_CELL);
    assertThat(blank.verdict()).isEqualTo(Verdict.STOP);
    assertThat(blank.all()).isNull();
    assertThat(ranges.calculate().rows(BatteryDayResults.CELLS)).isEmpty();
  }
}
