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
    assertNotIssued(example().set("order", 1, "tax", "20"), "Not to be issued: Project.");
    assertNotIssued(example().set("order", 1, "tax", ""), "Not to be issued: Project.");
    assertNotIssued(example().set("order", 1, "currency", "EURO"), "Not to be issued: Project.");
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
    assertThat(returned(ranges, 2).charged()).isEqualByComparingTo("1000");
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
    // the row and the sum
    assertThat(ranges.calculate().rows(QuoteResults.CARNET)).hasSize(2);
    assertThat(row.serials()).isEqualTo("S7");
    assertThat(row.origin()).isEqualTo("FR");
    assertThat(row.value()).isEqualByComparingTo("500");
    assertThat(row.weight()).isEqualByComparingTo("2.5");
    assertThat(result.rows(QuoteResults.VALUES).get(0).serials()).isEqualTo("A1, A2, A3");
    // the number of another row, as after an inserted one: never on a list
    ranges.set("picked", 1, "line", 2);
    assertThat(ranges.calculate().rows(QuoteResults.CARNET).stream().map(r -> r.kind()))
        .containsExactly(PaperKind.NOT_ISSUED);
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
  void the_delivery_note_has_what_was_picked_and_before_picking_what_was_ordered() {
    Ranges ranges = example();
    List<QuoteResults.DeliveryRow> note = ranges.calculate().rows(QuoteResults.DELIVERY);
    assertThat(note.stream().map(d -> d.pieces())).containsExactly(3.0, 10.0, 1.0, 1.0, null);
    ranges.row("picked", "line", 1, "item", "panel", "qty", 2, "serials", "A1, A2");
    note = ranges.calculate().rows(QuoteResults.DELIVERY);
    assertThat(note.stream().map(d -> d.pieces())).containsExactly(2.0, null);
    assertThat(ranges.calculate().rows(QuoteResults.DUE)).hasSize(1);
    assertThat(note.get(0).serials()).isEqualTo("A1, A2");
    assertThat(note.get(0).weight()).isEqualByComparingTo("5");
    assertThat(note.get(1).weight()).isEqualByComparingTo("5");
    ranges.row("picked", "line", 2, "item", "battery");
    note = ranges.calculate().rows(QuoteResults.DELIVERY);
    assertThat(note.get(1).pieces()).isEqualTo(10);
    assertThat(note.get(1).serials()).isNull();
    // two rows of Picking for one row of the quote: no paper is better than a wrong one
    ranges.row("picked", "line", 1, "item", "panel", "qty", 3);
    note = ranges.calculate().rows(QuoteResults.DELIVERY);
    assertThat(note).hasSize(1);
    assertThat(note.get(0).kind()).isEqualTo(PaperKind.NOT_ISSUED);
    assertThat(note.get(0).weight()).isNull();
  }

  @Test
  void only_what_is_hired_must_come_back() {
    Ranges ranges = example().row("items", "item", "diesel", "qty", 1, "type", "sold");
    ranges.set("items", 6, "basis", "on request");
    assertThat(ranges.calculate().rows(QuoteResults.DUE).stream().map(d -> d.item()))
        .containsExactly(
            PageText.PLAIN.of("panel"), PageText.PLAIN.of("battery"), PageText.PLAIN.of("stand"));
  }

  /** Three panels, ten batteries and a stand at 500 and 2.5 kg each: 7000 and 35 kg. */
  @Test
  void what_is_sub_hired_and_not_on_equipment_is_said_in_row_and_totals() {
    Ranges ranges = example().row("items", "item", "balloon", "qty", 1, "rate", 260);
    ranges.set("order", 1, "insuredUntil", day("2027-02-16"));
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

  /** What each sentence below the lines says, in English. */
  private static List<String> closing(Ranges ranges) {
    return ranges.calculate().rows(QuoteResults.CLOSING).stream()
        .map(c -> new EnglishMessages().phrase(c.text(), Locale.UK))
        .toList();
  }

  private static String sentences(List<Finding> findings) {
    return new EnglishMessages().sentences(findings, Locale.UK);
  }

  @Test
  void who_pays_the_waiver_is_not_asked_to_insure() {
    Ranges ranges = example();
    assertThat(page(ranges)).noneMatch(l -> l.kind() == LineKind.VALUE);
    assertThat(closing(ranges)).anyMatch(t -> t.startsWith("A damage waiver is charged, so no"));
    // with a certificate too both stand: 14 pieces at 500
    ranges.set("order", 1, "insuredUntil", day("2027-02-16"));
    assertThat(amount(page(ranges), LineKind.VALUE)).isEqualByComparingTo("7000");
    ranges.set("order", 1, "insuredUntil", "", "waiver", "");
    assertThat(amount(page(ranges), LineKind.VALUE)).isEqualByComparingTo("7000");
    assertThat(closing(ranges)).noneMatch(t -> t.contains("waiver"));
  }

  @Test
  void the_value_to_insure_is_of_what_is_quoted_and_lists_are_of_what_was_picked() {
    Ranges ranges =
        example()
            .set("order", 1, "waiver", "")
            .set("stock", 1, "origin", "FR")
            .row("picked", "line", 1, "item", "panel", "qty", 2, "carnet", "yes");
    PlanResult result = ranges.calculate();
    assertThat(amount(page(ranges), LineKind.VALUE)).isEqualByComparingTo("7000");
    assertThat(result.rows(QuoteResults.VALUES).get(0).pieces()).isEqualTo(2);
    assertThat(result.rows(QuoteResults.VALUES).get(0).value()).isEqualByComparingTo("1000");
    assertThat(result.rows(QuoteResults.SUMMARY).get(0).toInsure()).isEqualByComparingTo("6500");
    QuoteResults.CarnetRow carnet = result.rows(QuoteResults.CARNET).get(0);
    assertThat(carnet.pieces()).isEqualTo(2);
    assertThat(carnet.weight()).isEqualByComparingTo("5");
    assertThat(carnet.value()).isEqualByComparingTo("1000");
    // two of two that went out are back: nothing is missing
    ranges.row("returns", "line", 1, "item", "panel", "qty", 2, "date", day("2027-02-16"));
    assertThat(keys(item(ranges, 1).reasons())).doesNotContain(QuoteFinding.NOT_BACK);
    assertThat(ranges.calculate().rows(QuoteResults.DUE).get(0).pieces()).isEqualTo(2);
    ranges.set("returns", 1, "qty", 3);
    assertThat(keys(returned(ranges, 1).reasons())).contains(QuoteFinding.RETURN_TOO_MANY);
  }

  /**
   * Eight tubes at 18 a day, 10 % off the order, 20 % tax; two come back two days late: 2 × 18 × 2
   * × 0.9 = 64.80 and 12.96 tax. A battery of 290 is lost: 367.76 off a deposit of 1500.
   */
  private static Ranges tubes() {
    Ranges ranges =
        empty()
            .set("house", 1, "daysPerWeek", "", "waiverTax", 0.2)
            .set("order", 1, "out", day("2027-03-04"), "back", day("2027-03-09"))
            .set("order", 1, "discount", 0.1, "security", 1500);
    stock(ranges, "tube", 8).set("stock", 1, "dayRate", 18);
    stock(ranges, "battery", 12).set("stock", 2, "dayRate", 10, "value", 290);
    return ranges
        .row("items", "item", "tube", "qty", 8)
        .row("items", "item", "battery", "qty", 12)
        .row("items", "item", "gaffer tape", "qty", 6, "type", "sold", "rate", 9.5)
        .row("returns", "line", 1, "item", "tube", "qty", 2, "date", day("2027-03-11"))
        .row("returns", "line", 2, "item", "battery", "qty", 1, "date", day("2027-03-09"))
        .set("returns", 2, "state", "lost");
  }

  private static List<String> statement(Ranges ranges) {
    return ranges.calculate().rows(QuoteResults.STATEMENT).stream()
        .map(
            l ->
                new EnglishMessages().phrase(l.label(), Locale.UK)
                    + " = "
                    + (l.amount() == null ? "" : l.amount().toPlainString()))
        .toList();
  }

  @Test
  void late_lost_and_security_are_put_together_for_the_client() {
    Ranges ranges = tubes().set("order", 1, "restBack", "yes");
    String balance = ranges.calculate().rows(QuoteResults.SUMMARY).get(0).balance().toPlainString();
    assertThat(statement(ranges))
        .containsExactly(
            "tube: late, 2 of 2 days charged at 18.00, less 10 % = 77.76",
            "battery: lost = 290.00",
            "Charges = 367.76",
            "Less security deposit = -1500.00",
            "Security deposit to give back = 1132.24",
            "Balance of the quote, due apart from this = " + balance);
    QuoteResults.Summary summary = ranges.calculate().rows(QuoteResults.SUMMARY).get(0);
    assertThat(summary.charges()).isEqualByComparingTo("367.76");
    assertThat(summary.giveBack()).isEqualByComparingTo("1132.24");
    assertThat(summary.toPay()).isNull();
    assertThat(summary.openPoints()).isZero();
    ranges.set("order", 1, "security", 300);
    assertThat(statement(ranges)).contains("Still to pay = 67.76");
    ranges.set("order", 1, "security", "");
    assertThat(statement(ranges)).contains("Still to pay = 367.76");
    assertThat(statement(ranges)).noneMatch(l -> l.contains("ecurity"));
  }

  @Test
  void a_statement_says_what_is_still_open() {
    Ranges ranges =
        tubes()
            .row("returns", "line", 2, "item", "battery", "qty", 1, "date", day("2027-03-09"))
            .set("returns", 3, "state", "damaged");
    // six tubes and ten batteries are not on Returns
    assertThat(statement(ranges))
        .contains("battery: damaged = ", "tube: not back = ", "battery: not back = ")
        .contains("Charges so far; points still open: 3 = 367.76")
        .contains("Security deposit to give back, so far = 1132.24");
    ranges.set("order", 1, "restBack", "yes");
    assertThat(statement(ranges)).contains("Charges so far; points still open: 1 = 367.76");
    assertThat(sentences(returned(ranges, 3).reasons()))
        .isEqualTo("1 piece came back damaged. Assess the damage and fill in Charge.");
    ranges.set("returns", 3, "charge", 40.005);
    assertThat(statement(ranges)).contains("battery: damaged = 40.01", "Charges = 407.77");
    assertThat(returned(ranges, 3).reasons()).isEmpty();
    // lost without a value is open, and a charge typed counts instead of the value
    ranges.set("stock", 2, "value", "");
    assertThat(statement(ranges)).contains("battery: lost = ");
    assertThat(keys(returned(ranges, 2).reasons())).containsExactly(QuoteFinding.LOST_NO_VALUE);
    ranges.set("returns", 2, "charge", 250);
    assertThat(statement(ranges)).contains("battery: lost = 250.00");
  }

  @Test
  void a_statement_is_withheld_with_the_quote_or_a_return() {
    assertThat(statement(tubes().set("returns", 1, "qty", 9)))
        .containsExactly("Not to be issued: Returns. Correct what is a stop there. = ");
    assertThat(statement(tubes().set("items", 2, "qty", 2.5)))
        .containsExactly("Not to be issued: row 2. Correct what is a stop there. = ");
    assertThat(statement(example())).isEmpty();
  }

  @Test
  void only_what_differs_is_typed_once_all_else_is_back() {
    Ranges ranges = tubes();
    assertThat(keys(item(ranges, 1).reasons())).contains(QuoteFinding.NOT_BACK);
    assertThat(sentences(item(ranges, 1).reasons())).contains("6 pieces are not back.");
    assertThat(ranges.calculate().rows(QuoteResults.DUE).stream().map(d -> d.open()))
        .containsExactly(6.0, 11.0);
    ranges.set("order", 1, "restBack", "yes");
    assertThat(keys(item(ranges, 1).reasons())).doesNotContain(QuoteFinding.NOT_BACK);
    assertThat(ranges.calculate().rows(QuoteResults.DUE).stream().map(d -> d.open()))
        .containsExactly(0.0, 0.0);
    assertThat(returned(ranges, 1).fee()).isEqualByComparingTo("64.80");
  }

  @Test
  void days_agreed_stand_on_the_page_instead_of_the_rule() {
    Ranges ranges =
        empty()
            .set("house", 1, "weekend", "one day", "daysPerWeek", "")
            .set("order", 1, "agreedDays", 4)
            .row("items", "item", "a", "qty", 1, "rate", 1);
    assertThat(closing(ranges).get(0)).isEqualTo("Charged days: 4, as agreed.");
    // a row with dates of its own follows the rule
    ranges.row("items", "item", "b", "qty", 1, "rate", 1, "back", day("2027-02-02"));
    assertThat(closing(ranges).get(0))
        .startsWith("Charged days: 4, as agreed. All other rows: every day from out to back")
        .endsWith("A weekend counts as one day.");
    ranges.set("items", 2, "agreedDays", 2);
    assertThat(closing(ranges).get(0))
        .isEqualTo("Charged days: 4, as agreed; in some rows other days, agreed for them.");
    ranges.set("order", 1, "agreedDays", "");
    assertThat(closing(ranges).get(0))
        .startsWith("Charged days: in some rows as agreed. All other rows: every day");
    ranges.set("items", 1, "agreedDays", 3);
    assertThat(closing(ranges).get(0)).isEqualTo("Charged days: as agreed, in the rows.");
  }

  @Test
  void the_two_rules_of_late_days_have_words_of_their_own() {
    Ranges ranges = tubes();
    assertThat(sentences(returned(ranges, 1).reasons()))
        .isEqualTo("2 days late: 64.80 net by the rule of the hire. Tell the client.");
    ranges.set("house", 1, "late", "every day");
    assertThat(sentences(returned(ranges, 1).reasons()))
        .isEqualTo("2 days late: 64.80 net, every late day charged. Tell the client.");
    ranges.set("returns", 1, "date", day("2027-03-10"));
    assertThat(sentences(returned(ranges, 1).reasons())).startsWith("1 day late: 32.40 net");
    assertThat(sentences(returned(ranges, 2).reasons()))
        .isEqualTo("1 piece is lost. What is charged stands on the return statement.");
  }

  @Test
  void the_rate_used_stands_beside_a_row_with_its_number() {
    Ranges ranges = example().set("stock", 2, "dayRate", 7.5).set("items", 2, "rate", "");
    // by the week, by the day from Equipment, sold
    assertThat(
            ranges.calculate().rows(QuoteResults.ITEMS).stream()
                .filter(Objects::nonNull)
                .map(i -> i.row() + " " + i.price().toPlainString()))
        .containsExactly("1 190.0", "2 7.5", "3 45.05", "4 86.45", "5 120.0");
  }

  @Test
  void a_share_out_of_range_is_told_in_per_cent() {
    Ranges ranges = example().set("items", 3, "discount", 10);
    assertThat(sentences(item(ranges, 3).reasons()))
        .contains("Discount is 1000 %. Type a figure from 0 to 100 %.");
  }

  @Test
  void lines_have_the_number_of_their_row_under_headings_of_their_own() {
    Ranges ranges =
        example()
            .row("items", "item", "van", "qty", 1, "type", "service", "rate", 85)
            .set("items", 6, "section", "Transport")
            .row("items", "item", "bulb", "qty", 1, "type", "sold", "rate", 3);
    List<DocumentLine> page = page(ranges);
    // sorted by section: panel and stand, battery, gel and bulb, delivery, van
    assertThat(page.stream().map(DocumentLine::row).filter(Objects::nonNull))
        .containsExactly(1, 3, 2, 4, 7, 5, 6);
    assertThat(
            page.stream()
                .filter(l -> l.kind() == LineKind.SECTION)
                .map(l -> new EnglishMessages().phrase(l.label(), Locale.UK)))
        .containsExactly("lighting", "power", "Sold", "Services", "Transport");
  }

  @Test
  void one_rate_of_tax_has_its_net_once_and_its_rate_once() {
    Ranges ranges =
        empty()
            .set("order", 1, "waiver", "")
            .row("items", "item", "a", "qty", 1, "rate", 100, "agreedDays", 1);
    assertThat(page(ranges)).noneMatch(l -> l.kind() == LineKind.BASE);
    assertThat(page(ranges).stream().filter(l -> l.kind() == LineKind.TAX))
        .hasSize(1)
        .allMatch(l -> l.taxRate() == null);
    // a rate of 0 says why
    ranges.set("order", 1, "tax", 0, "taxReason", "export");
    assertThat(amount(page(ranges), LineKind.BASE)).isEqualByComparingTo("100");
  }

  @Test
  void an_odd_tax_or_validity_is_a_check() {
    Ranges ranges = example().set("order", 1, "insuredUntil", day("2027-02-16"));
    assertThat(order(ranges)).isEmpty();
    for (double odd : new double[] {0.02, 0.001, 0.28}) {
      assertThat(order(ranges.set("order", 1, "tax", odd))).containsExactly(QuoteFinding.TAX_ODD);
    }
    assertThat(sentences(ranges.calculate().rows(QuoteResults.ORDER).get(0).reasons()))
        .startsWith("The tax is 28 %, which is hardly");
    for (double rate : new double[] {0.021, 0.05, 0.27}) {
      assertThat(order(ranges.set("order", 1, "tax", rate))).isEmpty();
    }
    ranges.set("items", 1, "tax", 0.02);
    assertThat(keys(item(ranges, 1).reasons())).contains(QuoteFinding.TAX_ODD);
    ranges.set("order", 1, "validUntil", day("2027-02-01"));
    assertThat(order(ranges)).isEmpty();
    ranges.set("order", 1, "validUntil", day("2027-02-02"));
    assertThat(order(ranges)).containsExactly(QuoteFinding.VALID_AFTER_OUT);
  }

  /** Five days at 210 are 1050; the week costs 840. */
  @Test
  void days_that_are_dearer_than_the_week_are_a_check() {
    Ranges ranges =
        empty().set("house", 1, "daysPerWeek", "").set("order", 1, "back", day("2027-02-05"));
    stock(ranges, "generator", 1).set("stock", 1, "dayRate", 210, "weekRate", 840, "value", 9000);
    ranges.row("items", "item", "generator", "qty", 1);
    assertThat(sentences(item(ranges, 1).reasons()))
        .isEqualTo(
            "By the day a piece costs 1,050.00, by the week rate of Equipment 840.00. Pick week, or"
                + " pick day to keep it.");
    assertThat(item(ranges, 1).amount()).isEqualByComparingTo("1050");
    assertThat(item(ranges.set("items", 1, "basis", "day"), 1).reasons()).isEmpty();
    assertThat(item(ranges.set("items", 1, "basis", "week"), 1).amount())
        .isEqualByComparingTo("840");
    ranges.set("items", 1, "basis", "").set("order", 1, "back", day("2027-02-04"));
    assertThat(item(ranges, 1).reasons()).isEmpty();
  }
}
