package org.setpower.plan.batteryday.simulation;

import java.util.List;

/**
 * What happens at a position.
 *
 * @param unit its place in the day's list of units
 * @param on numbers of the batteries that go on
 * @param off numbers of the batteries that come off
 * @param to where each of them goes, in the same order; null for the shelf
 */
public record DayEvent(
    double hour, What what, int unit, List<Integer> on, List<Integer> off, List<Charge> to) {
  /** What happens. */
  public enum What {
    START,
    CHANGE,
    DARK,
    ON_AGAIN,
    END
  }

  /**
   * A battery on a charger.
   *
   * @param battery its number
   * @param charger row of the charger
   * @param channel from 1
   * @param start hour at which it charges
   * @param usable hour from which it may be taken
   * @param full hour at which it is full
   * @param back hour at which it is on set again, full
   * @param usableCharge state of charge from which it may be taken
   */
  public record Charge(
      int battery,
      int charger,
      int channel,
      double start,
      double usable,
      double full,
      double back,
      double usableCharge) {
    /** The same charge, ended at an hour. */
    Charge ended(double hour) {
      return new Charge(
          battery, charger, channel, start, Math.min(usable, hour), hour, hour, usableCharge);
    }
  }
}
