package org.setpower.command.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.star.beans.XPropertySet;
import com.sun.star.sheet.ConditionOperator;
import com.sun.star.sheet.ValidationType;
import com.sun.star.sheet.XCellRangeAddressable;
import com.sun.star.sheet.XDatabaseRanges;
import com.sun.star.sheet.XSheetCondition;
import com.sun.star.table.CellContentType;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.CellProtection;
import com.sun.star.util.XProtectable;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;

/** Lists of the kit, to and from CSV. */
@ExtendWith(SharedOffice.class)
class EquipmentCsvIT {
  private Office office;
  private TestSheet kit;
  private Path folder;

  @BeforeEach
  void open(Office shared) throws Exception {
    office = shared;
    folder = office.newFolder();
    kit = TestSheet.named(office.newSpreadsheet(), "Kit");
    kit.text("A2", "Devices").text("A3", "Item").text("B3", "Power (W)").text("C3", "Fed with");
    kit.text("D3", "Status").put("D4", "=1+1");
    kit.style("A4:C7", "CellProtection", new CellProtection(false, false, false, false));
    rule("B4:B7", ValidationType.DECIMAL, "0", "100000");
    rule("C4:C7", ValidationType.LIST, "\"mains\";\"DC\"", "");
    Object ranges =
        UnoRuntime.queryInterface(XPropertySet.class, kit.document())
            .getPropertyValue("DatabaseRanges");
    UnoRuntime.queryInterface(XDatabaseRanges.class, ranges)
        .addNewByName(
            "Rows_Kit_3",
            UnoRuntime.queryInterface(XCellRangeAddressable.class, kit.range("A3:D7"))
                .getRangeAddress());
    kit.text("A4", "Old lamp").put("B4", 100).text("C4", "mains");
    UnoRuntime.queryInterface(XProtectable.class, kit.sheet()).protect("");
  }

  private void rule(String cells, ValidationType type, String first, String second)
      throws Exception {
    XPropertySet range = UnoRuntime.queryInterface(XPropertySet.class, kit.range(cells));
    Object rule = range.getPropertyValue("Validation");
    XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, rule);
    properties.setPropertyValue("Type", type);
    properties.setPropertyValue("ShowErrorMessage", true);
    XSheetCondition condition = UnoRuntime.queryInterface(XSheetCondition.class, rule);
    condition.setOperator(ConditionOperator.BETWEEN);
    condition.setFormula1(first);
    condition.setFormula2(second);
    range.setPropertyValue("Validation", rule);
  }

  @AfterEach
  void close() {
    kit.close();
  }

  private String read(String text) throws Exception {
    Path file = Files.writeString(folder.resolve("kit.csv"), text);
    return CommandDriver.command(office, kit.document(), "kit", "read", office.address(file));
  }

  @Test
  void good_rows_replace_the_list_and_each_bad_line_is_told() throws Exception {
    String report =
        read(
            "Fed with;Power;Item;Colour\n"
                + "DC;12,5;=cmd|' /C calc'!A0;red\n"
                + "mains;twelve;Lamp;\n"
                + "steam;5;Engine;\n"
                + "mains;-1;Cold;\n"
                + "mains;1,200;Ambiguous;\n"
                + "mains;1.200;Ambiguous;\n"
                + "mains;5;;\n"
                + "MAINS;;Fan;\n"
                + "mains;1;a;\n"
                + "mains;1;b;\n"
                + "mains;1;c;\n");
    assertThat(report.lines())
        .containsExactly(
            "Devices: 4 rows are good.",
            "The column “Colour” is not known here and was left out.",
            "Line 3, Power (W): “twelve” is not a number. The line was left out.",
            "Line 4, Fed with: “steam” is none of mains, DC. The line was left out.",
            "Line 5, Power (W): -1 is not from 0 to 100000. The line was left out.",
            "Line 6, Power (W): “1,200” could be thousands or decimals: write a thousand as 1000,"
                + " decimals as 1.2 or 1.2500. The line was left out.",
            "Line 7, Power (W): “1.200” could be thousands or decimals: write a thousand as 1000,"
                + " decimals as 1.2 or 1.2500. The line was left out.",
            "Line 8, Item is blank. The line was left out.",
            "Line 12, the list has room for 4 rows only. The line was left out.");
    assertThat(kit.data("A4:D7"))
        .isDeepEqualTo(
            new Object[][] {
              {"=cmd|' /C calc'!A0", 12.5, "DC", 2.0},
              {"Fan", "", "mains", ""},
              {"a", 1.0, "mains", ""},
              {"b", 1.0, "mains", ""}
            });
    assertThat(kit.cell("A4").getType()).isEqualTo(CellContentType.TEXT);
  }

  @Test
  void headings_may_be_in_any_of_our_languages() throws Exception {
    String good = "Devices: 1 row is good, nothing is wrong.";
    assertThat(read("Gegenstand;Leistung (W);Versorgung\nLampe;100;mains\n")).isEqualTo(good);
    assertThat(read("Article;Puissance (W)\nLampe;100\n")).isEqualTo(good);
    assertThat(read("Artículo;Potencia\nLampe;100\n")).isEqualTo(good);
    assertThat(kit.data("A4:B4")).isDeepEqualTo(new Object[][] {{"Lampe", 100.0}});
    assertThatThrownBy(() -> read("Gegenstand;Leistung (kW)\nLampe;1\n"))
        .hasMessageContaining("same units");
  }

  @Test
  void what_is_written_comes_back_the_same() throws Exception {
    kit.text("A5", "Größe; \"quoted\", and more").put("B5", 0.1);
    Object[][] before = kit.data("A4:C7");
    Path file = folder.resolve("kit-devices.csv");
    String url = office.address(file);
    String said =
        CommandDriver.command(office, kit.document(), "kit", "list", "Devices", "write", url);
    assertThat(said).startsWith("2 rows of Devices written:").contains("kit-devices.csv");
    kit.text("A4", "").put("B4", "").text("C4", "").text("A7", "x");
    String report = CommandDriver.command(office, kit.document(), "kit", "read", url);
    assertThat(report).isEqualTo("Devices: 2 rows are good, nothing is wrong.");
    assertThat(kit.data("A4:C7")).isDeepEqualTo(before);
    assertThat(Files.list(folder)).hasSize(1);
  }

  @Test
  void other_units_and_other_files_are_refused_and_change_nothing() {
    assertThatThrownBy(() -> read("Item,Power (kW)\nLamp,1\n")).hasMessageContaining("same units");
    assertThatThrownBy(() -> read("Name,Age\nLamp,1\n")).hasMessageContaining("“Item”");
    assertThatThrownBy(() -> read("")).hasMessageContaining("empty");
    assertThat(kit.shown("A4")).isEqualTo("Old lamp");
  }

  @Test
  void a_file_in_another_character_set_is_told_with_its_line() throws Exception {
    Path file = folder.resolve("latin.csv");
    Files.write(
        file, "Item,Power\nLamp,1\nStrahler groß,5\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(
            () ->
                CommandDriver.command(office, kit.document(), "kit", "read", office.address(file)))
        .hasMessageContaining("UTF-8")
        .hasMessageContaining("line 3");
    assertThat(kit.shown("A4")).isEqualTo("Old lamp");
  }

  @Test
  void a_hundred_thousand_lines_fill_the_list_and_are_told_in_few() throws Exception {
    StringBuilder lines = new StringBuilder("Item,Power\n");
    for (int i = 1; i <= 100_000; i++) {
      lines.append("lamp ").append(i).append(",100\n");
    }
    String report = read(lines.toString());
    assertThat(report.lines()).hasSize(102);
    assertThat(report).startsWith("Devices: 4 rows are good.").endsWith("… and 99896 more.");
    assertThat(kit.shown("A7")).isEqualTo("lamp 4");
  }

  @Test
  void a_list_that_cannot_be_written_is_told() throws Exception {
    Path file = folder.resolve("kit.csv");
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    assertThatThrownBy(
            () ->
                CommandDriver.command(
                    office,
                    kit.document(),
                    "kit",
                    "list",
                    "Devices",
                    "write",
                    office.address(file)))
        .hasMessageContaining("could not be written");
  }

  @Test
  void a_document_without_a_kit_is_told_so() throws Exception {
    TestSheet other = TestSheet.firstOf(office.newSpreadsheet());
    assertThatThrownBy(
            () -> CommandDriver.command(office, other.document(), "kit", "list", "Devices"))
        .hasMessageContaining("no sheet “Kit”");
    other.close();
  }
}
