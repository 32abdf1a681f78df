package org.setpower.hire;

import org.setpower.base.Fault;
import org.setpower.base.Reason;

/** Why a question about hire money has no answer. */
public enum HireReason implements Reason {
  BACK_BEFORE_OUT(Fault.DOMAIN, "back_date {1} is before out_date {0}"),
  TOO_LONG(Fault.DOMAIN, "{0} to {1} is longer than {2} days; check the dates"),
  UNKNOWN_CURRENCY(
      Fault.DOMAIN,
      "{0} \"{1}\" is not a currency of ISO 4217; write three letters such as \"EUR\""),
  NO_MINOR_UNIT(Fault.NO_ANSWER, "ISO 4217 gives {0} no minor unit to round to"),
  NEVER_PAYS(
      Fault.NO_ANSWER,
      "owning never gets cheaper: a hire day costs {0}, upkeep of an owned one {1} a day"),
  UNKNOWN_KIND(
      Fault.DOMAIN, "row {0} of the days: \"{1}\" is not in kind_shares; add it with its share"),
  KIND_TWICE(Fault.DOMAIN, "kind_shares has \"{0}\" twice, with {1} and {2}");

  private final Fault fault;
  private final String sentence;

  HireReason(Fault fault, String sentence) {
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
