package org.setpower.cable;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a question about a cable has no answer. */
public enum CableErrorCode implements ErrorCode {
  UNKNOWN_SIZE(
      ErrorKind.DOMAIN,
      "{0} \"{1}\" is not a cable size; write \"12 AWG\", \"2/0\", \"2.5 mm²\" or a number in mm²"),
  GAUGE_OR_AREA(
      ErrorKind.DOMAIN,
      "{0} \"{1}\" could be a gauge or an area; write \"{2} AWG\" or \"{2} mm²\""),
  NOT_A_GAUGE(
      ErrorKind.DOMAIN, "{0} \"{1}\" is outside the wire gauges 24 to 1 and 1/0 to 4/0 AWG"),
  NOT_A_STANDARD_AREA(
      ErrorKind.DOMAIN,
      "{0} is {1} mm²; the standard sizes are {2} mm² (for a gauge write \"12 AWG\")"),
  NO_RESISTANCE(
      ErrorKind.NO_ANSWER, "no table here gives the resistance of {0} in {1}; use the next size"),
  CANNOT_CARRY(
      ErrorKind.NO_ANSWER,
      "this cable cannot carry {0} W from {2} V: at most {1} W could arrive; use a"
          + " larger or shorter cable or a higher voltage"),
  NO_RATING(ErrorKind.NO_ANSWER, "no table here gives the current rating of {0} as \"{1}\" cable"),
  TOO_HOT(
      ErrorKind.NO_ANSWER,
      "air_temp is {0}; the tables of this cable end at {1}: shade it, or use"
          + " heat-resistant cable and its maker's figures"),
  LAID_BEYOND_TABLE(
      ErrorKind.NO_ANSWER,
      "{0} {1} are more than the tables cover ({2}); spread or unwind the cable"),
  CLOSED_DRUM(
      ErrorKind.NO_ANSWER, "no table rates a loaded cable on a closed drum; unwind it before use"),
  NO_BREAKER(ErrorKind.NO_ANSWER, "{0} A is above the largest {1} breaker of the list ({2} A)"),
  OVER_RATING(
      ErrorKind.NO_ANSWER,
      "{0} A exceeds the rating of {1} laid like this ({2} A at {3} °C); use a larger cable"),
  BREAKER_BELOW_LOAD(
      ErrorKind.DOMAIN, "breaker is {0} A, less than the {1} A of the load: it would trip"),
  NO_SIZE_FOR_BREAKER(
      ErrorKind.NO_ANSWER,
      "no {0} size as \"{1}\" cable laid like this is rated for a breaker of {2} A;"
          + " split the load, spread the cable or enter a smaller breaker"),
  NO_SIZE_FOR_DROP(
      ErrorKind.NO_ANSWER,
      "even {0} has a voltage drop of {1} V, more than the {2} V allowed; shorten the"
          + " run, split the load or raise the voltage");

  private final ErrorKind fault;
  private final String sentence;

  CableErrorCode(ErrorKind fault, String sentence) {
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
