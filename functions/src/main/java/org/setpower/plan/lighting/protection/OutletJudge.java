package org.setpower.plan.lighting.protection;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.setpower.cable.RatingRule;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.RcdType;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LegCurrents;
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
  static final double RCD_BREAKER = 32;

  static final double RCD_MILLIAMPS = 30;

  /** A GFCI of class A trips at 4 to 6 mA (UL 943, from memory). */
  private static final double GFCI_MILLIAMPS = 6;

  /** IEC 60364-5-53, from memory. */
  private static final double SELECTIVE = 3;

  private static final double LEAKAGE_SHARE = 0.3;

  /** Electronics and motors: 1 mA common practice, 0.5 mA an ampere and 5 mA IEC 61140. */
  private static final double LEAKAGE = 1;

  private static final double LEAKAGE_PER_AMP = 0.5;
  private static final double MOST_LEAKAGE = 5;

  /** Heaters and tungsten: 0.25 mA class II, 0.75 mA a kW, IEC 60335-1 13.2, from memory. */
  private static final double RESISTIVE_LEAKAGE = 0.25;

  private static final double LEAKAGE_PER_WATT = 0.75 / 1000;

  /** NEC 210.20: 3 h or more. */
  private static final int CONTINUOUS = 12;

  private static final double CONTINUOUS_SHARE = 0.8;

  private final Network network;
  private final LightingSettings settings;
  private final Flows flows;
  private final Plugs plugs;
  private final Set<Node> used = new HashSet<>();
  private final double[] leakage;

  /** The same as far as it is typed and not assumed. */
  private final double[] typedLeakage;

  /** Amps of each leg of each node at full level; null where nothing is dimmed. */
  private final double[] full;

  /** By a node with an RCD and by the milliamps of those that trip with it where these are. */
  private final Map<Node, TreeMap<Double, Set<String>>> together = new HashMap<>();

  public OutletJudge(Network network, LightingSettings settings, Flows flows, Plugs plugs) {
    this.network = network;
    this.settings = settings;
    this.flows = flows;
    this.plugs = plugs;
    for (PlannedLoad load : flows.loads()) {
      load.parts().forEach(p -> used.addAll(p.node().path()));
    }
    for (Node run : network.runs().values()) {
      used.addAll(run.path());
    }
    network.nodes().stream()
        .filter(n -> n.rcd().isThere())
        .filter(used::contains)
        .forEach(this::pair);
    full = flows.loads().stream().anyMatch(PlannedLoad::isDimmed) ? atFullLevel() : null;
    List<List<Leak>> leaks = flows.loads().stream().map(this::leaks).toList();
    leakage = most(leaks);
    typedLeakage =
        most(leaks.stream().map(l -> l.stream().filter(Leak::isTyped).toList()).toList());
  }

  /** The most that leaks at a time through the RCD of each node, mA. */
  private double[] most(List<List<Leak>> leaks) {
    double[] most = new double[network.nodes().size()];
    double[] now = new double[most.length];
    for (LoadState state : flows.states()) {
      Arrays.fill(now, 0);
      for (int i : state.on()) {
        for (Leak leak : leaks.get(i)) {
          now[leak.node()] += leak.milliamps();
        }
      }
      for (int n = 0; n < now.length; n++) {
        most[n] = Math.max(most[n], now[n]);
      }
    }
    return most;
  }

  /** The most that flows when all that is on is turned up; angles between loads do not count. */
  private double[] atFullLevel() {
    double[] most = new double[network.nodes().size() * LegCurrents.LEGS];
    double[] now = new double[most.length];
    List<PlannedLoad> loads = flows.loads();
    for (LoadState state : flows.states()) {
      Arrays.fill(now, 0);
      for (int i : state.on()) {
        for (PlannedLoad.Part part : loads.get(i).parts()) {
          double amps = part.amps() * loads.get(i).atFullLevel();
          for (Node n = part.node(); n != null; n = n.parent()) {
            for (int leg = 0; leg < LegCurrents.LEGS; leg++) {
              now[n.index() * LegCurrents.LEGS + leg] += (part.legs() >> leg & 1) * amps;
            }
          }
        }
      }
      Arrays.setAll(most, n -> Math.max(most[n], now[n]));
    }
    return most;
  }

  /** Says that a breaker trips when what is dimmed is turned up. */
  void fullLevel(Node node, List<Finding> findings) {
    double amps = 0;
    for (int leg = 0; full != null && leg < LegCurrents.LEGS; leg++) {
      amps = Math.max(amps, full[node.index() * LegCurrents.LEGS + leg]);
    }
    amps += amps > 0 ? flows.existing(node) : 0;
    if (amps > node.breaker() * (1 + ROUNDING)
        && flows.peak(node).amps() <= node.breaker() * (1 + ROUNDING)) {
      findings.add(Finding.of(LightingFinding.FULL_LEVEL, node.name(), amps, node.breaker()));
    }
  }

  /** What a load leaks through the RCD of a node, by its place in the network. */
  private record Leak(int node, double milliamps, boolean isTyped) {}

  /** An RCD sees what leaks behind it, also through other RCDs. */
  private List<Leak> leaks(PlannedLoad load) {
    List<Leak> leaks = new ArrayList<>();
    for (PlannedLoad.Part part : load.isCounted() ? load.parts() : List.<PlannedLoad.Part>of()) {
      double own = leakage(load, part) * part.quantity();
      for (Node n = part.node(); n != null; n = n.parent()) {
        if (n.rcd().isThere()) {
          leaks.add(new Leak(n.index(), own, load.equipment().leakage() != null));
        }
      }
    }
    return leaks;
  }

  /** Standing leakage of one piece, mA. */
  private double leakage(PlannedLoad load, PlannedLoad.Part part) {
    if (load.equipment().leakage() != null) {
      return load.equipment().leakage();
    }
    double watts = load.equipment().watts();
    double amps = watts / load.powerFactor() / network.legVolts(part.node().root());
    double usual =
        load.isConstantPower()
            ? Math.max(LEAKAGE, LEAKAGE_PER_AMP * amps)
            : Math.max(RESISTIVE_LEAKAGE, LEAKAGE_PER_WATT * watts);
    return Math.min(MOST_LEAKAGE, usual);
  }

  /** Notes an RCD that trips with the next one towards the source. */
  private void pair(Node node) {
    Node upstream = node.parent();
    while (upstream != null && !upstream.rcd().isThere()) {
      upstream = upstream.parent();
    }
    double milliamps = node.rcd().milliamps();
    if (upstream != null
        && (upstream.rcd().milliamps() < SELECTIVE * milliamps
            || upstream.rcd().type() == null
            || !upstream.rcd().type().isDelayed())) {
      boolean supply = node.kind() == Node.Kind.SUPPLY;
      together
          .computeIfAbsent(upstream, k -> new TreeMap<>())
          .computeIfAbsent(milliamps, k -> new TreeSet<>())
          .add(supply ? node.name() : network.outlet(node).distro());
    }
  }

  /** A connector of another voltage, and an RCD that electronics may blind (IEC 60364-5-53). */
  private void volts(Connector connector, List<Node> fed, List<Finding> findings) {
    if (fed.isEmpty()) {
      return;
    }
    double volts = network.legVolts(fed.get(0).root());
    if (connector != null && !connector.isFor(volts)) {
      findings.add(Finding.of(LightingFinding.OUTLET_VOLTS, connector.word(), volts));
    }
    if (fed.stream().anyMatch(n -> n.rcd().isThere() && n.rcd().type() == RcdType.AC)) {
      findings.add(Finding.of(LightingFinding.RCD_AC));
    }
  }

  /** Plugs at one time. */
  Plugs plugs() {
    return plugs;
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
      pins(typed, row, findings);
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
    fed.forEach(n -> fullLevel(n, findings));
    splitters(fed, findings);
    fed.stream()
        .filter(n -> n.kind() != Node.Kind.BREAKER)
        .findFirst()
        .ifPresent(n -> rcd(row, Network.protectedPlace(n), findings));
    rcds(fed.stream().filter(n -> n.rcd().isThere()).toList(), findings);
    volts(typed.connector(), fed, findings);
    if (typed.together() != null) {
      findings.removeIf(f -> f.key() == LightingFinding.RCD_SELECTIVITY);
    }
    return findings;
  }

  /** Who accepts that the RCD of an outlet trips with one behind it; null where none does. */
  public String acceptedBy(Node outlet) {
    return together.containsKey(outlet) ? network.outlet(outlet).together() : null;
  }

  /** A connector burns behind a breaker that is larger than it. */
  private void connector(OutletGroup typed, int row, List<Finding> findings) {
    double breaker =
        network.ofGroup(row).stream()
            .mapToDouble(n -> network.isThrough(row) ? n.protectingBreaker() : n.breaker())
            .filter(b -> !Double.isNaN(b) && !Double.isInfinite(b))
            .max()
            .orElse(0);
    if (breaker > typed.connector().largestBreaker()) {
      findings.add(
          Finding.of(
              LightingFinding.CONNECTOR_SMALL,
              breaker,
              typed.connector().word(),
              typed.connector().amps()));
    }
  }

  /** Three pins hold one leg, or a pair without neutral, never three. */
  private void pins(OutletGroup typed, int row, List<Finding> findings) {
    network.ofGroup(row).stream()
        .filter(
            n -> n.kind() == Node.Kind.OUTLET && n.children().stream().noneMatch(this::isCircuit))
        .map(Node::legs)
        .filter(legs -> !typed.connector().hasPins(Integer.bitCount(legs)))
        .findFirst()
        .ifPresent(
            legs ->
                findings.add(
                    Finding.of(
                        LightingFinding.PINS_LEGS, LegWord.text(legs), typed.connector().word())));
  }

  private boolean isCircuit(Node node) {
    return node.kind() == Node.Kind.CIRCUIT;
  }

  /** Outlets that need a splitter; not where the breaker is too small already. */
  private void splitters(List<Node> nodes, List<Finding> findings) {
    List<Node> split =
        nodes.stream()
            .filter(n -> n.kind() == Node.Kind.OUTLET && plugs.at(n) > 1)
            .filter(n -> !isOver(n))
            .toList();
    plugs.finding(split).ifPresent(findings::add);
  }

  private boolean isOver(Node node) {
    return flows.peak(node).amps() > node.protectingBreaker() * (1 + ROUNDING);
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
    } else if ((settings.rule() == RatingRule.NEC || network.isAmerican(node))
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
      boolean us = settings.isAmerican();
      if (us && (network.isRcdNone(row) || network.isRcdUpstream(row) && chain.isEmpty())) {
        findings.add(Finding.of(LightingFinding.GFCI_NONE, breaker));
      } else if (!said || us) {
        findings.add(Finding.of(LightingFinding.RCD_OPEN));
      } else {
        // IEC 60364-4-41, 411.3.3 asks for 30 mA on outlets to 32 A and on mobile equipment to
        // 32 A outdoors, without an exception for one that feeds a distro with RCDs of its own
        findings.add(Finding.of(LightingFinding.RCD_NONE, breaker));
      }
    }
    Connector connector = network.outlet(outlet).connector();
    double least = chain.stream().mapToDouble(n -> n.rcd().milliamps()).min().orElse(Double.NaN);
    if (connector != null && connector.isNema5() && fine && least > GFCI_MILLIAMPS) {
      findings.add(Finding.of(LightingFinding.GFCI_HIGH, least));
    }
  }

  /** What is wrong with RCDs of one row: each kind of pair once, and the one that leaks most. */
  void rcds(List<Node> nodes, List<Finding> findings) {
    Map<List<Double>, Set<String>> pairs = new LinkedHashMap<>();
    Node most = null;
    for (Node node : nodes) {
      together
          .getOrDefault(node, new TreeMap<>())
          .forEach(
              (milliamps, names) ->
                  pairs
                      .computeIfAbsent(
                          List.of(node.rcd().milliamps(), milliamps), k -> new TreeSet<>())
                      .addAll(names));
      most = most == null || leakage(node) > leakage(most) ? node : most;
    }
    pairs.forEach(
        (milliamps, names) ->
            findings.add(
                Finding.of(
                    LightingFinding.RCD_SELECTIVITY,
                    milliamps.get(0),
                    milliamps.get(1),
                    String.join(", ", names))));
    if (most != null && leakage(most) > LEAKAGE_SHARE * most.rcd().milliamps() * (1 + ROUNDING)) {
      double limit = most.rcd().milliamps() * (1 + ROUNDING);
      boolean trips = leakage(most) > limit;
      boolean known = typedLeakage[most.index()] > limit;
      findings.add(
          Finding.of(
              !trips
                  ? LightingFinding.RCD_LEAKAGE
                  : known ? LightingFinding.RCD_TRIPS : LightingFinding.RCD_MAY_TRIP,
              most.name(),
              leakage(most),
              most.rcd().milliamps()));
    }
  }

  private double leakage(Node node) {
    return leakage[node.index()];
  }
}
