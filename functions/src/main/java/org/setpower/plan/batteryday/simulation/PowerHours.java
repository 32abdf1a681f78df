package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * When a charger has power. A charge waits through a gap and goes on where it stopped.
 *
 * @param spans in order, without overlap
 */
public record PowerHours(List<Span> spans) {
  /** Hours from and to. */
  public record Span(double from, double to) {}

  public PowerHours {
    spans = List.copyOf(spans);
  }

  /** Power without a gap. */
  public static PowerHours always() {
    return new PowerHours(List.of(new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)));
  }

  /** Power within these hours only; they may touch or overlap. */
  public static PowerHours within(List<Span> given) {
    return new PowerHours(merged(given));
  }

  /**
   * Power at these hours of every day, less those at which it is off.
   *
   * @param on hours from and to within two days; null: all day
   * @param off hours from and to within two days; null: never
   * @param days how many days from the first midnight
   */
  public static PowerHours daily(Span on, Span off, int days) {
    List<Span> spans = new ArrayList<>();
    for (int day = -1; day < days; day++) {
      double shift = 24.0 * day;
      if (on == null) {
        spans.add(new Span(shift, shift + 24));
      } else {
        spans.add(new Span(on.from + shift, on.to + shift));
      }
    }
    List<Span> merged = merged(spans);
    for (int day = -1; off != null && day < days; day++) {
      merged = without(merged, new Span(off.from + 24.0 * day, off.to + 24.0 * day));
    }
    return new PowerHours(merged);
  }

  private static List<Span> merged(List<Span> spans) {
    List<Span> sorted = new ArrayList<>(spans);
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
    return merged;
  }

  private static List<Span> without(List<Span> spans, Span off) {
    List<Span> left = new ArrayList<>();
    for (Span span : spans) {
      if (off.to <= span.from || off.from >= span.to) {
        left.add(span);
      } else {
        if (off.from > span.from) {
          left.add(new Span(span.from, off.from));
        }
        if (off.to < span.to) {
          left.add(new Span(off.to, span.to));
        }
      }
    }
    return left;
  }

  /** The same without the power of some hours. */
  public PowerHours without(Span off) {
    return new PowerHours(without(spans, off));
  }

  /** Power only where others have it too. */
  public PowerHours and(PowerHours other) {
    return new PowerHours(
        spans.stream().flatMap(s -> other.within(s.from, s.to).stream()).toList());
  }

  /** The parts of a time in which there is power. */
  public List<Span> within(double from, double to) {
    return spans.stream()
        .map(s -> new Span(Math.max(from, s.from), Math.min(to, s.to)))
        .filter(s -> s.to > s.from + DayRun.SAME)
        .toList();
  }

  /** Whether there is power at the same time as with others. */
  public boolean meets(PowerHours other) {
    return spans.stream().anyMatch(s -> !other.within(s.from, s.to).isEmpty());
  }

  /** The first hour at which others have no power though these have; infinite without one. */
  double firstWithout(PowerHours others) {
    for (Span span : spans) {
      double reached = span.from;
      for (Span part : others.within(span.from, span.to)) {
        if (part.from > reached + DayRun.SAME) {
          return reached;
        }
        reached = part.to;
      }
      if (reached < span.to - DayRun.SAME) {
        return reached;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The first hour with power, from an hour on; infinite if there is none. */
  double start(double hour) {
    for (Span span : spans) {
      if (span.to > hour + DayRun.SAME) {
        return Math.max(hour, span.from);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** The hour at which the power ends for longer than some hours, from an hour with power on. */
  double end(double hour, double gap) {
    for (int i = 0; i < spans.size(); i++) {
      boolean last = i + 1 == spans.size();
      boolean ends = last || spans.get(i + 1).from - spans.get(i).to > gap;
      if (spans.get(i).to > hour + DayRun.SAME && ends) {
        return spans.get(i).to;
      }
    }
    return hour;
  }

  /** Hours of power between two hours. */
  double hours(double from, double to) {
    double sum = 0;
    for (Span span : spans) {
      sum += Math.max(0, Math.min(to, span.to) - Math.max(from, span.from));
    }
    return sum;
  }

  /** The hour at which so many hours of power are had; infinite if the power ends before. */
  public double finish(double start, double hours) {
    double left = hours;
    for (Span span : spans) {
      double begin = Math.max(start, span.from);
      double had = span.to - begin;
      if (had >= left - DayRun.SAME && had > 0) {
        return begin + left;
      }
      left -= Math.max(0, had);
    }
    return Double.POSITIVE_INFINITY;
  }
}
