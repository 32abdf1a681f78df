package org.setpower.plan.common;

import static java.util.Comparator.comparingLong;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/**
 * What every plan keeps, tested from its declarations. A plan gets these tests by a subclass that
 * names its model and some plans to begin from.
 */
public abstract class PlanContract {
  private static final long SEED = Long.getLong("plan.seed", 20261129);

  /** Enough to meet each kind of fault hundreds of times; extension/bin/plans makes a million. */
  private static final int TABLES = 4_000;

  /** One table in so many has more rows. */
  private static final int LARGE = 8;

  private static final int STOPPED_ROWS = 5;

  /** So many rows of a long table are retraced. */
  private static final int RETRACED_ROWS = 12;

  /** Attempts to make an input change something. */
  private static final int ATTEMPTS = 12;

  private static final Messages ENGLISH = new EnglishMessages();

  private final List<String> paths = new ArrayList<>();
  private final Map<String, ResultColumn> columns = new HashMap<>();

  /** The plan. */
  protected abstract PlanModel model();

  /** Plans that between them read every column. */
  protected abstract List<Ranges> samples();

  /** Typical cells of a column, so that rows of random tables meet; empty for any. */
  protected abstract List<Object> values(InputColumn column);

  /** Tables whose rows are in no order. */
  protected abstract Set<String> unordered();

  /** How many hostile tables are answered. */
  protected int hostileTables() {
    return TABLES;
  }

  private RandomTables random(long seed) {
    return new RandomTables(model(), this::values, new Random(seed));
  }

  @BeforeEach
  void name_the_columns() {
    model().results().stream().flatMap(t -> t.columns().stream()).forEach(this::name);
  }

  private void name(ResultColumn column) {
    paths.add(column.path());
    columns.put(column.path(), column);
  }

  private Object[][] matrix(List<?> ranges) {
    return matrix(model().calculate(ranges));
  }

  /** A block that has room for the longest table. */
  private Object[][] matrix(PlanResult result) {
    int longest =
        model().results().stream().mapToInt(t -> result.rows(t).size()).max().orElseThrow();
    return result.matrix(
        new Answer(paths, Math.max(STOPPED_ROWS, longest)), ENGLISH, Locale.ENGLISH);
  }

  private static Object cell(Object[][] matrix, int row, int column) {
    return row < matrix.length ? matrix[row][column] : "";
  }

  @Test
  void every_column_is_declared_once() {
    List<String> all = new ArrayList<>(paths);
    model().inputs().stream()
        .flatMap(t -> t.columns().stream())
        .map(InputColumn::path)
        .forEach(all::add);
    assertThat(all).doesNotHaveDuplicates();
  }

  @Test
  void every_source_names_a_column() {
    Set<String> known = new HashSet<>(paths);
    List<InputColumn> inputs =
        model().inputs().stream().flatMap(t -> t.columns().stream()).toList();
    inputs.forEach(c -> known.add(c.path()));
    for (ResultTable<?> table : model().results()) {
      for (ResultColumn column : table.columns()) {
        assertThat(column.from()).as(column.path()).isNotEmpty();
        assertThat(column.rule()).as(column.path()).endsWith(".");
        for (String source : column.from()) {
          boolean named =
              known.contains(source)
                  || source.endsWith("*")
                      && inputs.stream().anyMatch(c -> Sources.matches(source, c));
          assertThat(named).as("%s from %s", column.path(), source).isTrue();
        }
      }
    }
  }

  @Test
  void every_column_to_fill_has_help_or_says_what_a_blank_means() {
    for (InputTable<?> table : model().inputs()) {
      for (InputColumn column : table.columns()) {
        assertThat(column.help() + column.blank()).as(column.path()).isNotEmpty();
        assertThat(column.isRequired() || column.blank().startsWith("Blank: "))
            .as(column.path())
            .isTrue();
      }
    }
  }

  /** For every input column there is a plan in which another valid cell changes a result. */
  @Test
  void no_input_is_dead() {
    Set<String> dead = new TreeSet<>();
    List<Before> before =
        samples().stream().map(this::before).sorted(comparingLong(Before::nanos)).toList();
    for (InputTable<?> table : model().inputs()) {
      for (InputColumn column : table.columns()) {
        if (before.stream().noneMatch(b -> changesSomething(b, table, column))) {
          dead.add(column.path());
        }
      }
    }
    assertThat(dead).isEmpty();
  }

  /** A sample, its results, and how long they took: the quick ones are tried first. */
  private record Before(Ranges sample, Object[][] results, long nanos) {}

  private Before before(Ranges sample) {
    long began = System.nanoTime();
    Object[][] results = matrix(sample.list());
    return new Before(sample, results, System.nanoTime() - began);
  }

  private boolean changesSomething(Before before, InputTable<?> table, InputColumn column) {
    RandomTables random = random(SEED);
    int rows = before.sample.rows(table.key()).size();
    for (int i = 0; i < ATTEMPTS; i++) {
      for (int r = 0; r < rows; r++) {
        Ranges changed = before.sample.copy();
        boolean blank = i == 0 && !column.isRequired();
        changed.rows(table.key()).get(r).put(column.key(), blank ? "" : random.cell(column));
        if (!Arrays.deepEquals(before.results, matrix(changed.list()))) {
          return true;
        }
      }
    }
    return false;
  }

  /** A figure changes only with the columns that its trace leads to. */
  @Test
  void a_trace_leaves_no_source_out() {
    Random seeds = new Random(SEED);
    Set<String> missing = new TreeSet<>();
    int changes = 0;
    for (int i = 0; i < 350; i++) {
      RandomTables random = random(seeds.nextLong());
      Ranges before = i < 100 ? samples().get(i % samples().size()) : random.valid(6);
      InputTable<?> table = model().inputs().get(i % model().inputs().size());
      if (before.rows(table.key()).isEmpty()) {
        continue;
      }
      InputColumn column = table.columns().get(seeds.nextInt(table.columns().size()));
      int row = seeds.nextInt(before.rows(table.key()).size());
      Ranges after = before.copy();
      after.rows(table.key()).get(row).put(column.key(), random.cell(column));
      Object[][] one = matrix(before.list());
      Object[][] other = matrix(after.list());
      for (int c = 0; c < paths.size(); c++) {
        int place = c;
        boolean changed =
            IntStream.range(0, Math.max(one.length, other.length))
                .anyMatch(r -> !Objects.equals(cell(one, r, place), cell(other, r, place)));
        if (changed) {
          changes++;
          ResultColumn result = column(paths.get(c));
          if (!Sources.of(model(), result).contains(column.path())) {
            missing.add(result.path() + " from " + column.path());
          }
        }
      }
    }
    assertThat(changes).isGreaterThan(300);
    assertThat(missing).isEmpty();
  }

  private ResultColumn column(String path) {
    return Objects.requireNonNull(columns.get(path), path);
  }

  /** Show calculation works on every figure of every table; of a long table some rows are taken. */
  @Test
  void every_figure_is_retraced() {
    for (Ranges sample : samples()) {
      PlanResult result = sample.calculate();
      for (ResultTable<?> table : model().results()) {
        List<?> rows = result.rows(table);
        int stride = Math.max(1, rows.size() / RETRACED_ROWS);
        for (int r = 1; r <= rows.size(); r += stride) {
          for (ResultColumn column : table.columns()) {
            if (rows.get(r - 1) != null) {
              assertRetraced(result.trace(column.path(), r), column, r);
            }
          }
        }
      }
    }
  }

  private static void assertRetraced(Trace trace, ResultColumn column, int row) {
    Trace.Step last = trace.steps().get(trace.steps().size() - 1);
    assertThat(last.heading()).isEqualTo(column.heading());
    assertThat(last.rows()).containsExactly(row);
    assertThat(last.rule()).isEqualTo(column.rule());
    assertThat(trace.steps()).allMatch(s -> s.rows().size() == s.values().size());
    // a verdict made of other rows' verdicts names them
    assertThat(isMadeOfNothing(trace)).as("%s of row %s", column.path(), row).isFalse();
    assertThat(
            trace.steps().stream().filter(Trace.Step::typed).count()
                + trace.steps().stream().filter(s -> s.rows().size() != 1).count())
        .as(column.path())
        .isPositive();
  }

  private static boolean isMadeOfNothing(Trace trace) {
    return trace.steps().get(trace.steps().size() - 1).values().contains(Verdict.STOP)
        && trace.steps().stream().limit(trace.steps().size() - 1).allMatch(s -> s.rows().isEmpty());
  }

  /** The worst finding of a row is its verdict, and a row that is not ok says why. */
  @Test
  void a_verdict_has_its_reasons() {
    int stops = 0;
    for (int i = 0; i < 500; i++) {
      PlanResult result = model().calculate(random(i).hostile(8));
      for (ResultTable<?> table : model().results()) {
        stops += assertReasons(table, result.rows(table));
      }
    }
    assertThat(stops).isGreaterThan(100);
  }

  private static int assertReasons(ResultTable<?> table, List<? extends Record> rows) {
    List<ResultColumn> columns = table.columns();
    int verdict = place(columns, Verdict.class);
    int reasons = place(columns, List.class);
    int stops = 0;
    for (Record row : rows) {
      if (row != null && verdict >= 0 && reasons >= 0) {
        List<Finding> findings = new ArrayList<>();
        ((List<?>) table.value(row, reasons)).forEach(f -> findings.add((Finding) f));
        assertThat(table.value(row, verdict)).isEqualTo(Finding.verdict(findings));
        assertThat(findings).isSortedAccordingTo(Finding.WORST_FIRST);
        stops += table.value(row, verdict) == Verdict.STOP ? 1 : 0;
      }
    }
    return stops;
  }

  private static int place(List<ResultColumn> columns, Class<?> type) {
    return IntStream.range(0, columns.size())
        .filter(i -> columns.get(i).type() == type)
        .findFirst()
        .orElse(-1);
  }

  /** Rows of unordered tables in another order give the same rows in that order. */
  @Test
  void the_order_of_rows_changes_nothing() {
    for (int i = 0; i < 200; i++) {
      Random random = new Random(i);
      Ranges ranges = random(i).valid(10);
      Ranges shuffled = ranges.copy();
      for (String table : unordered()) {
        Collections.shuffle(shuffled.rows(table), random);
      }
      assertThat(sorted(matrix(shuffled.list())))
          .as(ranges.toString())
          .isEqualTo(sorted(matrix(ranges.list())));
    }
  }

  /** The rows of each table as text, sorted, without what is named by the number of its row. */
  private Map<String, List<String>> sorted(Object[][] matrix) {
    return model().results().stream()
        .collect(
            Collectors.toMap(
                ResultTable::key,
                t -> {
                  String prefix = t.key() + ".";
                  int[] columns =
                      IntStream.range(0, paths.size())
                          .filter(c -> paths.get(c).startsWith(prefix))
                          .toArray();
                  return Arrays.stream(matrix)
                      .map(
                          r ->
                              Arrays.stream(columns)
                                  .mapToObj(c -> r[c].toString())
                                  .collect(Collectors.joining("|"))
                                  .replaceAll("Row [\\d,]+|#\\d+|\\bS\\d+\\b", "#"))
                      .sorted()
                      .toList();
                }));
  }

  @Test
  void hostile_tables_are_answered() {
    fuzz(SEED, Integer.getInteger("plan.tables", hostileTables()));
  }

  /** Random hostile tables: no exception, always a block of the right shape. */
  private void fuzz(long seed, int plans) {
    int stopped = 0;
    int calculated = 0;
    for (int i = 0; i < plans; i++) {
      List<Object> ranges = random(seed + i).hostile((seed + i) % LARGE == 0 ? 12 : 3);
      long start = System.nanoTime();
      PlanResult result;
      Object[][] matrix;
      try {
        result = model().calculate(ranges);
        matrix = matrix(result);
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + (seed + i) + ": " + deep(ranges), e);
      }
      assertThat(System.nanoTime() - start).as("seed %s", seed + i).isLessThan(20_000_000_000L);
      assertThat(matrix.length).as("seed %s", seed + i).isGreaterThan(STOPPED_ROWS);
      for (Object[] row : matrix) {
        for (Object cell : row) {
          if (!(cell instanceof String || cell instanceof Double d && Double.isFinite(d))) {
            throw new AssertionError("seed " + (seed + i) + ": cell " + cell);
          }
        }
        if (row.length != paths.size()) {
          throw new AssertionError("seed " + (seed + i) + ": " + row.length + " columns");
        }
      }
      if (result.faults().isEmpty()) {
        calculated++;
      } else {
        stopped++;
        assertEveryRowStops(matrix, seed + i);
      }
    }
    if (plans > 1) { // one is a failure repeated
      assertThat(stopped).isGreaterThan(plans / 100);
      assertThat(calculated).isGreaterThan(plans / 2);
    }
  }

  private static String deep(List<Object> ranges) {
    return Arrays.deepToString(ranges.toArray());
  }

  private void assertEveryRowStops(Object[][] matrix, long seed) {
    for (int c = 0; c < paths.size(); c++) {
      if (column(paths.get(c)).type() == Verdict.class) {
        for (int r = 1; r < matrix.length; r++) {
          if (!matrix[r][c].equals("stop")) {
            throw new AssertionError("seed " + seed + ": row " + r + " of " + paths.get(c));
          }
        }
      }
    }
  }

  @Test
  void every_finding_has_its_sentence() {
    EnglishMessages messages = new EnglishMessages();
    for (FindingKey key : model().findings()) {
      assertThat(messages.keys()).contains(key.key());
    }
    String group = model().name() + ".";
    assertThat(messages.keys().stream().filter(k -> k.startsWith(group)))
        .containsExactlyInAnyOrderElementsOf(
            model().findings().stream().map(FindingKey::key).toList());
  }

  /**
   * All findings that the samples and random plans meet make a sentence without a gap, and every
   * finding is met; plans are made until it is.
   */
  @Test
  void sentences_have_their_figures() {
    List<String> all = model().findings().stream().map(FindingKey::key).toList();
    Set<String> met = new HashSet<>();
    samples().forEach(sample -> assertSentences(sample.calculate(), met));
    for (int i = 0; i < 300 || i < 1500 && !met.containsAll(all); i++) {
      assertSentences(model().calculate(random(i).hostile(10)), met);
    }
    assertThat(met).containsAll(all);
  }

  private void assertSentences(PlanResult result, Set<String> met) {
    for (ResultTable<?> table : model().results()) {
      int reasons = place(table.columns(), List.class);
      if (reasons >= 0) {
        for (Record row : result.rows(table)) {
          if (row != null) {
            for (Object reason : (List<?>) table.value(row, reasons)) {
              Finding finding = (Finding) reason;
              String sentence = ENGLISH.sentence(finding, Locale.ENGLISH);
              assertThat(sentence).endsWith(".");
              assertThat(finding.arguments().toString().contains("{") || !sentence.contains("{"))
                  .as(sentence)
                  .isTrue();
              met.add(finding.key().key());
            }
          }
        }
      }
    }
  }
}
