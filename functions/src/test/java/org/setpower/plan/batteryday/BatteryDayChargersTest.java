package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.camera;
import static org.setpower.plan.batteryday.BatteryDaySamples.charger;
import static org.setpower.plan.batteryday.BatteryDaySamples.position;
import static org.setpower.plan.batteryday.BatteryDaySamples.withP98;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.setpower.plan.batteryday.word.ScheduleEntry;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/**
 * A charger helps only the batteries that it takes, when it has power, as fast as it is. A day with
 * three types: what no charger takes needs as many as without any charger (common sense).
 */
class BatteryDayChargersTest {
  private static final int P294 = 0;
  private static final int P98 = 1;
  private static final int P150 = 2;

  /** Camera on P294, monitor and link on P98, two lamps on P150, seven to seven. */
  private static Ranges day() {
    Ranges ranges = withP98(camera(), 20).set("stock", 1, "owned", 20);
    ranges.set("days", 1, "wrap", at(19, 0)).set("devices", 1, "watts", 130);
    ranges.row(
        "types",
        "type",
        "P150",
        "chemistry",
        "Li-ion",
        "cells",
        8,
        "ampHours",
        5.2,
        "wattHours",
        150,
        "outputs",
        "12/24",
        "maxAmps",
        20,
        "resistance",
        75,
        "health",
        1);
    ranges.row("stock", "type", "P150", "owned", 20);
    position(ranges, "monitor", 12, "P98", 38, 11, 18);
    position(ranges, "link", 12, "P98", 14, 11, 18);
    position(ranges, "lamp", 24, "P150", 50, 11, 36);
    return ranges.set("positions", 4, "quantity", 2);
  }

  private static Ranges charger1(Ranges ranges) {
    return charger(ranges, "1", "P294", 4, 4);
  }

  private static Ranges charger2(Ranges ranges) {
    return charger(ranges, "2", "P150", 4, 3);
  }

  private static Ranges charger3(Ranges ranges) {
    return charger(ranges, "3", "P98", 2, 3);
  }

  private static List<Integer> fewest(Ranges ranges) {
    List<Integer> fewest = new ArrayList<>();
    ranges.calculate().rows(BatteryDayResults.STOCK).forEach(s -> fewest.add(s.fewest()));
    return fewest;
  }

  @Test
  void no_charger() {
    // by energy: 12 h of 130 W on 294 Wh; 12 h of 38 and 14 W on 98 Wh; 12 h of 2 · 50 W on 150 Wh
    List<Integer> none = fewest(day());
    assertThat(none.get(P294)).isBetween(6, 7);
    assertThat(none.get(P98)).isBetween(7, 9);
    assertThat(none.get(P150)).isBetween(8, 10);
    assertThat(day().calculate().rows(BatteryDayResults.STOCK))
        .allSatisfy(s -> assertThat(s.fewest()).isEqualTo(s.uncharged()));
  }

  @Test
  void a_charger_of_one_type_leaves_the_others_as_without() {
    List<Integer> none = fewest(day());
    List<Integer> one = fewest(charger1(day()));
    assertThat(one.get(P294)).isLessThan(none.get(P294));
    assertThat(one.get(P98)).isEqualTo(none.get(P98));
    assertThat(one.get(P150)).isEqualTo(none.get(P150));
    List<Integer> three = fewest(charger3(day()));
    assertThat(three.get(P98)).isLessThan(none.get(P98));
    assertThat(three.get(P294)).isEqualTo(none.get(P294));
    assertThat(three.get(P150)).isEqualTo(none.get(P150));
  }

  @Test
  void power_by_night_only_does_not_help_the_day() {
    Ranges night = charger1(charger3(day()));
    night.set("chargers", 2, "powerFrom", at(19, 0), "powerTo", at(7, 0));
    assertThat(fewest(night)).isEqualTo(fewest(charger3(day())));
  }

  @Test
  void a_slow_charger_of_one_type_does_not_slow_the_others() {
    Ranges all = charger1(charger2(charger3(day())));
    List<Integer> fast = fewest(all);
    List<Integer> slow = fewest(all.set("chargers", 3, "amps", 0.5));
    List<Integer> none = fewest(day());
    assertThat(slow.get(P150)).isEqualTo(fast.get(P150)).isLessThan(none.get(P150));
    assertThat(slow.get(P98)).isEqualTo(fast.get(P98)).isLessThan(none.get(P98));
    assertThat(slow.get(P294)).isGreaterThan(fast.get(P294));
  }

  /**
   * Twenty positions, sixty batteries, ten chargers: the search comes to its end, and chargers that
   * take a type save batteries of it.
   */
  @Test
  void the_fewest_of_a_large_day_are_proven() {
    PlanResult result = BatteryDayBenchmark.full().calculate();
    assertThat(result.rows(BatteryDayResults.PROJECT).get(0).reasons())
        .extracting(Finding::key)
        .doesNotContain(BatteryDayFinding.NOT_PROVEN);
    assertThat(result.rows(BatteryDayResults.STOCK))
        .filteredOn(s -> s != null)
        .hasSize(4)
        .allSatisfy(s -> assertThat(s.fewest()).isEqualTo(s.fewestAlone()))
        .anySatisfy(s -> assertThat(s.fewest()).isLessThan(s.uncharged()));
  }

  /**
   * 2 A into 4 cells of 4.2 V at 80 % are 42 W: an inverter of 60 W feeds one of two channels, one
   * of 84 W both.
   */
  @Test
  void a_supply_that_feeds_only_some_channels_is_told() {
    Ranges van = charger(withP98(camera(), 4), "van", "P98", 2, 2).set("supplies", 1, "watts", 60);
    BatteryDayResults.ChargerResult charger =
        van.calculate().rows(BatteryDayResults.CHARGERS).get(0);
    assertThat(charger.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(charger.reasons())
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.key()).isEqualTo(BatteryDayFinding.CHANNEL_WATTS);
              assertThat(f.arguments().subList(0, 3)).containsExactly("P98", 1.0, 2.0);
              assertThat((Double) f.arguments().get(3)).isCloseTo(42, within(1e-9));
              assertThat(f.arguments().get(4)).isEqualTo(60.0);
            });
    van.set("chargers", 1, "atOnce", 1);
    assertThat(van.calculate().rows(BatteryDayResults.CHARGERS).get(0).verdict())
        .isEqualTo(Verdict.OK);
    van.set("chargers", 1, "atOnce", "").set("supplies", 1, "watts", 84);
    assertThat(van.calculate().rows(BatteryDayResults.CHARGERS).get(0).verdict())
        .isEqualTo(Verdict.OK);
  }

  private static int first(Ranges ranges) {
    return ranges.calculate().rows(BatteryDayResults.STOCK).get(0).fewest();
  }

  /**
   * A battery gives less in the cold, so a cold day takes as many or more; energy over the energy
   * of one is the least. Days with a break, in which part-used batteries stay on.
   */
  @Test
  void a_colder_day_never_asks_for_fewer() {
    Random random = new Random(6);
    int more = 0;
    for (int i = 0; i < 60; i++) {
      Ranges warm = camera().set("devices", 1, "watts", 40 + random.nextInt(160));
      warm.set("positions", 1, "quantity", 1 + random.nextInt(3));
      warm.set("days", 1, "wrap", at(14 + random.nextInt(6), 0));
      warm.set("days", 1, "breakFrom", at(12, 0), "breakTo", at(13, 0));
      if (random.nextBoolean()) {
        charger(warm, "one", "P294", 1 + random.nextInt(4), 4).set("chargers", 1, "warmUp", 1.5);
      }
      Ranges cold = warm.copy().set("days", 1, "min", -5, "max", -5);
      assertThat(first(cold)).as("day " + i).isGreaterThanOrEqualTo(first(warm));
      more += first(cold) > first(warm) ? 1 : 0;
    }
    assertThat(more).isGreaterThan(5);
  }

  /** 10 h of 92 W are 920 Wh, four of 294 Wh: one after the other, never two changes at once. */
  @Test
  void a_hot_swap_plate_needs_no_more_than_its_energy() {
    Ranges plate =
        camera()
            .set("positions", 1, "connection", "hot-swap", "atOnce", 2)
            .set("stock", 1, "owned", 4);
    assertThat(first(plate)).isEqualTo(4);
    PlanResult result = plate.calculate();
    assertThat(result.rows(BatteryDayResults.POSITIONS).get(0).dark()).isZero();
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .filteredOn(r -> r.what() == ScheduleEntry.CHANGE)
        .allSatisfy(r -> assertThat(r.on()).doesNotContain(","));
  }
}
