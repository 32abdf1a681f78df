package org.setpower.pack;

import org.setpower.base.Checks;

/**
 * Peukert's law for lead-acid, in the form for a battery rated at an hour rate: t = H·(C/(I·H))^k.
 * Holds for a constant current near room temperature. Source: Doerffel and Abu Sharkh, J. Power
 * Sources 155 (2006) 395, for its limits.
 */
public final class Peukert {
  private Peukert() {}

  /**
   * Hours. Below the rated current no more than the rated amp-hours come out: C/I.
   *
   * @param ampHours C, rated at the rate of {@code ratedHours}
   * @param exponent k, 1 or more
   */
  public static double hours(double ampHours, double ratedHours, double exponent, double amps) {
    double ratio = ampHours / (Checks.above("amps", amps, 0) * ratedHours);
    return ratedHours * (ratio > 1 ? ratio : Math.pow(ratio, exponent));
  }
}
