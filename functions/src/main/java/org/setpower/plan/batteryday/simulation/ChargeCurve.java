package org.setpower.plan.batteryday.simulation;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.setpower.base.EvaluationException;
import org.setpower.charge.Charging;
import org.setpower.pack.Chemistry;

/** Hours that a battery type takes at one charger, by state of charge; straight between points. */
public final class ChargeCurve {
  private static final int POINTS = 40;
  private static final int MOST_KEPT = 1000;

  /** Curves of the last plans: an edit changes few of them. */
  private static final Map<Key, ChargeCurve> KEPT = new ConcurrentHashMap<>();

  private record Key(
      Chemistry chemistry,
      double cells,
      double ampHours,
      Double milliohms,
      double amps,
      double temp) {}

  private final double[] hours = new double[POINTS + 1];

  private ChargeCurve(Charging charging) {
    for (int i = 1; i <= POINTS; i++) {
      hours[i] = Math.max(hours[i - 1], charging.hours(0, (double) i / POINTS));
    }
  }

  /**
   * The curve of a type at a charger.
   *
   * @param ampHours rated
   * @param milliohms null where only the label is known
   * @param temp °C of the air at the charger
   * @throws EvaluationException if it must not charge so
   */
  public static ChargeCurve of(
      Chemistry chemistry,
      double cells,
      double ampHours,
      Double milliohms,
      double amps,
      double temp) {
    Key key = new Key(chemistry, cells, ampHours, milliohms, amps, temp);
    ChargeCurve kept = KEPT.get(key);
    if (kept == null) {
      kept = new ChargeCurve(Charging.of(chemistry, cells, ampHours, milliohms, amps, temp));
      if (KEPT.size() >= MOST_KEPT) {
        KEPT.clear();
      }
      KEPT.put(key, kept);
    }
    return kept;
  }

  /** Hours from one state of charge to another. */
  public double hours(double from, double to) {
    return from >= to ? 0 : at(to) - at(from);
  }

  /** The state of charge after some hours. */
  double after(double from, double worked) {
    double target = at(from) + worked;
    int i = 0;
    while (i < POINTS && hours[i + 1] <= target) {
      i++;
    }
    double more = i < POINTS ? (target - hours[i]) / (hours[i + 1] - hours[i]) : 0;
    return Math.max(from, Math.min(1, (i + more) / POINTS));
  }

  private double at(double charge) {
    double place = Math.max(0, Math.min(1, charge)) * POINTS;
    int i = Math.min(POINTS - 1, (int) place);
    return hours[i] + (hours[i + 1] - hours[i]) * (place - i);
  }
}
