package org.setpower.plan.batteryday.simulation;

import java.util.List;

/**
 * All that a day without an hour of planning again depends on, so that what was calculated of it is
 * found again: an edit changes few of a job's days.
 *
 * @param supplies none where nothing charges
 * @param most the most batteries of a search; 0 without one
 */
record DayKey(
    double call,
    double until,
    AirTemperature air,
    double shelf,
    List<DaySpec.Pause> breaks,
    double near,
    List<UnitSpec> units,
    List<BatterySpec> batteries,
    List<ChargerSpec> chargers,
    List<SupplySpec> supplies,
    int most) {
  static DayKey of(DaySpec day, int most) {
    return new DayKey(
        day.call(),
        day.until(),
        day.air(),
        day.shelf(),
        day.breaks(),
        day.near(),
        day.units().stream().map(UnitWork::spec).toList(),
        day.batteries(),
        day.chargers(),
        day.chargers().isEmpty() ? List.of() : day.supplies(),
        most);
  }
}
