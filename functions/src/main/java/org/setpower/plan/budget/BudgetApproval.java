package org.setpower.plan.budget;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.zip.CRC32;
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
 * @param terms what amounts are in, and with which tax
 * @param approvals what is noted of earlier ones; null where there are none
 */
public record BudgetApproval(
    LocalDate approved,
    List<Finding> stops,
    List<Integer> withheld,
    List<Integer> checks,
    List<Amount> amounts,
    BigDecimal contingency,
    String terms,
    String approvals) {

  /** Of all lines, as amounts are typed: kept beside them, so that no later change hides. */
  public BigDecimal total() {
    return amounts.stream().map(Amount::planned).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * A number worked out of what an approval wrote, which shows whether it was changed since. Rows
   * may be moved; those added later have no approved amount.
   */
  public static long key(
      LocalDate day,
      String terms,
      Double total,
      Double contingency,
      String approvals,
      Collection<Double> amounts) {
    CRC32 sum = new CRC32();
    String all =
        day
            + "|"
            + terms
            + "|"
            + Objects.requireNonNullElse(total, 0.0)
            + "|"
            + Objects.requireNonNullElse(contingency, 0.0)
            + "|"
            + amounts.stream().filter(a -> a != null && a != 0).sorted().toList()
            + (approvals == null ? "" : "|" + approvals);
    sum.update(all.getBytes(StandardCharsets.UTF_8));
    return sum.getValue();
  }

  /** The code of the currency that amounts are in. */
  public String currency() {
    return terms.substring(0, terms.indexOf(' '));
  }

  /** What is noted of all of them, this one first, which is put into words by whoever writes it. */
  public String approvals(String words) {
    return approvals == null ? words : words + "; " + approvals;
  }

  /**
   * That of this approval.
   *
   * @param noted what is written of all approvals
   */
  public long key(LocalDate day, String noted) {
    return key(
        day,
        terms,
        total().doubleValue(),
        contingency.doubleValue(),
        noted,
        amounts.stream().map(a -> a.planned().doubleValue()).toList());
  }

  /** The planned amount of a line; struck ones have none. */
  public record Amount(int row, BigDecimal planned) {}
}
