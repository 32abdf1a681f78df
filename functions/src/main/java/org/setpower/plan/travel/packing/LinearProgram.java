package org.setpower.plan.travel.packing;

/**
 * A linear programme: the greatest c·x with A·x ≤ b and x ≥ 0, by the simplex method on a dense
 * tableau. Ties are broken by the number of the variable, so that the same question has the same
 * answer.
 */
final class LinearProgram {
  private static final double ZERO = 1e-9;
  private static final int MOST_PIVOTS = 5_000;

  private final int rows;
  private final int columns;
  private final int[] basis;
  private final int[] free;
  private final double[][] tableau;
  private int pivots;

  private LinearProgram(double[][] a, double[] b, double[] c) {
    rows = b.length;
    columns = c.length;
    basis = new int[rows];
    free = new int[columns + 1];
    tableau = new double[rows + 2][columns + 2];
    for (int i = 0; i < rows; i++) {
      System.arraycopy(a[i], 0, tableau[i], 0, columns);
      basis[i] = columns + i;
      tableau[i][columns] = -1;
      tableau[i][columns + 1] = b[i];
    }
    for (int j = 0; j < columns; j++) {
      free[j] = j;
      tableau[rows][j] = -c[j];
    }
    free[columns] = -1;
    tableau[rows + 1][columns] = 1;
  }

  /**
   * A solved programme.
   *
   * @param x the solution; null when there is none
   * @param known whether the search came to its end; if not, x is null and proves nothing
   * @param work how many numbers it took
   */
  record Solved(double[] x, boolean known, long work) {}

  static Solved solve(double[][] a, double[] b, double[] c) {
    LinearProgram program = new LinearProgram(a, b, c);
    double[] x = program.solution();
    boolean known = program.pivots < MOST_PIVOTS;
    long size = (program.rows + 2L) * (program.columns + 2L);
    return new Solved(known ? x : null, known, (program.pivots + 1) * size);
  }

  private double[] solution() {
    int worst = 0;
    for (int i = 1; i < rows; i++) {
      worst = tableau[i][columns + 1] < tableau[worst][columns + 1] ? i : worst;
    }
    if (rows > 0 && tableau[worst][columns + 1] < -ZERO && !feasible(worst)) {
      return null;
    }
    if (!improve(rows)) {
      return null;
    }
    double[] x = new double[columns];
    for (int i = 0; i < rows; i++) {
      if (basis[i] >= 0 && basis[i] < columns) {
        x[basis[i]] = tableau[i][columns + 1];
      }
    }
    return x;
  }

  /** First phase: drives the auxiliary variable to nothing. */
  private boolean feasible(int worst) {
    pivot(worst, columns);
    if (!improve(rows + 1) || tableau[rows + 1][columns + 1] < -1e-7) {
      return false;
    }
    for (int i = 0; i < rows; i++) {
      if (basis[i] == -1) {
        int column = 0;
        for (int j = 1; j <= columns; j++) {
          if (tableau[i][j] < tableau[i][column]
              || (tableau[i][j] == tableau[i][column] && free[j] < free[column])) {
            column = j;
          }
        }
        pivot(i, column);
      }
    }
    return true;
  }

  /** Pivots until the objective of a row is at its best; false if it has no end. */
  private boolean improve(int objective) {
    while (pivots < MOST_PIVOTS) {
      int column = -1;
      for (int j = 0; j <= columns; j++) {
        boolean open = objective != rows || free[j] != -1;
        if (open && (column < 0 || isBetter(objective, j, column))) {
          column = j;
        }
      }
      if (column < 0 || tableau[objective][column] > -ZERO) {
        return true;
      }
      int row = leaving(column);
      if (row < 0) {
        return false;
      }
      pivot(row, column);
    }
    return false;
  }

  private boolean isBetter(int objective, int j, int than) {
    double[] row = tableau[objective];
    return row[j] < row[than] || (row[j] == row[than] && free[j] < free[than]);
  }

  private int leaving(int column) {
    int row = -1;
    for (int i = 0; i < rows; i++) {
      if (tableau[i][column] > ZERO) {
        double ratio = tableau[i][columns + 1] / tableau[i][column];
        double best = row < 0 ? 0 : tableau[row][columns + 1] / tableau[row][column];
        if (row < 0 || ratio < best || (ratio == best && basis[i] < basis[row])) {
          row = i;
        }
      }
    }
    return row;
  }

  private void pivot(int row, int column) {
    pivots++;
    double inverse = 1 / tableau[row][column];
    double[] from = tableau[row];
    for (int i = 0; i < rows + 2; i++) {
      double[] to = tableau[i];
      if (i != row && to[column] != 0) {
        double factor = to[column] * inverse;
        // without a condition in the loop, which is then done on several numbers at a time
        for (int j = 0; j < columns + 2; j++) {
          to[j] -= from[j] * factor;
        }
        to[column] = -factor;
      }
    }
    for (int j = 0; j < columns + 2; j++) {
      from[j] *= inverse;
    }
    from[column] = inverse;
    int left = basis[row];
    basis[row] = free[column];
    free[column] = left;
  }
}
