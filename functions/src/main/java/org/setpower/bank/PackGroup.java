package org.setpower.bank;

import java.util.ArrayList;
import java.util.List;
import org.setpower.pack.OpenCircuit;
import org.setpower.pack.Pack;

/**
 * Like packs with the same charge, which do the same all along: one pack of as many times the Ah.
 * It stands on one straight line of its curve.
 */
final class PackGroup {
  enum State {
    WAITING,
    ON,
    OFF
  }

  final List<BankPack> members = new ArrayList<>();
  final Pack pack;
  final OpenCircuit curve;
  State state = State.WAITING;

  /** Share of what it can give at this temperature. */
  double charge;

  int line;
  boolean charged;
  double ohms;
  double ampHours;

  /** What the cold would have to give back before an emptier pack gives anything. */
  private final double heldBack;

  private double emptyVolts;
  private double voltsPerCharge;

  PackGroup(BankPack first, double temp) {
    pack = first.at(temp);
    curve = pack.curve();
    charge = pack.usable(first.charge());
    heldBack = pack.held(charge) - first.charge();
    takeLine(curve.segmentBelow(charge));
    add(first);
  }

  void add(BankPack member) {
    members.add(member);
    ohms = pack.ohms() / members.size();
    ampHours = pack.ampHours() * members.size();
  }

  void takeLine(int taken) {
    line = taken;
    double low = curve.chargeAt(taken);
    voltsPerCharge =
        pack.cells()
            * (curve.voltsAt(taken + 1) - curve.voltsAt(taken))
            / (curve.chargeAt(taken + 1) - low);
    emptyVolts = pack.cells() * curve.voltsAt(taken) - voltsPerCharge * low;
  }

  /** V of the open circuit at a charge on the line that the part is on. */
  double volts(double at) {
    return emptyVolts + voltsPerCharge * at;
  }

  double volts() {
    return volts(charge);
  }

  /** Share of its charge that a pack holds. */
  double held() {
    return pack.held(charge) - heldBack;
  }

  /** The charge at which the open circuit has these volts. */
  double chargeAt(double volts) {
    return (volts - emptyVolts) / voltsPerCharge;
  }
}
