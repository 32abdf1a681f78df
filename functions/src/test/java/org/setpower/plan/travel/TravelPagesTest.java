package org.setpower.plan.travel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.travel.TravelSamples.add;
import static org.setpower.plan.travel.TravelSamples.day;
import static org.setpower.plan.travel.TravelSamples.decide;
import static org.setpower.plan.travel.TravelSamples.flight;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.flight.FlightClass;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.common.ResultColumn;
import org.setpower.plan.common.ResultTable;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.travel.rules.RoadRule;

/** How the papers are divided, what stands on their heads, and in which words. */
class TravelPagesTest {
  private static final String TODAY = "2026-06-01";
  private static final EnglishMessages ENGLISH = new EnglishMessages();

  private static String said(List<Finding> findings) {
    return ENGLISH.sentences(findings, Locale.ENGLISH);
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  /** Out with two carriers, back with the first: two desks, two pages. */
  @Test
  void each_carrier_reads_a_page_of_its_own() {
    Ranges trip = add(flight(TODAY), "P98", 98, 2);
    trip.row("flights", "flight", "QB 20", "date", day("2026-06-02"), "carrier", "Quay Air");
    trip.row("flights", "flight", "SA 102", "date", day("2026-06-09"), "carrier", "salt air");
    List<String> column =
        trip.calculate().rows(TravelPapers.CHECK_IN).stream()
            .map(r -> r == null ? "" : r.flight() + (r.type() == null ? "" : " " + r.type()))
            .distinct()
            .toList();
    assertThat(column)
        .containsExactly(
            "SA 101",
            "SA 101 P98",
            "",
            "SA 102",
            "SA 102 P98",
            ResultTable.NEW_PAGE,
            "QB 20",
            "QB 20 P98");
  }

  /** A row a flight, with its carrier, and amounts that are read without the heads of columns. */
  @Test
  void a_card_is_read_without_heads() {
    Ranges trip = add(flight(TODAY), "P98", 98, 4, "user", "gaffer");
    trip.row("flights", "flight", "QB 20", "date", day("2026-06-02"), "carrier", "Quay Air");
    List<TravelPapers.CardRow> rows = trip.calculate().rows(TravelPapers.CARDS);
    assertThat(said(rows.get(1).notes())).startsWith("SA 101, 1 Jun 2026, Salt Air. Spares 4 of");
    assertThat(said(rows.get(2).notes())).startsWith("QB 20, 2 Jun 2026, Quay Air. Spares 4 of");
    assertThat(ENGLISH.phrase(rows.get(3).amount(), Locale.ENGLISH)).isEqualTo("4 × 98 Wh");
  }

  /** The desk reads whose page it is, and a line for each traveller with devices among it. */
  @Test
  void a_desk_reads_whose_page_it_is_and_what_each_traveller_has() {
    Ranges trip = add(flight(TODAY), "P98", 98, 4, "terminals", "yes");
    trip.row("flights", "flight", "QB 20", "date", day("2026-06-02"), "carrier", "Quay Air");
    trip.row("travellers", "traveller", "sound", "ownDevices", 3);
    decide(decide(trip, "P98", "gaffer", 2), "P98", "sound", 2);
    List<TravelPapers.CheckInRow> rows =
        trip.calculate().rows(TravelPapers.CHECK_IN).stream().filter(Objects::nonNull).toList();
    List<String> notes = rows.stream().map(r -> said(r.notes())).toList();
    assertThat(notes.get(0)).isEqualTo("Check-in desk of Salt Air.");
    int quay = 0;
    while (!notes.get(quay).startsWith("Check-in desk of Quay Air.")) {
      quay++;
    }
    assertThat(notes.get(quay + 1)).contains("in the cabin only");
    assertThat(notes.get(quay + 2)).contains("Call the fire service");
    assertThat(rows)
        .filteredOn(r -> r.type() == null && r.travellers() != null)
        .extracting(r -> r.flight() + " " + r.travellers() + " " + said(r.notes()))
        .contains(
            "SA 101 gaffer Spares 2, over 100 Wh 0, power banks 0, in equipment 0, with own ones.",
            "QB 20 sound Spares 2, over 100 Wh 0, power banks 0, in equipment 3, with own ones.");
  }

  /** Also an answer that no rule asks for is quoted, with traveller, reference and day. */
  @Test
  void a_desk_reads_the_day_of_issue_the_contact_and_answers_up_to_100_wh() {
    Ranges trip = TravelSamples.answer(add(flight(TODAY), "P98", 98, 2), "P98", 98, 2);
    PlanResult result = trip.calculate();
    TravelPapers.PaperRow head = result.rows(TravelPapers.PAPERS).get(0);
    assertThat(head.issued()).isEqualTo("2026-05-22");
    assertThat(said(head.notes())).contains("Emergency contact: unit desk, +00 000");
    assertThat(TravelSamples.types(result))
        .singleElement()
        .matches(r -> r.travellers().equals("gaffer 2"))
        .matches(r -> said(r.notes()).contains("2 a person; mail 17, 21 May 2026"));
  }

  /** Rules 2, answered 1: one figure on the page, the one that binds. */
  @Test
  void a_desk_reads_the_answer_not_the_rule_above_it() {
    Ranges trip = add(flight(TODAY), "P150", 150, 1, "terminals", "yes");
    TravelSamples.answer(trip, "P150", 150, 1);
    assertThat(
            trip.calculate().rows(TravelPapers.CHECK_IN).stream()
                .filter(Objects::nonNull)
                .map(r -> said(r.notes())))
        .anyMatch(n -> n.contains("over 100 Wh 1;"))
        .noneMatch(n -> n.contains("over 100 Wh 2;"));
  }

  /** Who packs by habit reads how many are held back; no paper names them. */
  @Test
  void cards_say_how_many_are_held_back() {
    Ranges trip = add(flight(TODAY), "P98", 98, 2);
    add(trip, "swell", 98, 14, "condition", "swollen");
    List<TravelPapers.CardRow> rows = trip.calculate().rows(TravelPapers.CARDS);
    TravelPapers.CardRow last = rows.get(rows.size() - 1);
    assertThat(said(last.notes())).contains("Held back", "14 pcs", "Do not pack");
    assertThat(rows.subList(rows.size() - 3, rows.size() - 1)).containsOnlyNulls();
    trip.set("batteries", 2, "condition", "fine");
    assertThat(trip.calculate().rows(TravelPapers.CARDS))
        .filteredOn(Objects::nonNull)
        .noneMatch(r -> said(r.notes()).contains("Held back"));
  }

  private static Ranges freight() {
    Ranges trip = add(flight(TODAY), "P294", 294, 2, "kilograms", 2.1, "by", "cargo aircraft");
    trip.set("batteries", 1, "charge", 0.3, "chargePieces", 2, "backCharge", 0.3, "backPieces", 2);
    trip.set("project", 1, "handOver", day("2026-05-28"), "backOn", day("2026-06-20"));
    return trip.set("project", 1, "freightFrom", "Home", "freightTo", "Coast");
  }

  /** UN 3480 is class 9 (ADR / UN Model Regulations). */
  @Test
  void freight_out_and_back_are_pages_with_day_route_and_class() {
    List<TravelPapers.FreightRow> rows = freight().calculate().rows(TravelPapers.FREIGHT);
    assertThat(rows)
        .extracting(TravelPapers.FreightRow::battery)
        .containsSubsequence("Home–Coast", "P294", ResultTable.NEW_PAGE, "Coast–Home", "P294");
    assertThat(said(rows.get(0).notes())).isEqualTo("Handed over on 28 May 2026.");
    assertThat(said(rows.get(1).notes())).contains("gross weight");
    assertThat(rows.get(2).hazard()).isEqualTo("9");
    assertThat(said(rows.get(4).notes())).isEqualTo("Handed over on 20 Jun 2026.");
    assertThat(said(rows.get(6).notes())).contains("not a Shipper's Declaration");
  }

  /** A small battery travels under SP 188 alone; a large one is class 9 with its tunnel code. */
  @Test
  void the_road_paper_has_class_and_tunnel_code_to_confirm() {
    Ranges trip = freight().set("batteries", 1, "by", "road");
    add(trip, "P98", 98, 2, "kilograms", 0.75, "cells", 12, "by", "road");
    List<TravelPapers.RoadRow> rows = TravelSamples.road(trip.calculate());
    assertThat(rows.get(0).hazard() + rows.get(0).tunnel()).isEqualTo("9E");
    assertThat(keys(rows.get(0).notes())).containsExactly(TravelStatement.TUNNEL_CONFIRM);
    assertThat(rows.get(1).hazard() + rows.get(1).tunnel()).isEmpty();
    assertThat(rows.get(1).provision().pattern()).isEqualTo("SP 188");
    assertThat(said(rows.get(1).notes())).contains("Battery mark", "30 kg");
    trip.set("project", 1, "roadRules", "US", "transport", "note 4");
    assertThat(TravelSamples.road(trip.calculate()).get(0).tunnel()).isEmpty();
  }

  /** Past the last day for which a row of the road rules answers, the transport office decides. */
  @ParameterizedTest
  @CsvSource({"ADR,2027-06-30,2027-07-01", "US,2026-12-31,2027-01-01"})
  void road_rules_end(String rules, String last, String next) {
    Ranges trip = add(flight(TODAY), "P98", 98, 2, "kilograms", 0.75, "cells", 12, "by", "road");
    trip.set("project", 1, "roadRules", rules, "back", "stays", "handOver", day(last));
    assertThat(TravelSamples.road(trip.calculate())).hasSize(1);
    trip.set("project", 1, "handOver", day(next));
    assertThat(TravelSamples.road(trip.calculate())).isEmpty();
    assertThat(keys(TravelSamples.rest(trip.calculate()).get(0).reasons()))
        .contains(TravelFinding.ROAD_PAST);
    trip.set("project", 1, "transport", "note 4");
    assertThat(TravelSamples.road(trip.calculate())).hasSize(1);
  }

  @Test
  void every_road_rule_has_days_edition_class_and_source() {
    assertThat(RoadRule.all()).hasSizeGreaterThan(5);
    for (RoadRule rule : RoadRule.all()) {
      assertThat(rule.validTo()).isAfter(rule.validFrom());
      assertThat(List.of(rule.edition(), rule.hazard(), rule.source())).noneMatch(String::isEmpty);
    }
  }

  /** A card lists what is in a bag, the other papers what is in a box: each row has its tick. */
  @Test
  void what_is_packed_is_ticked_on_the_paper_it_travels_with() {
    Ranges trip = freight().row("travellers", "traveller", "sound");
    add(trip, "P98", 98, 6);
    add(trip, "box", 98, 2, "kilograms", 0.75, "cells", 12, "by", "road");
    add(trip, "wet", 98, 1, "condition", "wet");
    decide(decide(trip, "P98", "sound", 2), "P98", "gaffer", 4);
    decide(trip, "wet", "gaffer", 1);
    PlanResult result = trip.calculate();
    assertThat(ticked(result, "cards.battery", "cards.amount", "cards.packed"))
        .containsExactly("P98 4 × 98 Wh ☐", "P98 2 × 98 Wh ☐");
    assertThat(ticked(result, "freight.battery", "freight.direction", "freight.packed"))
        .containsExactly("P294 out ☐", "P294 back ☐");
    assertThat(ticked(result, "road.battery", "road.direction", "road.packed"))
        .containsExactly("box out ☐", "box back ☐");
  }

  private static List<String> ticked(PlanResult result, String... columns) {
    return Arrays.stream(
            result.matrix(
                new Answer(List.of(columns), 40), Messages.in("en"), Locale.forLanguageTag("en")))
        .map(r -> Arrays.stream(r).map(Objects::toString).collect(Collectors.joining(" ")))
        .filter(r -> r.endsWith("☐"))
        .toList();
  }

  private static String page(PlanResult result, String language, String... columns) {
    Object[][] cells =
        result.matrix(
            new Answer(List.of(columns), 40),
            Messages.in(language),
            Locale.forLanguageTag(language));
    return Arrays.stream(cells)
        .flatMap(Arrays::stream)
        .map(Objects::toString)
        .collect(Collectors.joining("|"));
  }

  /** Typed words stay English in lists; on paper they are words of the reader. */
  @ParameterizedTest
  @CsvSource({
    "de,Ersatz,Kabine,hin,zurück,Frachtflugzeug",
    "fr,rechange,cabine,aller,retour,avion-cargo",
    "es,repuesto,cabina,ida,vuelta,avión de carga"
  })
  void words_on_papers_are_those_of_the_reader(
      String language, String spare, String cabin, String out, String back, String cargo) {
    Ranges trip = add(freight(), "P98", 98, 2);
    PlanResult result = trip.calculate();
    assertThat(page(result, language, "checkin.carried", "checkin.bag")).contains(spare, cabin);
    assertThat(page(result, language, "cards.carried", "cards.bag")).contains(spare, cabin);
    assertThat(page(result, language, "freight.direction", "freight.aircraft"))
        .contains(out, back, cargo);
    assertThat(page(result, "en", "checkin.carried")).contains("spare");
  }

  /**
   * Every word on a paper is the reader's: none is left of the English page but those typed, names
   * in every language the same, and proper shipping names, which the rules want in English (ICAO
   * Technical Instructions 5;4.1; ADR 5.4.1.4.1 has English beside the language of the country).
   */
  @ParameterizedTest
  @ValueSource(strings = {"de", "fr", "es"})
  void no_word_on_a_paper_stays_english(String language) {
    Set<String> left = new TreeSet<>();
    for (Ranges trip : TravelSamples.all()) {
      PlanResult result = trip.calculate();
      Set<String> same = new TreeSet<>(typed(trip));
      same.addAll(SAME);
      same.addAll(ALIKE.get(language));
      for (ResultTable<?> table : PRINTED) {
        if (table == TravelResults.ISSUES) {
          same.addAll(chosen());
        }
        for (ResultColumn column : table.columns()) {
          Set<String> words = words(page(result, "en", column.path()));
          words.retainAll(words(page(result, language, column.path())));
          words.removeAll(same);
          words.forEach(w -> left.add(column.path() + " " + w));
        }
      }
    }
    left.removeIf(w -> w.matches("(freight|road)\\.name .*|freight\\.binds .*|issues\\.where .*"));
    assertThat(left).isEmpty();
  }

  private static final List<ResultTable<?>> PRINTED =
      List.of(
          TravelPapers.CHECK_IN,
          TravelPapers.CARDS,
          TravelPapers.FREIGHT,
          TravelPapers.ROAD,
          TravelPapers.QUESTIONS,
          TravelPapers.PAPERS,
          TravelResults.ISSUES);

  /** Names of rules, units and what is written alike in these languages. */
  private static final Set<String> SAME =
      Set.of(
          "ok",
          "stop",
          "check",
          "wh",
          "kg",
          "ah",
          "usb",
          "un",
          "pi",
          "ia",
          "ib",
          "ii",
          "sp",
          "cfr",
          "adr",
          "icao",
          "iata",
          "dgr",
          "us",
          "li",
          "ion",
          "technical",
          "instructions",
          "addendum",
          "faa",
          "packsafe",
          "nimh");

  /** Words of both languages. */
  private static final Map<String, Set<String>> ALIKE =
      Map.of(
          "de",
          words("in jan feb apr person max revision lithium hand rest so text name nickel"),
          "fr",
          words(
              "batteries contact date dates nickel second copies max lithium cargo net charge points questions"
                  + " destination"
                  + " sodium transport type production code tunnel rail"),
          "es",
          words("may jun feb metal no"));

  /** What is chosen from a list is English in every sheet, and named so where it is to correct. */
  private static Set<String> chosen() {
    return Stream.concat(
            TravelPlan.MODEL.inputs().stream()
                .flatMap(t -> t.columns().stream())
                .flatMap(c -> c.words().stream()),
            Arrays.stream(FlightClass.values()).map(FlightClass::word))
        .flatMap(w -> words(w).stream())
        .collect(Collectors.toSet());
  }

  /** Words that somebody has typed in their own: those of lists have a translation. */
  private static Set<String> typed(Ranges trip) {
    return TravelPlan.MODEL.inputs().stream()
        .flatMap(
            t ->
                t.columns().stream()
                    .filter(c -> c.type() == String.class)
                    .flatMap(c -> trip.rows(t.key()).stream().map(r -> r.get(c.key()))))
        .filter(Objects::nonNull)
        .flatMap(v -> words(v.toString()).stream())
        .collect(Collectors.toSet());
  }

  private static Set<String> words(String text) {
    return Arrays.stream(text.split("[^\\p{L}]+"))
        .filter(w -> w.length() > 1)
        .map(w -> w.toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void an_empty_list_has_no_papers() {
    PlanResult result = Ranges.of(TravelPlan.MODEL).calculate();
    assertThat(result.rows(TravelPapers.CHECK_IN)).isEmpty();
    assertThat(result.rows(TravelPapers.CARDS)).isEmpty();
    assertThat(result.rows(TravelPapers.FREIGHT)).isEmpty();
    assertThat(result.rows(TravelPapers.ROAD)).isEmpty();
  }
}
