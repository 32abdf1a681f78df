package org.setpower.fleet;

import java.util.List;
import java.util.stream.Stream;
import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;

/** How far a pack has aged. */
public final class Ageing {
  private static final double HIGHEST = 1.1;
  private static final double FIRST_SEEN = 0.97;
  private static final double POORER = 0.6;
  private static final double BETTER = 1.4;

  private Ageing() {}

  /** Health: measured Wh of a full pack at room temperature over rated Wh, up to 1.1. */
  public static double health(double measuredWh, double ratedWh) {
    double health = measuredWh / ratedWh;
    if (health > HIGHEST) {
      throw new EvaluationException(FleetErrorCode.OVER_RATING, measuredWh, ratedWh, health);
    }
    return health;
  }

  /**
   * Cycles left until a pack is at its end, if it goes on as measured cells did: each of the six
   * cells of the table is stretched to have the pack's health after the pack's cycles, and read on
   * to the end. Of the six the one with the fewest cycles left, times 0.6, or the one with the
   * most, times 1.4: within these, each of the six lies when it is foretold from the other five.
   * Cells bend down near 0.87; a straight line from new through today promises up to four times
   * what came.
   *
   * @param cycles full cycles so far, above 0
   * @param health share of the rating that is left
   * @param retireAt health at which it is at its end
   * @return cycles; 0 for a pack that is at its end
   * @throws EvaluationException while health is above 0.97: the loss is too small against the error
   *     of a test; below 0.70, where no cell was measured
   */
  public static double cyclesLeft(
      double cycles, double health, double retireAt, ForecastBound outlook) {
    if (health > FIRST_SEEN) {
      throw new EvaluationException(FleetErrorCode.TOO_EARLY, health, FIRST_SEEN);
    }
    if (health <= retireAt) {
      return 0;
    }
    if (retireAt < Cells.LOWEST) {
      throw new EvaluationException(FleetErrorCode.BELOW_MEASURED, retireAt, Cells.LOWEST);
    }
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (double[] cell : Cells.CYCLES) {
      double left = cycles * (Cells.at(cell, retireAt) / Cells.at(cell, health) - 1);
      least = Math.min(least, left);
      most = Math.max(most, left);
    }
    return outlook == ForecastBound.LEAST ? POORER * least : BETTER * most;
  }

  /**
   * Health lost in 100 cycles, on average since new: 100·(1 − health)/cycles, a share. Says nothing
   * of the next 100 cycles: cells bend down at the end.
   *
   * @param cycles full cycles so far, above 0
   * @param health share of the rating that is left, 0 to 1
   */
  public static double lossInHundred(double cycles, double health) {
    return 100 * (1 - Checks.share("health", health)) / Checks.above("cycles", cycles, 0);
  }

  /** The measured cells, read at first use. */
  private static final class Cells {
    private static final List<ReferenceTable.Row> ROWS =
        ReferenceTable.read(Ageing.class, "ageing.csv");

    /** From {@link #FIRST_SEEN} down. */
    static final double[] HEALTHS = column("health");

    static final double LOWEST = HEALTHS[HEALTHS.length - 1];
    static final double[][] CYCLES =
        Stream.of("a", "b", "c", "d", "e", "f").map(Cells::column).toArray(double[][]::new);

    private static double[] column(String name) {
      return ROWS.stream().mapToDouble(r -> r.number(name)).toArray();
    }

    /** Cycles at which a cell had fallen to a health: straight between the rows. */
    static double at(double[] cycles, double health) {
      int i = 1;
      while (health < HEALTHS[i]) {
        i++;
      }
      double share = (HEALTHS[i - 1] - health) / (HEALTHS[i - 1] - HEALTHS[i]);
      return cycles[i - 1] + share * (cycles[i] - cycles[i - 1]);
    }
  }
}
