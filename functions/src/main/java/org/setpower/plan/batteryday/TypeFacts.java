package org.setpower.plan.batteryday;

import java.util.List;
import org.setpower.pack.Chemistry;
import org.setpower.plan.batteryday.simulation.BatteryConnection;
import org.setpower.plan.batteryday.simulation.BatteryFeed;
import org.setpower.plan.finding.Identity;

/**
 * What is known of a type of battery.
 *
 * @param row its row, by which the day knows it
 * @param outputs nominal voltages
 * @param mount as it is typed; empty for any
 * @param milliohms of one battery at its highest voltage; null where only the label is known
 */
record TypeFacts(
    int row,
    String name,
    Chemistry chemistry,
    double cells,
    double ampHours,
    double wattHours,
    List<Double> outputs,
    double maxAmps,
    String mount,
    Double milliohms,
    double health) {
  /** Share of the rated capacity that is assumed where it is not typed. */
  static final double ASSUMED_HEALTH = 0.8;

  /** 12.5 V typed are 12 V. */
  private static final double SAME = 0.05;

  /** The mount as it is compared; empty for any. */
  String mountIdentity() {
    return Identity.of(mount);
  }

  private double highest() {
    return outputs.stream().mapToDouble(o -> o).max().orElseThrow();
  }

  /** Parts of a battery that lie side by side at a lower nominal voltage. */
  private double halves(double voltsEach) {
    return Math.max(1, highest() / voltsEach);
  }

  /** V on the label of one battery at a nominal voltage, which is but the name of its plate. */
  double voltsAt(double voltsEach) {
    return wattHours / ampHours / halves(voltsEach);
  }

  /** One of its nominal voltages that is meant by what is typed; null where it has no such one. */
  Double output(double typed) {
    return outputs.stream().filter(o -> Math.abs(o - typed) <= SAME * o).findFirst().orElse(null);
  }

  double lowest() {
    return outputs.stream().mapToDouble(o -> o).min().orElseThrow();
  }

  /** Capacity at a nominal voltage, Ah. */
  double ampHoursAt(double voltsEach) {
    return ampHours * halves(voltsEach);
  }

  /** Resistance at a nominal voltage; null where only the label is known. */
  Double milliohmsAt(double voltsEach) {
    double halves = halves(voltsEach);
    return milliohms == null ? null : (Double) (milliohms / halves / halves);
  }

  /** Cells in series at a nominal voltage. */
  double cellsAt(double voltsEach) {
    return cells / halves(voltsEach);
  }

  /**
   * What a position draws on.
   *
   * @param volts nominal, asked of all together
   * @param count batteries at the same time
   */
  BatteryFeed feed(
      double volts,
      BatteryConnection connection,
      int count,
      double cutoffVolts,
      double leadOhms,
      double changeAt) {
    int series = connection == BatteryConnection.SERIES ? count : 1;
    int parallel = connection == BatteryConnection.PARALLEL ? count : 1;
    double each = volts / series;
    return new BatteryFeed(
        chemistry,
        cellsAt(each) * series,
        ampHoursAt(each) * parallel,
        milliohms == null ? null : milliohmsAt(each) * series / parallel,
        wattHours * series * parallel,
        health,
        cutoffVolts,
        leadOhms,
        changeAt);
  }
}
