package org.setpower.flight;

import org.setpower.base.TextEnum;

/** How packs are packed as cargo. */
public enum Packing implements TextEnum {
  ALONE("alone"),
  WITH_EQUIPMENT("with equipment"),
  IN_EQUIPMENT("in equipment");

  private final String word;

  Packing(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
