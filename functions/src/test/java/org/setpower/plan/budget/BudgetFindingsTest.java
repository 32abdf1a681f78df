package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.budget.BudgetSamples.day;
import static org.setpower.plan.budget.BudgetSamples.empty;
import static org.setpower.plan.budget.BudgetSamples.line;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.budget.BudgetResults.LineState;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/**
 * What a budget must never do again. Expected amounts are calculated by hand; the columns are those
 * of a production's cost report (common practice).
 */
class BudgetFindingsTest {
  private static LineState state(Ranges ranges, int row) {
    return ranges.calculate().rows(BudgetResults.LINES).get(row - 1);
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  private static BudgetResults.BudgetSummary summary(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.SUMMARY).get(0);
  }

  /** A crew line of so many persons, five days. */
  private static Ranges crew(double price, String unit, double hours) {
    return empty()
        .row("lines", "description", "gaffer", "type", "crew", "qty", 1, "unit", unit)
        .set("lines", 1, "times", 5, "price", price, "hours", hours);
  }

  @ParameterizedTest
  @CsvSource({
    "2000, 2000, 2450, no, 2450, 0, -450",
    "2000, 1500, 1500, no, 1500, 500, 0",
    "2000, 1500, 1500, yes, 1500, 0, 500",
    "2000, 2000, 0, no, 2000, 0, 0",
    "2000, 2000, -100, no, 2000, 0, 0"
  })
  void an_overspend_reaches_the_variance(
      double planned,
      double ordered,
      double invoiced,
      String complete,
      BigDecimal toDate,
      BigDecimal toComplete,
      BigDecimal variance) {
    Ranges ranges =
        line(planned).set("lines", 1, "ordered", ordered, "po", "P", "invoiced", invoiced);
    LineState state = state(ranges.set("lines", 1, "invoice", "I", "complete", complete), 1);
    assertThat(state.costToDate()).isEqualByComparingTo(toDate);
    assertThat(state.toComplete()).isEqualByComparingTo(toComplete);
    assertThat(state.variance()).isEqualByComparingTo(variance);
    assertThat(keys(state.reasons()).contains(BudgetFinding.OVERSPENT))
        .isEqualTo(variance.signum() < 0);
  }

  @Test
  void an_overspend_is_not_netted_and_takes_from_the_contingency() {
    // 5 × 400 ordered, invoiced at 2,450; another line saves 300
    Ranges ranges =
        line(400)
            .set("project", 1, "contingency", 0.1)
            .set("lines", 1, "qty", 5, "ordered", 2000, "po", "P", "invoiced", 2450)
            .row("lines", "description", "stands", "type", "rental", "price", 1000)
            .set("lines", 2, "invoiced", 700, "invoice", "I", "complete", "yes");
    assertThat(state(ranges, 1).variance()).isEqualByComparingTo("-450");
    assertThat(state(ranges, 2).variance()).isEqualByComparingTo("300");
    BudgetResults.BudgetSummary summary = summary(ranges);
    assertThat(summary.contingency()).isEqualByComparingTo("300");
    assertThat(summary.variance()).isEqualByComparingTo("-150");
    assertThat(summary.contingencyLeft()).isEqualByComparingTo("150");
  }

  @Test
  void a_closed_order_leaves_no_commitment() {
    Ranges ranges = line(2000).set("lines", 1, "ordered", 2000, "invoiced", 1500, "po", "P");
    assertThat(state(ranges, 1).open()).isEqualByComparingTo("500");
    ranges.set("lines", 1, "poClosed", "yes");
    assertThat(state(ranges, 1).open()).isEqualByComparingTo("0");
    assertThat(state(ranges, 1).toComplete()).isEqualByComparingTo("500");
    // typed 0: nothing more
    ranges.set("lines", 1, "estimate", 0);
    assertThat(state(ranges, 1).finalCost()).isEqualByComparingTo("1500");
  }

  @Test
  void tax_is_never_a_cost_on_one_side_only() {
    // 376.50 and 20 % tax, 75.30: planned and ordered in the same basis, no variance
    for (String columns : List.of("net", "with unrecoverable tax")) {
      for (String amounts : List.of("without tax", "with tax")) {
        for (double recoverable : new double[] {0, 0.5, 1}) {
          Ranges ranges = line(376.50).set("project", 1, "columns", columns, "amounts", amounts);
          ranges.set("project", 1, "recoverable", recoverable);
          ranges.set("lines", 1, "ordered", 376.50, "po", "P");
          LineState state = state(ranges, 1);
          assertThat(state.variance()).isEqualByComparingTo("0");
          assertThat(state.planned()).isEqualTo(state.orderedNow()).isEqualTo(state.finalCost());
        }
      }
    }
    Ranges cost = line(376.50).set("project", 1, "columns", "with unrecoverable tax");
    assertThat(state(cost, 1).planned()).isEqualByComparingTo("376.50");
    cost.set("lines", 1, "recoverable", 0.5);
    assertThat(state(cost, 1).planned()).isEqualByComparingTo("414.15");
    cost.set("project", 1, "amounts", "with tax", "columns", "net");
    assertThat(state(cost, 1).planned()).isEqualByComparingTo("313.75");
  }

  @Test
  void a_linked_count_is_multiplied_and_never_ignored() {
    // generator operator 11.5 h on 5 days is 57.5 h in all
    Ranges ranges =
        empty()
            .row("counts", "count", "operator", "value", 57.5, "inAll", "yes")
            .row("lines", "description", "operator", "type", "crew", "count", "operator")
            .set("lines", 1, "unit", "hour", "price", 38.35, "qty", 1);
    assertThat(state(ranges, 1).counted()).isEqualByComparingTo("57.5");
    assertThat(state(ranges, 1).planned()).isEqualByComparingTo("2205.13");
    // a blank quantity is 1, and shown
    assertThat(state(ranges.set("lines", 1, "qty", ""), 1).counted()).isEqualByComparingTo("57.5");
    assertThat(state(ranges.set("lines", 1, "qty", 2), 1).planned())
        .isEqualByComparingTo("4410.25");
    ranges.set("lines", 1, "times", 36);
    assertThat(state(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(state(ranges, 1).reasons())).contains(BudgetFinding.COUNT_IN_ALL);
    assertThat(state(ranges, 1).planned()).isNull();
    ranges.set("lines", 1, "times", "", "minTimes", 2);
    assertThat(keys(state(ranges, 1).reasons())).contains(BudgetFinding.COUNT_IN_ALL);
    ranges.set("lines", 1, "minTimes", "");
    // a count of a day is multiplied by the days
    ranges.set("counts", 1, "value", 11.5, "inAll", "no").set("lines", 1, "times", 5, "qty", 1);
    assertThat(state(ranges, 1).planned()).isEqualByComparingTo("2205.13");
  }

  @Test
  void crew_by_the_day_gets_overtime() {
    // 5 days of 12 h at 340 for 10 h, after 10 h × 1.5: 5 × 13 × 34
    Ranges ranges =
        crew(340, "day", 12).set("lines", 1, "coveredHours", 10).row("tiers", "after", 10);
    ranges.set("tiers", 1, "factor", 1.5);
    assertThat(state(ranges, 1).paidHours()).isEqualByComparingTo("13");
    assertThat(state(ranges, 1).pay()).isEqualByComparingTo("2210");
    // a second step: 14 h are 10 + 2 × 1.5 + 2 × 2
    ranges.row("tiers", "after", 12, "factor", 2).set("lines", 1, "hours", 14);
    assertThat(state(ranges, 1).paidHours()).isEqualByComparingTo("17");
    // a short day costs the day
    assertThat(state(ranges.set("lines", 1, "hours", 6), 1).pay()).isEqualByComparingTo("1700");
  }

  @Test
  void a_long_day_without_overtime_is_a_check() {
    Ranges ranges = crew(340, "day", 12);
    assertThat(keys(state(ranges, 1).reasons())).contains(BudgetFinding.COVERED_BLANK);
    ranges.set("lines", 1, "coveredHours", 10);
    assertThat(keys(state(ranges, 1).reasons())).contains(BudgetFinding.NO_TIERS);
    assertThat(state(ranges, 1).pay()).isEqualByComparingTo("1700");
    ranges.set("lines", 1, "hours", 10);
    assertThat(state(ranges, 1).reasons()).isEmpty();
  }

  @Test
  void crew_by_the_hour_has_call_rounding_and_steps() {
    // 7.1 h: to the next quarter 7.25, at least the call of 8 h
    Ranges ranges = crew(34, "hour", 7.1).set("project", 1, "rounding", 0.25);
    assertThat(state(ranges, 1).paidHours()).isEqualByComparingTo("7.25");
    ranges.set("project", 1, "minimumCall", 8);
    assertThat(state(ranges, 1).pay()).isEqualByComparingTo("1360");
  }

  @Test
  void fringes_are_on_pay_with_overtime_up_to_a_ceiling_and_never_on_per_diem() {
    Ranges ranges =
        crew(340, "day", 12)
            .set("lines", 1, "coveredHours", 10, "qty", 2, "daysAway", 3)
            .set("project", 1, "fringe", 0.25, "perDiem", 40)
            .row("tiers", "after", 10, "factor", 1.5);
    LineState state = state(ranges, 1);
    assertThat(state.pay()).isEqualByComparingTo("4420");
    assertThat(state.fringes()).isEqualByComparingTo("1105");
    assertThat(state.perDiems()).isEqualByComparingTo("240");
    assertThat(state.planned()).isEqualByComparingTo("5765");
    // a ceiling of 2,000 each
    ranges.set("project", 1, "ceiling", 2000);
    assertThat(state(ranges, 1).fringes()).isEqualByComparingTo("1000");
  }

  @Test
  void hours_in_all_get_the_overtime_of_equal_days() {
    // 57.5 h in all at 11.5 h a day are 5 days of 10 + 1.5 × 1.5 = 12.25 h: 61.25 × 38.35
    Ranges ranges =
        empty()
            .row("counts", "count", "operator", "value", 57.5, "inAll", "yes")
            .row("tiers", "after", 10, "factor", 1.5)
            .row("lines", "description", "operator", "type", "crew", "count", "operator")
            .set("lines", 1, "unit", "hour", "price", 38.35, "hours", 11.5);
    assertThat(state(ranges, 1).pay()).isEqualByComparingTo("2348.94");
    ranges.set("lines", 1, "daysAway", 5);
    assertThat(keys(state(ranges, 1).reasons())).contains(BudgetFinding.PERSONS_UNKNOWN);
  }

  @Test
  void hours_in_all_have_no_persons() {
    Ranges ranges = crew(34, "hour", 8).set("lines", 1, "hours", "", "daysAway", 3, "times", 1);
    assertThat(keys(state(ranges, 1).reasons())).contains(BudgetFinding.PERSONS_UNKNOWN);
  }

  @Test
  void scenarios_state_what_they_do_to_the_contingency() {
    // planned 3,000, contingency 300, overspent by 800.80: −500.80 left before any change
    Ranges ranges =
        line(3000)
            .set("project", 1, "contingency", 0.1)
            .set("lines", 1, "invoiced", 3800.80, "invoice", "I")
            .row("scenarios", "scenario", "truck late", "other", 300)
            .row("scenarios", "scenario", "dearer", "type", "rental", "dearer", 0.15);
    List<BudgetResults.ScenarioState> scenarios = ranges.calculate().rows(BudgetResults.SCENARIOS);
    assertThat(scenarios.get(0).left()).isEqualByComparingTo("-800.80");
    assertThat(new EnglishMessages().sentences(scenarios.get(0).reasons(), Locale.ENGLISH))
        .startsWith("300.00 more: the contingency is overspent by 800.80.");
    // all of it is invoiced: nothing gets dearer
    assertThat(scenarios.get(1).more()).isEqualByComparingTo("0");
    assertThat(scenarios.get(1).left()).isEqualByComparingTo("-500.80");
    // within the contingency nothing is wrong
    ranges.set("lines", 1, "invoiced", "", "invoice", "");
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(0).reasons()).isEmpty();
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(0).left())
        .isEqualByComparingTo("0");
    // 15 % of 3,000 still to come
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(1).more())
        .isEqualByComparingTo("450");
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(1).left())
        .isEqualByComparingTo("-150");
  }

  @Test
  void a_scenario_pays_overtime_and_fringes_of_more_days() {
    // one day more: 13 h × 34 = 442, fringes 110.50, a day away more 40
    Ranges ranges =
        crew(340, "day", 12)
            .set("lines", 1, "coveredHours", 10, "daysAway", 3)
            .set("project", 1, "fringe", 0.25, "perDiem", 40)
            .row("tiers", "after", 10, "factor", 1.5)
            .row("scenarios", "scenario", "a day more", "type", "crew", "moreTimes", 1);
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(0).more())
        .isEqualByComparingTo("592.50");
  }

  /**
   * Two days more of three lines at 100: 200 for the one by the day, nothing for a delivery paid
   * twice, nothing for a hire of 3 days that is charged as 5. Without a type all of them are meant.
   */
  @Test
  void days_more_leave_what_is_paid_once() {
    Ranges ranges =
        line(100)
            .set("lines", 1, "unit", "day", "times", 4, "description", "lamps")
            .row("lines", "description", "delivery", "type", "transport", "price", 100)
            .set("lines", 2, "qty", 1, "unit", "once", "times", 2)
            .row("lines", "description", "monitor", "type", "sub-hire", "price", 100)
            .set("lines", 3, "qty", 1, "unit", "day", "times", 3, "minTimes", 5)
            .set("project", 1, "contingency", 0.5)
            .row("scenarios", "scenario", "two days more", "moreTimes", 2)
            .row("scenarios", "scenario", "trips", "type", "transport", "moreTimes", 2)
            .row("scenarios", "scenario", "dearer", "dearer", 0.1);
    List<BudgetResults.ScenarioState> scenarios = ranges.calculate().rows(BudgetResults.SCENARIOS);
    assertThat(scenarios.get(0).more()).isEqualByComparingTo("200");
    assertThat(keys(scenarios.get(0).reasons())).containsExactly(BudgetFinding.SCENARIO_SAME);
    assertThat(new EnglishMessages().sentences(scenarios.get(0).reasons(), Locale.ENGLISH))
        .contains("2 of 3 lines", "delivery, monitor");
    assertThat(scenarios.get(1).more()).isEqualByComparingTo("0");
    assertThat(keys(scenarios.get(1).reasons())).containsExactly(BudgetFinding.SCENARIO_SAME);
    // a tenth of 400, 200 and 500
    assertThat(scenarios.get(2).more()).isEqualByComparingTo("110");
    assertThat(scenarios.get(2).reasons()).isEmpty();
  }

  /** Hours that are not those of a day do not become two hours more: nobody said how many. */
  @Test
  void hours_in_all_stay_on_more_days() {
    Ranges ranges =
        crew(30, "hour", 8)
            .set("lines", 1, "hours", "", "times", 6)
            .row("scenarios", "scenario", "two days more", "type", "crew", "moreTimes", 2);
    BudgetResults.ScenarioState state = ranges.calculate().rows(BudgetResults.SCENARIOS).get(0);
    assertThat(state.more()).isEqualByComparingTo("0");
    assertThat(keys(state.reasons())).contains(BudgetFinding.SCENARIO_SAME);
  }

  @Test
  void a_budget_is_a_draft_until_it_is_approved() {
    Ranges ranges = line(2000).set("lines", 1, "budget", 1800, "changes", 100);
    assertThat(state(ranges, 1).budgetNow()).isEqualByComparingTo("2000");
    assertThat(keys(state(ranges, 1).reasons())).containsExactly(BudgetFinding.STILL_DRAFT);
    assertThat(summary(ranges).approved()).isFalse();
    ranges.set("project", 1, "approved", day("2027-01-10"));
    assertThat(state(ranges, 1).budgetNow()).isEqualByComparingTo("1900");
    assertThat(state(ranges, 1).variance()).isEqualByComparingTo("-100");
    // a line added later has no budget
    ranges.set("lines", 1, "budget", "", "changes", "");
    assertThat(state(ranges, 1).budgetNow()).isEqualByComparingTo("0");
    assertThat(keys(state(ranges, 1).reasons())).contains(BudgetFinding.ADDED_LATER);
  }

  @Test
  void all_accounts_and_departments_are_listed_with_a_total() {
    Ranges ranges = empty().set("project", 1, "contingency", 0.1);
    for (int i = 0; i < 11; i++) {
      ranges.row("lines", "description", "x", "type", "fuel", "price", 100);
      ranges.set("lines", i + 1, "account", "A" + (10 + i), "department", "D" + i % 6);
    }
    PlanResult result = ranges.calculate();
    assertThat(result.rows(BudgetResults.ACCOUNTS)).hasSize(11 + 2);
    assertThat(result.rows(BudgetResults.DEPARTMENTS)).hasSize(6 + 2);
    BudgetResults.AccountTotal total = result.rows(BudgetResults.ACCOUNTS).get(12);
    assertThat(total.kind()).isEqualTo(TotalKind.TOTAL);
    assertThat(total.budget()).isEqualByComparingTo("1210");
    BudgetResults.AccountTotal kept = result.rows(BudgetResults.ACCOUNTS).get(11);
    assertThat(kept.kind()).isEqualTo(TotalKind.CONTINGENCY);
    assertThat(kept.variance()).isEqualByComparingTo("0");
  }

  @Test
  void numbers_of_orders_and_invoices_are_asked_for() {
    Ranges ranges = line(10).set("lines", 1, "ordered", 10, "invoiced", 10);
    assertThat(keys(state(ranges, 1).reasons()))
        .containsExactlyInAnyOrder(
            BudgetFinding.NO_PO, BudgetFinding.NO_SUPPLIER, BudgetFinding.NO_INVOICE);
  }

  @Test
  void another_currency_is_rounded_before_it_is_exchanged() {
    // 3 × 0.335 GBP = 1.005, rounded 1.01; × 1.17 = 1.1817
    Ranges ranges =
        line(0.335)
            .set("lines", 1, "qty", 3, "currency", "GBP")
            .row("exchange", "currency", "GBP", "rate", 1.17, "date", day("2027-01-05"));
    assertThat(state(ranges, 1).planned()).isEqualByComparingTo("1.18");
    ranges.set("lines", 1, "currency", "USD");
    assertThat(keys(state(ranges, 1).reasons())).contains(BudgetFinding.NO_EXCHANGE);
    assertThat(summary(ranges).withheld()).isOne();
  }

  @Test
  void cash_is_with_tax_and_a_reclaim_comes_in_its_own_week() {
    // 1,000 and 200 tax, paid on Thursday 28 January; reclaimed 30 days later, on 27 February
    Ranges ranges =
        line(1000).row("deposits", "to", "desk", "amount", 500, "back", day("2027-02-10"));
    List<BudgetResults.CashWeek> weeks = ranges.calculate().rows(BudgetResults.WEEKS);
    assertThat(weeks.stream().map(BudgetResults.CashWeek::week))
        .containsExactly(
            LocalDate.of(2027, 1, 18),
            LocalDate.of(2027, 1, 25),
            LocalDate.of(2027, 2, 8),
            LocalDate.of(2027, 2, 22));
    assertThat(weeks.stream().map(w -> w.cash().intValue())).containsExactly(500, 1200, -500, -200);
    assertThat(weeks.get(3).soFar()).isEqualByComparingTo("1000");
  }
}
