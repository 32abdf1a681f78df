package org.setpower.plan.lighting.load;

/**
 * Currents of the legs at a place as phasors, in arrays of {@value #WIDTH} numbers: real and
 * imaginary part of the fundamental of L1 to L3, third harmonics of L1 to L3, third harmonic of the
 * neutral. Third harmonics of loads add up, the worst case.
 */
public final class LegCurrents {
  /** Numbers of one place. */
  public static final int WIDTH = 10;

  /** Legs of the largest supply. */
  public static final int LEGS = 3;

  private static final int IMAGINARY = LEGS;
  private static final int THIRD = 2 * LEGS;
  private static final int NEUTRAL_THIRD = 3 * LEGS;

  private static final double[] COSINES = {1, -0.5, -0.5};
  private static final double[] SINES = {0, -Math.sqrt(3) / 2, Math.sqrt(3) / 2};
  private static final double[] OPPOSITE = {1, -1, 1};

  private LegCurrents() {}

  /** Angle of a leg's voltage. */
  static double angle(int leg, boolean threePhase) {
    return -leg * (threePhase ? 2 * Math.PI / 3 : Math.PI);
  }

  /**
   * A load.
   *
   * @param legs bits of the legs it hangs on: one line-neutral, two line-line, three balanced
   * @param watts all legs together
   * @param powerFactor true power factor
   * @param harmonic third harmonic as a share of the fundamental
   */
  static double[] load(
      int legs,
      double watts,
      double powerFactor,
      boolean leading,
      double harmonic,
      double legVolts,
      boolean threePhase) {
    double[] load = new double[WIDTH];
    double distortion = Math.sqrt(1 + harmonic * harmonic);
    double shift = Math.acos(Math.min(1, powerFactor * distortion)) * (leading ? -1 : 1);
    int span = Integer.bitCount(legs);
    if (span == 2) {
      int from = legs == 5 ? 2 : Integer.numberOfTrailingZeros(legs);
      int to = legs == 5 ? 0 : from + 1;
      double re = Math.cos(angle(from, threePhase)) - Math.cos(angle(to, threePhase));
      double im = Math.sin(angle(from, threePhase)) - Math.sin(angle(to, threePhase));
      double amps = watts / (legVolts * Math.hypot(re, im) * powerFactor) / distortion;
      add(load, from, amps, Math.atan2(im, re) - shift, harmonic * amps);
      add(load, to, -amps, Math.atan2(im, re) - shift, harmonic * amps);
      return load;
    }
    for (int leg = 0; leg < LEGS; leg++) {
      if ((legs >> leg & 1) == 1) {
        double amps = watts / span / (legVolts * powerFactor) / distortion;
        add(load, leg, amps, angle(leg, threePhase) - shift, harmonic * amps);
        if (span == 1) {
          load[NEUTRAL_THIRD] += (threePhase || leg == 0 ? 1 : -1) * harmonic * amps;
        }
      }
    }
    return load;
  }

  private static void add(double[] load, int leg, double amps, double angle, double third) {
    load[leg] += amps * Math.cos(angle);
    load[IMAGINARY + leg] += amps * Math.sin(angle);
    load[THIRD + leg] += third;
  }

  /** Adds the currents of a load, times a factor, to a place. */
  static void add(double[] sums, int place, double[] load, double factor) {
    int at = place * WIDTH;
    for (int i = 0; i < WIDTH; i++) {
      sums[at + i] += factor * load[i];
    }
  }

  /** Current of a leg, true rms. */
  static double amps(double[] sums, int place, int leg) {
    int at = place * WIDTH;
    double re = sums[at + leg];
    double im = sums[at + IMAGINARY + leg];
    double third = sums[at + THIRD + leg];
    return Math.sqrt(re * re + im * im + third * third);
  }

  /** Current of the neutral, true rms: legs by vectors, third harmonics added. */
  static double neutral(double[] sums, int place) {
    int at = place * WIDTH;
    double re = sums[at] + sums[at + 1] + sums[at + 2];
    double im = sums[at + IMAGINARY] + sums[at + IMAGINARY + 1] + sums[at + IMAGINARY + 2];
    double third = sums[at + NEUTRAL_THIRD];
    return Math.sqrt(re * re + im * im + third * third);
  }

  /**
   * Third harmonics of a leg as a share of its fundamental, or a share found before where that is
   * higher; most are not, and take no root and no division.
   */
  static double harmonic(double[] sums, int place, int leg, double before) {
    int at = place * WIDTH;
    double re = sums[at + leg];
    double im = sums[at + IMAGINARY + leg];
    double third = sums[at + THIRD + leg];
    double square = re * re + im * im;
    return third * third > before * before * square
        ? Math.max(before, third / Math.sqrt(square))
        : before;
  }

  /** Active current of a leg: times the leg's voltage its watts. */
  static double active(double[] sums, int place, int leg, boolean threePhase) {
    int at = place * WIDTH;
    double[] cosine = threePhase ? COSINES : OPPOSITE;
    double sine = threePhase ? SINES[leg] : 0;
    return sums[at + leg] * cosine[leg] + sums[at + IMAGINARY + leg] * sine;
  }
}
