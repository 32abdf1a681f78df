package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import org.setpower.hire.Money;
import org.setpower.plan.budget.BudgetInputs.Project;
import org.setpower.plan.budget.BudgetInputs.Tier;

/**
 * Paid hours of a day: hours are rounded up, at least the minimum call is paid, and each hour
 * counts with the factor of its step of overtime. Common practice of crew agreements; the steps are
 * typed.
 */
final class PaidHours {
  private final BigDecimal rounding;
  private final BigDecimal minimumCall;
  private final List<Tier> tiers;

  /**
   * @param tiers in any order, each hour once
   */
  PaidHours(Project project, List<Tier> tiers) {
    rounding = BudgetRules.decimal(project.rounding());
    minimumCall = BudgetRules.decimal(project.minimumCall());
    this.tiers = tiers.stream().sorted(Comparator.comparing(Tier::after)).toList();
  }

  boolean isWithoutTiers() {
    return tiers.isEmpty();
  }

  /** Hours as they are counted: rounded up, at least those of the call and those covered. */
  BigDecimal counted(Double worked, BigDecimal covered) {
    BigDecimal hours = Money.decimal(worked);
    if (rounding.signum() > 0) {
      hours = hours.divide(rounding, 0, RoundingMode.CEILING).multiply(rounding);
    }
    return hours.max(minimumCall).max(covered);
  }

  /** Paid hours of so many counted hours. */
  BigDecimal paid(BigDecimal hours) {
    BigDecimal paid = BigDecimal.ZERO;
    BigDecimal factor = BigDecimal.ONE;
    BigDecimal from = BigDecimal.ZERO;
    for (Tier tier : tiers) {
      BigDecimal to = Money.decimal(tier.after()).min(hours);
      paid = paid.add(to.subtract(from).max(BigDecimal.ZERO).multiply(factor));
      from = from.max(to);
      factor = Money.decimal(tier.factor());
    }
    return paid.add(hours.subtract(from).multiply(factor));
  }
}
