package org.setpower.pack;

/** What is drawn from a pack: constant watts ({@link DeviceLoad}) or constant amps. */
public sealed interface LoadProfile permits DeviceLoad, ConstantAmps {
  /** V of the resting pack at and below which it ends, were there no end to the charge. */
  double endVolts(Pack pack);

  /** Which limit {@link #endVolts} is. */
  Discharge.End end(Pack pack);

  /** A drawn from a pack that would have {@code restVolts} at rest. */
  double amps(Pack pack, double restVolts);

  /** V at the device. */
  double deviceVolts(Pack pack, double restVolts);

  /** Hours while the resting pack falls straight from {@code high} to {@code low} volts. */
  double hours(Pack pack, double high, double low, double ampHours);
}
