package org.setpower.bench;

import com.sun.star.table.XCell;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.setpower.office.Office;
import org.setpower.plan.register.RegisterPlan;

/**
 * The battery register of 300 batteries and 1,000 tests: from a typed cell to all results, against
 * a thousand calls of an empty function.
 */
final class RegisterBench {
  private static final int BATTERIES = 300;
  private static final int TESTS = 1_000;
  private static final int CALLS = 1_000;
  private static final int ROUNDS = 25;
  private static final int BLOCK_ROW = 40;

  private RegisterBench() {}

  static void run(Office office, Measurements figures) throws Exception {
    try (BenchDocument register = BenchDocument.empty(office);
        BenchDocument empty =
            BenchDocument.empty(office)
                .data(0, WholeBench.data(CALLS))
                .down(6, 0, CALLS, "=EMPTY.CABLEDROP(A1;B1;C1)")) {
      PlanDrawing plan =
          new PlanDrawing(register, RegisterPlan.MODEL, BLOCK_ROW)
              .fill(tables())
              .block(
                  Map.of(
                      "tests",
                      TESTS,
                      "batteries",
                      BATTERIES,
                      "actions",
                      BATTERIES,
                      "stocktake",
                      BATTERIES))
              .show("batteries", BATTERIES)
              .show("tests", TESTS);
      List<Double> edits = new ArrayList<>();
      for (int round = -3; round < ROUNDS; round++) {
        double seconds = edit(office, plan, round);
        empty.recalculate();
        if (round >= 0) {
          edits.add(seconds);
        }
      }
      double edit = ProcessorTime.usual(edits);
      figures.atMost(
          2.5,
          String.format(
              Locale.ROOT,
              "register of 300 batteries and 1 000 tests, an edit: %.0f ms; to 1 000 empty calls"
                  + " (%.0f ms)",
              1e3 * edit,
              1e3 * empty.seconds()),
          edit / empty.seconds(),
          "%.2f");
    }
  }

  /** Types another rated energy for the first battery and reads its health. */
  private static double edit(Office office, PlanDrawing plan, int round) throws Exception {
    XCell typed = plan.typed("batteries", "energy", 0);
    XCell health = plan.shown("batteries", "health", 0);
    double rated = 100 + round;
    ProcessorTime before = ProcessorTime.of(office);
    typed.setValue(rated);
    double shown = health.getValue();
    double seconds = before.secondsUntil(ProcessorTime.of(office));
    if (Math.abs(shown - 90 / rated) > 1e-9) {
      throw new IOException("health " + shown + " of " + rated);
    }
    return seconds;
  }

  private static Map<String, List<Map<String, Object>>> tables() {
    return Map.of(
        "project",
        List.of(Map.of("asOf", 46_428.0)),
        "types",
        List.of(Map.of("type", "P1", "chemistry", "Li-ion")),
        "batteries",
        IntStream.range(0, BATTERIES).mapToObj(RegisterBench::battery).toList(),
        "tests",
        IntStream.range(0, TESTS).mapToObj(RegisterBench::test).toList());
  }

  private static Map<String, Object> battery(int i) {
    return Map.of("serial", "P1-" + i, "type", "P1", "condition", "fine", "energy", 100.0);
  }

  private static Map<String, Object> test(int i) {
    return Map.of(
        "serial",
        "P1-" + i % BATTERIES,
        "date",
        46_400.0,
        "measured",
        90.0,
        "load",
        45.0,
        "temperature",
        20.0,
        "charge",
        1.0,
        "rested",
        2.0,
        "cell1",
        4.1,
        "cell2",
        4.1);
  }
}
