package org.setpower.plan.batteryday.simulation;

import java.util.List;

/**
 * One piece of a position: one lamp of eight, one camera.
 *
 * @param position its row
 * @param piece 1 for the first piece of the position
 * @param priority 1 is the most important, goes dark last
 * @param type of battery
 * @param batteries at the same time
 * @param spans when it is on, in order, without overlap
 */
public record UnitSpec(
    int position,
    int piece,
    double priority,
    int type,
    BatteryConnection connection,
    int batteries,
    BatteryFeed feed,
    List<Span> spans) {
  /** On from one hour to another, at one power. */
  public record Span(double from, double to, double watts) {}

  /** Whether batteries are on it at an hour: it is on, or in a break after which it goes on. */
  public boolean isUsedAt(double hour, List<DaySpec.Pause> breaks) {
    return Stretch.of(this, breaks).stream()
        .anyMatch(s -> hour >= s.from() - DayRun.SAME && hour < s.to() - DayRun.SAME);
  }

  boolean isHotSwap() {
    return connection == BatteryConnection.HOT_SWAP;
  }
}
