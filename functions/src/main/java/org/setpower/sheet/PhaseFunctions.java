package org.setpower.sheet;

import java.util.List;
import org.setpower.base.Step;
import org.setpower.base.Unit;
import org.setpower.supply.Feed;
import org.setpower.supply.Neutral;
import org.setpower.supply.SupplyReason;

/** PHASE: legs and neutral. */
public final class PhaseFunctions {
  private PhaseFunctions() {}

  static final Group GROUP = new Group("PHASE", "legs and neutral");

  public static final FunctionSpec NEUTRAL =
      GROUP
          .function("NEUTRAL")
          .says("Returns the amps in the neutral of a three-phase or split supply")
          .takes(
              Parameters.LEG_1,
              Parameters.LEG_2,
              Parameters.LEG_3,
              Parameters.PF_1.orElse(1.0),
              Parameters.PF_2.orElse(null, "pf1"),
              Parameters.PF_3.orElse(null, "pf2"),
              Parameters.THIRD_HARMONIC.orElse(0.0),
              Parameters.SUPPLY.orElse(Feed.THREE_PHASE))
          .gives(Unit.AMPERE, "Current in the neutral")
          .formula("√(|Σ I₁|² + (h·Σ I₁)²), I₁ = I/√(1+h²); split: the legs subtract")
          .source("circuit identities; third harmonics in phase: the worst case")
          .caution(
              "Above the amps of a leg a neutral of the legs' size is too small, and no breaker"
                  + " stands in it. A lost neutral puts up to the line voltage on the smallest"
                  + " load: earth, then neutral first on, last off")
          .refuses(SupplyReason.THIRD_LEG, SupplyReason.NO_POWER_FACTOR)
          .example("=PHASE.NEUTRAL(10;8;6)", 3.4641)
          .shows(PhaseFunctions::neutralSteps)
          .by(a -> neutral(a).amps());

  public static final FunctionSpec UNBALANCE =
      GROUP
          .function("UNBALANCE")
          .says("Returns how far the legs are from equal")
          .takes(Parameters.LEG_1, Parameters.LEG_2, Parameters.LEG_3)
          .gives(Unit.SHARE, "Largest deviation from the mean, over the mean")
          .formula("max |I − mean| / mean")
          .source("NEMA MG 1 form of unbalance, applied to currents")
          .caution("Equal legs say nothing of the neutral: third harmonics add up in it")
          .refuses(SupplyReason.ALL_ZERO)
          .example("=PHASE.UNBALANCE(10;8;6)", 0.25)
          .by(
              a ->
                  Neutral.unbalance(
                      a.get(Parameters.LEG_1), a.get(Parameters.LEG_2), a.get(Parameters.LEG_3)));

  private static Neutral neutral(Arguments a) {
    double pf1 = a.get(Parameters.PF_1);
    double pf2 = or(a.get(Parameters.PF_2), pf1);
    double pf3 = or(a.get(Parameters.PF_3), pf2);
    return Neutral.of(
        new double[] {a.get(Parameters.LEG_1), a.get(Parameters.LEG_2), a.get(Parameters.LEG_3)},
        new double[] {pf1, pf2, pf3},
        a.get(Parameters.THIRD_HARMONIC),
        a.get(Parameters.SUPPLY));
  }

  private static double or(Double given, double otherwise) {
    return given == null ? otherwise : given;
  }

  private static List<Step> neutralSteps(Arguments a) {
    Neutral n = neutral(a);
    return List.of(
        new Step("|Σ I₁|", "phasor sum of the fundamentals", n.fundamental(), Unit.AMPERE, ""),
        new Step("h·Σ I₁", "third harmonics in phase", n.triplen(), Unit.AMPERE, ""));
  }
}
