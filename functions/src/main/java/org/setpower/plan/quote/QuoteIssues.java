package org.setpower.plan.quote;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.setpower.plan.common.InputRow;
import org.setpower.plan.common.InputRows;
import org.setpower.plan.common.Issues;
import org.setpower.plan.finding.Finding;

/** The open issues of a quote, one a cause. */
final class QuoteIssues {
  private QuoteIssues() {}

  static List<QuoteResults.QuoteIssue> of(
      QuoteInputs inputs,
      BiFunction<String, InputRow<?>, List<Finding>> findings,
      List<Finding> withheld) {
    Issues issues = new Issues();
    List<Finding> rules = new ArrayList<>();
    for (InputRows<?> table : inputs.all()) {
      boolean upright = table.table().isUpright();
      for (InputRow<?> row : table.rows()) {
        if (upright || !row.isBlank()) {
          List<Finding> own = findings.apply(table.table().key(), row);
          if (upright) {
            rules.addAll(QuoteRules.stops(own));
          }
          // what the house or the order stops is one issue there
          List<Finding> left =
              upright ? own : own.stream().filter(f -> !rules.contains(f)).toList();
          issues.add(table.table().heading(), name(table.table().key(), row), left);
        }
      }
    }
    withheld.stream()
        .filter(f -> f.key() == QuoteFinding.NOTHING_QUOTED)
        .forEach(f -> issues.add(QuoteResults.DOCUMENT.heading(), "1", List.of(f)));
    return issues.worstFirst().stream()
        .map(
            i ->
                new QuoteResults.QuoteIssue(
                    i.severity().verdict(), i.where(), i.findings().size(), List.of(i.first())))
        .toList();
  }

  private static String name(String table, InputRow<?> row) {
    Object item = row.cells().get("item");
    boolean numbered = "items".equals(table) || item == null;
    return numbered ? "#" + row.number() : item.toString();
  }
}
