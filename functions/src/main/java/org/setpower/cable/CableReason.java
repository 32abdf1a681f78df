package org.setpower.cable;

import org.setpower.base.Fault;
import org.setpower.base.Reason;

/** Why a question about a cable has no answer. */
public enum CableReason implements Reason {
  UNKNOWN_SIZE(
      Fault.DOMAIN,
      "{0} \"{1}\" is not a cable size; write \"12 AWG\", \"2/0\", \"2.5 mm²\" or a number in mm²"),
  NOT_A_GAUGE(Fault.DOMAIN, "{0} \"{1}\" is outside the wire gauges 24 to 1 and 1/0 to 4/0 AWG"),
  NOT_A_STANDARD_AREA(
      Fault.DOMAIN,
      "{0} is {1} mm²; the standard sizes are {2} mm² (for a gauge write \"12 AWG\")"),
  NO_RESISTANCE(
      Fault.NO_ANSWER, "no table here gives the resistance of {0} in {1}; take the next size"),
  CANNOT_CARRY(
      Fault.NO_ANSWER,
      "this cable cannot carry {0} W from {2} V: at most {1} W could arrive; take a thicker or"
          + " shorter cable or more volts");

  private final Fault fault;
  private final String sentence;

  CableReason(Fault fault, String sentence) {
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
