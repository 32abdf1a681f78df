package org.setpower.plan.batteryday.simulation;

/**
 * A battery at call.
 *
 * @param number 1 for B1
 * @param charge state of charge, 0…1
 * @param from hour from which it is there; minus infinity: at call
 * @param isPutIn whether nobody knew before that hour that it would be
 */
public record BatterySpec(int number, int type, double charge, double from, boolean isPutIn) {
  /** A battery that is there at call. */
  public BatterySpec(int number, int type, double charge) {
    this(number, type, charge, Double.NEGATIVE_INFINITY, false);
  }
}
