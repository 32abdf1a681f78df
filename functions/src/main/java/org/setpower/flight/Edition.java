package org.setpower.flight;

import java.time.LocalDate;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;

/**
 * Up to which day a set of rules answers. Rules of the air are replaced every year: after that day
 * an old one could send somebody to the airport with packs that are forbidden by then.
 *
 * @param rules the word of a {@link RuleBook}, or "cargo"
 * @param validTo last day for which the set answers
 * @param name the text that was read, in words
 */
public record Edition(String rules, LocalDate validTo, String name, String source, String basis) {

  private static final class Held {
    static final Map<String, Edition> ALL =
        ReferenceTable.read(Edition.class, "editions.csv").stream()
            .map(Edition::of)
            .collect(Collectors.toUnmodifiableMap(Edition::rules, Function.identity()));
  }

  private static Edition of(ReferenceTable.Row row) {
    return new Edition(
        row.text("rules"),
        LocalDate.parse(row.text("valid_to")),
        row.text("edition"),
        row.source(),
        row.basis());
  }

  /** The edition of the rules for packs that travel with their owner. */
  public static Edition of(RuleBook rules) {
    return held(rules.word());
  }

  /** The edition of the rules for packs as declared cargo. */
  public static Edition ofCargo() {
    return held("cargo");
  }

  private static Edition held(String rules) {
    Edition edition = Held.ALL.get(rules);
    if (edition == null) {
      throw new IllegalStateException("editions.csv has no row " + rules);
    }
    return edition;
  }

  /**
   * Refuses a day after the last one.
   *
   * @param onDate day of the flight; {@code null} for the newest rules held
   */
  void requireValidOn(LocalDate onDate) {
    if (onDate != null && onDate.isAfter(validTo)) {
      throw new EvaluationException(FlightErrorCode.AFTER_EDITION, name, validTo, onDate);
    }
  }
}
