package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.setpower.plan.batteryday.simulation.ChargerSpec;
import org.setpower.plan.batteryday.simulation.DayEvent;
import org.setpower.plan.batteryday.simulation.DayOutcome;
import org.setpower.plan.batteryday.simulation.PowerHours;
import org.setpower.plan.batteryday.typed.BatteryAbsence;
import org.setpower.plan.batteryday.typed.BatteryNumbers;
import org.setpower.plan.common.Phrase;

/**
 * Batteries that charge from call on, of a day that is planned again from that hour on, charger by
 * charger in order of time; then those that nothing charges until the next call.
 */
final class ChargingList {
  /** Hours; so short a rest of a charge, or a gap, is no row of its own: common practice. */
  private static final double SCRAP = 0.25;

  private static final double MINUTE = 1 / 60.0;
  private static final double DAY = 24;

  private final BatteryDayPlan plan;
  private final DayBuild build;
  private final DayOutcome outcome;
  private final Map<Integer, BatteryAbsence> gone;
  private final List<Timed> rows = new ArrayList<>();
  private final List<PowerHours.Span> charging = new ArrayList<>();

  /** Hour before which a charge that ends is no row. */
  private final double from;

  /** A row, with its charger and the hour at which it begins. */
  private record Timed(int charger, double hour, BatteryDayResults.ChargingRow row) {}

  /**
   * @param gone batteries that are not there any more
   */
  ChargingList(BatteryDayPlan plan, Map<Integer, BatteryAbsence> gone) {
    this.plan = plan;
    this.gone = gone;
    build = plan.build();
    outcome = plan.outcome();
    from = Double.isInfinite(plan.now()) ? Double.NEGATIVE_INFINITY : plan.now();
    if (outcome != null) {
      Map<Integer, DayEvent.Charge> last = new TreeMap<>();
      for (DayEvent.Charge charge : outcome.charges()) {
        DayEvent.Charge before = last.put(charge.battery(), charge);
        if (before != null) {
          add(before, null);
        }
      }
      outcome.endCharge().keySet().forEach(n -> add(n, last.get(n)));
      rows.sort(Comparator.comparingInt(Timed::charger).thenComparingDouble(Timed::hour));
    }
  }

  List<BatteryDayResults.ChargingRow> rows() {
    return rows.stream().map(Timed::row).toList();
  }

  /** The hours from wrap on at which something charges; null for none. */
  Phrase attended() {
    List<PowerHours.Span> close = new ArrayList<>();
    for (PowerHours.Span span : PowerHours.within(charging).spans()) {
      PowerHours.Span before = close.isEmpty() ? null : close.get(close.size() - 1);
      if (before != null && span.from() - before.to() < SCRAP) {
        close.set(close.size() - 1, new PowerHours.Span(before.from(), span.to()));
      } else {
        close.add(span);
      }
    }
    Phrase all = null;
    for (PowerHours.Span span : close) {
      Phrase hours =
          Phrase.of(
              BatteryDayPapers.HOURS,
              DaySettings.time(span.from()),
              BatteryDayPapers.time(span.to(), plan.calendar().shown()));
      all = all == null ? hours : Phrase.of(BatteryDayPapers.ALSO, all, hours);
    }
    return all;
  }

  private void add(int number, DayEvent.Charge charge) {
    double until = plan.calendar().shown().until();
    TypeFacts facts = build.stock().batteries().get(number).type();
    boolean isLow = outcome.nextCharge().get(number) < full(facts);
    Boolean ready =
        Double.isInfinite(until)
            ? null
            : (Boolean) (charge != null && charge.back() <= until && !isLow);
    boolean isNight = charge != null && charge.full() > plan.calendar().shown().wrap();
    boolean listed = charge != null && add(charge, isNight ? ready : null) && isNight;
    if (!listed && isLow && !gone.containsKey(number)) {
      rows.add(
          new Timed(
              Integer.MAX_VALUE,
              number,
              new BatteryDayResults.ChargingRow(
                  BatteryNumbers.shown(number),
                  facts.name(),
                  Phrase.of(BatteryDayPapers.NOT_CHARGED),
                  null,
                  null,
                  null,
                  ready == null ? null : (Boolean) false)));
    }
  }

  /** Adds the rows of a charge; false if it has none. */
  private boolean add(DayEvent.Charge charge, Boolean ready) {
    TypeFacts facts = build.stock().batteries().get(charge.battery()).type();
    List<PowerHours.Span> spans =
        charge.full() > Math.max(from, charge.start()) ? spans(charge) : List.of();
    for (PowerHours.Span span : spans) {
      rows.add(
          new Timed(
              charge.charger(),
              span.from(),
              new BatteryDayResults.ChargingRow(
                  BatteryNumbers.shown(charge.battery()),
                  facts.name(),
                  Phrase.of(
                      "{0}", build.chargers().row(charge.charger()).item().row().value().charger()),
                  charge.channel(),
                  from(span.from()),
                  BatteryDayPapers.time(span.to(), plan.calendar().shown()),
                  ready)));
    }
    return !spans.isEmpty();
  }

  /** What is on its charger when the day is planned again is not put on it then. */
  private Phrase from(double hour) {
    Phrase time = BatteryDayPapers.time(hour, plan.calendar().shown());
    return hour < from - MINUTE ? Phrase.of(BatteryDayPapers.SINCE, DaySettings.time(hour)) : time;
  }

  /**
   * When a charge has power: where that ends it stops, and it goes on when the power is back. Of a
   * few minutes more the battery is not taken off.
   */
  private List<PowerHours.Span> spans(DayEvent.Charge charge) {
    DayFrame day = plan.calendar().shown();
    double until = Double.isInfinite(day.until()) ? day.call() + DAY : day.until();
    double wrap = plan.calendar().shown().wrap();
    PowerHours power = build.chargers().row(charge.charger()).item().spec().power();
    List<PowerHours.Span> spans = new ArrayList<>();
    for (PowerHours.Span span : power.within(charge.start(), charge.full())) {
      if (span.from() < until && span.to() > from) {
        PowerHours.Span before = spans.isEmpty() ? null : spans.get(spans.size() - 1);
        boolean isScrap =
            before != null
                && (span.to() - span.from() < SCRAP || before.to() - before.from() < SCRAP);
        if (isScrap) {
          spans.set(spans.size() - 1, new PowerHours.Span(before.from(), span.to()));
        } else {
          spans.add(span);
        }
        if (span.to() > wrap) {
          charging.add(new PowerHours.Span(Math.max(wrap, span.from()), span.to()));
        }
      }
    }
    return spans;
  }

  /** State of charge from which a battery of a type is not charged: as full as chargers make it. */
  private double full(TypeFacts type) {
    return build.chargers().paper(c -> c.spec() != null).fit().stream()
            .map(c -> c.item().spec())
            .filter(c -> c.types().containsKey(type.row()))
            .mapToDouble(ChargerSpec::fullCharge)
            .max()
            .orElse(1)
        - ChargerSpec.LEAST_CHARGE;
  }
}
