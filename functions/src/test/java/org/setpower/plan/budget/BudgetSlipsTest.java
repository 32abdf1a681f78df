package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.setpower.plan.budget.BudgetResults.LineState;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.PlanResult;
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

  /** 117 for 1.17 makes 702 GBP 82,134 EUR. */
  @Test
  void a_slip_of_the_decimal_point_in_a_rate_is_a_check() {
    Ranges ranges = BudgetSamples.line(702).row("exchange", "currency", "GBP", "rate", 117);
    ranges.set("exchange", 1, "date", BudgetSamples.day("2027-01-05"));
    assertThat(rate(ranges)).containsExactly(BudgetFinding.RATE_IMPLAUSIBLE);
    assertThat(rate(ranges.set("exchange", 1, "rate", 0.0117)))
        .containsExactly(BudgetFinding.RATE_IMPLAUSIBLE);
    assertThat(rate(ranges.set("exchange", 1, "rate", 1.17))).isEmpty();
  }

  private static List<FindingKey> rate(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.EXCHANGE).get(0).reasons().stream()
        .map(Finding::key)
        .toList();
  }

  /** 720 GBP ordered at 1.17 for 842.40; at 1.22 the plan is 878.40, and 36 come on top. */
  @Test
  void a_rate_that_moved_after_the_order_is_named() {
    Ranges ranges =
        BudgetSamples.line(720)
            .row("exchange", "currency", "GBP", "rate", 1.22)
            .set("exchange", 1, "date", BudgetSamples.day("2027-01-05"))
            .set("lines", 1, "currency", "GBP", "ordered", 842.4, "po", "P", "supplier", "S")
            .set("project", 1, "approved", BudgetSamples.day("2027-01-10"))
            .set("project", 1, "approvedTotal", 842.4)
            .set("lines", 1, "budget", 842.4);
    assertThat(new EnglishMessages().sentences(line(ranges).reasons(), Locale.UK))
        .contains("exceeds the budget 842.40 by 36.00, at 1.22 EUR for 1 GBP.");
    assertThat(keys(ranges.set("lines", 1, "estimate", 0)))
        .doesNotContain(BudgetFinding.OVERSPENT_ABROAD, BudgetFinding.OVERSPENT);
  }

  @Test
  void a_payment_below_0_is_a_check() {
    Ranges ranges = BudgetSamples.line(100).set("lines", 1, "paid", -5);
    assertThat(keys(ranges)).contains(BudgetFinding.PAID_MINUS);
    assertThat(keys(ranges.set("lines", 1, "paid", 5))).doesNotContain(BudgetFinding.PAID_MINUS);
  }

  /** The minus is the cause: that the cost of 0 exceeds a budget below 0 helps nobody. */
  @Test
  void a_rental_typed_with_a_minus_is_told_so_and_nothing_else() {
    assertThat(keys(BudgetSamples.line(-2188.8))).containsExactly(BudgetFinding.SIGN_MINUS);
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

  /**
   * Two electricians on 12 days of 13 h at 280 for 10 h, 1.5 times from the 11th and twice from the
   * 13th hour: 10 + 3 + 2 paid hours; 2 × 12 × 280 × 1.5 = 10,080, 18 % of it 1,814.40, 2 × 12 × 45
   * = 1,080: 12,974.40 in all.
   */
  private static Ranges electricians() {
    return BudgetSamples.empty()
        .set("project", 1, "fringe", 0.18, "perDiem", 45)
        .row("tiers", "after", 10, "factor", 1.5)
        .row("tiers", "after", 12, "factor", 2)
        .row("lines", "description", "electricians", "account", "3310", "department", "electric")
        .set("lines", 1, "type", "crew", "qty", 2, "unit", "day", "times", 12, "price", 280)
        .set("lines", 1, "hours", 13, "coveredHours", 10, "daysAway", 12);
  }

  @Test
  void the_report_by_line_shows_how_a_line_is_made_up() {
    PlanResult result = electricians().calculate();
    BudgetResults.LineRow row = result.rows(BudgetResults.BY_LINE).get(0);
    assertThat(new EnglishMessages().phrase(row.worked(), Locale.UK))
        .isEqualTo("2 × 12 × 280.00 × 15 paid hours of 10, fringes 1,814.40, per diem 1,080.00");
    assertThat(row.budget()).isEqualByComparingTo("12974.40");
    assertThat(row.account()).isEqualTo("3310");
    assertThat(row.department()).isEqualTo("electric");
    assertThat(row.costToDate().add(row.toComplete())).isEqualByComparingTo(row.finalCost());
    Ranges lamps = BudgetSamples.line(38).set("lines", 1, "qty", 8, "unit", "day", "times", 8);
    // 8 × 8 × 38 × 0.9 = 2,188.80
    lamps.set("lines", 1, "discount", 0.1);
    row = lamps.calculate().rows(BudgetResults.BY_LINE).get(0);
    assertThat(new EnglishMessages().phrase(row.worked(), Locale.UK))
        .isEqualTo("8 × 8 × 38.00, less 10 %");
    assertThat(row.budget()).isEqualByComparingTo("2188.80");
  }

  /** 28 January to 9 February are 13 days. */
  @Test
  void more_days_than_the_production_has_are_a_check() {
    Ranges ranges = electricians();
    assertThat(keys(ranges)).doesNotContain(BudgetFinding.DAYS_BEYOND);
    assertThat(keys(ranges.set("lines", 1, "times", 120))).contains(BudgetFinding.DAYS_BEYOND);
    assertThat(keys(ranges.set("lines", 1, "times", 13))).doesNotContain(BudgetFinding.DAYS_BEYOND);
  }

  @Test
  void days_away_of_all_persons_together_are_a_check() {
    Ranges ranges = electricians();
    for (int away : List.of(12, 14, 18)) {
      assertThat(keys(ranges.set("lines", 1, "daysAway", away)))
          .doesNotContain(BudgetFinding.DAYS_AWAY_MANY);
    }
    assertThat(keys(ranges.set("lines", 1, "daysAway", 24))).contains(BudgetFinding.DAYS_AWAY_MANY);
  }
}
