package org.setpower.pack;

import org.setpower.base.Fault;
import org.setpower.base.Reason;

/** Why a question about a pack has no answer. */
public enum PackReason implements Reason {
  NO_POWER(Fault.NO_ANSWER, "no power: the pack gives {0} V, the plate asks for {1} V"),
  NOT_A_CLASS(
      Fault.DOMAIN,
      "{0} is {1} V; a plate and an output are named by class: {2} V (not by the volts of the"
          + " moment)"),
  NOT_AN_OUTPUT(Fault.DOMAIN, "{0} \"{1}\" is not read; write \"12/24\", \"24\" or a number"),
  NO_COLD_DATA(
      Fault.NO_ANSWER,
      "temp is {0} °C; no {1} cells were measured below {2} °C, so nothing is promised there"),
  TOO_HOT(Fault.NO_ANSWER, "temp is {0} °C; {1} packs are not used above {2} °C");

  private final Fault fault;
  private final String sentence;

  PackReason(Fault fault, String sentence) {
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
