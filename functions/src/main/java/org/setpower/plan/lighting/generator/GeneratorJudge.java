package org.setpower.plan.lighting.generator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.setpower.base.EvaluationException;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.InrushClass;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.NeutralBond;
import org.setpower.plan.lighting.input.SupplyTables.Generator;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.LoadState;
import org.setpower.plan.lighting.load.PlannedLoad;
import org.setpower.plan.lighting.load.SupplyHours;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;
import org.setpower.supply.Engine;
import org.setpower.supply.GeneratorRating;

/** Judges generators: each on its own. */
public final class GeneratorJudge {
  /** Common practice: over it the next size is looked at. */
  private static final double HIGH = 0.8;

  /** Wet stacking below this share: maker guidance, trade. */
  private static final double WET = 0.3;

  /** Air behind sound screens where it is not known, K above the day: common practice. */
  private static final double SCREENS = 10;

  private static final double MOTOR_START = 3;
  private static final double ROUNDING = 1e-9;

  private final Network network;
  private final Flows flows;
  private final LightingSettings settings;
  private final Timeline timeline;
  private final SupplyHours hours;
  private final double[] onOffer;
  private final Map<Integer, State> states = new HashMap<>();

  /**
   * What is known of a generator.
   *
   * @param node null where its name is no generator
   * @param air hotter of intake and day, °C
   * @param derate share of the nameplate that is left; NaN where it is not known
   * @param loadKva running, 3 × the leg that carries most
   * @param startKva with the largest start
   * @param requiredKva nameplate with headroom and derating; NaN where it is not known
   * @param size decided, or proposed; null where neither is known
   * @param proposed smallest on offer; null where none is enough
   * @param leftKva after derating
   * @param share running load of what is left
   */
  public record State(
      Node node,
      double air,
      double derate,
      double loadKva,
      double startKva,
      double requiredKva,
      Double size,
      Double proposed,
      double leftKva,
      double share,
      FuelUse fuel,
      List<Finding> findings) {}

  public GeneratorJudge(
      Network network,
      Flows flows,
      LightingSettings settings,
      Timeline timeline,
      SupplyHours hours,
      double... onOffer) {
    this.network = network;
    this.flows = flows;
    this.settings = settings;
    this.timeline = timeline;
    this.hours = hours;
    this.onOffer = onOffer.clone();
  }

  /** The load of a generator in the state in which it needs most. */
  private record Need(double watts, double powerFactor, double startWatts) {}

  /** Judges a row, once. */
  public State judge(InputRow<Generator> row, Node node) {
    return states.computeIfAbsent(row.number(), k -> calculate(row.value(), node, row));
  }

  private State calculate(Generator typed, Node node, InputRow<Generator> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    double air = air(typed);
    if (typed.altitude() == null && !row.unreadable().contains("altitude")) {
      findings.add(Finding.of(LightingFinding.ALTITUDE_OPEN));
    }
    bond(typed, row, findings);
    double derate = derate(typed, air, findings);
    if (node == null || !node.isFed()) {
      if (typed.name() != null && node == null) {
        findings.add(Finding.of(LightingFinding.GENERATOR_UNKNOWN, typed.name()));
      }
      return new State(
          null,
          air,
          derate,
          0,
          0,
          Double.NaN,
          typed.kva(),
          null,
          Double.NaN,
          Double.NaN,
          FuelUse.NONE,
          findings);
    }
    double running = 0;
    double starting = 0;
    double required = 0;
    boolean leading = false;
    for (int s = 0; s < flows.states().size(); s++) {
      Need need = need(s, node);
      running = Math.max(running, kva(need, 0, 0, 1));
      starting = Math.max(starting, kva(need, 0, need.startWatts(), 1));
      required = Math.max(required, kva(need, settings.headroom(), need.startWatts(), derate));
      leading |= hasLeading(flows.states().get(s), node);
    }
    Double proposed = Double.isNaN(derate) ? null : pick(required);
    Double size = typed.kva() == null ? proposed : typed.kva();
    double left = size == null ? Double.NaN : size * derate;
    if (typed.kva() == null && !row.unreadable().contains("kva")) {
      findings.add(Finding.of(LightingFinding.GENERATOR_SIZE_OPEN));
    }
    FuelUse fuel = FuelUse.of(typed, node, size, flows, hours.of(node), timeline, settings.units());
    load(starting, running, left, size, fuel, findings);
    boolean small = size != null && required > size * (1 + ROUNDING);
    if (small && findings.stream().noneMatch(f -> f.key() == LightingFinding.GENERATOR_OVER)) {
      findings.add(Finding.of(LightingFinding.GENERATOR_SMALL, required, size));
    }
    if (fuel.dry() != null) {
      findings.add(
          Finding.of(
              LightingFinding.GENERATOR_TANK,
              fuel.dry().hours(),
              Timeline.text(fuel.dry().empty()),
              fuel.dry().run()));
    }
    if (leading) {
      findings.add(Finding.of(LightingFinding.GENERATOR_LEADING));
    }
    return new State(
        node,
        air,
        derate,
        running,
        starting,
        Double.isNaN(derate) ? Double.NaN : required,
        size,
        proposed,
        left,
        running / left,
        fuel,
        findings);
  }

  private static double kva(Need need, double headroom, double start, double derate) {
    return need.watts() <= 0 && start <= 0
        ? 0
        : GeneratorRating.kva(need.watts(), need.powerFactor(), headroom, start, derate);
  }

  private static void load(
      double starting,
      double running,
      double left,
      Double size,
      FuelUse fuel,
      List<Finding> findings) {
    if (Double.isNaN(left)) {
      return;
    }
    if (starting > left * (1 + ROUNDING)) {
      findings.add(Finding.of(LightingFinding.GENERATOR_OVER, starting, left));
    } else if (running > HIGH * left * (1 + ROUNDING)) {
      findings.add(Finding.of(LightingFinding.GENERATOR_HIGH, running / left));
    }
    double mean = fuel.meanKw() / (size * GeneratorRating.RATED_POWER_FACTOR);
    if (fuel.hours() > 0 && mean < WET) {
      findings.add(Finding.of(LightingFinding.GENERATOR_WET, mean));
    }
  }

  private void bond(Generator typed, InputRow<Generator> row, List<Finding> findings) {
    NeutralBond bond = typed.bond();
    if (bond == null && !row.unreadable().contains("bond")) {
      findings.add(Finding.of(LightingFinding.BOND_OPEN));
    } else if (bond == NeutralBond.BOTH || bond == NeutralBond.NONE) {
      findings.add(
          Finding.of(
              LightingFinding.BOND_WRONG,
              bond == NeutralBond.BOTH ? "at generator and distro" : "nowhere"));
    }
  }

  /** The hotter of intake and day. */
  private double air(Generator typed) {
    double day =
        timeline.windows(typed.fromDay(), typed.toDay()).stream()
            .mapToDouble(Timeline.Window::warmest)
            .max()
            .orElse(timeline.warmest());
    return typed.intake() == null
        ? day + SCREENS
        : Math.max(day, settings.units().toCelsius(typed.intake()));
  }

  private double derate(Generator typed, double air, List<Finding> findings) {
    double altitude = typed.altitude() == null ? 0 : settings.units().toMetres(typed.altitude());
    Engine engine = typed.engine() == null ? Engine.DIESEL : typed.engine();
    try {
      return GeneratorRating.derate(altitude, air, engine);
    } catch (EvaluationException beyond) {
      findings.add(Finding.of(LightingFinding.DERATE_UNKNOWN));
      return Double.NaN;
    }
  }

  private Double pick(double required) {
    if (onOffer.length == 0 || Double.isNaN(required)) {
      return null;
    }
    try {
      return GeneratorRating.pick(required, onOffer);
    } catch (EvaluationException none) {
      return null;
    }
  }

  /** The leg that carries most counts for all legs, since each has its share of the windings. */
  private Need need(int state, Node node) {
    int legs = Integer.bitCount(node.legs());
    double volts = network.legVolts(node);
    double watts = 0;
    double apparent = 0;
    for (int leg = 0; leg < 3; leg++) {
      if ((node.legs() >> leg & 1) == 1) {
        double amps = flows.amps(state, node, leg);
        double active = flows.watts(state, node, leg) + flows.existing(node) * volts;
        watts = Math.max(watts, legs * active);
        apparent = Math.max(apparent, legs * amps * volts);
      }
    }
    double powerFactor = apparent > 0 ? Math.min(1, Math.max(0.1, watts / apparent)) : 1;
    return new Need(watts, powerFactor, watts + start(state, node, legs));
  }

  /** What the largest start adds, as watts of all legs. */
  private double start(int state, Node node, int legs) {
    double most = 0;
    LoadState now = flows.states().get(state);
    for (int i = now.active().nextSetBit(0); i >= 0; i = now.active().nextSetBit(i + 1)) {
      PlannedLoad load = flows.loads().get(i);
      if (load.parts().get(0).node().root() != node) {
        continue;
      }
      double usual = load.equipment().inrush() == InrushClass.MOTOR ? MOTOR_START : 1;
      double times = load.equipment().start() == null ? usual : load.equipment().start();
      int own = Integer.bitCount(load.parts().get(0).legs());
      most = Math.max(most, (times - 1) * load.watts() * legs / Math.min(legs, own));
    }
    return most;
  }

  private boolean hasLeading(LoadState state, Node node) {
    return state.active().stream()
        .mapToObj(flows.loads()::get)
        .anyMatch(
            l ->
                Boolean.TRUE.equals(l.equipment().leading())
                    && l.parts().get(0).node().root() == node);
  }
}
