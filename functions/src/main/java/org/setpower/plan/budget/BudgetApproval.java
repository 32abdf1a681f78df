package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.setpower.plan.finding.Finding;

/**
 * What approving a budget writes, and what speaks against it.
 *
 * @param approved the day on which it was approved already; null while it is a draft
 * @param stops what is wrong with the project
 * @param withheld rows of lines that are a stop
 * @param checks rows of lines that count and are a check
 * @param amounts what every other line is planned to cost, as amounts are typed
 * @param contingency its amount, in the basis of the cost report
 */
public record BudgetApproval(
    LocalDate approved,
    List<Finding> stops,
    List<Integer> withheld,
    List<Integer> checks,
    List<Amount> amounts,
    BigDecimal contingency) {

  /** Of all lines, as amounts are typed: kept beside them, so that no later change hides. */
  public BigDecimal total() {
    return amounts.stream().map(Amount::planned).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /** The planned amount of a line; struck ones have none. */
  public record Amount(int row, BigDecimal planned) {}
}
