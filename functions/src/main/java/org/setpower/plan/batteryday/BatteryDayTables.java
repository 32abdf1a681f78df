package org.setpower.plan.batteryday;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.base.TextEnum;
import org.setpower.pack.ConstantWatts;
import org.setpower.plan.batteryday.simulation.BatteryConnection;
import org.setpower.plan.batteryday.simulation.DayEvent;
import org.setpower.plan.batteryday.simulation.DayOutcome;
import org.setpower.plan.batteryday.simulation.UnitSpec;
import org.setpower.plan.batteryday.typed.BatteryAbsence;
import org.setpower.plan.batteryday.typed.BatteryNumbers;
import org.setpower.plan.batteryday.word.BatteryUse;
import org.setpower.plan.batteryday.word.ScheduleEntry;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.ResultRows;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Verdict;

/** The tables of results of a plan. */
final class BatteryDayTables {
  /** Nominal voltages of plates. */
  private static final double[] NOMINAL = {12, 24, 48};

  private final BatteryDayPlan plan;
  private final DayBuild build;
  private final DayOutcome outcome;
  private final Map<Integer, BatteryAbsence> goneNow;

  /** As they are at the hour of planning again, if the day is. */
  private final Gate<StockList.StockBattery> batteries;

  private final List<BatteryDayResults.ScheduleRow> schedule = new ArrayList<>();
  private final Map<Integer, List<Finding>> positionFindings = new HashMap<>();
  private final Map<Integer, List<Finding>> stockFindings = new HashMap<>();
  private final Map<Integer, List<Finding>> supplyFindings = new HashMap<>();
  private final Map<Integer, List<Finding>> chargerFindings = new HashMap<>();
  private final Map<Integer, Integer> shortOf = new TreeMap<>();

  /** The same where full batteries would be enough, but not all are full at call. */
  private final Map<Integer, Integer> carried = new TreeMap<>();

  private final ChargingList chargingList;
  private final List<BatteryDayResults.ChargingRow> charging;
  private final List<Finding> projectFindings;
  private final DisposableCells disposables;

  BatteryDayTables(BatteryDayPlan plan) {
    this.plan = plan;
    build = plan.build();
    outcome = plan.outcome();
    goneNow = plan.goneNow();
    batteries = build.stock().gateWithout(goneNow);
    addNotPlanned();
    if (outcome != null) {
      for (int i = 0; i < outcome.events().size(); i++) {
        schedule.add(scheduleRow(i));
      }
    }
    judgeShort();
    build.positions().all().forEach(p -> positionFindings.put(p.row(), positionFindings(p)));
    plan.inputs().stock().filled().forEach(r -> stockFindings.put(r.number(), stockFindings(r)));
    build.supplies().all().forEach(s -> supplyFindings.put(s.row(), supplyFindings(s)));
    build
        .chargers()
        .all()
        .forEach(c -> chargerFindings.put(c.row(), new ChargerUse(plan).findings(c)));
    chargingList = new ChargingList(plan, goneNow);
    charging = chargingList.rows();
    projectFindings = projectFindings();
    disposables = new DisposableCells(plan.inputs().disposables(), plan.calendar());
  }

  private static List<Finding> sorted(Collection<Finding> findings) {
    return findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
  }

  private List<Finding> projectFindings() {
    List<Finding> findings = new ArrayList<>(plan.settings().findings());
    findings.addAll(plan.calendar().ofProject());
    findings.addAll(plan.ofToday());
    findings.addAll(build.tooLarge());
    if (outcome != null && !outcome.complete()) {
      findings.add(Finding.of(BatteryDayFinding.TOO_MANY_CHANGES));
    }
    if (plan.fewest() != null && !plan.fewest().proven()) {
      findings.add(Finding.of(BatteryDayFinding.NOT_PROVEN));
    }
    if (outcome != null) {
      findings.addAll(new CrewChanges(plan, this::unitName).findings());
    }
    int late = late();
    if (late > 0) {
      findings.add(
          Finding.of(
              BatteryDayFinding.NOT_READY,
              (double) late,
              DaySettings.time(plan.calendar().shown().until())));
    }
    return sorted(findings);
  }

  /** Batteries that are not ready by the next call. */
  private int late() {
    return (int)
        charging.stream()
            .filter(t -> Boolean.FALSE.equals(t.ready()))
            .map(BatteryDayResults.ChargingRow::battery)
            .distinct()
            .count();
  }

  /** How many batteries of each type are missing: none where nothing goes dark. */
  private void judgeShort() {
    if (plan.fewest() == null) {
      return;
    }
    boolean lit = outcome.isLit();
    plan.fewest()
        .together()
        .forEach(
            (type, number) -> shortOf.put(type, lit ? 0 : Math.max(0, number - planned(type))));
    boolean enough = shortOf.values().stream().allMatch(n -> n == 0);
    if (!lit && enough && outcome.complete() && Double.isInfinite(plan.now())) {
      carried.putAll(plan.missing());
      shortOf.putAll(carried);
    }
    if (!lit && Double.isFinite(plan.now())) {
      // the fewest are of a whole day with full batteries, and not of what is left from now on
      shortOf.keySet().removeIf(t -> shortOf.get(t) == 0 && isDark(t));
    }
  }

  /** Whether a piece on batteries of a type is dark. */
  private boolean isDark(int type) {
    return IntStream.range(0, build.units().size())
        .anyMatch(i -> build.units().get(i).type() == type && outcome.darkHours()[i] > 0);
  }

  private List<Finding> supplyFindings(Gate.Judged<InputRow<BatteryDayInputs.Supply>> judged) {
    List<Finding> findings = new ArrayList<>(judged.findings());
    if (outcome != null && judged.fit() && !outcome.isLit() && outcome.complete()) {
      double dark = Arrays.stream(outcome.darkHours()).sum();
      double without = plan.darkWithout(judged.row());
      if (without < dark - 1 / 60.0) {
        double enough = plan.wattsEnough(judged.row());
        String less = DaySettings.duration(without);
        String now = DaySettings.duration(dark);
        double watts = judged.item().value().watts();
        if (!Double.isNaN(enough)) {
          findings.add(Finding.of(BatteryDayFinding.SUPPLY_ENOUGH, watts, less, now, enough));
        }
      }
    }
    return sorted(findings);
  }

  private int planned(int type) {
    return (int)
        batteries.paper(StockList.StockBattery::isPlanned).fit().stream()
            .filter(b -> b.item().type().row() == type)
            .count();
  }

  private List<Finding> positionFindings(Gate.Judged<PositionJudge.State> judged) {
    List<Finding> findings = new ArrayList<>(judged.findings());
    PositionJudge.State state = judged.item();
    if (outcome == null || !judged.fit() || state.feed() == null) {
      return findings;
    }
    boolean inStock =
        build.stock().gate().paper(StockList.StockBattery::isPlanned).fit().stream()
            .anyMatch(b -> b.item().type().row() == state.type().row());
    if (!inStock) {
      findings.add(Finding.of(BatteryDayFinding.NO_STOCK, state.type().name()));
    } else if (dark(judged.row()) > 0) {
      List<DayEvent> dark =
          outcome.events().stream()
              .filter(e -> e.what() == DayEvent.What.DARK)
              .filter(e -> unit(e).position() == judged.row())
              .toList();
      long pieces = dark.stream().map(DayEvent::unit).distinct().count();
      double first = dark.stream().mapToDouble(DayEvent::hour).min().orElse(0);
      String dry = DaySettings.duration(dark(judged.row()));
      String kept = reserve(state.type().row(), Integer.MAX_VALUE);
      findings.add(
          kept.isEmpty()
              ? Finding.of(
                  BatteryDayFinding.RUNS_DRY, (double) pieces, dry, DaySettings.time(first))
              : Finding.of(
                  BatteryDayFinding.RUNS_DRY_RESERVE,
                  (double) pieces,
                  dry,
                  DaySettings.time(first),
                  kept));
    }
    return sorted(findings);
  }

  private UnitSpec unit(DayEvent event) {
    return build.units().get(event.unit());
  }

  /** Dark hours of all pieces of a position. */
  private double dark(int position) {
    double dark = 0;
    for (int i = 0; i < build.units().size(); i++) {
      dark += build.units().get(i).position() == position ? outcome.darkHours()[i] : 0;
    }
    return dark < 1e-6 ? 0 : dark;
  }

  private List<Finding> stockFindings(InputRow<BatteryDayInputs.Stock> row) {
    List<Finding> findings = new ArrayList<>(build.stock().findings(row.number()));
    TypeFacts type = plan.types().find(row.value().type());
    Integer number = type == null || plan.fewest() == null ? null : fewest(type);
    if (number != null) {
      int missing = shortOf.getOrDefault(type.row(), 0);
      if (!shortOf.containsKey(type.row())) {
        String kept = reserve(type.row(), Integer.MAX_VALUE);
        findings.add(
            kept.isEmpty()
                ? Finding.of(BatteryDayFinding.SHORT_FROM_NOW, DaySettings.time(plan.now()))
                : Finding.of(
                    BatteryDayFinding.RESERVE_FROM_NOW, DaySettings.time(plan.now()), kept));
        return sorted(findings);
      }
      if (carried.containsKey(type.row())) {
        findings.add(Finding.of(BatteryDayFinding.SHORT_CARRIED, (double) missing));
        return sorted(findings);
      }
      boolean proven = plan.fewest().proven();
      String kept = reserve(type.row(), missing);
      if (!kept.isEmpty()) {
        double there = number - missing;
        double rest = missing - kept.split(",").length;
        findings.add(
            rest == 0
                ? Finding.of(BatteryDayFinding.SHORT_RESERVE, (double) number, there, kept)
                : Finding.of(
                    BatteryDayFinding.SHORT_WITH_RESERVE, (double) number, there, kept, rest));
      } else if (missing > 0) {
        findings.add(
            Finding.of(
                proven ? BatteryDayFinding.SHORT_OF : BatteryDayFinding.SHORT_NOT_PROVEN,
                (double) number,
                (double) (number - missing),
                (double) missing));
      } else if (!proven) {
        findings.add(Finding.of(BatteryDayFinding.STOCK_LASTS, (double) number));
      }
      String without = stopped(row.value().type());
      if (!without.isEmpty()) {
        findings.add(Finding.of(BatteryDayFinding.STOCK_WITHOUT, without));
      }
    }
    return sorted(findings);
  }

  /** Numbers of the batteries of a type that are kept as reserve, as many as are missing. */
  private String reserve(int type, int missing) {
    return batteries.all().stream()
        .map(Gate.Judged::item)
        .filter(b -> b.use() == BatteryUse.RESERVE && b.type() != null && b.type().row() == type)
        .limit(missing)
        .map(b -> BatteryNumbers.shown(b.number()))
        .collect(Collectors.joining(", "));
  }

  /** The positions of the date with a type that a stop keeps out of the plan. */
  private String stopped(String type) {
    DayFrame day = plan.calendar().shown();
    return build.positions().all().stream()
        .filter(p -> !p.fit())
        .map(p -> p.item().row().value())
        .filter(p -> Identity.of(p.type()).equals(Identity.of(type)))
        .filter(p -> day != null && PositionJudge.isOn(p, day.date()))
        .map(p -> p.position() == null ? "—" : TextEnum.shortened(p.position()))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Min. required of a type; null where it is not known. */
  private Integer fewest(TypeFacts type) {
    return plan.fewest().together().get(type.row());
  }

  /**
   * @param place of the event among all
   */
  private BatteryDayResults.ScheduleRow scheduleRow(int place) {
    DayEvent event = outcome.events().get(place);
    Double until = event.what() == DayEvent.What.DARK ? darkUntil(place) : aloneUntil(place);
    return new BatteryDayResults.ScheduleRow(
        DaySettings.time(event.hour()),
        event.hour(),
        positionName(unit(event).position()),
        unit(event).piece(),
        ScheduleEntry.of(event),
        names(event.on()),
        event.from().stream()
            .filter(u -> u >= 0)
            .map(this::unitName)
            .distinct()
            .collect(Collectors.joining(", ")),
        names(event.off()),
        BatteryDayPapers.joined(
            IntStream.range(0, event.off().size())
                .mapToObj(i -> goesTo(event, event.off().get(i), event.to().get(i)))
                .toList()),
        until == null ? null : DaySettings.time(until));
  }

  /**
   * The hour until which a hot-swap plate stands on one battery after an event; null if it does
   * not.
   */
  private Double aloneUntil(int place) {
    List<DayEvent> events = outcome.events();
    int unit = events.get(place).unit();
    if (build.units().get(unit).connection() != BatteryConnection.HOT_SWAP) {
      return null;
    }
    int on = 0;
    for (int i = 0; i < events.size(); i++) {
      DayEvent event = events.get(i);
      if (event.unit() == unit) {
        on += event.on().size() - event.off().size();
        if (i == place && on != 1) {
          return null;
        }
        if (i > place && on != 1) {
          return event.hour();
        }
      }
    }
    return null;
  }

  /** The hour at which a piece that went dark has a battery again, or ends; null if not known. */
  private Double darkUntil(int place) {
    List<DayEvent> events = outcome.events();
    for (int i = place + 1; i < events.size(); i++) {
      DayEvent later = events.get(i);
      boolean over = !later.on().isEmpty() || later.what() == DayEvent.What.END;
      if (later.unit() == events.get(place).unit() && over) {
        return later.hour();
      }
    }
    return null;
  }

  /** Where a battery that comes off goes; from the shelf to a charger later, if to one. */
  private Phrase goesTo(DayEvent event, int number, DayEvent.Goes goes) {
    if (goes.away() && goneNow.get(number) == BatteryAbsence.QUARANTINE) {
      return Phrase.of(BatteryDayPapers.QUARANTINE);
    }
    if (goes.away() || goes.unit() >= 0 || goes.charge() != null) {
      return goesTo(goes);
    }
    double usedAgain =
        outcome.events().stream()
            .filter(e -> e.hour() > event.hour() + 1e-9 && e.on().contains(number))
            .mapToDouble(DayEvent::hour)
            .min()
            .orElse(plan.calendar().shown().until());
    return outcome.charges().stream()
        .filter(c -> c.battery() == number && c.start() >= event.hour() - 1e-9)
        .filter(c -> c.start() < usedAgain && c.full() > c.start() + 1e-9)
        .min(Comparator.comparingDouble(DayEvent.Charge::start))
        .map(this::later)
        .orElse(Phrase.of(BatteryDayPapers.SHELF));
  }

  private Phrase later(DayEvent.Charge charge) {
    return Phrase.of(
        BatteryDayPapers.LATER,
        charger(charge.charger()),
        BatteryDayPapers.time(charge.start(), plan.calendar().shown()));
  }

  private Phrase goesTo(DayEvent.Goes goes) {
    if (goes.away()) {
      return Phrase.of(BatteryDayPapers.AWAY);
    }
    if (goes.unit() >= 0) {
      return Phrase.of("{0}", unitName(goes.unit()));
    }
    if (goes.charge() == null) {
      return Phrase.of(BatteryDayPapers.SHELF);
    }
    return goes.charge().isLater()
        ? later(goes.charge())
        : Phrase.of("{0}", charger(goes.charge().charger()));
  }

  /** The name of a piece: that of its position, with a number where there are several. */
  private String unitName(int unit) {
    UnitSpec spec = build.units().get(unit);
    boolean several =
        build.units().stream().filter(u -> u.position() == spec.position()).count() > 1;
    return positionName(spec.position()) + (several ? " " + spec.piece() : "");
  }

  /** Positions of the date that a stop keeps out of the schedule are named in it. */
  private void addNotPlanned() {
    DayFrame day = plan.calendar().shown();
    if (day == null) {
      return;
    }
    for (Gate.Judged<PositionJudge.State> judged : build.positions().all()) {
      BatteryDayInputs.Position position = judged.item().row().value();
      if (!judged.fit() && PositionJudge.isOn(position, day.date())) {
        schedule.add(
            new BatteryDayResults.ScheduleRow(
                DaySettings.time(day.call()),
                day.call(),
                position.position() == null ? "#" + judged.row() : position.position(),
                null,
                ScheduleEntry.NOT_PLANNED,
                "",
                "",
                "",
                null,
                null));
      }
    }
  }

  private static String names(List<Integer> numbers) {
    return numbers.stream().map(BatteryNumbers::shown).collect(Collectors.joining(", "));
  }

  private String charger(int row) {
    return build.chargers().row(row).item().row().value().charger();
  }

  private String positionName(int row) {
    return build.positions().row(row).item().row().value().position();
  }

  List<ResultRows<?>> all() {
    BatteryDayInputs inputs = plan.inputs();
    List<BatteryDayResults.PositionResult> positions =
        align(inputs.positions(), r -> position(r.number()));
    List<IssueRow> issues =
        new BatteryDayIssues(
                plan,
                projectFindings,
                positionFindings,
                stockFindings,
                supplyFindings,
                chargerFindings,
                disposables)
            .rows();
    return List.of(
        new ResultRows<>(
            BatteryDayResults.PROJECT,
            List.of(
                new BatteryDayResults.ProjectResult(
                    Finding.verdict(projectFindings), projectFindings))),
        new ResultRows<>(BatteryDayResults.DAYS, align(inputs.days(), this::day)),
        new ResultRows<>(
            BatteryDayResults.TYPES,
            align(
                inputs.types(),
                r ->
                    new BatteryDayResults.TypeResult(
                        plan.types().row(r.number()).verdict(),
                        plan.types().row(r.number()).findings()))),
        new ResultRows<>(BatteryDayResults.STOCK, align(inputs.stock(), this::stock)),
        new ResultRows<>(
            BatteryDayResults.BATTERIES, batteries.all().stream().map(this::battery).toList()),
        new ResultRows<>(BatteryDayResults.POSITIONS, positions),
        new ResultRows<>(
            BatteryDayResults.DEVICES, align(inputs.devices(), r -> device(r.number()))),
        new ResultRows<>(
            BatteryDayResults.SUPPLIES, align(inputs.supplies(), r -> supply(r.number()))),
        new ResultRows<>(
            BatteryDayResults.CHARGERS, align(inputs.chargers(), r -> charge(r.number()))),
        new ResultRows<>(
            BatteryDayResults.AT_CALL,
            align(
                inputs.atCall(),
                r -> {
                  List<Finding> own = sorted(plan.atCall().findings(r.number()));
                  return new BatteryDayResults.AtCallResult(Finding.verdict(own), own);
                })),
        new ResultRows<>(
            BatteryDayResults.AT_NOW,
            align(
                inputs.atNow(),
                r -> {
                  List<Finding> own = sorted(plan.atNow().findings(r.number()));
                  return new BatteryDayResults.AtNowResult(Finding.verdict(own), own);
                })),
        new ResultRows<>(BatteryDayResults.TODAY, List.of(today())),
        new ResultRows<>(BatteryDayResults.RUN, List.of(run())),
        new ResultRows<>(BatteryDayResults.SCHEDULE, schedule),
        new ResultRows<>(BatteryDayResults.CARD, BatteryDayPapers.card(schedule, build, plan)),
        new ResultRows<>(BatteryDayResults.CHARGING, charging),
        new ResultRows<>(BatteryDayResults.LENT_OUT, lentOut(positions)),
        new ResultRows<>(BatteryDayResults.TIMELINE, timeline()),
        new ResultRows<>(BatteryDayResults.HOURS, hours()),
        new ResultRows<>(
            BatteryDayResults.DISPOSABLES,
            align(inputs.disposables(), r -> disposables.result(r.number()))),
        new ResultRows<>(BatteryDayResults.CELLS, disposables.cells()),
        new ResultRows<>(BatteryDayResults.VOLTAGES, voltages()),
        new ResultRows<>(BatteryDayResults.HOT_SWAP, hotSwap()),
        new ResultRows<>(BatteryDayResults.SUMMARY, List.of(summary(positions, issues))),
        new ResultRows<>(BatteryDayResults.ISSUES, issues));
  }

  /** One result a row of the table, null for blank rows. */
  private static <T extends Record, R> List<R> align(
      InputRows<T> rows, Function<InputRow<T>, R> result) {
    List<R> results = new ArrayList<>(rows.rows().size());
    rows.rows().forEach(r -> results.add(r.isBlank() ? null : result.apply(r)));
    return results;
  }

  private BatteryDayResults.DayResult day(InputRow<BatteryDayInputs.Day> row) {
    List<Finding> findings = plan.ofDay(row);
    DayFrame shown = plan.calendar().shown();
    return new BatteryDayResults.DayResult(
        Finding.verdict(findings),
        findings,
        shown != null && shown.date().equals(row.value().date()),
        plan.darkOn(row.value().date()));
  }

  private BatteryDayResults.StockResult stock(InputRow<BatteryDayInputs.Stock> row) {
    List<Finding> findings = stockFindings.get(row.number());
    List<StockList.StockBattery> own = build.stock().ofRow(row.number());
    TypeFacts type = plan.types().find(row.value().type());
    Integer key = type == null ? null : (Integer) type.row();
    boolean known = plan.fewest() != null && key != null;
    return new BatteryDayResults.StockResult(
        Finding.verdict(findings),
        findings,
        own.isEmpty() ? null : BatteryNumbers.shown(own.get(0).number()),
        own.isEmpty() ? null : BatteryNumbers.shown(own.get(own.size() - 1).number()),
        (int) own.stream().filter(b -> batteries.row(b.number()).fit()).count(),
        known ? plan.fewest().together().get(key) : null,
        key == null ? null : plan.fewestOfAll(key),
        known ? plan.fewest().alone().get(key) : null,
        known ? plan.fewest().uncharged().get(key) : null,
        key == null ? null : shortOf.get(key));
  }

  private BatteryDayResults.BatteryResult battery(Gate.Judged<StockList.StockBattery> judged) {
    int number = judged.row();
    TypeFacts type = judged.item().type();
    boolean ends = outcome != null && !goneNow.containsKey(number);
    return new BatteryDayResults.BatteryResult(
        BatteryNumbers.shown(number),
        type == null ? "" : type.name(),
        judged.verdict(),
        judged.findings(),
        judged.item().use(),
        plan.chargeAtCall(number),
        ends ? outcome.endCharge().get(number) : null,
        ends && hasNext() ? outcome.nextCharge().get(number) : null);
  }

  /** Whether Days has a date after the one shown. */
  private boolean hasNext() {
    DayFrame day = plan.calendar().shown();
    return day != null && Double.isFinite(day.until());
  }

  private BatteryDayResults.PositionResult position(int row) {
    Gate.Judged<PositionJudge.State> judged = build.positions().row(row);
    List<Finding> findings = positionFindings.get(row);
    PositionJudge.State state = judged.item();
    boolean ran = outcome != null && judged.fit() && state.feed() != null;
    String name = state.row().value().position();
    return new BatteryDayResults.PositionResult(
        Finding.verdict(findings),
        findings,
        state.peak(),
        state.volts(),
        state.amps(),
        state.maxAmps(),
        state.runtime(),
        state.endCharge(),
        state.feed() == null
            ? null
            : (Double) state.spans().stream().mapToDouble(s -> s.to() - s.from()).sum(),
        ran
            ? (Integer)
                (int)
                    schedule.stream()
                        .filter(s -> s.what().isChange())
                        .filter(s -> s.position().equals(name))
                        .count()
            : null,
        ran ? (Double) dark(row) : null);
  }

  private BatteryDayResults.DeviceResult device(int row) {
    DeviceList.OnPosition device = build.devices().row(row);
    List<Finding> findings = sorted(device.findings());
    return new BatteryDayResults.DeviceResult(
        Finding.verdict(findings),
        findings,
        Double.isNaN(device.watts()) ? null : (Double) device.watts());
  }

  private BatteryDayResults.SupplyResult supply(int row) {
    Gate.Judged<InputRow<BatteryDayInputs.Supply>> judged = build.supplies().row(row);
    return new BatteryDayResults.SupplyResult(
        Finding.verdict(supplyFindings.get(row)),
        supplyFindings.get(row),
        outcome == null || !judged.fit() ? null : outcome.peakWatts().getOrDefault(row, 0.0));
  }

  private BatteryDayResults.ChargerResult charge(int row) {
    Gate.Judged<ChargerJudge.State> judged = build.chargers().row(row);
    return new BatteryDayResults.ChargerResult(
        Finding.verdict(chargerFindings.get(row)),
        chargerFindings.get(row),
        judged.item().slowest(),
        outcome == null
            ? null
            : (Integer) (int) outcome.charges().stream().filter(c -> c.charger() == row).count());
  }

  private BatteryDayResults.TodayResult today() {
    List<Finding> findings = projectFindings.stream().filter(BatteryDayTables::isOfToday).toList();
    return new BatteryDayResults.TodayResult(Finding.verdict(findings), findings);
  }

  /** Whether it is about the date of Today or Now. */
  static boolean isOfToday(Finding finding) {
    return finding.key() == BatteryDayFinding.NOW_OUTSIDE
        || finding.key() == BatteryDayFinding.TODAY_BLANK
        || finding.key() == BatteryDayFinding.TODAY_OTHER
        || finding.arguments().contains(BatteryDayInputs.PROJECT.column("now"))
        || finding.arguments().contains(BatteryDayInputs.PROJECT.column("today"));
  }

  private BatteryDayResults.RunResult run() {
    DayFrame day = plan.calendar().shown();
    return day == null
        ? new BatteryDayResults.RunResult(null, null, null, null, null, null, null, null, null)
        : new BatteryDayResults.RunResult(
            day.date(),
            day.location(),
            DaySettings.time(day.call()),
            DaySettings.time(day.wrap()),
            day.air().lowest(),
            day.air().highest(),
            BatteryDayPapers.heading(day, plan.now()),
            outcome == null && schedule.isEmpty() ? null : (Integer) schedule.size(),
            chargingList.attended());
  }

  /** The positions of the date, with no figure of one that a stop keeps out; then the loans. */
  private List<BatteryDayResults.LentRow> lentOut(List<BatteryDayResults.PositionResult> results) {
    List<BatteryDayResults.LentRow> rows = new ArrayList<>();
    DayFrame day = plan.calendar().shown();
    for (InputRow<BatteryDayInputs.Position> row : plan.inputs().positions().filled().toList()) {
      BatteryDayInputs.Position position = row.value();
      if (day != null && PositionJudge.isOn(position, day.date())) {
        BatteryDayResults.PositionResult result = results.get(row.number() - 1);
        Gate.Judged<PositionJudge.State> judged = build.positions().row(row.number());
        boolean fit = judged.fit();
        rows.add(
            new BatteryDayResults.LentRow(
                position.position() == null ? "#" + row.number() : position.position(),
                position.type(),
                position.department(),
                null,
                fit ? (Integer) judged.item().quantity() : null,
                fit ? result.runtime() : null,
                fit ? result.changeBelow() : null,
                fit ? result.changes() : null,
                result.verdict()));
      }
    }
    batteries.all().stream()
        .map(Gate.Judged::item)
        .filter(b -> b.use() == BatteryUse.LENT)
        .map(
            b ->
                new BatteryDayResults.LentRow(
                    BatteryNumbers.shown(b.number()),
                    b.type() == null ? "" : b.type().name(),
                    build.stock().row(b.row()).value().lentTo(),
                    build.stock().row(b.row()).value().backOn(),
                    null,
                    null,
                    null,
                    null,
                    null))
        .forEach(rows::add);
    return rows;
  }

  /** A bar for the batteries that go on together and come off together. */
  private List<BatteryDayResults.TimelineRow> timeline() {
    Map<List<Object>, List<Integer>> bars = new LinkedHashMap<>();
    // by battery and piece: in one moment it may come off one piece and go on another
    Map<List<Integer>, DayEvent> open = new HashMap<>();
    for (DayEvent event : outcome == null ? List.<DayEvent>of() : outcome.events()) {
      for (int number : event.off()) {
        DayEvent from = open.remove(List.of(number, event.unit()));
        bars.computeIfAbsent(List.of(from, event.hour()), k -> new ArrayList<>()).add(number);
      }
      event.on().forEach(n -> open.put(List.of(n, event.unit()), event));
    }
    List<BatteryDayResults.TimelineRow> rows = new ArrayList<>();
    bars.entrySet().stream()
        .sorted(
            Comparator.comparing(
                    (Map.Entry<List<Object>, List<Integer>> b) ->
                        positionName(unit((DayEvent) b.getKey().get(0)).position()))
                .thenComparing(b -> unit((DayEvent) b.getKey().get(0)).piece())
                .thenComparing(b -> ((DayEvent) b.getKey().get(0)).hour()))
        .forEach(
            b ->
                rows.add(
                    bar((DayEvent) b.getKey().get(0), b.getValue(), (Double) b.getKey().get(1))));
    return rows;
  }

  /** Where the planned batteries are, each half hour from the hour at which a day begins. */
  private List<BatteryDayResults.HourRow> hours() {
    List<BatteryDayResults.HourRow> rows = new ArrayList<>();
    if (outcome == null) {
      return rows;
    }
    Map<Integer, Double> arrivals = new HashMap<>();
    build.stock().gate().paper(StockList.StockBattery::isPlanned).fit().stream()
        .map(Gate.Judged::item)
        .forEach(b -> arrivals.put(b.number(), build.stock().arrival(b, plan.settings())));
    double now =
        plan.settings().now() == null
            ? Double.POSITIVE_INFINITY
            : plan.settings().hour(plan.settings().now());
    Set<List<Integer>> on = new HashSet<>();
    Set<Integer> dark = new HashSet<>();
    int told = 0;
    for (int i = 0; i < BatteryDayResults.HOURS.rows(); i++) {
      double hour = plan.settings().begins() + i / 2.0;
      long planned =
          arrivals.entrySet().stream()
              .filter(b -> b.getValue() <= hour)
              .filter(b -> hour < now || !goneNow.containsKey(b.getKey()))
              .count();
      while (told < outcome.events().size() && outcome.events().get(told).hour() <= hour) {
        DayEvent event = outcome.events().get(told);
        event.off().forEach(n -> on.remove(List.of(n, event.unit())));
        event.on().forEach(n -> on.add(List.of(n, event.unit())));
        dark.remove(event.unit());
        if (event.what() == DayEvent.What.DARK) {
          dark.add(event.unit());
        }
        told++;
      }
      Set<Integer> charging =
          outcome.charges().stream()
              .filter(c -> c.start() <= hour && hour < c.full())
              .map(DayEvent.Charge::battery)
              .collect(Collectors.toSet());
      on.forEach(n -> charging.remove(n.get(0)));
      rows.add(
          new BatteryDayResults.HourRow(
              DaySettings.time(hour),
              on.size(),
              charging.size(),
              (int) Math.max(0, planned - on.size() - charging.size()),
              dark.size()));
    }
    return rows;
  }

  /** Every position with a power at each nominal voltage of plates. */
  private List<BatteryDayResults.VoltageRow> voltages() {
    List<BatteryDayResults.VoltageRow> rows = new ArrayList<>();
    for (Gate.Judged<PositionJudge.State> judged : build.positions().all()) {
      PositionJudge.State state = judged.item();
      for (double volts : NOMINAL) {
        if (state.feed() != null) {
          rows.add(voltage(state, volts));
        }
      }
    }
    return rows;
  }

  private static BatteryDayResults.VoltageRow voltage(PositionJudge.State state, double volts) {
    double ohms = state.feed().leadOhms();
    boolean carried = volts >= ConstantWatts.collapseVolts(state.peak(), ohms);
    double there = carried ? ConstantWatts.loadVolts(state.peak(), ohms, volts) : Double.NaN;
    int series = state.connection() == BatteryConnection.SERIES ? state.atOnce() : 1;
    return new BatteryDayResults.VoltageRow(
        state.row().value().position(),
        state.peak(),
        volts,
        carried ? (Double) (state.peak() / there) : null,
        carried ? (Double) (volts - there) : null,
        carried ? (Double) (state.peak() / there * (volts - there)) : null,
        state.type().outputs().contains(volts / series));
  }

  private List<BatteryDayResults.HotSwapRow> hotSwap() {
    return build.positions().all().stream()
        .map(Gate.Judged::item)
        .filter(s -> s.connection() == BatteryConnection.HOT_SWAP && s.feed() != null)
        .map(
            s ->
                new BatteryDayResults.HotSwapRow(
                    s.row().value().position(),
                    s.atOnce(),
                    s.amps(),
                    s.maxAmps(),
                    s.amps() <= s.maxAmps(),
                    s.runtime(),
                    s.runtime() == null ? null : (Double) (s.atOnce() * s.runtime())))
        .toList();
  }

  private BatteryDayResults.TimelineRow bar(DayEvent from, List<Integer> numbers, double to) {
    UnitSpec unit = unit(from);
    return new BatteryDayResults.TimelineRow(
        positionName(unit.position()),
        unit.piece(),
        plan.types().ofRow(unit.type()).name(),
        names(numbers),
        DaySettings.time(from.hour()),
        DaySettings.time(to));
  }

  private BatteryDayResults.SummaryResult summary(
      List<BatteryDayResults.PositionResult> positions, List<IssueRow> issues) {
    int fit = batteries.paper(b -> true).fit().size();
    DayFrame day = plan.calendar().shown();
    boolean isWhole = day != null && build.isWhole(day.date());
    List<BatteryDayResults.PositionResult> filled =
        positions.stream().filter(Objects::nonNull).toList();
    return new BatteryDayResults.SummaryResult(
        IssueRow.worst(issues),
        outcome == null
            ? null
            : (Integer) (int) schedule.stream().filter(s -> s.what().isChange()).count(),
        outcome == null || !isWhole
            ? null
            : (Double)
                filled.stream()
                    .map(BatteryDayResults.PositionResult::dark)
                    .filter(Objects::nonNull)
                    .mapToDouble(d -> d)
                    .sum(),
        fit,
        batteries.all().size() - fit,
        plan.fewest() == null
                || !isWhole
                || !shortOf.keySet().containsAll(plan.fewest().together().keySet())
            ? null
            : (Integer) shortOf.values().stream().mapToInt(s -> s).sum(),
        (int) filled.stream().filter(p -> p.verdict() == Verdict.STOP).count(),
        outcome == null || !hasNext() ? null : (Integer) late());
  }
}
