package org.setpower.supply;

import org.setpower.base.Fault;
import org.setpower.base.Reason;

/** Why a question about loads, legs or a generator has no answer. */
public enum SupplyReason implements Reason {
  THIRD_LEG(Fault.DOMAIN, "a3 is {0}, but a split supply has two legs; write 0"),
  NO_POWER_FACTOR(
      Fault.DOMAIN,
      "{0} is {1}; a power factor is more than 0 and at most 1 (negative when it leads)"),
  TOO_FEW_LEGS(Fault.DOMAIN, "a load across {0} legs does not fit a supply of {1}"),
  TAKEN_CELLS(Fault.DOMAIN, "taken has {0} cells, but the supply has {1} legs"),
  SPAN_NOT_POSSIBLE(Fault.DOMAIN, "{0} is {1}; a load hangs across 1, 2 or 3 legs"),
  ALL_ZERO(Fault.NO_ANSWER, "no leg carries anything, so there is no unbalance");

  private final Fault fault;
  private final String sentence;

  SupplyReason(Fault fault, String sentence) {
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
