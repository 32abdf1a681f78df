package org.setpower.plan.budget;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.setpower.plan.common.Phrase;

/** What the cost report says beside the names of accounts and departments. */
enum ReportText {
  ACCOUNTS("Accounts"),
  DEPARTMENTS("Departments"),
  OTHER("Other"),
  STOPPED("{0}: stop, not counted"),
  DIFFERENCE("Approved, in no line"),
  SUBTOTAL("Subtotal"),
  CONTINGENCY("Contingency"),
  TOTAL("Total"),
  NET_DRAFT("Amounts in {0} without tax, budget: draft"),
  COST_DRAFT("Amounts in {0} with tax not reclaimed, budget: draft"),
  NET_APPROVED("Amounts in {0} without tax, budget approved on {1}"),
  COST_APPROVED("Amounts in {0} with tax not reclaimed, budget approved on {1}"),
  NET_DRAFT_AT("{0} without tax, draft, as at {1}"),
  COST_DRAFT_AT("{0} with tax not reclaimed, draft, as at {1}"),
  NET_APPROVED_AT("{0} without tax, approved {1}, as at {2}"),
  COST_APPROVED_AT("{0} with tax not reclaimed, approved {1}, as at {2}"),
  OVERDUE("Overdue"),
  DEPOSIT("Deposit: {0}"),
  WORKED("{0,number,#,##0.##} × {1,number,#,##0.##} × {2,number,#,##0.00#}"),
  WORKED_ABROAD(
      "{0,number,#,##0.##} × {1,number,#,##0.##} × {2,number,#,##0.00#} {3} at"
          + " {4,number,0.######}"),
  PAID_HOURS("{0} × {1,number,0.##} paid hours"),
  PAID_HOURS_OF("{0} × {1,number,0.##} paid hours of {2,number,0.##}"),
  LESS("{0}, less {1,number,0.##} %"),
  FRINGES("{0}, fringes {1}"),
  PER_DIEM("{0}, per diem {1}"),
  CASH("Amounts in {0} with tax, without contingency"),
  CASH_AT("Amounts in {0} with tax, without contingency, still to pay from {1}");

  private final String pattern;

  ReportText(String pattern) {
    this.pattern = pattern;
  }

  Phrase of() {
    return Phrase.of(pattern);
  }

  /** What a row of totals is called. */
  static Phrase label(CostTotals.Row row) {
    return switch (row.kind()) {
      case DIFFERENCE -> DIFFERENCE.of();
      case SUBTOTAL -> SUBTOTAL.of();
      case CONTINGENCY -> CONTINGENCY.of();
      case TOTAL -> TOTAL.of();
      default -> row.isUnnamed() ? OTHER.of() : Phrase.of("{0}", row.name());
    };
  }

  /** In what all columns of the cost report are; null where the currency is not known. */
  static Phrase basis(BudgetRules rules) {
    if (rules.currency() == null) {
      return null;
    }
    boolean cost = rules.project().columns() == TaxBasis.COST;
    String currency = rules.currency().getCurrencyCode();
    LocalDate asAt = rules.project().asAt();
    LocalDate approved = rules.project().approved();
    if (asAt == null) {
      return rules.isDraft()
          ? Phrase.of((cost ? COST_DRAFT : NET_DRAFT).pattern, currency)
          : Phrase.of((cost ? COST_APPROVED : NET_APPROVED).pattern, currency, approved);
    }
    return rules.isDraft()
        ? Phrase.of((cost ? COST_DRAFT_AT : NET_DRAFT_AT).pattern, currency, asAt)
        : Phrase.of((cost ? COST_APPROVED_AT : NET_APPROVED_AT).pattern, currency, approved, asAt);
  }

  /** In what Cash flow is; null where the currency is not known. */
  static Phrase cash(BudgetRules rules) {
    if (rules.currency() == null) {
      return null;
    }
    String currency = rules.currency().getCurrencyCode();
    LocalDate asAt = rules.project().asAt();
    return asAt == null
        ? Phrase.of(CASH.pattern, currency)
        : Phrase.of(CASH_AT.pattern, currency, asAt);
  }

  /** Who holds a deposit. */
  static Phrase deposit(String to) {
    return Phrase.of(DEPOSIT.pattern, to);
  }

  /** How the planned amount of a line comes about. */
  static Phrase worked(BudgetRules rules, BudgetLine line) {
    BudgetLine.Plan plan = line.plan();
    Phrase worked = multiplied(rules, line);
    if (plan.paidHours() != null) {
      double paid = plan.paidHours().doubleValue();
      Double of = line.hoursOfPrice();
      worked =
          of == null
              ? Phrase.of(PAID_HOURS.pattern, worked, paid)
              : Phrase.of(PAID_HOURS_OF.pattern, worked, paid, of);
    }
    if (BudgetRules.decimal(line.line().discount()).signum() != 0) {
      double share = BudgetRules.decimal(line.line().discount()).movePointRight(2).doubleValue();
      worked = Phrase.of(LESS.pattern, worked, share);
    }
    if (plan.fringes().signum() != 0) {
      worked = Phrase.of(FRINGES.pattern, worked, plan.fringes());
    }
    return plan.perDiems().signum() == 0
        ? worked
        : Phrase.of(PER_DIEM.pattern, worked, plan.perDiems());
  }

  private static Phrase multiplied(BudgetRules rules, BudgetLine line) {
    BudgetLine.Plan plan = line.plan();
    double counted = plan.counted().doubleValue();
    double times = plan.times().doubleValue();
    double price = BudgetRules.decimal(line.line().price()).doubleValue();
    return line.own().equals(rules.currency())
        ? Phrase.of(WORKED.pattern, counted, times, price)
        : Phrase.of(
            WORKED_ABROAD.pattern,
            counted,
            times,
            price,
            line.own().getCurrencyCode(),
            rules.rate(line.own()).orElseThrow());
  }

  /** What a row of Cash flow is called; null for what is overdue. */
  static Phrase week(LocalDate monday) {
    return monday == null ? OVERDUE.of() : Phrase.of("{0}", monday);
  }

  /** What a line is called in the cost report by line. */
  static Phrase label(String description, boolean stopped) {
    String name = description == null ? "?" : description;
    return Phrase.of(stopped ? STOPPED.pattern : "{0}", name);
  }

  static List<String> patterns() {
    return Arrays.stream(values()).map(t -> t.pattern).toList();
  }
}
