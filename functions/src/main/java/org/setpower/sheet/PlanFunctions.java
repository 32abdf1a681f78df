package org.setpower.sheet;

/** PLAN: the whole day. */
public final class PlanFunctions {
  private PlanFunctions() {}

  static final Group GROUP = new Group("PLAN", "the whole day");
}
