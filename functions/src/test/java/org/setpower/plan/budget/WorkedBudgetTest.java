package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.WorkedPlan;

/** A cost report worked apart in decimals, by {@code worked_budget.py} beside its files. */
class WorkedBudgetTest {
  @Test
  void every_figure_is_that_of_the_script() {
    PlanResult result =
        WorkedPlan.cells(BudgetPlan.MODEL, getClass(), "worked_budget_cells.csv").calculate();
    int figures = WorkedPlan.assertFigures(result, getClass(), "worked_budget_expected.csv");
    assertThat(figures).isGreaterThan(150);
    assertThat(result.rows(BudgetResults.SUMMARY).get(0).withheld()).isZero();
  }
}
