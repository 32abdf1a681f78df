package org.setpower.plan.register;

import java.util.List;
import java.util.Set;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.PlanContract;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.Ranges;

/** The register keeps what every plan keeps. */
public class RegisterContractTest extends PlanContract {
  @Override
  protected PlanModel model() {
    return RegisterPlan.MODEL;
  }

  @Override
  protected Set<String> unordered() {
    return Set.of("types", "limits", "batteries", "tests", "incidents", "checkout");
  }

  @Override
  protected List<Ranges> samples() {
    return List.of(
        RegisterSamples.stock(),
        RegisterSamples.refused(),
        RegisterSamples.incidents(),
        RegisterSamples.due("hold"),
        RegisterSamples.due("goes out"),
        RegisterSamples.odd(),
        RegisterSamples.faults());
  }

  @Override
  protected List<Object> values(InputColumn column) {
    return RegisterSamples.values(column);
  }
}
