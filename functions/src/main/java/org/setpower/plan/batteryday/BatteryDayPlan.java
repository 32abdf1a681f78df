package org.setpower.plan.batteryday;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.setpower.base.TextEnum;
import org.setpower.plan.batteryday.BatteryDayInputs.AtCall;
import org.setpower.plan.batteryday.BatteryDayInputs.AtNow;
import org.setpower.plan.batteryday.BatteryDayInputs.Position;
import org.setpower.plan.batteryday.simulation.BatterySpec;
import org.setpower.plan.batteryday.simulation.DayOutcome;
import org.setpower.plan.batteryday.simulation.DayPlanner;
import org.setpower.plan.batteryday.simulation.DaySpec;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;

/** The battery plan, calculated once: every verdict, the schedule, every paper, every count. */
public final class BatteryDayPlan {
  /** The model of the sheet. */
  public static final PlanModel MODEL = new BatteryDayModel();

  private final BatteryDayInputs inputs;
  private final DaySettings settings;
  private final TypeList types;
  private final DayCalendar calendar;
  private final FoundBatteries atCall = new FoundBatteries();
  private final FoundBatteries atNow = new FoundBatteries();
  private final DayBuild build;
  private final DaySpec spec;
  private final DayOutcome outcome;
  private final DayPlanner.Fewest fewest;

  BatteryDayPlan(BatteryDayInputs inputs) {
    this.inputs = inputs;
    settings = DaySettings.of(inputs.project().rows().get(0));
    types = new TypeList(inputs.types(), settings.health());
    calendar = new DayCalendar(settings, inputs.days());
    Map<Integer, Double> charges = new HashMap<>();
    for (DayFrame before : calendar.before()) {
      DayBuild build = new DayBuild(inputs, settings, types, before, Map.of());
      DaySpec day = build.spec(settings, charges, Double.POSITIVE_INFINITY, List.of());
      if (day != null) {
        charges.putAll(new DayPlanner(day).plan().nextCharge());
      }
    }
    Set<Integer> known = numbers();
    inputs.atCall().filled().forEach(r -> readAtCall(r, known));
    charges.putAll(atCall.charges());
    build = new DayBuild(inputs, settings, types, calendar.shown(), atCall.gone());
    Map<Integer, DaySpec.Found> found = new LinkedHashMap<>();
    inputs.atNow().filled().forEach(r -> readAtNow(r, known, found));
    judgePlaces(found);
    boolean again = settings.now() != null && calendar.ofProject().isEmpty();
    double now = again ? settings.hour(settings.now()) : Double.POSITIVE_INFINITY;
    spec = build.spec(settings, charges, now, again ? List.copyOf(found.values()) : List.of());
    if (spec == null || spec.units().isEmpty()) {
      outcome = null;
      fewest = null;
    } else {
      DayPlanner planner = new DayPlanner(spec);
      outcome = planner.plan();
      fewest = planner.fewest();
    }
  }

  /** Calculates the plan from its ranges, in the order of {@link PlanModel#inputs()}. */
  public static PlanResult of(List<?> ranges) {
    return MODEL.calculate(ranges);
  }

  private Set<Integer> numbers() {
    return new TreeSet<>(new StockList(inputs.stock(), types, null, Map.of()).batteries().keySet());
  }

  private void readAtCall(InputRow<AtCall> row, Set<Integer> known) {
    AtCall typed = row.value();
    atCall.add(row, typed.number(), typed.charge(), typed.absence(), known);
  }

  private void readAtNow(
      InputRow<AtNow> row, Set<Integer> known, Map<Integer, DaySpec.Found> found) {
    AtNow typed = row.value();
    int number = atNow.add(row, typed.number(), typed.charge(), typed.absence(), known);
    if (settings.now() == null) {
      atNow.add(row.number(), Finding.of(BatteryDayFinding.FOUND_NO_NOW));
    }
    int position = typed.position() == null ? 0 : position(row, number);
    if (typed.position() != null && typed.absence() != null) {
      atNow.add(
          row.number(),
          Finding.of(BatteryDayFinding.FOUND_AWAY, TextEnum.shortened(typed.position())));
    }
    if (number > 0) {
      found.put(
          row.number(),
          new DaySpec.Found(
              number,
              atNow.charges().getOrDefault(number, Double.NaN),
              position,
              atNow.gone().containsKey(number)));
    }
  }

  /** Where more batteries are said to be than there is room for, it is not known which are. */
  private void judgePlaces(Map<Integer, DaySpec.Found> found) {
    Map<Integer, Set<Integer>> on = new TreeMap<>();
    found.values().stream()
        .filter(f -> f.position() > 0 && !f.away())
        .forEach(f -> on.computeIfAbsent(f.position(), p -> new TreeSet<>()).add(f.number()));
    found.replaceAll(
        (row, f) -> {
          Set<Integer> batteries = on.getOrDefault(f.position(), Set.of());
          PositionJudge.State state =
              batteries.isEmpty() ? null : build.positions().row(f.position()).item();
          int places = state == null ? 0 : state.quantity() * state.atOnce();
          if (f.away() || batteries.size() <= places) {
            return f;
          }
          atNow.add(
              row,
              Finding.of(
                  BatteryDayFinding.FOUND_FULL,
                  TextEnum.shortened(state.row().value().position()),
                  (double) batteries.size(),
                  (double) places));
          return new DaySpec.Found(f.number(), f.charge(), 0, false);
        });
  }

  /** The batteries that are known to be gone at the hour of planning again. */
  Map<Integer, BatteryAbsence> goneNow() {
    Map<Integer, BatteryAbsence> gone = new HashMap<>(atNow.gone());
    if (settings.now() == null) {
      // without that hour a loan may lie ahead; what is damaged is not fit at any hour
      gone.values().removeIf(a -> a == BatteryAbsence.LENT);
    }
    return gone;
  }

  /** The row of the position that a battery is on; 0 if it cannot be there. */
  private int position(InputRow<AtNow> row, int number) {
    String name = row.value().position();
    List<InputRow<Position>> named = build.named(name);
    if (named.size() != 1) {
      atNow.add(
          row.number(), Finding.of(BatteryDayFinding.FOUND_POSITION, TextEnum.shortened(name)));
      return 0;
    }
    StockList.StockBattery battery = build.stock().batteries().get(number);
    String type = named.get(0).value().type();
    boolean other =
        battery != null
            && battery.type() != null
            && !Identity.of(battery.type().name()).equals(Identity.of(type));
    if (other) {
      atNow.add(
          row.number(),
          Finding.of(
              BatteryDayFinding.FOUND_TYPE,
              battery.type().name(),
              type == null ? "—" : TextEnum.shortened(type)));
      return 0;
    }
    return named.get(0).number();
  }

  BatteryDayInputs inputs() {
    return inputs;
  }

  DaySettings settings() {
    return settings;
  }

  TypeList types() {
    return types;
  }

  DayCalendar calendar() {
    return calendar;
  }

  FoundBatteries atCall() {
    return atCall;
  }

  FoundBatteries atNow() {
    return atNow;
  }

  DayBuild build() {
    return build;
  }

  /** The day as it was run; null if none could be. */
  DayOutcome outcome() {
    return outcome;
  }

  /** Null where no day was run. */
  DayPlanner.Fewest fewest() {
    return fewest;
  }

  /** State of charge at call of a battery of the plan; null for others. */
  Double chargeAtCall(int number) {
    return spec == null
        ? null
        : spec.batteries().stream()
            .filter(b -> b.number() == number)
            .map(BatterySpec::charge)
            .findFirst()
            .orElse(null);
  }
}
