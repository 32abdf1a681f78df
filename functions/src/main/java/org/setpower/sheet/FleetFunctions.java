package org.setpower.sheet;

/** FLEET: stock. */
public final class FleetFunctions {
  private FleetFunctions() {}

  static final Group GROUP = new Group("FLEET", "stock");
}
