package org.setpower.plan.batteryday.typed;

import org.setpower.base.TextEnum;

/** How full the batteries are at call. */
public enum ChargeAtCall implements TextEnum {
  FULL("full"),
  /** As the plan of the day before leaves them. */
  AS_LEFT("as left");

  private final String word;

  ChargeAtCall(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
