package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Line;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Identity;

/** Totals of lines by account and by department; contingency is a line of its own. */
final class CostTotals {
  private static final String NO_GROUP = "other";

  private final BudgetRules rules;
  private final List<BudgetLine> lines;
  private final ApprovedBudget approved;

  /** The columns of the cost report. */
  record Sums(
      BigDecimal budget,
      BigDecimal ordered,
      BigDecimal invoiced,
      BigDecimal costToDate,
      BigDecimal toComplete,
      BigDecimal finalCost,
      BigDecimal variance) {
    /** Nothing ordered, and kept in full. */
    private static Sums even(BigDecimal budget, BigDecimal zero) {
      return new Sums(budget, zero, zero, zero, budget, budget, zero);
    }

    /** An amount that counts as spent where it is a budget, and as over where it is below 0. */
    private static Sums cautious(BigDecimal difference) {
      BigDecimal cost = difference.max(BigDecimal.ZERO);
      BigDecimal zero = BigDecimal.ZERO;
      return new Sums(difference, zero, zero, zero, cost, cost, difference.subtract(cost));
    }

    /** Open commitment: what is ordered and still to be invoiced. */
    BigDecimal open() {
      return costToDate.subtract(invoiced);
    }

    private Sums plus(Sums other) {
      return new Sums(
          budget.add(other.budget),
          ordered.add(other.ordered),
          invoiced.add(other.invoiced),
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
  CostTotals(BudgetRules rules, List<BudgetLine> lines, ApprovedBudget approved) {
    this.rules = rules;
    this.approved = approved;
    this.lines = lines;
  }

  static Sums sums(BudgetLine line) {
    BudgetLine.Report report = line.report();
    return new Sums(
        report.budget(),
        report.ordered(),
        report.invoiced(),
        report.costToDate(),
        report.toComplete(),
        report.finalCost(),
        report.variance());
  }

  /** Of all lines, without contingency. */
  Sums all() {
    return lines.stream().map(CostTotals::sums).reduce(difference(), Sums::plus);
  }

  /** What was approved and stands in no line that counts. */
  private Sums difference() {
    return Sums.cautious(approved.difference());
  }

  boolean hasContingency() {
    return rules.project().contingency() != null || keptContingency() != null;
  }

  private Double keptContingency() {
    return rules.isDraft() ? null : rules.project().approvedContingency();
  }

  /** As approved, or the share of the budget of all lines; less what changes took out of it. */
  BigDecimal contingency() {
    if (!hasContingency() || rules.currency() == null) {
      return BigDecimal.ZERO;
    }
    return before().subtract(approved.fromContingency());
  }

  /** What approved changes took out of the contingency; 0 without one. */
  BigDecimal taken() {
    return hasContingency() && rules.currency() != null
        ? approved.fromContingency()
        : BigDecimal.ZERO;
  }

  /** As approved or as its share, before changes took anything out of it; 0 without one. */
  BigDecimal contingencyBefore() {
    return contingency().add(taken());
  }

  private BigDecimal before() {
    Double kept = keptContingency();
    return rules.rounded(
        kept == null
            ? all().budget.multiply(Money.decimal(rules.project().contingency()))
            : Money.decimal(kept));
  }

  /** What is wrong with the contingency. */
  List<Finding> findings() {
    BigDecimal taken = approved.fromContingency();
    BigDecimal left = contingency();
    return taken.signum() > 0 && (left.signum() < 0 || !hasContingency())
        ? List.of(Finding.of(BudgetFinding.CONTINGENCY_USED_UP, taken, left.add(taken)))
        : List.of();
  }

  /** What is left of the contingency when the lines are over in all; null without one. */
  BigDecimal contingencyLeft() {
    return hasContingency() ? contingency().add(all().variance.min(BigDecimal.ZERO)) : null;
  }

  private Sums kept() {
    return Sums.even(contingency(), BigDecimal.ZERO);
  }

  /** Of all lines and contingency. */
  Sums total() {
    return hasContingency() ? all().plus(kept()) : all();
  }

  List<Row> by(Function<Line, String> group) {
    Map<String, Row> groups = new TreeMap<>();
    for (BudgetLine line : lines) {
      if (line.isQuiet()) {
        continue;
      }
      String typed = group.apply(line.line());
      String name = typed == null ? NO_GROUP : typed;
      groups.merge(
          Identity.of(name),
          new Row(TotalKind.GROUP, name, sums(line)),
          (a, b) -> new Row(TotalKind.GROUP, first(a.name, b.name), a.sums.plus(b.sums)));
    }
    List<Row> rows = new ArrayList<>(groups.values());
    rows.addAll(end());
    return rows;
  }

  /** The rows below lines or groups: what is in none of them, contingency, total. */
  private List<Row> end() {
    List<Row> rows = new ArrayList<>();
    if (difference().budget.signum() != 0) {
      rows.add(new Row(TotalKind.DIFFERENCE, null, difference()));
    }
    if (hasContingency()) {
      rows.add(new Row(TotalKind.CONTINGENCY, null, kept()));
    }
    rows.add(new Row(TotalKind.TOTAL, null, total()));
    return rows;
  }

  /** The same with the total before contingency, as the pages have it. */
  List<Row> shown(List<Row> rows) {
    List<Row> shown = new ArrayList<>();
    for (Row row : rows) {
      if (row.kind == TotalKind.CONTINGENCY) {
        shown.add(new Row(TotalKind.SUBTOTAL, null, all()));
      }
      shown.add(row);
    }
    return shown;
  }

  /** The rows below all lines. */
  List<Row> belowLines() {
    return shown(end());
  }

  /** One spelling of a name, whatever the order of lines. */
  private static String first(String one, String other) {
    return one.compareTo(other) <= 0 ? one : other;
  }
}
