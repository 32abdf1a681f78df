package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Line;
import org.setpower.plan.finding.Finding;

/**
 * What was approved: its total and its contingency stay as they were kept, whatever happens to the
 * lines. What stands in no line that counts is a row of its own.
 */
final class ApprovedBudget {
  private final BudgetRules rules;
  private final Collection<BudgetLine> all;
  private final List<BudgetLine> fit;

  /**
   * @param all lines, those that stop included
   * @param fit those that count
   */
  ApprovedBudget(BudgetRules rules, Collection<BudgetLine> all, List<BudgetLine> fit) {
    this.rules = rules;
    this.all = all;
    this.fit = fit;
  }

  private static BigDecimal sum(Collection<BudgetLine> lines, Function<Line, Double> typed) {
    return lines.stream()
        .map(l -> BudgetRules.decimal(typed.apply(l.line())))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** Approved amounts of all lines as they stand now, as they are typed. */
  private BigDecimal now() {
    return rules.rounded(sum(all, Line::budget));
  }

  private BigDecimal kept() {
    Double total = rules.project().approvedTotal();
    return total == null ? now() : rules.rounded(Money.decimal(total));
  }

  /** Whether there is something to compare; not while a setting stops every line. */
  private boolean isKept() {
    return !rules.isDraft() && rules.stops().isEmpty();
  }

  private double key() {
    return BudgetApproval.key(
        rules.project().approved(),
        rules.terms(),
        rules.project().approvedTotal(),
        rules.project().approvedContingency(),
        rules.project().approvals(),
        all.stream().map(l -> l.line().budget()).toList());
  }

  /** What is wrong with the approval. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    if (rules.isDraft() && rules.project().approvedTotal() != null && rules.currency() != null) {
      findings.add(Finding.of(BudgetFinding.APPROVAL_CLEARED, kept()));
    } else if (rules.isDraft() && rules.project().approvals() != null) {
      findings.add(Finding.of(BudgetFinding.APPROVED_BEFORE, rules.project().approvals()));
    }
    if (isKept()) {
      if (rules.project().approvedTotal() == null) {
        findings.add(Finding.of(BudgetFinding.APPROVED_OPEN));
      } else if (kept().compareTo(now()) != 0) {
        findings.add(Finding.of(BudgetFinding.APPROVED_DIFFERS, kept(), now()));
      }
      Double key = rules.project().approvalKey();
      if (key != null && key != key()) {
        findings.add(Finding.of(BudgetFinding.APPROVED_CHANGED));
      }
      judgeContingency(findings);
    }
    return findings;
  }

  /** The share was typed anew after the approval, and the approved amount stays. */
  private void judgeContingency(List<Finding> findings) {
    boolean isWhole =
        rules.project().approvedTotal() != null
            && kept().compareTo(now()) == 0
            && all.stream().filter(l -> l.line().budget() != null).allMatch(fit::contains);
    boolean isWritten = rules.project().approvalKey() != null;
    if (!isWhole || !isWritten) {
      return;
    }
    BigDecimal budget =
        fit.stream().map(BudgetLine::approvedBudget).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal share = BudgetRules.decimal(rules.project().contingency());
    BigDecimal comesTo = rules.rounded(budget.multiply(share));
    BigDecimal was = rules.rounded(BudgetRules.decimal(rules.project().approvedContingency()));
    if (comesTo.compareTo(was) != 0) {
      findings.add(Finding.of(BudgetFinding.CONTINGENCY_MOVED, was, comesTo));
    }
  }

  /** What was approved and stands in no line that counts, in the basis of the report. */
  BigDecimal difference() {
    if (!isKept()) {
      return BigDecimal.ZERO;
    }
    BigDecimal counted = sum(fit, Line::budget).add(sum(fit, Line::changes));
    BigDecimal approved = kept().add(sum(all, Line::changes));
    return usual().reported(approved.subtract(counted));
  }

  private CostTax usual() {
    return CostTax.of(rules.project(), rules.currency());
  }

  /** What approved changes take out of the contingency, in the basis of the report. */
  BigDecimal fromContingency() {
    if (!isKept()) {
      return BigDecimal.ZERO;
    }
    BigDecimal counted =
        fit.stream().map(BudgetLine::fromContingency).reduce(BigDecimal.ZERO, BigDecimal::add);
    BigDecimal withheld = sum(all, Line::fromContingency).subtract(sum(fit, Line::fromContingency));
    return counted.add(usual().reported(withheld));
  }
}
