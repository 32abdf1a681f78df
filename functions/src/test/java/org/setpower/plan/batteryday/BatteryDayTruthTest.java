package org.setpower.plan.batteryday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.batteryday.BatteryDaySamples.at;
import static org.setpower.plan.batteryday.BatteryDaySamples.camera;
import static org.setpower.plan.batteryday.BatteryDaySamples.charger;
import static org.setpower.plan.batteryday.BatteryDaySamples.clock;
import static org.setpower.plan.batteryday.BatteryDaySamples.crowded;
import static org.setpower.plan.batteryday.BatteryDaySamples.day;
import static org.setpower.plan.batteryday.BatteryDaySamples.position;
import static org.setpower.plan.batteryday.BatteryDaySamples.withP98;

import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.batteryday.word.ScheduleEntry;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.EnglishMessages;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/**
 * What a camera assistant found who planned two days: figures that were not proven, days that were
 * mixed up, labels that were believed. Expected figures are worked out by hand.
 */
class BatteryDayTruthTest {
  private static List<String> keys(List<Finding> findings) {
    return findings.stream().map(f -> f.key().key()).toList();
  }

  private static List<String> ofProject(Ranges ranges) {
    return keys(ranges.calculate().rows(BatteryDayResults.PROJECT).get(0).reasons());
  }

  private static BatteryDayResults.PositionResult result(Ranges ranges, int row) {
    return ranges.calculate().rows(BatteryDayResults.POSITIONS).get(row - 1);
  }

  private static String sentence(Finding finding) {
    return new EnglishMessages().sentence(finding, Locale.UK);
  }

  private static Ranges twoDays() {
    return camera()
        .row(
            "days",
            "date",
            day("2027-02-03"),
            "call",
            at(7, 0),
            "wrap",
            at(17, 0),
            "min",
            20,
            "max",
            20);
  }

  /** A day too large to try all: a number that lasts, and that fewer may do, is told. */
  @Test
  void what_is_not_proven_is_a_number_that_lasts() {
    for (int owned : new int[] {100, 3}) {
      Ranges large = crowded();
      for (int row = 1; row <= 4; row++) {
        large.set("stock", row, "owned", owned);
      }
      for (int row = 1; row <= 20; row++) {
        large.set("positions", row, "quantity", 2);
      }
      PlanResult result = large.calculate();
      assertThat(ofProject(large)).contains("batteries.project.notProven");
      boolean lasts = result.rows(BatteryDayResults.SUMMARY).get(0).dark() == 0;
      assertThat(lasts).isEqualTo(owned == 100);
      List<BatteryDayResults.StockResult> stock =
          result.rows(BatteryDayResults.STOCK).subList(0, 4);
      for (int row = 1; row <= 4; row++) {
        BatteryDayResults.StockResult s = stock.get(row - 1);
        assertThat(s.fewest()).isBetween(s.fewestAlone(), s.uncharged());
        assertThat(s.shortOf()).isEqualTo(lasts ? 0 : s.fewest() - 3);
        assertThat(keys(s.reasons()))
            .contains(lasts ? "batteries.stock.lasts" : "batteries.stock.shortNotProven");
        large.set("stock", row, "owned", s.fewest());
      }
      assertThat(large.calculate().rows(BatteryDayResults.SUMMARY).get(0).dark()).isZero();
    }
  }

  /** Nothing is dark with what is there, so nothing is short, whatever another mix would need. */
  @Test
  void a_day_that_is_lit_is_short_of_nothing() {
    java.util.Random random = new java.util.Random(3);
    int lit = 0;
    for (int i = 0; i < 60; i++) {
      Ranges day = withP98(camera(), 2 + random.nextInt(4));
      day.set("stock", 1, "owned", 2 + random.nextInt(4));
      position(day, "link", 12, "P98", 20 + random.nextInt(40), 11, 18);
      charger(day, "one", "P294, P98", 1, 3);
      BatteryDayResults.SummaryResult summary =
          day.calculate().rows(BatteryDayResults.SUMMARY).get(0);
      if (summary.dark() == 0) {
        lit++;
        assertThat(summary.shortOf()).as("day " + i).isZero();
      }
    }
    assertThat(lit).isGreaterThan(10);
  }

  @Test
  void today_belongs_to_a_date() {
    Ranges lunch = twoDays().set("project", 1, "now", at(12, 0));
    lunch.row("atNow", "number", "B2", "charge", 0.1);
    lunch.row("atNow", "number", "B5", "absence", "quarantine");
    lunch.row("atCall", "number", "B1", "charge", 0.3);
    lunch.row("atCall", "number", "B4", "absence", "quarantine");
    assertThat(ofProject(lunch)).contains("batteries.project.todayBlank");
    lunch.set("project", 1, "today", day("2027-02-02"));
    assertThat(ofProject(lunch)).doesNotContain("batteries.project.todayBlank");
    List<BatteryDayResults.ScheduleRow> planned =
        lunch.calculate().rows(BatteryDayResults.SCHEDULE);
    assertThat(lunch.calculate().rows(BatteryDayResults.BATTERIES).get(0).atCall()).isEqualTo(0.3);
    // the next day is planned: nothing of it is applied, but what is in quarantine stays out
    Ranges next = lunch.copy().set("project", 1, "day", day("2027-02-03"));
    PlanResult other = next.calculate();
    assertThat(ofProject(next)).contains("batteries.project.todayOther");
    assertThat(other.rows(BatteryDayResults.PROJECT).get(0).verdict()).isEqualTo(Verdict.STOP);
    String papers =
        other.rows(BatteryDayResults.SCHEDULE).toString()
            + other.rows(BatteryDayResults.CHARGING)
            + other.rows(BatteryDayResults.TIMELINE);
    assertThat(papers).doesNotContain("B4").doesNotContain("B5").contains("B2");
    Ranges nothing = next.copy();
    nothing.rows("atCall").clear();
    nothing.rows("atNow").clear();
    nothing.set("project", 1, "now", "", "today", "").set("stock", 1, "out", "B4, B5");
    assertThat(other.rows(BatteryDayResults.CARD))
        .isEqualTo(nothing.calculate().rows(BatteryDayResults.CARD));
    // and the day itself is as it was
    assertThat(lunch.set("project", 1, "day", day("2027-02-02")).calculate())
        .extracting(r -> r.rows(BatteryDayResults.SCHEDULE))
        .isEqualTo(planned);
    // with one date in Days it cannot be another
    Ranges one = camera().set("project", 1, "now", at(12, 0));
    assertThat(ofProject(one)).doesNotContain("batteries.project.todayBlank");
  }

  /** In the order in which somebody puts them on; nothing of the next day after its call. */
  @Test
  void what_charges_tonight_is_in_order_of_time() {
    Ranges night = charger(twoDays(), "one", "P294", 1, 2).set("stock", 1, "owned", 5);
    night.set("chargers", 1, "powerFrom", at(6, 0), "powerTo", at(23, 0));
    List<BatteryDayResults.ChargingRow> rows = night.calculate().rows(BatteryDayResults.CHARGING);
    List<Double> hours =
        rows.stream()
            .filter(r -> r.from() != null)
            .map(r -> DaySettings.hours(clock(r.from())) + (clock(r.from()).getHour() < 7 ? 24 : 0))
            .toList();
    assertThat(hours).hasSizeGreaterThan(2).isSorted();
    // power from 6 to 7 only before the next call: more than one charge is after it, and not told
    assertThat(hours).filteredOn(h -> h >= 24).hasSize(1);
    assertThat(rows.subList(hours.size(), rows.size()))
        .isNotEmpty()
        .allSatisfy(r -> assertThat(r.ready()).isFalse())
        .allSatisfy(r -> assertThat(r.from()).isNull());
    assertThat(rows).extracting(BatteryDayResults.ChargingRow::battery).contains("B1", "B2", "B3");
  }

  /** Papers are in the language of the document, their yes and no too. */
  @Test
  void yes_and_no_on_paper_are_words_of_the_language() {
    Object[][] rows =
        charger(twoDays(), "one", "P294", 1, 2)
            .set("chargers", 1, "powerFrom", at(14, 0), "powerTo", at(23, 0))
            .calculate()
            .matrix(new Answer(List.of("charging.ready"), 40), Messages.in("de"), Locale.GERMANY);
    assertThat(Arrays.stream(rows).map(r -> r[0].toString()))
        .contains("ja", "nein")
        .doesNotContain("yes", "no");
  }

  /** Sentences name columns as their headings do, never an argument of a function. */
  @Test
  void no_sentence_has_a_word_of_the_code() {
    List<String> sentences =
        BatteryDaySamples.all().stream()
            .flatMap(r -> r.calculate().rows(BatteryDayResults.ISSUES).stream())
            .flatMap(i -> i.reasons().stream())
            .map(BatteryDayTruthTest::sentence)
            .distinct()
            .toList();
    assertThat(sentences).hasSizeGreaterThan(60);
    assertThat(sentences)
        .allSatisfy(text -> assertThat(text).doesNotContainPattern("\\w_\\w|[a-z][A-Z]| is 0\\b"));
  }

  private static List<String> issues(Ranges ranges, Locale locale) {
    Object[][] rows =
        ranges
            .calculate()
            .matrix(
                new Answer(List.of("issues.where"), 90), Messages.in(locale.getLanguage()), locale);
    return Arrays.stream(rows).map(r -> r[0].toString()).toList();
  }

  /** Days are named by their dates, as everywhere on the paper; a name that is none stays. */
  @Test
  void issues_name_days_by_dates_of_the_language() {
    Ranges days = twoDays().set("days", 1, "min", "").set("types", 1, "health", "");
    days.set("types", 1, "type", "2027-02-31");
    assertThat(issues(days, Locale.UK)).contains("Days: 2 Feb 2027", "Battery types: 2027-02-31");
    assertThat(issues(days, Locale.GERMANY)).contains("Tage: 2. Feb. 2027");
  }

  /** A battery typed on two positions is on neither for certain. */
  @Test
  void a_battery_on_two_positions_stops() {
    Ranges lunch = camera().set("project", 1, "now", at(12, 0));
    position(lunch, "camera B", 24, "P294", 60, 20, 36);
    lunch.row("atNow", "number", "B5", "position", "camera A");
    lunch.row("atNow", "number", "B5", "position", "camera B");
    PlanResult result = lunch.calculate();
    for (int row = 0; row < 2; row++) {
      assertThat(keys(result.rows(BatteryDayResults.AT_NOW).get(row).reasons()))
          .contains("batteries.found.places");
    }
    assertThat(result.rows(BatteryDayResults.SCHEDULE))
        .noneMatch(r -> r.what() == ScheduleEntry.FOUND);
  }

  /** The timeline has a found battery where it is, and nowhere else. */
  @Test
  void what_is_found_is_in_the_timeline() {
    Ranges lunch = camera().set("project", 1, "now", at(12, 15));
    lunch.row("atNow", "number", "B5", "charge", 1, "position", "camera A");
    PlanResult result = lunch.calculate();
    assertThat(result.rows(BatteryDayResults.TIMELINE))
        .anySatisfy(
            t -> {
              assertThat(t.batteries()).isEqualTo("B5");
              assertThat(t.from()).isEqualTo(LocalTime.of(12, 15));
            })
        .anySatisfy(t -> assertThat(t.to()).isEqualTo(LocalTime.of(12, 15)));
  }

  /** Where a set works, one battery found there says nothing of the others. */
  @ParameterizedTest
  @CsvSource({"series, 48, 40, 70", "parallel, 24, 20, 35"})
  void a_battery_found_in_a_set_stops(String connection, double volts, double min, double max) {
    Ranges set = camera().set("stock", 1, "owned", 8).set("project", 1, "now", at(12, 0));
    set.set("positions", 1, "connection", connection, "atOnce", 2, "volts", volts);
    set.set("positions", 1, "touchSafe", "yes");
    set.set("devices", 1, "minVolts", min, "maxVolts", max);
    set.row("atNow", "number", "B7", "position", "camera A");
    assertThat(keys(set.calculate().rows(BatteryDayResults.AT_NOW).get(0).reasons()))
        .containsExactly("batteries.found.set");
  }

  @Test
  void a_max_temperature_without_hours_is_told() {
    Ranges cold = camera().set("days", 1, "min", -5, "max", 8);
    assertThat(keys(cold.calculate().rows(BatteryDayResults.DAYS).get(0).reasons()))
        .containsExactly("batteries.days.maxUnused");
    cold.set("days", 1, "minFrom", at(5, 0), "maxFrom", at(13, 0));
    assertThat(cold.calculate().rows(BatteryDayResults.DAYS).get(0).reasons()).isEmpty();
  }

  /** Two cells of 3.6 V: full 8.4 V, for a monitor of 6 to 17 V. */
  @ParameterizedTest
  @CsvSource({"7.2", "''"})
  void batteries_of_two_cells(String outputs) {
    Ranges small = camera();
    small.set("types", 1, "chemistry", "", "cells", "", "ampHours", 6.6, "wattHours", 47.5);
    small.set("types", 1, "outputs", outputs, "maxAmps", 8, "resistance", "", "health", 0.9);
    small.set("stock", 1, "owned", 12);
    small.set("positions", 1, "volts", "");
    small.set("devices", 1, "watts", 14, "minVolts", 6, "maxVolts", 17);
    assertThat(small.calculate().rows(BatteryDayResults.TYPES).get(0).reasons()).isEmpty();
    assertThat(result(small, 1).reasons()).isEmpty();
    assertThat(result(small, 1).arrives()).isEqualTo(7.2);
    // by energy 47.5 Wh · 0.9 / 14 W are 3.05 h at most
    assertThat(result(small, 1).runtime()).isBetween(2.4, 3.05);
    small.set("devices", 1, "minVolts", 11);
    assertThat(result(small, 1).verdict()).isEqualTo(Verdict.STOP);
  }

  /**
   * 150 Wh over 10.4 Ah are 14.4 V: no battery of 24 V; 150 Wh over 6.8 Ah are 22 V: none of 12.
   */
  @ParameterizedTest
  @CsvSource({
    "150, 10.4, 24, true",
    "150, 6.8, 12, true",
    "150, 10.4, 12, false",
    "294, 10.2, 12/24, false",
    "294, 10.2, 48, true",
    "47.5, 6.6, 7.2, false",
    "47.5, 6.6, 12, true",
    "47.5, 6.6, 14.4, true"
  })
  void a_nominal_voltage_is_held_against_energy_over_capacity(
      double wattHours, double ampHours, String outputs, boolean stops) {
    Ranges label = camera().set("types", 1, "chemistry", "", "cells", "", "outputs", outputs);
    label.set("types", 1, "wattHours", wattHours, "ampHours", ampHours);
    BatteryDayResults.TypeResult type = label.calculate().rows(BatteryDayResults.TYPES).get(0);
    assertThat(keys(type.reasons()).contains("batteries.types.volts")).isEqualTo(stops);
    assertThat(type.verdict() == Verdict.STOP).isEqualTo(stops);
  }

  /**
   * A channel takes 4 A · 33.6 V / 0.8 = 168 W: one at a time on 300 W, six on 1008 W. What is told
   * to be enough is, and it is what some channels take, in steps of ten.
   */
  @Test
  void a_supply_that_makes_it_dark_is_named() {
    Ranges inverter = camera().set("positions", 1, "quantity", 3).set("stock", 1, "owned", 6);
    charger(inverter, "six", "P294", 6, 4);
    inverter.set("supplies", 1, "watts", 300);
    BatteryDayResults.SummaryResult summary =
        inverter.calculate().rows(BatteryDayResults.SUMMARY).get(0);
    assertThat(summary.dark()).isPositive();
    List<Finding> reasons = inverter.calculate().rows(BatteryDayResults.SUPPLIES).get(0).reasons();
    assertThat(keys(reasons)).containsExactly("batteries.supply.enough");
    double enough = (Double) reasons.get(0).arguments().get(3);
    assertThat(enough).isIn(340.0, 510.0, 680.0, 840.0, 1010.0);
    inverter.set("supplies", 1, "watts", enough);
    assertThat(inverter.calculate().rows(BatteryDayResults.SUPPLIES).get(0).reasons()).isEmpty();
    assertThat(inverter.calculate().rows(BatteryDayResults.SUMMARY).get(0).dark()).isZero();
    inverter.set("supplies", 1, "watts", 5000);
    assertThat(inverter.calculate().rows(BatteryDayResults.SUPPLIES).get(0).reasons()).isEmpty();
  }

  @Test
  void the_same_power_in_the_row_and_in_devices_is_told() {
    Ranges both = camera().set("positions", 1, "power", 92, "input", "11-36");
    assertThat(keys(result(both, 1).reasons())).contains("batteries.position.bothPowers");
    assertThat(result(both, 1).watts()).isCloseTo(184, within(1e-9));
    both.set("positions", 1, "power", 25);
    assertThat(keys(result(both, 1).reasons())).isEmpty();
    assertThat(result(both, 1).watts()).isCloseTo(117, within(1e-9));
  }

  /** 400 W on 20 V are 20 A, twice that 40 A, over 30 A: the cause is the name. */
  @Test
  void a_name_used_twice_is_the_cause_that_is_told() {
    Ranges twice = camera();
    twice.rows("devices").clear();
    twice.set("positions", 1, "power", 400, "input", "20-35");
    twice.row("positions", "position", "camera A", "type", "P294", "power", 400, "input", "20-35");
    twice.set("positions", 2, "volts", 24);
    assertThat(keys(result(twice, 1).reasons()))
        .hasSize(1)
        .allSatisfy(k -> assertThat(k).isEqualTo("gate.double"));
  }

  /** 12/24 on a device of 22 to 34 V can only be 24. */
  @ParameterizedTest
  @CsvSource({"22-34, 24", "11-17, 12", "11-36, "})
  void the_only_nominal_voltage_that_fits_is_taken(String input, Double volts) {
    Ranges blank = camera().set("positions", 1, "volts", "", "power", 60, "input", input);
    blank.rows("devices").clear();
    assertThat(result(blank, 1).arrives()).isEqualTo(volts);
    assertThat(result(blank, 1).verdict()).isEqualTo(volts == null ? Verdict.STOP : Verdict.OK);
  }

  /** Three hours of 92 W of a battery, and a day that is a few minutes longer. */
  @Test
  void minutes_are_told_as_minutes() {
    Ranges day = camera().set("stock", 1, "owned", 1).set("days", 1, "wrap", at(10, 10));
    BatteryDayResults.PositionResult dark = result(day, 1);
    assertThat(dark.dark()).isBetween(1 / 60., 0.2);
    String reason = sentence(dark.reasons().get(0));
    assertThat(reason).doesNotContain("0.0 h").containsPattern("0:0\\d h");
  }

  /** A battery that is not full goes on for twenty minutes at least, or to the end. */
  @Test
  void no_change_gains_less_than_twenty_minutes() {
    java.util.Random random = new java.util.Random(13);
    int partUsed = 0;
    for (int i = 0; i < 150; i++) {
      Ranges day = camera().set("stock", 1, "owned", 3).set("days", 1, "wrap", at(21, 0));
      day.set("positions", 1, "changeAt", 0.3, "priority", 1);
      position(day, "low", 24, "P294", 15 + random.nextInt(60), 20, 36);
      day.set("positions", 2, "priority", 9);
      charger(day, "slow", "P294", 1, 1 + random.nextInt(2));
      day.set("chargers", 1, "usable", 0.5);
      List<BatteryDayResults.ScheduleRow> rows = day.calculate().rows(BatteryDayResults.SCHEDULE);
      for (BatteryDayResults.ScheduleRow row : rows) {
        for (BatteryDayResults.ScheduleRow later : rows) {
          boolean off = later.off().equals(row.on()) && later.hour() > row.hour() + 1e-9;
          boolean empty = later.taken().isEmpty() && later.what() != ScheduleEntry.END;
          if (!row.on().isEmpty() && off && empty && later.position().equals(row.position())) {
            boolean given = later.to() != null && later.to().arguments().contains("camera A");
            assertThat(given || later.hour() - row.hour() >= 20 / 60. - 1e-6)
                .as("day " + i + row + later)
                .isTrue();
            partUsed++;
            break;
          }
        }
      }
    }
    assertThat(partUsed).isGreaterThan(100);
  }

  /** Off from 21:30 to 06:00: a charge stops there and goes on after it, in two rows. */
  @Test
  void a_charge_stops_where_its_inverter_is_off() {
    Ranges night = charger(twoDays(), "van", "P294", 1, 2);
    night.set("chargers", 1, "powerFrom", at(6, 0), "powerTo", at(21, 30));
    List<BatteryDayResults.ChargingRow> rows = night.calculate().rows(BatteryDayResults.CHARGING);
    assertThat(rows)
        .filteredOn(t -> t.from() != null)
        .hasSizeGreaterThan(2)
        .allSatisfy(
            t -> {
              assertThat(clock(t.from())).isBetween(LocalTime.of(6, 0), LocalTime.of(21, 30));
              assertThat(clock(t.until())).isBetween(LocalTime.of(6, 0), LocalTime.of(21, 30));
              assertThat(clock(t.until())).isAfter(clock(t.from()));
            });
  }

  /** Nobody charges a nearly full battery for two minutes in the night. */
  @Test
  void a_nearly_full_battery_is_not_charged_at_night() {
    Ranges nearly = charger(camera(), "one", "P294", 1, 3).set("days", 1, "wrap", at(7, 2));
    assertThat(nearly.calculate().rows(BatteryDayResults.CHARGING)).isEmpty();
  }

  @Test
  void a_charger_without_hours_at_night_is_told() {
    Ranges night = charger(camera(), "slow", "P294", 1, 1);
    assertThat(keys(night.calculate().rows(BatteryDayResults.CHARGERS).get(0).reasons()))
        .containsExactly("batteries.charger.night");
    night.set("chargers", 1, "powerFrom", at(7, 0), "powerTo", at(22, 0));
    assertThat(night.calculate().rows(BatteryDayResults.CHARGERS).get(0).reasons()).isEmpty();
  }

  /** The same chargers on the truck by day and at the base by night, both on at 18:00. */
  @Test
  void a_charger_typed_twice_is_told_where_both_are_on() {
    Ranges moved = charger(camera(), "quad", "P294", 4, 3);
    moved.row("supplies", "supply", "base", "watts", 3000);
    charger(moved, "quad base", "P294", 4, 3);
    moved.set("chargers", 1, "powerFrom", at(7, 0), "powerTo", at(19, 0));
    moved.set("chargers", 2, "supply", "base", "powerFrom", at(18, 0), "powerTo", at(6, 0));
    for (int row = 0; row < 2; row++) {
      assertThat(keys(moved.calculate().rows(BatteryDayResults.CHARGERS).get(row).reasons()))
          .contains("batteries.charger.moved");
    }
    moved.set("chargers", 2, "powerFrom", at(19, 0));
    assertThat(keys(moved.calculate().rows(BatteryDayResults.CHARGERS).get(0).reasons()))
        .doesNotContain("batteries.charger.moved");
  }

  /** At 0 °C a cell takes 10.4 % less (open data of 2021): what it takes is what it has. */
  @Test
  void what_charges_cool_is_not_full() {
    Ranges cool = charger(twoDays(), "cool", "P294", 4, 3).set("chargers", 1, "air", 0);
    PlanResult result = cool.calculate();
    Set<Double> next =
        result.rows(BatteryDayResults.BATTERIES).stream()
            .map(BatteryDayResults.BatteryResult::next)
            .map(c -> Math.round(c * 1000) / 1000.)
            .collect(Collectors.toSet());
    assertThat(next).containsExactlyInAnyOrder(1.0, 0.896);
    assertThat(result.rows(BatteryDayResults.SUMMARY).get(0).notReady()).isZero();
  }

  /** Colder than anybody measured: no hours are made up. */
  @Test
  void colder_than_measured_stops() {
    Ranges polar = camera().set("days", 1, "min", -55, "max", -55);
    assertThat(keys(result(polar, 1).reasons())).contains("batteries.position.temperature");
    assertThat(result(polar, 1).verdict()).isEqualTo(Verdict.STOP);
  }
}
