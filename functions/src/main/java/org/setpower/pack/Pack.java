package org.setpower.pack;

/**
 * A pack as it stands there: its open-circuit curve, how much charge it holds at this temperature,
 * and its resistance at this temperature. Health and cold enter here and nowhere else.
 */
public final class Pack {
  private final Chemistry chemistry;
  private final OpenCircuit curve;
  private final double cells;
  private final double ratedAmpHours;
  private final double milliohms;
  private final double health;
  private final double temp;
  private final boolean byLabel;
  private final double left;
  private final double ohms;

  private Pack(
      Chemistry chemistry,
      OpenCircuit curve,
      double cells,
      double ratedAmpHours,
      double milliohms,
      double health,
      double temp,
      boolean byLabel,
      double left) {
    this.chemistry = chemistry;
    this.curve = curve;
    this.cells = cells;
    this.ratedAmpHours = ratedAmpHours;
    this.milliohms = milliohms;
    this.health = health;
    this.temp = temp;
    this.byLabel = byLabel;
    this.left = left;
    ohms = milliohms / 1000 * TemperatureDerating.resistance(chemistry, temp);
  }

  /**
   * @param cells in series
   * @param ampHours rated
   * @param milliohms today, sustained, at room temperature
   * @param health share of the rated amp-hours that a full pack still holds, 0…1
   * @param temp °C of the cells when the job starts
   */
  public static Pack of(
      Chemistry chemistry,
      double cells,
      double ampHours,
      double milliohms,
      double health,
      double temp) {
    return new Pack(
        chemistry,
        OpenCircuit.of(chemistry),
        cells,
        ampHours,
        milliohms,
        health,
        temp,
        false,
        TemperatureDerating.chargeLeft(chemistry, temp));
  }

  /**
   * A pack of which only the label is known: with the usual resistance, no more of its rated charge
   * than the weakest new cell held, and in the cold no more than the weakest measured cell gave.
   *
   * @param cells in series
   * @param ampHours rated
   * @param health share of the rated amp-hours that a full pack still holds, 0…1
   * @param temp °C of the cells when the job starts
   */
  public static Pack byLabel(
      Chemistry chemistry, double cells, double ampHours, double health, double temp) {
    OpenCircuit.of(chemistry);
    return byLabel(
        chemistry,
        cells,
        ampHours,
        Math.min(health, chemistry.newShare()),
        temp,
        TemperatureDerating.labelChargeLeft(chemistry, temp));
  }

  /**
   * @param left share of its charge that it gives at this temperature, 0…1
   */
  static Pack byLabel(
      Chemistry chemistry, double cells, double ampHours, double held, double temp, double left) {
    return new Pack(
        chemistry,
        OpenCircuit.of(chemistry),
        cells,
        ampHours,
        cells * chemistry.usualOhmAmpHours() / ampHours * 1000,
        held,
        temp,
        true,
        left);
  }

  /** The same pack, its resistance known, at another temperature; above 25 °C as at 25 °C. */
  Pack at(double otherTemp) {
    return of(
        chemistry, cells, ratedAmpHours, milliohms, health, Math.min(otherTemp, SelfHeating.WARM));
  }

  public Chemistry chemistry() {
    return chemistry;
  }

  public OpenCircuit curve() {
    return curve;
  }

  public double cells() {
    return cells;
  }

  boolean byLabel() {
    return byLabel;
  }

  double ratedAmpHours() {
    return ratedAmpHours;
  }

  double temp() {
    return temp;
  }

  /** The share of its charge that it gives at this temperature, 0…1. */
  public double chargeLeft() {
    return left;
  }

  /** Ah that can be had from a full pack at this temperature: rated · health · cold. */
  public double ampHours() {
    return heldAmpHours() * left;
  }

  /** Ah that a full pack holds: rated · health. */
  public double heldAmpHours() {
    return ratedAmpHours * health;
  }

  /**
   * How much of {@link #ampHours} a pack can still give that holds a share of its charge. The cold
   * keeps the last of the charge in the pack, not a part of every amp-hour: 1 for a full pack, 0
   * where a warm one would still give something.
   */
  public double usable(double held) {
    return Math.max(0, 1 - (1 - held) / left);
  }

  /** The share of its charge that a pack holds: the inverse of {@link #usable}. */
  public double held(double usable) {
    return 1 - (1 - usable) * left;
  }

  /** Ω at this temperature. */
  public double ohms() {
    return ohms;
  }

  /** V of the resting pack at a share of what it can give. */
  public double restVolts(double usable) {
    return cells * curve.volts(usable);
  }

  /** Share of what it can give at which the resting pack has these volts. */
  public double charge(double restVolts) {
    return curve.charge(restVolts / cells);
  }

  /** V at the terminals at which the pack switches itself off. */
  public double floorVolts() {
    return cells * chemistry.floorVolts();
  }
}
