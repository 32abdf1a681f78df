package org.setpower.plan.batteryday.typed;

import java.util.List;

/** What the volts of a label, its watt-hours over its amp-hours, say of a battery. */
public final class LabelVolts {
  /** Relative; of large batteries. */
  private static final double CLOSE = 0.01;

  /** Relative; of small ones, whose labels are rounded: 47 Wh and 6.6 Ah are 7.2 V. */
  private static final double FAR = 0.03;

  /** V of a cell that labels of Li-ion count with. */
  private static final List<Double> LI_ION = List.of(3.6, 3.7);

  /** V of a cell that labels of LFP count with. */
  private static final List<Double> LFP = List.of(3.2, 3.3);

  /** Cells in series of LFP batteries for 12, 24 and 48 V. */
  private static final List<Integer> LFP_CELLS = List.of(4, 8, 15, 16);

  private static final int MOST_CELLS = 16;

  private LabelVolts() {}

  /**
   * Whether a label's are the volts of Li-ion cells in series and not those of an LFP battery. NiMH
   * is not told apart: 14.4 V are 12 of its cells too, but nobody uses it on a plate any more.
   */
  public static boolean isLiIonOnly(double wattHours, double ampHours) {
    double volts = wattHours / ampHours;
    double tolerance = tolerance(wattHours, ampHours);
    boolean liIon = false;
    for (int n = 1; n <= MOST_CELLS; n++) {
      int cells = n;
      liIon |= LI_ION.stream().anyMatch(v -> isClose(volts, cells * v, tolerance));
    }
    return liIon
        && LFP_CELLS.stream()
            .noneMatch(n -> LFP.stream().anyMatch(v -> isClose(volts, n * v, tolerance)));
  }

  private static boolean isClose(double volts, double nominal, double tolerance) {
    return Math.abs(volts / nominal - 1) <= tolerance;
  }

  /** What half a watt-hour and half a tenth of an amp-hour are of a label. */
  private static double tolerance(double wattHours, double ampHours) {
    return Math.min(FAR, Math.max(CLOSE, 0.5 / wattHours + 0.05 / ampHours));
  }

  /**
   * The nominal voltage of a battery of these volts: that of its plate, or 7.2 V of two cells that
   * slide onto a device; empty if not clear.
   */
  public static List<Double> nominal(double wattHours, double ampHours) {
    double volts = wattHours / ampHours;
    double tolerance = tolerance(wattHours, ampHours);
    if (isClose(volts, 7.2, tolerance) || isClose(volts, 7.4, tolerance)) {
      return List.of(7.2);
    }
    if (volts >= 10 && volts <= 18) {
      return List.of(12.0);
    }
    if (volts >= 20 && volts <= 32) {
      return List.of(24.0);
    }
    return volts >= 40 && volts <= 60 ? List.of(48.0) : List.of();
  }
}
