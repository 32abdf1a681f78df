package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.quote.QuoteResults.DocumentLine;

/** A quote of 1 to 16 February, calculated by hand to the cent. */
class QuoteExampleTest {
  private final PlanResult result = QuoteSamples.example().calculate();

  private List<String> lines(LineKind... kinds) {
    return result.rows(QuoteResults.DOCUMENT).stream()
        .filter(l -> List.of(kinds).contains(l.kind()))
        .map(DocumentLine::amount)
        .map(BigDecimal::toPlainString)
        .toList();
  }

  @Test
  void the_page_has_every_line_to_the_cent() {
    // 3 × (190 + 140 + 2 × 63.35) × 0.9; 45.05 × 8 × 0.6667; 10 × 8.15 × 8
    assertThat(lines(LineKind.ITEM)).containsExactly("1233.09", "240.28", "652.00");
    assertThat(lines(LineKind.SUBTOTAL)).containsExactly("1473.37", "652.00");
    assertThat(lines(LineKind.HIRE)).containsExactly("2125.37");
    assertThat(lines(LineKind.DISCOUNT)).containsExactly("-159.40");
    assertThat(lines(LineKind.WAIVER)).containsExactly("157.28");
    assertThat(lines(LineKind.SOLD, LineKind.SERVICE)).containsExactly("86.45", "120.00");
    assertThat(lines(LineKind.NET)).containsExactly("2329.70");
    assertThat(lines(LineKind.BASE)).containsExactly("157.28", "222.26", "1950.16");
    assertThat(lines(LineKind.TAX)).containsExactly("0.00", "22.23", "390.03");
    assertThat(lines(LineKind.TOTAL)).containsExactly("2741.96");
    assertThat(lines(LineKind.DOWN_PAYMENT)).containsExactly("822.59");
    assertThat(lines(LineKind.BALANCE)).containsExactly("1919.37");
  }

  @Test
  void the_discount_is_split_by_largest_remainder() {
    assertThat(result.rows(QuoteResults.TAXES).stream().map(t -> t.discount().toPlainString()))
        .containsExactly("0", "-18.02", "-141.38");
  }

  @Test
  void lines_stand_in_the_order_of_the_page() {
    assertThat(result.rows(QuoteResults.DOCUMENT).stream().map(DocumentLine::kind))
        .containsExactly(
            LineKind.SECTION,
            LineKind.ITEM,
            LineKind.ITEM,
            LineKind.SUBTOTAL,
            LineKind.SECTION,
            LineKind.ITEM,
            LineKind.SUBTOTAL,
            LineKind.HIRE,
            LineKind.DISCOUNT,
            LineKind.WAIVER,
            LineKind.SECTION,
            LineKind.SOLD,
            LineKind.SECTION,
            LineKind.SERVICE,
            LineKind.NET,
            LineKind.BASE,
            LineKind.TAX,
            LineKind.BASE,
            LineKind.TAX,
            LineKind.BASE,
            LineKind.TAX,
            LineKind.TOTAL,
            LineKind.DOWN_PAYMENT,
            LineKind.BALANCE);
  }
}
