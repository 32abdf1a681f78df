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
import org.setpower.templates.shared.PlanHandover;
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
  void a_budget_can_measure_what_a_plan_hands_on() {
    assertThat(new PowerBudget().template().tables())
        .flatMap(TableBase::columns)
        .filteredOn(c -> c.isInput() && c.heading().equals(PlanHandover.MEASURE))
        .singleElement()
        .satisfies(c -> assertThat(c.options()).containsAll(PlanHandover.measures()));
  }
}
