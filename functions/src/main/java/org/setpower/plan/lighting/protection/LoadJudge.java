package org.setpower.plan.lighting.protection;

import java.util.List;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.Connection;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.InrushClass;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** Judges the voltage that loads get, and their plugs. */
public final class LoadJudge {
  private static final int LINE_LINE = 2;

  /** Household plugs: behind a larger breaker the lead of a small lamp burns first. */
  private static final double SMALL_PLUG = 16;

  private static final double SMALL_PLUG_US = 20;

  private final Network network;
  private final boolean american;
  private final Flows flows;

  public LoadJudge(Network network, LightingSettings settings, Flows flows) {
    this.network = network;
    american = settings.isAmerican();
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

  /** The same, of the day shown. */
  public double shownVolts(PlannedLoad load) {
    if (!load.isCounted()) {
      return Double.NaN;
    }
    return load.parts().stream()
        .mapToDouble(p -> nominal(load, p.node()) * (1 - flows.shownDropShare(p.node(), p.legs())))
        .min()
        .orElse(Double.NaN);
  }

  private double nominal(PlannedLoad load, Node node) {
    return load.connection() == Connection.LINE_NEUTRAL
        ? network.legVolts(node.root())
        : network.lineVolts(node.root());
  }

  /** Adds what is wrong with voltage and plug. */
  public void judge(PlannedLoad load) {
    outlet(load);
    rcd(load);
    double volts = volts(load);
    if (Double.isNaN(volts)) {
      return;
    }
    plug(load, volts);
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

  /**
   * A lamp has a plug: it hangs on an outlet, whose breaker and RCD are known (IEC 60364-4-41,
   * 411.3.3). Only a single socket outlet stands for itself.
   */
  private void outlet(PlannedLoad load) {
    for (PlannedLoad.Part part : load.parts()) {
      Node node = part.node();
      if (node.kind() == Node.Kind.SUPPLY
          && network.supply(node).type() != SupplyType.SOCKET_OUTLET) {
        load.findings().add(Finding.of(LightingFinding.LOAD_OUTLET, node.name()));
        return;
      }
    }
  }

  /**
   * The socket of an adaptor behind a large breaker is a socket outlet to 32 A too (IEC 60364-4-41,
   * 411.3.3); one behind a small breaker is judged with its row of Outlets.
   */
  private void rcd(PlannedLoad load) {
    Connector plug = load.equipment() == null ? null : load.equipment().plug();
    double small = american ? SMALL_PLUG_US : SMALL_PLUG;
    String item = load.row().value().item();
    load.parts().stream()
        .filter(p -> plug == null && load.equipment() != null && p.node().isFed() && item != null)
        .mapToDouble(p -> p.node().protectingBreaker())
        .filter(b -> b > small && !Double.isInfinite(b))
        .max()
        .ifPresent(b -> load.findings().add(Finding.of(LightingFinding.PLUG_OPEN, item, b)));
    if (plug == null || !plug.isPlug() || plug.amps() > OutletJudge.RCD_BREAKER) {
      return;
    }
    for (PlannedLoad.Part part : load.parts()) {
      Node node = part.node();
      double breaker = node.isFed() ? node.protectingBreaker() : Double.NaN;
      boolean protectedByRcd =
          node.path().stream()
              .anyMatch(n -> n.rcd().isThere() && n.rcd().milliamps() <= OutletJudge.RCD_MILLIAMPS);
      if (breaker > OutletJudge.RCD_BREAKER && !protectedByRcd) {
        load.findings()
            .add(
                american
                    ? Finding.of(LightingFinding.RCD_OPEN)
                    : Finding.of(LightingFinding.LOAD_RCD, plug.word(), breaker));
        return;
      }
    }
  }

  /** A plug that is made for more than its outlet: turned up it may take more than that. */
  private void plug(PlannedLoad load, double volts) {
    Connector plug = load.equipment().plug();
    Connector least = null;
    Node where = null;
    for (PlannedLoad.Part part : load.parts()) {
      Node node = part.node();
      while (plug != null && node != null && node.kind() != Node.Kind.SUPPLY) {
        Connector there = network.connector(node);
        if (there != null && (least == null || there.amps() < least.amps())) {
          least = there;
          where = part.node();
        }
        node = node.parent();
      }
    }
    if (least != null && plug.amps() > least.amps()) {
      int legs = load.connection().legs() == LINE_LINE ? 1 : load.connection().legs();
      double full = load.equipment().watts() / legs / volts / load.powerFactor();
      load.findings()
          .add(
              Finding.of(
                  LightingFinding.PLUG_LARGE,
                  plug.word(),
                  least.word(),
                  full,
                  where.protectingBreaker()));
    }
  }
}
