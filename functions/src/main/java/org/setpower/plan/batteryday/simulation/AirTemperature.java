package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * °C outdoors by the hour, for each place and time of a date.
 *
 * @param parts of the day, in their order
 */
public record AirTemperature(List<Part> parts) {
  /**
   * A stay at one place.
   *
   * @param from hour from which it holds, until the next part
   * @param coldest °C
   * @param warmest °C, not below the coldest
   * @param coldFrom hours between which the coldest holds; NaN: all the time
   * @param warmFrom hours between which the warmest holds; NaN: never
   */
  public record Part(
      double from,
      double coldest,
      double warmest,
      double coldFrom,
      double coldTo,
      double warmFrom,
      double warmTo) {
    /** The coldest all the time; the warmest is known, but not when. */
    public static Part constant(double from, double coldest, double warmest) {
      return new Part(from, coldest, warmest, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    private boolean isConstant() {
      return Double.isNaN(coldFrom) || Double.isNaN(warmFrom) || warmest <= coldest;
    }
  }

  public AirTemperature {
    List<Part> sorted = new ArrayList<>(parts);
    sorted.sort(Comparator.comparingDouble(Part::from));
    parts = List.copyOf(sorted);
  }

  /** The lowest temperature between two hours, sampled at both ends: it is straight between. */
  double lowest(double from, double to) {
    return Math.min(at(from), at(to));
  }

  /** The lowest of the whole day. */
  public double lowest() {
    return parts.stream().mapToDouble(Part::coldest).min().orElseThrow();
  }

  /** The highest of the whole day. */
  public double highest() {
    return parts.stream().mapToDouble(Part::warmest).max().orElseThrow();
  }

  /** °C at an hour; at a change of place the colder of both. */
  double at(double hour) {
    Part now = parts.get(0);
    for (Part part : parts) {
      if (part.from <= hour + DayRun.SAME) {
        now = part;
      }
    }
    return at(now, hour);
  }

  private static double at(Part part, double hour) {
    if (part.isConstant()) {
      return part.coldest;
    }
    double day = Math.floor(hour / 24) * 24;
    double clock = hour - day;
    double cold = distance(clock, part.coldFrom, part.coldTo);
    double warm = distance(clock, part.warmFrom, part.warmTo);
    return cold + warm <= 0
        ? part.coldest
        : part.coldest + (part.warmest - part.coldest) * cold / (cold + warm);
  }

  /** Hours from a time of day to the nearest end of a span of the clock; 0 within it. */
  private static double distance(double clock, double from, double to) {
    double begin = clock(from);
    double length = clock(to - from);
    double since = clock(clock - begin);
    return since <= length ? 0 : Math.min(since - length, 24 - since);
  }

  private static double clock(double hour) {
    return hour - Math.floor(hour / 24) * 24;
  }
}
