package org.setpower.plan.transfer;

/**
 * A difference between a table and what a source holds now.
 *
 * @param key names the row in its source
 * @param name what a reader knows the row by
 * @param row where it stands in the table, from 1; 0 where it does not
 * @param column key of the column; empty for a whole row
 * @param here what stands here; null for blank
 * @param there what the source holds now; null for blank
 * @param isUsual whether it is written unless the user says no
 */
public record TransferChange(
    Kind kind,
    String key,
    String name,
    int row,
    String column,
    Object here,
    Object there,
    boolean isUsual) {
  /** What happened to a row or a cell. */
  public enum Kind {
    /** New in the source. */
    ADDED,
    /** Changed there, not here. */
    UPDATED,
    /** Changed here and there: here stays, unless the user picks the other. */
    CONFLICT,
    /** Says of a battery that it is worse: written in any case. */
    STRICTER,
    /** Not in the source any more: kept, to be checked. */
    GONE,
    /** New in the source, by a name that this file does not know. */
    UNKNOWN,
    /** Removed here or left out last time: not brought back, unless the user wants it. */
    LEFT_OUT
  }

  /** Whether the user may decide it. */
  public boolean isOpen() {
    return kind != Kind.GONE && kind != Kind.STRICTER;
  }

  /** Whether it is news: neither left out before nor of an unknown name. */
  public boolean isDifference() {
    return kind != Kind.LEFT_OUT && kind != Kind.UNKNOWN;
  }
}
