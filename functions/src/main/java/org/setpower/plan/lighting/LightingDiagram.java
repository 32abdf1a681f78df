package org.setpower.plan.lighting;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.diagram.DiagramLoad;
import org.setpower.plan.lighting.diagram.DiagramNode;
import org.setpower.plan.lighting.diagram.DiagramPlan;
import org.setpower.plan.lighting.generator.GeneratorJudge;
import org.setpower.plan.lighting.input.InrushClass;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LoadTables.Equipment;
import org.setpower.plan.lighting.input.NeutralBond;
import org.setpower.plan.lighting.input.SupplySystem;
import org.setpower.plan.lighting.input.SupplyTables.OutletGroup;
import org.setpower.plan.lighting.input.SupplyTables.Supply;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.Peak;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.load.UsedLegs;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.plan.lighting.protection.RunJudge;

/** Picks out of a calculated plan what its single-line diagram shows. */
final class LightingDiagram {
  private static final Set<String> LIGHTING = Set.of("lighting", "light", "electric", "electrical");

  private final LightingCalculation plan;
  private final Network network;
  private final Flows flows;
  private final UsedLegs usedLegs;
  private final List<Finding> common;
  private final Map<Node, List<DiagramLoad>> loads = new HashMap<>();
  private final List<DiagramLoad> loose = new ArrayList<>();
  private final Set<Node> drawn = new HashSet<>();

  /** Findings of rows of Outlets that no place has shown yet. */
  private final Map<Integer, List<Finding>> ofGroups = new HashMap<>();

  private final Map<Integer, String> shownAt = new HashMap<>();

  private LightingDiagram(LightingCalculation plan) {
    this.plan = plan;
    network = plan.network();
    flows = plan.flows();
    usedLegs = plan.usedLegs();
    common = plan.settings().stops();
    plan.loadGate().all().forEach(this::load);
    plan.outlets().all().forEach(o -> ofGroups.put(o.row(), stops(o.findings())));
  }

  static DiagramPlan of(LightingCalculation plan) {
    return new LightingDiagram(plan).plan();
  }

  private DiagramPlan plan() {
    Stream<Node> fed = network.nodes().stream().filter(n -> n.parent() == null);
    Stream<Node> tops =
        Stream.concat(network.supplies().values().stream(), network.runs().values().stream())
            .filter(n -> !n.isFed() && n.parent() == null);
    List<DiagramNode> roots =
        new ArrayList<>(Stream.concat(fed, tops).filter(drawn::add).map(this::node).toList());
    plan.outlets().all().stream()
        .filter(o -> network.ofGroup(o.row()).isEmpty())
        .forEach(this::looseOutlets);
    boolean singles =
        plan.runStates().values().stream().anyMatch(s -> s.cable().cores().isSingle());
    return new DiagramPlan(
        plan.settings().units(),
        plan.settings().dayShown(),
        common,
        roots,
        loose,
        counts(
            Stream.concat(plan.supplies().all().stream(), plan.outlets().all().stream()).toList()),
        counts(plan.runs().all()),
        counts(plan.loadGate().all()),
        singles);
  }

  private static Map<Verdict, Integer> counts(List<? extends Gate.Judged<?>> rows) {
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    rows.forEach(r -> counts.merge(r.verdict(), 1, Integer::sum));
    return counts;
  }

  /** What holds for all rows stands once, not at each of them. */
  private List<Finding> stops(List<Finding> findings) {
    return findings.stream()
        .filter(f -> f.severity().compareTo(Severity.STOP) >= 0 && !common.contains(f))
        .toList();
  }

  private void load(Gate.Judged<InputRow<org.setpower.plan.lighting.input.LoadTables.Load>> row) {
    PlannedLoad load = plan.loads().get(row.row());
    List<Finding> all = stops(row.findings());
    String see =
        all.stream()
            .filter(f -> f.key() == LightingFinding.LOAD_UPSTREAM)
            .map(f -> LightingCalculation.name(f.arguments().get(0)))
            .findFirst()
            .orElse("");
    List<Finding> stops =
        all.stream().filter(f -> f.key() != LightingFinding.LOAD_UPSTREAM).toList();
    Map<Node, Double> pieces = new LinkedHashMap<>();
    load.parts().forEach(p -> pieces.merge(p.node(), p.quantity(), Double::sum));
    pieces.forEach(
        (node, quantity) -> {
          List<DiagramLoad> there = loads.computeIfAbsent(node, k -> new ArrayList<>());
          boolean first = node == load.parts().get(0).node();
          there.add(load(row, load, quantity, first ? stops : List.of(), see));
        });
    if (load.parts().isEmpty()) {
      loose.add(load(row, load, load.quantity(), stops, see));
    }
  }

  /**
   * What another department than the electricians' brings, or what charges batteries, has
   * electronics as an LED has, and is no lamp; tungsten always is one.
   */
  private boolean isLamp(org.setpower.plan.lighting.input.LoadTables.Load typed, Equipment device) {
    if (device != null && device.inrush() == InrushClass.TUNGSTEN) {
      return true;
    }
    boolean charges =
        plan.inputs()
            .batteryChargers()
            .filled()
            .anyMatch(c -> Identity.of(c.value().charger()).equals(Identity.of(typed.item())));
    return !charges
        && (typed.department() == null
            || LIGHTING.contains(typed.department().strip().toLowerCase(Locale.ROOT)));
  }

  private DiagramLoad load(
      Gate.Judged<InputRow<org.setpower.plan.lighting.input.LoadTables.Load>> row,
      PlannedLoad load,
      double quantity,
      List<Finding> stops,
      String see) {
    Equipment device = load.equipment();
    return new DiagramLoad(
        "loads",
        row.row(),
        row.item().value().item(),
        quantity,
        device == null ? null : device.inrush(),
        isLamp(row.item().value(), device),
        load.spans().isEmpty(),
        row.verdict(),
        stops,
        see);
  }

  private void looseOutlets(Gate.Judged<InputRow<OutletGroup>> row) {
    OutletGroup typed = row.item().value();
    String name = typed.distro() + "-" + (typed.numbers() == null ? "?" : typed.numbers());
    loose.add(
        new DiagramLoad(
            "outlets",
            row.row(),
            typed.distro() == null ? null : name,
            Double.NaN,
            null,
            false,
            false,
            row.verdict(),
            ofGroups.remove(row.row()),
            ""));
  }

  private DiagramNode node(Node node) {
    List<Finding> stops = stops(node);
    String see = see(node, stops);
    String upstream =
        node.kind() == Node.Kind.RUN && stops.isEmpty() ? plan.stopUpstream(node.parent()) : null;
    List<DiagramNode> children = new ArrayList<>();
    List<String> idle = new ArrayList<>();
    Set<Integer> idleRows = new HashSet<>();
    // the circuits of a connector in which a multi-circuit cable is plugged are those of its end
    boolean plugged =
        node.kind() == Node.Kind.OUTLET
            && node.children().stream().anyMatch(c -> c.kind() == Node.Kind.RUN);
    for (Node child : node.children()) {
      if (plugged && child.kind() == Node.Kind.CIRCUIT && isIdle(child)) {
        continue;
      }
      if (isIdle(child)) {
        child.below().stream()
            .filter(n -> n.kind() == Node.Kind.OUTLET || child.kind() == Node.Kind.CIRCUIT)
            .forEach(n -> idle.add(n.name()));
        idleRows.add(child.row());
      } else {
        children.add(node(child));
      }
    }
    // a row of Outlets that has an outlet in use shows its stops there
    children.forEach(c -> idleRows.remove(c.kind() == DiagramNode.Kind.RUN ? -1 : c.row()));
    List<Finding> idleStops = new ArrayList<>();
    idleRows.forEach(r -> idleStops.addAll(take(r)));
    return new DiagramNode(
        DiagramNode.Kind.valueOf(node.kind().name()),
        node.row(),
        node.name(),
        verdict(node),
        stops,
        new DiagramNode.Guard(
            node.breaker(), node.curve(), node.rcd().milliamps(), node.rcd().type()),
        usedLegs.of(node),
        node.isFed() ? flows.shown(node).amps() : Double.NaN,
        node.kind() == Node.Kind.SUPPLY ? supply(node) : null,
        node.kind() == Node.Kind.RUN ? cable(node) : null,
        loads.getOrDefault(node, List.of()),
        children,
        idle,
        idleStops,
        see,
        upstream == null ? "" : upstream);
  }

  /** Where the stops of its row stand, when they do not stand at this outlet. */
  private String see(Node node, List<Finding> stops) {
    boolean outlet = node.kind() != Node.Kind.SUPPLY && node.kind() != Node.Kind.RUN;
    if (outlet && stops.stream().anyMatch(f -> isOfAll(f, node))) {
      shownAt.putIfAbsent(node.row(), node.name());
    }
    return outlet && stops.isEmpty() ? shownAt.getOrDefault(node.row(), "") : "";
  }

  private List<Finding> take(int outlets) {
    List<Finding> stops = ofGroups.remove(outlets);
    return stops == null ? List.of() : stops;
  }

  /** Whether it is an outlet, or several on a breaker, on which nothing hangs. */
  private boolean isIdle(Node node) {
    return node.kind() != Node.Kind.SUPPLY
        && node.kind() != Node.Kind.RUN
        && node.below().stream().allMatch(n -> n.kind() != Node.Kind.RUN && !loads.containsKey(n));
  }

  private Gate.Judged<?> judged(Node node) {
    return switch (node.kind()) {
      case SUPPLY -> plan.supplies().row(node.row());
      case RUN -> plan.runs().row(node.row());
      default -> plan.outlets().row(node.row());
    };
  }

  /** A stop of a row of Outlets stands at the outlet it names, else at the first in use. */
  private List<Finding> stops(Node node) {
    if (node.kind() == Node.Kind.SUPPLY || node.kind() == Node.Kind.RUN) {
      return stops(judged(node).findings());
    }
    List<Finding> left = ofGroups.getOrDefault(node.row(), List.of());
    List<Finding> here = left.stream().filter(f -> !isOfOther(f, node)).toList();
    ofGroups.put(node.row(), left.stream().filter(f -> !here.contains(f)).toList());
    return here;
  }

  /** Whether a finding of a row of Outlets names other outlets of it that are drawn, not this. */
  private boolean isOfOther(Finding finding, Node node) {
    if (finding.arguments().isEmpty()) {
      return false;
    }
    List<String> named = List.of(String.valueOf(finding.arguments().get(0)).split(", "));
    return !named.contains(node.name())
        && network.ofGroup(node.row()).stream()
            .filter(n -> n != node && !isIdle(n) && n.kind() == node.kind())
            .anyMatch(n -> named.contains(n.name()));
  }

  private static boolean isOfAll(Finding finding, Node node) {
    return finding.arguments().isEmpty() || !node.name().equals(finding.arguments().get(0));
  }

  /** The verdict of its row; of an outlet, without what names another of them. */
  private Verdict verdict(Node node) {
    Gate.Judged<?> judged = judged(node);
    boolean row = node.kind() == Node.Kind.SUPPLY || node.kind() == Node.Kind.RUN;
    return row
        ? judged.verdict()
        : Finding.verdict(judged.findings().stream().filter(f -> !isOfOther(f, node)).toList());
  }

  private DiagramNode.Supply supply(Node node) {
    Supply typed = network.supply(node);
    Peak peak = node.isFed() ? flows.shown(node) : null;
    boolean flowing = peak != null && peak.amps() > 0;
    List<Double> amps = new ArrayList<>();
    for (int leg = 0; leg < 3; leg++) {
      boolean there = peak != null && (node.legs() >> leg & 1) == 1;
      amps.add(there ? flows.shown(node, leg) : Double.NaN);
    }
    LocalDate on = flowing ? plan.timeline().date(peak.quarter()) : null;
    return new DiagramNode.Supply(
        typed.type(),
        typed.location(),
        typed.system(),
        node.parent() == null && node.isFed() ? volts(typed) : Double.NaN,
        kva(node),
        bond(node),
        amps,
        peak != null && node.hasNeutral() ? flows.shownNeutral(node) : Double.NaN,
        on,
        flowing ? Timeline.text(peak.quarter()) : "");
  }

  private double kva(Node node) {
    return plan.generatorStates().values().stream()
        .filter(s -> s.node() == node && s.size() != null)
        .mapToDouble(GeneratorJudge.State::size)
        .min()
        .orElse(Double.NaN);
  }

  /** Where the rows of a generator say that its neutral is bonded; null where they differ. */
  private NeutralBond bond(Node node) {
    Set<NeutralBond> bonds =
        plan.generators().all().stream()
            .filter(g -> plan.generatorStates().get(g.row()).node() == node)
            .map(g -> g.item().value().bond())
            .filter(Objects::nonNull)
            .collect(Collectors.toSet());
    return bonds.size() == 1 ? bonds.iterator().next() : null;
  }

  private double volts(Supply typed) {
    SupplySystem system = typed.system();
    if (typed.volts() != null) {
      return typed.volts();
    }
    return system == null ? Double.NaN : system.usualVolts(network.isUs());
  }

  private DiagramNode.Cable cable(Node node) {
    RunJudge.State state = plan.runStates().get(node.row());
    Double length = state.cable().typed().length();
    boolean known = node.isFed() && state.cable().size() != null && length != null;
    return new DiagramNode.Cable(
        state.cable().typed().type(),
        state.cable().cores(),
        state.cable().size(),
        state.cable().parallel(),
        length == null ? Double.NaN : length,
        known ? flows.shownDrop(node).own() : Double.NaN,
        node.isFed() ? flows.shownDropShare(node, node.legs()) : Double.NaN);
  }
}
