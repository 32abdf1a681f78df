package org.setpower.plan.quote;

import org.setpower.base.TextEnum;

/** What a line of a paper that goes with the kit is. */
public enum PaperKind implements TextEnum {
  GOODS("goods"),
  SUM("sum"),
  /** The only line while Quote or Picking has a stop. */
  NOT_ISSUED("not to be issued");

  private final String word;

  PaperKind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
