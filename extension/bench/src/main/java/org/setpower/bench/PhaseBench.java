package org.setpower.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.setpower.registry.groups.PhaseFunctions;

/** PHASE.ASSIGN over single-leg loads of 0.5 to 16 A, against a general solver (glpsol). */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
public class PhaseBench {
  private static final int LEGS = 3;

  /** Loads to assign. */
  @State(Scope.Thread)
  public static class Loads {
    @Param({"9", "12", "40", "200"})
    int loads;

    Object[][] amps;

    /** Draws the loads. */
    @Setup
    public void draw() {
      amps = drawn(loads);
    }
  }

  /** As many as the general solver ends with in bearable time. */
  @State(Scope.Thread)
  public static class FewLoads {
    @Param({"9", "12"})
    int loads;

    Object[][] amps;
    Path problem;

    /** Writes the problem for the solver and sees that both agree. */
    @Setup
    public void write() throws IOException, InterruptedException {
      amps = drawn(loads);
      problem = Files.createTempFile("legs", ".lp");
      Files.writeString(problem, problem(amps));
      double solved = glpsol(problem);
      double ours = highest(amps, (Object[][]) PhaseFunctions.ASSIGN.call(amps, 3.0));
      if (Math.abs(ours - solved) > 1e-4 * solved) {
        throw new IllegalStateException("ours " + ours + " A, glpsol " + solved + " A");
      }
    }

    /** Removes the problem. */
    @TearDown
    public void delete() throws IOException {
      Files.delete(problem);
    }
  }

  private static Object[][] drawn(int loads) {
    SplittableRandom random = new SplittableRandom(7);
    Object[][] amps = new Object[loads][];
    for (int i = 0; i < loads; i++) {
      amps[i] = new Object[] {random.nextInt(5, 161) / 10.0};
    }
    return amps;
  }

  private static double highest(Object[][] amps, Object[][] legs) {
    double[] sum = new double[LEGS];
    double highest = 0;
    for (int i = 0; i < amps.length; i++) {
      int leg = ((Double) legs[i][0]).intValue() - 1;
      sum[leg] += (Double) amps[i][0];
      highest = Math.max(highest, sum[leg]);
    }
    return highest;
  }

  /** The mixed-integer problem: each load on one leg, the highest leg as low as it can be. */
  private static String problem(Object[][] amps) {
    StringBuilder each = new StringBuilder();
    StringBuilder binary = new StringBuilder();
    StringBuilder[] leg = new StringBuilder[LEGS];
    for (int k = 0; k < LEGS; k++) {
      leg[k] = new StringBuilder("g" + k + ": - t");
    }
    for (int i = 0; i < amps.length; i++) {
      each.append(String.format("l%1$d: x%1$d_0 + x%1$d_1 + x%1$d_2 = 1%n", i));
      for (int k = 0; k < LEGS; k++) {
        leg[k].append(String.format(Locale.ROOT, " + %.1f x%d_%d", amps[i][0], i, k));
        binary.append(String.format(" x%d_%d", i, k));
      }
    }
    StringBuilder lp = new StringBuilder("minimize t\nsubject to\n").append(each);
    for (StringBuilder sum : leg) {
      lp.append(sum).append(" <= 0\n");
    }
    return lp.append("binary").append(binary).append("\nend\n").toString();
  }

  private static double glpsol(Path problem) throws IOException, InterruptedException {
    Path answer = Files.createTempFile("legs", ".txt");
    Process process =
        new ProcessBuilder("glpsol", "--lp", problem.toString(), "-o", answer.toString())
            .redirectErrorStream(true)
            .start();
    String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (process.waitFor() != 0) {
      throw new IllegalStateException(printed);
    }
    String found = Files.readString(answer);
    Files.delete(answer);
    if (!found.contains("INTEGER OPTIMAL")) {
      throw new IllegalStateException(printed);
    }
    return Double.parseDouble(found.replaceAll("(?s).*Objective: *\\S+ = (\\S+).*", "$1"));
  }

  /** PHASE.ASSIGN. */
  @Benchmark
  @Warmup(iterations = 5)
  @Measurement(iterations = 20)
  public Object assign(Loads all) {
    return PhaseFunctions.ASSIGN.call(all.amps, 3.0);
  }

  /** The same by glpsol, its start (some milliseconds) included. */
  @Benchmark
  @Warmup(iterations = 0)
  @Measurement(iterations = 2)
  public double assignByGlpsol(FewLoads all) throws IOException, InterruptedException {
    return glpsol(all.problem);
  }
}
