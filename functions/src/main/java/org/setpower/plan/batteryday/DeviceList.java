package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.setpower.base.TextEnum;
import org.setpower.plan.batteryday.BatteryDayInputs.Position;
import org.setpower.plan.batteryday.BatteryDayInputs.PowerDraw;
import org.setpower.plan.batteryday.simulation.DaySpec;
import org.setpower.plan.batteryday.simulation.UnitSpec;
import org.setpower.plan.batteryday.typed.VoltRange;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;

/** The devices, by position, with the hours at which they are on. */
final class DeviceList {
  private final Map<String, List<OnPosition>> byPosition = new HashMap<>();
  private final Map<Integer, OnPosition> own = new HashMap<>();
  private final Map<Integer, OnPosition> byRow = new HashMap<>();

  /**
   * A device at a position.
   *
   * @param watts from the battery; NaN where the row is not clear
   * @param from hours; NaN where no day is planned
   * @param findings of its row, can be added to
   * @param own whether it stands in the row of its position
   */
  record OnPosition(
      InputRow<PowerDraw> row,
      double watts,
      double from,
      double to,
      List<Finding> findings,
      boolean own) {
    /** Its name; without one that of its position. */
    String name() {
      String name = row.value().device() == null ? row.value().position() : row.value().device();
      return name == null ? "—" : TextEnum.shortened(name);
    }

    boolean isDirect() {
      return row.value().converter() == null;
    }
  }

  /**
   * @param day null where no day is planned
   */
  DeviceList(
      InputRows<PowerDraw> rows,
      InputRows<Position> positions,
      DaySettings settings,
      DayFrame day) {
    rows.filled().forEach(r -> byRow.put(r.number(), add(r, settings, day)));
    positions.filled().forEach(r -> addOwn(r, settings, day));
  }

  /** The device that a position names in its own row; what is wrong with it is said there. */
  private void addOwn(InputRow<Position> row, DaySettings settings, DayFrame day) {
    Position position = row.value();
    VoltRange input = position.input() == null ? null : VoltRange.parse(position.input());
    if (position.power() != null && input != null) {
      PowerDraw draw =
          new PowerDraw(
              null,
              position.position(),
              position.power(),
              input.min(),
              input.max(),
              null,
              null,
              null,
              null);
      own.put(
          row.number(),
          read(
              new InputRow<>(row.number(), draw, List.of(), Set.of(), Map.of()),
              true,
              settings,
              day));
    }
  }

  private OnPosition add(InputRow<PowerDraw> row, DaySettings settings, DayFrame day) {
    OnPosition on = read(row, false, settings, day);
    byPosition.computeIfAbsent(Identity.of(row.value().position()), p -> new ArrayList<>()).add(on);
    return on;
  }

  private static OnPosition read(
      InputRow<PowerDraw> row, boolean own, DaySettings settings, DayFrame day) {
    PowerDraw device = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    boolean half = device.minVolts() == null || device.maxVolts() == null;
    if (half && device.converter() == null && !row.unreadable().contains("converter")) {
      findings.add(Finding.of(BatteryDayFinding.VOLTS_BLANK));
    } else if (!half && device.minVolts() >= device.maxVolts()) {
      findings.add(Finding.of(BatteryDayFinding.VOLTS_CROSSED));
    }
    double watts =
        device.watts() == null
            ? Double.NaN
            : device.watts()
                * Math.floor(DaySettings.or(device.quantity(), 1))
                / DaySettings.or(device.converter(), 1);
    double from = Double.NaN;
    double to = Double.NaN;
    if (day != null) {
      from = device.from() == null ? day.call() : settings.hour(device.from());
      to = device.to() == null ? Math.max(day.wrap(), from) : settings.end(device.to(), from);
      if (from < day.call() || to > day.wrap() || to <= from) {
        findings.add(
            Finding.of(
                BatteryDayFinding.OUTSIDE_DAY,
                DaySettings.time(day.call()),
                DaySettings.time(day.wrap())));
      }
      from = to > day.call() ? Math.max(from, day.call()) : from;
    }
    return new OnPosition(row, watts, from, to, findings, own);
  }

  /** The devices of a position: that of its own row, and those that name it. */
  List<OnPosition> at(InputRow<Position> position) {
    List<OnPosition> all =
        new ArrayList<>(
            byPosition.getOrDefault(Identity.of(position.value().position()), List.of()));
    if (own.containsKey(position.number())) {
      all.add(own.get(position.number()));
    }
    all.sort(
        Comparator.comparingDouble(OnPosition::watts)
            .thenComparingDouble(OnPosition::from)
            .thenComparingDouble(OnPosition::to)
            .thenComparing(d -> d.row.value().toString()));
    return all;
  }

  OnPosition row(int number) {
    return byRow.get(number);
  }

  /** Adds what is wrong with devices whose position is not known. */
  void judgePositions(Set<String> known) {
    byRow
        .values()
        .forEach(
            d -> {
              String name = d.row.value().position();
              if (name != null && !known.contains(Identity.of(name))) {
                d.findings.add(
                    Finding.of(BatteryDayFinding.POSITION_UNKNOWN, TextEnum.shortened(name)));
              }
            });
  }

  /** When a position is on and at what power, breaks taken out where it is switched off. */
  static List<UnitSpec.Span> spans(
      List<OnPosition> devices, List<DaySpec.Pause> breaks, boolean staysOn) {
    TreeSet<Double> edges = new TreeSet<>();
    devices.forEach(
        d -> {
          edges.add(d.from);
          edges.add(d.to);
        });
    breaks.forEach(
        b -> {
          edges.add(b.from());
          edges.add(b.to());
        });
    List<UnitSpec.Span> spans = new ArrayList<>();
    Double from = null;
    for (double to : edges) {
      if (from != null) {
        double begin = from;
        double watts = 0;
        for (OnPosition device : devices) {
          watts += device.from <= begin && device.to >= to ? device.watts : 0;
        }
        boolean off = !staysOn && breaks.stream().anyMatch(b -> b.from() <= begin && b.to() >= to);
        if (watts > 0 && !off) {
          append(spans, begin, to, watts);
        }
      }
      from = to;
    }
    return List.copyOf(spans);
  }

  private static void append(List<UnitSpec.Span> spans, double from, double to, double watts) {
    UnitSpec.Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
    if (last != null && last.to() == from && last.watts() == watts) {
      spans.set(spans.size() - 1, new UnitSpec.Span(last.from(), to, watts));
    } else {
      spans.add(new UnitSpec.Span(from, to, watts));
    }
  }
}
