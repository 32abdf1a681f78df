package org.setpower.flight;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.setpower.base.EvaluationException;

/** How many people it takes to carry spare packs. */
public final class PassengerCount {
  private static final double SMALL = 100;

  private PassengerCount() {}

  /**
   * Some packs of one kind.
   *
   * @param row where they stand in the list, for refusals
   * @param wattHours Wh printed on one
   * @param quantity how many
   */
  public record Packs(int row, double wattHours, long quantity) {}

  /**
   * The fewest people who can carry all of the lithium-ion packs as spares: the larger of ⌈packs
   * over 100 Wh / their limit a person⌉ and ⌈all packs / limit of all spares a person⌉. Both are
   * needed, and both are enough: the larger packs are dealt out first, the rest fills up.
   *
   * @param onDate day of the flight; {@code null} for the newest rules held
   * @throws EvaluationException when a pack cannot travel as a spare in the cabin
   */
  public static long fewest(List<Packs> packs, RuleBook rules, LocalDate onDate) {
    long all = 0;
    long large = 0;
    for (Packs p : packs) {
      if (p.quantity == 0) {
        continue;
      }
      BaggageRule rule = spare(p.wattHours, rules, onDate);
      if (!rule.verdict().isCarriedOn()) {
        throw new EvaluationException(
            FlightErrorCode.NOT_IN_CABIN, p.row, p.wattHours, rule.verdict().word());
      }
      all += p.quantity;
      if (p.wattHours > SMALL) {
        large += p.quantity;
      }
    }
    long people = Math.min(all, 1);
    people = Math.max(people, shared(all, spare(SMALL, rules, onDate).count()));
    return Math.max(people, shared(large, spare(Math.nextUp(SMALL), rules, onDate).count()));
  }

  private static BaggageRule spare(double wattHours, RuleBook rules, LocalDate onDate) {
    return BaggageRule.of(
        wattHours, CarriageMode.SPARE, FlightChemistry.LITHIUM_ION, rules, onDate);
  }

  /** ⌈packs / limit⌉, 0 where there is no limit. */
  private static long shared(long packs, OptionalInt limit) {
    return limit.isEmpty() ? 0 : -Math.floorDiv(-packs, limit.getAsInt());
  }
}
