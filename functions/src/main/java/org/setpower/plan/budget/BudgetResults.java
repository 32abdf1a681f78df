package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.NumberForm;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.Result;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/** The tables of results of a budget; a result column is a component. */
public final class BudgetResults {
  public static final ResultTable<ProjectState> PROJECT = ResultTable.of(ProjectState.class);
  public static final ResultTable<CountState> COUNTS = ResultTable.of(CountState.class);
  public static final ResultTable<ExchangeState> EXCHANGE = ResultTable.of(ExchangeState.class);
  public static final ResultTable<TierState> TIERS = ResultTable.of(TierState.class);
  public static final ResultTable<LineState> LINES = ResultTable.of(LineState.class);
  public static final ResultTable<LineRow> BY_LINE = ResultTable.of(LineRow.class);
  public static final ResultTable<BookedRow> BOOKED = ResultTable.of(BookedRow.class);
  public static final ResultTable<ReportRow> REPORT = ResultTable.of(ReportRow.class);
  public static final ResultTable<OptionState> OPTIONS = ResultTable.of(OptionState.class);
  public static final ResultTable<MixState> MIX = ResultTable.of(MixState.class);
  public static final ResultTable<BatteryState> BATTERIES = ResultTable.of(BatteryState.class);
  public static final ResultTable<AccountTotal> ACCOUNTS = ResultTable.of(AccountTotal.class);
  public static final ResultTable<DepartmentTotal> DEPARTMENTS =
      ResultTable.of(DepartmentTotal.class);
  public static final ResultTable<DepositState> DEPOSITS = ResultTable.of(DepositState.class);
  public static final ResultTable<ScenarioState> SCENARIOS = ResultTable.of(ScenarioState.class);
  public static final ResultTable<CashWeek> WEEKS = ResultTable.of(CashWeek.class);
  public static final ResultTable<BudgetSummary> SUMMARY = ResultTable.of(BudgetSummary.class);
  public static final ResultTable<IssueRow> ISSUES =
      IssueRow.table(
          60,
          "project.reasons",
          "counts.reasons",
          "exchange.reasons",
          "tiers.reasons",
          "lines.reasons",
          "deposits.reasons",
          "scenarios.reasons",
          "options.reasons",
          "mix.reasons",
          "batteries.reasons",
          "lines.description",
          "counts.count",
          "exchange.currency",
          "deposits.to",
          "scenarios.scenario",
          "options.option",
          "batteries.battery",
          "tiers.after");

  private static final String LINES_ALL = "lines.*";
  private static final String PROJECT_ALL = "project.*";
  private static final String DEPOSITS_ALL = "deposits.*";

  private BudgetResults() {}

  /** Beside the project. */
  @Table(key = "project", heading = "Project", rows = 1)
  public record ProjectState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "project.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"project.*", "lines.due", "lines.reasons", LINES_ALL},
              rule = "What is wrong with the settings, or missing for Cash flow.")
          List<Finding> reasons,
      @Result(
              key = "draft",
              heading = "Draft",
              from = "project.approved",
              rule = "Until the budget is approved.")
          Boolean draft,
      @Result(
              key = "basis",
              heading = "Basis",
              from = {"project.currency", "project.columns", "project.approved", "project.asAt"},
              rule = "Currency and tax of all columns of the cost report; whether it is a draft.")
          Phrase basis,
      @Result(
              key = "cashBasis",
              heading = "Basis of cash",
              from = {"project.currency", "project.asAt"},
              rule = "Currency of Cash flow, always with tax; from which day.")
          Phrase cashBasis) {}

  /** Beside a count. */
  @Table(key = "counts", heading = "Imported", rows = 60)
  public record CountState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "counts.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "counts.*",
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a rate. */
  @Table(key = "exchange", heading = "Exchange rates", rows = 12)
  public record ExchangeState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "exchange.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"exchange.*", PROJECT_ALL},
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a step of overtime. */
  @Table(key = "tiers", heading = "Overtime", rows = 6)
  public record TierState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "tiers.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = "tiers.*",
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a line. */
  @Table(key = "lines", heading = "Budget lines", rows = 200)
  public record LineState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "lines.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {LINES_ALL, "project.*", "counts.*", "exchange.*", "tiers.*"},
              rule = "What is wrong with the row, overspent, without a number.")
          List<Finding> reasons,
      @Result(
              key = "counted",
              heading = "Counted",
              form = NumberForm.EXACT,
              from = {"lines.qty", "lines.count", "counts.value", "counts.count", "lines.reasons"},
              rule = "Quantity, blank is 1, × linked count.")
          BigDecimal counted,
      @Result(
              key = "timesCharged",
              heading = "× charged",
              form = NumberForm.EXACT,
              from = {"lines.times", "lines.minTimes", "lines.reasons"},
              rule = "× days, at least the fewest charged; blank is 1.")
          BigDecimal timesCharged,
      @Result(
              key = "paidHours",
              heading = "Paid hours a day",
              unit = "h",
              form = NumberForm.EXACT,
              from = {
                "lines.hours",
                "lines.coveredHours",
                "tiers.*",
                "project.rounding",
                "project.minimumCall",
                "lines.unit",
                "lines.reasons",
                "lines.type"
              },
              rule = "Hours rounded up, at least the call, each hour × the factor of its step.")
          BigDecimal paidHours,
      @Result(
              key = "pay",
              heading = "Price or pay",
              form = NumberForm.MONEY,
              from = {
                "lines.price",
                "lines.counted",
                "lines.timesCharged",
                "lines.paidHours",
                "lines.discount",
                "lines.unit",
                "lines.coveredHours",
                "lines.currency",
                "exchange.*",
                "project.currency",
                "lines.struck",
                LINES_ALL,
                PROJECT_ALL
              },
              rule =
                  "Counted × times × price × (1 − discount), of crew by paid hours; in the line's"
                      + " currency first, then the budget's.")
          BigDecimal pay,
      @Result(
              key = "fringes",
              heading = "Fringes",
              form = NumberForm.MONEY,
              from = {
                "lines.pay",
                "lines.fringe",
                "project.fringe",
                "project.ceiling",
                "lines.counted",
                "lines.type"
              },
              rule = "Share of pay up to the ceiling of each person; not on per diem.")
          BigDecimal fringes,
      @Result(
              key = "perDiems",
              heading = "Per diem",
              form = NumberForm.MONEY,
              from = {
                "lines.counted",
                "lines.daysAway",
                "lines.perDiem",
                "project.perDiem",
                "lines.type",
                "lines.pay"
              },
              rule = "Persons × days away × per diem.")
          BigDecimal perDiems,
      @Result(
              key = "plannedTyped",
              heading = "Planned, as typed",
              form = NumberForm.MONEY,
              from = {"lines.pay", "lines.fringes", "lines.perDiems", "lines.struck"},
              rule =
                  "Pay, fringes and per diem, with or without tax as amounts are typed; Approve"
                      + " budget writes it.")
          BigDecimal plannedTyped,
      @Result(
              key = "planned",
              heading = "Planned",
              form = NumberForm.MONEY,
              from = {
                "lines.plannedTyped",
                "lines.tax",
                "lines.recoverable",
                "project.tax",
                "project.recoverable",
                "project.columns",
                "project.amounts"
              },
              rule = "In the basis of the cost report.")
          BigDecimal planned,
      @Result(
              key = "budgetNow",
              heading = "Budget",
              form = NumberForm.MONEY,
              from = {
                "lines.planned",
                "lines.budget",
                "lines.changes",
                "project.approved",
                "lines.plannedTyped",
                "lines.tax",
                "lines.recoverable",
                "project.tax",
                "project.recoverable",
                "project.columns",
                "project.amounts"
              },
              rule = "Planned while it is a draft; then as approved, with approved changes.")
          BigDecimal budgetNow,
      @Result(
              key = "orderedNow",
              heading = "Ordered",
              form = NumberForm.MONEY,
              from = {
                "lines.ordered",
                "lines.plannedTyped",
                "lines.tax",
                "lines.recoverable",
                "project.tax",
                "project.recoverable",
                "project.columns",
                "project.amounts"
              },
              rule = "In the basis of the cost report.")
          BigDecimal orderedNow,
      @Result(
              key = "invoicedNow",
              heading = "Invoiced",
              form = NumberForm.MONEY,
              from = {
                "lines.invoiced",
                "lines.plannedTyped",
                "lines.tax",
                "lines.recoverable",
                "project.tax",
                "project.recoverable",
                "project.columns",
                "project.amounts"
              },
              rule = "In the basis of the cost report.")
          BigDecimal invoicedNow,
      @Result(
              key = "open",
              heading = "Open commitment",
              form = NumberForm.MONEY,
              from = {"lines.costToDate", "lines.invoicedNow"},
              rule =
                  "0 where the PO is closed or the line complete, else ordered less invoiced, not"
                      + " below 0.")
          BigDecimal open,
      @Result(
              key = "costToDate",
              heading = "Cost to date",
              form = NumberForm.MONEY,
              from = {
                "lines.invoiced",
                "lines.ordered",
                "lines.poClosed",
                "lines.complete",
                "lines.plannedTyped",
                "lines.tax",
                "lines.recoverable",
                "project.tax",
                "project.recoverable",
                "project.columns",
                "project.amounts"
              },
              rule = "Invoiced and open commitment.")
          BigDecimal costToDate,
      @Result(
              key = "toComplete",
              heading = "Estimate to complete",
              form = NumberForm.MONEY,
              from = {"lines.finalCost", "lines.costToDate"},
              rule =
                  "As typed; blank: 0 where struck or complete, else planned less cost to date, not"
                      + " beyond 0.")
          BigDecimal toComplete,
      @Result(
              key = "finalCost",
              heading = "Estimated final cost",
              form = NumberForm.MONEY,
              from = {
                "lines.invoiced",
                "lines.ordered",
                "lines.poClosed",
                "lines.complete",
                "lines.estimate",
                "lines.struck",
                "lines.plannedTyped",
                "lines.tax",
                "lines.recoverable",
                "project.tax",
                "project.recoverable",
                "project.columns",
                "project.amounts"
              },
              rule = "Cost to date and estimate to complete.")
          BigDecimal finalCost,
      @Result(
              key = "variance",
              heading = "Variance",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.finalCost"},
              rule = "Budget and approved changes less estimated final cost; minus is over.")
          BigDecimal variance,
      @Result(
              key = "gross",
              heading = "With tax",
              form = NumberForm.MONEY,
              from = {
                "lines.finalCost",
                "lines.tax",
                "project.tax",
                "project.amounts",
                "lines.invoiced",
                "lines.ordered",
                "lines.poClosed",
                "lines.complete",
                "lines.estimate",
                "lines.struck",
                "lines.plannedTyped"
              },
              rule = "Estimated final cost with tax, for Cash flow.")
          BigDecimal gross,
      @Result(
              key = "reclaimed",
              heading = "Tax reclaimed",
              form = NumberForm.MONEY,
              from = {"lines.gross", "lines.recoverable", "project.recoverable"},
              rule = "Share of its tax that comes back.")
          BigDecimal reclaimed,
      @Result(
              key = "toPay",
              heading = "Still to pay",
              form = NumberForm.MONEY,
              from = {"lines.gross", "lines.paid"},
              rule = "With tax, less paid.")
          BigDecimal toPay,
      @Result(
              key = "paidOn",
              heading = "Paid on",
              from = {
                "lines.due",
                "lines.dueOn",
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "lines.plannedTyped"
              },
              rule = "Due on, or by Due and the dates of Project; blank for weekly payments.")
          LocalDate paidOn) {}

  /** Every line, then contingency and total: the page to read line by line. */
  @Table(key = "byLine", heading = "Cost report by line", rows = 204)
  public record LineRow(
      @Result(
              key = "kind",
              heading = "Row",
              from = {LINES_ALL, "lines.reasons", "project.*"},
              rule = "Line, line that is a stop, contingency, total.")
          TotalKind kind,
      @Result(
              key = "label",
              heading = "Budget line",
              from = {"lines.description", LINES_ALL, "lines.reasons", "project.*"},
              rule = "Its description; struck lines on which nothing happened are left out.")
          Phrase label,
      @Result(
              key = "account",
              heading = "Account",
              from = {"lines.account", LINES_ALL, "lines.reasons", "project.*"},
              rule = "As typed.")
          String account,
      @Result(
              key = "department",
              heading = "Department",
              from = {"lines.department", LINES_ALL, "lines.reasons", "project.*"},
              rule = "As typed.")
          String department,
      @Result(
              key = "worked",
              heading = "Qty × days × price",
              from = {
                "lines.counted",
                "lines.timesCharged",
                "lines.paidHours",
                "lines.fringes",
                "lines.perDiems",
                LINES_ALL,
                "lines.reasons",
                "counts.*",
                "exchange.*",
                "tiers.*",
                "project.*"
              },
              rule = "How the planned amount comes about, as amounts are typed.")
          Phrase worked,
      @Result(
              key = "budget",
              heading = "Budget before changes",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.budget", LINES_ALL, "lines.reasons", "project.*"},
              rule = "As approved, without later changes; planned while it is a draft.")
          BigDecimal budget,
      @Result(
              key = "changes",
              heading = "Approved changes",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.changes", LINES_ALL, "lines.reasons", "project.*"},
              rule = "Approved after the budget.")
          BigDecimal changes,
      @Result(
              key = "invoiced",
              heading = "Invoiced",
              form = NumberForm.MONEY,
              from = {"lines.invoicedNow", LINES_ALL, "lines.reasons", "project.*"},
              rule = "As under Budget lines.")
          BigDecimal invoiced,
      @Result(
              key = "open",
              heading = "Open commitment",
              form = NumberForm.MONEY,
              from = {"lines.open", LINES_ALL, "lines.reasons", "project.*"},
              rule = "As under Budget lines.")
          BigDecimal open,
      @Result(
              key = "costToDate",
              heading = "Cost to date",
              form = NumberForm.MONEY,
              from = {"lines.costToDate", LINES_ALL, "lines.reasons", "project.*"},
              rule = "Invoiced and open commitment.")
          BigDecimal costToDate,
      @Result(
              key = "toComplete",
              heading = "Estimate to complete",
              form = NumberForm.MONEY,
              from = {"lines.toComplete", LINES_ALL, "lines.reasons", "project.*"},
              rule = "As under Budget lines.")
          BigDecimal toComplete,
      @Result(
              key = "finalCost",
              heading = "Estimated final cost",
              form = NumberForm.MONEY,
              from = {"lines.finalCost", LINES_ALL, "lines.reasons", "project.*"},
              rule = "Cost to date and what is still to come.")
          BigDecimal finalCost,
      @Result(
              key = "variance",
              heading = "Variance",
              form = NumberForm.MONEY,
              from = {"lines.variance", LINES_ALL, "lines.reasons", "project.*"},
              rule = "Budget and approved changes less estimated final cost; minus is over.")
          BigDecimal variance) {}

  /** Every line as it is booked, then the total and what is deposited: the accountant's list. */
  @Table(key = "booked", heading = "Orders & invoices", rows = 213)
  public record BookedRow(
      @Result(
              key = "kind",
              heading = "Row",
              from = {LINES_ALL, "lines.reasons", PROJECT_ALL, DEPOSITS_ALL},
              rule = "Line, total, deposit.")
          TotalKind kind,
      @Result(
              key = "account",
              heading = "Account",
              from = {"lines.account", LINES_ALL, "lines.reasons"},
              rule = "As under Budget lines.")
          String account,
      @Result(
              key = "label",
              heading = "Budget line",
              from = {"lines.description", LINES_ALL, "lines.reasons", DEPOSITS_ALL},
              rule = "As under Budget lines; below the total who holds a deposit.")
          Phrase label,
      @Result(
              key = "worked",
              heading = "Qty × days × price",
              from = {
                LINES_ALL,
                "lines.reasons",
                "lines.counted",
                "exchange.*",
                "project.currency"
              },
              rule = "Before discount, overtime and fringes; another currency with its rate.")
          Phrase worked,
      @Result(
              key = "supplier",
              heading = "Supplier",
              from = {"lines.supplier", LINES_ALL, "lines.reasons"},
              rule = "As under Budget lines.")
          String supplier,
      @Result(
              key = "po",
              heading = "PO no.",
              from = {"lines.po", LINES_ALL, "lines.reasons"},
              rule = "As under Budget lines.")
          String po,
      @Result(
              key = "invoice",
              heading = "Invoice no.",
              from = {"lines.invoice", LINES_ALL, "lines.reasons"},
              rule = "As under Budget lines.")
          String invoice,
      @Result(
              key = "ordered",
              heading = "Ordered",
              form = NumberForm.MONEY,
              from = {"lines.orderedNow", LINES_ALL, "lines.reasons", PROJECT_ALL},
              rule = "As under Budget lines.")
          BigDecimal ordered,
      @Result(
              key = "invoiced",
              heading = "Invoiced",
              form = NumberForm.MONEY,
              from = {"lines.invoicedNow", LINES_ALL, "lines.reasons", PROJECT_ALL},
              rule = "As under Budget lines.")
          BigDecimal invoiced,
      @Result(
              key = "paid",
              heading = "Paid",
              form = NumberForm.MONEY,
              from = {"lines.paid", LINES_ALL, "lines.reasons", DEPOSITS_ALL, PROJECT_ALL},
              rule = "With tax; of a deposit its amount.")
          BigDecimal paid) {}

  /** Accounts, then departments, each with contingency and total: the page of the cost report. */
  @Table(key = "report", heading = "Cost report", rows = 414)
  public record ReportRow(
      @Result(
              key = "kind",
              heading = "Row",
              from = {"accounts.kind", "departments.kind", LINES_ALL},
              rule = "Heading, account or department, contingency, total.")
          TotalKind kind,
      @Result(
              key = "label",
              heading = "Account or department",
              from = {
                "accounts.account",
                "departments.department",
                LINES_ALL,
                "lines.reasons",
                "project.*"
              },
              rule = "By name.")
          Phrase label,
      @Result(
              key = "budget",
              heading = "Budget",
              form = NumberForm.MONEY,
              from = {"accounts.budget", "departments.budget", LINES_ALL, "lines.reasons"},
              rule = "As under accounts and departments.")
          BigDecimal budget,
      @Result(
              key = "invoiced",
              heading = "Invoiced",
              form = NumberForm.MONEY,
              from = {"lines.invoicedNow", LINES_ALL, "lines.reasons", "project.*"},
              rule = "Sum of its lines.")
          BigDecimal invoiced,
      @Result(
              key = "open",
              heading = "Open commitment",
              form = NumberForm.MONEY,
              from = {"lines.open", LINES_ALL, "lines.reasons", "project.*"},
              rule = "Sum of its lines.")
          BigDecimal open,
      @Result(
              key = "costToDate",
              heading = "Cost to date",
              form = NumberForm.MONEY,
              from = {"accounts.costToDate", "departments.costToDate", LINES_ALL, "lines.reasons"},
              rule = "As under accounts and departments.")
          BigDecimal costToDate,
      @Result(
              key = "toComplete",
              heading = "Estimate to complete",
              form = NumberForm.MONEY,
              from = {"accounts.toComplete", "departments.toComplete", LINES_ALL, "lines.reasons"},
              rule = "As under accounts and departments.")
          BigDecimal toComplete,
      @Result(
              key = "finalCost",
              heading = "Estimated final cost",
              form = NumberForm.MONEY,
              from = {"accounts.finalCost", "departments.finalCost", LINES_ALL, "lines.reasons"},
              rule = "As under accounts and departments.")
          BigDecimal finalCost,
      @Result(
              key = "variance",
              heading = "Variance",
              form = NumberForm.MONEY,
              from = {"accounts.variance", "departments.variance", LINES_ALL, "lines.reasons"},
              rule = "As under accounts and departments.")
          BigDecimal variance) {}

  /** Totals by account, contingency, total. */
  @Table(key = "accounts", heading = "Accounts", rows = 203)
  public record AccountTotal(
      @Result(
              key = "kind",
              heading = "Row",
              from = {LINES_ALL, "lines.reasons", "project.*"},
              rule = "Account, contingency or total.")
          TotalKind kind,
      @Result(
              key = "account",
              heading = "Account",
              from = {"lines.account", LINES_ALL, "lines.reasons"},
              rule = "By name.")
          String account,
      @Result(
              key = "budget",
              heading = "Budget",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Sum of its lines; of contingency its share of all budgets.")
          BigDecimal budget,
      @Result(
              key = "ordered",
              heading = "Ordered",
              form = NumberForm.MONEY,
              from = {"lines.orderedNow", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Sum of its lines.")
          BigDecimal ordered,
      @Result(
              key = "costToDate",
              heading = "Cost to date",
              form = NumberForm.MONEY,
              from = {"lines.costToDate", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Sum of its lines.")
          BigDecimal costToDate,
      @Result(
              key = "toComplete",
              heading = "Estimate to complete",
              form = NumberForm.MONEY,
              from = {"lines.toComplete", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Sum of its lines; contingency is kept in full and nets nothing.")
          BigDecimal toComplete,
      @Result(
              key = "finalCost",
              heading = "Estimated final cost",
              form = NumberForm.MONEY,
              from = {"accounts.costToDate", "accounts.toComplete"},
              rule = "Cost to date and estimate to complete.")
          BigDecimal finalCost,
      @Result(
              key = "variance",
              heading = "Variance",
              form = NumberForm.MONEY,
              from = {"accounts.budget", "accounts.finalCost"},
              rule = "Budget less estimated final cost; minus is over.")
          BigDecimal variance) {}

  /** Totals by department, contingency, total. */
  @Table(key = "departments", heading = "Departments", rows = 203)
  public record DepartmentTotal(
      @Result(
              key = "kind",
              heading = "Row",
              from = {LINES_ALL, "lines.reasons", "project.*"},
              rule = "Department, contingency or total.")
          TotalKind kind,
      @Result(
              key = "department",
              heading = "Department",
              from = {"lines.department", LINES_ALL, "lines.reasons"},
              rule = "By name.")
          String department,
      @Result(
              key = "budget",
              heading = "Budget",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Sum of its lines; of contingency its share of all budgets.")
          BigDecimal budget,
      @Result(
              key = "ordered",
              heading = "Ordered",
              form = NumberForm.MONEY,
              from = {"lines.orderedNow", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Sum of its lines.")
          BigDecimal ordered,
      @Result(
              key = "costToDate",
              heading = "Cost to date",
              form = NumberForm.MONEY,
              from = {"lines.costToDate", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Sum of its lines.")
          BigDecimal costToDate,
      @Result(
              key = "toComplete",
              heading = "Estimate to complete",
              form = NumberForm.MONEY,
              from = {"lines.toComplete", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Sum of its lines; contingency is kept in full and nets nothing.")
          BigDecimal toComplete,
      @Result(
              key = "finalCost",
              heading = "Estimated final cost",
              form = NumberForm.MONEY,
              from = {"departments.costToDate", "departments.toComplete"},
              rule = "Cost to date and estimate to complete.")
          BigDecimal finalCost,
      @Result(
              key = "variance",
              heading = "Variance",
              form = NumberForm.MONEY,
              from = {"departments.budget", "departments.finalCost"},
              rule = "Budget less estimated final cost; minus is over.")
          BigDecimal variance) {}

  /** Beside a deposit. */
  @Table(key = "deposits", heading = "Deposits", rows = 12)
  public record DepositState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "deposits.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"deposits.*", PROJECT_ALL},
              rule = "What is wrong with the row.")
          List<Finding> reasons) {}

  /** Beside a scenario. */
  @Table(key = "scenarios", heading = "Scenarios", rows = 12)
  public record ScenarioState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "scenarios.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {
                "scenarios.*",
                LINES_ALL,
                "lines.reasons",
                "lines.plannedTyped",
                "lines.variance",
                "accounts.budget",
                "project.*"
              },
              rule = "What is wrong with the row, or an overspent contingency.")
          List<Finding> reasons,
      @Result(
              key = "more",
              heading = "Extra cost",
              form = NumberForm.MONEY,
              from = {
                "scenarios.*",
                LINES_ALL,
                "lines.reasons",
                "lines.plannedTyped",
                "lines.planned"
              },
              rule = "What its lines cost more, and other, in the basis of the cost report.")
          BigDecimal more,
      @Result(
              key = "left",
              heading = "Contingency left",
              form = NumberForm.MONEY,
              from = {"scenarios.more", "summary.contingencyLeft"},
              rule = "Contingency, less what lines are over now, less extra cost.")
          BigDecimal left) {}

  /** Beside an option. */
  @Table(key = "options", heading = "Options", rows = 8)
  public record OptionState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "options.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"options.*", PROJECT_ALL},
              rule = "What is wrong with the row, or a price that it needs.")
          List<Finding> reasons,
      @Result(
              key = "cost",
              heading = "Cost",
              form = NumberForm.MONEY,
              from = {"options.*", PROJECT_ALL, "options.reasons"},
              rule = "Hire × days × (1 − discount) + fuel + energy + crew + other, without tax.")
          BigDecimal cost,
      @Result(
              key = "more",
              heading = "More than the cheapest",
              form = NumberForm.MONEY,
              from = {"options.cost", "options.*", PROJECT_ALL},
              rule = "Less the lowest cost of all options.")
          BigDecimal more,
      @Result(
              key = "co2",
              heading = "CO2",
              unit = "kg",
              form = NumberForm.ONE_DECIMAL,
              from = {"options.*", PROJECT_ALL, "options.reasons"},
              rule = "GENSET.CO2 of the fuel, and energy × CO2 of the grid.")
          Double co2,
      @Result(
              key = "heavier",
              heading = "Heavier than the lightest",
              unit = "kg",
              form = NumberForm.ONE_DECIMAL,
              from = {"options.weight", "options.*", PROJECT_ALL},
              rule = "Less the lowest weight of all options.")
          Double heavier) {}

  /** The cheapest mix of batteries. */
  @Table(key = "mix", heading = "Battery mix", rows = 1)
  public record MixState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "mix.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"mix.*", "batteries.*", PROJECT_ALL},
              rule = "What is wrong with the job, or why no mix does it.")
          List<Finding> reasons,
      @Result(
              key = "pieces",
              heading = "Pieces",
              from = {"batteries.pieces", "mix.*", "batteries.*", PROJECT_ALL},
              rule = "Of all types.")
          Integer pieces,
      @Result(
              key = "cost",
              heading = "Cost",
              form = NumberForm.MONEY,
              from = {"batteries.cost", "mix.*", "batteries.*", PROJECT_ALL},
              rule = "Of all types: the lowest of all mixes that do the job.")
          BigDecimal cost,
      @Result(
              key = "usableEnergy",
              heading = "Usable energy",
              unit = "Wh",
              from = {"batteries.pieces", "mix.*", "batteries.*", PROJECT_ALL},
              rule = "Pieces × Wh of one × usable share.")
          Double usableEnergy,
      @Result(
              key = "maxPower",
              heading = "Max. power",
              unit = "W",
              from = {"batteries.pieces", "mix.*", "batteries.*", PROJECT_ALL},
              rule = "Pieces × max. power of one.")
          Double maxPower,
      @Result(
              key = "weight",
              heading = "Weight",
              unit = "kg",
              form = NumberForm.ONE_DECIMAL,
              from = {"batteries.pieces", "mix.*", "batteries.*", PROJECT_ALL},
              rule = "Pieces × weight of one; blank where one of them is not known.")
          Double weight) {}

  /** Beside a type of batteries. */
  @Table(key = "batteries", heading = "Batteries", rows = 12)
  public record BatteryState(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "batteries.reasons",
              rule = "The worst of the reasons.")
          Verdict verdict,
      @Result(
              key = "reasons",
              heading = "Reason",
              from = {"batteries.*", "mix.*"},
              rule = "What is wrong with the row.")
          List<Finding> reasons,
      @Result(
              key = "pieces",
              heading = "Pieces in the mix",
              from = {"batteries.*", "mix.*", "batteries.reasons", "mix.reasons", PROJECT_ALL},
              rule = "PLAN.MIX of all types that are fit, at most those available.")
          Integer pieces,
      @Result(
              key = "cost",
              heading = "Cost",
              form = NumberForm.MONEY,
              from = {"batteries.pieces", "batteries.*", "mix.*", PROJECT_ALL},
              rule = "Pieces × price of one.")
          BigDecimal cost) {}

  /** Weeks in which money moves, always with tax. */
  @Table(key = "weeks", heading = "Cash by week", rows = 120)
  public record CashWeek(
      @Result(
              key = "label",
              heading = "Week from",
              from = {"weeks.week", "weeks.payments"},
              rule = "Monday; before all weeks what is overdue on the day of the report.")
          Phrase label,
      @Result(
              key = "week",
              heading = "Monday",
              from = {
                "lines.gross",
                "lines.reclaimed",
                "lines.paidOn",
                "lines.reasons",
                LINES_ALL,
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "project.reclaimAfter",
                DEPOSITS_ALL,
                PROJECT_ALL
              },
              rule = "First day of the week; blank for what is overdue.")
          LocalDate week,
      @Result(
              key = "payments",
              heading = "Payments",
              form = NumberForm.MONEY,
              from = {
                "lines.gross",
                "lines.reclaimed",
                "lines.paidOn",
                "lines.reasons",
                LINES_ALL,
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "project.reclaimAfter",
                DEPOSITS_ALL,
                PROJECT_ALL
              },
              rule = "Lines paid in the week, less what is paid; weekly ones in equal parts.")
          BigDecimal payments,
      @Result(
              key = "depositsOut",
              heading = "Deposits out",
              form = NumberForm.MONEY,
              from = {
                "lines.gross",
                "lines.reclaimed",
                "lines.paidOn",
                "lines.reasons",
                LINES_ALL,
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "project.reclaimAfter",
                DEPOSITS_ALL,
                PROJECT_ALL
              },
              rule = "As typed.")
          BigDecimal depositsOut,
      @Result(
              key = "depositsBack",
              heading = "Deposits back",
              form = NumberForm.MONEY,
              from = {
                "lines.gross",
                "lines.reclaimed",
                "lines.paidOn",
                "lines.reasons",
                LINES_ALL,
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "project.reclaimAfter",
                DEPOSITS_ALL,
                PROJECT_ALL
              },
              rule = "As typed.")
          BigDecimal depositsBack,
      @Result(
              key = "reclaim",
              heading = "Tax back",
              form = NumberForm.MONEY,
              from = {
                "lines.gross",
                "lines.reclaimed",
                "lines.paidOn",
                "lines.reasons",
                LINES_ALL,
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "project.reclaimAfter",
                DEPOSITS_ALL,
                PROJECT_ALL
              },
              rule = "Reclaimed tax of earlier payments.")
          BigDecimal reclaim,
      @Result(
              key = "cash",
              heading = "Cash out",
              form = NumberForm.MONEY,
              from = {"weeks.payments", "weeks.depositsOut", "weeks.depositsBack", "weeks.reclaim"},
              rule = "Payments and deposits out, less deposits and tax back.")
          BigDecimal cash,
      @Result(
              key = "soFar",
              heading = "Cumulative",
              form = NumberForm.MONEY,
              from = {
                "weeks.cash",
                "lines.gross",
                "lines.reclaimed",
                "lines.paidOn",
                "lines.reasons",
                LINES_ALL,
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "project.reclaimAfter",
                DEPOSITS_ALL,
                PROJECT_ALL
              },
              rule = "Sum up to this week.")
          BigDecimal soFar) {}

  /** Figures of the whole budget. */
  @Table(key = "summary", heading = "Summary", rows = 1)
  public record BudgetSummary(
      @Result(
              key = "verdict",
              heading = "Status",
              from = "issues.verdict",
              rule = "The worst of all open issues.")
          Verdict verdict,
      @Result(
              key = "approved",
              heading = "Approved",
              translated = true,
              from = "project.approved",
              rule = "Once Budget approved on has a day.")
          Boolean approved,
      @Result(
              key = "rows",
              heading = "Lines",
              from = LINES_ALL,
              rule = "Filled rows, without struck ones on which nothing happened.")
          Integer rows,
      @Result(
              key = "decimals",
              heading = "Decimals",
              from = "project.currency",
              rule = "Of the budget's currency; blank where it is not known.")
          Integer decimals,
      @Result(
              key = "withheld",
              heading = "Lines not counted",
              from = {"lines.reasons", LINES_ALL},
              rule = "Lines that are a stop: in no total.")
          Integer withheld,
      @Result(
              key = "budgetBefore",
              heading = "Budget before changes",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.budget", LINES_ALL, "lines.reasons", "project.*"},
              rule = "As in the row Total of the cost report by line.")
          BigDecimal budgetBefore,
      @Result(
              key = "changes",
              heading = "Changes beyond contingency",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.changes", LINES_ALL, "lines.reasons", "project.*"},
              rule = "Approved changes of all lines, less what of them comes out of it.")
          BigDecimal changes,
      @Result(
              key = "budget",
              heading = "Budget",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "project.*", "lines.reasons", LINES_ALL},
              rule = "As in the row Total of the cost report.")
          BigDecimal budget,
      @Result(
              key = "ordered",
              heading = "Ordered",
              form = NumberForm.MONEY,
              from = {"lines.orderedNow", "lines.reasons", LINES_ALL, "project.*"},
              rule = "As in the row Total of the cost report.")
          BigDecimal ordered,
      @Result(
              key = "invoiced",
              heading = "Invoiced",
              form = NumberForm.MONEY,
              from = {"lines.invoicedNow", "lines.reasons", LINES_ALL, "project.*"},
              rule = "As in the row Total of the cost report.")
          BigDecimal invoiced,
      @Result(
              key = "open",
              heading = "Open commitment",
              form = NumberForm.MONEY,
              from = {"lines.open", "lines.reasons", LINES_ALL, "project.*"},
              rule = "As in the row Total of the cost report.")
          BigDecimal open,
      @Result(
              key = "costToDate",
              heading = "Cost to date",
              form = NumberForm.MONEY,
              from = {"lines.costToDate", "lines.reasons", LINES_ALL, "project.*"},
              rule = "As in the row Total of the cost report.")
          BigDecimal costToDate,
      @Result(
              key = "toComplete",
              heading = "Estimate to complete",
              form = NumberForm.MONEY,
              from = {"lines.toComplete", "project.*", "lines.reasons", LINES_ALL},
              rule = "As in the row Total of the cost report.")
          BigDecimal toComplete,
      @Result(
              key = "finalCost",
              heading = "Estimated final cost",
              form = NumberForm.MONEY,
              from = {"lines.finalCost", "project.*", "lines.reasons", LINES_ALL},
              rule = "As in the row Total of the cost report.")
          BigDecimal finalCost,
      @Result(
              key = "contingencyBefore",
              heading = "Contingency before changes",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.reasons", LINES_ALL, "project.*"},
              rule = "As approved, or its share of all budgets.")
          BigDecimal contingencyBefore,
      @Result(
              key = "drawn",
              heading = "Drawn from contingency",
              form = NumberForm.MONEY,
              from = {"lines.fromContingency", "lines.reasons", LINES_ALL, "project.*"},
              rule = "What approved changes took out of it.")
          BigDecimal drawn,
      @Result(
              key = "contingency",
              heading = "Contingency",
              form = NumberForm.MONEY,
              from = {"lines.budgetNow", "lines.reasons", LINES_ALL, "project.*"},
              rule = "As approved, or its share of all budgets; less what changes took out of it.")
          BigDecimal contingency,
      @Result(
              key = "variance",
              heading = "Variance",
              form = NumberForm.MONEY,
              from = {"lines.variance", "lines.reasons", LINES_ALL, "project.*"},
              rule = "Of all lines.")
          BigDecimal variance,
      @Result(
              key = "contingencyLeft",
              heading = "Contingency less overspend",
              form = NumberForm.MONEY,
              from = {"summary.contingency", "summary.variance"},
              rule = "Contingency less the total that lines are over; blank without one.")
          BigDecimal contingencyLeft,
      @Result(
              key = "gross",
              heading = "With tax",
              form = NumberForm.MONEY,
              from = {"lines.gross", "lines.reasons", LINES_ALL},
              rule = "Of all lines.")
          BigDecimal gross,
      @Result(
              key = "inCash",
              heading = "In Cash flow",
              form = NumberForm.MONEY,
              from = {
                "lines.gross",
                "lines.reclaimed",
                "lines.paidOn",
                "lines.reasons",
                LINES_ALL,
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "project.reclaimAfter",
                DEPOSITS_ALL,
                PROJECT_ALL
              },
              rule = "Of all weeks.")
          BigDecimal inCash,
      @Result(
              key = "notInCash",
              heading = "Not in Cash flow",
              form = NumberForm.MONEY,
              from = {
                "lines.gross",
                "lines.reclaimed",
                "lines.paidOn",
                "lines.reasons",
                LINES_ALL,
                "project.ordered",
                "project.delivered",
                "project.back",
                "project.daysAfter",
                "project.reclaimAfter",
                DEPOSITS_ALL,
                PROJECT_ALL
              },
              rule = "Lines whose date is missing.")
          BigDecimal notInCash,
      @Result(
              key = "paid",
              heading = "Paid",
              form = NumberForm.MONEY,
              from = {"lines.paid", "lines.reasons", LINES_ALL},
              rule = "So far, with tax.")
          BigDecimal paid,
      @Result(
              key = "toPay",
              heading = "Still to pay",
              form = NumberForm.MONEY,
              from = {"lines.toPay", "lines.reasons", LINES_ALL},
              rule = "With tax.")
          BigDecimal toPay,
      @Result(
              key = "peak",
              heading = "Peak of Cash flow",
              form = NumberForm.MONEY,
              from = {"weeks.soFar", "lines.reasons", LINES_ALL, PROJECT_ALL, DEPOSITS_ALL},
              rule = "The highest cumulative cash out of its weeks, from the day of the report on.")
          BigDecimal peak,
      @Result(
              key = "lowestOption",
              heading = "Lowest-cost option",
              from = {"options.cost", "options.option", "options.*", PROJECT_ALL},
              rule = "The option with the lowest cost; the first of equal ones.")
          String lowestOption) {}
}
