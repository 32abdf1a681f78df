package org.setpower.templates;

/**
 * A headline figure of the result page, readable from two metres.
 *
 * @param label what it is, with its unit
 * @param value the figure; blank when there is nothing to say
 * @param format how it looks
 * @param note a line of words below it
 */
public record Figure(String label, Formula value, Format format, Formula note) {
  /** A figure with a note, which may be a text or a formula that gives one. */
  public static Figure of(String label, Format format, Formula value, Object note) {
    return new Figure(label, value, format, Formula.of(note));
  }

  /** The name of its cell in the document, for tests and other sheets: "Result_Busiest_supply". */
  public String rangeName() {
    return "Result_"
        + label.replaceAll("\\s*\\(.*?\\)", "").strip().replaceAll("[^A-Za-z0-9]+", "_");
  }
}
