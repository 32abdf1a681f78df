package org.setpower.fleet;

import java.util.Arrays;
import org.setpower.base.EvaluationException;

/**
 * Packs that stand apart from their kind: the modified z-score 0.6745·(x − median)/MAD, MAD being
 * the median distance from the median. Where more than half of the packs are equal the MAD is 0;
 * then the mean distance stands in, z = (x − median)/(1.2533·mean distance). Source: B. Iglewicz
 * and D. Hoaglin (1993), section 3.
 */
public final class OutlierDetection {
  /** Fewer packs of a kind than this say nothing. */
  public static final int FEWEST = 5;

  /** Distances that only rounding makes. */
  private static final double SAME = 1e-9;

  private static final double MEDIAN_FACTOR = 0.6745;
  private static final double MEAN_FACTOR = 1.253314;

  private OutlierDetection() {}

  /**
   * The modified z-score of each value.
   *
   * @throws EvaluationException for fewer than five values
   */
  public static double[] scores(double[] values) {
    if (values.length < FEWEST) {
      throw new EvaluationException(FleetErrorCode.TOO_FEW, values.length, FEWEST);
    }
    double median = median(values);
    double[] distances = Arrays.stream(values).map(v -> Math.abs(v - median)).toArray();
    double mad = median(distances);
    double mean = Arrays.stream(distances).average().orElseThrow();
    double scale = mad > SAME ? mad / MEDIAN_FACTOR : MEAN_FACTOR * mean;
    return Arrays.stream(values).map(v -> scale > SAME ? (v - median) / scale : 0).toArray();
  }

  /** The middle value, or the mean of the two in the middle. */
  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }
}
