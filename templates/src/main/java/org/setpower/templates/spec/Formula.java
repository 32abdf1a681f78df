package org.setpower.templates.spec;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;
import org.setpower.text.MessageCatalog;

/**
 * Something that stands in a formula: a cell, a column, a value, a call of one of our functions, a
 * native calculation. A formula names cells by the {@link FieldSpec} and {@link ColumnSpec}
 * themselves; their addresses are put in when the sheet is drawn.
 */
public interface Formula {
  /** The text at a place, without the equals sign. */
  String text(CellContext place);

  /** What it is made of. */
  default List<Formula> parts() {
    return List.of();
  }

  /**
   * The cells that must be filled before the formula gives anything; those inside an {@link #or}
   * are not among them.
   */
  default Stream<CellSpec<?>> needs() {
    return parts().stream().flatMap(Formula::needs).distinct();
  }

  /** The calls of our functions in it, outer ones first. */
  default Stream<Call> calls() {
    return parts().stream().flatMap(Formula::calls);
  }

  /** A call of one of our functions; {@code null} leaves an optional argument out. */
  static Call call(FunctionSpec function, Object... arguments) {
    return new Call(function, Arrays.stream(arguments).map(Formula::of).toList());
  }

  /** A native calculation; each {} stands for the next part. */
  static Formula calc(String pattern, Object... parts) {
    return new Calc(pattern, Arrays.stream(parts).map(Formula::of).toList());
  }

  /** The value of a cell, or another if the cell is blank. */
  static Formula or(CellSpec<?> cell, Object otherwise) {
    return new Or(cell, of(otherwise));
  }

  /**
   * A cell that may be blank: a function then counts with its own default, a text reads nothing.
   */
  static Formula optional(CellSpec<?> cell) {
    return or(cell, "");
  }

  /** Words with values in them; each {} stands for the next value, rounded as its cell shows it. */
  static Formula say(String pattern, Object... parts) {
    return new Say(pattern, Arrays.stream(parts).map(Formula::of).toList());
  }

  /** A text, number or truth as it stands in a formula. */
  static Formula of(Object value) {
    if (value instanceof Formula f) {
      return f;
    }
    if (value == null) {
      return new Literal("");
    }
    if (value instanceof Boolean b) {
      return new Literal(b ? "TRUE()" : "FALSE()");
    }
    if (value instanceof Number n) {
      double d = n.doubleValue();
      return new Literal(d == Math.rint(d) ? String.valueOf(n.longValue()) : n.toString());
    }
    return new Literal("\"" + value.toString().replace("\"", "\"\"") + "\"");
  }

  /** A constant. */
  record Literal(String text) implements Formula {
    @Override
    public String text(CellContext place) {
      return Patterns.translated(text, place);
    }
  }

  /** A call of one of our functions. */
  record Call(FunctionSpec function, List<Formula> arguments) implements Formula {
    /** Refuses a call with too few or too many arguments. */
    public Call {
      long least = function.parameters().stream().filter(p -> !p.isOptional()).count();
      int most = function.takesRest() ? Integer.MAX_VALUE : function.parameters().size();
      if (arguments.size() < least || arguments.size() > most) {
        throw new IllegalArgumentException(
            function.name() + " takes " + least + " to " + most + ", not " + arguments.size());
      }
      for (int i = 0; i < Math.min(arguments.size(), function.parameters().size()); i++) {
        Parameter<?> parameter = function.parameters().get(i);
        if (!parameter.isOptional() && arguments.get(i).equals(of(null))) {
          throw new IllegalArgumentException(function.name() + " needs " + parameter.name());
        }
      }
      arguments = List.copyOf(arguments);
    }

    @Override
    public String text(CellContext place) {
      return function.name() + "(" + argumentText(place) + ")";
    }

    /** Why the call is refused. */
    String whyText(CellContext place) {
      String rest = argumentText(place);
      return "SHEET.WHY(\"" + function.name() + "\"" + (rest.isEmpty() ? "" : ";" + rest) + ")";
    }

    private String argumentText(CellContext place) {
      return String.join(";", arguments.stream().map(a -> a.text(place)).toList());
    }

    @Override
    public List<Formula> parts() {
      return arguments;
    }

    @Override
    public Stream<Call> calls() {
      return Stream.concat(Stream.of(this), parts().stream().flatMap(Formula::calls));
    }
  }

  /** A native formula. */
  record Calc(String pattern, List<Formula> parts) implements Formula {
    /** Refuses a pattern whose places do not match the parts. */
    public Calc {
      Patterns.check(pattern, parts);
      parts = List.copyOf(parts);
    }

    @Override
    public String text(CellContext place) {
      return Patterns.fill(
          Patterns.translated(pattern, place), parts.stream().map(p -> p.text(place)).toList());
    }
  }

  /** Words with values. */
  record Say(String pattern, List<Formula> parts) implements Formula {
    /** Refuses a pattern whose places do not match the parts. */
    public Say {
      Patterns.check(pattern, parts);
      parts = List.copyOf(parts);
    }

    @Override
    public String text(CellContext place) {
      String words = "\"" + place.words().of(pattern).replace("\"", "\"\"") + "\"";
      List<String> values = new ArrayList<>();
      for (Formula part : parts) {
        String value = part.text(place);
        values.add(
            "\"&" + (part instanceof CellSpec<?> i ? i.format().text(value) : value) + "&\"");
      }
      return MessageCatalog.fill(words, values.toArray()).replace("\"\"&", "").replace("&\"\"", "");
    }
  }

  /** A cell or what counts when it is blank. */
  record Or(CellSpec<?> cell, Formula otherwise) implements Formula {
    @Override
    public String text(CellContext place) {
      String value = cell.text(place);
      return "IF(" + value + "=\"\";" + otherwise.text(place) + ";" + value + ")";
    }

    @Override
    public List<Formula> parts() {
      return List.of(otherwise);
    }
  }

  /** Texts with places for parts. */
  final class Patterns {
    private static final Pattern QUOTED = Pattern.compile("\"(?:[^\"]|\"\")*\"");
    private static final Pattern READ = Pattern.compile("(?s)(?=.*\\p{L}{2}).* .*");
    private static final Pattern CODE = Pattern.compile("(?:ok|check|stop): ?");

    private Patterns() {}

    static void check(String pattern, List<Formula> parts) {
      int places = pattern.split("\\{}", -1).length - 1;
      if (places != parts.size()) {
        throw new IllegalArgumentException(
            "\"" + pattern + "\" has " + places + " places for " + parts.size() + " parts");
      }
    }

    static String fill(String pattern, List<String> values) {
      String[] pieces = pattern.split("\\{}", -1);
      StringBuilder text = new StringBuilder(pieces[0]);
      for (int i = 1; i < pieces.length; i++) {
        text.append(values.get(i - 1)).append(pieces[i]);
      }
      return text.toString();
    }

    /**
     * A formula whose quoted texts are translated, where they are words to read: those with a space
     * in them. A single word is one that is typed or compared, and so is every entry of a list.
     */
    static String translated(String formula, CellContext place) {
      return QUOTED
          .matcher(formula)
          .replaceAll(m -> Matcher.quoteReplacement(quoted(inWords(unquoted(m.group()), place))));
    }

    private static String inWords(String text, CellContext place) {
      boolean read = READ.matcher(text).matches() && !CODE.matcher(text).matches();
      return read && !place.layout().isTyped(text) ? place.words().of(text) : text;
    }

    /** A text as it stands in a formula. */
    static String quoted(String text) {
      return "\"" + text.replace("\"", "\"\"") + "\"";
    }

    private static String unquoted(String quoted) {
      return quoted.substring(1, quoted.length() - 1).replace("\"\"", "\"");
    }
  }
}
