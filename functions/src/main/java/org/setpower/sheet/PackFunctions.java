package org.setpower.sheet;

/** PACK: one battery pack. */
public final class PackFunctions {
  private PackFunctions() {}

  static final Group GROUP = new Group("PACK", "one battery pack");
}
