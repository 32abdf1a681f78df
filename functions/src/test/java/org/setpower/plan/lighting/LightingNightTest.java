package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.lighting.LightingPlans.generator;
import static org.setpower.plan.lighting.LightingPlans.keys;
import static org.setpower.plan.lighting.LightingPlans.load;
import static org.setpower.plan.lighting.LightingPlans.outlet;
import static org.setpower.plan.lighting.LightingPlans.supply;
import static org.setpower.plan.lighting.LightingSafetyTest.onGenerator;
import static org.setpower.plan.lighting.LightingSamples.clock;
import static org.setpower.plan.lighting.LightingSamples.day;
import static org.setpower.plan.lighting.LightingSamples.quay;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Verdict;
import org.setpower.plan.lighting.battery.BatteryResults;
import org.setpower.plan.lighting.result.GeneratorPapers;
import org.setpower.plan.lighting.result.LightingPapers;

/** One night is one night: a time before Call belongs to the next morning. */
class LightingNightTest {
  private static final double LEG_VOLTS = 400 / Math.sqrt(3);

  /** From 17:00 to 05:00 with two kettles of 3 kW on one 16 A outlet. */
  private static Ranges kettles(Object from, Object to) {
    return night(quay())
        .row("equipment", "item", "kettle", "watts", 3000, "inrush", "none")
        .row("loads", "item", "kettle", "place", "A-4")
        .row("loads", "item", "kettle", "place", "A-4", "from", from, "to", to);
  }

  private static Ranges night(Ranges plan) {
    return plan.set("days", 1, "call", clock(17, 0), "wrap", clock(5, 0));
  }

  @Test
  void two_kettles_in_the_small_hours_are_26_amps_on_16() {
    Ranges plan = kettles(clock(1, 0), clock(4, 0));
    assertThat(outlet(plan, 1).peak()).isCloseTo(6000 / LEG_VOLTS, within(1e-9));
    assertThat(keys(outlet(plan, 1).reasons())).containsExactly("outlet.over");
    assertThat(outlet(plan, 1).reasons().get(0).arguments()).contains("A-4", "01:00");
    assertThat(supply(plan, 2).peakDate()).isEqualTo(LocalDate.of(2027, 2, 2));
    // at the end of the night and behind midnight as well
    assertThat(keys(outlet(kettles(clock(22, 0), clock(4, 0)), 1).reasons()))
        .containsExactly("outlet.over");
    assertThat(keys(outlet(kettles(clock(4, 30), ""), 1).reasons())).containsExactly("outlet.over");
  }

  @Test
  void two_loads_of_the_small_hours_and_two_of_the_night_sum() {
    Ranges plan = kettles(clock(1, 0), clock(4, 0)).set("loads", 2, "from", clock(2, 0));
    assertThat(outlet(plan, 1).peak()).isCloseTo(6000 / LEG_VOLTS, within(1e-9));
    plan.set("loads", 2, "to", clock(3, 0));
    assertThat(outlet(plan, 1).peak()).isCloseTo(6000 / LEG_VOLTS, within(1e-9));
    assertThat(load(plan, 2).verdict()).isEqualTo(Verdict.STOP);
  }

  /** Call 16:30 to wrap 05:00: until 05:30 it runs, so 01:00 to 04:00 is no time without power. */
  @Test
  void a_lamp_of_the_small_hours_has_the_generator_of_the_night() {
    Ranges plan = night(onGenerator(40)).set("loads", 1, "from", clock(1, 0), "to", clock(4, 0));
    assertThat(keys(load(plan, 1).reasons())).isEmpty();
    assertThat(supply(plan, 2).amps2()).isPositive();
    plan.set("loads", 1, "to", clock(6, 0));
    assertThat(keys(load(plan, 1).reasons())).containsExactly("load.off");
  }

  /** 17:00 − 30 min to 05:00 + 30 min are 13 h, less one for sound. */
  @Test
  void off_for_sound_in_the_small_hours_counts() {
    Ranges plan = night(onGenerator(40));
    assertThat(generator(plan, 1).hours()).isCloseTo(13, within(1e-9));
    plan.set("generators", 1, "offFrom", clock(2, 0), "offTo", clock(3, 0));
    assertThat(generator(plan, 1).hours()).isCloseTo(12, within(1e-9));
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.sound");
    // 23:30 to 00:30 runs over midnight
    plan.set("generators", 1, "offFrom", clock(23, 30), "offTo", clock(0, 30));
    assertThat(generator(plan, 1).hours()).isCloseTo(12, within(1e-9));
    plan.set("generators", 1, "offFrom", clock(10, 0), "offTo", clock(11, 0));
    assertThat(generator(plan, 1).hours()).isCloseTo(13, within(1e-9));
    assertThat(keys(generator(plan, 1).reasons())).contains("generator.clock");
  }

  @Test
  void load_by_hour_runs_on_past_midnight() {
    Ranges plan = night(onGenerator(40));
    List<LightingPapers.HourRow> hours = plan.calculate().rows(LightingPapers.HOUR_ROW);
    assertThat(hours).hasSize(24);
    assertThat(hours)
        .extracting(LightingPapers.HourRow::at)
        .startsWith(LocalTime.of(16, 0), LocalTime.of(17, 0))
        .containsSubsequence(LocalTime.of(23, 0), LocalTime.of(0, 0), LocalTime.of(1, 0));
    assertThat(hours)
        .filteredOn(h -> h.first() > 0)
        .extracting(h -> h.at().getHour())
        .containsExactly(17, 18, 19, 20, 21, 22, 23, 0, 1, 2, 3, 4);
    assertThat(hours.get(9).first()).isPositive();
  }

  @Test
  void changes_of_batteries_after_midnight_have_the_date_of_the_morning() {
    Ranges plan =
        night(BatterySamples.tubes())
            .set("batteryLoads", 1, "from", clock(22, 0), "to", clock(3, 0))
            .set("batteryTypes", 1, "owned", 12);
    List<BatteryResults.ChangeRow> changes = plan.calculate().rows(BatteryResults.CHANGE_ROW);
    assertThat(changes).anyMatch(c -> c.by().getHour() < 12);
    for (BatteryResults.ChangeRow change : changes) {
      int date = change.by().getHour() < 12 ? 2 : 1;
      assertThat(change.date()).as(change.toString()).isEqualTo(LocalDate.of(2027, 2, date));
    }
  }

  /** Whoever changes batteries must read from when on a light is dark. */
  @Test
  void a_light_without_a_battery_left_stands_on_the_list_of_changes() {
    Ranges plan = BatterySamples.tubes().set("batteryTypes", 1, "owned", 2);
    plan.rows("loads").remove(1);
    assertThat(plan.calculate().rows(BatteryResults.LOAD_RESULT).get(0).dark()).isPositive();
    List<BatteryResults.ChangeRow> changes = plan.calculate().rows(BatteryResults.CHANGE_ROW);
    // 98 Wh at 50 W end before 10:00
    assertThat(changes)
        .filteredOn(c -> c.what().toString().contains("no power"))
        .hasSize(2)
        .allMatch(c -> c.by().isBefore(LocalTime.of(10, 0)) && c.by().isAfter(LocalTime.of(9, 0)));
  }

  /** 05:00 is before the battery plan's own beginning of a day, and here within the night. */
  @Test
  void lights_on_batteries_read_the_same_clock_as_loads() {
    Ranges plan =
        night(BatterySamples.tubes())
            .set("days", 1, "wrap", clock(7, 0))
            .set("batteryLoads", 1, "from", clock(5, 30), "to", clock(6, 30));
    BatteryResults.LoadResult light = plan.calculate().rows(BatteryResults.LOAD_RESULT).get(0);
    assertThat(light.reasons()).isEmpty();
    assertThat(light.changes()).isZero();
  }

  /** Work by day: 05:00 is the preparation of that day, a night only where its wrap is. */
  @ParameterizedTest
  @CsvSource({
    // call, wrap, from, to: date of the peak, whether it is said
    "7,18,5,6,1,false",
    "7,18,5,9,1,false",
    "17,5,15,18,1,false",
    "17,5,5,7,2,false",
    "17,5,1,20,2,false",
    "7,24,0,1,2,false",
    "7,18,1,4,1,true",
    "17,5,9,12,1,true",
    "7,18,21,23,1,true"
  })
  void wrap_decides_whether_a_time_before_call_is_the_next_morning(
      int call, int wrap, int from, int to, int date, boolean said) {
    Ranges plan = quay().set("days", 1, "call", clock(call, 0), "wrap", clock(wrap, 0));
    plan.set("loads", 1, "from", clock(from, 0), "to", clock(to, 0));
    assertThat(supply(plan, 2).peakDate()).isEqualTo(LocalDate.of(2027, 2, date));
    assertThat(!keys(load(plan, 1).reasons()).isEmpty()).isEqualTo(said);
  }

  /** What may be either morning counts on both: the sum is never smaller. */
  @Test
  void an_unclear_time_counts_on_both_mornings() {
    Ranges plan =
        quay()
            .row("days", "date", day("2027-02-02"), "call", clock(0, 0), "wrap", clock(12, 0))
            .row("equipment", "item", "kettle", "watts", 3000, "inrush", "none")
            .row("loads", "item", "kettle", "place", "A-4", "fromDay", day("2027-02-02"))
            .row(
                "loads",
                "item",
                "kettle",
                "place",
                "A-4",
                "toDay",
                day("2027-02-01"),
                "from",
                clock(1, 0),
                "to",
                clock(4, 0));
    assertThat(keys(load(plan, 3).reasons())).contains("load.morning");
    assertThat(keys(outlet(plan, 1).reasons())).containsExactly("outlet.over");
  }

  @Test
  void a_source_that_goes_off_in_the_small_hours_has_power_until_then() {
    Ranges plan = night(quay()).set("supplies", 1, "to", clock(2, 0));
    plan.set("loads", 1, "from", clock(20, 0), "to", clock(1, 0));
    assertThat(keys(load(plan, 1).reasons())).isEmpty();
    plan.set("loads", 1, "to", clock(3, 0));
    assertThat(keys(load(plan, 1).reasons())).containsExactly("load.off");
  }

  @Test
  void the_night_before_is_not_part_of_the_day_shown() {
    Ranges plan =
        kettles(clock(1, 0), clock(4, 0))
            .row("days", "date", day("2027-02-02"), "call", clock(17, 0), "wrap", clock(5, 0))
            .set("loads", 3, "toDay", day("2027-02-01"))
            .set("project", 1, "dayShown", day("2027-02-02"));
    assertThat(outlet(plan, 1).peak()).isCloseTo(3000 / LEG_VOLTS, within(1e-9));
    plan.set("project", 1, "dayShown", day("2027-02-01"));
    assertThat(outlet(plan, 1).peak()).isCloseTo(6000 / LEG_VOLTS, within(1e-9));
  }

  @Test
  void a_reading_of_the_small_hours_is_of_the_night() {
    Ranges plan =
        kettles(clock(1, 0), clock(4, 0))
            .row("readings", "place", "A", "date", day("2027-02-01"), "time", clock(2, 0));
    assertThat(
            plan.calculate()
                .rows(org.setpower.plan.lighting.result.LightingResults.READING_RESULT)
                .get(0)
                .planned1())
        .isCloseTo(6000 / LEG_VOLTS, within(1e-9));
  }

  /**
   * A date that cannot be read stops its own load, which counts on all days: the sums are no lower
   * than with any date, so the generator need not stop.
   */
  @Test
  void a_wrong_date_stops_its_load_alone() {
    for (String key : new String[] {"fromDay", "toDay"}) {
      Ranges plan = onGenerator(50);
      Double amps = supply(plan, 2).amps2();
      assertThat(amps).isPositive();
      plan.set("loads", 1, key, "10.12.2026");
      assertThat(load(plan, 1).verdict()).isEqualTo(Verdict.STOP);
      assertThat(load(plan, 1).reasons().get(0).key()).isEqualTo(CommonFinding.NOT_A_DATE);
      assertThat(keys(generator(plan, 1).reasons())).doesNotContain("generator.uncounted");
      assertThat(supply(plan, 2).amps2()).isEqualTo(amps);
    }
    // the other date does not narrow what may be meant
    Ranges plan = onGenerator(50).set("loads", 1, "toDay", "1.2.27", "fromDay", day("2031-01-01"));
    assertThat(supply(plan, 2).amps2()).isPositive();
  }

  /** On its second day the generator stands still: no figure of the first day is on its sheet. */
  @Test
  void the_sheet_of_a_generator_that_is_off_on_the_day_shown_says_so() {
    Ranges plan =
        onGenerator(50)
            .row("days", "date", day("2027-02-02"), "call", clock(7, 0), "wrap", clock(18, 0))
            .set("loads", 1, "toDay", day("2027-02-01"))
            .set("generators", 1, "toDay", day("2027-02-01"));
    assertThat(sheet(plan).amps2()).isPositive();
    assertThat(sheet(plan).share()).isPositive();
    assertThat(sheet(plan).dayShown()).isNull();
    plan.set("project", 1, "dayShown", day("2027-02-02"));
    assertThat(sheet(plan).dayShown().pattern()).isEqualTo("off on this day");
    assertThat(sheet(plan).amps1()).isNull();
    assertThat(sheet(plan).amps2()).isNull();
    assertThat(sheet(plan).neutral()).isNull();
    assertThat(sheet(plan).needed()).isNull();
    assertThat(sheet(plan).share()).isNull();
    plan.set("project", 1, "dayShown", day("2027-02-01"));
    assertThat(sheet(plan).dayShown()).isNull();
    assertThat(sheet(plan).amps2()).isPositive();
  }

  private static GeneratorPapers.SheetRow sheet(Ranges plan) {
    return plan.calculate().rows(GeneratorPapers.SHEET_ROW).get(0);
  }
}
