package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.view.XSelectionSupplier;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.plan.common.InputColumn;
import org.setpower.templates.register.BatteryRegister;
import org.setpower.templates.uno.UnoAccess;

/** Batteries of a register marked as inspected, several at a time. */
@ExtendWith(SharedOffice.class)
class RegisterInspectionIT {
  private static final Path TEMPLATE = Path.of("target/sheets/templates/en/battery-register.ots");
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private Office office;
  private PlanSheet book;

  @BeforeEach
  void open(Office shared) throws IOException {
    office = shared;
    book = new PlanSheet(office, TEMPLATE, new BatteryRegister().workbook());
    book.type("project.asOf", day("2027-02-10"));
    book.rows("types", Map.of("type", "T", "chemistry", "Li-ion"));
  }

  @AfterEach
  void close() {
    book.close();
  }

  private static double day(String date) {
    return ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(date));
  }

  private static Map<String, Object> battery(String serial, Object... more) {
    Map<String, Object> row =
        new HashMap<>(Map.of("serial", serial, "type", "T", "energy", 98.0, "un383", "yes"));
    for (int i = 0; i < more.length; i += 2) {
      row.put((String) more[i], more[i + 1]);
    }
    return row;
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type
  private static Map<String, Object>[] batteries(int count) {
    return IntStream.range(0, count).mapToObj(i -> battery("N" + i)).toArray(Map[]::new);
  }

  /** The address of the first cell to fill of a row, from 1. */
  private String cell(int row) {
    var place = book.layout().place(book.layout().input("batteries.serial"));
    return "Batteries.B" + (place.row() + row);
  }

  private String mark(int row, int rows) {
    return CommandDriver.command(
        office,
        book.document(),
        "inspect",
        "cell",
        cell(row),
        "rows",
        "" + rows,
        "date",
        "2027-02-09",
        "role",
        "technician");
  }

  private String typed(String key, int row) {
    List<String> keys =
        book.table("batteries").inputs().columns().stream().map(InputColumn::key).toList();
    Object[][] cells =
        UnoRuntime.queryInterface(XCellRangeData.class, book.inputs("batteries", row - 1, 1))
            .getDataArray();
    return String.valueOf(cells[0][keys.indexOf(key)]);
  }

  private XUndoManager undo() {
    return UnoRuntime.queryInterface(XUndoManagerSupplier.class, book.document()).getUndoManager();
  }

  @Test
  void a_new_register_is_one_issue_that_one_command_answers() throws Exception {
    book.rows("batteries", batteries(300));
    assertThat(book.column("issues.where").stream().filter(w -> w.startsWith("Batteries")))
        .hasSize(1);
    assertThat(book.column("issues.reasons").get(0)).contains("Set Power ▸ Mark as inspected");
    int steps = undo().getAllUndoActionTitles().length;
    assertThat(mark(1, 300))
        .isEqualTo("300 batteries marked as inspected on 9 Feb 2027 by technician.");
    assertThat(book.single("summary.notInspected")).isEqualTo("0");
    assertThat(book.single("summary.notTested")).isEqualTo("300");
    assertThat(book.column("issues.reasons")).noneMatch(r -> r.contains("not inspected"));
    assertThat(typed("condition", 300)).isEqualTo("fine");
    assertThat(typed("inspected", 300)).isEqualTo("" + day("2027-02-09"));
    assertThat(typed("inspectedBy", 300)).isEqualTo("technician");
    assertThat(undo().getAllUndoActionTitles()).hasSize(steps + 1);
    undo().undo();
    assertThat(book.single("summary.notInspected")).isEqualTo("300");
    assertThat(typed("condition", 1) + typed("inspected", 1) + typed("inspectedBy", 1)).isEmpty();
    assertThat(calculates()).isTrue();
    undo().redo();
    assertThat(book.single("summary.notInspected")).isEqualTo("0");
    assertThat(calculates()).isTrue();
  }

  private boolean calculates() {
    return UnoRuntime.queryInterface(XCalculatable.class, book.document())
        .isAutomaticCalculationEnabled();
  }

  @Test
  @Tag("one-office")
  void nothing_that_speaks_against_a_battery_is_written_over() {
    book.rows(
        "batteries",
        battery("A1"),
        battery("A2", "condition", "swollen"),
        battery("A3", "condition", "scratched?"),
        battery("A4"),
        Map.of(),
        battery("A5", "outTo", "Unit 2"),
        battery("A6", "retired", day("2027-01-01")),
        battery("A7", "condition", "fine", "inspected", day("2026-02-09"), "inspectedBy", "x"),
        battery("A8", "condition", "fine", "inspected", day("2027-02-09"), "inspectedBy", "x"),
        battery("A9"),
        battery("A9"));
    book.rows("incidents", Map.of("serial", "A4", "happened", "wet", "date", day("2027-01-20")));
    String said = mark(1, 12);
    assertThat(said)
        .startsWith("2 batteries marked as inspected on 9 Feb 2027 by technician.")
        .contains("8 batteries left out:")
        .contains("• A2: The condition is swollen.")
        .contains("• A3: The condition is not a word of the list.")
        .contains("• A4: An incident is open (wet, 20 Jan 2027).")
        .contains("• A5: It is out. Clear Out to when it is back.")
        .contains("• A6: The battery was retired")
        .contains("• A8: It has an inspection of that day or later.")
        .contains("• A9, A9: A9 is in 2 rows.");
    assertThat(typed("condition", 1)).isEqualTo("fine");
    assertThat(typed("condition", 2)).isEqualTo("swollen");
    assertThat(typed("condition", 3)).isEqualTo("scratched?");
    assertThat(typed("inspectedBy", 2) + typed("condition", 4) + typed("condition", 6)).isEmpty();
    assertThat(typed("inspected", 8)).isEqualTo("" + day("2027-02-09"));
    assertThat(typed("inspectedBy", 9)).isEqualTo("x");
    assertThat(typed("condition", 10) + typed("condition", 11)).isEmpty();
    assertThat(book.single("summary.quarantine")).isEqualTo("5");
  }

  /** A pasted cell has the format of elsewhere; a battery that came back has its Back by left. */
  @Test
  @Tag("one-office")
  void a_mark_shows_a_date_and_ends_a_return() throws Exception {
    book.rows(
        "batteries",
        battery(
            "A1",
            "condition",
            "fine",
            "inspected",
            day("2027-02-09"),
            "inspectedBy",
            "x",
            "backBy",
            day("2027-02-09")),
        battery("A2"));
    var cells = book.inputs("batteries", 0, 2);
    List<String> keys =
        book.table("batteries").inputs().columns().stream().map(InputColumn::key).toList();
    var pasted = cells.getCellByPosition(keys.indexOf("inspected"), 1);
    UnoAccess.set(pasted, "CellStyle", "Default");
    UnoAccess.set(pasted, "NumberFormat", 0);
    assertThat(mark(1, 2)).startsWith("2 batteries marked as inspected on 9 Feb 2027");
    assertThat(typed("backBy", 1)).isEmpty();
    assertThat(typed("inspectedBy", 1)).isEqualTo("technician");
    assertThat(UnoRuntime.queryInterface(com.sun.star.text.XText.class, pasted).getString())
        .contains("2027")
        .doesNotContain("46");
  }

  @Test
  void rows_that_a_filter_hides_stay_as_they_are() throws Exception {
    book.rows("batteries", batteries(4));
    Object rows =
        UnoRuntime.queryInterface(XColumnRowRange.class, book.inputs("batteries", 1, 2)).getRows();
    UnoAccess.set(rows, "IsVisible", false);
    assertThat(mark(1, 4))
        .startsWith("2 batteries marked")
        .endsWith("2 rows that a filter hides were left out.");
    assertThat(typed("condition", 1)).isEqualTo("fine");
    assertThat(typed("condition", 2) + typed("condition", 3)).isEmpty();
    assertThat(typed("condition", 4)).isEqualTo("fine");
  }

  @Test
  @Tag("one-office")
  void several_blocks_can_be_selected() throws Exception {
    book.rows("batteries", batteries(5));
    Object view = UnoRuntime.queryInterface(XModel.class, book.document()).getCurrentController();
    var ranges =
        UnoRuntime.queryInterface(
            com.sun.star.sheet.XSheetCellRangeContainer.class,
            UnoRuntime.queryInterface(com.sun.star.lang.XMultiServiceFactory.class, book.document())
                .createInstance("com.sun.star.sheet.SheetCellRanges"));
    for (int row : List.of(0, 3)) {
      var range =
          UnoRuntime.queryInterface(
              com.sun.star.sheet.XCellRangeAddressable.class, book.inputs("batteries", row, 1));
      ranges.addRangeAddress(range.getRangeAddress(), false);
    }
    UnoRuntime.queryInterface(XSelectionSupplier.class, view).select(ranges);
    assertThat(
            CommandDriver.command(
                office, book.document(), "inspect", "role", "rental desk", "date", "2027-02-10"))
        .startsWith("2 batteries marked as inspected on 10 Feb 2027 by rental desk.");
    assertThat(typed("condition", 1) + typed("condition", 4)).isEqualTo("finefine");
    assertThat(typed("condition", 2) + typed("condition", 3) + typed("condition", 5)).isEmpty();
  }

  @Test
  @Tag("one-office")
  void what_is_wrong_is_said_and_nothing_changes() {
    book.rows("batteries", batteries(2));
    refused("later than the day of the register, 10 Feb 2027", "date", "2027-02-11");
    refused("is not a date", "date", "tomorrow");
    refused("Type the day of the inspection and the role", "role", " ");
    refused("Select the rows of the inspected batteries", "cell", "Project.C8");
    refused("Select the rows of the inspected batteries", "cell", cell(40));
    book.type("project.asOf", "soon");
    refused("Correct Project first", "role", "technician");
    assertThat(typed("condition", 1)).isEmpty();
  }

  private void refused(String why, String option, String value) {
    Map<String, String> options =
        new HashMap<>(Map.of("cell", cell(1), "date", "2027-02-09", "role", "technician"));
    options.put(option, value);
    String[] all =
        options.entrySet().stream()
            .flatMap(e -> List.of(e.getKey(), e.getValue()).stream())
            .toArray(String[]::new);
    assertThatThrownBy(() -> CommandDriver.command(office, book.document(), "inspect", all))
        .hasStackTraceContaining(why);
  }
}
