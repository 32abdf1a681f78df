package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;

/** Slips that would be invoiced: each is a stop or a check (common practice of a rental desk). */
class QuoteSlipsTest {
  private static List<FindingKey> item(Ranges ranges, int row) {
    return ranges.calculate().rows(QuoteResults.ITEMS).get(row - 1).reasons().stream()
        .map(Finding::key)
        .toList();
  }

  private static List<FindingKey> house(Ranges ranges) {
    return ranges.calculate().rows(QuoteResults.HOUSE).get(0).reasons().stream()
        .map(Finding::key)
        .toList();
  }

  @Test
  void a_rate_far_from_the_price_list_is_a_check() {
    Ranges ranges = QuoteSamples.example().set("stock", 2, "dayRate", 8.15);
    assertThat(item(ranges, 2)).doesNotContain(QuoteFinding.RATE_FAR);
    assertThat(item(ranges.set("items", 2, "rate", 815), 2)).contains(QuoteFinding.RATE_FAR);
    assertThat(item(ranges.set("items", 2, "rate", 0.8), 2)).contains(QuoteFinding.RATE_FAR);
    assertThat(item(ranges.set("items", 2, "rate", 10), 2)).doesNotContain(QuoteFinding.RATE_FAR);
  }

  @Test
  void a_hire_dearer_than_the_piece_is_a_check() {
    // 8 days at 81.50 are 652, the battery is worth 500
    Ranges ranges = QuoteSamples.example();
    assertThat(item(ranges, 2)).doesNotContain(QuoteFinding.DEARER_THAN_VALUE);
    assertThat(item(ranges.set("items", 2, "rate", 81.5), 2))
        .contains(QuoteFinding.DEARER_THAN_VALUE);
  }

  @Test
  void a_return_in_another_year_is_a_stop_without_a_fee() {
    QuoteResults.ReturnResult returned =
        QuoteSamples.slips().calculate().rows(QuoteResults.RETURNS).get(0);
    assertThat(returned.reasons())
        .extracting(Finding::key)
        .containsExactly(QuoteFinding.RETURN_FAR);
    assertThat(returned.fee()).isNull();
  }

  @Test
  void a_waiver_without_its_rules_is_a_check_before_anything_is_damaged() {
    Ranges ranges = QuoteSamples.example().row("terms", "paragraph", "Payment in 14 days.");
    ranges.set("house", 1, "excess", "", "waivedLoss", "");
    assertThat(house(ranges)).contains(QuoteFinding.WAIVER_TERMS);
    ranges.set("house", 1, "excess", 150);
    assertThat(house(ranges)).contains(QuoteFinding.WAIVER_TERMS);
    ranges.set("house", 1, "waivedLoss", "in full");
    assertThat(house(ranges)).doesNotContain(QuoteFinding.WAIVER_TERMS);
  }

  @Test
  void a_row_that_is_not_picked_beside_others_is_a_check() {
    Ranges ranges = QuoteSamples.example();
    assertThat(item(ranges, 2)).doesNotContain(QuoteFinding.NOT_PICKED);
    ranges.row("picked", "line", 1, "item", "panel");
    assertThat(item(ranges, 2)).contains(QuoteFinding.NOT_PICKED);
    assertThat(item(ranges, 1)).doesNotContain(QuoteFinding.NOT_PICKED);
    // a service is not picked
    assertThat(item(ranges, 5)).doesNotContain(QuoteFinding.NOT_PICKED);
  }
}
