package org.setpower.command.trace;

import static org.setpower.command.message.CommandMessages.say;

import com.sun.star.uno.Exception;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.setpower.base.Numbers;
import org.setpower.base.TextEnum;
import org.setpower.command.message.CommandMessages;
import org.setpower.command.plan.PlanFile;
import org.setpower.command.plan.PlanPlaces;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Trace;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.groups.FunctionRegistry;
import org.setpower.text.DateText;

/** Traces the results of a plan, from typed cells over other results to the figure. */
final class PlanTracer {
  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

  /** Values of a step that are named one by one. */
  private static final int NAMED = 12;

  private static final Pattern FUNCTION = Pattern.compile("\\b[A-Z]+\\.[A-Z]+\\b");

  private final PlanFile plan;
  private final PlanResult result;
  private final PlanPlaces places;
  private final Locale locale;

  PlanTracer(PlanFile plan) throws Exception {
    this.plan = plan;
    result = plan.calculated();
    places = new PlanPlaces(plan);
    locale = plan.locale();
  }

  /** Adds how a figure was made. */
  void explain(PlanFile.Figure figure, CalculationTrace explanation) throws Exception {
    String fault = plan.fault();
    if (!fault.isEmpty()) {
      explanation.add("Error", fault);
      return;
    }
    if (!result.has(figure.table(), figure.row())) {
      explanation.add("Error", say("The row is blank."));
      return;
    }
    Messages messages = Messages.in(locale.toLanguageTag());
    List<Trace.Step> steps = result.trace(figure.path(), figure.row()).in(messages).steps();
    List<CalculationTrace.Line> typed = new ArrayList<>();
    List<CalculationTrace.Line> between = new ArrayList<>();
    for (Trace.Step step : steps.subList(0, steps.size() - 1)) {
      (step.typed() ? typed : between).add(line(step));
    }
    explanation.add("Inputs", typed);
    explanation.add("Steps", between);
    explanation.add("Result", List.of(line(steps.get(steps.size() - 1))));
    for (String name : functions(steps)) {
      FunctionRegistry.find(name).ifPresent(f -> explanation.add(name, function(f)));
    }
  }

  private static List<CalculationTrace.Line> function(FunctionSpec f) {
    List<CalculationTrace.Line> lines = new ArrayList<>();
    lines.add(CalculationTrace.Line.of(CommandMessages.functions().sentence(f) + "."));
    if (!f.formula().isEmpty()) {
      lines.add(CalculationTrace.Line.of(f.formula()));
    }
    lines.add(CalculationTrace.Line.of(f.source()));
    return lines;
  }

  /** The leaf functions that the rules of the steps name. */
  private static List<String> functions(List<Trace.Step> steps) {
    return steps.stream()
        .flatMap(s -> FUNCTION.matcher(s.rule()).results())
        .map(MatchResult::group)
        .distinct()
        .toList();
  }

  private CalculationTrace.Line line(Trace.Step step) throws Exception {
    String seen = places.heading(step.path());
    String heading = seen.isEmpty() ? step.heading() : seen;
    boolean one = step.values().size() == 1;
    Object value = one ? value(step, step.values().get(0)) : list(step);
    String unit = one && !(value instanceof Double) ? "" : step.unit();
    return new CalculationTrace.Line(
        heading, "".equals(value) ? say("nothing") : value, unit, step.rule(), where(step));
  }

  private Object list(Trace.Step step) {
    List<Object> values = step.values();
    String first =
        values.stream()
            .limit(NAMED)
            .map(v -> value(step, v))
            .map(v -> v instanceof Double d ? Numbers.format(d) : v.toString())
            .map(v -> v.isEmpty() ? "–" : v)
            .collect(Collectors.joining("; "));
    return values.isEmpty()
        ? say("no row")
        : say("{} rows: {}", values.size(), first + (values.size() > NAMED ? "; …" : ""));
  }

  /** Tab and cells; the rows alone where the column stands on no visible tab. */
  private String where(Trace.Step step) throws Exception {
    List<String> cells = new ArrayList<>();
    for (int row : step.rows().subList(0, Math.min(NAMED, step.rows().size()))) {
      String cell = places.cell(step.path(), row);
      cells.add(cell.isEmpty() ? say("{}, row {}", step.table(), row) : cell);
    }
    String all = String.join(", ", cells.stream().distinct().toList());
    return step.rows().size() > NAMED ? all + ", …" : all;
  }

  private Object value(Trace.Step step, Object value) {
    if (value instanceof List<?> findings) {
      return Messages.in(locale.toLanguageTag())
          .sentences(findings.stream().map(Finding.class::cast).toList(), locale);
    }
    if (value instanceof Verdict verdict) {
      return verdict.code();
    }
    if (value instanceof TextEnum word) {
      return word.word();
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof LocalDate date) {
      return date(date);
    }
    if (value instanceof Number number) {
      boolean isDate = step.typed() && column(step.path()).type() == LocalDate.class;
      double figure = number.doubleValue();
      return isDate ? date(DAY_ZERO.plusDays((long) figure)) : (Object) figure;
    }
    return value.toString();
  }

  private String date(LocalDate date) {
    return DateText.of(date, locale);
  }

  private InputColumn column(String path) {
    return plan.model().inputs().stream()
        .flatMap(t -> t.columns().stream())
        .filter(c -> c.path().equals(path))
        .findFirst()
        .orElseThrow();
  }
}
