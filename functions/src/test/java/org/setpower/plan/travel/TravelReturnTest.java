package org.setpower.plan.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.travel.TravelSamples.add;
import static org.setpower.plan.travel.TravelSamples.day;
import static org.setpower.plan.travel.TravelSamples.decide;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;

/** What went out on a flight has a way back, and nobody is on two flights at once. */
class TravelReturnTest {
  private static final EnglishMessages ENGLISH = new EnglishMessages();

  /** Out with two carriers on two days, back together; two of the crew. */
  private static Ranges trip() {
    Ranges trip = Ranges.of(TravelPlan.MODEL).row("project", "issued", day("2026-05-22"));
    trip.set("project", 1, "begins", "Home");
    trip.row("flights", "flight", "AX 210", "date", day("2026-06-01"), "carrier", "Alpha");
    trip.row("flights", "flight", "BX 55", "date", day("2026-06-02"), "carrier", "Beta");
    trip.row("flights", "flight", "AX 211", "date", day("2026-06-12"), "carrier", "Alpha");
    for (int f = 1; f <= 3; f++) {
      trip.set("flights", f, "from", f == 3 ? "Coast" : "Home", "to", f == 3 ? "Home" : "Coast");
    }
    trip.row("travellers", "traveller", "1st AC", "flights", "AX 210; AX 211");
    trip.row("travellers", "traveller", "DIT", "flights", "BX 55; AX 211");
    add(trip, "P98", 98, 4, "terminals", "yes");
    add(trip, "P90", 90, 2, "terminals", "yes");
    decide(decide(trip, "P98", "1st AC", 4), "P90", "DIT", 2);
    return trip;
  }

  private static TravelResults.TravellerResult first(Ranges trip) {
    return trip.calculate().rows(TravelResults.TRAVELLERS).get(0);
  }

  private static List<String> keys(Ranges trip) {
    return first(trip).reasons().stream().map(f -> f.key().key()).toList();
  }

  @Test
  void out_and_back_is_ok() {
    assertThat(first(trip()).verdict()).isEqualTo(Verdict.OK);
    assertThat(trip().calculate().rows(TravelResults.ISSUES)).isEmpty();
  }

  /** All fly back on 1 June, five days before they fly out: the same wrong date for each. */
  private static Ranges backFirst() {
    Ranges trip = trip().set("flights", 1, "date", day("2026-06-06"));
    trip.set("flights", 2, "date", day("2026-06-06")).set("flights", 3, "date", day("2026-06-01"));
    return trip.set("travellers", 1, "flights", "").set("travellers", 2, "flights", "");
  }

  private static List<String> whole(Ranges trip) {
    return trip.calculate().rows(TravelResults.PROJECT).get(0).reasons().stream()
        .map(f -> f.key().key())
        .toList();
  }

  @Test
  void a_flight_back_before_the_flight_out_is_told_by_where_the_trip_begins() {
    Ranges trip = backFirst();
    trip.rows("flights").remove(1);
    assertThat(keys(trip)).containsExactly("travel.traveller.start");
    assertThat(ENGLISH.sentences(first(trip).reasons(), Locale.ENGLISH))
        .contains("AX 211 on 1 Jun 2026", "leaves Coast", "begins in Home");
    trip.set("project", 1, "begins", "", "freightFrom", "home");
    assertThat(keys(trip)).containsExactly("travel.traveller.start");
    trip.set("project", 1, "begins", "coast");
    assertThat(first(trip).verdict()).isEqualTo(Verdict.OK);
  }

  /** Without a place where it begins: by the order in which the flights are named. */
  @Test
  void a_flight_back_before_the_flight_out_is_told_by_the_order_of_names() {
    Ranges trip = backFirst().set("project", 1, "begins", "");
    for (int t = 1; t <= 2; t++) {
      trip.set("travellers", t, "flights", "AX 210; AX 211");
    }
    assertThat(keys(trip)).contains("travel.traveller.order");
    assertThat(ENGLISH.sentences(first(trip).reasons(), Locale.ENGLISH))
        .contains("AX 211 on 1 Jun 2026 is named after AX 210 on 6 Jun 2026");
    assertThat(whole(trip)).doesNotContain("travel.orderUnknown");
  }

  /** Nothing says which flight is the first: unknown is a check, with the flight that counts. */
  @ParameterizedTest
  @CsvSource({"Home,Home", "'',''", "Station,Home"})
  void an_order_that_nothing_confirms_is_a_check(String begins, String place) {
    Ranges trip = backFirst().set("project", 1, "begins", begins);
    trip.rows("flights").remove(1);
    trip.set("flights", 1, "from", place);
    boolean known = begins.equals("Home");
    assertThat(whole(trip).contains("travel.orderUnknown")).isEqualTo(!known);
    if (!known) {
      assertThat(
              ENGLISH.sentences(
                  trip.calculate().rows(TravelResults.PROJECT).get(0).reasons(), Locale.ENGLISH))
          .contains("AX 211 on 1 Jun 2026 first");
    }
    trip.set("flights", 1, "date", day("2026-06-01"));
    assertThat(whole(trip)).doesNotContain("travel.orderUnknown");
  }

  @Test
  void a_forgotten_return_names_the_pieces() {
    Ranges trip = trip().set("travellers", 1, "flights", "AX 210");
    assertThat(first(trip).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(ENGLISH.sentences(first(trip).reasons(), Locale.ENGLISH))
        .contains("Out on AX 210", "4 pieces", "P98 4");
    assertThat(trip.calculate().rows(TravelResults.ISSUES)).hasSize(1);
    trip.set("travellers", 1, "back", "stays");
    assertThat(first(trip).verdict()).isEqualTo(Verdict.OK);
    assertThat(TravelSamples.rest(trip.calculate())).isEmpty();
  }

  /** Places left blank: a flight home that others take and this one does not. */
  @Test
  void without_places_the_last_day_of_the_trip_counts() {
    Ranges trip = trip();
    for (int f = 1; f <= 3; f++) {
      trip.set("flights", f, "from", "", "to", "");
    }
    assertThat(first(trip).verdict()).isEqualTo(Verdict.OK);
    assertThat(keys(trip.set("travellers", 1, "flights", "AX 210")))
        .containsExactly("travel.traveller.noReturn");
    assertThat(keys(trip.set("travellers", 1, "flights", "AX 210; BX 55")))
        .contains("travel.traveller.noReturn");
  }

  /** What a traveller does not bring back goes by road: on its paper, with its day. */
  @Test
  void what_comes_back_another_way_is_on_its_paper() {
    Ranges trip = trip().set("travellers", 1, "flights", "AX 210", "back", "road");
    trip.set("batteries", 1, "kilograms", 0.75, "cells", 12);
    assertThat(
            trip.calculate().rows(TravelResults.PROJECT).get(0).reasons().stream()
                .map(f -> f.key().key()))
        .containsExactly("travel.noWayBack");
    trip.set("project", 1, "backOn", day("2026-06-14"));
    PlanResult result = trip.calculate();
    assertThat(TravelSamples.road(result))
        .extracting(r -> r.battery() + " " + r.pieces())
        .containsExactly("P98 4");
    assertThat(first(trip).verdict()).isEqualTo(Verdict.OK);
  }

  /** Nobody comes back on this list: one issue, not one for each traveller. */
  @Test
  void a_list_of_flights_out_only_is_one_issue() {
    Ranges trip = trip().set("travellers", 1, "flights", "AX 210");
    trip.set("travellers", 2, "flights", "BX 55");
    trip.rows("flights").remove(2);
    PlanResult result = trip.calculate();
    assertThat(result.rows(TravelResults.ISSUES))
        .singleElement()
        .matches(i -> i.reasons().get(0).key().key().equals("travel.noReturn"));
  }

  @ParameterizedTest
  @CsvSource({
    "AX 210; BX 55; AX 211,travel.traveller.broken,CHECK",
    "AX 210; AX 211,,OK",
    "AX 210; TX 1,travel.traveller.twice,STOP"
  })
  void nobody_is_in_two_places(String flights, String key, Verdict verdict) {
    Ranges trip = trip();
    trip.row("flights", "flight", "TX 1", "date", day("2026-06-01"), "carrier", "Alpha");
    trip.set("flights", 4, "from", "home", "to", "Coast");
    trip.row("travellers", "traveller", "runner", "flights", "TX 1; AX 211");
    trip.set("travellers", 1, "flights", flights);
    if (key != null) {
      assertThat(keys(trip)).contains(key);
    }
    assertThat(first(trip).verdict()).isEqualTo(verdict);
  }

  /** Two flights with a change of planes, in whatever order they are typed. */
  @Test
  void a_change_of_planes_on_one_day_is_in_order() {
    Ranges trip = trip();
    trip.set("flights", 1, "to", "Hub").set("flights", 2, "from", "Hub");
    trip.set("flights", 2, "date", day("2026-06-01"));
    trip.set("travellers", 1, "flights", "BX 55; AX 210; AX 211");
    trip.set("travellers", 2, "flights", "BX 55; AX 210; AX 211");
    assertThat(first(trip).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void freight_handed_over_before_the_issue_is_a_check() {
    Ranges trip = trip().set("project", 1, "handOver", day("2026-05-21"));
    add(trip, "P294", 294, 1, "by", "cargo aircraft");
    assertThat(
            trip.calculate().rows(TravelResults.PROJECT).get(0).reasons().stream()
                .map(f -> f.key().key()))
        .contains("travel.handOverBefore");
    trip.set("project", 1, "handOver", day("2026-05-22"));
    assertThat(
            trip.calculate().rows(TravelResults.PROJECT).get(0).reasons().stream()
                .map(f -> f.key().key()))
        .doesNotContain("travel.handOverBefore");
  }
}
