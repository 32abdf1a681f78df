package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.setpower.plan.batteryday.BatteryDayInputs.Charger;
import org.setpower.plan.batteryday.simulation.DayEvent;
import org.setpower.plan.batteryday.simulation.PowerHours;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;

/** What the day shows of a charger: charging at night, and one that may be in two rows. */
final class ChargerUse {
  /** Hours of the clock at which nobody is there who did not plan to be: common practice. */
  private static final PowerHours NIGHT = PowerHours.daily(new PowerHours.Span(23, 30), null, 32);

  private final BatteryDayPlan plan;

  ChargerUse(BatteryDayPlan plan) {
    this.plan = plan;
  }

  /** All that is wrong with a charger, worst first. */
  List<Finding> findings(Gate.Judged<ChargerJudge.State> judged) {
    List<Finding> findings = new ArrayList<>(judged.findings());
    Charger charger = judged.item().row().value();
    boolean always = !hasHours(judged.item()) && charger.offFrom() == null;
    if (plan.outcome() != null && always) {
      plan.outcome().charges().stream()
          .filter(c -> c.charger() == judged.row())
          .filter(c -> !NIGHT.within(c.start(), c.full()).isEmpty())
          .mapToDouble(DayEvent.Charge::full)
          .max()
          .ifPresent(
              full ->
                  findings.add(
                      Finding.of(BatteryDayFinding.CHARGES_AT_NIGHT, DaySettings.time(full))));
    }
    for (Gate.Judged<ChargerJudge.State> other : plan.build().chargers().all()) {
      if (other.row() != judged.row() && mayBeOne(judged.item(), other.item())) {
        Charger same = other.item().row().value();
        findings.add(Finding.of(BatteryDayFinding.CHARGER_MOVED, same.charger(), same.supply()));
      }
    }
    return findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
  }

  /** Whether hours of its power are typed, here or of its supply. */
  private boolean hasHours(ChargerJudge.State state) {
    return state.row().value().powerFrom() != null
        || state.spec() != null
            && plan.build().supplies().row(state.spec().supply()).item().value().powerFrom()
                != null;
  }

  /** Alike, on two supplies, with hours typed as for a charger that moves, and both on at once. */
  private boolean mayBeOne(ChargerJudge.State one, ChargerJudge.State other) {
    Charger a = one.row().value();
    Charger b = other.row().value();
    return one.spec() != null
        && other.spec() != null
        && one.spec().supply() != other.spec().supply()
        && a.charger() != null
        && b.charger() != null
        && b.supply() != null
        && (hasHours(one) || hasHours(other))
        && Objects.equals(a.channels(), b.channels())
        && Objects.equals(a.amps(), b.amps())
        && Objects.equals(a.types(), b.types())
        && Objects.equals(a.mount(), b.mount())
        && one.spec().power().meets(other.spec().power());
  }
}
