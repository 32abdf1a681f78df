package org.setpower.plan.batteryday.typed;

import java.util.List;

/** What the volts of a label, its watt-hours over its amp-hours, say of a battery. */
public final class LabelVolts {
  private static final double CLOSE = 0.01;

  /** V of a cell that labels of Li-ion count with. */
  private static final List<Double> LI_ION = List.of(3.6, 3.7);

  /** V of a cell that labels of LFP count with. */
  private static final List<Double> LFP = List.of(3.2, 3.3);

  /** Cells in series of LFP batteries for 12, 24 and 48 V. */
  private static final List<Integer> LFP_CELLS = List.of(4, 8, 15, 16);

  private static final int MOST_CELLS = 16;

  private LabelVolts() {}

  /**
   * Whether these are the volts of Li-ion cells in series and not those of an LFP battery. NiMH is
   * not told apart: 14.4 V are 12 of its cells too, but nobody uses it on a plate any more.
   */
  public static boolean isLiIonOnly(double volts) {
    boolean liIon = false;
    for (int n = 1; n <= MOST_CELLS; n++) {
      int cells = n;
      liIon |= LI_ION.stream().anyMatch(v -> isClose(volts, cells * v));
    }
    return liIon
        && LFP_CELLS.stream().noneMatch(n -> LFP.stream().anyMatch(v -> isClose(volts, n * v)));
  }

  private static boolean isClose(double volts, double nominal) {
    return Math.abs(volts / nominal - 1) <= CLOSE;
  }

  /**
   * The nominal voltage of a battery of these volts: that of its plate, or 7.2 V of two cells that
   * slide onto a device; empty if not clear.
   */
  public static List<Double> nominal(double volts) {
    if (isClose(volts, 7.2) || isClose(volts, 7.4)) {
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
