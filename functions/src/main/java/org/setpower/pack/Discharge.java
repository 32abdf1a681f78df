package org.setpower.pack;

import java.util.ArrayList;
import java.util.List;
import org.setpower.base.EvaluationException;

/**
 * A pack that feeds a device until the device goes dark. Exact on the open-circuit curve of
 * straight lines: the amps follow from the volts, the hours from {@link LoadProfile#hours} line by
 * line, the end is solved inside its line.
 *
 * <p>It ends at the first of: the device's cut-off (behind the lead), the pack's own floor (at its
 * terminals, before the lead), the point where the watts cannot be had any more, the charge that is
 * to be left, empty.
 *
 * <p>At one temperature ({@link #of}) there are no time steps. A cold pack that {@link #warming
 * warms itself} goes through stretches of its charge, each in the same closed form at the
 * temperature of its middle; its last stretches are short ones.
 */
public final class Discharge {
  /** What ends it. */
  public enum End {
    CUT_OFF("the device's cut-off"),
    FLOOR("the battery's own cut-off"),
    COLLAPSE("the battery can no longer deliver the power"),
    CHARGE_LEFT("the charge to be left"),
    EMPTY("the battery is empty");

    private final String words;

    End(String words) {
      this.words = words;
    }

    public String text() {
      return words;
    }
  }

  /**
   * The pack's share of charge, the volts at the device and the amps, {@code hours} into the job.
   */
  public record Moment(double hours, double charge, double deviceVolts, double amps) {}

  /** A stretch of the charge at one temperature. Shares are of the charge held. */
  private record Stretch(Pack pack, double from, double to, double hoursBefore) {}

  /** Of the whole charge; the longest stretch of a pack that warms itself. */
  private static final double LONGEST = 1.0 / 12;

  private static final double SHORTEST = LONGEST / 16;

  private final LoadProfile draw;
  private final List<Stretch> stretches;
  private final End end;
  private final double endVolts;
  private final double hours;
  private final double endTemp;

  private Discharge(
      LoadProfile draw,
      List<Stretch> stretches,
      End end,
      double endVolts,
      double hours,
      double endTemp) {
    this.draw = draw;
    this.stretches = stretches;
    this.end = end;
    this.endVolts = endVolts;
    this.hours = hours;
    this.endTemp = endTemp;
  }

  /** Where a pack ends at one temperature. */
  private record Limit(End end, double volts, double held) {
    static Limit of(Pack pack, LoadProfile draw, double left) {
      double limit = draw.endVolts(pack);
      double usableLeft = pack.usable(left);
      double lowest = pack.restVolts(usableLeft);
      return limit > lowest
          ? new Limit(draw.end(pack), limit, pack.held(pack.charge(limit)))
          : new Limit(usableLeft > 0 ? End.CHARGE_LEFT : End.EMPTY, lowest, pack.held(usableLeft));
    }
  }

  /**
   * A pack that keeps its temperature.
   *
   * @param start share of its charge that the pack holds at the start, 0…1
   * @param left share of the charge at which the job is stopped, 0…1
   * @throws EvaluationException if the device does not start
   */
  public static Discharge of(Pack pack, LoadProfile draw, double start, double left) {
    Limit limit = started(pack, draw, start, left);
    Stretch only = new Stretch(pack, start, limit.held, 0);
    return new Discharge(
        draw,
        List.of(only),
        limit.end,
        limit.volts,
        hours(draw, only, limit.held, limit.volts),
        pack.temp());
  }

  /**
   * A pack that warms itself while it works, in surroundings as cold as it is at the start. In the
   * warm, and of a chemistry of which that was not measured, the same as {@link #of}.
   *
   * @param start share of its charge that the pack holds at the start, 0…1
   * @param left share of the charge at which the job is stopped, 0…1
   * @throws EvaluationException if the device does not start in the cold
   */
  public static Discharge warming(Pack cold, LoadProfile draw, double start, double left) {
    if (!SelfHeating.concerns(cold)) {
      return of(cold, draw, start, left);
    }
    started(cold, draw, start, left);
    List<Stretch> stretches = new ArrayList<>();
    double length = LONGEST;
    double held = start;
    double hours = 0;
    Pack now = cold;
    while (true) {
      double next = Math.max(0, held - length);
      double amps = draw.amps(now, now.restVolts(now.usable(held)));
      double half = (held - next) * cold.heldAmpHours() / amps / 2;
      Pack middle = cold.at(SelfHeating.after(cold, now.temp(), amps * amps * now.ohms(), half));
      Limit limit = Limit.of(middle, draw, left);
      boolean last = !(next > limit.held); // ends too where a figure is beyond all numbers
      if (last && length > SHORTEST) {
        length /= 2;
        continue;
      }
      Stretch stretch = new Stretch(middle, held, last ? Math.min(held, limit.held) : next, hours);
      double volts = last ? limit.volts : middle.restVolts(middle.usable(next));
      double takes = hours(draw, stretch, stretch.to, volts);
      stretches.add(stretch);
      hours += takes;
      if (takes > 0) {
        double mean = (held - stretch.to) * cold.heldAmpHours() / takes;
        now = cold.at(SelfHeating.after(cold, now.temp(), mean * mean * middle.ohms(), takes));
      }
      if (last) {
        return new Discharge(draw, stretches, limit.end, limit.volts, hours, now.temp());
      }
      held = next;
      length = Math.min(LONGEST, 2 * length);
    }
  }

  /** Where it ends, after a look whether it starts. */
  private static Limit started(Pack pack, LoadProfile draw, double start, double left) {
    Limit limit = Limit.of(pack, draw, left);
    double usable = pack.usable(start);
    double volts = pack.restVolts(usable);
    if (limit.end == End.CHARGE_LEFT || limit.end == End.EMPTY) {
      if (usable <= pack.usable(left)) {
        throw new EvaluationException(
            PackErrorCode.NOTHING_TO_USE, start, pack.held(pack.usable(left)));
      }
    } else if (volts <= limit.volts) {
      throw doesNotStart(pack, draw, volts, limit);
    }
    return limit;
  }

  private static EvaluationException doesNotStart(
      Pack pack, LoadProfile draw, double volts, Limit limit) {
    double watts = draw instanceof DeviceLoad load ? load.watts() : volts * draw.amps(pack, volts);
    return new EvaluationException(
        PackErrorCode.DOES_NOT_START, volts, watts, limit.volts, limit.end.text());
  }

  /**
   * Share of the charge at and below which the device does not start.
   *
   * @throws EvaluationException if it does not start from a full pack either
   */
  public static double startsAbove(Pack pack, LoadProfile draw) {
    double limit = draw.endVolts(pack);
    double full = pack.restVolts(1);
    if (full <= limit) {
      throw doesNotStart(pack, draw, full, new Limit(draw.end(pack), limit, 1));
    }
    return pack.held(pack.charge(limit));
  }

  /** What ends it. */
  public End end() {
    return end;
  }

  /** Share of the charge left at the end. */
  public double endCharge() {
    return stretches.get(stretches.size() - 1).to;
  }

  /** V of the resting pack at the end. */
  public double endVolts() {
    return endVolts;
  }

  /** °C of the pack at the end; 25 where it is 25 or more. */
  public double endTemp() {
    return endTemp;
  }

  /** Hours until the end. */
  public double hours() {
    return hours;
  }

  /** The moment at which the charge has fallen to {@code charge}, between the start and the end. */
  public Moment at(double charge) {
    int i = 0;
    while (i < stretches.size() - 1 && charge < stretches.get(i).to) {
      i++;
    }
    Stretch stretch = stretches.get(i);
    Pack pack = stretch.pack;
    double volts = charge <= endCharge() ? endVolts : pack.restVolts(pack.usable(charge));
    return new Moment(
        stretch.hoursBefore + hours(draw, stretch, charge, volts),
        charge,
        draw.deviceVolts(pack, volts),
        draw.amps(pack, volts));
  }

  /** {@code steps + 1} moments from the start to the end, evenly spread over the charge used. */
  public Moment[] moments(int steps) {
    double start = stretches.get(0).from;
    Moment[] all = new Moment[steps + 1];
    for (int i = 0; i <= steps; i++) {
      all[i] = at(i == steps ? endCharge() : start + (endCharge() - start) * i / steps);
    }
    return all;
  }

  /**
   * From the start of a stretch until the charge has fallen to {@code to} and the volts with it.
   */
  private static double hours(LoadProfile draw, Stretch stretch, double to, double volts) {
    Pack pack = stretch.pack;
    OpenCircuit curve = pack.curve();
    double charge = pack.usable(to);
    double hours = 0;
    double upper = pack.usable(stretch.from);
    double upperVolts = pack.restVolts(upper);
    for (int i = curve.segmentBelow(upper); i >= 0; i--) {
      boolean last = curve.chargeAt(i) <= charge;
      double lower = last ? charge : curve.chargeAt(i);
      double lowerVolts = last ? volts : pack.cells() * curve.voltsAt(i);
      hours += draw.hours(pack, upperVolts, lowerVolts, (upper - lower) * pack.ampHours());
      if (last) {
        break;
      }
      upper = lower;
      upperVolts = lowerVolts;
    }
    return hours;
  }
}
