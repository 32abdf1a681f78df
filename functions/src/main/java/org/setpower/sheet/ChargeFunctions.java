package org.setpower.sheet;

/** CHARGE: back to full. */
public final class ChargeFunctions {
  private ChargeFunctions() {}

  static final Group GROUP = new Group("CHARGE", "back to full");
}
