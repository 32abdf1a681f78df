package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;
import org.setpower.base.PhaseSystem;
import org.setpower.base.TextEnum;
import org.setpower.cable.Ampacity;
import org.setpower.cable.CableRun;
import org.setpower.cable.CableSize;
import org.setpower.cable.InstallationMethod;
import org.setpower.plan.batteryday.BatteryDayInputs.Position;
import org.setpower.plan.batteryday.BatteryDayInputs.PowerDraw;
import org.setpower.plan.batteryday.DeviceList.OnPosition;
import org.setpower.plan.batteryday.simulation.BatteryConnection;
import org.setpower.plan.batteryday.simulation.BatteryFeed;
import org.setpower.plan.batteryday.simulation.DayPlanner;
import org.setpower.plan.batteryday.simulation.UnitSpec;
import org.setpower.plan.batteryday.typed.VoltRange;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;

/** Whether a position works on its batteries: voltages, currents, mount, cable, temperature. */
final class PositionJudge {
  /** Powers so near to each other are likely those of one device, typed twice. */
  private static final double SAME_DEVICE = 0.1;

  /** How far a measured runtime may lie from the calculated one before it is told. */
  private static final double FAR = 2;

  /**
   * Share of the hours by the label's energy below which a runtime without a resistance is told.
   */
  private static final double LABEL_ALONE = 0.75;

  private final DaySettings settings;
  private final DayFrame day;
  private final InputRow<Position> row;
  private final Position position;

  /** V that are asked for; null where not known. */
  private final Double volts;

  private final TypeFacts type;
  private final List<OnPosition> devices;
  private final List<Finding> findings;
  private CableSize size;

  /**
   * What is known of a position.
   *
   * @param findings without those of the gate
   * @param spans when it is on; empty where that is not known
   * @param feed null where it is not known
   * @param peak W from the batteries; null without
   * @param volts at the device, nominal; null without
   * @param amps just before the device stops; null without
   * @param maxAmps that the batteries may supply together; null without
   * @param runtime hours of one battery or set at its peak, at the coldest of the day
   * @param endCharge state of charge at which it has to be changed then
   */
  record State(
      InputRow<Position> row,
      TypeFacts type,
      List<Finding> findings,
      List<UnitSpec.Span> spans,
      BatteryFeed feed,
      Double peak,
      Double volts,
      Double amps,
      Double maxAmps,
      Double runtime,
      Double endCharge) {
    BatteryConnection connection() {
      return connectionOf(row.value());
    }

    int atOnce() {
      return atOnceOf(row.value());
    }

    int quantity() {
      return (int) Math.floor(DaySettings.or(row.value().quantity(), 1));
    }
  }

  PositionJudge(
      DaySettings settings,
      DayFrame day,
      InputRow<Position> row,
      TypeList types,
      DeviceList devices) {
    this.settings = settings;
    this.day = day;
    this.row = row;
    position = row.value();
    type = position.type() == null ? null : types.find(position.type());
    this.devices = devices.at(row);
    volts = nominal();
    findings = new ArrayList<>(row.findings());
    if (position.type() != null && type == null) {
      findings.add(types.refused(position.type()));
    }
  }

  /** V that are asked for: as typed, else the only ones of the type; null where not known. */
  private Double nominal() {
    if (position.volts() != null || type == null || row.unreadable().contains("volts")) {
      return position.volts();
    }
    if (connectionOf(position) == BatteryConnection.SERIES) {
      return null;
    }
    List<Double> fit = type.outputs();
    if (fit.size() > 1) {
      fit = fit.stream().filter(this::fits).toList();
    }
    return fit.size() == 1 ? fit.get(0) : null;
  }

  /** Whether all devices take a nominal voltage of the type, full and nominal. */
  private boolean fits(double nominal) {
    double full = type.cellsAt(nominal) * type.chemistry().fullVolts();
    boolean direct = false;
    for (OnPosition device : devices) {
      PowerDraw draw = device.row().value();
      if (device.isDirect() && draw.minVolts() != null && draw.maxVolts() != null) {
        direct = true;
        if (full > draw.maxVolts() || type.voltsAt(nominal) < draw.minVolts()) {
          return false;
        }
      }
    }
    return direct;
  }

  private static BatteryConnection connectionOf(Position position) {
    return position.connection() == null ? BatteryConnection.ONE : position.connection();
  }

  private static int atOnceOf(Position position) {
    boolean one = connectionOf(position) == BatteryConnection.ONE;
    return (int) Math.floor(DaySettings.or(position.atOnce(), one ? 1 : 2));
  }

  /** Whether it is there on a date. */
  static boolean isOn(Position position, LocalDate date) {
    return (position.fromDay() == null || !date.isBefore(position.fromDay()))
        && (position.toDay() == null || !date.isAfter(position.toDay()));
  }

  private void add(FindingKey key, Object... arguments) {
    findings.add(Finding.of(key, arguments));
  }

  State judge() {
    judgeCells();
    judgeDevices();
    boolean known =
        type != null
            && volts != null
            && day != null
            && findings.stream().allMatch(f -> f.severity() == Severity.CHECK)
            && isOn(position, day.date());
    List<UnitSpec.Span> spans =
        known
            ? DeviceList.spans(devices, day.breaks(), Boolean.TRUE.equals(position.staysOn()))
            : List.of();
    if (spans.isEmpty()) {
      return new State(row, type, findings, spans, null, null, null, null, null, null, null);
    }
    return judgeFeed(spans);
  }

  private void judgeCells() {
    if (volts == null && type != null && !row.unreadable().contains("volts")) {
      add(CommonFinding.BLANK_CELL, BatteryDayInputs.POSITIONS.column("volts"));
    }
    BatteryConnection connection = connectionOf(position);
    int atOnce = atOnceOf(position);
    if (atOnce > 1 && connection == BatteryConnection.ONE) {
      add(BatteryDayFinding.CONNECTION_BLANK);
    } else if (atOnce == 1 && connection != BatteryConnection.ONE) {
      add(BatteryDayFinding.CONNECTION_ALONE, connection.word());
    }
    boolean crossed =
        position.fromDay() != null
            && position.toDay() != null
            && position.toDay().isBefore(position.fromDay());
    if (crossed) {
      add(BatteryDayFinding.DAYS_CROSSED);
    }
    if (type != null) {
      String mount = Identity.of(position.mount());
      String own = type.mountIdentity();
      if (!mount.isEmpty() && !own.isEmpty() && !mount.equals(own)) {
        add(
            BatteryDayFinding.MOUNT,
            TextEnum.shortened(type.mount()),
            TextEnum.shortened(position.mount()));
      }
      int series = connection == BatteryConnection.SERIES ? atOnce : 1;
      if (volts != null && !type.outputs().contains(volts / series)) {
        String outputs = String.join("/", type.outputs().stream().map(Numbers::format).toList());
        add(BatteryDayFinding.NO_OUTPUT, outputs, volts / series);
      }
    }
    judgeCable();
  }

  private void judgeCable() {
    if (row.unreadable().contains("cable") || DaySettings.or(position.cable(), 0) == 0) {
      return;
    }
    if (position.cableSize() == null) {
      add(BatteryDayFinding.CABLE_SIZE);
      return;
    }
    try {
      size = CableSize.parse(position.cableSize());
      run();
    } catch (EvaluationException e) {
      size = null;
      add(BatteryDayFinding.CABLE_UNKNOWN, TextEnum.shortened(position.cableSize()));
    }
  }

  private CableRun run() {
    return CableRun.of(
        size,
        settings.units().toMetres(position.cable()),
        PhaseSystem.DC,
        1,
        CableRun.LOADED_TEMP,
        1);
  }

  private void judgeDevices() {
    boolean powered = position.power() != null || row.unreadable().contains("power");
    boolean ranged = position.input() != null || row.unreadable().contains("input");
    if (powered && !ranged) {
      add(CommonFinding.BLANK_CELL, BatteryDayInputs.POSITIONS.column("input"));
    } else if (ranged && !powered) {
      add(CommonFinding.BLANK_CELL, BatteryDayInputs.POSITIONS.column("power"));
    } else if (!powered && devices.isEmpty()) {
      add(BatteryDayFinding.NO_LOAD);
    }
    if (position.input() != null && VoltRange.parse(position.input()) == null) {
      add(BatteryDayFinding.INPUT_VOLTS, TextEnum.shortened(position.input()));
    }
    judgeBoth();
    for (OnPosition device : devices) {
      if (device.own()) {
        findings.addAll(device.findings());
      } else if (device.findings().stream().anyMatch(f -> f.severity() != Severity.CHECK)) {
        add(BatteryDayFinding.DEVICE_STOPS, device.name());
      }
    }
  }

  /** Power in the row and the same in Devices: both count, and it is told. */
  private void judgeBoth() {
    double own = devices.stream().filter(OnPosition::own).mapToDouble(OnPosition::watts).sum();
    List<Double> others = devices.stream().filter(d -> !d.own()).map(OnPosition::watts).toList();
    double sum = others.stream().mapToDouble(Double::doubleValue).sum();
    boolean twice = isLike(own, sum) || others.stream().anyMatch(w -> isLike(own, w));
    if (own > 0 && twice) {
      add(BatteryDayFinding.BOTH_POWERS, own, own + sum);
    }
  }

  private static boolean isLike(double watts, double others) {
    return Math.abs(others - watts) <= SAME_DEVICE * watts;
  }

  /** The highest of the min. voltages; 0 where all devices have converters. */
  private double cutoff() {
    return devices.stream()
        .filter(OnPosition::isDirect)
        .mapToDouble(d -> d.row().value().minVolts())
        .max()
        .orElse(0);
  }

  private State judgeFeed(List<UnitSpec.Span> spans) {
    BatteryConnection connection = connectionOf(position);
    int atOnce = atOnceOf(position);
    double changeAt = DaySettings.or(position.changeAt(), settings.changeAt());
    double peak = spans.stream().mapToDouble(UnitSpec.Span::watts).max().orElseThrow();
    double cutoff = cutoff();
    double lead = size == null ? 0 : run().drop(1);
    BatteryFeed feed = type.feed(volts, connection, atOnce, cutoff, lead, changeAt);
    feed = measured(feed, peak);
    double full = feed.cells() * type.chemistry().fullVolts();
    if (full > settings.touchLimit() && !Boolean.TRUE.equals(position.touchSafe())) {
      add(BatteryDayFinding.TOUCH, full, settings.touchLimit());
    }
    double lowest = cutoff > 0 ? cutoff : feed.cells() * type.chemistry().floorVolts();
    double amps = peak / lowest;
    double limit = type.maxAmps() * (connection == BatteryConnection.PARALLEL ? atOnce : 1);
    if (amps > limit) {
      add(
          connection == BatteryConnection.HOT_SWAP
              ? BatteryDayFinding.HOT_SWAP_AMPS
              : BatteryDayFinding.AMPS,
          amps,
          limit);
    }
    Double there = judgeVolts(feed, peak, amps, full);
    Double runtime = judgeCold(feed, peak);
    Double end = runtime == null ? null : (Double) feed.chargeLeft(peak, day.air().lowest());
    if (changeAt > 0 && end != null && end > changeAt + 0.005) {
      add(BatteryDayFinding.CHANGE_EARLIER, changeAt, end);
    }
    if (runtime != null && position.measured() == null) {
      judgeLabel(feed, peak, runtime);
    }
    return new State(row, type, findings, spans, feed, peak, there, amps, limit, runtime, end);
  }

  /** Whether what is cautious for want of a resistance is much less than the label says. */
  private void judgeLabel(BatteryFeed feed, double peak, double runtime) {
    double byEnergy = feed.hoursByEnergy(peak, Math.floor(day.air().lowest()));
    if (feed.milliohms() == null && runtime < LABEL_ALONE * byEnergy) {
      add(
          BatteryDayFinding.RUNTIME_BY_LABEL,
          DaySettings.duration(runtime),
          DaySettings.duration(byEnergy));
    }
  }

  /**
   * With the runtime that was measured, if there is one. A longer one than the label has energy for
   * does not count; what does not start as calculated does not start.
   */
  private BatteryFeed measured(BatteryFeed feed, double peak) {
    double coldest = Math.floor(day.air().lowest());
    double hours = position.measured() == null ? 0 : DaySettings.hours(position.measured());
    if (position.measured() == null || row.unreadable().contains("measured")) {
      return feed;
    }
    if (hours == 0) {
      add(BatteryDayFinding.MEASURED_ZERO);
      return feed;
    }
    double calculated = known(feed, coldest) ? feed.hours(peak, coldest) : 0;
    if (calculated == 0) {
      return feed;
    }
    String shown = DaySettings.duration(calculated);
    if (hours * peak > feed.wattHours()) {
      add(
          BatteryDayFinding.MEASURED_LONG,
          DaySettings.duration(hours),
          hours * peak,
          feed.wattHours(),
          shown);
      return feed;
    }
    if (hours > FAR * calculated || hours * FAR < calculated) {
      add(BatteryDayFinding.MEASURED_FAR, DaySettings.duration(hours), shown);
    }
    return feed.measured(hours, peak, coldest);
  }

  private static boolean known(BatteryFeed feed, double temp) {
    try {
      feed.requireKnown(temp);
      return true;
    } catch (EvaluationException e) {
      return false;
    }
  }

  /** The volts that arrive, against the devices and the cable; null where they do not. */
  private Double judgeVolts(BatteryFeed feed, double peak, double amps, double full) {
    double there = volts;
    // 12 V is the name of a plate: a battery of 14.4 V arrives with these
    double label = feed.wattHours() / feed.ampHours();
    if (size != null) {
      try {
        there = run().endVolts(peak, volts);
        label = run().endVolts(peak, label);
        double rating =
            Ampacity.of(
                    size,
                    Ampacity.Method.FLEXIBLE,
                    Math.max(Ampacity.USUAL_AMBIENT, day.air().highest()),
                    2,
                    InstallationMethod.BESIDE_ANOTHER)
                .amps();
        if (amps > rating) {
          add(BatteryDayFinding.CABLE_AMPS, amps, rating);
        }
      } catch (EvaluationException e) {
        add(BatteryDayFinding.CABLE_CARRY, peak);
        return null;
      }
    }
    for (OnPosition device : devices) {
      PowerDraw draw = device.row().value();
      if (device.isDirect() && full > draw.maxVolts()) {
        stop(device, Finding.of(BatteryDayFinding.OVER_VOLTS, full, draw.maxVolts()));
      } else if (device.isDirect() && label < draw.minVolts()) {
        stop(device, Finding.of(BatteryDayFinding.UNDER_VOLTS, label, draw.minVolts()));
      }
    }
    return there;
  }

  private void stop(OnPosition device, Finding finding) {
    if (device.own()) {
      findings.add(finding);
    } else {
      device.findings().add(finding);
      add(BatteryDayFinding.DEVICE_STOPS, device.name());
    }
  }

  /** Hours at the coldest of the day; null where there are none. */
  private Double judgeCold(BatteryFeed feed, double peak) {
    double coldest = Math.floor(day.air().lowest());
    if (day.air().highest() > type.chemistry().hottest()) {
      double hottest = type.chemistry().hottest();
      add(BatteryDayFinding.TOO_HOT, day.air().highest(), hottest, hottest * 1.8 + 32);
      return null;
    }
    try {
      feed.requireKnown(coldest);
      feed.requireKnown(day.air().highest());
    } catch (EvaluationException e) {
      add(BatteryDayFinding.TEMPERATURE, type.chemistry().word(), day.air().lowest());
      return null;
    }
    double hours = feed.hours(peak, coldest);
    if (hours == 0) {
      add(BatteryDayFinding.NO_START, peak, day.air().lowest());
      return null;
    }
    if (hours < DayPlanner.SHORTEST) {
      add(BatteryDayFinding.TOO_SHORT, hours * 60);
    }
    return hours;
  }
}
