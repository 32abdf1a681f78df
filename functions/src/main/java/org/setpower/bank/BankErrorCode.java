package org.setpower.bank;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a question about packs joined together has no answer. */
public enum BankErrorCode implements ErrorCode {
  CANNOT_CARRY(
      ErrorKind.NO_ANSWER,
      "the batteries cannot give {0} W at this moment; their maximum is {1} W: reduce"
          + " the load or add batteries"),
  DOES_NOT_START(ErrorKind.NO_ANSWER, "device does not start: {0}"),
  PACKS_DIFFER(
      ErrorKind.NO_ANSWER,
      "batteries in parallel must have the same chemistry and number of cells; row"
          + " {0} has {1} cells of {2}, row {3} has {4} of {5}"),
  TOO_MANY_PACKS(ErrorKind.DOMAIN, "{0} batteries; maximum {1}"),
  NOT_FOLLOWED(
      ErrorKind.NO_CONVERGENCE,
      "this bank takes too long to calculate: {0} W is too small a load for so low a"
          + " resistance");

  private final ErrorKind fault;
  private final String sentence;

  BankErrorCode(ErrorKind fault, String sentence) {
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
