package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.budget.BudgetResults.OptionState;
import org.setpower.plan.budget.BudgetResults.ReportRow;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;

/**
 * The ferry day of the scenario four ways, worked out by hand: all batteries 382 less 14.5 %, 10
 * kWh, 4 h; a generator 140 less 5 %, 19 L, 305, operator 427.50; the quay 32 less 5 %, 6 kWh, 440,
 * 2 h; the cheapest mix 248 less 14.5 %, 7 kWh, 4 h.
 */
class BudgetOptionsTest {
  private static Ranges ferry() {
    return BudgetSamples.empty()
        .set("project", 1, "fuelPrice", 1.62, "energyPrice", 0.31, "crewHour", 34)
        .set("project", 1, "gridCo2", 0.056039)
        .row("options", "option", "all batteries", "hire", 382, "discount", 0.145)
        .set("options", 1, "energy", 10, "crew", 4, "risk", "cold")
        .row("options", "option", "generator", "hire", 140, "discount", 0.05, "fuel", 19)
        .set("options", 2, "other", 732.5, "risk", "noise")
        .row("options", "option", "quay", "hire", 32, "discount", 0.05, "energy", 6)
        .set("options", 3, "other", 440, "crew", 2, "risk", "dead from 12:00")
        .row("options", "option", "mix", "hire", 248, "discount", 0.145, "energy", 7)
        .set("options", 4, "crew", 4, "risk", "nothing to spare");
  }

  private static List<OptionState> options(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.OPTIONS);
  }

  @Test
  void four_ways_stand_side_by_side() {
    assertThat(options(ferry()))
        .extracting(o -> o.cost().toPlainString())
        .containsExactly("465.71", "896.28", "540.26", "350.21");
    assertThat(options(ferry()))
        .extracting(o -> o.more().toPlainString())
        .containsExactly("115.50", "546.07", "190.05", "0.00");
    // kWh × 0.056039; 19 L × 2.7 (EPA 2021)
    assertThat(options(ferry()))
        .extracting(o -> Math.round(o.co2() * 10) / 10.0)
        .containsExactly(0.6, 51.3, 0.3, 0.4);
  }

  @Test
  void weight_is_compared_with_the_lightest_that_is_known() {
    Ranges ranges = ferry().set("options", 1, "weight", 62.3).set("options", 2, "weight", 980);
    assertThat(options(ranges))
        .extracting(OptionState::heavier)
        .containsExactly(0.0, 917.7, null, null);
  }

  @Test
  void an_option_whose_price_is_not_known_is_a_stop_and_no_cheapest() {
    Ranges ranges = ferry().set("project", 1, "energyPrice", "");
    List<OptionState> options = options(ranges);
    assertThat(options)
        .extracting(OptionState::verdict)
        .containsExactly(Verdict.STOP, Verdict.OK, Verdict.STOP, Verdict.STOP);
    assertThat(options.get(0).cost()).isNull();
    assertThat(options.get(1).more().toPlainString()).isEqualTo("0.00");
  }

  @Test
  void the_report_has_every_account_and_department_and_both_totals() {
    Ranges ranges = BudgetSamples.full();
    List<ReportRow> rows = ranges.calculate().rows(BudgetResults.REPORT);
    assertThat(rows).filteredOn(r -> r.kind() == TotalKind.HEADING).hasSize(2);
    List<ReportRow> totals = rows.stream().filter(r -> r.kind() == TotalKind.TOTAL).toList();
    assertThat(totals).hasSize(2);
    assertThat(totals.get(0).finalCost()).isEqualByComparingTo(totals.get(1).finalCost());
    assertThat(rows)
        .hasSize(
            2
                + ranges.calculate().rows(BudgetResults.ACCOUNTS).size()
                + ranges.calculate().rows(BudgetResults.DEPARTMENTS).size()
                // before contingency
                + 2);
  }
}
