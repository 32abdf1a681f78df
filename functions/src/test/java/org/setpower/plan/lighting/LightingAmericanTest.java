package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.lighting.input.LightingFinding;
import org.setpower.plan.lighting.result.LightingResults;

/** What a gaffer found on a stage of 120/208 V and on a portable generator of 120/240 V. */
class LightingAmericanTest {
  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  /** A generator of 7 kVA on petrol with two heads of 1.8 kW on cords of 150 ft. */
  static Ranges portable() {
    return Ranges.of(LightingModel.MODEL)
        .row("project", "units", "US", "installation", "free")
        .row("days", "date", day("2027-02-05"), "call", clock(12, 0), "wrap", clock(22, 0))
        .set("days", 1, "warmest", 77)
        .row("supplies", "name", "genny", "type", "generator", "system", "split", "volts", 240)
        .set("supplies", 1, "breaker", 30)
        .row("outlets", "distro", "genny", "numbers", "1-2", "connector", "NEMA 5-20")
        .set("outlets", 1, "breaker", "20", "legs", "in turn", "rcd", "5")
        .row("generators", "name", "genny", "kva", 7, "engine", "petrol", "tank", 5)
        .row("equipment", "item", "head", "watts", 1800, "powerFactor", 0.95, "plug", "NEMA 5-20")
        .row("loads", "item", "head", "place", "genny-1")
        .row("loads", "item", "head", "place", "genny-2")
        .row("loads", "item", "head", "place", "genny-2");
  }

  /**
   * NEC 210.20(A): what is on for 3 h or more takes 80 % of a breaker: 16 A of 20 A. 1850 W are
   * 16.2 A.
   */
  @ParameterizedTest
  @CsvSource({"1850, true", "1800, false"})
  void a_continuous_load_leaves_a_fifth_of_its_breaker(double watts, boolean told) {
    Ranges plan = portable().set("equipment", 1, "watts", watts, "powerFactor", 0.95);
    plan.rows("loads").remove(2);
    assertThat(keys(plan.calculate().rows(LightingResults.OUTLET_RESULT).get(0).reasons()))
        .satisfies(k -> assertThat(k.contains(LightingFinding.OUTLET_CONTINUOUS)).isEqualTo(told));
  }

  /** No US crew measures Zs (NEC 250.122 goes by the earth conductor); one that is typed counts. */
  @Test
  void zs_is_not_asked_for_where_120_volts_are_to_neutral() {
    Ranges stage = LightingSamples.stage().set("supplies", 1, "zs", "");
    PlanResult plan = stage.calculate();
    assertThat(keys(plan.rows(LightingResults.SUPPLY_RESULT).get(0).reasons()))
        .doesNotContain(LightingFinding.ZS_OPEN);
    assertThat(plan.rows(LightingResults.RUN_RESULT))
        .isNotEmpty()
        .allSatisfy(r -> assertThat(keys(r.reasons())).doesNotContain(LightingFinding.FAULT_OPEN));
    Ranges high = LightingSamples.stage().set("supplies", 1, "zs", 2);
    assertThat(high.calculate().rows(LightingResults.RUN_RESULT))
        .anySatisfy(r -> assertThat(keys(r.reasons())).contains(LightingFinding.FAULT_SLOW));
    Ranges quay = LightingSamples.quay().set("supplies", 1, "zs", "");
    assertThat(keys(quay.calculate().rows(LightingResults.SUPPLY_RESULT).get(0).reasons()))
        .contains(LightingFinding.ZS_OPEN);
  }

  /** 127/220 V is Brazil, 100/200 V Japan: there Zs is asked for. */
  @ParameterizedTest
  @CsvSource({"208, false", "220, true", "173, true", "400, true"})
  void zs_is_asked_for_at_other_voltages(double volts, boolean asked) {
    Ranges stage = LightingSamples.stage().set("supplies", 1, "zs", "", "volts", volts);
    assertThat(keys(stage.calculate().rows(LightingResults.SUPPLY_RESULT).get(0).reasons()))
        .satisfies(k -> assertThat(k.contains(LightingFinding.ZS_OPEN)).isEqualTo(asked));
  }

  /** Leakage that nobody has typed is no reason not to plug in; typed, it trips for sure. */
  @ParameterizedTest
  @CsvSource({"'', RCD_MAY_TRIP", "2.5, RCD_TRIPS"})
  void assumed_leakage_is_a_check(String leakage, LightingFinding expected) {
    Ranges plan = portable();
    for (int i = 0; i < 5; i++) {
      plan.row("loads", "item", "head", "place", "genny-1");
    }
    plan.set("equipment", 1, "watts", 200);
    if (!leakage.isEmpty()) {
      plan.set("equipment", 1, "leakage", Double.parseDouble(leakage));
    }
    assertThat(keys(plan.calculate().rows(LightingResults.OUTLET_RESULT).get(0).reasons()))
        .contains(expected);
  }

  /** Three cores in one sheath carry less than single cores: NEC table 400.5(A), from memory. */
  @ParameterizedTest
  @CsvSource({"3, true", "3 single, false", "'', false"})
  void several_cores_in_one_sheath_are_no_feeder(String cores, boolean told) {
    Ranges stage = LightingSamples.stage().set("runs", 2, "type", "feeder", "cores", cores);
    assertThat(keys(stage.calculate().rows(LightingResults.RUN_RESULT).get(1).reasons()))
        .satisfies(k -> assertThat(k.contains(LightingFinding.FEEDER_CORES)).isEqualTo(told));
  }

  /** Petrol has no chart: the data sheet is asked for, and with it there are litres. */
  @Test
  void fuel_that_cannot_be_calculated_is_told() {
    PlanResult plan = portable().calculate();
    assertThat(keys(plan.rows(LightingResults.GENERATOR_RESULT).get(0).reasons()))
        .contains(LightingFinding.GENERATOR_FUEL_OPEN);
    PlanResult filled = portable().set("generators", 1, "consumption", 0.6).calculate();
    assertThat(keys(filled.rows(LightingResults.GENERATOR_RESULT).get(0).reasons()))
        .doesNotContain(LightingFinding.GENERATOR_FUEL_OPEN);
  }
}
