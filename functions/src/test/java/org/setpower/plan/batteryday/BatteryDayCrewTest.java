package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;

/** What one crew can do, and reads on its papers. */
class BatteryDayCrewTest {
  private static List<Finding> together(Ranges ranges) {
    return ranges.calculate().rows(BatteryDayResults.PROJECT).get(0).reasons().stream()
        .filter(f -> f.key() == BatteryDayFinding.CHANGED_TOGETHER)
        .toList();
  }

  /** Two cameras alike, put on at 06:00: their batteries are empty in the same minute. */
  @Test
  void two_cameras_changed_in_the_same_minute_are_told() {
    Ranges job = BatteryDayFewestTest.quay(30, 30, 15);
    assertThat(together(job))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.CHECK);
              assertThat(f.arguments().get(0)).isInstanceOf(LocalTime.class);
              assertThat(f.arguments().subList(1, 3)).containsExactly("A camera", "B camera");
              assertThat((Double) f.arguments().get(3)).isGreaterThan(2);
            });
    job.set("positions", 1, "department", "A unit").set("positions", 2, "department", "B unit");
    assertThat(together(job)).as("each has a crew of its own").isEmpty();
    job.set("positions", 1, "department", "", "power", 100);
    job.set("positions", 2, "department", "", "priority", 2);
    assertThat(together(job)).as("one camera of the first class").isEmpty();
  }

  /** Where no priority is typed there is no first class, and nothing is said. */
  @Test
  void positions_without_priority_may_change_together() {
    Ranges job = BatteryDayFewestTest.quay(30, 30, 15);
    for (int row = 1; row <= 8; row++) {
      job.set("positions", row, "priority", "");
    }
    assertThat(together(job)).isEmpty();
  }

  /** Nobody takes a battery off one camera for another that has its own a few minutes later. */
  @Test
  void no_battery_is_moved_to_gain_minutes() {
    int moves = 0;
    for (int blocks = 5; blocks <= 12; blocks++) {
      for (int priority = 2; priority <= 3; priority++) {
        Ranges job = BatteryDayFewestTest.quay(blocks, 1, 1);
        job.set("positions", 1, "priority", 1).set("positions", 2, "priority", priority);
        job.set("positions", 2, "power", 96 + 7 * priority);
        List<BatteryDayResults.ScheduleRow> rows = job.calculate().rows(BatteryDayResults.SCHEDULE);
        for (BatteryDayResults.ScheduleRow row : rows) {
          if (!row.taken().isEmpty()) {
            moves++;
            boolean back =
                rows.stream()
                    .filter(r -> r.hour() > row.hour() && r.hour() < row.hour() + 5 / 60.0)
                    .anyMatch(r -> r.position().equals(row.taken()) && !r.on().isEmpty());
            assertThat(back).as("%s blocks, %s", blocks, row).isFalse();
          }
        }
      }
    }
    assertThat(moves).isPositive();
  }

  /** What charges after midnight has the date of the next morning. */
  @Test
  void hours_after_midnight_have_a_date() {
    Ranges job = BatteryDayFewestTest.quay(17, 15, 10);
    for (int row = 1; row <= 4; row++) {
      job.set("chargers", row, "powerFrom", "", "powerTo", "");
    }
    List<BatteryDayResults.ChargingRow> rows = job.calculate().rows(BatteryDayResults.CHARGING);
    LocalDate next = LocalDate.of(2026, 12, 3);
    int after = 0;
    double before = 0;
    String charger = "";
    for (BatteryDayResults.ChargingRow row : rows) {
      if (row.from() != null) {
        before = row.charger().toString().equals(charger) ? before : 0;
        charger = row.charger().toString();
        LocalTime time = (LocalTime) row.from().arguments().get(0);
        boolean dated = row.from().arguments().size() > 1;
        if (dated) {
          assertThat(row.from().arguments().get(1)).isEqualTo(next);
          after++;
        }
        double hour =
            ChronoUnit.MINUTES.between(LocalTime.MIDNIGHT, time) / 60.0 + (dated ? 24 : 0);
        assertThat(hour).as("in order").isGreaterThanOrEqualTo(before);
        before = hour;
      }
    }
    assertThat(after).isPositive();
  }

  /** Of a battery that is not where it was planned nobody knows how full it is. */
  @Test
  void a_found_battery_in_another_place_is_asked_for_its_charge() {
    Ranges lunch = BatteryDayFewestTest.quay(30, 30, 15).set("project", 1, "now", at(11, 0));
    lunch.row("atNow", "number", "B29", "position", "A camera");
    PlanResult result = lunch.calculate();
    assertThat(result.rows(BatteryDayResults.AT_NOW).get(0).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(result.rows(BatteryDayResults.AT_NOW).get(0).reasons())
        .extracting(Finding::key)
        .containsExactly(BatteryDayFinding.FOUND_CHARGE);
    lunch.set("atNow", 1, "charge", 0.8);
    assertThat(lunch.calculate().rows(BatteryDayResults.AT_NOW).get(0).verdict())
        .isEqualTo(Verdict.OK);
  }

  /** The paper names every position of the date; a stop leaves its figures blank. */
  @Test
  void positions_of_the_date_are_on_paper() {
    Ranges job = BatteryDayFewestTest.quay(30, 30, 15);
    job.set("positions", 2, "toDay", BatteryDaySamples.day("2026-12-01"));
    job.set("positions", 3, "power", "much");
    List<BatteryDayResults.LentRow> rows = job.calculate().rows(BatteryDayResults.LENT_OUT);
    assertThat(rows)
        .extracting(BatteryDayResults.LentRow::battery)
        .startsWith("A camera", "Director monitor")
        .endsWith("Follow focus", "B5")
        .hasSize(8);
    assertThat(rows.get(0).changes()).isGreaterThan(10);
    assertThat(rows.get(1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(rows.get(1).changes()).isNull();
  }

  /** What does not fit on the paper is refused in words by the answer, not left out of it. */
  @Test
  void no_loan_is_left_out() {
    Ranges job = BatteryDayFewestTest.quay(30, 200, 15);
    job.set("stock", 2, "lent", "B31-B190");
    PlanResult result = job.calculate();
    assertThat(result.rows(BatteryDayResults.LENT_OUT))
        .filteredOn(r -> r.verdict() == null)
        .hasSizeGreaterThanOrEqualTo(150);
    Object[][] page =
        result.matrix(
            new Answer(
                List.of("lentOut.battery", "lentOut.type"), BatteryDayResults.LENT_OUT.rows()),
            Messages.in("en"),
            Locale.UK);
    assertThat(Arrays.deepToString(page)).contains("stop", "Positions and lent-out has");
  }

  /** A camera that is not planned is not lit: no figure soothes, and its cause comes first. */
  @Test
  void a_wrong_entry_leaves_figures_blank_and_comes_first() {
    Ranges job = BatteryDayFewestTest.quay(8, 30, 15);
    BatteryDayResults.SummaryResult before = job.calculate().rows(BatteryDayResults.SUMMARY).get(0);
    assertThat(before.dark()).isPositive();
    assertThat(before.shortOf()).isPositive();
    job.set("positions", 8, "input", "wide");
    PlanResult result = job.calculate();
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).dark()).isNull();
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).shortOf()).isNull();
    assertThat(result.rows(BatteryDayResults.ISSUES).get(0).toString()).contains("Follow focus");
  }
}
