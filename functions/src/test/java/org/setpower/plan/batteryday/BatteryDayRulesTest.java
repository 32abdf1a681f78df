package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.camera;
import static org.setpower.plan.batteryday.BatteryDaySamples.charger;
import static org.setpower.plan.batteryday.BatteryDaySamples.clock;
import static org.setpower.plan.batteryday.BatteryDaySamples.day;
import static org.setpower.plan.batteryday.BatteryDaySamples.position;
import static org.setpower.plan.batteryday.BatteryDaySamples.withP98;

import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.batteryday.word.BatteryUse;
import org.setpower.plan.batteryday.word.ScheduleEntry;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/**
 * The rules of a battery day, case by case. Expected figures come from the rules of the trade
 * (common practice) and from Ohm's law, worked out by hand.
 */
class BatteryDayRulesTest {
  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  private static BatteryDayResults.PositionResult firstPosition(Ranges ranges) {
    return ranges.calculate().rows(BatteryDayResults.POSITIONS).get(0);
  }

  private static BatteryDayResults.SummaryResult summary(Ranges ranges) {
    return ranges.calculate().rows(BatteryDayResults.SUMMARY).get(0);
  }

  /** The card without what goes on at call and comes off at the end. */
  private static List<BatteryDayResults.CardRow> changes(Ranges ranges) {
    return ranges.calculate().rows(BatteryDayResults.CARD).stream()
        .filter(BatteryDayResults.CardRow::isChange)
        .toList();
  }

  private static BatteryDayResults.ChargerResult firstCharger(Ranges ranges) {
    return ranges.calculate().rows(BatteryDayResults.CHARGERS).get(0);
  }

  /** The position stops for this reason and nothing of it is in the schedule. */
  private static void assertStops(Ranges ranges, FindingKey reason) {
    PlanResult result = ranges.calculate();
    BatteryDayResults.PositionResult position = result.rows(BatteryDayResults.POSITIONS).get(0);
    assertThat(position.verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(position.reasons())).contains(reason);
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .containsExactly(
            new BatteryDayResults.ScheduleRow(
                LocalTime.of(7, 0),
                7.0,
                "camera A",
                null,
                ScheduleEntry.NOT_PLANNED,
                "",
                "",
                "",
                null,
                null));
    assertThat(result.rows(BatteryDayResults.TIMELINE)).isEmpty();
    assertThat(result.rows(BatteryDayResults.CARD))
        .extracting(c -> c.position() + ": " + c.what().pattern())
        .containsExactly("camera A: not planned");
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).verdict()).isEqualTo(Verdict.STOP);
  }

  /** 92 W on 294 Wh are 3.1 to 3.2 h by energy; ten hours take three changes. */
  @Test
  void a_camera_is_changed_three_times_in_ten_hours() {
    BatteryDayResults.PositionResult position = firstPosition(camera());
    assertThat(position.verdict()).isEqualTo(Verdict.OK);
    assertThat(position.runtime()).isBetween(2.9, 3.2);
    assertThat(position.changes()).isEqualTo(3);
    assertThat(position.dark()).isZero();
    assertThat(position.amps()).isCloseTo(92 / 20.0, within(1e-9));
    assertThat(summary(camera()).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void watts_blank_stop() {
    Ranges blank = camera().set("devices", 1, "watts", "");
    assertStops(blank, BatteryDayFinding.DEVICE_STOPS);
    assertThat(blank.calculate().rows(BatteryDayResults.DEVICES).get(0).drawn()).isNull();
  }

  /** 300 W at 11 V are 27.3 A; one 12 A battery supplies alone while the other is changed. */
  @Test
  void a_hot_swap_plate_needs_the_amps_of_one_battery() {
    Ranges twelve = withP98(camera(), 6);
    position(twelve, "big", 12, "P98", 300, 11, 18);
    twelve.set("positions", 2, "connection", "hot-swap", "atOnce", 2);
    BatteryDayResults.PositionResult big =
        twelve.calculate().rows(BatteryDayResults.POSITIONS).get(1);
    assertThat(big.amps()).isCloseTo(300 / 11.0, within(1e-9));
    assertThat(big.maxAmps()).isEqualTo(12);
    assertThat(keys(big.reasons())).contains(BatteryDayFinding.HOT_SWAP_AMPS);
    assertStops(
        camera()
            .set("devices", 1, "watts", 900)
            .set("positions", 1, "connection", "hot-swap", "atOnce", 2),
        BatteryDayFinding.HOT_SWAP_AMPS);
  }

  /** 614 W at 20 V are 30.7 A: more than the 30 A of one, less than the 60 A of two in parallel. */
  @Test
  void amps_over_what_batteries_may_supply_stop() {
    assertStops(camera().set("devices", 1, "watts", 614), BatteryDayFinding.AMPS);
    Ranges parallel =
        camera()
            .set("devices", 1, "watts", 614)
            .set("positions", 1, "connection", "parallel", "atOnce", 2);
    assertThat(keys(firstPosition(parallel).reasons())).doesNotContain(BatteryDayFinding.AMPS);
  }

  @Test
  void voltages_and_mounts_that_do_not_fit_stop() {
    // a battery of 24 V only on a 12 V plate
    assertStops(
        camera().set("types", 1, "outputs", "24").set("positions", 1, "volts", 12),
        BatteryDayFinding.NO_OUTPUT);
    // two of 24 V only in series on a 24 V plate
    assertStops(
        camera()
            .set("types", 1, "outputs", "24")
            .set("positions", 1, "connection", "series", "atOnce", 2),
        BatteryDayFinding.NO_OUTPUT);
    // 8 cells of 4.2 V are 33.6 V, the camera takes 17 V
    assertStops(
        camera().set("devices", 1, "minVolts", 11, "maxVolts", 17), BatteryDayFinding.DEVICE_STOPS);
    // two in series are 67.2 V
    Ranges series =
        camera()
            .set("positions", 1, "connection", "series", "atOnce", 2, "volts", 48)
            .set("devices", 1, "minVolts", 40, "maxVolts", 70);
    assertStops(series, BatteryDayFinding.TOUCH);
    series.set("positions", 1, "touchSafe", "yes");
    assertThat(keys(firstPosition(series).reasons())).doesNotContain(BatteryDayFinding.TOUCH);
    assertStops(camera().set("positions", 1, "atOnce", 2), BatteryDayFinding.CONNECTION_BLANK);
    assertStops(
        camera().set("types", 1, "mount", "gold").set("positions", 1, "mount", "V"),
        BatteryDayFinding.MOUNT);
    // 92 W over 17 m of 0.75 mm² (0.9 Ω out and back) at 28.8 V: 25.6 V arrive
    Ranges thin = camera().set("positions", 1, "cable", 17, "cableSize", "0.75 mm²");
    assertStops(thin.set("devices", 1, "minVolts", 26), BatteryDayFinding.DEVICE_STOPS);
    assertStops(
        camera().set("positions", 1, "cable", 60, "cableSize", "0.75 mm²"),
        BatteryDayFinding.CABLE_CARRY);
    assertStops(camera().set("positions", 1, "cable", 5), BatteryDayFinding.CABLE_SIZE);
    // 1.5 mm² carry 16 A free in air (BS 7671 4F3A), two beside each other 0.8 of it, 12.8 A
    // (IEC 60364-5-52 B.52.17): 300 W at 20 V are 15 A, 240 W are 12 A
    Ranges lead = camera().set("positions", 1, "cable", 1, "cableSize", "1.5 mm²");
    assertStops(lead.set("devices", 1, "watts", 300), BatteryDayFinding.CABLE_AMPS);
    assertThat(keys(firstPosition(lead.set("devices", 1, "watts", 240)).reasons()))
        .doesNotContain(BatteryDayFinding.CABLE_AMPS);
    // at 45 °C, whenever that is, 0.79 of it at most (BS 7671 table 4B1): 10 A
    assertStops(lead.set("days", 1, "max", 45), BatteryDayFinding.CABLE_AMPS);
  }

  /** 294 Wh over 10.2 Ah are 28.8 V, 8 cells of 3.6 V; 8 of 3.7 V too. */
  @Test
  void blanks_that_can_only_mean_one_thing_are_filled() {
    Ranges typed = camera().set("types", 1, "outputs", "24");
    typed.row("supplies", "supply", "socket", "watts", 2000);
    typed.row(
        "chargers",
        "charger",
        "one",
        "supply",
        "socket",
        "channels",
        1,
        "amps",
        3,
        "volts",
        24,
        "air",
        20);
    Ranges blank =
        Ranges.of(BatteryDayPlan.MODEL)
            .row("project", "day", day("2027-02-02"))
            .row(
                "days",
                "date",
                day("2027-02-02"),
                "call",
                at(7, 0),
                "wrap",
                at(17, 0),
                "min",
                20,
                "max",
                20)
            .row(
                "types",
                "type",
                "P294",
                "chemistry",
                "Li-ion",
                "ampHours",
                10.2,
                "wattHours",
                294,
                "outputs",
                "24",
                "maxAmps",
                30,
                "resistance",
                45,
                "health",
                1)
            .row("stock", "type", "P294", "owned", 5)
            .row("positions", "position", "camera A", "type", "P294")
            .row("devices", "position", "camera A", "watts", 92, "minVolts", 20, "maxVolts", 35)
            .row("supplies", "supply", "socket", "watts", 2000)
            .row("chargers", "charger", "one", "channels", 1, "amps", 3, "volts", 24, "air", 20);
    assertThat(blank.calculate().rows(BatteryDayResults.CARD))
        .isNotEmpty()
        .isEqualTo(typed.calculate().rows(BatteryDayResults.CARD));
    assertThat(firstPosition(blank)).isEqualTo(firstPosition(typed));
    // of two voltages the one that a device of 20 V to 35 V takes; both where it takes 11 V too
    blank.set("types", 1, "outputs", "12/24");
    assertThat(firstPosition(blank).arrives()).isEqualTo(24);
    assertThat(keys(firstPosition(blank.copy().set("devices", 1, "minVolts", 11)).reasons()))
        .contains(CommonFinding.BLANK_CELL);
    // two supplies, and a label that fits 20 cells of 3.7 V and 21 of 3.6 V
    blank.row("supplies", "supply", "inverter", "watts", 300);
    PlanResult several =
        blank.set("types", 1, "outputs", "48").set("types", 1, "wattHours", 755).calculate();
    assertThat(keys(several.rows(BatteryDayResults.TYPES).get(0).reasons()))
        .contains(CommonFinding.BLANK_CELL);
    assertThat(keys(several.rows(BatteryDayResults.CHARGERS).get(0).reasons()))
        .contains(CommonFinding.BLANK_CELL);
  }

  /** Five batteries without a charger, one camera from 07:00 to 17:00. */
  @Test
  void each_half_hour_says_where_the_batteries_are() {
    List<BatteryDayResults.HourRow> hours = camera().calculate().rows(BatteryDayResults.HOURS);
    assertThat(hours).hasSize(48);
    assertThat(hours.get(0).at()).isEqualTo("04:00");
    for (BatteryDayResults.HourRow hour : hours) {
      boolean works = !hour.at().isBefore(LocalTime.of(7, 0)) && hour.at().getHour() < 17;
      assertThat(hour.on()).as(hour.toString()).isEqualTo(works ? 1 : 0);
      assertThat(hour.charging()).isZero();
      assertThat(hour.shelf()).isEqualTo(5 - hour.on());
      assertThat(hour.dark()).isZero();
    }
    assertThat(
            camera()
                .set("stock", 1, "owned", 1)
                .calculate()
                .rows(BatteryDayResults.HOURS)
                .get(25)
                .dark())
        .isEqualTo(1);
  }

  @Test
  void min_temperature_blank_is_checked_with_the_cautious_value() {
    Ranges blank = camera().set("days", 1, "min", "");
    PlanResult result = blank.calculate();
    assertThat(keys(result.rows(BatteryDayResults.DAYS).get(0).reasons()))
        .containsExactly(BatteryDayFinding.MIN_BLANK);
    assertThat(result.rows(BatteryDayResults.DAYS).get(0).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(result.rows(BatteryDayResults.RUN).get(0).coldest()).isEqualTo(-20);
    assertThat(firstPosition(blank).runtime()).isLessThan(firstPosition(camera()).runtime());
  }

  /** Changes come later where it warms up than on a day that is cold throughout. */
  @Test
  void the_max_temperature_and_its_hours_count() {
    Ranges cold = camera().set("days", 1, "min", -5, "max", -5);
    Ranges warmer =
        camera()
            .set("days", 1, "min", -5, "max", 20, "minFrom", at(6, 0), "minTo", at(7, 0))
            .set("days", 1, "maxFrom", at(8, 0), "maxTo", at(17, 0));
    assertThat(changes(warmer).get(0).by()).isAfter(changes(cold).get(0).by());
    assertThat(firstPosition(warmer).runtime()).isEqualTo(firstPosition(cold).runtime());
  }

  /** What comes off empty in the cold is still cold: it does not go on again as if from a pouch. */
  @Test
  void a_battery_that_came_off_empty_does_not_go_on_again() {
    Ranges pouch = camera().set("days", 1, "min", -6, "max", -6, "shelf", 15);
    PlanResult result = pouch.set("stock", 1, "owned", 3).calculate();
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .extracting(BatteryDayResults.ScheduleRow::on)
        .filteredOn(on -> !on.isEmpty())
        .containsExactly("B1", "B2", "B3");
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).dark()).isGreaterThan(2);
  }

  /** Two rows for one date are a move; the cold row does not make the warm hall cold. */
  @Test
  void a_move_has_its_own_temperature() {
    Ranges cold = camera().set("days", 1, "min", -5, "max", -5);
    Ranges move = camera().set("days", 1, "min", -5, "max", -5, "wrap", at(9, 0));
    move.row(
        "days",
        "date",
        day("2027-02-02"),
        "call",
        at(10, 0),
        "wrap",
        at(17, 0),
        "min",
        20,
        "max",
        20);
    assertThat(firstPosition(move).verdict()).isEqualTo(Verdict.OK);
    assertThat(firstPosition(move).onHours()).isEqualTo(9);
    assertThat(changes(move).get(0).by()).isAfter(changes(cold).get(0).by().plusHours(1));
    move.set("days", 2, "call", at(8, 0));
    assertThat(keys(move.calculate().rows(BatteryDayResults.DAYS).get(0).reasons()))
        .contains(BatteryDayFinding.DAY_OVERLAP);
    assertThat(move.calculate().rows(BatteryDayResults.SCHEDULE)).isEmpty();
  }

  /** 34 % left at lunch carry on after it: nothing is thrown off. */
  @Test
  void a_part_used_battery_stays_on_through_lunch() {
    Ranges lunch =
        camera()
            .set("days", 1, "breakFrom", at(9, 0), "breakTo", at(10, 0), "wrap", at(11, 0))
            .set("stock", 1, "owned", 1)
            .set("project", 1, "near", 0);
    PlanResult result = lunch.calculate();
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .extracting(BatteryDayResults.ScheduleRow::what)
        .startsWith(ScheduleEntry.START)
        .doesNotContain(ScheduleEntry.CHANGE);
    // 4 h of work less the 3.1 h of a battery
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).onHours()).isEqualTo(3);
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).dark()).isZero();
  }

  /** A change due 12 minutes after lunch is made at lunch; one due an hour after it is not. */
  @Test
  void a_change_soon_after_a_break_is_made_in_it() {
    Ranges near = camera().set("days", 1, "breakFrom", at(10, 0), "breakTo", at(11, 0));
    assertThat(changes(near).get(0).by()).isEqualTo(LocalTime.of(10, 0));
    Ranges later = camera().set("days", 1, "breakFrom", at(9, 0), "breakTo", at(10, 0));
    assertThat(changes(later).get(0).by()).isAfter(LocalTime.of(11, 0));
  }

  /** Four batteries for eight lamps: four lamps work, four are dark; the camera keeps its own. */
  @Test
  void shortages_are_piece_by_piece_and_by_priority() {
    Ranges short4 = camera().set("stock", 1, "owned", 5).set("days", 1, "wrap", at(9, 0));
    short4.set("positions", 1, "priority", 1);
    position(short4, "tube", 24, "P294", 50, 11, 36);
    short4.set("positions", 2, "quantity", 8, "priority", 60);
    PlanResult result = short4.calculate();
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).dark()).isZero();
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(1).dark())
        .isCloseTo(4 * 2, within(1e-6));
    Finding dry =
        result.rows(BatteryDayResults.POSITIONS).get(1).reasons().stream()
            .filter(f -> f.key() == BatteryDayFinding.RUNS_DRY)
            .findFirst()
            .orElseThrow();
    assertThat(dry.arguments().get(0)).isEqualTo(4.0);
  }

  /** The camera's battery is empty after three hours and none is left: a lamp gives its own. */
  @Test
  void the_least_important_goes_dark_first() {
    Ranges taken = camera().set("stock", 1, "owned", 2).set("days", 1, "wrap", at(11, 0));
    taken.set("positions", 1, "priority", 1);
    position(taken, "tube", 24, "P294", 20, 11, 36);
    taken.set("positions", 2, "priority", 60);
    PlanResult result = taken.calculate();
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).dark()).isZero();
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(1).dark()).isBetween(0.5, 1.1);
  }

  /** With two batteries a hot-swap plate never goes dark while one comes back in time. */
  @Test
  void a_hot_swap_plate_changes_one_battery_at_a_time() {
    Ranges plate = charger(camera(), "one", "P294", 2, 5);
    plate.set("positions", 1, "connection", "hot-swap", "atOnce", 2).set("stock", 1, "owned", 3);
    PlanResult result = plate.calculate();
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).dark()).isZero();
    assertThat(changes(plate)).isNotEmpty().allSatisfy(c -> assertThat(c.on()).doesNotContain(","));
    assertThat(result.rows(BatteryDayResults.STOCK).get(0).fewest()).isLessThanOrEqualTo(2);
  }

  @Test
  void sets_in_series_change_together() {
    Ranges series =
        camera()
            .set("positions", 1, "connection", "series", "atOnce", 2, "volts", 48)
            .set("positions", 1, "touchSafe", "yes")
            .set("devices", 1, "minVolts", 40, "maxVolts", 70, "watts", 200)
            .set("stock", 1, "owned", 8);
    assertThat(changes(series))
        .isNotEmpty()
        .allSatisfy(
            c -> {
              assertThat(c.on()).matches("B\\d+, B\\d+");
              assertThat(c.off()).matches("B\\d+, B\\d+");
            });
  }

  /** Headline, positions and the card of a whole day count the same changes. */
  @Test
  void changes_are_counted_once() {
    for (Ranges ranges :
        List.of(camera(), BatteryDaySamples.night(), charger(camera(), "one", "P294", 1, 4))) {
      PlanResult result = ranges.set("project", 1, "now", "").calculate();
      int headline = result.rows(BatteryDayResults.SUMMARY).get(0).changes();
      assertThat(headline).isPositive();
      assertThat(result.rows(BatteryDayResults.CARD))
          .filteredOn(BatteryDayResults.CardRow::isChange)
          .hasSize(headline);
      assertThat(
              result.rows(BatteryDayResults.POSITIONS).stream()
                  .filter(p -> p.changes() != null)
                  .mapToInt(BatteryDayResults.PositionResult::changes)
                  .sum())
          .isEqualTo(headline);
    }
  }

  @Test
  void quarantined_and_lent_batteries_are_neither_used_nor_charged() {
    Ranges some = charger(camera(), "one", "P294", 4, 4);
    some.set("stock", 1, "owned", 6, "out", "B1, B3", "lent", "b2", "lentTo", "sound");
    some.row("atCall", "number", "B4", "absence", "quarantine", "charge", 0.2);
    PlanResult result = some.calculate();
    assertThat(result.rows(BatteryDayResults.BATTERIES))
        .extracting(BatteryDayResults.BatteryResult::use)
        .containsExactly(
            BatteryUse.QUARANTINE,
            BatteryUse.LENT,
            BatteryUse.QUARANTINE,
            BatteryUse.QUARANTINE,
            BatteryUse.PLANNED,
            BatteryUse.PLANNED);
    String papers =
        result.rows(BatteryDayResults.SCHEDULE).toString()
            + result.rows(BatteryDayResults.CARD)
            + result.rows(BatteryDayResults.CHARGING)
            + result.rows(BatteryDayResults.TIMELINE);
    assertThat(papers).doesNotContain("B1").doesNotContain("B2").doesNotContain("B3");
    assertThat(papers).doesNotContain("B4").contains("B5").contains("B6");
    assertThat(result.rows(BatteryDayResults.LENT_OUT))
        .filteredOn(r -> r.verdict() == null)
        .extracting(BatteryDayResults.LentRow::battery)
        .containsExactly("B2");
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).planned()).isEqualTo(2);
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).withheld()).isEqualTo(4);
  }

  /** Not known which battery is meant: none of the row is used. */
  @ParameterizedTest
  @CsvSource({"'the red one'", "B99", "'B1 B2'", "B3-B1", "B0", "'B1,,B2'", "'-1'"})
  void numbers_that_cannot_be_read_stop_their_row(String out) {
    PlanResult result = camera().set("stock", 1, "out", out).calculate();
    assertThat(result.rows(BatteryDayResults.STOCK).get(0).verdict()).isEqualTo(Verdict.STOP);
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).planned()).isZero();
    assertThat(result.rows(BatteryDayResults.SCHEDULE).toString()).doesNotContain("on=B");
  }

  @Test
  void a_reserve_is_not_planned_with() {
    PlanResult result = camera().set("stock", 1, "owned", 3, "reserve", 1).calculate();
    assertThat(result.rows(BatteryDayResults.STOCK).get(0).planned()).isEqualTo(2);
    assertThat(result.rows(BatteryDayResults.BATTERIES).get(2).use()).isEqualTo(BatteryUse.RESERVE);
    // four are needed, two are planned with
    assertThat(result.rows(BatteryDayResults.STOCK).get(0).shortOf()).isEqualTo(2);
  }

  /** Ten batteries of 8 cells at 4 A on 1 kW: one channel takes 4 A · 33.6 V / 0.85 = 158 W. */
  @Test
  void a_supply_is_never_loaded_above_its_watts() {
    Ranges inverter = camera().set("stock", 1, "owned", 10);
    position(inverter, "tube", 24, "P294", 100, 11, 36);
    inverter.set("positions", 2, "quantity", 4);
    inverter.row("supplies", "supply", "inverter", "watts", 500);
    charger(inverter, "ten", "P294", 10, 4);
    inverter.set("chargers", 1, "supply", "inverter", "efficiency", 0.85);
    double channel = 4 * 8 * 4.2 / 0.85;
    BatteryDayResults.SupplyResult supply =
        inverter.calculate().rows(BatteryDayResults.SUPPLIES).get(0);
    assertThat(supply.peak()).isCloseTo(3 * channel, within(1e-6));
    inverter.set("supplies", 1, "watts", 150);
    assertThat(keys(firstCharger(inverter).reasons())).contains(BatteryDayFinding.NO_WATTS);
    inverter.set("supplies", 1, "watts", "");
    assertThat(keys(firstCharger(inverter).reasons())).contains(BatteryDayFinding.SUPPLY_UNCLEAR);
    assertThat(firstCharger(inverter).charges()).isZero();
  }

  /** A charge of 294 Wh takes 294 / 0.8 = 367.5 Wh: 400 Wh of a power station are one charge. */
  @Test
  void a_power_station_runs_out() {
    Ranges station = charger(camera(), "one", "P294", 4, 4);
    station.set("supplies", 1, "wattHours", 400).set("chargers", 1, "efficiency", 0.8);
    assertThat(firstCharger(station).charges()).isEqualTo(1);
  }

  @Test
  void warm_up_is_needed_below_zero() {
    Ranges cold = charger(camera().set("days", 1, "min", -5, "max", -5), "one", "P294", 2, 4);
    assertThat(keys(firstCharger(cold).reasons())).containsExactly(BatteryDayFinding.WARM_UP_BLANK);
    assertThat(firstCharger(cold).charges()).isZero();
    cold.set("chargers", 1, "warmUp", 0.01);
    assertThat(keys(firstCharger(cold).reasons()))
        .containsExactly(BatteryDayFinding.WARM_UP_IMPOSSIBLE);
    cold.set("chargers", 1, "warmUp", 1.5);
    PlanResult result = cold.calculate();
    assertThat(firstCharger(cold).verdict()).isEqualTo(Verdict.OK);
    // what comes off at wrap charges an hour and a half later at the earliest
    BatteryDayResults.ChargingRow last =
        result.rows(BatteryDayResults.CHARGING).stream()
            .filter(t -> t.from() != null && !clock(t.from()).isBefore(LocalTime.of(17, 0)))
            .findFirst()
            .orElseThrow();
    assertThat(clock(last.from())).isAfterOrEqualTo(LocalTime.of(18, 30));
    cold.set("chargers", 1, "air", -2);
    assertThat(keys(firstCharger(cold).reasons())).contains(BatteryDayFinding.CHARGES_COLD);
    cold.set("chargers", 1, "air", "");
    assertThat(keys(firstCharger(cold).reasons()))
        .contains(BatteryDayFinding.AIR_BLANK, BatteryDayFinding.CHARGES_COLD);
  }

  /**
   * The charger has power from 20:00 on: until then what comes off lies on the shelf, in the cold,
   * and warms up from 20:00 on: an hour later it charges, not before (common practice).
   */
  @Test
  void what_cannot_be_charged_yet_stays_on_the_shelf() {
    Ranges night = charger(camera().set("days", 1, "min", -5, "max", -5), "night", "P294", 4, 4);
    night.set("chargers", 1, "warmUp", 1, "powerFrom", at(20, 0), "powerTo", at(6, 0));
    night.row("days", "date", day("2027-02-03"), "call", at(8, 0), "wrap", at(18, 0));
    night.set("days", 2, "min", -5, "max", -5);
    PlanResult result = night.calculate();
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .filteredOn(r -> r.what() == ScheduleEntry.CHANGE)
        .isNotEmpty()
        .allSatisfy(r -> assertThat(r.to().pattern()).startsWith(BatteryDayPapers.SHELF));
    assertThat(result.rows(BatteryDayResults.CHARGING))
        .filteredOn(t -> t.from() != null)
        .isNotEmpty()
        .allSatisfy(
            t ->
                assertThat(
                        clock(t.from()).isBefore(LocalTime.of(20, 59))
                            && clock(t.from()).getHour() > 8)
                    .isFalse());
  }

  /** 93 % may be used, and is no reason to charge by day; at night it is filled up. */
  @Test
  void what_is_nearly_full_is_filled_up_at_night() {
    Ranges day = charger(camera(), "one", "P294, P98", 4, 3).set("chargers", 1, "usable", 0.9);
    day.row("types", "type", "P98", "ampHours", 6.8, "wattHours", 98, "maxAmps", 12);
    day.set("stock", 1, "owned", 11).row("stock", "type", "P98", "owned", 1);
    day.row("atCall", "number", "B12", "charge", 0.93);
    day.row(
        "days",
        "date",
        day("2027-02-03"),
        "call",
        at(8, 0),
        "wrap",
        at(18, 0),
        "min",
        15,
        "max",
        20);
    List<BatteryDayResults.ChargingRow> rows =
        day.calculate().rows(BatteryDayResults.CHARGING).stream()
            .filter(t -> t.battery().equals("B12"))
            .toList();
    assertThat(rows).hasSize(1);
    assertThat(rows.get(0).charger().arguments()).containsExactly("one");
    assertThat(rows.get(0).ready()).isTrue();
  }

  @Test
  void more_than_one_c_stops() {
    assertThat(keys(firstCharger(charger(camera(), "fast", "P294", 1, 30.6)).reasons()))
        .contains(BatteryDayFinding.TOO_FAST);
  }

  /** A battery charges where its type goes, when there is power, and comes back by the runner. */
  @Test
  void a_charger_far_away_gives_back_after_the_round_trip() {
    Ranges away = charger(camera(), "base", "P294", 1, 5);
    away.set("chargers", 1, "roundTrip", 120).set("stock", 1, "owned", 2);
    away.set("days", 1, "wrap", at(20, 0));
    // 3.1 h of the other battery are shorter than 2 h of ways and 2 h of charge
    assertThat(summary(away).dark()).isPositive();
    assertThat(summary(away.set("chargers", 1, "roundTrip", "")).dark()).isZero();
  }

  /** Day 2 begins with what day 1 leaves. */
  @Test
  void charge_is_handed_on_to_the_next_day() {
    Ranges two = camera().set("project", 1, "day", day("2027-02-03"));
    two.row(
        "days",
        "date",
        day("2027-02-03"),
        "call",
        at(7, 0),
        "wrap",
        at(17, 0),
        "min",
        20,
        "max",
        20);
    List<BatteryDayResults.BatteryResult> left = two.calculate().rows(BatteryDayResults.BATTERIES);
    assertThat(left.get(0).atCall()).isLessThan(0.1);
    assertThat(left.get(4).atCall()).isEqualTo(1);
    two.set("days", 2, "atCall", "full");
    assertThat(two.calculate().rows(BatteryDayResults.BATTERIES))
        .allSatisfy(b -> assertThat(b.atCall()).isEqualTo(1));
    two.set("days", 2, "atCall", "");
    two.row("atCall", "number", "B5", "charge", 0.5);
    assertThat(two.calculate().rows(BatteryDayResults.BATTERIES).get(4).atCall()).isEqualTo(0.5);
  }

  @Test
  void a_device_on_a_lost_position_stops() {
    Ranges lost = camera().set("devices", 1, "position", "moon");
    assertThat(keys(lost.calculate().rows(BatteryDayResults.DEVICES).get(0).reasons()))
        .contains(BatteryDayFinding.POSITION_UNKNOWN);
    assertThat(summary(lost).verdict()).isEqualTo(Verdict.STOP);
  }

  /** What is found at lunch changes the afternoon and not one entry of the morning. */
  @Test
  void planning_again_never_rewrites_the_morning() {
    Ranges ranges = charger(camera(), "one", "P294", 1, 3);
    position(ranges, "tube", 24, "P294", 50, 11, 36);
    ranges.set("positions", 2, "quantity", 2, "priority", 60).set("stock", 1, "owned", 6);
    List<BatteryDayResults.ScheduleRow> planned =
        ranges.calculate().rows(BatteryDayResults.SCHEDULE);
    ranges.set("project", 1, "now", at(12, 30));
    assertThat(ranges.calculate().rows(BatteryDayResults.SCHEDULE)).isEqualTo(planned);
    ranges.row("atNow", "number", "B6", "absence", "quarantine");
    ranges.row("atNow", "number", "B3", "charge", 0.1);
    List<BatteryDayResults.ScheduleRow> again = ranges.calculate().rows(BatteryDayResults.SCHEDULE);
    assertThat(again).isNotEqualTo(planned);
    assertThat(again.stream().filter(r -> r.hour() < 12.5))
        .containsExactlyElementsOf(planned.stream().filter(r -> r.hour() < 12.5).toList());
    assertThat(again.stream().filter(r -> r.hour() >= 12.5)).noneMatch(r -> r.on().contains("B6"));
  }

  /** The paper of the afternoon begins at the hour at which it was planned, and says so. */
  @Test
  void the_paper_of_the_afternoon_begins_at_its_hour() {
    Ranges day = charger(camera(), "one", "P294", 1, 3);
    PlanResult morning = day.calculate();
    assertThat(morning.rows(BatteryDayResults.CARD).get(0).by()).isEqualTo(LocalTime.of(7, 0));
    PlanResult lunch = day.set("project", 1, "now", at(12, 30)).calculate();
    assertThat(lunch.rows(BatteryDayResults.CARD))
        .isNotEmpty()
        .allSatisfy(r -> assertThat(r.by()).isAfterOrEqualTo(LocalTime.of(12, 30)));
    assertThat(lunch.rows(BatteryDayResults.RUN).get(0).day().arguments())
        .contains(LocalTime.of(12, 30));
    assertThat(morning.rows(BatteryDayResults.RUN).get(0).day().arguments())
        .doesNotContain(LocalTime.of(12, 30));
  }

  /** Dropped or lent at lunch: the label says so, and nothing is promised of it any more. */
  @ParameterizedTest
  @CsvSource({"B1, quarantine, QUARANTINE", "B2, quarantine, QUARANTINE", "B5, lent, LENT"})
  void what_is_gone_at_lunch_is_withheld(String number, String absence, BatteryUse use) {
    Ranges lunch = camera().set("project", 1, "now", at(13, 10));
    lunch.row("atNow", "number", number, "absence", absence);
    PlanResult result = lunch.calculate();
    assertThat(result.rows(BatteryDayResults.BATTERIES))
        .filteredOn(b -> b.number().equals(number))
        .singleElement()
        .satisfies(
            b -> {
              assertThat(b.use()).isEqualTo(use);
              assertThat(b.verdict()).isNotEqualTo(Verdict.OK);
              assertThat(keys(b.reasons()))
                  .containsExactly(
                      use == BatteryUse.LENT
                          ? BatteryDayFinding.BATTERY_LENT
                          : BatteryDayFinding.BATTERY_QUARANTINE);
              assertThat(b.atCall()).isEqualTo(1);
              assertThat(b.atEnd()).isNull();
              assertThat(b.next()).isNull();
            });
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).planned()).isEqualTo(4);
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).withheld()).isEqualTo(1);
    assertThat(result.rows(BatteryDayResults.STOCK).get(0).planned()).isEqualTo(4);
    assertThat(result.rows(BatteryDayResults.LENT_OUT))
        .filteredOn(r -> r.verdict() == null)
        .hasSize(use == BatteryUse.LENT ? 1 : 0);
    List<BatteryDayResults.HourRow> hours = result.rows(BatteryDayResults.HOURS);
    // the half hours begin at 04:00: 12:00 is before lunch, 17:30 after wrap
    assertThat(hours.get(16).on() + hours.get(16).shelf()).isEqualTo(5);
    assertThat(hours.get(27).on() + hours.get(27).shelf()).isEqualTo(4);
  }

  /** Without the time of planning again the row stops, and a dropped battery is not printed fit. */
  @Test
  void a_quarantine_counts_on_labels_without_a_time() {
    Ranges lunch = camera();
    lunch.row("atNow", "number", "B3", "absence", "quarantine");
    PlanResult result = lunch.calculate();
    assertThat(result.rows(BatteryDayResults.AT_NOW).get(0).verdict()).isEqualTo(Verdict.STOP);
    assertThat(result.rows(BatteryDayResults.BATTERIES).get(2).use())
        .isEqualTo(BatteryUse.QUARANTINE);
  }

  private static BatteryDayResults.AtNowResult foundNow(Ranges ranges, int row) {
    return ranges.calculate().rows(BatteryDayResults.AT_NOW).get(row - 1);
  }

  /** A single plate holds one battery, a hot-swap plate of two and two single plates hold two. */
  @Test
  void more_batteries_than_a_position_holds_stop() {
    Ranges lunch = camera().set("project", 1, "now", at(13, 0));
    lunch.row("atNow", "number", "B3", "position", "camera A", "charge", 0.9);
    assertThat(foundNow(lunch, 1).verdict()).isEqualTo(Verdict.OK);
    lunch.row("atNow", "number", "B5", "position", "camera A", "charge", 0.9);
    for (int row = 1; row <= 2; row++) {
      assertThat(foundNow(lunch, row).verdict()).isEqualTo(Verdict.STOP);
      assertThat(foundNow(lunch, row).reasons())
          .containsExactly(Finding.of(BatteryDayFinding.FOUND_FULL, "camera A", 2.0, 1.0));
    }
    assertThat(summary(lunch).verdict()).isEqualTo(Verdict.STOP);
    Ranges pieces = lunch.copy().set("positions", 1, "quantity", 2);
    assertThat(foundNow(pieces, 2).verdict()).isEqualTo(Verdict.OK);
    lunch.set("positions", 1, "connection", "hot-swap", "atOnce", 2);
    assertThat(foundNow(lunch, 2).verdict()).isEqualTo(Verdict.OK);
    lunch.row("atNow", "number", "B4", "position", "camera A", "charge", 0.9);
    assertThat(foundNow(lunch, 3).verdict()).isEqualTo(Verdict.STOP);
    lunch.set("atNow", 3, "position", "", "absence", "quarantine");
    assertThat(foundNow(lunch, 2).verdict()).isEqualTo(Verdict.OK);
  }

  /** Two batteries found on two pieces of a position are on one each. */
  @Test
  void batteries_found_on_a_position_take_a_piece_each() {
    Ranges pieces = camera().set("positions", 1, "quantity", 2).set("stock", 1, "owned", 12);
    pieces.set("project", 1, "now", at(8, 0));
    pieces.row("atNow", "number", "B11", "position", "camera A");
    pieces.row("atNow", "number", "B12", "position", "camera A");
    List<BatteryDayResults.ScheduleRow> next =
        pieces.calculate().rows(BatteryDayResults.SCHEDULE).stream()
            .filter(r -> r.what() == ScheduleEntry.CHANGE)
            .limit(2)
            .toList();
    // full at 08:00 they last three hours; nothing is changed before
    assertThat(next).allSatisfy(r -> assertThat(r.hour()).isBetween(10.9, 11.2));
    assertThat(next)
        .extracting(BatteryDayResults.ScheduleRow::off)
        .containsExactlyInAnyOrder("B11", "B12");
    // as planned: B2 stays on the second piece, B1 on the first
    Ranges planned = pieces.copy().set("atNow", 1, "number", "B2");
    planned.rows("atNow").remove(1);
    Ranges without = planned.copy();
    without.rows("atNow").clear();
    assertThat(planned.calculate().rows(BatteryDayResults.SCHEDULE))
        .isEqualTo(without.calculate().rows(BatteryDayResults.SCHEDULE));
  }

  @Test
  void a_battery_that_is_away_and_on_a_position_stops() {
    Ranges lunch = camera().set("project", 1, "now", at(13, 0));
    lunch.row("atNow", "number", "B3", "position", "camera A", "absence", "quarantine");
    assertThat(foundNow(lunch, 1).reasons())
        .containsExactly(Finding.of(BatteryDayFinding.FOUND_AWAY, "camera A"));
    assertThat(foundNow(lunch, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(lunch.calculate().rows(BatteryDayResults.SCHEDULE))
        .filteredOn(r -> r.hour() >= 13)
        .noneMatch(r -> r.on().contains("B3"));
  }

  private static List<FindingKey> foundKeys(Ranges ranges) {
    return keys(foundNow(ranges, 1).reasons());
  }

  /** No input is read by nothing: a battery on a position that the plan has off is told. */
  @Test
  void a_battery_on_a_position_that_is_off_stops() {
    Ranges lunch = camera().set("project", 1, "now", at(12, 30));
    lunch.row("atNow", "number", "B3", "position", "camera A", "charge", 0.9);
    assertThat(foundKeys(lunch)).isEmpty();
    Ranges early = lunch.copy().set("devices", 1, "to", at(12, 30));
    assertThat(foundNow(early, 1).reasons())
        .containsExactly(Finding.of(BatteryDayFinding.FOUND_OFF, "camera A", LocalTime.of(12, 30)));
    assertThat(foundNow(early, 1).verdict()).isEqualTo(Verdict.STOP);
    Ranges late = lunch.copy().set("devices", 1, "from", at(13, 0));
    assertThat(foundKeys(late)).containsExactly(BatteryDayFinding.FOUND_OFF);
    Ranges otherDay = lunch.copy().set("positions", 1, "fromDay", day("2027-02-03"));
    assertThat(foundKeys(otherDay)).containsExactly(BatteryDayFinding.FOUND_OFF);
    Ranges stopped = lunch.copy().set("devices", 1, "watts", "");
    assertThat(foundKeys(stopped)).containsExactly(BatteryDayFinding.FOUND_OFF);
    // in a break the battery stays on it
    Ranges inBreak = lunch.copy().set("days", 1, "breakFrom", at(12, 0), "breakTo", at(13, 0));
    assertThat(foundKeys(inBreak)).isEmpty();
  }

  /** What is found of a battery that the plan does not use changes nothing, and is told. */
  @ParameterizedTest
  @CsvSource({
    "lent, B5, FOUND_WITHHELD, FOUND_WITHHELD_ON",
    "out, B5, FOUND_WITHHELD, FOUND_QUARANTINE"
  })
  void what_is_found_of_a_battery_that_is_not_planned_is_told(
      String key, String cell, BatteryDayFinding charge, BatteryDayFinding position) {
    Ranges lunch = camera().set("project", 1, "now", at(12, 30));
    lunch.set("stock", 1, key, cell, "lentTo", "sound");
    lunch.row("atNow", "number", "B5", "charge", 0.5);
    assertThat(foundKeys(lunch)).containsExactly(charge);
    assertThat(foundNow(lunch, 1).verdict()).isEqualTo(Verdict.CHECK);
    lunch.set("atNow", 1, "position", "camera A");
    assertThat(foundKeys(lunch)).containsExactly(position);
    assertThat(foundNow(lunch, 1).verdict()).isEqualTo(Verdict.STOP);
    lunch.set("atNow", 1, "position", "", "charge", "", "absence", "quarantine");
    assertThat(foundKeys(lunch)).isEmpty();
    Ranges call = camera().set("stock", 1, key, lunch.copy().rows("stock").get(0).get(key));
    call.set("stock", 1, "lentTo", "sound").row("atCall", "number", "B5", "charge", 0.5);
    assertThat(keys(call.calculate().rows(BatteryDayResults.AT_CALL).get(0).reasons()))
        .containsExactly(BatteryDayFinding.FOUND_WITHHELD);
  }

  /** A number alone says nothing, and the battery would be taken as planned. */
  @Test
  void a_battery_of_which_nothing_is_entered_is_told() {
    Ranges today = camera().set("project", 1, "now", at(12, 30));
    today.row("atNow", "number", "B3").row("atCall", "number", "B2");
    assertThat(foundKeys(today)).containsExactly(BatteryDayFinding.FOUND_NOTHING);
    assertThat(keys(today.calculate().rows(BatteryDayResults.AT_CALL).get(0).reasons()))
        .containsExactly(BatteryDayFinding.FOUND_NOTHING);
    today.set("atCall", 1, "charge", "half");
    assertThat(keys(today.calculate().rows(BatteryDayResults.AT_CALL).get(0).reasons()))
        .doesNotContain(BatteryDayFinding.FOUND_NOTHING)
        .isNotEmpty();
  }

  /** Nobody knows what is full by a call that is not there. */
  @Test
  void without_a_next_date_nothing_is_said_of_the_next_call() {
    Ranges last = charger(camera(), "one", "P294", 1, 3);
    assertThat(summary(last).notReady()).isNull();
    assertThat(last.calculate().rows(BatteryDayResults.BATTERIES))
        .allSatisfy(b -> assertThat(b.next()).isNull());
    last.row("days", "date", day("2027-02-03"), "call", at(7, 0), "wrap", at(9, 0));
    assertThat(summary(last).notReady()).isNotNull();
    assertThat(last.calculate().rows(BatteryDayResults.BATTERIES))
        .allSatisfy(b -> assertThat(b.next()).isNotNull());
  }

  /** A break that ends before it begins, or lies outside the day, is none. */
  @ParameterizedTest
  @CsvSource({"14, 13", "6, 8", "16, 18", "12, 12"})
  void a_break_that_cannot_be_is_none(int from, int to) {
    Ranges turned = camera().set("days", 1, "breakFrom", at(from, 0), "breakTo", at(to, 0));
    PlanResult result = turned.calculate();
    assertThat(keys(result.rows(BatteryDayResults.DAYS).get(0).reasons()))
        .contains(BatteryDayFinding.BREAK_OUTSIDE);
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .isEqualTo(camera().calculate().rows(BatteryDayResults.SCHEDULE));
    assertThat(firstPosition(turned).onHours()).isEqualTo(10);
  }

  /** Now is asked for on the tab Today. */
  @Test
  void a_row_without_now_says_where_now_is() {
    Ranges lunch = camera();
    lunch.row("atNow", "number", "B3", "charge", 0.5);
    Finding finding = foundNow(lunch, 1).reasons().get(0);
    assertThat(finding.key()).isEqualTo(BatteryDayFinding.FOUND_NO_NOW);
    assertThat(new EnglishMessages().sentence(finding, Locale.ENGLISH))
        .contains("Today")
        .doesNotContain("Project");
  }

  @Test
  void a_mount_is_named_as_it_is_typed() {
    Ranges plates =
        camera()
            .set("types", 1, "mount", "Small plate")
            .set("positions", 1, "mount", "Large plate");
    assertThat(firstPosition(plates).reasons())
        .contains(Finding.of(BatteryDayFinding.MOUNT, "Small plate", "Large plate"));
  }

  /** The others are planned, and the paper says which is not. */
  @Test
  void a_stopped_position_is_named_in_the_schedule() {
    Ranges two = withP98(camera(), 6);
    position(two, "camera B", 12, "P294", 60, 20, 36);
    position(two, "link", 12, "P98", 14, 11, 18);
    position(two, "tomorrow", 12, "P294", 60, 20, 36);
    two.set("positions", 2, "department", "camera");
    two.set("positions", 4, "fromDay", day("2027-02-03"));
    PlanResult result = two.calculate();
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .filteredOn(r -> r.what() == ScheduleEntry.NOT_PLANNED)
        .extracting(BatteryDayResults.ScheduleRow::position)
        .containsExactly("camera B");
    List<BatteryDayResults.CardRow> card = result.rows(BatteryDayResults.CARD);
    assertThat(card).hasSizeGreaterThan(3);
    assertThat(card.get(card.size() - 1))
        .isEqualTo(
            new BatteryDayResults.CardRow(
                null,
                "camera",
                "camera B",
                null,
                "P294",
                Phrase.of("not planned"),
                "",
                "",
                null,
                ""));
    assertThat(card.subList(0, card.size() - 1))
        .allSatisfy(c -> assertThat(c.position()).isIn("camera A", "link"));
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .extracting(BatteryDayResults.ScheduleRow::hour)
        .isSorted();
    assertThat(result.rows(BatteryDayResults.RUN).get(0).entries())
        .isEqualTo(result.rows(BatteryDayResults.SCHEDULE).size());
  }

  /** What follows from a row that is not clear is said in its rows; the issue is said once. */
  @Test
  void one_blank_cell_is_one_issue() {
    Ranges blank = charger(camera(), "one", "P294", 2, 4).set("types", 1, "maxAmps", "");
    blank.set("stock", 1, "owned", 12);
    PlanResult result = blank.calculate();
    assertThat(result.rows(BatteryDayResults.ISSUES))
        .singleElement()
        .satisfies(i -> assertThat(keys(i.reasons())).containsExactly(CommonFinding.BLANK_CELL));
    assertThat(summary(blank).verdict()).isEqualTo(Verdict.STOP);
    assertThat(firstPosition(blank).verdict()).isEqualTo(Verdict.STOP);
    assertThat(result.rows(BatteryDayResults.BATTERIES))
        .allSatisfy(b -> assertThat(b.verdict()).isEqualTo(Verdict.STOP));
  }

  @Test
  void issues_name_rows_in_the_order_of_their_numbers() {
    Ranges two = camera().set("project", 1, "now", at(13, 0)).set("stock", 1, "owned", 12);
    two.row("atNow", "number", "B10", "position", "camera A");
    two.row("atNow", "number", "B2", "position", "camera A");
    assertThat(two.calculate().rows(BatteryDayResults.ISSUES))
        .extracting(i -> i.where().toString())
        .contains("Found now: B2, B10");
  }
}
