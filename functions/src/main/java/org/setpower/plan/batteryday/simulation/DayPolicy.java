package org.setpower.plan.batteryday.simulation;

/**
 * What the rules leave open. All that is tried are schedules that a crew can follow.
 *
 * @param toBreaks whether changes soon after a break are made in it
 * @param chargePartUsed whether a part-used battery goes on a free channel at once
 * @param used which chargers are used, by their place in the day's list
 * @param share of each supply's watts that is used
 */
record DayPolicy(boolean toBreaks, boolean chargePartUsed, boolean[] used, double share) {
  static DayPolicy all(int chargers) {
    boolean[] used = new boolean[chargers];
    java.util.Arrays.fill(used, true);
    return new DayPolicy(true, true, used, 1);
  }
}
