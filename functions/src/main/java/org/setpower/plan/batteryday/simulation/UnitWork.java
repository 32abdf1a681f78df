package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.List;

/**
 * What a unit asks of its battery, in steps of at most one hour of the clock, each at one power and
 * at the lowest temperature of its hour. Made once for a day; runs share it.
 */
public final class UnitWork {
  private static final double SAME = DayRun.SAME;

  /**
   * A step.
   *
   * @param warm the curve in the hour in which a battery comes from a warm shelf
   * @param stretchEnd the end of the stretch that it is in
   */
  private record Step(
      double from,
      double to,
      FeedCurve cold,
      FeedCurve warm,
      double stretchFrom,
      double stretchEnd) {}

  private final UnitSpec spec;
  private final Step[] steps;

  /**
   * @param shelf °C of batteries on the shelf; NaN: as cold as it is outdoors
   */
  public UnitWork(UnitSpec spec, AirTemperature air, double shelf, List<DaySpec.Pause> breaks) {
    this.spec = spec;
    List<Step> all = new ArrayList<>();
    for (Stretch stretch : Stretch.of(spec, breaks)) {
      for (UnitSpec.Span span : stretch.spans()) {
        double at = span.from();
        while (at < span.to() - SAME) {
          double next = Math.min(span.to(), Math.floor(at + SAME) + 1);
          double cold = air.lowest(at, next);
          // A battery from a warm shelf cools down within about an hour: common practice.
          double warm = shelf > cold ? (shelf + cold) / 2 : cold;
          all.add(
              new Step(
                  at,
                  next,
                  spec.feed().curve(span.watts(), (int) Math.floor(cold + SAME)),
                  spec.feed().curve(span.watts(), (int) Math.floor(warm + SAME)),
                  stretch.from(),
                  stretch.to()));
          at = next;
        }
      }
    }
    steps = all.toArray(new Step[0]);
  }

  UnitSpec spec() {
    return spec;
  }

  double from() {
    return steps[0].from;
  }

  double end() {
    return steps[steps.length - 1].to;
  }

  /** The first step that is not over at an hour; the number of steps if all are. */
  private int stepAt(double hour) {
    int low = 0;
    int high = steps.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (steps[middle].to <= hour + SAME) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** The end of the stretch that holds an hour; NaN between stretches. */
  double stretchEnd(double hour) {
    int i = stepAt(hour);
    boolean in = i < steps.length && hour >= steps[i].stretchFrom - SAME;
    return in ? steps[i].stretchEnd : Double.NaN;
  }

  /** Whether it draws power at an hour, an end excluded. */
  boolean isOn(double hour) {
    int i = stepAt(hour);
    return i < steps.length && hour >= steps[i].from - SAME;
  }

  private static FeedCurve curve(Step step, double putOn) {
    return putOn >= step.from - SAME ? step.warm : step.cold;
  }

  /**
   * Whether a battery works at the step of an hour.
   *
   * @param putOn hour at which it went on from a warm shelf; before the step for a cold one
   */
  boolean works(double charge, double hour, double putOn) {
    int i = stepAt(hour);
    return i < steps.length && curve(steps[i], putOn).hoursFromStart(charge) > SAME;
  }

  /**
   * The hour at which a battery is empty; infinite if it reaches the end of its stretch.
   *
   * @param putOn hour at which it went on
   */
  double emptyAt(double charge, double hour, double putOn) {
    double held = charge;
    int first = stepAt(hour);
    for (int i = first; i < steps.length; i++) {
      Step step = steps[i];
      if (step.stretchEnd > steps[first].stretchEnd + SAME) {
        break;
      }
      double at = Math.max(hour, step.from);
      FeedCurve curve = curve(step, putOn);
      // after a break in which it was off the position has to start again
      boolean starts = i > first && step.from > steps[i - 1].to + SAME;
      double left = starts ? curve.hoursFromStart(held) : curve.hours(held);
      boolean lasts = left > step.to - at + SAME;
      boolean goesOff = step.to >= step.stretchEnd - SAME || steps[i + 1].from > step.to + SAME;
      boolean justLasts = goesOff && left >= step.to - at - SAME;
      if (!lasts && !justLasts) {
        return at + left;
      }
      held = curve.after(held, step.to - at);
    }
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Batteries that it takes if each is used once, from full to empty.
   *
   * @param most where more are of no interest
   */
  int fresh(int most) {
    int fresh = spec.isHotSwap() ? spec.batteries() - 1 : 0;
    int each = spec.isHotSwap() ? 1 : spec.batteries();
    double hour = from();
    while (fresh < most && hour < end() - SAME) {
      double empty = emptyAt(1, hour, hour);
      fresh += each;
      double next = Double.isInfinite(empty) ? stretchEnd(hour) : empty;
      next = Math.max(next, hour + DayRun.SHORTEST);
      int step = stepAt(next);
      hour = step < steps.length ? Math.max(next, steps[step].from) : end();
    }
    return Math.min(most, fresh);
  }

  /** The charge after it has worked until an hour at which it is not yet empty. */
  double chargeAt(double charge, double hour, double until, double putOn) {
    double held = charge;
    for (int i = stepAt(hour); i < steps.length && steps[i].from < until - SAME; i++) {
      double at = Math.max(hour, steps[i].from);
      held = curve(steps[i], putOn).after(held, Math.min(until, steps[i].to) - at);
    }
    return held;
  }

  /** Hours between two hours in which it is meant to be on. */
  double onHours(double from, double to) {
    double sum = 0;
    for (Step step : steps) {
      sum += Math.max(0, Math.min(to, step.to) - Math.max(from, step.from));
    }
    return sum;
  }
}
