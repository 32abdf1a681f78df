package org.setpower.plan.batteryday;

import java.util.List;
import java.util.Set;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.PlanContract;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.Ranges;

/** The battery plan keeps what every plan keeps. */
public class BatteryDayContractTest extends PlanContract {
  @Override
  protected PlanModel model() {
    return BatteryDayPlan.MODEL;
  }

  @Override
  protected Set<String> unordered() {
    return Set.of("days", "types", "devices", "supplies");
  }

  @Override
  protected List<Ranges> samples() {
    return BatteryDaySamples.all();
  }

  @Override
  protected List<Object> values(InputColumn column) {
    return BatteryDaySamples.values(column);
  }

  @Override
  protected int hostileTables() {
    return 10_000;
  }
}
