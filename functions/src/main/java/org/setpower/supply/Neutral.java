package org.setpower.supply;

import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;

/**
 * What the neutral of a supply carries.
 *
 * @param fundamental A, phasor sum of the legs at mains frequency
 * @param triplen A, third harmonics, taken as in phase with each other: the worst case
 */
public record Neutral(double fundamental, double triplen) {
  /** Share of the legs below which their sum is nothing but rounding: balanced legs leave 0. */
  private static final double ROUNDING = 1e-12;

  /**
   * From the amps of the legs as a true-rms meter reads them. The fundamental of a leg is
   * I/√(1+h²); its angle is that of the leg less φ. On three phases the third harmonics add up, on
   * a split supply they subtract.
   *
   * @param amps of the three legs
   * @param powerFactors displacement cos φ of the legs, a leading one negative
   * @param thirdHarmonic h, share of the fundamental
   */
  public static Neutral of(double[] amps, double[] powerFactors, double thirdHarmonic, Feed feed) {
    if (feed == Feed.SPLIT && amps[2] != 0) {
      throw new EvaluationException(SupplyErrorCode.THIRD_LEG, amps[2]);
    }
    double apart = feed == Feed.SPLIT ? Math.PI : 2 * Math.PI / 3;
    double sign = feed == Feed.SPLIT ? -1 : 1;
    double share = 1 / Math.sqrt(1 + thirdHarmonic * thirdHarmonic);
    double real = 0;
    double imaginary = 0;
    double third = 0;
    double total = 0;
    for (int leg = 0; leg < amps.length; leg++) {
      double fundamental = amps[leg] * share;
      double angle = -leg * apart - angle(powerFactors[leg]);
      real += fundamental * Math.cos(angle);
      imaginary += fundamental * Math.sin(angle);
      total += fundamental;
      third += (leg == 1 ? sign : 1) * thirdHarmonic * fundamental;
    }
    double sum = Math.hypot(real, imaginary);
    return new Neutral(sum > ROUNDING * total ? sum : 0, Math.abs(third));
  }

  /** A displacement cos φ as it may be: −1 to 1 without 0. */
  public static double requirePowerFactor(String name, double powerFactor) {
    if (Checks.finite(name, powerFactor) == 0 || Math.abs(powerFactor) > 1) {
      throw new EvaluationException(SupplyErrorCode.NO_POWER_FACTOR, name, powerFactor);
    }
    return powerFactor;
  }

  private static double angle(double powerFactor) {
    return Math.copySign(Math.acos(Math.abs(powerFactor)), powerFactor);
  }

  /** A, true rms. */
  public double amps() {
    return Math.hypot(fundamental, triplen);
  }

  /** Largest deviation of a leg from the mean, over the mean. */
  public static double unbalance(double... legs) {
    double sum = 0;
    for (double leg : legs) {
      sum += leg;
    }
    if (sum == 0) {
      throw new EvaluationException(SupplyErrorCode.ALL_ZERO);
    }
    double mean = sum / legs.length;
    double most = 0;
    for (double leg : legs) {
      most = Math.max(most, Math.abs(leg - mean));
    }
    return most / mean;
  }
}
