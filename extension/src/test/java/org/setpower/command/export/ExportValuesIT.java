package org.setpower.command.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.awt.Rectangle;
import com.sun.star.beans.PropertyValue;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.document.XEmbeddedObjectSupplier;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.FilterOperator;
import com.sun.star.sheet.TableFilterField;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XConditionalFormats;
import com.sun.star.sheet.XDatabaseRanges;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.sheet.XSheetAnnotationsSupplier;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.sheet.XSheetFilterDescriptor;
import com.sun.star.sheet.XSheetFilterable;
import com.sun.star.table.CellAddress;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XColumnRowRange;
import com.sun.star.table.XTableChartsSupplier;
import com.sun.star.text.XText;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandContext;
import org.setpower.command.CommandDriver;
import org.setpower.command.FileStore;
import org.setpower.command.NamedExpressions;
import org.setpower.command.document.CalcDocument;
import org.setpower.command.message.CommandCancelledException;
import org.setpower.command.message.Progress;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

/** Copies in which our figures are values. */
@ExtendWith(SharedOffice.class)
class ExportValuesIT {
  private static final String DROP = "=ORG.SETPOWER.FUNCTIONS.CABLEDROP";

  private Office office;
  private TestSheet sheet;
  private Path to;

  @BeforeEach
  void open(Office shared) throws Exception {
    office = shared;
    sheet = TestSheet.firstOf(office.newSpreadsheet());
    to = office.newFolder().resolve("copy of it");
  }

  @AfterEach
  void close() {
    sheet.close();
  }

  private String copy(String formats, String... more) {
    String[] options = new String[4 + more.length];
    options[0] = "formats";
    options[1] = formats;
    options[2] = "to";
    options[3] = office.address(to);
    System.arraycopy(more, 0, options, 4, more.length);
    return CommandDriver.command(office, sheet.document(), "copy", options);
  }

  private Path file(String suffix) {
    return to.resolveSibling(to.getFileName() + "." + suffix);
  }

  private TestSheet copied(String suffix) throws IOException {
    return TestSheet.firstOf(office.open(file(suffix)));
  }

  private static String content(Path zip) throws IOException {
    StringBuilder all = new StringBuilder();
    try (ZipFile file = new ZipFile(zip.toFile())) {
      for (ZipEntry entry : file.stream().toList()) {
        if (entry.getName().endsWith(".xml")) {
          all.append(new String(file.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    return all.toString();
  }

  @Test
  void every_formula_is_a_value() throws Exception {
    sheet
        .put("A1", 25)
        .put("A2", DROP + "(\"2.5 mm²\";A1;16)")
        .put("A3", "=A2*2")
        .put("A4", "=A1+1")
        .put("A5", DROP + "(\"2.5 mm²\";-1;16)")
        .put("A6", "=IFERROR(A5;7)")
        .put("A7", "=1>0")
        .put("A8", "=\"\"")
        .put("A9", "=INDEX(C1:C3;2)&\"\"")
        .put("A10", "=NA()")
        .text("A11", "007")
        .put("A12", "=\"a < b & \"\"c\"\"\"");
    sheet.array("B1:B3", DROP + "(\"2.5 mm²\";{10;20;30};16)");
    NamedExpressions.define(sheet, "Twice", "$A$1*2");
    sheet.put("B4", "=Twice");
    boolean modified = UnoRuntime.queryInterface(XModifiable.class, sheet.document()).isModified();
    assertThat(copy("ods,xlsx,pdf"))
        .startsWith("Written, with 14 cells as values:")
        .contains("copy of it.ods", "copy of it.xlsx", "copy of it.pdf");
    assertThat(sheet.cell("A2").getFormula()).startsWith(DROP);
    assertThat(UnoRuntime.queryInterface(XModifiable.class, sheet.document()).isModified())
        .isEqualTo(modified);
    for (String suffix : new String[] {"ods", "xlsx"}) {
      TestSheet copy = copied(suffix);
      copy.calculate();
      for (String column : new String[] {"A", "B"}) {
        for (int row = 1; row <= 12; row++) {
          String there = column + (row + 1);
          assertThat(copy.shown(there)).as(there).isEqualTo(sheet.shown(column + row));
          assertThat(copy.cell(there).getError()).as(there).isZero();
        }
      }
      assertThat(copy.number("A3")).isEqualTo(sheet.number("A2"));
      copy.close();
    }
    assertThat(content(file("ods"))).doesNotContain("table:formula").doesNotContain("SETPOWER.");
    assertThat(content(file("xlsx")).replaceAll("<f[^>]*>TRUE\\(\\)</f>", ""))
        .doesNotContain("</f>");
    assertThat(Files.readAllBytes(file("pdf"))).startsWith('%', 'P', 'D', 'F');
    assertThat(Files.list(to.getParent())).hasSize(3);
  }

  @Test
  void all_cells_are_locked_on_protected_sheets() throws Exception {
    CellProtection open = new CellProtection();
    open.IsHidden = true;
    sheet.put("A1", 25).put("B1", "=A1*2").style("A1:B1", "CellProtection", open);
    copy("ods,xlsx");
    for (String suffix : new String[] {"ods", "xlsx"}) {
      TestSheet copy = copied(suffix);
      assertThat(UnoRuntime.queryInterface(XProtectable.class, copy.sheet()).isProtected())
          .isTrue();
      CellProtection lock = (CellProtection) Uno.get(copy.range("A2:B2"), "CellProtection");
      assertThat(lock.IsLocked).isTrue();
      assertThat(lock.IsHidden).isFalse();
      copy.close();
    }
  }

  /** A document with what must not leave the house, each under a word of its own. */
  private void fillWithSecrets() throws Exception {
    sheet.put("A1", "Offer").put("A2", "=SUM(1;2)").put("C2", "secretcolumn");
    sheet.put("A4", "secretrow");
    sheet.column("C1", "IsVisible", false);
    Uno.set(row(4), "IsVisible", false);
    NamedExpressions.define(sheet, "secretname", "$A$2*1.27");
    NamedExpressions.define(sheet, "secretrange", "$A$1");
    UnoRuntime.queryInterface(XDatabaseRanges.class, Uno.get(sheet.document(), "DatabaseRanges"))
        .addNewByName("secrettable", new CellRangeAddress((short) 0, 0, 0, 1, 5));
    UnoRuntime.queryInterface(XSheetAnnotationsSupplier.class, sheet.sheet())
        .getAnnotations()
        .insertNew(new CellAddress((short) 0, 0, 0), "secretnote");
    Object rule = Uno.get(sheet.range("A2"), "Validation");
    Uno.set(rule, "Type", ValidationType.LIST);
    UnoRuntime.queryInterface(XSheetCondition.class, rule).setFormula1("\"secretsource\"");
    sheet.style("A2", "Validation", rule);
    TestSheet hidden = TestSheet.named(sheet.document(), "secrettab");
    hidden.put("A1", "secretvalue");
    Uno.set(hidden.sheet(), "IsVisible", false);
    TestSheet.named(sheet.document(), "Margins").put("A1", "secretmargin");
    var properties =
        UnoRuntime.queryInterface(XDocumentPropertiesSupplier.class, sheet.document())
            .getDocumentProperties();
    properties.setAuthor("secretauthor");
    properties.setModifiedBy("secreteditor");
    properties.setSubject("secretsubject");
    properties.setKeywords(new String[] {"secretword"});
    properties.setDescription("secretdescription");
    properties.setTitle("Job of today");
    properties.getUserDefinedProperties().addProperty("secretproperty", (short) 0, "secretcontent");
    UnoRuntime.queryInterface(XText.class, sheet.cell("A3")).setString("");
    Object link =
        UnoRuntime.queryInterface(com.sun.star.lang.XMultiServiceFactory.class, sheet.document())
            .createInstance("com.sun.star.text.TextField.URL");
    Uno.set(link, "Representation", "Terms");
    Uno.set(link, "URL", "file:///secretplace/terms.ods");
    XText text = UnoRuntime.queryInterface(XText.class, sheet.cell("A3"));
    text.insertTextContent(
        text.createTextCursor(),
        UnoRuntime.queryInterface(com.sun.star.text.XTextContent.class, link),
        false);
  }

  @Test
  void nothing_that_is_hidden_leaves_the_house() throws Exception {
    fillWithSecrets();
    copy("ods,xlsx,pdf", "tabs", CalcDocument.name(sheet.sheet()));
    for (String suffix : new String[] {"ods", "xlsx"}) {
      assertThat(content(file(suffix))).as(suffix).doesNotContain("secret").contains("Offer");
      assertThat(content(file(suffix))).contains("Job of today");
      TestSheet copy = copied(suffix);
      assertThat(new CalcDocument(copy.document()).all()).hasSize(1);
      assertThat(copy.shown("A4")).isEqualTo("Terms");
      copy.close();
    }
    assertThat(pdf())
        .contains("Offer", "Terms", "changing a cell changes nothing else")
        .doesNotContain("secret");
    assertThat(pdfProperties()).doesNotContain("secret");
  }

  @Test
  void rows_that_a_filter_hides_are_left_out() throws Exception {
    sheet.text("A1", "Item").text("A2", "seen").text("A3", "secretfiltered").text("B3", "same");
    sheet.text("B1", "same").text("C1", "same").text("D1", "same").column("C1", "IsVisible", false);
    var filter = UnoRuntime.queryInterface(XSheetFilterable.class, sheet.range("A1:D3"));
    XSheetFilterDescriptor descriptor = filter.createFilterDescriptor(true);
    TableFilterField field = new TableFilterField();
    field.Operator = FilterOperator.NOT_EQUAL;
    field.StringValue = "secretfiltered";
    descriptor.setFilterFields(new TableFilterField[] {field});
    Uno.set(descriptor, "ContainsHeader", true);
    filter.filter(descriptor);
    assertThat((Boolean) Uno.get(row(3), "IsFiltered")).isTrue();
    copy("ods,xlsx,pdf");
    for (String suffix : new String[] {"ods", "xlsx"}) {
      assertThat(content(file(suffix))).as(suffix).contains("seen").doesNotContain("secret");
      TestSheet copy = copied(suffix);
      assertThat(copy.shown("B2")).isEqualTo("same");
      assertThat(copy.shown("C2")).isEmpty();
      assertThat(copy.shown("D2")).isEqualTo("same");
      copy.close();
    }
    assertThat(pdf()).contains("seen").doesNotContain("secret");
  }

  private Object row(int number) throws Exception {
    return UnoRuntime.queryInterface(XColumnRowRange.class, sheet.sheet())
        .getRows()
        .getByIndex(number - 1);
  }

  @Test
  void visible_sheets_are_copied_unless_some_are_chosen() throws Exception {
    fillWithSecrets();
    copy("ods");
    TestSheet copy = copied("ods");
    assertThat(new CalcDocument(copy.document()).all()).hasSize(2);
    copy.close();
    assertThatThrownBy(() -> copy("ods", "tabs", "secrettab"))
        .hasMessageContaining("no visible sheet “secrettab”");
  }

  @Test
  void each_sheet_says_what_it_is_and_prints_it() throws Exception {
    sheet.put("A1", "Title").put("B7", 3);
    NamedExpressions.define(sheet, "Note_Revision", "$B$7");
    TestSheet second = TestSheet.named(sheet.document(), "Second");
    second.put("A5", "low");
    UnoRuntime.queryInterface(XPrintAreas.class, sheet.sheet())
        .setPrintAreas(
            new CellRangeAddress[] {
              new CellRangeAddress((short) 0, 0, 0, 1, 7),
              new CellRangeAddress((short) 0, 0, 9, 1, 9)
            });
    UnoRuntime.queryInterface(XPrintAreas.class, second.sheet())
        .setPrintAreas(new CellRangeAddress[] {new CellRangeAddress((short) 1, 0, 4, 1, 5)});
    copy("ods,pdf");
    TestSheet copy = copied("ods");
    String line =
        "Values of \\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d, revision 3: changing a cell changes nothing"
            + " else\\.";
    assertThat(copy.shown("A1")).matches(line);
    assertThat(TestSheet.named(copy.document(), "Second").shown("A1")).matches(line);
    CellRangeAddress[] areas =
        UnoRuntime.queryInterface(XPrintAreas.class, copy.sheet()).getPrintAreas();
    assertThat(areas[0].StartRow).isZero();
    assertThat(areas[0].EndRow).isEqualTo(8);
    assertThat(areas[1].StartRow).isEqualTo(10);
    copy.close();
    assertThat(pdf().split("changing a cell", -1)).hasSize(3);
  }

  /** Who gets a German plan reads German, whatever the language of the office it was sent from. */
  @Test
  void the_line_is_in_the_language_of_the_document() throws Exception {
    sheet.put("A1", "Titel");
    UnoRuntime.queryInterface(XDocumentPropertiesSupplier.class, sheet.document())
        .getDocumentProperties()
        .getUserDefinedProperties()
        .addProperty("Set Power template", (short) 128, "lighting-power-plan 1-de");
    copy("ods");
    TestSheet copy = copied("ods");
    assertThat(copy.shown("A1")).startsWith("Werte vom ");
    copy.close();
  }

  /** A repeated first column would show the line cut off on the second page. */
  @Test
  void each_page_across_says_what_it_is() throws Exception {
    sheet.put("A1", "Title").put("D1", "second").put("D9", 3);
    for (String column : new String[] {"A1", "B1", "C1", "D1"}) {
      sheet.column(column, "Width", 12_000);
    }
    XPrintAreas printed = UnoRuntime.queryInterface(XPrintAreas.class, sheet.sheet());
    printed.setPrintAreas(new CellRangeAddress[] {new CellRangeAddress((short) 0, 0, 0, 3, 8)});
    printed.setTitleColumns(new CellRangeAddress((short) 0, 0, 0, 0, 0));
    printed.setPrintTitleColumns(true);
    copy("ods");
    TestSheet copy = copied("ods");
    var breaks =
        UnoRuntime.queryInterface(com.sun.star.sheet.XSheetPageBreak.class, copy.sheet())
            .getColumnPageBreaks();
    assertThat(copy.shown("A1")).isEmpty();
    assertThat(copy.shown("B1")).startsWith("Values of ");
    assertThat(breaks).isNotEmpty();
    for (var pageBreak : breaks) {
      if (pageBreak.Position > 1 && pageBreak.Position < 4) {
        String top = "ABCD".charAt(pageBreak.Position) + "1";
        assertThat(copy.shown(top)).as(top).isEqualTo(copy.shown("B1"));
      }
    }
    assertThat(copy.shown("C1") + copy.shown("D1")).contains("Values of ");
    copy.close();
  }

  private void format(String condition, String cells) throws Exception {
    Object formats = Uno.get(sheet.range(cells), "ConditionalFormat");
    UnoRuntime.queryInterface(XSheetConditionalEntries.class, formats)
        .addNew(
            new PropertyValue[] {
              Uno.property("Operator", ConditionOperator.FORMULA),
              Uno.property("Formula1", condition),
              Uno.property("StyleName", "Accent 1")
            });
    sheet.style(cells, "ConditionalFormat", formats);
  }

  @Test
  void looks_that_follow_values_stay_and_those_that_read_more_go() throws Exception {
    sheet.put("A1", "stop").put("F1", "hidden");
    sheet.column("F1", "IsVisible", false);
    NamedExpressions.define(sheet, "Limit", "7");
    format("LEFT($A$1;4)=\"stop\"", "A1:A2");
    format(DROP.substring(1) + "(\"2.5 mm²\";10;16)>1", "B1:B2");
    format("$F$1=\"hidden\"", "C1:C2");
    format("$A$1>Limit", "D1:D2");
    copy("ods");
    TestSheet copy = copied("ods");
    var formats =
        UnoRuntime.queryInterface(
            XConditionalFormats.class, Uno.get(copy.sheet(), "ConditionalFormats"));
    assertThat(formats.getConditionalFormats()).hasSize(1);
    assertThat(content(file("ods"))).contains("stop").doesNotContain("Limit", "SETPOWER.");
    copy.close();
  }

  @Test
  void a_chart_of_a_hidden_sheet_keeps_its_figures() throws Exception {
    TestSheet data = TestSheet.named(sheet.document(), "Data");
    data.put("B1", "Load").put("A2", "=TIME(6;30;0)").put("A3", "=TIME(18;45;0)");
    data.put("B2", 123.5).put("B3", 678.25);
    UnoRuntime.queryInterface(XTableChartsSupplier.class, sheet.sheet())
        .getCharts()
        .addNewByName(
            "Loads",
            new Rectangle(0, 0, 8000, 5000),
            new CellRangeAddress[] {new CellRangeAddress((short) 1, 0, 0, 1, 2)},
            true,
            true);
    Uno.set(data.sheet(), "IsVisible", false);
    copy("ods,xlsx,pdf");
    assertThat(content(file("xlsx"))).contains("678.25");
    TestSheet copy = copied("ods");
    var charts = UnoRuntime.queryInterface(XTableChartsSupplier.class, copy.sheet()).getCharts();
    Object chart = charts.getByName(charts.getElementNames()[0]);
    var document =
        UnoRuntime.queryInterface(
            com.sun.star.chart.XChartDocument.class,
            UnoRuntime.queryInterface(XEmbeddedObjectSupplier.class, chart).getEmbeddedObject());
    var figures =
        UnoRuntime.queryInterface(com.sun.star.chart.XChartDataArray.class, document.getData());
    assertThat(figures.getData()).isDeepEqualTo(new double[][] {{123.5}, {678.25}});
    copy.close();
    // the axes, one drawn to hold the largest of them, one with the times
    assertThat(pdf()).contains("700", data.shown("A2"), data.shown("A3"));
  }

  @Test
  void a_folder_gets_files_with_the_name_of_the_job() throws Exception {
    sheet.put("A1", "The Salt Road");
    NamedExpressions.define(sheet, "Note_Production", "$A$1");
    Path folder = to.getParent();
    for (String end : new String[] {"", "/"}) {
      CommandDriver.command(
          office,
          sheet.document(),
          "copy",
          "formats",
          end.isEmpty() ? "ods" : "pdf",
          "to",
          office.address(folder).replaceFirst("/*$", end));
    }
    assertThat(Files.list(folder).map(file -> file.getFileName().toString()))
        .containsExactlyInAnyOrder("The Salt Road values.ods", "The Salt Road values.pdf");
  }

  @Test
  void where_one_file_cannot_be_replaced_none_is() throws Exception {
    sheet.put("A1", "new");
    Files.writeString(file("ods"), "old");
    FileStore files = new FileStore(new CommandContext(office.context(), sheet.document()));
    Path part = Files.writeString(to.resolveSibling("first.part"), "new");
    Map<String, String> places = new LinkedHashMap<>();
    places.put(office.address(part), office.address(file("ods")));
    places.put(office.address(to.resolveSibling("missing.part")), office.address(file("xlsx")));
    assertThatThrownBy(() -> files.moveAll(places)).hasMessageContaining("could not be written");
    assertThat(file("ods")).hasContent("old");
    assertThat(Files.list(to.getParent())).hasSize(1);
  }

  private String pdf() throws Exception {
    return PdfText.of(file("pdf"));
  }

  private String pdfProperties() throws Exception {
    return PdfText.properties(file("pdf"));
  }

  @Test
  void a_sheet_with_a_password_is_refused_and_nothing_written() throws Exception {
    sheet.put("B1", DROP + "(\"2.5 mm²\";25;16)");
    UnoRuntime.queryInterface(XProtectable.class, sheet.sheet()).protect("secret");
    assertThatThrownBy(() -> copy("ods")).hasMessageContaining("protected with a password");
    assertThat(Files.list(to.getParent())).isEmpty();
  }

  @Test
  void the_working_goes_into_notes_if_asked() throws Exception {
    sheet.put("B1", DROP + "(\"2.5 mm²\";25;16)");
    copy("ods", "working", "yes");
    assertThat(content(file("ods"))).contains("office:annotation", "Inputs", "length = 25 m");
  }

  @Test
  void cancelling_leaves_nothing_behind() throws Exception {
    sheet.put("B1", DROP + "(\"2.5 mm²\";25;16)");
    Progress late =
        (percent, words) -> {
          if (percent > 90) {
            throw new CommandCancelledException();
          }
        };
    ValuesExport copy = new ValuesExport(office.context(), sheet.document(), Set.of(), false, late);
    Map<ValuesExport.Kind, String> targets =
        Map.of(
            ValuesExport.Kind.ODS,
            office.address(file("ods")),
            ValuesExport.Kind.XLSX,
            office.address(file("xlsx")));
    assertThatThrownBy(() -> copy.write(targets)).isInstanceOf(CommandCancelledException.class);
    assertThat(Files.list(to.getParent())).isEmpty();
  }

  @Test
  @Tag("one-office")
  void ten_thousand_cells_are_copied() throws Exception {
    sheet.put("A1", 25).put("A2", "=A1+0.01").put("B1", DROP + "(\"2.5 mm²\";A1;16)");
    UnoRuntime.queryInterface(XCellSeries.class, sheet.range("A2:A10000"))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    UnoRuntime.queryInterface(XCellSeries.class, sheet.range("B1:B10000"))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    assertThat(copy("ods,xlsx,pdf")).startsWith("Written, with 19999 cells");
    TestSheet copy = copied("ods");
    for (int row : new int[] {1, 2, 3, 5_000, 10_000}) {
      assertThat(copy.shown("B" + (row + 1))).isEqualTo(sheet.shown("B" + row));
    }
    copy.close();
  }
}
