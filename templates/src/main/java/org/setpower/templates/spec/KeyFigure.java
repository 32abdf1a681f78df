package org.setpower.templates.spec;

/**
 * A headline figure of the result page, readable from two metres.
 *
 * @param label what it is, with its unit
 * @param value the figure; blank when there is nothing to say
 * @param format how it looks
 * @param note a line of words below it
 * @param unit what stands in the brackets of the label where it follows a choice, else {@code null}
 */
public record KeyFigure(
    String label, Formula value, CellFormat format, Formula note, Formula unit) {
  /** A figure with a note, which may be a text or a formula that gives one. */
  public static KeyFigure of(String label, CellFormat format, Formula value, Object note) {
    return new KeyFigure(label, value, format, Formula.of(note), null);
  }

  /** A sum of money; its label ends with "(money)", which the currency takes the place of. */
  public static KeyFigure money(String label, Formula currency, Formula value, Object note) {
    return new KeyFigure(label, value, CellFormat.MONEY, Formula.of(note), currency);
  }

  /** What a cell says; a dash while it says nothing. */
  public static Formula shown(CellSpec<?> cell) {
    return Formula.calc("IF({}=\"\";\"–\";{})", cell, cell);
  }

  /** The most of a column; a dash while it has no number. */
  public static Formula max(ColumnSpec column) {
    return ofNumbers("MAX", column);
  }

  /** The least of a column; a dash while it has no number. */
  public static Formula min(ColumnSpec column) {
    return ofNumbers("MIN", column);
  }

  /** The sum of a column; a dash while it has no number. */
  public static Formula sum(ColumnSpec column) {
    return ofNumbers("SUM", column);
  }

  private static Formula ofNumbers(String function, ColumnSpec column) {
    return Formula.calc("IF(COUNT({})=0;\"–\";" + function + "({}))", column.all(), column.all());
  }

  /** The label as text or as a formula. */
  public String labelText(CellContext place) {
    String words = place.words().of(label);
    return unit == null
        ? words
        : "="
            + Formula.Patterns.quoted(words.substring(0, words.lastIndexOf('(') + 1))
            + "&"
            + unit.text(place)
            + "&\")\"";
  }

  /** The name of its cell in the document, for tests and other sheets: "Result_Busiest_supply". */
  public String rangeName() {
    return "Result_"
        + label.replaceAll("\\s*\\(.*?\\)", "").strip().replaceAll("[^A-Za-z0-9]+", "_");
  }
}
