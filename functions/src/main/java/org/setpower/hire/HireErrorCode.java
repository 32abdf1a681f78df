package org.setpower.hire;

import org.setpower.base.ErrorCode;
import org.setpower.base.ErrorKind;

/** Why a question about hire money has no answer. */
public enum HireErrorCode implements ErrorCode {
  BACK_BEFORE_OUT(ErrorKind.DOMAIN, "back_date {1} is before out_date {0}"),
  TOO_LONG(ErrorKind.DOMAIN, "{0} to {1} is longer than {2} days; check the dates"),
  UNKNOWN_CURRENCY(
      ErrorKind.DOMAIN,
      "{0} \"{1}\" is not a currency of ISO 4217; write three letters such as \"EUR\""),
  NO_MINOR_UNIT(ErrorKind.NO_ANSWER, "ISO 4217 gives {0} no minor unit to round to"),
  NEVER_PAYS(ErrorKind.NO_ANSWER, "never breaks even: hire {0}/day, maintenance {1}/day"),
  UNKNOWN_KIND(
      ErrorKind.DOMAIN,
      "row {0} of the days: \"{1}\" is not in kind_shares; add it with its share"),
  KIND_TWICE(ErrorKind.DOMAIN, "kind_shares has \"{0}\" twice, with {1} and {2}");

  private final ErrorKind fault;
  private final String sentence;

  HireErrorCode(ErrorKind fault, String sentence) {
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
