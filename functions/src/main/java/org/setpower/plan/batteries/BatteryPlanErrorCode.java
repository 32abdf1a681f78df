package org.setpower.plan.batteries;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a plan cannot be made. */
public enum BatteryPlanErrorCode implements ErrorCode {
  ENDS_BEFORE_START(ErrorKind.DOMAIN, "row {0} of {1} ends at {3} h, not after its start at {2} h"),
  NO_SUCH_PACK(
      ErrorKind.DOMAIN,
      "row {0} of devices takes batteries of {1} Wh; packs has none, only {2} Wh"),
  TOO_MANY_EVENTS(
      ErrorKind.DOMAIN,
      "the plan has more than {0} events; a device empties its batteries within"
          + " minutes: check watts and Wh"),
  TOO_MANY_DEVICES(ErrorKind.DOMAIN, "{0} devices; maximum {1}"),
  TOO_MANY_PACKS(ErrorKind.DOMAIN, "packs has more than {0} batteries; plan fewer at a time"),
  MIX_TOO_LARGE(ErrorKind.DOMAIN, "options has {0} rows; maximum {1}"),
  MIX_TOO_HARD(
      ErrorKind.NO_CONVERGENCE,
      "these options are too similar to find the cheapest mix in time; leave some out"),
  NO_MIX(
      ErrorKind.NO_ANSWER,
      "no mix of these options gives {0} Wh and {1} W within {2}; allow more or use"
          + " other batteries");

  private final ErrorKind fault;
  private final String sentence;

  BatteryPlanErrorCode(ErrorKind fault, String sentence) {
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
