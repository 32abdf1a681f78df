package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.budget.BudgetResults.LineState;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/** What an accountant stops first; amounts worked out by hand. */
class BudgetSlipsTest {
  private static LineState line(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.LINES).get(0);
  }

  private static List<FindingKey> keys(Ranges ranges) {
    return line(ranges).reasons().stream().map(Finding::key).toList();
  }

  private static List<FindingKey> project(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.PROJECT).get(0).reasons().stream()
        .map(Finding::key)
        .toList();
  }

  /** 300 L at 1.90 are the whole shoot's: a day more adds none; 60 L on 5 days add 114. */
  @Test
  void litres_of_the_whole_shoot_are_not_multiplied_by_days() {
    Ranges ranges =
        BudgetSamples.empty()
            .row("lines", "description", "diesel", "type", "fuel", "qty", 300, "unit", "litre")
            .set("lines", 1, "price", 1.9)
            .row("scenarios", "scenario", "a day more", "type", "fuel", "moreTimes", 1);
    BudgetResults.ScenarioState more = ranges.calculate().rows(BudgetResults.SCENARIOS).get(0);
    assertThat(more.more()).isEqualByComparingTo("0");
    assertThat(more.reasons()).extracting(Finding::key).contains(BudgetFinding.SCENARIO_SAME);
    ranges.set("lines", 1, "qty", 60, "times", 5);
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(0).more())
        .isEqualByComparingTo("114");
  }

  /** A scenario over the contingency is no open issue of the report. */
  @Test
  void a_question_beside_the_plan_is_not_open_in_the_report() {
    Ranges ranges = BudgetSamples.line(100).row("scenarios", "scenario", "over", "other", 9000);
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(0).verdict())
        .isEqualTo(Verdict.CHECK);
    assertThat(ranges.calculate().rows(BudgetResults.ISSUES)).isEmpty();
    assertThat(ranges.calculate().rows(BudgetResults.SUMMARY).get(0).verdict())
        .isEqualTo(Verdict.OK);
  }

  /** 950 GBP at 1.17 are 1,111.50 EUR. */
  @Test
  void an_order_in_the_currency_of_the_line_is_a_check() {
    Ranges ranges =
        BudgetSamples.line(950)
            .row(
                "exchange",
                "currency",
                "GBP",
                "rate",
                1.17,
                "date",
                BudgetSamples.day("2027-01-05"))
            .set("lines", 1, "currency", "GBP", "ordered", 950, "po", "P", "supplier", "S");
    assertThat(keys(ranges)).contains(BudgetFinding.FOREIGN_AMOUNT);
    assertThat(keys(ranges.set("lines", 1, "ordered", 1111.5)))
        .doesNotContain(BudgetFinding.FOREIGN_AMOUNT);
  }

  @Test
  void an_invoice_over_its_order_is_a_check() {
    Ranges ranges =
        BudgetSamples.line(1100)
            .set("lines", 1, "ordered", 900, "po", "P", "supplier", "S")
            .set("lines", 1, "invoiced", 1050, "invoice", "I");
    assertThat(keys(ranges)).contains(BudgetFinding.INVOICED_OVER);
    assertThat(keys(ranges.set("lines", 1, "invoiced", 900)))
        .doesNotContain(BudgetFinding.INVOICED_OVER);
  }

  /** A credit note of 20 without an order: cost to date -20, nothing open. */
  @Test
  void a_credit_note_without_an_order_is_no_commitment() {
    Ranges ranges = BudgetSamples.line(100).set("lines", 1, "invoiced", -20, "invoice", "C");
    assertThat(line(ranges).open()).isEqualByComparingTo("0");
    assertThat(line(ranges).costToDate()).isEqualByComparingTo("-20");
  }

  @Test
  void a_closed_order_with_more_to_come_is_a_check() {
    Ranges ranges =
        BudgetSamples.line(450)
            .set("lines", 1, "ordered", 450, "po", "P", "supplier", "S", "poClosed", "yes")
            .set("lines", 1, "invoiced", 430, "invoice", "I");
    assertThat(keys(ranges)).contains(BudgetFinding.CLOSED_TO_COME);
    assertThat(keys(ranges.set("lines", 1, "complete", "yes")))
        .doesNotContain(BudgetFinding.CLOSED_TO_COME);
  }

  @Test
  void crew_without_fringes_or_overtime_is_a_check() {
    Ranges ranges =
        BudgetSamples.empty()
            .row("lines", "description", "operator", "type", "crew", "unit", "hour", "price", 30)
            .set("lines", 1, "times", 5, "hours", 12);
    assertThat(keys(ranges)).contains(BudgetFinding.NO_TIERS_HOURLY);
    assertThat(project(ranges)).contains(BudgetFinding.NO_FRINGES);
    ranges.set("project", 1, "fringe", 0).row("tiers", "after", 10, "factor", 1.5);
    assertThat(keys(ranges)).doesNotContain(BudgetFinding.NO_TIERS_HOURLY);
    assertThat(project(ranges)).doesNotContain(BudgetFinding.NO_FRINGES);
  }

  @Test
  void a_last_day_long_after_the_return_is_a_check() {
    Ranges ranges =
        BudgetSamples.line(100).set("project", 1, "lastDay", BudgetSamples.day("2028-01-15"));
    assertThat(project(ranges)).contains(BudgetFinding.SHOOT_AFTER_BACK);
  }
}
