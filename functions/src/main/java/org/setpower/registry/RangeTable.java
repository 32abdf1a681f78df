package org.setpower.registry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.Dates;
import org.setpower.base.EvaluationException;
import org.setpower.base.TextEnum;

/**
 * A range read row by row: rows whose cells are all blank are skipped, a row half blank or with
 * text where a number belongs is refused by its number.
 */
public final class RangeTable {
  /** The max. number of rows; no shipped sheet has more. */
  static final int MOST_CELLS = 200_000;

  private final String name;
  private final List<Row> rows = new ArrayList<>();

  private RangeTable(String name) {
    this.name = name;
  }

  /**
   * The filled rows of a range with exactly these columns. A single number counts as a range of one
   * cell.
   */
  public static RangeTable of(String name, Object raw, String... columns) {
    Object[][] cells = raw instanceof Object[][] range ? range : new Object[][] {{raw}};
    RangeTable table = new RangeTable(name);
    if (cells.length > 0 && (long) cells.length * cells[0].length > MOST_CELLS) {
      throw new EvaluationException(
          BaseErrorCode.TOO_MANY_CELLS, (double) cells.length * cells[0].length, MOST_CELLS);
    }
    for (int r = 0; r < cells.length; r++) {
      if (isBlank(cells[r])) {
        continue;
      }
      if (cells[r].length != columns.length) {
        throw new EvaluationException(
            BaseErrorCode.ROW_WIDTH,
            name,
            columns.length,
            String.join(", ", columns),
            cells[r].length);
      }
      table.rows.add(table.new Row(r + 1, cells[r], columns));
    }
    return table;
  }

  /**
   * The filled rows of ranges of one column (or one row) each that belong side by side; {@code
   * columns} name the ranges.
   */
  public static RangeTable beside(String name, String[] columns, Object... ranges) {
    Object[][] flat = new Object[ranges.length][];
    for (int k = 0; k < ranges.length; k++) {
      flat[k] =
          ranges[k] instanceof Object[][] range
              ? Arrays.stream(range).flatMap(Arrays::stream).toArray()
              : new Object[] {ranges[k]};
      if (flat[k].length != flat[0].length) {
        throw new EvaluationException(
            BaseErrorCode.LENGTHS_DIFFER, columns[0], flat[0].length, columns[k], flat[k].length);
      }
    }
    Object[][] rows = new Object[flat[0].length][ranges.length];
    for (int r = 0; r < rows.length; r++) {
      for (int k = 0; k < ranges.length; k++) {
        rows[r][k] = flat[k][r];
      }
    }
    return of(name, rows, columns);
  }

  private static boolean isBlank(Object[] cells) {
    for (Object cell : cells) {
      if (!isBlank(cell)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isBlank(Object cell) {
    return cell == null || (cell instanceof String s && s.isBlank());
  }

  /** The filled rows; at least one, or a refusal. */
  public List<Row> filledRows() {
    if (rows.isEmpty()) {
      throw new EvaluationException(BaseErrorCode.NO_ROWS, name);
    }
    return rows;
  }

  /** One row. */
  public final class Row {
    private final int number;
    private final Object[] cells;
    private final String[] columns;

    Row(int number, Object[] cells, String[] columns) {
      this.number = number;
      this.cells = cells;
      this.columns = columns;
    }

    /** Its place in the range, from 1. */
    public int number() {
      return number;
    }

    /** "row 3 of packs: amp_hours", for refusals of a value. */
    public String nameOf(int column) {
      return columns[column] + " in row " + number + " of " + name;
    }

    /** Whether a cell that may be left blank is blank. */
    public boolean leavesOut(int column) {
      return isBlank(cells[column]);
    }

    /** The date in a column (from 0): a day number or ISO text. */
    public LocalDate date(int column) {
      if (isBlank(cells[column])) {
        throw new EvaluationException(BaseErrorCode.ROW_BLANK_CELL, name, number, columns[column]);
      }
      return Dates.of(nameOf(column), cells[column]);
    }

    /** The number in a column (from 0). */
    public double number(int column) {
      Object cell = cells[column];
      if (isBlank(cell)) {
        throw new EvaluationException(BaseErrorCode.ROW_BLANK_CELL, name, number, columns[column]);
      }
      if (!(cell instanceof Double d)) {
        throw new EvaluationException(
            BaseErrorCode.ROW_NOT_A_NUMBER,
            name,
            number,
            columns[column],
            TextEnum.shortened(cell.toString()));
      }
      return d;
    }

    /** The text in a column (from 0). */
    public String text(int column) {
      Object cell = cells[column];
      if (isBlank(cell)) {
        throw new EvaluationException(BaseErrorCode.ROW_BLANK_CELL, name, number, columns[column]);
      }
      return cell.toString();
    }

    /** The constant for the word in a column (from 0). */
    public <E extends Enum<E> & TextEnum> E word(int column, TextEnum.Lookup<E> words) {
      return words.read(nameOf(column), text(column));
    }
  }
}
