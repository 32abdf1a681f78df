package org.setpower.bank;

import org.setpower.base.Checks;
import org.setpower.pack.Chemistry;

/** Figures of a bank of equal packs: {@code series} packs in a string, {@code parallel} strings. */
public final class EqualPacks {
  private EqualPacks() {}

  /** V: series · volts of one pack. */
  public static double volts(double volts, double series) {
    return volts * series;
  }

  /** Ah: parallel · amp-hours of one pack. */
  public static double ampHours(double ampHours, double parallel) {
    return ampHours * parallel;
  }

  /** Wh: volts · amp-hours · number of packs. */
  public static double wattHours(double volts, double ampHours, double series, double parallel) {
    return volts * ampHours * series * parallel;
  }

  /** A: parallel · the limit of one pack; for equal packs that share equally. */
  public static double maxAmps(double maxAmps, double parallel) {
    return maxAmps * parallel;
  }

  /** mΩ: series / parallel · resistance of one pack. */
  public static double milliohms(double milliohms, double series, double parallel) {
    return milliohms * series / parallel;
  }

  /** V just off the charger: cells · series · the full volts of a cell. */
  public static double fullVolts(double cells, double series, Chemistry chemistry) {
    return cells * series * chemistry.fullVolts();
  }

  /** A, prospective short circuit: volts / (pack + lead). The resistance must be above 0. */
  public static double shortAmps(double fullVolts, double milliohms, double leadMilliohms) {
    return fullVolts / Checks.above("milliohms", milliohms + leadMilliohms, 0) * 1000;
  }
}
