package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.setpower.base.TextEnum;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Scenario;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;

/** What one change of the plan costs more, beside the plan, and what it does to the contingency. */
final class ScenarioCosts {
  private static final int NAMED = 5;

  private final BudgetRules rules;
  private final List<BudgetLine> lines;

  /** Null without a contingency. */
  private final BigDecimal contingencyLeft;

  private final Map<Integer, State> states = new HashMap<>();

  /**
   * A scenario.
   *
   * @param more in the basis of the cost report; null where it is not known
   * @param left of the contingency; below 0 it is overspent, null without one
   */
  record State(List<Finding> findings, BigDecimal more, BigDecimal left) {}

  /**
   * @param lines those that are fit
   */
  ScenarioCosts(
      BudgetRules rules,
      List<BudgetLine> lines,
      BigDecimal contingencyLeft,
      InputRows<Scenario> scenarios) {
    this.rules = rules;
    this.lines = lines;
    this.contingencyLeft = contingencyLeft;
    scenarios.filled().forEach(r -> states.put(r.number(), judge(r)));
  }

  State state(int row) {
    return states.get(row);
  }

  private State judge(InputRow<Scenario> row) {
    List<Finding> findings = new ArrayList<>(row.findings());
    Scenario scenario = row.value();
    if (!findings.isEmpty() || rules.currency() == null) {
      return new State(findings, null, null);
    }
    List<BudgetLine> changed = lines.stream().filter(l -> concerns(scenario, l)).toList();
    boolean changes = scenario.dearer() != null || scenario.moreTimes() != null;
    if (scenario.type() != null && changed.isEmpty()) {
      findings.add(Finding.of(BudgetFinding.SCENARIO_NO_LINES, scenario.type().word()));
    } else if (scenario.other() == null && !changes) {
      findings.add(Finding.of(BudgetFinding.SCENARIO_EMPTY));
    }
    if (or(scenario.moreTimes()) != 0 && scenario.other() == null) {
      addSame(changed, scenario.moreTimes(), findings);
    }
    BigDecimal more = rules.rounded(Money.decimal(or(scenario.other())));
    for (BudgetLine line : changed) {
      more = more.add(line.more(scenario.dearer(), scenario.moreTimes()));
    }
    if (or(scenario.moreTimes()) != 0) {
      addWeeks(changed, findings);
    }
    if (changes && more.signum() == 0 && findings.isEmpty()) {
      findings.add(Finding.of(BudgetFinding.SCENARIO_NOTHING));
    }
    if (contingencyLeft == null) {
      if (more.signum() > 0) {
        findings.add(Finding.of(BudgetFinding.SCENARIO_UNCOVERED, more));
      }
      return new State(findings, more, null);
    }
    BigDecimal left = contingencyLeft.subtract(more);
    if (left.signum() < 0) {
      findings.add(Finding.of(BudgetFinding.SCENARIO_OVER, more, left.negate()));
    }
    return new State(findings, more, left);
  }

  /** Without a type a change concerns all lines, another amount none. */
  private static boolean concerns(Scenario scenario, BudgetLine line) {
    return !line.isStruck() && (scenario.type() == null || line.line().type() == scenario.type());
  }

  private void addWeeks(List<BudgetLine> changed, List<Finding> findings) {
    changed.stream()
        .filter(l -> l.isByWeek() && l.changesWithDays())
        .map(l -> l.line().type())
        .filter(t -> rules.weekDays(t) == null)
        .map(BudgetRules::weekColumn)
        .distinct()
        .forEach(c -> findings.add(Finding.of(BudgetFinding.SCENARIO_WEEK, c)));
  }

  /** Names lines that cost nothing more, of those that cost something at all. */
  private static void addSame(List<BudgetLine> changed, double days, List<Finding> findings) {
    List<BudgetLine> same =
        changed.stream()
            .filter(l -> l.plan().all().signum() != 0)
            .filter(l -> !l.changesWithDays() || l.more(null, days).signum() == 0)
            .toList();
    if (!same.isEmpty()) {
      List<String> names =
          same.stream()
              .map(l -> l.line().description())
              .filter(Objects::nonNull)
              .map(TextEnum::shortened)
              .distinct()
              .sorted()
              .toList();
      String named = names.stream().limit(NAMED).collect(Collectors.joining(", "));
      String all = names.size() > NAMED ? named + ", …" : named;
      findings.add(Finding.of(BudgetFinding.SCENARIO_SAME, same.size(), changed.size(), all));
    }
  }

  private static double or(Double typed) {
    return typed == null ? 0 : typed;
  }
}
