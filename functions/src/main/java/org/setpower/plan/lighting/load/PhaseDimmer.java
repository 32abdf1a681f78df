package org.setpower.plan.lighting.load;

import org.setpower.plan.lighting.input.InrushClass;
import org.setpower.plan.lighting.input.LoadTables.Equipment;

/**
 * A tungsten lamp on a dimmer that cuts the phase: a resistance that conducts during a part of each
 * half-wave. Its level is the share of its power. By the Fourier integrals of a sine that begins at
 * an angle; other dimmers draw less.
 */
public final class PhaseDimmer {
  private static final double ROUNDING = 1e-9;

  private PhaseDimmer() {}

  /** Whether a device is dimmed by cutting the phase. */
  static boolean cuts(Equipment device, double level) {
    return device != null
        && device.inrush() == InrushClass.TUNGSTEN
        && level > ROUNDING
        && level < 1 - ROUNDING;
  }

  /** Current as a share of that at full level; P = I²R. */
  static double current(double level) {
    return Math.sqrt(level);
  }

  /** Third harmonic as a share of the fundamental. */
  static double thirdHarmonic(double level) {
    double angle = angle(level);
    double fundamental =
        Math.hypot((Math.cos(2 * angle) - 1) / 2, Math.PI - angle + Math.sin(2 * angle) / 2);
    double third =
        Math.hypot(
            (Math.cos(4 * angle) - 1) / 4 - (Math.cos(2 * angle) - 1) / 2,
            Math.sin(4 * angle) / 4 - Math.sin(2 * angle) / 2);
    return third / fundamental;
  }

  /** The angle at which it begins to conduct: the less, the more power. */
  private static double angle(double level) {
    double from = 0;
    double to = Math.PI;
    while (to - from > ROUNDING) {
      double middle = (from + to) / 2;
      boolean more = 1 - middle / Math.PI + Math.sin(2 * middle) / 2 / Math.PI > level;
      from = more ? middle : from;
      to = more ? to : middle;
    }
    return (from + to) / 2;
  }
}
