package org.setpower.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Takes the state of a bank at times that were set before. */
final class StateRecorder {
  private final double[] times;
  private final List<BankState> moments = new ArrayList<>();

  /**
   * @param times hours, rising
   */
  StateRecorder(double[] times) {
    this.times = times;
  }

  /** Whether a time up to {@code hours} has not been taken yet. */
  boolean wants(double hours) {
    return moments.size() < times.length && next() <= hours;
  }

  /** The next time. */
  double next() {
    return times[moments.size()];
  }

  /** Takes the next moment from the bank as it stands. */
  void take(List<PackGroup> parts, NodeSolver node) {
    TreeMap<Integer, Double> byRow = new TreeMap<>();
    for (PackGroup part : parts) {
      for (BankPack member : part.members) {
        byRow.put(member.number(), part.held());
      }
    }
    double[] charges = byRow.values().stream().mapToDouble(c -> c).toArray();
    moments.add(new BankState(next(), node.deviceVolts(), node.amps(), charges));
  }

  List<BankState> moments() {
    return List.copyOf(moments);
  }
}
