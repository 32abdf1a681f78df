package org.setpower.command.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;

/** The copies, read by those who do not have the extension. */
@ExtendWith(SharedOffice.class)
class ExportedFilesIT {
  private static final String OURS = "=ORG.SETPOWER.FUNCTIONS.";
  private static final List<String> CELLS =
      List.of("A1", "B1", "B2", "B3", "B4", "B5", "B6", "C1", "C2", "C3", "D1");

  /** Calc stores a truth value as the function of its name. */
  private static final String TRUE = "B6";

  private static void fill(TestSheet sheet) {
    sheet.put("A1", 25).style("B1", "NumberFormat", 2);
    sheet.put("B1", OURS + "CABLEDROP(\"2.5 mm²\";A1;16)");
    sheet.put("B2", OURS + "CABLEDROP(\"2.5 mm²\";A1;16)");
    sheet.put("B3", OURS + "CABLEDROP(\"2.5 mm²\";-1;16)");
    sheet.put("B4", OURS + "CABLEGAUGE(30;13;230;5%;\"mm²\";\"1PH\")");
    sheet.put("B5", OURS + "SHEETWHY(\"CABLE.AREA\";\"12 parsnips\")");
    sheet.put("B6", "=" + OURS.substring(1) + "CABLEDROP(\"2.5 mm²\";A1;16)>3");
    sheet.put("C1", "=B1*3").put("C2", "=ROUND(B2;2)&\" V\"").put("C3", "=IFERROR(B3;\"none\")");
    sheet.text("D1", "007");
  }

  @Test
  void show_the_same_figures_in_poi_and_in_an_office_without_the_extension(Office office)
      throws Exception {
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    fill(sheet);
    Path copy = office.newFolder().resolve("copy");
    CommandDriver.command(
        office, sheet.document(), "copy", "formats", "ods,xlsx", "to", office.address(copy));
    checkWithPoi(sheet, Path.of(copy + ".xlsx"));
    try (Office without = Office.start()) {
      for (String suffix : new String[] {".ods", ".xlsx"}) {
        TestSheet there = TestSheet.firstOf(without.open(Path.of(copy + suffix)));
        there.calculate();
        for (String cell : CELLS) {
          assertThat(there.shown(below(cell)))
              .as(cell + " in " + suffix)
              .isEqualTo(sheet.shown(cell));
        }
        there.close();
      }
    }
    sheet.close();
  }

  /** A quote has room for tax rates that it may not need: their rows are blank, not zero. */
  @Test
  void show_no_row_of_a_tax_rate_that_the_quote_has_not(Office office) throws Exception {
    TestSheet quote =
        TestSheet.named(
            office.open(Path.of("target/sheets/examples/rental-quote-example.ods")), "Result");
    int heading = 1;
    while (!quote.shown("A" + heading).equals("Rate (%)")) {
      heading++;
    }
    assertThat(quote.shown("A" + (heading + 1))).isNotEmpty();
    assertThat(quote.shown("A" + (heading + 2))).isEmpty();
    assertThat(quote.cell("A" + (heading + 2)).getFormula()).isNotEmpty();
    Path copy = office.newFolder().resolve("quote");
    CommandDriver.command(
        office, quote.document(), "copy", "formats", "ods,xlsx,pdf", "to", office.address(copy));
    for (String suffix : new String[] {".ods", ".xlsx"}) {
      TestSheet there = TestSheet.named(office.open(Path.of(copy + suffix)), "Result");
      there.calculate();
      for (int row = 1; row <= heading + 10; row++) {
        for (char column = 'A'; column <= 'E'; column++) {
          String cell = column + "" + row;
          assertThat(there.shown(below(cell)))
              .as(cell + " in " + suffix)
              .isEqualTo(quote.shown(cell));
        }
      }
      there.close();
    }
    assertThat(PdfText.of(Path.of(copy + ".pdf")))
        .contains("Tax by rate")
        .doesNotContainPattern("(?m)^\\s*0[.,]0 ?%\\s+0[.,]00");
    quote.close();
  }

  private static void checkWithPoi(TestSheet sheet, Path file) throws Exception {
    DataFormatter formatter = new DataFormatter(Locale.US);
    formatter.setUseCachedValuesForFormulaCells(true);
    try (InputStream in = Files.newInputStream(file);
        Workbook workbook = WorkbookFactory.create(in)) {
      for (String address : CELLS) {
        CellReference at = new CellReference(below(address));
        Cell cell = workbook.getSheetAt(0).getRow(at.getRow()).getCell(at.getCol());
        assertThat(formatter.formatCellValue(cell)).as(address).isEqualTo(sheet.shown(address));
        if (!address.equals(TRUE)) {
          assertThat(cell.getCellType()).as(address).isNotEqualTo(CellType.FORMULA);
        }
      }
    }
  }

  /** Where a cell stands in the copy, below the line that says what it is. */
  private static String below(String cell) {
    return cell.substring(0, 1) + (Integer.parseInt(cell.substring(1)) + 1);
  }
}
