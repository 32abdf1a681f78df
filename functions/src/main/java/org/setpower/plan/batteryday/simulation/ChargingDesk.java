package org.setpower.plan.batteryday.simulation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Who charges where. A battery that comes off gets the channel that has it back first, and keeps
 * it: its card says where it goes. A channel takes batteries in the order in which they come.
 */
final class ChargingDesk {
  private static final double SAME = DayRun.SAME;

  /** Hours; through a shorter gap of the power a battery stays on its charger. */
  private static final double LONG_GAP = 1;

  /** A part of its charge for which a battery is taken to a charger: common practice. */
  private static final double LEAST_CUT = 0.1;

  private static final double DAY = 24;

  private final double nextCall;

  /** Hour from which nobody charges what no later day needs; infinite where there is one. */
  private final double lastMorning;

  private final boolean isShelfWarm;
  private final List<ChargerSpec> chargers;
  private final List<SupplySpec> supplies;

  /** By place of the charger: the place of its supply; −1 without one. */
  private final int[] supplyOf;

  /** By place of the charger and row of the type. */
  private final ChargerSpec.Rate[][] rates;

  private final int[] placeOfRow;
  private final double[][] free;

  /** What still charges or is to charge. */
  private final List<Load> loads = new ArrayList<>();

  /** What has charged: it no longer counts for an offer. */
  private final List<Load> past = new ArrayList<>();

  /** Wh taken, by place of the supply. */
  private final double[] energy;

  /** Watts that were asked for at most, by place of the supply. */
  private final double[] asked;

  private final boolean[] offered;

  /** Whether a charge met the end of its charger's power. */
  private boolean crosses;

  private DayPolicy policy;

  /** Whether it is known which chargers have lost their power. */
  private boolean told;

  /** Watts on a supply between two hours. */
  private record Load(DayEvent.Charge charge, int supply, double from, double to, double watts) {}

  ChargingDesk(DaySpec day, DayPolicy policy) {
    nextCall = day.until();
    isShelfWarm = day.shelf() >= 0;
    lastMorning = Double.isInfinite(nextCall) ? day.call() + DAY : Double.POSITIVE_INFINITY;
    chargers = day.chargers();
    supplies = day.supplies();
    energy = new double[supplies.size()];
    asked = new double[supplies.size()];
    offered = new boolean[chargers.size()];
    supplyOf = new int[chargers.size()];
    rates = new ChargerSpec.Rate[chargers.size()][];
    int rows = 0;
    for (int i = 0; i < supplyOf.length; i++) {
      ChargerSpec charger = chargers.get(i);
      supplyOf[i] = -1;
      for (int k = 0; k < supplies.size(); k++) {
        supplyOf[i] = supplies.get(k).row() == charger.supply() ? k : supplyOf[i];
      }
      int types = charger.types().keySet().stream().mapToInt(t -> t).max().orElse(0);
      ChargerSpec.Rate[] own = new ChargerSpec.Rate[types + 1];
      charger.types().forEach((type, rate) -> own[type] = rate);
      rates[i] = own;
      rows = Math.max(rows, charger.row());
    }
    placeOfRow = new int[rows + 1];
    for (int i = chargers.size() - 1; i >= 0; i--) {
      placeOfRow[chargers.get(i).row()] = i;
    }
    free = new double[chargers.size()][];
    for (int i = 0; i < free.length; i++) {
      free[i] = new double[chargers.get(i).channels()];
      Arrays.fill(free[i], Double.NEGATIVE_INFINITY);
    }
    this.policy = policy;
    told = Double.isInfinite(day.told());
  }

  void follow(DayPolicy other) {
    policy = other;
  }

  /** From now on it is known which power is lost. */
  void tell() {
    told = true;
  }

  private PowerHours power(ChargerSpec charger) {
    return told ? charger.power() : charger.planned();
  }

  /** Hours that a charge had no power until an hour, though it was planned; NaN: none is lost. */
  double lost(DayEvent.Charge charge, double hour) {
    ChargerSpec charger = chargers.get(place(charge.charger()));
    PowerHours planned = charger.planned();
    boolean all =
        planned.hours(charge.start(), charge.full())
                - charger.power().hours(charge.start(), charge.full())
            <= SAME;
    return all
        ? Double.NaN
        : planned.hours(charge.start(), hour) - charger.power().hours(charge.start(), hour);
  }

  /** Hours of one way between set and the charger of a charge. */
  double away(DayEvent.Charge charge) {
    return chargers.get(place(charge.charger())).away();
  }

  /**
   * The charge that has the battery back first; null if no charger takes it. If none has it back
   * full by an hour, it is charged until the power of a charger ends.
   *
   * @param cold whether it has to be warmed up before
   * @param until by which it is of use; an hour that is past: it is filled up, used or not
   */
  DayEvent.Charge best(DayBattery battery, double hour, boolean cold, double until) {
    boolean full = hour >= until - SAME;
    closeUntil(hour);
    DayEvent.Charge best = null;
    int place = -1;
    for (int i = 0; i < chargers.size(); i++) {
      ChargerSpec charger = chargers.get(i);
      ChargerSpec.Rate rate = battery.type < rates[i].length ? rates[i][battery.type] : null;
      double worth = full ? charger.fullCharge() : charger.usableFrom();
      if (policy.used()[i] && rate != null && battery.charge < worth - SAME) {
        DayEvent.Charge offer = offer(i, rate, battery, hour, cold);
        if (offer != null && !full && offer.back() > until + SAME) {
          offer = cut(rate, battery, offer, until);
        }
        if (offer != null && (best == null || isBetter(offer, best, until))) {
          best = offer;
          place = i;
        }
      }
    }
    if (place >= 0) {
      offered[place] = true;
    }
    return best;
  }

  private static boolean isBetter(DayEvent.Charge one, DayEvent.Charge other, double until) {
    int rank = rank(one, until) - rank(other, until);
    return rank < 0 || rank == 0 && one.back() < other.back() - SAME;
  }

  /** Full in time, part-charged in time, too late. */
  private static int rank(DayEvent.Charge charge, double until) {
    return charge.back() > until + SAME ? 2 : charge.isCut() ? 1 : 0;
  }

  /** A charge that ends where the power does for long, if it is worth it; else as it is. */
  private DayEvent.Charge cut(
      ChargerSpec.Rate rate, DayBattery battery, DayEvent.Charge whole, double until) {
    ChargerSpec charger = chargers.get(place(whole.charger()));
    double ends = power(charger).end(whole.start(), LONG_GAP);
    if (whole.full() <= ends + SAME || ends + charger.away() > until) {
      return whole;
    }
    double worked = power(charger).hours(whole.start(), ends);
    double reached = Math.min(charger.fullCharge(), rate.charging().after(battery.charge, worked));
    if (reached < battery.charge + LEAST_CUT) {
      return whole;
    }
    crosses = true;
    return policy.toPowerEnd()
        ? new DayEvent.Charge(
            battery.number,
            whole.charger(),
            whole.channel(),
            whole.isLater(),
            whole.start(),
            ends,
            ends,
            ends + charger.away(),
            reached,
            reached,
            true)
        : whole;
  }

  /** The charge of a battery that is found on a charger; null if that does not charge it. */
  DayEvent.Charge offerOf(int row, DayBattery battery, double hour, boolean cold) {
    closeUntil(hour);
    for (int i = 0; i < chargers.size(); i++) {
      boolean takes = battery.type < rates[i].length && rates[i][battery.type] != null;
      if (chargers.get(i).row() == row && takes) {
        offered[i] = true;
        return offer(i, rates[i][battery.type], battery, hour, cold);
      }
    }
    return null;
  }

  private void closeUntil(double hour) {
    int kept = 0;
    for (int i = 0; i < loads.size(); i++) {
      Load load = loads.get(i);
      if (load.to <= hour) {
        past.add(load);
      } else {
        loads.set(kept, load);
        kept++;
      }
    }
    loads.subList(kept, loads.size()).clear();
  }

  /**
   * The hour at which it can be on a channel at the earliest. It warms up on a shelf that is not
   * cold, else where the charger has power.
   */
  double arrival(int row, double hour, boolean cold) {
    ChargerSpec charger = chargers.get(place(row));
    double there = hour + charger.away();
    double warmUp = cold ? charger.warmUp() : 0;
    return isShelfWarm
        ? power(charger).start(there + warmUp)
        : power(charger).start(there) + warmUp;
  }

  private DayEvent.Charge offer(
      int place, ChargerSpec.Rate rate, DayBattery battery, double hour, boolean cold) {
    ChargerSpec charger = chargers.get(place);
    double wattHours = rate.wattHours() * (1 - battery.charge);
    if (battery.charge > charger.fullCharge() - ChargerSpec.LEAST_CHARGE) {
      return null;
    }
    if (wattHours > energyLeft(supplyOf[place]) + SAME) {
      return null;
    }
    int channel = 0;
    for (int c = 1; c < free[place].length; c++) {
      channel = free[place][c] < free[place][channel] - SAME ? c : channel;
    }
    double whole = rate.charging().hours(battery.charge, 1);
    double usable = rate.charging().hours(battery.charge, charger.usableFrom());
    double start = Math.max(arrival(charger.row(), hour, cold), free[place][channel]);
    for (int tries = 0; tries <= loads.size(); tries++) {
      start = power(charger).start(start);
      double full = power(charger).finish(start, whole);
      if (Double.isInfinite(full)) {
        return null;
      }
      double later = overloadEnds(supplyOf[place], start, full, rate.watts());
      if (later <= start + SAME) {
        if (start >= lastMorning - SAME
            || isUnattended(charger, start, hour, cold, free[place][channel])) {
          return null;
        }
        return new DayEvent.Charge(
            battery.number,
            charger.row(),
            channel + 1,
            power(charger).start(hour + charger.away()) > hour + charger.away() + SAME,
            start,
            power(charger).finish(start, usable),
            full,
            full + charger.away(),
            charger.usableFrom(),
            charger.fullCharge(),
            false);
      }
      start = later;
    }
    return null;
  }

  /**
   * Whether a charge would need somebody after the last change of the night. What lies on a free
   * channel by then begins when the power comes, if it has not to warm up and nothing else has to
   * end first.
   */
  private boolean isUnattended(
      ChargerSpec charger, double start, double hour, boolean cold, double free) {
    double last = charger.lastChange();
    if (start <= last + SAME || start >= nextCall - SAME) {
      return false;
    }
    double placed = Math.max(hour + charger.away(), free);
    return cold || placed > last + SAME || start > power(charger).start(placed) + SAME;
  }

  /** The hour from which the watts are there; the start itself if they are. */
  private double overloadEnds(int supply, double start, double full, double watts) {
    if (supply < 0 || Double.isInfinite(supplies.get(supply).watts())) {
      return start;
    }
    double room = supplies.get(supply).watts() * policy.share();
    asked[supply] = Math.max(asked[supply], watts);
    if (watts > room + SAME) {
      return Double.POSITIVE_INFINITY;
    }
    double most = watts;
    for (Load at : loads) {
      boolean meets = at.supply == supply && at.from < full && at.to > start;
      most += meets ? at.watts : 0;
    }
    if (most <= room + SAME) {
      asked[supply] = Math.max(asked[supply], most);
      return start;
    }
    double ends = start;
    for (Load at : loads) {
      // The sum rises only where a load begins.
      double moment = Math.max(start, at.from);
      if (at.supply == supply && moment < Math.min(full, at.to) - SAME) {
        double sum = watts;
        double first = Double.POSITIVE_INFINITY;
        for (Load other : loads) {
          if (other.supply == supply && other.from <= moment + SAME && other.to > moment + SAME) {
            sum += other.watts;
            first = Math.min(first, other.to);
          }
        }
        asked[supply] = Math.max(asked[supply], sum);
        if (sum > room + SAME) {
          ends = Math.max(ends, first);
        }
      }
    }
    return ends;
  }

  private double energyLeft(int supply) {
    return supply < 0
        ? Double.POSITIVE_INFINITY
        : supplies.get(supply).wattHours() - energy[supply];
  }

  private int place(int row) {
    return placeOfRow[row];
  }

  /**
   * Whether the day would have run the same by another policy: it leaves out only chargers that
   * never made the best offer, and watts that nobody asked for.
   */
  boolean isSameBy(DayPolicy other) {
    for (int i = 0; i < offered.length; i++) {
      boolean lost = offered[i] && !other.used()[i];
      boolean won = other.used()[i] && !policy.used()[i];
      if (lost || won) {
        return false;
      }
    }
    for (int k = 0; k < asked.length && other.share() != policy.share(); k++) {
      double room = supplies.get(k).watts() * Math.min(policy.share(), other.share());
      if (asked[k] > room + SAME) {
        return false;
      }
    }
    return (other.toPowerEnd() == policy.toPowerEnd() || !crosses)
        && other.toBreaks() == policy.toBreaks()
        && other.chargePartUsed() == policy.chargePartUsed();
  }

  /** Whether a battery on a channel can be taken off it at once: the charger stands on set. */
  boolean isNear(DayEvent.Charge charge) {
    return chargers.get(place(charge.charger())).away() == 0;
  }

  void take(DayEvent.Charge charge, DayBattery battery) {
    int place = place(charge.charger());
    ChargerSpec.Rate rate = rates[place][battery.type];
    free[place][charge.channel() - 1] = charge.full();
    int supply = supplyOf[place];
    loads.add(new Load(charge, supply, charge.start(), charge.full(), rate.watts()));
    if (supply >= 0) {
      double reached = charge.isCut() ? charge.fullCharge() : 1;
      energy[supply] += rate.wattHours() * (reached - battery.charge);
    }
  }

  /** Ends a charge before it is full; the channel is free for batteries that come later. */
  void end(DayEvent.Charge charge, double hour) {
    int place = place(charge.charger());
    if (free[place][charge.channel() - 1] == charge.full()) {
      free[place][charge.channel() - 1] = Math.max(charge.start(), hour);
    }
    for (int i = 0; i < loads.size(); i++) {
      Load load = loads.get(i);
      if (load.charge == charge) {
        loads.set(
            i, new Load(charge, load.supply, load.from, Math.max(load.from, hour), load.watts));
      }
    }
  }

  /** The most watts at a time, of each supply. */
  Map<Integer, Double> peaks() {
    List<Load> all = new ArrayList<>(past);
    all.addAll(loads);
    Map<Integer, Double> peaks = new HashMap<>();
    for (Load at : all) {
      double sum = 0;
      for (Load other : all) {
        boolean together =
            other.supply == at.supply && other.from <= at.from + SAME && other.to > at.from + SAME;
        sum += together ? other.watts : 0;
      }
      if (at.supply >= 0) {
        peaks.merge(supplies.get(at.supply).row(), sum, Math::max);
      }
    }
    return peaks;
  }
}
