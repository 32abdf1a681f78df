package org.setpower.cable;

import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;

/** The longest run of a size, and the smallest size for a run. */
public final class Sizing {
  private static final double ROUNDING = 1e-9;

  private Sizing() {}

  /**
   * The longest one-way run in m whose drop stays within a share of the volts: the inverse of
   * {@link CableRun#drop}. Refused when the amps exceed the rating of the size as it is installed.
   * It says nothing of the earth loop.
   */
  public static double reach(
      CableSize size,
      double amps,
      double volts,
      double maxDrop,
      PhaseSystem system,
      double powerFactor,
      double conductorTemp,
      Installed installed) {
    Checks.above("amps", amps, 0);
    CableRun metre = CableRun.of(size, 1, system, powerFactor, conductorTemp, 1);
    double rating =
        Ampacity.of(size, installed.method, installed.ambient, installed.loaded, installed.laid)
            .amps();
    if (amps > rating * (1 + ROUNDING)) {
      throw new EvaluationException(
          CableErrorCode.OVER_RATING, amps, size, rating, installed.ambient);
    }
    return maxDrop * volts / metre.drop(amps);
  }

  /**
   * What the rating of a cable depends on besides its size.
   *
   * @param ambient °C
   * @param loaded conductors that carry current
   */
  public record Installed(
      Ampacity.Method method, double ambient, int loaded, InstallationMethod laid) {}

  /**
   * A run that needs a size.
   *
   * @param length one way, m
   * @param volts three-phase: line to line
   * @param maxDrop share of the volts
   * @param ambient °C
   * @param loaded conductors that carry current
   * @param breaker rating of what stands ahead of the cable, A
   */
  public record Need(
      double length,
      double amps,
      double volts,
      double maxDrop,
      PhaseSystem system,
      double powerFactor,
      double ambient,
      int loaded,
      Ampacity.Method method,
      InstallationMethod laid,
      double breaker) {}

  /**
   * The smallest size of a family whose drop at 60 °C stays within the limit and whose rating is
   * not below the breaker ahead of it. Sizes without a rating or a resistance are skipped.
   */
  public static CableSize gauge(CableSize.Family family, Need need) {
    if (need.breaker < need.amps * (1 - ROUNDING)) {
      throw new EvaluationException(CableErrorCode.BREAKER_BELOW_LOAD, need.breaker, need.amps);
    }
    need.system.requirePowerFactor(need.powerFactor);
    CableSize largestRated = null;
    for (CableSize size : CableSize.series(family)) {
      Ampacity rating = Ampacity.find(size, need.method, need.ambient, need.loaded, need.laid);
      if (rating == null
          || !Conductor.isKnown(size)
          || rating.amps() < need.breaker * (1 - ROUNDING)) {
        continue;
      }
      largestRated = size;
      if (drop(size, need) <= need.maxDrop * need.volts * (1 + ROUNDING)) {
        return size;
      }
    }
    if (largestRated == null) {
      throw new EvaluationException(
          CableErrorCode.NO_SIZE_FOR_BREAKER, family.word(), need.method.word(), need.breaker);
    }
    throw new EvaluationException(
        CableErrorCode.NO_SIZE_FOR_DROP,
        largestRated,
        drop(largestRated, need),
        need.maxDrop * need.volts);
  }

  /** Drop of a size over that run at 60 °C, V. */
  public static double drop(CableSize size, Need need) {
    return CableRun.of(size, need.length, need.system, need.powerFactor, CableRun.LOADED_TEMP, 1)
        .drop(need.amps);
  }
}
