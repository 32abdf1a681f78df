package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.quote.QuoteResults.DocumentLine;

/** The lines of random quotes add up on the page, and pages agree with the verdicts of rows. */
class QuotePageTest {
  private static final double[] TAXES = {0, 0.055, 0.1, 0.2, 0.19, 0.25};
  private static final String[] CURRENCIES = {"EUR", "USD", "GBP", "JPY", "KWD"};

  /** A quote that may be issued: up to six rates, waiver, discounts, caps, weeks, services. */
  static Ranges issuable(Random random) {
    Ranges ranges =
        QuoteSamples.empty()
            .set("order", 1, "currency", CURRENCIES[random.nextInt(CURRENCIES.length)])
            .set("order", 1, "discount", random.nextInt(3) == 0 ? "" : random.nextInt(2000) / 1e4)
            .set("order", 1, "waiver", random.nextInt(3) == 0 ? "" : random.nextInt(1500) / 1e4)
            .set("order", 1, "downPayment", random.nextInt(3) == 0 ? "" : 0.3333)
            .set("order", 1, "security", random.nextBoolean() ? "" : 500.255)
            .set("house", 1, "daysPerWeek", 1 + random.nextInt(7))
            .set("house", 1, "waiverTax", random.nextBoolean() ? "" : TAXES[random.nextInt(6)])
            .set("house", 1, "minAmount", random.nextInt(4) == 0 ? 3000.105 : "")
            .set("house", 1, "taxPer", random.nextInt(3) == 0 ? "per line" : "")
            .set("house", 1, "waiverOn", random.nextBoolean() ? "" : "hire before discount")
            .set("house", 1, "discountOn", random.nextBoolean() ? "" : "rows without a discount")
            .set("house", 1, "subHireDiscounted", random.nextBoolean() ? "" : "no");
    int rows = 1 + random.nextInt(12);
    for (int i = 0; i < rows; i++) {
      int type = random.nextInt(6);
      ranges.row("items", "item", "T" + i, "qty", random.nextInt(20));
      ranges.set("items", i + 1, "section", "S" + random.nextInt(3));
      ranges.set("items", i + 1, "rate", random.nextInt(40_000) / 1000.0);
      ranges.set("items", i + 1, "tax", TAXES[random.nextInt(TAXES.length)]);
      ranges.set("items", i + 1, "discount", random.nextBoolean() ? "" : 0.3333);
      ranges.set("items", i + 1, "type", type < 4 ? "" : type == 4 ? "sold" : "service");
      if (type == 1) {
        ranges.set("items", i + 1, "weekRate", 99.995, "agreedDays", random.nextInt(25));
      } else if (type == 2) {
        ranges.set("items", i + 1, "subFrom", "x", "subRate", 3, "subDays", 2);
      } else if (type == 3) {
        ranges.set("items", i + 1, "basis", "on request");
      }
    }
    return ranges;
  }

  private static BigDecimal sum(List<DocumentLine> lines, LineKind... kinds) {
    return lines.stream()
        .filter(l -> List.of(kinds).contains(l.kind()))
        .map(DocumentLine::amount)
        .filter(Objects::nonNull)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  @Test
  void lines_add_up_on_the_page_to_the_smallest_coin() {
    Random random = new Random(20);
    int rates = 0;
    int waived = 0;
    for (int i = 0; i < 1500; i++) {
      Ranges ranges = issuable(random);
      PlanResult result = ranges.calculate();
      List<DocumentLine> lines = result.rows(QuoteResults.DOCUMENT);
      assertThat(result.rows(QuoteResults.SUMMARY).get(0).mayIssue())
          .as(ranges.toString())
          .isTrue();
      assertSums(lines, ranges.toString());
      assertScale(lines, ranges);
      assertTaxes(result, lines, ranges);
      rates = Math.max(rates, result.rows(QuoteResults.TAXES).size());
      waived += sum(lines, LineKind.WAIVER).signum();
    }
    assertThat(rates).isGreaterThanOrEqualTo(6);
    assertThat(waived).isGreaterThan(500);
  }

  private static void assertSums(List<DocumentLine> lines, String quote) {
    Map<String, BigDecimal> sections = new HashMap<>();
    String section = null;
    for (DocumentLine line : lines) {
      if (line.kind() == LineKind.SECTION) {
        section = line.text();
      } else if (line.kind() == LineKind.ITEM && line.amount() != null) {
        sections.merge(section, line.amount(), BigDecimal::add);
      } else if (line.kind() == LineKind.SUBTOTAL) {
        assertThat(line.amount())
            .as(quote)
            .isEqualByComparingTo(sections.getOrDefault(line.text(), BigDecimal.ZERO));
      }
    }
    BigDecimal hire = sum(lines, LineKind.HIRE);
    assertThat(sum(lines, LineKind.SUBTOTAL)).as(quote).isEqualByComparingTo(hire);
    BigDecimal net =
        sum(
            lines,
            LineKind.HIRE,
            LineKind.DISCOUNT,
            LineKind.MINIMUM,
            LineKind.WAIVER,
            LineKind.SOLD,
            LineKind.SERVICE);
    assertThat(sum(lines, LineKind.NET)).as(quote).isEqualByComparingTo(net);
    // a single rate has its net in the line above
    if (lines.stream().anyMatch(l -> l.kind() == LineKind.BASE)) {
      assertThat(sum(lines, LineKind.BASE)).as(quote).isEqualByComparingTo(net);
    } else {
      assertThat(lines.stream().filter(l -> l.kind() == LineKind.TAX))
          .as(quote)
          .hasSizeLessThanOrEqualTo(1);
    }
    assertThat(lines.stream().map(DocumentLine::row).filter(Objects::nonNull))
        .as(quote)
        .doesNotHaveDuplicates();
    BigDecimal total = sum(lines, LineKind.TOTAL);
    assertThat(total).as(quote).isEqualByComparingTo(net.add(sum(lines, LineKind.TAX)));
    if (sum(lines, LineKind.DOWN_PAYMENT).signum() > 0) {
      assertThat(sum(lines, LineKind.DOWN_PAYMENT, LineKind.BALANCE))
          .as(quote)
          .isEqualByComparingTo(total);
    }
  }

  private static void assertScale(List<DocumentLine> lines, Ranges ranges) {
    String code = (String) ranges.rows("order").get(0).get("currency");
    int digits = Currency.getInstance(code).getDefaultFractionDigits();
    for (DocumentLine line : lines) {
      if (line.amount() != null && line.amount().signum() != 0) {
        assertThat(line.amount().scale()).isEqualTo(digits);
      }
    }
  }

  /** By rate: the lines of the page that name the rate, and the parts beside it. */
  private static void assertTaxes(PlanResult result, List<DocumentLine> lines, Ranges ranges) {
    int digits =
        Currency.getInstance((String) ranges.rows("order").get(0).get("currency"))
            .getDefaultFractionDigits();
    boolean perLine = "per line".equals(ranges.rows("house").get(0).get("taxPer"));
    BigDecimal parts = BigDecimal.ZERO;
    for (QuoteResults.TaxLine rate : result.rows(QuoteResults.TAXES)) {
      BigDecimal named =
          lines.stream()
              .filter(l -> l.kind() != LineKind.BASE && l.kind() != LineKind.TAX)
              .filter(l -> l.amount() != null && rate.rate().equals(l.taxRate()))
              .filter(l -> Objects.equals(rate.reason(), l.taxReason()))
              .map(DocumentLine::amount)
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      assertThat(rate.base())
          .as(ranges.toString())
          .isEqualByComparingTo(named.add(rate.discount()));
      parts = parts.add(rate.discount());
      if (!perLine) {
        assertThat(rate.tax())
            .isEqualByComparingTo(
                rate.base().multiply(rate.rate()).setScale(digits, RoundingMode.HALF_UP));
      }
    }
    assertThat(parts).isEqualByComparingTo(sum(lines, LineKind.DISCOUNT));
  }

  @Test
  void pages_and_lists_agree_with_the_gate() {
    int withheld = 0;
    int issued = 0;
    for (int seed = 0; seed < 2000; seed++) {
      Ranges ranges = QuoteSamples.random(seed, 1 + seed % 5);
      PlanResult result = ranges.calculate();
      List<DocumentLine> lines = result.rows(QuoteResults.DOCUMENT);
      QuoteResults.Summary summary = result.rows(QuoteResults.SUMMARY).get(0);
      List<QuoteResults.ItemResult> items =
          result.rows(QuoteResults.ITEMS).stream().filter(Objects::nonNull).toList();
      long stops = items.stream().filter(r -> r.verdict() == Verdict.STOP).count();
      assertThat(summary.withheld()).isEqualTo((int) stops);
      if (summary.mayIssue()) {
        issued++;
        assertThat(stops).isZero();
        assertThat(
                lines.stream()
                    .filter(l -> l.row() != null)
                    .map(DocumentLine::row)
                    .collect(Collectors.toSet()))
            .hasSize(
                (int)
                    ranges.rows("items").stream()
                        .filter(r -> !"dropped".equals(r.get("order")))
                        .count());
        assertThat(summary.total()).isEqualByComparingTo(sum(lines, LineKind.TOTAL));
      } else {
        withheld++;
        assertNothingShown(result, lines);
      }
      assertLists(result, stops);
    }
    assertThat(issued).isGreaterThan(300);
    assertThat(withheld).isGreaterThan(300);
  }

  private static void assertNothingShown(PlanResult result, List<DocumentLine> lines) {
    assertThat(lines).hasSize(1);
    assertThat(lines.get(0).kind()).isEqualTo(LineKind.NOT_ISSUED);
    assertThat(lines.get(0).verdict()).isEqualTo(Verdict.STOP);
    assertThat(lines.get(0).amount()).isNull();
    assertThat(result.rows(QuoteResults.TAXES)).isEmpty();
    assertThat(result.rows(QuoteResults.SUMMARY).get(0).total()).isNull();
    assertThat(result.rows(QuoteResults.LETTER).get(0).houseName()).isNull();
    assertThat(result.rows(QuoteResults.TERMS)).noneMatch(t -> t != null && t.printed() != null);
  }

  private static void assertLists(PlanResult result, long stops) {
    List<QuoteResults.ItemResult> rows = result.rows(QuoteResults.ITEMS);
    boolean isPicked =
        result.rows(QuoteResults.PICKED).stream()
            .noneMatch(p -> p != null && p.verdict() == Verdict.STOP);
    QuoteResults.Summary summary = result.rows(QuoteResults.SUMMARY).get(0);
    List<QuoteResults.ValueRow> values = result.rows(QuoteResults.VALUES);
    if (!summary.mayIssue() || !isPicked) {
      assertThat(values).extracting(v -> v.kind()).containsExactly(PaperKind.NOT_ISSUED);
      assertThat(result.rows(QuoteResults.DELIVERY))
          .extracting(v -> v.kind())
          .containsExactly(PaperKind.NOT_ISSUED);
      assertThat(summary.toInsure()).isNull();
      assertThat(summary.weight()).isNull();
      return;
    }
    assertThat(stops).isZero();
    long filled = rows.stream().filter(Objects::nonNull).count();
    List<QuoteResults.ValueRow> goods =
        values.stream().filter(v -> v.kind() == PaperKind.GOODS).toList();
    assertThat(goods.size()).isLessThanOrEqualTo((int) filled);
    BigDecimal sum =
        goods.stream()
            .map(QuoteResults.ValueRow::value)
            .filter(Objects::nonNull)
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertThat(summary.toInsure()).isEqualByComparingTo(sum);
    if (!goods.isEmpty()) {
      assertThat(values.get(values.size() - 1).value()).isEqualByComparingTo(sum);
    }
  }
}
