package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import org.setpower.plan.batteryday.BatteryDayInputs.Position;
import org.setpower.plan.batteryday.simulation.BatteryConnection;
import org.setpower.plan.batteryday.simulation.DayEvent;
import org.setpower.plan.batteryday.simulation.UnitSpec;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;

/**
 * What one crew would have to change in the same minute. Only positions of the highest priority
 * count: of the others one can wait. A hot-swap plate works on meanwhile, and so does nobody in a
 * break.
 */
final class CrewChanges {
  private final BatteryDayPlan plan;
  private final IntFunction<String> names;

  /**
   * @param names of pieces, by their place in the day's list
   */
  CrewChanges(BatteryDayPlan plan, IntFunction<String> names) {
    this.plan = plan;
    this.names = names;
  }

  /** The first such minute, and how many there are; none where no priority is typed. */
  List<Finding> findings() {
    double first =
        plan.build().units().stream()
            .filter(u -> position(u).priority() != null)
            .mapToDouble(UnitSpec::priority)
            .min()
            .orElse(Double.NaN);
    Map<List<Object>, Set<Integer>> minutes = new LinkedHashMap<>();
    for (DayEvent event : plan.outcome().events()) {
      UnitSpec unit = plan.build().units().get(event.unit());
      boolean counts =
          event.what().isChange()
              && unit.priority() == first
              && position(unit).priority() != null
              && unit.connection() != BatteryConnection.HOT_SWAP
              && !isInBreak(event.hour());
      if (counts) {
        String crew = Identity.of(position(unit).department());
        minutes
            .computeIfAbsent(
                List.of(DaySettings.time(event.hour()), crew), m -> new LinkedHashSet<>())
            .add(event.unit());
      }
    }
    minutes.values().removeIf(units -> units.size() < 2);
    List<Finding> findings = new ArrayList<>();
    if (!minutes.isEmpty()) {
      Map.Entry<List<Object>, Set<Integer>> minute = minutes.entrySet().iterator().next();
      List<String> pieces = minute.getValue().stream().map(names::apply).toList();
      findings.add(
          Finding.of(
              BatteryDayFinding.CHANGED_TOGETHER,
              minute.getKey().get(0),
              pieces.get(0),
              pieces.get(1),
              (double) minutes.size()));
    }
    return findings;
  }

  private Position position(UnitSpec unit) {
    return plan.build().positions().row(unit.position()).item().row().value();
  }

  private boolean isInBreak(double hour) {
    return plan.calendar().shown().breaks().stream()
        .anyMatch(b -> hour >= b.from() - 1e-9 && hour < b.to() - 1e-9);
  }
}
