package org.setpower.plan.common;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.base.TextEnum;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/** A calculated plan: its tables of results, and the way back from each figure. */
public final class PlanResult {
  private final List<InputRows<?>> inputs;
  private final List<ResultTable<?>> declared;
  private final List<Finding> faults;
  private final Map<String, ResultRows<?>> tables = new LinkedHashMap<>();
  private final Relations relations;
  private final Map<String, ResultColumn> columns = new HashMap<>();

  /**
   * @param inputs what was read
   * @param declared all tables of the plan
   * @param filled called only if every range can be trusted; a fault stops every row
   */
  public PlanResult(
      List<InputRows<?>> inputs,
      List<ResultTable<?>> declared,
      Supplier<List<ResultRows<?>>> filled,
      Relations relations) {
    this.inputs = List.copyOf(inputs);
    this.declared = List.copyOf(declared);
    this.relations = relations;
    declared.forEach(t -> t.columns().forEach(c -> columns.put(c.path(), c)));
    faults = inputs.stream().flatMap(i -> i.fault().stream()).toList();
    if (faults.isEmpty()) {
      filled.get().forEach(f -> tables.put(f.table().key(), f));
    }
  }

  /** Why every row stops; empty when the ranges can be trusted. */
  public List<Finding> faults() {
    return faults;
  }

  /** The rows of a table; empty after a fault. */
  public <R extends Record> List<R> rows(ResultTable<R> table) {
    ResultRows<?> filled = tables.get(table.key());
    @SuppressWarnings("unchecked") // a plan fills each table with the rows of its own record
    List<R> rows = filled == null ? List.of() : (List<R>) filled.rows();
    return rows;
  }

  /**
   * The block of the sheet: a row of result keys, then as many rows as the block has, every cell
   * text or number. A fault, a wrong key or a table longer than the block makes every row a stop.
   */
  public Object[][] matrix(Answer answer, Messages messages, Locale locale) {
    List<Finding> stops = new ArrayList<>(faults);
    stops.addAll(refused(answer));
    Object[][] matrix = new Object[Math.max(0, answer.rows()) + 1][answer.keys().size()];
    for (Object[] row : matrix) {
      Arrays.fill(row, "");
    }
    String sentences = messages.sentences(stops, locale);
    for (int c = 0; c < answer.keys().size(); c++) {
      String key = answer.keys().get(c);
      matrix[0][c] = key;
      if (stops.isEmpty()) {
        ResultRows<?> filled = tables.get(tableOf(key));
        int place = place(filled.table(), key);
        for (int r = 1; r <= filled.rows().size(); r++) {
          Object value = filled.table().value(filled.rows().get(r - 1), place);
          matrix[r][c] = cell(value, messages, locale);
        }
      } else {
        for (int r = 1; r < matrix.length; r++) {
          matrix[r][c] = stopped(key, sentences);
        }
      }
    }
    return matrix;
  }

  private static String tableOf(String path) {
    return path.substring(0, path.indexOf('.'));
  }

  private static int place(ResultTable<?> table, String path) {
    List<ResultColumn> columns = table.columns();
    return IntStream.range(0, columns.size())
        .filter(i -> columns.get(i).path().equals(path))
        .findFirst()
        .orElseThrow();
  }

  private List<Finding> refused(Answer answer) {
    Set<String> seen = new HashSet<>();
    List<String> wrong =
        answer.keys().stream()
            .filter(k -> !seen.add(k) || column(k) == null)
            .map(TextEnum::shortened)
            .toList();
    List<Finding> refused = new ArrayList<>();
    if (!wrong.isEmpty()) {
      refused.add(Finding.of(CommonFinding.WRONG_ANSWER, String.join(", ", wrong)));
    }
    int longest = tables.values().stream().mapToInt(t -> t.rows().size()).max().orElse(0);
    if (longest > answer.rows()) {
      refused.add(Finding.of(CommonFinding.OVERFLOW, longest, answer.rows()));
    }
    return refused;
  }

  /** What a cell shows when every row stops: verdicts and reasons, no figure. */
  private String stopped(String key, String sentences) {
    ResultColumn column = column(key);
    if (column == null || column.type() == Verdict.class) {
      return Verdict.STOP.code();
    }
    return column.type() == List.class ? sentences : "";
  }

  private ResultColumn column(String path) {
    return columns.get(path);
  }

  /** A cell as its component holds it; null where the table has no such row. */
  private Object value(String path, int row) {
    ResultRows<?> filled = tables.get(tableOf(path));
    return filled == null || row > filled.rows().size()
        ? null
        : filled.table().value(filled.rows().get(row - 1), place(filled.table(), path));
  }

  private static Object cell(Object value, Messages messages, Locale locale) {
    if (value == null) {
      return "";
    }
    if (value instanceof Number n) {
      return Double.isFinite(n.doubleValue()) ? (Object) n.doubleValue() : "";
    }
    if (value instanceof Verdict verdict) {
      return verdict.code();
    }
    if (value instanceof TextEnum word) {
      return word.word();
    }
    if (value instanceof LocalDate date) {
      return InputColumn.serial(date);
    }
    if (value instanceof LocalTime time) {
      return InputColumn.share(time);
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof List<?> list) {
      return messages.sentences(list.stream().map(Finding.class::cast).toList(), locale);
    }
    return value.toString();
  }

  /**
   * How a figure is made: from typed cells over results to the figure itself.
   *
   * @param path {@code table.key} of a result column
   * @param row number of the row, from 1
   */
  public Trace trace(String path, int row) {
    List<Trace.Step> steps = new ArrayList<>();
    collect(path, row, new LinkedHashSet<>(), steps);
    return new Trace(steps);
  }

  private void collect(String path, int row, Set<String> seen, List<Trace.Step> steps) {
    ResultColumn column = column(path);
    for (String source : column.from()) {
      String table = tableOf(source);
      int[] rows = relations.rows(column.table(), row, table);
      if (column(source) == null) {
        typed(source, rows, seen, steps);
      } else if (rows.length == 1) {
        if (seen.add(source + "#" + rows[0])) {
          collect(source, rows[0], seen, steps);
        }
      } else if (seen.add(source + Arrays.toString(rows))) {
        steps.add(step(column(source), rows));
      }
    }
    steps.add(step(column, row));
  }

  private Trace.Step step(ResultColumn column, int... rows) {
    List<Object> values = Arrays.stream(rows).mapToObj(r -> text(value(column.path(), r))).toList();
    return new Trace.Step(
        declared.stream()
            .filter(t -> t.key().equals(column.table()))
            .findFirst()
            .orElseThrow()
            .heading(),
        Arrays.stream(rows).boxed().toList(),
        column.heading(),
        column.unit(),
        values,
        false,
        column.rule());
  }

  private static Object text(Object value) {
    if (value instanceof List<?> list) {
      return list.stream().map(f -> ((Finding) f).key().key()).collect(Collectors.joining(", "));
    }
    return value == null ? "" : value;
  }

  private void typed(String source, int[] rows, Set<String> seen, List<Trace.Step> steps) {
    for (InputRows<?> input : inputs) {
      for (InputColumn column : input.table().columns()) {
        if (Sources.matches(source, column) && seen.add(column.path() + Arrays.toString(rows))) {
          List<Object> values =
              Arrays.stream(rows)
                  .mapToObj(r -> input.rows().get(r - 1).cells().getOrDefault(column.key(), ""))
                  .toList();
          steps.add(
              new Trace.Step(
                  input.table().heading(),
                  Arrays.stream(rows).boxed().toList(),
                  column.heading(),
                  column.unit(),
                  values,
                  true,
                  ""));
        }
      }
    }
  }
}
