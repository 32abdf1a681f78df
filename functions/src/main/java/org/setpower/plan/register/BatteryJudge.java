package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.setpower.base.EvaluationException;
import org.setpower.fleet.Ageing;
import org.setpower.fleet.ForecastBound;
import org.setpower.pack.Chemistry;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.register.BenchTests.Judged;
import org.setpower.plan.register.RegisterInputs.Battery;

/** What is wrong with one battery and what is proposed, in the order of the register's rules. */
final class BatteryJudge {
  /** A modified z-score beyond it stands apart: Iglewicz and Hoaglin (1993). */
  private static final double APART = -3.5;

  /** A rated energy further from that of its type is another type, or wrong: common practice. */
  private static final double RATED_ROOM = 0.05;

  /** A new battery may give a little more than its label, no more: common practice. */
  private static final double HIGHEST_HEALTH = 1.05;

  /** Two tests of one day further apart contradict each other: common practice. */
  private static final double SAME_DAY_ROOM = 0.05;

  /** A lower share of the resistance of its type is a wrong figure: common practice. */
  private static final double LEAST_TIMES = 1.0 / 3;

  private static final double ROUNDING = 1e-9;

  /** Advice on tests, for batteries that may be used. */
  private static final Set<FindingKey> MILDER_THAN_STOP =
      Set.of(
          RegisterFinding.BELOW_WATCH,
          RegisterFinding.BELOW_TYPE,
          RegisterFinding.BELOW_TYPE_AND_WATCH,
          RegisterFinding.DECIDED_WATCH,
          RegisterFinding.NOT_TESTED,
          RegisterFinding.NOT_TESTED_HELD,
          RegisterFinding.WATCH_UNTESTED,
          RegisterFinding.WATCH_UNTESTED_HELD,
          RegisterFinding.DECIDED_WATCH_UNTESTED,
          RegisterFinding.DECIDED_WATCH_UNTESTED_HELD,
          RegisterFinding.CELLS_NONE,
          RegisterFinding.HEALTH_HIGH,
          RegisterFinding.SAME_DAY,
          RegisterFinding.RESISTANCE_LOW,
          RegisterFinding.NEWER_TEST,
          RegisterFinding.NEWER_TEST_LOW,
          RegisterFinding.UNDATED_TEST,
          RegisterFinding.UNDATED_TEST_LOW);

  /** Advice to balance and to repair. */
  private static final Set<FindingKey> MILDER_THAN_RETIRING =
      Set.of(RegisterFinding.IMBALANCE, RegisterFinding.RESISTANCE);

  /** Advice that would have somebody charge, repair or test a battery that can hurt. */
  private static final Set<FindingKey> MILDER_THAN_DANGER =
      Stream.of(
              MILDER_THAN_STOP,
              MILDER_THAN_RETIRING,
              Set.of(
                  RegisterFinding.NEEDS_SERVICE,
                  RegisterFinding.NOT_CHARGING,
                  RegisterFinding.INCIDENT_SERVICE))
          .flatMap(Set::stream)
          .collect(Collectors.toUnmodifiableSet());

  /** What is said of a battery that is lost. */
  private static final Set<FindingKey> OF_LOST =
      Set.of(
          RegisterFinding.LOST, RegisterFinding.ENTER_INCIDENT, RegisterFinding.CONDITION_CLOSED);

  private final Settings settings;
  private final InputRow<Battery> row;
  private final Battery battery;
  private final String serial;
  private final BenchTests bench;
  private final Incidents incidents;
  private final List<Finding> findings = new ArrayList<>();
  private Status proposed = Status.KEEP;

  /**
   * What is known of the batteries of one type.
   *
   * @param twice whether two rows have its name
   * @param chemistry null where the type or its chemistry is not known
   * @param limits null where the type, its chemistry or its limits are not known
   * @param rated median of the rated energies, Wh; null with fewer than two
   * @param cells most cell voltages in a test of the type
   * @param counting tests that count, one a battery
   * @param resistances newest tests with a resistance, one a battery
   */
  record Type(
      boolean known,
      boolean twice,
      Chemistry chemistry,
      CellLimits limits,
      Double rated,
      int cells,
      BenchTests.Peers counting,
      BenchTests.Peers resistances) {}

  /**
   * What is known of a battery.
   *
   * @param findings without those of the gate, in any order
   * @param gone whether it is retired or lost, and in no count and on no list
   * @param tested day of the test that counts, null without one
   * @param due day on which that test gets too old
   * @param imbalance V
   * @param resistance mΩ
   * @param timesType times the median of its type, null where not compared
   */
  record State(
      List<Finding> findings,
      Status proposed,
      Status status,
      boolean gone,
      LocalDate tested,
      LocalDate due,
      Double health,
      Double cyclesLeft,
      Double imbalance,
      Double resistance,
      Double timesType,
      Boolean compared) {}

  BatteryJudge(Settings settings, InputRow<Battery> row, BenchTests bench, Incidents incidents) {
    this.settings = settings;
    this.row = row;
    this.battery = row.value();
    this.serial = Identity.of(battery.serial());
    this.bench = bench;
    this.incidents = incidents;
  }

  /** Adds a finding and the state that it calls for; the stricter state stays. */
  void add(Status status, Finding finding) {
    findings.add(finding);
    atLeast(status);
  }

  private void add(Status status, FindingKey key, Object... arguments) {
    add(status, Finding.of(key, arguments));
  }

  private void atLeast(Status status) {
    if (status.compareTo(proposed) > 0) {
      proposed = status;
    }
  }

  /**
   * Judges the battery.
   *
   * @param twice whether another row has its serial
   */
  State judge(Type type, boolean twice) {
    if (twice) {
      atLeast(Status.QUARANTINE);
    }
    if (!row.findings().isEmpty() || !settings.stops().isEmpty()) {
      atLeast(Status.UNCLEAR);
    }
    judgeType(type);
    judgeCondition();
    incidents.judge(row, this);
    LocalDate damaged = incidents.lastOfCells(row);
    Optional<Judged> cells = bench.newestCells(serial, damaged);
    Optional<Judged> resistance = bench.newestResistance(serial, damaged);
    Optional<Judged> counting = bench.counting(serial);
    if (type.limits() != null) {
      judgeCells(type.limits(), cells);
    }
    judgeMeasured(type, counting);
    Double times = judgeResistance(type, resistance);
    if (isRatedAlike(type)) {
      judgeHealth(type, counting);
    } else {
      add(Status.UNCLEAR, RegisterFinding.RATED_UNLIKE, battery.energy(), type.rated());
    }
    for (Judged test : bench.of(serial)) {
      if (test.row().isUnreadable()) {
        add(Status.UNCLEAR, RegisterFinding.TEST_UNCLEAR, (double) test.row().number());
      }
    }
    judgeTested(counting);
    Status status = decide();
    boolean gone = isGone(battery, settings) || status == Status.LOST;
    boolean moved = mayBeMoved(twice);
    keepStrictest(twice, status);
    judgePaperwork(status, moved);
    if (twice && status != Status.RETIRE) {
      // which of the rows is right is the only question, besides what can hurt
      findings.removeIf(f -> f.severity() != Severity.DANGER);
    }
    return new State(
        List.copyOf(findings),
        proposed,
        status,
        gone,
        counting.map(c -> c.test().date()).orElse(null),
        counting.map(c -> c.test().date().plusDays(settings.validDays())).orElse(null),
        counting.map(Judged::health).orElse(null),
        counting.map(c -> cyclesLeft(type, c.health())).orElse(null),
        cells.map(Judged::spread).orElse(null),
        resistance.map(r -> r.test().resistance()).orElse(null),
        times,
        resistance.isEmpty() ? null : (Boolean) (times != null));
  }

  private void judgeType(Type type) {
    String name = battery.type();
    if (name == null) {
      return;
    }
    if (!type.known()) {
      add(Status.UNCLEAR, RegisterFinding.TYPE_UNKNOWN, name);
    } else if (type.twice()) {
      add(Status.UNCLEAR, RegisterFinding.TYPE_TWICE, name);
    } else if (type.chemistry() == null) {
      add(Status.UNCLEAR, RegisterFinding.TYPE_CHEMISTRY, name);
    } else if (type.limits() == null) {
      add(Status.UNCLEAR, RegisterFinding.TYPE_LIMITS, name, type.chemistry().word());
    }
  }

  private void judgeCondition() {
    if (row.unreadable().contains("condition")) {
      add(Status.QUARANTINE, RegisterFinding.CONDITION_UNKNOWN);
    } else if (battery.condition() == null) {
      add(Status.NOT_INSPECTED, RegisterFinding.NOT_INSPECTED);
    } else if (battery.condition() == Condition.RECALLED) {
      add(Status.QUARANTINE, RegisterFinding.RECALLED);
    } else if (battery.condition() == Condition.NOT_CHARGING) {
      add(Status.SERVICE, RegisterFinding.NOT_CHARGING);
    } else {
      String word = battery.condition().word();
      switch (battery.condition().consequence()) {
        case QUARANTINE -> add(Status.QUARANTINE, RegisterFinding.DAMAGED, word);
        case RETIRE_ONLY -> add(Status.QUARANTINE, RegisterFinding.RETIRE_ONLY, word);
        case SERVICE -> add(Status.SERVICE, RegisterFinding.NEEDS_SERVICE, word);
        case LOST -> add(Status.LOST, RegisterFinding.LOST);
        case NONE -> {}
      }
    }
    if (battery.inspected() != null && battery.inspected().isAfter(settings.asOf())) {
      add(Status.NOT_INSPECTED, RegisterFinding.INSPECTED_LATER, battery.inspected());
    } else if (battery.condition() == Condition.FINE && battery.outTo() == null) {
      judgeInspection();
    }
    if (battery.returned() != null && battery.returned().isAfter(settings.asOf())) {
      add(Status.NOT_INSPECTED, RegisterFinding.RETURNED_LATER, battery.returned());
    } else if (battery.returned() != null
        && battery.outTo() != null
        && (battery.inspected() == null || battery.returned().isAfter(battery.inspected()))) {
      add(Status.UNCLEAR, RegisterFinding.RETURNED_OUT, battery.returned(), battery.outTo());
    }
  }

  /** Fine is what an inspection found: of a known day, by a role, recent, after the last return. */
  private void judgeInspection() {
    LocalDate inspected = battery.inspected();
    if (inspected == null && battery.inspectedBy() == null) {
      add(Status.NOT_INSPECTED, RegisterFinding.INSPECTION_BLANK);
    } else if (inspected == null || battery.inspectedBy() == null) {
      String blank = inspected == null ? "inspected" : "inspectedBy";
      add(
          Status.NOT_INSPECTED,
          RegisterFinding.INSPECTION_PART,
          RegisterInputs.BATTERIES.column(blank));
    } else if (battery.backBy() != null) {
      // the register has no clock: only what is cleared after it says that it was inspected
      add(Status.NOT_INSPECTED, RegisterFinding.RETURN_PART, battery.backBy());
    } else if (battery.returned() != null && battery.returned().isAfter(inspected)) {
      add(
          Status.NOT_INSPECTED,
          RegisterFinding.INSPECTION_BEFORE_RETURN,
          battery.returned(),
          inspected);
    } else if (inspected.plusDays(settings.inspectionDays()).isBefore(settings.asOf())) {
      add(
          Status.NOT_INSPECTED,
          RegisterFinding.INSPECTION_OLD,
          inspected,
          (double) settings.inspectionDays());
    }
  }

  /** Any test counts, however old or cold: a cell once outside its limits stays suspect. */
  private void judgeCells(CellLimits limits, Optional<Judged> newest) {
    Optional<Double> outside =
        bench.of(serial).stream()
            .filter(t -> t.outside(limits).isPresent())
            .filter(this::isSuspect)
            .map(t -> t.outside(limits).orElseThrow())
            .max(limits.furthest());
    Optional<Double> apart =
        bench.of(serial).stream()
            .filter(t -> t.cells() > 1 && t.spread() > limits.apart() + ROUNDING)
            .filter(this::isSuspect)
            .map(Judged::spread)
            .max(Comparator.naturalOrder());
    if (outside.isPresent()) {
      add(
          Status.QUARANTINE,
          RegisterFinding.CELL_OUTSIDE,
          outside.get(),
          limits.lowest(),
          limits.highest());
    } else if (apart.isPresent()) {
      add(Status.QUARANTINE, RegisterFinding.CELLS_APART, apart.get(), limits.apart());
    }
    if (newest.isPresent() && newest.get().spread() > limits.spread() + ROUNDING) {
      add(Status.SERVICE, RegisterFinding.IMBALANCE, newest.get().spread(), limits.spread());
    }
  }

  private boolean isSuspect(Judged test) {
    return test.test().date() == null || !incidents.isReleasedSince(row, test.test().date());
  }

  private boolean isRatedAlike(Type type) {
    return type.rated() == null
        || battery.energy() == null
        || Math.abs(battery.energy() - type.rated()) <= RATED_ROOM * type.rated() + ROUNDING;
  }

  /** A cell that was not measured, or not when the test says, may be the bad one. */
  private void judgeMeasured(Type type, Optional<Judged> counting) {
    if (counting.isEmpty()) {
      return;
    }
    if (counting.get().cells() == 0
        && type.cells() > 0
        && isValid(counting)
        && bench.of(serial).stream().noneMatch(t -> t.cells() > 0 && isValid(t))) {
      add(Status.KEEP, RegisterFinding.CELLS_NONE, (double) settings.validDays());
    }
    if (counting.get().cells() > 0 && counting.get().cells() < type.cells()) {
      add(
          Status.KEEP,
          RegisterFinding.CELLS_MISSING,
          (double) counting.get().cells(),
          (double) type.cells());
    }
    boolean outside = findings.stream().anyMatch(f -> f.key() == RegisterFinding.CELL_OUTSIDE);
    boolean lithiumIon = type.chemistry() == Chemistry.LI_ION || type.chemistry() == Chemistry.NCA;
    if (lithiumIon && !outside) {
      Double charge = counting.get().test().charge();
      counting
          .get()
          .contradicting()
          .ifPresent(v -> add(Status.UNCLEAR, RegisterFinding.CELLS_CHARGE, v, charge));
    }
  }

  private Double judgeResistance(Type type, Optional<Judged> newest) {
    Optional<Double> median = newest.flatMap(type.resistances()::median);
    if (median.isEmpty() || median.get() <= 0) {
      return null;
    }
    double resistance = newest.get().test().resistance();
    double times = resistance / median.get();
    if (type.limits() != null && times > type.limits().resistance() + ROUNDING) {
      add(
          Status.SERVICE,
          RegisterFinding.RESISTANCE,
          resistance,
          median.get(),
          type.limits().resistance());
    } else if (times < LEAST_TIMES) {
      add(Status.KEEP, RegisterFinding.RESISTANCE_LOW, resistance, median.get());
    }
    return times;
  }

  private void judgeHealth(Type type, Optional<Judged> counting) {
    if (counting.isEmpty()) {
      return;
    }
    double health = counting.get().health();
    boolean apart = type.counting().score(counting.get()).orElse(0.0) < APART;
    if (health < settings.retireBelow()) {
      add(Status.RETIRE, RegisterFinding.BELOW_RETIRE, health, settings.retireBelow());
    } else if (health < settings.watchBelow()) {
      add(
          Status.WATCH,
          apart && isValid(counting)
              ? RegisterFinding.BELOW_TYPE_AND_WATCH
              : RegisterFinding.BELOW_WATCH,
          health,
          settings.watchBelow());
    } else if (apart) {
      add(Status.WATCH, RegisterFinding.BELOW_TYPE, health);
    } else if (health > HIGHEST_HEALTH + ROUNDING) {
      add(Status.KEEP, RegisterFinding.HEALTH_HIGH, health, HIGHEST_HEALTH);
    }
    if (bench.sameDay(serial, counting.get()).stream()
        .anyMatch(t -> t.health() > health + SAME_DAY_ROOM + ROUNDING)) {
      add(Status.KEEP, RegisterFinding.SAME_DAY, counting.get().test().date(), health);
    }
  }

  /** A battery that stays in for another reason is not asked for a test. */
  private void judgeTested(Optional<Judged> counting) {
    if (!isValid(counting) && proposed.compareTo(Status.NOT_TESTED) < 0) {
      boolean held = settings.untested() == UntestedRule.HOLD;
      double days = settings.validDays();
      findings.removeIf(f -> f.key() == RegisterFinding.BELOW_TYPE);
      if (findings.removeIf(f -> f.key() == RegisterFinding.BELOW_WATCH)) {
        add(
            Status.NOT_TESTED,
            held ? RegisterFinding.WATCH_UNTESTED_HELD : RegisterFinding.WATCH_UNTESTED,
            counting.orElseThrow().health(),
            settings.watchBelow(),
            days);
      } else if (battery.decided() == Decision.WATCH) {
        add(
            Status.NOT_TESTED,
            held
                ? RegisterFinding.DECIDED_WATCH_UNTESTED_HELD
                : RegisterFinding.DECIDED_WATCH_UNTESTED,
            days);
      } else {
        add(
            Status.NOT_TESTED,
            held ? RegisterFinding.NOT_TESTED_HELD : RegisterFinding.NOT_TESTED,
            days);
      }
    }
    judgeRefused(counting);
  }

  private boolean isValid(Optional<Judged> counting) {
    return counting.isPresent() && isValid(counting.get());
  }

  /** Whether a test was made, and is not too old. */
  private boolean isValid(Judged test) {
    LocalDate day = test.test().date();
    return day != null
        && !day.isAfter(settings.asOf())
        && !day.plusDays(settings.validDays()).isBefore(settings.asOf());
  }

  /** A newer test that is not compared may say more than the one that counts: nobody passes it. */
  private void judgeRefused(Optional<Judged> counting) {
    if (proposed.compareTo(Status.NOT_TESTED) > 0) {
      return;
    }
    LocalDate day = counting.map(c -> c.test().date()).orElse(null);
    bench
        .refusedAfter(serial, day)
        .ifPresent(
            r ->
                refused(
                    r,
                    RegisterFinding.NEWER_TEST,
                    RegisterFinding.NEWER_TEST_LOW,
                    r.test().date(),
                    r.findings().get(0)));
    bench
        .undated(serial)
        .ifPresent(
            r ->
                refused(
                    r,
                    RegisterFinding.UNDATED_TEST,
                    RegisterFinding.UNDATED_TEST_LOW,
                    r.findings().get(0)));
  }

  /**
   * A low one keeps the battery in, whatever the house's rule is; one whose figure is not known
   * does where the house keeps batteries in that are not tested.
   */
  private void refused(Judged test, FindingKey key, FindingKey low, Object... arguments) {
    boolean known =
        test.share() != null
            && test.findings().stream().noneMatch(f -> f.key() == RegisterFinding.TEST_OVER_RATING);
    boolean holds =
        known
            ? test.share() < settings.retireBelow() - ROUNDING
            : settings.untested() == UntestedRule.HOLD;
    add(holds ? Status.NOT_TESTED : Status.KEEP, holds ? low : key, arguments);
  }

  /** Whether it was retired on a day that has come. */
  static boolean isGone(Battery battery, Settings settings) {
    return battery.retired() != null && !battery.retired().isAfter(settings.asOf());
  }

  /** What a stricter finding leaves no room for is not said: two advices are none. */
  private void keepStrictest(boolean twice, Status status) {
    if (isGone(battery, settings)) {
      findings.removeIf(f -> f.key() != RegisterFinding.RETIRED);
    } else if (status == Status.LOST) {
      findings.removeIf(f -> !OF_LOST.contains(f.key()));
    } else if (twice || isDangerous(findings)) {
      findings.removeIf(f -> MILDER_THAN_DANGER.contains(f.key()));
    } else if (Stream.concat(findings.stream(), row.findings().stream())
        .anyMatch(f -> f.severity() == Severity.STOP)) {
      boolean retires = findings.stream().anyMatch(f -> f.key() == RegisterFinding.BELOW_RETIRE);
      findings.removeIf(
          f ->
              MILDER_THAN_STOP.contains(f.key())
                  || retires && MILDER_THAN_RETIRING.contains(f.key()));
    }
  }

  private static boolean isDangerous(List<Finding> findings) {
    return findings.stream().anyMatch(f -> f.severity() == Severity.DANGER);
  }

  private Status decide() {
    if (battery.retired() != null && !isGone(battery, settings)) {
      add(Status.UNCLEAR, RegisterFinding.RETIRED_LATER, battery.retired());
    } else if (battery.retired() != null || row.unreadable().contains("retired")) {
      add(proposed, RegisterFinding.RETIRED, Incidents.named(battery.retired()));
    }
    Decision decision = battery.decided();
    boolean stricter = decision != null && decision.isStricterThan(proposed);
    if (stricter) {
      findings.add(
          switch (decision) {
            case WATCH -> Finding.of(RegisterFinding.DECIDED_WATCH);
            case QUARANTINE -> Finding.of(RegisterFinding.DECIDED_QUARANTINE);
            default -> Finding.of(RegisterFinding.DECIDED, decision.word());
          });
    } else if (decision != null && decision.status() != proposed && !isWatchedToo(decision)) {
      findings.add(Finding.of(RegisterFinding.DECISION_MILDER, decision.word(), proposed.word()));
    }
    if (isGone(battery, settings)) {
      return Status.RETIRE;
    }
    return stricter ? decision.status() : proposed;
  }

  /** Watched and not tested are two things to do, and neither contradicts the other. */
  private boolean isWatchedToo(Decision decision) {
    return decision == Decision.WATCH && proposed == Status.NOT_TESTED;
  }

  private void judgePaperwork(Status status, boolean moved) {
    if (status == Status.LOST) {
      return;
    }
    String outTo = battery.outTo();
    boolean out = row.cells().containsKey("outTo");
    if (out && !moved) {
      findings.add(Finding.of(RegisterFinding.OUT_DANGER, Incidents.named(outTo)));
    } else if (out && status.compareTo(Status.NOT_INSPECTED) >= 0 && status != Status.UNCLEAR) {
      findings.add(Finding.of(RegisterFinding.OUT_UNFIT, Incidents.named(outTo)));
    }
    if (out && battery.backBy() != null && battery.backBy().isBefore(settings.asOf())) {
      findings.add(Finding.of(RegisterFinding.OVERDUE, Incidents.named(outTo), battery.backBy()));
    }
    if ((status == Status.RETIRE || status == Status.SERVICE)
        && battery.retired() == null
        && battery.warranty() != null
        && !battery.warranty().isBefore(settings.asOf())) {
      findings.add(Finding.of(RegisterFinding.WARRANTY, battery.warranty()));
    }
    if (Boolean.FALSE.equals(battery.un383())) {
      findings.add(Finding.of(RegisterFinding.NO_SUMMARY));
    }
  }

  /** Only one that is recalled and else sound travels back by itself. */
  private boolean mayBeMoved(boolean twice) {
    return !twice
        && findings.stream()
            .filter(f -> f.severity() == Severity.DANGER)
            .allMatch(
                f ->
                    f.key() == RegisterFinding.RECALLED
                        || (f.key() == RegisterFinding.INCIDENT_OPEN
                                || f.key() == RegisterFinding.INCIDENT_NOT_CLOSED)
                            && f.arguments().get(0).equals(Condition.RECALLED.word()));
  }

  /** The cells of the source are lithium-ion with nickel; others age in another way. */
  private Double cyclesLeft(Type type, double health) {
    if (type.chemistry() != Chemistry.LI_ION || battery.cycles() == null || battery.cycles() <= 0) {
      return null;
    }
    try {
      return Ageing.cyclesLeft(
          battery.cycles(), health, settings.retireBelow(), ForecastBound.LEAST);
    } catch (EvaluationException noAnswer) {
      return null;
    }
  }

  /** Whether a condition or an incident leaves only retirement. */
  static boolean isRetireOnly(List<Finding> findings) {
    return findings.stream()
        .anyMatch(
            f ->
                f.key() == RegisterFinding.RETIRE_ONLY
                    || f.key() == RegisterFinding.INCIDENT_RETIRE_ONLY);
  }
}
