package org.setpower.plan.batteryday.simulation;

/**
 * Hours left against state of charge, at one power and one temperature; straight between points.
 */
final class FeedCurve {
  /** A feed that never starts. */
  static final FeedCurve NEVER = new FeedCurve(new double[] {1, 1}, new double[] {0, 0});

  private final double[] charge;
  private final double[] hours;
  private final double start;

  /**
   * @param charge falling from 1 to the charge at which the position has to be changed
   * @param hours left at each, falling to 0
   */
  FeedCurve(double[] charge, double[] hours) {
    this(charge, hours, charge[charge.length - 1]);
  }

  /**
   * @param start charge above which a battery starts the position; what is on already works on
   *     below it
   */
  FeedCurve(double[] charge, double[] hours, double start) {
    this.charge = charge;
    this.hours = hours;
    this.start = start;
  }

  /** Hours of a battery that starts the position; 0 if it does not. */
  double hoursFromStart(double held) {
    return held <= start ? 0 : hours(held);
  }

  /** The charge at which the battery has to come off. */
  double end() {
    return charge[charge.length - 1];
  }

  /** Hours left of a battery; 0 if it does not start. */
  double hours(double held) {
    if (held <= end()) {
      return 0;
    }
    int i = 0;
    while (i < charge.length - 2 && held <= charge[i + 1]) {
      i++;
    }
    return hours[i + 1]
        + (hours[i] - hours[i + 1]) * (held - charge[i + 1]) / (charge[i] - charge[i + 1]);
  }

  /** The charge after some hours, fewer than are left. */
  double after(double held, double worked) {
    double left = hours(held) - worked;
    if (left <= 0) {
      return Math.min(held, end());
    }
    int i = 0;
    while (i < hours.length - 2 && left <= hours[i + 1]) {
      i++;
    }
    return charge[i + 1]
        + (charge[i] - charge[i + 1]) * (left - hours[i + 1]) / (hours[i] - hours[i + 1]);
  }
}
