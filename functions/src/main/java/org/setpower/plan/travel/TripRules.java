package org.setpower.plan.travel;

import java.time.LocalDate;
import java.util.List;
import org.setpower.base.TextEnum;
import org.setpower.flight.RuleBook;
import org.setpower.plan.travel.rules.CabinEdition;

/**
 * By whose rules a flight is judged. A flight from or to the United States has the stricter of both
 * at each limit, for carriers and the other end go by ICAO; US alone only counts for flights that
 * stay within.
 */
public enum TripRules implements TextEnum {
  ICAO("ICAO", RuleBook.ICAO),
  US("US", RuleBook.US, RuleBook.ICAO),
  US_DOMESTIC("US domestic", RuleBook.US);

  private final String word;
  private final List<RuleBook> books;

  TripRules(String word, RuleBook... books) {
    this.word = word;
    this.books = List.of(books);
  }

  @Override
  public String word() {
    return word;
  }

  /** The limits by which a day is judged. */
  CabinEdition on(LocalDate day) {
    return books.stream()
        .map(b -> CabinEdition.on(b, day))
        .reduce(CabinEdition::stricter)
        .orElseThrow();
  }

  /** Those of the newest editions that were read. */
  CabinEdition lastRead() {
    return books.stream()
        .map(b -> CabinEdition.on(b, LocalDate.MAX).lastRead())
        .reduce(CabinEdition::stricter)
        .orElseThrow();
  }
}
