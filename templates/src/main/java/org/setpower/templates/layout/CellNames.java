package org.setpower.templates.layout;

/** Names of cells as they stand in formulas. */
public final class CellNames {
  private static final int LETTERS = 26;

  private CellNames() {}

  /** A cell that stays the same. */
  public static String fixed(int column, int row) {
    return "$" + letters(column) + "$" + (row + 1);
  }

  /** A cell of a fixed column in a row that follows. */
  public static String inColumn(int column, int row) {
    return "$" + letters(column) + (row + 1);
  }

  private static String letters(int column) {
    return column < LETTERS
        ? String.valueOf((char) ('A' + column))
        : letters(column / LETTERS - 1) + (char) ('A' + column % LETTERS);
  }
}
