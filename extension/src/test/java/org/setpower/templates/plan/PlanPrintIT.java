package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.container.XNameAccess;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.sheet.CellFlags;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XCellRangeReferrer;
import com.sun.star.sheet.XCellRangesQuery;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.templates.TemplateRegistry;
import org.setpower.templates.example.PlanTemplate;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.layout.PlanNames;
import org.setpower.templates.lighting.LightingPowerPlan;
import org.setpower.templates.uno.UnoAccess;

/** What rows look like and what papers say before and after print ranges are set. */
@ExtendWith(SharedOffice.class)
@Tag("one-office")
class PlanPrintIT {
  private static final Path EXAMPLES = Path.of("target/sheets/examples");
  private static final Path TEMPLATES = Path.of("target/sheets/templates/en");
  private static final String STALE = "Set print ranges before you print";

  /** Four lines of 10 pt in 1/100 mm: a reason of several sentences, serials that are typed. */
  private static final int FOUR_LINES = 1_700;

  static Stream<PlanWorkbook> workbooks() {
    return TemplateRegistry.plans().stream().map(PlanTemplate::workbook);
  }

  private static PlanSheet example(Office office, PlanWorkbook workbook) throws Exception {
    return new PlanSheet(office, EXAMPLES.resolve(workbook.fileName() + "-example.ods"), workbook);
  }

  private static String stamp(PlanSheet book, PlanTab tab) {
    XCellRange cell = book.range(tab, 0, 2, 1, 1);
    return UnoAccess.as(XText.class, UnoAccess.ask(() -> cell.getCellByPosition(0, 0))).getString();
  }

  private static List<String> stale(PlanSheet book) {
    List<String> stale = new ArrayList<>();
    for (PlanList list : book.layout().fitted()) {
      PlanTab tab = book.layout().place(list).tab();
      if (stamp(book, tab).contains(STALE)) {
        stale.add(tab.name());
      }
    }
    return stale;
  }

  /**
   * Who has set print ranges is not told to do so. Opened again, lists, which are arrays, have the
   * same rows, and texts in closed columns make no row ten lines high.
   */
  @ParameterizedTest
  @MethodSource("workbooks")
  void an_example_with_print_ranges_is_the_same_when_opened_again(
      PlanWorkbook workbook, Office office, @TempDir Path folder) throws Exception {
    Map<String, List<String>> shown = new TreeMap<>();
    try (PlanSheet book = example(office, workbook)) {
      CommandDriver.command(office, book.document(), "fit");
      assertThat(stale(book)).isEmpty();
      book.calculated();
      workbook
          .parts(PlanList.class)
          .flatMap(l -> l.columns().stream())
          .forEach(c -> shown.put(c, book.column(c)));
      office.store(book.document(), "calc8", folder.resolve("again.ods"));
      office.store(book.document(), "Calc MS Excel 2007 XML", folder.resolve("again.xlsx"));
    }
    for (String file : List.of("again.ods", "again.xlsx")) {
      try (PlanSheet again = new PlanSheet(office, folder.resolve(file), workbook)) {
        if (file.endsWith(".ods")) {
          assertRowsAreFewLinesHigh(again, workbook);
        }
        again.calculated();
        shown.forEach(
            (path, rows) ->
                assertThat(rounded(again.column(path))).as(path).isEqualTo(rounded(rows)));
      }
    }
  }

  private static void assertRowsAreFewLinesHigh(PlanSheet book, PlanWorkbook workbook) {
    for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
      Object rows =
          UnoRuntime.queryInterface(
                  XColumnRowRange.class,
                  book.inputs(table.inputs().key(), 0, table.inputs().rows()))
              .getRows();
      var each = UnoAccess.as(com.sun.star.container.XIndexAccess.class, rows);
      for (int i = 0; i < each.getCount(); i++) {
        int index = i;
        Object row = UnoAccess.ask(() -> each.getByIndex(index));
        assertThat((int) UnoAccess.get(row, "Height"))
            .as(table.inputs().key() + " " + (i + 1))
            .isLessThanOrEqualTo(FOUR_LINES);
      }
    }
  }

  @Test
  void a_paper_is_stale_while_filled_rows_stand_below_what_is_printed(
      Office office, @TempDir Path folder) throws Exception {
    PlanWorkbook workbook = new LightingPowerPlan().workbook();
    try (PlanSheet book = example(office, workbook)) {
      CommandDriver.command(office, book.document(), "fit");
      assertThat(stale(book)).isEmpty();
      TestSheet loads = TestSheet.named(book.document(), "Loads");
      Place item = book.layout().place(book.layout().input("loads.item"));
      Place place = book.layout().place(book.layout().input("loads.place"));
      int row = item.row() + book.column("loads.verdict").size();
      for (int i = 0; i < 3; i++) {
        text(loads, item.column(), row + i, "LED panel small");
        text(loads, place.column(), row + i, "A1-5");
      }
      assertThat(stale(book)).contains("Loads by outlet");
      CommandDriver.command(office, book.document(), "fit");
      assertThat(stale(book)).isEmpty();
      var undo = UnoAccess.as(XUndoManagerSupplier.class, book.document()).getUndoManager();
      undo.undo();
      assertThat(stale(book)).contains("Loads by outlet");
      undo.redo();
      assertThat(stale(book)).isEmpty();
      Path copy = folder.resolve("again.ods");
      office.store(book.document(), "calc8", copy);
      try (PlanSheet again = new PlanSheet(office, copy, workbook)) {
        assertThat(stale(again.calculated())).isEmpty();
      }
      Path excel = folder.resolve("again.xlsx");
      office.store(book.document(), "Calc MS Excel 2007 XML", excel);
      try (PlanSheet again = new PlanSheet(office, excel, workbook)) {
        assertThat(stale(again.calculated())).isEmpty();
      }
    }
  }

  /** An .xlsx keeps 15 digits of a number. */
  private static List<String> rounded(List<String> shown) {
    return shown.stream()
        .map(s -> s.matches("-?\\d+\\.\\d+") ? "%.9f".formatted(Double.valueOf(s)) : s)
        .toList();
  }

  /** Its print ranges are set when it is made, and no formula is left to take the line away. */
  @Test
  void a_values_only_copy_is_not_stale(Office office) throws Exception {
    PlanWorkbook workbook = new LightingPowerPlan().workbook();
    try (PlanSheet book = example(office, workbook)) {
      XNameAccess names =
          UnoAccess.as(XNameAccess.class, UnoAccess.get(book.document(), "NamedRanges"));
      UnoAccess.as(XCellRangeReferrer.class, names.getByName("Printed_order"))
          .getReferredCells()
          .getCellByPosition(0, 0)
          .setValue(9);
      TestSheet order = TestSheet.named(book.document(), "Order list");
      UnoAccess.set(order.sheet(), "IsVisible", true);
      order.calculate();
      assertThat(stale(book)).contains("Order list");
      Path copy = office.newFolder().resolve("not stale");
      CommandDriver.command(
          office,
          book.document(),
          "copy",
          "formats",
          "ods",
          "tabs",
          "Order list",
          "to",
          office.address(copy));
      TestSheet values =
          TestSheet.firstOf(office.open(copy.resolveSibling(copy.getFileName() + ".ods")));
      assertThat(values.shown("A4")).contains("The Salt Road").doesNotContain(STALE);
      values.close();
    }
  }

  private static void text(TestSheet sheet, int column, int row, String text) throws Exception {
    UnoAccess.as(XText.class, sheet.sheet().getCellByPosition(column, row)).setString(text);
  }

  /** PLANS.md of the project's design: at most 9,000 formulas, of at most 250 letters. */
  @Test
  void the_lighting_plan_is_small(Office office) throws Exception {
    PlanWorkbook workbook = new LightingPowerPlan().workbook();
    Path template = TEMPLATES.resolve(workbook.fileName() + ".ots");
    assertThat(Files.size(template)).isLessThanOrEqualTo(150_000);
    Path example = EXAMPLES.resolve(workbook.fileName() + "-example.ods");
    assertThat(Files.size(example)).isLessThanOrEqualTo(150_000);
    assertThat(longest(template).length()).as(longest(template)).isLessThanOrEqualTo(250);
    assertThat(longest(example).length()).as(longest(example)).isLessThanOrEqualTo(250);
    try (PlanSheet book = new PlanSheet(office, template, workbook)) {
      int formulas = 0;
      List<String> tabs = new ArrayList<>(workbook.tabs().stream().map(PlanTab::name).toList());
      tabs.add(PlanNames.TAB);
      Map<String, Integer> each = new java.util.TreeMap<>();
      for (String tab : tabs) {
        int here = formulas(book, tab);
        each.put(tab, here);
        formulas += here;
      }
      assertThat(formulas).as(each.toString()).isLessThanOrEqualTo(9_000).isGreaterThan(1_000);
    }
  }

  /** The longest formula of a file, as it is stored without the name of its language. */
  private static String longest(Path file) throws Exception {
    String longest = "";
    try (ZipFile zip = new ZipFile(file.toFile())) {
      byte[] content = zip.getInputStream(zip.getEntry("content.xml")).readAllBytes();
      Matcher formulas =
          Pattern.compile("table:formula=\"of:([^\"]*)\"")
              .matcher(new String(content, StandardCharsets.UTF_8));
      while (formulas.find()) {
        String formula =
            formulas.group(1).replace("&quot;", "\"").replace("&apos;", "'").replace("&amp;", "&");
        longest = formula.length() > longest.length() ? formula : longest;
      }
    }
    return longest;
  }

  /** An array formula counts once. */
  private static int formulas(PlanSheet book, String tab) throws Exception {
    var sheet = book.sheet(tab);
    Set<String> arrays = new HashSet<>();
    int single = 0;
    for (CellRangeAddress at :
        UnoAccess.as(XCellRangesQuery.class, sheet)
            .queryContentCells((short) CellFlags.FORMULA)
            .getRangeAddresses()) {
      XCellRange cells =
          sheet.getCellRangeByPosition(at.StartColumn, at.StartRow, at.EndColumn, at.EndRow);
      for (String[] row : UnoAccess.as(XCellRangeFormula.class, cells).getFormulaArray()) {
        for (String formula : row) {
          if (formula.startsWith("{")) {
            arrays.add(formula);
          } else {
            single++;
          }
        }
      }
    }
    return single + arrays.size();
  }
}
