package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.setpower.plan.budget.BudgetPlan;
import org.setpower.plan.budget.BudgetResults;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.transfer.QuoteToBudget;
import org.setpower.plan.transfer.TransferRow;

/** A quote brought into a budget costs there what it costs here. */
class QuoteToBudgetTest {
  private static List<TransferRow> lines(PlanResult quote) {
    return QuoteToBudget.lines(
        quote.rows(QuoteResults.DOCUMENT),
        quote.rows(QuoteResults.TAXES),
        quote.rows(QuoteResults.LETTER).get(0),
        w -> w);
  }

  private static Ranges budget(List<TransferRow> rows, Object currency) {
    Ranges budget = Ranges.of(BudgetPlan.MODEL).row("project", "currency", currency, "tax", 0.2);
    for (TransferRow row : rows) {
      budget.row("lines");
      budget.rows("lines").get(budget.rows("lines").size() - 1).putAll(row.cells());
    }
    return budget;
  }

  private static BigDecimal planned(Ranges budget, String quote) {
    List<BudgetResults.LineState> lines =
        budget.calculate().rows(BudgetResults.LINES).stream().filter(Objects::nonNull).toList();
    assertThat(lines).as(quote).noneMatch(l -> l.verdict() == Verdict.STOP);
    return lines.stream()
        .map(BudgetResults.LineState::planned)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  @Test
  void the_example_keeps_its_net() {
    List<TransferRow> rows = lines(QuoteSamples.example().calculate());
    assertThat(planned(budget(rows, "EUR"), "example")).isEqualByComparingTo("2329.70");
    assertThat(rows.stream().map(TransferRow::key))
        .containsExactly(
            "PANEL",
            "STAND",
            "BATTERY",
            "GEL",
            "DELIVERY",
            "damage waiver, not insurance 0|DAMAGEWAIVER,NOTINSURANCE",
            "discount 0.1",
            "discount 0.2");
    assertThat(rows.get(0).cells())
        .containsEntry("description", "panel")
        .containsEntry("supplier", "rental desk")
        .containsEntry("qty", 3.0)
        .containsEntry("price", 456.7)
        .containsEntry("discount", 0.1)
        .containsEntry("tax", 0.2)
        .doesNotContainKey("times");
    assertThat(rows.get(2).cells())
        .containsEntry("unit", "day")
        .containsEntry("times", 8.0)
        .containsEntry("price", 8.15)
        .doesNotContainKey("account");
  }

  /** The order discount is a line of its own: it lowers the final cost, ordered or not. */
  @Test
  void the_final_cost_of_the_example_is_its_net_too() {
    Ranges budget = budget(lines(QuoteSamples.example().calculate()), "EUR");
    for (boolean isOrdered : new boolean[] {false, true}) {
      BigDecimal cost = BigDecimal.ZERO;
      int row = 0;
      for (BudgetResults.LineState line : budget.calculate().rows(BudgetResults.LINES)) {
        row++;
        cost = cost.add(line.finalCost());
        budget.set("lines", row, "ordered", line.planned().doubleValue(), "po", "P1");
      }
      assertThat(cost).as("ordered: %s", isOrdered).isEqualByComparingTo("2329.70");
    }
  }

  /** A row that is inserted above must not turn the lines below into other ones. */
  @Test
  void keys_do_not_depend_on_the_place_of_a_row() {
    Ranges quote = QuoteSamples.example();
    List<String> before = lines(quote.calculate()).stream().map(TransferRow::key).sorted().toList();
    quote.rows("items").add(0, quote.rows("items").remove(4));
    assertThat(lines(quote.calculate()).stream().map(TransferRow::key).sorted().toList())
        .isEqualTo(before);
  }

  @Test
  void the_net_of_random_quotes_is_kept_to_the_smallest_coin() {
    Random random = new Random(2026);
    int reduced = 0;
    for (int i = 0; i < 600; i++) {
      Ranges quote = QuotePageTest.issuable(random);
      PlanResult result = quote.calculate();
      List<TransferRow> rows = lines(result);
      Ranges budget = budget(rows, quote.rows("order").get(0).get("currency"));
      assertThat(planned(budget, quote.toString()))
          .as(quote.toString())
          .isEqualByComparingTo(result.rows(QuoteResults.SUMMARY).get(0).net());
      reduced += rows.stream().anyMatch(r -> r.key().startsWith("discount")) ? 1 : 0;
    }
    assertThat(reduced).isGreaterThan(100);
  }

  @Test
  void a_quote_that_may_not_be_issued_gives_no_line() {
    assertThat(lines(QuoteSamples.example().set("items", 1, "qty", 2.5).calculate())).isEmpty();
  }

  @Test
  void a_row_on_request_comes_without_a_price() {
    Ranges quote = QuoteSamples.example().row("items", "item", "crane", "qty", 1);
    quote.set("items", 6, "basis", "on request");
    assertThat(lines(quote.calculate()))
        .anyMatch(
            r -> "crane".equals(r.cells().get("description")) && !r.cells().containsKey("price"));
  }
}
