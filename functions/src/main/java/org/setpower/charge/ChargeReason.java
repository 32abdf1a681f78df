package org.setpower.charge;

import org.setpower.base.Fault;
import org.setpower.base.Reason;

/** Why a question about charging has no answer. */
public enum ChargeReason implements Reason {
  TOO_COLD(
      Fault.NO_ANSWER, "temp is {0}; a lithium pack must not be charged below {1}: warm it first"),
  TOO_FAST(
      Fault.NO_ANSWER,
      "charge_amps is {0} A, over 1 C ({1} A): only where the pack's maker allows it"),
  NOT_CC_CV(Fault.NO_ANSWER, "{0} packs are not charged that way; only Li-ion and LFP are known"),
  BACKWARDS(Fault.DOMAIN, "from is {0} and to is {1}; a charge goes upwards"),
  NO_TURN(
      Fault.NO_ANSWER, "hours_free is {0} h, less than the {1} h of one pack: no pack gets full");

  private final Fault fault;
  private final String sentence;

  ChargeReason(Fault fault, String sentence) {
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
