package org.setpower.plan.lighting.protection;

import org.setpower.base.TextEnum;

/** Whether an earth fault at the end of a cable is disconnected in time. */
public enum Disconnection implements TextEnum {
  YES("yes"),
  BY_RCD("by RCD"),
  UNKNOWN("not known"),
  NO("no");

  private final String word;

  Disconnection(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
