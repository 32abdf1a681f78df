package org.setpower.base;

/** The four reasons why a call has no result, and what the cell shows. */
public enum ErrorKind {
  /** A value outside what the function is defined for. */
  DOMAIN("Err:502", 502),
  /** Valid arguments for which tables, rules or physics give no result. */
  NO_ANSWER("#N/A", 32767),
  /** Text where a number belongs, or the other way round. */
  WRONG_KIND("#VALUE!", 519),
  /** An iteration that did not converge. */
  NO_CONVERGENCE("Err:523", 523);

  private final String shown;
  private final int code;

  ErrorKind(String shown, int code) {
    this.shown = shown;
    this.code = code;
  }

  /** What the cell shows. */
  public String shown() {
    return shown;
  }

  /** The number of that error in Calc. */
  public int code() {
    return code;
  }
}
