package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.budget.BudgetSamples.day;
import static org.setpower.plan.budget.BudgetSamples.line;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;

/** What approving a budget writes: the plan of each line that counts, and nothing else. */
class BudgetApprovalTest {
  private static BudgetApproval approval(Ranges ranges) {
    return BudgetPlan.approval(ranges.list());
  }

  @Test
  void planned_amounts_are_written_as_amounts_are_typed() {
    Ranges ranges =
        line(400)
            .set("lines", 1, "qty", 5, "ordered", 2500, "po", "P")
            .set("project", 1, "amounts", "with tax", "columns", "net")
            .row("lines", "description", "not needed", "type", "loss", "struck", "yes", "price", 9)
            .row("lines", "description", "x", "type", "fuel", "price", "soon")
            .row("lines", "description", "fuel", "type", "fuel", "price", 1.62, "qty", 88.6);
    BudgetApproval approval = approval(ranges);
    assertThat(approval.approved()).isNull();
    assertThat(approval.stops()).isEmpty();
    assertThat(approval.withheld()).containsExactly(3);
    assertThat(approval.amounts()).extracting(BudgetApproval.Amount::row).containsExactly(1, 4);
    assertThat(approval.amounts())
        .extracting(a -> a.planned().toPlainString())
        .containsExactly("2000.00", "143.53");
  }

  @Test
  void what_speaks_against_it_is_told() {
    assertThat(approval(BudgetSamples.unknownCurrency()).stops()).isNotEmpty();
    assertThat(approval(line(1).set("project", 1, "approved", day("2027-01-10"))).approved())
        .isEqualTo(LocalDate.of(2027, 1, 10));
  }

  /**
   * Total, contingency, day or amount, and both total and amount so that their sum still agrees.
   */
  @ParameterizedTest
  @CsvSource({
    "approvedTotal, 2100, 2000",
    "approvedContingency, 250, 2000",
    "approved, 46000, 2000",
    "approvedTotal, 2100, 2100"
  })
  void what_was_approved_and_overtyped_is_noticed(String cell, double value, double budget) {
    Ranges ranges = line(400).set("lines", 1, "qty", 5).set("project", 1, "contingency", 0.1);
    BudgetApproval approval = approval(ranges);
    LocalDate day = LocalDate.of(2027, 1, 10);
    ranges
        .set("project", 1, "approved", day("2027-01-10"), "approvedTotal", 2000)
        .set("project", 1, "approvedContingency", 200, "approvalKey", approval.key(day, null))
        .set("lines", 1, "budget", 2000);
    assertThat(changed(ranges)).isFalse();
    // a row that is added later is not part of it
    ranges.row("lines", "description", "new", "type", "fuel", "price", 1, "qty", 1);
    assertThat(changed(ranges)).isFalse();
    ranges.set("project", 1, cell, value).set("lines", 1, "budget", budget);
    assertThat(changed(ranges)).isTrue();
  }

  /** The same figures in another currency, or with tax, are another budget. */
  @ParameterizedTest
  @CsvSource({
    "currency, GBP",
    "amounts, with tax",
    "columns, with unrecoverable tax",
    "tax, 0.25",
    "recoverable, 0.5"
  })
  void an_approval_holds_in_its_currency_and_tax(String cell, String other) {
    Ranges ranges = line(400).set("lines", 1, "qty", 5, "budget", 2000);
    LocalDate day = LocalDate.of(2027, 1, 10);
    ranges
        .set("project", 1, "approvalKey", approval(ranges).key(day, null))
        .set("project", 1, "approved", day("2027-01-10"), "approvedTotal", 2000);
    assertThat(changed(ranges)).isFalse();
    Object typed = other.startsWith("0.") ? Double.valueOf(other) : (Object) other;
    assertThat(changed(ranges.set("project", 1, cell, typed))).isTrue();
    assertThat(ranges.calculate().rows(BudgetResults.PROJECT).get(0).verdict())
        .isEqualTo(Verdict.STOP);
  }

  /** 10 % of 2,000 were approved: 20 % typed later would be 400, and a blank 0. */
  @ParameterizedTest
  @CsvSource({"0.1, false", "0.2, true", "0, true"})
  void a_share_of_contingency_typed_after_the_approval_is_noticed(double share, boolean noticed) {
    Ranges ranges = line(400).set("lines", 1, "qty", 5).set("project", 1, "contingency", 0.1);
    LocalDate day = LocalDate.of(2027, 1, 10);
    ranges
        .set("project", 1, "approvalKey", approval(ranges).key(day, "kept"), "approvals", "kept")
        .set("project", 1, "approved", day("2027-01-10"), "approvedTotal", 2000)
        .set("project", 1, "approvedContingency", 200, "contingency", share)
        .set("lines", 1, "budget", 2000);
    assertThat(keys(ranges).contains("budget.contingency.moved")).isEqualTo(noticed);
    assertThat(keys(ranges)).doesNotContain("budget.approved.changed");
  }

  /** After its day is cleared every line says that its approved amount does not count. */
  @Test
  void lines_that_are_a_check_for_being_a_draft_only_are_not_named() {
    Ranges ranges = line(400).set("lines", 1, "budget", 300);
    assertThat(approval(ranges).checks()).isEmpty();
    assertThat(approval(ranges.set("lines", 1, "paid", -5)).checks()).containsExactly(1);
    assertThat(approval(ranges).currency()).isEqualTo("EUR");
  }

  @Test
  void earlier_approvals_stay_and_are_noticed_when_their_list_is_changed() {
    Ranges ranges = line(400).set("lines", 1, "qty", 5);
    LocalDate day = LocalDate.of(2027, 1, 10);
    assertThat(approval(ranges).approvals("second")).isEqualTo("second");
    ranges.set("project", 1, "approvals", "first");
    assertThat(keys(ranges)).contains("budget.approved.before");
    assertThat(approval(ranges).approvals("second")).isEqualTo("second; first");
    ranges
        .set("project", 1, "approvalKey", approval(ranges).key(day, "second; first"))
        .set("project", 1, "approved", day("2027-01-10"), "approvedTotal", 2000)
        .set("project", 1, "approvals", "second; first")
        .set("lines", 1, "budget", 2000);
    assertThat(keys(ranges)).isEmpty();
    ranges.set("project", 1, "approvals", "second");
    assertThat(keys(ranges)).containsExactly("budget.approved.changed");
  }

  private static java.util.List<String> keys(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.PROJECT).get(0).reasons().stream()
        .map(f -> f.key().key())
        .toList();
  }

  @Test
  void an_approval_whose_day_is_cleared_leaves_a_trace() {
    Ranges ranges = line(400).set("lines", 1, "qty", 5).set("project", 1, "approvedTotal", 2000);
    assertThat(
            ranges.calculate().rows(BudgetResults.PROJECT).get(0).reasons().stream()
                .map(f -> f.key().key()))
        .contains("budget.approved.cleared");
  }

  private static boolean changed(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.PROJECT).get(0).reasons().stream()
        .anyMatch(f -> f.key() == BudgetFinding.APPROVED_CHANGED);
  }
}
