package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.setpower.templates.budget.PowerBudget;
import org.setpower.templates.layout.Layout;
import org.setpower.templates.spec.CellContext;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.spec.WorkbookSpec;

/** The contingency after a change, in the finding of What if. */
class OverspentTest {
  private static final Pattern QUOTED = Pattern.compile("\"(?:[^\"]|\"\")*\"");
  private static final Pattern CELL =
      Pattern.compile("[\\p{L}_$.']*\\$?[A-Z]{1,2}\\$?\\d+|[A-Z]\\w*_\\w+");

  @Test
  void the_figure_that_is_printed_is_the_one_that_is_tested() {
    WorkbookSpec template = new PowerBudget().template();
    Layout layout = new Layout(template);
    TableSpec table =
        template.tables().stream()
            .filter(t -> t.title().equals("What if"))
            .map(TableSpec.class::cast)
            .findFirst()
            .orElseThrow();
    CellContext place = layout.place(table);
    ColumnSpec left =
        table.columns().stream()
            .filter(c -> c.heading().equals("Contingency left"))
            .findFirst()
            .orElseThrow();
    String tested = left.text(place);
    List<String> findings =
        table.columns().stream()
            .filter(c -> !c.isInput())
            .map(c -> TableSpec.guarded(c, place))
            .filter(f -> f.contains(tested + "<0"))
            .toList();
    assertThat(findings).singleElement();
    String finding = findings.get(0);
    String then = finding.substring(finding.indexOf(tested + "<0"));
    then = then.substring(then.indexOf("\"check:"), then.indexOf("\"ok:\""));
    assertThat(then).contains("contingency is overspent by ").contains("-" + tested);
    assertThat(CELL.matcher(QUOTED.matcher(then).replaceAll("~")).results().map(MatchResult::group))
        .isNotEmpty()
        .allMatch(tested::equals);
  }
}
