package org.setpower.pack;

import org.setpower.base.Checks;
import org.setpower.base.Numbers;

/** How long a pack lasts by its watt-hours. */
public final class EnergyRuntime {
  private EnergyRuntime() {}

  /** Wh: nominal volts times rated amp-hours. */
  public static double wattHours(double volts, double ampHours) {
    return volts * ampHours;
  }

  /**
   * Wh that reach the load: rated · health · (1 − reserve) · cold · efficiency. Each loss once.
   *
   * @param efficiency of what sits between pack and load
   * @param health share of the rated Wh that a full pack still gives at room temperature
   * @param reserve share that is not used
   */
  public static double usable(
      double wattHours,
      double efficiency,
      double health,
      double temp,
      double reserve,
      Chemistry chemistry) {
    return wattHours
        * health
        * (1 - reserve)
        * TemperatureDerating.energyLeft(chemistry, temp)
        * efficiency;
  }

  /** Hours: usable Wh over the watts, which must be above 0. */
  public static double hours(double usableWattHours, double watts) {
    return usableWattHours / Checks.above("watts", watts, 0);
  }

  /**
   * Packs for a job without recharging: hours · (1 + spare) / hours of one pack, rounded up; a
   * count that misses a whole number by rounding error only is that number.
   */
  public static double packs(double hours, double runtime, double spare) {
    return Numbers.wholeUp(hours * (1 + spare) / runtime);
  }
}
