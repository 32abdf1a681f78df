package org.setpower.templates;

/**
 * Something to be told about a row.
 *
 * @param word "stop" or "look"
 * @param when a formula that is true when it applies; it is not asked while a cell it needs is
 *     blank
 * @param words what is the matter and what to do
 */
public record Check(String word, Formula when, Formula words) {
  /** Nobody may go on like this. */
  public static Check stop(Formula when, Formula words) {
    return new Check("stop", when, words);
  }

  /** Somebody must decide or do something. */
  public static Check look(Formula when, Formula words) {
    return new Check("look", when, words);
  }
}
