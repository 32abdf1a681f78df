package org.setpower.templates.plan;

import java.util.ArrayList;
import java.util.List;
import org.setpower.plan.common.ResultTable;

/**
 * Head or foot of a letter: results with one row, what is ours or the client's left, dates and
 * numbers right of it with their labels. What is blank leaves its label blank too.
 */
public final class PlanLetter implements PlanPart {
  private final ResultTable<?> results;
  private final int labels;
  private final int values;
  private final List<Line> lines = new ArrayList<>();
  private String title = "";

  /**
   * A line.
   *
   * @param left path of what stands left; null for nothing
   * @param isLabelled whether its heading stands before it
   * @param isFirst whether it is the letter's first line, in larger type
   * @param right path of what stands right; null for nothing
   * @param tall how many lines of text it has room for
   */
  public record Line(String left, boolean isLabelled, boolean isFirst, String right, int tall) {}

  private PlanLetter(ResultTable<?> results, int labels, int values) {
    this.results = results;
    this.labels = labels;
    this.values = values;
  }

  static PlanLetter of(ResultTable<?> results, int labels, int values) {
    return new PlanLetter(results, labels, values);
  }

  /** A heading above it: what paper it is. */
  public PlanLetter titled(String words) {
    title = words;
    return this;
  }

  private String path(String key) {
    return key.isEmpty() ? null : results.key() + "." + key;
  }

  /** The first line. */
  public PlanLetter first(String left, String right) {
    lines.add(new Line(path(left), false, true, path(right), 1));
    return this;
  }

  /** A row without text that grows with the picture that the house places there. */
  public PlanLetter picture() {
    lines.add(new Line(null, false, false, null, 0));
    return this;
  }

  /** A line; an empty key leaves its side free. */
  public PlanLetter line(String left, String right) {
    lines.add(new Line(path(left), false, false, path(right), 1));
    return this;
  }

  /** A line whose left has its heading before it. */
  public PlanLetter labelled(String left, String right) {
    lines.add(new Line(path(left), true, false, path(right), 1));
    return this;
  }

  /** A line with room for two lines of text, such as an address. */
  public PlanLetter address(String left, boolean isLabelled, String right) {
    lines.add(new Line(path(left), isLabelled, false, path(right), 2));
    return this;
  }

  public List<Line> lines() {
    return List.copyOf(lines);
  }

  /** The column in which labels of the right side begin. */
  public int labels() {
    return labels;
  }

  /** The column in which values of the right side begin. */
  public int values() {
    return values;
  }

  /** Paths of all results. */
  public List<String> columns() {
    List<String> columns = new ArrayList<>();
    for (Line line : lines) {
      if (line.left() != null) {
        columns.add(line.left());
      }
      if (line.right() != null) {
        columns.add(line.right());
      }
    }
    return columns;
  }

  @Override
  public String title() {
    return title;
  }
}
