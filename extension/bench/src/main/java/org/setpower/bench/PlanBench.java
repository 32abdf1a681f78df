package org.setpower.bench;

import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.setpower.registry.groups.PlanFunctions;

/** The plans of a night with nine devices and of a job for five kinds of pack. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class PlanBench {
  private static final Double COLD = -6.0;
  private static final Double CHANNELS = 4.0;
  private static final Double CHARGE_HOURS = 3.0;

  private final Object[][] devices = {
    {92.0, 16.0, 27.0, 294.0, 1.0},
    {52.0, 16.0, 27.0, 150.0, 1.0},
    {50.0, 17.0, 27.0, 294.0, 1.0},
    {50.0, 17.0, 27.0, 294.0, 1.0},
    {50.0, 17.0, 27.0, 294.0, 1.0},
    {50.0, 17.0, 27.0, 294.0, 1.0},
    {50.0, 17.0, 27.0, 294.0, 1.0},
    {50.0, 17.0, 27.0, 294.0, 1.0},
    {50.0, 17.0, 27.0, 294.0, 1.0},
  };
  private final Object[][] stock = {{294.0, 20.0}, {150.0, 5.0}};
  private final Object[][] many =
      IntStream.range(0, 50)
          .mapToObj(i -> new Object[] {40.0 + 3 * i, 0.25 * (i % 4), 24.0, 294.0, 1.0 + i % 2})
          .toArray(Object[][]::new);
  private final Object[][] large = {{294.0, 200.0, 1.0}};
  private final Object[][] mains = {{0.0, 23.0}, {26.0, 48.0}};
  private final Object[][] options = {
    {98.0, 173.0, 0.75, 5.0, 20.0},
    {150.0, 576.0, 1.1, 8.0, 2.0},
    {294.0, 864.0, 2.1, 14.0, 0.0},
    {588.0, 1152.0, 4.3, 24.0, 0.0},
    {1210.0, 2016.0, 8.2, 40.0, ""},
  };
  private final Object[][] need = {{6.0, 5200.0}, {0.5, 1900.0}};

  /** PLAN.DAY. */
  @Benchmark
  public Object day() {
    return PlanFunctions.DAY.call(devices, stock, CHANNELS, CHARGE_HOURS, COLD, mains);
  }

  /** PLAN.DAY with fifty devices on two hundred packs, round the clock. */
  @Benchmark
  public Object largeDay() {
    return PlanFunctions.DAY.call(many, large, 20.0, CHARGE_HOURS, 20.0);
  }

  /** PLAN.PACKS. */
  @Benchmark
  public Object packs() {
    return PlanFunctions.PACKS.call(devices, CHANNELS, CHARGE_HOURS, COLD, mains);
  }

  /** PLAN.MIX. */
  @Benchmark
  public Object mix() {
    return PlanFunctions.MIX.call(options, need);
  }

  /** PLAN.MIX with a mass it must not pass. */
  @Benchmark
  public Object lightMix() {
    return PlanFunctions.MIX.call(options, need, 49.5);
  }
}
