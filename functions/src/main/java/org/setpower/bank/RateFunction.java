package org.setpower.bank;

/** How fast the unknowns of a set of differential equations change, at their values. */
@FunctionalInterface
interface RateFunction {
  void at(double[] values, double[] rates);
}
