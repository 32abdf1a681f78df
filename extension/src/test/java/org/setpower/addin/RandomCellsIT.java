package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.table.XCellRange;
import com.sun.star.uno.UnoRuntime;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.setpower.office.Office;
import org.setpower.registry.FunctionSpec;

/**
 * Random formulas in the cells of a real office: hostile arguments written out or taken from cells
 * that hold numbers, texts, blanks, errors and other such formulas; some as array formulas. The
 * office stays up, and no cell shows what only a programmer reads.
 *
 * <p>The long form, 200 000 cells: {@code extension/bin/random-cells}.
 */
@Tag("one-office")
class RandomCellsIT {
  private static final int CELLS = 1_000;
  private static final int BLOCK = 1_000;
  private static final int COLUMNS = 10;
  private static final int DATA_ROWS = 50;
  private static final int DATA_COLUMNS = 8;
  private static final int MOST_WRITTEN = 2_000;
  private static final Pattern FOR_PROGRAMMERS =
      Pattern.compile("Exception|java\\.|com\\.sun|org\\.setpower|\\[L|null|NaN|Infinity");

  private final HostileArguments hostile = new HostileArguments();

  @Test
  void an_office_full_of_random_formulas_stays_up() throws Exception {
    int cells = Integer.getInteger("random.cells", CELLS);
    long seed = Long.getLong("random.seed", 1);
    try (Office office = Office.start(Duration.ofHours(3), SharedOffice.OXT)) {
      for (int block = 0; block * BLOCK < cells; block++) {
        block(office, new SplittableRandom(seed * 1_000_003 + block), seed + "/" + block);
      }
    }
  }

  private void block(Office office, SplittableRandom random, String which) throws Exception {
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    fillData(sheet, random);
    String[][] formulas = new String[BLOCK / COLUMNS][COLUMNS];
    for (String[] row : formulas) {
      Arrays.setAll(row, c -> formula(random));
    }
    XCellRange range = part(sheet, DATA_COLUMNS, COLUMNS, formulas.length);
    UnoRuntime.queryInterface(XCellRangeFormula.class, range).setFormulaArray(formulas);
    for (int i = 0; i < BLOCK / 100; i++) {
      arrayFormula(sheet, i, random);
    }
    sheet.calculate();
    assertThat(texts(part(sheet, 0, 200, BLOCK / COLUMNS)))
        .as(which)
        .noneMatch(FOR_PROGRAMMERS.asPredicate());
    sheet.put("A1", "=1+1").put("A2", "=CABLE.AREA(2.5)");
    assertThat(sheet.number("A1")).as(which).isEqualTo(2);
    assertThat(sheet.number("A2")).as(which).isEqualTo(2.5);
    sheet.close();
  }

  private static List<String> texts(XCellRange range) {
    return Arrays.stream(UnoRuntime.queryInterface(XCellRangeData.class, range).getDataArray())
        .flatMap(Arrays::stream)
        .filter(String.class::isInstance)
        .map(String.class::cast)
        .toList();
  }

  private static void fillData(TestSheet sheet, SplittableRandom random) {
    Object[][] data = new Object[DATA_ROWS][DATA_COLUMNS];
    for (Object[] row : data) {
      Arrays.setAll(row, c -> cell(HostileArguments.single(random)));
    }
    UnoRuntime.queryInterface(XCellRangeData.class, part(sheet, 0, DATA_COLUMNS, DATA_ROWS))
        .setDataArray(data);
    sheet.put("C3", "=1/0").put("D4", "=NA()").put("E5", "=\"x\"+1").put("F6", "=TRUE()");
  }

  /** What can be typed into a cell: no NaN, no infinity, no text beyond Calc's limit. */
  private static Object cell(Object value) {
    if (value instanceof Double d) {
      return Double.isFinite(d) ? d : 0.0;
    }
    return value instanceof String s && s.length() < MOST_WRITTEN ? s : "";
  }

  private String formula(SplittableRandom random) {
    FunctionSpec f = hostile.function(random);
    return Arrays.stream(hostile.of(f, random))
        .map(argument -> written(argument, random))
        .collect(Collectors.joining(";", "=" + f.name() + "(", ")"));
  }

  private static String written(Object argument, SplittableRandom random) {
    if (argument == null) {
      return "";
    }
    if (random.nextInt(6) == 0) {
      return reference(random);
    }
    if (argument instanceof Double d) {
      return Double.isFinite(d) ? d.toString() : "1E308*10";
    }
    if (argument instanceof String text) {
      return text.length() < MOST_WRITTEN ? CellFormula.element(text) : "REPT(\"9\";60000)";
    }
    Object[][] table = (Object[][]) argument;
    boolean writable =
        table.length > 0
            && table.length < 40
            && Arrays.stream(table).allMatch(row -> row.length == table[0].length)
            && table[0].length > 0;
    return writable ? inline(table) : reference(random);
  }

  private static String inline(Object[][] table) {
    String text =
        CellFormula.inline(
            Arrays.stream(table)
                .map(row -> Arrays.stream(row).map(RandomCellsIT::cell).toArray())
                .toArray(Object[][]::new));
    return text.length() < MOST_WRITTEN ? text : "A1:C3";
  }

  /** A cell, a block, other formulas, and now and then a whole row or column. */
  private static String reference(SplittableRandom random) {
    char column = (char) ('A' + random.nextInt(DATA_COLUMNS));
    int row = random.nextInt(1, DATA_ROWS);
    return switch (random.nextInt(40)) {
      case 0 -> random.nextInt(20) == 0 ? column + "1:" + column + "1048576" : "1:1";
      case 1 -> column + "1:" + column + "2000";
      case 2, 3, 4, 5 -> (char) (column + DATA_COLUMNS) + Integer.toString(row);
      case 6, 7 -> "(A1~C3)";
      case 8, 9 -> "A1:H50";
      case 10 -> "SIN(" + column + row + ")";
      case 11 -> "OFFSET(A1;0;0;" + row + ";2)";
      default ->
          random.nextBoolean()
              ? column + Integer.toString(row)
              : "A" + row + ":" + column + (row + random.nextInt(5));
    };
  }

  private void arrayFormula(TestSheet sheet, int number, SplittableRandom random) {
    int left = DATA_COLUMNS + COLUMNS + 1 + 6 * number;
    XCellRange range = part(sheet, left, random.nextInt(1, 6), random.nextInt(1, 30));
    UnoRuntime.queryInterface(XArrayFormulaRange.class, range).setArrayFormula(formula(random));
  }

  private static XCellRange part(TestSheet sheet, int left, int columns, int rows) {
    try {
      return sheet.sheet().getCellRangeByPosition(left, 0, left + columns - 1, rows - 1);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new IllegalStateException(e);
    }
  }
}
