package org.setpower.plan.common;

import java.util.List;

/**
 * How a figure is made, from typed cells up to the figure itself, which is the last step.
 *
 * @param steps in the order of reading
 */
public record Trace(List<Step> steps) {
  public Trace {
    steps = List.copyOf(steps);
  }

  /**
   * One step.
   *
   * @param path {@code table.key} of the column
   * @param table heading of the table
   * @param rows numbers of the rows in it
   * @param heading heading of the column
   * @param unit unit of the values
   * @param values what these rows hold there: typed cells as they are typed, results as the
   *     component holds them
   * @param typed whether the cells are typed, not calculated
   * @param rule how it is made; empty for typed cells
   */
  public record Step(
      String path,
      String table,
      List<Integer> rows,
      String heading,
      String unit,
      List<Object> values,
      boolean typed,
      String rule) {
    /** The step with headings and rule in a language. */
    private Step in(Messages messages) {
      return new Step(
          path,
          messages.text(table),
          rows,
          messages.text(heading),
          unit,
          values,
          typed,
          messages.text(rule));
    }
  }

  /** All steps with their headings and rules in a language. */
  public Trace in(Messages messages) {
    return new Trace(steps.stream().map(s -> s.in(messages)).toList());
  }
}
