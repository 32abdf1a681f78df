package org.setpower.sheet;

/** HIRE: money. */
public final class HireFunctions {
  private HireFunctions() {}

  static final Group GROUP = new Group("HIRE", "money");
}
