package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** How pieces came back. */
public enum ReturnState implements TextEnum {
  FINE("fine"),
  /** To be assessed. */
  DAMAGED("damaged"),
  /** Charged at replacement value. */
  LOST("lost");

  private final String word;

  ReturnState(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
