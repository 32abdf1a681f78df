package org.setpower.plan.lighting;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.common.ResultColumn;

/**
 * Prints how much time of the processor a full plan takes: 200 loads, 100 cable runs, 40 sources
 * and distros, six days; and the same as a multiple of the plan of one lamp, which the machine does
 * not change.
 */
public final class LightingBenchmark {
  private static final int ROUNDS = 300;
  private static final int LAST = 100;

  private LightingBenchmark() {}

  public static void main(String[] arguments) {
    double full = measure(full(), "full plan");
    double small = measure(LightingSamples.quay(), "one lamp");
    System.out.printf(Locale.UK, "full plan is %.0f times the plan of one lamp%n", full / small);
  }

  private static double measure(Ranges plan, String name) {
    List<Object> ranges = plan.list();
    List<String> keys =
        LightingModel.MODEL.results().stream()
            .flatMap(t -> t.columns().stream())
            .map(ResultColumn::path)
            .toList();
    Messages messages = new EnglishMessages();
    double[] calculated = new double[ROUNDS];
    double[] block = new double[ROUNDS];
    for (int i = 0; i < ROUNDS; i++) {
      long start = now();
      PlanResult result = LightingModel.MODEL.calculate(ranges);
      long done = now();
      Object[][] matrix = result.matrix(new Answer(keys, 700), messages, Locale.UK);
      block[i] = (now() - done) / 1e6;
      calculated[i] = (done - start) / 1e6;
      if (matrix.length != 701) {
        throw new IllegalStateException("block of " + matrix.length);
      }
    }
    System.out.printf(
        Locale.UK,
        "%s: plan %.2f ms, block %.2f ms (medians of the last %d)%n",
        name,
        median(calculated),
        median(block),
        LAST);
    return median(calculated);
  }

  /** Time of the processor, so that other programs do not count, ns. */
  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static double median(double[] all) {
    double[] last = Arrays.copyOfRange(all, all.length - LAST, all.length);
    Arrays.sort(last);
    return last[LAST / 2];
  }

  /** Four sources with nine distros each, 64 tails, 200 loads over six days. */
  static Ranges full() {
    Ranges plan =
        Ranges.of(LightingModel.MODEL)
            .row("project", "units", "metric", "rule", "VDE 0298-4", "installation", "free");
    for (int d = 0; d < 6; d++) {
      plan.row(
          "days",
          "date",
          LightingSamples.day("2027-02-01") + d,
          "call",
          LightingSamples.clock(7, 0),
          "wrap",
          LightingSamples.clock(18 + d % 3, 0),
          "warmest",
          9);
    }
    for (int s = 0; s < 4; s++) {
      plan.row(
          "supplies",
          "name",
          "S" + s,
          "type",
          "utility",
          "system",
          "3PH",
          "volts",
          400,
          "breaker",
          250,
          "curve",
          "C",
          "zs",
          0.1,
          "rcd",
          300,
          "rcdType",
          "S");
      for (int d = 0; d < 9; d++) {
        String name = "D" + s + d;
        plan.row("supplies", "name", name, "type", "distro", "breaker", 63, "curve", "C");
        plan.row(
            "outlets",
            "distro",
            name,
            "numbers",
            "1-12",
            "connector",
            "IEC 60309 16 A 3-pin",
            "legs",
            "in turn",
            "breaker",
            "16",
            "curve",
            "C",
            "rcd",
            "30");
        plan.row(
            "runs", "to", name, "from", "S" + s, "length", 30 + d, "size", "5G16", "type",
            "rubber");
      }
    }
    for (int i = 0; i < 64; i++) {
      plan.row(
          "runs",
          "to",
          "T" + i,
          "from",
          "D" + i % 4 + i % 9 + "-" + (1 + i % 12),
          "length",
          10 + i % 30,
          "size",
          "3G2.5",
          "type",
          "rubber");
    }
    for (int e = 0; e < 20; e++) {
      plan.row(
          "equipment", "item", "E" + e, "watts", 50 + 40 * e, "powerFactor", 0.95, "harmonic", 0.1);
    }
    for (int i = 0; i < 200; i++) {
      String place = i % 3 == 0 ? "T" + i % 64 : "D" + i % 4 + i % 9 + "-" + (1 + i % 12);
      plan.row(
          "loads",
          "item",
          "E" + i % 20,
          "place",
          place,
          "quantity",
          1 + i % 2,
          "from",
          LightingSamples.clock(6 + i % 9, 15 * (i % 4)),
          "to",
          LightingSamples.clock(16 + i % 5, 0),
          "fromDay",
          LightingSamples.day("2027-02-01") + i % 3);
    }
    return plan;
  }
}
