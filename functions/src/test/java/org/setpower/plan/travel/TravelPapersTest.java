package org.setpower.plan.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.travel.TravelSamples.add;
import static org.setpower.plan.travel.TravelSamples.answer;
import static org.setpower.plan.travel.TravelSamples.day;
import static org.setpower.plan.travel.TravelSamples.decide;
import static org.setpower.plan.travel.TravelSamples.flight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.InputColumn;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.RandomTables;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/** What stands on the papers, and what never does. */
class TravelPapersTest {
  private static final String TODAY = "2026-06-01";
  private static final int MOST_MOVED = 6;
  private static final EnglishMessages ENGLISH = new EnglishMessages();

  /** Random trips, most of whose rows are in order. */
  private static Ranges random(int seed) {
    Ranges ranges =
        new RandomTables(TravelPlan.MODEL, TravelPapersTest::values, new Random(seed))
            .valid(1 + seed % 8);
    for (String table : List.of("flights", "travellers", "batteries")) {
      Set<Object> once = new HashSet<>();
      String key =
          TravelPlan.MODEL.inputs().stream()
              .filter(t -> t.key().equals(table))
              .findFirst()
              .orElseThrow()
              .columns()
              .get(0)
              .key();
      ranges.rows(table).removeIf(r -> !once.add(r.get(key)));
    }
    if (seed % 3 > 0) {
      ranges.rows("packing").clear();
    }
    if (seed % 5 > 0) {
      ranges.rows("flights").forEach(r -> r.put("date", 46_170.0));
      ranges.rows("answers").forEach(r -> r.put("date", 46_170.0));
      ranges.rows("travellers").forEach(r -> r.put("flights", ""));
      ranges.rows("project").forEach(r -> r.put("handOver", 46_165.0));
    }
    return ranges;
  }

  private static List<Object> values(InputColumn column) {
    return switch (column.path()) {
      case "batteries.register" -> List.of("", "keep");
      case "batteries.terminals", "batteries.un383" -> List.of("yes");
      case "batteries.carried" -> List.of("spare", "spare", "in equipment", "power bank");
      case "answers.carrier", "flights.carrier" -> List.of("Salt Air");
      case "answers.flight", "flights.flight" -> List.of("F1", "F2");
      case "answers.travellers", "answers.answered" -> List.of("");
      case "travellers.ownBanks", "travellers.ownSpares", "travellers.ownDevices" ->
          List.of("", 1.0);
      default -> TravelSamples.values(column);
    };
  }

  private static int sum(List<Integer> pieces) {
    return pieces.stream().mapToInt(Integer::intValue).sum();
  }

  @Test
  void papers_agree_with_the_verdicts() {
    int carried = 0;
    int shipped = 0;
    for (int seed = 0; seed < 1000; seed++) {
      PlanResult result = random(seed).calculate();
      List<TravelResults.LineRow> fit =
          TravelSamples.carried(result).stream().filter(l -> l.verdict() != Verdict.STOP).toList();
      assertThat(
              TravelSamples.cards(result).stream()
                  .map(c -> c.traveller() + "|" + c.battery() + "|" + c.pieces()))
          .as("seed %s", seed)
          .containsExactlyInAnyOrderElementsOf(
              fit.stream().map(l -> l.traveller() + "|" + l.battery() + "|" + l.pieces()).toList());
      TravelResults.Summary summary = result.rows(TravelResults.SUMMARY).get(0);
      assertThat(summary.carried())
          .isEqualTo(sum(fit.stream().map(TravelResults.LineRow::pieces).toList()));
      assertThat(
              sum(
                  TravelSamples.freight(result).stream()
                      .filter(r -> r.direction() == TravelPapers.Direction.OUT)
                      .map(TravelPapers.FreightRow::pieces)
                      .toList()))
          .isEqualTo(summary.freight());
      assertThat(
              sum(
                  TravelSamples.road(result).stream()
                      .filter(r -> r.direction() == TravelPapers.Direction.OUT)
                      .map(TravelPapers.RoadRow::pieces)
                      .toList()))
          .isEqualTo(summary.road());
      assertThat(
              summary.carried()
                  + summary.freight()
                  + summary.road()
                  + summary.stay()
                  + summary.held())
          .as("seed %s", seed)
          .isGreaterThanOrEqualTo(summary.pieces());
      assertWithheld(result);
      assertStopped(result);
      carried += summary.carried();
      shipped += summary.freight() + summary.road();
    }
    assertThat(carried).isGreaterThan(300);
    assertThat(shipped).isGreaterThan(300);
  }

  private static void assertWithheld(PlanResult result) {
    int stopped =
        (int)
            result.rows(TravelResults.BATTERIES).stream()
                .filter(Objects::nonNull)
                .filter(b -> b.verdict() == Verdict.STOP)
                .count();
    int lines =
        (int)
            TravelSamples.carried(result).stream().filter(l -> l.verdict() == Verdict.STOP).count();
    List<TravelResults.LineRow> rest =
        TravelSamples.rest(result).stream().filter(r -> r.verdict() == Verdict.STOP).toList();
    int air = (int) rest.stream().filter(r -> r.traveller().contains("aircraft")).count();
    int road = (int) rest.stream().filter(r -> r.traveller().startsWith("road")).count();
    assertThat(result.rows(TravelPapers.PAPERS))
        .extracting(TravelPapers.PaperRow::withheld)
        .containsExactly(lines + stopped, lines + stopped, air + stopped, road + stopped);
    assertThat(result.rows(TravelPapers.PAPERS).subList(2, 4))
        .allMatch(
            p ->
                p.withheld() == 0
                    || p.notes()
                        .contains(TravelStatement.ROWS.of(p.rows(), p.rows() + p.withheld())));
  }

  /** No battery that stops is named on any paper. */
  private static void assertStopped(PlanResult result) {
    Set<String> onPapers = new HashSet<>();
    TravelSamples.cards(result).forEach(r -> onPapers.add(r.battery()));
    TravelSamples.freight(result).forEach(r -> onPapers.add(r.battery()));
    TravelSamples.road(result).forEach(r -> onPapers.add(r.battery()));
    for (TravelResults.BatteryResult battery : result.rows(TravelResults.BATTERIES)) {
      if (battery != null && battery.verdict() == Verdict.STOP) {
        assertThat(battery.carriedPieces() + battery.freightPieces() + battery.roadPieces())
            .isZero();
      }
    }
    assertThat(onPapers.size())
        .isLessThanOrEqualTo(
            (int)
                result.rows(TravelResults.BATTERIES).stream()
                    .filter(b -> b != null && b.verdict() != Verdict.STOP)
                    .count());
  }

  /** Written from the rules, not from the model: nobody has more than the law and the answers. */
  @Test
  void a_proposal_is_legal_on_every_flight() {
    int people = 0;
    for (int seed = 0; seed < 1000; seed++) {
      Ranges trip = random(seed);
      trip.rows("packing").clear();
      trip.rows("flights").forEach(r -> r.put("rules", "ICAO"));
      trip.rows("flights").forEach(r -> r.put("date", 46_170.0));
      Map<Object, Map<String, Object>> batteries = new HashMap<>();
      trip.rows("batteries").forEach(b -> batteries.put(b.get("battery"), b));
      Map<String, int[]> counts = new HashMap<>();
      PlanResult result = trip.calculate();
      for (TravelPapers.CardRow card : TravelSamples.cards(result)) {
        int[] n = counts.computeIfAbsent(card.traveller(), k -> new int[4]);
        String chemistry =
            Objects.toString(batteries.get(card.battery()).get("chemistry"), "Li-ion");
        boolean bank = card.carried().word().equals("power bank");
        boolean spare = card.carried().word().equals("spare");
        boolean ion = Set.of("Li-ion", "LFP", "").contains(chemistry);
        n[0] += spare ? card.pieces() : 0;
        n[1] += bank ? card.pieces() : 0;
        n[2] += spare && ion && card.energy() > 100 ? card.pieces() : 0;
        n[3] += !spare && !bank && ion ? card.pieces() : 0;
        assertThat(!ion || card.energy() <= 160).as("seed %s", seed).isTrue();
        if (ion && card.energy() > 100) {
          assertThat(keys(card.notes()))
              .as("seed %s", seed)
              .containsAnyOf(TravelStatement.ANSWER, TravelStatement.ANSWER_UNDATED);
        }
      }
      for (int[] n : counts.values()) {
        people++;
        assertThat(n[0]).as("seed %s spares", seed).isLessThanOrEqualTo(20);
        assertThat(n[1]).as("seed %s banks", seed).isLessThanOrEqualTo(2);
        assertThat(n[2]).as("seed %s over 100 Wh", seed).isLessThanOrEqualTo(2);
        assertThat(n[3]).as("seed %s devices", seed).isLessThanOrEqualTo(15);
      }
      assertThat(TravelSamples.carried(result))
          .as("seed %s", seed)
          .allMatch(
              l -> keys(l.reasons()).stream().noneMatch(k -> k.key().startsWith("travel.over")));
    }
    assertThat(people).isGreaterThan(200);
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  /** One more spare in a decided line never makes a stop vanish. */
  @Test
  void one_more_spare_never_makes_a_stop_vanish() {
    int stops = 0;
    for (int seed = 0; seed < 1000; seed++) {
      Ranges trip = random(seed * 3);
      if (trip.rows("packing").isEmpty() || trip.rows("batteries").isEmpty()) {
        continue;
      }
      trip.rows("packing").forEach(r -> r.put("decided", "yes"));
      Ranges more = trip.copy();
      Map<String, Object> line = more.rows("packing").get(0);
      if (line.get("pieces") instanceof Double pieces) {
        line.put("pieces", pieces + 1);
      }
      Set<String> before = stopped(trip.calculate());
      assertThat(stopped(more.calculate())).as("seed %s", seed * 3).containsAll(before);
      stops += before.size();
    }
    assertThat(stops).isGreaterThan(100);
  }

  /** Names of decided lines, travellers and batteries that stop. */
  private static Set<String> stopped(PlanResult result) {
    Set<String> stopped =
        TravelSamples.carried(result).stream()
            .filter(l -> l.decided() && l.verdict() == Verdict.STOP)
            .map(l -> l.traveller() + "|" + l.battery())
            .collect(Collectors.toSet());
    List<TravelResults.BatteryResult> rows = result.rows(TravelResults.BATTERIES);
    IntStream.range(0, rows.size())
        .filter(i -> rows.get(i) != null && rows.get(i).verdict() == Verdict.STOP)
        .forEach(i -> stopped.add("battery " + i));
    return stopped;
  }

  // what papers say

  /**
   * A paper states what was written or ticked; whether a thing may be carried, others decide. The
   * words are those of the design of the sheet.
   */
  @Test
  void no_paper_says_that_anything_is_allowed() {
    Pattern never =
        Pattern.compile(
            "\\b(allowed|compliant|complies|permitted|approved|legal|safe|certified|signature"
                + "|signed|guarantee\\w*|airlines? agreed)\\b",
            Pattern.CASE_INSENSITIVE);
    List<String> texts = new ArrayList<>();
    for (TravelStatement statement : TravelStatement.values()) {
      Object[] arguments = new Object[7];
      Arrays.fill(arguments, 1.0);
      texts.add(ENGLISH.sentence(Finding.of(statement, arguments), Locale.ENGLISH));
    }
    for (Ranges sample : TravelSamples.all()) {
      PlanResult result = sample.calculate();
      TravelPlan.MODEL.results().forEach(t -> texts.addAll(words(result.rows(t))));
    }
    TravelPlan.MODEL.results().stream()
        .flatMap(t -> t.columns().stream())
        .forEach(c -> texts.add(c.heading()));
    assertThat(texts).hasSizeGreaterThan(300);
    assertThat(texts).noneMatch(t -> never.matcher(t).find());
    assertThat(texts.stream().filter(t -> t.contains("Declaration")))
        .isNotEmpty()
        .allMatch(t -> t.contains("not a Shipper's Declaration"));
  }

  /** All texts of rows: cells and sentences of notes. */
  private static List<String> words(List<? extends Record> rows) {
    List<String> texts = new ArrayList<>();
    for (Record row : rows) {
      if (row == null) {
        continue;
      }
      for (var component : row.getClass().getRecordComponents()) {
        try {
          Object cell = component.getAccessor().invoke(row);
          if (cell instanceof List<?> notes) {
            notes.forEach(n -> texts.add(ENGLISH.sentence((Finding) n, Locale.ENGLISH)));
          } else if (cell instanceof String text) {
            texts.add(text);
          }
        } catch (ReflectiveOperationException e) {
          throw new IllegalStateException(e);
        }
      }
    }
    return texts;
  }

  @Test
  void a_card_says_only_what_was_answered_ticked_or_typed() {
    Ranges trip = add(flight(TODAY), "P98", 98, 1);
    assertThat(card(trip).notes()).isEmpty();
    trip.set("batteries", 1, "terminals", "yes", "user", "gaffer");
    assertThat(keys(card(trip).notes()))
        .containsExactly(TravelStatement.TERMINALS, TravelStatement.OWN_WORK);
    trip.set("batteries", 1, "user", "sound");
    assertThat(keys(card(trip).notes())).containsExactly(TravelStatement.TERMINALS);
    trip.set("travellers", 1, "ownBanks", 1);
    TravelPapers.CardRow head = trip.calculate().rows(TravelPapers.CARDS).get(0);
    assertThat(head.traveller()).isEqualTo("gaffer");
    assertThat(keys(head.notes()))
        .containsExactly(TravelStatement.CARD_DATE, TravelStatement.CONTACT, TravelStatement.OWN);
    assertThat(keys(trip.calculate().rows(TravelPapers.CARDS).get(1).notes()))
        .containsExactly(
            TravelStatement.CARD_FLIGHT,
            TravelStatement.COUNT_SPARES,
            TravelStatement.COUNT_LARGE,
            TravelStatement.COUNT_BANKS);
  }

  private static TravelPapers.CardRow card(Ranges trip) {
    return TravelSamples.cards(trip.calculate()).get(0);
  }

  @Test
  void a_card_names_the_written_answer_of_each_flight() {
    Ranges trip = add(flight(TODAY), "P150", 150, 2);
    answer(trip, "P150", 150, 2);
    String note = ENGLISH.sentences(card(trip).notes(), Locale.ENGLISH);
    assertThat(note)
        .isEqualTo("Carrier's written answer for SA 101: 2 a person; mail 17, 21 May 2026.");
  }

  @Test
  void an_installed_battery_is_not_called_a_spare() {
    Ranges trip = add(flight(TODAY), "camera", 98, 1, "carried", "in equipment");
    assertThat(card(trip).carried().word()).isEqualTo("in equipment");
  }

  @Test
  void the_check_in_sheet_has_all_flights_all_types_and_the_law_of_each() {
    Ranges trip = flight(TODAY);
    for (int f = 2; f <= 6; f++) {
      trip.row("flights", "flight", "F" + f, "date", day("2026-06-0" + f), "carrier", "Quay Air");
      trip.set("flights", f, "rules", f % 2 == 0 ? "US" : "ICAO");
    }
    trip.row("travellers", "traveller", "sound");
    for (int b = 1; b <= 9; b++) {
      add(trip, "type " + b, 50 + b, 3);
    }
    PlanResult result = trip.calculate();
    List<TravelPapers.CheckInRow> rows = TravelSamples.types(result);
    assertThat(rows).hasSize(54);
    assertThat(sum(rows.stream().map(TravelPapers.CheckInRow::pieces).toList())).isEqualTo(6 * 27);
    List<TravelPapers.CheckInRow> flights = TravelSamples.flights(result);
    assertThat(flights).hasSize(6);
    for (int f = 1; f <= 6; f++) {
      String notes = ENGLISH.sentences(flights.get(f - 1).notes(), Locale.ENGLISH);
      assertThat(notes).contains(f % 2 == 0 ? "49 CFR" : "Addendum 1");
    }
    assertThat(rows)
        .allMatch(r -> r.travellers().matches("(gaffer 3|gaffer [12], sound [12]|sound 3)"));
    TravelPapers.PaperRow paper = result.rows(TravelPapers.PAPERS).get(0);
    assertThat(paper.rows()).isEqualTo(54);
    assertThat(paper.issued()).isEqualTo("2026-05-22");
  }

  @Test
  void cards_for_25_travellers_are_25() {
    Ranges trip = flight(TODAY);
    for (int t = 2; t <= 25; t++) {
      trip.row("travellers", "traveller", "role " + t);
    }
    add(trip, "P98", 98, 25);
    for (int t = 1; t <= 25; t++) {
      decide(trip, "P98", t == 1 ? "gaffer" : "role " + t, 1);
    }
    assertThat(TravelSamples.cards(trip.calculate())).hasSize(25);
  }

  @Test
  void the_check_in_sheet_has_only_what_is_carried() {
    Ranges trip = add(add(flight(TODAY), "P98", 98, 1), "P294", 294, 2);
    assertThat(TravelSamples.types(trip.calculate()))
        .extracting(TravelPapers.CheckInRow::type)
        .containsExactly("P98");
  }

  // freight and road

  private static Ranges freight(Object... more) {
    Ranges trip = flight(TODAY);
    trip.set("project", 1, "rest", "cargo aircraft", "handOver", day("2026-05-28"));
    trip.set("project", 1, "back", "stays").rows("travellers").clear();
    trip.row("travellers", "traveller", "gaffer", "flights", "SA 101");
    add(trip, "P294", 294, 9, "kilograms", 2.1, "charge", 0.3);
    trip.set("batteries", 1, "chargePieces", 20, "backPieces", 9);
    trip.set("batteries", 1, more);
    Object there = trip.rows("batteries").get(0).get("quantity");
    return trip.set("batteries", 1, "chargePieces", there);
  }

  private static TravelPapers.FreightRow freightRow(Ranges trip) {
    return TravelSamples.freight(trip.calculate()).get(0);
  }

  /** PI 965 Section IA: over 100 Wh; 35 kg a package, from memory; 30 % (HM-224I). */
  @Test
  void freight_papers_name_number_instruction_section_packages_and_limits() {
    TravelPapers.FreightRow row = freightRow(freight());
    assertThat(List.of(row.un(), row.instruction().arguments().get(0), row.section()))
        .containsExactly("UN 3480", "PI 965", "IA");
    assertThat(row.aircraft()).isEqualTo(Onward.CARGO_AIRCRAFT);
    assertThat(row.weight()).isEqualTo(18.9);
    assertThat(row.maxPackage()).isEqualTo(35);
    assertThat(row.packages()).isEqualTo(1);
    assertThat(row.maxCharge()).isEqualTo(0.3);
    assertThat(row.binds()).isTrue();
    assertThat(row.labels().pattern()).contains("cargo aircraft only");
    assertThat(keys(row.notes())).containsExactly(TravelStatement.FREIGHT_CONFIRM);
    List<Finding> notes = freight().calculate().rows(TravelPapers.PAPERS).get(2).notes();
    assertThat(keys(notes)).contains(TravelStatement.FREIGHT_DATA, TravelStatement.CONTACT);
  }

  /** PI 965 Section IB: cells up to 20 Wh and batteries up to 100 Wh; 10 kg a package. */
  @ParameterizedTest
  @CsvSource({"12,IB,10,2", "4,IA,35,1", ",IA,35,1"})
  void section_ib_only_for_small_cells(Double cells, String section, double most, int packages) {
    Ranges trip = freight("battery", "P98", "energy", 98, "quantity", 20, "kilograms", 0.75);
    trip.rows("flights").get(0).put("date", day("2026-06-01"));
    trip.rows("travellers").clear();
    if (cells != null) {
      trip.set("batteries", 1, "cells", cells);
    }
    TravelPapers.FreightRow row = freightRow(trip);
    assertThat(row.section()).isEqualTo(section);
    assertThat(row.maxPackage()).isEqualTo(most);
    assertThat(row.packages()).isEqualTo(packages);
    assertThat(keys(TravelSamples.rest(trip.calculate()).get(0).reasons()))
        .satisfies(
            k -> assertThat(k.contains(TravelFinding.FREIGHT_NO_CELLS)).isEqualTo(cells == null));
  }

  @ParameterizedTest
  @CsvSource({
    "charge,0.301,FREIGHT_CHARGE",
    "charge,0.9,FREIGHT_CHARGE",
    "charge,'',FREIGHT_CHARGE_BLANK",
    "un383,'',FREIGHT_NO_SUMMARY",
    "kilograms,'',FREIGHT_NO_WEIGHT",
    "kilograms,36,FREIGHT_TOO_HEAVY",
    "rest,passenger aircraft,FREIGHT_PASSENGER"
  })
  void a_freight_row_that_is_not_complete_is_withheld(
      String column, String cell, TravelFinding finding) {
    Object typed = cell.matches("[\\d.]+") ? (Object) Double.parseDouble(cell) : cell;
    Ranges trip = freight(column, typed);
    if (finding == TravelFinding.FREIGHT_TOO_HEAVY) {
      trip.set("batteries", 1, "energy", 3600);
    }
    PlanResult result = trip.calculate();
    assertThat(keys(TravelSamples.rest(result).get(0).reasons())).contains(finding);
    assertThat(TravelSamples.freight(result)).isEmpty();
    assertThat(result.rows(TravelPapers.PAPERS).get(2).withheld()).isEqualTo(1);
  }

  @Test
  void un_38_3_no_stops_everywhere_and_30_percent_with_dust_does_not() {
    assertThat(freight("un383", "no").calculate().rows(TravelResults.BATTERIES).get(0).verdict())
        .isEqualTo(Verdict.STOP);
    assertThat(TravelSamples.freight(freight("charge", 0.1 + 0.2).calculate())).hasSize(1);
  }

  /** P294 at 90 %: 60 % of 294 Wh are 176.4 Wh to take out of each. */
  @Test
  void what_must_be_discharged_is_said() {
    Ranges trip = freight("charge", 0.9);
    assertThat(TravelSamples.rest(trip.calculate()).get(0).discharge()).isEqualTo(176.4);
    trip.set("batteries", 1, "charge", "");
    assertThat(TravelSamples.rest(trip.calculate()).get(0).discharge()).isEqualTo(205.8);
  }

  /** IATA DGR 67th edition 2026: 30 % mandatory with equipment over 2.7 Wh from 1 January 2026. */
  @ParameterizedTest
  @CsvSource({
    "2025-12-31,with equipment,false",
    "2026-01-01,with equipment,true",
    "2026-01-01,in equipment,false",
    "2026-12-31,alone,true"
  })
  void the_state_of_charge_binds_by_date_and_packing(String date, String packed, boolean binds) {
    Ranges trip = freight("packed", packed, "inUse", 3);
    trip.set("project", 1, "handOver", day(date));
    assertThat(freightRow(trip).binds()).isEqualTo(binds);
    PlanResult full = trip.set("batteries", 1, "charge", 1).calculate();
    assertThat(TravelSamples.freight(full)).hasSize(binds ? 0 : 1);
  }

  @ParameterizedTest
  @CsvSource({"2022-03-31", "2027-01-01", "2035-01-01", "''"})
  void past_the_edition_freight_papers_stop(String date) {
    Ranges trip = freight();
    trip.set("project", 1, "handOver", date.isEmpty() ? "" : (Object) day(date));
    assertThat(TravelSamples.freight(trip.calculate())).isEmpty();
    assertThat(TravelSamples.rest(trip.calculate()).get(0).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void sodium_ion_is_un_3551_and_to_be_confirmed() {
    TravelPapers.FreightRow row = freightRow(freight("chemistry", "sodium-ion"));
    assertThat(row.un()).isEqualTo("UN 3551");
    assertThat(keys(row.notes())).containsExactly(TravelStatement.FREIGHT_CONFIRM);
    Ranges road = freight("chemistry", "sodium-ion", "rest", "road");
    assertThat(TravelSamples.road(road.calculate()).get(0).un()).isEqualTo("UN 3551");
  }

  @Test
  void without_an_emergency_contact_freight_papers_stop() {
    Ranges trip = freight().set("project", 1, "contact", "");
    assertThat(TravelSamples.freight(trip.calculate())).isEmpty();
  }

  /** ADR 1.1.3.6: 333 kg, 3 points a kg; SP 188 up to 100 Wh with cells up to 20 Wh has none. */
  @ParameterizedTest
  @CsvSource({
    "294,40,8.3,,UN 3480,'',996",
    "98,40,0.75,12,UN 3480,SP 188,0",
    "98,40,0.75,4,UN 3480,'',90",
    "98,40,0.75,,UN 3480,'',90"
  })
  void the_road_paper_has_number_provision_and_points(
      double energy, int pieces, double one, Double cells, String un, String sp, double points) {
    Ranges trip = freight("energy", energy, "quantity", pieces, "kilograms", one, "rest", "road");
    trip.rows("travellers").clear();
    if (cells != null) {
      trip.set("batteries", 1, "cells", cells);
    }
    TravelPapers.RoadRow row = TravelSamples.road(trip.calculate()).get(0);
    assertThat(row.un()).isEqualTo(un);
    assertThat(row.provision() == null ? "" : row.provision().pattern()).isEqualTo(sp);
    assertThat(row.points()).isEqualTo(points);
  }

  @Test
  void over_333_kg_the_road_paper_stops_until_the_transport_office_answers() {
    Ranges trip = freight("quantity", 34, "kilograms", 9.8, "rest", "road");
    assertThat(TravelSamples.road(trip.calculate())).isEmpty();
    trip.set("project", 1, "transport", "note 4");
    assertThat(TravelSamples.road(trip.calculate())).hasSize(1);
    assertThat(keys(trip.calculate().rows(TravelPapers.PAPERS).get(3).notes()))
        .contains(TravelStatement.TRANSPORT);
    trip.set("project", 1, "transport", "").set("batteries", 1, "kilograms", 9.79);
    assertThat(TravelSamples.road(trip.calculate())).hasSize(1);
  }

  /**
   * IATA DGR PI 966, from memory: with equipment go the batteries that it takes at a time and two
   * spare sets. A camera that takes 2: 6, not 7.
   */
  @ParameterizedTest
  @CsvSource({"6,2,", "7,2,FREIGHT_SETS", "3,1,", "6,,FREIGHT_NO_SETS"})
  void with_equipment_go_those_in_use_and_two_spare_sets(
      int pieces, Double inUse, TravelFinding finding) {
    Ranges trip = freight("quantity", pieces, "packed", "with equipment");
    if (inUse != null) {
      trip.set("batteries", 1, "inUse", inUse);
    }
    PlanResult result = trip.calculate();
    List<FindingKey> keys = keys(TravelSamples.rest(result).get(0).reasons());
    if (finding == null) {
      assertThat(keys).doesNotContain(TravelFinding.FREIGHT_SETS, TravelFinding.FREIGHT_NO_SETS);
      assertThat(keys(TravelSamples.freight(result).get(0).notes()))
          .containsExactly(TravelStatement.FREIGHT_CONFIRM);
    } else {
      assertThat(keys).contains(finding);
      assertThat(TravelSamples.freight(result)).isEmpty();
    }
  }

  /** Packed alone or in equipment, nobody asks how many the equipment takes. */
  @Test
  void only_with_equipment_are_sets_asked_for() {
    assertThat(TravelSamples.freight(freight().calculate())).hasSize(1);
    assertThat(TravelSamples.freight(freight("packed", "in equipment").calculate())).hasSize(1);
  }

  /** IATA DGR PI 872, from memory: UN 2800, class 8; it prints confirm. */
  @Test
  void sealed_lead_goes_as_freight_and_by_road_and_is_to_be_confirmed() {
    Ranges air = freight("chemistry", "AGM", "volts", 12, "energy", 300, "charge", "");
    TravelPapers.FreightRow row = freightRow(air);
    assertThat(List.of(row.un(), row.instruction().arguments().get(0)))
        .containsExactly("UN 2800", "PI 872");
    assertThat(row.labels().pattern()).contains("class 8");
    assertThat(keys(row.notes())).containsExactly(TravelStatement.FREIGHT_CONFIRM);
    air.set("batteries", 1, "rest", "road");
    TravelPapers.RoadRow road = TravelSamples.road(air.calculate()).get(0);
    assertThat(road.un()).isEqualTo("UN 2800");
    assertThat(keys(road.notes())).containsExactly(TravelStatement.ROAD_CONFIRM);
  }

  /** 49 CFR 173.185(c), from memory: by highway up to 300 Wh with cells up to 60 Wh; no points. */
  @ParameterizedTest
  @CsvSource({"294,8,true", "294,4,false", "294,,false", "300,8,true", "301,8,false"})
  void us_roads_take_small_batteries_up_to_300_wh(double energy, Double cells, boolean small) {
    Ranges trip = freight("energy", energy, "rest", "road").set("project", 1, "roadRules", "US");
    if (cells != null) {
      trip.set("batteries", 1, "cells", cells);
    }
    List<TravelPapers.RoadRow> rows = TravelSamples.road(trip.calculate());
    assertThat(rows).hasSize(small ? 1 : 0);
    if (small) {
      assertThat(rows.get(0).provision().pattern()).contains("173.185(c)");
      assertThat(rows.get(0).points()).isNull();
      assertThat(keys(rows.get(0).notes())).containsExactly(TravelStatement.ROAD_CONFIRM);
    } else {
      assertThat(keys(TravelSamples.rest(trip.calculate()).get(0).reasons()))
          .contains(TravelFinding.ROAD_REGULATED);
      trip.set("project", 1, "transport", "note 4");
      assertThat(TravelSamples.road(trip.calculate())).hasSize(1);
    }
  }

  /** 1 lb = 0.45359237 kg: nine of 10 lb are 40.82 kg, in packages of 35 kg two. */
  @Test
  void weights_in_pounds_are_papers_in_kilograms() {
    Ranges trip = freight("kilograms", 10).set("project", 1, "weightUnit", "lb");
    TravelPapers.FreightRow row = freightRow(trip);
    assertThat(row.weight()).isEqualTo(40.823313, within(1e-5));
    assertThat(row.packages()).isEqualTo(2);
    Ranges carried = add(flight(TODAY), "P98", 98, 9, "kilograms", 2);
    carried.set("project", 1, "weightUnit", "lb").set("travellers", 1, "cabinKg", 10);
    assertThat(carried.calculate().rows(TravelResults.SUMMARY).get(0).carried()).isEqualTo(5);
  }

  /**
   * Ten P294 arrive at 30 %: 294 × 0.7 × 10 = 2,058 Wh. By 85 % of 500 W 4.8 h. Three days on the
   * way and a part of a day of charging before 1 February: 28 January.
   */
  @Test
  void the_day_to_hand_over_leaves_time_to_charge() {
    Ranges trip = freight("quantity", 10, "charge", 0.3);
    TravelResults.Summary summary = trip.calculate().rows(TravelResults.SUMMARY).get(0);
    assertThat(summary.toCharge()).isEqualTo(2058);
    assertThat(summary.chargeHours()).isNull();
    assertThat(summary.handOverBy()).isNull();
    trip.set("project", 1, "chargers", 500, "needed", day("2026-06-01"), "transit", 3);
    summary = trip.calculate().rows(TravelResults.SUMMARY).get(0);
    assertThat(summary.chargeHours()).isEqualTo(2058 / 425.0, within(1e-5));
    assertThat(summary.handOverBy()).isEqualTo("2026-05-28");
    assertThat(keys(trip.calculate().rows(TravelResults.PROJECT).get(0).reasons())).isEmpty();
    trip.set("project", 1, "handOver", day("2026-05-29"));
    assertThat(keys(trip.calculate().rows(TravelResults.PROJECT).get(0).reasons()))
        .containsExactly(TravelFinding.HANDED_OVER_LATE);
    trip.set("project", 1, "handOver", "", "transit", 40).set("batteries", 1, "rest", "road");
    assertThat(keys(trip.calculate().rows(TravelResults.PROJECT).get(0).reasons()))
        .containsExactly(TravelFinding.HAND_OVER_PASSED);
  }

  @Test
  void a_damaged_battery_is_pointed_to_sp_376_and_listed_nowhere() {
    Ranges trip = freight("rest", "road", "condition", "dropped");
    PlanResult result = trip.calculate();
    assertThat(TravelSamples.road(result)).isEmpty();
    assertThat(result.rows(TravelPapers.PAPERS).get(3).notes())
        .contains(TravelStatement.DAMAGED_ROAD.of(1));
  }

  // Show calculation

  /** A line leads to its own battery, its traveller, that traveller's flights and answers. */
  @Test
  void a_line_is_retraced_to_its_own_rows() {
    Ranges trip = add(add(flight(TODAY), "P150", 150, 2), "P98", 98, 4);
    trip.row("travellers", "traveller", "sound", "flights", "QB 20");
    trip.row("flights", "flight", "QB 20", "date", day(TODAY), "carrier", "Quay Air");
    trip.set("travellers", 1, "flights", "SA 101");
    answer(trip, "P150", 150, 2);
    answer(trip, "P150", 150, 2, "flight", "QB 20", "carrier", "Quay Air");
    decide(trip, "P150", "gaffer", 2);
    decide(trip, "P98", "sound", 4);
    PlanResult result = trip.calculate();
    assertThat(TravelSamples.carried(result).get(0).battery()).isEqualTo("P150");
    Map<String, List<Object>> typed = new HashMap<>();
    result.trace("lines.pieces", 1).steps().stream()
        .filter(s -> s.typed() && !s.rows().isEmpty())
        .forEach(s -> typed.put(s.path(), s.values()));
    assertThat(typed.get("batteries.battery")).containsExactly("P150");
    assertThat(typed.get("travellers.traveller")).containsExactly("gaffer");
    assertThat(typed.get("flights.flight")).containsExactly("SA 101");
    assertThat(typed.get("answers.flight")).containsExactly("SA 101");
    assertThat(typed.get("packing.pieces")).containsExactly(2.0);
    typed.clear();
    List<TravelPapers.CheckInRow> rows = result.rows(TravelPapers.CHECK_IN);
    int row = rows.indexOf(TravelSamples.types(result).get(0)) + 1;
    result.trace("checkin.pieces", row).steps().stream()
        .filter(s -> s.typed() && !s.rows().isEmpty())
        .forEach(s -> typed.put(s.path(), s.values()));
    assertThat(typed.get("flights.flight")).hasSize(1);
    assertThat(typed.get("batteries.battery")).hasSize(1);
  }

  // the invented production

  /** Five travellers, three flights, 40 batteries, at most 60 typed cells. */
  @Test
  void the_invented_production_types_at_most_60_cells() {
    Ranges trip = TravelSamples.scenario();
    int typed =
        TravelPlan.MODEL.inputs().stream()
            .flatMap(t -> trip.rows(t.key()).stream())
            .mapToInt(Map::size)
            .sum();
    assertThat(trip.rows("travellers")).hasSize(5);
    assertThat(trip.rows("flights")).hasSize(3);
    assertThat(typed).isLessThanOrEqualTo(60);
    PlanResult result = trip.calculate();
    TravelResults.Summary summary = result.rows(TravelResults.SUMMARY).get(0);
    assertThat(summary.pieces()).isEqualTo(40);
    assertThat(summary.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(summary.carried()).isEqualTo(30);
    assertThat(summary.over()).isEqualTo(5);
    assertThat(summary.road()).isEqualTo(10);
    assertThat(result.rows(TravelPapers.PAPERS)).allMatch(p -> p.withheld() == 0);
    assertThat(TravelSamples.cards(result).stream().map(TravelPapers.CardRow::traveller).distinct())
        .hasSize(5);
  }

  /** The first carrier writes two of 150 Wh each, the second one: four travellers take four. */
  @Test
  void four_travellers_take_four_and_four_go_by_road() {
    Ranges trip = TravelSamples.scenario();
    trip.rows("travellers").remove(4);
    trip.set("batteries", 2, "quantity", 8, "kilograms", 1.1, "un383", "yes");
    TravelResults.BatteryResult p150 = trip.calculate().rows(TravelResults.BATTERIES).get(1);
    assertThat(p150.carriedPieces()).isEqualTo(4);
    assertThat(p150.roadPieces()).isEqualTo(4);
    trip.rows("answers").remove(1);
    p150 = trip.calculate().rows(TravelResults.BATTERIES).get(1);
    assertThat(p150.carriedPieces()).isZero();
    assertThat(p150.verdict()).isEqualTo(Verdict.CHECK);
  }

  /** 7 + 2 own spares of 20, 1 over 100 Wh of 2, 1 + 1 own power banks of 2: counted by hand. */
  @Test
  void a_card_counts_what_counts_together_on_each_flight() {
    Ranges trip = add(flight(TODAY), "P98", 98, 6);
    add(trip, "P150", 150, 1);
    add(trip, "bank", 74, 1, "carried", "power bank");
    answer(trip, "P150", 150, 2);
    trip.set("travellers", 1, "ownSpares", 2, "ownBanks", 1);
    assertThat(
            ENGLISH.sentences(
                trip.calculate().rows(TravelPapers.CARDS).get(1).notes(), Locale.ENGLISH))
        .isEqualTo(
            "SA 101, 1 Jun 2026, Salt Air. Spares 9 of 20. Over 100 Wh 1 of 2. Power banks 2 of"
                + " 2.");
  }

  /** Under US rules power banks are spares, and spares have no number. */
  @Test
  void a_card_counts_without_a_limit_where_there_is_none() {
    Ranges trip = add(flight(TODAY, "US domestic"), "P98", 98, 3);
    add(trip, "bank", 150, 1, "carried", "power bank");
    answer(trip, "bank", 150, 2, "carried", "power bank");
    assertThat(
            ENGLISH.sentences(
                trip.calculate().rows(TravelPapers.CARDS).get(1).notes(), Locale.ENGLISH))
        .contains("SA 101, 1 Jun 2026, Salt Air. Spares 4. Over 100 Wh 1 of 2.")
        .doesNotContain("Power banks");
  }

  /** What the carrier wrote stands as written, and beside it what counts of it. */
  @Test
  void limits_above_the_rules_are_quoted_as_written() {
    Ranges trip = add(flight(TODAY), "P98", 98, 9);
    trip.set("flights", 1, "writtenSpares", 12, "writtenOver", 5, "writtenBanks", 6);
    trip.set("flights", 1, "writtenReference", "mail 20");
    PlanResult result = trip.calculate();
    TravelResults.FlightResult flight = result.rows(TravelResults.FLIGHTS).get(0);
    assertThat(flight.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(ENGLISH.sentences(flight.reasons(), Locale.ENGLISH))
        .isEqualTo(
            "Carrier's limits a person: spares 12, over 100 Wh 5, power banks 6; at least one is"
                + " above the rules. What counts: spares 12, over 100 Wh 2, power banks 2.");
    assertThat(ENGLISH.sentences(TravelSamples.flights(result).get(0).notes(), Locale.ENGLISH))
        .contains("spares 12, over 100 Wh 5, power banks 6; mail 20.")
        .contains("Used of these, by the rules: spares 12, over 100 Wh 2, power banks 2.");
    trip.set("flights", 1, "writtenSpares", 20, "writtenOver", 2, "writtenBanks", 2);
    assertThat(trip.calculate().rows(TravelResults.FLIGHTS).get(0).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void an_answer_above_the_rules_is_to_be_checked() {
    Ranges trip = add(flight(TODAY), "P150", 150, 5);
    answer(trip, "P150", 150, 5);
    PlanResult result = trip.calculate();
    TravelResults.AnswerResult answer = result.rows(TravelResults.ANSWERS).get(0);
    assertThat(answer.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(ENGLISH.sentences(answer.reasons(), Locale.ENGLISH))
        .isEqualTo("The answer is 5 a person, above the limit on SA 101: 2 count.");
    assertThat(ENGLISH.sentences(TravelSamples.cards(result).get(0).notes(), Locale.ENGLISH))
        .contains("5 a person; mail 17")
        .contains("2 a person count on SA 101.");
  }

  @Test
  void a_refused_battery_says_so_on_its_row() {
    Ranges trip = add(flight(TODAY), "P150", 150, 2, "kilograms", 1.1, "terminals", "yes");
    answer(trip, "P150", 150, 0);
    TravelResults.BatteryResult battery = trip.calculate().rows(TravelResults.BATTERIES).get(0);
    assertThat(battery.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(battery.carriedPieces()).isZero();
    assertThat(ENGLISH.sentences(battery.reasons(), Locale.ENGLISH))
        .isEqualTo(
            "The operating carrier refuses it on SA 101. Nobody carries it there. It travels"
                + " another way.");
  }

  /** Loose terminals can short: on a spare of lithium and on a power bank a blank is a check. */
  @ParameterizedTest
  @CsvSource({
    "spare,Li-ion,98,true",
    "power bank,Li-ion,74,true",
    "in equipment,Li-ion,98,false",
    "spare,NiMH,2.4,false"
  })
  void blank_terminals_are_never_ok_on_a_spare(
      String carried, String chemistry, double energy, boolean asked) {
    Ranges trip = add(flight(TODAY), "X", energy, 1, "carried", carried, "chemistry", chemistry);
    PlanResult result = trip.calculate();
    assertThat(
            keys(result.rows(TravelResults.BATTERIES).get(0).reasons())
                .contains(TravelFinding.TERMINALS_BLANK))
        .isEqualTo(asked);
    assertThat(ENGLISH.sentences(TravelSamples.cards(result).get(0).notes(), Locale.ENGLISH))
        .doesNotContain("erminals");
    trip.set("batteries", 1, "terminals", "yes");
    assertThat(keys(trip.calculate().rows(TravelResults.BATTERIES).get(0).reasons()))
        .doesNotContain(TravelFinding.TERMINALS_BLANK);
  }

  /** Whoever decides what breaks a rule sees it on that row, and the battery is not ok. */
  @Test
  void a_decided_row_that_breaks_a_rule_stops_there() {
    Ranges trip = add(flight(TODAY), "P150", 150, 5, "terminals", "yes");
    add(trip, "P98", 98, 1, "terminals", "yes");
    add(trip, "drop", 98, 1, "terminals", "yes", "condition", "dropped");
    add(trip, "P294", 294, 1, "terminals", "yes");
    add(trip, "sound", 90, 1, "terminals", "yes");
    answer(trip, "P150", 150, 2);
    decide(trip, "P150", "gaffer", 5);
    decide(trip, "P98", "gaffer", 1);
    trip.set("packing", 2, "bag", "hold");
    decide(trip, "drop", "gaffer", 1);
    decide(trip, "P294", "gaffer", 1);
    decide(trip, "sound", "gaffer", 1);
    PlanResult result = trip.calculate();
    List<TravelResults.PackedResult> packed = result.rows(TravelResults.PACKING);
    assertThat(packed)
        .extracting(TravelResults.PackedResult::verdict)
        .startsWith(Verdict.STOP, Verdict.STOP, Verdict.STOP, Verdict.STOP, Verdict.OK);
    assertThat(keys(packed.get(0).reasons())).contains(TravelFinding.OVER_LARGE);
    assertThat(keys(packed.get(1).reasons())).contains(TravelFinding.PACKED_HOLD);
    assertThat(keys(packed.get(2).reasons())).contains(TravelFinding.LINE_BATTERY);
    assertThat(keys(packed.get(3).reasons())).contains(TravelFinding.LINE_CLASS);
    TravelResults.BatteryResult held = result.rows(TravelResults.BATTERIES).get(0);
    assertThat(held.heldPieces()).isEqualTo(5);
    assertThat(held.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(ENGLISH.sentences(held.reasons(), Locale.ENGLISH))
        .isEqualTo("Pieces held back: 5. See Packing.");
  }

  /** No row stands under the condition, figure or flight of another. */
  @Test
  void issues_are_one_only_where_the_whole_sentence_is_the_same() {
    Ranges trip = add(flight(TODAY), "a", 98, 1, "condition", "dropped");
    add(trip, "b", 98, 1, "condition", "swollen");
    add(trip, "c", 98, 1, "condition", "dropped");
    List<IssueRow> damaged =
        trip.calculate().rows(TravelResults.ISSUES).stream()
            .filter(i -> i.reasons().get(0).key() == TravelFinding.DAMAGED)
            .toList();
    assertThat(damaged)
        .extracting(
            i -> i.where().rows(),
            i -> ENGLISH.sentences(i.reasons(), Locale.ENGLISH).substring(0, 24))
        .containsExactlyInAnyOrder(
            tuple("a, c", "The condition is dropped"), tuple("b", "The condition is swollen"));
  }

  /** One cause is one issue, however many flights and batteries have it. */
  @Test
  void one_cause_is_one_issue() {
    Ranges trip = flight("2027-01-29");
    for (int b = 1; b <= 20; b++) {
      add(trip, "P98-" + b, 98, 1, "type", "P98", "un383", "", "terminals", "yes");
    }
    List<IssueRow> issues = trip.calculate().rows(TravelResults.ISSUES);
    assertThat(issues.stream().filter(i -> i.reasons().get(0).key() == TravelFinding.UN383_BLANK))
        .singleElement()
        .matches(i -> i.rows() == 20);
    assertThat(issues).hasSizeLessThanOrEqualTo(3);
  }

  /** Decided cells win, the rest of a battery is still proposed, and users get their own. */
  @Test
  void decided_lines_win_and_users_get_their_own() {
    Ranges trip = flight(TODAY).row("travellers", "traveller", "sound");
    add(trip, "P98", 98, 10, "user", "sound", "kilograms", 0.75);
    decide(trip, "P98", "gaffer", 7);
    assertThat(TravelSamples.carried(trip.calculate()))
        .extracting(l -> l.traveller() + " " + l.pieces() + " " + l.decided())
        .containsExactly("gaffer 7 true", "sound 3 false");
    trip.rows("packing").clear();
    add(trip, "P97", 97, 5, "user", "gaffer", "kilograms", 0.75);
    trip.set("batteries", 1, "quantity", 5);
    assertThat(TravelSamples.carried(trip.calculate()))
        .extracting(l -> l.traveller() + " " + l.battery())
        .containsExactly("gaffer P97", "sound P98");
  }

  @Test
  void a_decided_0_keeps_a_battery_from_a_traveller() {
    Ranges trip = flight(TODAY).row("travellers", "traveller", "sound");
    add(trip, "P98", 98, 4);
    decide(trip, "P98", "gaffer", 0);
    assertThat(TravelSamples.carried(trip.calculate()))
        .extracting(l -> l.traveller() + " " + l.pieces())
        .containsExactly("sound 4");
  }

  /** A decided line that stops keeps its pieces: they are withheld, not sent another way. */
  @Test
  void pieces_of_a_decided_line_that_stops_are_held_back() {
    Ranges trip = add(flight(TODAY), "P294", 294, 3, "kilograms", 2.1);
    decide(trip, "P294", "gaffer", 2);
    TravelResults.BatteryResult battery = trip.calculate().rows(TravelResults.BATTERIES).get(0);
    assertThat(battery.carriedPieces()).isZero();
    assertThat(battery.heldPieces()).isEqualTo(2);
    assertThat(battery.roadPieces()).isEqualTo(1);
  }

  @Test
  void an_unfinished_row_says_what_is_blank_and_nothing_else() {
    Ranges trip = add(flight(TODAY), "P98", 98, 1, "condition", "", "terminals", "yes");
    TravelResults.BatteryResult battery = trip.calculate().rows(TravelResults.BATTERIES).get(0);
    assertThat(ENGLISH.sentences(battery.reasons(), Locale.ENGLISH))
        .isEqualTo("Condition is blank. Fill it in.");
  }

  /** No sentence names a column by its key. */
  @Test
  void sentences_name_headings_and_not_keys() {
    Pattern key = Pattern.compile("\\b[a-z]+[A-Z][a-zA-Z]+\\b|_|\\brules_range\\b");
    for (Ranges sample : TravelSamples.all()) {
      for (IssueRow issue : sample.calculate().rows(TravelResults.ISSUES)) {
        String text = ENGLISH.sentences(issue.reasons(), Locale.ENGLISH);
        assertThat(key.matcher(text).find()).as(text).isFalse();
      }
    }
  }

  /** A party of which nobody proves in time what is best: legal, and said. */
  @Test
  void a_proposal_that_is_not_proven_says_so() {
    PlanResult result = TravelSamples.hard().calculate();
    assertThat(keys(result.rows(TravelResults.PROJECT).get(0).reasons()))
        .containsExactly(TravelFinding.NO_RETURN, TravelFinding.NOT_PROVEN);
    assertThat(TravelSamples.carried(result)).allMatch(l -> l.verdict() != Verdict.STOP);
    assertThat(result.rows(TravelResults.SUMMARY).get(0).carried()).isBetween(40, 88);
  }

  @Test
  void the_first_priority_is_carried_first() {
    Ranges trip = flight(TODAY).set("travellers", 1, "cabinKg", 2.0);
    add(trip, "P98", 98, 4, "kilograms", 0.75, "priority", 2);
    add(trip, "P74", 74, 2, "kilograms", 0.7, "priority", 1);
    assertThat(TravelSamples.carried(trip.calculate()))
        .extracting(l -> l.battery() + " " + l.pieces())
        .containsExactly("P74 2");
  }

  @Test
  void the_last_proposal_changes_as_little_as_it_can() {
    Ranges trip = flight(TODAY).row("travellers", "traveller", "sound");
    add(trip, "P98", 98, 4, "kilograms", 0.75);
    add(trip, "P97", 97, 4, "kilograms", 0.75);
    for (String[] had : List.of(new String[] {"P98", "gaffer"}, new String[] {"P97", "sound"})) {
      trip.row("packing", "battery", had[0], "traveller", had[1], "pieces", 4, "decided", "no");
    }
    assertThat(TravelSamples.carried(trip.calculate()))
        .extracting(l -> l.traveller() + " " + l.battery() + " " + l.pieces())
        .containsExactly("gaffer P98 4", "sound P97 4");
  }

  // what the desk reads

  /** Whoever reads it at a desk has neither this list nor its Summary. */
  @Test
  void no_paper_of_the_baggage_says_from_memory_or_withheld() {
    List<String> texts = new ArrayList<>();
    for (Ranges sample : TravelSamples.all()) {
      PlanResult result = sample.calculate();
      texts.addAll(words(result.rows(TravelPapers.CHECK_IN)));
      texts.addAll(words(result.rows(TravelPapers.CARDS)));
      texts.addAll(words(result.rows(TravelPapers.PAPERS).subList(0, 2)));
    }
    assertThat(texts).hasSizeGreaterThan(100);
    assertThat(texts).noneMatch(t -> t.matches("(?is).*(memory|withheld|summary|confirm).*"));
  }

  /** The doubt stays on the row and in Summary: nickel cells are a national authority's reading. */
  @Test
  void a_rule_from_memory_is_a_check_until_it_is_confirmed() {
    Ranges trip = add(flight(TODAY), "AA", "", 4, "chemistry", "NiMH", "terminals", "yes");
    assertThat(trip.calculate().rows(TravelResults.PROJECT).get(0).reasons())
        .contains(Finding.of(TravelFinding.RULE_NICKEL, "SA 101"));
    trip.set("project", 1, "confirmed", "mail 30");
    assertThat(keys(trip.calculate().rows(TravelResults.PROJECT).get(0).reasons()))
        .doesNotContain(TravelFinding.RULE_NICKEL);
    assertThat(TravelSamples.types(trip.calculate()).get(0).notes()).isEmpty();
  }

  /** Cut out, a card has its own production, date, contact and cautions. */
  @Test
  void every_card_has_its_own_head_and_cautions() {
    Ranges trip = flight(TODAY).row("travellers", "traveller", "sound");
    trip.set("project", 1, "production", "The Salt Road", "revision", 3);
    add(trip, "P98", 98, 4, "kilograms", 0.75);
    decide(decide(trip, "P98", "gaffer", 2), "P98", "sound", 2);
    List<TravelPapers.CardRow> rows = trip.calculate().rows(TravelPapers.CARDS);
    assertThat(rows).hasSize(10);
    for (int first : new int[] {0, 6}) {
      assertThat(ENGLISH.sentences(rows.get(first).notes(), Locale.ENGLISH))
          .startsWith(
              "The Salt Road, revision 3, 22 May 2026. Emergency contact: unit desk, +00 000.");
      assertThat(keys(rows.get(first + 3).notes()))
          .containsExactly(
              TravelStatement.CABIN_ONLY,
              TravelStatement.HOT,
              TravelStatement.DAMAGED,
              TravelStatement.CARRIER);
    }
  }

  /** DGR Table 2.3.A: in the hold fully off and protected. */
  @Test
  void a_fitted_battery_in_the_hold_is_switched_off() {
    Ranges trip = add(flight(TODAY), "cam", 98, 1, "carried", "in equipment");
    assertThat(card(trip).notes()).isEmpty();
    decide(trip, "cam", "gaffer", 1).set("packing", 1, "bag", "hold");
    assertThat(keys(card(trip).notes())).containsExactly(TravelStatement.FITTED_HOLD);
    assertThat(keys(TravelSamples.types(trip.calculate()).get(0).notes()))
        .containsExactly(TravelStatement.FITTED_HOLD);
  }

  // the question to a carrier

  @Test
  void each_carrier_is_asked_in_writing_for_what_it_has_not_answered() {
    Ranges trip = add(flight(TODAY), "Cam 150", 150, 5, "terminals", "yes");
    trip.row("flights", "flight", "QB 20", "date", day("2026-06-02"), "carrier", "Quay Air");
    trip.set("project", 1, "production", "The Salt Road");
    List<TravelPapers.QuestionRow> rows = trip.calculate().rows(TravelPapers.QUESTIONS);
    assertThat(rows)
        .extracting(TravelPapers.QuestionRow::carrier)
        .containsExactly("Salt Air", "Quay Air");
    assertThat(ENGLISH.sentences(rows.get(0).text(), Locale.ENGLISH))
        .isEqualTo(
            "Production: The Salt Road. Please confirm in writing, with a reference and the date of"
                + " your answer, that our travellers may take these batteries in the cabin, and how"
                + " many a person. Flight SA 101, 1 Jun 2026. Cam 150, Li-ion, 150 Wh each, spare:"
                + " 2 a person, 2 in all; gaffer.");
    answer(trip, "Cam 150", 150, 2);
    assertThat(trip.calculate().rows(TravelPapers.QUESTIONS))
        .extracting(TravelPapers.QuestionRow::carrier)
        .containsExactly("Quay Air");
    trip.set("batteries", 1, "by", "road");
    assertThat(trip.calculate().rows(TravelPapers.QUESTIONS)).isEmpty();
  }

  /** Past the edition the carrier is asked for its limits. */
  @Test
  void past_the_edition_the_carrier_is_asked_for_its_limits() {
    Ranges trip = add(flight("2027-01-29"), "P98", 98, 2);
    assertThat(keys(trip.calculate().rows(TravelPapers.QUESTIONS).get(0).text()))
        .contains(TravelStatement.QUESTION_LIMITS);
    trip.set("flights", 1, "writtenSpares", 5, "writtenReference", "mail 20");
    assertThat(trip.calculate().rows(TravelPapers.QUESTIONS)).isEmpty();
  }

  // a way chosen on purpose, and the way back

  @Test
  void a_battery_that_goes_by_road_on_purpose_is_carried_by_nobody() {
    Ranges trip = add(flight(TODAY), "P98", 98, 4, "kilograms", 0.75, "cells", 12, "by", "road");
    trip.set("project", 1, "back", "stays").set("batteries", 1, "terminals", "yes");
    PlanResult result = trip.calculate();
    assertThat(TravelSamples.carried(result)).isEmpty();
    assertThat(TravelSamples.road(result))
        .extracting(TravelPapers.RoadRow::pieces)
        .containsExactly(4);
    assertThat(result.rows(TravelResults.BATTERIES).get(0).verdict()).isEqualTo(Verdict.OK);
    decide(trip, "P98", "gaffer", 1);
    assertThat(keys(trip.calculate().rows(TravelResults.PACKING).get(0).reasons()))
        .containsExactly(TravelFinding.LINE_GOES_BY);
    trip.set("packing", 1, "traveller", "road");
    assertThat(keys(trip.calculate().rows(TravelResults.PACKING).get(0).reasons()))
        .containsExactly(TravelFinding.PACKED_WAY);
  }

  /** What goes by freight or road has to come back: no day is an open issue. */
  @Test
  void a_way_back_that_nobody_planned_is_an_open_issue() {
    Ranges trip = freight().set("project", 1, "back", "");
    assertThat(trip.calculate().rows(TravelResults.PROJECT).get(0).reasons())
        .containsExactly(Finding.of(TravelFinding.NO_WAY_BACK, 9));
    trip.set("project", 1, "back", "stays");
    assertThat(trip.calculate().rows(TravelResults.PROJECT).get(0).reasons()).isEmpty();
  }

  /** PI 965: 30 % holds on the way back too. P294 full: 205.8 Wh to take out of each. */
  @Test
  void the_way_back_has_its_day_its_papers_and_its_discharge() {
    Ranges trip = freight().set("project", 1, "back", "", "backOn", day("2026-06-20"));
    PlanResult result = trip.calculate();
    assertThat(TravelSamples.freight(result))
        .extracting(TravelPapers.FreightRow::direction)
        .containsExactly(TravelPapers.Direction.OUT);
    TravelResults.LineRow back = TravelSamples.rest(result).get(1);
    assertThat(back.traveller()).isEqualTo("cargo aircraft, back");
    assertThat(back.discharge()).isEqualTo(205.8);
    assertThat(keys(back.reasons())).contains(TravelFinding.FREIGHT_BACK_BLANK);
    trip.set("batteries", 1, "backCharge", 0.3);
    assertThat(TravelSamples.freight(trip.calculate()))
        .extracting(TravelPapers.FreightRow::direction, TravelPapers.FreightRow::charge)
        .containsExactly(
            tuple(TravelPapers.Direction.OUT, 0.3), tuple(TravelPapers.Direction.BACK, 0.3));
    trip.set("batteries", 1, "backCharge", 0.31);
    assertThat(TravelSamples.freight(trip.calculate())).hasSize(1);
    trip.set("project", 1, "back", "road");
    assertThat(TravelSamples.road(trip.calculate()))
        .extracting(TravelPapers.RoadRow::direction, TravelPapers.RoadRow::pieces)
        .containsExactly(tuple(TravelPapers.Direction.BACK, 9));
  }

  @ParameterizedTest
  @CsvSource({"2026-05-27,BACK_EARLY", "2027-01-01,FREIGHT_PAST"})
  void the_way_back_is_judged_by_its_own_day(String date, TravelFinding finding) {
    Ranges trip = freight("backCharge", 0.3);
    trip.set("project", 1, "back", "", "backOn", day(date));
    PlanResult result = trip.calculate();
    assertThat(keys(TravelSamples.rest(result).get(1).reasons())).contains(finding);
    assertThat(TravelSamples.freight(result)).hasSize(1);
  }

  /** ADR / UN Model Regulations: the proper shipping names; packaging is not a mark. */
  @ParameterizedTest
  @CsvSource({
    "alone,UN 3480,Lithium ion batteries",
    "with equipment,UN 3481,Lithium ion batteries packed with equipment",
    "in equipment,UN 3481,Lithium ion batteries contained in equipment"
  })
  void freight_papers_name_what_is_shipped(String packed, String un, String name) {
    TravelPapers.FreightRow row = freightRow(freight("packed", packed, "inUse", 3));
    assertThat(List.of(row.un(), row.name())).containsExactly(un, name);
    assertThat(row.marks().pattern()).contains("proper shipping name").doesNotContain("packaging");
    assertThat(row.packaging().pattern()).contains("packaging");
    Ranges road = freight("packed", packed, "rest", "road", "inUse", 3);
    assertThat(TravelSamples.road(road.calculate()).get(0).name())
        .startsWith("Lithium ion batteries");
  }

  // the proposal

  /** A camera assistant's job: four travellers, 37 pieces in 12 rows. */
  private static Ranges job() {
    Ranges trip = flight(TODAY);
    trip.rows("travellers").clear();
    for (String role : List.of("1st AC", "2nd AC", "DoP", "sound mixer")) {
      trip.row("travellers", "traveller", role, "ownSpares", 1);
    }
    add(trip, "Cam 98 A", 98, 8, "kilograms", 0.75, "user", "1st AC");
    add(trip, "Cam 98 B", 98, 2, "kilograms", 0.75, "user", "DoP");
    add(trip, "Cam 150", 150, 5, "kilograms", 1.05, "user", "1st AC");
    add(trip, "Small", 35, 4, "kilograms", 0.25, "user", "2nd AC");
    add(trip, "Sound 49", 49, 3, "kilograms", 0.32, "user", "sound mixer");
    add(trip, "AA", "", 8, "kilograms", 0.03, "chemistry", "NiMH", "user", "sound mixer");
    add(trip, "Bank", 74, 2, "kilograms", 0.4, "carried", "power bank");
    add(trip, "Body", 98, 1, "kilograms", 0.75, "carried", "in equipment", "user", "1st AC");
    add(trip, "Monitor", 49, 1, "kilograms", 0.3, "carried", "in equipment", "user", "2nd AC");
    answer(trip, "Cam 150", 150, 2);
    return trip;
  }

  private static int pieces(PlanResult result, String traveller, String battery) {
    return TravelSamples.carried(result).stream()
        .filter(l -> l.traveller().equals(traveller) && l.battery().equals(battery))
        .mapToInt(TravelResults.LineRow::pieces)
        .sum();
  }

  @Test
  void what_is_fitted_stays_with_its_user_and_loads_differ_by_about_a_kilogram() {
    PlanResult result = job().calculate();
    assertThat(keys(result.rows(TravelResults.PROJECT).get(0).reasons()))
        .doesNotContain(TravelFinding.NOT_PROVEN);
    assertThat(pieces(result, "1st AC", "Body")).isEqualTo(1);
    assertThat(pieces(result, "2nd AC", "Monitor")).isEqualTo(1);
    assertThat(pieces(result, "sound mixer", "Sound 49")).isEqualTo(3);
    assertThat(pieces(result, "sound mixer", "AA")).isEqualTo(8);
    List<Double> loads =
        result.rows(TravelResults.TRAVELLERS).stream()
            .filter(Objects::nonNull)
            .map(TravelResults.TravellerResult::weight)
            .toList();
    double sum = loads.stream().mapToDouble(Double::doubleValue).sum();
    assertThat(loads).allSatisfy(kg -> assertThat(kg).isLessThanOrEqualTo(sum / 4 + 1));
  }

  /** One piece more of a type moves few of the others. */
  @Test
  void one_changed_cell_does_not_reshuffle_everybody() {
    Ranges trip = job();
    PlanResult before = trip.calculate();
    for (int row = 1; row <= trip.rows("batteries").size(); row++) {
      Ranges changed = trip.copy();
      double quantity =
          ((Number) trip.rows("batteries").get(row - 1).get("quantity")).doubleValue();
      changed.set("batteries", row, "quantity", quantity + 1);
      PlanResult after = changed.calculate();
      int moved = 0;
      for (Map<String, Object> person : trip.rows("travellers")) {
        for (Map<String, Object> battery : trip.rows("batteries")) {
          String who = (String) person.get("traveller");
          String what = (String) battery.get("battery");
          moved += Math.max(0, pieces(after, who, what) - pieces(before, who, what));
        }
      }
      assertThat(moved).as("row %s", row).isLessThanOrEqualTo(MOST_MOVED);
    }
  }

  // energy and weight

  @ParameterizedTest
  @CsvSource({"300,0.65,true", "98,0.65,false", "98,0.27,true"})
  void more_energy_than_the_weight_can_hold_is_to_be_checked(
      double energy, double kilograms, boolean asked) {
    Ranges trip = add(flight(TODAY), "X", energy, 1, "kilograms", kilograms);
    assertThat(
            keys(trip.calculate().rows(TravelResults.BATTERIES).get(0).reasons())
                .contains(TravelFinding.ENERGY_WEIGHT))
        .isEqualTo(asked);
  }

  @ParameterizedTest
  @CsvSource({"161", "290", "294"})
  void over_160_wh_is_not_in_baggage(double energy) {
    Ranges trip = add(flight(TODAY), "Block", energy, 1, "outputs", "yes", "terminals", "yes");
    trip.set("batteries", 1, "kilograms", 2.1);
    TravelResults.BatteryResult battery = trip.calculate().rows(TravelResults.BATTERIES).get(0);
    assertThat(battery.maxCarried()).isZero();
    assertThat(ENGLISH.sentences(battery.reasons(), Locale.ENGLISH))
        .isEqualTo(
            "Over 160 Wh: not in baggage, 0 a traveller. Way: road. To confirm it, enter Goes by.");
  }

  @Test
  void the_word_all_means_what_a_blank_means() {
    Ranges trip = answer(add(flight(TODAY), "P150", 150, 2), "P150", 150, 2, "travellers", "all");
    trip.set("travellers", 1, "flights", "All");
    PlanResult result = trip.calculate();
    assertThat(result.rows(TravelResults.TRAVELLERS).get(0).verdict()).isEqualTo(Verdict.OK);
    assertThat(result.rows(TravelResults.SUMMARY).get(0).carried()).isEqualTo(2);
  }
}
