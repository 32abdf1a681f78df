package org.setpower.flight;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.setpower.base.EvaluationException;

/** Several flights in a row: the strictest rule and the least generous airline count. */
public final class FlightSequence {
  private FlightSequence() {}

  /**
   * One flight.
   *
   * @param row where it stands in the list, for refusals
   * @param onDate its day; {@code null} for the newest rules held
   * @param rules whose rules hold
   * @param answer how many a person the airline agrees to; 0 if it refuses, empty if it has not
   *     been asked or has not answered
   */
  public record Flight(int row, LocalDate onDate, RuleBook rules, OptionalInt answer) {
    BaggageRule rule(double wattHours, CarriageMode carried, FlightChemistry chemistry) {
      return BaggageRule.of(wattHours, carried, chemistry, rules, onDate);
    }

    /**
     * The rule's class after the airline's answer. It says nothing of a battery without printed Wh:
     * only a refusal counts there.
     */
    FlightClass classOf(BaggageRule rule, double wattHours) {
      FlightClass verdict = rule.verdict();
      if (answer.isEmpty() || verdict.compareTo(FlightClass.ASK) > 0) {
        return verdict;
      }
      if (answer.getAsInt() == 0) {
        return FlightClass.CARGO_ONLY;
      }
      return wattHours > 0 ? verdict.agreed() : verdict;
    }
  }

  /**
   * The class that holds on all of the flights. An airline that must agree and has agreed no longer
   * has to; one that refuses (0) leaves cargo. No answer lifts what the rules forbid.
   */
  public static FlightClass strictest(
      List<Flight> flights, double wattHours, CarriageMode carried, FlightChemistry chemistry) {
    return flights.stream()
        .map(f -> f.classOf(f.rule(wattHours, carried, chemistry), wattHours))
        .reduce(FlightClass::and)
        .orElseThrow();
  }

  /**
   * The fewest that a person may take on any of the flights: the rule's number or the airline's,
   * whichever is less.
   *
   * @throws EvaluationException when an airline that must agree has not answered, or when neither
   *     rules nor airlines name a number
   */
  public static int fewest(
      List<Flight> flights, double wattHours, CarriageMode carried, FlightChemistry chemistry) {
    int fewest = Integer.MAX_VALUE;
    Flight unanswered = null;
    for (Flight flight : flights) {
      BaggageRule rule = flight.rule(wattHours, carried, chemistry);
      fewest = Math.min(fewest, rule.count().orElse(Integer.MAX_VALUE));
      fewest = Math.min(fewest, flight.answer.orElse(Integer.MAX_VALUE));
      if (unanswered == null && flight.classOf(rule, wattHours).needsAnswer()) {
        unanswered = flight;
      }
    }
    if (fewest == 0) {
      return 0;
    }
    if (unanswered != null && unanswered.answer.isPresent()) {
      return unanswered.rule(wattHours, carried, chemistry).limit(); // which refuses
    }
    if (unanswered != null) {
      throw new EvaluationException(FlightErrorCode.ANSWER_MISSING, unanswered.row, flights.size());
    }
    if (fewest == Integer.MAX_VALUE) {
      return flights.get(0).rule(wattHours, carried, chemistry).limit();
    }
    return fewest;
  }
}
