package org.setpower.pack;

import org.setpower.base.Refusal;

/**
 * A pack that feeds a device of constant watts until the device goes dark. Exact on the
 * open-circuit curve of straight lines: the amps follow from the volts, the hours from {@link
 * ConstantWatts#hours} line by line, the end is solved inside its line. No time steps.
 *
 * <p>It ends at the first of: the device's cut-off (behind the lead), the pack's own floor (at its
 * terminals, before the lead), the point where the watts cannot be had any more, the charge that is
 * to be left, empty.
 */
public final class Discharge {
  /** What ends it. */
  public enum End {
    CUT_OFF("the device's cut-off"),
    FLOOR("the pack's own floor"),
    COLLAPSE("the watts cannot be had any more"),
    CHARGE_LEFT("the charge to be left"),
    EMPTY("the pack is empty");

    private final String words;

    End(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * The pack's share of charge, the volts at the device and the amps, {@code hours} into the job.
   */
  public record Moment(double hours, double charge, double deviceVolts, double amps) {}

  private final Pack pack;
  private final Load load;
  private final double ohms;
  private final double start;
  private final double endVolts;
  private final double endCharge;
  private final End end;

  private Discharge(Pack pack, Load load, double start, double left) {
    this.pack = pack;
    this.load = load;
    this.start = start;
    ohms = pack.ohms() + load.leadOhms();
    double limit = limitVolts(pack, load);
    double lowest = pack.restVolts(left);
    if (limit > lowest) {
      end = limitKind(pack, load);
      endVolts = limit;
      endCharge = pack.charge(limit);
    } else {
      end = left > 0 ? End.CHARGE_LEFT : End.EMPTY;
      endVolts = lowest;
      endCharge = left;
    }
  }

  /**
   * @param start share of the charge at the start, 0…1
   * @param left share of the charge at which the job is stopped, 0…1
   * @throws Refusal if the device does not start
   */
  public static Discharge of(Pack pack, Load load, double start, double left) {
    Discharge discharge = new Discharge(pack, load, start, left);
    double volts = pack.restVolts(start);
    if (discharge.end == End.CHARGE_LEFT || discharge.end == End.EMPTY) {
      if (start <= left) {
        throw new Refusal(PackReason.NOTHING_TO_USE, start, left);
      }
    } else if (volts <= discharge.endVolts) {
      throw new Refusal(
          PackReason.DOES_NOT_START,
          volts,
          load.watts(),
          discharge.endVolts,
          discharge.end.words());
    }
    return discharge;
  }

  /**
   * Share of the charge at and below which the device does not start.
   *
   * @throws Refusal if it does not start from a full pack either
   */
  public static double startsAbove(Pack pack, Load load) {
    double limit = limitVolts(pack, load);
    double full = pack.restVolts(1);
    if (full <= limit) {
      throw new Refusal(
          PackReason.DOES_NOT_START, full, load.watts(), limit, limitKind(pack, load).words());
    }
    return pack.charge(limit);
  }

  /**
   * Hours at constant amps until the terminals fall to {@code cutoffVolts} or the pack is empty.
   * The measured cells are tested that way.
   */
  public static double hoursAtAmps(Pack pack, double amps, double cutoffVolts, double start) {
    double end = pack.charge(cutoffVolts + amps * pack.ohms());
    return Math.max(0, start - end) * pack.ampHours() / amps;
  }

  /** The volts of the resting pack at which cut-off, floor or collapse ends it. */
  private static double limitVolts(Pack pack, Load load) {
    double least = Math.max(load.cutoffVolts(), load.atDevice(pack.floorVolts()));
    return ConstantWatts.openVolts(load.watts(), pack.ohms() + load.leadOhms(), least);
  }

  private static End limitKind(Pack pack, Load load) {
    double floor = load.atDevice(pack.floorVolts());
    double least = Math.max(load.cutoffVolts(), floor);
    double collapse = ConstantWatts.collapseVolts(load.watts(), pack.ohms() + load.leadOhms()) / 2;
    if (least <= collapse) {
      return End.COLLAPSE;
    }
    return load.cutoffVolts() >= floor ? End.CUT_OFF : End.FLOOR;
  }

  /** What ends it. */
  public End end() {
    return end;
  }

  /** Share of the charge left at the end. */
  public double endCharge() {
    return endCharge;
  }

  /** V of the resting pack at the end. */
  public double endVolts() {
    return endVolts;
  }

  /** Ω of pack and lead. */
  public double ohms() {
    return ohms;
  }

  /** Hours until the end. */
  public double hours() {
    return hoursTo(endCharge, endVolts);
  }

  /** The moment at which the charge has fallen to {@code charge}, between the start and the end. */
  public Moment at(double charge) {
    double volts = charge <= endCharge ? endVolts : pack.restVolts(charge);
    return new Moment(
        hoursTo(charge, volts),
        charge,
        ConstantWatts.loadVolts(load.watts(), ohms, volts),
        ConstantWatts.amps(load.watts(), ohms, volts));
  }

  /** {@code steps + 1} moments from the start to the end, evenly spread over the charge used. */
  public Moment[] moments(int steps) {
    Moment[] all = new Moment[steps + 1];
    for (int i = 0; i <= steps; i++) {
      all[i] = at(i == steps ? endCharge : start + (endCharge - start) * i / steps);
    }
    return all;
  }

  private double hoursTo(double charge, double volts) {
    OpenCircuit curve = pack.curve();
    double collapse = ConstantWatts.collapseVolts(load.watts(), ohms);
    double hours = 0;
    double upper = start;
    double upperVolts = pack.restVolts(start);
    double upperRoot = ConstantWatts.root(collapse, upperVolts);
    for (int i = curve.segmentBelow(start); i >= 0; i--) {
      boolean last = curve.chargeAt(i) <= charge;
      double lower = last ? charge : curve.chargeAt(i);
      double lowerVolts = last ? volts : pack.cells() * curve.voltsAt(i);
      double lowerRoot = ConstantWatts.root(collapse, lowerVolts);
      hours +=
          ConstantWatts.hours(
              load.watts(),
              ohms,
              upperVolts,
              upperRoot,
              lowerVolts,
              lowerRoot,
              (upper - lower) * pack.ampHours());
      if (last) {
        break;
      }
      upper = lower;
      upperVolts = lowerVolts;
      upperRoot = lowerRoot;
    }
    return hours;
  }
}
