package org.setpower.sheet;

/** LOAD: what is plugged in. */
public final class LoadFunctions {
  private LoadFunctions() {}

  static final Group GROUP = new Group("LOAD", "what is plugged in");
}
