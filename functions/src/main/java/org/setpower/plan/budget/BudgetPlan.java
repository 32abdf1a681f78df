package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.setpower.plan.budget.BudgetInputs.Line;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Issues;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.ResultRows;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Gate;
import org.setpower.plan.finding.Identity;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;

/** The power budget, calculated once: cost report, totals, scenarios, cash by week. */
public final class BudgetPlan {
  /** The model of the sheet. */
  public static final PlanModel MODEL = new Model();

  private final BudgetInputs inputs;
  private final BudgetRules rules;
  private final Map<Integer, BudgetLine> lines = new LinkedHashMap<>();
  private final Gate<BudgetLine> gate;
  private final List<BudgetLine> fit;
  private final ApprovedBudget approved;
  private final CostTotals totals;
  private final ScenarioCosts scenarios;
  private final OptionCosts options;
  private final BatteryMix mix;
  private final CashWeeks cash;

  private BudgetPlan(BudgetInputs inputs) {
    this.inputs = inputs;
    rules = new BudgetRules(inputs);
    for (InputRow<Line> row : inputs.lines().filled().toList()) {
      BudgetLine line = new BudgetLine(row, rules);
      if (line.report() != null && line.cash().gross().signum() != 0) {
        CashWeeks.judge(rules, line).forEach(line::add);
      }
      lines.put(row.number(), line);
    }
    judgeInvoices();
    gate =
        new Gate<>(
            lines.values().stream()
                .map(
                    l ->
                        new Gate.Candidate<>(
                            l.row().number(), l, "#" + l.row().number(), l.findings(), false))
                .toList(),
            rules.stops());
    fit = gate.paper(l -> true).fit().stream().map(Gate.Judged::item).toList();
    approved = new ApprovedBudget(rules, lines.values(), fit);
    totals = new CostTotals(rules, fit, approved);
    scenarios = new ScenarioCosts(rules, fit, totals.contingencyLeft(), inputs.scenarios());
    options = new OptionCosts(rules, inputs.options());
    mix = new BatteryMix(rules, inputs.mix(), inputs.batteries());
    cash = new CashWeeks(rules, fit, inputs.deposits());
  }

  /** The same invoice of one supplier with the same amount on several lines may be typed twice. */
  private void judgeInvoices() {
    Map<List<Object>, List<BudgetLine>> invoices = new LinkedHashMap<>();
    for (BudgetLine line : lines.values()) {
      Line typed = line.line();
      if (typed.invoice() != null && typed.invoiced() != null && typed.invoiced() != 0) {
        List<Object> key =
            List.of(Identity.of(typed.supplier()), Identity.of(typed.invoice()), typed.invoiced());
        invoices.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
      }
    }
    for (List<BudgetLine> same : invoices.values()) {
      if (same.size() > 1 && !same.stream().allMatch(BudgetLine::isInvoicedAsPlanned)) {
        Line first = same.get(0).line();
        Object amount = BudgetRules.decimal(first.invoiced()).setScale(2, RoundingMode.HALF_UP);
        Finding twice =
            Finding.of(BudgetFinding.INVOICE_TWICE, first.invoice(), same.size(), amount);
        same.forEach(l -> l.add(twice));
      }
    }
  }

  /** Calculates the budget from its ranges, in the order of {@link PlanModel#inputs()}. */
  public static PlanResult of(List<?> ranges) {
    return MODEL.calculate(ranges);
  }

  private static BudgetInputs read(List<?> ranges) {
    return new BudgetInputs(
        BudgetInputs.PROJECT.read(ranges.get(0)),
        BudgetInputs.COUNTS.read(ranges.get(1)),
        BudgetInputs.EXCHANGE.read(ranges.get(2)),
        BudgetInputs.TIERS.read(ranges.get(3)),
        BudgetInputs.LINES.read(ranges.get(4)),
        BudgetInputs.DEPOSITS.read(ranges.get(5)),
        BudgetInputs.SCENARIOS.read(ranges.get(6)),
        BudgetInputs.OPTIONS.read(ranges.get(7)),
        BudgetInputs.MIX.read(ranges.get(8)),
        BudgetInputs.BATTERIES.read(ranges.get(9)));
  }

  /**
   * What approving the budget as it is planned now would write.
   *
   * @param ranges as {@link #of} takes them
   */
  public static BudgetApproval approval(List<?> ranges) {
    BudgetPlan plan = new BudgetPlan(read(ranges));
    List<Integer> withheld = new ArrayList<>();
    List<Integer> checks = new ArrayList<>();
    List<BudgetApproval.Amount> amounts = new ArrayList<>();
    for (BudgetLine line : plan.lines.values()) {
      int row = line.row().number();
      if (!plan.gate.row(row).fit()) {
        withheld.add(row);
      } else if (!line.isStruck()) {
        amounts.add(new BudgetApproval.Amount(row, line.plan().all()));
        // that approved amounts do not count in a draft is what the approval mends
        if (plan.gate.row(row).findings().stream()
            .anyMatch(f -> f.key() != BudgetFinding.STILL_DRAFT)) {
          checks.add(row);
        }
      }
    }
    return new BudgetApproval(
        plan.rules.project().approved(),
        plan.rules.stops(),
        withheld,
        checks,
        amounts,
        plan.totals.contingency(),
        plan.rules.terms(),
        plan.rules.project().approvals());
  }

  static boolean isStop(Finding finding) {
    return finding.severity().compareTo(Severity.STOP) >= 0;
  }

  private List<ResultRows<?>> tables() {
    List<IssueRow> issues = issues();
    List<BudgetResults.CashWeek> weeks = cash.rows();
    List<Finding> project = projectFindings();
    return List.of(
        new ResultRows<>(
            BudgetResults.PROJECT,
            List.of(
                new BudgetResults.ProjectState(
                    Finding.verdict(project),
                    project,
                    rules.isDraft(),
                    ReportText.basis(rules),
                    ReportText.cash(rules)))),
        new ResultRows<>(
            BudgetResults.COUNTS,
            align(
                inputs.counts(),
                r -> new BudgetResults.CountState(verdict("counts", r), findings("counts", r)))),
        new ResultRows<>(
            BudgetResults.EXCHANGE,
            align(
                inputs.exchange(),
                r ->
                    new BudgetResults.ExchangeState(
                        verdict("exchange", r), findings("exchange", r)))),
        new ResultRows<>(
            BudgetResults.TIERS,
            align(
                inputs.tiers(),
                r -> new BudgetResults.TierState(verdict("tiers", r), findings("tiers", r)))),
        new ResultRows<>(BudgetResults.LINES, align(inputs.lines(), this::lineState)),
        new ResultRows<>(
            BudgetResults.ACCOUNTS,
            totals.by(Line::account).stream().map(BudgetPlan::accountTotal).toList()),
        new ResultRows<>(
            BudgetResults.DEPARTMENTS,
            totals.by(Line::department).stream().map(BudgetPlan::departmentTotal).toList()),
        new ResultRows<>(
            BudgetResults.DEPOSITS,
            align(
                inputs.deposits(),
                r ->
                    new BudgetResults.DepositState(
                        verdict("deposits", r), findings("deposits", r)))),
        new ResultRows<>(
            BudgetResults.SCENARIOS,
            align(
                inputs.scenarios(),
                r ->
                    new BudgetResults.ScenarioState(
                        verdict("scenarios", r),
                        findings("scenarios", r),
                        scenarios.state(r.number()).more(),
                        scenarios.state(r.number()).left()))),
        new ResultRows<>(
            BudgetResults.OPTIONS,
            align(
                inputs.options(),
                r ->
                    new BudgetResults.OptionState(
                        verdict("options", r),
                        findings("options", r),
                        options.state(r.number()).cost(),
                        options.more(r.number()),
                        options.state(r.number()).co2(),
                        options.heavier(r.number())))),
        new ResultRows<>(BudgetResults.MIX, align(inputs.mix(), r -> mix.state())),
        new ResultRows<>(
            BudgetResults.BATTERIES, align(inputs.batteries(), r -> mix.battery(r.number()))),
        new ResultRows<>(BudgetResults.REPORT, report()),
        new ResultRows<>(BudgetResults.BY_LINE, byLine()),
        new ResultRows<>(BudgetResults.BOOKED, booked()),
        new ResultRows<>(BudgetResults.WEEKS, weeks),
        new ResultRows<>(BudgetResults.SUMMARY, List.of(summary(weeks, issues))),
        new ResultRows<>(BudgetResults.ISSUES, issues));
  }

  private static <T extends Record, R> List<R> align(
      InputRows<T> rows, Function<InputRow<T>, R> result) {
    List<R> results = new ArrayList<>(rows.rows().size());
    rows.rows().forEach(r -> results.add(r.isBlank() ? null : result.apply(r)));
    return results;
  }

  static List<Finding> sorted(List<Finding> findings) {
    return findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
  }

  /** What is wrong with a row of a table to fill, worst first. */
  private List<Finding> findings(String table, InputRow<?> row) {
    return switch (table) {
      case "project" -> projectFindings();
      case "counts" -> rules.counts().row(row.number()).findings();
      case "exchange" -> rules.exchange().row(row.number()).findings();
      case "tiers" -> rules.tiers().row(row.number()).findings();
      case "lines" -> gate.row(row.number()).findings();
      case "options" -> sorted(options.state(row.number()).findings());
      case "mix" -> sorted(mix.findings());
      case "batteries" -> sorted(mix.findings(row.number()));
      case "deposits" -> sorted(cash.depositFindings(row.number()));
      default -> sorted(scenarios.state(row.number()).findings());
    };
  }

  private List<Finding> projectFindings() {
    List<Finding> all = new ArrayList<>(rules.findings());
    all.addAll(approved.findings());
    all.addAll(totals.findings());
    boolean paid = fit.stream().anyMatch(l -> BudgetRules.decimal(l.line().paid()).signum() != 0);
    if (paid && rules.project().asAt() == null) {
      all.add(Finding.of(BudgetFinding.NO_AS_AT));
    }
    long bare = fit.stream().filter(BudgetLine::isWithoutFringes).count();
    if (bare > 0) {
      all.add(Finding.of(BudgetFinding.NO_FRINGES, (double) bare));
    }
    return sorted(all);
  }

  private Verdict verdict(String table, InputRow<?> row) {
    return Finding.verdict(findings(table, row));
  }

  private BudgetResults.LineState lineState(InputRow<Line> row) {
    Gate.Judged<BudgetLine> judged = gate.row(row.number());
    BudgetLine line = judged.item();
    if (!judged.fit()) {
      return BudgetResults.LINES.row(judged.verdict(), judged.findings());
    }
    BudgetLine.Plan plan = line.plan();
    BudgetLine.Report report = line.report();
    CostTax.Taxed taxed = line.cash();
    BigDecimal paid = rules.rounded(BudgetRules.decimal(line.line().paid()));
    return new BudgetResults.LineState(
        judged.verdict(),
        judged.findings(),
        plan.counted(),
        plan.times(),
        plan.paidHours(),
        plan.pay(),
        plan.fringes(),
        plan.perDiems(),
        plan.all(),
        line.planned(),
        report.budget(),
        report.ordered(),
        report.invoiced(),
        report.open(),
        report.costToDate(),
        report.toComplete(),
        report.finalCost(),
        report.variance(),
        taxed.gross(),
        taxed.reclaimed(),
        taxed.gross().subtract(paid),
        line.paidOn().orElse(null));
  }

  private static BudgetResults.AccountTotal accountTotal(CostTotals.Row row) {
    CostTotals.Sums s = row.sums();
    return new BudgetResults.AccountTotal(
        row.kind(),
        row.name(),
        s.budget(),
        s.ordered(),
        s.costToDate(),
        s.toComplete(),
        s.finalCost(),
        s.variance());
  }

  private static BudgetResults.DepartmentTotal departmentTotal(CostTotals.Row row) {
    CostTotals.Sums s = row.sums();
    return new BudgetResults.DepartmentTotal(
        row.kind(),
        row.name(),
        s.budget(),
        s.ordered(),
        s.costToDate(),
        s.toComplete(),
        s.finalCost(),
        s.variance());
  }

  private List<BudgetResults.ReportRow> report() {
    List<BudgetResults.ReportRow> rows = new ArrayList<>();
    report(rows, ReportText.ACCOUNTS, totals.shown(totals.by(Line::account)));
    report(rows, ReportText.DEPARTMENTS, totals.shown(totals.by(Line::department)));
    return rows;
  }

  private List<BudgetResults.LineRow> byLine() {
    List<BudgetResults.LineRow> rows = new ArrayList<>();
    BigDecimal changes = sum(fit, BudgetLine::changes);
    for (BudgetLine line : lines.values()) {
      if (!gate.row(line.row().number()).fit()) {
        Phrase label = ReportText.label(line.line().description(), true);
        rows.add(BudgetResults.BY_LINE.row(TotalKind.WITHHELD, label));
      } else if (!line.isQuiet()) {
        Phrase label = ReportText.label(line.line().description(), false);
        CostTotals.Sums sums = CostTotals.sums(line);
        rows.add(lineRow(line, label, sums));
      }
    }
    for (CostTotals.Row row : totals.belowLines()) {
      BigDecimal later =
          switch (row.kind()) {
            case SUBTOTAL -> changes;
            case CONTINGENCY -> totals.taken().negate();
            case TOTAL -> changes.subtract(totals.taken());
            default -> BigDecimal.ZERO;
          };
      Phrase label = ReportText.label(row);
      rows.add(lineRow(row.kind(), label, null, null, null, row.sums(), later));
    }
    return rows;
  }

  private List<BudgetResults.BookedRow> booked() {
    List<BudgetResults.BookedRow> rows = new ArrayList<>();
    for (BudgetLine line : fit) {
      if (!line.isQuiet()) {
        rows.add(booked(line));
      }
    }
    CostTotals.Sums all = totals.all();
    rows.add(
        new BudgetResults.BookedRow(
            TotalKind.TOTAL,
            null,
            ReportText.TOTAL.of(),
            null,
            null,
            null,
            null,
            all.ordered(),
            all.invoiced(),
            sum(fit, this::paid)));
    for (InputRow<BudgetInputs.Deposit> row : inputs.deposits().filled().toList()) {
      if (row.findings().isEmpty() && rules.currency() != null) {
        rows.add(
            new BudgetResults.BookedRow(
                TotalKind.GROUP,
                null,
                ReportText.deposit(row.value().to()),
                null,
                null,
                null,
                null,
                null,
                null,
                rules.rounded(BudgetRules.decimal(row.value().amount()))));
      }
    }
    return rows;
  }

  private BudgetResults.BookedRow booked(BudgetLine line) {
    Line typed = line.line();
    return new BudgetResults.BookedRow(
        TotalKind.GROUP,
        typed.account(),
        ReportText.label(typed.description(), false),
        ReportText.worked(rules, line),
        typed.supplier(),
        typed.po(),
        typed.invoice(),
        line.report().ordered(),
        line.report().invoiced(),
        paid(line));
  }

  private BigDecimal paid(BudgetLine line) {
    return rules.rounded(BudgetRules.decimal(line.line().paid()));
  }

  private BudgetResults.LineRow lineRow(BudgetLine line, Phrase label, CostTotals.Sums sums) {
    Line typed = line.line();
    Phrase worked = line.isStruck() ? null : ReportText.worked(rules, line);
    return lineRow(
        TotalKind.GROUP, label, typed.account(), typed.department(), worked, sums, line.changes());
  }

  private static BudgetResults.LineRow lineRow(
      TotalKind kind,
      Phrase label,
      String account,
      String department,
      Phrase worked,
      CostTotals.Sums s,
      BigDecimal changes) {
    return new BudgetResults.LineRow(
        kind,
        label,
        account,
        department,
        worked,
        s.budget().subtract(changes),
        changes,
        s.invoiced(),
        s.open(),
        s.costToDate(),
        s.toComplete(),
        s.finalCost(),
        s.variance());
  }

  private static void report(
      List<BudgetResults.ReportRow> rows, ReportText heading, List<CostTotals.Row> totals) {
    rows.add(BudgetResults.REPORT.row(TotalKind.HEADING, heading.of()));
    for (CostTotals.Row row : totals) {
      CostTotals.Sums s = row.sums();
      rows.add(
          new BudgetResults.ReportRow(
              row.kind(),
              ReportText.label(row),
              s.budget(),
              s.invoiced(),
              s.open(),
              s.costToDate(),
              s.toComplete(),
              s.finalCost(),
              s.variance()));
    }
  }

  private static <R> BigDecimal sum(List<R> rows, Function<R, BigDecimal> amount) {
    return rows.stream().map(amount).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private BudgetResults.BudgetSummary summary(
      List<BudgetResults.CashWeek> weeks, List<IssueRow> issues) {
    BigDecimal gross = sum(fit, l -> l.cash().gross());
    BigDecimal paid = sum(fit, this::paid);
    CostTotals.Sums total = totals.total();
    BigDecimal changes = sum(fit, BudgetLine::changes).subtract(totals.taken());
    return new BudgetResults.BudgetSummary(
        IssueRow.worst(issues),
        !rules.isDraft(),
        (int) lines.values().stream().filter(l -> !l.isQuiet()).count(),
        rules.currency() == null ? null : (Integer) rules.currency().getDefaultFractionDigits(),
        gate.all().size() - fit.size(),
        total.budget().subtract(changes),
        changes,
        total.budget(),
        total.ordered(),
        total.invoiced(),
        total.open(),
        total.costToDate(),
        total.toComplete(),
        total.finalCost(),
        totals.contingencyBefore(),
        totals.taken(),
        totals.contingency(),
        totals.all().variance(),
        totals.contingencyLeft(),
        gross,
        sum(weeks, BudgetResults.CashWeek::payments),
        cash.undated(),
        paid,
        gross.subtract(paid),
        weeks.stream()
            .map(BudgetResults.CashWeek::soFar)
            .reduce(BigDecimal::max)
            .orElse(BigDecimal.ZERO),
        options.lowest());
  }

  private List<IssueRow> issues() {
    Issues issues = new Issues();
    issues.addRows(inputs.all(), this::open, Set.of());
    return issues.rows(BudgetResults.ISSUES.rows());
  }

  /** A scenario is a question beside the plan: of what it answers nothing is open in the report. */
  private List<Finding> open(String table, InputRow<?> row) {
    List<Finding> all = findings(table, row);
    return "scenarios".equals(table) ? all.stream().filter(BudgetPlan::isStop).toList() : all;
  }

  /** The rows that a row of results is made of. */
  private int[] related(String table, int row, String source) {
    if (table.equals(source)) {
      return new int[] {row};
    }
    return switch (source) {
      case "project", "summary" -> new int[] {1};
      case "accounts" -> new int[] {totals.by(Line::account).size()};
      case "weeks" -> IntStream.rangeClosed(1, cash.rows().size()).toArray();
      default ->
          inputs.all().stream()
              .filter(t -> t.table().key().equals(source))
              .flatMap(t -> t.rows().stream())
              .filter(r -> !r.isBlank())
              .mapToInt(InputRow::number)
              .toArray();
    };
  }

  /** The budget as the function of the sheet and the tests see it. */
  private static final class Model implements PlanModel {
    @Override
    public String name() {
      return "budget";
    }

    @Override
    public List<InputTable<?>> inputs() {
      return List.of(
          BudgetInputs.PROJECT,
          BudgetInputs.COUNTS,
          BudgetInputs.EXCHANGE,
          BudgetInputs.TIERS,
          BudgetInputs.LINES,
          BudgetInputs.DEPOSITS,
          BudgetInputs.SCENARIOS,
          BudgetInputs.OPTIONS,
          BudgetInputs.MIX,
          BudgetInputs.BATTERIES);
    }

    @Override
    public List<ResultTable<?>> results() {
      return List.of(
          BudgetResults.PROJECT,
          BudgetResults.COUNTS,
          BudgetResults.EXCHANGE,
          BudgetResults.TIERS,
          BudgetResults.LINES,
          BudgetResults.ACCOUNTS,
          BudgetResults.DEPARTMENTS,
          BudgetResults.DEPOSITS,
          BudgetResults.SCENARIOS,
          BudgetResults.OPTIONS,
          BudgetResults.MIX,
          BudgetResults.BATTERIES,
          BudgetResults.REPORT,
          BudgetResults.BY_LINE,
          BudgetResults.BOOKED,
          BudgetResults.WEEKS,
          BudgetResults.SUMMARY,
          BudgetResults.ISSUES);
    }

    @Override
    public List<FindingKey> findings() {
      return List.of(BudgetFinding.values());
    }

    @Override
    public List<String> phrases() {
      return ReportText.patterns();
    }

    @Override
    public PlanResult calculate(List<?> ranges) {
      BudgetInputs inputs = read(ranges);
      List<InputRows<?>> all = inputs.all();
      if (all.stream().anyMatch(r -> r.fault().isPresent())) {
        return new PlanResult(all, results(), List::of, (table, row, source) -> new int[0]);
      }
      BudgetPlan plan = new BudgetPlan(inputs);
      return new PlanResult(all, results(), plan::tables, plan::related);
    }
  }
}
