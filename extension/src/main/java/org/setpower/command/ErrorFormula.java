package org.setpower.command;

/**
 * A formula that gives an error of Calc without any function of ours, so that what depends on a
 * frozen cell still sees the error.
 */
record ErrorFormula(String text) {
  /**
   * The formula for an error.
   *
   * @param shown what the cell shows; it becomes a text where no formula gives the error at will
   */
  static ErrorFormula of(int code, String shown) {
    return new ErrorFormula(
        switch (code) {
          case 502 -> "=SQRT(-1)";
          case 503 -> "=#NUM!";
          case 519 -> "=#VALUE!";
          case 523 -> "=IRR({1;1})";
          case 524 -> "=#REF!";
          case 525 -> "=#NAME?";
          case 532 -> "=#DIV/0!";
          case 32767 -> "=NA()";
          default -> shown;
        });
  }
}
