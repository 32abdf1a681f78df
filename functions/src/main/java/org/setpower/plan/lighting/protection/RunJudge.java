package org.setpower.plan.lighting.protection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.cable.CableSize;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.Connection;
import org.setpower.plan.lighting.input.Connector;
import org.setpower.plan.lighting.input.CoreSet;
import org.setpower.plan.lighting.input.LegWord;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.Peak;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/** Judges cable runs: rating, overload, neutral, earth fault, voltage. */
public final class RunJudge {
  private static final int LINE_LINE_LEGS = 3;

  private final Network network;
  private final LightingSettings settings;
  private final Flows flows;
  private final Timeline timeline;
  private final Plugs plugs;
  private final Map<Integer, RunCable> cables;
  private final FaultCheck faults;
  private final Map<Integer, List<PlannedLoad.Part>> parts = new HashMap<>();
  private final Map<Integer, Double> air = new HashMap<>();
  private final Map<Integer, Boolean> neutralUsed = new HashMap<>();

  /**
   * What is known of a run.
   *
   * @param rating as laid, A
   * @param breaker upstream, A; infinite where there is none
   * @param protects whether that breaker protects the cable; null where it is not known
   * @param amps peak of the leg that carries most
   * @param neutral peak of the neutral, A
   * @param dropShare from the source, with constant power
   * @param endVolts at its end, leg to neutral, or line to line of a pair
   * @param minSize smallest size that is rated and keeps the drop; null where none does
   * @param maxMetres longest run of this size; NaN where nothing flows
   * @param loopOhms NaN where it is not known
   */
  public record State(
      RunCable cable,
      RunRating rating,
      double air,
      double breaker,
      Boolean protects,
      Peak amps,
      double neutral,
      double dropShare,
      double endVolts,
      CableSize minSize,
      double maxMetres,
      Disconnection disconnection,
      double loopOhms,
      List<Finding> findings) {}

  public RunJudge(
      Network network,
      LightingSettings settings,
      Flows flows,
      Timeline timeline,
      Plugs plugs,
      Map<Integer, RunCable> cables,
      Map<Integer, Double> generatorKva) {
    this.network = network;
    this.settings = settings;
    this.flows = flows;
    this.timeline = timeline;
    this.plugs = plugs;
    this.cables = cables;
    faults = new FaultCheck(network, cables, generatorKva);
    for (PlannedLoad load : flows.loads()) {
      double warmest =
          load.spans().stream()
              .mapToDouble(Timeline.Span::warmest)
              .max()
              .orElse(Double.NEGATIVE_INFINITY);
      boolean toNeutral = load.connection() == Connection.LINE_NEUTRAL;
      for (PlannedLoad.Part part : load.parts()) {
        for (Node n : part.node().path()) {
          if (n.kind() == Node.Kind.RUN) {
            parts.computeIfAbsent(n.row(), k -> new ArrayList<>()).add(part);
            air.merge(n.row(), warmest, Math::max);
            neutralUsed.merge(n.row(), toNeutral, Boolean::logicalOr);
          }
        }
      }
    }
  }

  /** Judges the run of a row. */
  public State judge(int row) {
    RunCable cable = cables.get(row);
    Node node = cable.node();
    List<Finding> findings = new ArrayList<>(network.runFindings(row));
    findings.addAll(cable.findings());
    double air = air(cable);
    boolean fed = node.isFed();
    boolean split = fed && !network.isThreePhase(node.root());
    RunRating rating = RunRating.of(cable, settings, flows, air, split, findings);
    if (!fed) {
      return new State(
          cable,
          rating,
          air,
          Double.NaN,
          null,
          null,
          Double.NaN,
          Double.NaN,
          Double.NaN,
          null,
          Double.NaN,
          Disconnection.UNKNOWN,
          Double.NaN,
          findings);
    }
    Boolean protects =
        OverloadCheck.check(cable, rating, isOneOutlet(node), downstream(node), air, findings);
    connector(cable, findings);
    plugs.finding(plugs.at(node) > 1 ? List.of(node) : List.of()).ifPresent(findings::add);
    Peak peak = flows.peak(node);
    double neutral = flows.neutral(node).amps();
    if (cable.typed().type() != CableType.MULTI_CIRCUIT) {
      OverloadCheck.flow(peak.amps(), peak.quarter(), rating, LightingFinding.RUN_OVER, findings);
      neutral(cable, rating, neutral, findings);
      cores(cable, findings);
    }
    FaultCheck.Answer fault = faults.check(node, findings);
    double share = flows.dropShare(node, node.legs());
    if (Flows.isCollapse(share)) {
      findings.add(Finding.of(LightingFinding.CANNOT_CARRY));
    } else if (share > settings.maxDrop() * (1 + 1e-9)) {
      findings.add(
          Finding.of(
              LightingFinding.DROP_OVER, share, settings.maxDrop(), Network.shown(most(node))));
    }
    return new State(
        cable,
        rating,
        air,
        OverloadCheck.breaker(node),
        protects,
        peak,
        neutral,
        share,
        volts(node) * (1 - share),
        minSize(cable, rating, air),
        maxMetres(cable, share),
        fault.disconnection(),
        fault.ohms(),
        findings);
  }

  /** The connector on the cable at its outlet: breaker, pins, adaptor. */
  private void connector(RunCable cable, List<Finding> findings) {
    Node from = cable.node().parent();
    Connector own = cable.typed().connector();
    double breaker = Network.protectedPlace(from).protectingBreaker();
    if (own != null && breaker > own.largestBreaker() && !Double.isInfinite(breaker)) {
      findings.add(Finding.of(LightingFinding.CONNECTOR_SMALL, breaker, own.word(), own.amps()));
    }
    Connector outlet = network.connector(from);
    if (outlet == null || !outlet.isPlug() || cable.typed().type() == CableType.MULTI_CIRCUIT) {
      return;
    }
    if (own == null && !cable.cores().isSingle() && cable.cores().count() > outlet.pins()) {
      findings.add(Finding.of(LightingFinding.PINS_FEWER, cable.cores().word(), outlet.word()));
    } else if (own != null && own.isPlug() && own.pins() > outlet.pins()) {
      findings.add(
          Finding.of(
              LightingFinding.ADAPTOR_LEGS,
              outlet.word(),
              own.word(),
              LegWord.text(cable.node().legs())));
    }
  }

  /** The run between the source and the end of a run over which most is lost. */
  private Node most(Node end) {
    Node most = end;
    double lost = 0;
    for (Node n : end.path()) {
      if (n.kind() == Node.Kind.RUN && n.parent() != null) {
        double own = flows.dropShare(n, end.legs()) - flows.dropShare(n.parent(), end.legs());
        most = own > lost ? n : most;
        lost = Math.max(own, lost);
      }
    }
    return most;
  }

  private double volts(Node node) {
    boolean pair = Integer.bitCount(node.legs()) == 2 && !node.hasNeutral();
    return pair ? network.lineVolts(node.root()) : network.legVolts(node.root());
  }

  private double air(RunCable cable) {
    if (cable.typed().air() != null) {
      return settings.units().toCelsius(cable.typed().air());
    }
    double inUse = air.getOrDefault(cable.node().row(), Double.NEGATIVE_INFINITY);
    return Double.isInfinite(inUse) ? timeline.warmest() : inUse;
  }

  /** Whether it feeds a distro or one load; a cord with several outlets is not one. */
  private boolean isOneOutlet(Node node) {
    if (!node.children().isEmpty()) {
      return node.children().stream().allMatch(c -> c.kind() == Node.Kind.SUPPLY);
    }
    List<PlannedLoad.Part> own = parts.getOrDefault(node.row(), List.of());
    return own.size() <= 1 && own.stream().allMatch(p -> p.quantity() <= 1);
  }

  private static double downstream(Node node) {
    boolean distro =
        node.children().size() == 1 && node.children().get(0).kind() == Node.Kind.SUPPLY;
    return distro ? node.children().get(0).breaker() : Double.NaN;
  }

  private void neutral(RunCable cable, RunRating rating, double neutral, List<Finding> findings) {
    int neutrals = Math.max(1, cable.cores().neutrals());
    RunRating of =
        new RunRating(
            rating.amps() * neutrals,
            rating.unheated() * neutrals,
            rating.source(),
            rating.rule(),
            rating.circuits());
    OverloadCheck.flow(
        neutral, flows.neutral(cable.node()).quarter(), of, LightingFinding.NEUTRAL_OVER, findings);
  }

  /** Legs that are used, neutral and earth must all have a conductor. */
  private void cores(RunCable cable, List<Finding> findings) {
    Node node = cable.node();
    boolean feedsOn = !node.children().isEmpty();
    int used = 0;
    for (PlannedLoad.Part part : parts.getOrDefault(node.row(), List.of())) {
      used |= part.legs();
    }
    int legs = Integer.bitCount(feedsOn || used == 0 ? node.legs() : used);
    boolean toNeutral =
        node.hasNeutral() && (feedsOn || neutralUsed.getOrDefault(node.row(), true));
    int needed = legs + (toNeutral ? 1 : 0) + 1;
    CoreSet cores = cable.cores();
    int marked = RunCable.marked(cable.typed().size(), cable.typed().type());
    boolean few = marked > 0 && !cores.isSingle() && marked < needed;
    if (few || cores.count() < needed || cores.isSingle() && cores.legs() < legs) {
      String names = legs == 1 ? "1 leg" : legs + " legs";
      findings.add(
          Finding.of(
              LightingFinding.CORES_MISSING,
              names + (toNeutral ? ", neutral" : "") + ", earth",
              few ? "" + marked : cores.word()));
    } else {
      pins(cable, findings);
    }
  }

  /** A connector of more pins than there are cores leaves legs or neutral without one. */
  private void pins(RunCable cable, List<Finding> findings) {
    Connector connector = network.connector(cable.node());
    boolean plug = connector != null && connector.isPlug();
    if (plug && !cable.cores().isSingle() && cable.cores().count() < connector.pins()) {
      findings.add(Finding.of(LightingFinding.PINS_MORE, connector.word(), cable.cores().word()));
    }
  }

  private CableSize minSize(RunCable cable, RunRating rating, double air) {
    Node node = cable.node();
    double breaker = OverloadCheck.breaker(node);
    if (cable.size() == null
        || cable.laid() == null
        || Double.isInfinite(breaker)
        || Double.isNaN(rating.amps())
        || cable.typed().makersRating() != null) {
      return null;
    }
    int loaded = loaded(cable, rating);
    double factor = rating.amps() / rating.of(cable.size(), cable, air, loaded);
    double before = flows.dropShare(node.parent(), node.legs());
    double own = flows.dropShare(node, node.legs()) - before;
    double now = cable.impedance().ohms();
    for (CableSize size : CableSize.series(cable.size().family())) {
      double amps = rating.of(size, cable, air, loaded) * factor;
      boolean rated =
          OverloadCheck.allowed(amps, rating.rule(), isOneOutlet(node)) >= breaker * (1 - 1e-9);
      if (rated && org.setpower.cable.Conductor.isKnown(size)) {
        RunCable other =
            new RunCable(
                node,
                cable.typed(),
                size,
                cable.cores(),
                cable.laid(),
                cable.metres(),
                cable.parallel(),
                List.of());
        double drop = now > 0 ? own * other.impedance().ohms() / now : 0;
        if (before + drop <= settings.maxDrop() * (1 + 1e-9)) {
          return size;
        }
      }
    }
    return null;
  }

  private int loaded(RunCable cable, RunRating rating) {
    if (cable.typed().type() == CableType.MULTI_CIRCUIT) {
      return 2 * rating.circuits();
    }
    return Integer.bitCount(cable.node().legs()) == LINE_LINE_LEGS ? LINE_LINE_LEGS : 2;
  }

  /** Length at which the drop from the source reaches its limit. */
  private double maxMetres(RunCable cable, double share) {
    double before = flows.dropShare(cable.node().parent(), cable.node().legs());
    double perMetre = (share - before) / cable.metres();
    return perMetre > 0 ? Math.max(0, (settings.maxDrop() - before) / perMetre) : Double.NaN;
  }
}
