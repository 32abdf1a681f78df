package org.setpower.plan.finding;

/** The one word a row has; the codes are the same in every language. */
public enum Verdict {
  OK("ok"),
  CHECK("check"),
  STOP("stop");

  private final String code;

  Verdict(String code) {
    this.code = code;
  }

  /** The code as cells hold it. */
  public String code() {
    return code;
  }
}
