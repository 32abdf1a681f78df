package org.setpower.fleet;

import org.setpower.base.Fault;
import org.setpower.base.Reason;

/** Why a question about a stock of packs has no answer. */
public enum FleetReason implements Reason {
  OVER_RATING(
      Fault.DOMAIN,
      "{0} Wh measured is {2} of the {1} Wh rated; over 1.1 the test or the rating is wrong"),
  TOO_EARLY(
      Fault.NO_ANSWER,
      "health is {0}; above {1} the loss is too small against the error of a test to tell"),
  BELOW_MEASURED(
      Fault.NO_ANSWER,
      "retire_at is {0}; no cell was followed below a health of {1}, so nothing is known of it"),
  TOO_FEW(
      Fault.NO_ANSWER,
      "a kind needs {1} packs with a health before one can stand apart; this one has {0}"),
  ONE_CELL(Fault.DOMAIN, "{0} has one value; a spread needs two or more");

  private final Fault fault;
  private final String sentence;

  FleetReason(Fault fault, String sentence) {
    this.fault = fault;
    this.sentence = sentence;
  }

  @Override
  public Fault fault() {
    return fault;
  }

  @Override
  public String sentence() {
    return sentence;
  }
}
