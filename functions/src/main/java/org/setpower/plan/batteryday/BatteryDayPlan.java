package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
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
import org.setpower.plan.batteryday.simulation.BatteryConnection;
import org.setpower.plan.batteryday.simulation.BatterySpec;
import org.setpower.plan.batteryday.simulation.ChargerSpec;
import org.setpower.plan.batteryday.simulation.DayEvent;
import org.setpower.plan.batteryday.simulation.DayOutcome;
import org.setpower.plan.batteryday.simulation.DayPlanner;
import org.setpower.plan.batteryday.simulation.DaySpec;
import org.setpower.plan.batteryday.typed.BatteryAbsence;
import org.setpower.plan.batteryday.typed.BatteryNumbers;
import org.setpower.plan.batteryday.typed.ChargeAtCall;
import org.setpower.plan.batteryday.word.BatteryUse;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;

/** The battery plan, calculated once: every verdict, the schedule, every paper, every count. */
public final class BatteryDayPlan {
  /** The model of the sheet. */
  public static final PlanModel MODEL = new BatteryDayModel();

  /** Hours of darkness that are none. */
  private static final double LEAST_DARK = 1e-6;

  private final BatteryDayInputs inputs;
  private final DaySettings settings;
  private final TypeList types;
  private final DayCalendar calendar;
  private final FoundBatteries atCall = new FoundBatteries();
  private final FoundBatteries atNow = new FoundBatteries();
  private final DayBuild build;
  private final DaySpec spec;
  private final double now;
  private final DayOutcome outcome;
  private final DayPlanner planner;
  private final DayPlanner.Fewest fewest;
  private final List<Finding> ofToday = new ArrayList<>();
  private final Map<LocalDate, DayOutcome> others = new HashMap<>();
  private final Map<LocalDate, Double> dark = new HashMap<>();
  private final Map<Integer, Integer> fewestOfAll = new HashMap<>();

  /** Whether Today is of the day shown, so that it is applied. */
  private final boolean applies;

  BatteryDayPlan(BatteryDayInputs inputs) {
    this.inputs = inputs;
    settings = DaySettings.of(inputs.project().rows().get(0));
    types = new TypeList(inputs.types(), settings.health());
    calendar = new DayCalendar(settings, inputs.days());
    applies = judgeToday();
    Set<Integer> known = numbers();
    inputs.atCall().filled().forEach(r -> readAtCall(r, known));
    Map<Integer, DaySpec.Found> found = new LinkedHashMap<>();
    inputs.atNow().filled().forEach(r -> readAtNow(r, known, found));
    Map<Integer, Double> charges = new HashMap<>();
    for (DayFrame before : calendar.before()) {
      DayOutcome left = runOther(before, charges);
      if (left != null) {
        charges.putAll(left.nextCharge());
      }
    }
    boolean again = applies && settings.now() != null && calendar.ofProject().isEmpty();
    Map<Integer, BatteryAbsence> gone = new HashMap<>();
    if (applies) {
      gone.putAll(atCall.gone());
      charges.putAll(atCall.charges());
    }
    gone.putAll(again ? quarantined(atCall) : quarantined());
    build = new DayBuild(inputs, settings, types, calendar.shown(), gone, entered(again));
    inputs.atNow().filled().forEach(r -> placeAtNow(r, found));
    judgePlaces(found);
    if (applies) {
      judgeWithheld();
    }
    if (again) {
      judgeOff(found);
    }
    now = again ? settings.hour(settings.now()) : Double.POSITIVE_INFINITY;
    spec = build.spec(settings, charges, now, again ? List.copyOf(found.values()) : List.of());
    if (spec == null || spec.units().isEmpty()) {
      outcome = null;
      planner = null;
      fewest = null;
    } else {
      planner = new DayPlanner(spec);
      outcome = planner.plan();
      fewest = planner.fewest();
      addFewest(fewest);
      if (again) {
        judgeCharge(found);
      }
    }
    runOthers();
  }

  /**
   * The batteries that are entered on Today and there, by the hour from which they are: with a
   * state of charge at call, and with anything at the hour of planning again.
   */
  private Map<Integer, Double> entered(boolean again) {
    Map<Integer, Double> entered = new HashMap<>();
    if (again) {
      inputs
          .atNow()
          .filled()
          .filter(r -> r.unreadable().isEmpty() && r.cells().size() > 1)
          .forEach(r -> entered.put(atNow.number(r.number()), settings.hour(settings.now())));
      atNow.gone().keySet().forEach(entered::remove);
    }
    if (applies) {
      inputs
          .atCall()
          .filled()
          .filter(r -> r.unreadable().isEmpty() && r.value().charge() != null)
          .forEach(r -> entered.put(atCall.number(r.number()), Double.NEGATIVE_INFINITY));
      atCall.gone().keySet().forEach(entered::remove);
    }
    return entered;
  }

  /** A date that is not shown, as it is planned; null if it cannot be. */
  private DayOutcome runOther(DayFrame frame, Map<Integer, Double> charges) {
    boolean later = settings.today() != null && !frame.date().isBefore(settings.today());
    Map<Integer, BatteryAbsence> gone = later ? quarantined() : Map.of();
    DayBuild other = new DayBuild(inputs, settings, types, frame, gone, Map.of());
    DaySpec day = other.spec(settings, charges, Double.POSITIVE_INFINITY, List.of());
    DayOutcome run = day == null ? null : DayPlanner.ofOther(day);
    others.put(frame.date(), run);
    if (run != null) {
      addFewest(DayPlanner.fewestOf(day));
    }
    if (run != null && run.complete() && other.isWhole(frame.date())) {
      dark.put(frame.date(), Arrays.stream(run.darkHours()).sum());
    }
    return run;
  }

  /** All dates but the one shown and those before it that it takes charges from. */
  private void runOthers() {
    Map<Integer, Double> charges = new HashMap<>();
    for (DayFrame frame : calendar.all()) {
      if (frame.atCall() != ChargeAtCall.AS_LEFT) {
        charges.clear();
      }
      boolean shown = calendar.shown() != null && frame.date().equals(calendar.shown().date());
      DayOutcome run = shown ? outcome : others.get(frame.date());
      if (!shown && !others.containsKey(frame.date())) {
        run = runOther(frame, charges);
      }
      if (shown && outcome != null && outcome.complete() && build.isWhole(frame.date())) {
        dark.put(frame.date(), Arrays.stream(outcome.darkHours()).sum());
      }
      if (run != null) {
        charges.putAll(run.nextCharge());
      }
    }
  }

  private void addFewest(DayPlanner.Fewest ofDate) {
    ofDate.together().forEach((type, number) -> fewestOfAll.merge(type, number, Math::max));
  }

  /** Min. required of a type over all dates that can be planned; null where it is not known. */
  Integer fewestOfAll(int type) {
    return fewestOfAll.get(type);
  }

  /** Dark hours of a date as it is planned; null where they are not known. */
  Double darkOn(LocalDate date) {
    return date == null ? null : dark.get(date);
  }

  /** What is wrong with a row of Days, and whether a date that is not shown is dark. */
  List<Finding> ofDay(InputRow<BatteryDayInputs.Day> row) {
    LocalDate date = row.value().date();
    Double hours = darkOn(date);
    boolean shown = calendar.shown() != null && calendar.shown().date().equals(date);
    List<Finding> all = new ArrayList<>(calendar.findings(row.number()));
    if (!shown && hours != null && hours > LEAST_DARK) {
      all.add(Finding.of(BatteryDayFinding.DAY_DARK, DaySettings.duration(hours)));
    }
    return all.stream().sorted(Finding.WORST_FIRST).toList();
  }

  /** The hour from which the day shown is planned again; infinite where it is not. */
  double now() {
    return now;
  }

  /** Calculates the plan from its ranges, in the order of {@link PlanModel#inputs()}. */
  public static PlanResult of(List<?> ranges) {
    return MODEL.calculate(ranges);
  }

  /** Whether what is typed on Today is of the day shown; with nothing typed there it is. */
  private boolean judgeToday() {
    boolean typed =
        settings.now() != null
            || inputs.atCall().filled().findAny().isPresent()
            || inputs.atNow().filled().findAny().isPresent();
    DayFrame day = calendar.shown();
    if (!typed || day == null) {
      return true;
    }
    if (settings.today() == null) {
      if (settings.isTodayRead() && calendar.hasSeveral()) {
        ofToday.add(Finding.of(BatteryDayFinding.TODAY_BLANK, day.date()));
      }
      return settings.isTodayRead();
    }
    if (!settings.today().equals(day.date())) {
      ofToday.add(Finding.of(BatteryDayFinding.TODAY_OTHER, settings.today(), day.date()));
      return false;
    }
    return true;
  }

  /** What is dropped or wet on one day stays out on all, as long as it is typed. */
  private Map<Integer, BatteryAbsence> quarantined() {
    Map<Integer, BatteryAbsence> all = quarantined(atCall);
    all.putAll(quarantined(atNow));
    return all;
  }

  private static Map<Integer, BatteryAbsence> quarantined(FoundBatteries found) {
    Map<Integer, BatteryAbsence> gone = new HashMap<>(found.gone());
    gone.values().removeIf(a -> a != BatteryAbsence.QUARANTINE);
    return gone;
  }

  private Set<Integer> numbers() {
    return new TreeSet<>(
        new StockList(inputs, types, null, Map.of(), Map.of()).batteries().keySet());
  }

  private void readAtCall(InputRow<AtCall> row, Set<Integer> known) {
    AtCall typed = row.value();
    int number = atCall.add(row, typed.number(), typed.charge(), typed.absence(), known);
    atCall.addNothing(row, number);
  }

  private void readAtNow(
      InputRow<AtNow> row, Set<Integer> known, Map<Integer, DaySpec.Found> found) {
    AtNow typed = row.value();
    int number = atNow.add(row, typed.number(), typed.charge(), typed.absence(), known);
    atNow.addNothing(row, number);
    if (settings.now() == null) {
      atNow.add(row.number(), Finding.of(BatteryDayFinding.FOUND_NO_NOW));
    }
    String place = typed.position() == null ? typed.charger() : typed.position();
    if (place != null && typed.absence() != null) {
      atNow.add(row.number(), Finding.of(BatteryDayFinding.FOUND_AWAY, TextEnum.shortened(place)));
    }
    if (number > 0) {
      found.put(
          row.number(),
          new DaySpec.Found(
              number,
              atNow.charges().getOrDefault(number, Double.NaN),
              0,
              0,
              false,
              atNow.gone().containsKey(number)));
    }
  }

  private void placeAtNow(InputRow<AtNow> row, Map<Integer, DaySpec.Found> found) {
    DaySpec.Found read = found.get(row.number());
    AtNow typed = row.value();
    int number = read == null ? 0 : read.number();
    int position = typed.position() == null ? 0 : position(row, number);
    int charger = typed.charger() == null ? 0 : charger(row, number);
    boolean shelf = Boolean.TRUE.equals(typed.shelf());
    int places =
        (typed.position() == null ? 0 : 1) + (typed.charger() == null ? 0 : 1) + (shelf ? 1 : 0);
    if (read == null) {
      return;
    }
    if (places > 1) {
      atNow.add(
          row.number(),
          Finding.of(BatteryDayFinding.FOUND_TWO_PLACES, BatteryNumbers.shown(number)));
    } else {
      found.put(
          row.number(),
          new DaySpec.Found(number, read.charge(), position, charger, shelf, read.away()));
    }
  }

  /** Where more batteries are said to be than there is room for, it is not known which are. */
  private void judgePlaces(Map<Integer, DaySpec.Found> found) {
    Map<Integer, Set<List<Object>>> places = new TreeMap<>();
    found.values().stream()
        .filter(f -> f.position() > 0 || f.charger() > 0 || f.shelf())
        .forEach(
            f ->
                places
                    .computeIfAbsent(f.number(), n -> new HashSet<>())
                    .add(List.of(f.position(), f.charger(), f.shelf())));
    found.replaceAll(
        (row, f) -> {
          if (places.getOrDefault(f.number(), Set.of()).size() > 1) {
            atNow.add(
                row, Finding.of(BatteryDayFinding.FOUND_PLACES, BatteryNumbers.shown(f.number())));
            return f.asPlanned();
          }
          return isInSet(row, f) ? f.asPlanned() : f;
        });
    Map<Integer, Set<Integer>> on = new TreeMap<>();
    found.values().stream()
        .filter(f -> f.position() > 0 && !f.away())
        .forEach(f -> on.computeIfAbsent(f.position(), p -> new TreeSet<>()).add(f.number()));
    found.replaceAll(
        (row, f) -> {
          Set<Integer> batteries = on.getOrDefault(f.position(), Set.of());
          PositionJudge.State state =
              batteries.isEmpty() ? null : build.positions().row(f.position()).item();
          int room = state == null ? 0 : state.quantity() * state.atOnce();
          if (f.away() || batteries.size() <= room) {
            return f;
          }
          atNow.add(
              row,
              Finding.of(
                  BatteryDayFinding.FOUND_FULL,
                  TextEnum.shortened(state.row().value().position()),
                  (double) batteries.size(),
                  (double) room));
          return f.asPlanned();
        });
  }

  /** What is found of a battery that the plan does not use changes nothing. */
  private void judgeWithheld() {
    for (InputRow<AtCall> row : inputs.atCall().filled().toList()) {
      int number = atCall.number(row.number());
      if (build.stock().isPutIn(number)) {
        addReserve(atCall, row.number(), number);
      } else if (isWithheld(number)
          && row.value().absence() == null
          && row.value().charge() != null) {
        atCall.add(
            row.number(),
            Finding.of(BatteryDayFinding.FOUND_WITHHELD, BatteryNumbers.shown(number)));
      }
    }
    for (InputRow<AtNow> row : inputs.atNow().filled().toList()) {
      int number = atNow.number(row.number());
      AtNow typed = row.value();
      if (build.stock().isPutIn(number)) {
        addReserve(atNow, row.number(), number);
      } else if (isWithheld(number) && typed.absence() == null) {
        judgeWithheld(row.number(), number, typed);
      }
    }
  }

  private static void addReserve(FoundBatteries found, int row, int number) {
    found.add(row, Finding.of(BatteryDayFinding.FOUND_RESERVE, BatteryNumbers.shown(number)));
  }

  private void judgeWithheld(int row, int number, AtNow typed) {
    String shown = BatteryNumbers.shown(number);
    boolean damaged = build.stock().batteries().get(number).use() == BatteryUse.QUARANTINE;
    if (typed.position() != null) {
      atNow.add(
          row,
          Finding.of(
              damaged ? BatteryDayFinding.FOUND_QUARANTINE : BatteryDayFinding.FOUND_WITHHELD_ON,
              shown,
              TextEnum.shortened(typed.position())));
    }
    if (typed.charger() != null) {
      atNow.add(
          row,
          Finding.of(
              damaged
                  ? BatteryDayFinding.FOUND_QUARANTINE_CHARGES
                  : BatteryDayFinding.FOUND_WITHHELD_CHARGES,
              shown,
              TextEnum.shortened(typed.charger())));
    } else if (typed.position() == null && (typed.charge() != null || typed.shelf() != null)) {
      atNow.add(row, Finding.of(BatteryDayFinding.FOUND_WITHHELD, shown));
    }
  }

  private boolean isWithheld(int number) {
    StockList.StockBattery battery = build.stock().batteries().get(number);
    return battery != null && !battery.isPlanned();
  }

  /** A position on which the plan has no battery at that hour takes none that is found. */
  private void judgeOff(Map<Integer, DaySpec.Found> found) {
    double now = settings.hour(settings.now());
    found.forEach(
        (row, f) -> {
          boolean used =
              build.units().stream()
                  .filter(u -> u.position() == f.position())
                  .anyMatch(u -> u.isUsedAt(now, calendar.shown().breaks()));
          if (f.position() > 0 && !f.away() && !isWithheld(f.number()) && !used) {
            String name = build.positions().row(f.position()).item().row().value().position();
            atNow.add(
                row,
                Finding.of(BatteryDayFinding.FOUND_OFF, TextEnum.shortened(name), settings.now()));
          }
        });
  }

  /** Of a battery that is not where it was planned nobody knows how full it is. */
  private void judgeCharge(Map<Integer, DaySpec.Found> found) {
    Map<Integer, Set<Integer>> planned = new HashMap<>();
    for (DayEvent event : outcome.events()) {
      if (event.hour() < now - 1e-9) {
        int position = build.units().get(event.unit()).position();
        event.off().forEach(n -> planned.getOrDefault(n, new TreeSet<>()).remove(position));
        event.on().forEach(n -> planned.computeIfAbsent(n, b -> new TreeSet<>()).add(position));
      }
    }
    Map<Integer, Integer> charging = new HashMap<>();
    outcome.charges().stream()
        .filter(c -> c.start() < now - 1e-9 && c.full() > now - 1e-9)
        .forEach(c -> charging.put(c.battery(), c.charger()));
    for (InputRow<AtNow> row : inputs.atNow().filled().toList()) {
      DaySpec.Found read = found.get(row.number());
      boolean asks =
          read != null
              && !read.away()
              && atNow.findings(row.number()).isEmpty()
              && row.value().charge() == null
              && !row.unreadable().contains("charge");
      if (asks) {
        Set<Integer> on = planned.getOrDefault(read.number(), Set.of());
        boolean moved =
            read.charger() > 0 && charging.getOrDefault(read.number(), 0) != read.charger();
        moved |= read.shelf() && (!on.isEmpty() || charging.containsKey(read.number()));
        String shown = BatteryNumbers.shown(read.number());
        if (moved) {
          atNow.add(row.number(), Finding.of(BatteryDayFinding.FOUND_CHARGE_MOVED, shown));
        } else if (read.position() > 0 && !on.contains(read.position())) {
          String place = TextEnum.shortened(row.value().position());
          atNow.add(row.number(), Finding.of(BatteryDayFinding.FOUND_CHARGE, shown, place));
        }
      }
    }
  }

  /** Whether a battery is said to be in a set, of which the others are not known. */
  private boolean isInSet(int row, DaySpec.Found found) {
    if (found.position() == 0 || found.away()) {
      return false;
    }
    PositionJudge.State state = build.positions().row(found.position()).item();
    boolean set = state.atOnce() > 1 && state.connection() != BatteryConnection.HOT_SWAP;
    if (set) {
      atNow.add(
          row,
          Finding.of(
              BatteryDayFinding.FOUND_SET,
              TextEnum.shortened(state.row().value().position()),
              (double) state.atOnce()));
    }
    return set;
  }

  /** The batteries that are known to be gone at the hour of planning again. */
  Map<Integer, BatteryAbsence> goneNow() {
    Map<Integer, BatteryAbsence> gone = new HashMap<>(applies ? atNow.gone() : quarantined(atNow));
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

  /** The row of the charger that a battery is on; 0 if it does not charge there. */
  private int charger(InputRow<AtNow> row, int number) {
    String name = row.value().charger();
    List<Gate.Judged<ChargerJudge.State>> named =
        build.chargers().all().stream()
            .filter(c -> Identity.of(c.item().row().value().charger()).equals(Identity.of(name)))
            .toList();
    if (named.size() != 1) {
      atNow.add(
          row.number(), Finding.of(BatteryDayFinding.FOUND_CHARGER, TextEnum.shortened(name)));
      return 0;
    }
    StockList.StockBattery battery = build.stock().batteries().get(number);
    ChargerSpec spec = named.get(0).fit() ? named.get(0).item().spec() : null;
    boolean typed = battery != null && battery.type() != null;
    if (typed && (spec == null || !spec.types().containsKey(battery.type().row()))) {
      atNow.add(
          row.number(),
          Finding.of(
              BatteryDayFinding.FOUND_NOT_CHARGED,
              battery.type().name(),
              TextEnum.shortened(name)));
      return 0;
    }
    return named.get(0).row();
  }

  /** What is wrong with the date of Today. */
  List<Finding> ofToday() {
    return ofToday;
  }

  /** How many full batteries of each type are missing besides; none where that is not known. */
  Map<Integer, Integer> missing() {
    return planner.missing();
  }

  /** Dark hours if the watts of a supply did not bind. */
  double darkWithout(int supply) {
    return planner.darkWithout(supply);
  }

  /** Watts of a supply that are enough; NaN if none are. */
  double wattsEnough(int supply) {
    return planner.wattsEnough(supply);
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
