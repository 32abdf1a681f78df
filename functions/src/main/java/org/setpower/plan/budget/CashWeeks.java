package org.setpower.plan.budget;

import java.math.BigDecimal;
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
    if (line.due() != PaymentDue.EACH_WEEK) {
      return line.paidOn().isPresent()
          ? List.of()
          : List.of(missing(line.due(), dateOf(line.due())));
    }
    for (String key : List.of("delivered", "back")) {
      boolean typed =
          "back".equals(key) ? rules.project().back() != null : rules.project().delivered() != null;
      if (!typed) {
        return List.of(missing(line.due(), key));
      }
    }
    if (rules.isBackFirst()) {
      return List.of(missing(line.due(), "back"));
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
    LocalDate first = monday(rules.project().delivered());
    return ChronoUnit.WEEKS.between(first, monday(rules.project().back())) + 1;
  }

  private Week week(LocalDate day) {
    return weeks.computeIfAbsent(monday(day), k -> new Week());
  }

  private void place(BudgetLine line) {
    CostTax.Taxed cash = line.cash();
    if (!judge(rules, line).isEmpty()) {
      undated = undated.add(cash.gross());
    } else if (line.due() == PaymentDue.EACH_WEEK) {
      int count = (int) mondays(rules);
      List<BigDecimal> equal = Collections.nCopies(count, BigDecimal.ONE);
      List<BigDecimal> parts = Money.split(cash.gross(), equal, rules.currency());
      List<BigDecimal> backs = Money.split(cash.reclaimed(), equal, rules.currency());
      for (int i = 0; i < count; i++) {
        LocalDate day = monday(rules.project().delivered()).plusWeeks(i);
        pay(day, parts.get(i), backs.get(i));
      }
    } else {
      pay(line.paidOn().orElseThrow(), cash.gross(), cash.reclaimed());
    }
  }

  private void pay(LocalDate day, BigDecimal gross, BigDecimal reclaimed) {
    if (gross.signum() != 0) {
      Week paid = week(day);
      paid.payments = paid.payments.add(gross);
    }
    if (reclaimed.signum() != 0) {
      Week back = week(day.plusDays(rules.reclaimAfter()));
      back.reclaim = back.reclaim.add(reclaimed);
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
    depositFindings.put(row.number(), findings);
  }

  private void move(Deposit deposit, LocalDate out) {
    BigDecimal amount = rules.rounded(Money.decimal(deposit.amount()));
    Week paid = week(out);
    paid.depositsOut = paid.depositsOut.add(amount);
    if (deposit.back() != null) {
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
      BigDecimal cash =
          week.payments.add(week.depositsOut).subtract(week.depositsBack).subtract(week.reclaim);
      soFar = soFar.add(cash);
      rows.add(
          new BudgetResults.CashWeek(
              entry.getKey(),
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
