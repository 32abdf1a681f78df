package org.setpower.sheet;

/** GENSET: generator. */
public final class GensetFunctions {
  private GensetFunctions() {}

  static final Group GROUP = new Group("GENSET", "generator");
}
