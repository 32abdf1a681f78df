package org.setpower.flight;

import org.setpower.base.Word;

/** How a traveller carries a pack. */
public enum Carried implements Word {
  SPARE("spare"),
  IN_EQUIPMENT("in equipment"),
  /** Made to charge other devices. */
  POWER_BANK("power bank"),
  /** Damaged, swollen, dropped or recalled. */
  DAMAGED("damaged");

  private final String word;

  Carried(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
