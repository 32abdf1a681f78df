package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.budget.BudgetSamples.day;
import static org.setpower.plan.budget.BudgetSamples.empty;
import static org.setpower.plan.budget.BudgetSamples.line;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.budget.BudgetResults.LineState;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/**
 * A budget as a line producer keeps it. Expected amounts are calculated by hand in decimals; rules
 * are common practice of production accounting.
 */
class BudgetMoneyTest {
  private static LineState state(Ranges ranges, int row) {
    return ranges.calculate().rows(BudgetResults.LINES).get(row - 1);
  }

  private static List<String> keys(List<Finding> findings) {
    return findings.stream().map(f -> f.key().key()).toList();
  }

  private static List<String> keys(Ranges ranges, int row) {
    return keys(state(ranges, row).reasons());
  }

  private static BudgetResults.BudgetSummary summary(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.SUMMARY).get(0);
  }

  private static BudgetResults.ProjectState project(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.PROJECT).get(0);
  }

  /** 3 weeks at 1,700 for days of 10 h, worked 12 h: 13 paid hours of 10, 3 × 1,700 × 1.3. */
  @Test
  void crew_by_the_week_gets_overtime() {
    Ranges ranges =
        empty()
            .row("lines", "description", "gaffer", "type", "crew", "unit", "week", "times", 3)
            .set("lines", 1, "price", 1700, "hours", 12)
            .row("tiers", "after", 10, "factor", 1.5);
    assertThat(keys(ranges, 1)).contains("budget.covered");
    ranges.set("lines", 1, "coveredHours", 10);
    assertThat(state(ranges, 1).paidHours()).isEqualByComparingTo("13");
    assertThat(state(ranges, 1).pay()).isEqualByComparingTo("6630");
    ranges.rows("tiers").clear();
    assertThat(keys(ranges, 1)).contains("budget.noTiers");
    ranges.set("lines", 1, "unit", "once", "times", "");
    assertThat(keys(ranges, 1)).contains("budget.hours");
  }

  @Test
  void a_complete_order_without_an_invoice_is_no_saving() {
    Ranges ranges = line(856.8).set("lines", 1, "ordered", 856.8, "po", "P", "supplier", "desk");
    ranges.set("lines", 1, "complete", "yes");
    assertThat(state(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(ranges, 1)).contains("budget.complete.noInvoice");
    assertThat(summary(ranges).verdict()).isEqualTo(Verdict.STOP);
    // a part invoiced: what is left of the order counts as saved, which somebody must confirm
    ranges.set("lines", 1, "invoiced", 800, "invoice", "I");
    assertThat(keys(ranges, 1)).containsExactly("budget.complete.less");
    assertThat(state(ranges, 1).variance()).isEqualByComparingTo("56.80");
    ranges.set("lines", 1, "invoiced", 856.8);
    assertThat(state(ranges, 1).reasons()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"0, -200, -200", "-50, -150, -200", "-250, 0, -250"})
  void a_rebate_is_still_to_come_until_it_is_credited(
      double invoiced, BigDecimal toComplete, BigDecimal finalCost) {
    Ranges ranges = empty().row("lines", "description", "rebate", "type", "reduction");
    ranges.set("lines", 1, "price", -200, "invoiced", invoiced, "invoice", "I");
    assertThat(state(ranges, 1).toComplete()).isEqualByComparingTo(toComplete);
    assertThat(state(ranges, 1).finalCost()).isEqualByComparingTo(finalCost);
  }

  @Test
  void a_sign_against_the_type_is_a_check() {
    assertThat(keys(line(-5), 1)).contains("budget.sign.minus");
    Ranges ranges = empty().row("lines", "description", "x", "type", "reduction", "price", 20);
    assertThat(keys(ranges, 1)).contains("budget.sign.plus");
    assertThat(state(ranges.set("lines", 1, "price", -20), 1).reasons()).isEmpty();
  }

  /** Approved 2,000 and 500, contingency 10 %: 250. */
  private static Ranges approved() {
    return line(2000)
        .row("lines", "description", "fuel", "type", "fuel", "price", 500, "budget", 500)
        .set("lines", 1, "budget", 2000)
        .set("project", 1, "approved", day("2027-01-10"), "contingency", 0.1)
        .set("project", 1, "approvedTotal", 2500, "approvedContingency", 250);
  }

  private static BigDecimal variance(Ranges ranges) {
    return summary(ranges).variance();
  }

  @Test
  void what_is_approved_does_not_move() {
    assertThat(project(approved()).reasons()).isEmpty();
    assertThat(summary(approved()).budget()).isEqualByComparingTo("2750");
    // 3,000 ordered; the approved 2,000 overtyped with 3,000: the overrun stays
    Ranges over = approved().set("lines", 1, "ordered", 3000, "po", "P", "supplier", "desk");
    assertThat(variance(over)).isEqualByComparingTo("-1000");
    over.set("lines", 1, "budget", 3000);
    assertThat(keys(project(over).reasons())).contains("budget.approved.differs");
    assertThat(project(over).verdict()).isEqualTo(Verdict.STOP);
    assertThat(summary(over).budget()).isEqualByComparingTo("2750");
    assertThat(variance(over)).isEqualByComparingTo("-1000");
    // a line deleted: no saving
    Ranges gone = approved();
    gone.rows("lines").remove(1);
    assertThat(project(gone).verdict()).isEqualTo(Verdict.STOP);
    assertThat(summary(gone).budget()).isEqualByComparingTo("2750");
    assertThat(summary(gone).finalCost()).isEqualByComparingTo("2750");
    assertThat(variance(gone)).isEqualByComparingTo("0");
    // a line that becomes a stop: its budget stays, and is no saving
    Ranges stopped = approved().set("lines", 2, "price", "soon");
    assertThat(keys(project(stopped).reasons())).isEmpty();
    assertThat(summary(stopped).budget()).isEqualByComparingTo("2750");
    assertThat(variance(stopped)).isEqualByComparingTo("0");
  }

  @Test
  void an_approval_without_its_total_is_a_check() {
    Ranges ranges = approved().set("project", 1, "approvedTotal", "");
    assertThat(keys(project(ranges).reasons())).contains("budget.approved.open");
  }

  @Test
  void contingency_stays_as_approved() {
    Ranges ranges = approved().set("lines", 1, "changes", 650).set("project", 1, "contingency", 1);
    assertThat(summary(ranges).contingency()).isEqualByComparingTo("250");
    assertThat(summary(ranges).budget()).isEqualByComparingTo("3400");
    // 150 of the change comes out of the contingency: in all 500 more
    ranges.set("lines", 1, "fromContingency", 150);
    assertThat(summary(ranges).contingency()).isEqualByComparingTo("100");
    assertThat(summary(ranges).budget()).isEqualByComparingTo("3250");
    ranges.set("lines", 1, "fromContingency", 251);
    assertThat(keys(project(ranges).reasons())).contains("budget.contingency");
    ranges.set("lines", 1, "fromContingency", 651);
    assertThat(keys(ranges, 1)).contains("budget.fromContingency");
  }

  @Test
  void approving_keeps_the_total_and_the_contingency_and_names_checks() {
    Ranges ranges =
        line(2000)
            .set("project", 1, "contingency", 0.1)
            .row("lines", "description", "fuel", "type", "fuel", "price", 500)
            .row("lines", "description", "no price", "type", "fuel");
    BudgetApproval approval = BudgetPlan.approval(ranges.list());
    assertThat(approval.total()).isEqualByComparingTo("2500");
    assertThat(approval.contingency()).isEqualByComparingTo("250");
    assertThat(approval.checks()).containsExactly(3);
    ranges.set("project", 1, "contingency", "");
    assertThat(BudgetPlan.approval(ranges.list()).contingency()).isEqualByComparingTo("0");
  }

  /** 1,000 of pay, 250 of fringes: no tax on wages; 20 % where it is typed. */
  @Test
  void crew_has_no_tax_unless_it_is_typed() {
    Ranges ranges = empty().row("lines", "description", "gaffer", "type", "crew", "price", 1000);
    ranges.set("project", 1, "fringe", 0.25);
    assertThat(state(ranges, 1).gross()).isEqualByComparingTo("1250");
    assertThat(state(ranges.set("lines", 1, "tax", 0.2), 1).gross()).isEqualByComparingTo("1500");
  }

  /** Sales tax is not reclaimed: 8.875 % of 1,000 stays a cost. */
  @Test
  void tax_in_dollars_is_not_reclaimed_unless_somebody_says_so() {
    Ranges ranges = line(1000).set("project", 1, "currency", "USD", "tax", 0.08875);
    assertThat(keys(project(ranges).reasons())).contains("budget.salesTax", "budget.taxLeft");
    ranges.set("project", 1, "columns", "with unrecoverable tax");
    assertThat(state(ranges, 1).finalCost()).isEqualByComparingTo("1088.75");
    assertThat(keys(project(ranges).reasons())).containsExactly("budget.salesTax");
    ranges.set("project", 1, "recoverable", 0);
    assertThat(project(ranges).reasons()).isEmpty();
    assertThat(state(ranges, 1).finalCost()).isEqualByComparingTo("1088.75");
  }

  private static List<BudgetResults.CashWeek> weeks(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.WEEKS);
  }

  /** 1,200 with tax due on 28 January, 500 paid, seen on Wednesday 10 February: 700 are overdue. */
  @Test
  void cash_shows_what_is_overdue_and_still_to_pay_from_the_week_of_the_report() {
    Ranges ranges = line(1000).set("lines", 1, "paid", 500, "invoiced", 1000, "invoice", "I");
    assertThat(keys(project(ranges).reasons())).contains("budget.asAt");
    ranges.set("project", 1, "asAt", day("2027-02-10"));
    assertThat(project(ranges).reasons()).isEmpty();
    BudgetResults.CashWeek overdue = weeks(ranges).get(0);
    assertThat(overdue.week()).isNull();
    assertThat(overdue.label().pattern()).isEqualTo("Overdue");
    assertThat(overdue.payments()).isEqualByComparingTo("700");
    assertThat(overdue.soFar()).isEqualByComparingTo("700");
    // tax of what is paid today comes back 30 days after today: 116.67 on 12 March
    assertThat(weeks(ranges))
        .filteredOn(w -> LocalDate.of(2027, 3, 8).equals(w.week()))
        .singleElement()
        .satisfies(w -> assertThat(w.reclaim()).isEqualByComparingTo("116.67"));
    assertThat(summary(ranges).inCash()).isEqualByComparingTo("700");
    // due on the day of the report it is not overdue
    ranges.set("project", 1, "asAt", day("2027-01-28"));
    assertThat(weeks(ranges).get(0).week()).isEqualTo(LocalDate.of(2027, 1, 25));
  }

  /** Weekly wages of 1,000 each over three weeks; nobody pays them before they are earned. */
  private static Ranges wages() {
    return empty()
        .row("lines", "description", "x", "type", "crew", "price", 3000)
        .set("project", 1, "firstDay", day("2027-02-01"), "lastDay", day("2027-02-19"));
  }

  @Test
  void crew_without_due_is_paid_each_week() {
    assertThat(weeks(wages()).stream().map(w -> w.payments().intValue()))
        .containsExactly(1000, 1000, 1000);
    assertThat(weeks(wages()).get(0).week()).isEqualTo(LocalDate.of(2027, 2, 1));
    assertThat(weeks(wages().set("lines", 1, "due", "on delivery"))).hasSize(1);
  }

  /** Weeks 1 and 2 are paid, seen on Friday of week 2: week 3 stands in week 3. */
  @Test
  void the_rest_of_weekly_payments_stands_in_the_weeks_that_are_not_paid() {
    Ranges ranges =
        wages().set("lines", 1, "paid", 2000).set("project", 1, "asAt", day("2027-02-12"));
    assertThat(weeks(ranges)).hasSize(1);
    assertThat(weeks(ranges).get(0).week()).isEqualTo(LocalDate.of(2027, 2, 15));
    assertThat(weeks(ranges).get(0).payments()).isEqualByComparingTo("1000");
    // only 600 are paid: 400 of week 1 are overdue
    ranges.set("lines", 1, "paid", 600);
    assertThat(weeks(ranges).stream().map(w -> w.payments().intValue()))
        .containsExactly(400, 1000, 1000);
    assertThat(weeks(ranges).get(0).week()).isNull();
    // 3,100 paid: 100 too much, which comes back with the last week
    ranges.set("lines", 1, "paid", 3100);
    assertThat(weeks(ranges).stream().map(w -> w.payments().intValue())).containsExactly(-100);
  }

  /** 900 and 180 of tax, all paid by 10 February: no tax of it comes back after 12 March. */
  @Test
  void tax_of_what_is_paid_comes_back_after_the_payment() {
    Ranges ranges =
        empty()
            .row("lines", "description", "x", "type", "rental", "price", 900, "due", "each week")
            .set("lines", 1, "paid", 1080)
            .set("project", 1, "firstDay", day("2027-02-01"), "lastDay", day("2027-02-19"))
            .set("project", 1, "asAt", day("2027-02-10"));
    // 60 each: 3 March, then twice 12 March, as the third week was paid before its time
    assertThat(weeks(ranges).stream().map(w -> w.week() + " " + w.reclaim().intValue()))
        .containsExactly("2027-03-01 60", "2027-03-08 120");
  }

  /** 900 without tax, shooting 1 to 19 February: three weeks of 300. */
  @Test
  void weekly_payments_run_over_the_shoot() {
    Ranges ranges =
        empty()
            .row("lines", "description", "x", "type", "crew", "price", 900, "due", "each week")
            .set("project", 1, "delivered", day("2027-01-25"), "back", day("2027-02-25"));
    assertThat(weeks(ranges)).hasSize(5);
    ranges.set("project", 1, "firstDay", day("2027-02-01"), "lastDay", day("2027-02-19"));
    assertThat(weeks(ranges).stream().map(w -> w.payments().intValue()))
        .containsExactly(300, 300, 300);
    assertThat(weeks(ranges).get(0).week()).isEqualTo(LocalDate.of(2027, 2, 1));
    // seen on 10 February: the first week is overdue
    ranges.set("project", 1, "asAt", day("2027-02-10"));
    assertThat(weeks(ranges).stream().map(w -> w.payments().intValue()))
        .containsExactly(300, 300, 300);
    assertThat(weeks(ranges).get(0).week()).isNull();
    ranges.set("project", 1, "lastDay", day("2027-01-19"));
    assertThat(keys(project(ranges).reasons())).contains("budget.shoot");
  }

  @Test
  void a_date_of_its_own_goes_before_due() {
    Ranges ranges = line(1000).set("lines", 1, "due", "days after", "dueOn", day("2027-02-17"));
    assertThat(state(ranges, 1).paidOn()).isEqualTo(LocalDate.of(2027, 2, 17));
    assertThat(weeks(ranges).get(0).week()).isEqualTo(LocalDate.of(2027, 2, 15));
  }

  /** 60 hours typed as × days beside 12 hours a day would be 720 hours in 13 days. */
  @Test
  void hours_typed_as_days_are_a_check() {
    Ranges ranges = empty().row("lines", "description", "x", "type", "crew", "unit", "hour");
    ranges.set("lines", 1, "price", 34, "times", 60, "hours", 12);
    assertThat(keys(ranges, 1)).contains("budget.hoursAsDays");
    assertThat(keys(ranges.set("lines", 1, "times", 13), 1)).doesNotContain("budget.hoursAsDays");
  }

  @Test
  void a_line_of_a_change_is_not_called_unapproved() {
    Ranges ranges = approved().row("lines", "description", "crane", "type", "rental");
    ranges.set("lines", 3, "price", 650);
    // one fact, one message
    assertThat(keys(ranges, 3)).containsExactly("budget.addedLater");
    assertThat(state(ranges.set("lines", 3, "changes", 650), 3).reasons()).isEmpty();
    assertThat(keys(ranges.set("lines", 3, "changes", 600), 3)).containsExactly("budget.overspent");
  }

  /** Priced by the week at 700: a day more is a third of a week of three days, 233.33. */
  @Test
  void a_day_more_of_a_weekly_price_is_its_share_of_the_week() {
    Ranges ranges =
        line(700)
            .set("lines", 1, "unit", "week", "times", 2)
            .row("scenarios", "scenario", "a day more", "type", "rental", "moreTimes", 1);
    BudgetResults.ScenarioState whole = ranges.calculate().rows(BudgetResults.SCENARIOS).get(0);
    assertThat(whole.more()).isEqualByComparingTo("700");
    assertThat(keys(whole.reasons())).contains("budget.scenario.week");
    ranges.set("project", 1, "weekDays", 3);
    BudgetResults.ScenarioState part = ranges.calculate().rows(BudgetResults.SCENARIOS).get(0);
    assertThat(part.more()).isEqualByComparingTo("233.33");
    assertThat(keys(part.reasons())).doesNotContain("budget.scenario.week");
  }

  /**
   * Two days more, by hand. Rental, weeks of 3 days: 24 × 21.50 less 10 % = 464.40 GBP a week, 2/3
   * are 309.60 at 1.1734 = 363.29; 8 × 145 × 2/3 = 773.33; 640 × 2/3 = 426.67; 190 × 2 = 380. Crew,
   * weeks of 5 days: 310 × 12.625 / 10 × 2 = 782.75 and 2 × 45, fringes at their ceiling; 2 × 1,450
   * × 11.5 / 10 = 3,335 a week, 2/5 are 1,334, and fringes 22 % of 11,000 less of 10,005 = 218.90.
   */
  @Test
  void weeks_of_rental_and_of_crew_have_their_own_days() {
    Ranges ranges =
        empty()
            .set("project", 1, "fringe", 0.22, "ceiling", 5500, "perDiem", 45, "rounding", 0.25)
            .set("project", 1, "weekDays", 3, "crewWeekDays", 5)
            .row("tiers", "after", 10, "factor", 1.5)
            .row("exchange", "currency", "GBP", "rate", 1.1734, "date", day("2027-01-05"))
            .row("lines", "description", "batteries", "type", "rental", "unit", "week")
            .set("lines", 1, "qty", 24, "times", 3, "price", 21.5, "discount", 0.1)
            .set("lines", 1, "currency", "GBP")
            .row("lines", "description", "LED panels", "type", "rental", "unit", "week")
            .set("lines", 2, "qty", 8, "times", 3, "price", 145)
            .row("lines", "description", "generator", "type", "rental", "unit", "week")
            .set("lines", 3, "times", 3, "price", 640)
            .row("lines", "description", "spare", "type", "rental", "unit", "day", "times", 15)
            .set("lines", 4, "price", 190)
            .row("lines", "description", "operator", "type", "crew", "unit", "day", "times", 15)
            .set("lines", 5, "price", 310, "hours", 11.6, "coveredHours", 10, "daysAway", 15)
            .row("lines", "description", "electricians", "type", "crew", "unit", "week")
            .set("lines", 6, "qty", 2, "times", 3, "price", 1450, "hours", 11)
            .set("lines", 6, "coveredHours", 10)
            .row("scenarios", "scenario", "rental", "type", "rental", "moreTimes", 2)
            .row("scenarios", "scenario", "crew", "type", "crew", "moreTimes", 2)
            .row("scenarios", "scenario", "all", "moreTimes", 2);
    List<BudgetResults.ScenarioState> states = ranges.calculate().rows(BudgetResults.SCENARIOS);
    assertThat(states).extracting(s -> s.more().toPlainString()).startsWith("1943.29", "2425.65");
    assertThat(states.get(2).more()).isEqualByComparingTo("4368.94");
    // one of the two blank: that one is named, and its week counts whole for each day
    ranges.set("project", 1, "crewWeekDays", "");
    states = ranges.calculate().rows(BudgetResults.SCENARIOS);
    assertThat(keys(states.get(0).reasons())).doesNotContain("budget.scenario.week");
    assertThat(states.get(1).reasons())
        .filteredOn(f -> f.key() == BudgetFinding.SCENARIO_WEEK)
        .singleElement()
        .extracting(f -> f.arguments().get(0))
        .isEqualTo(BudgetInputs.PROJECT.column("crewWeekDays"));
  }

  /** 3 × 62 a day, 11 days charged as 12: two days more are 13, so one more day, 186. */
  @Test
  void days_more_first_fill_the_min_charged() {
    Ranges ranges =
        empty()
            .row("lines", "description", "power station", "type", "sub-hire", "unit", "day")
            .set("lines", 1, "qty", 3, "times", 11, "minTimes", 12, "price", 62)
            .row("scenarios", "scenario", "two days", "type", "sub-hire", "moreTimes", 2)
            .row("scenarios", "scenario", "one day", "type", "sub-hire", "moreTimes", 1);
    List<BudgetResults.ScenarioState> states = ranges.calculate().rows(BudgetResults.SCENARIOS);
    assertThat(states.get(0).more()).isEqualByComparingTo("186");
    assertThat(keys(states.get(0).reasons())).doesNotContain("budget.scenario.same");
    assertThat(states.get(1).more()).isEqualByComparingTo("0");
    assertThat(keys(states.get(1).reasons())).contains("budget.scenario.same");
    // what they cost more is filled in: 0 as well is an answer
    ranges.set("scenarios", 2, "other", 0);
    states = ranges.calculate().rows(BudgetResults.SCENARIOS);
    assertThat(keys(states.get(1).reasons())).doesNotContain("budget.scenario.same");
  }

  /** Dearer where all is invoiced: nothing counted, and the scenario says so. */
  @Test
  void a_scenario_that_counts_nothing_is_a_check() {
    Ranges ranges =
        line(1000)
            .set("lines", 1, "invoiced", 1000, "invoice", "I")
            .row("scenarios", "scenario", "dearer", "type", "rental", "dearer", 0.15);
    BudgetResults.ScenarioState state = ranges.calculate().rows(BudgetResults.SCENARIOS).get(0);
    assertThat(state.more()).isEqualByComparingTo("0");
    assertThat(keys(state.reasons())).containsExactly("budget.scenario.nothing");
    ranges.set("lines", 1, "invoiced", 600);
    state = ranges.calculate().rows(BudgetResults.SCENARIOS).get(0);
    assertThat(keys(state.reasons())).doesNotContain("budget.scenario.nothing");
  }

  /** 1,000 planned, 600 invoiced: 15 % on the 400 still to come. */
  @Test
  void dearer_changes_only_what_is_not_invoiced() {
    Ranges ranges =
        line(1000)
            .set("lines", 1, "invoiced", 600, "invoice", "I")
            .row("scenarios", "scenario", "dearer", "type", "rental", "dearer", 0.15);
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(0).more())
        .isEqualByComparingTo("60");
    ranges.set("lines", 1, "complete", "yes");
    assertThat(ranges.calculate().rows(BudgetResults.SCENARIOS).get(0).more())
        .isEqualByComparingTo("0");
  }

  /** Planned 1,000, invoiced 1,150, no contingency: nothing is left and nothing is overspent. */
  @Test
  void without_a_contingency_nothing_of_it_is_left() {
    Ranges ranges =
        line(1000)
            .set("lines", 1, "invoiced", 1150, "invoice", "I")
            .row("scenarios", "scenario", "truck late", "other", 300);
    assertThat(summary(ranges).contingencyLeft()).isNull();
    BudgetResults.ScenarioState state = ranges.calculate().rows(BudgetResults.SCENARIOS).get(0);
    assertThat(state.left()).isNull();
    assertThat(keys(state.reasons())).containsExactly("budget.scenario.uncovered");
  }

  @Test
  void a_struck_line_is_no_line() {
    Ranges ranges = line(100).row("lines", "description", "no", "type", "loss", "struck", "yes");
    ranges.set("lines", 1, "account", "A").set("lines", 2, "account", "B");
    assertThat(summary(ranges).rows()).isOne();
    assertThat(ranges.calculate().rows(BudgetResults.ACCOUNTS)).hasSize(2);
  }

  @Test
  void crew_on_the_payroll_has_no_invoice_number() {
    Ranges ranges = empty().row("lines", "description", "x", "type", "crew", "price", 500);
    assertThat(state(ranges.set("lines", 1, "invoiced", 500), 1).reasons()).isEmpty();
  }

  @Test
  void a_gallon_is_a_unit() {
    assertThat(state(line(4.05).set("lines", 1, "unit", "gallon", "qty", 10), 1).planned())
        .isEqualByComparingTo("40.50");
  }

  /** 2,000 and 500 approved, 100 of changes, 2,200 to date of the first. */
  @Test
  void the_cost_report_by_line_adds_up() {
    Ranges ranges =
        approved()
            .set("lines", 1, "changes", 100, "invoiced", 2200, "invoice", "I")
            .row("lines", "description", "no", "type", "loss", "struck", "yes")
            .row("lines", "description", "stop", "type", "fuel", "price", "soon");
    List<BudgetResults.LineRow> rows = ranges.calculate().rows(BudgetResults.BY_LINE);
    assertThat(rows.stream().map(r -> r.kind().word()))
        .containsExactly("group", "group", "withheld", "subtotal", "contingency", "total");
    BudgetResults.LineRow first = rows.get(0);
    assertThat(
            Stream.of(first.budget(), first.changes(), first.invoiced(), first.open())
                .map(BigDecimal::intValue))
        .containsExactly(2000, 100, 2200, 0);
    assertThat(first.costToDate()).isEqualByComparingTo("2200");
    assertThat(Stream.of(first.finalCost(), first.variance()).map(BigDecimal::intValue))
        .containsExactly(2200, -100);
    assertThat(rows.get(2).budget()).isNull();
    BudgetResults.LineRow before = rows.get(3);
    assertThat(before.budget().add(before.changes())).isEqualByComparingTo("2600");
    assertThat(before.variance()).isEqualByComparingTo("-100");
    BudgetResults.LineRow total = rows.get(5);
    assertThat(total.budget().add(total.changes())).isEqualByComparingTo("2850");
    assertThat(total.finalCost()).isEqualByComparingTo("2950");
  }

  /** 2,500 and 250 approved; a change of 100 is taken out of the contingency: 2,750 stay 2,750. */
  @Test
  void what_comes_out_of_the_contingency_is_a_change_of_it() {
    Ranges ranges = approved().set("lines", 1, "changes", 100, "fromContingency", 100);
    List<BudgetResults.LineRow> rows = ranges.calculate().rows(BudgetResults.BY_LINE);
    BudgetResults.LineRow contingency = rows.get(rows.size() - 2);
    assertThat(contingency.budget()).isEqualByComparingTo("250");
    assertThat(contingency.changes()).isEqualByComparingTo("-100");
    BudgetResults.LineRow total = rows.get(rows.size() - 1);
    assertThat(total.budget()).isEqualByComparingTo("2750");
    assertThat(total.changes()).isEqualByComparingTo("0");
  }

  /** 2,000 ordered and 1,200 of it invoiced: 800 are open, and no page calls them invoiced. */
  @Test
  void pages_show_what_is_invoiced_and_what_is_still_on_order() {
    Ranges ranges = approved().set("lines", 1, "ordered", 2000, "invoiced", 1200, "account", "A");
    BudgetResults.LineRow line = ranges.calculate().rows(BudgetResults.BY_LINE).get(0);
    assertThat(line.invoiced()).isEqualByComparingTo("1200");
    assertThat(line.open()).isEqualByComparingTo("800");
    assertThat(line.costToDate()).isEqualByComparingTo("2000");
    BudgetResults.ReportRow account = ranges.calculate().rows(BudgetResults.REPORT).get(1);
    assertThat(account.invoiced()).isEqualByComparingTo("1200");
    assertThat(account.open()).isEqualByComparingTo("800");
    assertThat(summary(ranges).invoiced()).isEqualByComparingTo("1200");
    assertThat(summary(ranges).open()).isEqualByComparingTo("800");
  }

  /**
   * Approved 2,500 and 250 of contingency; a change of 650, 150 of it out of the contingency: 2,750
   * and 500 are 3,250, and 100 of the contingency are left.
   */
  @Test
  void what_is_drawn_from_the_contingency_is_a_figure() {
    Ranges ranges = approved().set("lines", 1, "changes", 650, "fromContingency", 150);
    BudgetResults.BudgetSummary summary = summary(ranges);
    assertThat(summary.budgetBefore()).isEqualByComparingTo("2750");
    assertThat(summary.changes()).isEqualByComparingTo("500");
    assertThat(summary.budget()).isEqualByComparingTo("3250");
    assertThat(summary.contingencyBefore()).isEqualByComparingTo("250");
    assertThat(summary.drawn()).isEqualByComparingTo("150");
    assertThat(summary.contingency()).isEqualByComparingTo("100");
  }

  /** A line approved at 500, struck with a change of -500: its row shows both. */
  @Test
  void a_struck_line_whose_budget_was_given_back_stays_on_the_page() {
    Ranges ranges = approved().set("lines", 2, "struck", "yes", "changes", -500);
    List<BudgetResults.LineRow> rows = ranges.calculate().rows(BudgetResults.BY_LINE);
    assertThat(rows.get(1).budget()).isEqualByComparingTo("500");
    assertThat(rows.get(1).changes()).isEqualByComparingTo("-500");
    assertThat(rows.get(rows.size() - 1).budget()).isEqualByComparingTo("2750");
  }

  /** 80 % of 20 % tax comes back: in a net report the rest is in no total. */
  @Test
  void tax_of_a_line_that_does_not_come_back_is_a_check_in_a_net_report() {
    Ranges ranges = line(1000).set("lines", 1, "recoverable", 0.8);
    assertThat(keys(ranges, 1)).containsExactly("budget.taxLeft.line");
    assertThat(keys(ranges.set("lines", 1, "tax", 0), 1)).isEmpty();
    ranges.set("lines", 1, "tax", "").set("project", 1, "columns", "with unrecoverable tax");
    assertThat(keys(ranges, 1)).isEmpty();
  }

  /** 28 January to 9 February, 13 days, touch 2 weeks: 15 weeks are days typed by mistake. */
  @Test
  void days_typed_as_weeks_are_a_check() {
    Ranges ranges = line(1450).set("lines", 1, "unit", "week", "times", 15);
    assertThat(keys(ranges, 1)).containsExactly("budget.weeksAsDays");
    assertThat(keys(ranges.set("lines", 1, "times", 2), 1)).isEmpty();
  }

  /** Complete without an order, or a price of 0 once approved: a saving that somebody confirms. */
  @Test
  void a_whole_budget_saved_is_a_check() {
    Ranges ranges = approved().set("lines", 2, "complete", "yes");
    assertThat(keys(ranges, 2)).containsExactly("budget.saved");
    ranges.set("lines", 2, "complete", "", "price", 0);
    assertThat(keys(ranges, 2)).containsExactly("budget.saved");
    // struck: somebody has looked at it
    assertThat(keys(ranges.set("lines", 2, "struck", "yes"), 2)).isEmpty();
  }

  /** The production runs from 18 January to 9 February 2027. */
  @Test
  void a_date_of_another_year_is_a_check() {
    Ranges ranges = line(1000).set("lines", 1, "dueOn", day("2026-02-17"));
    assertThat(keys(ranges, 1)).containsExactly("budget.dateFar");
    assertThat(keys(ranges.set("lines", 1, "dueOn", day("2027-02-17")), 1)).isEmpty();
    ranges.set("project", 1, "asAt", day("2026-01-20"));
    assertThat(keys(project(ranges).reasons())).containsExactly("budget.dateFar");
    ranges.set("project", 1, "asAt", day("2027-01-20"));
    assertThat(project(ranges).reasons()).isEmpty();
    ranges.row("exchange", "currency", "GBP", "rate", 1.17, "date", day("2028-01-05"));
    assertThat(keys(ranges.calculate().rows(BudgetResults.EXCHANGE).get(0).reasons()))
        .containsExactly("budget.dateFar");
    // an approval after the day of the report
    ranges.set("project", 1, "approved", day("2027-01-25"), "approvedTotal", 1000);
    ranges.set("lines", 1, "budget", 1000);
    assertThat(keys(project(ranges).reasons())).containsExactly("budget.asAt.approved");
  }

  /** 5511 typed on two lines, 300 each: not where 300 is what each of them ordered. */
  @Test
  void an_invoice_typed_twice_is_a_check() {
    Ranges ranges =
        line(1000)
            .set("lines", 1, "invoiced", 300, "invoice", "5511")
            .row("lines", "description", "fuel", "type", "fuel", "price", 500)
            .set("lines", 2, "invoiced", 300, "invoice", "5511");
    assertThat(keys(ranges, 1)).containsExactly("budget.invoiceTwice");
    assertThat(keys(ranges, 2)).containsExactly("budget.invoiceTwice");
    ranges.set("lines", 1, "price", 300).set("lines", 2, "price", 300);
    assertThat(keys(ranges, 1)).isEmpty();
    ranges.set("lines", 2, "price", 500, "invoiced", 310);
    assertThat(keys(ranges, 1)).isEmpty();
    ranges.set("lines", 2, "invoiced", 300, "supplier", "another house");
    assertThat(keys(ranges, 2)).isEmpty();
  }

  /** 800 of 932 invoiced, and the PO is closed: nobody waits for the 132. */
  @Test
  void a_closed_order_answers_what_is_not_invoiced() {
    Ranges ranges = line(932).set("lines", 1, "ordered", 932, "po", "P", "supplier", "desk");
    ranges.set("lines", 1, "complete", "yes", "invoiced", 800, "invoice", "I");
    assertThat(new EnglishMessages().sentences(state(ranges, 1).reasons(), Locale.ENGLISH))
        .contains("132.00 of the order");
    assertThat(keys(ranges.set("lines", 1, "poClosed", "yes"), 1)).isEmpty();
  }

  @Test
  void what_is_in_two_rows_is_named_as_it_is_typed() {
    Ranges ranges =
        line(1)
            .row("tiers", "after", 10, "factor", 1.5)
            .row("tiers", "after", 10, "factor", 2)
            .row("counts", "count", "litres a day", "value", 1)
            .row("counts", "count", "litres a day", "value", 2);
    assertThat(
            new EnglishMessages()
                .sentences(
                    ranges.calculate().rows(BudgetResults.TIERS).get(0).reasons(), Locale.ENGLISH))
        .startsWith("10 is in 2 rows.");
    assertThat(
            new EnglishMessages()
                .sentences(
                    ranges.calculate().rows(BudgetResults.COUNTS).get(0).reasons(), Locale.ENGLISH))
        .startsWith("litres a day is in 2 rows. Keep one");
  }

  /** What an accountant books: where from, with which numbers, and what another currency cost. */
  @Test
  void the_list_of_orders_has_what_is_booked() {
    Ranges ranges =
        line(21.5)
            .set("lines", 1, "qty", 24, "unit", "week", "times", 3, "currency", "GBP")
            .set("lines", 1, "account", "3320", "supplier", "house", "po", "P7", "invoice", "5511")
            .set("lines", 1, "ordered", 1800, "invoiced", 600, "paid", 720)
            .row("exchange", "currency", "GBP", "rate", 1.1734, "date", day("2027-01-05"))
            .row("deposits", "to", "house", "amount", 2500, "back", day("2027-02-20"));
    List<BudgetResults.BookedRow> rows = ranges.calculate().rows(BudgetResults.BOOKED);
    BudgetResults.BookedRow first = rows.get(0);
    assertThat(List.of(first.account(), first.supplier(), first.po(), first.invoice()))
        .containsExactly("3320", "house", "P7", "5511");
    assertThat(new EnglishMessages().phrase(first.worked(), Locale.ENGLISH))
        .isEqualTo("24 × 3 × 21.50 GBP at 1.1734");
    assertThat(rows.get(1).kind()).isEqualTo(TotalKind.TOTAL);
    assertThat(rows.get(1).ordered()).isEqualByComparingTo("1800");
    assertThat(rows.get(1).invoiced()).isEqualByComparingTo("600");
    assertThat(rows.get(1).paid()).isEqualByComparingTo("720");
    assertThat(rows.get(2).paid()).isEqualByComparingTo("2500");
  }
}
