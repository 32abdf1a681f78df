package org.setpower.flight;

import org.setpower.base.TextEnum;

/** How a traveller carries a pack. */
public enum CarriageMode implements TextEnum {
  SPARE("spare"),
  IN_EQUIPMENT("in equipment"),
  /** Made to charge other devices. */
  POWER_BANK("power bank"),
  /** Damaged, swollen, dropped or recalled. */
  DAMAGED("damaged");

  private final String word;

  CarriageMode(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
