package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.setpower.plan.batteryday.simulation.DayBattery.Place;

/** Runs a day from event to event, at exact times. */
final class DayRun {
  /** Hours closer than this are the same. */
  static final double SAME = 1e-9;

  /** Hours; a full battery that works for less is no plan. */
  static final double SHORTEST = 1.0 / 6;

  /**
   * Hours; a part-used battery that would work for less is left on the shelf, unless it reaches the
   * next break or the end: nobody changes batteries every few minutes. Common practice.
   */
  static final double LEAST_GAIN = 1.0 / 3;

  /**
   * Hours; a position waits so long for a battery that comes back from a charger, before it takes
   * that of another: to carry one from a camera to another takes minutes too. Common practice.
   */
  static final double LEAST_WAIT = 1.0 / 12;

  /** More events are no plan that a crew can follow. */
  static final int MOST_EVENTS = 600;

  /** Steps at one hour; a day that stands still is no plan either. */
  private static final int MOST_STILL = 100;

  private final DaySpec day;
  private final boolean toFirstDark;
  private final DayPolicy afternoon;
  private DayPolicy policy;
  private final List<RunningUnit> units = new ArrayList<>();
  private final List<RunningUnit> byImportance;
  private final Map<Integer, DayBattery> batteries = new LinkedHashMap<>();
  private final List<DayBattery> all = new ArrayList<>();
  private final Map<Integer, List<DayBattery>> byType = new HashMap<>();

  /** Hour from which it is known that power is lost. */
  private final double told;

  private final ChargingDesk desk;
  private final TreeSet<Double> moments = new TreeSet<>();
  private final DayLog log;
  private final List<DayEvent.Charge> charges = new ArrayList<>();
  private final double end;
  private boolean stopped;
  private int moves;
  private int still;
  private long cost;
  private boolean overrun;
  private int darkType;

  private DayRun(DaySpec day, DayPolicy morning, DayPolicy afternoon, boolean toFirstDark) {
    this.day = day;
    this.policy = morning;
    this.afternoon = afternoon;
    this.toFirstDark = toFirstDark;
    day.units().forEach(u -> units.add(new RunningUnit(u)));
    byImportance = new ArrayList<>(units);
    byImportance.sort(Comparator.comparingDouble(u -> u.spec.priority()));
    for (BatterySpec spec : day.batteries()) {
      DayBattery battery = new DayBattery(spec);
      batteries.put(spec.number(), battery);
      all.add(battery);
      byType.computeIfAbsent(battery.type, t -> new ArrayList<>()).add(battery);
    }
    desk = new ChargingDesk(day, morning);
    told = day.told();
    log = toFirstDark ? null : new DayLog(units, day.now());
    end = units.stream().mapToDouble(u -> u.work.end()).reduce(day.call(), Math::max);
  }

  /** Runs the whole day. */
  static DayOutcome of(DaySpec day, DayPolicy morning, DayPolicy afternoon) {
    DayRun run = new DayRun(day, morning, afternoon, false);
    run.run();
    return run.outcome();
  }

  /** Runs a day to the first hour at which something goes dark. */
  static DayRun toFirstDark(DaySpec day, DayPolicy policy, Effort effort) {
    DayRun run = new DayRun(day, policy, policy, true);
    run.run();
    effort.spend(run.cost);
    return run;
  }

  /** Whether nothing goes dark all day. */
  boolean isLit() {
    return !stopped;
  }

  DayPolicy policy() {
    return policy;
  }

  /** The type of the battery that was missing first; 0 where that is not why the day failed. */
  int darkType() {
    return darkType;
  }

  /**
   * The first run in which nothing goes dark; null without one, or where the effort is spent. A
   * policy by which a day would run as it did before is not tried.
   */
  static DayRun firstLit(DaySpec day, List<DayPolicy> tried, Effort effort) {
    List<DayRun> dark = new ArrayList<>();
    for (DayPolicy policy : tried) {
      if (effort.isSpent()) {
        return null;
      }
      if (dark.stream().noneMatch(r -> r.isSameBy(policy))) {
        DayRun run = toFirstDark(day, policy, effort);
        if (run.isLit()) {
          return run;
        }
        dark.add(run);
      }
    }
    return null;
  }

  /** Whether the day would have run the same by another policy. */
  boolean isSameBy(DayPolicy other) {
    return desk.isSameBy(other);
  }

  /** How many batteries of a type are touched: those up to the last that is on anything. */
  int touched(int type) {
    int place = 0;
    int last = 1;
    for (DayBattery battery : all) {
      place += battery.type == type ? 1 : 0;
      last = battery.type == type && battery.touched ? place : last;
    }
    return last;
  }

  private void run() {
    moments.add(day.call());
    for (RunningUnit unit : units) {
      for (UnitSpec.Span span : unit.spec.spans()) {
        moments.add(span.from());
        moments.add(span.to());
      }
    }
    day.breaks().forEach(b -> moments.add(b.from()));
    for (ChargerSpec charger : day.chargers()) {
      for (PowerHours hours : List.of(charger.planned(), charger.power())) {
        for (PowerHours.Span span : hours.spans()) {
          if (span.from() > day.call() && span.from() < end) {
            moments.add(span.from());
          }
        }
      }
    }
    all.stream().map(b -> b.arrives).filter(Double::isFinite).forEach(moments::add);
    if (isFound()) {
      moments.add(day.now());
    }
    if (Double.isFinite(told)) {
      moments.add(told);
    }
    double now = Double.NEGATIVE_INFINITY;
    while (!stopped) {
      double before = now;
      now = next(now);
      if (Double.isInfinite(now)) {
        return;
      }
      still = now > before + SAME ? 0 : still + 1;
      step(now);
      cost += units.size() + batteries.size();
      if (Math.max(moves, log == null ? 0 : log.lines()) > MOST_EVENTS || still > MOST_STILL) {
        stopped = true;
        overrun = true;
      }
    }
  }

  /** The next moment; those that are nearly the same are one. */
  private double next(double now) {
    Double planned = moments.higher(now + SAME);
    double next = planned == null ? Double.POSITIVE_INFINITY : planned;
    for (RunningUnit unit : units) {
      double empty = unit.emptyAt();
      if (empty < next) {
        next = Math.max(empty, now);
      }
    }
    return next > end + SAME ? Double.POSITIVE_INFINITY : next;
  }

  private void step(double now) {
    comeBack(now);
    if (Math.abs(now - told) <= SAME) {
      desk.tell();
      all.forEach(b -> losePower(b, now));
    }
    if (isFound() && Math.abs(now - day.now()) <= SAME) {
      units.forEach(u -> u.advance(now));
      find(now);
    }
    List<RunningUnit> busy = new ArrayList<>();
    for (RunningUnit unit : byImportance) {
      if (!unit.isQuiet(now)) {
        busy.add(unit);
        unit.advance(now);
        comeOff(unit, now);
      }
    }
    if (Math.abs(now - day.call()) <= SAME) {
      batteries.values().stream()
          .filter(b -> b.place == Place.SHELF)
          .sorted(Comparator.comparingDouble(b -> b.charge))
          .forEach(b -> b.waits = true);
    }
    for (RunningUnit unit : busy) {
      if (unit.isInStretch(now)) {
        serve(unit, now);
      }
      unit.lookAhead(now);
    }
    if (policy.toBreaks()) {
      changeInBreak(now);
    }
    sendWaiting(now);
    if (log != null) {
      byImportance.forEach(u -> log.write(u, now));
      log.close();
    }
  }

  /** Whether the day is planned again: with nothing new it runs as it was planned. */
  private boolean isFound() {
    return day.isAgain();
  }

  private void comeBack(double now) {
    for (DayBattery battery : all) {
      if (battery.arrives <= now + SAME) {
        battery.arrives = Double.POSITIVE_INFINITY;
        battery.place = Place.SHELF;
        battery.waits = battery.charge < 1 - SAME;
      }
      if (battery.place == Place.CHARGING && battery.charging.back() <= now + SAME) {
        battery.charge = Math.max(battery.charge, battery.charging.fullCharge());
        battery.cold = false;
        battery.ready = battery.charging.full();
        battery.waits = battery.charging.isCut();
        battery.charging = null;
        battery.place = Place.SHELF;
      }
    }
  }

  /** Takes over what was found at the hour of planning again. */
  private void find(double now) {
    policy = afternoon;
    desk.follow(afternoon);
    Set<DayBattery> placed = new HashSet<>();
    for (DaySpec.Found found : day.found()) {
      DayBattery battery = batteries.get(found.number());
      if (battery != null && !found.away() && isOn(found.position(), battery)) {
        placed.add(battery);
      }
    }
    for (DaySpec.Found found : day.found()) {
      DayBattery battery = batteries.get(found.number());
      if (battery == null) {
        continue;
      }
      boolean moves =
          found.away()
              || found.position() > 0 && !placed.contains(battery)
              || found.charger() > 0 && !isCharging(battery, found.charger(), now)
              || found.shelf() && battery.place != Place.SHELF;
      if (battery.place == Place.CHARGING && (moves || !Double.isNaN(found.charge()))) {
        endCharge(battery, now);
      }
      if (battery.place == Place.ON && moves) {
        takeFromUnits(battery);
      }
      if (!Double.isNaN(found.charge())) {
        battery.charge = found.charge();
      }
      if (found.away()) {
        battery.arrives = Double.POSITIVE_INFINITY;
        battery.place = Place.AWAY;
        battery.waits = false;
      } else if (found.position() > 0 && moves) {
        putOnPosition(found.position(), battery, placed, now);
      } else if (battery.place == Place.SHELF) {
        battery.waits = true;
      }
    }
    for (DaySpec.Found found : day.found()) {
      DayBattery battery = batteries.get(found.number());
      if (found.charger() > 0 && battery != null && battery.place == Place.SHELF) {
        charge(battery, desk.offerOf(found.charger(), battery, now, day.air().at(now) < 0), now);
      }
    }
    for (RunningUnit unit : units) {
      unit.look(now);
      unit.activate(now);
      unit.dark = unit.dark && unit.active < 0;
    }
  }

  /** Takes a battery off a charger that loses the power of its charge; it is fetched from there. */
  private void losePower(DayBattery battery, double now) {
    double lost = battery.place == Place.CHARGING ? desk.lost(battery.charging, now) : Double.NaN;
    if (Double.isNaN(lost)) {
      return;
    }
    double way = desk.away(battery.charging);
    double charge = battery.chargeAt(now - Math.max(0, lost));
    endCharge(battery, now);
    battery.charge = charge;
    battery.waits = true;
    if (way > 0) {
      battery.place = Place.AWAY;
      battery.arrives = now + way;
      moments.add(battery.arrives);
    }
  }

  private static boolean isCharging(DayBattery battery, int charger, double now) {
    return battery.place == Place.CHARGING
        && battery.charging.charger() == charger
        && battery.charging.start() <= now + SAME;
  }

  private void takeFromUnits(DayBattery battery) {
    for (RunningUnit unit : units) {
      for (int slot = 0; slot < unit.slots.size(); slot++) {
        if (unit.slots.get(slot) != null && unit.slots.get(slot).contains(battery)) {
          unit.takeOff(slot)
              .forEach(
                  b -> {
                    b.place = Place.SHELF;
                    b.waits = true;
                  });
        }
      }
    }
  }

  private boolean isOn(int position, DayBattery battery) {
    return units.stream()
        .filter(u -> u.spec.position() == position)
        .flatMap(u -> u.slots.stream())
        .anyMatch(s -> s != null && s.contains(battery));
  }

  /** The slot for a battery that was found on a unit; −1 if all have one that was. */
  private static int slot(RunningUnit unit, Set<DayBattery> placed) {
    int first = Math.max(0, unit.active);
    for (int i = 0; i < unit.slots.size(); i++) {
      int slot = (first + i) % unit.slots.size();
      List<DayBattery> held = unit.slots.get(slot);
      if (held == null || held.stream().noneMatch(placed::contains)) {
        return slot;
      }
    }
    return -1;
  }

  private void putOnPosition(int position, DayBattery battery, Set<DayBattery> placed, double now) {
    for (RunningUnit unit : units) {
      boolean there =
          unit.spec.position() == position
              && unit.perSlot() == 1
              && unit.spec.type() == battery.type
              && unit.isInStretch(now);
      int slot = there ? slot(unit, placed) : -1;
      if (slot >= 0) {
        unit.takeOff(slot)
            .forEach(
                b -> {
                  b.place = Place.SHELF;
                  b.waits = true;
                });
        unit.put(slot, List.of(battery), now);
        placed.add(battery);
        if (log != null) {
          log.found(battery);
        }
        return;
      }
    }
  }

  /** Empty batteries, and those of units that end, come off. */
  private void comeOff(RunningUnit unit, double now) {
    if (!unit.isInStretch(now)) {
      moves += unit.begun ? 1 : 0;
      for (int slot = 0; slot < unit.slots.size(); slot++) {
        release(unit, slot, false, now);
      }
      unit.begun = false;
      unit.dark = false;
      return;
    }
    if (unit.work.isOn(now) && unit.isActiveEmpty(now)) {
      release(unit, unit.active, true, now);
    }
    if (unit.active < 0 && unit.work.isOn(now)) {
      unit.activate(now);
      for (int slot = 0; slot < unit.slots.size(); slot++) {
        List<DayBattery> left = unit.slots.get(slot);
        if (unit.active < 0 && left != null) {
          // Charge that does not start the position here is of no use on it.
          release(unit, slot, true, now);
        }
      }
    }
  }

  private void release(RunningUnit unit, int slot, boolean empty, double now) {
    for (DayBattery battery : unit.takeOff(slot)) {
      battery.place = Place.SHELF;
      send(battery, !empty, now);
    }
  }

  /** Sends a battery to a charger, if one takes it. */
  private void send(DayBattery battery, boolean onlyAtOnce, double now) {
    if (onlyAtOnce && !policy.chargePartUsed()) {
      battery.waits = battery.charge < 1 - SAME;
      return;
    }
    boolean cold = day.air().at(now) < 0 && !(day.shelf() >= 0 && battery.waits);
    DayEvent.Charge charge = desk.best(battery, now, cold, end);
    boolean atOnce =
        charge != null
            && !charge.isLater()
            && charge.start() <= desk.arrival(charge.charger(), now, cold) + SAME;
    if (charge == null || onlyAtOnce && !atOnce) {
      battery.waits = battery.charge < 1 - SAME;
      return;
    }
    charge(battery, charge, now);
  }

  /** Puts a battery on a charger; null leaves it where it is. */
  private void charge(DayBattery battery, DayEvent.Charge charge, double now) {
    if (charge == null) {
      return;
    }
    desk.take(charge, battery);
    battery.charging = charge;
    battery.place = Place.CHARGING;
    battery.waits = false;
    charges.add(charge);
    moments.add(charge.back());
    if (desk.isNear(charge) && charge.usable() > now) {
      moments.add(charge.usable());
    }
    moments.add(charge.full());
  }

  private void sendWaiting(double now) {
    List<DayBattery> waiting = null;
    for (DayBattery battery : all) {
      if (battery.waits && battery.place == Place.SHELF) {
        waiting = waiting == null ? new ArrayList<>() : waiting;
        waiting.add(battery);
      }
    }
    if (waiting == null) {
      return;
    }
    waiting.sort(Comparator.comparingDouble(b -> b.charge));
    waiting.forEach(b -> send(b, true, now));
  }

  private void endCharge(DayBattery battery, double now) {
    DayEvent.Charge charge = battery.charging;
    battery.charge = battery.chargeAt(now);
    battery.cold = false;
    desk.end(charge, now);
    charges.set(charges.indexOf(charge), charge.ended(now));
    battery.charging = null;
    battery.place = Place.SHELF;
  }

  /** Fills the empty slots of a unit as far as there are batteries. */
  private void serve(RunningUnit unit, double now) {
    boolean wasDark = unit.dark;
    boolean served = false;
    for (int slot = 0; slot < unit.slots.size(); slot++) {
      if (unit.slots.get(slot) == null) {
        List<DayBattery> chosen = choose(unit, now);
        if (chosen.isEmpty()) {
          break;
        }
        chosen.forEach(
            b -> {
              if (b.place == Place.CHARGING) {
                endCharge(b, now);
              }
            });
        unit.put(slot, chosen, now);
        served = true;
      }
    }
    unit.activate(now);
    unit.dark = unit.active < 0;
    if (unit.dark && !unit.work.isOn(now)) {
      unit.dark = wasDark;
      return;
    }
    if (served) {
      moves++;
    } else if (unit.dark && !wasDark) {
      goDark(unit);
      unit.begun = true;
    }
  }

  private void goDark(RunningUnit unit) {
    moves++;
    stopped = stopped || toFirstDark;
    darkType = darkType == 0 ? unit.spec.type() : darkType;
  }

  /** The batteries that go on: the least charged that reach the next break, else the fullest. */
  private List<DayBattery> choose(RunningUnit unit, double now) {
    List<DayBattery> shelf = usable(unit, now, false);
    double goal = goal(unit, now);
    List<DayBattery> chosen = pick(unit, shelf, now, goal);
    if (!chosen.isEmpty() && reaches(unit, chosen, now, goal)) {
      return chosen;
    }
    List<DayBattery> withCharging = usable(unit, now, true);
    if (withCharging.size() > shelf.size()) {
      chosen = pick(unit, withCharging, now, goal);
    }
    return chosen.isEmpty() ? takeOver(unit, shelf, now, goal) : chosen;
  }

  /** The next break, or the end of the stretch. */
  private double goal(RunningUnit unit, double now) {
    double goal = unit.work.stretchEnd(now);
    for (DaySpec.Pause pause : day.breaks()) {
      if (pause.from() > now + SAME) {
        goal = Math.min(goal, pause.from());
      }
    }
    return goal;
  }

  private static boolean reaches(RunningUnit unit, List<DayBattery> set, double now, double goal) {
    double charge = 1;
    for (DayBattery battery : set) {
      charge = Math.min(charge, battery.chargeAt(now));
    }
    return unit.reach(charge, now, RunningUnit.isCold(set)) >= goal - SAME;
  }

  /** Batteries that the unit can use, from the least charged to the fullest. */
  private List<DayBattery> usable(RunningUnit unit, double now, boolean charging) {
    List<DayBattery> usable = new ArrayList<>();
    List<DayBattery> own = byType.get(unit.spec.type());
    if (own == null) {
      return usable;
    }
    double[] charges = new double[own.size()];
    cost += batteries.size();
    double lastCharge = Double.NaN;
    boolean lastCold = false;
    boolean lastWorth = false;
    for (DayBattery b : own) {
      if (isThere(b, now, charging)) {
        // most are full: what is known of one is known of all as full
        double charge = b.chargeAt(now);
        if (charge != lastCharge || b.cold != lastCold) {
          lastCharge = charge;
          lastCold = b.cold;
          lastWorth = isWorthIt(unit, charge, now, b.cold);
        }
        if (lastWorth) {
          insert(usable, charges, b, charge, log != null);
        }
      }
    }
    return usable;
  }

  /**
   * Most come in order: the fullest last. Of equals the one that is ready longest comes first, then
   * the lowest number. A search leaves out the first of these: to the hours of the day it makes no
   * difference, and it counts how many numbers are touched.
   */
  private static void insert(
      List<DayBattery> sorted,
      double[] charges,
      DayBattery battery,
      double charge,
      boolean rotates) {
    int place = sorted.size();
    while (place > 0
        && (charges[place - 1] > charge
            || charges[place - 1] == charge
                && comesAfter(sorted.get(place - 1), battery, rotates))) {
      charges[place] = charges[place - 1];
      place--;
    }
    charges[place] = charge;
    sorted.add(place, battery);
  }

  private static boolean comesAfter(DayBattery one, DayBattery other, boolean rotates) {
    return rotates && one.ready != other.ready
        ? one.ready > other.ready
        : one.number > other.number;
  }

  private boolean isThere(DayBattery b, double now, boolean charging) {
    return b.place == Place.SHELF
        || charging
            && b.place == Place.CHARGING
            && b.charging.usable() <= now + SAME
            && desk.isNear(b.charging);
  }

  private boolean isWorthIt(RunningUnit unit, double charge, double now, boolean cold) {
    if (!unit.works(charge, now, cold)) {
      return false;
    }
    double reach = unit.reach(charge, now, cold);
    double least = charge >= 1 - SAME ? SHORTEST : LEAST_GAIN;
    return reach >= now + least || reach >= goal(unit, now) - SAME;
  }

  /** From the least charged to the fullest: the first set that reaches the goal, else the last. */
  private static List<DayBattery> pick(
      RunningUnit unit, List<DayBattery> sorted, double now, double goal) {
    int count = unit.perSlot();
    List<DayBattery> last = List.of();
    double failed = Double.NaN;
    boolean failedCold = false;
    for (int i = 0; i + count <= sorted.size(); i++) {
      List<DayBattery> set = sorted.subList(i, i + count);
      double least = set.get(0).chargeAt(now);
      double apart = set.get(count - 1).chargeAt(now) - least;
      boolean fits = unit.spec.connection() != BatteryConnection.PARALLEL || apart <= 0.02;
      boolean cold = RunningUnit.isCold(set);
      if (fits && (least != failed || cold != failedCold)) {
        if (unit.reach(least, now, cold) >= goal - SAME) {
          return List.copyOf(set);
        }
        failed = least;
        failedCold = cold;
        // of batteries as full as each other those that come first
        boolean fuller = last.isEmpty() || least > last.get(0).chargeAt(now) + SAME;
        last = fuller ? set : last;
      }
    }
    return List.copyOf(last);
  }

  /** Takes the batteries of less important units, which go dark; none if that does not help. */
  private List<DayBattery> takeOver(
      RunningUnit unit, List<DayBattery> shelf, double now, double goal) {
    if (unit.active >= 0 || !unit.work.isOn(now) || comesSoon(unit, now)) {
      return List.of();
    }
    List<DayBattery> pool = new ArrayList<>(shelf);
    List<RunningUnit> victims = new ArrayList<>();
    for (int i = byImportance.size() - 1; i >= 0; i--) {
      RunningUnit other = byImportance.get(i);
      boolean less =
          other.spec.priority() > unit.spec.priority()
              && other.spec.type() == unit.spec.type()
              && other.active >= 0;
      if (less) {
        other.advance(now);
        List<DayBattery> theirs =
            other.slots.get(other.active).stream()
                .filter(b -> isWorthIt(unit, b.charge, now, true))
                .toList();
        if (!theirs.isEmpty()) {
          victims.add(other);
          pool.addAll(theirs);
          pool.sort(
              Comparator.comparingDouble((DayBattery b) -> b.charge)
                  .thenComparingInt(b -> b.number));
          List<DayBattery> chosen = pick(unit, pool, now, goal);
          if (!chosen.isEmpty()) {
            darken(victims, chosen, now);
            return chosen;
          }
        }
      }
    }
    return List.of();
  }

  /** Whether a battery for a unit comes back from a charger within minutes. */
  private boolean comesSoon(RunningUnit unit, double now) {
    int coming = 0;
    for (DayBattery b : byType.getOrDefault(unit.spec.type(), List.of())) {
      if (b.place == Place.CHARGING) {
        double there = desk.isNear(b.charging) ? b.charging.usable() : b.charging.back();
        coming += there <= now + LEAST_WAIT ? 1 : 0;
      }
    }
    return coming >= unit.perSlot();
  }

  private void darken(List<RunningUnit> victims, List<DayBattery> chosen, double now) {
    for (RunningUnit victim : victims) {
      if (victim.slots.get(victim.active).stream().anyMatch(chosen::contains)) {
        for (DayBattery battery : victim.takeOff(victim.active)) {
          battery.place = Place.SHELF;
          battery.waits = !chosen.contains(battery);
        }
        victim.activate(now);
        if (victim.active < 0) {
          victim.dark = true;
          goDark(victim);
        }
      }
    }
  }

  /** At the start of a break: what would have to be changed soon after it is changed now. */
  private void changeInBreak(double now) {
    for (DaySpec.Pause pause : day.breaks()) {
      if (Math.abs(pause.from() - now) <= SAME) {
        for (RunningUnit unit : byImportance) {
          double empty = unit.emptyAt();
          boolean soon = empty < pause.to() + day.near() - SAME;
          if (unit.active >= 0 && !unit.spec.isHotSwap() && soon) {
            changeEarly(unit, empty, now);
          }
        }
      }
    }
  }

  private void changeEarly(RunningUnit unit, double empty, double now) {
    List<DayBattery> chosen = pick(unit, usable(unit, now, false), now, goal(unit, now));
    if (chosen.isEmpty()) {
      return;
    }
    double charge = chosen.stream().mapToDouble(b -> b.charge).min().orElse(0);
    if (unit.reach(charge, now, RunningUnit.isCold(chosen)) <= empty + day.near()) {
      return;
    }
    unit.advance(now);
    int slot = unit.active;
    release(unit, slot, true, now);
    unit.put(slot, chosen, now);
    unit.activate(now);
    moves++;
  }

  private DayOutcome outcome() {
    Map<Integer, Double> endCharge = new LinkedHashMap<>();
    batteries.values().forEach(b -> endCharge.put(b.number, b.chargeAt(end)));
    List<DayBattery> rest = new ArrayList<>(batteries.values());
    rest.removeIf(b -> b.place != Place.SHELF);
    rest.sort(Comparator.comparingDouble(b -> b.charge));
    rest.forEach(b -> send(b, false, end));
    Map<Integer, Double> nextCharge = new LinkedHashMap<>();
    batteries.values().forEach(b -> nextCharge.put(b.number, b.chargeAt(day.until())));
    return new DayOutcome(
        log.events(),
        List.copyOf(charges),
        units.stream().mapToDouble(u -> u.darkHours).toArray(),
        endCharge,
        nextCharge,
        desk.peaks(),
        !overrun);
  }
}
