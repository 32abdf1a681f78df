package org.setpower.templates.spec;

/**
 * Something to be told about a row.
 *
 * @param first whether it is asked before the results are looked at
 * @param word "stop" or "check"
 * @param when a formula that is true when it applies; it is not asked while a cell it needs is
 *     blank
 * @param message what is the matter and what to do
 */
public record ValidationRule(boolean first, String word, Formula when, Formula message) {
  /** Cells to fill that do not go together: asked before the results are looked at. */
  public static ValidationRule wrong(Formula when, Formula words) {
    return new ValidationRule(true, "stop", when, words);
  }

  /** The row cannot be used like this. */
  public static ValidationRule stop(Formula when, Formula words) {
    return new ValidationRule(false, "stop", when, words);
  }

  /** A decision or an action is needed. */
  public static ValidationRule check(Formula when, Formula words) {
    return new ValidationRule(false, "check", when, words);
  }
}
