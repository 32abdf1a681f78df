package org.setpower.plan.common;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;

/** Collects what is wrong: one issue a cause and table, however many rows have it. */
public final class Issues {
  private static final int NAMED = 8;

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

    /** Table and rows, the first eight by name. */
    public Place where() {
      String first = names.stream().sorted().limit(NAMED).collect(Collectors.joining(", "));
      return new Place(table, first + (names.size() > NAMED ? ", …" : ""));
    }
  }

  /**
   * Where an issue is.
   *
   * @param table heading of the table, which is translated
   * @param rows names of its rows
   */
  public record Place(String table, String rows) {
    String in(Messages messages) {
      return messages.text(table) + ": " + rows;
    }

    @Override
    public String toString() {
      return table + ": " + rows;
    }
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

  /** One key, and one column where the key is about columns. */
  private static String cause(Finding finding) {
    return !finding.arguments().isEmpty() && finding.arguments().get(0) instanceof InputColumn c
        ? finding.key().key() + "|" + c.path()
        : finding.key().key();
  }

  /** All issues, the worst first, then those of most rows. */
  public List<Issue> worstFirst() {
    return byCause.values().stream()
        .sorted(
            Comparator.comparing(Issue::severity)
                .thenComparing(i -> i.findings().size())
                .reversed()
                .thenComparing(Issue::table)
                .thenComparing(i -> cause(i.findings().get(0))))
        .toList();
  }
}
