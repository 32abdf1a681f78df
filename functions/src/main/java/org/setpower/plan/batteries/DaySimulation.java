package org.setpower.plan.batteries;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;
import org.setpower.pack.Chemistry;
import org.setpower.pack.TemperatureDerating;

/**
 * A day on packs, from event to event, at exact times.
 *
 * <p>Rules: all packs start full on the shelf. A device takes full packs only, the ones longest on
 * the shelf; when the first of them is empty all of its packs are swapped. Packs that come off,
 * empty or not, queue for the first free channel. A device that finds no full packs is dark until
 * enough have come back; of several, the one that waits longest is served first. At one and the
 * same moment packs come back from charging before devices take packs.
 */
public final class DaySimulation {
  /** The max. number of events. */
  static final int MOST_EVENTS = 20_000;

  /** The max. number of devices, more than a film set has. */
  static final int MOST_DEVICES = 1000;

  /** The max. number of packs, more than a plan has. */
  static final int MOST_PACKS = 5_000;

  /** Moments closer than this are the same, h. */
  static final double SAME_MOMENT = 1e-9;

  /**
   * Packs of one kind.
   *
   * @param row their place in the list, from 1
   * @param wattHours Wh on the label
   * @param health share of it that they give at room temperature
   */
  public record Stock(int row, double wattHours, int pieces, double health) {}

  /** What happens. */
  public enum What {
    STARTS("starts"),
    SWAP("swap"),
    RUNS_DRY("runs dry"),
    ON_AGAIN("on again"),
    ENDS("ends"),
    BACK("back from charging");

    private final String words;

    What(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * An event, and how the packs stand after all that happens at its moment.
   *
   * @param hour when
   * @param device row of the device, 0 if none
   * @param kind row of the pack's kind, 0 if no pack is meant
   * @param pack number of the pack within its kind, 0 if no pack is meant
   * @param inUse packs on devices
   * @param charging packs on a channel
   * @param waiting packs that wait for a channel
   * @param onShelf full packs
   */
  public record Event(
      double hour,
      int device,
      int kind,
      int pack,
      int inUse,
      int charging,
      int waiting,
      int onShelf,
      What what) {}

  private record Pack(Stock kind, int number, double usable) {}

  private record Charge(double done, int order, Pack pack) {}

  private static final class Running {
    final Device device;
    List<Pack> packs = List.of();
    double emptyAt = Double.POSITIVE_INFINITY;
    double wantsSince = Double.NaN;
    boolean dark;
    boolean begun;
    boolean over;

    Running(Device device) {
      this.device = device;
    }

    boolean wants() {
      return !Double.isNaN(wantsSince);
    }

    double nextMoment() {
      if (over) {
        return Double.POSITIVE_INFINITY;
      }
      return begun || wants() ? Math.min(emptyAt, device.to()) : device.from();
    }
  }

  private final List<Running> running;
  private final ChargerSet chargers;
  private final double cold;
  private final boolean endless;
  private final Map<Double, Deque<Pack>> shelf = new TreeMap<>();
  private final Map<Double, Integer> made = new TreeMap<>();
  private final Deque<Pack> queue = new ArrayDeque<>();
  private final PriorityQueue<Charge> charges =
      new PriorityQueue<>(Comparator.comparingDouble(Charge::done).thenComparingInt(Charge::order));
  private int chargesBegun;
  private int packsInUse;
  private final List<Event> events = new ArrayList<>();
  private double hoursLost;

  private DaySimulation(List<Device> devices, ChargerSet chargers, double temp, boolean endless) {
    if (devices.size() > MOST_DEVICES) {
      throw new EvaluationException(
          BatteryPlanErrorCode.TOO_MANY_DEVICES, devices.size(), MOST_DEVICES);
    }
    this.running = devices.stream().map(Running::new).toList();
    this.chargers = chargers;
    this.cold = TemperatureDerating.energyLeft(Chemistry.LI_ION, temp);
    this.endless = endless;
  }

  /**
   * The day with these packs.
   *
   * @param temp °C of the cells when they go on; Li-ion
   * @throws EvaluationException when a device takes packs that are not there, and when there is no
   *     end of events
   */
  public static DaySimulation of(
      List<Device> devices, List<Stock> stock, ChargerSet chargers, double temp) {
    DaySimulation plan = new DaySimulation(devices, chargers, temp, false);
    int all = 0;
    for (Stock kind : stock) {
      Deque<Pack> pile = plan.shelf.computeIfAbsent(kind.wattHours, k -> new ArrayDeque<>());
      all += kind.pieces;
      if (all > MOST_PACKS) {
        throw new EvaluationException(BatteryPlanErrorCode.TOO_MANY_PACKS, MOST_PACKS);
      }
      for (int n = 1; n <= kind.pieces; n++) {
        pile.add(new Pack(kind, n, kind.wattHours * kind.health * plan.cold));
      }
    }
    for (Device device : devices) {
      if (!plan.shelf.containsKey(device.wattHours())) {
        String sizes =
            plan.shelf.keySet().stream().map(Numbers::format).collect(Collectors.joining(", "));
        throw new EvaluationException(
            BatteryPlanErrorCode.NO_SUCH_PACK, device.row(), device.wattHours(), sizes);
      }
    }
    plan.run();
    return plan;
  }

  /**
   * The fewest packs of each size (Wh on the label) with which no device goes dark. While none goes
   * dark, the moments at which packs come off and come back do not depend on how many there are; so
   * the fewest is the largest number that is off the shelf at the same time, and with one fewer a
   * device finds none at that moment.
   */
  public static Map<Double, Integer> fewestPacks(
      List<Device> devices, ChargerSet chargers, double temp) {
    DaySimulation plan = new DaySimulation(devices, chargers, temp, true);
    for (Device device : devices) {
      plan.shelf.computeIfAbsent(device.wattHours(), k -> new ArrayDeque<>());
    }
    plan.run();
    return new LinkedHashMap<>(plan.made);
  }

  /** What happens, in order. */
  public List<Event> events() {
    return List.copyOf(events);
  }

  /** Hours that devices are dark, added up. */
  public double hoursLost() {
    return hoursLost;
  }

  private void run() {
    while (true) {
      double now = charges.isEmpty() ? Double.POSITIVE_INFINITY : charges.peek().done;
      for (Running r : running) {
        now = Math.min(now, r.nextMoment());
      }
      if (Double.isInfinite(now)) {
        return;
      }
      int first = events.size();
      comeBack(now);
      comeOff(now);
      goOnCharge(now);
      goOnDevices(now);
      count(first);
      if (events.size() > MOST_EVENTS) {
        throw new EvaluationException(BatteryPlanErrorCode.TOO_MANY_EVENTS, MOST_EVENTS);
      }
    }
  }

  private static boolean isDue(double moment, double now) {
    return moment <= now + SAME_MOMENT;
  }

  private void comeBack(double now) {
    while (!charges.isEmpty() && isDue(charges.peek().done, now)) {
      Pack pack = charges.poll().pack;
      shelf.get(pack.kind.wattHours).add(pack);
      note(now, 0, pack, What.BACK);
    }
  }

  /** Empty packs first, then those of devices that end. */
  private void comeOff(double now) {
    for (Running r : running) {
      boolean ends = isDue(r.device.to(), now);
      if (!r.over && !ends && isDue(r.emptyAt, now)) {
        release(r);
        r.wantsSince = now;
      }
    }
    for (Running r : running) {
      if (!r.over && isDue(r.device.to(), now)) {
        if (r.dark) {
          hoursLost += now - r.wantsSince;
        }
        release(r);
        r.over = true;
        note(now, r.device.row(), null, What.ENDS);
      } else if (!r.over && !r.begun && !r.wants() && isDue(r.device.from(), now)) {
        r.wantsSince = now;
      }
    }
  }

  private void release(Running r) {
    queue.addAll(r.packs);
    packsInUse -= r.packs.size();
    r.packs = List.of();
    r.emptyAt = Double.POSITIVE_INFINITY;
  }

  private void goOnCharge(double now) {
    while (!queue.isEmpty() && charges.size() < chargers.channels()) {
      Pack pack = queue.poll();
      double done = chargers.mains().finish(now, chargers.hoursFor(pack.kind.wattHours));
      charges.add(new Charge(done, chargesBegun++, pack));
    }
  }

  /** Devices that have waited longest first; of equal ones the first row first. */
  private void goOnDevices(double now) {
    running.stream()
        .filter(r -> !r.over && r.wants())
        .sorted(Comparator.comparingDouble(r -> r.wantsSince))
        .forEach(r -> serve(r, now));
  }

  private void serve(Running r, double now) {
    List<Pack> taken = take(r.device);
    if (taken.isEmpty()) {
      if (!r.dark) {
        r.dark = true;
        note(now, r.device.row(), null, What.RUNS_DRY);
      }
      return;
    }
    if (r.dark) {
      hoursLost += now - r.wantsSince;
    }
    What again = r.dark ? What.ON_AGAIN : What.SWAP;
    What what = r.begun ? again : What.STARTS;
    double weakest = taken.stream().mapToDouble(Pack::usable).min().orElseThrow();
    r.emptyAt = now + weakest * taken.size() / r.device.watts();
    r.packs = taken;
    r.begun = true;
    r.dark = false;
    r.wantsSince = Double.NaN;
    packsInUse += taken.size();
    taken.forEach(p -> note(now, r.device.row(), p, what));
  }

  /** Full packs for a device, all that it needs or none. */
  private List<Pack> take(Device device) {
    Deque<Pack> pile = shelf.get(device.wattHours());
    while (endless && pile.size() < device.atOnce()) {
      int number = made.merge(device.wattHours(), 1, Integer::sum);
      if (number > MOST_PACKS) {
        throw new EvaluationException(BatteryPlanErrorCode.TOO_MANY_PACKS, MOST_PACKS);
      }
      Stock kind = new Stock(0, device.wattHours(), 0, 1);
      pile.add(new Pack(kind, number, device.wattHours() * cold));
    }
    List<Pack> taken = new ArrayList<>();
    while (pile.size() >= device.atOnce() - taken.size() && taken.size() < device.atOnce()) {
      taken.add(pile.poll());
    }
    return taken;
  }

  private void note(double now, int device, Pack pack, What what) {
    int kind = pack == null ? 0 : pack.kind.row;
    int number = pack == null ? 0 : pack.number;
    events.add(new Event(now, device, kind, number, 0, 0, 0, 0, what));
  }

  /** Writes how the packs stand into the events of this moment. */
  private void count(int first) {
    int onShelf = shelf.values().stream().mapToInt(Deque::size).sum();
    for (int i = first; i < events.size(); i++) {
      Event e = events.get(i);
      events.set(
          i,
          new Event(
              e.hour,
              e.device,
              e.kind,
              e.pack,
              packsInUse,
              charges.size(),
              queue.size(),
              onShelf,
              e.what));
    }
  }
}
