package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.setpower.plan.budget.BudgetResults.AccountTotal;
import org.setpower.plan.budget.BudgetResults.CashWeek;
import org.setpower.plan.budget.BudgetResults.DepartmentTotal;
import org.setpower.plan.budget.BudgetResults.LineState;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;

/** What holds for every cost report, on random budgets. */
class BudgetIdentitiesTest {
  private static final AccountTotal NONE =
      new AccountTotal(
          TotalKind.DIFFERENCE,
          null,
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          BigDecimal.ZERO);

  private static final Set<TotalKind> PARTS =
      Set.of(TotalKind.GROUP, TotalKind.DIFFERENCE, TotalKind.CONTINGENCY);

  private static <R> BigDecimal sum(List<R> rows, Function<R, BigDecimal> amount) {
    return rows.stream()
        .map(amount)
        .filter(Objects::nonNull)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static List<LineState> lines(PlanResult result) {
    return result.rows(BudgetResults.LINES).stream().filter(Objects::nonNull).toList();
  }

  @Test
  void columns_of_every_line_add_up() {
    int counted = 0;
    for (int seed = 0; seed < 1500; seed++) {
      Ranges ranges = BudgetSamples.random(seed, 1 + seed % 9);
      List<LineState> states = ranges.calculate().rows(BudgetResults.LINES);
      for (int i = 0; i < states.size(); i++) {
        LineState line = states.get(i);
        if (line == null) {
          continue;
        }
        if (line.verdict() == Verdict.STOP) {
          assertThat(line.finalCost()).isNull();
          assertThat(line.planned()).isNull();
          continue;
        }
        counted++;
        assertThat(line.costToDate()).isEqualByComparingTo(line.invoicedNow().add(line.open()));
        assertThat(line.finalCost()).isEqualByComparingTo(line.costToDate().add(line.toComplete()));
        assertThat(line.variance())
            .isEqualByComparingTo(line.budgetNow().subtract(line.finalCost()));
        // what is still to come of a reduction is minus, of all else it is not
        boolean isReduction =
            "reduction".equals(ranges.rows("lines").get(i).get("type"))
                && line.plannedTyped().signum() < 0;
        boolean isEstimated = ranges.rows("lines").get(i).get("estimate") != null;
        assertThat(line.open().signum() * (isReduction ? -1 : 1)).isGreaterThanOrEqualTo(0);
        assertThat(line.toComplete().signum() * (isReduction && !isEstimated ? -1 : 1))
            .isGreaterThanOrEqualTo(0);
        assertThat(line.plannedTyped())
            .isEqualByComparingTo(line.pay().add(line.fringes()).add(line.perDiems()));
      }
    }
    assertThat(counted).isGreaterThan(1000);
  }

  @Test
  void totals_by_account_by_department_and_by_line_are_one() {
    int contingencies = 0;
    int differences = 0;
    for (int seed = 0; seed < 1500; seed++) {
      PlanResult result = BudgetSamples.random(seed, 1 + seed % 9).calculate();
      List<AccountTotal> accounts = result.rows(BudgetResults.ACCOUNTS);
      List<DepartmentTotal> departments = result.rows(BudgetResults.DEPARTMENTS);
      List<LineState> lines = lines(result);
      AccountTotal total = accounts.get(accounts.size() - 1);
      DepartmentTotal other = departments.get(departments.size() - 1);
      BigDecimal kept = result.rows(BudgetResults.SUMMARY).get(0).contingency();
      contingencies += kept.signum() == 0 ? 0 : 1;
      AccountTotal apart =
          accounts.stream().filter(a -> a.kind() == TotalKind.DIFFERENCE).findFirst().orElse(NONE);
      differences += apart == NONE ? 0 : 1;
      assertThat(apart.variance().signum()).isLessThanOrEqualTo(0);
      List<BudgetResults.LineRow> byLine = result.rows(BudgetResults.BY_LINE);
      BudgetResults.LineRow last = byLine.get(byLine.size() - 1);
      assertThat(last.budget().add(last.changes())).isEqualByComparingTo(total.budget());
      assertThat(last.finalCost()).isEqualByComparingTo(total.finalCost());
      for (BudgetResults.LineRow row : byLine) {
        if (row.kind() != TotalKind.WITHHELD) {
          assertThat(row.invoiced().add(row.open())).isEqualByComparingTo(row.costToDate());
        }
      }
      List<BudgetResults.LineRow> shown =
          byLine.stream().filter(r -> PARTS.contains(r.kind())).toList();
      assertThat(sum(shown, BudgetResults.LineRow::budget)).isEqualByComparingTo(last.budget());
      assertThat(sum(shown, BudgetResults.LineRow::changes)).isEqualByComparingTo(last.changes());
      assertThat(sum(shown, BudgetResults.LineRow::invoiced))
          .isEqualByComparingTo(last.invoiced())
          .isEqualByComparingTo(sum(lines, LineState::invoicedNow));
      assertThat(
              sum(
                  byLine.stream().filter(r -> PARTS.contains(r.kind())).toList(),
                  BudgetResults.LineRow::variance))
          .isEqualByComparingTo(total.variance());
      List<AccountTotal> parts = accounts.subList(0, accounts.size() - 1);
      List<DepartmentTotal> others = departments.subList(0, departments.size() - 1);
      assertThat(total.budget())
          .isEqualByComparingTo(other.budget())
          .isEqualByComparingTo(sum(parts, AccountTotal::budget))
          .isEqualByComparingTo(sum(others, DepartmentTotal::budget))
          .isEqualByComparingTo(sum(lines, LineState::budgetNow).add(kept).add(apart.budget()));
      assertThat(total.ordered())
          .isEqualByComparingTo(sum(others, DepartmentTotal::ordered))
          .isEqualByComparingTo(sum(lines, LineState::orderedNow));
      assertThat(total.costToDate())
          .isEqualByComparingTo(sum(others, DepartmentTotal::costToDate))
          .isEqualByComparingTo(sum(lines, LineState::costToDate));
      assertThat(total.toComplete())
          .isEqualByComparingTo(sum(parts, AccountTotal::toComplete))
          .isEqualByComparingTo(sum(lines, LineState::toComplete).add(kept).add(apart.finalCost()));
      assertThat(total.finalCost())
          .isEqualByComparingTo(sum(others, DepartmentTotal::finalCost))
          .isEqualByComparingTo(sum(lines, LineState::finalCost).add(kept).add(apart.finalCost()));
      assertThat(total.variance())
          .isEqualByComparingTo(other.variance())
          .isEqualByComparingTo(sum(lines, LineState::variance).add(apart.variance()))
          .isEqualByComparingTo(result.rows(BudgetResults.SUMMARY).get(0).variance());
    }
    assertThat(contingencies).isGreaterThan(100);
    assertThat(differences).isGreaterThan(100);
  }

  @Test
  void weeks_and_what_is_not_in_cash_are_the_plan() {
    int weekly = 0;
    for (int seed = 0; seed < 1500; seed++) {
      Ranges ranges = BudgetSamples.random(seed, 1 + seed % 9);
      PlanResult result = ranges.calculate();
      List<CashWeek> weeks = result.rows(BudgetResults.WEEKS);
      List<LineState> lines = lines(result);
      BudgetResults.BudgetSummary summary = result.rows(BudgetResults.SUMMARY).get(0);
      assertThat(sum(weeks, CashWeek::payments).add(summary.notInCash()))
          .as(ranges.toString())
          .isEqualByComparingTo(isDated(ranges) ? summary.toPay() : summary.gross());
      assertThat(summary.gross()).isEqualByComparingTo(sum(lines, LineState::gross));
      assertThat(summary.toPay()).isEqualByComparingTo(summary.gross().subtract(summary.paid()));
      if (!weeks.isEmpty()) {
        weekly++;
        assertThat(weeks)
            .isSortedAccordingTo(
                Comparator.comparing(
                    CashWeek::week, Comparator.nullsFirst(Comparator.naturalOrder())));
        assertThat(weeks.get(weeks.size() - 1).soFar())
            .isEqualByComparingTo(sum(weeks, CashWeek::cash));
      }
      if (summary.notInCash().signum() == 0 && isWhole(ranges) && !isDated(ranges)) {
        assertThat(sum(weeks, CashWeek::reclaim))
            .isEqualByComparingTo(sum(lines, LineState::reclaimed));
      }
    }
    assertThat(weekly).isGreaterThan(300);
  }

  /** Whether cash is that of a day on which some of it is paid. */
  private static boolean isDated(Ranges ranges) {
    return ranges.rows("project").get(0).get("asAt") instanceof Double;
  }

  /** Whether no line is left out for its date; lines of opposite signs could hide each other. */
  private static boolean isWhole(Ranges ranges) {
    return lines(ranges.calculate()).stream()
        .noneMatch(
            l ->
                l.reasons().stream()
                    .anyMatch(
                        f ->
                            f.key() == BudgetFinding.NOT_IN_CASH
                                || f.key() == BudgetFinding.TOO_MANY_WEEKS));
  }

  @Test
  void cash_less_reclaimed_tax_is_the_cost_with_unrecoverable_tax() {
    for (int seed = 0; seed < 500; seed++) {
      Ranges ranges = BudgetSamples.random(seed, 6);
      ranges.set("project", 1, "columns", "with unrecoverable tax");
      for (LineState line : lines(ranges.calculate())) {
        if (line.verdict() != Verdict.STOP) {
          assertThat(line.gross().subtract(line.reclaimed()))
              .isEqualByComparingTo(line.finalCost());
        }
      }
    }
  }

  @Test
  void a_scenario_without_a_change_costs_nothing() {
    for (int seed = 0; seed < 300; seed++) {
      Ranges ranges = BudgetSamples.random(seed, 5);
      ranges.rows("scenarios").clear();
      ranges.row("scenarios", "scenario", "same", "type", "crew", "dearer", 0, "moreTimes", 0);
      PlanResult result = ranges.calculate();
      BudgetResults.ScenarioState same = result.rows(BudgetResults.SCENARIOS).get(0);
      if (same.more() != null) {
        assertThat(same.more()).isEqualByComparingTo("0");
        BigDecimal left = result.rows(BudgetResults.SUMMARY).get(0).contingencyLeft();
        assertThat(Objects.equals(same.left(), left) || same.left().compareTo(left) == 0).isTrue();
      }
    }
  }
}
