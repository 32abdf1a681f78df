package org.setpower.templates;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.sheet.XPrintAreas;
import com.sun.star.table.CellRangeAddress;
import com.sun.star.table.XCellRange;
import com.sun.star.util.XProtectable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.setpower.addin.SharedOffice;
import org.setpower.command.CommandDriver;
import org.setpower.office.Office;
import org.setpower.templates.spec.ColumnSpec;
import org.setpower.templates.spec.FieldSpec;
import org.setpower.templates.spec.SheetSpec;
import org.setpower.templates.spec.TableSpec;
import org.setpower.templates.uno.KeyFigureReader;
import org.setpower.templates.uno.UnoAccess;

/** Every file, empty and filled, stored and read again. */
@ExtendWith(SharedOffice.class)
class RoundTripIT {
  private static final Path SHEETS = Path.of("target/sheets");
  private static final int EXCEL_FORMULA = 8_192;
  private static final int EXCEL_WORDS = 255;
  private static final int EXCEL_DEPTH = 64;
  private static final Pattern OTHER_ROW = Pattern.compile("\\$[A-Z]+(?!1\\b)\\d");

  @TempDir Path folder;

  private Stream<DynamicTest> each(Office office, Check check) {
    return TemplateRegistry.all().stream()
        .flatMap(
            w -> {
              String name = w.template().fileName();
              return Stream.of("examples/" + name + "-example.ods", "templates/en/" + name + ".ots")
                  .map(
                      file ->
                          DynamicTest.dynamicTest(
                              file,
                              () -> {
                                Path path = SHEETS.resolve(file);
                                try (TestWorkbook book =
                                    new TestWorkbook(office, path, w.template())) {
                                  check.on(book.calculated());
                                }
                              }));
            });
  }

  private interface Check {
    void on(TestWorkbook book) throws Exception;
  }

  private TestWorkbook again(Office office, TestWorkbook book, String suffix, String filter)
      throws IOException {
    Path stored = folder.resolve(book.template().fileName() + "." + suffix);
    office.store(book.document(), filter, stored);
    return new TestWorkbook(office, stored, book.template()).calculated();
  }

  @TestFactory
  Stream<DynamicTest> stored_closed_and_opened_everything_is_there(Office office) {
    return each(
        office,
        book -> {
          try (TestWorkbook after = again(office, book, "ods", "calc8")) {
            assertThat(inputs(after)).isEqualTo(inputs(book));
            assertThat(KeyFigureReader.of(after.document()))
                .isEqualTo(KeyFigureReader.of(book.document()));
            assertThat(furniture(after)).isEqualTo(furniture(book));
          }
        });
  }

  @TestFactory
  Stream<DynamicTest> through_xlsx_the_inputs_are_kept(Office office) {
    return each(
        office,
        book -> {
          try (TestWorkbook after = again(office, book, "xlsx", "Calc MS Excel 2007 XML")) {
            assertThat(inputs(after)).isEqualTo(inputs(book));
            assertThat(after.errors()).isEmpty();
            assertThat(KeyFigureReader.of(after.document()))
                .isEqualTo(KeyFigureReader.of(book.document()));
          }
        });
  }

  @TestFactory
  Stream<DynamicTest> the_xlsx_copy_looks_right_to_another_program(Office office) {
    return each(
        office,
        book -> {
          Path to = office.newFolder().resolve("copy");
          CommandDriver.command(
              office, book.document(), "copy", "formats", "xlsx", "to", office.address(to));
          try (XSSFWorkbook read =
              new XSSFWorkbook(Files.newInputStream(to.resolveSibling("copy.xlsx")))) {
            assertThat(names(read)).isEmpty();
            for (SheetSpec tab : book.template().tabs()) {
              looksRight(book, tab, read.getSheet(tab.name()));
            }
          }
        });
  }

  /** What is wrong with the names of the workbook: Excel has the same limits there as in cells. */
  private static List<String> names(XSSFWorkbook workbook) {
    List<String> faults = new ArrayList<>();
    for (Name name : workbook.getAllNames()) {
      String where = name.getNameName() + " ";
      text(name.getRefersToFormula(), where, faults);
      if (OTHER_ROW.matcher(name.getRefersToFormula()).find()) {
        faults.add(where + "counts rows from another than the first");
      }
    }
    return faults;
  }

  private static void looksRight(TestWorkbook book, SheetSpec tab, Sheet sheet) {
    if (tab.isHidden()) {
      assertThat(sheet).as(tab.name()).isNull();
      return;
    }
    List<String> faults = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.FORMULA) {
          formula(cell, faults);
        } else if (cell.getCellType() == CellType.ERROR) {
          faults.add(cell.getAddress() + " is in error");
        }
      }
    }
    assertThat(faults).as(tab.name()).isEmpty();
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    assertThat(sheet.getWorkbook().getPrintArea(index)).as(tab.name()).isNotBlank();
    List<Integer> widths = book.layout().widths(tab);
    for (int c = 0; c < book.layout().visible(tab); c++) {
      double millimetres = sheet.getColumnWidthInPixels(c) / 96 * 25.4;
      assertThat(millimetres)
          .as(tab.name() + " width of column " + c)
          .isBetween(widths.get(c) * 0.85, widths.get(c) * 1.15 + 1);
    }
    if (inputs(book).values().stream().noneMatch(v -> v.contains("The Salt Road"))) {
      return; // in an empty file a blank of ours becomes an empty cell, which counts as 0
    }
    Object[][] shown = book.data(tab);
    for (int r = 0; r < shown.length; r++) {
      for (int c = 0; c < Math.min(shown[r].length, book.layout().visible(tab)); c++) {
        same(tab, sheet, r + 1, c, shown[r][c]); // the first row tells that these are values
      }
    }
    assertThat(
            sheet
                .getRow(0)
                .getCell(sheet.getRow(0).getFirstCellNum())
                .getCellStyle()
                .getFontIndex())
        .isPositive();
  }

  private static void same(SheetSpec tab, Sheet sheet, int r, int c, Object wanted) {
    Cell cell = sheet.getRow(r) == null ? null : sheet.getRow(r).getCell(c);
    CellType type =
        cell == null
            ? CellType.BLANK
            : cell.getCellType() == CellType.FORMULA
                ? cell.getCachedFormulaResultType()
                : cell.getCellType();
    String what = tab.name() + " row " + (r + 1) + " column " + c;
    if (wanted instanceof Double number) {
      assertThat(type).as(what).isIn(CellType.NUMERIC, CellType.BOOLEAN);
      if (type == CellType.NUMERIC) {
        assertThat(cell.getNumericCellValue())
            .as(what)
            .isCloseTo(number, org.assertj.core.data.Offset.offset(1e-9 + Math.abs(number) * 1e-9));
      }
    } else {
      String text = type == CellType.STRING ? cell.getStringCellValue() : "";
      assertThat(text).as(what).isEqualTo(wanted);
    }
  }

  private static void formula(Cell cell, List<String> faults) {
    String formula = cell.getCellFormula();
    String where = cell.getSheet().getSheetName() + "!" + cell.getAddress() + " ";
    text(formula, where, faults);
    if (cell.getCachedFormulaResultType() == CellType.ERROR
        && !cell.getSheet().isColumnHidden(cell.getColumnIndex())) {
      faults.add(where + "shows an error");
    }
  }

  private static void text(String formula, String where, List<String> faults) {
    if (formula.toUpperCase().contains("SETPOWER") || formula.contains("SHEET.")) {
      faults.add(where + "has a formula of ours");
    }
    if (formula.length() > EXCEL_FORMULA) {
      faults.add(where + "is too long for Excel: " + formula.length());
    }
    if (depth(formula) > EXCEL_DEPTH) {
      faults.add(where + "is nested too deep for Excel: " + depth(formula));
    }
    String[] pieces = formula.split("\"", -1);
    for (int i = 1; i < pieces.length; i += 2) {
      if (pieces[i].length() > EXCEL_WORDS) {
        faults.add(where + "has words that are too long for Excel: " + pieces[i]);
      }
    }
  }

  /** How many brackets are open at most. */
  private static int depth(String formula) {
    int depth = 0;
    int most = 0;
    for (char c : formula.replaceAll("\"[^\"]*\"", "").toCharArray()) {
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
      most = Math.max(most, depth);
    }
    return most;
  }

  /** What stands in the cells to fill. */
  private static Map<String, String> inputs(TestWorkbook book) {
    Map<String, String> inputs = new TreeMap<>();
    for (FieldSpec field : book.template().fields()) {
      if (field.isInput()) {
        inputs.put(field + "", book.cell(field).getFormula());
      }
    }
    for (TableSpec table : book.toFill()) {
      for (ColumnSpec column : table.inputs()) {
        XCellRange cells = book.cells(column);
        inputs.put(
            book.layout().tab(table).name() + " " + table.title() + " " + column,
            Arrays.deepToString(UnoAccess.as(XCellRangeFormula.class, cells).getFormulaArray()));
      }
    }
    return inputs;
  }

  /** Names, filters, protection, print areas. */
  private static List<String> furniture(TestWorkbook book) {
    List<String> all = new ArrayList<>();
    for (String kind : new String[] {"NamedRanges", "DatabaseRanges"}) {
      XNameAccess names = UnoAccess.as(XNameAccess.class, UnoAccess.get(book.document(), kind));
      String[] sorted = names.getElementNames();
      Arrays.sort(sorted);
      all.add(Arrays.toString(sorted));
    }
    for (SheetSpec tab : book.template().tabs()) {
      Object sheet = book.sheet(tab);
      StringBuilder areas = new StringBuilder();
      for (CellRangeAddress at : UnoAccess.as(XPrintAreas.class, sheet).getPrintAreas()) {
        areas.append(at.StartRow + "-" + at.EndRow + "," + at.EndColumn + " ");
      }
      all.add(
          tab.name()
              + " "
              + UnoAccess.get(sheet, "IsVisible")
              + UnoAccess.as(XProtectable.class, sheet).isProtected()
              + areas);
    }
    return all;
  }
}
