package org.setpower.plan.batteries;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** When chargers have mains. A charge waits through a gap and goes on where it stopped. */
public final class MainsSchedule {
  private static final MainsSchedule ALWAYS =
      new MainsSchedule(List.of(new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)));

  private final List<Span> spans;

  private MainsSchedule(List<Span> spans) {
    this.spans = spans;
  }

  /** Hours from and to. */
  public record Span(double from, double to) {}

  /** Mains without a gap. */
  public static MainsSchedule always() {
    return ALWAYS;
  }

  /** Mains within these hours only; they may touch or overlap. */
  public static MainsSchedule within(List<Span> given) {
    List<Span> sorted = new ArrayList<>(given);
    sorted.sort(Comparator.comparingDouble(Span::from));
    List<Span> merged = new ArrayList<>();
    for (Span next : sorted) {
      Span last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && next.from <= last.to) {
        merged.set(merged.size() - 1, new Span(last.from, Math.max(last.to, next.to)));
      } else {
        merged.add(next);
      }
    }
    return new MainsSchedule(List.copyOf(merged));
  }

  /**
   * The hour at which a charge that starts at {@code start} has had its {@code hours} of mains;
   * infinite if the mains ends before.
   */
  public double finish(double start, double hours) {
    double left = hours;
    for (Span span : spans) {
      double begin = Math.max(start, span.from);
      double had = span.to - begin;
      if (had >= left - DaySimulation.SAME_MOMENT) {
        return begin + left;
      }
      left -= Math.max(0, had);
    }
    return Double.POSITIVE_INFINITY;
  }
}
