package org.setpower.sheet;

/** PHASE: legs and neutral. */
public final class PhaseFunctions {
  private PhaseFunctions() {}

  static final Group GROUP = new Group("PHASE", "legs and neutral");
}
