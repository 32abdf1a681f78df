package org.setpower.plan.batteryday.simulation;

import java.util.List;

/**
 * What happens at a position: all that goes on it and comes off it at an hour.
 *
 * @param unit its place in the day's list of units
 * @param on numbers of the batteries that go on
 * @param from the unit that each of them is taken from; −1 for shelf and chargers
 * @param off numbers of the batteries that come off
 * @param to where each of them goes
 */
public record DayEvent(
    double hour,
    What what,
    int unit,
    List<Integer> on,
    List<Integer> from,
    List<Integer> off,
    List<Goes> to) {
  /** What happens. */
  public enum What {
    START,
    CHANGE,
    /** A battery comes off; the others of its plate work. */
    OFF,
    /** Nothing is there to put on. */
    DARK,
    ON_AGAIN,
    /** What was found at the hour of planning again: it is there, nobody has to do it. */
    FOUND,
    END;

    /** Whether somebody changes a battery. */
    public boolean isChange() {
      return this == CHANGE || this == ON_AGAIN;
    }
  }

  /**
   * Where a battery goes that comes off; the shelf where nothing is said.
   *
   * @param charge null without a charger
   * @param unit that takes it; −1 for none
   * @param away whether it is neither used nor charged any more
   */
  public record Goes(Charge charge, int unit, boolean away) {}

  /**
   * A battery on a charger.
   *
   * @param battery its number
   * @param charger row of the charger
   * @param channel from 1
   * @param isLater whether it waits on the shelf until the charger has power
   * @param start hour at which it charges
   * @param usable hour from which it may be taken
   * @param full hour at which it is full
   * @param back hour at which it is on set again, full
   * @param usableCharge state of charge from which it may be taken
   * @param fullCharge state of charge at which the charge ends
   * @param isCut whether it ends before it is full, with the power of the charger
   */
  public record Charge(
      int battery,
      int charger,
      int channel,
      boolean isLater,
      double start,
      double usable,
      double full,
      double back,
      double usableCharge,
      double fullCharge,
      boolean isCut) {
    /** The same charge, ended at an hour. */
    Charge ended(double hour) {
      return new Charge(
          battery,
          charger,
          channel,
          isLater,
          start,
          Math.min(usable, hour),
          hour,
          hour,
          usableCharge,
          fullCharge,
          false);
    }
  }
}
