package org.setpower.plan.common;

/** Which rows of a table a row of another table is made of. */
@FunctionalInterface
public interface Relations {
  /**
   * The rows behind a row.
   *
   * @param table key of the table of the row
   * @param row its number, from 1
   * @param source key of the table asked for
   * @return row numbers, from 1
   */
  int[] rows(String table, int row, String source);
}
