package org.setpower.fleet;

import org.setpower.base.Word;

/** Which end of what measured cells leave open. */
public enum Outlook implements Word {
  /** As the poorest, and poorer. */
  LEAST("least"),
  /** As the best, and better. */
  MOST("most");

  private final String word;

  Outlook(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
