package org.setpower.plan.lighting.load;

/**
 * How the voltage drop at the end of a cable run came about.
 *
 * @param total share of the voltage that is lost from the source on
 * @param own share that is lost over this run
 * @param amps of the leg
 * @param back what flows back over neutral or other leg, A
 * @param powerFactor of the leg
 */
public record Drop(double total, double own, double amps, double back, double powerFactor) {
  static final Drop NONE = new Drop(0, 0, 0, 0, 1);

  /** The current that loses as much over two conductors, as {@code CABLE.DROP} counts it, A. */
  public double equalAmps() {
    return (amps + back) / 2;
  }
}
