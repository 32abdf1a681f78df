package org.setpower.flight;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a question about packs in the air has no answer. */
public enum FlightErrorCode implements ErrorCode {
  BEFORE_OLDEST(
      ErrorKind.NO_ANSWER, "the oldest rules held here are of {1}; none answers for {0} on {2}"),
  AFTER_EDITION(
      ErrorKind.NO_ANSWER,
      "the rules held here ({0}) end on {1} and do not answer for {2}: ask the operating carrier,"
          + " the airline that flies it, which rules hold on that day"),
  NO_COUNT(ErrorKind.NO_ANSWER, "{0} give no number per person for {1}: {2}; ask the airline"),
  ASK_FIRST(ErrorKind.NO_ANSWER, "no number is confirmed for this: ask the airline. {0}"),
  NOT_IN_CABIN(
      ErrorKind.NO_ANSWER,
      "row {0}: a battery of {1} Wh cannot travel as a spare in the cabin: {2}"),
  ANSWER_MISSING(
      ErrorKind.NO_ANSWER,
      "flight {0} of {1}: the airline must agree and has not answered; enter the"
          + " number per person that it agrees to, or 0"),
  CARGO_CHEMISTRY(
      ErrorKind.NO_ANSWER,
      "{0} is not under the lithium rules held here; ask the forwarder which UN number and packing"
          + " instruction apply"),
  CARGO_NOT_PRINTED(
      ErrorKind.NO_ANSWER,
      "without printed watt-hours no section can be named; ask the maker for them"),
  CHARGE_RECOMMENDED(
      ErrorKind.NO_ANSWER, "recommended 30 % of the rated Wh, not mandatory, for {0} on {1}"),
  CHARGE_FREE(ErrorKind.NO_ANSWER, "the rules held here set no limit of charge for {0} on {1}");

  private final ErrorKind fault;
  private final String sentence;

  FlightErrorCode(ErrorKind fault, String sentence) {
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
