package org.setpower.bench;

import com.sun.star.container.XIndexAccess;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.XComponent;
import com.sun.star.script.XLibraryContainer;
import com.sun.star.sheet.FillDirection;
import com.sun.star.sheet.XArrayFormulaRange;
import com.sun.star.sheet.XCalculatable;
import com.sun.star.sheet.XCellRangeData;
import com.sun.star.sheet.XCellSeries;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.table.XCell;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.setpower.office.Office;

/**
 * Microseconds a cell takes inside the office: a sheet of 10 000 cells per candidate, recalculated
 * in turn, so that a busy machine slows all of them alike.
 */
public final class OfficeBench {
  private static final int CELLS = 10_000;
  private static final int WARM_UP = 3;
  private static final int ROUNDS = 7;
  private static final double ONE_LIMIT = 1.15;
  private static final double ARRAY_LIMIT = 1.5;

  private static final String BASIC =
      """
      Function BasicDrop(ohms, length, amps)
        BasicDrop = 2 * ohms * length * amps
      End Function
      """;

  /** A formula over the columns A size, B metres, C amperes, D watts, E volts, F ohms a metre. */
  private record Candidate(String name, String formula, boolean array, String comparedWith) {
    Candidate(String name, String formula) {
      this(name, formula, false, null);
    }
  }

  private static final String THREE = "A1:A%1$d;B1:B%1$d;C1:C%1$d)".formatted(CELLS);
  private static final String ONE = "\"12 AWG\";10;C1:C%d)".formatted(CELLS);

  private static final List<Candidate> CANDIDATES =
      List.of(
          new Candidate("native formula =2*F1*B1*C1", "=2*F1*B1*C1"),
          new Candidate("one line of Basic", "=BASICDROP(F1;B1;C1)"),
          new Candidate("Python add-in", "=PYTHON.DROP(F1;B1;C1)"),
          new Candidate("empty Java function, as CABLE.DROP", "=EMPTY.DROP(A1;B1;C1)"),
          new Candidate("CABLE.DROP", "=CABLE.DROP(A1;B1;C1)", false, "=EMPTY.DROP(A1;B1;C1)"),
          new Candidate("empty Java function, as CABLE.ENDVOLTS", "=EMPTY.ENDVOLTS(A1;B1;D1;E1)"),
          new Candidate(
              "CABLE.ENDVOLTS",
              "=CABLE.ENDVOLTS(A1;B1;D1;E1)",
              false,
              "=EMPTY.ENDVOLTS(A1;B1;D1;E1)"),
          array("empty array of three ranges, a cell", "=EMPTY.DROP(" + THREE, null),
          array("CABLE.DROP of three ranges", "=CABLE.DROP(" + THREE, "=EMPTY.DROP(" + THREE),
          array("empty array of one range", "=EMPTY.DROP(" + ONE, null),
          array("CABLE.DROP of one range", "=CABLE.DROP(" + ONE, "=EMPTY.DROP(" + ONE));

  private static Candidate array(String name, String formula, String comparedWith) {
    return new Candidate(name, formula, true, comparedWith);
  }

  private final Office office;

  private OfficeBench(Office office) {
    this.office = office;
  }

  /** Arguments: the packed extension, the office's folder, the folder for what is written. */
  public static void main(String[] args) throws Exception {
    Path oxt = Path.of(args[0]);
    Path folder = Path.of(args[2]);
    Path addIn = BenchAddIn.pack(folder, Path.of(args[1]));
    try (Office office = Office.start(oxt, addIn)) {
      String report = new OfficeBench(office).run();
      System.out.print(report);
      Files.writeString(folder.resolve("office.md"), report);
    }
  }

  private String run() throws Exception {
    addBasic();
    List<XCalculatable> sheets = new ArrayList<>();
    for (Candidate candidate : CANDIDATES) {
      sheets.add(fill(candidate));
    }
    double[][] micros = new double[CANDIDATES.size()][ROUNDS];
    for (int round = -WARM_UP; round < ROUNDS; round++) {
      for (int i = 0; i < sheets.size(); i++) {
        long start = System.nanoTime();
        sheets.get(i).calculateAll();
        double taken = (System.nanoTime() - start) / 1e3 / CELLS;
        if (round >= 0) {
          micros[i][round] = taken;
        }
      }
    }
    return report(micros);
  }

  private void addBasic() throws com.sun.star.uno.Exception {
    XLibraryContainer libraries =
        office.service(
            XLibraryContainer.class, "com.sun.star.script.ApplicationScriptLibraryContainer");
    libraries.loadLibrary("Standard");
    UnoRuntime.queryInterface(XNameContainer.class, libraries.getByName("Standard"))
        .insertByName("Bench", BASIC);
  }

  private XCalculatable fill(Candidate candidate) throws Exception {
    XComponent document = office.newSpreadsheet();
    XSpreadsheet sheet =
        UnoRuntime.queryInterface(
            XSpreadsheet.class,
            UnoRuntime.queryInterface(
                    XIndexAccess.class,
                    UnoRuntime.queryInterface(XSpreadsheetDocument.class, document).getSheets())
                .getByIndex(0));
    Object[][] data = new Object[CELLS][];
    for (int i = 0; i < CELLS; i++) {
      data[i] =
          new Object[] {
            i % 2 == 0 ? "12 AWG" : "2.5 mm²", 5.0 + i % 50, 1.0 + i % 15, 120.0, 24.0, 0.0052
          };
    }
    UnoRuntime.queryInterface(
            XCellRangeData.class, sheet.getCellRangeByPosition(0, 0, 5, CELLS - 1))
        .setDataArray(data);
    Object results = sheet.getCellRangeByPosition(6, 0, 6, CELLS - 1);
    if (candidate.array()) {
      UnoRuntime.queryInterface(XArrayFormulaRange.class, results)
          .setArrayFormula(candidate.formula());
    } else {
      sheet.getCellByPosition(6, 0).setFormula(candidate.formula());
      UnoRuntime.queryInterface(XCellSeries.class, results).fillAuto(FillDirection.TO_BOTTOM, 1);
    }
    for (int row : new int[] {0, CELLS - 1}) {
      XCell cell = sheet.getCellByPosition(6, row);
      if (cell.getError() != 0) {
        throw new IOException(candidate.name() + ": error " + cell.getError());
      }
    }
    return UnoRuntime.queryInterface(XCalculatable.class, document);
  }

  private static String report(double[][] micros) {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            "Microseconds a cell, %d cells, best and median of %d recalculations:%n%n",
            CELLS, ROUNDS));
    text.append("| | best | median | to the empty one | wanted |\n|---|---|---|---|---|\n");
    for (int i = 0; i < micros.length; i++) {
      Candidate candidate = CANDIDATES.get(i);
      double best = best(micros[i]);
      String ratio = "";
      String wanted = "";
      if (candidate.comparedWith() != null) {
        double ours = best / best(micros[indexOf(candidate.comparedWith())]);
        ratio = number("%.2f", ours);
        wanted =
            candidate.array()
                ? verdict("%.1f µs", ARRAY_LIMIT, best)
                : verdict("%.2f", ONE_LIMIT, ours);
      }
      text.append(
          String.format(
              Locale.ROOT,
              "| %s | %.2f | %.2f | %s | %s |%n",
              candidate.name(),
              best,
              median(micros[i]),
              ratio,
              wanted));
    }
    return text.toString();
  }

  private static int indexOf(String formula) {
    return CANDIDATES.stream().map(Candidate::formula).toList().indexOf(formula);
  }

  private static String verdict(String format, double limit, double value) {
    return "at most " + number(format, limit) + (value <= limit ? ": met" : ": MISSED");
  }

  private static String number(String format, double value) {
    return String.format(Locale.ROOT, format, value);
  }

  private static double best(double[] all) {
    return Arrays.stream(all).min().orElseThrow();
  }

  private static double median(double[] all) {
    return Arrays.stream(all).sorted().skip(all.length / 2).findFirst().orElseThrow();
  }
}
