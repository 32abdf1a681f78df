package org.setpower.plan.register;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.register.RegisterInputs.Battery;

/**
 * Whether a battery may be marked as inspected and fine together with others. One that anything
 * else speaks against is inspected and entered by itself.
 *
 * @param row its row in Batteries, from 1
 * @param serial null where the row has none
 * @param against what speaks against it, the worst first
 * @param out whether somebody has it, so that nobody can inspect it
 * @param returning whether its last return is entered in part, so that an inspection of that day
 *     may be one before it
 * @param inspected day of its last inspection, null without one
 * @param condition null where it is blank
 */
public record Inspection(
    int row,
    String serial,
    List<Finding> against,
    boolean out,
    boolean returning,
    LocalDate inspected,
    Condition condition) {
  /** Findings that speak against it though they are no danger by themselves. */
  private static final Set<FindingKey> MORE =
      Set.of(
          RegisterFinding.NEEDS_SERVICE,
          RegisterFinding.NOT_CHARGING,
          RegisterFinding.LOST,
          RegisterFinding.ENTER_INCIDENT,
          RegisterFinding.CONDITION_CLOSED,
          RegisterFinding.SERIAL_ZEROS,
          RegisterFinding.INCIDENT_SERVICE,
          RegisterFinding.RECALL_BY_HAND,
          RegisterFinding.INCIDENT_OTHER_TYPE,
          RegisterFinding.RETIRED,
          RegisterFinding.RETIRED_LATER,
          CommonFinding.NO_IDENTITY);

  /** Keys of the cells that a mark fills. */
  private static final Set<String> WRITTEN = Set.of("condition", "inspected", "inspectedBy");

  static Inspection of(InputRow<Battery> row, List<Finding> findings) {
    Battery battery = row.value();
    return new Inspection(
        row.number(),
        battery.serial(),
        findings.stream().filter(f -> speaksAgainst(f) || isUnread(row, f)).toList(),
        row.cells().containsKey("outTo"),
        findings.stream().anyMatch(f -> f.key() == RegisterFinding.RETURN_PART),
        battery.inspected(),
        battery.condition());
  }

  private static boolean speaksAgainst(Finding finding) {
    return MORE.contains(finding.key())
        || finding.severity() == Severity.DANGER
            && finding.key() != RegisterFinding.OUT_UNFIT
            && finding.key() != RegisterFinding.OUT_DANGER;
  }

  /** Whether it is about a cell that would be written over. */
  private static boolean isUnread(InputRow<Battery> row, Finding finding) {
    return !finding.arguments().isEmpty()
        && finding.arguments().get(0) instanceof InputColumn column
        && WRITTEN.contains(column.key())
        && row.unreadable().contains(column.key());
  }

  /** Whether it may be marked as inspected on a day: not before its last inspection. */
  public boolean isPossible(LocalDate day) {
    return against.isEmpty() && !out && !isDone(day);
  }

  /** Whether it is fine by an inspection of that day, or was inspected later. */
  public boolean isDone(LocalDate day) {
    return inspected != null
        && (inspected.isAfter(day)
            || condition == Condition.FINE && inspected.isEqual(day) && !returning);
  }
}
