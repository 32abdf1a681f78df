package org.setpower.plan.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * What is wrong, without words: a key with the arguments of its sentence.
 *
 * @param key what is wrong
 * @param arguments texts, numbers, dates or input columns, in the order of the sentence; never null
 */
public record Finding(FindingKey key, List<Object> arguments) {
  /** Worst first; then by key, so that the order of rows never shows. */
  public static final Comparator<Finding> WORST_FIRST =
      Comparator.comparing(Finding::severity)
          .reversed()
          .thenComparing(f -> f.key().key())
          .thenComparing(f -> f.arguments().toString());

  public Finding {
    arguments = List.copyOf(arguments);
  }

  public static Finding of(FindingKey key, Object... arguments) {
    return new Finding(key, List.of(arguments));
  }

  public Severity severity() {
    return key.severity();
  }

  /** The worst verdict among findings; {@code ok} when there are none. */
  public static Verdict verdict(Collection<Finding> findings) {
    if (findings.isEmpty()) {
      return Verdict.OK;
    }
    return findings.stream()
        .map(f -> f.severity().verdict())
        .max(Comparator.naturalOrder())
        .orElse(Verdict.OK);
  }
}
