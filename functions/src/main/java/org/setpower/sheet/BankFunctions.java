package org.setpower.sheet;

/** BANK: packs together. */
public final class BankFunctions {
  private BankFunctions() {}

  static final Group GROUP = new Group("BANK", "packs together");
}
