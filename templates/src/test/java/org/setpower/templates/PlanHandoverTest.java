package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.base.ReferenceTable;
import org.setpower.templates.budget.PowerBudget;
import org.setpower.templates.example.TemplateDefinition;
import org.setpower.templates.lighting.LightingPlan;
import org.setpower.templates.quote.RentalQuote;
import org.setpower.templates.shared.PlanHandover;
import org.setpower.templates.spec.CellSpec;
import org.setpower.templates.spec.TableBase;

/** What a plan hands on to a budget stands in both files in the same rows. */
class PlanHandoverTest {
  @ParameterizedTest
  @ValueSource(strings = {"budget/budget-plan.csv", "example/budget/budget-plan.csv"})
  void the_budget_begins_with_the_rows_of_the_plan(String file) throws IOException {
    List<String> rows =
        Arrays.stream(PlanHandover.values()).map(r -> r.text() + r.measure()).toList();
    try (InputStream in =
        PlanHandover.class.getResourceAsStream("/org/setpower/templates/" + file)) {
      assertThat(ReferenceTable.FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8)))
          .extracting(r -> r.get(PlanHandover.TITLE) + r.get(PlanHandover.MEASURE))
          .startsWith(rows.toArray(new String[0]));
    }
  }

  @Test
  void the_quote_takes_the_columns_of_the_order_list() {
    List<String> plan = headings(new LightingPlan(), "For the quote");
    assertThat(plan).isNotEmpty();
    assertThat(headings(new RentalQuote(), PlanHandover.TITLE))
        .startsWith(plan.toArray(String[]::new));
  }

  private static List<String> headings(TemplateDefinition workbook, String tab) {
    return workbook.template().tabs().stream()
        .filter(t -> t.name().equals(tab))
        .flatMap(t -> t.tables().stream())
        .flatMap(t -> t.columns().stream())
        .filter(c -> !c.isWorking())
        .map(CellSpec::heading)
        .toList();
  }

  @Test
  void a_budget_can_measure_what_a_plan_hands_on() {
    assertThat(new PowerBudget().template().tables())
        .flatMap(TableBase::columns)
        .filteredOn(c -> c.isInput() && c.heading().equals(PlanHandover.MEASURE))
        .singleElement()
        .satisfies(c -> assertThat(c.options()).containsAll(PlanHandover.measures()));
  }
}
