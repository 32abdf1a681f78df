package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.WorkedPlan;

/** A quote worked apart in decimals, by {@code worked_quote.py} beside its files. */
class WorkedQuoteTest {
  @Test
  void every_figure_is_that_of_the_script() {
    PlanResult result =
        WorkedPlan.cells(QuotePlan.MODEL, getClass(), "worked_quote_cells.csv").calculate();
    int figures = WorkedPlan.assertFigures(result, getClass(), "worked_quote_expected.csv");
    assertThat(figures).isGreaterThan(100);
    // the page has no line that the script has not
    assertThat(result.rows(QuoteResults.DOCUMENT)).hasSize(34);
    assertThat(result.rows(QuoteResults.TAXES)).hasSize(4);
  }
}
