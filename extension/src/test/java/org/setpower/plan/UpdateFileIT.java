package org.setpower.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.frame.XDesktop;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.table.CellContentType;
import com.sun.star.util.XModifiable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.uno.Uno;

/** A filled file of an older version in the layout of this one. */
@ExtendWith(SharedOffice.class)
class UpdateFileIT {
  private static final String LIST = "Not taken over";

  @TempDir Path folder;
  private Office office;
  private PlanDocument old;
  private String template;
  private final List<XComponent> opened = new ArrayList<>();

  @BeforeEach
  void fill(Office shared) throws Exception {
    office = shared;
    PlanDocument empty = PlanDocument.of(office, RegisterPlan.MODEL, 4, 8);
    Path file = folder.resolve("template.ots");
    office.store(empty.document(), "calc8_template", file);
    empty.close();
    template = office.copyIn(file);
    old = PlanDocument.of(office, RegisterPlan.MODEL, 6, 8);
    old.type("project", "asOf", 1, 46_428).type("project", "validDays", 1, 200);
    old.type("types", "type", 1, "P1").type("types", "chemistry", 1, "Li-ion");
    Map<String, Object> first = new LinkedHashMap<>();
    first.put("serial", "007");
    first.put("type", "P1");
    first.put("condition", "fine");
    first.put("energy", 98.5);
    first.put("inspected", 46_400.0);
    first.put("outTo", "=A1");
    Map<String, Object> third = new LinkedHashMap<>(first);
    third.put("serial", "P1-03");
    third.put("energy", 97.0);
    old.fill("batteries", List.of(first, Map.of(), third));
    plan().text("B1", "an older one");
  }

  @AfterEach
  void close() {
    old.close();
    opened.forEach(Office::discard);
  }

  private TestSheet plan() {
    return TestSheet.named(old.document(), PlanDocument.BLOCK_TAB);
  }

  private String update(String... options) {
    String[] all = Arrays.copyOf(options, options.length + 2);
    all[options.length] = "template";
    all[options.length + 1] = template;
    String said = CommandDriver.command(office, old.document(), "update", all);
    opened.add(office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent());
    return said;
  }

  private PlanDocument updated() {
    return old.in(opened.get(opened.size() - 1));
  }

  private String typed(PlanDocument plan, String key, int row) {
    return plan.tab("batteries").shown(plan.input("batteries", key, row));
  }

  private String listed() {
    return Arrays.deepToString(TestSheet.named(updated().document(), LIST).data("A1:D40"));
  }

  /** Says in the old file what a column was: type, unit. */
  private void was(String path, String now, String before) {
    TestSheet plan = plan();
    for (int r = 1; r <= 100; r++) {
      if (plan.shown("AB" + r).equals(path)) {
        String layout = plan.shown("AC" + r);
        assertThat(layout).contains(now);
        plan.text("AC" + r, layout.replace(now, before));
        return;
      }
    }
    throw new AssertionError(path);
  }

  @Test
  void typed_cells_keep_value_type_and_row() throws Exception {
    old.tab("batteries").text("G5", "46400");
    assertThat(old.status()).startsWith("stop ").contains("Update file");
    Uno.as(XModifiable.class, old.document()).setModified(false);
    assertThat(update()).isEqualTo("Cells taken over: 16. The older file was not changed.");
    PlanDocument fresh = updated();
    assertThat(fresh.status()).isEqualTo("ok ");
    TestSheet tab = fresh.tab("batteries");
    assertThat(tab.data("B5:J7"))
        .isDeepEqualTo(
            new Object[][] {
              {"007", "P1", "fine", 98.5, "", "46400", "", "", "=A1"},
              {"", "", "", "", "", "", "", "", ""},
              {"P1-03", "P1", "fine", 97.0, "", 46_400.0, "", "", "=A1"}
            });
    assertThat(tab.cell("J5").getType()).isEqualTo(CellContentType.TEXT);
    assertThat(fresh.tab("project").number(fresh.input("project", "asOf", 1))).isEqualTo(46_428);
    assertThat(fresh.shown("batteries", "verdict", 3)).isEqualTo("check");
    assertThat(Uno.as(XModifiable.class, old.document()).isModified()).isFalse();
  }

  @Test
  @Tag("one-office")
  void columns_in_another_order_are_found_by_their_keys() throws Exception {
    Object cells = old.tab("batteries").range("B4:E7");
    Object[][] data = Uno.as(XCellRangeData.class, cells).getDataArray();
    for (Object[] row : data) {
      Object serial = row[0];
      row[0] = row[3];
      row[3] = serial;
    }
    Uno.as(XCellRangeData.class, cells).setDataArray(data);
    update();
    assertThat(typed(updated(), "serial", 1)).isEqualTo("007");
    assertThat(updated().tab("batteries").number("E5")).isEqualTo(98.5);
  }

  @Test
  @Tag("one-office")
  void a_column_that_is_no_more_is_listed_with_what_it_holds() {
    old.tab("batteries").text("K4", "colour").text("K5", "red").text("K7", "blue");
    assertThat(update()).contains("Cells not taken over as they are: 2.");
    assertThat(listed())
        .contains("Batteries.K5, Batteries: colour, red, This version has no such column.")
        .contains("Batteries.K7, Batteries: colour, blue");
    assertThat(typed(updated(), "backBy", 1)).isEmpty();
    assertThat(updated().status()).isEqualTo("ok ");
  }

  @Test
  @Tag("one-office")
  void a_column_whose_unit_changed_is_not_taken_over() {
    was("batteries.energy", "|Wh|", "|kWh|");
    update();
    assertThat(typed(updated(), "energy", 1)).isEmpty();
    assertThat(typed(updated(), "serial", 1)).isEqualTo("007");
    assertThat(listed())
        .contains("Batteries.E5, Batteries: Rated energy, 98.5")
        .contains("The column was “number kWh” and is now “number Wh”");
  }

  @Test
  @Tag("one-office")
  void a_column_whose_limits_changed_is_taken_over() {
    was("batteries.energy", "0.1..100000", "1.0..50.0");
    assertThat(update()).doesNotContain("not taken over as");
    assertThat(updated().tab("batteries").number("E5")).isEqualTo(98.5);
  }

  @Test
  @Tag("one-office")
  void a_formula_becomes_its_value_and_an_error_is_listed() {
    old.tab("batteries").put("E5", "=49*2").put("E7", "=1/0");
    update();
    assertThat(updated().tab("batteries").cell("E5").getFormula()).isEqualTo("98");
    assertThat(typed(updated(), "energy", 3)).isEmpty();
    assertThat(listed())
        .contains("Batteries.E5, Batteries: Rated energy, 98, It was calculated")
        .contains("Batteries.E7, Batteries: Rated energy")
        .contains("The cell is in error");
  }

  @Test
  @Tag("one-office")
  void rows_for_which_there_is_no_room_are_listed() {
    old.type("batteries", "serial", 6, "P1-06");
    assertThat(update()).contains("not taken over as they are: 1.");
    assertThat(listed())
        .contains("Batteries.B10, Batteries: Serial, P1-06")
        .contains("second file");
  }

  @Test
  @Tag("one-office")
  void a_table_that_is_no_more_is_listed() throws Exception {
    TestSheet tab = TestSheet.named(old.document(), "Crates");
    tab.text("A1", "name").text("A2", "Crate 1").text("A3", InputTable.END);
    old.name("Crates", "$Crates.$A$1:$A$3");
    plan().text("AB1", "crates.name").text("AC1", "crates.name|String||..|");
    update();
    assertThat(listed()).contains("Crates.A2, crates, Crate 1, This version has no such table.");
  }

  @Test
  @Tag("one-office")
  void a_file_that_is_not_open_stays_as_it_is() throws Exception {
    Path file = folder.resolve("older.ods");
    office.store(old.document(), "calc8", file);
    String url = office.copyIn(file);
    byte[] before = Files.readAllBytes(file);
    assertThat(update("file", url)).startsWith("Cells taken over: 16.");
    assertThat(updated().shown("batteries", "verdict", 3)).isEqualTo("check");
    assertThat(Files.readAllBytes(office.workFolder().resolve("older.ods"))).isEqualTo(before);
  }

  @Test
  @Tag("one-office")
  void a_file_of_this_version_needs_no_update() {
    plan().text("B1", InputTable.layoutHash(RegisterPlan.MODEL.inputs()));
    assertThat(CommandDriver.command(office, old.document(), "update", "template", template))
        .contains("nothing to update");
  }

  @Test
  @Tag("one-office")
  void a_file_that_does_not_say_its_units_is_refused() throws Exception {
    Uno.as(com.sun.star.sheet.XNamedRanges.class, Uno.get(old.document(), "NamedRanges"))
        .removeByName("Layout");
    assertThatThrownBy(
            () -> CommandDriver.command(office, old.document(), "update", "template", template))
        .hasStackTraceContaining("does not say which units");
    opened.add(office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent());
  }
}
