package org.setpower.plan.batteryday.simulation;

import java.util.List;
import java.util.Map;

/**
 * A day that was run.
 *
 * @param charges in the order they were planned; a battery that was taken early ends early
 * @param darkHours of each unit, in the order of the day's list
 * @param endCharge state of charge of each battery at the end of the last position
 * @param nextCharge state of charge of each battery at the next call
 * @param peakWatts of each supply, by its row
 * @param complete whether the day came to its end; no if there were too many events
 */
public record DayOutcome(
    List<DayEvent> events,
    List<DayEvent.Charge> charges,
    double[] darkHours,
    Map<Integer, Double> endCharge,
    Map<Integer, Double> nextCharge,
    Map<Integer, Double> peakWatts,
    boolean complete) {
  /** Whether no piece was dark for any time. */
  public boolean isLit() {
    return complete && events.stream().noneMatch(e -> e.what() == DayEvent.What.DARK);
  }

  /** Battery changes: those of a set together are one. */
  public int changes() {
    return (int) events.stream().filter(e -> e.what().isChange()).count();
  }
}
