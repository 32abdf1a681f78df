package org.setpower.command.export;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XModel;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.sheet.XViewFreezable;
import com.sun.star.sheet.XViewSplitable;
import com.sun.star.uno.UnoRuntime;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
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
import org.apache.poi.ss.util.PaneInformation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.setpower.addin.SharedOffice;
import org.setpower.addin.TestSheet;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.uno.Uno;

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

  @Test
  void keep_rows_and_columns_in_view_below_the_line_on_top(Office office) throws Exception {
    XComponent plan = shown(office, "private:factory/scalc");
    TestSheet.firstOf(plan).put("A1", 1);
    TestSheet.named(plan, "secret").put("A1", 2);
    TestSheet.named(plan, "Loads").put("A1", 3);
    Uno.set(TestSheet.named(plan, "secret").sheet(), "IsVisible", false);
    XModel model = UnoRuntime.queryInterface(XModel.class, plan);
    UnoRuntime.queryInterface(XSpreadsheetView.class, model.getCurrentController())
        .setActiveSheet(TestSheet.named(plan, "Loads").sheet());
    UnoRuntime.queryInterface(XViewFreezable.class, model.getCurrentController())
        .freezeAtPosition(1, 5);
    Path copy = office.newFolder().resolve("plan");
    CommandDriver.command(office, plan, "copy", "formats", "ods,xlsx", "to", office.address(copy));
    Office.discard(plan);
    try (InputStream in = Files.newInputStream(Path.of(copy + ".xlsx"));
        Workbook workbook = WorkbookFactory.create(in)) {
      PaneInformation pane = workbook.getSheet("Loads").getPaneInformation();
      assertThat(pane.isFreezePane()).isTrue();
      assertThat(pane.getHorizontalSplitPosition()).isEqualTo((short) 6);
      assertThat(pane.getVerticalSplitPosition()).isEqualTo((short) 1);
      assertThat(workbook.getSheetAt(0).getPaneInformation()).isNull();
    }
    assertThat(
            new String(
                ZipEntries.read(Files.readAllBytes(Path.of(copy + ".ods"))).get("settings.xml"),
                StandardCharsets.UTF_8))
        .contains("Loads")
        .doesNotContain("secret");
    for (String suffix : new String[] {".ods", ".xlsx"}) {
      XComponent there = shown(office, office.address(Path.of(copy + suffix)));
      Object view = UnoRuntime.queryInterface(XModel.class, there).getCurrentController();
      UnoRuntime.queryInterface(XSpreadsheetView.class, view)
          .setActiveSheet(TestSheet.named(there, "Loads").sheet());
      assertThat(UnoRuntime.queryInterface(XViewFreezable.class, view).hasFrozenPanes())
          .as(suffix)
          .isTrue();
      XViewSplitable split = UnoRuntime.queryInterface(XViewSplitable.class, view);
      assertThat(split.getSplitRow()).as(suffix).isEqualTo(6);
      assertThat(split.getSplitColumn()).as(suffix).isEqualTo(1);
      Office.discard(there);
    }
  }

  /** Only a document with a window keeps what is frozen. */
  private static XComponent shown(Office office, String url) throws Exception {
    return office
        .service(XComponentLoader.class, "com.sun.star.frame.Desktop")
        .loadComponentFromURL(url, "_blank", 0, new PropertyValue[0]);
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
