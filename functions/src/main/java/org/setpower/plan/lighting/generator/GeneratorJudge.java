package org.setpower.plan.lighting.generator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.setpower.base.EvaluationException;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.lighting.input.InrushClass;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.input.MeasureSystem;
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

  /** Summer diesel, EN 590 class B, is usable down to here, °C (from memory). */
  private static final double FROST = 0;

  private static final double MOTOR_START = 3;
  private static final Set<FindingKey> OVER =
      Set.of(LightingFinding.GENERATOR_OVER, LightingFinding.ENGINE_OVER);
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
   * @param loadKva running, legs × the one that carries most: what the alternator must give
   * @param loadKw running, all legs together: what the engine must give
   * @param startKva with the largest start, or its kW / 0.8 where that is more
   * @param requiredKva nameplate with headroom and derating; NaN where it is not known
   * @param size decided, or proposed; null where neither is known
   * @param proposed smallest on offer; null where none is enough
   * @param leftKva after derating
   * @param share running load of what is left, of alternator or engine, whichever is more
   * @param imbalance largest difference of its legs, as a share of the rated current of a leg; NaN
   *     where it has one leg or its size is not known
   */
  public record State(
      Node node,
      double air,
      double derate,
      double loadKva,
      double loadKw,
      double startKva,
      double requiredKva,
      Double size,
      Double proposed,
      double leftKva,
      double share,
      double imbalance,
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

  /**
   * The load of a generator in a state. Alternator and engine have limits of their own: that of a
   * leg in kVA, that of all legs in kW.
   */
  private record Need(double kva, double kw, double startKva, double startKw) {
    Need most(Need other) {
      return new Need(
          Math.max(kva, other.kva),
          Math.max(kw, other.kw),
          Math.max(startKva, other.startKva),
          Math.max(startKw, other.startKw));
    }

    /** The nameplate whose alternator and whose engine are enough. */
    double required(double headroom, double derate) {
      double alternator = Math.max(kva * (1 + headroom), startKva);
      double engine = Math.max(kw * (1 + headroom), startKw);
      return Math.max(alternator, engine / GeneratorRating.RATED_POWER_FACTOR) / derate;
    }

    double starting() {
      return Math.max(startKva, startKw / GeneratorRating.RATED_POWER_FACTOR);
    }

    double share(double left) {
      return Math.max(kva, kw / GeneratorRating.RATED_POWER_FACTOR) / left;
    }
  }

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
    cold(typed, findings);
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
          0,
          Double.NaN,
          typed.kva(),
          null,
          Double.NaN,
          Double.NaN,
          Double.NaN,
          FuelUse.NONE,
          findings);
    }
    Need need = new Need(0, 0, 0, 0);
    boolean leading = false;
    for (int s = 0; s < flows.states().size(); s++) {
      need = need.most(need(s, node));
      leading |= hasLeading(flows.states().get(s), node);
    }
    double required = need.required(settings.headroom(), derate);
    Double proposed = Double.isNaN(derate) ? null : pick(required);
    Double size = typed.kva() == null ? proposed : typed.kva();
    double left = size == null ? Double.NaN : size * derate;
    if (typed.kva() == null && !row.unreadable().contains("kva")) {
      findings.add(Finding.of(LightingFinding.GENERATOR_SIZE_OPEN));
    }
    FuelUse fuel = FuelUse.of(typed, node, size, flows, hours.of(node), timeline, settings);
    if (size != null && fuel.hours() > 0 && Double.isNaN(fuel.litres())) {
      findings.add(Finding.of(LightingFinding.GENERATOR_FUEL_OPEN));
    }
    load(need, left, size, fuel, findings);
    boolean small = size != null && required > size * (1 + ROUNDING);
    if (small && findings.stream().noneMatch(f -> OVER.contains(f.key()))) {
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
    double imbalance = imbalance(node, size, findings);
    if (leading) {
      findings.add(Finding.of(LightingFinding.GENERATOR_LEADING));
    }
    if (hours.isOffInVain(typed)) {
      findings.add(
          Finding.of(
              LightingFinding.GENERATOR_CLOCK,
              typed.offFrom() == null ? "—" : Timeline.text(typed.offFrom()),
              typed.offTo() == null ? "—" : Timeline.text(typed.offTo())));
    }
    return new State(
        node,
        air,
        derate,
        need.kva(),
        need.kw(),
        need.starting(),
        Double.isNaN(derate) ? Double.NaN : required,
        size,
        proposed,
        left,
        need.share(left),
        imbalance,
        fuel,
        findings);
  }

  private static void load(
      Need need, double left, Double size, FuelUse fuel, List<Finding> findings) {
    if (Double.isNaN(left)) {
      return;
    }
    double engine = left * GeneratorRating.RATED_POWER_FACTOR;
    boolean over = need.startKva() > left * (1 + ROUNDING);
    if (over) {
      findings.add(Finding.of(LightingFinding.GENERATOR_OVER, need.startKva(), left));
    }
    if (need.startKw() > engine * (1 + ROUNDING)) {
      findings.add(Finding.of(LightingFinding.ENGINE_OVER, need.startKw(), engine));
    } else if (!over && need.share(left) > HIGH * (1 + ROUNDING)) {
      findings.add(Finding.of(LightingFinding.GENERATOR_HIGH, need.share(left)));
    }
    double mean = fuel.meanKw() / (size * GeneratorRating.RATED_POWER_FACTOR);
    if (fuel.hours() > 0 && mean < WET) {
      findings.add(Finding.of(LightingFinding.GENERATOR_WET, mean));
    }
  }

  private double imbalance(Node node, Double size, List<Finding> findings) {
    int legs = Integer.bitCount(node.legs());
    if (legs < 2 || size == null) {
      return Double.NaN;
    }
    double rated = size * 1000 / legs / network.legVolts(node);
    double most = 0;
    double low = 0;
    double high = 0;
    for (int s = 0; s < flows.states().size(); s++) {
      double least = Double.POSITIVE_INFINITY;
      double highest = 0;
      for (int leg = 0; leg < 3; leg++) {
        if ((node.legs() >> leg & 1) == 1) {
          double amps = flows.amps(s, node, leg);
          least = Math.min(least, amps);
          highest = Math.max(highest, amps);
        }
      }
      if (highest - least > most) {
        most = highest - least;
        low = least;
        high = highest;
      }
    }
    double share = most / rated;
    if (share > settings.maxImbalance() + ROUNDING) {
      findings.add(
          Finding.of(
              LightingFinding.GENERATOR_IMBALANCE, low, high, share, settings.maxImbalance()));
    }
    return share;
  }

  /** Diesel clouds and a cold engine starts badly. */
  private void cold(Generator typed, List<Finding> findings) {
    double coldest =
        windows(typed).stream()
            .mapToDouble(Timeline.Window::coldest)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    if (typed.engine() != Engine.PETROL && coldest <= FROST) {
      double shown = settings.units().fromCelsius(coldest);
      String unit = settings.units() == MeasureSystem.US ? "°F" : "°C";
      findings.add(Finding.of(LightingFinding.GENERATOR_COLD, "%.0f %s".formatted(shown, unit)));
    }
  }

  private List<Timeline.Window> windows(Generator typed) {
    return timeline.windows(typed.fromDay(), typed.toDay());
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
        windows(typed).stream()
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
    double active = 0;
    double apparent = 0;
    for (int leg = 0; leg < 3; leg++) {
      if ((node.legs() >> leg & 1) == 1) {
        active += flows.watts(state, node, leg) + flows.existing(node) * volts;
        apparent = Math.max(apparent, legs * flows.amps(state, node, leg) * volts);
      }
    }
    Need running = new Need(apparent / 1000, active / 1000, apparent / 1000, active / 1000);
    Need most = running;
    LoadState now = flows.states().get(state);
    for (int i : now.on()) {
      PlannedLoad load = flows.loads().get(i);
      if (load.parts().get(0).node().root() == node) {
        most = most.most(started(running, load, legs));
      }
    }
    return most;
  }

  /** What runs, and the start of one piece of a load on top of it. */
  private static Need started(Need running, PlannedLoad load, int legs) {
    double usual = load.equipment().inrush() == InrushClass.MOTOR ? MOTOR_START : 1;
    double times = load.equipment().start() == null ? usual : load.equipment().start();
    double watts = (times - 1) * load.watts();
    int own = Integer.bitCount(load.parts().get(0).legs());
    double powerFactor = Math.min(load.powerFactor(), GeneratorRating.RATED_POWER_FACTOR);
    double apparent = watts / powerFactor * legs / Math.min(legs, own);
    return new Need(
        running.kva(), running.kw(), running.kva() + apparent / 1000, running.kw() + watts / 1000);
  }

  private boolean hasLeading(LoadState state, Node node) {
    return IntStream.of(state.on())
        .mapToObj(flows.loads()::get)
        .anyMatch(
            l ->
                Boolean.TRUE.equals(l.equipment().leading())
                    && l.parts().get(0).node().root() == node);
  }
}
