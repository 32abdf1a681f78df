package org.setpower.supply;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a question about loads, legs or a generator has no answer. */
public enum SupplyErrorCode implements ErrorCode {
  THIRD_LEG(ErrorKind.DOMAIN, "a3 is {0}, but a split supply has two legs; write 0"),
  NO_POWER_FACTOR(
      ErrorKind.DOMAIN,
      "{0} is {1}; a power factor is more than 0 and at most 1 (negative when it leads)"),
  TOO_FEW_LEGS(ErrorKind.DOMAIN, "a load across {0} legs does not fit a supply of {1}"),
  TAKEN_CELLS(ErrorKind.DOMAIN, "taken has {0} cells, but the supply has {1} legs"),
  TOO_MANY_LOADS(ErrorKind.DOMAIN, "{0} loads; maximum {1}"),
  SPAN_NOT_POSSIBLE(ErrorKind.DOMAIN, "{0} is {1}; a load is connected across 1, 2 or 3 legs"),
  BEYOND_DERATE(
      ErrorKind.NO_ANSWER,
      "no derating of a {0} generator is known above {1} {2} ({3} {2}); ask its maker"),
  NO_SET(ErrorKind.NO_ANSWER, "none of the sizes reaches {0} kVA; the largest is {1} kVA"),
  NO_CHART(ErrorKind.NO_ANSWER, "the fuel chart covers diesel only, not {0}"),
  OUTSIDE_CHART(ErrorKind.NO_ANSWER, "rated_kw is {0}; the fuel chart covers {1} to {2} kW"),
  OVERLOADED(ErrorKind.NO_ANSWER, "{0} kW exceeds the rated power of the generator ({1} kW)"),
  NO_GRID_YEAR(ErrorKind.NO_ANSWER, "no figure for {0} here; {1} has {2}"),
  ALL_ZERO(ErrorKind.NO_ANSWER, "no leg carries current, so there is no unbalance");

  private final ErrorKind fault;
  private final String sentence;

  SupplyErrorCode(ErrorKind fault, String sentence) {
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
