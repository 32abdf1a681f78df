package org.setpower.plan.lighting.protection;

import java.util.List;
import java.util.Map;
import org.setpower.base.EvaluationException;
import org.setpower.cable.Ampacity;
import org.setpower.cable.CableRating;
import org.setpower.cable.CableSize;
import org.setpower.cable.InstallationMethod;
import org.setpower.cable.Protection;
import org.setpower.cable.RatingRule;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.load.Timeline;
import org.setpower.plan.lighting.network.Network;
import org.setpower.plan.lighting.network.Node;

/**
 * Whether the breaker really upstream protects a cable: IEC 60364-4-43, NEC 240.4. What flows by
 * plan never excuses a breaker that is too large.
 */
final class OverloadCheck {
  private static final double ROUNDING = 1e-9;

  /** NEC 240.4(B), from memory: the next standard size up, to 800 A. */
  private static final double NEXT_SIZE_UP_TO = 800;

  /** IEC 60364-4-43, 433.2: 3 m; NEC 240.21: 10 ft. */
  private static final double SHORT = 3.05;

  /** Standard five-core cables and their usual breakers, VDE 0298-4. */
  private static final Map<Double, Double> STANDARD = Map.of(6.0, 32.0, 16.0, 63.0, 35.0, 125.0);

  private static final double MULTI_BREAKER_METRIC = 16;
  private static final double MULTI_BREAKER_US = 20;
  private static final double MULTI_AREA_METRIC = 2.5;
  private static final double MULTI_AREA_US = 3.3;

  private OverloadCheck() {}

  /** The breaker that protects a run: that of its place, or a smaller one nearer to the source. */
  static double breaker(Node run) {
    double upstream =
        run.parent() == null ? Double.POSITIVE_INFINITY : run.parent().protectingBreaker();
    for (Node circuit : run.children()) {
      if (circuit.kind() == Node.Kind.CIRCUIT && !Double.isNaN(circuit.breaker())) {
        return Math.min(upstream, circuit.breaker());
      }
    }
    return upstream;
  }

  /** The largest breaker that a rating allows. */
  static double allowed(double rating, RatingRule rule, boolean oneOutlet) {
    if (rule != RatingRule.NEC || !oneOutlet || Double.isNaN(rating)) {
      return rating;
    }
    try {
      double next = Protection.breaker(rating, Protection.Standard.NEC, false);
      return next <= NEXT_SIZE_UP_TO ? next : rating;
    } catch (EvaluationException beyond) {
      return rating;
    }
  }

  /**
   * Checks a run.
   *
   * @param oneOutlet whether it feeds a distro or one load, not several by splitters
   * @param downstream main breaker of the distro it feeds, NaN without one
   * @return whether the breaker protects the cable; null where it is not known
   */
  static Boolean check(
      RunCable cable,
      RunRating rating,
      boolean oneOutlet,
      double downstream,
      double air,
      List<Finding> findings) {
    double breaker = breaker(cable.node());
    if (Double.isInfinite(breaker)) {
      findings.add(Finding.of(LightingFinding.SUPPLY_UNCLEAR, Network.shown(cable.node().root())));
      return null;
    }
    if (Double.isNaN(rating.amps())) {
      return null;
    }
    if (breaker <= allowed(rating.amps(), rating.rule(), oneOutlet) * (1 + ROUNDING)) {
      return true;
    }
    if (breaker <= allowed(rating.unheated(), rating.rule(), oneOutlet) * (1 + ROUNDING)) {
      findings.add(
          Finding.of(LightingFinding.OVERLOAD_HARMONIC, breaker, rating.amps(), rating.unheated()));
      return true;
    }
    findings.add(excess(cable, rating, breaker, downstream, air));
    return false;
  }

  private static Finding excess(
      RunCable cable, RunRating rating, double breaker, double downstream, double air) {
    if (isMultiCircuit(cable, breaker)) {
      return Finding.of(
          LightingFinding.OVERLOAD_MULTI,
          (double) rating.circuits(),
          rating.amps(),
          rating.rule().word(),
          breaker);
    }
    double vde = standard(cable, rating, breaker, air);
    if (vde > 0) {
      return Finding.of(
          LightingFinding.OVERLOAD_STANDARD, breaker, rating.amps(), rating.rule().word(), vde);
    }
    if (cable.metres() <= SHORT && downstream <= rating.amps() * (1 + ROUNDING)) {
      return Finding.of(LightingFinding.OVERLOAD_SHORT, breaker, rating.amps(), downstream);
    }
    return Finding.of(
        LightingFinding.OVERLOAD, breaker, rating.amps(), (double) RunRating.marked(cable));
  }

  /** A 19-pin cable on its usual breaker, laid singly: NEC 520.44, from memory; trade practice. */
  private static boolean isMultiCircuit(RunCable cable, double breaker) {
    if (cable.typed().type() != CableType.MULTI_CIRCUIT || !RunRating.isFree(cable)) {
      return false;
    }
    boolean metric = cable.size().family() == CableSize.Family.METRIC;
    double area = metric ? MULTI_AREA_METRIC : MULTI_AREA_US;
    double most = metric ? MULTI_BREAKER_METRIC : MULTI_BREAKER_US;
    return cable.size().area() >= area && breaker <= most * (1 + ROUNDING);
  }

  /** The rating by VDE 0298-4 of a standard cable on its usual breaker; 0 where it is none. */
  private static double standard(RunCable cable, RunRating rating, double breaker, double air) {
    Double usual = STANDARD.get(cable.size().value());
    boolean standard =
        usual != null
            && breaker <= usual
            && rating.rule() == RatingRule.BS_7671
            && cable.typed().type() == CableType.RUBBER
            && cable.size().family() == CableSize.Family.METRIC
            && RunRating.isFree(cable)
            && air <= Ampacity.USUAL_AMBIENT
            && cable.typed().makersRating() == null;
    if (!standard) {
      return 0;
    }
    double vde =
        CableRating.of(
                    RatingRule.VDE_0298,
                    Ampacity.Method.RUBBER,
                    cable.size(),
                    CableRating.LOWEST_CLASS,
                    air,
                    3,
                    InstallationMethod.FREELY)
                .amps()
            * cable.parallel();
    return vde >= breaker ? vde : 0;
  }

  /**
   * Whether what flows exceeds the rating; of assumed third harmonics the breaker's check tells.
   */
  static void flow(
      double amps, int quarter, RunRating rating, LightingFinding key, List<Finding> findings) {
    if (amps > rating.unheated() * (1 + ROUNDING)) {
      findings.add(Finding.of(key, amps, Timeline.text(quarter), rating.amps()));
    }
  }
}
