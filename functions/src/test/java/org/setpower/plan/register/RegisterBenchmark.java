package org.setpower.plan.register;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;

/**
 * Prints how much time of the processor a full register takes: 300 batteries of three types, 1,000
 * tests.
 */
public final class RegisterBenchmark {
  private RegisterBenchmark() {}

  public static void main(String[] arguments) {
    List<Object> ranges = full().list();
    List<String> keys =
        RegisterPlan.MODEL.results().stream()
            .flatMap(t -> t.columns().stream())
            .map(c -> c.path())
            .toList();
    Messages messages = new EnglishMessages();
    int rounds = 300;
    double[] plan = new double[rounds];
    double[] matrix = new double[rounds];
    for (int i = 0; i < rounds; i++) {
      long start = now();
      PlanResult result = RegisterPlan.of(ranges);
      long calculated = now();
      Object[][] block = result.matrix(new Answer(keys, 1000), messages, Locale.UK);
      matrix[i] = (now() - calculated) / 1e6;
      plan[i] = (calculated - start) / 1e6;
      if (block.length != 1001) {
        throw new IllegalStateException("block of " + block.length);
      }
    }
    System.out.printf(
        Locale.UK,
        "plan %.1f ms, block %.1f ms (medians of the last 100)%n",
        median(plan),
        median(matrix));
  }

  /** Time of the processor, so that other programs do not count, ns. */
  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double median(double[] all) {
    double[] last = Arrays.copyOfRange(all, all.length - 100, all.length);
    Arrays.sort(last);
    return last[50];
  }

  static Ranges full() {
    Ranges ranges = RegisterSamples.sound();
    ranges.row("types", "type", "P2", "chemistry", "Li-ion");
    ranges.row("types", "type", "P3", "chemistry", "LFP");
    for (int i = 2; i <= 300; i++) {
      ranges.row(
          "batteries",
          "serial",
          "P1-" + (100 + i),
          "type",
          "P" + (1 + i % 3),
          "condition",
          i % 40 == 0 ? "dropped" : "fine",
          "energy",
          98,
          "cycles",
          100 + i,
          "place",
          "A" + i % 9);
    }
    for (int i = 2; i <= 1000; i++) {
      ranges.row(
          "tests",
          "serial",
          "P1-" + (100 + 2 + i % 299),
          "date",
          RegisterSamples.day("2026-09-03") + i % 100,
          "measured",
          80 + i % 17,
          "load",
          45,
          "temperature",
          18 + i % 7,
          "charge",
          1,
          "rested",
          2,
          "resistance",
          50 + i % 11);
      for (int c = 1; c <= 8; c++) {
        ranges.set("tests", i, "cell" + c, 3.4 + (i + c) % 4 / 100.0);
      }
    }
    return ranges;
  }
}
