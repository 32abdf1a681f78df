package org.setpower.plan.common;

import java.util.Comparator;
import java.util.List;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/**
 * One open issue a cause, stops first: a table that every plan has.
 *
 * @param verdict stop or check
 * @param where table and rows
 * @param rows how many
 * @param reasons the finding that stands for all
 */
@Table(key = IssueRow.KEY, heading = "Open issues", rows = 0)
public record IssueRow(
    @Result(key = "verdict", heading = "Status", from = "issues.reasons", rule = "Of the cause.")
        Verdict verdict,
    @Result(
            key = "where",
            heading = "Where",
            from = {},
            rule = "Table and rows with this cause, the first ones by name.")
        Issues.Place where,
    @Result(
            key = "rows",
            heading = "Rows",
            from = {},
            rule = "How many rows have this cause.")
        int rows,
    @Result(
            key = "reasons",
            heading = "Reason",
            from = {},
            rule = "The sentence of the first of them.")
        List<Finding> reasons) {
  /** Key of the table in every plan. */
  public static final String KEY = "issues";

  /**
   * The table of a plan.
   *
   * @param rows that a sheet has room for
   * @param from columns whose findings are collected, and those that name a row
   */
  public static ResultTable<IssueRow> table(int rows, String... from) {
    return new ResultTable<>(IssueRow.class, rows, List.of(from));
  }

  /** The verdict of a plan as a whole. */
  public static Verdict worst(List<IssueRow> issues) {
    return issues.stream().map(IssueRow::verdict).max(Comparator.naturalOrder()).orElse(Verdict.OK);
  }
}
