package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.charger;
import static org.setpower.plan.batteryday.BatteryDaySamples.clock;
import static org.setpower.plan.batteryday.BatteryDaySamples.day;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;

/** Two days out of cars: heat, supplies of one day, a night with nobody there, a late delivery. */
class BatteryDayTwoCarsTest {
  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  /** One camera from 7 to 17 h on five P294, one charger of one channel. */
  private static Ranges job() {
    return charger(BatteryDaySamples.camera(), "single", "P294", 1, 5);
  }

  private static Ranges twoDays() {
    return job()
        .row("days", "date", day("2027-02-03"), "call", at(13, 0), "wrap", at(23, 0), "min", 20)
        .set("days", 2, "max", 20);
  }

  private static BatteryDayResults.ChargerResult chargerOf(Ranges job) {
    return job.calculate().rows(BatteryDayResults.CHARGERS).get(0);
  }

  /** U.S. Fire Administration: not above 40 °C; battery specifications end at 45 °C (heat.csv). */
  @ParameterizedTest
  @CsvSource({"39, OK", "40, CHECK", "45, CHECK", "46, STOP", "56, STOP", "70, STOP"})
  void nothing_charges_in_the_heat(double air, Verdict verdict) {
    BatteryDayResults.ChargerResult charger = chargerOf(job().set("chargers", 1, "air", air));
    assertThat(charger.verdict()).isEqualTo(verdict);
    assertThat(keys(charger.reasons())).doesNotContain(BatteryDayFinding.TEMPERATURE);
    if (verdict == Verdict.STOP) {
      assertThat(keys(charger.reasons())).contains(BatteryDayFinding.CHARGES_HOT);
      assertThat(charger.reasons().get(0).severity()).isEqualTo(Severity.DANGER);
    }
  }

  /** Blank, the air there is as hot as outdoors too. */
  @Test
  void a_charger_outdoors_is_as_hot_as_outdoors() {
    Ranges hot = job().set("chargers", 1, "air", "").set("days", 1, "max", 47);
    assertThat(keys(chargerOf(hot).reasons())).contains(BatteryDayFinding.CHARGES_HOT);
  }

  /** S. Ma et al., Prog. Nat. Sci. Mater. Int. 28 (2018) 653: -20 to 60 °C. */
  @Test
  void nothing_works_in_more_heat() {
    Ranges warm = job().set("days", 1, "max", 58);
    PlanResult at58 = warm.calculate();
    assertThat(keys(at58.rows(BatteryDayResults.DAYS).get(0).reasons()))
        .contains(BatteryDayFinding.DAY_HOT);
    assertThat(at58.rows(BatteryDayResults.POSITIONS).get(0).verdict()).isEqualTo(Verdict.OK);
    PlanResult at62 = job().set("days", 1, "max", 62).calculate();
    assertThat(keys(at62.rows(BatteryDayResults.POSITIONS).get(0).reasons()))
        .containsExactly(BatteryDayFinding.TOO_HOT);
  }

  /** What comes off at about 10:00 charges at once, on the date of the supply only. */
  @Test
  void a_supply_of_another_day_charges_nothing() {
    Ranges first = twoDays().set("supplies", 1, "toDay", day("2027-02-02"));
    assertThat(chargerOf(first).charges()).isEqualTo(chargerOf(twoDays()).charges());
    assertThat(chargerOf(first).charges()).isPositive();
    Ranges second = twoDays().set("supplies", 1, "fromDay", day("2027-02-03"));
    assertThat(second.calculate().rows(BatteryDayResults.CARD).stream().map(c -> "" + c.to()))
        .noneMatch(to -> to.equals("single"));
    assertThat(chargerOf(second).verdict()).isNotEqualTo(Verdict.STOP);
    Ranges crossed =
        twoDays().set("supplies", 1, "fromDay", day("2027-02-03"), "toDay", day("2027-02-02"));
    assertThat(keys(crossed.calculate().rows(BatteryDayResults.SUPPLIES).get(0).reasons()))
        .contains(BatteryDayFinding.DAYS_CROSSED);
  }

  /** A generator that dies on the first day at 9 h is back on the second. */
  @Test
  void power_that_fails_on_one_date_is_back_on_the_next() {
    Ranges none = twoDays().set("supplies", 1, "goneOn", day("2027-02-02"), "goneFrom", at(9, 0));
    assertThat(none.calculate().rows(BatteryDayResults.CHARGING))
        .allMatch(t -> t.from() == null || !clock(t.from()).isBefore(LocalTime.of(4, 0)));
    Ranges next = none.set("project", 1, "day", day("2027-02-03"));
    assertThat(chargerOf(next).charges())
        .isEqualTo(chargerOf(twoDays().set("project", 1, "day", day("2027-02-03"))).charges());
    Ranges half = twoDays().set("supplies", 1, "goneFrom", at(9, 0));
    assertThat(keys(half.calculate().rows(BatteryDayResults.SUPPLIES).get(0).reasons()))
        .contains(BatteryDayFinding.GONE_HALF);
  }

  /**
   * Power that fails is not known before: what was planned until then stays on paper, also where it
   * fails in the middle of a charge, and nothing that it did not charge is full.
   */
  @ParameterizedTest
  @CsvSource({"11, 11", "13, 13", "13, 12", "12, 15", "16, 16"})
  void the_morning_is_as_it_was_planned(int now, int gone) {
    // a slow charger elsewhere: whoever knew would take batteries there from the morning on
    Ranges two =
        charger(job(), "slow", "P294", 1, 3)
            .row("supplies", "supply", "house", "watts", 500)
            .set("chargers", 2, "supply", "house");
    Map<Ranges, Double> jobs =
        Map.of(two, day("2027-02-02"), BatteryDayFewestTest.quay(12, 10, 8), day("2026-12-02"));
    jobs.forEach(
        (job, date) -> {
          List<BatteryDayResults.ScheduleRow> morning =
              job.calculate().rows(BatteryDayResults.SCHEDULE);
          PlanResult again =
              job.set("supplies", 1, "goneOn", date, "goneFrom", at(gone, 0))
                  .set("project", 1, "now", at(now, 0))
                  .calculate();
          LocalTime told = LocalTime.of(Math.min(now, gone), 0);
          assertThat(before(again.rows(BatteryDayResults.SCHEDULE), told))
              .isNotEmpty()
              .isEqualTo(before(morning, told));
          assertThat(again.rows(BatteryDayResults.CHARGING))
              .filteredOn(t -> t.from() != null && t.from().arguments().size() == 1)
              .filteredOn(t -> !t.charger().arguments().contains("slow"))
              .allMatch(t -> !clock(t.from()).isAfter(LocalTime.of(gone, 0)));
        });
  }

  /** When, where and which: where it goes afterwards may be what is new. */
  private static List<String> before(List<BatteryDayResults.ScheduleRow> rows, LocalTime hour) {
    return rows.stream()
        .filter(r -> r.at().isBefore(hour))
        .map(r -> r.at() + " " + r.position() + " " + r.on() + " " + r.off() + " " + r.to())
        .toList();
  }

  /**
   * One camera works about 2.9 h on a battery of 294 Wh: four are used by 17 h, and one channel
   * takes about 2.3 h for each. With the last change at 18:00 only the one that is put on before
   * goes on charging; the others are not ready.
   */
  @Test
  void nobody_changes_at_night() {
    PlanResult attended = twoDays().calculate();
    long all =
        attended.rows(BatteryDayResults.CHARGING).stream()
            .filter(t -> Boolean.TRUE.equals(t.ready()))
            .count();
    assertThat(attended.rows(BatteryDayResults.CHARGING))
        .filteredOn(t -> t.ready() != null)
        .hasSize((int) all)
        .hasSizeGreaterThan(1);
    PlanResult alone = twoDays().set("project", 1, "lastChange", at(18, 0)).calculate();
    List<BatteryDayResults.ChargingRow> night = alone.rows(BatteryDayResults.CHARGING);
    assertThat(night.stream().filter(t -> Boolean.TRUE.equals(t.ready()))).hasSize(1);
    assertThat(night)
        .filteredOn(t -> t.from() != null)
        .allMatch(t -> !clock(t.from()).isAfter(LocalTime.of(18, 0)));
    assertThat(keys(alone.rows(BatteryDayResults.PROJECT).get(0).reasons()))
        .contains(BatteryDayFinding.NOT_READY);
    Ranges late = twoDays().set("project", 1, "lastChange", at(3, 59));
    assertThat(late.calculate().rows(BatteryDayResults.CHARGING))
        .isEqualTo(attended.rows(BatteryDayResults.CHARGING));
  }

  /** Of one owned and four hired the hired come at 12 h: until then one works, about 2.9 h. */
  @Test
  void a_hired_battery_is_not_used_before_it_is_there() {
    Ranges job =
        BatteryDaySamples.camera()
            .set("stock", 1, "owned", 1, "hired", 4, "inHandOn", day("2027-02-02"))
            .set("stock", 1, "inHandFrom", at(12, 0));
    PlanResult result = job.calculate();
    assertThat(result.rows(BatteryDayResults.CARD))
        .filteredOn(c -> !c.on().isEmpty() && !c.on().equals("B1"))
        .isNotEmpty()
        .allMatch(c -> !c.by().isBefore(LocalTime.of(12, 0)));
    double runtime = result.rows(BatteryDayResults.POSITIONS).get(0).runtime();
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).dark())
        .isCloseTo(12 - 7 - runtime, within(0.05));
    PlanResult before = job.set("stock", 1, "inHandOn", day("2027-02-03")).calculate();
    assertThat(before.rows(BatteryDayResults.STOCK).get(0).planned()).isEqualTo(1);
    Ranges half = BatteryDaySamples.camera().set("stock", 1, "inHandFrom", at(12, 0));
    assertThat(keys(half.calculate().rows(BatteryDayResults.STOCK).get(0).reasons()))
        .contains(BatteryDayFinding.IN_HAND_HALF);
  }

  /** Project says when to change where a position does not. */
  @Test
  void a_rule_for_all_positions() {
    Ranges rule = job().set("project", 1, "changeAt", 0.2);
    Ranges own = job().set("positions", 1, "changeAt", 0.2);
    assertThat(rule.calculate().rows(BatteryDayResults.CARD))
        .isEqualTo(own.calculate().rows(BatteryDayResults.CARD))
        .isNotEqualTo(job().calculate().rows(BatteryDayResults.CARD));
    Ranges both = job().set("project", 1, "changeAt", 0.5).set("positions", 1, "changeAt", 0.2);
    assertThat(both.calculate().rows(BatteryDayResults.CARD))
        .isEqualTo(own.calculate().rows(BatteryDayResults.CARD));
  }

  /** At lunch, with everything as planned, the paper stays as it is. */
  @Test
  void planned_again_with_nothing_new_it_is_the_same_day() {
    Ranges plate =
        job().set("positions", 1, "connection", "hot-swap").set("chargers", 1, "channels", 2);
    for (Ranges job : List.of(plate, BatteryDayFewestTest.quay(12, 10, 8))) {
      List<BatteryDayResults.ScheduleRow> morning =
          job.calculate().rows(BatteryDayResults.SCHEDULE);
      for (int hour = 8; hour < 17; hour++) {
        assertThat(
                job.set("project", 1, "now", at(hour, 30))
                    .calculate()
                    .rows(BatteryDayResults.SCHEDULE))
            .isEqualTo(morning);
      }
    }
  }

  /** Batteries are handed out at call: nothing runs before. */
  @Test
  void a_device_that_is_on_before_call_is_planned_from_call() {
    Ranges early = job().set("devices", 1, "from", at(5, 0), "to", at(15, 0));
    BatteryDayResults.CardRow first = early.calculate().rows(BatteryDayResults.CARD).get(0);
    assertThat(first.by()).isEqualTo(LocalTime.of(7, 0));
    assertThat(keys(early.calculate().rows(BatteryDayResults.DEVICES).get(0).reasons()))
        .contains(BatteryDayFinding.OUTSIDE_DAY);
  }

  /** A runner knows a battery by its type, and a damaged one is not "not there". */
  @Test
  void the_schedule_names_types_and_quarantine() {
    Ranges job = job().set("project", 1, "now", at(8, 0));
    job.row("atNow", "number", "B1", "absence", "quarantine");
    List<BatteryDayResults.CardRow> card = job.calculate().rows(BatteryDayResults.CARD);
    assertThat(card).allMatch(c -> c.type().equals("P294"));
    assertThat(card.get(0).off()).isEqualTo("B1");
    assertThat(card.get(0).to().pattern()).isEqualTo("quarantine");
  }
}
