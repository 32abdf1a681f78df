package org.setpower.plan.lighting.protection;

import java.util.List;
import org.setpower.base.EvaluationException;
import org.setpower.cable.Ampacity;
import org.setpower.cable.CableErrorCode;
import org.setpower.cable.CableRating;
import org.setpower.cable.CableSize;
import org.setpower.cable.InstallationMethod;
import org.setpower.cable.RatingRule;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.lighting.input.CableTables.Run;
import org.setpower.plan.lighting.input.CableType;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.input.LightingSettings;
import org.setpower.plan.lighting.load.Flows;
import org.setpower.plan.lighting.load.ThirdHarmonic;
import org.setpower.plan.lighting.network.Node;

/**
 * What a cable run carries as it is laid.
 *
 * @param amps of all parallel cables; NaN where it is not known
 * @param unheated without third harmonics that nobody has typed; else the same
 * @param source table or data sheet
 * @param rule whose table counts
 * @param circuits in use of a multi-circuit cable, else 1
 */
public record RunRating(
    double amps, double unheated, String source, RatingRule rule, int circuits) {
  private static RunRating unknown(RatingRule rule, int circuits) {
    return new RunRating(Double.NaN, Double.NaN, "", rule, circuits);
  }

  /** IEC 60364-5-52 annex E, from memory. */
  private static final double NEUTRAL_FACTOR = 0.86;

  private static final int LOADED_NEUTRAL = 4;
  private static final double MOST_OF_TABLE = 1.5;
  private static final int HOTTEST_CLASS = 90;
  private static final double BASE_AIR = 30;

  /** Rates a run; what is missing becomes findings. */
  static RunRating of(
      RunCable cable,
      LightingSettings settings,
      Flows flows,
      double air,
      boolean splitSupply,
      List<Finding> findings) {
    Run typed = cable.typed();
    int circuits = circuits(cable.node(), flows);
    if (cable.size() == null || typed.type() == null || cable.laid() == null) {
      return unknown(settings.rule(), circuits);
    }
    RatingRule rule = settings.rule().of(cable.size().family());
    double harmonics = cable.node().isFed() ? flows.harmonic(cable.node()) : 0;
    try {
      Ampacity rating =
          rate(
              cable,
              rule,
              cable.size(),
              air,
              loaded(cable, rule, circuits, harmonics, splitSupply));
      compare(cable, rule, findings);
      if (rating == null) {
        findings.add(
            Finding.of(
                LightingFinding.RATING_UNKNOWN,
                cable.size().toString(),
                typed.type().word(),
                rule.word()));
        return unknown(rule, circuits);
      }
      double amps = rating.amps() * factor(cable, rule, harmonics) * cable.parallel();
      boolean assumed = cable.node().isFed() && flows.isHarmonicAssumed(cable.node());
      Ampacity cool =
          assumed
              ? rate(cable, rule, cable.size(), air, loaded(cable, rule, circuits, 0, splitSupply))
              : null;
      double unheated = cool == null ? amps : cool.amps() * cable.parallel();
      return new RunRating(amps, unheated, rating.source(), rule, circuits);
    } catch (EvaluationException refused) {
      findings.add(
          refused.errorCode() == CableErrorCode.TOO_HOT
              ? Finding.of(LightingFinding.TOO_HOT, settings.units().fromCelsius(air))
              : Finding.of(
                  LightingFinding.RATING_UNKNOWN,
                  cable.size().toString(),
                  typed.type().word(),
                  rule.word()));
      return unknown(rule, circuits);
    }
  }

  /** Circuits of a multi-circuit cable that are in use; all of them where none is. */
  private static int circuits(Node node, Flows flows) {
    List<Node> circuits =
        node.children().stream().filter(c -> c.kind() == Node.Kind.CIRCUIT).toList();
    int used =
        (int)
            circuits.stream()
                .filter(c -> c.isFed() && flows.peak(c).amps() > flows.existing(c))
                .count();
    return Math.max(1, used == 0 ? circuits.size() : used);
  }

  /** Conductors that carry current: the neutral of three legs only with third harmonics. */
  private static int loaded(
      RunCable cable, RatingRule rule, int circuits, double harmonics, boolean splitSupply) {
    if (cable.typed().type() == CableType.MULTI_CIRCUIT) {
      return 2 * circuits;
    }
    int legs = Integer.bitCount(cable.node().legs());
    if (legs == 3) {
      boolean heats = harmonics > ThirdHarmonic.HEATS && !cable.cores().isSingle();
      return heats && rule == RatingRule.NEC ? LOADED_NEUTRAL : 3;
    }
    return legs == 2 && cable.node().hasNeutral() && !splitSupply ? 3 : 2;
  }

  private static double factor(RunCable cable, RatingRule rule, double harmonics) {
    boolean heats =
        harmonics > ThirdHarmonic.HEATS
            && !cable.cores().isSingle()
            && Integer.bitCount(cable.node().legs()) == 3;
    return heats && rule != RatingRule.NEC ? NEUTRAL_FACTOR : 1;
  }

  /** Its temperature class, °C; the lowest where nothing is typed. */
  static int marked(RunCable cable) {
    return cable.typed().temperatureClass() == null
        ? CableRating.LOWEST_CLASS
        : cable.typed().temperatureClass().celsius();
  }

  /** The table's or the maker's rating, derated alike; null where no table has the size. */
  private static Ampacity rate(
      RunCable cable, RatingRule rule, CableSize size, double air, int loaded) {
    Run typed = cable.typed();
    int marked = marked(cable);
    Ampacity table =
        CableRating.find(rule, typed.type().method(), size, marked, air, loaded, cable.laid());
    if (typed.makersRating() == null || typed.ratingSource() == null) {
      return table;
    }
    return Ampacity.ofMaker(
        typed.makersRating(), marked, typed.ratingSource(), air, loaded, cable.laid());
  }

  /**
   * A maker's rating far above the table may be a slip of the hand, and would lift the protection
   * of the cable; data sheets give up to 1.4 times the table, from memory.
   */
  private static void compare(RunCable cable, RatingRule rule, List<Finding> findings) {
    Run typed = cable.typed();
    if (typed.makersRating() == null || typed.ratingSource() == null) {
      return;
    }
    Ampacity table =
        CableRating.find(
            rule,
            typed.type().method(),
            cable.size(),
            HOTTEST_CLASS,
            BASE_AIR,
            2,
            InstallationMethod.FREELY);
    if (table != null && typed.makersRating() > MOST_OF_TABLE * table.amps()) {
      findings.add(Finding.of(LightingFinding.MAKER_HIGH, typed.makersRating(), table.amps()));
    }
  }

  /** The rating that another size would have in its place; NaN where no table has it. */
  double of(CableSize size, RunCable cable, double air, int loaded) {
    int marked = marked(cable);
    try {
      Ampacity table =
          CableRating.find(
              rule, cable.typed().type().method(), size, marked, air, loaded, cable.laid());
      return table == null ? Double.NaN : table.amps() * cable.parallel();
    } catch (EvaluationException refused) {
      return Double.NaN;
    }
  }

  /** Whether the cable lies by itself. */
  static boolean isFree(RunCable cable) {
    return InstallationMethod.FREELY.equals(cable.laid());
  }
}
