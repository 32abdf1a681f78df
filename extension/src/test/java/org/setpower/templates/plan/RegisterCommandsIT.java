package org.setpower.templates.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.issues.ListIssuesCommand;
import org.setpower.office.Office;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.ResultColumn;
import org.setpower.templates.layout.PlanLayout.Column;
import org.setpower.templates.layout.PlanLayout.Place;
import org.setpower.templates.register.BatteryRegister;
import org.setpower.templates.uno.PlanFiller;
import org.setpower.templates.uno.PlanWriter;
import org.setpower.text.MessageCatalog;

/** Show calculation, open issues, rows and files on the battery register as it ships. */
@ExtendWith(SharedOffice.class)
class RegisterCommandsIT {
  /**
   * Every figure is explained in the model's own tests: every third cell shows that it is wired.
   */
  private static final int STRIDE = 3;

  private static final Path EXAMPLE =
      Path.of("target/sheets/examples/battery-register-example.ods");
  private static final Pattern STEP = Pattern.compile("(?m)^   (.+?) = ");
  private static final String XLSX = "Calc MS Excel 2007 XML";

  private final PlanWorkbook workbook = new BatteryRegister().workbook();

  private PlanSheet example(Office office) throws IOException {
    return new PlanSheet(office, EXAMPLE, workbook).calculated();
  }

  /** The headings that users see: those of the sheet, else those of the plan. */
  private Set<String> headings() {
    MessageCatalog words = MessageCatalog.english();
    Set<String> headings = new HashSet<>();
    workbook.model().inputs().stream()
        .flatMap(t -> t.columns().stream())
        .forEach(c -> headings.addAll(List.of(c.heading(), InputCells.heading(c, words))));
    for (ResultColumn column :
        workbook.model().results().stream().flatMap(t -> t.columns().stream()).toList()) {
      headings.addAll(List.of(column.heading(), InputCells.heading(column, words)));
    }
    headings.add("Temperature (°C)");
    return headings;
  }

  @Test
  @Tag("one-office")
  void a_figure_is_explained_under_the_headings_of_the_sheet(Office office) throws Exception {
    Set<String> headings = headings();
    int explained = 0;
    try (PlanSheet book = example(office)) {
      List<String> cells = new ArrayList<>();
      for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
        for (Column column : book.layout().columns(table)) {
          if (column.result() != null) {
            Place top = book.layout().place(table);
            cells.add(top.tab().name() + "." + CalcDocument.address(column.at(), top.row() + 2));
          }
        }
      }
      for (PlanFigures figures : workbook.parts(PlanFigures.class).toList()) {
        for (int i = 0; i < figures.columns().size(); i++) {
          Place at = book.layout().figure(figures, i);
          cells.add(at.tab().name() + "." + CalcDocument.address(at.column(), at.row()));
        }
      }
      for (int i = 0; i < cells.size(); i += STRIDE) {
        String cell = cells.get(i);
        String text = CommandDriver.command(office, book.document(), "explain", "cell", cell);
        Matcher steps = STEP.matcher(text);
        if (!text.contains("The row is blank.")) {
          assertThat(text).as(cell).contains("Result");
          explained++;
        }
        while (steps.find()) {
          assertThat(headings).as("%s: %s", cell, text).contains(steps.group(1));
        }
      }
      assertThat(explained).isGreaterThan(40 / STRIDE);
      assertThat(
              CommandDriver.command(
                  office, book.document(), "explain", "cell", first(book, "batteries.due")))
          .contains("As of = ", "[Project.C")
          .contains("[Batteries.", "[Tests.");
    }
  }

  private String first(PlanSheet book, String path) {
    for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
      for (Column column : book.layout().columns(table)) {
        if (column.result() != null && column.result().path().equals(path)) {
          Place top = book.layout().place(table);
          return top.tab().name() + "." + CalcDocument.address(column.at(), top.row() + 2);
        }
      }
    }
    throw new IllegalArgumentException(path);
  }

  @ParameterizedTest
  @Tag("one-office")
  @ValueSource(strings = {"de", "fr", "es"})
  void an_issue_leads_to_its_row_in_every_language(String language, Office office)
      throws Exception {
    MessageCatalog words = MessageCatalog.in(language, MessageCatalog.Speaker.SHEETS);
    PlanWriter drawing = PlanWriter.of(office, workbook, words);
    new PlanFiller(drawing).example();
    drawing.finish();
    try (PlanSheet book = new PlanSheet(drawing.document(), workbook, words)) {
      book.type("project.validDays", 0.5).calculated();
      CommandDriver.command(office, book.document(), "look");
      List<String> where = book.column("issues.where");
      assertThat(where).hasSizeGreaterThan(4);
      Object[][] links =
          TestSheet.named(book.document(), ListIssuesCommand.SHEET)
              .data("A5:D" + (4 + where.size()));
      Messages messages = Messages.in(language);
      int rows = 0;
      for (int i = 0; i < where.size(); i++) {
        String place = where.get(i);
        for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
          String heading = messages.text(table.inputs().heading()) + ": ";
          if (place.startsWith(heading)) {
            String name = place.substring(heading.length()).split(", ")[0];
            String tab = book.layout().name(book.layout().place(table).tab());
            assertThat((String) links[i][1]).as(place).startsWith(tab + ".");
            String cell = ((String) links[i][1]).substring(tab.length() + 1);
            if (!name.startsWith("#")) {
              assertThat(
                      Arrays.deepToString(
                          TestSheet.named(book.document(), tab)
                              .data(cell + ":" + cell.replaceAll("[A-Z]+", "H"))))
                  .as(place)
                  .contains(name);
            }
            rows++;
          }
        }
        if (place.startsWith(messages.text("Project") + ": ")) {
          Place asOf = book.layout().place(book.layout().input("project.asOf"));
          assertThat(links[i][1])
              .isEqualTo(
                  book.layout().name(asOf.tab())
                      + "."
                      + CalcDocument.address(asOf.column(), asOf.row()));
          rows++;
        }
      }
      assertThat(rows).isGreaterThan(4);
    }
  }

  @Test
  void rows_come_and_go_in_every_table(Office office) throws Exception {
    try (PlanSheet book = example(office)) {
      for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
        String key = table.inputs().key();
        Object[][] before = cells(book, key, 6);
        Place top = book.layout().place(table.inputs().columns().get(0));
        String tab = book.layout().name(top.tab());
        String second = tab + "." + CalcDocument.address(top.column(), top.row() + 1);
        CommandDriver.command(office, book.document(), "add", "cell", second, "rows", "1");
        Object[][] after = cells(book, key, 6);
        assertThat(after[1]).as(key).isEqualTo(before[1]);
        if (Arrays.stream(before[2]).anyMatch(c -> !"".equals(c))) {
          assertThat(after[2]).as(key).containsOnly("");
          assertThat(after[3]).as(key).isEqualTo(before[2]);
          String third = tab + "." + CalcDocument.address(top.column(), top.row() + 2);
          CommandDriver.command(office, book.document(), "remove", "cell", third, "rows", "1");
        }
        assertThat(cells(book, key, 6)).as(key).isDeepEqualTo(before);
      }
    }
  }

  private static Object[][] cells(PlanSheet book, String table, int rows) {
    return UnoRuntime.queryInterface(XCellRangeData.class, book.inputs(table, 0, rows))
        .getDataArray();
  }

  /** Everything typed, as formulas, by table. */
  private Map<String, String> typed(PlanSheet book) {
    Map<String, String> typed = new TreeMap<>();
    for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
      int rows = table.inputs().rows();
      typed.put(
          table.inputs().key(),
          Arrays.deepToString(
              UnoRuntime.queryInterface(
                      XCellRangeFormula.class, book.inputs(table.inputs().key(), 0, rows))
                  .getFormulaArray()));
    }
    for (InputColumn column : workbook.input("project").columns()) {
      typed.put(column.path(), String.valueOf(book.typed(column.path())));
    }
    return typed;
  }

  private static Map<String, Object> results(PlanSheet book) {
    Map<String, Object> results = new TreeMap<>();
    for (String path :
        List.of(
            "batteries.verdict",
            "batteries.fit",
            "batteries.status",
            "tests.compared",
            "incidents.verdict",
            "actions.serial",
            "issues.where")) {
      results.put(path, book.column(path));
    }
    for (String path : List.of("summary.fit", "summary.quarantine", "handover.out")) {
      results.put(path, book.single(path));
    }
    return results;
  }

  @Test
  @Tag("one-office")
  void an_xlsx_keeps_what_is_typed_and_shows_no_old_verdict(Office office) throws Exception {
    Path file = office.newFolder().resolve("register.xlsx");
    Map<String, String> typed;
    Map<String, Object> results;
    try (PlanSheet book = example(office)) {
      typed = typed(book);
      results = results(book);
      office.store(book.document(), XLSX, file);
    }
    try (PlanSheet with = new PlanSheet(office, file, workbook)) {
      assertThat(results(with)).isEqualTo(results);
      assertThat(typed(with)).isEqualTo(typed);
      with.rows("incidents", Map.of("type", first(with), "happened", "recalled", "date", 46_000.0));
      assertThat(with.column("batteries.verdict").get(0)).isEqualTo("stop");
      assertThat(with.column("batteries.fit").get(0)).isEqualTo("no");
    }
    try (Office without = Office.start();
        PlanSheet book = new PlanSheet(without, file, workbook)) {
      assertThat(typed(book)).isEqualTo(typed);
      for (PlanTable table : workbook.parts(PlanTable.class).toList()) {
        for (Column column : book.layout().columns(table)) {
          if (column.result() != null) {
            assertThat(shown(book, table, column)).as(column.heading()).isEqualTo("#NAME?");
          }
        }
      }
      for (PlanFigures figures : workbook.parts(PlanFigures.class).toList()) {
        for (String path : figures.columns()) {
          assertThat(book.single(path)).as(path).isEqualTo("#NAME?");
        }
      }
      assertThat(book.page("Summary")).contains("Set Power Sheets or Java is not installed");
    }
  }

  private static String first(PlanSheet book) {
    return String.valueOf(cells(book, "batteries", 1)[0][1]);
  }

  private static String shown(PlanSheet book, PlanTable table, Column column) {
    Place top = book.layout().place(table);
    return TestSheet.named(book.document(), book.layout().name(top.tab()))
        .shown(CalcDocument.address(column.at(), top.row() + 2));
  }
}
