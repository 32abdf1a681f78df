package org.setpower.plan.batteries;

import org.setpower.base.EvaluationException;

/**
 * A device that runs on packs from one hour to another.
 *
 * @param row its place in the list, from 1
 * @param watts what it draws from its packs together
 * @param from hour at which it starts; hours go on past 24 after midnight
 * @param to hour at which it ends
 * @param wattHours size of the packs it takes, Wh on the label
 * @param atOnce how many packs it needs at the same time; they are swapped together
 */
public record Device(int row, double watts, double from, double to, double wattHours, int atOnce) {
  public Device {
    if (!(to > from)) {
      throw new EvaluationException(
          BatteryPlanErrorCode.ENDS_BEFORE_START, row, "devices", from, to);
    }
  }
}
