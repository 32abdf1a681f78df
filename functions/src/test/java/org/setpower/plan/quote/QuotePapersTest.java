package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.quote.QuoteSamples.day;
import static org.setpower.plan.quote.QuoteSamples.example;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/**
 * What client, driver and accountant read on papers of one order. Amounts are calculated by hand
 * from the rules of rental houses (common practice).
 */
class QuotePapersTest {
  private static final EnglishMessages ENGLISH = new EnglishMessages();

  private static String words(Phrase phrase) {
    return ENGLISH.phrase(phrase, Locale.UK);
  }

  private static List<String> keys(List<Finding> findings) {
    return findings.stream().map(f -> f.key().key()).toList();
  }

  private static QuoteResults.PickResult pick(Ranges ranges, int row) {
    return ranges.calculate().rows(QuoteResults.PICKED).get(row - 1);
  }

  private static QuoteResults.ReturnResult returned(Ranges ranges, int row) {
    return ranges.calculate().rows(QuoteResults.RETURNS).get(row - 1);
  }

  private static QuoteResults.StatementLine statement(Ranges ranges, int row) {
    return ranges.calculate().rows(QuoteResults.STATEMENT).get(row - 1);
  }

  /** Rows of lighting, power and lighting again: the client's page sorts them by section. */
  @Test
  void every_paper_has_the_number_of_the_row_on_quote() {
    Ranges ranges = example().set("stock", 1, "origin", "FR").set("stock", 3, "origin", "FR");
    for (int row = 1; row <= 3; row++) {
      String item = List.of("panel", "battery", "stand").get(row - 1);
      ranges.row("picked", "line", row, "item", item, "carnet", row == 2 ? "" : "yes");
      ranges.row("returns", "line", row, "item", item, "qty", 1, "date", day("2027-02-20"));
    }
    PlanResult result = ranges.calculate();
    Map<String, Integer> quote =
        new TreeMap<>(Map.of("panel", 1, "battery", 2, "stand", 3, "gel", 4, "delivery", 5));
    Map<String, Integer> page = new TreeMap<>();
    result.rows(QuoteResults.DOCUMENT).stream()
        .filter(l -> l.row() != null)
        .forEach(l -> page.put(l.text(), l.row()));
    assertThat(page).isEqualTo(quote);
    result.rows(QuoteResults.DELIVERY).stream()
        .filter(r -> r.row() != null)
        .forEach(r -> assertThat(r.row()).isEqualTo(quote.get(words(r.item()))));
    result
        .rows(QuoteResults.DUE)
        .forEach(r -> assertThat(r.row()).isEqualTo(quote.get(words(r.item()))));
    result.rows(QuoteResults.VALUES).stream()
        .filter(r -> r.row() != null)
        .forEach(r -> assertThat(r.row()).isEqualTo(quote.get(words(r.item()))));
    result.rows(QuoteResults.CARNET).stream()
        .filter(r -> r.row() != null)
        .forEach(r -> assertThat(r.row()).isEqualTo(quote.get(words(r.item()))));
    result.rows(QuoteResults.STATEMENT).stream()
        .filter(r -> r.row() != null)
        .forEach(r -> assertThat(quote).containsEntry(words(r.label()).split(":")[0], r.row()));
    // goods of a carnet are counted without gaps, as its general list asks
    assertThat(result.rows(QuoteResults.CARNET).get(1).number()).isEqualTo(2);
    assertThat(result.rows(QuoteResults.CARNET).get(1).row()).isEqualTo(3);
  }

  /** Only what has a number of a row: no paper counts for itself but the carnet. */
  @Test
  void numbers_have_one_heading() {
    List.of(
            QuoteResults.ITEMS,
            QuoteResults.DOCUMENT,
            QuoteResults.DELIVERY,
            QuoteResults.DUE,
            QuoteResults.STATEMENT,
            QuoteResults.VALUES,
            QuoteResults.CARNET)
        .forEach(
            t ->
                assertThat(t.columns())
                    .as(t.key())
                    .anyMatch(c -> c.key().equals("row") && c.heading().equals("No.")));
    assertThat(QuoteResults.DOCUMENT.columns()).noneMatch(c -> c.key().equals("number"));
  }

  @Test
  void a_blank_item_is_that_of_the_row() {
    Ranges ranges = example();
    ranges.row("picked", "line", 2, "serials", "", "qty", 10);
    ranges.row("returns", "line", 2, "qty", 10, "date", day("2027-02-16"));
    assertThat(pick(ranges, 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(pick(ranges, 1).itemOf()).isEqualTo("battery");
    assertThat(returned(ranges, 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(returned(ranges, 1).itemOf()).isEqualTo("battery");
    ranges.set("picked", 1, "item", "stand").set("returns", 1, "item", "stand");
    assertThat(keys(pick(ranges, 1).reasons())).containsExactly("quote.return.item");
    assertThat(pick(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(returned(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    ranges.set("picked", 1, "item", "", "line", 9);
    assertThat(pick(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(pick(ranges, 1).itemOf()).isNull();
  }

  /**
   * Due on 16 February, a week of three charged days from the 15th on: of the 17th and 18th the
   * 17th is the third and charged. 10 × 8.15 × 0.925 = 75.39. By the week: 190 + 140 + 140 (four
   * days by the day are dearer than the week) for 18 days, 190 + 140 + 2 × 63.35 for 16; 2 × (470 −
   * 456.70) × 0.9 × 0.925 = 22.14. The stand: 45.05 × 0.6667 × 0.925 = 27.78.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2 | battery | 10 | 2027-02-18 | 75.39 | battery: late, 1 of 2 days charged at 8.15,"
            + " less 7.5 %",
        "1 | panel | 2 | 2027-02-18 | 22.14 | panel: late, hire of 18 days 470.00 less hire of 16"
            + " days 456.70, less 10 %, less 7.5 %",
        "2 | battery | 10 | 2027-02-16 | | ",
        "3 | stand | 1 | 2027-02-17 | 27.78 | stand: late, 1 of 1 days charged at 45.05, less"
            + " 33.33 %, less 7.5 %"
      })
  void the_statement_shows_how_a_late_fee_came_about(
      int row, String item, double pieces, String date, String fee, String label) {
    Ranges ranges = example();
    ranges.row("returns", "line", row, "item", item, "qty", pieces, "date", day(date));
    if (fee == null) {
      assertThat(statement(ranges, 1).kind()).isNotEqualTo(StatementKind.RETURNED);
      return;
    }
    assertThat(statement(ranges, 1).fee()).isEqualByComparingTo(fee);
    assertThat(words(statement(ranges, 1).label())).isEqualTo(label);
  }

  /** Every late day at the day rate, of a row by the week too: 2 × 63.35 × 2 × 0.9 × 0.925. */
  @Test
  void every_late_day_is_shown_so() {
    Ranges ranges = example().set("house", 1, "late", "every day");
    ranges.row("returns", "line", 1, "item", "panel", "qty", 2, "date", day("2027-02-18"));
    assertThat(statement(ranges, 1).fee()).isEqualByComparingTo("210.96");
    assertThat(words(statement(ranges, 1).label()))
        .isEqualTo("panel: late, 2 of 2 days charged at 63.35, less 10 %, less 7.5 %");
  }

  /** The 19th to 21st are the fifth to seventh day of a week that charges three. */
  @Test
  void a_late_return_within_the_cap_says_that_it_costs_nothing() {
    Ranges ranges = example().set("order", 1, "back", day("2027-02-18"));
    ranges.row("returns", "line", 2, "item", "battery", "qty", 10, "date", day("2027-02-19"));
    assertThat(statement(ranges, 1).daysLate()).isEqualTo(1);
    assertThat(words(statement(ranges, 1).label())).isEqualTo("battery: late, free of charge");
  }

  /** An excess of 150 is one piece's: two damaged pieces pay 300, however they are typed. */
  @Test
  void the_excess_is_that_of_one_piece() {
    Ranges one = example().set("house", 1, "waiverTax", 0);
    one.row("returns", "line", 1, "item", "panel", "qty", 2, "date", day("2027-02-16"));
    one.set("returns", 1, "state", "damaged", "charge", 800);
    assertThat(returned(one, 1).charged()).isEqualByComparingTo("300");
    assertThat(keys(returned(one, 1).reasons())).contains("quote.return.excess");
    Ranges two = example().set("house", 1, "waiverTax", 0);
    for (int row = 1; row <= 2; row++) {
      two.row("returns", "line", 1, "item", "panel", "qty", 1, "date", day("2027-02-16"));
      two.set("returns", row, "state", "damaged", "charge", 400);
      assertThat(returned(two, row).charged()).isEqualByComparingTo("150");
    }
    assertThat(words(statement(two, 1).label()))
        .isEqualTo("panel: damage of 400.00, charged up to the excess");
    // 250 for two pieces may be 200 and 50: 150 and 50 are charged, and only two rows show it
    one.set("returns", 1, "charge", 250);
    assertThat(returned(one, 1).charged()).isEqualByComparingTo("250");
    assertThat(keys(returned(one, 1).reasons())).contains("quote.return.excess");
    one.set("returns", 1, "charge", 140);
    assertThat(returned(one, 1).charged()).isEqualByComparingTo("140");
    assertThat(keys(returned(one, 1).reasons())).doesNotContain("quote.return.excess");
    String closing =
        one.calculate().rows(QuoteResults.CLOSING).stream()
            .map(l -> words(l.text()))
            .reduce("", (a, b) -> a + "\n" + b);
    assertThat(closing).contains("at most 150.00 is charged for each piece");
    assertThat(QuoteInputs.HOUSE.column("excess").help()).contains("each damaged piece");
  }

  /** 12 days from 11 to 22 January, four of seven charged: kit 8, a man on set 12 (practice). */
  @Test
  void a_service_by_the_day_is_charged_every_day() {
    Ranges ranges = example().set("house", 1, "daysPerWeek", 4);
    ranges.set("order", 1, "out", day("2027-02-01"), "back", day("2027-02-12"));
    ranges.row("items", "item", "operator", "type", "service", "basis", "day", "qty", 3);
    ranges.set("items", 6, "rate", 320).set("items", 2, "agreedDays", "");
    PlanResult result = ranges.calculate();
    assertThat(result.rows(QuoteResults.ITEMS).get(1).daysCharged()).isEqualByComparingTo("8");
    assertThat(result.rows(QuoteResults.ITEMS).get(5).daysCharged()).isEqualByComparingTo("12");
    assertThat(result.rows(QuoteResults.ITEMS).get(5).amount()).isEqualByComparingTo("11520");
    assertThat(words(result.rows(QuoteResults.CLOSING).get(0).text()))
        .endsWith("Services by the day: every day.");
  }

  @ParameterizedTest
  @CsvSource({
    "2027-01-19, 2027-02-16, quote.outBeforeDate,    true",
    "2026-02-01, 2026-02-16, quote.outFarBeforeDate, false",
    "2027-02-01, 2028-02-16, quote.orderLong,        true",
    "2027-02-01, 2027-05-16, quote.orderLong,        true"
  })
  void a_slip_in_the_dates_of_the_order_is_said_on_project(
      String out, String back, String key, boolean mayIssue) {
    Ranges ranges = example().set("order", 1, "out", day(out), "back", day(back));
    PlanResult result = ranges.calculate();
    assertThat(keys(result.rows(QuoteResults.ORDER).get(0).reasons())).contains(key);
    assertThat(result.rows(QuoteResults.SUMMARY).get(0).mayIssue()).isEqualTo(mayIssue);
    assertThat(keys(example().calculate().rows(QuoteResults.ORDER).get(0).reasons()))
        .doesNotContain(key);
  }

  @Test
  void what_is_lost_needs_no_day_and_what_came_back_does() {
    Ranges ranges = example();
    ranges.row("returns", "line", 2, "item", "battery", "qty", 1, "state", "lost");
    assertThat(returned(ranges, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(returned(ranges, 1).daysLate()).isZero();
    assertThat(returned(ranges, 1).charged()).isEqualByComparingTo("500");
    ranges.set("returns", 1, "state", "fine");
    assertThat(keys(returned(ranges, 1).reasons())).containsExactly("input.blank");
    assertThat(returned(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void a_waiver_names_the_blank_rule_alone() {
    Ranges ranges = example().set("house", 1, "waiverTax", 0, "waivedLoss", "");
    assertThat(ENGLISH.sentence(house(ranges), Locale.UK))
        .isEqualTo(
            "A damage waiver is charged and Loss with a waiver is blank, so the client is charged"
                + " in full. Fill it in on Assumptions.");
  }

  private static Finding house(Ranges ranges) {
    List<Finding> reasons = ranges.calculate().rows(QuoteResults.HOUSE).get(0).reasons();
    assertThat(reasons).hasSize(1);
    return reasons.get(0);
  }

  @Test
  void the_statement_has_dates_and_rate_of_tax() {
    Ranges ranges = example();
    ranges.row("returns", "line", 2, "item", "battery", "qty", 10, "date", day("2027-02-18"));
    assertThat(statement(ranges, 1).dueOn()).isEqualTo("2027-02-16");
    assertThat(statement(ranges, 1).returnedOn()).isEqualTo("2027-02-18");
    assertThat(statement(ranges, 1).taxRate()).isEqualByComparingTo("0.2");
  }

  @Test
  void what_the_client_calls_it_is_found_in_equipment() {
    Ranges ranges = example().set("stock", 2, "also", "block; brick", "dayRate", 8.15);
    ranges.set("items", 2, "item", "Block", "rate", "");
    PlanResult result = ranges.calculate();
    assertThat(result.rows(QuoteResults.ITEMS).get(1).verdict()).isEqualTo(Verdict.OK);
    assertThat(result.rows(QuoteResults.ITEMS).get(1).amount()).isEqualByComparingTo("652.00");
    // stock is counted together, under whatever name: 10 and 11 of 20
    ranges.row("items", "item", "battery", "qty", 11);
    assertThat(ranges.calculate().rows(QuoteResults.ITEMS).get(5).missing()).isEqualTo(1.0);
    ranges.row("booked", "item", "brick", "qty", 2, "from", day("2027-02-03"));
    ranges.set("booked", 1, "to", day("2027-02-05"));
    assertThat(ranges.calculate().rows(QuoteResults.ITEMS).get(5).missing()).isEqualTo(3.0);
    // either name agrees with the row
    ranges.row("picked", "line", 2, "item", "battery", "qty", 10);
    assertThat(keys(pick(ranges, 1).reasons())).doesNotContain("quote.return.item");
    // a name of two items is none of them
    ranges.set("stock", 3, "also", "block");
    assertThat(keys(ranges.calculate().rows(QuoteResults.ITEMS).get(1).reasons()))
        .contains("quote.notInStock");
  }

  /** What is charged at the end stands where it is signed: common practice. */
  @ParameterizedTest
  @CsvSource({
    "'', day, by the rule of the hire, false",
    "every day, day, each day late at its day rate, false",
    "every day, week, what is hired by the week, true"
  })
  void the_rule_of_late_returns_is_on_the_page(
      String rule, String basis, String words, boolean weeks) {
    Ranges quote = QuoteSamples.empty().set("house", 1, "late", rule);
    quote.row("items", "item", "light", "qty", 1, "rate", 50, "weekRate", 200, "basis", basis);
    assertThat(quote.calculate().rows(QuoteResults.CLOSING))
        .extracting(c -> c.text().pattern())
        .anyMatch(t -> t.startsWith("Late return: ") && t.contains(words))
        .satisfies(
            t ->
                assertThat(t.stream().anyMatch(x -> x.startsWith("By the week"))).isEqualTo(weeks));
  }
}
