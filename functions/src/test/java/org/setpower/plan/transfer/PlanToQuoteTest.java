package org.setpower.plan.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.transfer.PlanToQuote.Brought;
import org.setpower.plan.transfer.PlanToQuote.Extent;
import org.setpower.plan.transfer.PlanToQuote.PlanItem;

/** A plan's order list as rows of a quote: the whole list, or what is short. */
class PlanToQuoteTest {
  private static final LocalDate OUT = LocalDate.of(2027, 2, 2);
  private static final List<PlanItem> ITEMS =
      List.of(
          new PlanItem("LED panel, large", "lighting", 4, 1, null, null),
          new PlanItem("P294", "batteries", 9.2, 12, OUT, OUT.plusDays(3)),
          new PlanItem(" ", "lighting", 2, 0, null, null));

  @Test
  void the_whole_list_or_what_is_short() {
    Brought whole = PlanToQuote.rows(ITEMS, Extent.WHOLE_LIST);
    assertThat(whole.rows()).hasSize(2);
    assertThat(whole.rows().get(0).cells())
        .containsEntry("item", "LED panel, large")
        .containsEntry("section", "lighting")
        .containsEntry("qty", 4.0)
        .doesNotContainKeys("out", "rate");
    assertThat(whole.rows().get(1).cells())
        .containsEntry("qty", 10.0)
        .containsEntry("out", "2027-02-02")
        .containsEntry("back", "2027-02-05");
    Brought missing = PlanToQuote.rows(ITEMS, Extent.SHORT);
    assertThat(missing.rows()).hasSize(1);
    assertThat(missing.rows().get(0).cells()).containsEntry("qty", 3.0);
  }

  @Test
  void what_has_no_item_is_listed_and_not_guessed() {
    assertThat(PlanToQuote.rows(ITEMS, Extent.SHORT).unmatched()).containsExactly(ITEMS.get(2));
  }
}
