package org.setpower.plan.register;

import org.setpower.plan.finding.ResultWord;

/** What is to be done with a battery next, the most urgent first. */
public enum Action implements ResultWord {
  WARN("warn the client"),
  CALL_BACK("call back"),
  QUARANTINE("quarantine"),
  RETIRE("retire"),
  SERVICE("service"),
  CORRECT("correct the row"),
  INSPECT("inspect"),
  /** Watched, and its test is due. */
  TEST_AND_WATCH("test, then more often"),
  TEST("test"),
  ASK("ask for return"),
  WATCH("test more often");

  private final String word;

  Action(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
