package org.setpower.pack;

import org.setpower.base.Require;

/**
 * A device that draws constant watts at the end of a lead.
 *
 * @param watts at the device's input, above 0
 * @param cutoffVolts V at the device below which it goes dark; 0 if it has no limit
 * @param leadOhms of the lead, out and back
 */
public record Load(double watts, double cutoffVolts, double leadOhms) {
  public Load {
    Require.above("watts", watts, 0);
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
}
