package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.budget.BudgetSamples.day;
import static org.setpower.plan.budget.BudgetSamples.line;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Ranges;

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
}
