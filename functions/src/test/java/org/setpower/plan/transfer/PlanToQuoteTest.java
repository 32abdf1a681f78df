package org.setpower.plan.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.transfer.PlanToQuote.PlanItem;

/** A plan's order list as rows of a quote: the whole list, or what is short. */
class PlanToQuoteTest {
  private static final LocalDate OUT = LocalDate.of(2027, 2, 2);
  private static final List<PlanItem> ITEMS =
      List.of(
          new PlanItem("LED panel, large", "lighting", 3, 2, null, null),
          new PlanItem("P294", "batteries", 9.2, 0, OUT, OUT.plusDays(3)),
          new PlanItem(" ", "lighting", 2, 2, null, null),
          new PlanItem("led  panel, LARGE", "lighting", 1, 1, OUT, OUT));

  private static List<TransferRow> rows(boolean onlyShort, boolean days) {
    return PlanToQuote.batch(ITEMS, new TransferOptions(onlyShort, days, w -> w), List.of()).rows();
  }

  @Test
  void the_whole_list_or_what_is_short() {
    List<TransferRow> whole = rows(false, true);
    assertThat(whole).hasSize(2);
    assertThat(whole.get(0).cells())
        .containsEntry("item", "LED panel, large")
        .containsEntry("section", "lighting")
        .containsEntry("qty", 4.0)
        .doesNotContainKeys("out", "rate");
    assertThat(whole.get(1).cells())
        .containsEntry("qty", 10.0)
        .containsEntry("out", OUT)
        .containsEntry("back", OUT.plusDays(3));
    assertThat(rows(true, false)).extracting(r -> r.cells().get("qty")).containsExactly(3.0);
  }

  /** The days of use are no dates of a hire: prep and travel come on top. */
  @Test
  void days_of_use_only_where_they_are_wanted() {
    assertThat(rows(false, false)).noneMatch(r -> r.cells().containsKey("out"));
  }
}
