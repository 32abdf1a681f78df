package org.setpower.plan.lighting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadState;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.SupplyHours;
import org.setpower.plan.lighting.network.Node;

/**
 * What a source gives over all days of the plan, for a budget.
 *
 * @param source its name
 * @param kilowattHours of all loads on it that are counted
 * @param onSite hours of a generator from its first to its last minute of each day, off for sound
 *     or not: somebody stays with it; 0 for other sources
 */
public record SourceUse(String source, double kilowattHours, double onSite) {
  private static final double QUARTER = 0.25;
  private static final double WATTS = 1000;

  /** All sources that are fit. */
  public record All(List<SourceUse> sources) {
    public All {
      sources = List.copyOf(sources);
    }
  }

  static All of(LightingCalculation plan) {
    SupplyHours hours = new SupplyHours(plan.inputs(), plan.network(), plan.timeline());
    List<SourceUse> uses = new ArrayList<>();
    for (Node node : plan.network().supplies().values()) {
      Gate.Judged<InputRow<Supply>> judged = plan.supplies().row(node.row());
      if (node.parent() == null && node.isFed() && judged.fit()) {
        double attended =
            hours.onSite(node).stream().mapToInt(s -> s.to() - s.from()).sum() * QUARTER;
        uses.add(new SourceUse(node.name(), energy(plan.flows(), node), attended));
      }
    }
    return new All(uses);
  }

  private static double energy(Flows flows, Node source) {
    double energy = 0;
    for (LoadState state : flows.states()) {
      double watts =
          IntStream.of(state.on())
              .mapToObj(flows.loads()::get)
              .mapToDouble(l -> watts(l, source))
              .sum();
      energy += watts * state.quarters() * QUARTER / WATTS;
    }
    return energy;
  }

  private static double watts(PlannedLoad load, Node source) {
    return load.parts().stream()
        .filter(p -> p.node().root() == source)
        .mapToDouble(p -> p.quantity() * load.watts())
        .sum();
  }
}
