package org.setpower.pack;

/**
 * A load of constant watts P behind a resistance R, fed by an open-circuit voltage E. Circuit law:
 * P = (E − I·R)·I, of which the lower current is the one that is stable:
 *
 * <pre>I = (E − S)/2R = 2P/(E + S), V = (E + S)/2, S = √(E² − 4RP)</pre>
 *
 * The second form of I has no difference in it and holds for R = 0 too.
 */
public final class ConstantWatts {
  private ConstantWatts() {}

  /** V of the open circuit below which the watts cannot be had at all: 2√(RP). */
  public static double collapseVolts(double watts, double ohms) {
    return 2 * Math.sqrt(ohms * watts);
  }

  /** A drawn at {@code volts} open circuit, which must not lie below {@link #collapseVolts}. */
  public static double amps(double watts, double ohms, double volts) {
    return 2 * watts / (volts + root(collapseVolts(watts, ohms), volts));
  }

  /** V that the load sees. */
  public static double loadVolts(double watts, double ohms, double volts) {
    return (volts + root(collapseVolts(watts, ohms), volts)) / 2;
  }

  /**
   * V of the open circuit at which the load sees {@code loadVolts}: V + RP/V, or the point of
   * collapse if the load would still be content below it.
   */
  public static double openVolts(double watts, double ohms, double loadVolts) {
    double collapse = collapseVolts(watts, ohms);
    return loadVolts > collapse / 2 ? loadVolts + ohms * watts / loadVolts : collapse;
  }

  /**
   * Hours while the open circuit falls straight from {@code high} to {@code low} volts as {@code
   * ampHours} leave the pack: ∫dq/I. With u = 1/I = (E + S)/2P it is
   *
   * <pre>t = Δq/ΔE · [P/2·(u₁² − u₀²) − R·ln(u₁/u₀)]</pre>
   *
   * taken here with all differences divided out, so that a flat line (ΔE → 0, or 0) keeps its
   * digits.
   */
  public static double hours(double watts, double ohms, double high, double low, double ampHours) {
    double collapse = collapseVolts(watts, ohms);
    double rootHigh = root(collapse, high);
    double rootLow = root(collapse, low);
    if (ampHours == 0 || rootHigh + rootLow == 0) {
      return 0;
    }
    double slope = (1 + (high + low) / (rootHigh + rootLow)) / (2 * watts);
    double inverseHigh = (high + rootHigh) / (2 * watts);
    double inverseLow = (low + rootLow) / (2 * watts);
    double x = (high - low) * slope / inverseLow;
    double logarithm = x == 0 ? 1 : Math.log1p(x) / x;
    return ampHours
        * slope
        * (watts / 2 * (inverseHigh + inverseLow) - ohms * logarithm / inverseLow);
  }

  /** S = √(E² − 4RP), 0 below the point of collapse. */
  static double root(double collapse, double volts) {
    return Math.sqrt(Math.max(0, (volts - collapse) * (volts + collapse)));
  }
}
