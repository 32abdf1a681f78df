package org.setpower.plan.lighting.load;

import org.setpower.plan.lighting.input.Connection;
import org.setpower.plan.lighting.input.LoadTables.Equipment;

/** The third harmonic of a device, which no type plate names: what counts where it is not typed. */
public final class ThirdHarmonic {
  /** From this share on the neutral of a multi-core cable heats it: IEC 60364-5-52, annex E. */
  public static final double HEATS = 0.15;

  /** From here on electronics correct their power factor: common practice. */
  private static final double CORRECTED = 0.9;

  /** IEC 61000-3-2, class C over 25 W: 30 % times the power factor (from memory). */
  private static final double LIMIT = 0.3;

  /** A rectifier without correction: 70 to 80 % (from memory). */
  private static final double RECTIFIER = 0.8;

  private ThirdHarmonic() {}

  /** The typed share of the fundamental, or the most that its kind and power factor allow. */
  public static double of(Equipment device, double powerFactor) {
    if (device.harmonic() != null) {
      return device.harmonic();
    }
    if (device.inrush() != null && device.inrush().isSine()) {
      return 0;
    }
    return powerFactor >= CORRECTED ? LIMIT * powerFactor : uncorrected(powerFactor);
  }

  /** With no shift between current and voltage all that lowers the power factor is harmonics. */
  private static double uncorrected(double powerFactor) {
    return Math.min(RECTIFIER, Math.sqrt(1 / (powerFactor * powerFactor) - 1));
  }

  /** Whether it is assumed and not typed. */
  public static boolean isAssumed(Equipment device) {
    return device.harmonic() == null && (device.inrush() == null || !device.inrush().isSine());
  }

  /** Whether nothing but the power factor bounds it, so that somebody must look it up. */
  public static boolean isOpen(Equipment device) {
    boolean toNeutral =
        device.connection() == null || device.connection() == Connection.LINE_NEUTRAL;
    return toNeutral
        && isAssumed(device)
        && device.powerFactor() != null
        && device.powerFactor() < CORRECTED;
  }
}
