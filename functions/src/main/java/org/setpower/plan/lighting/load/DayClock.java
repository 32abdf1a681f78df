package org.setpower.plan.lighting.load;

import java.util.ArrayList;
import java.util.List;

/**
 * The clock of a shooting day, which ends with its wrap and not at midnight: a time before Call
 * that lies before Wrap belongs to the next morning. Times are days after the midnight that begins
 * the date and go on past 1.
 *
 * @param call the first of the date
 * @param wrap the last of the date
 */
public record DayClock(double call, double wrap) {
  /** Preparation before call and clearing up after wrap: common practice. */
  private static final double MARGIN = 2 / 24.0;

  private static final double ROUNDING = 1e-9;

  /**
   * Hours as they are understood.
   *
   * @param hours from and to; both mornings where it is not clear which one is meant
   * @param away whether no reading comes near call and wrap, or more than one does
   */
  public record Reading(List<double[]> hours, boolean away) {
    /** Whether it is not clear which morning is meant. */
    public boolean isUnclear() {
      return hours.size() > 1;
    }
  }

  /** The clock of a row of Days as typed: a blank is the whole day. */
  public static DayClock of(Double call, Double wrap) {
    double begin = call == null ? 0 : call;
    return new DayClock(begin, after(wrap == null ? 1 : wrap, begin));
  }

  /** The clock of a date with another row. */
  public DayClock and(DayClock other) {
    return new DayClock(Math.min(call, other.call), Math.max(wrap, other.wrap));
  }

  /** The first time of the clock behind another one: To at or before From is the next morning. */
  static double after(double time, double begin) {
    double end = time;
    while (end <= begin + ROUNDING) {
      end++;
    }
    return end;
  }

  /** Hours between two typed times. */
  public Reading read(double from, double to) {
    double[] same = {from, after(to, from)};
    if (from >= call - ROUNDING) {
      return new Reading(List.of(same), !isNear(same));
    }
    double[] next = {from + 1, after(to, from) + 1};
    if (next[0] < wrap - ROUNDING) {
      return new Reading(List.of(next), false);
    }
    List<double[]> near = new ArrayList<>(List.of(same, next));
    near.removeIf(h -> !isNear(h));
    return near.size() == 1 ? new Reading(near, false) : new Reading(List.of(same, next), true);
  }

  /** A begin whose end is Wrap. */
  public double begin(double from) {
    return from < call - ROUNDING && from + 1 < wrap - ROUNDING ? from + 1 : from;
  }

  /** The one time that is meant, such as that of a reading. */
  public double time(double time) {
    return time < call - ROUNDING && time + 1 < wrap + MARGIN - ROUNDING ? time + 1 : time;
  }

  /** Times of the clock before this one belong to the next morning. */
  public double morning() {
    return Math.max(0, Math.min(call, wrap - 1 + MARGIN));
  }

  private boolean isNear(double... hours) {
    return hours[1] > call - MARGIN + ROUNDING && hours[0] < wrap + MARGIN - ROUNDING;
  }
}
