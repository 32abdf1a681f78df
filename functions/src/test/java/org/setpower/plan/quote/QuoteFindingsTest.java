package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.quote.QuoteSamples.day;
import static org.setpower.plan.quote.QuoteSamples.empty;
import static org.setpower.plan.quote.QuoteSamples.example;
import static org.setpower.plan.quote.QuoteSamples.full;
import static org.setpower.plan.quote.QuoteSamples.stock;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.quote.QuoteResults.DocumentLine;

/**
 * What a quote must never do again. Expected amounts are calculated by hand from the rules of
 * rental houses (common practice).
 */
class QuoteFindingsTest {
  private static BigDecimal money(String amount) {
    return new BigDecimal(amount);
  }

  private static QuoteResults.ItemResult item(Ranges ranges, int row) {
    return ranges.calculate().rows(QuoteResults.ITEMS).get(row - 1);
  }

  private static QuoteResults.ReturnResult returned(Ranges ranges, int row) {
    return ranges.calculate().rows(QuoteResults.RETURNS).get(row - 1);
  }

  private static List<DocumentLine> page(Ranges ranges) {
    return ranges.calculate().rows(QuoteResults.DOCUMENT);
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  private static List<String> rates(Ranges ranges) {
    return ranges.calculate().rows(QuoteResults.TAXES).stream()
        .map(t -> t.rate().toPlainString())
        .toList();
  }

  private static BigDecimal amount(List<DocumentLine> page, LineKind kind) {
    return page.stream()
        .filter(l -> l.kind() == kind)
        .map(DocumentLine::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static void assertNotIssued(Ranges ranges, String sentence) {
    List<DocumentLine> page = page(ranges);
    assertThat(page).hasSize(1);
    assertThat(page.get(0).kind()).isEqualTo(LineKind.NOT_ISSUED);
    assertThat(new EnglishMessages().sentences(page.get(0).reasons(), Locale.ENGLISH))
        .startsWith(sentence);
  }

  @Test
  void a_waiver_and_its_tax_are_on_the_page() {
    Ranges ranges =
        empty()
            .set("order", 1, "waiver", 0.12)
            .set("house", 1, "waiverTax", 0.2)
            .row("items", "item", "lamp", "qty", 1, "rate", 1000, "agreedDays", 1);
    List<DocumentLine> page = page(ranges);
    assertThat(amount(page, LineKind.WAIVER)).isEqualByComparingTo("120");
    assertThat(amount(page, LineKind.NET)).isEqualByComparingTo("1120");
    assertThat(amount(page, LineKind.TAX)).isEqualByComparingTo("224");
    assertThat(amount(page, LineKind.TOTAL)).isEqualByComparingTo("1344");
  }

  @Test
  void a_fourth_tax_rate_is_not_dropped() {
    Ranges ranges = empty().set("order", 1, "waiver", "");
    for (double tax : new double[] {0, 0.055, 0.1, 0.2}) {
      ranges.row("items", "item", "lamp", "qty", 1, "rate", 100, "agreedDays", 1, "tax", tax);
    }
    assertThat(rates(ranges)).containsExactly("0", "0.055", "0.1", "0.2");
    assertThat(amount(page(ranges), LineKind.BASE)).isEqualByComparingTo("400");
    assertThat(amount(page(ranges), LineKind.TAX)).isEqualByComparingTo("35.50");
  }

  @Test
  void no_tax_rate_is_invented() {
    Ranges ranges =
        empty()
            .set("order", 1, "waiver", "")
            .row("items", "item", "lamp", "qty", 1, "rate", 100, "agreedDays", 1);
    assertThat(rates(ranges)).containsExactly("0.2");
    assertThat(page(ranges).stream().filter(l -> l.kind() == LineKind.TAX)).hasSize(1);
  }

  @Test
  void rates_of_zero_are_told_apart_by_their_reason() {
    Ranges ranges = empty().set("order", 1, "waiver", "");
    for (String reason : List.of("exempt", "reverse charge", "Exempt")) {
      ranges.row("items", "item", "lamp", "qty", 1, "rate", 100, "tax", 0, "taxReason", reason);
    }
    assertThat(ranges.calculate().rows(QuoteResults.TAXES).stream().map(t -> t.reason()))
        .containsExactly("exempt", "reverse charge");
    ranges.set("items", 1, "taxReason", "");
    assertThat(keys(item(ranges, 1).reasons())).contains(QuoteFinding.TAX_REASON);
  }

  @Test
  void a_repeated_item_is_late_by_its_own_dates() {
    Ranges ranges =
        empty()
            .row("items", "item", "lamp", "qty", 1, "rate", 95, "back", day("2027-02-03"))
            .row("items", "item", "lamp", "qty", 1, "rate", 95, "back", day("2027-02-12"))
            .row("returns", "line", 2, "item", "lamp", "qty", 1, "date", day("2027-02-12"));
    assertThat(returned(ranges, 1).daysLate()).isZero();
    assertThat(returned(ranges, 1).fee()).isNull();
    assertThat(returned(ranges, 1).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void late_days_within_the_cap_are_counted() {
    // due on Wednesday: three days charged, the cap of the week; two days more cost nothing
    Ranges ranges =
        empty()
            .row("items", "item", "lamp", "qty", 1, "rate", 95, "back", day("2027-02-03"))
            .row("returns", "line", 1, "item", "lamp", "qty", 1, "date", day("2027-02-05"));
    PlanResult result = ranges.calculate();
    assertThat(result.rows(QuoteResults.RETURNS).get(0).daysLate()).isEqualTo(2);
    assertThat(result.rows(QuoteResults.RETURNS).get(0).fee()).isEqualByComparingTo("0");
    assertThat(keys(result.rows(QuoteResults.RETURNS).get(0).reasons()))
        .containsExactly(QuoteFinding.LATE_FREE);
    assertThat(result.rows(QuoteResults.SUMMARY).get(0).lateRows()).isOne();
    assertThat(returned(ranges.set("house", 1, "late", "every day"), 1).fee())
        .isEqualByComparingTo("190");
  }

  @Test
  void sub_hire_costs_the_days_of_the_other_house() {
    // agreed 1.5 days with the client, the other house charges 3: 72.25 × 3
    Ranges ranges =
        empty()
            .set("order", 1, "discount", 0.1)
            .row("items", "item", "haze", "qty", 1, "rate", 300, "agreedDays", 1.5)
            .set("items", 1, "subFrom", "another house", "subRate", 72.25, "subDays", 3);
    assertThat(item(ranges, 1).subCost()).isEqualTo(money("216.75"));
    assertThat(item(ranges, 1).net()).isEqualTo(money("405.00"));
    assertThat(item(ranges, 1).margin()).isEqualTo(money("188.25"));
    // blank: every day from 1 to 16 February
    ranges.set("items", 1, "subDays", "");
    assertThat(item(ranges, 1).subCost()).isEqualTo(money("1156.00"));
    assertThat(keys(item(ranges, 1).reasons()))
        .contains(QuoteFinding.SUB_HIRE_DAYS, QuoteFinding.SUB_HIRE_LOSS);
  }

  @Test
  void a_stop_row_never_reaches_the_client() {
    assertNotIssued(example().set("items", 2, "qty", 2.5), "Not to be issued: row 2.");
    assertNotIssued(example().set("items", 3, "rate", 1e12), "Not to be issued: row 3.");
    assertNotIssued(
        example().set("items", 1, "item", "").set("items", 3, "back", "soon"),
        "Not to be issued: row 1, 3.");
    assertNotIssued(example().set("order", 1, "tax", "20"), "Not to be issued: Order.");
    assertNotIssued(example().set("order", 1, "tax", ""), "Not to be issued: Order.");
    assertNotIssued(example().set("order", 1, "currency", "EURO"), "Not to be issued: Order.");
    assertNotIssued(empty(), "The quote has no row.");
  }

  @Test
  void only_quantity_price_date_and_tax_stop_a_quote() {
    // short, not insured, no weight, no value, no house name, not in stock
    Ranges ranges =
        example()
            .set("stock", 1, "owned", 1, "weight", "", "value", "")
            .set("order", 1, "waiver", "")
            .set("house", 1, "name", "")
            .row("items", "item", "crane", "qty", 1, "rate", 5);
    QuoteResults.Summary summary = ranges.calculate().rows(QuoteResults.SUMMARY).get(0);
    assertThat(summary.mayIssue()).isTrue();
    assertThat(summary.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(keys(item(ranges, 1).reasons()))
        .contains(QuoteFinding.SHORT, QuoteFinding.NO_WEIGHT, QuoteFinding.NO_VALUE);
    assertThat(page(ranges)).allMatch(l -> l.reasons().isEmpty());
  }

  @Test
  void a_blank_item_is_a_stop_and_in_no_total() {
    Ranges ranges = example().set("items", 2, "item", "");
    assertThat(item(ranges, 2).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(item(ranges, 2).reasons())).contains(CommonFinding.BLANK_CELL);
    assertThat(item(ranges, 2).amount()).isNull();
    assertThat(ranges.calculate().rows(QuoteResults.SUMMARY).get(0).total()).isNull();
  }

  @Test
  void insurance_that_ends_early_is_a_check() {
    Ranges ranges = example().set("order", 1, "waiver", "");
    assertThat(order(ranges)).contains(QuoteFinding.NOT_INSURED);
    ranges.set("order", 1, "insuredUntil", day("2027-02-15"));
    assertThat(order(ranges)).contains(QuoteFinding.INSURANCE_ENDS);
    ranges.set("order", 1, "insuredUntil", day("2027-02-16"));
    assertThat(order(ranges)).isEmpty();
    // returned later than due, or one row longer than the order
    ranges.row("returns", "line", 1, "item", "panel", "qty", 3, "date", day("2027-02-17"));
    assertThat(order(ranges)).contains(QuoteFinding.INSURANCE_ENDS);
    Ranges longer = example().set("order", 1, "insuredUntil", day("2027-02-16"));
    longer.set("items", 3, "back", day("2027-02-17"));
    assertThat(order(longer)).contains(QuoteFinding.INSURANCE_ENDS);
  }

  private static List<FindingKey> order(Ranges ranges) {
    return keys(ranges.calculate().rows(QuoteResults.ORDER).get(0).reasons());
  }

  @Test
  void a_late_fee_has_the_discounts_of_the_hire() {
    // 124 a day, three days late of seven charged: 372, less 7.5 %: 344.10
    Ranges ranges =
        empty()
            .set("house", 1, "daysPerWeek", 7)
            .set("order", 1, "discount", 0.075)
            .row("items", "item", "lamp", "qty", 2, "rate", 62, "back", day("2027-02-03"))
            .row("returns", "line", 1, "item", "lamp", "qty", 2, "date", day("2027-02-06"));
    assertThat(returned(ranges, 1).fee()).isEqualTo(money("344.10"));
    assertThat(returned(ranges, 1).feeTax()).isEqualTo(money("68.82"));
    ranges.set("items", 1, "discount", 0.5);
    assertThat(returned(ranges, 1).fee()).isEqualTo(money("172.05"));
  }

  @Test
  void a_late_return_counts_by_type_of_day_as_the_hire_does() {
    Ranges ranges =
        QuoteSamples.byDayType()
            .set("items", 1, "back", day("2027-02-02"), "rate", 100)
            .set("returns", 1, "date", day("2027-02-04"));
    // shoot, shoot and half a day of travel; two days more: shoot and night
    assertThat(item(ranges, 1).daysCharged()).isEqualByComparingTo("2.5");
    assertThat(returned(ranges, 1).fee()).isEqualByComparingTo("200");
    // the schedule ends on 9 February: 3 + 1 + 1 + 1 and twice a half
    assertThat(item(ranges.set("items", 1, "back", ""), 1).daysCharged()).isEqualByComparingTo("7");
  }

  @Test
  void a_late_weekly_hire_rolls_on() {
    // the third week costs 140 instead of 2 × 63.35: 3 × 13.30 × 0.9 × 0.925
    Ranges ranges =
        example()
            .row("returns", "line", 1, "item", "panel", "qty", 3, "date", day("2027-02-17"))
            .row("returns", "line", 2, "item", "battery", "qty", 10, "date", day("2027-02-17"));
    assertThat(returned(ranges, 1).fee()).isEqualTo(money("33.22"));
    // 16 days charge 3 + 3 + 2, 17 days 3 + 3 + 3
    assertThat(returned(ranges, 2).fee()).isEqualTo(money("75.39"));
  }

  @Test
  void returns_are_by_row_and_pieces_out_are_back_and_missing() {
    Ranges ranges =
        example()
            .row("returns", "line", 2, "item", "battery", "qty", 7, "date", day("2027-02-16"))
            .row("returns", "line", 2, "item", "battery", "qty", 2, "date", day("2027-02-16"))
            .set("returns", 2, "state", "lost");
    assertThat(returned(ranges, 2).replacement()).isEqualByComparingTo("1000");
    assertThat(item(ranges, 2).reasons()).contains(Finding.of(QuoteFinding.NOT_BACK, 1.0));
    ranges.set("returns", 1, "qty", 9);
    assertThat(keys(returned(ranges, 1).reasons())).contains(QuoteFinding.RETURN_TOO_MANY);
    ranges.set("returns", 1, "item", "panel");
    assertThat(keys(returned(ranges, 1).reasons())).contains(QuoteFinding.RETURN_ITEM);
  }

  @Test
  void another_currency_never_relabels_the_price_list() {
    Ranges ranges = empty().set("house", 1, "currency", "EUR").set("order", 1, "currency", "GBP");
    stock(ranges, "lamp", 3).set("stock", 1, "dayRate", 100, "value", 1000);
    ranges.row("items", "item", "lamp", "qty", 1, "agreedDays", 1);
    assertThat(keys(item(ranges, 1).reasons())).contains(QuoteFinding.EXCHANGE_MISSING);
    assertThat(item(ranges, 1).amount()).isNull();
    ranges.set("order", 1, "exchange", 0.8555);
    assertThat(item(ranges, 1).amount()).isEqualTo(money("85.55"));
    assertThat(ranges.calculate().rows(QuoteResults.SUMMARY).get(0).toInsure())
        .isEqualTo(money("855.50"));
    // a rate typed in the row is in the currency of the quote
    assertThat(item(ranges.set("items", 1, "rate", 90), 1).amount()).isEqualTo(money("90.00"));
  }

  @ParameterizedTest
  @CsvSource({"JPY, 16", "EUR, 15.90", "KWD, 15.899"})
  void amounts_end_at_the_minor_unit(String currency, String amount) {
    Ranges ranges =
        empty()
            .set("order", 1, "currency", currency)
            .row("items", "item", "lamp", "qty", 1, "rate", 15.8985, "agreedDays", 1);
    assertThat(item(ranges, 1).amount()).isEqualTo(money(amount));
  }

  @Test
  void the_page_holds_no_cost_no_margin_no_other_house_no_stock() {
    PlanResult result = full().calculate();
    assertThat(result.rows(QuoteResults.SUMMARY).get(0).mayIssue()).isTrue();
    String printed =
        result.rows(QuoteResults.DOCUMENT).toString()
            + result.rows(QuoteResults.LETTER)
            + result.rows(QuoteResults.TERMS)
            + result.rows(QuoteResults.TAXES);
    assertThat(printed).contains("haze machine").doesNotContain("another house");
    for (Class<? extends Record> page :
        List.of(DocumentLine.class, QuoteResults.Letter.class, QuoteResults.TaxLine.class)) {
      assertThat(Arrays.stream(page.getRecordComponents()).map(RecordComponent::getName))
          .doesNotContain("subCost", "margin", "peak", "missing", "subFrom", "owned", "net");
    }
    // 28 × 3 days of sub-hire, 135 − 84 of margin
    assertThat(
            result.rows(QuoteResults.DOCUMENT).stream()
                .map(DocumentLine::amount)
                .filter(Objects::nonNull)
                .map(a -> a.stripTrailingZeros().toPlainString()))
        .doesNotContain("84", "51");
  }

  @Test
  void the_letter_has_what_a_rental_house_sends() {
    QuoteResults.Letter letter = full().calculate().rows(QuoteResults.LETTER).get(0);
    for (RecordComponent part : QuoteResults.Letter.class.getRecordComponents()) {
      try {
        assertThat(part.getAccessor().invoke(letter)).as(part.getName()).isNotNull();
      } catch (ReflectiveOperationException e) {
        throw new AssertionError(part.getName(), e);
      }
    }
    Ranges bare = example().set("house", 1, "bank", "", "payment", "", "waiverTax", 0);
    bare.set("client", 1, "name", "");
    PlanResult result = bare.calculate();
    assertThat(keys(result.rows(QuoteResults.HOUSE).get(0).reasons()))
        .containsExactly(QuoteFinding.MISSING_ON_PAGE, QuoteFinding.MISSING_ON_PAGE);
    assertThat(keys(result.rows(QuoteResults.CLIENT).get(0).reasons()))
        .containsExactly(QuoteFinding.MISSING_ON_PAGE);
  }

  @Test
  void a_discount_can_be_followed() {
    List<DocumentLine> page = page(example());
    DocumentLine discount =
        page.stream().filter(l -> l.kind() == LineKind.DISCOUNT).findFirst().orElseThrow();
    assertThat(discount.share()).isEqualByComparingTo("0.075");
    // of the hire alone: sold rows and services stand below it
    assertThat(discount.amount())
        .isEqualByComparingTo(
            amount(page, LineKind.HIRE)
                .multiply(money("-0.075"))
                .setScale(2, java.math.RoundingMode.HALF_UP));
    assertThat(page.stream().map(DocumentLine::share).filter(Objects::nonNull))
        .contains(money("0.3333"));
  }

  @Test
  void the_house_says_what_is_discounted() {
    Ranges ranges =
        empty()
            .set("order", 1, "discount", 0.5, "waiver", "")
            .row("items", "item", "a", "qty", 1, "rate", 100, "agreedDays", 1)
            .row("items", "item", "b", "qty", 1, "rate", 100, "agreedDays", 1, "discount", 0.1)
            .row("items", "item", "c", "qty", 1, "rate", 100, "agreedDays", 1, "subFrom", "x");
    assertThat(amount(page(ranges), LineKind.DISCOUNT)).isEqualByComparingTo("-145");
    ranges.set("house", 1, "subHireDiscounted", "no");
    assertThat(amount(page(ranges), LineKind.DISCOUNT)).isEqualByComparingTo("-95");
    ranges.set("house", 1, "discountOn", "rows without a discount");
    assertThat(amount(page(ranges), LineKind.DISCOUNT)).isEqualByComparingTo("-50");
  }

  @Test
  void a_small_order_is_brought_up_to_the_least() {
    Ranges ranges =
        empty()
            .set("house", 1, "minAmount", 100)
            .set("order", 1, "waiver", "")
            .row("items", "item", "a", "qty", 1, "rate", 80, "agreedDays", 1);
    assertThat(amount(page(ranges), LineKind.MINIMUM)).isEqualByComparingTo("20");
    assertThat(amount(page(ranges), LineKind.TOTAL)).isEqualByComparingTo("120");
  }

  @Test
  void stock_is_compared_on_the_days_of_each_row() {
    Ranges ranges = stock(empty(), "lamp", 4).set("stock", 1, "outOfService", 1);
    ranges
        .row("items", "item", "lamp", "qty", 2, "rate", 1, "back", day("2027-02-05"))
        .row("items", "item", "Lamp", "qty", 2, "rate", 1, "out", day("2027-02-06"));
    assertThat(item(ranges, 1).missing()).isZero();
    assertThat(item(ranges, 2).missing()).isZero();
    // two days to check them in: four are out on 6 and 7 February, three can go
    ranges.set("house", 1, "turnaround", 2);
    assertThat(item(ranges, 2).reasons())
        .contains(
            Finding.of(QuoteFinding.SHORT, 1.0, 4.0, java.time.LocalDate.parse("2027-02-06"), 3.0));
    ranges.set("house", 1, "turnaround", 0);
    ranges.row("booked", "item", "lamp", "qty", 2, "from", day("2027-02-10"));
    ranges.set("booked", 1, "to", day("2027-02-12"));
    assertThat(item(ranges, 1).missing()).isZero();
    assertThat(item(ranges, 2).missing()).isEqualTo(1);
    // what is sub-hired does not come from the shelf
    ranges.set("items", 2, "subFrom", "x", "subRate", 1, "subDays", 1);
    assertThat(item(ranges, 2).missing()).isNull();
  }

  @Test
  void on_request_is_counted_and_left_out_of_the_total() {
    Ranges ranges = example().row("items", "item", "crane", "qty", 1, "basis", "on request");
    assertThat(amount(page(ranges), LineKind.TOTAL)).isEqualByComparingTo("2741.96");
    assertThat(ranges.calculate().rows(QuoteResults.LETTER).get(0).onRequest()).isOne();
    assertThat(page(ranges)).anyMatch(l -> "crane".equals(l.text()) && l.amount() == null);
  }

  @Test
  void a_hire_counts_by_dates_and_agreed_days_stand_beside() {
    // 28 January to 9 February: 13 calendar days, 3 + 3 charged
    Ranges ranges =
        empty()
            .set("order", 1, "out", day("2027-01-28"), "back", day("2027-02-09"))
            .set("order", 1, "agreedDays", 5)
            .row("items", "item", "a", "qty", 1, "rate", 1)
            .row("items", "item", "b", "qty", 1, "rate", 1, "back", day("2027-02-11"))
            .row("items", "item", "c", "qty", 1, "rate", 1, "agreedDays", 2);
    PlanResult result = ranges.calculate();
    assertThat(result.rows(QuoteResults.SUMMARY).get(0).calendarDays()).isEqualTo(13);
    List<QuoteResults.ItemResult> items = result.rows(QuoteResults.ITEMS);
    assertThat(items.stream().map(i -> i.ruleDays().intValue())).containsExactly(6, 7, 6);
    assertThat(items.stream().map(i -> i.daysCharged().intValue())).containsExactly(5, 7, 2);
  }

  @Test
  void the_carnet_list_has_what_is_marked_with_serials_and_origin() {
    Ranges ranges =
        example()
            .row("picked", "line", 3, "item", "stand", "serials", "S7", "carnet", "yes")
            .row("picked", "line", 1, "item", "panel", "serials", "A1, A2, A3");
    PlanResult result = ranges.calculate();
    assertThat(keys(result.rows(QuoteResults.PICKED).get(0).reasons()))
        .containsExactly(QuoteFinding.NO_ORIGIN);
    ranges.set("stock", 3, "origin", "FR");
    QuoteResults.CarnetRow row = ranges.calculate().rows(QuoteResults.CARNET).get(0);
    assertThat(ranges.calculate().rows(QuoteResults.CARNET)).hasSize(1);
    assertThat(row.serials()).isEqualTo("S7");
    assertThat(row.origin()).isEqualTo("FR");
    assertThat(row.value()).isEqualByComparingTo("500");
    assertThat(row.weight()).isEqualByComparingTo("2.5");
    assertThat(result.rows(QuoteResults.VALUES).get(0).serials()).isEqualTo("A1, A2, A3");
    // the number of another row, as after an inserted one: never on a list
    ranges.set("picked", 1, "line", 2);
    assertThat(ranges.calculate().rows(QuoteResults.CARNET)).isEmpty();
    assertThat(keys(ranges.calculate().rows(QuoteResults.PICKED).get(0).reasons()))
        .containsExactly(QuoteFinding.RETURN_ITEM);
  }

  @Test
  void cautions_stand_on_the_delivery_note_and_not_on_the_page() {
    Ranges ranges = example().set("stock", 2, "caution", "Do not charge below 0 °C.");
    PlanResult result = ranges.calculate();
    assertThat(result.rows(QuoteResults.DELIVERY).stream().map(d -> d.caution()))
        .contains("Do not charge below 0 °C.");
    assertThat(result.rows(QuoteResults.DOCUMENT).toString()).doesNotContain("charge below");
  }

  @Test
  void a_waiver_whose_tax_is_not_set_is_a_check() {
    Ranges ranges = example();
    QuoteResults.HouseResult house = ranges.calculate().rows(QuoteResults.HOUSE).get(0);
    assertThat(house.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(new EnglishMessages().sentences(house.reasons(), Locale.ENGLISH))
        .contains("Fill in Tax on the waiver on Assumptions");
    for (double tax : new double[] {0, 0.2}) {
      ranges.set("house", 1, "waiverTax", tax);
      assertThat(ranges.calculate().rows(QuoteResults.HOUSE).get(0).reasons()).isEmpty();
    }
    ranges.set("house", 1, "waiverTax", "").set("order", 1, "waiver", "");
    assertThat(ranges.calculate().rows(QuoteResults.HOUSE).get(0).reasons()).isEmpty();
  }

  @Test
  void the_delivery_note_has_what_was_picked_else_what_was_ordered() {
    Ranges ranges =
        example().row("picked", "line", 1, "item", "panel", "qty", 2, "serials", "A1, A2");
    List<QuoteResults.DeliveryRow> note = ranges.calculate().rows(QuoteResults.DELIVERY);
    assertThat(note.stream().map(d -> d.pieces())).containsExactly(2.0, 10.0, 1.0, 1.0);
    assertThat(note.get(0).serials()).isEqualTo("A1, A2");
    assertThat(note.get(0).weight()).isEqualByComparingTo("5");
    assertThat(note.get(1).serials()).isNull();
    // two rows of Picking for one row of the quote: no figure is better than a wrong one
    ranges.row("picked", "line", 1, "item", "panel", "qty", 3);
    note = ranges.calculate().rows(QuoteResults.DELIVERY);
    assertThat(note.get(0).pieces()).isNull();
    assertThat(note.get(0).weight()).isNull();
    assertThat(ranges.calculate().rows(QuoteResults.SUMMARY).get(0).withoutWeight()).isOne();
  }

  @Test
  void only_what_is_hired_must_come_back() {
    Ranges ranges = example().row("items", "item", "diesel", "qty", 1, "type", "sold");
    ranges.set("items", 6, "basis", "on request");
    assertThat(ranges.calculate().rows(QuoteResults.DUE).stream().map(d -> d.item()))
        .containsExactly("panel", "battery", "stand");
  }

  /** Three panels, ten batteries and a stand at 500 and 2.5 kg each: 7000 and 35 kg. */
  @Test
  void what_is_sub_hired_and_not_on_equipment_is_said_in_row_and_totals() {
    Ranges ranges = example().row("items", "item", "balloon", "qty", 1, "rate", 260);
    ranges.set("items", 6, "subFrom", "another house", "subRate", 180, "subDays", 4);
    assertThat(keys(item(ranges, 6).reasons())).containsExactly(QuoteFinding.SUB_HIRE_VALUE);
    QuoteResults.Summary sums = ranges.calculate().rows(QuoteResults.SUMMARY).get(0);
    assertThat(sums.toInsure()).isEqualByComparingTo("7000");
    assertThat(sums.weight()).isEqualByComparingTo("35");
    assertThat(sums.withoutValue()).isOne();
    assertThat(sums.withoutWeight()).isOne();
    assertThat(page(ranges).get(page(ranges).size() - 1).label())
        .isEqualTo(PageText.VALUE_INCOMPLETE.of(1.0));
    ranges.row("stock", "item", "balloon", "value", 4000, "weight", 12);
    assertThat(item(ranges, 6).reasons()).isEmpty();
    sums = ranges.calculate().rows(QuoteResults.SUMMARY).get(0);
    assertThat(sums.toInsure()).isEqualByComparingTo("11000");
    assertThat(sums.withoutValue()).isZero();
    assertThat(sums.withoutWeight()).isZero();
  }
}
