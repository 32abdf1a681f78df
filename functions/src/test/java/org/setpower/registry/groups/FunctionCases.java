package org.setpower.registry.groups;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import org.setpower.base.ReferenceTable;
import org.setpower.registry.FunctionSpec;

/**
 * The check values of one function: {@code cases/NAME.csv} with the columns arguments, expected,
 * tolerance, basis, source, note, and a last row END, so that a file cut short fails.
 */
public final class FunctionCases {
  /**
   * Where an expected value can come from. "recalculated": a model of ours, worked out again by a
   * program written apart: it proves the arithmetic, not the model. "own": a sentence, factor or
   * method of ours: it shows what changes and proves nothing. Neither counts as from outside.
   */
  public static final Set<String> BASES =
      Set.of(
          "published",
          "library",
          "identity",
          "common practice",
          "memory",
          "rule",
          "recalculated",
          "own");

  private static final String CONTAINS = "contains ";

  private FunctionCases() {}

  /**
   * One check.
   *
   * @param given the arguments, as {@link JsonValues} reads them
   * @param expected a number, a text or a range, as {@link JsonValues} reads them; a fault as the
   *     cell shows it (Err:502, #N/A, #VALUE!, Err:523), optionally followed by words that its
   *     reason must contain (#N/A: cannot carry); or a part of a text (contains 'UN 3480')
   * @param tolerance absolute ("0.01") or relative ("0.5%"); empty means one part in 10¹²
   * @param basis one of {@link #BASES}; "rule" for faults and words that our own rules ask for
   */
  public record Case(
      String function,
      long line,
      String given,
      String expected,
      String tolerance,
      String basis,
      String source,
      String note) {

    /** The arguments; null where one is left out. */
    public Object[] arguments() {
      return JsonValues.arguments(given);
    }

    /** The function's answer. */
    public Object run() {
      return Calls.call(function, arguments());
    }

    /** Whether the expected value stands outside the project. */
    public boolean fromOutside() {
      return Set.of("published", "library", "identity").contains(basis);
    }

    public boolean expectsFault() {
      return expected.startsWith("Err:") || expected.startsWith("#");
    }

    /** The error as the cell shows it. */
    public String fault() {
      int colon = expected.indexOf(": ");
      return colon < 0 ? expected : expected.substring(0, colon);
    }

    /** Words that the reason must contain; may be empty. */
    public String reasonWords() {
      int colon = expected.indexOf(": ");
      return colon < 0 ? "" : expected.substring(colon + 2);
    }

    /** The number, text or array expected; of a text that is to be contained, that part. */
    public Object value() {
      return JsonValues.value(expectsPart() ? expected.substring(CONTAINS.length()) : expected);
    }

    /** Whether the text expected is only a part of the answer. */
    public boolean expectsPart() {
      return expected.startsWith(CONTAINS);
    }

    /** How far a number may be off. */
    public double allowed(double value) {
      if (tolerance.isEmpty()) {
        return 1e-12 * Math.abs(value);
      }
      return tolerance.endsWith("%")
          ? Double.parseDouble(tolerance.substring(0, tolerance.length() - 1))
              / 100
              * Math.abs(value)
          : Double.parseDouble(tolerance);
    }

    @Override
    public String toString() {
      return function + " line " + line + ": " + given + " → " + expected;
    }
  }

  /** The check of every plan's function: what it cannot read is a stop. */
  private static List<Case> plan(FunctionSpec f) {
    String unreadable = ", '#'".repeat(f.plan().orElseThrow().inputs().size());
    return List.of(
        new Case(
            f.name(),
            0,
            "[[['en', ''], [1, 'key']]" + unreadable + "]",
            "[['stop'], ['stop']]",
            "",
            "rule",
            "what cannot be read is a stop",
            "the plan's own tests check its figures"));
  }

  /** All checks of a function. */
  public static List<Case> of(String function) {
    FunctionSpec spec = FunctionRegistry.find(function).orElseThrow();
    if (spec.plan().isPresent()) {
      return plan(spec);
    }
    String resource = "/cases/" + function.replaceFirst("[.].*", "") + "/" + function + ".csv";
    try (InputStream in = FunctionCases.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new AssertionError("no case file " + resource);
      }
      return read(function, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Case> read(String function, InputStream in) throws IOException {
    List<Case> cases = new ArrayList<>();
    boolean ended = false;
    for (CSVRecord row :
        ReferenceTable.FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      if (ended) {
        throw new AssertionError(function + ": rows after END");
      }
      if (row.get(0).equals("END")) {
        ended = true;
        continue;
      }
      cases.add(
          new Case(
              function,
              row.getRecordNumber() + 1,
              row.get("arguments"),
              row.get("expected"),
              row.get("tolerance"),
              row.get("basis"),
              row.get("source"),
              row.get("note")));
    }
    if (!ended) {
      throw new AssertionError(function + ": no END row, the file is cut short");
    }
    return cases;
  }
}
