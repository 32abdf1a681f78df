package org.setpower.command.issues;

import com.sun.star.table.CellAddress;

/**
 * An open issue.
 *
 * @param kind what it is
 * @param sheet the name of its sheet
 * @param at its cell
 * @param row what the row is about
 * @param reason why, and what to do
 */
record Issue(Kind kind, String sheet, CellAddress at, String row, String reason) {
  /** The worst first. */
  enum Kind {
    STOP("stop"),
    ERROR("error"),
    CHECK("check");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }
}
