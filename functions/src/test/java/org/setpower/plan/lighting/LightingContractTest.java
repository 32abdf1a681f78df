package org.setpower.plan.lighting;

import java.util.List;
import java.util.Set;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.PlanContract;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.Ranges;

/** The lighting power plan keeps what every plan keeps. */
public class LightingContractTest extends PlanContract {
  @Override
  protected PlanModel model() {
    return LightingModel.MODEL;
  }

  @Override
  protected Set<String> unordered() {
    return Set.of(
        "days",
        "groups",
        "sizes",
        "supplies",
        "outlets",
        "runs",
        "loads",
        "equipment",
        "generators",
        "cableStock",
        "readings");
  }

  @Override
  protected List<Ranges> samples() {
    return List.of(
        LightingSamples.quay(),
        LightingSamples.pans(),
        LightingSamples.stage(),
        LightingSamples.faults(),
        LightingSamples.shortOfFuel(),
        BatterySamples.filled(),
        BatterySamples.filled().set("groups", 1, "on", "no"),
        BatterySamples.tight(),
        BatterySamples.tight().set("days", 1, "coldest", -6),
        BatterySamples.channels(),
        BatterySamples.tubes().set("batteryLoads", 1, "item", "panel"),
        BatterySamples.tubes().set("batteryChargers", 1, "charger", "case"),
        LightingSamples.quay().set("project", 1, "units", "US (figures are ft, °F, US gal)"));
  }

  @Override
  protected List<Object> values(InputColumn column) {
    return LightingSamples.values(column);
  }
}
