package org.setpower.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.setpower.office.Office;

/** Start of the office, first call, heap, size, growth. */
final class WholeBench {
  private static final int STARTS = 11;
  private static final double MEGABYTE = 1e6;
  private static final int MANY = 50_000;
  private static final int SHEET_ROUNDS = 7;

  private WholeBench() {}

  static void size(Path oxt, Measurements figures) throws IOException {
    figures.atMost(6, "size of the .oxt", Files.size(oxt) / MEGABYTE, "%.1f MB");
  }

  /** Seconds of something done often, by the clock and by the processor. */
  private record Seconds(List<Double> byTheClock, List<Double> byTheProcessor) {
    Seconds() {
      this(new ArrayList<>(), new ArrayList<>());
    }

    void add(ProcessorTime before, ProcessorTime after) {
      byTheClock.add(before.secondsByTheClockUntil(after));
      byTheProcessor.add(before.secondsUntil(after));
    }
  }

  /**
   * Start with and without, in turn, and the first call after it. What is judged is the work of the
   * processor; the clock is shown beside it.
   */
  static void starts(Path oxt, Path addIn, Measurements figures) throws Exception {
    try (Office bare = Office.start();
        Office ours = Office.start(oxt);
        Office empty = Office.start(addIn)) {
      Seconds[] starts = {new Seconds(), new Seconds()};
      Seconds[] first = {new Seconds(), new Seconds()};
      for (int i = -1; i < STARTS; i++) {
        start(bare, i < 0 ? new Seconds() : starts[0]);
        start(ours, i < 0 ? new Seconds() : starts[1]);
        empty.restart();
        firstCall(bare, "=SIN(2.5)", new Seconds()); // one that did nothing starts slowly
        firstCall(empty, "=EMPTY.CABLEAREA(2.5)", first[0]);
        firstCall(ours, "=CABLE.AREA(2.5)", first[1]);
      }
      compare(figures, 1.03, "start with the extension, to one without", starts);
      compare(figures, 1.3, "first call, to that of an empty add-in as large", first);
    }
  }

  private static void compare(Measurements figures, double limit, String what, Seconds[] both) {
    double without = ProcessorTime.usual(both[0].byTheProcessor);
    double with = ProcessorTime.usual(both[1].byTheProcessor);
    figures.atMost(
        limit,
        String.format(
            Locale.ROOT,
            "%s, by the processor (%.0f ms and %.0f ms; by the clock %.2f ×)",
            what,
            1e3 * with,
            1e3 * without,
            Collections.min(both[1].byTheClock) / Collections.min(both[0].byTheClock)),
        with / without,
        "%.2f");
  }

  private static void start(Office office, Seconds seconds) throws IOException {
    ProcessorTime before = ProcessorTime.none();
    office.restart();
    seconds.add(before, ProcessorTime.of(office));
  }

  private static void firstCall(Office office, String formula, Seconds seconds) throws Exception {
    try (BenchDocument book = BenchDocument.empty(office)) {
      book.cell(1, 0).setFormula("=1+1");
      ProcessorTime before = ProcessorTime.of(office);
      book.cell(0, 0).setFormula(formula);
      book.cell(0, 0).getValue();
      seconds.add(before, ProcessorTime.of(office));
      book.answers(0, 0, formula);
    }
  }

  /** The heap of the office's Java before and after a million calls. */
  static void heap(Office office, Measurements figures) throws Exception {
    try (BenchDocument calls = BenchDocument.empty(office);
        BenchDocument heap = BenchDocument.empty(office)) {
      calls.data(0, data(MANY)).down(6, 0, MANY, "=CABLE.DROP(A1;B1;C1;\"DC\")");
      calls.recalculate();
      heap.cell(0, 0).setFormula("=EMPTY.HEAP()");
      heap.recalculate();
      double before = heap.cell(0, 0).getValue();
      for (int i = 0; i < 1_000_000 / MANY; i++) {
        calls.recalculate();
      }
      heap.recalculate();
      figures.atMost(
          1,
          String.format(Locale.ROOT, "heap of %.0f MB, growth in a million calls", before),
          heap.cell(0, 0).getValue() - before,
          "%.2f MB");
    }
  }

  /** Runs of cable, a row each, with four of our functions and as many native formulas. */
  static void growth(Office office, Measurements figures) throws Exception {
    try (BenchDocument less = runs(office, 1_000);
        BenchDocument more = runs(office, 10_000)) {
      BenchDocument.inTurn(SHEET_ROUNDS, less, more);
      figures.atMost(
          11,
          String.format(
              Locale.ROOT,
              "1 000 rows of cable runs (%.0f ms), times for 10 000",
              1e3 * less.seconds()),
          more.seconds() / less.seconds(),
          "%.1f");
    }
  }

  private static BenchDocument runs(Office office, int rows) throws Exception {
    return BenchDocument.empty(office)
        .data(0, data(rows))
        .down(6, 0, rows, "=CABLE.DROP(A1;B1;C1;\"DC\")")
        .down(7, 0, rows, "=E1-G1")
        .down(8, 0, rows, "=CABLE.LOADVOLTS(A1;B1;D1;E1;\"DC\")")
        .down(9, 0, rows, "=IF(I1<22;\"stop\";\"ok\")")
        .down(10, 0, rows, "=CABLE.RESISTANCE(A1)")
        .down(11, 0, rows, "=CABLE.BREAKER(C1;\"IEC\")")
        .down(12, 0, rows, "=IF(A1=\"\";\"\";B1*2)")
        .down(13, 0, rows, "=COUNTIF(J1:J1;\"ok\")")
        .answers(11, 0, "CABLE.BREAKER");
  }

  static Object[][] data(int rows) {
    Object[][] data = new Object[rows][];
    for (int i = 0; i < rows; i++) {
      data[i] =
          new Object[] {
            i % 2 == 0 ? "12 AWG" : "2.5 mm²", 5.0 + i % 50, 1.0 + i % 15, 120.0, 24.0, 0.0052
          };
    }
    return data;
  }
}
