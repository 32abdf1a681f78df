package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Line;
import org.setpower.plan.finding.Identity;

/** Totals of lines by account and by department; contingency is a line of its own. */
final class CostTotals {
  private static final String NO_GROUP = "other";

  private final BudgetRules rules;
  private final List<BudgetLine> lines;

  /** Six columns of the cost report. */
  record Sums(
      BigDecimal budget,
      BigDecimal ordered,
      BigDecimal costToDate,
      BigDecimal toComplete,
      BigDecimal finalCost,
      BigDecimal variance) {
    private static final Sums NONE = even(BigDecimal.ZERO, BigDecimal.ZERO);

    /** Nothing ordered, and kept in full. */
    private static Sums even(BigDecimal budget, BigDecimal zero) {
      return new Sums(budget, zero, zero, budget, budget, zero);
    }

    private Sums plus(Sums other) {
      return new Sums(
          budget.add(other.budget),
          ordered.add(other.ordered),
          costToDate.add(other.costToDate),
          toComplete.add(other.toComplete),
          finalCost.add(other.finalCost),
          variance.add(other.variance));
    }
  }

  /** A row of totals; the name is null for contingency and total. */
  record Row(TotalKind kind, String name, Sums sums) {
    /** Whether its lines name no account or department. */
    boolean isUnnamed() {
      return NO_GROUP.equals(name);
    }
  }

  /**
   * @param lines those that are fit
   */
  CostTotals(BudgetRules rules, List<BudgetLine> lines) {
    this.rules = rules;
    this.lines = lines;
  }

  private static Sums sums(BudgetLine line) {
    BudgetLine.Report report = line.report();
    return new Sums(
        report.budget(),
        report.ordered(),
        report.costToDate(),
        report.toComplete(),
        report.finalCost(),
        report.variance());
  }

  /** Of all lines, without contingency. */
  Sums all() {
    return lines.stream().map(CostTotals::sums).reduce(Sums.NONE, Sums::plus);
  }

  /** The share of the budget of all lines that is kept. */
  BigDecimal contingency() {
    Double share = rules.project().contingency();
    return share == null || rules.currency() == null
        ? BigDecimal.ZERO
        : rules.rounded(all().budget.multiply(Money.decimal(share)));
  }

  /** What is left of the contingency when the lines are over in all. */
  BigDecimal contingencyLeft() {
    return contingency().add(all().variance.min(BigDecimal.ZERO));
  }

  private Sums kept() {
    return Sums.even(contingency(), BigDecimal.ZERO);
  }

  /** Of all lines and contingency. */
  Sums total() {
    return rules.project().contingency() == null ? all() : all().plus(kept());
  }

  List<Row> by(Function<Line, String> group) {
    Map<String, Row> groups = new TreeMap<>();
    for (BudgetLine line : lines) {
      String typed = group.apply(line.line());
      String name = typed == null ? NO_GROUP : typed;
      groups.merge(
          Identity.of(name),
          new Row(TotalKind.GROUP, name, sums(line)),
          (a, b) -> new Row(TotalKind.GROUP, first(a.name, b.name), a.sums.plus(b.sums)));
    }
    List<Row> rows = new ArrayList<>(groups.values());
    if (rules.project().contingency() != null) {
      rows.add(new Row(TotalKind.CONTINGENCY, null, kept()));
    }
    rows.add(new Row(TotalKind.TOTAL, null, total()));
    return rows;
  }

  /** One spelling of a name, whatever the order of lines. */
  private static String first(String one, String other) {
    return one.compareTo(other) <= 0 ? one : other;
  }
}
