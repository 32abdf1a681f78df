package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;

/** How many batteries to hire for a job of the size that is usual. */
class BatteryDayFewestTest {
  /**
   * A winter day on a quay: two cameras on blocks, four monitors, a wireless link with two
   * receivers, a follow focus; a generator from 07:00 to 19:30 feeds four chargers.
   */
  static Ranges quay(int blocks, int plates, int small) {
    Ranges ranges =
        Ranges.of(BatteryDayPlan.MODEL)
            .row("project", "chargersAir", 18, "warmUp", 1, "health", 0.85)
            .row(
                "days",
                "date",
                day("2026-12-02"),
                "call",
                at(6, 0),
                "wrap",
                at(19, 0),
                "min",
                -8,
                "max",
                -1,
                "breakFrom",
                at(12, 30),
                "breakTo",
                at(13, 15))
            .row("types", "type", "Block", "ampHours", 5.2, "wattHours", 150, "maxAmps", 12)
            .row("types", "type", "V98", "ampHours", 6.8, "wattHours", 98, "maxAmps", 12)
            .row("types", "type", "Small", "ampHours", 6.6, "wattHours", 47, "maxAmps", 6)
            .row("stock", "type", "Block", "owned", blocks)
            .row("stock", "type", "V98", "owned", plates)
            .row("stock", "type", "Small", "owned", small)
            .row("supplies", "supply", "generator", "watts", 600);
    position(ranges, "A camera", "Block", 112, "20-34", 1, 1);
    position(ranges, "B camera", "Block", 112, "20-34", 1, 1);
    position(ranges, "Director monitor", "V98", 45, "11-17", 2, 1);
    position(ranges, "Client monitor", "V98", 55, "11-17", 4, 1);
    position(ranges, "Operator monitor", "Small", 18, "6-9", 3, 2);
    position(ranges, "Sender", "V98", 14, "11-17", 2, 2);
    position(ranges, "Receiver", "V98", 11, "11-17", 2, 2);
    position(ranges, "Follow focus", "Small", 9, "6-9", 1, 1);
    charger(ranges, "Block quad", "Block", 4, 3);
    charger(ranges, "Block quad 2", "Block", 4, 3);
    charger(ranges, "V twin", "V98", 2, 2);
    charger(ranges, "Small quad", "Small", 4, 1.5);
    if (blocks + plates + small > 12) {
      ranges.row("atCall", "number", "B2", "charge", 0.6);
      ranges.row("atCall", "number", "B3", "charge", 0.4);
      ranges.row("atCall", "number", "B20", "charge", 0.7);
      ranges.row("atCall", "number", "B21", "charge", 0.5);
      ranges.row("atCall", "number", "B34", "charge", 0.5);
      ranges.row("atCall", "number", "B5", "absence", "lent");
    }
    return ranges;
  }

  private static void position(
      Ranges ranges,
      String name,
      String type,
      double watts,
      String input,
      int priority,
      int quantity) {
    ranges.row(
        "positions",
        "position",
        name,
        "type",
        type,
        "power",
        watts,
        "input",
        input,
        "priority",
        priority,
        "quantity",
        quantity);
  }

  private static void charger(Ranges ranges, String name, String takes, int channels, double amps) {
    ranges.row(
        "chargers",
        "charger",
        name,
        "channels",
        channels,
        "amps",
        amps,
        "types",
        takes,
        "powerFrom",
        at(7, 0),
        "powerTo",
        at(19, 30));
  }

  private static List<Integer> fewest(Ranges ranges) {
    List<Integer> fewest = new ArrayList<>();
    ranges.calculate().rows(BatteryDayResults.STOCK).forEach(s -> fewest.add(s.fewest()));
    assertThat(fewest.subList(0, 3)).as("%s", ranges).doesNotContainNull();
    return fewest.subList(0, 3);
  }

  private static int sum(List<Integer> numbers) {
    return numbers.stream().mapToInt(n -> n).sum();
  }

  /**
   * The number to hire is why the sheet is opened. 12.25 h of two cameras at 42 min a battery are
   * 35 changes: so many blocks are the least without a charger, and 2 are on at a time.
   */
  @Test
  void a_job_of_usual_size_has_a_number_to_hire() {
    PlanResult result = quay(17, 15, 10).calculate();
    assertThat(result.rows(BatteryDayResults.PROJECT).get(0).reasons())
        .extracting(Finding::key)
        .doesNotContain(BatteryDayFinding.NOT_PROVEN);
    List<BatteryDayResults.StockResult> stock = result.rows(BatteryDayResults.STOCK).subList(0, 3);
    assertThat(stock)
        .allSatisfy(
            r -> {
              assertThat(r.fewest()).isNotNull().isGreaterThanOrEqualTo(r.fewestAlone());
              assertThat(r.fewest()).isLessThanOrEqualTo(r.uncharged());
            });
    assertThat(stock.get(0).uncharged()).isGreaterThanOrEqualTo(35);
    assertThat(stock.get(0).fewestAlone()).isGreaterThan(2);
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).shortOf()).isPositive();
  }

  /** Who hires that many has a day in which nothing goes dark. */
  @Test
  void the_number_to_hire_lasts() {
    List<Integer> fewest = fewest(quay(1, 1, 1));
    PlanResult hired = full(quay(fewest.get(0), fewest.get(1), fewest.get(2))).calculate();
    assertThat(hired.rows(BatteryDayResults.SUMMARY).get(0).dark()).isZero();
    assertThat(hired.rows(BatteryDayResults.SUMMARY).get(0).shortOf()).isZero();
  }

  private static Ranges full(Ranges ranges) {
    ranges.rows("atCall").clear();
    return ranges;
  }

  /** A charger or watts more never ask for more, less never for fewer, in jobs of usual size. */
  @Test
  void chargers_and_watts_never_ask_for_more() {
    Random random = new Random(4);
    int saved = 0;
    for (int i = 0; i < 4; i++) {
      Ranges job = quay(1, 1, 1);
      job.set("positions", 1, "power", 70 + random.nextInt(60));
      job.set("positions", 3, "power", 30 + random.nextInt(25), "quantity", 1 + i % 3);
      job.set("days", 1, "min", -6 + random.nextInt(16), "max", 12);
      job.set("chargers", 3, "powerFrom", at(6 + random.nextInt(5), 0));
      int before = Integer.MAX_VALUE;
      for (int watts = 200; watts <= 1100; watts += 150 + random.nextInt(100)) {
        job.set("supplies", 1, "watts", watts);
        int after = sum(fewest(job));
        assertThat(after).as("job %s, %s W", i, watts).isLessThanOrEqualTo(before);
        before = after;
      }
      for (int charger = 0; charger < 4; charger++) {
        Ranges without = job.copy();
        without.rows("chargers").remove(charger);
        int after = sum(fewest(without));
        assertThat(after).as("job %s without %s", i, charger).isGreaterThanOrEqualTo(before);
        saved += after - before;
      }
    }
    assertThat(saved).isGreaterThan(10);
  }
}
