package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.List;

/** A unit while the day runs: its batteries and how far they are down. */
final class RunningUnit {
  private static final double SAME = DayRun.SAME;

  final UnitWork work;
  final UnitSpec spec;

  /** One set, or the slots of a hot-swap plate; null for an empty slot. */
  final List<List<DayBattery>> slots = new ArrayList<>();

  private final double[] putOn;
  int active = -1;
  double since;
  double darkHours;
  boolean dark;
  private double emptyAt = Double.POSITIVE_INFINITY;
  private double nextEdge = Double.NEGATIVE_INFINITY;

  /** Whether batteries were on it in this stretch. */
  boolean begun;

  RunningUnit(UnitWork work) {
    this.work = work;
    spec = work.spec();
    int count = spec.isHotSwap() ? spec.batteries() : 1;
    for (int i = 0; i < count; i++) {
      slots.add(null);
    }
    putOn = new double[count];
    since = work.from();
  }

  /** How many batteries one slot takes. */
  int perSlot() {
    return spec.isHotSwap() ? 1 : spec.batteries();
  }

  /** Whether an hour lies in a stretch, its end excluded. */
  boolean isInStretch(double hour) {
    return !Double.isNaN(work.stretchEnd(hour));
  }

  private static double charge(List<DayBattery> slot) {
    double least = slot.get(0).charge;
    for (DayBattery battery : slot) {
      least = Math.min(least, battery.charge);
    }
    return least;
  }

  /**
   * The hour at which a battery would be empty that goes on; infinite if it reaches the end of its
   * stretch.
   */
  double reach(double charge, double hour, boolean cold) {
    return isInStretch(hour)
        ? work.emptyAt(charge, hour, warmFrom(hour, cold))
        : Double.POSITIVE_INFINITY;
  }

  private static double warmFrom(double hour, boolean cold) {
    return cold ? Double.NEGATIVE_INFINITY : hour;
  }

  /** Whether a battery that goes on now works. */
  boolean works(double charge, double hour, boolean cold) {
    return work.works(charge, hour, warmFrom(hour, cold));
  }

  static boolean isCold(List<DayBattery> batteries) {
    for (DayBattery battery : batteries) {
      if (battery.cold) {
        return true;
      }
    }
    return false;
  }

  /** The hour at which the active battery is empty; infinite if it reaches the end. */
  double emptyAt() {
    return active < 0 ? Double.POSITIVE_INFINITY : emptyAt;
  }

  /** Lets the active battery work until an hour, and counts the dark hours. */
  void advance(double hour) {
    if (hour <= since + SAME) {
      return;
    }
    if (active >= 0) {
      List<DayBattery> slot = slots.get(active);
      double before = charge(slot);
      double used = before - work.chargeAt(before, since, hour, putOn[active]);
      slot.forEach(b -> b.charge = Math.max(0, b.charge - used));
    } else {
      darkHours += work.onHours(since, hour);
    }
    since = hour;
  }

  void put(int slot, List<DayBattery> batteries, double hour) {
    slots.set(slot, batteries);
    putOn[slot] = warmFrom(hour, isCold(batteries));
    batteries.forEach(
        b -> {
          b.place = DayBattery.Place.ON;
          b.touched = true;
          b.waits = false;
        });
    begun = true;
  }

  /** Takes the batteries of a slot off; none if it is empty. */
  List<DayBattery> takeOff(int slot) {
    List<DayBattery> off = slots.get(slot);
    slots.set(slot, null);
    if (off != null) {
      off.forEach(b -> b.cold = true);
    }
    if (slot == active) {
      active = -1;
    }
    return off == null ? List.of() : off;
  }

  /** Looks again at the active slot, whose charge may be another than planned. */
  void look(double hour) {
    int slot = active;
    active = -1;
    if (slot >= 0 && slots.get(slot) != null) {
      activate(slot, hour);
    }
  }

  /** Makes a slot with charge the active one, if none is. */
  void activate(double hour) {
    for (int i = 0; i < slots.size() && active < 0; i++) {
      activate(i, hour);
    }
  }

  private void activate(int slot, double hour) {
    List<DayBattery> held = slots.get(slot);
    if (held != null && work.works(charge(held), hour, putOn[slot])) {
      active = slot;
      emptyAt = work.emptyAt(charge(held), Math.max(since, hour), putOn[slot]);
    }
  }

  /** Whether nothing happens to it at this hour: it works, and every slot is filled. */
  boolean isQuiet(double hour) {
    return active >= 0 && emptyAt > hour + SAME && hour < nextEdge - SAME && !slots.contains(null);
  }

  /** Looks when it is switched on or off next. */
  void lookAhead(double hour) {
    nextEdge = Double.POSITIVE_INFINITY;
    for (UnitSpec.Span span : spec.spans()) {
      if (span.to() > hour + SAME) {
        nextEdge = span.from() > hour + SAME ? span.from() : span.to();
        return;
      }
    }
  }

  /** Whether the active battery is empty at this hour. */
  boolean isActiveEmpty(double hour) {
    return active >= 0 && emptyAt <= hour + SAME;
  }
}
