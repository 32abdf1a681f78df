package org.setpower.plan.batteryday.simulation;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.setpower.base.EvaluationException;
import org.setpower.pack.Chemistry;
import org.setpower.pack.DeviceLoad;
import org.setpower.pack.Discharge;
import org.setpower.pack.EnergyRuntime;
import org.setpower.pack.Pack;
import org.setpower.pack.TemperatureDerating;

/**
 * What a position draws on: the batteries that work at the same time, as one.
 *
 * @param cells in series, of all that work together
 * @param ampHours rated, of all that work together
 * @param milliohms of all that work together; null where only the label is known
 * @param wattHours on the labels of all that work together
 * @param health share of the rated figures that a full battery still gives
 * @param cutoffVolts at the device; 0 without a limit
 * @param leadOhms of the cable, out and back
 * @param changeAt state of charge at which it is changed
 * @param measured null where its runtime is calculated
 */
public record BatteryFeed(
    Chemistry chemistry,
    double cells,
    double ampHours,
    Double milliohms,
    double wattHours,
    double health,
    double cutoffVolts,
    double leadOhms,
    double changeAt,
    Measured measured) {
  /**
   * What a measured runtime says.
   *
   * @param share of the calculated hours; 1 if it is longer
   * @param wattHours that were taken out; 0 if it is shorter
   */
  public record Measured(double share, double wattHours) {}

  private static final int POINTS = 10;
  private static final int MOST_KEPT = 4000;

  /** Curves of the last plans: an edit changes few of them. */
  private static final Map<Key, FeedCurve> KEPT = new ConcurrentHashMap<>();

  private record Key(BatteryFeed feed, double watts, int temp) {}

  /** A feed whose runtime is calculated. */
  public BatteryFeed(
      Chemistry chemistry,
      double cells,
      double ampHours,
      Double milliohms,
      double wattHours,
      double health,
      double cutoffVolts,
      double leadOhms,
      double changeAt) {
    this(
        chemistry,
        cells,
        ampHours,
        milliohms,
        wattHours,
        health,
        cutoffVolts,
        leadOhms,
        changeAt,
        null);
  }

  /**
   * The same with the hours that were measured from full until the device stops.
   *
   * @param watts at which they were measured
   * @param temp °C
   */
  public BatteryFeed measured(double hours, double watts, double temp) {
    double calculated = with(0, null).hours(watts, temp);
    return with(
        changeAt,
        hours <= calculated ? new Measured(hours / calculated, 0) : new Measured(1, hours * watts));
  }

  private BatteryFeed with(double change, Measured other) {
    return new BatteryFeed(
        chemistry,
        cells,
        ampHours,
        milliohms,
        wattHours,
        health,
        cutoffVolts,
        leadOhms,
        change,
        other);
  }

  /**
   * The hours of a battery at this power; whole degrees, so that few curves are needed.
   *
   * @param temp °C, rounded down
   */
  FeedCurve curve(double watts, int temp) {
    Key key = new Key(this, watts, temp);
    FeedCurve kept = KEPT.get(key);
    if (kept == null) {
      kept = calculated(watts, temp);
      if (KEPT.size() >= MOST_KEPT) {
        KEPT.clear();
      }
      KEPT.put(key, kept);
    }
    return kept;
  }

  /**
   * Hours from full until it has to be changed, by volts and by energy: the shorter; 0 if it does
   * not start.
   */
  public double hours(double watts, double temp) {
    return curve(watts, (int) Math.floor(temp)).hours(1);
  }

  /**
   * The state of charge that is left after its hours, as a gauge that counts energy shows it: what
   * the cold keeps and what the rule keeps.
   */
  public double chargeLeft(double watts, double temp) {
    FeedCurve curve = curve(watts, (int) Math.floor(temp));
    return Math.max(curve.end(), 1 - curve.hours(1) * watts / (wattHours * health));
  }

  /** Hours by the energy on the label alone, less what the cold and the rule keep. */
  public double hoursByEnergy(double watts, double temp) {
    return EnergyRuntime.hours(
        EnergyRuntime.usable(wattHours, 1, health, temp, changeAt, chemistry), watts);
  }

  /**
   * Whether there are figures for these cells at this temperature.
   *
   * @throws EvaluationException that says why not
   */
  public void requireKnown(double temp) {
    pack(temp);
    TemperatureDerating.energyLeft(chemistry, temp);
  }

  private Pack pack(double temp) {
    return milliohms == null
        ? Pack.byLabel(chemistry, cells, ampHours, health, temp)
        : Pack.of(chemistry, cells, ampHours, milliohms, health, temp);
  }

  private FeedCurve calculated(double watts, double temp) {
    if (measured == null) {
      return calculated(watts, temp, 1);
    }
    if (measured.wattHours > 0) {
      FeedCurve whole = with(0, null).calculated(watts, temp, 1);
      double hours = measured.wattHours / watts;
      if (whole != FeedCurve.NEVER && hours > whole.hours(1)) {
        return longer(hours, whole.end());
      }
    }
    return calculated(watts, temp, measured.share);
  }

  /**
   * A battery that works longer than calculated, once it has started: it heats itself. What is left
   * falls evenly with the charge, to that at which its rated energy is used up so far.
   *
   * @param starts charge below which it does not start
   */
  private FeedCurve longer(double hours, double starts) {
    double stops = Math.min(starts, Math.max(0, 1 - measured.wattHours / (wattHours * health)));
    double end = Math.max(stops, changeAt);
    return new FeedCurve(
        new double[] {1, end},
        new double[] {hours * (1 - end) / (1 - stops), 0},
        Math.max(starts, changeAt));
  }

  /**
   * @param part of the hours that the position has
   */
  private FeedCurve calculated(double watts, double temp, double part) {
    Discharge discharge;
    double byEnergy;
    try {
      discharge =
          Discharge.of(pack(temp), new DeviceLoad(watts, cutoffVolts, leadOhms), 1, changeAt);
      byEnergy =
          EnergyRuntime.hours(
              EnergyRuntime.usable(wattHours, 1, health, temp, changeAt, chemistry), watts);
    } catch (EvaluationException e) {
      return FeedCurve.NEVER;
    }
    double whole = discharge.hours();
    double share = Math.min(1, byEnergy / whole);
    double end = discharge.endCharge();
    double[] charge = new double[POINTS + 1];
    double[] hours = new double[POINTS + 1];
    for (int i = 0; i <= POINTS; i++) {
      charge[i] = i == POINTS ? end : 1 - (1 - end) * i / POINTS;
      hours[i] = i == POINTS ? 0 : (whole - discharge.at(charge[i]).hours()) * share * part;
    }
    return whole > 0 && end < 1 ? new FeedCurve(charge, hours) : FeedCurve.NEVER;
  }
}
