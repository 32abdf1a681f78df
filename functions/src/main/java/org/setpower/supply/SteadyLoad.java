package org.setpower.supply;

import org.setpower.base.PhaseSystem;

/**
 * A load that draws steady power. Inrush (10 to 100 times for under 1 ms on LED drivers) and motor
 * starts are not in it.
 */
public final class SteadyLoad {
  private SteadyLoad() {}

  /**
   * Amps in a line: P/(U·pf), balanced three-phase P/(√3·U·pf). Source: circuit identities.
   *
   * @param volts three-phase: line to line
   */
  public static double amps(double watts, double volts, PhaseSystem system, double powerFactor) {
    double root = system == PhaseSystem.THREE ? Math.sqrt(3) : 1;
    return watts / (root * volts * system.requirePowerFactor(powerFactor));
  }

  /** Apparent power, VA: P/pf. */
  public static double voltAmperes(double watts, double powerFactor) {
    return watts / powerFactor;
  }
}
