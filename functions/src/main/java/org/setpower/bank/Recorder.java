package org.setpower.bank;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Takes the state of a bank at times that were set before. */
final class Recorder {
  private final double[] times;
  private final List<Moment> moments = new ArrayList<>();

  /**
   * @param times hours, rising
   */
  Recorder(double[] times) {
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
  void take(List<Part> parts, Node node) {
    TreeMap<Integer, Double> byRow = new TreeMap<>();
    for (Part part : parts) {
      for (Member member : part.members) {
        byRow.put(member.number(), part.held());
      }
    }
    double[] charges = byRow.values().stream().mapToDouble(c -> c).toArray();
    moments.add(new Moment(next(), node.deviceVolts(), node.amps(), charges));
  }

  List<Moment> moments() {
    return List.copyOf(moments);
  }
}
