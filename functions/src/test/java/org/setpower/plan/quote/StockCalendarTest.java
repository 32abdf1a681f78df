package org.setpower.plan.quote;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Ranges;

/** The peak of an item against a count of every single day. */
class StockCalendarTest {
  private static final int FIRST = 46_420;

  /** Pieces out from a day to a day, both counted. */
  private record Out(int row, int from, int to, int qty) {}

  @Test
  void the_peak_is_that_of_counting_every_day() {
    Random random = new Random(17);
    int missing = 0;
    for (int i = 0; i < 400; i++) {
      int turnaround = random.nextInt(4);
      int owned = random.nextInt(12);
      Ranges ranges =
          QuoteSamples.stock(QuoteSamples.empty(), "lamp", owned)
              .set("house", 1, "turnaround", turnaround);
      List<Out> all = new ArrayList<>();
      for (int row = 1; row <= 6; row++) {
        Out out = random(random, row);
        ranges.row("items", "item", "lamp", "qty", out.qty, "rate", 1);
        ranges.set("items", row, "out", out.from, "back", out.to);
        all.add(out);
      }
      for (int row = 1; row <= 3; row++) {
        Out out = random(random, 0);
        ranges.row("booked", "item", "LAMP", "qty", out.qty, "from", out.from, "to", out.to);
        all.add(out);
      }
      List<QuoteResults.ItemResult> items = ranges.calculate().rows(QuoteResults.ITEMS);
      for (Out out : all.subList(0, 6)) {
        int peak = peak(all, out, turnaround);
        QuoteResults.ItemResult item = items.get(out.row - 1);
        assertThat(item.peak()).as(ranges.toString()).isEqualTo(peak);
        assertThat(item.missing()).isEqualTo(Math.max(0, peak - owned));
        missing += peak > owned ? 1 : 0;
      }
    }
    assertThat(missing).isBetween(200, 2300);
  }

  private static Out random(Random random, int row) {
    int from = FIRST + random.nextInt(20);
    return new Out(row, from, from + random.nextInt(8), random.nextInt(4));
  }

  private static int peak(List<Out> all, Out of, int turnaround) {
    int peak = 0;
    for (int day = of.from; day <= of.to + turnaround; day++) {
      int out = 0;
      for (Out other : all) {
        out += day >= other.from && day <= other.to + turnaround ? other.qty : 0;
      }
      peak = Math.max(peak, out);
    }
    return peak;
  }
}
