package org.setpower.fleet;

import org.setpower.base.TextEnum;

/** Which end of what measured cells leave open. */
public enum ForecastBound implements TextEnum {
  /** As the poorest, and poorer. */
  LEAST("least"),
  /** As the best, and better. */
  MOST("most");

  private final String word;

  ForecastBound(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
