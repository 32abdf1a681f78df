package org.setpower.plan.travel.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * An integer programme by branch and bound over {@link LinearProgram}: whole numbers x from 0 to
 * their upper ends, further numbers that follow from them, and rows a·v ≤ b.
 */
final class IntegerProgram {
  private static final double WHOLE = 1e-6;

  private final int[] upper;
  private final boolean[] implied;
  private final int size;
  private final UnaryOperator<double[]> completed;
  private final List<double[]> rows = new ArrayList<>();
  private final List<Double> ends = new ArrayList<>();

  private double[] objective;
  private double step;
  private double enough = WHOLE;
  private double[] best;
  private double bestValue;
  private long budget;
  private boolean proven;

  /**
   * @param upper upper ends of the whole numbers
   * @param implied whether a row keeps the number below its upper end anyway
   * @param more how many further numbers there are
   * @param completed fills in the further numbers, as small as the whole ones let them be
   */
  IntegerProgram(int[] upper, boolean[] implied, int more, UnaryOperator<double[]> completed) {
    this.upper = upper.clone();
    this.implied = implied.clone();
    this.size = upper.length + more;
    this.completed = completed;
  }

  /** A value that is less than this below the greatest is good enough. */
  void goodEnough(double less) {
    enough = less;
  }

  /** Adds a row a·v ≤ b. */
  void atMost(double[] a, double b) {
    rows.add(a.clone());
    ends.add(b);
  }

  /** A solution and whether it is proven to be the best. */
  record Best(double[] values, double value, boolean proven) {}

  /**
   * The greatest value of an objective.
   *
   * @param step every value is a multiple of it; 0 if nothing is known
   * @param start a solution to begin with
   * @param work how much may be spent
   */
  Best greatest(double[] of, double step, double[] start, long work) {
    objective = of;
    this.step = step;
    best = completed.apply(start.clone());
    bestValue = value(best);
    budget = work;
    proven = true;
    branch(new int[upper.length], upper.clone());
    return new Best(best, bestValue, proven);
  }

  private double value(double[] v) {
    double sum = 0;
    for (int j = 0; j < size; j++) {
      sum += objective[j] * v[j];
    }
    return sum;
  }

  private boolean isAllowed(double[] v) {
    for (int i = 0; i < rows.size(); i++) {
      double sum = 0;
      for (int j = 0; j < size; j++) {
        sum += rows.get(i)[j] * v[j];
      }
      if (sum > ends.get(i) + WHOLE) {
        return false;
      }
    }
    return true;
  }

  private void offer(double[] v) {
    double[] whole = completed.apply(v);
    double value = value(whole);
    if (value > bestValue + WHOLE && isAllowed(whole)) {
      best = whole;
      bestValue = value;
    }
  }

  /** The highest value that a bound leaves, given the step. */
  private double reachable(double bound) {
    return step > 0 ? Math.floor(bound / step + 1e-6) * step : bound;
  }

  private void branch(int[] low, int[] high) {
    if (budget <= 0) {
      proven = false;
      return;
    }
    LinearProgram.Solved relaxed = relaxed(low, high);
    budget -= relaxed.work();
    if (!relaxed.known()) {
      proven = false;
      return;
    }
    double[] v = relaxed.x();
    if (v == null || reachable(value(v)) <= bestValue + enough) {
      return;
    }
    int at = -1;
    double furthest = WHOLE;
    double[] down = v.clone();
    double[] near = v.clone();
    for (int j = 0; j < upper.length; j++) {
      near[j] = Math.rint(v[j]);
      down[j] = Math.floor(v[j] + WHOLE);
      double off = Math.abs(v[j] - near[j]);
      if (off > furthest) {
        furthest = off;
        at = j;
      }
    }
    offer(near);
    if (at < 0) {
      // whole already: nothing better is left here, unless rounding broke a row
      proven &= isAllowed(completed.apply(near));
      return;
    }
    offer(down);
    int[] cut = high.clone();
    cut[at] = (int) Math.floor(v[at]);
    int[] raised = low.clone();
    raised[at] = cut[at] + 1;
    branch(raised, high);
    branch(low, cut);
  }

  /** The relaxation between the ends of a branch; fixed numbers are taken out. */
  private LinearProgram.Solved relaxed(int[] low, int[] high) {
    int[] open = new int[size];
    int columns = 0;
    for (int j = 0; j < size; j++) {
      if (j >= upper.length || high[j] > low[j]) {
        open[columns++] = j;
      }
    }
    List<double[]> a = new ArrayList<>();
    List<Double> b = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      double[] row = rows.get(i);
      double end = ends.get(i);
      for (int j = 0; j < low.length; j++) {
        end -= row[j] * low[j];
      }
      double[] kept = new double[columns];
      boolean any = false;
      for (int k = 0; k < columns; k++) {
        kept[k] = row[open[k]];
        any |= kept[k] != 0;
      }
      if (any) {
        a.add(kept);
        b.add(end);
      } else if (end < -WHOLE) {
        return new LinearProgram.Solved(null, true, 1);
      }
    }
    for (int k = 0; k < columns; k++) {
      int j = open[k];
      if (j < upper.length && (!implied[j] || high[j] < upper[j])) {
        double[] row = new double[columns];
        row[k] = 1;
        a.add(row);
        b.add((double) high[j] - low[j]);
      }
    }
    double[] c = new double[columns];
    for (int k = 0; k < columns; k++) {
      c[k] = objective[open[k]];
    }
    LinearProgram.Solved solved =
        LinearProgram.solve(
            a.toArray(double[][]::new), b.stream().mapToDouble(Double::doubleValue).toArray(), c);
    if (solved.x() == null) {
      return solved;
    }
    double[] v = Arrays.copyOf(Arrays.stream(low).asDoubleStream().toArray(), size);
    for (int k = 0; k < columns; k++) {
      v[open[k]] += solved.x()[k];
    }
    return new LinearProgram.Solved(v, true, solved.work());
  }
}
