package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.frame.XDesktop;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XModifiable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.plan.common.Input;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.InputTable;
import org.setpower.plan.common.PlanModel;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.common.Table;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.register.RegisterPlan;
import org.setpower.templates.register.BatteryRegister;
import org.setpower.templates.uno.PlanFiller;
import org.setpower.templates.uno.PlanWriter;
import org.setpower.text.MessageCatalog;

/** A register filled in a version with other columns, brought into the shipped one. */
@Tag("one-office")
@ExtendWith(SharedOffice.class)
class RegisterUpdateIT {
  private static final PlanWorkbook NOW = new BatteryRegister().workbook();

  /** Batteries of that version: no warranty, a column for the case, place before cycles. */
  @Table(key = "batteries", heading = "Batteries", rows = 250)
  public record OldBattery(
      @Input(key = "serial", heading = "Serial", help = "Each only once.") String serial,
      @Input(key = "type", heading = "Type", help = "A type of Types.") String type,
      @Input(key = "condition", heading = "Condition", blank = "Blank: not inspected.")
          String condition,
      @Input(key = "energy", heading = "Rated energy", unit = "Wh", min = 1, max = 9999, blank = "")
          Double energy,
      @Input(key = "place", heading = "Place", blank = "Blank: no place.") String place,
      @Input(key = "cycles", heading = "Cycles", max = 9999, blank = "Blank: no estimate.")
          Double cycles,
      @Input(key = "inspected", heading = "Inspected on", blank = "Blank: never.")
          LocalDate inspected,
      @Input(key = "inspectedBy", heading = "Inspected by", blank = "Blank: nobody.")
          String inspectedBy,
      @Input(key = "case", heading = "Case", blank = "Blank: no case.") String transportCase,
      @Input(key = "outTo", heading = "Out to", blank = "Blank: it is in.") String outTo,
      @Input(key = "backBy", heading = "Back by", blank = "Blank: no date.") LocalDate backBy,
      @Input(key = "un383", heading = "UN 38.3 summary", blank = "Blank: not looked for.")
          Boolean un383,
      @Input(key = "retired", heading = "Retired on", blank = "Blank: not retired.")
          LocalDate retired,
      @Input(key = "decided", heading = "Decided", blank = "Blank: as proposed.") String decided) {}

  /** The register with these batteries; it is only drawn and filled. */
  private static final class OldModel implements PlanModel {
    @Override
    public String name() {
      return RegisterPlan.MODEL.name();
    }

    @Override
    public List<InputTable<?>> inputs() {
      return RegisterPlan.MODEL.inputs().stream()
          .<InputTable<?>>map(
              t -> t.key().equals("batteries") ? InputTable.of(OldBattery.class) : t)
          .toList();
    }

    @Override
    public List<ResultTable<?>> results() {
      return RegisterPlan.MODEL.results();
    }

    @Override
    public List<FindingKey> findings() {
      return RegisterPlan.MODEL.findings();
    }

    @Override
    public PlanResult calculate(List<?> ranges) {
      throw new UnsupportedOperationException();
    }
  }

  private static Path olderFile(Office office, PlanWorkbook was) throws Exception {
    PlanWriter drawing = PlanWriter.of(office, was, MessageCatalog.english());
    PlanFiller filler = new PlanFiller(drawing);
    PlanTable batteries = table(was, "batteries");
    List<String> keys = batteries.inputs().columns().stream().map(InputColumn::key).toList();
    List<Map<String, String>> rows =
        filler.lines("batteries").stream()
            .map(
                line -> {
                  Map<String, String> row = new HashMap<>(line);
                  row.keySet().retainAll(keys);
                  return row;
                })
            .toList();
    rows.get(0).put("case", "C1");
    rows.get(2).put("case", "C2");
    filler.example(t -> !t.inputs().key().equals("batteries")).rows(batteries, rows);
    drawing.finish();
    Path file = office.newFolder().resolve("older register.ods");
    office.store(drawing.document(), "calc8", file);
    Office.discard(drawing.document());
    return file;
  }

  private static PlanTable table(PlanWorkbook workbook, String key) {
    return workbook
        .parts(PlanTable.class)
        .filter(t -> t.inputs().key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  /** What is typed in a table, row by row, by the key of its column. */
  private static List<Map<String, Object>> typed(PlanSheet book, String table) {
    List<InputColumn> columns = book.table(table).inputs().columns();
    Object[][] cells =
        UnoRuntime.queryInterface(
                XCellRangeData.class, book.inputs(table, 0, book.table(table).inputs().rows()))
            .getDataArray();
    return Arrays.stream(cells)
        .map(
            row -> {
              Map<String, Object> filled = new HashMap<>();
              for (int c = 0; c < columns.size(); c++) {
                if (!"".equals(row[c])) {
                  filled.put(columns.get(c).key(), row[c]);
                }
              }
              return filled;
            })
        .toList();
  }

  private static void assertSame(PlanSheet before, PlanSheet after, String table, String... gone) {
    List<Map<String, Object>> old = typed(before, table);
    List<Map<String, Object>> now = typed(after, table);
    assertThat(old.stream().filter(r -> !r.isEmpty()).count()).as(table).isPositive();
    for (int r = 0; r < now.size(); r++) {
      Map<String, Object> expected = r < old.size() ? new HashMap<>(old.get(r)) : Map.of();
      expected.keySet().removeAll(List.of(gone));
      assertThat(now.get(r)).as("%s, row %s", table, r + 1).isEqualTo(expected);
    }
  }

  @Test
  void typed_cells_arrive_by_table_and_column(Office office) throws Exception {
    PlanWorkbook was = new BatteryRegister(new OldModel()).workbook();
    assertThat(was.version()).isNotEqualTo(NOW.version());
    Path file = olderFile(office, was);
    byte[] bytes = Files.readAllBytes(file);
    try (PlanSheet old = new PlanSheet(office, file, was)) {
      old.calculated();
      assertThat(old.column("batteries.verdict")).isNotEmpty().containsOnly("stop");
      assertThat(old.page("Summary")).contains("Choose Update file.");
      UnoRuntime.queryInterface(XModifiable.class, old.document()).setModified(false);
      String said = CommandDriver.command(office, old.document(), "update");
      assertThat(said)
          .contains("The older file was not changed.")
          .contains("Cells not taken over as they are: 2.");
      PlanSheet now =
          new PlanSheet(
              office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent(),
              NOW);
      try (now) {
        for (String table : List.of("types", "tests", "incidents", "checkout")) {
          assertSame(old, now, table);
        }
        assertSame(old, now, "batteries", "case");
        assertThat(typed(now, "batteries").get(0)).containsKeys("serial", "place", "energy");
        for (String path : List.of("project.asOf", "project.job")) {
          assertThat(now.typed(path)).as(path).isEqualTo(old.typed(path)).isNotEqualTo("");
        }
        assertThat(now.page("Project")).contains("The Salt Road");
        assertThat(now.calculated().column("batteries.verdict")).contains("ok", "stop");
        assertThat(now.page("Summary")).doesNotContain("Choose Update file.");
        assertThat(
                Arrays.deepToString(
                    TestSheet.named(now.document(), "Not taken over").data("A1:D10")))
            .contains("Batteries: case, C1, This version has no such column.")
            .contains("Batteries: case, C2, This version has no such column.");
      }
      assertThat(UnoRuntime.queryInterface(XModifiable.class, old.document()).isModified())
          .isFalse();
      assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    }
  }

  /** The filled example of a build before incidents had numbers and lists an issue number. */
  @Test
  void a_file_of_an_earlier_build_is_brought_into_this_one(Office office) throws Exception {
    Path file = office.newFolder().resolve("earlier.ods");
    Files.copy(Path.of("src/test/resources/older/battery-register.ods"), file);
    byte[] bytes = Files.readAllBytes(file);
    XComponent earlier = office.open(file);
    try {
      TestSheet batteries = TestSheet.named(earlier, "Batteries");
      List<Object> names = Arrays.stream(batteries.data("B1:B60")).map(r -> r[0]).toList();
      int first = names.indexOf("serial") + 1; // below the row of keys
      UnoRuntime.queryInterface(XModifiable.class, earlier).setModified(false);
      String said = CommandDriver.command(office, earlier, "update");
      assertThat(said).contains("The older file was not changed.").doesNotContain("not taken over");
      PlanSheet now =
          new PlanSheet(
              office.service(XDesktop.class, "com.sun.star.frame.Desktop").getCurrentComponent(),
              NOW);
      try (now) {
        assertThat(typed(now, "batteries").stream().map(r -> r.get("serial")).limit(24))
            .containsExactlyElementsOf(names.subList(first, first + 24));
        assertThat(typed(now, "tests").stream().filter(r -> !r.isEmpty())).hasSize(25);
        assertThat(typed(now, "incidents").stream().filter(r -> !r.isEmpty()).limit(2))
            .extracting(r -> r.get("serial") + " " + r.get("happened"))
            .containsExactly("P294-08 dropped", "P98-06 swollen");
        now.calculated();
        assertThat(now.column("batteries.verdict")).contains("ok", "check", "stop");
        assertThat(now.column("incidents.reasons").get(0)).contains("No. needs a whole number");
        assertThat(now.page("Summary")).doesNotContain("Choose Update file.");
      }
      assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
    } finally {
      Office.discard(earlier);
    }
  }
}
