package org.setpower.bench;

import java.io.IOException;
import java.util.List;
import org.setpower.office.Office;

/**
 * Microseconds a cell takes inside the office: a sheet of 10 000 cells per candidate, recalculated
 * in turn, so that a busy machine slows all of them alike.
 */
final class CellsBench {
  private static final int CELLS = 10_000;
  private static final int ROUNDS = 7;
  private static final double ONE_LIMIT = 1.10;
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
          new Candidate("empty Java function, as CABLE.DROP", "=EMPTY.CABLEDROP(A1;B1;C1)"),
          new Candidate(
              "CABLE.DROP", "=CABLE.DROP(A1;B1;C1;\"DC\")", false, "=EMPTY.CABLEDROP(A1;B1;C1)"),
          new Candidate(
              "empty Java function, as CABLE.LOADVOLTS", "=EMPTY.CABLELOADVOLTS(A1;B1;D1;E1)"),
          new Candidate(
              "CABLE.LOADVOLTS",
              "=CABLE.LOADVOLTS(A1;B1;D1;E1;\"DC\")",
              false,
              "=EMPTY.CABLELOADVOLTS(A1;B1;D1;E1)"),
          array("empty array of three ranges, a cell", "=EMPTY.CABLEDROP(" + THREE, null),
          array("CABLE.DROP of three ranges", "=CABLE.DROP(" + THREE, "=EMPTY.CABLEDROP(" + THREE),
          array("empty array of one range", "=EMPTY.CABLEDROP(" + ONE, null),
          array("CABLE.DROP of one range", "=CABLE.DROP(" + ONE, "=EMPTY.CABLEDROP(" + ONE));

  private static Candidate array(String name, String formula, String comparedWith) {
    return new Candidate(name, formula, true, comparedWith);
  }

  private CellsBench() {}

  static void run(Office office, Measurements figures)
      throws IOException, com.sun.star.uno.Exception {
    DischargeBench.addBasic(office, "Bench", BASIC);
    BenchDocument[] books = new BenchDocument[CANDIDATES.size()];
    for (int i = 0; i < books.length; i++) {
      books[i] = fill(office, CANDIDATES.get(i));
    }
    BenchDocument.inTurn(ROUNDS, books);
    for (int i = 0; i < books.length; i++) {
      report(figures, books, i);
      books[i].close();
    }
  }

  private static void report(Measurements figures, BenchDocument[] books, int at) {
    Candidate candidate = CANDIDATES.get(at);
    double micros = 1e6 * books[at].seconds() / CELLS;
    if (candidate.array() && candidate.comparedWith() != null) {
      figures.atMost(ARRAY_LIMIT, candidate.name() + ", a cell", micros, "%.1f µs");
    } else {
      figures.add(candidate.name(), "%.1f µs", micros);
    }
    if (candidate.comparedWith() != null) {
      BenchDocument other = books[indexOf(candidate.comparedWith())];
      double ratio = books[at].seconds() / other.seconds();
      String what = candidate.name() + ", to the empty one";
      if (candidate.array()) {
        figures.add(what, "%.2f", ratio);
      } else {
        figures.atMost(ONE_LIMIT, what, ratio, "%.2f");
      }
    }
  }

  private static int indexOf(String formula) {
    return CANDIDATES.stream().map(Candidate::formula).toList().indexOf(formula);
  }

  private static BenchDocument fill(Office office, Candidate candidate)
      throws IOException, com.sun.star.uno.Exception {
    Object[][] data = new Object[CELLS][];
    for (int i = 0; i < CELLS; i++) {
      data[i] =
          new Object[] {
            i % 2 == 0 ? "12 AWG" : "2.5 mm²", 5.0 + i % 50, 1.0 + i % 15, 120.0, 24.0, 0.0052
          };
    }
    BenchDocument book = BenchDocument.empty(office).data(0, data);
    if (candidate.array()) {
      book.array(6, 0, 1, CELLS, candidate.formula());
    } else {
      book.down(6, 0, CELLS, candidate.formula());
    }
    return book.answers(6, 0, candidate.name()).answers(6, CELLS - 1, candidate.name());
  }
}
