package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.setpower.base.EvaluationException;
import org.setpower.hire.Money;
import org.setpower.plan.batteries.BatteryPlanErrorCode;
import org.setpower.plan.batteries.CheapestMix;
import org.setpower.plan.budget.BudgetInputs.Battery;
import org.setpower.plan.budget.BudgetInputs.Mix;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.finding.Finding;

/** The cheapest mix of batteries for a job: how many of each type, and what it costs. */
final class BatteryMix {
  private final BudgetRules rules;

  /** Null where no job is filled in. */
  private final Mix job;

  private final List<Finding> findings = new ArrayList<>();
  private final Map<Integer, List<Finding>> rowFindings = new LinkedHashMap<>();
  private final Map<Integer, Battery> fit = new LinkedHashMap<>();

  /** By row; empty where there is no mix. */
  private final Map<Integer, Integer> pieces = new HashMap<>();

  BatteryMix(BudgetRules rules, InputRows<Mix> jobs, InputRows<Battery> batteries) {
    this.rules = rules;
    InputRow<Mix> row = jobs.rows().get(0);
    job = row.isBlank() ? null : row.value();
    findings.addAll(row.findings());
    judgeJob();
    batteries.filled().forEach(this::judge);
    if (job == null) {
      return;
    }
    int left = rowFindings.size() - fit.size();
    if (fit.isEmpty()) {
      findings.add(Finding.of(BudgetFinding.MIX_NO_BATTERIES));
    } else if (left > 0) {
      findings.add(Finding.of(BudgetFinding.MIX_LEFT_OUT, left));
    }
    if (findings.stream().noneMatch(BudgetPlan::isStop)
        && !fit.isEmpty()
        && rules.currency() != null) {
      choose();
    }
  }

  private void judgeJob() {
    if (job == null) {
      return;
    }
    if (job.usable() == null) {
      findings.add(Finding.of(BudgetFinding.MIX_USABLE));
    }
    if (isBroken(job.travellers())) {
      findings.add(Finding.of(BudgetFinding.MIX_WHOLE, BudgetInputs.MIX.column("travellers")));
    }
  }

  private void judge(InputRow<Battery> row) {
    List<Finding> all = new ArrayList<>(row.findings());
    Battery battery = row.value();
    for (String key : List.of("available", "perTraveller")) {
      if (isBroken(key.equals("available") ? battery.available() : battery.perTraveller())) {
        all.add(Finding.of(BudgetFinding.MIX_WHOLE, BudgetInputs.BATTERIES.column(key)));
      }
    }
    if (job == null) {
      all.add(Finding.of(BudgetFinding.MIX_NO_JOB));
    } else {
      if (job.maxWeight() != null && battery.weight() == null) {
        all.add(Finding.of(BudgetFinding.BATTERY_WEIGHT));
      }
      if (job.travellers() != null && battery.perTraveller() == null) {
        all.add(Finding.of(BudgetFinding.BATTERY_LIMIT));
      }
    }
    rowFindings.put(row.number(), all);
    if (all.stream().noneMatch(BudgetPlan::isStop)) {
      fit.put(row.number(), battery);
    }
  }

  private static boolean isBroken(Double typed) {
    return typed != null && typed != Math.rint(typed);
  }

  private void choose() {
    double usable = job.usable() == null ? 1 : job.usable();
    double watts = job.power() == null ? 0 : job.power();
    List<CheapestMix.Option> options = new ArrayList<>();
    fit.forEach(
        (row, b) ->
            options.add(
                new CheapestMix.Option(
                    row,
                    b.wattHours() * usable,
                    b.maxWatts(),
                    b.weight() == null ? 0 : b.weight(),
                    b.price(),
                    orMore(b.perTraveller()),
                    orMore(b.available()))));
    try {
      int[] mix =
          CheapestMix.of(
              options,
              new CheapestMix.Job(
                  job.energy(), watts, orMore(job.maxWeight()), orMore(job.travellers())));
      for (int i = 0; i < mix.length; i++) {
        pieces.put(options.get(i).row(), mix[i]);
      }
    } catch (EvaluationException none) {
      findings.add(
          none.errorCode() == BatteryPlanErrorCode.NO_MIX
              ? Finding.of(BudgetFinding.MIX_NONE, job.energy(), watts)
              : Finding.of(BudgetFinding.MIX_ALIKE));
    }
  }

  private static double orMore(Double typed) {
    return typed == null ? Double.POSITIVE_INFINITY : typed;
  }

  /** What is wrong with the job, worst first. */
  List<Finding> findings() {
    return BudgetPlan.sorted(findings);
  }

  /** What is wrong with a row of Batteries, worst first. */
  List<Finding> findings(int row) {
    return BudgetPlan.sorted(rowFindings.get(row));
  }

  BudgetResults.MixState state() {
    if (pieces.isEmpty()) {
      return BudgetResults.MIX.row(Finding.verdict(findings()), findings());
    }
    double usable = job.usable() == null ? 1 : job.usable();
    double energy = 0;
    double power = 0;
    Double weight = 0.0;
    BigDecimal cost = BigDecimal.ZERO;
    for (Map.Entry<Integer, Integer> entry : pieces.entrySet()) {
      Battery battery = fit.get(entry.getKey());
      int n = entry.getValue();
      energy += n * battery.wattHours() * usable;
      power += n * battery.maxWatts();
      if (n > 0) {
        weight = weight == null || battery.weight() == null ? null : weight + n * battery.weight();
      }
      cost = cost.add(cost(entry.getKey()));
    }
    return new BudgetResults.MixState(
        Finding.verdict(findings()),
        findings(),
        pieces.values().stream().mapToInt(n -> n).sum(),
        cost,
        energy,
        power,
        weight);
  }

  BudgetResults.BatteryState battery(int row) {
    Integer n = pieces.get(row);
    return new BudgetResults.BatteryState(
        Finding.verdict(findings(row)), findings(row), n, n == null ? null : cost(row));
  }

  private BigDecimal cost(int row) {
    BigDecimal price = Money.decimal(Objects.requireNonNull(fit.get(row)).price());
    return rules.rounded(price.multiply(BigDecimal.valueOf(pieces.get(row))));
  }
}
