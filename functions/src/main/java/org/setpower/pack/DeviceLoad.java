package org.setpower.pack;

import org.setpower.base.Checks;

/**
 * A device that draws constant watts at the end of a lead.
 *
 * @param watts at the device's input, above 0
 * @param cutoffVolts V at the device below which it goes dark; 0 if it has no limit
 * @param leadOhms of the lead, out and back
 */
public record DeviceLoad(double watts, double cutoffVolts, double leadOhms) implements LoadProfile {
  public DeviceLoad {
    Checks.above("watts", watts, 0);
  }

  /**
   * V at the device when the terminals in front of the lead are at {@code terminalVolts}; 0 if the
   * watts do not get through the lead at that voltage, so that it is never reached.
   */
  public double atDevice(double terminalVolts) {
    return terminalVolts < ConstantWatts.collapseVolts(watts, leadOhms)
        ? 0
        : ConstantWatts.loadVolts(watts, leadOhms, terminalVolts);
  }

  /** The device's cut-off, the pack's floor or collapse, whichever comes first. */
  @Override
  public double endVolts(Pack pack) {
    double least = Math.max(cutoffVolts, atDevice(pack.floorVolts()));
    return ConstantWatts.openVolts(watts, ohms(pack), least);
  }

  @Override
  public Discharge.End end(Pack pack) {
    double floor = atDevice(pack.floorVolts());
    double collapse = ConstantWatts.collapseVolts(watts, ohms(pack)) / 2;
    if (Math.max(cutoffVolts, floor) <= collapse) {
      return Discharge.End.COLLAPSE;
    }
    return cutoffVolts >= floor ? Discharge.End.CUT_OFF : Discharge.End.FLOOR;
  }

  @Override
  public double amps(Pack pack, double restVolts) {
    return ConstantWatts.amps(watts, ohms(pack), restVolts);
  }

  @Override
  public double deviceVolts(Pack pack, double restVolts) {
    return ConstantWatts.loadVolts(watts, ohms(pack), restVolts);
  }

  @Override
  public double hours(Pack pack, double high, double low, double ampHours) {
    return ConstantWatts.hours(watts, ohms(pack), high, low, ampHours);
  }

  private double ohms(Pack pack) {
    return pack.ohms() + leadOhms;
  }
}
