package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.List;

/**
 * Spans of a unit between which its battery stays on it: only breaks lie between them.
 *
 * @param spans in order
 */
record Stretch(List<UnitSpec.Span> spans) {
  double from() {
    return spans.get(0).from();
  }

  double to() {
    return spans.get(spans.size() - 1).to();
  }

  /** The stretches of a unit. */
  static List<Stretch> of(UnitSpec unit, List<DaySpec.Pause> breaks) {
    List<Stretch> all = new ArrayList<>();
    List<UnitSpec.Span> spans = new ArrayList<>();
    for (UnitSpec.Span span : unit.spans()) {
      if (!spans.isEmpty() && !joins(spans.get(spans.size() - 1).to(), span.from(), breaks)) {
        all.add(new Stretch(List.copyOf(spans)));
        spans.clear();
      }
      spans.add(span);
    }
    if (!spans.isEmpty()) {
      all.add(new Stretch(List.copyOf(spans)));
    }
    return List.copyOf(all);
  }

  private static boolean joins(double end, double start, List<DaySpec.Pause> breaks) {
    return start <= end + DayRun.SAME
        || breaks.stream()
            .anyMatch(b -> end >= b.from() - DayRun.SAME && start <= b.to() + DayRun.SAME);
  }
}
