package org.setpower.plan.lighting.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.input.SupplyType;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.Peak;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** Judges sources and distros. */
public final class SupplyJudge {
  private static final double ROUNDING = 1e-9;
  private static final double RCD_BREAKER = 32;
  private static final double RCD_MILLIAMPS = 30;

  private final Network network;
  private final Flows flows;
  private final OutletJudge outlets;
  private final Set<String> generators;
  private final Map<Node, Set<String>> uncounted = new HashMap<>();

  /**
   * @param generators names that the table Generator has
   */
  public SupplyJudge(Network network, Flows flows, OutletJudge outlets, Set<String> generators) {
    this.network = network;
    this.flows = flows;
    this.outlets = outlets;
    this.generators = generators;
    for (PlannedLoad load : flows.loads()) {
      for (PlannedLoad.Part part : load.isMissing() ? load.parts() : List.<PlannedLoad.Part>of()) {
        String item = load.row().value().item();
        for (Node n : part.node().path()) {
          uncounted
              .computeIfAbsent(n, k -> new TreeSet<>())
              .add(item == null ? part.node().name() : item);
        }
      }
    }
  }

  /** Loads on a place whose current is not known. */
  public List<Finding> uncounted(Node node) {
    // what no source feeds is a stop already
    Set<String> items = node.isFed() ? uncounted.getOrDefault(node, Set.of()) : Set.<String>of();
    return items.isEmpty()
        ? List.of()
        : List.of(Finding.of(LightingFinding.NOT_COUNTED, String.join(", ", items)));
  }

  /** What is wrong with a row of Sources & distro. */
  public List<Finding> judge(InputRow<Supply> row) {
    Node node = network.supplies().get(row.number());
    Supply typed = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    network.supplyFindings(row.number()).stream().distinct().forEach(findings::add);
    findings.addAll(uncounted(node));
    if (!node.isFed()) {
      if (node.parent() != null) {
        findings.add(Finding.of(LightingFinding.NO_SUPPLY, node.parent().name()));
      }
      return findings;
    }
    if (node.parent() != null && node.parent().isUnclear()) {
      findings.addAll(Network.trust(node.parent()));
    }
    over(node, findings);
    outlets.fullLevel(node, findings);
    outlets
        .plugs()
        .finding(outlets.plugs().at(node) > 1 ? List.of(node) : List.of())
        .ifPresent(findings::add);
    if (typed.rcd() != null) {
      outlets.rcds(List.of(node), findings);
    }
    if (node.parent() == null && outlets.isUsed(node)) {
      source(row, findings);
    }
    return findings;
  }

  private void over(Node node, List<Finding> findings) {
    Peak peak = flows.peak(node);
    if (peak.amps() > node.breaker() * (1 + ROUNDING)) {
      findings.add(
          Finding.of(
              LightingFinding.SUPPLY_OVER,
              LegWord.text(1 << peak.leg()),
              peak.amps(),
              Timeline.text(peak.quarter()),
              node.breaker()));
    }
  }

  private void source(InputRow<Supply> row, List<Finding> findings) {
    Supply typed = row.value();
    boolean generator = typed.type() == SupplyType.GENERATOR;
    double volts = typed.volts() == null ? 0 : typed.volts();
    if (typed.system() != null && typed.system().isToNeutral(volts, network.isUs())) {
      double between = typed.system().usualVolts(network.isUs());
      findings.add(Finding.of(LightingFinding.VOLTS_TO_NEUTRAL, volts, between));
    }
    if (typed.breaker() == null && !row.unreadable().contains("breaker")) {
      findings.add(Finding.of(LightingFinding.MAIN_BREAKER_BLANK));
    }
    if (typed.zs() == null
        && !generator
        && !network.isAmerican(network.supplies().get(row.number()))
        && !row.unreadable().contains("zs")) {
      findings.add(Finding.of(LightingFinding.ZS_OPEN));
    }
    if (generator && !generators.contains(Identity.of(typed.name()))) {
      findings.add(Finding.of(LightingFinding.GENERATOR_MISSING));
    }
    boolean socket = typed.type() == SupplyType.SOCKET_OUTLET;
    if (socket && typed.breaker() != null && typed.breaker() <= RCD_BREAKER) {
      if (typed.rcd() == null) {
        findings.add(Finding.of(LightingFinding.RCD_OPEN));
      } else if (typed.rcd() > RCD_MILLIAMPS) {
        findings.add(Finding.of(LightingFinding.RCD_NONE, typed.breaker()));
      }
    }
  }
}
