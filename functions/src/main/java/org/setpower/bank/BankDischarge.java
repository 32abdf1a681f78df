package org.setpower.bank;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.setpower.bank.PackGroup.State;
import org.setpower.base.EvaluationException;
import org.setpower.pack.ConstantWatts;
import org.setpower.pack.DeviceLoad;
import org.setpower.pack.Discharge;

/**
 * A bank of unlike packs that feeds a device of constant watts until it goes dark. The job is cut
 * into legs in which the same packs conduct and each stays on one straight line of its curve. A leg
 * with one kind of pack is solved in closed form ({@link ConstantWatts#hours}); one with several is
 * a set of differential equations, dq/dt = −(E(q) − V)/R with V from the node, integrated to an
 * error of about 1e-12 of the charge. The moment that ends a leg is solved, not stepped over.
 *
 * <p>Joined by ideal diodes, a waiting pack takes part from the moment the bus has fallen to its
 * open-circuit volts; all currents flow outwards, so the bus only falls and a pack that has joined
 * stays until it is empty or at its floor. A pack that has switched itself off stays off.
 */
public final class BankDischarge {
  /** More packs than any plate or box holds. */
  public static final int MOST_PACKS = 60;

  /** Share of the amp-hours per hour above which a pack must not be charged by its neighbours. */
  static final double MOST_EQUALISING = 0.5;

  /** °C below which a pack must not be charged at all. */
  static final double COLDEST_CHARGE = 0;

  /** W below which no load is followed: its steps are lost in the digits. */
  private static final double LEAST_WATTS = 1e-6;

  private static final double STEP_ERROR = 1e-12;
  private static final long MOST_WORK = 1_000_000;

  private enum Kind {
    NONE,
    LINE_DOWN,
    LINE_UP,
    JOINS,
    FLOOR,
    REVERSES,
    DARK
  }

  private final List<PackGroup> parts = new ArrayList<>();
  private final DeviceLoad load;
  private final ParallelConnection joined;
  private final double temp;
  private final List<BankEvent> events = new ArrayList<>();
  private final StateRecorder recorder;
  private double hours;
  private long work;

  /** What conducts in this leg. */
  private PackGroup[] on = {};

  private final NodeSolver node;

  /** What ends the leg next, or has ended it, and the part that does. */
  private Kind nearest = Kind.NONE;

  private PackGroup ended;

  private BankDischarge(
      List<BankPack> members,
      DeviceLoad load,
      ParallelConnection joined,
      double temp,
      StateRecorder recorder) {
    this.load = load;
    this.recorder = recorder;
    node = new NodeSolver(load);
    this.joined = joined;
    this.temp = temp;
    for (BankPack member : members) {
      PackGroup like =
          parts.stream().filter(p -> p.members.get(0).isLike(member)).findFirst().orElse(null);
      if (like == null) {
        parts.add(new PackGroup(member, temp));
      } else {
        like.add(member);
      }
    }
  }

  /**
   * What happens, in order; the last event is that the device goes dark.
   *
   * @param temp °C of the cells
   */
  public static List<BankEvent> events(
      List<BankPack> members, DeviceLoad load, ParallelConnection joined, double temp) {
    return follow(members, load, joined, temp, new StateRecorder(new double[0]));
  }

  /**
   * {@code steps + 1} moments from the start to the end, evenly spread over the time. The last is
   * the one just before the device goes dark.
   *
   * @param temp °C of the cells
   */
  public static List<BankState> moments(
      List<BankPack> members, DeviceLoad load, ParallelConnection joined, double temp, int steps) {
    List<BankEvent> events = events(members, load, joined, temp);
    double end = events.get(events.size() - 1).hours();
    double[] times = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      times[i] = i == steps ? end : end * i / steps;
    }
    StateRecorder recorder = new StateRecorder(times);
    follow(members, load, joined, temp, recorder);
    return recorder.moments();
  }

  private static List<BankEvent> follow(
      List<BankPack> members,
      DeviceLoad load,
      ParallelConnection joined,
      double temp,
      StateRecorder recorder) {
    if (members.size() > MOST_PACKS) {
      throw new EvaluationException(BankErrorCode.TOO_MANY_PACKS, members.size(), MOST_PACKS);
    }
    if (load.watts() < LEAST_WATTS) {
      throw new EvaluationException(BankErrorCode.NOT_FOLLOWED, load.watts());
    }
    if (joined == ParallelConnection.PARALLEL) {
      requireLikeCells(members);
    }
    BankDischarge bank = new BankDischarge(members, load, joined, temp, recorder);
    bank.run();
    return List.copyOf(bank.events);
  }

  private static void requireLikeCells(List<BankPack> members) {
    BankPack first = members.get(0);
    for (BankPack m : members) {
      if (m.chemistry() != first.chemistry() || m.cells() != first.cells()) {
        throw new EvaluationException(
            BankErrorCode.PACKS_DIFFER,
            first.number(),
            first.cells(),
            first.chemistry().word(),
            m.number(),
            m.cells(),
            m.chemistry().word());
      }
    }
  }

  private void run() {
    for (PackGroup part : parts) {
      if (part.charge == 0 && joined == ParallelConnection.HOT_SWAP) {
        part.state = State.OFF;
        note(part, "empty");
      }
    }
    String last = Discharge.End.EMPTY.text();
    while (true) {
      join();
      String dark = darkness(last);
      if (dark != null) {
        if (hours == 0) {
          throw new EvaluationException(BankErrorCode.DOES_NOT_START, dark);
        }
        events.add(new BankEvent(hours, 0, 0, "dark: " + dark));
        return;
      }
      PackGroup low = atFloor();
      if (low != null) {
        last = Discharge.End.FLOOR.text();
        switchOff(low);
        continue;
      }
      if (hours == 0 && joined == ParallelConnection.PARALLEL) {
        noteEqualising();
      }
      Kind kind = on.length == 1 ? closedLeg() : steppedLeg();
      switch (kind) {
        case LINE_DOWN -> {
          if (ended.line == 0) {
            last = Discharge.End.EMPTY.text();
            ended.state = State.OFF;
            note(ended, "empty");
          } else {
            ended.takeLine(ended.line - 1);
          }
        }
        case LINE_UP -> ended.takeLine(ended.line + 1);
        case JOINS -> {
          ended.state = State.ON;
          note(ended, 0, "shares the load");
        }
        case FLOOR -> {
          last = Discharge.End.FLOOR.text();
          switchOff(ended);
        }
        case REVERSES -> {
          ended.charged = false;
          note(ended, 0, "shares the load");
        }
        case DARK -> {
          events.add(new BankEvent(hours, 0, 0, "dark: " + darkWords()));
          return;
        }
        default -> throw new IllegalStateException(kind.name());
      }
    }
  }

  /** Lets waiting parts in whose volts lie above the bus, or that the load needs. */
  private void join() {
    conduct();
    boolean first = on.length == 0;
    while (true) {
      PackGroup next = null;
      for (PackGroup part : parts) {
        if (part.state == State.WAITING && (next == null || part.volts() > next.volts())) {
          next = part;
        }
      }
      boolean lets =
          next != null
              && (joined == ParallelConnection.PARALLEL
                  || !node.carries()
                  || next.volts() > node.bus());
      if (!lets) {
        break;
      }
      next.state = State.ON;
      conduct();
      if (hours > 0) {
        note(next, first ? "takes over" : "shares the load");
        first = false;
      } else if (joined == ParallelConnection.HOT_SWAP) {
        note(next, "carries the load");
      }
    }
  }

  /** Solves the node for the parts that are on. */
  private void conduct() {
    on = parts.stream().filter(p -> p.state == State.ON).toArray(PackGroup[]::new);
    double[] charges = new double[on.length];
    for (int i = 0; i < on.length; i++) {
      charges[i] = on[i].charge;
    }
    node.solve(on, charges);
  }

  /** Why the device is dark with the packs that are on; null if it is not. */
  private String darkness(String last) {
    if (on.length == 0) {
      return last;
    }
    return !node.carries() || node.deviceVolts() < load.cutoffVolts() ? darkWords() : null;
  }

  private String darkWords() {
    return (node.carries() && node.deviceVolts() <= load.cutoffVolts() * (1 + 1e-9)
            ? Discharge.End.CUT_OFF
            : Discharge.End.COLLAPSE)
        .text();
  }

  private PackGroup atFloor() {
    for (PackGroup part : on) {
      if (node.bus() < part.pack.floorVolts()) {
        return part;
      }
    }
    return null;
  }

  /** Switches off a part at its floor, and every other whose floor is no lower. */
  private void switchOff(PackGroup low) {
    double floor = low.pack.floorVolts();
    for (PackGroup part : on) {
      if (part.pack.floorVolts() >= floor) {
        part.state = State.OFF;
        note(part, "switches off at its own cut-off");
      }
    }
    conduct();
  }

  private void note(PackGroup part, String what) {
    note(part, part.state == State.ON ? eachAmps(part) : 0, what);
  }

  private void note(PackGroup part, double each, String what) {
    for (BankPack member : part.members) {
      events.add(new BankEvent(hours, member.number(), each, what));
    }
  }

  /** A from each pack of a part. */
  private double eachAmps(PackGroup part) {
    return (part.volts() - node.bus()) / part.pack.ohms();
  }

  /** The packs at the first moment of a hard-parallel bank: those in danger first. */
  private void noteEqualising() {
    List<BankEvent> dangers = new ArrayList<>();
    List<BankEvent> others = new ArrayList<>();
    for (PackGroup part : on) {
      for (BankPack m : part.members) {
        double each = eachAmps(part);
        part.charged = each < 0;
        boolean fast = -each > MOST_EQUALISING * m.ampHours();
        boolean cold = part.charged && temp < COLDEST_CHARGE;
        String what =
            cold
                ? "stop: charged by its neighbours below 0 °C"
                : fast
                    ? "stop: charged by its neighbours at over 0.5 C"
                    : part.charged ? "is charged by its neighbours" : "carries the load";
        (cold || fast ? dangers : others).add(new BankEvent(0, m.number(), each, what));
      }
    }
    events.addAll(dangers);
    events.addAll(others);
  }

  /** One kind of pack conducts: the volts at which the leg ends are solved, the hours follow. */
  private Kind closedLeg() {
    PackGroup part = on[0];
    double ohms = part.ohms + load.leadOhms();
    double collapse = ConstantWatts.collapseVolts(load.watts(), ohms);
    double end = part.pack.cells() * part.curve.voltsAt(part.line);
    Kind kind = Kind.LINE_DOWN;
    ended = part;
    double dark = ConstantWatts.openVolts(load.watts(), ohms, load.cutoffVolts());
    if (dark > end) {
      end = dark;
      kind = Kind.DARK;
    }
    double floor = atBus(part.pack.floorVolts(), ohms, collapse);
    if (floor > end) {
      end = floor;
      kind = Kind.FLOOR;
    }
    for (PackGroup other : parts) {
      if (other.state == State.WAITING) {
        double joins = atBus(other.volts(), ohms, collapse);
        if (joins > end) {
          end = joins;
          kind = Kind.JOINS;
          ended = other;
        }
      }
    }
    double now = part.volts();
    double charge =
        kind == Kind.LINE_DOWN
            ? part.curve.chargeAt(part.line)
            : Math.min(part.charge, part.chargeAt(end));
    double legHours =
        ConstantWatts.hours(
            load.watts(), ohms, now, Math.min(now, end), (part.charge - charge) * part.ampHours);
    double start = part.charge;
    while (recorder.wants(hours + legHours)) {
      part.charge = chargeAfter(part, ohms, start, charge, recorder.next() - hours);
      conduct();
      recorder.take(parts, node);
    }
    hours += legHours;
    part.charge = charge;
    conduct();
    return kind;
  }

  /** The charge of the only part that conducts, {@code after} hours into its leg: bisection. */
  private double chargeAfter(PackGroup part, double ohms, double start, double end, double after) {
    double high = start;
    double low = end;
    while (true) {
      double middle = (low + high) / 2;
      if (middle >= high || middle <= low) {
        return after <= 0 ? start : low;
      }
      double took =
          ConstantWatts.hours(
              load.watts(),
              ohms,
              part.volts(start),
              part.volts(middle),
              (start - middle) * part.ampHours);
      if (took < after) {
        high = middle;
      } else {
        low = middle;
      }
    }
  }

  /** V of the open circuit at which the bus is at {@code volts}; 0 if it never gets there. */
  private double atBus(double volts, double ohms, double collapse) {
    double device = load.atDevice(volts);
    return device > collapse / 2 ? device + ohms * load.watts() / device : 0;
  }

  /**
   * Several kinds conduct: steps of the differential equations up to the end of the leg. A part
   * that stands on the end of its line and moves out of it ends the leg at once, and so takes the
   * next.
   */
  private Kind steppedLeg() {
    int size = on.length;
    DormandPrince method = new DormandPrince(size, this::rates);
    double[] now = new double[size];
    double[] next = new double[size];
    double[] rates = new double[size];
    for (int i = 0; i < size; i++) {
      now[i] = on[i].charge;
    }
    rates(now, rates);
    double fastest = Arrays.stream(rates).map(Math::abs).max().orElse(0);
    double step = 1e-3 / fastest;
    method.start(now);
    while (true) {
      work += size + 4L;
      if (work > MOST_WORK) {
        throw new EvaluationException(BankErrorCode.NOT_FOLLOWED, load.watts());
      }
      double error = method.step(now, step, next);
      if (error > STEP_ERROR) {
        step *= Math.max(0.2, 0.9 * Math.pow(STEP_ERROR / error, 0.2));
        continue;
      }
      if (margin(next) <= 0) {
        return endLeg(method, now, step, next);
      }
      record(method, now, step);
      hours += step;
      System.arraycopy(next, 0, now, 0, size);
      method.start(now);
      step *= error == 0 ? 5 : Math.min(5, 0.9 * Math.pow(STEP_ERROR / error, 0.2));
    }
  }

  /** Takes the moments that lie in a step, each by a shorter step that ends there. */
  private void record(DormandPrince method, double[] now, double step) {
    double[] then = new double[now.length];
    while (recorder.wants(hours + step)) {
      method.step(now, Math.max(0, recorder.next() - hours), then);
      for (int i = 0; i < on.length; i++) {
        on[i].charge = then[i];
      }
      node.solve(on, then);
      recorder.take(parts, node);
    }
  }

  private void rates(double[] charges, double[] rates) {
    node.solve(on, charges);
    for (int i = 0; i < on.length; i++) {
      PackGroup part = on[i];
      rates[i] = -(part.volts(charges[i]) - node.bus()) / part.ohms / part.ampHours;
    }
  }

  /** How far it is to the end of the leg: the least of all margins, 0 or less past it. */
  private double margin(double[] charges) {
    node.solve(on, charges);
    double least = Double.POSITIVE_INFINITY;
    double limit = load.cutoffVolts();
    if (limit > 0) {
      least =
          consider(
              least, node.carries() ? (node.deviceVolts() - limit) / limit : -1, Kind.DARK, null);
    }
    least = consider(least, node.aboveCollapse(), Kind.DARK, null);
    for (int i = 0; i < on.length; i++) {
      PackGroup part = on[i];
      double floor = part.pack.floorVolts();
      least = consider(least, (node.bus() - floor) / floor, Kind.FLOOR, part);
      least = consider(least, charges[i] - part.curve.chargeAt(part.line), Kind.LINE_DOWN, part);
      if (part.line < part.curve.segments() - 1) {
        least =
            consider(least, part.curve.chargeAt(part.line + 1) - charges[i], Kind.LINE_UP, part);
      }
      if (part.charged) {
        double volts = part.volts(charges[i]);
        least = consider(least, (node.bus() - volts) / volts, Kind.REVERSES, part);
      }
    }
    for (PackGroup part : parts) {
      if (part.state == State.WAITING) {
        double volts = part.volts();
        least = consider(least, (node.bus() - volts) / volts, Kind.JOINS, part);
      }
    }
    return least;
  }

  private double consider(double least, double margin, Kind kind, PackGroup part) {
    if (margin < least) {
      nearest = kind;
      ended = part;
      return margin;
    }
    return least;
  }

  /** The end lies inside this step: the step is shortened until it ends there. */
  private Kind endLeg(DormandPrince method, double[] now, double step, double[] next) {
    double low = 0;
    double high = step;
    double lowMargin = Math.max(0, margin(now));
    double highMargin = margin(next);
    double tried = step;
    for (int i = 0; i < 200 && high - low > 1e-15 * (hours + high) && highMargin < -1e-15; i++) {
      tried =
          i % 3 == 2 || lowMargin <= 0
              ? (low + high) / 2
              : low + (high - low) * lowMargin / (lowMargin - highMargin);
      method.step(now, tried, next);
      double margin = margin(next);
      if (margin > 0) {
        low = tried;
        lowMargin = margin;
      } else {
        high = tried;
        highMargin = margin;
      }
    }
    record(method, now, high);
    method.step(now, high, next);
    margin(next);
    hours += high;
    for (int i = 0; i < on.length; i++) {
      on[i].charge = next[i];
    }
    if (nearest == Kind.LINE_DOWN) {
      ended.charge = ended.curve.chargeAt(ended.line);
    } else if (nearest == Kind.LINE_UP) {
      ended.charge = ended.curve.chargeAt(ended.line + 1);
    }
    return nearest;
  }
}
