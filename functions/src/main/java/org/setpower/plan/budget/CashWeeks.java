package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Deposit;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;

/** When the money moves: lines with tax, deposits out and back, reclaimed tax in its own week. */
final class CashWeeks {
  /** Weekly payments over more than a year are a slip of the pen. */
  private static final int MOST_WEEKS = 53;

  /** Where payments stand whose day is over: before all weeks. */
  private static final LocalDate OVERDUE = LocalDate.MIN;

  private static final BigDecimal NOTHING = BigDecimal.ZERO;

  private final BudgetRules rules;
  private final Map<LocalDate, Week> weeks = new TreeMap<>();
  private final Map<Integer, List<Finding>> depositFindings = new HashMap<>();
  private BigDecimal undated;

  /** What moves in a week. */
  private static final class Week {
    private BigDecimal payments = BigDecimal.ZERO;
    private BigDecimal depositsOut = BigDecimal.ZERO;
    private BigDecimal depositsBack = BigDecimal.ZERO;
    private BigDecimal reclaim = BigDecimal.ZERO;
  }

  /**
   * @param lines those that are fit; each gets a finding where it cannot be placed
   */
  CashWeeks(BudgetRules rules, List<BudgetLine> lines, InputRows<Deposit> deposits) {
    this.rules = rules;
    undated = BigDecimal.ZERO;
    lines.forEach(this::place);
    deposits.filled().forEach(this::read);
  }

  /** Why a line cannot be placed; empty when it can. */
  static List<Finding> judge(BudgetRules rules, BudgetLine line) {
    if (!line.isWeekly()) {
      return line.paidOn().isPresent()
          ? List.of()
          : List.of(missing(line.due(), dateOf(line.due())));
    }
    LocalDate from = rules.weeklyFrom();
    LocalDate to = rules.weeklyTo();
    if (from == null) {
      return List.of(missing(line.due(), "delivered"));
    }
    if (to == null || to.isBefore(from)) {
      String end = rules.project().lastDay() == null ? "back" : "lastDay";
      return List.of(missing(line.due(), end));
    }
    long count = mondays(rules);
    return count <= MOST_WEEKS
        ? List.of()
        : List.of(Finding.of(BudgetFinding.TOO_MANY_WEEKS, (double) count, (double) MOST_WEEKS));
  }

  private static String dateOf(PaymentDue due) {
    return switch (due) {
      case WITH_ORDER -> "ordered";
      case ON_DELIVERY, EACH_WEEK -> "delivered";
      case ON_RETURN, DAYS_AFTER -> "back";
    };
  }

  private static Finding missing(PaymentDue due, String key) {
    InputColumn column = BudgetInputs.PROJECT.column(key);
    return Finding.of(BudgetFinding.NOT_IN_CASH, due.word(), column);
  }

  private static LocalDate monday(LocalDate day) {
    return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  private static long mondays(BudgetRules rules) {
    LocalDate first = monday(rules.weeklyFrom());
    return ChronoUnit.WEEKS.between(first, monday(rules.weeklyTo())) + 1;
  }

  private Week week(LocalDate day) {
    return weeks.computeIfAbsent(monday(day), k -> new Week());
  }

  /** Before the report: nothing of it is shown any more. */
  private boolean isOver(LocalDate day) {
    LocalDate asAt = rules.project().asAt();
    return asAt != null && day.isBefore(monday(asAt));
  }

  private void place(BudgetLine line) {
    CostTax.Taxed cash = line.cash();
    LocalDate asAt = rules.project().asAt();
    BigDecimal paid =
        asAt == null ? NOTHING : rules.rounded(BudgetRules.decimal(line.line().paid()));
    if (cash.gross().signum() != 0 && !judge(rules, line).isEmpty()) {
      undated = undated.add(cash.gross().subtract(paid));
      return;
    }
    List<LocalDate> days = days(line);
    List<BigDecimal> parts = parts(cash.gross(), days.size());
    List<BigDecimal> taxes = parts(cash.reclaimed(), days.size());
    for (int i = 0; i < days.size(); i++) {
      LocalDate day = days.get(i);
      BigDecimal part = parts.get(i);
      // what is paid is of the first parts; what is too much, or a credit, of the last
      BigDecimal settled = i == days.size() - 1 ? paid : covered(paid, part);
      paid = paid.subtract(settled);
      BigDecimal back = rules.rounded(taxes.get(i).multiply(share(settled, part)));
      if (settled.signum() != 0) {
        reclaim(day.isAfter(asAt) ? asAt : day, back);
      }
      boolean overdue = isOverdue(day, line.isWeekly());
      if (part.compareTo(settled) != 0) {
        Week week = overdue ? weeks.computeIfAbsent(OVERDUE, k -> new Week()) : week(day);
        week.payments = week.payments.add(part.subtract(settled));
      }
      reclaim(overdue ? asAt : day, taxes.get(i).subtract(back));
    }
  }

  /** What of a part is covered by a payment of the same sign. */
  private static BigDecimal covered(BigDecimal paid, BigDecimal part) {
    if (paid.signum() != part.signum()) {
      return NOTHING;
    }
    return paid.signum() > 0 ? paid.min(part) : paid.max(part);
  }

  private static BigDecimal share(BigDecimal settled, BigDecimal part) {
    return part.signum() == 0 ? BigDecimal.ONE : settled.divide(part, MathContext.DECIMAL128);
  }

  /** Whether it should be paid by the day of the report; of a week, by its end. */
  private boolean isOverdue(LocalDate day, boolean weekly) {
    LocalDate asAt = rules.project().asAt();
    return asAt != null && (weekly ? isOver(day) : day.isBefore(asAt));
  }

  /** The days on which a line is paid by the plan. */
  private List<LocalDate> days(BudgetLine line) {
    if (line.cash().gross().signum() == 0 && !judge(rules, line).isEmpty()) {
      return List.of(rules.project().asAt() == null ? LocalDate.EPOCH : rules.project().asAt());
    }
    if (!line.isWeekly()) {
      return List.of(line.paidOn().orElseThrow());
    }
    LocalDate first = monday(rules.weeklyFrom());
    return Stream.iterate(first, d -> d.plusWeeks(1)).limit(mondays(rules)).toList();
  }

  private List<BigDecimal> parts(BigDecimal amount, int count) {
    return Money.split(amount, Collections.nCopies(count, BigDecimal.ONE), rules.currency());
  }

  /** Tax of a payment on a day comes back; what came back before the report is over. */
  private void reclaim(LocalDate paid, BigDecimal amount) {
    LocalDate day = paid.plusDays(rules.reclaimAfter());
    if (amount.signum() != 0 && !isOver(day)) {
      Week week = week(day);
      week.reclaim = week.reclaim.add(amount);
    }
  }

  private void read(InputRow<Deposit> row) {
    Deposit deposit = row.value();
    List<Finding> findings = new ArrayList<>(row.findings());
    boolean typed = row.cells().containsKey("out");
    LocalDate out = typed ? deposit.out() : rules.project().ordered();
    if (out != null && deposit.back() != null && deposit.back().isBefore(out)) {
      findings.add(Finding.of(BudgetFinding.DEPOSIT_DATES, deposit.back(), out));
    }
    if (findings.isEmpty()) {
      if (out == null) {
        findings.add(Finding.of(BudgetFinding.DEPOSIT_UNDATED));
      } else if (rules.currency() != null) {
        move(deposit, out);
      }
      if (deposit.back() == null) {
        findings.add(Finding.of(BudgetFinding.DEPOSIT_OPEN));
      }
    }
    findings.addAll(rules.far(BudgetInputs.DEPOSITS.column("out"), deposit.out()));
    findings.addAll(rules.far(BudgetInputs.DEPOSITS.column("back"), deposit.back()));
    depositFindings.put(row.number(), findings);
  }

  private void move(Deposit deposit, LocalDate out) {
    BigDecimal amount = rules.rounded(Money.decimal(deposit.amount()));
    if (!isOver(out)) {
      Week paid = week(out);
      paid.depositsOut = paid.depositsOut.add(amount);
    }
    if (deposit.back() != null && !isOver(deposit.back())) {
      Week back = week(deposit.back());
      back.depositsBack = back.depositsBack.add(amount);
    }
  }

  List<Finding> depositFindings(int row) {
    return depositFindings.get(row);
  }

  /** With tax, of lines that have no week. */
  BigDecimal undated() {
    return undated;
  }

  /** Weeks in which money moves, in order. */
  List<BudgetResults.CashWeek> rows() {
    List<BudgetResults.CashWeek> rows = new ArrayList<>();
    BigDecimal soFar = BigDecimal.ZERO;
    for (Map.Entry<LocalDate, Week> entry : weeks.entrySet()) {
      Week week = entry.getValue();
      LocalDate day = OVERDUE.equals(entry.getKey()) ? null : entry.getKey();
      BigDecimal cash =
          week.payments.add(week.depositsOut).subtract(week.depositsBack).subtract(week.reclaim);
      soFar = soFar.add(cash);
      rows.add(
          new BudgetResults.CashWeek(
              ReportText.week(day),
              day,
              week.payments,
              week.depositsOut,
              week.depositsBack,
              week.reclaim,
              cash,
              soFar));
    }
    return rows;
  }
}
