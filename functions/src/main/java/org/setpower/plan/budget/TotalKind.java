package org.setpower.plan.budget;

import org.setpower.base.TextEnum;

/** What a row of totals is. */
public enum TotalKind implements TextEnum {
  /** Above the rows of accounts, and of departments. */
  HEADING("heading"),
  /** Of one account or department. */
  GROUP("group"),
  /** A line that is a stop: named, not counted. */
  WITHHELD("withheld"),
  /** What was approved and stands in no line that counts. */
  DIFFERENCE("difference"),
  /** Before contingency. */
  SUBTOTAL("subtotal"),
  CONTINGENCY("contingency"),
  TOTAL("total");

  private final String word;

  TotalKind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
