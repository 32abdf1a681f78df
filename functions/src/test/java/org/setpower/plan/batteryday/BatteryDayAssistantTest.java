package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.clock;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/** What an assistant types who knows more than the plan: hours, runtimes, where batteries are. */
class BatteryDayAssistantTest {
  private static Ranges quay() {
    return BatteryDayFewestTest.quay(30, 30, 15);
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  private static BatteryDayResults.PositionResult position(Ranges job, int row) {
    return job.calculate().rows(BatteryDayResults.POSITIONS).get(row - 1);
  }

  /** The hours of the generator, typed once at the supply, are those of all its chargers. */
  @Test
  void hours_of_a_supply_are_those_of_its_chargers() {
    Ranges once = quay().set("supplies", 1, "powerFrom", at(7, 0), "powerTo", at(19, 30));
    for (int row = 1; row <= 4; row++) {
      once.set("chargers", row, "powerFrom", "", "powerTo", "");
    }
    PlanResult one = once.calculate();
    PlanResult other = quay().calculate();
    assertThat(one.rows(BatteryDayResults.CARD)).isEqualTo(other.rows(BatteryDayResults.CARD));
    assertThat(one.rows(BatteryDayResults.CHARGING))
        .isEqualTo(other.rows(BatteryDayResults.CHARGING));
    assertThat(one.rows(BatteryDayResults.CHARGERS))
        .isEqualTo(other.rows(BatteryDayResults.CHARGERS));
  }

  @Test
  void hours_of_a_supply_that_say_nothing_stop() {
    Ranges half = quay().set("supplies", 1, "powerFrom", at(7, 0));
    assertThat(keys(half.calculate().rows(BatteryDayResults.SUPPLIES).get(0).reasons()))
        .containsExactly(BatteryDayFinding.HOURS_HALF);
    Ranges apart = quay().set("supplies", 1, "powerFrom", at(20, 0), "powerTo", at(5, 30));
    BatteryDayResults.ChargerResult charger =
        apart.calculate().rows(BatteryDayResults.CHARGERS).get(0);
    assertThat(charger.verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(charger.reasons())).containsExactly(BatteryDayFinding.HOURS_APART);
  }

  /** 55 min measured where the calculated runtime ends at 0.6 h, because it would not restart. */
  @Test
  void a_measured_runtime_counts() {
    double calculated = position(quay(), 1).runtime();
    int changes = position(quay(), 1).changes();
    assertThat(calculated).isLessThan(0.75);
    Ranges longer = quay().set("positions", 1, "measured", at(0, 55));
    assertThat(position(longer, 1).runtime()).isCloseTo(55 / 60.0, within(1e-9));
    assertThat(position(longer, 1).changes()).isLessThan(changes);
    assertThat(position(longer, 1).verdict()).isEqualTo(Verdict.OK);
    Ranges shorter = quay().set("positions", 1, "measured", at(0, 30));
    assertThat(position(shorter, 1).runtime()).isCloseTo(0.5, within(1e-9));
    assertThat(position(shorter, 1).changes()).isGreaterThan(changes);
  }

  /** 2 h at 112 W are 224 Wh, out of a battery of 150 Wh. */
  @Test
  void a_measured_runtime_beyond_the_label_does_not_count() {
    Ranges beyond = quay().set("positions", 1, "measured", at(2, 0));
    assertThat(position(beyond, 1).runtime()).isEqualTo(position(quay(), 1).runtime());
    assertThat(keys(position(beyond, 1).reasons()))
        .containsExactly(BatteryDayFinding.MEASURED_LONG);
    assertThat(position(beyond, 1).reasons().get(0).arguments())
        .containsSubsequence("2:00", 224.0, 150.0);
    Ranges none = quay().set("positions", 1, "measured", 0);
    assertThat(position(none, 1).verdict()).isEqualTo(Verdict.STOP);
    Ranges far = quay().set("positions", 1, "measured", at(0, 10));
    assertThat(keys(position(far, 1).reasons())).contains(BatteryDayFinding.MEASURED_FAR);
  }

  /**
   * What runs on does not start: 45 min at 112 W leave a third of 150 Wh at 85 %, below what starts
   * at −8 °C. On through the break it works its 55 min, switched off in it it does not start again.
   */
  @Test
  void a_measured_runtime_is_no_restart() {
    Ranges one = BatteryDayFewestTest.quay(1, 20, 20);
    one.set("positions", 2, "toDay", BatteryDaySamples.day("2026-12-01"));
    for (int row = 1; row <= 4; row++) {
      one.set("chargers", row, "powerFrom", at(18, 0), "powerTo", at(19, 0));
    }
    one.set("days", 1, "call", at(11, 45), "wrap", at(12, 40));
    one.set("days", 1, "breakFrom", at(12, 30), "breakTo", at(12, 35));
    one.set("positions", 1, "measured", at(0, 56));
    assertThat(position(one, 1).dark()).isCloseTo(5 / 60.0, within(1e-6));
    one.set("positions", 1, "staysOn", "yes");
    assertThat(position(one, 1).dark()).isZero();
    one.row("atCall", "number", "B1", "charge", 0.35);
    assertThat(position(one, 1).dark()).isCloseTo(55 / 60.0, within(1e-6));
  }

  private static Ranges lunch() {
    return quay().set("project", 1, "now", at(12, 40));
  }

  private static BatteryDayResults.AtNowResult found(Ranges lunch) {
    return lunch.calculate().rows(BatteryDayResults.AT_NOW).get(0);
  }

  /** B30 is full on the shelf by plan; found empty on a charger it charges there from now on. */
  @Test
  void a_battery_found_on_a_charger_charges_there() {
    Ranges lunch = lunch().row("atNow", "number", "B30", "charger", "Block quad", "charge", 0.1);
    assertThat(found(lunch).verdict()).isEqualTo(Verdict.OK);
    assertThat(charging(lunch))
        .filteredOn(r -> r.battery().equals("B30"))
        .first()
        .satisfies(r -> assertThat(r.charger().arguments()).containsExactly("Block quad"))
        .satisfies(r -> assertThat(hour(r.from())).isGreaterThan(12.5));
    lunch.set("atNow", 1, "charge", "");
    assertThat(keys(found(lunch).reasons())).containsExactly(BatteryDayFinding.FOUND_CHARGE_MOVED);
  }

  /** What somebody has to put on a charger, or finds there, stands on the paper from then on. */
  @Test
  void what_charges_is_listed_from_the_hour_of_planning_again() {
    Ranges lunch = lunch().row("atNow", "number", "B30", "charge", 0.1);
    double now = 12 + 40 / 60.0;
    assertThat(charging(quay())).anyMatch(r -> r.until() != null && hour(r.until()) < now);
    assertThat(charging(lunch))
        .filteredOn(r -> isToday(r.until()))
        .isNotEmpty()
        .allSatisfy(r -> assertThat(hour(r.until())).isGreaterThan(now));
    assertThat(charging(lunch))
        .filteredOn(r -> isToday(r.from()) && hour(r.from()) < now)
        .isNotEmpty()
        .allSatisfy(r -> assertThat(r.from().pattern()).startsWith("on since"));
  }

  private static List<BatteryDayResults.ChargingRow> charging(Ranges job) {
    return job.calculate().rows(BatteryDayResults.CHARGING);
  }

  /** A time after midnight has its date. */
  private static boolean isToday(Phrase time) {
    return time != null && time.arguments().size() == 1;
  }

  private static double hour(Phrase time) {
    return clock(time).toSecondOfDay() / 3600.0;
  }

  /** The one on the camera lies on the cart: another goes on, and its charge is asked for. */
  @Test
  void a_battery_found_on_the_shelf_comes_off() {
    String on =
        quay().calculate().rows(BatteryDayResults.SCHEDULE).stream()
            .filter(r -> r.position().equals("A camera") && r.hour() < 12.6 && !r.on().isEmpty())
            .reduce((a, b) -> b)
            .orElseThrow()
            .on();
    Ranges lunch = lunch().row("atNow", "number", on, "shelf", "yes");
    assertThat(keys(found(lunch).reasons())).containsExactly(BatteryDayFinding.FOUND_CHARGE_MOVED);
    lunch.set("atNow", 1, "charge", 0.9);
    assertThat(found(lunch).verdict()).isEqualTo(Verdict.OK);
    assertThat(lunch.calculate().rows(BatteryDayResults.SCHEDULE))
        .anyMatch(
            r -> r.position().equals("A camera") && r.off().equals(on) && r.hour() < 12.7 + 1e-9);
  }

  @Test
  void where_a_battery_is_contradicts() {
    Ranges lunch = lunch().row("atNow", "number", "B30", "charger", "nowhere");
    assertThat(keys(found(lunch).reasons())).containsExactly(BatteryDayFinding.FOUND_CHARGER);
    lunch.set("atNow", 1, "charger", "Small quad");
    assertThat(keys(found(lunch).reasons())).containsExactly(BatteryDayFinding.FOUND_NOT_CHARGED);
    lunch.set("atNow", 1, "charger", "Block quad", "shelf", "yes");
    assertThat(keys(found(lunch).reasons())).containsExactly(BatteryDayFinding.FOUND_TWO_PLACES);
    lunch.set("atNow", 1, "shelf", "", "absence", "quarantine");
    assertThat(keys(found(lunch).reasons())).contains(BatteryDayFinding.FOUND_AWAY);
    lunch.set("atNow", 1, "absence", "").row("atNow", "number", "B30", "shelf", "yes");
    assertThat(keys(found(lunch).reasons())).contains(BatteryDayFinding.FOUND_PLACES);
    Ranges damaged = lunch().set("stock", 1, "out", "B30");
    damaged.row("atNow", "number", "B30", "charger", "Block quad");
    assertThat(found(damaged).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(found(damaged).reasons()))
        .containsExactly(BatteryDayFinding.FOUND_QUARANTINE_CHARGES);
    Ranges lent = lunch().row("atNow", "number", "B5", "charger", "Block quad");
    assertThat(keys(found(lent).reasons()))
        .containsExactly(BatteryDayFinding.FOUND_WITHHELD_CHARGES);
  }

  /** Beside Now stands what is wrong with it. */
  @Test
  void today_has_a_status() {
    assertThat(today(lunch()).verdict()).isEqualTo(Verdict.OK);
    assertThat(keys(today(lunch().set("project", 1, "now", at(5, 30))).reasons()))
        .containsExactly(BatteryDayFinding.NOW_OUTSIDE);
    assertThat(today(lunch().set("project", 1, "now", 12.4)).verdict()).isEqualTo(Verdict.STOP);
    double other = BatteryDaySamples.day("2026-12-03");
    assertThat(keys(today(lunch().set("project", 1, "today", other)).reasons()))
        .containsExactly(BatteryDayFinding.TODAY_OTHER);
  }

  private static BatteryDayResults.TodayResult today(Ranges job) {
    return job.calculate().rows(BatteryDayResults.TODAY).get(0);
  }

  /** With a stop among the positions there is a number to hire, and what it leaves out. */
  @Test
  void the_min_number_names_what_it_leaves_out() {
    Ranges stopped = quay().set("positions", 2, "input", "wide");
    BatteryDayResults.StockResult blocks = stopped.calculate().rows(BatteryDayResults.STOCK).get(0);
    assertThat(blocks.fewest()).isPositive();
    assertThat(keys(blocks.reasons())).contains(BatteryDayFinding.STOCK_WITHOUT);
    assertThat(keys(stopped.calculate().rows(BatteryDayResults.STOCK).get(1).reasons()))
        .doesNotContain(BatteryDayFinding.STOCK_WITHOUT);
  }

  /** The camera of 65 W of a report: one charger, whose power ends at 12:30. */
  private static Ranges untilNoon() {
    Ranges day =
        BatteryDaySamples.camera()
            .set("days", 1, "call", at(8, 0), "wrap", at(18, 0))
            .set("types", 1, "cells", 4, "ampHours", 10.4, "wattHours", 150, "outputs", "12")
            .set("types", 1, "health", 0.9, "resistance", "")
            .set("stock", 1, "owned", 4)
            .set("positions", 1, "volts", 12)
            .set("devices", 1, "watts", 65, "minVolts", 11, "maxVolts", 17);
    BatteryDaySamples.charger(day, "quad", "P294", 4, 4);
    return day.set("chargers", 1, "powerFrom", at(8, 0), "powerTo", at(12, 30));
  }

  /**
   * A battery on the charger when the power ends has what it was charged until then: 4 A for 2:30
   * are 10 Ah of 10.4 Ah. It goes on again, and is not left on a charger that is off.
   */
  @Test
  void a_battery_comes_off_where_the_power_ends() {
    PlanResult day = untilNoon().calculate();
    List<BatteryDayResults.ScheduleRow> rows = day.rows(BatteryDayResults.SCHEDULE);
    long again = rows.stream().filter(r -> r.on().equals("B1")).count();
    assertThat(again).isEqualTo(2);
    assertThat(day.rows(BatteryDayResults.SUMMARY).get(0).dark()).isLessThan(2.3 - 1.5);
  }

  /** Power for a whole day longer never makes the day worse, nor does it with some hours more. */
  @Test
  void longer_power_is_never_worse() {
    double before = Double.POSITIVE_INFINITY;
    for (int hour = 9; hour <= 18; hour++) {
      Ranges day = untilNoon().set("chargers", 1, "powerTo", at(hour, 0));
      double dark = day.calculate().rows(BatteryDayResults.SUMMARY).get(0).dark();
      assertThat(dark).as("until %d:00", hour).isLessThanOrEqualTo(before + 1e-6);
      before = dark;
    }
    assertThat(before).isZero();
  }
}
