package org.setpower.plan.travel;

import java.util.List;
import java.util.Set;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.PlanContract;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.Ranges;

/** The travel list keeps what every plan keeps. */
public class TravelContractTest extends PlanContract {
  @Override
  protected PlanModel model() {
    return TravelPlan.MODEL;
  }

  @Override
  protected Set<String> unordered() {
    return Set.of("flights", "travellers", "answers", "batteries", "packing");
  }

  @Override
  protected List<Ranges> samples() {
    return TravelSamples.all();
  }

  @Override
  protected List<Object> values(InputColumn column) {
    return TravelSamples.values(column);
  }
}
