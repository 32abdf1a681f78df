package org.setpower.plan.batteryday.simulation;

/** What a search may still cost, in figures looked at; the same for the same plan everywhere. */
final class Effort {
  private long left;

  Effort(long most) {
    left = most;
  }

  void spend(long cost) {
    left -= cost;
  }

  long left() {
    return left;
  }

  boolean isSpent() {
    return left <= 0;
  }
}
