package org.setpower.pack;

/** Straight lines between points whose x rises. Gives no value outside them. */
final class PiecewiseLine {
  private final double[] x;
  private final double[] y;

  PiecewiseLine(double[] x, double[] y) {
    this.x = rising(x);
    this.y = y.clone();
  }

  /** The same points, if each lies above the one before it; a damaged table has others. */
  static double[] rising(double... points) {
    for (int i = 1; i < points.length; i++) {
      if (points[i] <= points[i - 1]) {
        throw new IllegalStateException("the points of a table must rise: " + points[i]);
      }
    }
    return points.clone();
  }

  double first() {
    return x[0];
  }

  double last() {
    return x[x.length - 1];
  }

  /** The value at a place between the first point and the last; beyond the last, the last value. */
  double at(double place) {
    if (place >= last()) {
      return y[y.length - 1];
    }
    int i = 1;
    while (place > x[i]) {
      i++;
    }
    return y[i - 1] + (y[i] - y[i - 1]) * (place - x[i - 1]) / (x[i] - x[i - 1]);
  }
}
