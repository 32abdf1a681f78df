package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.camera;
import static org.setpower.plan.batteryday.BatteryDaySamples.shortDay;

import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.pack.Chemistry;
import org.setpower.plan.batteryday.typed.LabelVolts;
import org.setpower.plan.batteryday.typed.VoltRange;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/** What a day takes to type, and what a cell means that is left blank. */
class BatteryDayJobTest {
  private static final List<String> TABLES =
      BatteryDayPlan.MODEL.inputs().stream().map(InputTable::key).toList();

  private static long typed(Ranges ranges) {
    return TABLES.stream()
        .flatMap(t -> ranges.rows(t).stream())
        .flatMap(r -> r.values().stream())
        .filter(cell -> cell != null && !cell.equals(""))
        .count();
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  /** The card has no change, and names the position that is not planned. */
  private static void assertNoChange(Ranges ranges) {
    assertThat(ranges.calculate().rows(BatteryDayResults.CARD))
        .containsExactly(
            new BatteryDayResults.CardRow(
                null, null, "camera A", null, "P294", Phrase.of("not planned"), "", "", null, ""));
  }

  private static BatteryDayResults.PositionResult position(Ranges ranges, int row) {
    return ranges.calculate().rows(BatteryDayResults.POSITIONS).get(row - 1);
  }

  /** Sixty cells, each counted that is not blank; a check at most, no stop. */
  @Test
  void a_day_takes_sixty_cells() {
    Ranges day = shortDay();
    PlanResult result = day.calculate();
    assertThat(typed(day)).isLessThanOrEqualTo(60);
    assertThat(result.rows(BatteryDayResults.POSITIONS))
        .filteredOn(p -> p != null)
        .hasSize(4)
        .allSatisfy(p -> assertThat(p.verdict()).isEqualTo(Verdict.OK));
    assertThat(result.rows(BatteryDayResults.CHARGERS))
        .allSatisfy(c -> assertThat(c.verdict()).isEqualTo(Verdict.OK));
    BatteryDayResults.SummaryResult summary = result.rows(BatteryDayResults.SUMMARY).get(0);
    assertThat(summary.verdict()).isNotEqualTo(Verdict.STOP);
    assertThat(summary.dark()).isZero();
    assertThat(summary.planned()).isEqualTo(14);
    assertThat(result.rows(BatteryDayResults.CARD)).isNotEmpty();
  }

  /** The same day with every cell typed that the short one leaves blank. */
  @Test
  void what_is_left_blank_is_what_would_be_typed() {
    Ranges full = shortDay();
    for (int row = 1; row <= 3; row++) {
      full.set("types", row, "chemistry", "Li-ion", "cells", row == 1 ? 4 : 8, "health", 0.95);
      full.set("chargers", row, "charger", "C" + row, "supply", "S1", "air", 20, "warmUp", 1.5);
    }
    full.set("types", 1, "outputs", "12").set("types", 3, "outputs", "24");
    full.set("supplies", 1, "supply", "S1");
    full.set("project", 1, "chargersAir", "", "warmUp", "", "health", "");
    String[] inputs = {"20/35", "20/35", "11/17", "11/36"};
    for (int row = 1; row <= 4; row++) {
      Object name = full.rows("positions").get(row - 1).get("position");
      Object watts = full.rows("positions").get(row - 1).get("power");
      String[] volts = inputs[row - 1].split("/");
      full.set("positions", row, "power", "", "input", "");
      full.row(
          "devices",
          "position",
          name,
          "watts",
          watts,
          "minVolts",
          Double.valueOf(volts[0]),
          "maxVolts",
          Double.valueOf(volts[1]));
    }
    full.set("positions", 1, "volts", 24).set("positions", 2, "volts", 24);
    full.set("positions", 3, "volts", 12);
    PlanResult one = shortDay().calculate();
    PlanResult other = full.calculate();
    assertThat(typed(full)).isGreaterThan(80);
    assertThat(other.rows(BatteryDayResults.CARD))
        .isNotEmpty()
        .isEqualTo(one.rows(BatteryDayResults.CARD));
    assertThat(other.rows(BatteryDayResults.SUMMARY))
        .isEqualTo(one.rows(BatteryDayResults.SUMMARY));
    assertThat(other.rows(BatteryDayResults.STOCK)).isEqualTo(one.rows(BatteryDayResults.STOCK));
  }

  /** At 07:00: day, call, temperature, two batteries that are not full, one that is lent. */
  @Test
  void a_morning_takes_eight_cells() {
    Ranges day = shortDay();
    long before = typed(day);
    PlanResult planned = day.calculate();
    day.set("days", 1, "call", at(7, 30), "min", -2);
    day.row("atCall", "number", "B1", "charge", 0.6);
    day.row("atCall", "number", "B10", "charge", 0.3);
    day.row("atCall", "number", "B14", "absence", "lent");
    assertThat(typed(day) - before + 2).isLessThanOrEqualTo(8); // two are typed over
    PlanResult now = day.calculate();
    assertThat(now.rows(BatteryDayResults.RUN).get(0).call()).isEqualTo(LocalTime.of(7, 30));
    assertThat(now.rows(BatteryDayResults.AT_CALL))
        .filteredOn(r -> r != null)
        .allSatisfy(r -> assertThat(r.verdict()).isEqualTo(Verdict.OK));
    assertThat(now.rows(BatteryDayResults.BATTERIES).get(0).atCall()).isEqualTo(0.6);
    assertThat(now.rows(BatteryDayResults.SCHEDULE))
        .noneMatch(e -> e.on().contains("B14"))
        .isNotEqualTo(planned.rows(BatteryDayResults.SCHEDULE));
  }

  /** At 13:00: the time, three batteries with other charges, one elsewhere, one dropped. */
  @Test
  void a_lunch_takes_twelve_cells_and_leaves_the_morning() {
    Ranges day = shortDay();
    long before = typed(day);
    List<BatteryDayResults.ScheduleRow> planned = day.calculate().rows(BatteryDayResults.SCHEDULE);
    day.set("project", 1, "now", at(13, 0));
    day.row("atNow", "number", "B10", "charge", 0.2);
    day.row("atNow", "number", "B11", "charge", 0.15);
    day.row("atNow", "number", "B5", "charge", 0.5);
    day.row("atNow", "number", "B12", "position", "camera A", "charge", 0.9);
    day.row("atNow", "number", "B14", "absence", "quarantine");
    assertThat(typed(day) - before).isLessThanOrEqualTo(12);
    PlanResult now = day.calculate();
    List<BatteryDayResults.ScheduleRow> again = now.rows(BatteryDayResults.SCHEDULE);
    assertThat(again.stream().filter(e -> e.hour() < 13).toList())
        .isNotEmpty()
        .isEqualTo(planned.stream().filter(e -> e.hour() < 13).toList());
    assertThat(again).isNotEqualTo(planned);
    assertThat(again.stream().filter(e -> e.hour() >= 13)).noneMatch(e -> e.on().contains("B14"));
    assertThat(now.rows(BatteryDayResults.CHARGING)).noneMatch(t -> t.battery().equals("B14"));
  }

  /** Nobody has said how worn the batteries are: 80 % is taken, and it is said. */
  @Test
  void health_blank_is_checked_with_the_cautious_value() {
    Ranges blank = camera().set("types", 1, "health", "");
    BatteryDayResults.TypeResult type = blank.calculate().rows(BatteryDayResults.TYPES).get(0);
    assertThat(type.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(keys(type.reasons())).containsExactly(BatteryDayFinding.HEALTH_BLANK);
    Double assumed = position(blank, 1).runtime();
    assertThat(assumed).isEqualTo(position(camera().set("types", 1, "health", 0.8), 1).runtime());
    assertThat(assumed).isLessThan(0.82 * position(camera(), 1).runtime());
    blank.set("project", 1, "health", 0.9);
    assertThat(position(blank, 1).runtime()).isGreaterThan(assumed);
    assertThat(blank.calculate().rows(BatteryDayResults.TYPES).get(0).verdict())
        .isEqualTo(Verdict.OK);
  }

  /** The air at the chargers and the warm-up of Project hold where a charger says nothing. */
  @Test
  void what_project_says_of_chargers_holds_for_all_but_is_no_way_around_the_cold() {
    Ranges day = shortDay();
    day.set("project", 1, "chargersAir", "");
    assertThat(day.calculate().rows(BatteryDayResults.CHARGERS))
        .filteredOn(c -> c != null)
        .allSatisfy(c -> assertThat(keys(c.reasons())).contains(BatteryDayFinding.CHARGES_COLD));
    day.set("project", 1, "chargersAir", -1);
    assertThat(day.calculate().rows(BatteryDayResults.CHARGERS).get(0).verdict())
        .isEqualTo(Verdict.STOP);
    day.set("project", 1, "chargersAir", 20, "warmUp", "");
    assertThat(keys(day.calculate().rows(BatteryDayResults.CHARGERS).get(0).reasons()))
        .contains(BatteryDayFinding.WARM_UP_BLANK);
    day.set("project", 1, "warmUp", 0.01);
    assertThat(keys(day.calculate().rows(BatteryDayResults.CHARGERS).get(0).reasons()))
        .contains(BatteryDayFinding.WARM_UP_IMPOSSIBLE);
    day.set("chargers", 1, "warmUp", 1.5);
    assertThat(day.calculate().rows(BatteryDayResults.CHARGERS).get(0).verdict())
        .isEqualTo(Verdict.OK);
    day.set("chargers", 1, "air", -5);
    assertThat(keys(day.calculate().rows(BatteryDayResults.CHARGERS).get(0).reasons()))
        .contains(BatteryDayFinding.CHARGES_COLD);
  }

  /** A 5 Ah cell took 4.29 Ah at 0 °C and 4.79 Ah at 25 °C (open data of 2021): 10.4 % less. */
  @Test
  void a_cool_charger_does_not_fill_batteries() {
    Ranges day = shortDay().set("days", 1, "min", 2, "max", 8).set("project", 1, "chargersAir", 0);
    BatteryDayResults.ChargerResult cool = day.calculate().rows(BatteryDayResults.CHARGERS).get(0);
    assertThat(cool.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(cool.reasons())
        .anySatisfy(
            f -> {
              assertThat(f.key()).isEqualTo(BatteryDayFinding.CHARGES_COOL);
              assertThat((Double) f.arguments().get(1)).isCloseTo(0.104, within(0.001));
            });
    day.set("project", 1, "chargersAir", 15);
    assertThat(day.calculate().rows(BatteryDayResults.CHARGERS).get(0).verdict())
        .isEqualTo(Verdict.OK);
  }

  /** Labels round to whole watt-hours and tenths of amp-hours; from memory. */
  @ParameterizedTest
  @CsvSource({"47, 6.6", "47.5, 6.6", "37, 5.2", "16, 2.2", "19, 2.6", "15, 2"})
  void labels_of_two_cells_are_rounded(double wattHours, double ampHours) {
    assertThat(LabelVolts.isLiIonOnly(wattHours, ampHours)).isTrue();
    assertThat(LabelVolts.nominal(wattHours, ampHours)).containsExactly(7.2);
  }

  /** Two cells of LFP are 6.4 V; of so few watt-hours nobody can tell. */
  @ParameterizedTest
  @CsvSource({"38, 6", "10, 1.5"})
  void labels_of_two_cells_of_lfp_say_nothing(double wattHours, double ampHours) {
    assertThat(LabelVolts.isLiIonOnly(wattHours, ampHours)).isFalse();
  }

  /** Labels of the trade: 14.4 V, 28.8 V, 51.8 V are Li-ion; 12.8, 25.6, 48 and 51.2 V are not. */
  @ParameterizedTest
  @CsvSource({
    "98, 6.8, true, 12",
    "95, 6.6, true, 12",
    "155, 10.5, true, 12",
    "294, 10.2, true, 24",
    "150, 5.2, true, 24",
    "233, 9, true, 24",
    "1243, 24, true, 48",
    "256, 20, false, 12",
    "264, 20, false, 12",
    "512, 20, false, 24",
    "528, 20, false, 24",
    "960, 20, false, 48",
    "1024, 20, false, 48",
    "1200, 100, false, 12",
    "240, 10, false, 24"
  })
  void what_the_volts_of_a_label_say(
      double wattHours, double ampHours, boolean liIon, double plate) {
    assertThat(LabelVolts.isLiIonOnly(wattHours, ampHours)).isEqualTo(liIon);
    assertThat(LabelVolts.nominal(wattHours, ampHours)).containsExactly(plate);
    Ranges ranges = camera();
    ranges.set("types", 1, "chemistry", "", "cells", "", "outputs", "", "health", 1);
    ranges.set("types", 1, "wattHours", wattHours, "ampHours", ampHours);
    BatteryDayResults.TypeResult type = ranges.calculate().rows(BatteryDayResults.TYPES).get(0);
    assertThat(type.verdict()).isEqualTo(liIon ? Verdict.OK : Verdict.STOP);
    if (liIon) {
      assertThat(Chemistry.LI_ION.cells(wattHours / ampHours)).isNotNull();
    } else {
      assertThat(keys(type.reasons())).contains(CommonFinding.BLANK_CELL);
    }
  }

  @ParameterizedTest
  @CsvSource({
    "11-17, 11, 17",
    "11 – 17 V, 11, 17",
    "'11,5-16,8', 11.5, 16.8",
    "20V-33.6V DC, 20, 33.6",
    "11…36, 11, 36",
    "11..36, 11, 36"
  })
  void input_voltages_as_labels_have_them(String typed, double min, double max) {
    VoltRange range = VoltRange.parse(typed);
    assertThat(range.min()).isCloseTo(min, within(1e-12));
    assertThat(range.max()).isCloseTo(max, within(1e-12));
  }

  /**
   * 8 cells of 4.2 V are 33.6 V, 294 Wh of 10.2 Ah 28.8 V; what cannot be read, is blank or too low
   * for them stops.
   */
  @ParameterizedTest
  @CsvSource({
    "12-17, 92, OVER_VOLTS",
    "29-35, 92, UNDER_VOLTS",
    "35-20, 92, VOLTS_CROSSED",
    "wide, 92, INPUT_VOLTS",
    "12, 92, INPUT_VOLTS",
    "'1,000-2,000', 92, INPUT_VOLTS",
    "20-35, 614, AMPS"
  })
  void the_device_of_the_row_is_judged_as_those_of_devices(
      String input, double power, BatteryDayFinding stop) {
    Ranges ranges = camera();
    ranges.rows("devices").clear();
    assertThat(keys(position(ranges, 1).reasons())).contains(BatteryDayFinding.NO_LOAD);
    assertThat(position(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    ranges.set("positions", 1, "power", power, "input", input);
    assertThat(position(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(position(ranges, 1).reasons())).contains(stop);
    assertNoChange(ranges);
  }

  /** Half of it is typed, or a word is where watts belong. */
  @Test
  void a_device_that_is_half_typed_stops() {
    Ranges half = camera();
    half.rows("devices").clear();
    half.set("positions", 1, "power", 92);
    assertThat(keys(position(half, 1).reasons())).contains(CommonFinding.BLANK_CELL);
    half.set("positions", 1, "power", "", "input", "20-35");
    assertThat(keys(position(half, 1).reasons())).contains(CommonFinding.BLANK_CELL);
    half.set("positions", 1, "power", "much");
    assertThat(position(half, 1).verdict()).isEqualTo(Verdict.STOP);
    assertNoChange(half);
  }

  /** 92 W in Devices and 50 W in its row are 142 W. */
  @Test
  void both_devices_count() {
    Ranges both = camera().set("positions", 1, "power", 50, "input", "11-36");
    assertThat(position(both, 1).watts()).isCloseTo(142, within(1e-9));
  }
}
