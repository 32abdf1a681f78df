package org.setpower.pack;

import org.setpower.base.Checks;

/**
 * A constant current, as cells are tested with.
 *
 * @param amps above 0
 * @param cutoffVolts V at the terminals at which it ends
 */
public record ConstantAmps(double amps, double cutoffVolts) implements LoadProfile {
  public ConstantAmps {
    Checks.above("amps", amps, 0);
  }

  @Override
  public double endVolts(Pack pack) {
    return cutoffVolts + amps * pack.ohms();
  }

  @Override
  public Discharge.End end(Pack pack) {
    return Discharge.End.CUT_OFF;
  }

  @Override
  public double amps(Pack pack, double restVolts) {
    return amps;
  }

  @Override
  public double deviceVolts(Pack pack, double restVolts) {
    return restVolts - amps * pack.ohms();
  }

  @Override
  public double hours(Pack pack, double high, double low, double ampHours) {
    return ampHours / amps;
  }
}
