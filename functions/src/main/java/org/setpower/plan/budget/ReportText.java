package org.setpower.plan.budget;

import java.util.Arrays;
import java.util.List;
import org.setpower.plan.common.Phrase;

/** What the cost report says beside the names of accounts and departments. */
enum ReportText {
  ACCOUNTS("Accounts"),
  DEPARTMENTS("Departments"),
  OTHER("Other"),
  CONTINGENCY("Contingency"),
  TOTAL("Total"),
  NET_DRAFT("Amounts in {0} without tax, budget: draft"),
  COST_DRAFT("Amounts in {0} with tax not reclaimed, budget: draft"),
  NET_APPROVED("Amounts in {0} without tax, budget approved on {1}"),
  COST_APPROVED("Amounts in {0} with tax not reclaimed, budget approved on {1}");

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
    if (rules.isDraft()) {
      return Phrase.of((cost ? COST_DRAFT : NET_DRAFT).pattern, currency);
    }
    ReportText text = cost ? COST_APPROVED : NET_APPROVED;
    return Phrase.of(text.pattern, currency, rules.project().approved());
  }

  static List<String> patterns() {
    return Arrays.stream(values()).map(t -> t.pattern).toList();
  }
}
