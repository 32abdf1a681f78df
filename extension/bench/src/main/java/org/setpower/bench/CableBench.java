package org.setpower.bench;

import com.sun.star.uno.Any;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.setpower.addin.FunctionsAddIn;
import org.setpower.base.PhaseSystem;
import org.setpower.cable.CableRun;
import org.setpower.cable.CableSize;
import org.setpower.registry.groups.CableFunctions;

/** Cable drop and end volts: through the catalogue, as a cell asks, and of the plain room. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class CableBench {
  private static final int ROWS = 10_000;
  private static final Object LEFT_OUT = Any.VOID;

  private final FunctionsAddIn addIn = new FunctionsAddIn();

  private String size = "12 AWG";
  private Double length = 10.0;
  private Double amps = 8.33;
  private Double watts = 200.0;
  private Double volts = 24.0;
  private final Object[][] manyAmps = new Object[ROWS][];

  /** Fills the column of amperes. */
  public CableBench() {
    for (int i = 0; i < ROWS; i++) {
      manyAmps[i] = new Object[] {1.0 + i % 15};
    }
  }

  /** A cell's CABLE.DROP. */
  @Benchmark
  public Object dropOfCell() {
    return CableFunctions.DROP.call(size, length, amps, "DC", null, null, null);
  }

  /** A cell's CABLE.LOADVOLTS. */
  @Benchmark
  public Object endVoltsOfCell() {
    return CableFunctions.LOADVOLTS.call(size, length, watts, volts, "DC", null, null, null);
  }

  /** A cell's CABLE.DROP as the office calls it. */
  @Benchmark
  public Object dropOfAddIn() throws Exception {
    return addIn.cableDrop(size, length, amps, LEFT_OUT, LEFT_OUT, LEFT_OUT, LEFT_OUT);
  }

  /** CABLE.DROP over 10 000 amperes as the office calls it. */
  @Benchmark
  public Object dropColumnOfAddIn() throws Exception {
    return addIn.cableDrop(size, length, manyAmps, LEFT_OUT, LEFT_OUT, LEFT_OUT, LEFT_OUT);
  }

  /** CABLE.DROP over 10 000 amperes at once. */
  @Benchmark
  public Object dropOfColumn() {
    return CableFunctions.DROP.call(size, length, manyAmps, "DC", null, null, null);
  }

  private CableRun run() {
    return CableRun.of(CableSize.parse(size), length, PhaseSystem.DC, 1, CableRun.LOADED_TEMP, 1);
  }

  /** The drop without the catalogue. */
  @Benchmark
  public double dropOfRoom() {
    return run().drop(amps);
  }

  /** The end volts without the catalogue. */
  @Benchmark
  public double endVoltsOfRoom() {
    return run().endVolts(watts, volts);
  }
}
