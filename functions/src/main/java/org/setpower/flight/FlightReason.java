package org.setpower.flight;

import org.setpower.base.Fault;
import org.setpower.base.Reason;

/** Why a question about packs in the air has no answer. */
public enum FlightReason implements Reason {
  BEFORE_OLDEST(
      Fault.NO_ANSWER, "the oldest rules held here are of {1}; none answers for {0} on {2}"),
  AFTER_EDITION(
      Fault.NO_ANSWER,
      "the rules held here ({0}) end on {1} and do not answer for {2}: ask the operating carrier,"
          + " the airline that flies it, which rules hold on that day"),
  NO_COUNT(Fault.NO_ANSWER, "{0} name no number a person for {1}: {2}; ask the airline"),
  ASK_FIRST(Fault.NO_ANSWER, "no number is confirmed for this: ask the airline. {0}"),
  NOT_IN_CABIN(
      Fault.NO_ANSWER, "row {0}: a pack of {1} Wh cannot travel as a spare in the cabin: {2}"),
  ANSWER_MISSING(
      Fault.NO_ANSWER,
      "flight {0} of {1}: the airline must agree and has not answered; type the number a person it"
          + " agrees to, or 0"),
  CARGO_CHEMISTRY(
      Fault.NO_ANSWER,
      "{0} is not under the lithium rules held here; ask the forwarder which UN number and packing"
          + " instruction apply"),
  CARGO_NOT_PRINTED(
      Fault.NO_ANSWER,
      "without printed watt-hours no section can be named; ask the maker for them"),
  CHARGE_RECOMMENDED(
      Fault.NO_ANSWER, "recommended 30 % of the rated Wh, not mandatory, for {0} on {1}"),
  CHARGE_FREE(Fault.NO_ANSWER, "the rules held here set no limit of charge for {0} on {1}");

  private final Fault fault;
  private final String sentence;

  FlightReason(Fault fault, String sentence) {
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
