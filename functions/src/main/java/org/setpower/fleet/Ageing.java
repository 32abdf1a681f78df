package org.setpower.fleet;

import org.setpower.base.Refusal;
import org.setpower.base.Require;

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

  /**
   * Health lost in 100 cycles, on average since new: 100·(1 − health)/cycles, a share. Says nothing
   * of the next 100 cycles: cells bend down at the end.
   *
   * @param cycles full cycles so far, above 0
   * @param health share of the rating that is left, 0 to 1
   */
  public static double lossInHundred(double cycles, double health) {
    return 100 * (1 - Require.share("health", health)) / Require.above("cycles", cycles, 0);
  }
}
