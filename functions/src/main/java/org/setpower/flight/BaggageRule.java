package org.setpower.flight;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.setpower.base.EvaluationException;
import org.setpower.base.ReferenceTable;
import org.setpower.base.TextEnum;

/**
 * One dated rule for packs that travel with their owner. Wh are those printed on one pack as it
 * stands; the upper end of a band belongs to it (100 Wh is "up to 100 Wh"); 0 means that none are
 * printed.
 *
 * @param from first day on which it holds
 * @param count how many a person may take; empty where the rule names no number
 * @param says the rule in one sentence
 */
public record BaggageRule(
    RuleBook rules,
    LocalDate from,
    CarriageMode carried,
    FlightChemistry chemistry,
    double over,
    double upTo,
    FlightClass verdict,
    OptionalInt count,
    String says,
    String authority,
    String edition,
    String source,
    String basis) {

  /** The rules, read once, at the first question. */
  private static final class Held {
    static final List<BaggageRule> ALL =
        ReferenceTable.read(BaggageRule.class, "baggage.csv").stream()
            .map(BaggageRule::of)
            .toList();
  }

  private static final TextEnum.Lookup<RuleBook> BOOKS = new TextEnum.Lookup<>(RuleBook.class);
  private static final TextEnum.Lookup<CarriageMode> CARRIED =
      new TextEnum.Lookup<>(CarriageMode.class);
  private static final TextEnum.Lookup<FlightChemistry> CELLS =
      new TextEnum.Lookup<>(FlightChemistry.class);
  private static final TextEnum.Lookup<FlightClass> CLASSES =
      new TextEnum.Lookup<>(FlightClass.class);

  private static BaggageRule of(ReferenceTable.Row row) {
    return new BaggageRule(
        BOOKS.read("rules", row.text("rules")),
        LocalDate.parse(row.text("valid_from")),
        CARRIED.read("carried", row.text("carried")),
        CELLS.read("chemistry", row.text("chemistry")),
        row.blank("over") ? -1 : row.number("over"),
        row.blank("up_to") ? Double.MAX_VALUE : row.number("up_to"),
        CLASSES.read("class", row.text("class")),
        row.blank("count") ? OptionalInt.empty() : OptionalInt.of((int) row.number("count")),
        row.text("says"),
        row.text("authority"),
        row.text("edition"),
        row.source(),
        row.basis());
  }

  /** Every rule held, in the order of the table. */
  public static List<BaggageRule> all() {
    return Held.ALL;
  }

  /**
   * The rule for a pack on a day.
   *
   * @param wattHours Wh printed on the pack, 0 if none are
   * @param onDate the day of the flight; {@code null} for the newest rules held
   * @throws EvaluationException when the day lies before the oldest rules held, or after their
   *     edition
   */
  public static BaggageRule of(
      double wattHours,
      CarriageMode carried,
      FlightChemistry chemistry,
      RuleBook rules,
      LocalDate onDate) {
    Edition.of(rules).requireValidOn(onDate);
    BaggageRule newest = null;
    BaggageRule oldest = null;
    for (BaggageRule rule : Held.ALL) {
      if (rule.isFor(wattHours, carried, chemistry.ruledAs(), rules)) {
        if (oldest == null || rule.from.isBefore(oldest.from)) {
          oldest = rule;
        }
        boolean inForce = onDate == null || !rule.from.isAfter(onDate);
        if (inForce && (newest == null || rule.from.isAfter(newest.from))) {
          newest = rule;
        }
      }
    }
    if (newest == null) {
      if (oldest == null) {
        throw new IllegalStateException("baggage.csv has a gap at " + wattHours + " Wh");
      }
      throw new EvaluationException(
          FlightErrorCode.BEFORE_OLDEST,
          rules.word() + ", " + carried.word(),
          oldest.from,
          String.valueOf(onDate));
    }
    return newest;
  }

  private boolean isFor(double wattHours, CarriageMode how, FlightChemistry cells, RuleBook book) {
    return rules == book
        && carried == how
        && chemistry == cells
        && wattHours > over
        && wattHours <= upTo;
  }

  /**
   * How many a person may take: of all spares together where the rule counts them together, none
   * where they are cargo only or not carried by air at all.
   *
   * @throws EvaluationException where the rule names no number
   */
  public int limit() {
    if (verdict == FlightClass.ASK) {
      throw new EvaluationException(FlightErrorCode.ASK_FIRST, says + ".");
    }
    if (count.isEmpty()) {
      throw new EvaluationException(
          FlightErrorCode.NO_COUNT, rules.word() + " rules", carried.word(), says);
    }
    return count.getAsInt();
  }

  /** The rule in words: the sentence, where it stands, from when to when, and how sure that is. */
  public String sentence() {
    StringBuilder text = new StringBuilder(says).append(". ").append(authority);
    text.append(", ").append(edition).append("; in force since ").append(from);
    text.append(", held here until ").append(Edition.of(rules).validTo());
    if (basis.equals("memory")) {
      text.append("; not confirmed in print, ask before travel");
    }
    return text.append('.').toString();
  }
}
