package org.setpower.plan.quote.terms;

import org.setpower.base.TextEnum;

/** What a client who pays the damage waiver is charged for a lost or stolen piece. */
public enum WaivedLoss implements TextEnum {
  IN_FULL("in full"),
  /** As damage. */
  UP_TO_EXCESS("up to the excess");

  private final String word;

  WaivedLoss(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
