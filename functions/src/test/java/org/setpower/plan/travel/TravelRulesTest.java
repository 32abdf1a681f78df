package org.setpower.plan.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.travel.TravelSamples.add;
import static org.setpower.plan.travel.TravelSamples.answer;
import static org.setpower.plan.travel.TravelSamples.day;
import static org.setpower.plan.travel.TravelSamples.decide;
import static org.setpower.plan.travel.TravelSamples.flight;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.ReferenceTable;
import org.setpower.flight.BaggageRule;
import org.setpower.flight.CarriageMode;
import org.setpower.flight.Edition;
import org.setpower.flight.FlightChemistry;
import org.setpower.flight.FlightClass;
import org.setpower.flight.RuleBook;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.travel.rules.CabinEdition;
import org.setpower.plan.travel.rules.FreightRule;

/**
 * The rules of carriage, case by case. The limits are those of the reference: ICAO and IATA (DGR
 * Table 2.3.A, 2018; the same limits reported for the 67th edition 2026), ICAO Doc 9284, Addendum 1
 * from 27 March 2026, and 49 CFR 175.10 with the FAA's guidance. Where nothing is published the
 * expected result is the cautious one.
 */
class TravelRulesTest {
  private static final String TODAY = "2026-06-01";

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  private static TravelResults.BatteryResult battery(Ranges ranges, int row) {
    return ranges.calculate().rows(TravelResults.BATTERIES).get(row - 1);
  }

  private static List<TravelResults.LineRow> lines(Ranges ranges) {
    return TravelSamples.carried(ranges.calculate());
  }

  private static List<FindingKey> lineKeys(Ranges ranges) {
    return lines(ranges).stream().flatMap(l -> keys(l.reasons()).stream()).toList();
  }

  private static void assertNothingCarried(Ranges ranges) {
    PlanResult result = ranges.calculate();
    assertThat(TravelSamples.types(result)).isEmpty();
    assertThat(TravelSamples.cards(result)).isEmpty();
    assertThat(result.rows(TravelResults.SUMMARY).get(0).carried()).isZero();
  }

  static Stream<CSVRecord> cases() {
    try (CSVParser parser =
        CSVParser.parse(
            Path.of("src/test/resources/travel/carriage.csv"),
            StandardCharsets.UTF_8,
            ReferenceTable.FORMAT)) {
      return parser.getRecords().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void a_battery_travels_by_the_rules_of_its_day(CSVRecord c) {
    Ranges trip = flight(c.get("date"), c.get("rules"));
    add(trip, "battery", number(c.get("energy")), 1);
    trip.set("batteries", 1, "chemistry", c.get("chemistry"), "carried", c.get("carried"));
    trip.set("batteries", 1, "lithium", number(c.get("lithium")));
    trip.set("batteries", 1, "volts", number(c.get("volts")));
    PlanResult result = trip.calculate();
    String name = c.toString();
    assertThat(result.rows(TravelResults.FLIGHTS).get(0).verdict()).as(name).isEqualTo(Verdict.OK);
    FlightClass carriage = result.rows(TravelResults.RULES).get(0).carriage();
    assertThat(carriage == null ? "" : carriage.word()).as(name).isEqualTo(c.get("class"));
    Integer most = result.rows(TravelResults.BATTERIES).get(0).maxCarried();
    assertThat(most == null ? "" : most.toString()).as(name).isEqualTo(c.get("count"));
  }

  private static Object number(String cell) {
    return cell.isEmpty() ? "" : (Object) Double.parseDouble(cell);
  }

  /** Two power banks a person from 27 March 2026 (ICAO Addendum 1); blank means spare. */
  @ParameterizedTest
  @CsvSource({
    "Power bank 74,true",
    "powerbank,true",
    "POWER-BANK,true",
    "Batterie externe,true",
    "P74,false"
  })
  void what_is_named_a_power_bank_counts_as_one_until_it_is_corrected(String name, boolean bank) {
    Ranges trip = add(flight("2026-06-01"), name, 74, 7, "terminals", "yes");
    PlanResult result = trip.calculate();
    assertThat(result.rows(TravelResults.SUMMARY).get(0).carried()).isEqualTo(bank ? 2 : 7);
    assertThat(
            result.rows(TravelResults.BATTERIES).get(0).reasons().stream()
                .anyMatch(f -> f.key() == TravelFinding.NAMED_BANK))
        .isEqualTo(bank);
    trip.set("batteries", 1, "carried", "power bank");
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).reasons())
        .noneMatch(f -> f.key() == TravelFinding.NAMED_BANK);
  }

  @Test
  void a_lost_battery_stops_and_is_sent_nowhere() {
    Ranges trip = add(flight("2026-06-01"), "P98", 98, 2, "condition", "lost");
    assertThat(trip.calculate().rows(TravelResults.BATTERIES).get(0).reasons())
        .extracting(f -> f.key().key())
        .contains("travel.lost")
        .doesNotContain("travel.service");
    assertNothingCarried(trip);
  }

  /** 95 typed for 150 while the carrier has answered for 150 Wh: one of the two is wrong. */
  @ParameterizedTest
  @CsvSource({"95,150,true", "100,100.5,true", "98,100,false", "105,150,false"})
  void an_answer_on_the_other_side_of_100_wh_is_a_check(double label, double asked, boolean told) {
    Ranges trip = add(flight("2026-06-01"), "P150", label, 2, "terminals", "yes");
    TravelSamples.answer(trip, "P150", asked, 2);
    PlanResult result = trip.calculate();
    assertThat(
            result.rows(TravelResults.ANSWERS).get(0).reasons().stream()
                .anyMatch(f -> f.key() == TravelFinding.ANSWER_ACROSS))
        .isEqualTo(told);
  }

  @Test
  void every_case_names_its_source_and_basis() {
    List<CSVRecord> all = cases().toList();
    assertThat(all).hasSizeGreaterThanOrEqualTo(150);
    for (CSVRecord c : all) {
      assertThat(c.get("source")).as(c.toString()).isNotEmpty();
      assertThat(c.get("basis")).as(c.toString()).isIn("published", "memory");
      assertThat(c.get("date")).as(c.toString()).isNotEmpty();
    }
  }

  /** FLIGHT.CLASS in a cell and the model say the same of lithium-ion batteries, day by day. */
  @Test
  void the_model_agrees_with_the_leaf_function() {
    int compared = 0;
    for (RuleBook rules : RuleBook.values()) {
      for (String date : List.of("2018-10-01", "2026-03-26", "2026-03-27", "2026-12-31")) {
        for (CarriageMode carried : CarriageMode.values()) {
          for (double energy : new double[] {1, 74, 99.99, 100, 100.01, 159.99, 160, 160.01, 294}) {
            Ranges trip = flight(date, rules == RuleBook.US ? "US domestic" : rules.word());
            add(trip, "battery", energy, 1, "carried", carried.word());
            FlightClass model = trip.calculate().rows(TravelResults.RULES).get(0).carriage();
            FlightClass leaf =
                BaggageRule.of(
                        energy, carried, FlightChemistry.LITHIUM_ION, rules, LocalDate.parse(date))
                    .verdict();
            assertThat(model).as("%s %s %s %s", rules, date, carried, energy).isEqualTo(leaf);
            compared++;
          }
        }
      }
    }
    assertThat(compared).isEqualTo(288);
  }

  @ParameterizedTest
  @CsvSource({
    "2017-12-31,ICAO,STOP",
    "2018-01-01,ICAO,OK",
    "2026-12-31,ICAO,OK",
    "2027-01-01,ICAO,STOP",
    "2027-12-31,ICAO,STOP",
    "2035-06-01,ICAO,STOP",
    "2018-09-30,US,STOP",
    "2018-10-01,US,OK",
    "2026-12-31,US,OK",
    "2027-01-01,US,STOP",
    "2035-06-01,US,STOP"
  })
  void a_flight_on_a_day_without_rules_stops(String date, String rules, Verdict verdict) {
    Ranges trip = add(flight(date, rules), "P98", 98, 3);
    PlanResult result = trip.calculate();
    assertThat(result.rows(TravelResults.FLIGHTS).get(0).verdict()).isEqualTo(verdict);
    if (verdict == Verdict.STOP) {
      assertNothingCarried(trip);
      assertThat(result.rows(TravelPapers.PAPERS).get(0).withheld()).isEqualTo(1);
    } else {
      assertThat(result.rows(TravelResults.SUMMARY).get(0).carried()).isEqualTo(3);
    }
  }

  @Test
  void past_the_edition_the_carriers_written_limits_are_printed() {
    Ranges trip = add(flight("2027-01-29"), "P98", 98, 9);
    trip.set("flights", 1, "writtenSpares", 5, "writtenReference", "mail 20");
    PlanResult result = trip.calculate();
    assertThat(result.rows(TravelResults.FLIGHTS).get(0).verdict()).isEqualTo(Verdict.CHECK);
    TravelPapers.CheckInRow row = TravelSamples.types(result).get(0);
    assertThat(row.pieces()).isEqualTo(5);
    assertThat(TravelSamples.flights(result).get(0).notes())
        .contains(TravelStatement.WRITTEN.of("5", "—", "—", "mail 20"));
    assertNothingCarried(trip.set("flights", 1, "writtenReference", ""));
    assertNothingCarried(
        add(flight("2027-01-29"), "P98", 98, 9).set("flights", 1, "writtenReference", "mail 20"));
  }

  @Test
  void an_edition_that_was_not_read_is_named_nowhere() {
    Ranges trip = add(flight("2027-01-29"), "P98", 98, 9);
    trip.set("flights", 1, "writtenSpares", 5, "writtenReference", "mail 20");
    PlanResult result = trip.calculate();
    assertThat(keys(TravelSamples.flights(result).get(0).notes()))
        .contains(TravelStatement.EDITION_ENDED)
        .doesNotContain(TravelStatement.RULES);
    assertThat(result.rows(TravelResults.FLIGHTS).get(0).until()).isEqualTo("2026-12-31");
    assertThat(result.rows(TravelResults.RULES).get(0).edition()).doesNotContain("2027");
  }

  /** The name on a paper is that of the text read, not a day on which somebody looked. */
  @Test
  void the_us_edition_is_named_by_what_was_read() {
    CabinEdition edition = CabinEdition.on(RuleBook.US, LocalDate.parse(TODAY));
    assertThat(edition.source()).contains("edition of 1 Oct 2018", "undated");
    assertThat(edition.name()).contains("1 October 2018", "undated").doesNotContain("2026");
  }

  /** The functions of cells name the text that was read, too: nobody checked the rules in 2026. */
  @Test
  void the_leaf_functions_name_what_was_read() {
    assertThat(Edition.of(RuleBook.US).name())
        .isEqualTo(CabinEdition.on(RuleBook.US, LocalDate.parse(TODAY)).name());
    assertThat(Edition.of(RuleBook.ICAO).name()).contains("leaflet of 2018", "Addendum 1");
    assertThat(Edition.ofCargo().name()).startsWith("reports of");
    for (Edition edition :
        List.of(Edition.of(RuleBook.US), Edition.of(RuleBook.ICAO), Edition.ofCargo())) {
      assertThat(edition.name()).doesNotContain("checked");
    }
  }

  /** The functions of cells and the model answer up to the same day. */
  @Test
  void editions_end_when_those_of_the_leaf_functions_end() {
    for (RuleBook rules : RuleBook.values()) {
      LocalDate last = Edition.of(rules).validTo();
      assertThat(CabinEdition.on(rules, last).answersFor(last)).isTrue();
      LocalDate next = last.plusDays(1);
      assertThat(CabinEdition.on(rules, next).answersFor(next)).isFalse();
    }
    assertThat(FreightRule.lastDay()).isEqualTo(Edition.ofCargo().validTo());
  }

  @Test
  void past_the_edition_a_limit_that_is_not_written_is_none() {
    Ranges trip = add(flight("2027-01-29"), "bank", 74, 2, "carried", "power bank");
    trip.set("flights", 1, "writtenSpares", 20, "writtenReference", "mail 20");
    assertNothingCarried(trip);
    assertThat(
            trip.set("flights", 1, "writtenBanks", 1)
                .calculate()
                .rows(TravelResults.SUMMARY)
                .get(0)
                .carried())
        .isEqualTo(1);
  }

  /**
   * No edition leaves it to the carrier to approve more than two power banks or two over 100 Wh.
   */
  @Test
  void a_carriers_limit_is_never_milder_than_the_rules() {
    Ranges trip = add(flight(TODAY), "bank", 74, 40, "carried", "power bank");
    trip.set("flights", 1, "writtenBanks", 50, "writtenReference", "mail 20");
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(2);
    trip.set("flights", 1, "writtenBanks", 1);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(1);
    trip = answer(add(flight(TODAY), "P150", 150, 40), "P150", 150, 40);
    trip.set("flights", 1, "writtenOver", 50, "writtenReference", "mail 20");
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(2);
  }

  // power banks and spares over 100 Wh, on the day before and the day of the addendum

  @ParameterizedTest
  @CsvSource({"2026-03-26,ICAO,STOP", "2026-06-01,US,STOP", "2026-03-27,ICAO,OK"})
  void spares_and_power_banks_over_100_wh_count_together_where_the_law_does(
      String date, String rules, Verdict verdict) {
    Ranges trip = flight(date, rules);
    add(trip, "P150", 150, 2);
    add(trip, "bank", 150, 2, "carried", "power bank");
    answer(answer(trip, "P150", 150, 2), "bank", 150, 2, "carried", "power bank");
    decide(decide(trip, "P150", "gaffer", 2), "bank", "gaffer", 2);
    assertThat(lines(trip)).hasSize(2).allMatch(l -> l.verdict() == verdict);
    if (verdict == Verdict.STOP) {
      assertThat(lineKeys(trip)).containsOnly(TravelFinding.OVER_LARGE);
      assertNothingCarried(trip);
    }
  }

  /** Scenario: three power banks of 74 Wh a person, on 26 and 27 March 2026. */
  @ParameterizedTest
  @CsvSource({"2026-03-26,3", "2026-03-27,2"})
  void from_27_march_2026_two_power_banks_a_person(String date, int carried) {
    Ranges trip = add(flight(date), "bank", 74, 3, "carried", "power bank");
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(carried);
    decide(trip, "bank", "gaffer", 3);
    assertThat(lines(trip).get(0).verdict()).isEqualTo(carried == 3 ? Verdict.OK : Verdict.STOP);
  }

  @ParameterizedTest
  @CsvSource({"2026-03-26,STOP", "2026-03-27,OK"})
  void nineteen_spares_and_two_power_banks(String date, Verdict verdict) {
    Ranges trip = add(flight(date), "P98", 98, 19);
    add(trip, "bank", 74, 2, "carried", "power bank");
    decide(decide(trip, "P98", "gaffer", 19), "bank", "gaffer", 2);
    assertThat(lines(trip)).hasSize(2).allMatch(l -> l.verdict() == verdict);
  }

  @Test
  void a_battery_in_equipment_is_no_spare() {
    Ranges trip = add(flight(TODAY), "P150", 150, 2);
    add(trip, "camera", 150, 1, "carried", "in equipment");
    answer(answer(trip, "P150", 150, 2), "camera", 150, 1, "carried", "in equipment");
    decide(decide(trip, "P150", "gaffer", 2), "camera", "gaffer", 1);
    assertThat(lines(trip)).hasSize(2).allMatch(l -> l.verdict() == Verdict.OK);
  }

  @Test
  void an_answer_for_spares_does_not_cover_equipment() {
    Ranges trip = add(flight(TODAY), "P150", 150, 1, "carried", "in equipment");
    answer(trip, "P150", 150, 2);
    decide(trip, "P150", "gaffer", 1);
    assertThat(lineKeys(trip)).containsExactly(TravelFinding.LINE_UNANSWERED);
  }

  @Test
  void an_answer_for_one_type_does_not_limit_another() {
    Ranges trip = add(flight(TODAY), "P98", 98, 9);
    add(trip, "AA", "", 9, "chemistry", "NiMH");
    add(trip, "P90", 90, 6);
    answer(trip, "P98", 98, 5);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(5);
    assertThat(battery(trip, 2).carriedPieces()).isEqualTo(9);
    assertThat(battery(trip, 3).carriedPieces()).isEqualTo(6);
    decide(trip, "P98", "gaffer", 6);
    assertThat(lineKeys(trip)).contains(TravelFinding.OVER_ANSWER);
  }

  @ParameterizedTest
  @CsvSource({"2020-12-31,hold or cabin,", "2021-01-01,cabin,20"})
  void nickel_spares_are_cabin_only_and_counted_since_2021(
      String date, String carriage, Integer most) {
    Ranges trip = add(flight(date), "AA", "", 30, "chemistry", "NiMH");
    assertThat(battery(trip, 1).carriage().word()).isEqualTo(carriage);
    assertThat(battery(trip, 1).maxCarried()).isEqualTo(most);
    assertThat(keys(trip.calculate().rows(TravelResults.PROJECT).get(0).reasons()))
        .contains(TravelFinding.RULE_NICKEL);
  }

  @ParameterizedTest
  @CsvSource({"12,100,2", "12,100.01,0", "12.5,90,0", "24,90,0", "6,40,2"})
  void sealed_lead_up_to_12_v_and_100_wh(double volts, double energy, int carried) {
    Ranges trip =
        add(flight(TODAY, "US"), "lead", energy, 3, "chemistry", "lead, sealed", "volts", volts);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(carried);
  }

  @Test
  void lead_without_its_voltage_or_not_sealed_stops() {
    Ranges trip = add(flight(TODAY), "lead", 90, 1, "chemistry", "lead, sealed");
    assertThat(keys(battery(trip, 1).reasons())).contains(TravelFinding.NO_VOLTS);
    assertNothingCarried(trip);
    trip.set("batteries", 1, "chemistry", "lead", "volts", 12);
    assertThat(keys(battery(trip, 1).reasons())).contains(TravelFinding.SPILLABLE);
    assertNothingCarried(trip);
  }

  @ParameterizedTest
  @CsvSource({"ICAO,2,1", "ICAO,2.01,0", "US,2,1", "US,8,0", "ICAO,,0"})
  void lithium_metal_by_its_grams(String rules, Double grams, int carried) {
    Ranges trip = add(flight(TODAY, rules), "cell", "", 1, "chemistry", "lithium metal");
    if (grams != null) {
      trip.set("batteries", 1, "lithium", grams);
    }
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(carried);
    assertThat(battery(trip, 1).verdict() == Verdict.STOP).isEqualTo(grams == null);
  }

  @Test
  void sodium_ion_is_never_carried_without_an_answer() {
    Ranges trip = add(flight(TODAY), "Na", 90, 1, "chemistry", "sodium-ion");
    assertNothingCarried(trip);
    assertThat(keys(battery(trip, 1).reasons())).contains(TravelFinding.UNANSWERED);
    assertThat(battery(answer(trip, "Na", 90, 1), 1).carriedPieces()).isEqualTo(1);
  }

  // energy

  @Test
  void no_energy_and_zero_energy_stop_whatever_was_answered() {
    Ranges trip = answer(add(flight(TODAY), "P0", 0, 2), "P0", 100, 5);
    assertThat(keys(battery(trip, 1).reasons())).contains(TravelFinding.ZERO_ENERGY);
    assertNothingCarried(trip);
    trip.set("batteries", 1, "volts", 14.4, "ampHours", 6.8);
    assertThat(battery(trip, 1).verdict()).isEqualTo(Verdict.STOP);
    trip.set("batteries", 1, "energy", "", "volts", "");
    assertThat(keys(battery(trip, 1).reasons())).contains(TravelFinding.NO_ENERGY);
    assertNothingCarried(trip);
  }

  /** 14.4 V × 6.8 Ah = 97.92 Wh; UN Manual of Tests and Criteria 38.3.2.3, from memory. */
  @Test
  void energy_from_volts_and_amp_hours_is_marked() {
    Ranges trip = add(flight(TODAY), "P98", "", 2, "volts", 14.4, "ampHours", 6.8);
    assertThat(battery(trip, 1).usedEnergy()).isEqualTo(97.92);
    assertThat(battery(trip, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(2);
    PlanResult result = trip.calculate();
    Finding marked = TravelStatement.WORKED_OUT.of(97.92, 14.4, 6.8);
    assertThat(TravelSamples.types(result).get(0).notes()).contains(marked);
    assertThat(TravelSamples.cards(result).get(0).notes()).contains(marked);
  }

  @Test
  void a_product_with_float_dust_is_still_100_wh() {
    double dusty = 0.1 * 3 * 1000 / 3;
    assertThat(dusty).isGreaterThan(100);
    assertThat(battery(add(flight(TODAY), "P100", dusty, 1), 1).carriage())
        .isEqualTo(FlightClass.CABIN);
    assertThat(battery(add(flight(TODAY), "P160", dusty * 1.6, 1), 1).carriage())
        .isEqualTo(FlightClass.CABIN_AGREED);
    Ranges worked = add(flight(TODAY), "P100", "", 1, "volts", 0.1 * 3, "ampHours", 1000.0 / 3);
    assertThat(battery(worked, 1).carriage()).isEqualTo(FlightClass.CABIN);
    assertThat(battery(add(flight(TODAY), "P101", 100.01, 1), 1).carriage())
        .isEqualTo(FlightClass.CABIN_AGREED);
  }

  // answers

  @Test
  void over_100_wh_nothing_is_carried_before_every_carrier_answered() {
    Ranges trip = add(flight(TODAY), "P150", 150, 2);
    trip.row("flights", "flight", "QB 20", "date", day("2026-06-02"), "carrier", "Quay Air");
    assertNothingCarried(trip);
    answer(trip, "P150", 150, 2);
    assertNothingCarried(trip);
    assertThat(battery(trip, 1).reasons()).contains(Finding.of(TravelFinding.UNANSWERED, "QB 20"));
    decide(trip, "P150", "gaffer", 2);
    assertThat(lineKeys(trip)).containsExactly(TravelFinding.LINE_UNANSWERED);
    assertNothingCarried(trip);
    answer(trip, "P150", 150, 2, "flight", "QB 20", "carrier", "Quay Air");
    trip.set("answers", 2, "date", day("2026-06-02"));
    assertThat(lines(trip).get(0).verdict()).isEqualTo(Verdict.OK);
  }

  @ParameterizedTest
  @CsvSource({
    "carrier,Other Air,ANSWER_CARRIER",
    "flight,SA 999,ANSWER_FLIGHT",
    "date,46000,ANSWER_DATE",
    "travellers,sound,ANSWER_TRAVELLER",
    "type,P151,ANSWER_TYPE",
    "energy,149,ANSWER_ENERGY",
    "number,0,ANSWER_REFUSED",
    "reference,'',",
    "answered,46190,ANSWER_LATE"
  })
  void an_answer_covers_what_it_names_and_nothing_else(
      String column, String cell, TravelFinding finding) {
    Ranges trip = answer(add(flight(TODAY), "P150", 150, 2), "P150", 150, 2);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(2);
    trip.set("answers", 1, column, cell.matches("\\d+") ? (Object) Double.parseDouble(cell) : cell);
    assertNothingCarried(trip);
    TravelResults.AnswerResult result = trip.calculate().rows(TravelResults.ANSWERS).get(0);
    assertThat(result.verdict()).isNotEqualTo(Verdict.OK);
    if (finding != null) {
      assertThat(keys(result.reasons())).contains(finding);
    }
  }

  @ParameterizedTest
  @CsvSource({"2025-05-31,true", "2025-06-01,false"})
  void an_answer_more_than_a_year_old_is_a_check(String answered, boolean old) {
    Ranges trip = answer(add(flight(TODAY), "P150", 150, 2), "P150", 150, 2);
    trip.set("answers", 1, "answered", day(answered));
    List<Finding> reasons = trip.calculate().rows(TravelResults.ANSWERS).get(0).reasons();
    assertThat(keys(reasons).contains(TravelFinding.ANSWER_OLD)).isEqualTo(old);
  }

  @Test
  void an_answer_covers_the_travellers_it_names() {
    Ranges trip = flight(TODAY).row("travellers", "traveller", "sound");
    add(trip, "P150", 150, 4);
    answer(trip, "P150", 150, 2, "travellers", "sound");
    assertThat(lines(trip))
        .singleElement()
        .matches(l -> l.traveller().equals("sound") && l.pieces() == 2);
  }

  @Test
  void the_least_of_two_answers_counts() {
    Ranges trip = answer(add(flight(TODAY), "P150", 150, 2), "P150", 150, 2);
    assertThat(battery(answer(trip, "P150", 160, 1), 1).carriedPieces()).isEqualTo(1);
  }

  @Test
  void an_answer_that_cannot_be_read_stops_what_it_may_be_about() {
    Ranges trip = answer(add(flight(TODAY), "P98", 98, 2), "P98", 98, 5);
    trip.set("answers", 1, "number", "five");
    assertThat(lineKeys(trip)).containsExactly(TravelFinding.LINE_ANSWER_UNCLEAR);
    assertNothingCarried(trip);
  }

  // condition, register, bag

  @ParameterizedTest
  @CsvSource({
    "condition,dropped",
    "condition,wet",
    "condition,swollen",
    "condition,recalled",
    "condition,contacts",
    "condition,label unreadable",
    "condition,''",
    "condition,n",
    "condition,fine?",
    "carried,damaged",
    "register,quarantine",
    "register,retire",
    "register,service",
    "register,not inspected",
    "register,unclear",
    "register,recalled",
    "terminals,no",
    "un383,no"
  })
  void what_is_not_sound_is_on_no_paper_whatever_was_decided(String column, String word) {
    for (String way : List.of("road", "cargo aircraft")) {
      Ranges trip = flight(TODAY).set("project", 1, "rest", way, "handOver", day(TODAY));
      add(trip, "P98", 98, 1, "kilograms", 0.7, "cells", 12, "charge", 0.2);
      PlanResult before = trip.calculate();
      assertThat(TravelSamples.types(before)).hasSize(1);
      trip.set("batteries", 1, column, word);
      decide(trip, "P98", "gaffer", 1);
      assertThat(battery(trip, 1).verdict()).isEqualTo(Verdict.STOP);
      assertThat(battery(trip, 1).heldPieces()).isEqualTo(1);
      assertNothingCarried(trip);
      PlanResult result = trip.calculate();
      assertThat(TravelSamples.freight(result)).isEmpty();
      assertThat(TravelSamples.road(result)).isEmpty();
      assertThat(result.rows(TravelPapers.PAPERS)).allMatch(p -> p.withheld() > 0);
    }
  }

  @Test
  void a_serial_in_quarantine_stops_and_its_neighbours_fly() {
    Ranges trip = flight(TODAY);
    add(trip, "P98-01", 98, 1, "type", "P98", "register", "keep");
    add(trip, "P98-02", 98, 1, "type", "P98", "register", "quarantine");
    add(trip, "P98-03", 98, 1, "type", "P98", "register", "watch");
    assertThat(lines(trip)).extracting(l -> l.battery()).containsExactly("P98-01", "P98-03");
    assertThat(TravelSamples.types(trip.calculate()))
        .singleElement()
        .matches(r -> r.type().equals("P98") && r.pieces() == 2);
    add(trip, "p98-03 ", 98, 1, "type", "P98");
    assertThat(lines(trip)).extracting(l -> l.battery()).containsExactly("P98-01");
  }

  @Test
  void a_spare_in_the_hold_stops() {
    Ranges trip = add(flight(TODAY), "P98", 98, 1);
    decide(trip, "P98", "gaffer", 1).set("packing", 1, "bag", "hold");
    assertThat(lineKeys(trip)).containsExactly(TravelFinding.PACKED_HOLD);
    assertNothingCarried(trip);
    trip.set("batteries", 1, "carried", "in equipment");
    assertThat(lines(trip).get(0).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void over_160_wh_is_carried_by_nobody() {
    Ranges trip = decide(add(flight(TODAY), "P294", 294, 1), "P294", "gaffer", 1);
    assertThat(lineKeys(trip)).containsExactly(TravelFinding.LINE_CLASS);
    assertNothingCarried(trip);
  }

  @Test
  void outputs_may_make_a_power_bank() {
    Ranges trip = add(flight(TODAY), "V98", 98, 1, "outputs", "yes", "terminals", "yes");
    assertThat(keys(battery(trip, 1).reasons())).containsExactly(TravelFinding.OUTPUTS);
  }

  /** A flight that names no rules has those of Project; ICAO where that is blank. */
  @Test
  void a_flight_without_rules_has_those_of_the_project() {
    Ranges trip = add(flight(TODAY, ""), "P98", 98, 1);
    assertThat(trip.calculate().rows(TravelResults.FLIGHTS).get(0).edition()).contains("Addendum");
    trip.set("project", 1, "flightRules", "US");
    assertThat(trip.calculate().rows(TravelResults.FLIGHTS).get(0).edition()).contains("49 CFR");
    trip.set("flights", 1, "rules", "ICAO");
    assertThat(trip.calculate().rows(TravelResults.FLIGHTS).get(0).edition()).contains("Addendum");
  }

  /** From or to the US each limit is the stricter of US and ICAO: 20 spares and two power banks. */
  @ParameterizedTest
  @CsvSource({"US,20,2,STOP", "US domestic,60,5,OK", "ICAO,20,2,STOP"})
  void a_flight_from_or_to_the_us_has_the_stricter_of_both(
      String rules, int spares, int banks, Verdict decided) {
    Ranges trip = add(flight(TODAY, rules), "P98", 98, 60);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(spares);
    add(trip, "bank", 74, 5, "carried", "power bank");
    decide(decide(trip, "P98", "gaffer", spares - banks), "bank", "gaffer", 5);
    assertThat(
            lines(trip).stream()
                .filter(l -> l.battery().equals("bank"))
                .map(TravelResults.LineRow::verdict))
        .contains(decided);
  }

  @Test
  void nickel_in_the_hold_stops_where_one_of_both_rules_says_cabin() {
    Ranges trip = add(flight(TODAY, "US"), "AA", "", 8, "chemistry", "NiMH");
    decide(trip, "AA", "gaffer", 8).set("packing", 1, "bag", "hold");
    assertThat(lineKeys(trip)).containsExactly(TravelFinding.PACKED_HOLD);
  }

  /** 14.4 V × 10 Ah = 144 Wh with 98 Wh on the label: nobody knows on which side of 100 it is. */
  @ParameterizedTest
  @CsvSource({"98,10,true", "144,6.8,true", "150,12,true", "98,6.2,false", "150,11,false"})
  void a_label_across_a_limit_is_held_back(double energy, double ampHours, boolean held) {
    Ranges trip = add(flight(TODAY), "P", energy, 1, "volts", 14.4, "ampHours", ampHours);
    answer(trip, "P", 160, 2);
    assertThat(battery(trip, 1).verdict() == Verdict.STOP).isEqualTo(held);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(held ? 0 : 1);
  }

  /** 30 typed for 130: 29 Wh/kg; lithium-ion packs have 100 to 250, from memory. */
  @ParameterizedTest
  @CsvSource({"30,1.05,true", "146,1.05,false", "98,0.75,false"})
  void fewer_wh_than_the_weight_has_are_a_check(double energy, double kilograms, boolean low) {
    Ranges trip = add(flight(TODAY), "P", energy, 1, "kilograms", kilograms);
    assertThat(keys(battery(trip, 1).reasons()).contains(TravelFinding.ENERGY_LOW)).isEqualTo(low);
  }

  /** What may be taken for a power bank is proposed like one: two a person. */
  @Test
  void the_proposal_counts_outputs_as_a_power_bank() {
    Ranges trip = add(flight(TODAY), "V98", 98, 3, "outputs", "yes", "terminals", "yes");
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(2);
    add(trip, "bank", 74, 1, "carried", "power bank", "priority", 1);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(1);
  }

  @Test
  void a_battery_without_wh_has_no_class_that_could_be_named() {
    Ranges trip = decide(add(flight(TODAY), "focus", "", 1), "focus", "gaffer", 1);
    assertThat(lineKeys(trip)).containsExactly(TravelFinding.LINE_BATTERY);
  }

  @Test
  void a_flight_that_nobody_takes_is_a_check() {
    Ranges trip = add(flight(TODAY), "P98", 98, 1);
    trip.row("flights", "flight", "QB 20", "date", day("2026-06-02"), "carrier", "Quay Air");
    trip.set("travellers", 1, "flights", "SA 101");
    List<TravelResults.FlightResult> flights = trip.calculate().rows(TravelResults.FLIGHTS);
    assertThat(keys(flights.get(0).reasons())).isEmpty();
    assertThat(keys(flights.get(1).reasons())).containsExactly(TravelFinding.FLIGHT_EMPTY);
    assertThat(flights.get(1).verdict()).isEqualTo(Verdict.CHECK);
  }

  // people

  /** Six power banks, two a person since 27 March 2026: three people. */
  @Test
  void the_rules_alone_ask_for_three_people_for_six_power_banks() {
    Ranges trip = add(flight(TODAY), "bank", 74, 6, "carried", "power bank");
    assertThat(trip.calculate().rows(TravelResults.SUMMARY).get(0).fewestTravellers()).isEqualTo(3);
  }

  /** US first, ICAO second: 41 spares at 20 a person are three people. */
  @Test
  void the_rules_of_every_flight_are_asked() {
    Ranges trip = add(flight(TODAY, "US"), "P98", 98, 41);
    trip.row("flights", "flight", "QB 20", "date", day("2026-06-02"), "carrier", "Quay Air");
    assertThat(trip.calculate().rows(TravelResults.SUMMARY).get(0).fewestTravellers()).isEqualTo(3);
    assertThat(TravelSamples.flights(trip.calculate()))
        .extracting(r -> r.notes().stream().filter(n -> n.key() == TravelStatement.RULES).toList())
        .hasSize(2)
        .doesNotHaveDuplicates();
  }

  @Test
  void ones_own_batteries_count_too() {
    Ranges trip = add(flight(TODAY), "bank", 74, 2, "carried", "power bank");
    trip.set("travellers", 1, "ownBanks", 1);
    assertThat(battery(trip, 1).carriedPieces()).isEqualTo(1);
    trip.set("travellers", 1, "ownBanks", 3);
    assertThat(trip.calculate().rows(TravelResults.TRAVELLERS).get(0).verdict())
        .isEqualTo(Verdict.STOP);
    assertNothingCarried(trip);
  }

  @Test
  void every_traveller_is_judged_on_the_own_flights() {
    Ranges trip = add(flight("2026-03-26"), "bank", 74, 6, "carried", "power bank");
    trip.row("flights", "flight", "QB 20", "date", day("2026-03-27"), "carrier", "Quay Air");
    trip.set("travellers", 1, "flights", "SA 101");
    trip.row("travellers", "traveller", "sound", "flights", "SA 101; QB 20");
    decide(decide(trip, "bank", "gaffer", 3), "bank", "sound", 3);
    assertThat(lines(trip))
        .extracting(TravelResults.LineRow::verdict)
        .containsExactly(Verdict.OK, Verdict.STOP);
  }
}
