package org.setpower.plan.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.budget.BudgetResults.BatteryState;
import org.setpower.plan.budget.BudgetResults.MixState;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/**
 * The ferry day of the scenario: 6 kWh and 600 W from the four types that fit its devices. The mix
 * was found by trying all of them in a script: 10 × 24 + 1 × 8 = 248, 10 × 588 + 150 = 6,030 Wh, 10
 * × 4.3 + 1.1 = 44.1 kg.
 */
class BudgetMixTest {
  private static Ranges ferry() {
    return BudgetSamples.empty()
        .row("mix", "energy", 6000, "power", 600, "usable", 1)
        .row("batteries", "battery", "P98", "wattHours", 98, "maxWatts", 172, "price", 5)
        .set("batteries", 1, "weight", 0.75)
        .row("batteries", "battery", "P150", "wattHours", 150, "maxWatts", 576, "price", 8)
        .set("batteries", 2, "weight", 1.1)
        .row("batteries", "battery", "P294", "wattHours", 294, "maxWatts", 864, "price", 14)
        .set("batteries", 3, "weight", 2.1)
        .row("batteries", "battery", "P588", "wattHours", 588, "maxWatts", 1152, "price", 24)
        .set("batteries", 4, "weight", 4.3);
  }

  private static List<Integer> pieces(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.BATTERIES).stream()
        .map(BatteryState::pieces)
        .toList();
  }

  private static MixState mix(Ranges ranges) {
    return ranges.calculate().rows(BudgetResults.MIX).get(0);
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  @Test
  void the_cheapest_mix_is_that_of_the_script() {
    MixState mix = mix(ferry());
    assertThat(pieces(ferry())).containsExactly(0, 1, 0, 10);
    assertThat(mix.verdict()).isEqualTo(Verdict.OK);
    assertThat(mix.pieces()).isEqualTo(11);
    assertThat(mix.cost().toPlainString()).isEqualTo("248.00");
    assertThat(mix.usableEnergy()).isEqualTo(6030);
    assertThat(mix.weight()).isEqualTo(44.1);
  }

  @Test
  void no_more_are_taken_than_are_there() {
    // script: 2 × 24 + 16 × 14 + 1 × 8 = 280; 1,176 + 4,704 + 150 = 6,030 Wh
    Ranges ranges = ferry().set("batteries", 4, "available", 2);
    assertThat(pieces(ranges)).containsExactly(0, 1, 16, 2);
    assertThat(mix(ranges).cost().toPlainString()).isEqualTo("280.00");
  }

  @Test
  void cold_takes_its_share_and_a_blank_share_is_a_check() {
    // script: 6,000 ÷ 0.7 = 8,571.4 rated Wh; 2 × 98 + 150 + 14 × 588 = 8,578
    Ranges ranges = ferry().set("mix", 1, "usable", 0.7);
    assertThat(pieces(ranges)).containsExactly(2, 1, 0, 14);
    assertThat(mix(ranges).cost().toPlainString()).isEqualTo("354.00");
    assertThat(keys(mix(ferry().set("mix", 1, "usable", "")).reasons()))
        .containsExactly(BudgetFinding.MIX_USABLE);
  }

  @Test
  void what_cannot_be_done_is_a_stop_without_figures() {
    Ranges ranges = ferry().set("mix", 1, "maxWeight", 30);
    assertThat(mix(ranges).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(mix(ranges).reasons())).containsExactly(BudgetFinding.MIX_NONE);
    assertThat(mix(ranges).cost()).isNull();
    assertThat(pieces(ranges)).containsOnlyNulls();
  }

  @Test
  void a_weight_that_is_not_known_is_not_taken_for_none() {
    Ranges ranges = ferry().set("mix", 1, "maxWeight", 60).set("batteries", 4, "weight", "");
    PlanResult result = ranges.calculate();
    assertThat(keys(result.rows(BudgetResults.BATTERIES).get(3).reasons()))
        .containsExactly(BudgetFinding.BATTERY_WEIGHT);
    assertThat(result.rows(BudgetResults.BATTERIES).get(3).pieces()).isNull();
    assertThat(keys(mix(ranges).reasons())).containsExactly(BudgetFinding.MIX_LEFT_OUT);
    // without a limit it is a weight not known, and no total of the others
    assertThat(mix(ferry().set("batteries", 4, "weight", "")).weight()).isNull();
  }

  @Test
  void who_flies_carries_no_more_than_the_limit() {
    // script: 2 P150 a person and 20 P98 and P150 together, the others by road or not at all
    Ranges ranges = ferry().set("mix", 1, "travellers", 4);
    for (int row = 1; row <= 4; row++) {
      ranges.set("batteries", row, "perTraveller", row == 1 ? 20 : row == 2 ? 2 : 0);
    }
    assertThat(pieces(ranges)).containsExactly(60, 1, 0, 0);
    assertThat(mix(ranges).cost().toPlainString()).isEqualTo("308.00");
    ranges.set("batteries", 4, "perTraveller", "");
    assertThat(keys(ranges.calculate().rows(BudgetResults.BATTERIES).get(3).reasons()))
        .containsExactly(BudgetFinding.BATTERY_LIMIT);
  }

  @Test
  void types_too_alike_to_compare_in_time_stop() {
    assertThat(keys(mix(BudgetSamples.alike()).reasons())).containsExactly(BudgetFinding.MIX_ALIKE);
  }

  @Test
  void batteries_without_a_job_stop() {
    Ranges ranges =
        BudgetSamples.empty()
            .row("batteries", "battery", "P98", "wattHours", 98, "maxWatts", 172, "price", 5);
    assertThat(keys(ranges.calculate().rows(BudgetResults.BATTERIES).get(0).reasons()))
        .containsExactly(BudgetFinding.MIX_NO_JOB);
  }
}
