package org.setpower.fleet;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a question about a stock of packs has no answer. */
public enum FleetErrorCode implements ErrorCode {
  OVER_RATING(
      ErrorKind.DOMAIN,
      "{0} Wh measured is {2} of the {1} Wh rated; over 1.1 the test or the rating is wrong"),
  TOO_EARLY(ErrorKind.NO_ANSWER, "health is {0}; above {1} the loss is within the error of a test"),
  BELOW_MEASURED(
      ErrorKind.NO_ANSWER, "retire_at is {0}; no cell was measured below a state of health of {1}"),
  TOO_FEW(
      ErrorKind.NO_ANSWER,
      "outliers need {1} batteries of a type with a state of health; this type has" + " {0}"),
  ONE_CELL(ErrorKind.DOMAIN, "{0} has one value; an imbalance needs two or more");

  private final ErrorKind fault;
  private final String sentence;

  FleetErrorCode(ErrorKind fault, String sentence) {
    this.fault = fault;
    this.sentence = sentence;
  }

  @Override
  public ErrorKind kind() {
    return fault;
  }

  @Override
  public String sentence() {
    return sentence;
  }
}
