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
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.setpower.base.TextEnum;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.ResultWord;
import org.setpower.plan.finding.Verdict;

/** A calculated plan: its tables of results, and the way back from each figure. */
public final class PlanResult {
  private final List<InputRows<?>> inputs;
  private final List<Finding> faults;
  private final Map<String, ResultRows<?>> tables = new LinkedHashMap<>();
  private final Relations relations;
  private final Map<String, ResultTable<?>> byKey = new HashMap<>();
  private final Map<Class<?>, Supplier<?>> parts = new HashMap<>();

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
    this.relations = relations;
    declared.forEach(t -> byKey.put(t.key(), t));
    faults = new ArrayList<>(inputs.stream().flatMap(i -> i.fault().stream()).toList());
    if (faults.isEmpty()) {
      filled.get().forEach(f -> tables.put(f.table().key(), f));
    }
  }

  /** Adds what is no table, such as a drawing; it is made when somebody asks for it. */
  public <P> PlanResult with(Class<P> type, Supplier<P> part) {
    parts.put(type, part);
    return this;
  }

  /** What {@link #with} added; empty where the plan has none of this type, or after a fault. */
  public <P> Optional<P> part(Class<P> type) {
    Supplier<?> part = faults.isEmpty() ? parts.get(type) : null;
    return Optional.ofNullable(part).map(p -> type.cast(p.get()));
  }

  /** Why every row stops; empty when the ranges can be trusted. */
  public List<Finding> faults() {
    return List.copyOf(faults);
  }

  /** Whether a table has such a row, from 1, and it is not blank. */
  public boolean has(String table, int row) {
    ResultRows<?> filled = tables.get(table);
    return filled != null && row >= 1 && row <= last(filled) && filled.rows().get(row - 1) != null;
  }

  /** The rows of a table; empty after a fault. */
  public <R extends Record> List<R> rows(ResultTable<R> table) {
    ResultRows<?> filled = tables.get(table.key());
    @SuppressWarnings("unchecked") // a plan fills each table with the rows of its own record
    List<R> rows = filled == null ? List.of() : (List<R>) filled.rows();
    return rows;
  }

  /** The rows of a table by column key, without blank cells; an empty one for a blank row. */
  public List<Map<String, Object>> cells(String table) {
    ResultRows<?> filled = tables.get(table);
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Object row : filled == null ? List.of() : filled.rows()) {
      Map<String, Object> cells = new LinkedHashMap<>();
      for (int c = 0; row != null && c < filled.table().columns().size(); c++) {
        Object value = filled.table().value((Record) row, c);
        if (value != null) {
          cells.put(filled.table().columns().get(c).key(), value);
        }
      }
      rows.add(cells);
    }
    return rows;
  }

  /** A plan that could not be calculated: every row stops. */
  static PlanResult failed(PlanModel model, Throwable cause) {
    PlanResult failed =
        new PlanResult(List.of(), model.results(), List::of, (table, row, source) -> new int[0]);
    failed.faults.add(Finding.of(CommonFinding.NOT_CALCULATED, cause.getClass().getSimpleName()));
    return failed;
  }

  /**
   * The block of the sheet, every cell text or number: first {@code ok} or {@code stop} for the
   * block as a whole with its reasons, then the bands. A fault, a wrong key or a table longer than
   * its band makes every row a stop.
   */
  public Object[][] matrix(Answer answer, Messages messages, Locale locale) {
    return matrix(answer, List.of(), messages, locale);
  }

  /** The same with further reasons to stop every row. */
  Object[][] matrix(Answer answer, List<Finding> more, Messages messages, Locale locale) {
    List<Finding> stops = new ArrayList<>(more);
    stops.addAll(faults);
    stops.addAll(refused(answer));
    Object[][] matrix = new Object[1 + answer.rows()][answer.width()];
    for (Object[] row : matrix) {
      Arrays.fill(row, "");
    }
    String sentences = messages.sentences(stops, locale);
    matrix[0][0] = stops.isEmpty() ? Verdict.OK.code() : Verdict.STOP.code();
    if (answer.width() > 1) {
      matrix[0][1] = sentences;
    }
    for (Answer.Band band : answer.bands()) {
      int first = 1 + band.top();
      for (int c = 0; c < band.keys().size(); c++) {
        String key = band.keys().get(c);
        int column = band.left() + c;
        if (stops.isEmpty()) {
          fill(matrix, first, column, key, messages, locale);
        } else {
          for (int r = first; r < first + band.rows(); r++) {
            matrix[r][column] = stopped(key, sentences);
          }
        }
      }
    }
    return matrix;
  }

  private void fill(
      Object[][] matrix, int first, int column, String key, Messages messages, Locale locale) {
    ResultRows<?> filled = tables.get(tableOf(key));
    int place = filled.table().place(key);
    NumberForm form = filled.table().columns().get(place).form();
    for (int r = 0; r < last(filled); r++) {
      Object value = shown(filled.table().value(filled.rows().get(r), place), form);
      matrix[first + r][column] =
          filled.table().columns().get(place).translated()
              ? translated(value, messages, locale)
              : cell(value, messages, locale);
    }
  }

  /** Hours as a cell holds them that shows hours and minutes: in days. */
  private static Object shown(Object value, NumberForm form) {
    if (!(value instanceof Double hours)) {
      return value;
    }
    return switch (form) {
      case DURATION -> Math.floor(hours * 60 + 1e-6) / 1440;
      // not minus zero: a cell would show it
      case DURATION_UP -> Math.max(0.0, Math.ceil(hours * 60 - 1e-6)) / 1440;
      default -> value;
    };
  }

  private static Object translated(Object value, Messages messages, Locale locale) {
    Object cell = cell(value, messages, locale);
    return cell instanceof String word ? messages.text(word) : cell;
  }

  /** How many rows there are up to the last that is not blank. */
  private static int last(ResultRows<?> filled) {
    int last = filled.rows().size();
    while (last > 0 && filled.rows().get(last - 1) == null) {
      last--;
    }
    return last;
  }

  private static String tableOf(String path) {
    return path.substring(0, path.indexOf('.'));
  }

  private List<Finding> refused(Answer answer) {
    Set<String> seen = new HashSet<>();
    Set<String> wrong = new TreeSet<>();
    List<Finding> refused = new ArrayList<>();
    for (Answer.Band band : answer.bands()) {
      for (String key : band.keys()) {
        if (!seen.add(key) || column(key) == null) {
          wrong.add(key.isEmpty() ? "(blank)" : TextEnum.shortened(key));
        } else if (faults.isEmpty()) {
          ResultRows<?> filled = tables.get(tableOf(key));
          if (last(filled) > band.rows()) {
            refused.add(
                Finding.of(CommonFinding.OVERFLOW, filled.table(), last(filled), band.rows()));
          }
        }
      }
    }
    if (!wrong.isEmpty()) {
      refused.add(
          0,
          Finding.of(
              CommonFinding.WRONG_ANSWER,
              wrong.stream().limit(5).collect(Collectors.joining(", "))));
    }
    return refused.stream().distinct().toList();
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
    int dot = path.indexOf('.');
    ResultTable<?> table = dot < 0 ? null : byKey.get(path.substring(0, dot));
    Integer place = table == null ? null : table.place(path);
    return place == null ? null : table.columns().get(place);
  }

  /** A cell as its component holds it; null where the table has no such row. */
  private Object value(String path, int row) {
    ResultRows<?> filled = tables.get(tableOf(path));
    return filled == null || row > filled.rows().size()
        ? null
        : filled.table().value(filled.rows().get(row - 1), filled.table().place(path));
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
    if (value instanceof ResultWord word) {
      return messages.text(word.word());
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
    if (value instanceof Issues.Place place) {
      return place.in(messages, locale);
    }
    if (value instanceof Phrase phrase) {
      return messages.phrase(phrase, locale);
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
      int[] rows = related(column.table(), row, table);
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

  /** What is made of the open issues is made of all of them; of other rows the plan decides. */
  private int[] related(String table, int row, String source) {
    ResultRows<?> issues = tables.get(IssueRow.KEY);
    return issues != null && source.equals(IssueRow.KEY) && !table.equals(IssueRow.KEY)
        ? IntStream.rangeClosed(1, last(issues)).toArray()
        : relations.rows(table, row, source);
  }

  private Trace.Step step(ResultColumn column, int... rows) {
    List<Object> values =
        Arrays.stream(rows)
            .mapToObj(r -> value(column.path(), r))
            .map(v -> v == null ? (Object) "" : v)
            .toList();
    return new Trace.Step(
        column.path(),
        byKey.get(column.table()).heading(),
        Arrays.stream(rows).boxed().toList(),
        column.heading(),
        column.unit(),
        values,
        false,
        column.rule());
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
                  column.path(),
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
