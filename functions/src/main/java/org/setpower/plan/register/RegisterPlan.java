package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.pack.Chemistry;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Issues;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.ResultRows;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.register.RegisterInputs.Battery;
import org.setpower.plan.register.RegisterInputs.BatteryType;
import org.setpower.plan.register.RegisterInputs.BenchTest;
import org.setpower.plan.register.RegisterInputs.Checkout;
import org.setpower.plan.register.RegisterInputs.Incident;
import org.setpower.plan.register.RegisterInputs.Limit;

/** The battery register, calculated once: every verdict, every paper, every count. */
public final class RegisterPlan {
  /** The model of the sheet. */
  public static final PlanModel MODEL = new Model();

  /** A box to tick on paper. */
  private static final String BOX = "☐";

  /** Watched, and not tested. */
  private static final List<FindingKey> WATCHED =
      List.of(
          RegisterFinding.WATCH_UNTESTED,
          RegisterFinding.WATCH_UNTESTED_HELD,
          RegisterFinding.DECIDED_WATCH_UNTESTED,
          RegisterFinding.DECIDED_WATCH_UNTESTED_HELD);

  /** Findings of a battery that are an issue of the table where they are to be corrected. */
  private static final Set<FindingKey> OF_OTHER_TABLES =
      Set.of(
          RegisterFinding.TYPE_TWICE,
          RegisterFinding.TYPE_CHEMISTRY,
          RegisterFinding.TYPE_LIMITS,
          RegisterFinding.TEST_UNCLEAR);

  private final RegisterInputs inputs;
  private final Settings settings;
  private final Gate<InputRow<BatteryType>> types;
  private final Gate<InputRow<Limit>> limits;
  private final BenchTests bench;
  private final Incidents incidents;
  private final Map<Integer, BatteryJudge.State> states = new LinkedHashMap<>();
  private final Gate<InputRow<Battery>> gate;

  /** By which lists are sorted: the serial as it is typed, and as {@link Identity} sorts it. */
  private final Map<String, String> order = new HashMap<>();

  private RegisterPlan(RegisterInputs inputs) {
    this.inputs = inputs;
    settings = Settings.of(inputs.project().rows().get(0));
    types = typeGate(inputs.types());
    limits = CellLimits.gate(inputs.limits());
    List<InputRow<Battery>> rows = inputs.batteries().filled().toList();
    Map<String, List<InputRow<Battery>>> bySerial =
        rows.stream().collect(Collectors.groupingBy(RegisterPlan::serial));
    rows.forEach(r -> order.put(r.value().serial(), Identity.padded(serial(r))));
    bench = new BenchTests(settings, inputs.tests(), bySerial);
    Map<String, Integer> cells = cells(rows);
    incidents = new Incidents(settings, inputs.incidents(), bench, rows, cells);
    Map<String, BatteryJudge.Type> known = known(rows, cells);
    BatteryJudge.Type unknown =
        new BatteryJudge.Type(
            false,
            false,
            null,
            null,
            null,
            0,
            new BenchTests.Peers(List.of()),
            new BenchTests.Peers(List.of()));
    Map<String, String> zeros = zeros(bySerial.keySet());
    for (InputRow<Battery> row : rows) {
      boolean twice = !serial(row).isEmpty() && bySerial.get(serial(row)).size() > 1;
      BatteryJudge judge = new BatteryJudge(settings, row, bench, incidents);
      String other = zeros.get(serial(row));
      if (other != null && row.cells().get("serial") instanceof Number) {
        judge.add(
            Status.UNCLEAR, Finding.of(RegisterFinding.SERIAL_ZEROS, row.value().serial(), other));
      }
      states.put(row.number(), judge.judge(known.getOrDefault(type(row), unknown), twice));
    }
    gate =
        new Gate<>(
            rows.stream()
                .map(r -> new Gate.Candidate<>(r.number(), r, serial(r), findings(r), false))
                .toList(),
            settings.stops());
  }

  /** Calculates the register from its ranges, in the order of {@link PlanModel#inputs()}. */
  public static PlanResult of(List<?> ranges) {
    return MODEL.calculate(ranges);
  }

  /**
   * The day of a register, and which of its batteries may be marked as inspected.
   *
   * @param ranges as {@link #of} takes them
   */
  public static Inspections inspections(List<?> ranges) {
    RegisterPlan plan = new RegisterPlan(read(ranges));
    return new Inspections(
        plan.settings.stops(),
        plan.settings.asOf(),
        plan.gate.all().stream().map(b -> Inspection.of(b.item(), b.findings())).toList());
  }

  /**
   * The answer of {@link #inspections}.
   *
   * @param stops what is wrong with the settings, so that nothing can be marked
   * @param day the day of the register
   * @param batteries all rows with a battery
   */
  public record Inspections(List<Finding> stops, LocalDate day, List<Inspection> batteries) {}

  private static RegisterInputs read(List<?> ranges) {
    return new RegisterInputs(
        RegisterInputs.PROJECT.read(ranges.get(0)),
        RegisterInputs.TYPES.read(ranges.get(1)),
        RegisterInputs.LIMITS.read(ranges.get(2)),
        RegisterInputs.BATTERIES.read(ranges.get(3)),
        RegisterInputs.TESTS.read(ranges.get(4)),
        RegisterInputs.INCIDENTS.read(ranges.get(5)),
        RegisterInputs.CHECKOUT.read(ranges.get(6)));
  }

  private List<Finding> findings(InputRow<Battery> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    findings.addAll(states.get(row.number()).findings());
    return findings;
  }

  private static String serial(InputRow<Battery> row) {
    return Identity.of(row.value().serial());
  }

  /** Serials with zeros before them, by what a number would leave of them. */
  private static Map<String, String> zeros(Set<String> serials) {
    Map<String, String> zeros = new HashMap<>();
    for (String serial : serials) {
      String without = SerialRange.withoutZeros(serial);
      if (!without.equals(serial)) {
        zeros.merge(without, serial, (a, b) -> a.compareTo(b) < 0 ? a : b);
      }
    }
    return zeros;
  }

  private static String type(InputRow<Battery> row) {
    return Identity.of(row.value().type());
  }

  private static Gate<InputRow<BatteryType>> typeGate(InputRows<BatteryType> rows) {
    return new Gate<>(
        rows.filled()
            .map(
                r ->
                    new Gate.Candidate<>(
                        r.number(), r, Identity.of(r.value().type()), r.findings(), false))
            .toList(),
        List.of());
  }

  /** The most cell voltages in a test of each type. */
  private Map<String, Integer> cells(List<InputRow<Battery>> rows) {
    Map<String, Integer> cells = new HashMap<>();
    for (InputRow<Battery> row : rows) {
      bench.of(serial(row)).forEach(t -> cells.merge(type(row), t.cells(), Math::max));
    }
    return cells;
  }

  /** Rated energies of each type, Wh, sorted. */
  private static Map<String, List<Double>> rated(List<InputRow<Battery>> rows) {
    return rows.stream()
        .filter(r -> r.value().energy() != null)
        .sorted(Comparator.comparing((InputRow<Battery> r) -> r.value().energy()))
        .collect(
            Collectors.groupingBy(
                RegisterPlan::type,
                Collectors.mapping(r -> r.value().energy(), Collectors.toList())));
  }

  /** The median of sorted figures; null with fewer than two. */
  private static Double median(List<Double> sorted) {
    int half = sorted.size() / 2;
    return sorted.size() < 2
        ? null
        : (Double)
            (sorted.size() % 2 == 1
                ? sorted.get(half)
                : (sorted.get(half - 1) + sorted.get(half)) / 2);
  }

  /** What is known of each type; a type with two rows has no limits. */
  private Map<String, BatteryJudge.Type> known(
      List<InputRow<Battery>> rows, Map<String, Integer> cells) {
    Map<String, List<Double>> rated = rated(rows);
    Map<Chemistry, CellLimits> used = CellLimits.used(limits);
    Map<String, Set<String>> serials =
        rows.stream()
            .collect(
                Collectors.groupingBy(
                    RegisterPlan::type,
                    Collectors.mapping(RegisterPlan::serial, Collectors.toSet())));
    Map<String, BatteryJudge.Type> known = new HashMap<>();
    for (Gate.Judged<InputRow<BatteryType>> row : types.all()) {
      String type = Identity.of(row.item().value().type());
      Set<String> own = serials.getOrDefault(type, Set.of());
      boolean twice =
          row.findings().stream().anyMatch(f -> f.key() == CommonFinding.DOUBLE_IDENTITY);
      Chemistry chemistry = row.item().value().chemistry();
      known.put(
          type,
          new BatteryJudge.Type(
              true,
              twice,
              twice ? null : chemistry,
              twice || chemistry == null ? null : used.get(chemistry),
              median(rated.getOrDefault(type, List.of())),
              cells.getOrDefault(type, 0),
              new BenchTests.Peers(own.stream().flatMap(s -> bench.counting(s).stream()).toList()),
              new BenchTests.Peers(
                  own.stream().flatMap(s -> bench.newestResistance(s, null).stream()).toList())));
    }
    known.remove("");
    return known;
  }

  /**
   * The state that papers print: a battery that does not pass the gate is neither keep nor watch.
   */
  private Status status(Gate.Judged<InputRow<Battery>> judged) {
    Status status = states.get(judged.row()).status();
    return judged.fit() || status.compareTo(Status.WATCH) > 0 ? status : Status.UNCLEAR;
  }

  private Action action(Gate.Judged<InputRow<Battery>> judged) {
    if (has(judged, RegisterFinding.OUT_DANGER)) {
      return Action.WARN;
    }
    if (has(judged, RegisterFinding.OUT_UNFIT)) {
      return Action.CALL_BACK;
    }
    return switch (status(judged)) {
      case KEEP, WATCH ->
          has(judged, RegisterFinding.OVERDUE)
              ? Action.ASK
              : has(judged, RegisterFinding.HEALTH_HIGH)
                  ? Action.CORRECT
                  : has(judged, RegisterFinding.NEWER_TEST)
                          || has(judged, RegisterFinding.UNDATED_TEST)
                          || has(judged, RegisterFinding.BELOW_TYPE)
                          || has(judged, RegisterFinding.CELLS_MISSING)
                          || has(judged, RegisterFinding.CELLS_NONE)
                          || has(judged, RegisterFinding.SAME_DAY)
                          || has(judged, RegisterFinding.RESISTANCE_LOW)
                      ? Action.TEST
                      : has(judged, RegisterFinding.BELOW_TYPE_AND_WATCH)
                          ? Action.TEST_AND_WATCH
                          : status(judged) == Status.WATCH ? Action.WATCH : null;
      case NOT_TESTED ->
          WATCHED.stream().anyMatch(k -> has(judged, k)) ? Action.TEST_AND_WATCH : Action.TEST;
      case NOT_INSPECTED -> Action.INSPECT;
      case UNCLEAR -> Action.CORRECT;
      case SERVICE -> Action.SERVICE;
      case RETIRE -> isGone(judged) ? null : Action.RETIRE;
      case LOST -> null;
      case QUARANTINE ->
          BatteryJudge.isRetireOnly(judged.findings()) ? Action.RETIRE : Action.QUARANTINE;
    };
  }

  private static boolean has(Gate.Judged<?> judged, FindingKey key) {
    for (Finding finding : judged.findings()) {
      if (finding.key() == key) {
        return true;
      }
    }
    return false;
  }

  /** Whether it is retired or lost, and in no count and on no list. */
  private boolean isGone(Gate.Judged<InputRow<Battery>> judged) {
    return states.get(judged.row()).gone();
  }

  /** Whether somebody has it who is not the job of the issue list. */
  private boolean isOutElsewhere(Gate.Judged<InputRow<Battery>> judged) {
    String job = Identity.of(settings.job());
    return isOut(judged)
        && (job.isEmpty()
            || !Identity.of(judged.item().value().outTo()).equals(job)
            || has(judged, RegisterFinding.OVERDUE));
  }

  private static boolean isOut(Gate.Judged<InputRow<Battery>> judged) {
    return judged.item().cells().containsKey("outTo");
  }

  /** All that the house still has. */
  private Gate.Paper<InputRow<Battery>> stock(Predicate<InputRow<Battery>> belongs) {
    return gate.paper(b -> !states.get(b.number()).gone() && belongs.test(b));
  }

  private List<ResultRows<?>> tables() {
    List<RegisterResults.CheckoutResult> checkout = align(inputs.checkout(), this::checkout);
    List<RegisterResults.Slip> slip = slip(checkout);
    List<RegisterResults.TypeResult> typeRows = align(inputs.types(), this::typeResult);
    List<RegisterResults.TestResult> testRows = align(inputs.tests(), this::testResult);
    Map<Integer, RegisterResults.IncidentResult> judged =
        incidents.results(
            gate.all().stream().map(Gate.Judged::item).toList(),
            types.all().stream()
                .map(t -> Identity.of(t.item().value().type()))
                .collect(Collectors.toSet()));
    List<Finding> head = headFindings();
    List<IssueRow> issues = issues(judged, checkout, head);
    int serials =
        (int)
            inputs
                .checkout()
                .filled()
                .map(r -> r.isUnreadable() ? "#" + r.number() : Identity.of(r.value().serial()))
                .distinct()
                .count();
    return List.of(
        new ResultRows<>(
            RegisterResults.PROJECT,
            List.of(
                new RegisterResults.ProjectResult(
                    Finding.verdict(settings.findings()),
                    settings.findings().stream().sorted(Finding.WORST_FIRST).toList()))),
        new ResultRows<>(RegisterResults.TYPES, typeRows),
        new ResultRows<>(RegisterResults.LIMITS, align(inputs.limits(), this::limitResult)),
        new ResultRows<>(RegisterResults.BATTERIES, align(inputs.batteries(), this::batteryResult)),
        new ResultRows<>(RegisterResults.TESTS, testRows),
        new ResultRows<>(
            RegisterResults.INCIDENTS, align(inputs.incidents(), r -> judged.get(r.number()))),
        new ResultRows<>(RegisterResults.ACTIONS, actions()),
        new ResultRows<>(RegisterResults.STOCKTAKE, stocktake()),
        new ResultRows<>(RegisterResults.CHECKOUT, checkout),
        new ResultRows<>(RegisterResults.SLIP, slip),
        new ResultRows<>(RegisterResults.HANDOVER, List.of(handover(slip.size(), serials, head))),
        new ResultRows<>(RegisterResults.SUMMARY, List.of(summary(typeRows, testRows, issues))),
        new ResultRows<>(RegisterResults.ISSUES, issues));
  }

  /** One result a row of the table, null for blank rows. */
  private static <T extends Record, R> List<R> align(
      InputRows<T> rows, Function<InputRow<T>, R> result) {
    List<R> results = new ArrayList<>(rows.rows().size());
    rows.rows().forEach(r -> results.add(r.isBlank() ? null : result.apply(r)));
    return results;
  }

  private RegisterResults.BatteryResult batteryResult(InputRow<Battery> row) {
    Gate.Judged<InputRow<Battery>> judged = gate.row(row.number());
    BatteryJudge.State state = states.get(row.number());
    return new RegisterResults.BatteryResult(
        judged.verdict(),
        status(judged),
        state.proposed(),
        judged.fit(),
        judged.findings(),
        action(judged),
        state.tested(),
        state.due(),
        state.health(),
        state.cyclesLeft(),
        state.imbalance(),
        state.resistance(),
        state.timesType(),
        state.compared());
  }

  private RegisterResults.TypeResult typeResult(InputRow<BatteryType> row) {
    Gate.Judged<InputRow<BatteryType>> judged = types.row(row.number());
    String type = Identity.of(row.value().type());
    Gate.Paper<InputRow<Battery>> paper = stock(b -> !type.isEmpty() && type(b).equals(type));
    List<Double> healths =
        both(paper).stream()
            .map(b -> states.get(b.row()).health())
            .filter(h -> h != null)
            .sorted()
            .toList();
    int fit = paper.fit().size();
    int comesBack =
        count(paper.withheld(), Status.SERVICE)
            + count(paper.withheld(), Status.NOT_TESTED)
            + count(paper.withheld(), Status.NOT_INSPECTED)
            // nobody buys for a row that is to be corrected
            + count(paper.withheld(), Status.UNCLEAR);
    Double required = row.value().required();
    List<Finding> findings = new ArrayList<>(judged.findings());
    Integer toBuy =
        required == null
            ? null
            : (Integer) Math.max(0, (int) Math.ceil(required) - fit - comesBack);
    if (required != null && required > fit) {
      findings.add(
          toBuy == 0
              ? Finding.of(RegisterFinding.TYPE_AWAITS, required, (double) fit, (double) comesBack)
              : Finding.of(
                  RegisterFinding.TYPE_SHORT,
                  required,
                  (double) fit,
                  (double) comesBack,
                  (double) toBuy));
    }
    return new RegisterResults.TypeResult(
        Finding.verdict(findings),
        findings.stream().sorted(Finding.WORST_FIRST).toList(),
        both(paper).size(),
        (int) both(paper).stream().filter(RegisterPlan::isOut).count(),
        fit,
        (int) paper.fit().stream().filter(b -> !isOut(b)).count(),
        count(paper.withheld(), Status.SERVICE),
        count(paper.withheld(), Status.QUARANTINE),
        mean(healths),
        healths.isEmpty() ? null : healths.get(0),
        toBuy);
  }

  private static <T> List<Gate.Judged<T>> both(Gate.Paper<T> paper) {
    List<Gate.Judged<T>> both = new ArrayList<>(paper.fit());
    both.addAll(paper.withheld());
    return both;
  }

  private int count(List<Gate.Judged<InputRow<Battery>>> rows, Status status) {
    return (int) rows.stream().filter(r -> status(r) == status).count();
  }

  /** The mean of sorted values: the order of rows must not change its last digit. */
  private static Double mean(List<Double> sorted) {
    return sorted.isEmpty()
        ? null
        : (Double) sorted.stream().mapToDouble(h -> h).average().orElseThrow();
  }

  private RegisterResults.LimitResult limitResult(InputRow<Limit> row) {
    Gate.Judged<InputRow<Limit>> judged = limits.row(row.number());
    CellLimits used = judged.fit() ? CellLimits.of(row.value()) : null;
    return new RegisterResults.LimitResult(
        judged.verdict(),
        judged.findings(),
        used == null ? null : (Double) used.lowest(),
        used == null ? null : (Double) used.highest());
  }

  private RegisterResults.TestResult testResult(InputRow<BenchTest> row) {
    BenchTests.Judged judged = bench.row(row.number());
    return new RegisterResults.TestResult(
        Finding.verdict(judged.findings()), judged.findings(), judged.compared(), judged.health());
  }

  private List<RegisterResults.ActionRow> actions() {
    return gate.all().stream()
        .filter(b -> action(b) != null)
        .map(
            b ->
                new RegisterResults.ActionRow(
                    b.item().value().serial(),
                    b.item().value().type(),
                    b.item().value().place(),
                    b.item().value().outTo(),
                    action(b),
                    b.verdict(),
                    b.findings()))
        // last by all that is shown, so that the order of rows never shows
        .sorted(
            Comparator.comparing(RegisterResults.ActionRow::action)
                .thenComparing(a -> text(a.place()))
                .thenComparing(a -> order.get(a.serial()))
                .thenComparing(RegisterResults.ActionRow::toString))
        // a serial that two rows have is one battery to look for
        .distinct()
        .toList();
  }

  private List<RegisterResults.StocktakeRow> stocktake() {
    return gate.all().stream()
        .filter(b -> !isGone(b) || isOut(b) && status(b) != Status.LOST)
        .map(
            b ->
                new RegisterResults.StocktakeRow(
                    isOut(b) ? null : b.item().value().place(),
                    b.item().value().outTo(),
                    b.item().value().serial(),
                    b.item().value().type(),
                    status(b),
                    b.verdict(),
                    b.fit(),
                    b.item().value().backBy(),
                    isOut(b) ? null : BOX))
        // what is out is not counted here, and stands behind all that is
        .sorted(
            Comparator.comparing((RegisterResults.StocktakeRow r) -> r.counted() == null)
                .thenComparing(r -> text(r.place()))
                .thenComparing(r -> order.get(r.serial()))
                .thenComparing(RegisterResults.StocktakeRow::toString))
        .toList();
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }

  private List<Gate.Judged<InputRow<Battery>>> found(InputRow<Checkout> row) {
    String serial = Identity.of(row.value().serial());
    return both(gate.paper(b -> !serial.isEmpty() && serial(b).equals(serial)));
  }

  private RegisterResults.CheckoutResult checkout(InputRow<Checkout> row) {
    List<Gate.Judged<InputRow<Battery>>> found = found(row);
    List<Finding> findings = new ArrayList<>(row.findings());
    if (found.isEmpty() && row.value().serial() != null) {
      findings.add(Finding.of(RegisterFinding.SLIP_SERIAL, row.value().serial()));
    }
    for (Gate.Judged<InputRow<Battery>> battery : found) {
      findings.addAll(battery.findings());
      if (isOutElsewhere(battery)) {
        Object who = Incidents.named(battery.item().value().outTo());
        findings.add(Finding.of(RegisterFinding.SLIP_OUT, who));
      }
    }
    if (incidents.missing() > 0 && !found.isEmpty()) {
      findings.add(Finding.of(RegisterFinding.SLIP_INCIDENTS, (double) incidents.missing()));
    }
    long same = inputs.checkout().filled().filter(r -> isSame(r, row)).count();
    if (same > 1 && !found.isEmpty()) {
      findings.add(Finding.of(RegisterFinding.SLIP_TWICE, (double) same));
    }
    boolean mayGoOut =
        !row.isUnreadable()
            && found.size() == 1
            && found.get(0).fit()
            && !isOutElsewhere(found.get(0));
    return new RegisterResults.CheckoutResult(
        Finding.verdict(findings),
        findings.stream().distinct().sorted(Finding.WORST_FIRST).toList(),
        mayGoOut);
  }

  private static boolean isSame(InputRow<Checkout> one, InputRow<Checkout> other) {
    return !one.isUnreadable()
        && Identity.of(one.value().serial()).equals(Identity.of(other.value().serial()));
  }

  /** What may go out, each serial once; by serial. */
  private List<RegisterResults.Slip> slip(List<RegisterResults.CheckoutResult> checkout) {
    Set<String> once = new HashSet<>();
    return inputs
        .checkout()
        .filled()
        .filter(r -> checkout.get(r.number() - 1).mayGoOut())
        .filter(r -> once.add(Identity.of(r.value().serial())))
        .map(this::slip)
        .sorted(
            Comparator.comparing(
                    (RegisterResults.Slip s) -> Identity.padded(Identity.of(s.serial())))
                .thenComparing(RegisterResults.Slip::toString))
        .toList();
  }

  /** A line of the paper for a battery that may go out. */
  private RegisterResults.Slip slip(InputRow<Checkout> row) {
    Gate.Judged<InputRow<Battery>> fit = found(row).get(0);
    Battery battery = fit.item().value();
    BatteryJudge.State state = states.get(fit.row());
    boolean tested = status(fit) != Status.NOT_TESTED;
    return new RegisterResults.Slip(
        battery.serial(),
        battery.type(),
        battery.energy(),
        tested ? state.health() : null,
        tested ? state.tested() : null,
        tested ? null : Status.NOT_TESTED,
        BOX,
        BOX);
  }

  /** What the head of the issue list lacks, once there are serials on it. */
  private List<Finding> headFindings() {
    if (inputs.checkout().filled().findAny().isEmpty()) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    if (settings.job() == null) {
      findings.add(Finding.of(RegisterFinding.SLIP_JOB));
    }
    if (settings.issue() == null) {
      findings.add(Finding.of(RegisterFinding.SLIP_NUMBER));
    }
    if (settings.jobBack() != null
        && !settings.asOf().equals(LocalDate.MAX)
        && settings.jobBack().isBefore(settings.asOf())) {
      findings.add(Finding.of(RegisterFinding.SLIP_BACK_PAST, settings.jobBack()));
    }
    return findings.stream().sorted(Finding.WORST_FIRST).toList();
  }

  private RegisterResults.Handover handover(int out, int serials, List<Finding> findings) {
    return new RegisterResults.Handover(
        Finding.verdict(findings),
        findings,
        settings.job(),
        settings.issue(),
        settings.jobBack(),
        settings.contact(),
        settings.asOf().equals(LocalDate.MAX) ? null : settings.asOf(),
        out,
        serials - out);
  }

  private List<IssueRow> issues(
      Map<Integer, RegisterResults.IncidentResult> judged,
      List<RegisterResults.CheckoutResult> checkout,
      List<Finding> head) {
    Issues issues = new Issues();
    issues.add(RegisterInputs.PROJECT.heading(), "1", settings.findings());
    types
        .all()
        .forEach(
            t -> add(issues, RegisterInputs.TYPES, t.row(), t.item().value().type(), t.findings()));
    limits
        .all()
        .forEach(
            l ->
                add(
                    issues,
                    RegisterInputs.LIMITS,
                    l.row(),
                    l.item().value().chemistry() == null
                        ? null
                        : l.item().value().chemistry().word(),
                    l.findings()));
    Set<List<Object>> said = new HashSet<>();
    for (Gate.Judged<InputRow<Battery>> b : gate.all()) {
      if (isGone(b) && !isOut(b) && !has(b, RegisterFinding.ENTER_INCIDENT)) {
        continue;
      }
      // what the settings stop is one issue of Project
      List<Finding> own =
          b.findings().stream()
              .filter(f -> !settings.stops().contains(f) && !OF_OTHER_TABLES.contains(f.key()))
              .toList();
      own.forEach(f -> said.addAll(causes(b, f)));
      add(issues, RegisterInputs.BATTERIES, b.row(), b.item().value().serial(), own);
    }
    inputs
        .tests()
        .filled()
        .forEach(
            t ->
                add(issues, RegisterInputs.TESTS, t.number(), t.value().serial(), unsaid(t, said)));
    inputs
        .incidents()
        .filled()
        .forEach(
            i ->
                add(
                    issues,
                    RegisterInputs.INCIDENTS,
                    i.number(),
                    i.value().serial() == null ? i.value().type() : i.value().serial(),
                    judged.get(i.number()).reasons().stream()
                        .filter(f -> f.key() != RegisterFinding.INCIDENT_ROW_OPEN)
                        .filter(f -> !said.contains(closing(i.value(), f)))
                        .toList()));
    issues.add(RegisterResults.HANDOVER.heading(), "1", head);
    for (InputRow<Checkout> c : inputs.checkout().filled().toList()) {
      // what is wrong with its battery is an issue of Batteries
      List<Finding> own =
          checkout.get(c.number() - 1).reasons().stream()
              .filter(f -> ofCheckout(f) || c.findings().contains(f))
              .toList();
      add(issues, RegisterInputs.CHECKOUT, c.number(), c.value().serial(), own);
    }
    return issues.rows(RegisterResults.ISSUES.rows());
  }

  /** What is wrong with a test, without what a finding of its battery says already. */
  private List<Finding> unsaid(InputRow<BenchTest> test, Set<List<Object>> said) {
    List<Finding> findings = bench.row(test.number()).findings();
    if (findings.isEmpty() || said.isEmpty()) {
      return findings;
    }
    String serial = Identity.of(test.value().serial());
    return findings.stream().filter(f -> !said.contains(List.of(serial, f))).toList();
  }

  /** What a finding of a battery says of rows of other tables, which is no issue of them too. */
  private static List<List<Object>> causes(Gate.Judged<InputRow<Battery>> battery, Finding f) {
    List<Object> arguments = f.arguments();
    if (arguments.isEmpty() || !(arguments.get(arguments.size() - 1) instanceof Finding cause)) {
      return List.of();
    }
    return List.of(
        f.key() == RegisterFinding.INCIDENT_NOT_CLOSED
            ? arguments
            : List.of(serial(battery.item()), cause));
  }

  /** A finding of a row of Incidents, as {@code INCIDENT_NOT_CLOSED} names it. */
  private static List<Object> closing(Incident incident, Finding finding) {
    Object word = incident.happened() == null ? "" : incident.happened().word();
    return List.of(word, Incidents.named(incident.date()), finding);
  }

  private static boolean ofCheckout(Finding finding) {
    return finding.key() == RegisterFinding.SLIP_SERIAL
        || finding.key() == RegisterFinding.SLIP_TWICE;
  }

  private static void add(
      Issues issues, InputTable<?> table, int row, String name, List<Finding> findings) {
    issues.add(table.heading(), name == null ? "#" + row : name, findings);
  }

  private RegisterResults.Summary summary(
      List<RegisterResults.TypeResult> typeRows,
      List<RegisterResults.TestResult> testRows,
      List<IssueRow> issues) {
    Gate.Paper<InputRow<Battery>> all = stock(b -> true);
    return new RegisterResults.Summary(
        IssueRow.worst(issues),
        both(all).size(),
        all.fit().size(),
        (int) all.fit().stream().filter(b -> !isOut(b)).count(),
        all.withheld().size(),
        count(all.withheld(), Status.QUARANTINE),
        count(all.withheld(), Status.RETIRE),
        count(all.withheld(), Status.SERVICE),
        count(all.withheld(), Status.NOT_INSPECTED),
        count(both(all), Status.NOT_TESTED),
        count(all.withheld(), Status.UNCLEAR),
        count(gate.all(), Status.LOST),
        incidents.missing(),
        mean(
            states.values().stream()
                .filter(s -> !s.gone())
                .map(BatteryJudge.State::health)
                .filter(h -> h != null)
                .sorted()
                .toList()),
        typeRows.stream()
            .filter(t -> t != null && t.toBuy() != null)
            .mapToInt(RegisterResults.TypeResult::toBuy)
            .sum(),
        (int) testRows.stream().filter(t -> t != null && !t.compared()).count());
  }

  /** The rows that a row of results is made of. */
  private int[] related(String table, int row, String source) {
    if (table.equals(source)) {
      return new int[] {row};
    }
    return switch (source) {
      case "project", "handover", "summary" -> new int[] {1};
      case "checkout" -> checkoutRows(table, row);
      case "slip" -> IntStream.rangeClosed(1, slip().size()).toArray();
      case "batteries" -> relatedBatteries(table, row);
      case "tests" -> ofBatteries(table, row, inputs.tests(), t -> Identity.of(t.serial()));
      case "types" -> {
        Set<String> wanted = new HashSet<>();
        batteryRows(table, row).forEach(b -> wanted.add(type(b)));
        yield numbers(inputs.types(), r -> wanted.contains(Identity.of(r.type())));
      }
      default -> filledRows(source);
    };
  }

  private List<InputRow<Battery>> batteryRows(String table, int row) {
    return Arrays.stream(relatedBatteries(table, row))
        .mapToObj(n -> inputs.batteries().rows().get(n - 1))
        .toList();
  }

  private int[] relatedBatteries(String table, int row) {
    return switch (table) {
      case "batteries" -> new int[] {row};
      case "types" -> {
        String type = Identity.of(inputs.types().rows().get(row - 1).value().type());
        yield numbers(inputs.batteries(), b -> Identity.of(b.type()).equals(type));
      }
      case "tests" -> serialRows(inputs.tests().rows().get(row - 1).value().serial());
      case "actions" -> serialRows(actions().get(row - 1).serial());
      case "stocktake" -> serialRows(stocktake().get(row - 1).serial());
      case "slip" -> serialRows(slip().get(row - 1).serial());
      case "checkout" -> serialRows(inputs.checkout().rows().get(row - 1).value().serial());
      default -> numbers(inputs.batteries(), b -> true);
    };
  }

  private List<RegisterResults.Slip> slip() {
    return slip(align(inputs.checkout(), this::checkout));
  }

  private int[] checkoutRows(String table, int row) {
    if (!table.equals("slip")) {
      return numbers(inputs.checkout(), c -> true);
    }
    String serial = Identity.of(slip().get(row - 1).serial());
    return numbers(inputs.checkout(), c -> Identity.of(c.serial()).equals(serial));
  }

  private int[] serialRows(String serial) {
    return numbers(inputs.batteries(), b -> Identity.of(b.serial()).equals(Identity.of(serial)));
  }

  private <T extends Record> int[] ofBatteries(
      String table, int row, InputRows<T> rows, Function<T, String> serial) {
    Set<String> serials =
        batteryRows(table, row).stream().map(RegisterPlan::serial).collect(Collectors.toSet());
    return numbers(rows, r -> serials.contains(serial.apply(r)));
  }

  private static <T extends Record> int[] numbers(InputRows<T> rows, Predicate<T> belongs) {
    return rows.filled().filter(r -> belongs.test(r.value())).mapToInt(InputRow::number).toArray();
  }

  private int[] filledRows(String table) {
    List<? extends InputRow<?>> rows =
        switch (table) {
          case "limits" -> inputs.limits().rows();
          case "incidents" -> inputs.incidents().rows();
          default -> List.of();
        };
    return rows.stream().filter(r -> !r.isBlank()).mapToInt(InputRow::number).toArray();
  }

  /** The register as the function of the sheet and the tests see it. */
  private static final class Model implements PlanModel {
    @Override
    public String name() {
      return "register";
    }

    @Override
    public String title() {
      return "battery register";
    }

    @Override
    public List<InputTable<?>> inputs() {
      return List.of(
          RegisterInputs.PROJECT,
          RegisterInputs.TYPES,
          RegisterInputs.LIMITS,
          RegisterInputs.BATTERIES,
          RegisterInputs.TESTS,
          RegisterInputs.INCIDENTS,
          RegisterInputs.CHECKOUT);
    }

    @Override
    public List<ResultTable<?>> results() {
      return List.of(
          RegisterResults.PROJECT,
          RegisterResults.TYPES,
          RegisterResults.LIMITS,
          RegisterResults.BATTERIES,
          RegisterResults.TESTS,
          RegisterResults.INCIDENTS,
          RegisterResults.ACTIONS,
          RegisterResults.STOCKTAKE,
          RegisterResults.CHECKOUT,
          RegisterResults.SLIP,
          RegisterResults.HANDOVER,
          RegisterResults.SUMMARY,
          RegisterResults.ISSUES);
    }

    @Override
    public List<FindingKey> findings() {
      return List.of(RegisterFinding.values());
    }

    @Override
    public PlanResult calculate(List<?> ranges) {
      RegisterInputs read = read(ranges);
      List<InputRows<?>> all =
          List.of(
              read.project(),
              read.types(),
              read.limits(),
              read.batteries(),
              read.tests(),
              read.incidents(),
              read.checkout());
      if (all.stream().anyMatch(r -> r.fault().isPresent())) {
        return new PlanResult(all, results(), List::of, (table, row, source) -> new int[0]);
      }
      RegisterPlan plan = new RegisterPlan(read);
      return new PlanResult(all, results(), plan::tables, plan::related);
    }
  }
}
