package org.setpower.plan.lighting.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.cable.RatingRule;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.MeasureSystem;
import org.setpower.plan.lighting.input.RcdType;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadState;
import org.setpower.plan.lighting.load.Peak;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** Judges outlets: their breakers, connectors and RCDs. */
public final class OutletJudge {
  private static final double ROUNDING = 1e-9;

  /** IEC 60364-4-41, 411.3.3. */
  private static final double RCD_BREAKER = 32;

  private static final double RCD_MILLIAMPS = 30;

  /** IEC 60364-5-53, from memory. */
  private static final double SELECTIVE = 3;

  private static final double LEAKAGE_SHARE = 0.3;
  private static final double USUAL_LEAKAGE = 1;

  /** NEC 210.20: 3 h or more. */
  private static final int CONTINUOUS = 12;

  private static final double CONTINUOUS_SHARE = 0.8;

  private final Network network;
  private final LightingSettings settings;
  private final Flows flows;
  private final Set<Node> used = new HashSet<>();
  private final Map<Node, Double> leakage = new HashMap<>();

  public OutletJudge(Network network, LightingSettings settings, Flows flows) {
    this.network = network;
    this.settings = settings;
    this.flows = flows;
    for (PlannedLoad load : flows.loads()) {
      load.parts().forEach(p -> used.addAll(p.node().path()));
    }
    for (Node run : network.runs().values()) {
      used.addAll(run.path());
    }
    for (LoadState state : flows.states()) {
      Map<Node, Double> now = new HashMap<>();
      state.active().stream().mapToObj(flows.loads()::get).forEach(l -> leak(l, now));
      now.forEach((node, milliamps) -> leakage.merge(node, milliamps, Math::max));
    }
  }

  private static void leak(PlannedLoad load, Map<Node, Double> now) {
    double own = LightingSettings.or(load.equipment().leakage(), USUAL_LEAKAGE);
    for (PlannedLoad.Part part : load.parts()) {
      for (Node n = part.node(); n != null; n = n.parent()) {
        if (n.rcd().isThere()) {
          now.merge(n, own * part.quantity(), Double::sum);
          break;
        }
      }
    }
  }

  /** Whether a run or a load hangs on a place. */
  public boolean isUsed(Node node) {
    return used.contains(node);
  }

  /** What is wrong with a row of Outlets. */
  public List<Finding> judge(int row, OutletGroup typed) {
    List<Finding> findings = new ArrayList<>(network.outletFindings(row));
    List<Node> nodes = network.ofGroup(row).stream().filter(this::isUsed).toList();
    if (typed.connector() != null) {
      connector(typed, row, findings);
    }
    if (nodes.isEmpty()) {
      return findings;
    }
    if (typed.breaker() == null) {
      findings.add(Finding.of(LightingFinding.BREAKER_BLANK));
    }
    nodes.stream()
        .flatMap(n -> Network.trust(n).stream())
        .distinct()
        .filter(f -> !findings.contains(f))
        .forEach(findings::add);
    List<Node> fed = nodes.stream().filter(Node::isFed).toList();
    fed.forEach(n -> overload(n, findings));
    fed.stream()
        .filter(n -> n.kind() != Node.Kind.BREAKER)
        .findFirst()
        .ifPresent(n -> rcd(row, Network.protectedPlace(n), findings));
    fed.stream().filter(n -> n.rcd().isThere()).forEach(n -> leakage(n, findings));
    return findings;
  }

  /** A connector burns behind a breaker that is larger than it. */
  private void connector(OutletGroup typed, int row, List<Finding> findings) {
    double breaker =
        network.ofGroup(row).stream()
            .mapToDouble(n -> network.isThrough(row) ? n.protectingBreaker() : n.breaker())
            .filter(b -> !Double.isNaN(b) && !Double.isInfinite(b))
            .max()
            .orElse(0);
    if (breaker > typed.connector().amps()) {
      findings.add(
          Finding.of(
              LightingFinding.CONNECTOR_SMALL,
              breaker,
              typed.connector().word(),
              typed.connector().amps()));
    }
  }

  private void overload(Node node, List<Finding> findings) {
    Peak peak = flows.peak(node);
    if (Double.isNaN(node.breaker())) {
      return;
    }
    if (peak.amps() > node.breaker() * (1 + ROUNDING)) {
      findings.add(
          Finding.of(
              LightingFinding.OUTLET_OVER,
              node.name(),
              peak.amps(),
              Timeline.text(peak.quarter()),
              node.breaker()));
    } else if (settings.rule() == RatingRule.NEC
        && peak.lasts() >= CONTINUOUS
        && peak.amps() > CONTINUOUS_SHARE * node.breaker() * (1 + ROUNDING)) {
      findings.add(
          Finding.of(LightingFinding.OUTLET_CONTINUOUS, node.name(), peak.amps(), node.breaker()));
    }
  }

  private void rcd(int row, Node outlet, List<Finding> findings) {
    double breaker = outlet.protectingBreaker();
    List<Node> chain = outlet.path().stream().filter(n -> n.rcd().isThere()).toList();
    // outlets that share a breaker share its RCD
    boolean own =
        !chain.isEmpty() && chain.get(0).kind() != Node.Kind.SUPPLY && chain.get(0).row() == row;
    boolean fine = chain.stream().anyMatch(n -> n.rcd().milliamps() <= RCD_MILLIAMPS);
    if (breaker <= RCD_BREAKER && !fine) {
      boolean said = network.isRcdUpstream(row) || network.isRcdNone(row) || own;
      boolean us = settings.units() == MeasureSystem.US || settings.rule() == RatingRule.NEC;
      if (!said || us) {
        findings.add(Finding.of(LightingFinding.RCD_OPEN));
      } else {
        // IEC 60364-4-41, 411.3.3 asks for 30 mA on outlets to 32 A and on mobile equipment to
        // 32 A outdoors, without an exception for one that feeds a distro with RCDs of its own
        findings.add(Finding.of(LightingFinding.RCD_NONE, breaker));
      }
    }
    if (own && chain.size() > 1) {
      Node.Rcd device = chain.get(0).rcd();
      Node.Rcd upstream = chain.get(1).rcd();
      if (upstream.milliamps() < SELECTIVE * device.milliamps() || upstream.type() != RcdType.S) {
        findings.add(
            Finding.of(LightingFinding.RCD_SELECTIVITY, upstream.milliamps(), device.milliamps()));
      }
    }
  }

  /** Standing leakage that an RCD carries by itself. */
  void leakage(Node node, List<Finding> findings) {
    double milliamps = leakage.getOrDefault(node, 0.0);
    if (milliamps > LEAKAGE_SHARE * node.rcd().milliamps() * (1 + ROUNDING)) {
      findings.add(Finding.of(LightingFinding.RCD_LEAKAGE, milliamps, node.rcd().milliamps()));
    }
  }
}
