package org.setpower.bank;

/**
 * One step of the Runge-Kutta pair of Dormand and Prince, J. Comput. Appl. Math. 6 (1980) 19,
 * RK5(4)7M: fifth order, with an estimate of its error. Works in arrays that it keeps.
 */
final class DormandPrince {
  private static final double[][] A = {
    {1.0 / 5},
    {3.0 / 40, 9.0 / 40},
    {44.0 / 45, -56.0 / 15, 32.0 / 9},
    {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
    {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
    {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
  };
  private static final double[] ERROR = {
    71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
  };

  private final int size;
  private final RateFunction rates;
  private final double[][] slopes;
  private final double[] middle;

  DormandPrince(int size, RateFunction rates) {
    this.size = size;
    this.rates = rates;
    slopes = new double[7][size];
    middle = new double[size];
  }

  /** Takes the rates at the start of the steps that follow. */
  void start(double[] values) {
    rates.at(values, slopes[0]);
  }

  /** Writes the values after {@code step} into {@code end}; gives the largest error estimated. */
  double step(double[] values, double step, double[] end) {
    for (int stage = 0; stage < 6; stage++) {
      double[] target = stage == 5 ? end : middle;
      for (int i = 0; i < size; i++) {
        double sum = 0;
        for (int k = 0; k <= stage; k++) {
          sum += A[stage][k] * slopes[k][i];
        }
        target[i] = values[i] + step * sum;
      }
      rates.at(target, slopes[stage + 1]);
    }
    double worst = 0;
    for (int i = 0; i < size; i++) {
      double error = 0;
      for (int k = 0; k < 7; k++) {
        error += ERROR[k] * slopes[k][i];
      }
      worst = Math.max(worst, Math.abs(step * error));
    }
    return worst;
  }
}
