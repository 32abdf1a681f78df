package org.setpower.plan.batteryday;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.setpower.plan.common.Ranges;

/**
 * Prints how much time of the processor a full plan takes: 20 positions, 60 batteries of four
 * types, 10 chargers of three kinds.
 */
public final class BatteryDayBenchmark {
  private static final String[] TYPES = {"P294", "P150", "P98", "P588"};

  private BatteryDayBenchmark() {}

  public static void main(String[] arguments) {
    measure("full, the same again", full(), 0);
    measure("full, another power", full(), 1);
    measure("night, the same again", BatteryDaySamples.night(), 0);
    measure("night, another power", BatteryDaySamples.night(), 1);
  }

  /**
   * @param step W by which the first device draws more each time; an edit that no search of the
   *     last plans answers
   */
  private static void measure(String name, Ranges ranges, double step) {
    int rounds = Integer.getInteger("rounds", 60);
    double[] times = new double[rounds];
    for (int i = 0; i < rounds; i++) {
      List<Object> list = ranges.set("devices", 1, "watts", 60 + step * i).list();
      long start = now();
      BatteryDayPlan.of(list);
      times[i] = (now() - start) / 1e6;
    }
    double[] last = Arrays.copyOfRange(times, rounds / 3, rounds);
    Arrays.sort(last);
    System.out.printf(
        Locale.UK,
        "%s: first %.0f ms, lower quartile of the later two thirds %.1f ms%n",
        name,
        times[0],
        last[last.length / 4]);
  }

  /** Time of the processor, so that other programs do not count, ns. */
  private static long now() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  static Ranges full() {
    Ranges ranges = BatteryDaySamples.camera();
    ranges.set("days", 1, "breakFrom", 0.5, "breakTo", 0.5 + 1 / 24.0, "min", 5, "max", 12);
    ranges.set("days", 1, "minFrom", 0.2, "maxFrom", 0.6);
    ranges.set("stock", 1, "owned", 15);
    double[] ampHours = {0, 5.2, 6.8, 20.4};
    double[] wattHours = {0, 150, 98, 588};
    for (int i = 1; i < 4; i++) {
      ranges.row(
          "types",
          "type",
          TYPES[i],
          "chemistry",
          "Li-ion",
          "cells",
          i == 2 ? 4 : 8,
          "ampHours",
          ampHours[i],
          "wattHours",
          wattHours[i],
          "outputs",
          i == 2 ? "12" : "24",
          "maxAmps",
          40,
          "resistance",
          50,
          "health",
          0.95);
      ranges.row("stock", "type", TYPES[i], "owned", 15);
    }
    for (int i = 1; i < 20; i++) {
      boolean twelve = i % 4 == 2;
      BatteryDaySamples.position(
          ranges,
          "position " + i,
          twelve ? 12 : 24,
          TYPES[i % 4],
          30 + 5 * i % 60,
          twelve ? 10 : 20,
          twelve ? 18 : 36);
      ranges.set("positions", i + 1, "priority", 1 + i);
    }
    for (int i = 0; i < 10; i++) {
      String types = i % 3 == 0 ? "P294, P150" : i % 3 == 1 ? "P98" : "P588, P294";
      BatteryDaySamples.charger(ranges, "charger " + i, types, 4, i % 3 == 1 ? 3 : 4);
    }
    ranges.set("supplies", 1, "watts", 3000);
    return ranges;
  }
}
