package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.lighting.BatterySamples.tubes;
import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.setpower.plan.common.Phrase;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.battery.BatteryResults;
import org.setpower.plan.lighting.result.LightingPapers;

/** Lights on batteries: changes, fewest batteries, charging, what stops. */
class LightingBatteriesTest {
  /** 290 Wh over 11 Ah are 26.4 V: Li-ion and nickel have such batteries. */
  @Test
  void a_blank_chemistry_is_named_in_its_own_row() {
    Ranges plan =
        BatterySamples.tubes()
            .set("batteryTypes", 1, "chemistry", "", "ampHours", 11, "wattHours", 290)
            .set("batteryTypes", 1, "outputs", "26");
    List<Finding> reasons = plan.calculate().rows(BatteryResults.TYPE_RESULT).get(0).reasons();
    assertThat(reasons)
        .anySatisfy(
            f -> {
              assertThat(f.key()).isEqualTo(CommonFinding.BLANK_CELL);
              assertThat(f.arguments().get(0)).hasToString("batteryTypes.chemistry");
            })
        .noneMatch(f -> f.key().key().endsWith("type.unclear"));
  }

  private static BatteryResults.LoadResult load(Ranges plan) {
    return plan.calculate().rows(BatteryResults.LOAD_RESULT).get(0);
  }

  private static BatteryResults.TypeResult type(Ranges plan) {
    return plan.calculate().rows(BatteryResults.TYPE_RESULT).get(0);
  }

  private static BatteryResults.ChargerResult charger(Ranges plan) {
    return plan.calculate().rows(BatteryResults.CHARGER_RESULT).get(0);
  }

  private static List<String> keys(List<Finding> findings) {
    return findings.stream()
        .map(f -> f.key().key().contains(".night") ? (Finding) f.arguments().get(1) : f)
        .map(f -> f.key().key())
        .toList();
  }

  /** 98 Wh at 50 W last at most 1.96 h, so three hours need one change a tube, never none. */
  @Test
  void a_light_is_changed_as_often_as_its_energy_asks_for() {
    BatteryResults.LoadResult load = load(tubes());
    assertThat(load.verdict()).as(load.reasons().toString()).isEqualTo(Verdict.OK);
    assertThat(load.runtime()).isBetween(1.5, 1.96);
    assertThat(load.changes()).isEqualTo(2);
    assertThat(load.dark()).isCloseTo(0, within(1e-9));
    PlanResult plan = tubes().calculate();
    List<BatteryResults.ChangeRow> changes = plan.rows(BatteryResults.CHANGE_ROW);
    // two tubes begin and are changed once each
    assertThat(changes).hasSize(4).allMatch(c -> c.item().equals("LED tube"));
    assertThat(changes).allMatch(c -> "☐".equals(c.tick()));
    assertThat(changes)
        .extracting(c -> c.what().pattern())
        .containsExactly("start", "start", "change", "change");
    assertThat(changes).extracting(BatteryResults.ChangeRow::on).doesNotHaveDuplicates();
    assertThat(changes)
        .extracting(BatteryResults.ChangeRow::to)
        .contains(Phrase.of("{0}", "charging station A-3"));
    assertThat(plan.rows(LightingPapers.SUMMARY).get(0).stops()).isZero();
  }

  /** Two tubes, two batteries each in three hours: four, whatever is charged meanwhile. */
  @Test
  void the_fewest_batteries_are_told_and_what_is_short() {
    assertThat(type(tubes()).uncharged()).isEqualTo(4);
    assertThat(type(tubes()).fewest()).isLessThanOrEqualTo(4);
    assertThat(type(tubes()).shortOf()).isZero();
    Ranges three = tubes().set("batteryTypes", 1, "owned", 3).set("batteryLoads", 1, "quantity", 4);
    assertThat(type(three).shortOf()).isPositive();
    assertThat(keys(type(three).reasons())).contains("batteries.stock.short");
    assertThat(keys(load(three).reasons())).contains("batteries.position.dark");
    assertThat(load(three).verdict()).isEqualTo(Verdict.STOP);
    assertThat(three.calculate().rows(LightingPapers.SUMMARY).get(0).verdict())
        .isEqualTo(Verdict.STOP);
  }

  @Test
  void watts_stand_on_equipment_once() {
    assertThat(load(tubes()).runtime())
        .isEqualTo(load(tubes().set("batteryLoads", 1, "watts", 50)).runtime());
    Ranges unknown = tubes().set("batteryLoads", 1, "item", "panel");
    assertThat(keys(load(unknown).reasons())).contains("lighting.battery.watts");
    assertThat(load(unknown).verdict()).isEqualTo(Verdict.STOP);
  }

  /** A charger draws its watts where Loads plugs it in; without that it charges nothing. */
  @Test
  void a_charger_counts_on_the_mains_or_charges_nothing() {
    assertThat(charger(tubes()).power()).isEqualTo(300);
    assertThat(charger(tubes()).charges()).isPositive();
    Ranges unplugged = tubes();
    unplugged.rows("loads").remove(1);
    assertThat(keys(charger(unplugged).reasons())).contains("lighting.battery.charger");
    assertThat(charger(unplugged).charges()).isNull();
    assertThat(unplugged.calculate().rows(BatteryResults.CHANGE_ROW))
        .extracting(BatteryResults.ChangeRow::to)
        .containsOnly(null, Phrase.of("shelf"));
    // where its outlet is a stop nothing is plugged in either
    Ranges stopped = tubes().set("outlets", 1, "breaker", "");
    assertThat(keys(charger(stopped).reasons())).contains("lighting.battery.charger");
  }

  @Test
  void what_can_hurt_somebody_stops_as_in_the_battery_plan() {
    // lithium below 0 °C: IEC 62133 and makers' data, SAFETY
    Ranges frost = tubes().set("days", 1, "coldest", -6).set("batteryChargers", 1, "air", -6);
    assertThat(keys(charger(frost).reasons())).contains("batteries.charger.cold");
    assertThat(charger(frost).verdict()).isEqualTo(Verdict.STOP);
    // four cells of NMC are 16.8 V when full
    Ranges high = tubes().set("batteryLoads", 1, "maxVolts", 16);
    assertThat(keys(load(high).reasons())).contains("batteries.device.over");
    assertThat(load(high).verdict()).isEqualTo(Verdict.STOP);
    // 150 W / 11 V = 13.6 A on a battery of 12 A
    Ranges strong = tubes().set("batteryLoads", 1, "watts", 150);
    assertThat(keys(load(strong).reasons())).contains("batteries.position.amps");
    assertThat(keys(load(tubes().set("batteryLoads", 1, "minVolts", "")).reasons()))
        .contains("batteries.device.volts");
    assertThat(keys(load(tubes().set("days", 1, "coldest", "")).reasons()))
        .contains("batteries.days.minBlank");
    assertThat(keys(type(tubes().set("batteryTypes", 1, "health", "")).reasons()))
        .contains("batteries.types.health");
  }

  /** 98 Wh over 6.8 Ah are 14.4 V: four cells of a lithium-ion battery of 12 V, as elsewhere. */
  @Test
  void heat_is_watched_as_in_the_battery_plan() {
    assertThat(load(tubes()).verdict()).isNotEqualTo(Verdict.STOP);
    Ranges heat = tubes().set("days", 1, "coldest", 30, "warmest", 66);
    assertThat(keys(load(heat).reasons())).contains("batteries.position.hot");
    assertThat(load(heat).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void a_blank_chemistry_and_voltage_mean_what_they_mean_in_the_battery_plan() {
    Ranges blank = tubes().set("batteryTypes", 1, "chemistry", "", "outputs", "");
    assertThat(type(blank).verdict()).isEqualTo(type(tubes()).verdict());
    assertThat(load(blank).verdict()).isEqualTo(load(tubes()).verdict());
    assertThat(load(blank).runtime()).isPositive();
    // 6.8 Ah and 60 Wh are 8.8 V, no voltage of Li-ion cells only
    Ranges unclear = blank.set("batteryTypes", 1, "wattHours", 60);
    assertThat(type(unclear).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void groups_and_days_switch_lights_on_batteries_too() {
    Ranges off = BatterySamples.filled().set("groups", 1, "on", "no");
    assertThat(load(off).changes()).isNull();
    assertThat(load(BatterySamples.filled()).changes()).isPositive();
    Ranges other = tubes().set("batteryLoads", 1, "fromDay", day("2027-02-02"));
    assertThat(load(other).changes()).isNull();
  }

  /**
   * A second day begins as the night left the batteries: without a charger at night it is short.
   */
  @Test
  void the_second_day_begins_as_the_night_left_it() {
    Ranges charged = twoDays();
    assertThat(keys(load(charged).reasons())).doesNotContain("batteries.position.dark");
    Ranges uncharged = twoDays();
    uncharged.rows("loads").remove(1);
    assertThat(keys(load(uncharged).reasons())).contains("batteries.position.dark");
    // four a night and no charger: eight, and four are short
    assertThat(type(uncharged).shortOf()).isEqualTo(4);
    assertThat(LightingPlans.order(uncharged))
        .filteredOn(o -> o.kind().equals("battery"))
        .allMatch(o -> o.required() == 8 && o.shortOf() == 4)
        .hasSize(1);
    // of the first day alone there is enough
    uncharged.set("batteryLoads", 1, "toDay", day("2027-02-01"));
    assertThat(keys(load(uncharged).reasons())).doesNotContain("batteries.position.dark");
  }

  /** What goes dark on the first day is still run, and told, on the second. */
  @Test
  void a_stop_of_one_day_takes_nothing_out_of_the_next() {
    Ranges both = twoDays().set("batteryLoads", 1, "quantity", 3);
    Ranges first = both.copy().set("batteryLoads", 1, "toDay", day("2027-02-01"));
    assertThat(keys(load(first).reasons())).contains("batteries.position.dark");
    assertThat(both.calculate().rows(BatteryResults.CHANGE_ROW))
        .hasSizeGreaterThan(first.calculate().rows(BatteryResults.CHANGE_ROW).size());
  }

  private static Ranges twoDays() {
    return tubes()
        .set("batteryTypes", 1, "owned", 4)
        .row(
            "days",
            "date",
            day("2027-02-02"),
            "call",
            clock(7, 0),
            "wrap",
            clock(18, 0),
            "warmest",
            20,
            "coldest",
            15);
  }

  @Test
  void project_without_units_stops_them() {
    assertThat(load(tubes().set("project", 1, "units", "")).verdict()).isEqualTo(Verdict.STOP);
  }

  /** 59 °F are 15 °C, 68 °F are 20 °C. */
  @Test
  void in_us_units_it_is_the_same_day() {
    Ranges us =
        tubes()
            .set("project", 1, "units", "US")
            .set("days", 1, "coldest", 59, "warmest", 68)
            .set("batteryChargers", 1, "air", 59)
            .set("runs", 1, "length", 25 / 0.3048);
    assertThat(us.calculate().rows(BatteryResults.CHANGE_ROW))
        .isEqualTo(tubes().calculate().rows(BatteryResults.CHANGE_ROW));
    assertThat(load(us).runtime()).isCloseTo(load(tubes()).runtime(), within(1e-9));
  }
}
