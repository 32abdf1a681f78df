package org.setpower.sheet;

/** FLIGHT: packs in the air. */
public final class FlightFunctions {
  private FlightFunctions() {}

  static final Group GROUP = new Group("FLIGHT", "packs in the air");
}
