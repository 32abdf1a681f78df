package org.setpower.bench;

import com.sun.star.table.XCell;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.setpower.office.Office;
import org.setpower.plan.travel.TravelPlan;

/**
 * The battery travel list of 12 travellers, three flights and 120 serials: from a typed cell to the
 * new proposal and all papers, against a thousand calls of an empty function.
 */
final class TravelBench {
  private static final int TRAVELLERS = 12;
  private static final int FLIGHTS = 3;
  private static final int BATTERIES = 120;
  private static final int CALLS = 1_000;
  private static final int ROUNDS = 25;
  private static final int BLOCK_ROW = 150;
  private static final double DAY = 46_170; // 28 May 2026

  private TravelBench() {}

  static void run(Office office, Measurements figures) throws Exception {
    try (BenchDocument book = BenchDocument.empty(office);
        BenchDocument empty =
            BenchDocument.empty(office)
                .data(0, WholeBench.data(CALLS))
                .down(6, 0, CALLS, "=EMPTY.CABLEDROP(A1;B1;C1)")) {
      PlanDrawing plan =
          new PlanDrawing(book, TravelPlan.MODEL, BLOCK_ROW)
              .fill(tables())
              .block(
                  Map.of(
                      "batteries",
                      BATTERIES,
                      "lines",
                      240,
                      "rules",
                      400,
                      "checkin",
                      400,
                      "cards",
                      300,
                      "freight",
                      BATTERIES,
                      "road",
                      BATTERIES,
                      "issues",
                      200))
              .show("lines", 240)
              .show("checkin", 400)
              .show("cards", 300)
              .show("summary", 1);
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
          12,
          String.format(
              Locale.ROOT,
              "travel list of 12 travellers and 120 serials, an edit: %.0f ms; to 1 000 empty"
                  + " calls (%.0f ms)",
              1e3 * edit,
              1e3 * empty.seconds()),
          edit / empty.seconds(),
          "%.2f");
    }
  }

  /** Types an energy that nobody may carry unasked, or a small one, and reads what is carried. */
  private static double edit(Office office, PlanDrawing plan, int round) throws Exception {
    XCell typed = plan.typed("batteries", "energy", 0);
    XCell carried = plan.shown("summary", "carried", 0);
    double last = carried.getValue();
    ProcessorTime before = ProcessorTime.of(office);
    typed.setValue(Math.floorMod(round, 2) == 1 ? 120 : 80);
    double shown = carried.getValue();
    double seconds = before.secondsUntil(ProcessorTime.of(office));
    if (shown == last) {
      throw new IOException(shown + " batteries are carried, before an edit and after it");
    }
    return seconds;
  }

  private static Map<String, List<Map<String, Object>>> tables() {
    return Map.of(
        "project",
        List.of(Map.of("issued", DAY - 9)),
        "flights",
        IntStream.range(0, FLIGHTS).mapToObj(TravelBench::flight).toList(),
        "travellers",
        IntStream.range(0, TRAVELLERS).mapToObj(TravelBench::traveller).toList(),
        "batteries",
        IntStream.range(0, BATTERIES).mapToObj(TravelBench::battery).toList());
  }

  private static Map<String, Object> flight(int i) {
    return Map.of("flight", "SA " + i, "date", DAY + i, "carrier", "Salt Air");
  }

  private static Map<String, Object> traveller(int i) {
    return Map.of("traveller", "role " + i);
  }

  private static Map<String, Object> battery(int i) {
    return Map.of(
        "battery",
        "P" + i,
        "type",
        "P" + i % 3,
        "energy",
        70.0 + 10 * (i % 3),
        "condition",
        "fine",
        "un383",
        "yes",
        "kilograms",
        0.5 + 0.1 * (i % 3));
  }
}
