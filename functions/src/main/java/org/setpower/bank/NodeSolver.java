package org.setpower.bank;

import org.setpower.pack.ConstantWatts;
import org.setpower.pack.DeviceLoad;

/**
 * The point where packs and lead meet. The packs that conduct are one source of J/G volts behind
 * 1/G ohms (G = Σ1/R, J = ΣE/R); the load draws its watts from that source through the lead.
 */
final class NodeSolver {
  private final DeviceLoad load;
  private double open;
  private double collapse;
  private double bus;
  private double deviceVolts;
  private double amps;
  private boolean carries;

  NodeSolver(DeviceLoad load) {
    this.load = load;
  }

  /** Solves it for these parts at these charges. */
  void solve(PackGroup[] parts, double[] charges) {
    double conductance = 0;
    double shortAmps = 0;
    for (int i = 0; i < parts.length; i++) {
      double ohms = parts[i].ohms;
      conductance += 1 / ohms;
      shortAmps += parts[i].volts(charges[i]) / ohms;
    }
    open = shortAmps / conductance;
    double ohms = 1 / conductance + load.leadOhms();
    collapse = ConstantWatts.collapseVolts(load.watts(), ohms);
    carries = parts.length > 0 && open >= collapse;
    amps = ConstantWatts.amps(load.watts(), ohms, open);
    bus = open - amps / conductance;
    deviceVolts = bus - amps * load.leadOhms();
  }

  /** Whether the load gets its watts. */
  boolean carries() {
    return carries;
  }

  /** V at the packs' common terminals. */
  double bus() {
    return bus;
  }

  /** V behind the lead. */
  double deviceVolts() {
    return deviceVolts;
  }

  /** A that the load draws. */
  double amps() {
    return amps;
  }

  /** How far the source is above the point where the watts cannot be had, as a share of it. */
  double aboveCollapse() {
    return (open - collapse) / collapse;
  }
}
