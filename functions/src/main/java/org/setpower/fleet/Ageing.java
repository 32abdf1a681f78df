package org.setpower.fleet;

import org.setpower.base.Refusal;

/** How far a pack has aged. */
public final class Ageing {
  private static final double HIGHEST = 1.1;
  private static final double FIRST_SEEN = 0.97;

  private Ageing() {}

  /** Health: measured Wh of a full pack at room temperature over rated Wh, up to 1.1. */
  public static double health(double measuredWh, double ratedWh) {
    double health = measuredWh / ratedWh;
    if (health > HIGHEST) {
      throw new Refusal(FleetReason.OVER_RATING, measuredWh, ratedWh, health);
    }
    return health;
  }

  /**
   * Cycles left on a straight line from new through today: cycles · (health − retireAt) / (1 −
   * health), and 0 for a pack that is at its end. Measured cells bend down at the end of their
   * life, so the line flatters.
   *
   * @throws Refusal while health is above 0.97: no line can be drawn yet
   */
  public static double cyclesLeft(double cycles, double health, double retireAt) {
    if (health > FIRST_SEEN) {
      throw new Refusal(FleetReason.TOO_EARLY, health, FIRST_SEEN);
    }
    return cycles * Math.max(0, health - retireAt) / (1 - health);
  }
}
