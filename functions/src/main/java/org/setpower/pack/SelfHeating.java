package org.setpower.pack;

import org.setpower.base.ReferenceTable;

/**
 * How a pack that works in the cold warms itself: its own loss I²R heats it, and the surroundings,
 * as cold as the pack was at the start, take the heat away. With a constant loss the warmth above
 * the surroundings goes exponentially towards loss / leak, with the time constant store / leak.
 *
 * <p>Both figures go with the size of the pack. The leak is twice that of a measured cell, as in
 * wind; the lead does not warm the pack. Only Li-ion: of the others no cells in the cold were
 * measured, or the table holds a whole discharge already, as it does for a pack of which only the
 * label is known.
 */
public final class SelfHeating {
  /** The table's temperature at and above which nothing changes any more. */
  static final double WARM = 25;

  private static final double LEAK = figure("leak");
  private static final double STORE_HOURS = figure("store") / 3600;

  private SelfHeating() {}

  /** Whether a pack gives more when it gets warmer. */
  static boolean concerns(Pack pack) {
    return pack.chemistry().family() == Chemistry.LI_ION && pack.temp() < WARM && !pack.byLabel();
  }

  /**
   * °C after some hours at a constant loss.
   *
   * @param cold the pack at the start, as cold as its surroundings
   * @param temp °C now
   * @param watts of heat in the pack
   */
  static double after(Pack cold, double temp, double watts, double hours) {
    double size = cold.cells() * cold.ratedAmpHours();
    double end = cold.temp() + watts / (LEAK * size);
    return end + (temp - end) * Math.exp(-hours * LEAK / STORE_HOURS);
  }

  /**
   * The hours that no pack is faster in: of a bare cell in moving air, from one temperature to
   * another.
   *
   * @param from °C, below {@code to}
   * @param air °C
   * @return infinite where the air is not warmer than {@code to}
   */
  public static double leastWarmUp(double from, double to, double air) {
    return air > to
        ? STORE_HOURS / LEAK * Math.log((air - from) / (air - to))
        : Double.POSITIVE_INFINITY;
  }

  private static double figure(String quantity) {
    for (ReferenceTable.Row row : ReferenceTable.read(SelfHeating.class, "warming.csv")) {
      if (row.text("quantity").equals(quantity)) {
        return row.number("figure");
      }
    }
    throw new IllegalStateException("warming.csv has no " + quantity);
  }
}
