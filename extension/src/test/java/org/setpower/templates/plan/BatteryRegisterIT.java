package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XModel;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.view.XSelectionSupplier;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.office.Office;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.register.BatteryRegister;
import org.setpower.uno.Uno;

/**
 * No paper, count or list of the battery register offers a battery that somebody can get hurt by.
 * What is expected is common practice of rental houses.
 */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class BatteryRegisterIT {
  private static final Path TEMPLATE = Path.of("target/sheets/templates/en/battery-register.ots");
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private final PlanWorkbook workbook = new BatteryRegister().workbook();

  private PlanSheet empty(Office office) throws IOException {
    PlanSheet book = PlanSheet.blank(office, TEMPLATE, workbook);
    book.type("project.asOf", day("2027-02-10")).rows("checkout", Map.of("serial", "A1"));
    book.rows("types", Map.of("type", "T", "chemistry", "Li-ion", "required", 1.0));
    return book;
  }

  private static double day(String date) {
    return ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(date));
  }

  private static Map<String, Object> with(Map<String, Object> row, Object... changes) {
    Map<String, Object> changed = new HashMap<>(row);
    for (int i = 0; i < changes.length; i += 2) {
      changed.put((String) changes[i], changes[i + 1]);
    }
    return changed;
  }

  private static Map<String, Object> battery(Object... changes) {
    return with(
        Map.of(
            "serial",
            "A1",
            "type",
            "T",
            "condition",
            "fine",
            "energy",
            100.0,
            "un383",
            "yes",
            "inspected",
            day("2027-02-01"),
            "inspectedBy",
            "bench"),
        changes);
  }

  private static Map<String, Object> test(Object... changes) {
    Map<String, Object> sound = new HashMap<>();
    sound.put("serial", "A1");
    sound.put("date", day("2027-02-01"));
    sound.put("measured", 97.0);
    sound.put("load", 40.0);
    sound.put("temperature", 20.0);
    sound.put("charge", 1.0);
    sound.put("rested", 2.0);
    sound.put("resistance", 60.0);
    for (int i = 1; i <= 4; i++) {
      sound.put("cell" + i, 4.15);
    }
    return with(sound, changes);
  }

  private static Map<String, Object> cells(double volts, double milliohms) {
    Map<String, Object> row = test("resistance", milliohms);
    for (int i = 1; i <= 4; i++) {
      row.put("cell" + i, volts);
    }
    return row;
  }

  /** The first row of the issue list; what the house alone reads stands on Check-out. */
  private static String slip(PlanSheet book, String key) {
    boolean own = List.of("verdict", "reasons", "mayGoOut").contains(key);
    List<String> column = book.column((own ? "checkout." : "slip.") + key);
    return column.isEmpty() ? "" : column.get(0);
  }

  @Test
  void a_job_has_one_issue_list(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery(), battery("serial", "A2", "condition", "dropped"));
      book.rows("tests", test(), test("serial", "A2"));
      book.rows("checkout", Map.of("serial", "A2"), Map.of("serial", "A1"), Map.of("serial", "A3"));
      book.type("project.job", "documentary").type("project.jobBack", day("2027-02-20"));
      assertThat(book.column("slip.serial")).containsExactly("A1");
      assertThat(book.column("slip.type")).containsExactly("T");
      assertThat(book.column("checkout.mayGoOut")).containsExactly("no", "yes", "no");
      assertThat(book.column("checkout.verdict")).containsExactly("stop", "ok", "stop");
      assertThat(book.single("handover.job")).isEqualTo("documentary");
      assertThat(book.single("handover.out")).isEqualTo("1");
      assertThat(book.page("Check-out")).contains("Held back", "Issue number is blank");
      assertThat(book.column("issues.where")).contains("Check-out: A3");
      assertThat(book.page("Issue list"))
          .contains("handed out by", "received by")
          .doesNotContain("dropped", "quarantine");
    }
  }

  @Test
  void a_sound_tested_battery_may_go_out(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery()).rows("tests", test());
      assertThat(slip(book, "mayGoOut")).isEqualTo("yes");
      assertThat(slip(book, "verdict")).isEqualTo("ok");
      assertThat(slip(book, "health")).isEqualTo("0.97");
      assertThat(book.single("summary.fit")).isEqualTo("1");
      assertThat(book.single("summary.toBuy")).isEqualTo("0");
      assertThat(book.column("actions.serial")).isEmpty();
      agree(book);
    }
  }

  @TestFactory
  Stream<DynamicTest> a_battery_that_can_hurt_is_withheld_everywhere(Office office) {
    return Stream.of(
        unsafe(office, "dropped, decided keep", battery("condition", "dropped", "decided", "keep")),
        unsafe(office, "wet, decided watch", battery("condition", "wet", "decided", "watch")),
        unsafe(
            office,
            "swollen, decided service",
            battery("condition", "swollen", "decided", "service")),
        unsafe(office, "recalled", battery("condition", "recalled")),
        unsafe(office, "puffed", battery("condition", "puffed")),
        unsafe(office, "leaking", battery("condition", "leaking")),
        unsafe(office, "burnt", battery("condition", "burnt")),
        unsafe(office, "hot", battery("condition", "hot")),
        unsafe(office, "wet, dropped", battery("condition", "wet, dropped")),
        unsafe(office, "swollen with a blank", battery("condition", "swollen ")),
        unsafe(office, "a word that nobody knows", battery("condition", "scratched?")),
        unsafe(office, "not inspected", battery("condition", "")),
        unsafe(office, "a number as condition", battery("condition", 1.0)),
        unsafe(office, "type not known", battery("type", "unknown")),
        unsafe(
            office, "retired some day", battery("retired", day("2028-01-01"), "decided", "keep")),
        unsafe(
            office,
            "decided keep of 70 % health",
            battery("decided", "keep"),
            test("measured", 70.0)),
        unsafe(office, "not tested", battery(), test("date", day("2026-01-01"))),
        unsafe(office, "cells of 1.2 V", battery(), cells(1.2, 60)),
        unsafe(office, "cells of 4.6 V", battery(), cells(4.6, 60)),
        unsafe(office, "cells of 0 V", battery(), cells(0, 5000)),
        unsafe(office, "one cell 0.14 V apart", battery(), test("cell2", 4.01)));
  }

  @Test
  void a_dangerous_battery_that_is_out_stays_where_it_is(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery("condition", "swollen", "outTo", "documentary"));
      assertThat(book.column("actions.action")).containsExactly("warn the client");
      assertThat(book.column("actions.reasons").get(0))
          .startsWith("The battery is out to documentary and can be dangerous.")
          .contains("do not move it")
          .doesNotContain("Call it back");
    }
  }

  @Test
  void a_battery_that_is_out_or_was_tested_badly_since_gets_no_slip(Office office)
      throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery("outTo", "documentary")).rows("tests", test());
      assertThat(slip(book, "mayGoOut")).isEqualTo("no");
      assertThat(slip(book, "reasons")).contains("already out to documentary");
      assertThat(book.single("summary.fit")).isEqualTo("1");
      assertThat(book.single("summary.fitIn")).isEqualTo("0");
      book.rows("batteries", battery());
      assertThat(book.single("summary.fitIn")).isEqualTo("1");
      book.rows(
          "tests", test(), test("date", day("2027-02-05"), "measured", 60.0, "temperature", 5.0));
      assertThat(slip(book, "mayGoOut")).isEqualTo("no");
      assertThat(slip(book, "reasons")).contains("does not count and may be low");
    }
  }

  @Test
  void a_retired_battery_leaves_counts_and_lists(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery("retired", day("2027-01-01"), "decided", "keep"))
          .rows("tests", test());
      assertThat(slip(book, "mayGoOut")).isEqualTo("no");
      assertThat(book.column("batteries.fit")).containsExactly("no");
      assertThat(book.single("summary.batteries")).isEqualTo("0");
      assertThat(book.column("stocktake.serial")).isEmpty();
      assertThat(book.column("actions.serial")).isEmpty();
    }
  }

  private DynamicTest unsafe(Office office, String name, Map<String, Object> battery) {
    return unsafe(office, name, battery, test());
  }

  private DynamicTest unsafe(
      Office office, String name, Map<String, Object> battery, Map<String, Object> test) {
    return DynamicTest.dynamicTest(
        name,
        () -> {
          try (PlanSheet book = empty(office)) {
            book.rows("batteries", battery).rows("tests", test);
            withheld(book, 1);
          }
        });
  }

  /** No paper says yes, no count counts it. */
  private static void withheld(PlanSheet book, int rows) {
    assertThat(slip(book, "mayGoOut")).isEqualTo("no");
    assertThat(slip(book, "verdict")).isIn("check", "stop");
    assertThat(slip(book, "reasons")).isNotEmpty();
    assertThat(slip(book, "type")).isEmpty();
    assertThat(slip(book, "health")).isEmpty();
    assertThat(slip(book, "tested")).isEmpty();
    assertThat(book.page("Issue list")).doesNotContain("yes");
    assertThat(book.column("batteries.fit")).hasSize(rows).containsOnly("no");
    assertThat(book.column("batteries.status")).doesNotContain("keep", "watch");
    assertThat(book.single("summary.fit")).isEqualTo("0");
    assertThat(book.single("summary.withheld")).isEqualTo("" + rows);
    assertThat(book.column("issues.verdict")).isNotEmpty();
    agree(book);
  }

  /** Every count and list has what the gate lets pass: the column Fit to go out. */
  private static void agree(PlanSheet book) {
    long fit = book.column("batteries.fit").stream().filter("yes"::equals).count();
    assertThat(book.single("summary.fit")).isEqualTo("" + fit);
    assertThat(book.column("stocktake.fit").stream().filter("yes"::equals).count()).isEqualTo(fit);
    double byType =
        book.column("types.fit").stream()
            .filter(t -> !t.isEmpty())
            .mapToDouble(Double::valueOf)
            .sum();
    assertThat(byType).isLessThanOrEqualTo(fit);
    List<String> verdicts = book.column("batteries.verdict");
    List<String> answers = book.column("batteries.fit");
    for (int i = 0; i < verdicts.size(); i++) {
      if (verdicts.get(i).equals("stop")) {
        assertThat(answers.get(i)).isEqualTo("no");
      }
    }
  }

  @Test
  @SuppressWarnings({"unchecked", "rawtypes"}) // arrays of a generic type
  void a_resistance_far_above_its_type_goes_to_service(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      Map<String, Object>[] batteries = new Map[6];
      Map<String, Object>[] tests = new Map[6];
      for (int i = 0; i < 6; i++) {
        batteries[i] = battery("serial", "A" + (i + 1));
        tests[i] = test("serial", "A" + (i + 1), "resistance", i == 0 ? 500.0 : 50.0 + 2 * i);
      }
      book.rows("batteries", batteries).rows("tests", tests);
      assertThat(slip(book, "mayGoOut")).isEqualTo("no");
      assertThat(book.column("batteries.status").get(0)).isEqualTo("service");
      assertThat(book.column("batteries.fit"))
          .containsExactly("no", "yes", "yes", "yes", "yes", "yes");
      assertThat(book.single("summary.fit")).isEqualTo("5");
      assertThat(book.single("summary.service")).isEqualTo("1");
      agree(book);
    }
  }

  @Test
  void a_serial_that_stands_twice_never_goes_out(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery(), battery("condition", "swollen")).rows("tests", test());
      withheld(book, 2);
      book.rows("batteries", battery(), battery("serial", " a1 "));
      withheld(book, 2);
    }
  }

  @Test
  void an_open_incident_holds_a_battery_whatever_its_condition_says(Office office)
      throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery("decided", "keep")).rows("tests", test());
      book.rows(
          "incidents", Map.of("serial", "A1", "happened", "dropped", "date", day("2027-01-20")));
      withheld(book, 1);
      book.rows(
          "incidents", Map.of("type", "T", "happened", "recalled", "date", day("2027-01-20")));
      withheld(book, 1);
      book.rows("incidents");
      assertThat(slip(book, "mayGoOut")).isEqualTo("yes");
    }
  }

  @Test
  void a_serial_that_the_register_does_not_have_gets_no_slip(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery())
          .rows("tests", test())
          .rows("checkout", Map.of("serial", "B7"));
      assertThat(slip(book, "mayGoOut")).isEqualTo("no");
      assertThat(slip(book, "verdict")).isEqualTo("stop");
      assertThat(book.page("Issue list")).doesNotContain("yes");
      book.rows("checkout");
      assertThat(slip(book, "mayGoOut")).isEmpty();
      assertThat(book.page("Issue list")).doesNotContain("yes");
    }
  }

  @Test
  void without_a_day_it_is_today_and_a_wrong_day_stops_every_battery(Office office)
      throws IOException {
    try (PlanSheet book = empty(office)) {
      double today = ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.now());
      book.rows("batteries", battery("inspected", today - 2))
          .rows("tests", test("date", today - 3));
      book.type("project.asOf", "").calculated();
      assertThat(slip(book, "mayGoOut")).isEqualTo("yes");
      assertThat(book.page("Project")).contains("" + today);
      book.type("project.asOf", "soon").calculated();
      withheld(book, 1);
    }
  }

  /** What a keyboard types is text in a column of names, so that no zero is lost. */
  @Test
  void a_serial_keeps_the_zeros_that_are_typed(Office office) throws Exception {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery()).rows("tests", test("serial", "0012"));
      for (String path : List.of("batteries.serial", "checkout.serial")) {
        typeAsKeyboard(office, book, path, "0012");
        assertThat(book.typed(path)).as(path).isEqualTo("0012");
      }
      assertThat(book.calculated().column("slip.serial")).containsExactly("0012");
    }
  }

  private static void typeAsKeyboard(Office office, PlanSheet book, String path, String typed)
      throws Exception {
    PlanLayout.Place place = book.layout().place(book.layout().input(path));
    XModel model = UnoRuntime.queryInterface(XModel.class, book.document());
    XController controller = model.getCurrentController();
    UnoRuntime.queryInterface(XSelectionSupplier.class, controller)
        .select(book.range(place.tab(), place.column(), place.row(), 1, 1));
    office
        .service(XDispatchHelper.class, "com.sun.star.frame.DispatchHelper")
        .executeDispatch(
            UnoRuntime.queryInterface(XDispatchProvider.class, controller.getFrame()),
            ".uno:EnterString",
            "",
            0,
            new PropertyValue[] {Uno.property("StringName", typed)});
  }

  @Test
  void each_page_of_an_issue_list_has_its_number(Office office) throws Exception {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery()).rows("tests", test());
      book.type("project.issue", "2027-017").calculated();
      assertThat(book.single("handover.issue")).isEqualTo("2027-017");
      XPrintAreas pages = UnoRuntime.queryInterface(XPrintAreas.class, book.sheet("Issue list"));
      assertThat(pages.getPrintTitleRows()).isTrue();
      int repeated = pages.getTitleRows().StartRow;
      String page = book.page("Issue list");
      String heading =
          Arrays.deepToString(
              UnoRuntime.queryInterface(
                      XCellRangeData.class,
                      book.sheet("Issue list").getCellRangeByPosition(0, repeated, 9, repeated))
                  .getDataArray());
      assertThat(heading).contains("Back, condition\nIssue number: 2027-017");
      assertThat(page.indexOf("handed out by")).isLessThan(page.indexOf("Issue number: 2027"));
      book.type("project.issue", "").calculated();
      assertThat(book.page("Issue list")).doesNotContain("Issue number:");
    }
  }

  /** The house lets batteries out that are not tested; the client reads that in words. */
  @Test
  void a_battery_that_is_not_tested_says_so_on_the_issue_list(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery()).rows("tests").type("project.untested", "goes out");
      assertThat(book.column("slip.serial")).containsExactly("A1");
      assertThat(book.page("Issue list")).contains("not tested");
    }
  }

  @Test
  void energy_alone_closes_no_incident_and_a_cell_far_apart_is_quarantined(Office office)
      throws IOException {
    try (PlanSheet book = empty(office)) {
      Map<String, Object> closed = new HashMap<>();
      closed.put("number", 1.0);
      closed.put("serial", "A1");
      closed.put("happened", "dropped");
      closed.put("date", day("2027-01-20"));
      closed.put("reportedBy", "runner");
      closed.put("closed", day("2027-02-05"));
      closed.put("closedBy", "technician");
      closed.put("reason", "no damage seen");
      book.rows("batteries", battery()).rows("tests", test()).rows("incidents", closed);
      assertThat(book.column("batteries.fit")).containsExactly("yes");
      book.rows("tests", test("cell1", "", "cell2", "", "cell3", "", "cell4", ""));
      withheld(book, 1);
      assertThat(book.column("incidents.reasons").get(0)).contains("Measure every cell");
      book.rows("incidents").rows("tests", test("cell4", 3.8));
      withheld(book, 1);
      assertThat(book.column("batteries.status")).containsExactly("quarantine");
      assertThat(book.column("batteries.reasons").get(0)).contains("Do not balance");
    }
  }

  @Test
  void an_incident_that_was_cleared_is_missed(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      book.rows("batteries", battery("condition", "dropped")).rows("tests", test());
      assertThat(book.column("batteries.reasons").get(0)).contains("enter there No. 1");
      Map<String, Object> first =
          Map.of("number", 1.0, "serial", "A1", "happened", "dropped", "date", day("2027-01-20"));
      Map<String, Object> second =
          Map.of("number", 2.0, "serial", "A1", "happened", "wet", "date", day("2027-01-20"));
      book.rows("incidents", first, second);
      assertThat(book.single("summary.incidentsMissing")).isEqualTo("0");
      assertThat(book.column("batteries.reasons").get(0)).doesNotContain("enter there");
      book.rows("incidents", second).rows("batteries", battery());
      assertThat(book.single("summary.incidentsMissing")).isEqualTo("1");
      assertThat(book.column("incidents.reasons").get(0))
          .contains("Incidents has no row with No. 1.");
      assertThat(book.column("issues.reasons")).anyMatch(r -> r.contains("no row with No. 1"));
    }
  }

  @Test
  void three_hundred_blank_rows_to_inspect_are_one_issue(Office office) throws IOException {
    try (PlanSheet book = empty(office)) {
      @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type
      Map<String, Object>[] rows = new Map[300];
      for (int i = 0; i < rows.length; i++) {
        rows[i] = battery("serial", "N" + i, "condition", "");
      }
      book.rows("batteries", rows).rows("checkout");
      assertThat(book.single("summary.notInspected")).isEqualTo("300");
      List<String> where = book.column("issues.where");
      assertThat(where.stream().filter(w -> w.startsWith("Batteries"))).hasSize(1);
      assertThat(Arrays.asList("300.0")).isEqualTo(book.column("issues.rows"));
    }
  }
}
