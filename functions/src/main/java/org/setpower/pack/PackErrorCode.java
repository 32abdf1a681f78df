package org.setpower.pack;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a question about a pack has no answer. */
public enum PackErrorCode implements ErrorCode {
  NO_POWER(ErrorKind.NO_ANSWER, "no power: battery output {0} V, plate requires {1} V"),
  NOT_A_CLASS(
      ErrorKind.DOMAIN, "{0} is {1} V; enter the nominal voltage: {2} V (not the measured one)"),
  NOT_AN_OUTPUT(
      ErrorKind.DOMAIN,
      "{0} \"{1}\" is not a list of voltages; write \"12/24\", \"24\" or a number"),
  NO_COLD_DATA(ErrorKind.NO_ANSWER, "battery_temp is {0}; no {1} cells were measured below {2}"),
  CHARGED_COLD(
      ErrorKind.NO_ANSWER,
      "charged_temp is {0}; how full a {1} battery gets so cold was not measured: rest it, and"
          + " take start from PACK.CHARGE"),
  TOO_HOT(ErrorKind.NO_ANSWER, "battery_temp is {0}; do not use {1} batteries above {2}"),
  NO_CURVE(
      ErrorKind.NO_ANSWER,
      "there is no measured voltage curve of {0} cells; use PACK.RUNTIME with the watt-hours"),
  DOES_NOT_START(
      ErrorKind.NO_ANSWER,
      "device does not start: the resting battery has {0} V, but {1} W require more"
          + " than {2} V ({3})"),
  NOTHING_TO_USE(
      ErrorKind.NO_ANSWER,
      "device does not start: the state of charge at the start is {0}, and it stops"
          + " at {1} (as shares)"),
  FLAT(
      ErrorKind.NO_ANSWER,
      "the voltage of {0} cells hardly changes with their charge; use the battery's" + " gauge"),
  BELOW_EMPTY(
      ErrorKind.NO_ANSWER,
      "{0} V is {1} V per cell, below the {2} V of an empty one: quarantine the" + " battery"),
  OVER_FULL(
      ErrorKind.DOMAIN,
      "rest_volts is {0}; {1} {2} cells have {3} V at full charge: check the number" + " of cells"),
  TOO_MANY_STEPS(ErrorKind.DOMAIN, "steps is {0}; at most {1} rows can be shown");

  private final ErrorKind fault;
  private final String sentence;

  PackErrorCode(ErrorKind fault, String sentence) {
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
