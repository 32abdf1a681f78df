package org.setpower.plan.batteryday;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.setpower.plan.batteryday.BatteryDayInputs.Charger;
import org.setpower.plan.batteryday.BatteryDayInputs.Position;
import org.setpower.plan.batteryday.BatteryDayInputs.Supply;
import org.setpower.plan.batteryday.simulation.BatterySpec;
import org.setpower.plan.batteryday.simulation.ChargerSpec;
import org.setpower.plan.batteryday.simulation.DaySpec;
import org.setpower.plan.batteryday.simulation.SupplySpec;
import org.setpower.plan.batteryday.simulation.UnitSpec;
import org.setpower.plan.batteryday.simulation.UnitWork;
import org.setpower.plan.batteryday.typed.BatteryAbsence;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;

/** A date, judged and made ready to be run: what does not pass its gate is not in it. */
final class DayBuild {
  /** More pieces are no plan that one crew changes batteries for. */
  static final int MOST_PIECES = 150;

  private static final int MOST_BATTERIES = 400;

  private final DayFrame frame;
  private final StockList stock;
  private final DeviceList devices;
  private final Map<Integer, PositionJudge.State> positions = new LinkedHashMap<>();
  private final Map<Integer, ChargerJudge.State> chargers = new LinkedHashMap<>();
  private final Gate<PositionJudge.State> positionGate;
  private final Gate<InputRow<Supply>> supplyGate;
  private final Gate<ChargerJudge.State> chargerGate;
  private final List<UnitSpec> units = new ArrayList<>();
  private final List<Finding> tooLarge = new ArrayList<>();

  /**
   * @param frame null where no day is planned
   * @param gone what was found at call
   * @param entered hour from which a battery is there that is entered on Today, by number
   */
  DayBuild(
      BatteryDayInputs inputs,
      DaySettings settings,
      TypeList types,
      DayFrame frame,
      Map<Integer, BatteryAbsence> gone,
      Map<Integer, Double> entered) {
    this.frame = frame;
    LocalDate date = frame == null ? null : frame.date();
    stock = new StockList(inputs, types, date, gone, entered);
    devices = new DeviceList(inputs.devices(), inputs.positions(), settings, frame);
    Set<String> names = new HashSet<>();
    inputs.positions().filled().forEach(p -> names.add(Identity.of(p.value().position())));
    devices.judgePositions(names);
    inputs
        .positions()
        .filled()
        .forEach(
            r ->
                positions.put(
                    r.number(), new PositionJudge(settings, frame, r, types, devices).judge()));
    positionGate =
        new Gate<>(
            positions.values().stream()
                .map(
                    s ->
                        new Gate.Candidate<>(
                            s.row().number(),
                            s,
                            Identity.of(s.row().value().position()),
                            s.findings(),
                            false))
                .toList(),
            List.of());
    supplyGate =
        new Gate<>(
            inputs
                .supplies()
                .filled()
                .map(
                    r ->
                        new Gate.Candidate<>(
                            r.number(), r, Identity.of(r.value().supply()), ofSupply(r), false))
                .toList(),
            List.of());
    inputs.chargers().filled().forEach(r -> chargers.put(r.number(), judged(r, settings, types)));
    chargerGate =
        new Gate<>(
            chargers.values().stream()
                .map(
                    s ->
                        new Gate.Candidate<>(
                            s.row().number(),
                            s,
                            Identity.of(s.row().value().charger()),
                            s.findings(),
                            false))
                .toList(),
            List.of());
    addUnits();
  }

  private static List<Finding> ofSupply(InputRow<Supply> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    if ((row.value().powerFrom() == null) != (row.value().powerTo() == null)) {
      findings.add(Finding.of(BatteryDayFinding.HOURS_HALF));
    }
    Supply supply = row.value();
    if (supply.fromDay() != null
        && supply.toDay() != null
        && supply.toDay().isBefore(supply.fromDay())) {
      findings.add(Finding.of(BatteryDayFinding.DAYS_CROSSED));
    }
    if (supply.goneOn() == null && (supply.goneFrom() != null || supply.goneTo() != null)) {
      findings.add(Finding.of(BatteryDayFinding.GONE_HALF));
    }
    return findings;
  }

  private ChargerJudge.State judged(InputRow<Charger> row, DaySettings settings, TypeList types) {
    Gate.Judged<InputRow<Supply>> supply = supplyOf(row);
    Map<Integer, TypeFacts> used = new TreeMap<>();
    stock.batteries().values().stream()
        .filter(b -> b.type() != null)
        .forEach(b -> used.put(b.type().row(), b.type()));
    positions.values().stream()
        .filter(p -> p.type() != null)
        .forEach(p -> used.put(p.type().row(), p.type()));
    return new ChargerJudge(settings, frame, row, supply).judge(types, used.values());
  }

  /** The supply of a charger; of a blank cell the only one there is; null where it is not known. */
  private Gate.Judged<InputRow<Supply>> supplyOf(InputRow<Charger> row) {
    String name = Identity.of(row.value().supply());
    List<Gate.Judged<InputRow<Supply>>> all = supplyGate.all();
    if (name.isEmpty()) {
      return all.size() == 1 && !row.unreadable().contains("supply") ? all.get(0) : null;
    }
    return all.stream()
        .filter(s -> Identity.of(s.item().value().supply()).equals(name))
        .findFirst()
        .orElse(null);
  }

  private void addUnits() {
    int pieces = 0;
    for (Gate.Judged<PositionJudge.State> judged : positionGate.all()) {
      PositionJudge.State state = judged.item();
      if (judged.fit() && state.feed() != null) {
        pieces += state.quantity();
        for (int piece = 1; piece <= state.quantity() && pieces <= MOST_PIECES; piece++) {
          units.add(unit(judged.row(), piece, state));
        }
      }
    }
    if (pieces > MOST_PIECES || stock.batteries().size() > MOST_BATTERIES) {
      tooLarge.add(
          Finding.of(
              BatteryDayFinding.TOO_LARGE,
              (double) pieces,
              (double) stock.batteries().size(),
              (double) MOST_PIECES,
              (double) MOST_BATTERIES));
    }
  }

  private static UnitSpec unit(int row, int piece, PositionJudge.State state) {
    return new UnitSpec(
        row,
        piece,
        DaySettings.or(state.row().value().priority(), 50),
        state.type().row(),
        state.connection(),
        state.atOnce(),
        state.feed(),
        state.spans());
  }

  /**
   * The day as it is run; null if it cannot be.
   *
   * @param charges state of charge at call, by number; full where there is none
   * @param now hour of planning again; infinite for none
   */
  DaySpec spec(
      DaySettings settings, Map<Integer, Double> charges, double now, List<DaySpec.Found> found) {
    if (frame == null || !tooLarge.isEmpty()) {
      return null;
    }
    List<BatterySpec> batteries =
        stock.gate().paper(StockList.StockBattery::isPlanned).fit().stream()
            .map(
                b ->
                    new BatterySpec(
                        b.item().number(),
                        b.item().type().row(),
                        charges.getOrDefault(b.item().number(), 1.0),
                        stock.arrival(b.item(), settings),
                        stock.isPutIn(b.item().number())))
            .toList();
    List<ChargerSpec> used =
        chargerGate.paper(c -> c.spec() != null).fit().stream().map(c -> c.item().spec()).toList();
    List<SupplySpec> supplies =
        supplyGate.paper(s -> true).fit().stream()
            .map(
                s ->
                    new SupplySpec(
                        s.row(),
                        s.item().value().watts(),
                        DaySettings.or(s.item().value().wattHours(), Double.POSITIVE_INFINITY)))
            .toList();
    return new DaySpec(
        frame.call(),
        frame.until(),
        frame.air(),
        frame.shelf(),
        frame.breaks(),
        settings.near(),
        units.stream()
            .map(u -> new UnitWork(u, frame.air(), frame.shelf(), frame.breaks()))
            .toList(),
        batteries,
        used,
        supplies,
        now,
        found);
  }

  List<UnitSpec> units() {
    return units;
  }

  StockList stock() {
    return stock;
  }

  DeviceList devices() {
    return devices;
  }

  Gate<PositionJudge.State> positions() {
    return positionGate;
  }

  /** The positions of a name. */
  List<InputRow<Position>> named(String position) {
    return positions.values().stream()
        .map(PositionJudge.State::row)
        .filter(r -> Identity.of(r.value().position()).equals(Identity.of(position)))
        .toList();
  }

  Gate<InputRow<Supply>> supplies() {
    return supplyGate;
  }

  Gate<ChargerJudge.State> chargers() {
    return chargerGate;
  }

  /** Whether no stop keeps a position of a date out of the schedule. */
  boolean isWhole(LocalDate date) {
    return positionGate.all().stream()
        .allMatch(p -> p.fit() || !PositionJudge.isOn(p.item().row().value(), date));
  }

  /** Why the day is too large to be run; empty if it is not. */
  List<Finding> tooLarge() {
    return tooLarge;
  }
}
