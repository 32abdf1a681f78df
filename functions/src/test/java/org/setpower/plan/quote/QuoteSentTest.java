package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.quote.QuoteResults.OrderResult;

/**
 * What was exported under a number and revision does not change unnoticed (common practice: a
 * client who holds a quote can rely on it). Total of the worked example: 2,741.96.
 */
class QuoteSentTest {
  /** The example after an export. */
  private static Ranges exported() {
    Ranges ranges = QuoteSamples.example();
    SentQuote sent = QuotePlan.sent(ranges.list()).orElseThrow();
    return ranges
        .set("order", 1, "sentRevision", sent.revision())
        .set("order", 1, "sentTotal", sent.total().doubleValue(), "sentKey", (double) sent.key());
  }

  private static List<FindingKey> sent(Ranges ranges) {
    return reasons(ranges).stream()
        .map(Finding::key)
        .filter(k -> k == QuoteFinding.SENT_TOTAL || k == QuoteFinding.SENT_OTHER)
        .toList();
  }

  private static List<Finding> reasons(Ranges ranges) {
    return ranges.calculate().rows(QuoteResults.ORDER).stream()
        .map(OrderResult::reasons)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_same_content_is_no_finding() {
    assertThat(sent(exported())).isEmpty();
    assertThat(QuotePlan.sent(QuoteSamples.example().list()).orElseThrow().total())
        .isEqualByComparingTo("2741.96");
  }

  @Test
  void another_quantity_is_a_check_with_both_totals() {
    // 9 batteries for 10: 65.20 less; 7.5 % off it 4.89, waiver 8 % of 1,905.66 is 152.45
    // 20 % bases 1,950.16 - 60.31 = 1,889.85: tax 377.97; net 2,329.70 - 60.31 - 4.83 = 2,264.56
    // total 2,264.56 + 377.97 + 22.23 = 2,664.76 (worked by hand)
    Ranges ranges = exported().set("items", 2, "qty", 9);
    assertThat(sent(ranges)).containsExactly(QuoteFinding.SENT_TOTAL);
    Finding changed =
        reasons(ranges).stream()
            .filter(f -> f.key() == QuoteFinding.SENT_TOTAL)
            .findFirst()
            .orElseThrow();
    assertThat(new EnglishMessages().sentence(changed, Locale.UK))
        .contains("exported with a total of 2,741.96")
        .contains("has 2,664.76 now");
  }

  @Test
  void other_words_with_the_same_total_are_a_check_too() {
    assertThat(sent(exported().set("items", 4, "item", "tape")))
        .containsExactly(QuoteFinding.SENT_OTHER);
  }

  @Test
  void the_next_revision_may_say_something_else() {
    Ranges ranges = exported().set("items", 2, "qty", 9).set("order", 1, "revision", "2");
    assertThat(sent(ranges)).isEmpty();
    ranges.set("order", 1, "revision", "");
    assertThat(sent(ranges)).containsExactly(QuoteFinding.SENT_TOTAL);
  }

  @Test
  void the_page_of_the_client_does_not_say_so() {
    assertThat(exported().set("items", 2, "qty", 9).calculate().rows(QuoteResults.DOCUMENT))
        .noneMatch(l -> String.valueOf(l.label()).contains("exported"));
    assertThat(
            exported()
                .set("items", 2, "qty", 9)
                .calculate()
                .rows(QuoteResults.SUMMARY)
                .get(0)
                .mayIssue())
        .isTrue();
  }
}
