package org.setpower.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.FilterOperator;
import com.sun.star.sheet.TableFilterField;
import com.sun.star.sheet.XSheetFilterDescriptor;
import com.sun.star.sheet.XSheetFilterable;
import com.sun.star.table.TableSortField;
import com.sun.star.util.XSortable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.office.Office;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.uno.Uno;

/** What a user can do to a sheet of a plan, and no figure moves to another row. */
@ExtendWith(SharedOffice.class)
class PlanCarrierIT {
  private static final int ROOM = 8;

  /** A condition for each row, and the verdict that follows from it. */
  private static final String[] CONDITIONS = {"fine", "swollen", "fine", "contacts", "fine"};

  private Office office;
  private PlanDocument plan;

  @BeforeEach
  void fill(Office shared) throws Exception {
    office = shared;
    plan = sample(office, ROOM, CONDITIONS.length);
  }

  @AfterEach
  void close() {
    plan.close();
  }

  private static PlanDocument sample(Office office, int room, int filled) throws Exception {
    PlanDocument plan = PlanDocument.of(office, RegisterPlan.MODEL, room, 2 * room);
    plan.type("project", "asOf", 1, 46_428).type("project", "untested", 1, "goes out");
    plan.type("types", "type", 1, "P1").type("types", "chemistry", 1, "Li-ion");
    List<Map<String, Object>> rows = new ArrayList<>();
    for (int i = 0; i < filled; i++) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("serial", "P1-0" + (i + 1));
      row.put("type", "P1");
      row.put("condition", CONDITIONS[i % CONDITIONS.length]);
      row.put("energy", 98.0 + i);
      row.put("inspected", 46_420.0);
      row.put("inspectedBy", "bench");
      rows.add(row);
    }
    plan.fill("batteries", rows);
    return plan;
  }

  private String verdict(int row) {
    return plan.shown("batteries", "verdict", row);
  }

  private String proposed(int row) {
    return plan.shown("batteries", "proposed", row);
  }

  private List<String> proposals() {
    List<String> all = new ArrayList<>();
    for (int row = 1; row <= ROOM; row++) {
      all.add(proposed(row));
    }
    return all;
  }

  private void everyRowStops(String way) {
    assertThat(plan.status()).startsWith("stop ").contains(way);
    assertThat(plan.tab("batteries").shown(PlanDocument.NOTICE)).contains(way);
  }

  @Test
  void each_row_shows_its_own_results() {
    assertThat(plan.status()).isEqualTo("ok ");
    assertThat(verdict(1)).isEqualTo("check");
    assertThat(verdict(2)).isEqualTo("stop");
    assertThat(verdict(ROOM)).isEmpty();
    assertThat(proposals())
        .containsExactly(
            "not tested", "quarantine", "not tested", "service", "not tested", "", "", "");
    // text can be counted, which text of the block itself cannot
    TestSheet tab = plan.tab("batteries");
    String column = plan.result("batteries", "verdict", 1).replaceAll("\\d", "");
    tab.put("AZ1", "=COUNTIF(%1$s1:%1$s99;\"stop\")".formatted(column));
    assertThat(tab.number("AZ1")).isEqualTo(2);
  }

  @Test
  void a_column_inserted_among_cells_to_fill_stops_every_row() {
    plan.insertColumn("batteries", "D");
    everyRowStops("Update file");
    TestSheet tab = plan.tab("batteries");
    assertThat(tab.shown("D5")).isEmpty();
    assertThat(tab.shown("R5")).isEqualTo("stop");
    assertThat(tab.shown("R9")).isEqualTo("stop");
  }

  @Test
  void a_column_inserted_beside_the_table_changes_nothing() {
    List<String> before = proposals();
    plan.insertColumn("batteries", "A");
    assertThat(plan.status()).isEqualTo("ok ");
    TestSheet tab = plan.tab("batteries");
    assertThat(tab.shown("T5")).isEqualTo(before.get(0));
    assertThat(tab.shown("T6")).isEqualTo(before.get(1));
  }

  @Test
  void a_row_inserted_above_the_table_leaves_each_row_its_own_figures() {
    List<String> before = proposals();
    plan.insertRows("batteries", 2, 3);
    TestSheet tab = plan.tab("batteries");
    List<String> after = new ArrayList<>();
    for (int row = 1; row <= ROOM; row++) {
      after.add(tab.shown("S" + (PlanDocument.KEYS + 3 + row)));
    }
    assertThat(after).isEqualTo(before);
    assertThat(plan.status()).isEqualTo("ok ");
  }

  @Test
  void a_row_inserted_between_rows_leaves_each_row_its_own_figures() {
    plan.insertRows("batteries", PlanDocument.KEYS + 2, 1);
    assertThat(plan.status()).isEqualTo("ok ");
    assertThat(proposals())
        .containsExactly(
            "not tested", "", "quarantine", "not tested", "service", "not tested", "", "");
  }

  @Test
  void a_table_that_is_full_and_one_row_more_stops_every_row() throws Exception {
    plan.close();
    plan = sample(office, ROOM, ROOM);
    assertThat(plan.status()).isEqualTo("ok ");
    plan.insertRows("batteries", PlanDocument.KEYS + ROOM + 1, 1);
    assertThat(plan.status()).as("a blank row needs no room").isEqualTo("ok ");
    plan.type("batteries", "serial", ROOM + 1, "P1-99");
    everyRowStops(
        "Batteries has 9 rows and the sheet shows 8. Delete rows, or begin a second file.");
    for (int row = 1; row <= ROOM; row++) {
      assertThat(verdict(row)).isEqualTo("stop");
      assertThat(proposed(row)).isEmpty();
    }
    plan.tab("batteries").text(plan.input("batteries", "serial", ROOM + 1), "");
    assertThat(plan.status()).isEqualTo("ok ");
  }

  @Test
  void a_row_without_a_name_has_a_verdict() {
    plan.type("batteries", "condition", 7, "fine");
    assertThat(verdict(7)).isEqualTo("stop");
    assertThat(plan.shown("batteries", "reasons", 7)).contains("no name");
    assertThat(verdict(6)).isEmpty();
  }

  @Test
  void cells_cut_and_pasted_do_not_drag_the_leaf_cells() throws Exception {
    String energy = plan.relativeName("batteries", "energy");
    TestSheet tab = plan.tab("batteries");
    String plain = plan.input("batteries", "energy", 1);
    for (int row = 1; row <= ROOM; row++) {
      int line = PlanDocument.KEYS + row;
      tab.put(
          "AX" + line, "=ORG.SETPOWER.FUNCTIONS.PACKRUNTIME(" + energy + ";10;1;1;25;\"Li-ion\")");
      tab.put("AY" + line, "=" + plain.replaceAll("\\d", "") + line);
    }
    assertThat(tab.number("AX5")).isEqualTo(9.8);
    plan.move("batteries", "B5:O5", "B11");
    plan.type("batteries", "energy", 1, 50);
    assertThat(tab.number("AX5")).as("by a relative name").isEqualTo(5);
    assertThat(tab.number("AX11")).isEqualTo(9.8);
    assertThat(tab.number("AY5")).as("a plain reference is dragged along").isEqualTo(98);
    assertThat(proposed(7)).isEqualTo("not tested");
    assertThat(plan.shown("batteries", "reasons", 1)).contains("no name");
  }

  @Test
  void a_copied_tab_says_so() throws Exception {
    plan.sheets().copyByName("Batteries", "Batteries_2", (short) 99);
    TestSheet copy = TestSheet.named(plan.document(), "Batteries_2");
    copy.calculate();
    assertThat(copy.shown(PlanDocument.COPY)).isEqualTo(PlanDocument.IS_COPY);
    assertThat(plan.tab("batteries").shown(PlanDocument.COPY)).isEmpty();
    copy.text("D5", "swollen");
    assertThat(proposed(1)).isEqualTo("not tested");
    assertThat(plan.status()).isEqualTo("ok ");
  }

  @Test
  void a_moved_or_renamed_tab_changes_nothing() throws Exception {
    List<String> before = proposals();
    plan.sheets().moveByName("Batteries", (short) 0);
    Uno.as(com.sun.star.container.XNamed.class, plan.tab("tests").sheet()).setName("Bench 2027");
    plan.type("batteries", "energy", 1, 99);
    assertThat(plan.status()).isEqualTo("ok ");
    assertThat(proposals()).isEqualTo(before);
    assertThat(plan.tab("batteries").shown(PlanDocument.COPY)).isEmpty();
  }

  @Test
  void a_number_with_the_wrong_separator_is_refused_in_its_row() {
    plan.type("batteries", "energy", 1, "98,5");
    assertThat(verdict(1)).isEqualTo("stop");
    assertThat(plan.shown("batteries", "reasons", 1)).contains("Rated energy", "98,5");
    assertThat(proposed(3)).isEqualTo("not tested");
    assertThat(plan.status()).isEqualTo("ok ");
  }

  @Test
  void an_error_in_a_cell_hurts_only_its_row() {
    for (String error : List.of("=1/0", "=NA()", "=NOSUCH()", "=\"a\"+1")) {
      plan.tab("batteries").put(plan.input("batteries", "energy", 1), error);
      assertThat(verdict(1)).as(error).isEqualTo("stop");
      assertThat(plan.shown("batteries", "reasons", 1)).as(error).contains("cannot be read");
      assertThat(verdict(2)).isEqualTo("stop");
      assertThat(proposed(3)).as(error).isEqualTo("not tested");
      assertThat(plan.status()).as(error).isEqualTo("ok ");
    }
  }

  @Test
  void an_error_in_a_row_of_keys_or_in_the_question_stops_every_row() {
    plan.tab("batteries").put("D" + PlanDocument.KEYS, "=1/0");
    everyRowStops("Update file");
    assertThat(verdict(1)).isEqualTo("stop");
    plan.tab("batteries").text("D" + PlanDocument.KEYS, "condition");
    assertThat(plan.status()).isEqualTo("ok ");
    TestSheet.named(plan.document(), PlanDocument.BLOCK_TAB).put("C3", "=1/0");
    everyRowStops("Update file");
    assertThat(verdict(1)).isEqualTo("stop");
  }

  @Test
  void a_cell_that_depends_on_a_result_never_passes_for_typed() {
    TestSheet tab = plan.tab("batteries");
    String result = plan.result("batteries", "fit", 3);
    tab.put(plan.input("batteries", "place", 1), "=" + result + "&\"x\"");
    for (int edit = 0; edit < 3; edit++) {
      assertThat(verdict(1)).isEqualTo("stop");
      assertThat(plan.shown("batteries", "reasons", 1)).contains("Place cannot be read");
      assertThat(verdict(2)).isEqualTo("stop");
      assertThat(proposed(3)).isEqualTo("not tested");
      assertThat(plan.status()).isEqualTo("ok ");
      plan.type("batteries", "energy", 2, 99 + edit);
    }
    tab.calculate();
    assertThat(verdict(1)).isEqualTo("stop");
  }

  @Test
  void sorted_rows_take_their_results_along() {
    TableSortField field = new TableSortField();
    field.Field = 3;
    field.IsAscending = false;
    PropertyValue[] how = {
      Uno.property("SortFields", new TableSortField[] {field}),
      Uno.property("ContainsHeader", false)
    };
    Uno.as(XSortable.class, plan.tab("batteries").range("B5:O9")).sort(how);
    assertThat(plan.tab("batteries").shown("B5")).isEqualTo("P1-05");
    assertThat(proposals())
        .containsExactly(
            "not tested", "service", "not tested", "quarantine", "not tested", "", "", "");
  }

  @Test
  void a_filter_changes_no_result() throws Exception {
    List<String> before = proposals();
    XSheetFilterable rows = Uno.as(XSheetFilterable.class, plan.tab("batteries").range("B4:O12"));
    XSheetFilterDescriptor filter = rows.createFilterDescriptor(true);
    TableFilterField field = new TableFilterField();
    field.Field = 2;
    field.Operator = FilterOperator.EQUAL;
    field.StringValue = "swollen";
    filter.setFilterFields(new TableFilterField[] {field});
    rows.filter(filter);
    assertThat(proposals()).isEqualTo(before);
    assertThat(plan.status()).isEqualTo("ok ");
  }

  @Test
  void undo_and_redo_bring_back_the_results_of_their_cells() throws Exception {
    plan.type("batteries", "condition", 1, "swollen");
    assertThat(proposed(1)).isEqualTo("quarantine");
    XUndoManager undo = Uno.as(XUndoManagerSupplier.class, plan.document()).getUndoManager();
    undo.undo();
    assertThat(proposed(1)).isEqualTo("not tested");
    undo.redo();
    assertThat(proposed(1)).isEqualTo("quarantine");
    plan.insertRows("batteries", PlanDocument.KEYS + 1, 1);
    assertThat(proposed(2)).isEqualTo("quarantine");
    undo.undo();
    assertThat(proposed(1)).isEqualTo("quarantine");
    assertThat(plan.status()).isEqualTo("ok ");
  }

  @Test
  void two_documents_do_not_meet() throws Exception {
    PlanDocument other = sample(office, ROOM, 2);
    try {
      other.type("batteries", "condition", 1, "swollen");
      assertThat(other.shown("batteries", "proposed", 1)).isEqualTo("quarantine");
      assertThat(proposed(1)).isEqualTo("not tested");
      plan.type("batteries", "condition", 1, "wet");
      assertThat(other.shown("batteries", "reasons", 1)).contains("swollen");
      assertThat(plan.shown("batteries", "reasons", 1)).contains("wet");
    } finally {
      other.close();
    }
  }

  @Test
  void dates_count_from_the_day_zero_of_the_document() throws Exception {
    com.sun.star.util.Date zero = new com.sun.star.util.Date((short) 1, (short) 1, (short) 1904);
    plan.type("batteries", "retired", 1, 46_400);
    assertThat(plan.shown("batteries", "reasons", 1)).contains("13 Jan 2027");
    Uno.set(plan.document(), "NullDate", zero);
    plan.type("project", "asOf", 1, 46_428 - 1462).type("batteries", "retired", 1, 46_400 - 1462);
    assertThat(plan.shown("batteries", "reasons", 1)).contains("13 Jan 2027");
  }

  @Test
  void sentences_come_in_the_language_that_is_asked_for() {
    plan.tab("batteries").put(plan.input("batteries", "energy", 1), 1e9);
    assertThat(plan.shown("batteries", "reasons", 1)).contains("0.1 to 100000 Wh");
    TestSheet.named(plan.document(), PlanDocument.BLOCK_TAB).text("A1", "de");
    assertThat(plan.shown("batteries", "reasons", 1)).contains("0,1 bis 100000 Wh");
  }
}
