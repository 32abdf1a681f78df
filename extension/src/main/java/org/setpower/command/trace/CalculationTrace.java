package org.setpower.command.trace;

import static org.setpower.command.message.CommandMessages.say;

import java.util.ArrayList;
import java.util.List;
import org.setpower.base.Numbers;

/** The calculation of a number, in parts that a window, the clipboard and a sheet can show. */
public final class CalculationTrace {
  /**
   * One line.
   *
   * @param name what it is called
   * @param value a number or a text; null where there is only a name
   * @param words what it is
   * @param source where it comes from
   */
  record Line(String name, Object value, String unit, String words, String source) {
    static Line of(String text) {
      return new Line(text, null, "", "", "");
    }

    private String text() {
      if (value == null) {
        return name;
      }
      StringBuilder line = new StringBuilder(name).append(" = ").append(plain(value));
      add(line, " ", unit, "");
      add(line, "  (", words, ")");
      add(line, "  [", source, "]");
      return line.toString();
    }

    private static void add(StringBuilder line, String before, String what, String after) {
      if (!what.isEmpty()) {
        line.append(before).append(what).append(after);
      }
    }

    Object[] cells() {
      Object shown = value == null ? "" : value;
      return new Object[] {
        name, shown instanceof Double ? shown : plain(shown), unit, words, source
      };
    }
  }

  private record Part(String heading, List<Line> lines) {}

  private final String title;
  private final List<Part> parts = new ArrayList<>();

  CalculationTrace(String title) {
    this.title = title;
  }

  String title() {
    return title;
  }

  /** A part under a heading in English. */
  void add(String heading, List<Line> lines) {
    if (!lines.isEmpty()) {
      parts.add(new Part(say(heading), List.copyOf(lines)));
    }
  }

  void add(String heading, String text) {
    if (!text.isBlank()) {
      add(heading, List.of(Line.of(text)));
    }
  }

  private static String plain(Object value) {
    return value instanceof Double number ? Numbers.format(number) : String.valueOf(value);
  }

  /** As text. */
  public String text() {
    StringBuilder text = new StringBuilder(title).append('\n');
    for (Part part : parts) {
      text.append('\n').append(part.heading).append('\n');
      part.lines.forEach(l -> text.append("   ").append(l.text()).append('\n'));
    }
    return text.toString();
  }

  /** Whether a row of {@link #rows} is a heading. */
  boolean isHeading(int row) {
    int next = 1;
    for (Part part : parts) {
      if (row == next) {
        return true;
      }
      next += 1 + part.lines.size();
    }
    return row == 0;
  }

  /** As rows of five cells. */
  Object[][] rows() {
    List<Object[]> rows = new ArrayList<>();
    rows.add(Line.of(title).cells());
    for (Part part : parts) {
      rows.add(Line.of(part.heading).cells());
      part.lines.forEach(l -> rows.add(l.cells()));
    }
    return rows.toArray(Object[][]::new);
  }
}
