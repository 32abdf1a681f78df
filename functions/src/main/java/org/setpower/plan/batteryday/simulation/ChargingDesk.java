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

  private final List<ChargerSpec> chargers;
  private final Map<Integer, SupplySpec> supplies = new HashMap<>();
  private final double[][] free;
  private final List<Load> loads = new ArrayList<>();
  private final Map<Integer, Double> energy = new HashMap<>();
  private DayPolicy policy;

  /** Watts on a supply between two hours. */
  private record Load(DayEvent.Charge charge, int supply, double from, double to, double watts) {}

  ChargingDesk(DaySpec day, DayPolicy policy) {
    chargers = day.chargers();
    day.supplies().forEach(s -> supplies.put(s.row(), s));
    free = new double[chargers.size()][];
    for (int i = 0; i < free.length; i++) {
      free[i] = new double[chargers.get(i).channels()];
      Arrays.fill(free[i], Double.NEGATIVE_INFINITY);
    }
    this.policy = policy;
  }

  void follow(DayPolicy other) {
    policy = other;
  }

  /**
   * The charge that has the battery back first; null if no charger takes it.
   *
   * @param cold whether it has to be warmed up before
   */
  DayEvent.Charge best(DayBattery battery, double hour, boolean cold) {
    DayEvent.Charge best = null;
    for (int i = 0; i < chargers.size(); i++) {
      ChargerSpec charger = chargers.get(i);
      ChargerSpec.Rate rate = charger.types().get(battery.type);
      if (policy.used()[i] && rate != null && battery.charge < charger.usableFrom() - SAME) {
        DayEvent.Charge offer = offer(i, rate, battery, hour, cold);
        if (offer != null && (best == null || offer.back() < best.back() - SAME)) {
          best = offer;
        }
      }
    }
    return best;
  }

  /** The hour at which it can be on a channel at the earliest. */
  double arrival(int row, double hour, boolean cold) {
    ChargerSpec charger = chargers.get(place(row));
    return hour + charger.away() + (cold ? charger.warmUp() : 0);
  }

  private DayEvent.Charge offer(
      int place, ChargerSpec.Rate rate, DayBattery battery, double hour, boolean cold) {
    ChargerSpec charger = chargers.get(place);
    double wattHours = rate.wattHours() * (1 - battery.charge);
    if (wattHours > energyLeft(charger.supply()) + SAME) {
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
      start = charger.power().start(start);
      double full = charger.power().finish(start, whole);
      if (Double.isInfinite(full)) {
        return null;
      }
      double later = overloadEnds(charger.supply(), start, full, rate.watts());
      if (later <= start + SAME) {
        return new DayEvent.Charge(
            battery.number,
            charger.row(),
            channel + 1,
            start,
            charger.power().finish(start, usable),
            full,
            full + charger.away(),
            charger.usableFrom());
      }
      start = later;
    }
    return null;
  }

  /** The hour from which the watts are there; the start itself if they are. */
  private double overloadEnds(int supply, double start, double full, double watts) {
    SupplySpec spec = supplies.get(supply);
    if (spec == null || Double.isInfinite(spec.watts())) {
      return start;
    }
    double room = spec.watts() * policy.share();
    if (watts > room + SAME) {
      return Double.POSITIVE_INFINITY;
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
        if (sum > room + SAME) {
          ends = Math.max(ends, first);
        }
      }
    }
    return ends;
  }

  private double energyLeft(int supply) {
    SupplySpec spec = supplies.get(supply);
    return spec == null
        ? Double.POSITIVE_INFINITY
        : spec.wattHours() - energy.getOrDefault(supply, 0.0);
  }

  private int place(int row) {
    for (int i = 0; i < chargers.size(); i++) {
      if (chargers.get(i).row() == row) {
        return i;
      }
    }
    throw new IllegalStateException("no charger " + row);
  }

  /** Whether a battery on a channel can be taken off it at once: the charger stands on set. */
  boolean isNear(DayEvent.Charge charge) {
    return chargers.get(place(charge.charger())).away() == 0;
  }

  void take(DayEvent.Charge charge, DayBattery battery) {
    int place = place(charge.charger());
    ChargerSpec charger = chargers.get(place);
    ChargerSpec.Rate rate = charger.types().get(battery.type);
    free[place][charge.channel() - 1] = charge.full();
    loads.add(new Load(charge, charger.supply(), charge.start(), charge.full(), rate.watts()));
    energy.merge(charger.supply(), rate.wattHours() * (1 - battery.charge), Double::sum);
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
    Map<Integer, Double> peaks = new HashMap<>();
    for (Load at : loads) {
      double sum = 0;
      for (Load other : loads) {
        boolean together =
            other.supply == at.supply && other.from <= at.from + SAME && other.to > at.from + SAME;
        sum += together ? other.watts : 0;
      }
      peaks.merge(at.supply, sum, Math::max);
    }
    return peaks;
  }
}
