package org.setpower.plan.lighting;

import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;

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
        LightingAmericanTest.portable(),
        LightingSamples.faults(),
        LightingSamples.shortOfFuel(),
        BatterySamples.filled(),
        BatterySamples.filled().set("groups", 1, "on", "no"),
        BatterySamples.tight(),
        BatterySamples.tight().set("days", 1, "coldest", -6),
        BatterySamples.channels(),
        BatterySamples.frost(),
        BatterySamples.frost().set("loads", 2, "toDay", day("2027-02-01")),
        LightingSamples.quay()
            .set("supplies", 1, "volts", 230)
            .set("equipment", 1, "watts", 4)
            .set("outlets", 1, "legs", "all")
            .set("loads", 1, "fromDay", day("2026-02-01"))
            .row("runs", "to", "tail", "from", "A-3", "size", "5G2.5", "type", "rubber"),
        LightingSamples.feeder("30").set("outlets", 2, "rcd", "30"),
        BatterySamples.tubes().set("batteryLoads", 1, "item", "panel"),
        BatterySamples.tubes().set("batteryChargers", 1, "charger", "case"),
        LightingSamples.quay()
            .set("loads", 1, "quantity", 2)
            .set("equipment", 1, "leakage", 4.6), // more than 30 % of 30 mA
        LightingSamples.quay().set("loads", 1, "quantity", 7).set("equipment", 1, "leakage", 5),
        LightingSafetyTest.dimmed(0.125),
        LightingSafetyTest.smallPlug(),
        LightingSafetyTest.smallPlug().set("equipment", 1, "plug", ""),
        LightingSamples.stage().set("outlets", 4, "rcd", "30"),
        LightingSamples.stage().set("outlets", 4, "rcd", "none"),
        LightingSamples.quay().set("project", 1, "units", "US (figures are ft, °F, US gal)"),
        LightingSamples.quay().set("loads", 1, "from", clock(1, 0), "to", clock(4, 0)),
        LightingSamples.quay().set("loads", 1, "from", clock(21, 0), "to", clock(23, 0)),
        LightingSamples.quay()
            .set("runs", 1, "size", "3G16", "cores", "5")
            .set("equipment", 1, "plug", "IEC 60309 32 A 3-pin"),
        LightingSamples.quay().set("runs", 1, "size", "H05VV-F 5G16"),
        LightingSamples.quay().set("outlets", 1, "connector", "NEMA 5-20"),
        LightingSamples.quay()
            .row(
                "runs",
                "to",
                "tail",
                "from",
                "A-3",
                "length",
                5,
                "size",
                "3G2.5",
                "type",
                "rubber",
                "connector",
                "IEC 60309 16 A 5-pin"),
        LightingSafetyTest.onGenerator(20)
            .set("loads", 1, "quantity", 3)
            .set("generators", 1, "offFrom", clock(23, 0), "offTo", clock(23, 30)));
  }

  @Override
  protected List<Object> values(InputColumn column) {
    return LightingSamples.values(column);
  }
}
