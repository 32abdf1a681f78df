package org.setpower.plan.batteryday.simulation;

import java.util.List;

/**
 * A day to run. Hours count from the midnight that begins the date and go on past 24.
 *
 * @param call when batteries are handed out
 * @param until the next call, by which batteries charge; infinite if not known
 * @param shelf °C of batteries on the shelf; NaN: as cold as it is outdoors
 * @param breaks hours from and to, in order
 * @param near hours after a break whose changes are made in the break
 * @param now hour from which it is planned again; infinite if it is not
 * @param found what differs at that hour
 */
public record DaySpec(
    double call,
    double until,
    AirTemperature air,
    double shelf,
    List<Pause> breaks,
    double near,
    List<UnitWork> units,
    List<BatterySpec> batteries,
    List<ChargerSpec> chargers,
    List<SupplySpec> supplies,
    double now,
    List<Found> found) {
  /** A break, in which changes keep nobody waiting. */
  public record Pause(double from, double to) {}

  /**
   * A battery that is not as planned.
   *
   * @param charge NaN: as planned
   * @param position row of the position that it is on; 0: on none that is typed
   * @param charger row of the charger that it is on; 0: on none that is typed
   * @param shelf whether it is on no position and no charger
   * @param away whether it is neither used nor charged from now on
   */
  public record Found(
      int number, double charge, int position, int charger, boolean shelf, boolean away) {
    /** The same at the place where it is planned. */
    public Found asPlanned() {
      return new Found(number, charge, 0, 0, false, away);
    }
  }

  /** Whether anything is new at an hour of planning again; else the day runs as it was planned. */
  boolean isAgain() {
    return Double.isFinite(now)
        && (!found.isEmpty() || chargers.stream().anyMatch(ChargerSpec::isLost));
  }

  /**
   * The hour from which it is known that power is lost: that of planning again, or at which it
   * fails; infinite where nothing is lost or it is planned so.
   */
  double told() {
    if (!isAgain() || chargers.stream().noneMatch(ChargerSpec::isLost)) {
      return Double.POSITIVE_INFINITY;
    }
    double fails =
        chargers.stream().mapToDouble(c -> c.planned().firstWithout(c.power())).min().orElseThrow();
    return Math.max(call, Math.min(now, fails));
  }

  /** The same day with other batteries and chargers. */
  DaySpec with(List<BatterySpec> others, List<ChargerSpec> used) {
    return new DaySpec(
        call, until, air, shelf, breaks, near, units, others, used, supplies, now, found);
  }

  /**
   * All that a day without an hour of planning again depends on, so that what was calculated of it
   * is found again: an edit changes few of a job's days.
   *
   * @param supplies none where nothing charges
   * @param most the most batteries of a search; 0 without one
   */
  record Key(
      double call,
      double until,
      AirTemperature air,
      double shelf,
      List<Pause> breaks,
      double near,
      List<UnitSpec> units,
      List<BatterySpec> batteries,
      List<ChargerSpec> chargers,
      List<SupplySpec> supplies,
      int most) {}

  Key key(int most) {
    return new Key(
        call,
        until,
        air,
        shelf,
        breaks,
        near,
        units.stream().map(UnitWork::spec).toList(),
        batteries,
        chargers,
        chargers.isEmpty() ? List.of() : supplies,
        most);
  }
}
