package org.setpower.plan.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;

/**
 * Decides what may appear as fit on a paper, in a count, in a proposal. Papers, counts and
 * proposals take their rows from here and judge nothing themselves.
 *
 * <p>It fails closed: a row without a name, with a name that another row has, or with a cell that
 * cannot be read is a {@code stop}, and so is every row while a rule of the plan is out of date or
 * unreadable. A decision by hand lifts a stop, never one that says that somebody can get hurt.
 */
public final class Gate<T> {
  private final Map<Integer, Judged<T>> judged = new LinkedHashMap<>();

  /**
   * A row that asks to pass.
   *
   * @param row its number in the table
   * @param identity its name as {@link Identity} compares it
   * @param name as it is typed, for sentences
   * @param findings what is wrong with it, in any order
   * @param accepted whether somebody decided by hand to accept its stops
   */
  public record Candidate<T>(
      int row, T item, String identity, String name, List<Finding> findings, boolean accepted) {
    /** A row whose name is shown as it is compared, such as a serial number. */
    public Candidate(int row, T item, String identity, List<Finding> findings, boolean accepted) {
      this(row, item, identity, identity, findings, accepted);
    }
  }

  /**
   * A row with its verdict.
   *
   * @param findings worst first
   * @param fit whether it may appear as fit
   */
  public record Judged<T>(int row, T item, Verdict verdict, List<Finding> findings, boolean fit) {}

  /**
   * Rows of a paper.
   *
   * @param fit rows that may be printed as fit
   * @param withheld rows that belong on the paper and may not be printed as fit; the paper gives
   *     their number and where to look
   */
  public record Paper<T>(List<Judged<T>> fit, List<Judged<T>> withheld) {}

  /**
   * Judges rows.
   *
   * @param rules findings that hold for every row: a rule out of date, a setting that cannot be
   *     read
   */
  public Gate(List<Candidate<T>> candidates, List<Finding> rules) {
    Map<String, Integer> names = new LinkedHashMap<>();
    candidates.forEach(c -> names.merge(c.identity(), 1, Integer::sum));
    Map<String, String> shown = new HashMap<>();
    BinaryOperator<String> first = BinaryOperator.minBy(Comparator.naturalOrder());
    candidates.stream()
        .filter(c -> !c.identity().isEmpty())
        .forEach(c -> shown.merge(c.identity(), c.name(), first));
    for (Candidate<T> candidate : candidates) {
      List<Finding> findings = new ArrayList<>(candidate.findings());
      findings.addAll(rules);
      int same = names.get(candidate.identity());
      if (candidate.identity().isEmpty()) {
        findings.add(Finding.of(CommonFinding.NO_IDENTITY));
      } else if (same > 1) {
        findings.add(
            Finding.of(CommonFinding.DOUBLE_IDENTITY, shown.get(candidate.identity()), same));
      }
      judged.put(candidate.row(), judge(candidate, findings));
    }
  }

  private static <T> Judged<T> judge(Candidate<T> candidate, List<Finding> findings) {
    if (findings.isEmpty()) {
      return new Judged<>(candidate.row(), candidate.item(), Verdict.OK, List.of(), true);
    }
    List<Finding> sorted = findings.stream().distinct().sorted(Finding.WORST_FIRST).toList();
    Severity worst =
        sorted.stream().map(Finding::severity).max(Comparator.naturalOrder()).orElse(null);
    boolean lifted = worst == Severity.STOP && candidate.accepted();
    Verdict verdict = worst == null ? Verdict.OK : lifted ? Verdict.CHECK : worst.verdict();
    boolean fit = worst == null || worst == Severity.CHECK || lifted;
    return new Judged<>(candidate.row(), candidate.item(), verdict, sorted, fit);
  }

  /** Every row, in the order it came. */
  public List<Judged<T>> all() {
    return List.copyOf(judged.values());
  }

  /** The judgement of a row. */
  public Judged<T> row(int number) {
    return judged.get(number);
  }

  /** The rows of a paper, of a count or of a proposal. */
  public Paper<T> paper(Predicate<T> belongs) {
    List<Judged<T>> rows = judged.values().stream().filter(j -> belongs.test(j.item())).toList();
    return new Paper<>(
        rows.stream().filter(Judged::fit).toList(), rows.stream().filter(j -> !j.fit()).toList());
  }
}
