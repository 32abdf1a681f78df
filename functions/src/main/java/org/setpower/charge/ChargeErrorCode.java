package org.setpower.charge;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a question about charging has no answer. */
public enum ChargeErrorCode implements ErrorCode {
  TOO_COLD(
      ErrorKind.NO_ANSWER,
      "battery_temp is {0}; do not charge a lithium battery below {1}: let it warm up" + " first"),
  TOO_FAST(
      ErrorKind.NO_ANSWER,
      "charge_amps is {0} A, over 1 C ({1} A): only where the battery's maker permits" + " it"),
  NOT_CC_CV(
      ErrorKind.NO_ANSWER, "no charging time for {0} batteries; only Li-ion and LFP are covered"),
  BACKWARDS(ErrorKind.DOMAIN, "from is {0} and to is {1}; to must be higher than from"),
  NO_TURN(
      ErrorKind.NO_ANSWER,
      "hours_free is {0} h, less than the {1} h of one battery: no battery gets full");

  private final ErrorKind fault;
  private final String sentence;

  ChargeErrorCode(ErrorKind fault, String sentence) {
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
