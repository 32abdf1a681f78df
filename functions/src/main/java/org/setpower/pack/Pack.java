package org.setpower.pack;

/**
 * A pack as it stands there: its open-circuit curve, how much charge it holds at this temperature,
 * and its resistance at this temperature. Health and cold enter here and nowhere else.
 */
public final class Pack {
  private final Chemistry chemistry;
  private final OpenCircuit curve;
  private final double cells;
  private final double ampHours;
  private final double ohms;

  private Pack(Chemistry chemistry, OpenCircuit curve, double cells, double ampHours, double ohms) {
    this.chemistry = chemistry;
    this.curve = curve;
    this.cells = cells;
    this.ampHours = ampHours;
    this.ohms = ohms;
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
        ampHours * health * Cold.chargeLeft(chemistry, temp),
        milliohms / 1000 * Cold.resistance(chemistry, temp));
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

  /** Ah between 0 and 100 % at this temperature: rated · health · what the cold leaves. */
  public double ampHours() {
    return ampHours;
  }

  /** Ω at this temperature. */
  public double ohms() {
    return ohms;
  }

  /** V of the resting pack at a share of its charge. */
  public double restVolts(double share) {
    return cells * curve.volts(share);
  }

  /** Share of the charge at which the resting pack has these volts. */
  public double charge(double restVolts) {
    return curve.charge(restVolts / cells);
  }

  /** V at the terminals at which the pack switches itself off. */
  public double floorVolts() {
    return cells * chemistry.floorVolts();
  }
}
