package org.setpower.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.beans.PropertyValue;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.sheet.XSheetConditionalEntries;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XModifiable;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.Sheet;
import org.setpower.base.Fault;
import org.setpower.office.Office;

/** Copies in which our figures are values. */
@ExtendWith(SharedOffice.class)
class CopyIT {
  private static final String DROP = "=ORG.SETPOWER.FUNCTIONS.CABLEDROP";

  private Office office;
  private Sheet sheet;
  private Path to;

  @BeforeEach
  void open(Office shared) throws Exception {
    office = shared;
    sheet = Sheet.firstOf(office.newSpreadsheet());
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
    return Asking.command(office, sheet.document(), "copy", options);
  }

  private Path file(String suffix) {
    return to.resolveSibling(to.getFileName() + "." + suffix);
  }

  private Sheet copied(String suffix) throws IOException {
    return Sheet.firstOf(office.open(file(suffix)));
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
  void our_cells_hold_values_and_all_others_stay_formulas() throws Exception {
    sheet
        .put("A1", 25)
        .put("B1", DROP + "(\"2.5 mm²\";A1;16)")
        .put("C1", "=B1*2")
        .put("D1", "=A1+1");
    sheet.put("B2", DROP + "(\"2.5 mm²\";-1;16)").put("C2", "=IFERROR(B2;7)");
    sheet.put("B3", "=ORG.SETPOWER.FUNCTIONS.SHEETWHY(\"CABLE.AREA\";\"1\")");
    boolean modified = UnoRuntime.queryInterface(XModifiable.class, sheet.document()).isModified();
    assertThat(copy("ods,xlsx,pdf"))
        .startsWith("Written, with 3 cells as values:")
        .contains("copy of it.ods", "copy of it.xlsx", "copy of it.pdf");
    assertThat(sheet.cell("B1").getFormula()).startsWith(DROP);
    assertThat(UnoRuntime.queryInterface(XModifiable.class, sheet.document()).isModified())
        .isEqualTo(modified);
    for (String suffix : new String[] {"ods", "xlsx"}) {
      assertThat(content(file(suffix))).doesNotContainIgnoringCase("setpower.functions");
      Sheet copy = copied(suffix);
      assertThat(copy.number("B1")).isEqualTo(sheet.number("B1"));
      assertThat(copy.cell("B1").getFormula()).doesNotContain("=");
      assertThat(copy.cell("C1").getFormula()).isEqualTo("=B1*2");
      assertThat(copy.number("C1")).isEqualTo(sheet.number("C1"));
      assertThat(copy.shown("B2")).isEqualTo("Err:502");
      assertThat(copy.shown("B3")).isEqualTo(sheet.shown("B3"));
      copy.close();
    }
    assertThat(Files.readAllBytes(file("pdf"))).startsWith('%', 'P', 'D', 'F');
    assertThat(Files.list(to.getParent())).hasSize(3);
  }

  @Test
  void arrays_names_and_protected_sheets_are_frozen_too() throws Exception {
    for (int r = 1; r <= 3; r++) {
      sheet.put("A" + r, 10.0 * r);
    }
    sheet.array("B1:B3", DROP + "(\"2.5 mm²\";A1:A3;16)").array("C1:C3", "=A1:A3*2");
    Names.define(sheet, "TenMetres", DROP.substring(1) + "(\"2.5 mm²\";10;16)");
    Names.define(sheet, "Twice", "TenMetres*2");
    Names.define(sheet, "Plain", "$A$1");
    sheet.put("D1", "=Twice").put("D2", "=Plain");
    UnoRuntime.queryInterface(XProtectable.class, sheet.sheet()).protect("");
    copy("ods");
    Sheet copy = copied("ods");
    assertThat(copy.data("A1:D3")).isDeepEqualTo(sheet.data("A1:D3"));
    assertThat(copy.cell("B2").getFormula()).doesNotContain("=");
    assertThat(copy.cell("C2").getFormula()).isEqualTo("{=A1:A3*2}");
    assertThat(copy.cell("D1").getFormula()).doesNotContain("=");
    assertThat(copy.cell("D2").getFormula()).isEqualTo("=Plain");
    assertThat(UnoRuntime.queryInterface(XProtectable.class, copy.sheet()).isProtected()).isTrue();
    copy.close();
    assertThat(content(file("ods"))).doesNotContainIgnoringCase("setpower.functions");
  }

  @Test
  void formats_and_input_rules_that_mention_us_are_taken_away() throws Exception {
    String condition = DROP.substring(1) + "(\"2.5 mm²\";10;16)>1";
    Object formats = Uno.get(sheet.range("A1:A2"), "ConditionalFormat");
    UnoRuntime.queryInterface(XSheetConditionalEntries.class, formats)
        .addNew(
            new PropertyValue[] {
              Uno.property("Operator", ConditionOperator.FORMULA),
              Uno.property("Formula1", condition),
              Uno.property("StyleName", "Accent 1")
            });
    sheet.style("A1:A2", "ConditionalFormat", formats);
    Object rule = Uno.get(sheet.range("B1:B2"), "Validation");
    Uno.set(rule, "Type", ValidationType.CUSTOM);
    XSheetCondition custom = UnoRuntime.queryInterface(XSheetCondition.class, rule);
    custom.setOperator(ConditionOperator.FORMULA);
    custom.setFormula1(condition);
    sheet.style("B1:B2", "Validation", rule);
    copy("ods,xlsx");
    assertThat(content(file("ods"))).doesNotContainIgnoringCase("setpower.functions");
    assertThat(content(file("xlsx"))).doesNotContainIgnoringCase("setpower.functions");
  }

  @Test
  void errors_stay_errors_of_the_same_kind() throws Exception {
    sheet.put("A1", DROP + "(\"2.5 mm²\";-1;16)").put("B1", "=IFERROR(A1;7)");
    sheet.put("A2", DROP + "(\"2.5 mm²\";\"far\";16)").put("B2", "=ISERR(A2)");
    sheet.put("A3", DROP + "(\"2.5 mm²\";1/0;16)").put("B3", "=ERROR.TYPE(A3)");
    sheet.put("A4", "=ORG.SETPOWER.FUNCTIONS.CABLEAMPACITY(\"3.3 mm²\")").put("B4", "=ISNA(A4)");
    copy("ods");
    Sheet copy = copied("ods");
    copy.calculate();
    for (int row = 1; row <= 4; row++) {
      assertThat(copy.error("A" + row)).isPositive().isEqualTo(sheet.error("A" + row));
      assertThat(copy.shown("B" + row)).isEqualTo(sheet.shown("B" + row));
    }
    copy.close();
  }

  @Test
  void every_fault_has_a_formula_that_gives_it() throws Exception {
    for (Fault fault : Fault.values()) {
      sheet.put("A1", ErrorFormula.of(fault.code(), "").text());
      assertThat(sheet.error("A1")).as(fault.name()).isEqualTo(fault.code());
    }
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
    assertThat(content(file("ods"))).contains("office:annotation", "What went in", "length = 25 m");
  }

  @Test
  void cancelling_leaves_nothing_behind() throws Exception {
    sheet.put("B1", DROP + "(\"2.5 mm²\";25;16)");
    Progress late =
        (percent, words) -> {
          if (percent > 90) {
            throw new Cancelled();
          }
        };
    ValuesCopy copy = new ValuesCopy(office.context(), sheet.document(), false, late);
    Map<ValuesCopy.Kind, String> targets =
        Map.of(
            ValuesCopy.Kind.ODS,
            office.address(file("ods")),
            ValuesCopy.Kind.XLSX,
            office.address(file("xlsx")));
    assertThatThrownBy(() -> copy.write(targets)).isInstanceOf(Cancelled.class);
    assertThat(Files.list(to.getParent())).isEmpty();
  }

  @Test
  void ten_thousand_cells_are_copied() throws Exception {
    sheet.put("A1", 25).put("A2", "=A1+0.01").put("B1", DROP + "(\"2.5 mm²\";A1;16)");
    UnoRuntime.queryInterface(XCellSeries.class, sheet.range("A2:A10000"))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    UnoRuntime.queryInterface(XCellSeries.class, sheet.range("B1:B10000"))
        .fillAuto(FillDirection.TO_BOTTOM, 1);
    assertThat(copy("ods,xlsx,pdf")).startsWith("Written, with 10000 cells");
    Sheet copy = copied("ods");
    for (int row : new int[] {1, 2, 3, 5_000, 10_000}) {
      assertThat(copy.shown("B" + row)).isEqualTo(sheet.shown("B" + row));
    }
    copy.close();
  }
}
