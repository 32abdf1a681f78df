package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.camera;
import static org.setpower.plan.batteryday.BatteryDaySamples.charger;
import static org.setpower.plan.batteryday.BatteryDaySamples.clock;
import static org.setpower.plan.batteryday.BatteryDaySamples.day;
import static org.setpower.plan.batteryday.BatteryDaySamples.position;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/** What somebody found who planned two winter nights; expected values: common practice. */
class BatteryDayNightsTest {
  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  private static double dark(PlanResult result) {
    return result.rows(BatteryDayResults.SUMMARY).get(0).dark();
  }

  /** A camera on batteries of two voltages, and one charger of 3 A. */
  private static Ranges twoVolts() {
    Ranges ranges = charger(camera(), "pair", "P150", 2, 3);
    ranges.row("types", "type", "P150", "chemistry", "Li-ion", "cells", 8, "ampHours", 5.2);
    ranges.set("types", 2, "wattHours", 150, "outputs", "12/24", "maxAmps", 20);
    ranges.set("types", 2, "resistance", 150, "health", 1);
    ranges.row("stock", "type", "P150", "owned", 12);
    return position(ranges, "lamp", 24, "P150", 92, 20, 36);
  }

  /**
   * 3 A into 10.4 Ah at 14.4 V take at least 3.4 h, into 5.2 Ah at 28.8 V half of that: a charger
   * that does not say at which it charges is taken for the slower one.
   */
  @ParameterizedTest
  @CsvSource({"24, 1.73, 2.4", "12, 3.46, 4.2", "'', 3.46, 4.2"})
  void a_battery_of_two_voltages_charges_at_the_one_of_its_charger(
      String volts, double least, double most) {
    Object typed = volts.isEmpty() ? "" : (Object) Double.parseDouble(volts);
    BatteryDayResults.ChargerResult charger =
        twoVolts()
            .set("chargers", 1, "volts", typed)
            .calculate()
            .rows(BatteryDayResults.CHARGERS)
            .get(0);
    assertThat(charger.hours()).isBetween(least, most);
    assertThat(keys(charger.reasons()).contains(BatteryDayFinding.CHARGE_VOLTS_BLANK))
        .isEqualTo(volts.isEmpty());
  }

  @Test
  void a_voltage_that_a_battery_does_not_have_stops_its_charger() {
    BatteryDayResults.ChargerResult charger =
        twoVolts()
            .set("chargers", 1, "volts", 48)
            .calculate()
            .rows(BatteryDayResults.CHARGERS)
            .get(0);
    assertThat(charger.verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(charger.reasons())).contains(BatteryDayFinding.CHARGE_VOLTS_UNKNOWN);
  }

  /** What has not been taken out of a battery at the end of its runtime is still in it. */
  @ParameterizedTest
  @CsvSource({"'', -4", "0.2, -4", "0.2, 20", "0.35, -4"})
  void a_battery_reads_what_its_runtime_leaves(String changeAt, double temp) {
    Ranges cold = twoVolts().set("days", 1, "min", temp, "max", temp);
    if (!changeAt.isEmpty()) {
      cold.set("positions", 2, "changeAt", Double.parseDouble(changeAt));
    }
    BatteryDayResults.PositionResult lamp =
        cold.calculate().rows(BatteryDayResults.POSITIONS).get(1);
    assertThat(lamp.changeBelow()).isGreaterThan(1 - 92 * lamp.runtime() / 150 - 0.005);
  }

  /** On a shelf of 15 °C a battery is warm by 20 h, when the power comes; on a cold one by 21 h. */
  @ParameterizedTest
  @CsvSource({"15, 20", "'', 21"})
  void batteries_warm_up_on_a_warm_shelf(String shelf, int hour) {
    Ranges night = charger(camera().set("days", 1, "min", -5, "max", -5), "night", "P294", 4, 4);
    night.set("chargers", 1, "warmUp", 1, "powerFrom", at(20, 0), "powerTo", at(6, 0));
    if (!shelf.isEmpty()) {
      night.set("days", 1, "shelf", Double.parseDouble(shelf));
    }
    night.row("days", "date", day("2027-02-03"), "call", at(8, 0), "wrap", at(18, 0));
    night.set("days", 2, "min", -5, "max", -5);
    LocalTime first =
        night.calculate().rows(BatteryDayResults.CHARGING).stream()
            .filter(r -> r.from() != null)
            .map(r -> clock(r.from()))
            .filter(t -> t.getHour() > 8)
            .min(LocalTime::compareTo)
            .orElseThrow();
    assertThat(first).isEqualTo(LocalTime.of(hour, 0));
  }

  /** Where no day follows nobody puts a battery on a charger the next morning. */
  @Test
  void nothing_charges_on_the_day_after_the_last() {
    Ranges last = charger(camera(), "day", "P294", 2, 2);
    last.set("chargers", 1, "powerFrom", at(7, 0), "powerTo", at(17, 30));
    assertThat(last.calculate().rows(BatteryDayResults.CHARGING))
        .filteredOn(r -> r.from() != null)
        .isNotEmpty()
        .allSatisfy(r -> assertThat(r.from().arguments()).hasSize(1));
    last.row("days", "date", day("2027-02-03"), "call", at(7, 0), "wrap", at(18, 0));
    last.set("days", 2, "min", 20, "max", 20);
    last.set("chargers", 1, "powerFrom", at(5, 0));
    assertThat(last.calculate().rows(BatteryDayResults.CHARGING))
        .anyMatch(r -> r.from() != null && r.from().arguments().size() == 2);
  }

  /**
   * Five batteries light one day. On the second, as the first has left them, they do not: the plan
   * says how many full ones more do, and with these and no fewer it is lit.
   */
  @Test
  void what_a_day_before_has_used_is_hired() {
    Ranges second = BatteryDaySamples.carried();
    PlanResult short_ = second.calculate();
    assertThat(dark(short_)).isPositive();
    BatteryDayResults.StockResult stock = short_.rows(BatteryDayResults.STOCK).get(0);
    assertThat(stock.fewest()).isLessThanOrEqualTo(5);
    assertThat(keys(stock.reasons())).contains(BatteryDayFinding.SHORT_CARRIED);
    assertThat(stock.shortOf()).isPositive();
    second.set("stock", 1, "inHandOn", day("2027-02-03"), "hired", stock.shortOf());
    assertThat(dark(second.calculate())).isZero();
    second.set("stock", 1, "hired", stock.shortOf() - 1);
    assertThat(dark(second.calculate())).isPositive();
  }

  /** Full batteries that lie there go on before one that has been on and charged again. */
  @Test
  void full_batteries_take_turns() {
    PlanResult result = charger(camera(), "fast", "P294", 2, 8).calculate();
    List<String> on =
        result.rows(BatteryDayResults.CARD).stream()
            .map(BatteryDayResults.CardRow::on)
            .filter(n -> !n.isEmpty())
            .toList();
    assertThat(on).startsWith("B1", "B2", "B3").doesNotHaveDuplicates();
    assertThat(dark(result)).isCloseTo(0, within(1e-9));
  }
}
