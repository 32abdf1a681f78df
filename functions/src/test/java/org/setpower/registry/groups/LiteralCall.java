package org.setpower.registry.groups;

import java.util.ArrayList;
import java.util.List;

/**
 * A formula that consists of one call with literal arguments, as in the case files: {@code
 * =NAME("text";1.5;3%;TRUE;{1;2|3;4};)}. In an array, semicolons part columns and bars part rows.
 *
 * <p>It reads the case files without an office, and nothing else: an office is more particular (no
 * % inside an array). FunctionsIT types the same formulas into cells, ExamplesIT those that users
 * are shown.
 */
public final class LiteralCall {
  private final String text;
  private int at;

  private LiteralCall(String text) {
    this.text = text;
  }

  /** Name and arguments. An argument that is left empty is {@code null}. */
  public record Call(String name, Object[] arguments) {
    /** The function's answer. */
    public Object run() {
      return FunctionRegistry.find(name)
          .orElseThrow(() -> new AssertionError("no " + name))
          .call(arguments);
    }
  }

  public static Call parse(String formula) {
    String body = formula.strip().replaceFirst("^=", "");
    int open = body.indexOf('(');
    LiteralCall parser = new LiteralCall(body.substring(open + 1, body.lastIndexOf(')')));
    return new Call(body.substring(0, open).strip(), parser.arguments());
  }

  private Object[] arguments() {
    List<Object> all = new ArrayList<>();
    skip();
    if (at == text.length()) {
      return new Object[0];
    }
    while (true) {
      skip();
      all.add(at < text.length() && text.charAt(at) != ';' ? value() : null);
      skip();
      if (at >= text.length()) {
        return all.toArray();
      }
      expect(';');
    }
  }

  private Object value() {
    char c = text.charAt(at);
    if (c == '"') {
      return quoted();
    }
    if (c == '{') {
      return array();
    }
    int start = at;
    while (at < text.length() && ";|}".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    String word = text.substring(start, at).strip();
    if (word.equals("TRUE") || word.equals("FALSE")) {
      return word.equals("TRUE") ? 1.0 : 0.0;
    }
    return word.endsWith("%")
        ? Double.parseDouble(word.substring(0, word.length() - 1)) / 100
        : Double.parseDouble(word);
  }

  private String quoted() {
    StringBuilder s = new StringBuilder();
    at++;
    while (true) {
      char c = text.charAt(at++);
      if (c != '"') {
        s.append(c);
      } else if (at < text.length() && text.charAt(at) == '"') {
        s.append('"');
        at++;
      } else {
        return s.toString();
      }
    }
  }

  private Object[][] array() {
    List<Object[]> rows = new ArrayList<>();
    List<Object> row = new ArrayList<>();
    at++;
    while (true) {
      skip();
      row.add(value());
      skip();
      char c = text.charAt(at++);
      if (c != ';') {
        rows.add(row.toArray());
        row = new ArrayList<>();
      }
      if (c == '}') {
        return rows.toArray(Object[][]::new);
      }
    }
  }

  private void skip() {
    while (at < text.length() && text.charAt(at) == ' ') {
      at++;
    }
  }

  private void expect(char c) {
    if (text.charAt(at) != c) {
      throw new IllegalArgumentException("expected " + c + " at " + at + " of " + text);
    }
    at++;
  }
}
