package org.setpower.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.register.RegisterPlan;

/** Show calculation on the figures of a plan. */
@ExtendWith(SharedOffice.class)
class PlanTraceIT {
  private Office office;
  private PlanDocument plan;

  @BeforeEach
  void fill(Office shared) throws Exception {
    office = shared;
    plan = PlanDocument.of(office, RegisterPlan.MODEL, 4, 8);
    plan.type("project", "asOf", 1, 46_428).type("types", "type", 1, "P1");
    plan.type("types", "chemistry", 1, "Li-ion").type("types", "required", 1, 2);
    plan.type("checkout", "serial", 1, "P1-02");
    plan.type("limits", "chemistry", 1, "Li-ion");
    for (int row = 1; row <= 2; row++) {
      plan.type("batteries", "serial", row, "P1-0" + row).type("batteries", "type", row, "P1");
      plan.type("batteries", "energy", row, 98).type("batteries", "condition", row, "fine");
      plan.type("batteries", "inspected", row, 46_400)
          .type("batteries", "inspectedBy", row, "bench");
    }
    plan.type("incidents", "serial", 1, "P1-01").type("incidents", "happened", 1, "wet");
    plan.type("incidents", "date", 1, 46_300);
    Map<String, Object> test = new LinkedHashMap<>();
    test.put("serial", "P1-01");
    test.put("date", 46_400.0);
    test.put("measured", 93.0);
    test.put("load", 45.0);
    test.put("temperature", 20.0);
    test.put("rested", 2.0);
    Map<String, Object> other = new LinkedHashMap<>(test);
    other.put("serial", "P1-02");
    plan.fill("tests", List.of(test, other));
  }

  @AfterEach
  void close() {
    plan.close();
  }

  private String explain(String cell) {
    return CommandDriver.command(office, plan.document(), "explain", "cell", cell);
  }

  private String explain(String table, String key, int row) {
    return explain(PlanDocument.name(table) + "." + plan.result(table, key, row));
  }

  @Test
  void a_figure_leads_to_typed_cells_under_the_headings_that_users_see() {
    plan.tab("tests").text("D3", "Energy\nof the test");
    String text = explain("batteries", "health", 1);
    assertThat(text)
        .startsWith("Batteries." + plan.result("batteries", "health", 1) + " shows 0.948979")
        .contains("Inputs", "Steps", "Result")
        .contains("Energy of the test = 93 Wh  [Tests.D5]")
        .contains("Rated energy = ", "98", "[Batteries.E5")
        .contains("Date = 13 Jan 2027")
        .contains("FLEET.HEALTH\n   Returns ");
  }

  @Test
  void a_cell_of_the_block_is_explained_too() {
    assertThat(explain(PlanDocument.BLOCK_TAB + "." + plan.blockCell("batteries", "health", 1)))
        .contains("Rated energy = ", "FLEET.HEALTH");
  }

  @Test
  void reasons_are_sentences() {
    plan.type("batteries", "condition", 2, "swollen");
    assertThat(explain("batteries", "verdict", 2))
        .contains("Condition = swollen  [Batteries.D6]")
        .contains("Do not charge the battery")
        .doesNotContain("register.");
  }

  @Test
  @Tag("one-office")
  void every_figure_of_every_table_is_explained() {
    int explained = 0;
    for (ResultTable<?> table : RegisterPlan.MODEL.results()) {
      for (ResultColumn column : table.columns()) {
        String cell = PlanDocument.BLOCK_TAB + "." + plan.blockCell(table.key(), column.key(), 1);
        String text = explain(cell);
        assertThat(text)
            .as(column.path())
            .contains("Result", column.rule(), " = ")
            .containsPattern("Inputs|\\d+ rows: ")
            .containsPattern("\\[\\w+\\.[A-Z]+\\d+|, row \\d+");
        explained++;
      }
    }
    assertThat(explained).isGreaterThan(70);
  }

  @Test
  void a_blank_row_and_a_stopped_block_say_so() {
    assertThat(explain("batteries", "health", 3)).contains("Error", "The row is blank.");
    plan.tab("batteries").text("D4", "old");
    assertThat(explain("batteries", "health", 1)).contains("Error", "Choose Update file.");
  }

  @Test
  void results_within_another_formula_are_explained() {
    TestSheet tab = plan.tab("batteries");
    tab.put("AZ5", "=IF(INDEX(Results_batteries;ROW()-Row_batteries;4)&\"\"=\"yes\";1;0)");
    assertThat(explain("Batteries.AZ5")).contains("Yes if no reason is a stop");
  }

  @Test
  void a_row_is_found_however_a_formula_takes_it() throws Exception {
    plan.name("Top_batteries", "$Batteries.$B$4");
    plan.name("Third", "$Batteries.$BA$1");
    TestSheet tab = plan.tab("batteries").put("BA1", 2);
    for (String row :
        List.of(
            "ROW()-ROW(Top_batteries)",
            "ROW()-CELL(\"ROW\";Top_batteries)",
            "ROW()-CELL(\"ROW\";$B$4)",
            "ROW()-Row_batteries",
            "2",
            "Third")) {
      tab.put("AZ6", "=INDEX(Results_batteries;" + row + ";1)&\"\"");
      assertThat(tab.shown("AZ6")).as(row).isEqualTo("ok");
      assertThat(explain("Batteries.AZ6"))
          .as(row)
          .contains("Result")
          .containsPattern("\\[Batteries\\.[A-Z]+6\\]");
    }
  }

  /** Lists are array formulas: each of their cells is explained by its own row. */
  @Test
  void a_row_of_an_array_is_explained() throws Exception {
    plan.name("Top_batteries", "$Batteries.$B$4");
    TestSheet tab = plan.tab("batteries");
    tab.array("AZ5:AZ7", "=INDEX(Results_batteries;CELL(\"ROW\";Top_batteries)*0;1)&\"\"");
    assertThat(tab.shown("AZ6")).isEqualTo("ok");
    assertThat(explain("Batteries.AZ6")).containsPattern("\\[Batteries\\.[A-Z]+6\\]");
  }

  @Test
  void nothing_is_left_in_the_document() {
    String before = plan.status();
    TestSheet tab = plan.tab("batteries");
    Object[][] cells = tab.data("A1:AZ20");
    explain("batteries", "verdict", 1);
    assertThat(tab.data("A1:AZ20")).isDeepEqualTo(cells);
    assertThat(plan.status()).isEqualTo(before);
  }
}
