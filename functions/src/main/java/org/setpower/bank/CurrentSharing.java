package org.setpower.bank;

import org.setpower.base.EvaluationException;

/**
 * Packs joined hard in parallel at one moment. At the node Σ(Eₖ − V)/Rₖ = P/V, a quadratic in V
 * with G = Σ1/Rₖ and J = ΣEₖ/Rₖ: V = (J + √(J² − 4GP))/2G; pack k gives (Eₖ − V)/Rₖ, negative if it
 * is being charged by its neighbours. Source: Kirchhoff's laws.
 */
public final class CurrentSharing {
  private CurrentSharing() {}

  /**
   * A from each pack.
   *
   * @param volts open circuit of each pack
   * @param ohms of each pack, above 0
   * @param watts of the load; 0 still equalises
   */
  public static double[] amps(double[] volts, double[] ohms, double watts) {
    double conductance = 0;
    double shortAmps = 0;
    for (int k = 0; k < volts.length; k++) {
      conductance += 1 / ohms[k];
      shortAmps += volts[k] / ohms[k];
    }
    double root = shortAmps * shortAmps - 4 * conductance * watts;
    if (root < 0) {
      throw new EvaluationException(
          BankErrorCode.CANNOT_CARRY, watts, shortAmps * shortAmps / (4 * conductance));
    }
    double node = (shortAmps + Math.sqrt(root)) / (2 * conductance);
    double[] amps = new double[volts.length];
    for (int k = 0; k < amps.length; k++) {
      amps[k] = (volts[k] - node) / ohms[k];
    }
    return amps;
  }
}
