package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.ValidationAlertStyle;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.text.XText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.command.export.PdfText;
import org.setpower.command.issues.ListIssuesCommand;
import org.setpower.office.Office;
import org.setpower.templates.layout.PlanLayout;
import org.setpower.templates.lighting.LightingPowerPlan;
import org.setpower.templates.uno.UnoAccess;

/**
 * Through the cells of the lighting power plan: nothing that can hurt somebody passes, and nothing
 * ordinary stops. Sources stand beside the figures.
 */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class LightingPowerPlanIT {
  private static final Path TEMPLATE =
      Path.of("target/sheets/templates/en/lighting-power-plan.ots");
  private static final Path EXAMPLE =
      Path.of("target/sheets/examples/lighting-power-plan-example.ods");
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  private final PlanWorkbook workbook = new LightingPowerPlan().workbook();

  @TempDir Path folder;

  private static double day(String date) {
    return ChronoUnit.DAYS.between(DAY_ZERO, LocalDate.parse(date));
  }

  private static double clock(int hour, int minute) {
    return (hour * 60 + minute) / 1440.0;
  }

  private static Map<String, Object> row(Object... keysAndCells) {
    Map<String, Object> row = new HashMap<>();
    for (int i = 0; i < keysAndCells.length; i += 2) {
      Object cell = keysAndCells[i + 1];
      row.put((String) keysAndCells[i], cell instanceof Integer n ? (Object) (double) n : cell);
    }
    return row;
  }

  private static Map<String, Object> with(Map<String, Object> row, Object... changes) {
    Map<String, Object> changed = new HashMap<>(row);
    changed.putAll(row(changes));
    return changed;
  }

  private static final Map<String, Object> QUAY =
      row(
          "name",
          "quay",
          "type",
          "utility",
          "system",
          "3PH",
          "volts",
          400,
          "breaker",
          63,
          "curve",
          "C",
          "existing",
          12,
          "rcd",
          300,
          "rcdType",
          "S",
          "zs",
          0.15);
  private static final Map<String, Object> BOX =
      row("name", "A", "type", "distro", "breaker", 63, "curve", "C");
  private static final Map<String, Object> OUTLETS =
      row(
          "distro",
          "A",
          "numbers",
          "1–6",
          "connector",
          "IEC 60309 16 A 3-pin",
          "legs",
          "in turn",
          "breaker",
          "16",
          "curve",
          "C",
          "rcd",
          "30");
  private static final Map<String, Object> FEED =
      row("to", "A", "from", "quay", "length", 25, "size", "5G16", "type", "rubber");
  private static final Map<String, Object> LED =
      row(
          "item",
          "LED 1600 W",
          "watts",
          1600,
          "powerFactor",
          0.98,
          "harmonic",
          0.1,
          "inrush",
          "electronic");
  private static final Map<String, Object> LAMP = row("item", "LED 1600 W", "place", "A-2");

  /** One distro on 63 A with one lamp: nothing is wrong with it. */
  private PlanSheet quay(Office office) throws IOException {
    return quay(PlanSheet.blank(office, TEMPLATE, workbook));
  }

  private static PlanSheet quay(PlanSheet book) {
    book.type("project.units", "metric")
        .type("project.rule", "VDE 0298-4")
        .type("project.installation", "free");
    book.rows(
        "days",
        row("date", day("2027-02-01"), "call", clock(7, 0), "wrap", clock(18, 0), "warmest", 8));
    return book.rows("supplies", QUAY, BOX)
        .rows("outlets", OUTLETS)
        .rows("runs", FEED)
        .rows("equipment", LED)
        .rows("loads", LAMP);
  }

  private static void sound(PlanSheet book) {
    assertThat(book.column("issues.reasons")).as("issues").isEmpty();
    assertThat(book.single("summary.verdict")).isEqualTo("ok");
  }

  private static void stops(PlanSheet book, String table, int row, String sentence) {
    assertThat(book.column(table + ".verdict").get(row - 1)).isEqualTo("stop");
    assertThat(book.column(table + ".reasons").get(row - 1)).contains(sentence);
    assertThat(book.single("summary.verdict")).isEqualTo("stop");
    assertThat(book.column("issues.reasons")).anyMatch(r -> r.contains(sentence));
  }

  private static double number(PlanSheet book, String path, int row) {
    return Double.parseDouble(book.column(path).get(row - 1));
  }

  @Test
  void a_sound_plan_has_no_issue_and_every_paper_has_it(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      sound(book);
      assertThat(book.column("plugging.device")).containsExactly("LED 1600 W");
      assertThat(book.column("distribution.place")).containsExactly("A-2");
      assertThat(book.column("pull.end")).containsExactly("A");
      assertThat(book.column("labels.place")).containsExactly("A", "", "A-2");
      assertThat(book.column("labels.plugged"))
          .contains(
              "Fed from quay, breaker 63 A.",
              "1 × LED 1600 W",
              "Isolate the supply before any connection is changed.");
      assertThat(book.column("order.article")).contains("LED 1600 W");
      assertThat(book.column("outlets.legsOf")).containsExactly("L1: 1, 4 · L2: 2, 5 · L3: 3, 6");
      // 1600 W / (400 V / √3 · 0.98) = 7.07 A, and more at the voltage that arrives
      double volts = number(book, "loads.volts", 1);
      assertThat(volts).isBetween(228.0, 230.9);
      assertThat(number(book, "loads.amps", 1)).isCloseTo(1600 / 0.98 / volts, within(0.005));
      assertThat(book.column("loads.legUsed")).containsExactly("L2");
    }
  }

  /** The leaf function in its column gives what the plan counts with: the drop from the source. */
  @Test
  void the_leaf_column_is_the_drop_of_the_model(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      // without third harmonics nothing flows in the neutral, which the leaf does not know
      book.rows("equipment", with(LED, "harmonic", 0));
      book.rows(
          "loads",
          row("item", "LED 1600 W", "place", "A-1"),
          row("item", "LED 1600 W", "place", "A-2"),
          row("item", "LED 1600 W", "place", "A-3"));
      double drop = Double.parseDouble(book.leaf("runs", "Voltage drop").get(0));
      // leg to neutral, of which the share is too (IEC 60364-5-52 annex G)
      double share = number(book, "runs.totalDrop", 1);
      assertThat(drop / (400 / Math.sqrt(3))).isCloseTo(share, within(share * 0.01));
      assertThat(book.leaf("runs", "Voltage drop")).hasSize(1);
    }
  }

  /** A 32 A breaker over a 2.5 mm² cord stops whatever other outlets the distro has. */
  @Test
  void the_outlet_really_used_decides_the_upstream_breaker(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows(
          "outlets",
          OUTLETS,
          row(
              "distro",
              "A",
              "numbers",
              "7",
              "connector",
              "IEC 60309 32 A 5-pin",
              "breaker",
              "32",
              "curve",
              "C",
              "rcd",
              "30"));
      book.rows("supplies", QUAY, BOX, row("name", "B", "type", "distro", "breaker", 32));
      book.rows(
          "runs",
          FEED,
          row("to", "B", "from", "A-7", "length", 20, "size", "5G2.5", "type", "rubber"));
      stops(book, "runs", 2, "The upstream breaker of 32 A does not protect this cable");
      assertThat(book.column("pull.end")).containsExactly("A");
      book.rows(
          "runs",
          FEED,
          row("to", "B", "from", "A-7", "length", 20, "size", "5G6", "type", "rubber"));
      assertThat(book.column("runs.verdict").get(1)).isNotEqualTo("stop");
    }
  }

  @Test
  void available_is_the_smallest_upstream_less_what_others_take(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      // its existing 12 A are its own: they count in its legs, 63 − 12 − some 7.1 A of the lamp
      assertThat(number(book, "supplies.available", 1)).isEqualTo(63);
      double lamp = number(book, "loads.amps", 1);
      assertThat(lamp).isBetween(7.07, 7.15);
      assertThat(number(book, "supplies.headroom", 1)).isCloseTo(63 - 12 - lamp, within(0.005));
      book.rows("supplies", QUAY, with(BOX, "breaker", 125));
      assertThat(number(book, "supplies.available", 2)).isLessThanOrEqualTo(51);
      assertThat(number(book, "supplies.headroom", 2))
          .isLessThanOrEqualTo(number(book, "supplies.headroom", 1) + 1e-9);
    }
  }

  @Test
  void a_forgotten_cable_stops_the_distro_and_what_hangs_on_it(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows("runs");
      stops(book, "supplies", 2, "no cable run goes to it");
      stops(book, "loads", 1, "has no supply");
      assertThat(book.column("plugging.device")).isEmpty();
      assertThat(book.single("summary.loadsFit")).isEqualTo("0");
      assertThat(book.single("summary.loadsWithheld")).isEqualTo("1");
    }
  }

  @Test
  void the_order_knows_cores_sets_and_spares(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.type("project.spareCable", 0.1);
      book.rows(
          "supplies", QUAY, BOX, row("name", "C", "type", "distro", "breaker", 16, "curve", "C"));
      book.rows(
          "runs",
          with(FEED, "size", "35 mm²", "type", "feeder", "cores", "5 single"),
          row("to", "C", "from", "A-3", "length", 25, "size", "3G2.5", "type", "rubber"));
      List<String> sizes = book.column("order.cable");
      List<String> required = book.column("order.required");
      List<String> spare = book.column("order.spare");
      List<String> singles = new ArrayList<>();
      for (int i = 0; i < sizes.size(); i++) {
        if (!sizes.get(i).contains("mm²")) {
          continue;
        }
        // 10 % of one piece is one piece
        assertThat(required.get(i)).isEqualTo("1.0");
        assertThat(spare.get(i)).isEqualTo("1.0");
        if (sizes.get(i).startsWith("35 mm², ")) {
          singles.add(sizes.get(i).substring("35 mm², ".length()));
        } else {
          assertThat(sizes.get(i)).isEqualTo("2.5 mm², cores: 3");
        }
      }
      assertThat(singles).containsExactlyInAnyOrder("L1", "L2", "L3", "neutral", "earth");
    }
  }

  @Test
  void what_cannot_be_counted_stops(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows("equipment", with(LED, "watts", ""));
      stops(book, "loads", 1, "its current is not known");
      book.rows("equipment", LED);
      book.rows("loads", with(LAMP, "place", "A-9"));
      stops(book, "loads", 1, "There is no place A-9");
      book.rows("loads", with(LAMP, "leg", "L1"));
      stops(book, "loads", 1, "Leg decided is L1 and the outlet has L2");
      book.rows("loads", with(LAMP, "quantity", "three"));
      stops(book, "loads", 1, "three");
      book.rows("outlets", with(OUTLETS, "breaker", ""));
      stops(book, "outlets", 1, "Breaker is blank");
      book.rows("outlets", OUTLETS).rows("loads", with(LAMP, "place", " a - 2"));
      sound(book);
    }
  }

  @Test
  void two_loads_on_one_outlet_count_together_by_the_clock(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows("equipment", LED, row("item", "kettle", "watts", 3000, "inrush", "none"));
      book.rows(
          "loads",
          row("item", "kettle", "place", "A-2", "from", clock(7, 0), "to", clock(9, 0)),
          row("item", "LED 1600 W", "place", "a-2", "from", clock(8, 30), "to", clock(10, 0)));
      // (3000 + 1600) / 230.9 = 19.92 A in phase, 7.07 · sin(acos 0.98) = 1.41 A across: 20.0 A
      assertThat(book.column("outlets.reasons").get(0)).contains("20.0 A from").contains("16 A");
      assertThat(book.single("summary.verdict")).isEqualTo("stop");
      book.rows(
          "loads",
          row("item", "kettle", "place", "A-2", "from", clock(7, 0), "to", clock(8, 30)),
          row("item", "LED 1600 W", "place", "a-2", "from", clock(8, 30), "to", clock(10, 0)));
      sound(book);
    }
  }

  @Test
  void what_a_stop_feeds_is_on_no_paper(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows(
          "runs",
          FEED,
          row(
              "to",
              "tail",
              "from",
              "A-2",
              "length",
              20,
              "size",
              "3G1.5",
              "type",
              "rubber",
              "installation",
              "drum 3 layers"));
      book.rows("loads", with(LAMP, "place", "tail"), with(LAMP, "place", "A-3"));
      stops(book, "runs", 2, "does not protect this cable");
      assertThat(book.column("loads.verdict")).containsExactly("stop", "ok");
      assertThat(book.column("loads.reasons").get(0)).contains("tail, which feeds it, is a stop");
      assertThat(book.column("plugging.protectedOutlet")).containsExactly("A-3 · 16 A");
      assertThat(book.single("summary.loadsWithheld")).isEqualTo("1");
      assertThat(book.column("issues.where")).hasSize(1);
    }
  }

  @Test
  void heat_and_drums_lower_the_rating(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      double cold = number(book, "runs.rating", 1);
      book.rows(
          "days",
          row("date", day("2027-07-01"), "call", clock(7, 0), "wrap", clock(18, 0), "warmest", 45));
      assertThat(number(book, "runs.rating", 1)).isLessThan(cold);
      book.rows("runs", with(FEED, "installation", "drum 3 layers"));
      stops(book, "runs", 1, "does not protect this cable");
      book.rows("runs", with(FEED, "installation", "closed drum"));
      stops(book, "runs", 1, "closed drum");
    }
  }

  @ParameterizedTest
  @CsvSource({"5G2.5,rubber", "3G2.5,rubber", "3 × 2.5,cord", "2.5 mm²,rubber", "12/3,cord"})
  void a_lamp_at_the_end_of_an_everyday_cable_is_right(String size, String type, Office office)
      throws IOException {
    try (PlanSheet book = quay(office)) {
      // five cores fit an outlet of three pins only where somebody fitted such connectors
      String connector = size.startsWith("5") ? "IEC 60309 16 A 3-pin" : "";
      Map<String, Object> tail =
          row("to", "tail", "from", "A-2", "length", 20, "size", size, "type", type);
      book.rows("runs", FEED, with(tail, "connector", connector));
      book.rows("loads", with(LAMP, "place", "tail"));
      assertThat(book.column("runs.verdict").get(1)).as(size).isNotEqualTo("stop");
      assertThat(book.column("loads.verdict").get(0)).isNotEqualTo("stop");
      assertThat(number(book, "runs.rating", 2)).isGreaterThanOrEqualTo(16);
    }
  }

  @Test
  void a_heater_on_a_long_cable_never_stops(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows(
          "equipment",
          LED,
          row("item", "heater", "watts", 3000, "inrush", "none", "minVolts", 229));
      book.rows(
          "runs",
          FEED,
          row("to", "tail", "from", "A-2", "length", 50, "size", "3G2.5", "type", "rubber"));
      book.rows("loads", row("item", "heater", "place", "tail"));
      assertThat(book.column("loads.verdict")).containsExactly("check");
      assertThat(book.column("loads.reasons").get(0)).contains("gives less");
    }
  }

  /** 24.8 A on each of three pairs are √3 · 24.8 = 43.0 A a leg. */
  @Test
  void line_pairs_add_up_by_vectors(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows(
          "outlets",
          row(
              "distro",
              "A",
              "numbers",
              "1–3",
              "connector",
              "4-wire 50 A",
              "legs",
              "pairs in turn",
              "breaker",
              "32",
              "curve",
              "C",
              "rcd",
              "30"));
      book.rows(
          "equipment",
          row(
              "item",
              "pair",
              "watts",
              9920,
              "powerFactor",
              1,
              "inrush",
              "tungsten",
              "connection",
              "line-line"));
      book.rows(
          "loads",
          row("item", "pair", "place", "A-1"),
          row("item", "pair", "place", "A-2"),
          row("item", "pair", "place", "A-3"));
      assertThat(number(book, "loads.amps", 1)).isCloseTo(24.8, within(0.05));
      for (String leg : List.of("amps1", "amps2", "amps3")) {
        assertThat(number(book, "supplies." + leg, 2)).isCloseTo(43.0, within(0.1));
      }
    }
  }

  @Test
  void rows_belong_to_days_and_the_status_counts_all_of_them(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows(
          "days",
          row("date", day("2027-02-01"), "warmest", 8),
          row("date", day("2027-02-02"), "warmest", 8));
      book.rows(
          "loads",
          with(LAMP, "quantity", 2),
          with(LAMP, "fromDay", day("2027-02-02"), "quantity", 1));
      // 3 · 7.07 = 21.2 A on the second day only
      assertThat(book.single("summary.verdict")).isEqualTo("stop");
      book.type("project.dayShown", day("2027-02-01"));
      assertThat(number(book, "outlets.peak", 1)).isCloseTo(14.1, within(0.1));
      assertThat(book.single("summary.verdict")).isEqualTo("stop");
    }
  }

  @Test
  void a_hostile_cell_hurts_only_its_row(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.rows(
          "loads",
          LAMP,
          row("item", "=1/0", "place", "A-4"),
          row("place", "A-5"),
          with(LAMP, "place", "A-6"));
      assertThat(book.column("loads.verdict")).containsExactly("ok", "stop", "stop", "ok");
      assertThat(book.column("plugging.protectedOutlet"))
          .containsExactly("A-2 · 16 A", "A-6 · 16 A");
    }
  }

  @Test
  void headings_follow_the_units(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      assertThat(book.page("Cable runs")).contains("Length (m)").doesNotContain("(ft)");
      book.type("project.units", "US");
      assertThat(book.page("Cable runs")).contains("Length (ft)").doesNotContain("Air (°C)");
      assertThat(book.page("Project")).contains("Max. temperature (°F)");
    }
  }

  /** Metres that became feet by a pick from a list would be another plan. */
  @Test
  void units_are_not_offered_for_change_while_figures_are_typed(Office office) throws Exception {
    try (PlanSheet book = new PlanSheet(office, TEMPLATE, workbook)) {
      book.type("project.units", "metric");
      assertThat(offered(book)).containsExactly("metric", "US");
      book.rows("runs", FEED);
      assertThat(offered(book)).containsExactly("metric", "metric");
      book.type("project.units", "");
      String late = "US (figures are ft, °F, US gal)";
      assertThat(offered(book)).containsExactly("metric (figures are m, °C, L)", late);
      book.type("project.units", late);
      assertThat(book.single("project.verdict")).isEqualTo("check");
      assertThat(book.page("Cable runs")).contains("Length (ft)");
      // what is confirmed is picked without the statement; the other system is not to be had
      assertThat(offered(book)).containsExactly(late, "US");
      book.type("project.units", "metric");
      PlanLayout.Place cell = book.layout().place(book.layout().input("project.units"));
      Object validation =
          UnoAccess.get(book.range(cell.tab(), cell.column(), cell.row(), 1, 1), "Validation");
      assertThat(UnoAccess.as(XSheetCondition.class, validation).getFormula1())
          .isEqualTo("Units_offered");
      assertThat((Boolean) UnoAccess.get(validation, "ShowErrorMessage")).isTrue();
      assertThat(UnoAccess.get(validation, "ErrorAlertStyle")).isEqualTo(ValidationAlertStyle.STOP);
    }
  }

  private static List<String> offered(PlanSheet book) throws Exception {
    XSpreadsheet plan = book.sheet("Plan");
    return List.of(
        UnoAccess.as(XText.class, plan.getCellByPosition(2, 0)).getString(),
        UnoAccess.as(XText.class, plan.getCellByPosition(2, 1)).getString());
  }

  /**
   * A night exterior: a generator of 63 A, 70 m of single cores, a distro with outlets of 16, 32
   * and 63 A, a smaller distro behind it, 17 rows of loads. A gaffer finds nothing wrong with it.
   */
  @Test
  void a_night_exterior_on_a_generator_has_no_false_stop(Office office) throws Exception {
    try (PlanSheet book = quay(new PlanSheet(office, TEMPLATE, workbook))) {
      book.rows(
          "days",
          row("date", day("2027-02-04"), "call", clock(16, 0), "wrap", clock(3, 0), "warmest", 2));
      book.rows(
          "supplies",
          with(QUAY, "name", "set", "type", "generator", "existing", "", "zs", 0.3),
          BOX,
          row("name", "B", "type", "distro", "breaker", 32, "curve", "C"));
      book.rows(
          "outlets",
          OUTLETS,
          with(
              OUTLETS,
              "numbers",
              "7",
              "connector",
              "IEC 60309 32 A 5-pin",
              "legs",
              "",
              "breaker",
              "32"),
          with(
              OUTLETS,
              "numbers",
              "8",
              "connector",
              "IEC 60309 63 A 5-pin",
              "legs",
              "",
              "breaker",
              "through",
              "rcd",
              "upstream"),
          with(OUTLETS, "distro", "B", "numbers", "1–6"));
      book.rows(
          "runs",
          row(
              "to",
              "A",
              "from",
              "set",
              "length",
              70,
              "size",
              "35 mm²",
              "type",
              "feeder",
              "cores",
              "5 single",
              "pieces",
              "25+25+20",
              "connector",
              "single-pole set"),
          row("to", "B", "from", "A-7", "length", 40, "size", "5G6", "type", "rubber"),
          row(
              "to", "dike", "from", "A-1", "length", 50, "size", "3G2.5", "type", "rubber",
              "pieces", "25+25"));
      book.rows(
          "equipment",
          LED,
          row("item", "panel", "watts", 400, "powerFactor", 0.96, "harmonic", 0.1),
          row("item", "fresnel", "watts", 650, "powerFactor", 0.97, "harmonic", 0.1),
          row("item", "practical", "watts", 150, "powerFactor", 1, "inrush", "tungsten"),
          row("item", "haze machine", "watts", 1500, "powerFactor", 1, "inrush", "none"),
          row("item", "charging station", "watts", 900, "powerFactor", 0.95, "harmonic", 0.2));
      @SuppressWarnings({"unchecked", "rawtypes"}) // an array of a generic type
      Map<String, Object>[] loads =
          new Map[] {
            row("item", "LED 1600 W", "place", "dike"),
            row("item", "LED 1600 W", "place", "A-2"),
            row("item", "LED 1600 W", "place", "A-3", "level", 0.6),
            row("item", "panel", "place", "A-4", "quantity", 2),
            row("item", "panel", "place", "A-5", "quantity", 2, "level", 0.5),
            row("item", "fresnel", "place", "A-6"),
            row("item", "fresnel", "place", "A-4"),
            row("item", "practical", "place", "A-5", "quantity", 4),
            row("item", "haze machine", "place", "B-1", "from", clock(20, 0), "to", clock(23, 0)),
            row("item", "charging station", "place", "B-2"),
            row("item", "charging station", "place", "B-3"),
            row("item", "panel", "place", "B-4", "quantity", 2),
            row("item", "fresnel", "place", "B-5…6", "quantity", 2),
            row("item", "practical", "place", "B-2", "quantity", 2),
            row("item", "panel", "place", "B-3", "level", 0.3),
            row("item", "practical", "place", "A-6", "quantity", 2),
            row("item", "panel", "place", "A-2")
          };
      book.rows("loads", loads);
      book.rows("sizes", row("kva", 25), row("kva", 40), row("kva", 60));
      book.rows(
          "generators",
          row(
              "name",
              "set",
              "engine",
              "diesel turbo",
              "altitude",
              5,
              "intake",
              35,
              "bond",
              "at generator",
              "tank",
              120,
              "kva",
              40));
      assertThat(book.column("issues.verdict"))
          .as(book.column("issues.reasons").toString())
          .doesNotContain("stop");
      assertThat(book.single("summary.loadsFit")).isEqualTo("17");
      assertThat(book.single("summary.runsFit")).isEqualTo("3");
      assertThat(book.column("plugging.device")).hasSize(17);
      // LED 3 · 7.07 … the sum of watts, worked out by hand: 1600·2 + 960 + 800 + 400 + 650·2 + 600
      // + 1500 + 1800 + 800 + 1300 + 300 + 120 + 300 + 400 = 13 780 W.
      assertThat(book.single("summary.power").replaceAll("[^0-9]", "")).isEqualTo("13780");
      assertThat(book.typedCells()).isLessThanOrEqualTo(180);
      assertThat(pages(office, book.document())).isBetween(6, 8);
    }
  }

  /** A row of Outlets has no name of its own: its issue leads to its distro and numbers. */
  @Test
  void an_issue_of_outlets_links_to_their_row(Office office) throws Exception {
    try (PlanSheet book = new PlanSheet(office, EXAMPLE, workbook)) {
      CommandDriver.command(office, book.document(), "look");
      TestSheet list = TestSheet.named(book.document(), ListIssuesCommand.SHEET);
      List<Object[]> outlets =
          Stream.of(list.data("A5:D40"))
              .filter(r -> String.valueOf(r[2]).startsWith("Outlets: A1"))
              .toList();
      assertThat(outlets).isNotEmpty();
      assertThat(outlets)
          .allSatisfy(r -> assertThat((String) r[1]).startsWith("Sources & distro."));
    }
  }

  /** Every paper of the example, the diagram among them: one page a list, none blank. */
  @Test
  void the_example_prints_at_most_twelve_pages(Office office) throws Exception {
    try (PlanSheet book = new PlanSheet(office, EXAMPLE, workbook)) {
      assertThat(pages(office, book.document())).isBetween(8, 12);
    }
  }

  /** Pages of all papers with their print ranges set and the diagram drawn, as printing does. */
  private int pages(Office office, XComponent document) throws Exception {
    CommandDriver.command(office, document, "diagram");
    CommandDriver.command(office, document, "fit");
    Path pdf = folder.resolve("papers.pdf");
    office.store(document, "calc_pdf_Export", pdf);
    String text = PdfText.of(pdf);
    for (String paper :
        List.of("Summary", "Loads by outlet", "Cable pull", "Generator sheet", "Order list")) {
      assertThat(text).contains(paper);
    }
    Matcher count = Pattern.compile("Pages: +(\\d+)").matcher(PdfText.properties(pdf));
    assertThat(count.find()).isTrue();
    return Integer.parseInt(count.group(1));
  }

  /**
   * A stage of 120/208 V behind a 400 A switch: single cores of 4/0, a lunch box on 100 A, a 19-pin
   * cable with two circuits, three lamps on the pairs. Right by the NEC, so nothing stops.
   */
  @Test
  void a_stage_of_120_208_volts_has_no_false_stop(Office office) throws IOException {
    try (PlanSheet book = quay(office)) {
      book.type("project.units", "US").type("project.rule", "NEC");
      book.rows(
          "days",
          row("date", day("2027-02-05"), "call", clock(8, 0), "wrap", clock(20, 0), "warmest", 77));
      book.rows(
          "supplies",
          row(
              "name",
              "switch",
              "type",
              "house power",
              "system",
              "3PH",
              "volts",
              208,
              "breaker",
              400,
              "zs",
              0.02),
          row("name", "D1", "type", "distro", "breaker", 400),
          row("name", "lunch box", "type", "distro"));
      Map<String, Object> pins =
          row(
              "distro",
              "D1",
              "numbers",
              "1-6",
              "connector",
              "stage pin 100 A",
              "legs",
              "in turn",
              "breaker",
              "100",
              "rcd",
              "none");
      book.rows(
          "outlets",
          pins,
          with(
              pins,
              "numbers",
              "7-9",
              "connector",
              "4-wire 100 A",
              "legs",
              "pairs in turn",
              "rcd",
              ""),
          with(pins, "numbers", "10", "connector", "19-pin", "breaker", "20", "rcd", "5"),
          row(
              "distro",
              "lunch box",
              "numbers",
              "1-4",
              "connector",
              "NEMA 5-20",
              "breaker",
              "20",
              "sharing",
              2,
              "rcd",
              "5"));
      book.rows(
          "runs",
          row(
              "to",
              "D1",
              "from",
              "switch",
              "length",
              100,
              "size",
              "4/0",
              "type",
              "feeder",
              "cores",
              "5 single",
              "temperatureClass",
              "75",
              "pieces",
              "50+50"),
          row(
              "to",
              "lunch box",
              "from",
              "D1-1",
              "length",
              50,
              "size",
              "2 AWG",
              "type",
              "cord",
              "cores",
              "3"),
          row(
              "to",
              "pipe",
              "from",
              "D1-10",
              "length",
              75,
              "size",
              "12 AWG",
              "type",
              "multi-circuit"));
      Map<String, Object> tungsten =
          row("item", "tungsten 2 kW", "watts", 2000, "inrush", "tungsten");
      book.rows(
          "equipment",
          tungsten,
          with(
              tungsten,
              "item",
              "tungsten 5 kW",
              "watts",
              5000,
              "connection",
              "line-line",
              "maxVolts",
              240));
      book.rows(
          "loads",
          row("item", "tungsten 2 kW", "place", "lunch box-1"),
          row("item", "tungsten 2 kW", "place", "pipe-1"),
          row("item", "tungsten 2 kW", "place", "pipe-2"),
          row("item", "tungsten 5 kW", "place", "D1-7"),
          row("item", "tungsten 5 kW", "place", "D1-8"),
          row("item", "tungsten 5 kW", "place", "D1-9"));
      assertThat(book.column("issues.verdict"))
          .as(book.column("issues.reasons").toString())
          .doesNotContain("stop");
      // 5000 / 208 = 24.0 A on each pair: √3 · 24.0 = 41.6 A a leg, and the lamps of 120 V.
      assertThat(number(book, "loads.amps", 4)).isCloseTo(24.04, within(0.01));
      assertThat(book.single("summary.loadsFit")).isEqualTo("6");
      assertThat(book.typedCells()).isLessThanOrEqualTo(240);
    }
  }

  @Test
  void a_distro_is_added_with_outlets_and_cable_in_one_step(Office office) throws Exception {
    try (PlanSheet book = quay(office)) {
      String said =
          CommandDriver.command(
              office,
              book.document(),
              "distro",
              "kind",
              "63 A to 32 A and 6 × 16 A",
              "from",
              "quay",
              "length",
              "40");
      assertThat(said).startsWith("B is added with 2 rows of Outlets");
      assertThat(book.column("supplies.verdict")).doesNotContain("stop");
      assertThat(book.column("outlets.verdict")).hasSize(3).doesNotContain("stop");
      assertThat(book.column("outlets.legsOf").get(2)).isEqualTo("L1-L2-L3");
      // 5G16 by VDE 0298-4, laid singly at 30 °C and less: more than the 63 A upstream
      assertThat(number(book, "runs.upstream", 2)).isEqualTo(63);
      assertThat(book.column("runs.verdict").get(1)).isNotEqualTo("stop");
      XUndoManager undo =
          UnoAccess.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
      assertThat(undo.getCurrentUndoActionTitle()).isEqualTo("Add distro");
      undo.undo();
      assertThat(book.column("supplies.verdict")).hasSize(2);
      assertThat(book.column("outlets.verdict")).hasSize(1);
      assertThat(book.column("runs.verdict")).hasSize(1);
      undo.redo();
      assertThat(book.column("outlets.verdict")).hasSize(3);
      assertThatThrownBy(
              () ->
                  CommandDriver.command(
                      office,
                      book.document(),
                      "distro",
                      "name",
                      "a",
                      "kind",
                      "32 A to 6 × 16 A",
                      "from",
                      "quay",
                      "length",
                      "4"))
          .hasStackTraceContaining("is taken");
    }
  }

  @Test
  void lights_on_batteries_are_planned_with_what_charges_them(Office office) throws Exception {
    try (PlanSheet book = quay(office)) {
      book.rows(
          "days",
          row(
              "date",
              day("2027-02-01"),
              "call",
              clock(7, 0),
              "wrap",
              clock(18, 0),
              "warmest",
              20,
              "coldest",
              15));
      book.rows(
          "equipment",
          LED,
          row("item", "LED tube", "watts", 50, "inrush", "electronic", "harmonic", 0.1),
          row("item", "charging station", "watts", 300, "harmonic", 0.1, "powerFactor", 0.95));
      book.rows("loads", LAMP, row("item", "charging station", "place", "A-3"));
      book.rows(
          "batteryTypes",
          row(
              "type",
              "98 Wh",
              "chemistry",
              "NMC",
              "ampHours",
              6.8,
              "wattHours",
              98,
              "outputs",
              "12",
              "maxAmps",
              12,
              "owned",
              6,
              "health",
              1));
      Map<String, Object> tube =
          row(
              "item",
              "LED tube",
              "battery",
              "98 Wh",
              "quantity",
              2,
              "minVolts",
              11,
              "maxVolts",
              17,
              "from",
              clock(8, 0),
              "to",
              clock(11, 0));
      book.rows("batteryLoads", tube);
      book.rows(
          "batteryChargers",
          row("charger", "charging station", "channels", 2, "amps", 3, "air", 15));
      sound(book);
      // 98 Wh / 50 W = 1.96 h at most: one change a tube in three hours
      assertThat(book.column("batteryLoads.changes")).containsExactly("2.0");
      assertThat(book.column("batteryChanges.item")).containsOnly("LED tube");
      assertThat(book.column("batteryChanges.what")).filteredOn("change"::equals).hasSize(2);
      assertThat(number(book, "batteryTypes.uncharged", 1)).isEqualTo(4);
      book.rows("batteryLoads", with(tube, "quantity", 8));
      stops(book, "batteryLoads", 1, "without a battery");
      assertThat(number(book, "batteryTypes.shortOf", 1)).isPositive();
    }
  }

  /** 2000 W over 50 m of 2.5 mm², R = 8.0 Ω/km at 20 °C and more when warm: more than 6.9 V. */
  @Test
  void voltages_are_compared_over_one_cable(Office office) throws Exception {
    try (PlanSheet book = quay(office)) {
      book.rows(
          "comparison",
          row("system", "1PH", "volts", 230, "watts", 2000, "length", 50, "size", "2.5 mm²"),
          row("system", "1PH", "volts", 120),
          row("system", "3PH", "volts", 400));
      assertThat(number(book, "comparison.amps", 1)).isCloseTo(8.70, within(0.01));
      assertThat(number(book, "comparison.amps", 2)).isCloseTo(16.67, within(0.01));
      assertThat(number(book, "comparison.amps", 3)).isCloseTo(2.89, within(0.01));
      assertThat(number(book, "comparison.drop", 1)).isBetween(6.4, 8.7);
      sound(book);
    }
  }
}
