package org.setpower.plan.batteries;

import java.util.Map;
import org.setpower.plan.batteryday.simulation.PowerHours;

/**
 * The chargers of a day.
 *
 * @param channels how many packs charge at the same time
 * @param hours for a charge, whatever the state of charge, because its last part is the slowest
 * @param hoursBySize hours for packs of some sizes (Wh on the label), in place of {@code hours}
 * @param mains when they have mains
 */
public record ChargerSet(
    int channels, double hours, Map<Double, Double> hoursBySize, PowerHours mains) {
  double hoursFor(double wattHours) {
    return hoursBySize.getOrDefault(wattHours, hours);
  }
}
