package org.setpower.addin;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XCellRangeFormula;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.office.Office;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionCases;
import org.setpower.registry.groups.FunctionRegistry;

/**
 * Every function called from cells: a sheet per function with a row per check (result, expected,
 * right or wrong, formula, tolerance, basis, source). The document stays in target/checks.ods.
 */
@ExtendWith(SharedOffice.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FunctionsIT {
  private static final int FIRST_ROW = 4;
  private static final int ARRAY_COLUMN = 9;

  private XComponent document;
  private Office office;

  @BeforeAll
  void write(Office shared) throws IOException {
    office = shared;
    document = office.newSpreadsheet();
    for (FunctionSpec f : FunctionRegistry.all()) {
      TestSheet sheet = TestSheet.named(document, f.name());
      head(sheet, f);
      int row = FIRST_ROW;
      for (FunctionCases.Case c : FunctionCases.of(f.name())) {
        row(sheet, row, c);
        row += height(c);
      }
    }
    TestSheet.firstOf(document).calculate();
  }

  @AfterAll
  void keep() throws IOException {
    office.store(document, "calc8", Path.of("target/checks.ods"));
    Office.discard(document);
  }

  private static void head(TestSheet sheet, FunctionSpec f) {
    sheet.text("A1", f.name() + ": " + f.sentence());
    sheet.text("A3", "result").text("B3", "expected").text("C3", "right").text("D3", "formula");
    sheet.text("E3", "tolerance").text("F3", "basis").text("G3", "source").text("H3", "note");
    sheet.column("A1:C1", "Width", 4500).column("D1", "Width", 9000).column("G1", "Width", 9000);
  }

  private static void row(TestSheet sheet, int row, FunctionCases.Case c) {
    if (!c.expectsFault() && c.value() instanceof Object[][] table) {
      String block = block(row, table);
      sheet.array(block, CellFormula.of(c));
      sheet.text("A" + row, "the block " + block);
    } else {
      sheet.put("A" + row, CellFormula.of(c));
    }
    if (!c.expectsFault() && c.value() instanceof Double d) {
      sheet.put("B" + row, d);
      sheet.put("C" + row, "=IFERROR(ABS(A%1$d-B%1$d)<=%2$s;FALSE())".formatted(row, allowed(c)));
    } else if (c.expectsFault()) {
      sheet.text("B" + row, c.fault());
      sheet.put("C" + row, "=ERRORTYPE(A%d)=%d".formatted(row, code(c.fault())));
    } else if (c.expectsPart()) {
      sheet.text("B" + row, (String) c.value());
      sheet.put("C" + row, "=IFERROR(FIND(B%1$d;A%1$d)>0;FALSE())".formatted(row));
    } else if (c.value() instanceof String s) {
      sheet.text("B" + row, s);
      sheet.put("C" + row, "=EXACT(A%1$d;B%1$d)".formatted(row));
    }
    sheet.text("D" + row, CellFormula.of(c)).text("E" + row, c.tolerance());
    sheet.text("F" + row, c.basis()).text("G" + row, c.source()).text("H" + row, c.note());
  }

  /** Rows that a case takes: those of its block, so that no block covers another. */
  private static int height(FunctionCases.Case c) {
    return !c.expectsFault() && c.value() instanceof Object[][] table ? table.length : 1;
  }

  private static double allowed(FunctionCases.Case c) {
    return c.allowed((Double) c.value());
  }

  private static int code(String fault) {
    return switch (fault) {
      case "Err:502" -> 502;
      case "Err:523" -> 523;
      case "#VALUE!" -> 519;
      case "#N/A" -> 32767;
      default -> throw new IllegalArgumentException(fault);
    };
  }

  private static String block(int row, Object[][] table) {
    return column(ARRAY_COLUMN)
        + row
        + ":"
        + column(ARRAY_COLUMN + table[0].length - 1)
        + (row + table.length - 1);
  }

  private static String column(int index) {
    return index < 26
        ? String.valueOf((char) ('A' + index))
        : String.valueOf((char) ('A' + index / 26 - 1)) + (char) ('A' + index % 26);
  }

  static Stream<FunctionSpec> functions() {
    return FunctionRegistry.all().stream();
  }

  @ParameterizedTest
  @MethodSource("functions")
  void comes_out_in_a_sheet(FunctionSpec f) {
    TestSheet sheet = TestSheet.named(document, f.name());
    List<FunctionCases.Case> cases = FunctionCases.of(f.name());
    assertThat(cases).isNotEmpty();
    List<String> wrong = new ArrayList<>();
    int row = FIRST_ROW;
    for (FunctionCases.Case c : cases) {
      if (!c.expectsFault() && c.value() instanceof Object[][] table) {
        if (!same(sheet.data(block(row, table)), table, c)) {
          wrong.add(c + ", shown " + java.util.Arrays.deepToString(sheet.data(block(row, table))));
        }
      } else if (sheet.number("C" + row) != 1 || sheet.error("C" + row) != 0) {
        wrong.add(c + ", shown " + sheet.shown("A" + row));
      }
      row += height(c);
    }
    assertThat(wrong).isEmpty();
  }

  /**
   * All checks in one sheet, in an order of chance, in an office that has calculated them before.
   */
  @Test
  void comes_out_the_same_in_another_order_and_again() throws IOException {
    List<String> formulas =
        FunctionRegistry.all().stream()
            .flatMap(f -> FunctionCases.of(f.name()).stream())
            .map(CellFormula::of)
            .collect(Collectors.toCollection(ArrayList::new));
    List<String> shown = shown(formulas);
    assertThat(shown(formulas)).isEqualTo(shown);
    long seed = System.nanoTime();
    List<Integer> order = new ArrayList<>(IntStream.range(0, formulas.size()).boxed().toList());
    Collections.shuffle(order, new Random(seed));
    List<String> shuffled = shown(order.stream().map(formulas::get).toList());
    assertThat(shuffled).as("seed " + seed).isEqualTo(order.stream().map(shown::get).toList());
  }

  /** What the cells of one column show. */
  private List<String> shown(List<String> formulas) throws IOException {
    TestSheet sheet = TestSheet.firstOf(office.newSpreadsheet());
    String range = "A1:A" + formulas.size();
    UnoRuntime.queryInterface(XCellRangeFormula.class, sheet.range(range))
        .setFormulaArray(formulas.stream().map(f -> new String[] {f}).toArray(String[][]::new));
    sheet.calculate();
    List<String> shown =
        IntStream.rangeClosed(1, formulas.size()).mapToObj(r -> sheet.shown("A" + r)).toList();
    sheet.close();
    return shown;
  }

  private static boolean same(Object[][] shown, Object[][] expected, FunctionCases.Case c) {
    for (int r = 0; r < expected.length; r++) {
      for (int k = 0; k < expected[r].length; k++) {
        boolean right =
            expected[r][k] instanceof Double d
                ? shown[r][k] instanceof Double s && Math.abs(s - d) <= c.allowed(d)
                : expected[r][k].equals(shown[r][k]);
        if (!right) {
          return false;
        }
      }
    }
    return true;
  }
}
