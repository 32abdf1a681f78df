package org.setpower.registry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.setpower.base.BaseErrorCode;
import org.setpower.base.CalculationStep;
import org.setpower.base.ErrorCode;
import org.setpower.base.EvaluationException;
import org.setpower.base.Numbers;
import org.setpower.base.Unit;
import org.setpower.plan.common.PlanModel;

/**
 * A sheet function, declared once: everything that the office, the wizard, the user guide and the
 * tests use comes from here.
 */
public final class FunctionSpec {
  /** What a call gives. */
  public enum Kind {
    NUMBER,
    TEXT,
    /** An array with named columns. */
    TABLE
  }

  private final FunctionGroup group;
  private final String name;
  private String sentence = "";
  private List<Parameter<?>> parameters = List.of();
  private Kind kind = Kind.NUMBER;
  private Unit unit = Unit.NONE;
  private String resultWords = "";
  private List<String> columns = List.of();
  private int mostCells = RangeBroadcast.MOST_CELLS;
  private String formula = "";
  private String source = "";
  private String caution = "";
  private List<ErrorCode> reasons = List.of();
  private List<Example> examples = List.of();
  private Function<Arguments, List<CalculationStep>> steps = a -> List.of();
  private PlanModel plan;
  private Function<Arguments, ?> body;

  /** A call that is shown to users and executed by the tests. */
  public record Example(String formula, Object result) {}

  FunctionSpec(FunctionGroup group, String name) {
    this.group = group;
    this.name = name;
  }

  /** One sentence without full stop: "Returns …". */
  public FunctionSpec description(String text) {
    sentence = text;
    return this;
  }

  /** The parameters in order; those that may be left out come last. */
  public FunctionSpec parameters(Parameter<?>... taken) {
    parameters = List.of(taken);
    return this;
  }

  /** A number with this unit; {@code words} name it. */
  public FunctionSpec returns(Unit resultUnit, String words) {
    kind = Kind.NUMBER;
    unit = resultUnit;
    resultWords = words;
    return this;
  }

  /** A text; {@code words} name it. */
  public FunctionSpec returnsText(String words) {
    kind = Kind.TEXT;
    resultWords = words;
    return this;
  }

  /** An array with these columns (a name and, in brackets, a unit). */
  public FunctionSpec returnsTable(String words, String... columnNames) {
    kind = Kind.TABLE;
    resultWords = words;
    columns = List.of(columnNames);
    return this;
  }

  /** The max. number of cells it is mapped over, where a single call is slow. */
  public FunctionSpec mapsAtMost(int cells) {
    mostCells = cells;
    return this;
  }

  /** The formula in one line, for the handbook. */
  public FunctionSpec formula(String text) {
    formula = text;
    return this;
  }

  /** Document, edition and clause that the formula or the table comes from. */
  public FunctionSpec source(String text) {
    source = text;
    return this;
  }

  /** The hazard for somebody who relies on the figure. */
  public FunctionSpec caution(String text) {
    caution = text;
    return this;
  }

  /** The error codes of its trade package. */
  public FunctionSpec errorCodes(ErrorCode... own) {
    reasons = List.of(own);
    return this;
  }

  /** An example and its result: a Double or a String; of an array its first cell. */
  public FunctionSpec example(String call, Object result) {
    List<Example> more = new ArrayList<>(examples);
    more.add(new Example(call, result));
    examples = List.copyOf(more);
    return this;
  }

  /** Steps between the inputs and the result; the result itself is added by the caller. */
  public FunctionSpec steps(Function<Arguments, List<CalculationStep>> between) {
    steps = between;
    return this;
  }

  /** The plan that it carries into a sheet. */
  FunctionSpec plan(PlanModel model) {
    plan = model;
    return this;
  }

  /** The call: a Double, a String, or Object[][]. The last step; it enters the function. */
  public FunctionSpec implementation(Function<Arguments, ?> call) {
    body = call;
    group.enter(this);
    return this;
  }

  /**
   * One call with values as a sheet passes them: {@code null} (left out), Double, String, or
   * Object[][] for a range. Gives a Double, a String, or Object[][], whose cells may also be a
   * {@link EvaluationException} where the function was mapped over a range.
   *
   * @throws EvaluationException when the whole call is refused
   */
  public Object call(Object... raw) {
    if (raw.length > parameters.size() && !takesRest()) {
      throw new EvaluationException(
          BaseErrorCode.TOO_MANY_ARGUMENTS, name, parameters.size(), raw.length);
    }
    boolean mapped = false;
    for (int i = 0; i < raw.length; i++) {
      if (raw[i] instanceof Object[][] range) {
        requireRectangle(i, range);
        mapped |= shapeAt(i) == Parameter.Shape.SINGLE;
      }
    }
    return mapped ? RangeBroadcast.over(this, raw) : callOnce(raw);
  }

  private void requireRectangle(int index, Object[][] range) {
    int width = range.length == 0 ? 0 : range[0].length;
    boolean rectangle = width > 0;
    for (Object[] row : range) {
      rectangle &= row.length == width;
    }
    if (!rectangle) {
      String word = index < parameters.size() ? parameters.get(index).name() : "an argument";
      throw new EvaluationException(BaseErrorCode.NOT_A_RECTANGLE, word);
    }
  }

  /** One call, no argument of which is mapped. */
  private Object callOnce(Object[] raw) {
    return apply(read(raw));
  }

  /** The answer to arguments that have been read. */
  Object apply(Object[] values) {
    Object result = body.apply(new Arguments(this, values));
    if (result instanceof Object[][] table && table.length == 0) {
      throw new EvaluationException(BaseErrorCode.NOTHING_TO_LIST, name);
    }
    if (!isFinite(result)) {
      throw new EvaluationException(BaseErrorCode.RESULT_NOT_FINITE);
    }
    return result;
  }

  private static boolean isFinite(Object result) {
    if (result instanceof Object[] cells) {
      for (Object cell : cells) {
        if (!isFinite(cell)) {
          return false;
        }
      }
    }
    return !(result instanceof Double d) || Double.isFinite(d);
  }

  private Object[] read(Object[] raw) {
    Object[] values = new Object[parameters.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = read(raw, i);
    }
    return values;
  }

  /** Reads what was passed for the parameter at this place, or for all that follow it. */
  Object read(Object[] raw, int index) {
    Parameter<?> parameter = parameters.get(index);
    if (parameter.shape() == Parameter.Shape.REST) {
      Object[] rest =
          raw.length <= index ? new Object[0] : Arrays.copyOfRange(raw, index, raw.length);
      return parameter.read(new Object[][] {rest});
    }
    return parameter.read(index < raw.length ? raw[index] : null);
  }

  /**
   * How a result was calculated: the inputs (a range by its size), the steps, and the answer as the
   * last row; of an array each row is one step whose value is its first number.
   */
  public List<CalculationStep> working(Object... raw) {
    Object[] values = read(raw);
    List<CalculationStep> all = new ArrayList<>();
    for (int i = 0; i < parameters.size(); i++) {
      boolean given = i < raw.length && raw[i] != null;
      all.add(parameters.get(i).step(given ? raw[i] : null));
    }
    all.addAll(steps.apply(new Arguments(this, values)));
    Object result = apply(values);
    if (result instanceof Object[][] table) {
      for (int r = 0; r < table.length; r++) {
        all.add(
            new CalculationStep("row " + (r + 1), rowText(table[r]), table[r][0], unit, source));
      }
    } else {
      all.add(new CalculationStep(name, resultWords, result, unit, source));
    }
    return List.copyOf(all);
  }

  private String rowText(Object[] row) {
    List<String> cells = new ArrayList<>();
    for (int c = 0; c < row.length; c++) {
      String cell = row[c] instanceof Double d ? Numbers.format(d) : String.valueOf(row[c]);
      cells.add((c < columns.size() ? columns.get(c) + " " : "") + cell);
    }
    return String.join(", ", cells);
  }

  int mostCells() {
    return mostCells;
  }

  int indexOf(Parameter<?> parameter) {
    for (int i = 0; i < parameters.size(); i++) {
      if (parameters.get(i).is(parameter)) {
        return i;
      }
    }
    throw new IllegalStateException(name + " does not take " + parameter.name());
  }

  public Parameter.Shape shapeAt(int index) {
    return index < parameters.size() ? parameters.get(index).shape() : Parameter.Shape.REST;
  }

  /** Whether the last parameter takes all that follows. */
  public boolean takesRest() {
    return !parameters.isEmpty()
        && parameters.get(parameters.size() - 1).shape() == Parameter.Shape.REST;
  }

  /** Whether an argument is a date, so that the document's calendar matters. */
  public boolean takesDate() {
    return takesRest() || plan != null || parameters.stream().anyMatch(Parameter::isDate);
  }

  /** The name as users type it: {@code CABLE.DROP}. */
  public String name() {
    return name;
  }

  /** The name in files: the name without its dot in lower camel case, {@code cableDrop}. */
  public String methodName() {
    String[] words = name.toLowerCase(Locale.ROOT).split("\\.");
    return words[0] + words[1].substring(0, 1).toUpperCase(Locale.ROOT) + words[1].substring(1);
  }

  public FunctionGroup group() {
    return group;
  }

  public String sentence() {
    return sentence;
  }

  public List<Parameter<?>> parameters() {
    return parameters;
  }

  public Kind kind() {
    return kind;
  }

  public Unit unit() {
    return unit;
  }

  public String resultWords() {
    return resultWords;
  }

  public List<String> columns() {
    return columns;
  }

  /** The plan that it carries into a sheet; empty for other functions. */
  public Optional<PlanModel> plan() {
    return Optional.ofNullable(plan);
  }

  public String formula() {
    return formula;
  }

  public String source() {
    return source;
  }

  public String caution() {
    return caution;
  }

  public List<ErrorCode> errorCodes() {
    return reasons;
  }

  public List<Example> examples() {
    return examples;
  }
}
