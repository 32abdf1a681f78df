package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.setpower.plan.batteryday.simulation.DayBattery.Place;

/**
 * What happens at the units, told from what is on each of them after each moment: whatever put a
 * battery on or took it off, it is an event.
 */
final class DayLog {
  /**
   * What was told of a unit.
   *
   * @param on its batteries
   * @param begun whether its stretch has begun
   */
  private record Told(List<DayBattery> on, boolean begun, boolean dark) {}

  private static final Told NOTHING = new Told(List.of(), false, false);

  private final List<RunningUnit> units;
  private final double again;
  private final Map<RunningUnit, Told> told = new HashMap<>();
  private final Map<DayBattery, Integer> wasOn = new HashMap<>();
  private final Map<DayBattery, Integer> isOn = new HashMap<>();
  private final Set<DayBattery> found = new HashSet<>();
  private final List<DayEvent> events = new ArrayList<>();
  private int lines;
  private boolean changed;

  /**
   * @param again hour of planning again
   */
  DayLog(List<RunningUnit> units, double again) {
    this.units = units;
    this.again = again;
  }

  /** A battery that was found where it is put. */
  void found(DayBattery battery) {
    found.add(battery);
  }

  private static List<DayBattery> batteries(RunningUnit unit) {
    List<DayBattery> on = new ArrayList<>();
    for (List<DayBattery> slot : unit.slots) {
      if (slot != null) {
        on.addAll(slot);
      }
    }
    return on;
  }

  /** Whether nothing is new on a unit; most moments are of others. */
  private static boolean isTold(Told before, RunningUnit unit) {
    if (before.begun != unit.begun || before.dark != unit.dark) {
      return false;
    }
    int place = 0;
    for (List<DayBattery> slot : unit.slots) {
      for (int i = 0; slot != null && i < slot.size(); i++) {
        if (place == before.on.size() || before.on.get(place) != slot.get(i)) {
          return false;
        }
        place++;
      }
    }
    return place == before.on.size();
  }

  /** Tells what is new on a unit at the end of a moment. */
  void write(RunningUnit unit, double now) {
    Told before = told.getOrDefault(unit, NOTHING);
    if (isTold(before, unit)) {
      return;
    }
    changed = true;
    List<DayBattery> there = batteries(unit);
    Told after = new Told(there, unit.begun, unit.dark);
    told.put(unit, after);
    int place = units.indexOf(unit);
    List<DayBattery> off = new ArrayList<>(before.on);
    off.removeAll(there);
    List<DayBattery> on = new ArrayList<>(there);
    on.removeAll(before.on);
    on.forEach(b -> isOn.put(b, place));
    off.forEach(b -> isOn.remove(b, place));
    List<DayBattery> seen = on.stream().filter(found::contains).toList();
    if (!seen.isEmpty() && Math.abs(now - again) <= DayRun.SAME) {
      on.removeAll(seen);
      add(now, DayEvent.What.FOUND, place, seen, off);
      off = List.of();
    }
    DayEvent.What what = what(before, after, on, off);
    if (what != null) {
      add(now, what, place, on, off);
    }
  }

  private static DayEvent.What what(
      Told before, Told after, List<DayBattery> on, List<DayBattery> off) {
    if (!on.isEmpty()) {
      return before.dark
          ? DayEvent.What.ON_AGAIN
          : before.begun ? DayEvent.What.CHANGE : DayEvent.What.START;
    }
    if (before.begun && !after.begun) {
      return DayEvent.What.END;
    }
    if (after.dark && !before.dark) {
      return DayEvent.What.DARK;
    }
    return off.isEmpty() ? null : DayEvent.What.OFF;
  }

  private void add(
      double now, DayEvent.What what, int place, List<DayBattery> on, List<DayBattery> off) {
    lines += Math.max(1, on.size());
    events.add(
        new DayEvent(
            now,
            what,
            place,
            on.stream().map(b -> b.number).toList(),
            on.stream().map(b -> wasOn.getOrDefault(b, -1)).toList(),
            off.stream().map(b -> b.number).toList(),
            off.stream()
                .map(b -> new DayEvent.Goes(b.charging, -1, b.place == Place.AWAY))
                .toList()));
  }

  /** Ends a moment: only now it is known which unit took a battery of another. */
  void close() {
    if (!changed) {
      return;
    }
    changed = false;
    for (int i = events.size() - 1; i >= 0 && !isOn.equals(wasOn); i--) {
      DayEvent event = events.get(i);
      if (event.hour() < events.get(events.size() - 1).hour()) {
        break;
      }
      List<DayEvent.Goes> to = new ArrayList<>();
      for (int k = 0; k < event.off().size(); k++) {
        int taker = taker(event.off().get(k));
        to.add(taker < 0 ? event.to().get(k) : new DayEvent.Goes(null, taker, false));
      }
      events.set(
          i,
          new DayEvent(
              event.hour(), event.what(), event.unit(), event.on(), event.from(), event.off(), to));
    }
    wasOn.clear();
    wasOn.putAll(isOn);
  }

  private int taker(int number) {
    for (Map.Entry<DayBattery, Integer> on : isOn.entrySet()) {
      if (on.getKey().number == number) {
        return on.getValue();
      }
    }
    return -1;
  }

  /** Lines that a paper takes for it: one an event, or one a battery that goes on. */
  int lines() {
    return lines;
  }

  List<DayEvent> events() {
    return List.copyOf(events);
  }
}
