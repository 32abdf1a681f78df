package org.setpower.charge;

import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;
import org.setpower.base.ReferenceTable;
import org.setpower.base.Temperature;
import org.setpower.pack.Chemistry;
import org.setpower.pack.OpenCircuit;
import org.setpower.pack.Pack;

/**
 * A lithium pack on a charger: constant current until the terminals reach the full volts of its
 * cells, then constant volts while the current falls. In the second part E(q) + I·R = V stays; on a
 * straight line of the curve the current is an exponential with the time constant R/m (m = dE/dq),
 * so a charge is a logarithm away: Δt = R/m · ln((V − E₀)/(V − E₁)).
 *
 * <p>In the cold a pack takes less charge and has more resistance: its 0…100 % are those of {@link
 * Pack} at that temperature. Measured cells take longer in the cold although they take less, so up
 * to the end it never takes fewer hours than the same pack at 25 °C. What is missing is added
 * there, where the current falls: until then the measured cell was on time.
 */
public final class Charging {
  /** The charge ends when the current has fallen to this share of the amp-hours (0.05 C). */
  public static final double END_RATE = 0.05;

  /** °C below which no lithium pack is charged (lithium plating). */
  public static final double COLDEST = 0;

  /** °C of the air above which no lithium pack is charged. */
  public static final double HOTTEST = heat("hottest");

  /** °C of the air from which it is told: a pack on a charger is some degrees warmer. */
  public static final double WARM_AIR = heat("warm");

  /** Share of the charge above which the hours are added that a cold pack would be too fast by. */
  private static final double TAIL = 0.95;

  /** A step of the charge that takes no time that could be told. */
  private static final double NEGLIGIBLE = 1e-12;

  /** °C of the tables' reference; above it nothing changes. */
  private static final double WARM = 25;

  /** Ω · Ah of one cell when its resistance is not known: R = 0.3/Ah. */
  public static final double USUAL_OHM_AMP_HOURS = 0.3;

  /**
   * Ω · Ah of one cell below which no resistance counts on the charger: two measured cells of 0.12
   * and 0.16 Ω · Ah in discharge took as long over the last tenth as 0.25 takes.
   */
  public static final double LEAST_OHM_AMP_HOURS = 0.25;

  private final OpenCircuit curve;
  private final double ampHours;
  private final double ohms;
  private final double limitVolts;
  private final double amps;
  private final double endAmps;

  /** The same pack at 25 °C; {@code null} where it is as warm. */
  private final Charging warm;

  /** Hours by which a whole charge of that takes longer. */
  private final double added;

  private static double heat(String quantity) {
    return ReferenceTable.read(Charging.class, "heat.csv").stream()
        .filter(row -> row.text("quantity").equals(quantity))
        .findFirst()
        .orElseThrow()
        .number("value");
  }

  private Charging(Pack pack, double amps, double endAmps, Charging warm) {
    curve = pack.curve();
    ampHours = pack.ampHours();
    ohms = pack.ohms() / pack.cells();
    limitVolts = pack.chemistry().fullVolts();
    this.amps = amps;
    this.endAmps = Math.min(endAmps, amps);
    this.warm = warm;
    added = warm == null ? 0 : Math.max(0, warm.hoursHere(0, 1) - hoursHere(0, 1));
  }

  /**
   * @param cells in series
   * @param ampHours rated
   * @param milliohms of the pack at room temperature; null for 0.3/Ah Ω a cell
   * @param temp °C of the cells
   */
  public static Charging of(
      Chemistry chemistry,
      double cells,
      double ampHours,
      Double milliohms,
      double amps,
      double temp) {
    if (chemistry.family() != Chemistry.LI_ION && chemistry != Chemistry.LFP) {
      throw new EvaluationException(ChargeErrorCode.NOT_CC_CV, chemistry.word());
    }
    if (temp < COLDEST) {
      throw new EvaluationException(
          ChargeErrorCode.TOO_COLD, Temperature.format(temp), Temperature.format(COLDEST));
    }
    if (amps > ampHours) {
      throw new EvaluationException(ChargeErrorCode.TOO_FAST, amps, ampHours);
    }
    double least = cells * LEAST_OHM_AMP_HOURS / ampHours * 1000;
    double known =
        milliohms == null
            ? cells * USUAL_OHM_AMP_HOURS / ampHours * 1000
            : Math.max(milliohms, least);
    double endAmps = END_RATE * ampHours;
    Pack pack = Pack.of(chemistry.family(), cells, ampHours, known, 1, temp);
    if (temp >= WARM) {
      return new Charging(pack, amps, endAmps, null);
    }
    Pack warm = Pack.of(chemistry.family(), cells, ampHours, known, 1, WARM);
    return new Charging(pack, amps, endAmps, new Charging(warm, amps, endAmps, null));
  }

  /** Share of the charge at which the current starts to fall. */
  public double turningCharge() {
    return curve.charge(limitVolts - amps * ohms);
  }

  /** Hours from one share of the charge to another, or to 0.05 C, whichever comes first. */
  public double hours(double from, double to) {
    if (from > to) {
      throw new EvaluationException(ChargeErrorCode.BACKWARDS, from, to);
    }
    double here = hoursHere(from, to);
    double hours = here + added * (inTail(to) - inTail(from));
    boolean toTheEnd = warm != null && to > TAIL;
    return toTheEnd ? Math.max(hours, warm.hoursHere(from, to)) : hours;
  }

  private static double inTail(double charge) {
    return Math.max(0, charge - TAIL) / (1 - TAIL);
  }

  private double hoursHere(double from, double to) {
    double end = Math.min(to, curve.charge(limitVolts - endAmps * ohms));
    double turning = Math.min(end, Math.max(from, turningCharge()));
    return Math.max(0, turning - from) * ampHours / amps + fallingHours(turning, end);
  }

  private double fallingHours(double from, double to) {
    double hours = 0;
    for (int i = curve.segmentBelow(from); i < curve.segments() && from < to; i++) {
      double next = Math.min(to, curve.chargeAt(i + 1));
      if (next > from + NEGLIGIBLE) {
        double low = curve.volts(from);
        double high = curve.volts(next);
        double slope = (high - low) / ((next - from) * ampHours);
        hours += ohms / slope * Math.log((limitVolts - low) / (limitVolts - high));
      }
      from = Math.max(from, next);
    }
    return hours;
  }

  /**
   * Wh from the wall: what goes into the pack over the efficiency of charger and cells together.
   */
  public static double wallWattHours(double wattHours, double from, double to, double efficiency) {
    if (from > to) {
      throw new EvaluationException(ChargeErrorCode.BACKWARDS, from, to);
    }
    return wattHours * (to - from) / efficiency;
  }

  /** Channels: packs over the turns that one channel has, rounded up. */
  public static double channels(double packs, double hoursFree, double hoursEach) {
    double turns = -Numbers.wholeUp(-hoursFree / hoursEach);
    if (turns < 1) {
      throw new EvaluationException(ChargeErrorCode.NO_TURN, hoursFree, hoursEach);
    }
    return Numbers.wholeUp(packs / turns);
  }
}
