package org.setpower.plan.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.travel.TravelSamples.add;
import static org.setpower.plan.travel.TravelSamples.answer;
import static org.setpower.plan.travel.TravelSamples.day;
import static org.setpower.plan.travel.TravelSamples.flight;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;

/**
 * A state of charge belongs to the pieces of which somebody has read it. PI 965 and HM-224I: 30 %
 * at most for lithium-ion batteries alone.
 */
class TravelChargeTest {
  private static final String TODAY = "2026-06-01";

  /** One traveller may take two of four, the carrier refuses none: two are left for freight. */
  private static Ranges left(Object charge, Object pieces) {
    Ranges trip = add(flight(TODAY), "P150", 150, 4, "kilograms", 1.1, "terminals", "yes");
    trip.set("project", 1, "rest", "cargo aircraft", "handOver", day("2026-05-28"));
    trip.set("project", 1, "back", "stays");
    trip.set("batteries", 1, "charge", charge, "chargePieces", pieces);
    return answer(trip, "P150", 150, 2);
  }

  private static List<String> reasons(PlanResult result) {
    return TravelSamples.rest(result).get(0).reasons().stream().map(f -> f.key().key()).toList();
  }

  private static List<TravelPapers.FreightRow> freight(PlanResult result) {
    return TravelSamples.freight(result);
  }

  @Test
  void an_answer_that_is_lost_never_makes_full_pieces_30_percent() {
    Ranges trip = left(0.3, 2);
    assertThat(freight(trip.calculate()))
        .extracting(TravelPapers.FreightRow::pieces, TravelPapers.FreightRow::charge)
        .containsExactly(org.assertj.core.api.Assertions.tuple(2, 0.3));
    trip.set("answers", 1, "number", 0);
    PlanResult refused = trip.calculate();
    assertThat(freight(refused)).isEmpty();
    assertThat(reasons(refused)).contains("travel.freight.chargePieces");
    // 2 more, 70 % of 150 Wh out of each
    assertThat(
            TravelSamples.rest(refused).get(0).reasons().stream()
                .filter(f -> f.key().key().equals("travel.freight.chargePieces"))
                .findFirst()
                .orElseThrow()
                .arguments())
        .containsExactly(2, 4, 0.3, 2, 105.0);
    assertThat(TravelSamples.rest(refused).get(0).discharge()).isEqualTo(105.0);
  }

  @ParameterizedTest
  @CsvSource({"0.3,'',false", "0.3,0,false", "0.3,1,false", "0.3,2,true", "0.3,4,true"})
  void pieces_of_which_nobody_has_said_so_are_full(double charge, String pieces, boolean ships) {
    Ranges trip = left(charge, pieces.isEmpty() ? "" : (Object) Double.parseDouble(pieces));
    assertThat(freight(trip.calculate()).size()).isEqualTo(ships ? 1 : 0);
  }

  @Test
  void more_pieces_at_a_charge_than_there_are_contradict() {
    assertThat(reasons(left(0.3, 5).calculate())).contains("travel.freight.chargeMany");
    assertThat(freight(left(0.3, 5).calculate())).isEmpty();
  }

  /** 0.6 typed for 60 %, which is over 30 %: no lithium-ion battery is shipped as empty (own). */
  @ParameterizedTest
  @CsvSource({"0.006,false", "0.0499,false", "0.05,true", "0.3,true"})
  void a_charge_that_no_battery_is_shipped_at_stops(double charge, boolean ships) {
    PlanResult result = left(charge, 2).calculate();
    assertThat(freight(result).size()).isEqualTo(ships ? 1 : 0);
    assertThat(reasons(result).contains("travel.freight.chargeLow")).isEqualTo(!ships);
  }

  private static List<String> whole(Ranges trip) {
    return trip.calculate().rows(TravelResults.PROJECT).get(0).reasons().stream()
        .map(f -> f.key().key())
        .toList();
  }

  /** Full batteries have to arrive in time too: needed on the 9th, three days on the way. */
  @Test
  void the_day_to_hand_over_counts_for_what_is_full() {
    Ranges trip = left("", "").set("batteries", 1, "by", "road", "cells", 40);
    trip.set("project", 1, "rest", "road", "needed", day("2026-06-09"), "transit", 3);
    trip.set("batteries", 1, "energy", 98).rows("answers").clear();
    trip.set("project", 1, "handOver", day("2026-06-06"));
    assertThat(trip.calculate().rows(TravelResults.SUMMARY).get(0).toCharge()).isZero();
    assertThat(trip.calculate().rows(TravelResults.SUMMARY).get(0).handOverBy())
        .isEqualTo("2026-06-06");
    assertThat(whole(trip)).doesNotContain("travel.handedOverLate");
    trip.set("project", 1, "handOver", day("2026-06-07"));
    assertThat(whole(trip)).contains("travel.handedOverLate");
    trip.set("batteries", 1, "by", "stays");
    assertThat(trip.calculate().rows(TravelResults.SUMMARY).get(0).handOverBy()).isNull();
  }

  /** Handed over when everybody is home. */
  @ParameterizedTest
  @CsvSource({"2026-06-12,false", "2026-06-13,true"})
  void freight_out_after_the_last_flight_is_a_check(String handOver, boolean late) {
    Ranges trip = left(0.3, 2).set("project", 1, "handOver", day(handOver));
    assertThat(whole(trip)).doesNotContain("travel.handOverAfter");
    trip.row("flights", "flight", "SA 102", "date", day("2026-06-12"), "carrier", "Salt Air");
    assertThat(whole(trip).contains("travel.handOverAfter")).isEqualTo(late);
  }

  /** A row of one piece needs no number. */
  @Test
  void one_battery_has_one_charge() {
    Ranges trip = left(0.3, "");
    trip.set("batteries", 1, "quantity", 1, "energy", 294, "by", "cargo aircraft");
    assertThat(freight(trip.calculate())).hasSize(1);
  }

  /** Where 30 % is only recommended the row ships, and the paper shows no charge for all. */
  @Test
  void a_recommended_charge_is_not_printed_for_pieces_without_it() {
    Ranges trip = left(0.3, 1).set("batteries", 1, "packed", "in equipment");
    PlanResult result = trip.calculate();
    assertThat(freight(result)).singleElement().matches(r -> r.charge() == null);
    assertThat(reasons(result)).contains("travel.freight.recommended");
  }

  @Test
  void the_way_back_has_its_own_pieces() {
    Ranges trip = left(0.3, 2).set("project", 1, "back", "", "backOn", day("2026-06-20"));
    trip.set("batteries", 1, "backCharge", 0.3);
    assertThat(freight(trip.calculate())).hasSize(1);
    assertThat(freight(trip.set("batteries", 1, "backPieces", 1).calculate())).hasSize(1);
    assertThat(freight(trip.set("batteries", 1, "backPieces", 2).calculate())).hasSize(2);
  }
}
