package org.setpower.cable;

import org.setpower.base.Checks;
import org.setpower.base.EvaluationException;
import org.setpower.base.PhaseSystem;

/**
 * A cable from a supply to a load: copper, one length, equal cables side by side counted together.
 *
 * @param system how the supply reaches the load
 * @param powerFactor of the load, lagging; 1 on direct current
 * @param ohms resistance of one conductor over the run, Ω
 * @param reactance of one conductor over the run, Ω; 0 on direct current
 */
public record CableRun(PhaseSystem system, double powerFactor, double ohms, double reactance) {
  /** The conductor temperature of a fully loaded ordinary cord, °C; basis of BS 7671 4F3B. */
  public static final double LOADED_TEMP = 60;

  /**
   * A run of a size.
   *
   * @param length one way, m
   * @param conductorTemp °C
   * @param parallel equal cables of the same length, route and ends
   */
  public static CableRun of(
      CableSize size,
      double length,
      PhaseSystem system,
      double powerFactor,
      double conductorTemp,
      double parallel) {
    system.requirePowerFactor(powerFactor);
    Checks.atLeast("length", length, 0);
    Conductor conductor = Conductor.of(size);
    double km = length / 1000 / parallel;
    return new CableRun(
        system,
        powerFactor,
        conductor.ohms(conductorTemp) * km,
        system == PhaseSystem.DC ? 0 : conductor.reactance() * km);
  }

  private double sine() {
    return Math.sqrt(1 - powerFactor * powerFactor);
  }

  /**
   * Volts lost over the run at a current: k·I·(R cos φ + X sin φ), k = 2, 2, √3. Source: UFC
   * 3-520-01 (2002) Appendix B-2; IEC 60364-5-52 Annex G.
   */
  public double drop(double amps) {
    return system.loopFactor() * amps * (ohms * powerFactor + reactance * sine());
  }

  /** Watts that heat the cable: n·I²·R, n = 2, 2, 3; a loaded neutral comes on top. */
  public double heat(double amps) {
    return system.loadedConductors() * amps * amps * ohms;
  }

  /**
   * Volts at the far end for a load that draws constant watts; three-phase: line to line. The upper
   * root of V⁴ + V²·(2(PR + QX) − Vs²) + (P² + Q²)(R² + X²) = 0, taken per phase; R and X are those
   * of the loop on two conductors. Refused when the cable cannot carry the watts at any voltage.
   */
  public double endVolts(double watts, double supplyVolts) {
    double p = watts / phases();
    double q = p * sine() / powerFactor;
    double vs = supplyVolts / lineToPhase();
    double r = conductorsInLoop() * ohms;
    double x = conductorsInLoop() * reactance;
    double half = vs * vs / 2 - (p * r + q * x);
    double rest = half * half - (p * p + q * q) * (r * r + x * x);
    if (half < 0 || rest < 0) {
      throw new EvaluationException(
          CableErrorCode.CANNOT_CARRY, watts, mostWatts(supplyVolts), supplyVolts);
    }
    return lineToPhase() * Math.sqrt(half + Math.sqrt(rest));
  }

  /** Amps in a line for a load that draws constant watts: P/(V·pf), three-phase P/(√3·V·pf). */
  public double endAmps(double watts, double supplyVolts) {
    return watts / (lineToPhase() * endVolts(watts, supplyVolts) * powerFactor);
  }

  /** The most watts that can arrive, at half the supply volts and about half the power lost. */
  public double mostWatts(double supplyVolts) {
    double r = conductorsInLoop() * ohms;
    double x = conductorsInLoop() * reactance;
    double lost = r + x * sine() / powerFactor + Math.hypot(r, x) / powerFactor;
    double vs = supplyVolts / lineToPhase();
    return phases() * vs * vs / (2 * lost);
  }

  private double phases() {
    return system == PhaseSystem.THREE ? 3 : 1;
  }

  private double lineToPhase() {
    return system == PhaseSystem.THREE ? system.loopFactor() : 1;
  }

  private double conductorsInLoop() {
    return system == PhaseSystem.THREE ? 1 : 2;
  }
}
