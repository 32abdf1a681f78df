package org.setpower.plan.lighting.load;

/**
 * The highest current of a place.
 *
 * @param amps of the leg that carries most
 * @param leg that leg, from 0
 * @param quarter when it begins
 * @param lasts quarter hours without a change
 */
public record Peak(double amps, int leg, int quarter, int lasts) {
  static final Peak NONE = new Peak(0, 0, 0, 0);
}
