package org.setpower.plan.budget;

import java.util.List;
import java.util.Set;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.PlanContract;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.Ranges;

/** The budget keeps what every plan keeps. */
public class BudgetContractTest extends PlanContract {
  @Override
  protected PlanModel model() {
    return BudgetPlan.MODEL;
  }

  @Override
  protected Set<String> unordered() {
    // of mixes of one price and weight the first is taken: batteries have an order
    return Set.of("counts", "exchange", "tiers", "lines", "deposits", "scenarios", "options");
  }

  @Override
  protected List<Ranges> samples() {
    return List.of(
        BudgetSamples.full(),
        BudgetSamples.faults(),
        BudgetSamples.more(),
        BudgetSamples.moved(),
        BudgetSamples.later(),
        BudgetSamples.cleared(),
        BudgetSamples.alike(),
        BudgetSamples.unknownCurrency());
  }

  @Override
  protected List<Object> values(InputColumn column) {
    return BudgetSamples.values(column);
  }
}
