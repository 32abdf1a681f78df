package org.setpower.plan.lighting.protection;

import java.util.List;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.Connection;
import org.setpower.plan.lighting.input.InrushClass;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** Judges the voltage that loads get. */
public final class LoadJudge {
  private final Network network;
  private final Flows flows;

  public LoadJudge(Network network, Flows flows) {
    this.network = network;
    this.flows = flows;
  }

  /** The lowest voltage of its places; NaN where it is not counted. */
  public double volts(PlannedLoad load) {
    if (!load.isCounted()) {
      return Double.NaN;
    }
    return load.parts().stream()
        .mapToDouble(p -> nominal(load, p.node()) * (1 - flows.dropShare(p.node(), p.legs())))
        .min()
        .orElse(Double.NaN);
  }

  private double nominal(PlannedLoad load, Node node) {
    return load.connection() == Connection.LINE_NEUTRAL
        ? network.legVolts(node.root())
        : network.lineVolts(node.root());
  }

  /** Adds what is wrong with the voltage. */
  public void judge(PlannedLoad load) {
    double volts = volts(load);
    if (Double.isNaN(volts)) {
      return;
    }
    List<Finding> findings = load.findings();
    Double min = load.equipment().minVolts();
    Double max = load.equipment().maxVolts();
    if (min != null && volts < min) {
      InrushClass inrush = load.equipment().inrush();
      boolean dims = inrush == InrushClass.NONE || inrush == InrushClass.TUNGSTEN;
      findings.add(
          Finding.of(
              dims ? LightingFinding.UNDERVOLTAGE_DIM : LightingFinding.UNDERVOLTAGE, volts, min));
    }
    double nominal = nominal(load, load.parts().get(0).node());
    if (max != null && nominal > max) {
      findings.add(Finding.of(LightingFinding.OVERVOLTAGE, nominal, max));
    }
  }
}
