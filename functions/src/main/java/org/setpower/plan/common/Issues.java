package org.setpower.plan.common;

import java.math.BigInteger;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;

/**
 * Collects what is wrong: one issue a table and sentence, however many rows have it. No row stands
 * under the figure, condition or date of another.
 */
public final class Issues {
  private static final int NAMED = 8;

  /** Letters of names that a cell of three lines has room for, with the count. */
  private static final int LETTERS = 64;

  /** Behind the names of rows, where there are more. */
  static final String MORE = "and {0} more";

  /** Digits, or what lies between digits. */
  private static final Pattern PIECES = Pattern.compile("[0-9]+|[^0-9]+");

  /** A row that is named by its date, so that it is sorted. */
  private static final Pattern DATE = Pattern.compile("\\b[0-9]{4}-[0-9]{2}-[0-9]{2}\\b");

  private final Map<String, Issue> byCause = new LinkedHashMap<>();

  /**
   * One issue.
   *
   * @param table heading of the table
   * @param findings one of each row that has the cause
   * @param names names of these rows, sorted when asked for
   */
  public record Issue(String table, List<Finding> findings, List<String> names) {
    public Severity severity() {
      return findings.get(0).severity();
    }

    /** The finding that stands for all: the first by its arguments, whatever the order of rows. */
    public Finding first() {
      return findings.stream().min(Finding.WORST_FIRST).orElseThrow();
    }

    /** Table and rows, the first ones by name, as many as a cell has room for. */
    public Place where() {
      List<String> each = names.stream().distinct().sorted(Issues::inOrder).toList();
      int named = 0;
      int letters = 0;
      while (named < Math.min(NAMED, each.size())
          && (named == 0 || letters + each.get(named).length() <= LETTERS)) {
        letters += each.get(named).length() + 2;
        named++;
      }
      String first = each.stream().limit(named).collect(Collectors.joining(", "));
      return new Place(table, first, each.size() - named);
    }
  }

  /**
   * Where an issue is.
   *
   * @param table heading of the table, which is translated
   * @param rows names of its first rows
   * @param more how many rows are not named
   */
  public record Place(String table, String rows, int more) {
    String in(Messages messages, Locale locale) {
      String named =
          DATE.matcher(rows)
              .replaceAll(m -> Matcher.quoteReplacement(date(m.group(), messages, locale)));
      String others = more > 0 ? ", " + messages.text(MORE).replace("{0}", "" + more) : "";
      return messages.text(table) + ": " + named + others;
    }

    private static String date(String name, Messages messages, Locale locale) {
      try {
        return messages.phrase(Phrase.of("{0}", LocalDate.parse(name)), locale);
      } catch (DateTimeParseException e) {
        return name; // a name that only looks like one
      }
    }

    @Override
    public String toString() {
      return table + ": " + rows + (more > 0 ? ", … (+" + more + ")" : "");
    }
  }

  /** Names as people sort them: B2 before B10. */
  private static int inOrder(String one, String other) {
    Matcher a = PIECES.matcher(one);
    Matcher b = PIECES.matcher(other);
    while (a.find() && b.find()) {
      boolean numbers = isNumber(a.group()) && isNumber(b.group());
      int order =
          numbers
              ? new BigInteger(a.group()).compareTo(new BigInteger(b.group()))
              : a.group().compareTo(b.group());
      if (order != 0) {
        return order;
      }
    }
    return one.compareTo(other);
  }

  private static boolean isNumber(String piece) {
    return piece.charAt(0) >= '0' && piece.charAt(0) <= '9';
  }

  /** Adds the findings of a row. */
  public void add(String table, String name, List<Finding> findings) {
    for (Finding finding : findings) {
      Issue issue =
          byCause.computeIfAbsent(
              table + "|" + cause(finding),
              k -> new Issue(table, new ArrayList<>(), new ArrayList<>()));
      issue.findings().add(finding);
      issue.names().add(name);
    }
  }

  /**
   * Adds what is wrong with the rows of tables to fill. What an upright table stops is an issue
   * there, and not one of every row that stops with it.
   *
   * @param findings those of a row, by the key of its table
   * @param numbered keys of tables whose rows are named by number, not by their first cell
   */
  public void addRows(
      List<InputRows<?>> tables,
      BiFunction<String, InputRow<?>, List<Finding>> findings,
      Set<String> numbered) {
    List<Finding> rules = new ArrayList<>();
    for (InputRows<?> table : tables) {
      String key = table.table().key();
      boolean upright = table.table().isUpright();
      for (InputRow<?> row : table.rows()) {
        if (upright || !row.isBlank()) {
          List<Finding> own = findings.apply(key, row);
          if (upright) {
            own.stream().filter(f -> f.severity().verdict() == Verdict.STOP).forEach(rules::add);
          }
          Object first = row.cells().get(table.table().columns().get(0).key());
          boolean named = !upright && !numbered.contains(key) && first instanceof String;
          add(
              table.table().heading(),
              named ? (String) first : "#" + row.number(),
              upright ? own : own.stream().filter(f -> !rules.contains(f)).toList());
        }
      }
    }
  }

  private static String cause(Finding finding) {
    return finding.key().key() + "|" + finding.arguments();
  }

  /**
   * All issues as rows of the table; the last row says how many more there are.
   *
   * @param room rows of the table
   */
  public List<IssueRow> rows(int room) {
    List<Issue> all = worstFirst();
    List<IssueRow> rows = new ArrayList<>();
    for (Issue issue : all.size() > room ? all.subList(0, room - 1) : all) {
      rows.add(
          new IssueRow(
              issue.severity().verdict(),
              issue.where(),
              issue.findings().size(),
              List.of(issue.first())));
    }
    if (all.size() > room) {
      List<Issue> others = all.subList(room - 1, all.size());
      Verdict worst = others.get(0).severity().verdict();
      rows.add(
          new IssueRow(
              worst,
              new Place(others.get(0).table(), "…", 0),
              others.stream().mapToInt(i -> i.findings().size()).sum(),
              List.of(
                  Finding.of(
                      worst == Verdict.STOP ? CommonFinding.MORE_STOPS : CommonFinding.MORE_CHECKS,
                      others.size()))));
    }
    return List.copyOf(rows);
  }

  /** All issues, the worst first, entries before their results, then those of most rows. */
  public List<Issue> worstFirst() {
    return byCause.values().stream()
        .sorted(
            Comparator.comparing(Issue::severity)
                .reversed()
                .thenComparing(i -> i.findings().get(0).key().isResult())
                .thenComparing(i -> -i.findings().size())
                .thenComparing(Issue::table)
                .thenComparing(i -> cause(i.findings().get(0))))
        .toList();
  }
}
