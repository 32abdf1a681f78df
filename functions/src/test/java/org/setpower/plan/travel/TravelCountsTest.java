package org.setpower.plan.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.travel.TravelSamples.add;
import static org.setpower.plan.travel.TravelSamples.answer;
import static org.setpower.plan.travel.TravelSamples.day;
import static org.setpower.plan.travel.TravelSamples.decide;
import static org.setpower.plan.travel.TravelSamples.flight;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;

/** What is counted, against which limit, and who is asked for how many. */
class TravelCountsTest {
  private static final String TODAY = "2026-06-01";
  private static final EnglishMessages ENGLISH = new EnglishMessages();

  private static String said(List<Finding> findings) {
    return ENGLISH.sentences(findings, Locale.ENGLISH);
  }

  private static String cards(PlanResult result) {
    return result.rows(TravelPapers.CARDS).stream()
        .filter(c -> c != null)
        .map(c -> said(c.notes()))
        .collect(Collectors.joining("\n"));
  }

  private static String checkIn(PlanResult result) {
    return result.rows(TravelPapers.CHECK_IN).stream()
        .filter(c -> c != null)
        .map(c -> c.travellers() + ": " + said(c.notes()))
        .collect(Collectors.joining("\n"));
  }

  private static List<String> battery(Ranges trip) {
    return trip.calculate().rows(TravelResults.BATTERIES).get(0).reasons().stream()
        .map(f -> f.key().key())
        .toList();
  }

  /** The rules leave two, this carrier one: there is no room for one more. */
  @Test
  void a_card_counts_against_the_carriers_answer() {
    Ranges trip = add(flight(TODAY), "P150", 150, 1);
    answer(trip, "P150", 150, 1);
    assertThat(cards(trip.calculate())).contains("Over 100 Wh 1 of 1");
    trip.set("answers", 1, "number", 2);
    assertThat(cards(trip.calculate())).contains("Over 100 Wh 1 of 2");
    add(trip, "P140", 140, 1);
    answer(trip, "P140", 140, 2);
    assertThat(cards(trip.calculate())).contains("Over 100 Wh 2 of 2");
  }

  /** Two people may take two each: four, though eight are there. */
  @ParameterizedTest
  @CsvSource({"1,8,2", "2,8,4", "3,8,6", "3,5,5"})
  void a_carrier_is_asked_for_what_its_passengers_can_take(int people, int pieces, int asked) {
    Ranges trip = add(flight(TODAY), "P150", 150, pieces);
    for (int p = 2; p <= people; p++) {
      trip.row("travellers", "traveller", "role " + p);
    }
    assertThat(said(trip.calculate().rows(TravelPapers.QUESTIONS).get(0).text()))
        .contains("2 a person, " + asked + " in all");
  }

  /**
   * IATA leaflet 2018, Table 2.3.A: 20 spares, the operator may allow more; 15 devices likewise.
   */
  @Test
  void the_carriers_written_limit_counts_above_20_where_the_rule_says_so() {
    Ranges trip = add(flight(TODAY), "P98", 98, 40);
    trip.set("flights", 1, "writtenSpares", 30, "writtenReference", "mail 20");
    PlanResult result = trip.calculate();
    assertThat(result.rows(TravelResults.BATTERIES).get(0).carriedPieces()).isEqualTo(30);
    assertThat(result.rows(TravelResults.FLIGHTS).get(0).verdict()).isEqualTo(Verdict.OK);
    trip.set("flights", 1, "writtenReference", "");
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).carriedPieces()).isEqualTo(20);
    trip.set("flights", 1, "writtenReference", "mail 20", "rules", "US");
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).carriedPieces()).isEqualTo(30);
  }

  @Test
  void the_carriers_written_limit_counts_above_15_in_equipment() {
    Ranges trip = add(flight(TODAY), "cam", 90, 30, "carried", "in equipment");
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).carriedPieces()).isEqualTo(15);
    trip.set("flights", 1, "writtenDevices", 18, "writtenReference", "mail 20");
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).carriedPieces()).isEqualTo(18);
    trip.set("flights", 1, "writtenDevices", 3);
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).carriedPieces()).isEqualTo(3);
  }

  /** Two spares over 100 Wh a person, one's own among them. */
  @Test
  void ones_own_spares_over_100_wh_count_with_the_others() {
    Ranges trip = add(flight(TODAY), "P150", 150, 2, "terminals", "yes");
    answer(trip, "P150", 150, 2).set("travellers", 1, "ownLarge", 1);
    PlanResult result = trip.calculate();
    assertThat(result.rows(TravelResults.BATTERIES).get(0).carriedPieces()).isEqualTo(1);
    assertThat(result.rows(TravelResults.TRAVELLERS).get(0).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(cards(result)).contains("Over 100 Wh 2 of 2", "Spares 2 of 20");
    trip.set("travellers", 1, "ownLarge", 3);
    assertThat(trip.calculate().rows(TravelResults.TRAVELLERS).get(0).verdict())
        .isEqualTo(Verdict.STOP);
  }

  /** The desk reads that all spares share one limit, and what each brings of one's own. */
  @Test
  void the_check_in_sheet_says_what_is_counted_together() {
    Ranges trip = add(flight(TODAY), "P98", 98, 3, "user", "gaffer");
    add(trip, "P97", 97, 2).set("travellers", 1, "ownSpares", 4, "ownBanks", 1);
    add(trip, "bank", 74, 1, "carried", "power bank");
    PlanResult result = trip.calculate();
    assertThat(checkIn(result))
        .contains("All spares of a person together: max. 20")
        .contains("gaffer: Spares 9, over 100 Wh 0, power banks 2, in equipment 0, with own");
    assertThat(TravelSamples.types(result))
        .filteredOn(r -> r.type().startsWith("P9"))
        .allMatch(r -> r.maxCarried() == null);
  }

  /** Three decided where the rules leave two and one carrier one: one issue. */
  @Test
  void one_mistake_is_one_issue() {
    Ranges trip = add(flight(TODAY), "P150", 150, 3, "terminals", "yes");
    trip.row("flights", "flight", "Q1", "date", day(TODAY), "carrier", "Quay Air");
    answer(trip, "P150", 150, 2);
    answer(trip, "P150", 150, 1, "flight", "Q1", "carrier", "Quay Air");
    decide(trip, "P150", "gaffer", 3);
    List<IssueRow> stops =
        trip.calculate().rows(TravelResults.ISSUES).stream()
            .filter(i -> i.verdict() == Verdict.STOP)
            .toList();
    assertThat(stops).hasSize(1);
    assertThat(said(stops.get(0).reasons())).contains("3 of one type on Q1", "1 a person");
    assertThat(trip.calculate().rows(TravelResults.PACKING).get(0).verdict())
        .isEqualTo(Verdict.STOP);
  }

  @Test
  void the_same_limit_on_two_flights_is_one_issue() {
    Ranges trip = add(flight(TODAY), "P98", 98, 22, "terminals", "yes");
    trip.row("flights", "flight", "Q1", "date", day("2026-06-02"), "carrier", "Quay Air");
    decide(trip, "P98", "gaffer", 22);
    List<IssueRow> stops =
        trip.calculate().rows(TravelResults.ISSUES).stream()
            .filter(i -> i.verdict() == Verdict.STOP)
            .toList();
    assertThat(stops).hasSize(1);
    assertThat(said(stops.get(0).reasons())).contains("22 spare batteries on SA 101, Q1, max. 20");
  }

  /** One mail for the flight out and the flight back. */
  @Test
  void one_answer_covers_two_flights_on_two_days() {
    Ranges trip = add(flight(TODAY), "P150", 150, 2);
    trip.row("flights", "flight", "SA 102", "date", day("2026-06-09"), "carrier", "Salt Air");
    answer(trip, "P150", 150, 2, "flight", "SA 101; SA 102");
    assertThat(trip.calculate().rows(TravelResults.ANSWERS).get(0).verdict())
        .isEqualTo(Verdict.STOP);
    trip.set("answers", 1, "date2", day("2026-06-09"));
    assertThat(trip.calculate().rows(TravelResults.ANSWERS).get(0).verdict()).isEqualTo(Verdict.OK);
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).carriedPieces()).isEqualTo(2);
    trip.set("answers", 1, "date2", day("2026-06-10"));
    assertThat(trip.calculate().rows(TravelResults.ANSWERS).get(0).verdict())
        .isEqualTo(Verdict.STOP);
    trip.set("answers", 1, "flight", "SA 101");
    assertThat(trip.calculate().rows(TravelResults.ANSWERS).get(0).verdict())
        .as("the second day belongs to none of its flights")
        .isEqualTo(Verdict.STOP);
  }

  /**
   * A lost digit: 15 for 150 Wh in 1.05 kg are 14 Wh/kg. Lead, the poorest of all, has 30 to 40
   * Wh/kg, the best lithium metal cells less than 700 (common practice).
   */
  @ParameterizedTest
  @CsvSource({
    "15,1.05,travel.energyImpossible",
    "14.6,1.05,travel.energyImpossible",
    "1500,1.05,travel.energyImpossible",
    "30,1.05,travel.energyLow",
    "400,1.05,travel.energyWeight",
    "146,1.05,",
    "98,0.75,"
  })
  void energy_that_no_chemistry_has_in_that_weight_stops(double wh, double kilograms, String key) {
    Ranges trip = add(flight(TODAY), "P", wh, 1, "kilograms", kilograms, "terminals", "yes");
    List<String> found = battery(trip).stream().filter(k -> k.contains("energy")).toList();
    if (key == null) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).containsExactly(key);
    }
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).verdict() == Verdict.STOP)
        .isEqualTo("travel.energyImpossible".equals(key));
  }

  /** A tenth of a battery of 100 to 400 Wh, and nothing that confirms it. */
  @ParameterizedTest
  @CsvSource({
    "15,'','',true",
    "39.9,'','',true",
    "40,'','',false",
    "98,'','',false",
    "15,0.1,'',false",
    "15,'',2.08,false"
  })
  void little_energy_that_nothing_confirms_is_a_check(
      double wh, String kilograms, String ampHours, boolean check) {
    Ranges trip = add(flight(TODAY), "P", wh, 1, "terminals", "yes");
    trip.set("batteries", 1, "kilograms", kilograms.isEmpty() ? "" : (Object) 0.1);
    if (!ampHours.isEmpty()) {
      trip.set("batteries", 1, "volts", 7.2, "ampHours", Double.parseDouble(ampHours));
    }
    assertThat(battery(trip).contains("travel.energyUnconfirmed")).isEqualTo(check);
  }

  /** 5 % between label and V × Ah: 98 Wh and 14.8 V × 6.8 Ah = 100.64 Wh are the same. */
  @ParameterizedTest
  @CsvSource({"6.8,false", "7.2,true"})
  void label_and_volts_by_amp_hours_may_differ_by_5_percent(double ampHours, boolean stops) {
    Ranges trip = add(flight(TODAY), "P98", 98, 1, "volts", 14.8, "ampHours", ampHours);
    List<Finding> reasons = trip.calculate().rows(TravelResults.BATTERIES).get(0).reasons();
    assertThat(reasons.stream().anyMatch(f -> f.severity() == Severity.STOP)).isEqualTo(stops);
    if (stops) {
      assertThat(said(reasons)).contains("5 %");
    }
  }

  /** A rule from memory is said once, and which it is. */
  @Test
  void a_rule_from_memory_is_said_once_and_by_name() {
    Ranges trip = add(flight(TODAY), "AA", "", 4, "chemistry", "NiMH", "terminals", "yes");
    add(trip, "AAA", "", 4, "chemistry", "NiMH", "terminals", "yes");
    add(trip, "bank", 74, 1, "carried", "power bank", "terminals", "yes");
    PlanResult result = trip.calculate();
    assertThat(result.rows(TravelResults.BATTERIES))
        .extracting(TravelResults.BatteryResult::verdict)
        .startsWith(Verdict.OK, Verdict.OK, Verdict.OK);
    assertThat(said(result.rows(TravelResults.PROJECT).get(0).reasons()))
        .contains("nickel and dry", "power banks")
        .doesNotContain("lead");
    assertThat(
            result.rows(TravelResults.ISSUES).stream()
                .filter(i -> i.reasons().get(0).key().key().startsWith("travel.rule")))
        .hasSizeBetween(1, 2);
  }
}
