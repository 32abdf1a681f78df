package org.setpower.plan.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.register.RegisterSamples.add;
import static org.setpower.plan.register.RegisterSamples.day;
import static org.setpower.plan.register.RegisterSamples.incidents;
import static org.setpower.plan.register.RegisterSamples.sound;
import static org.setpower.plan.register.RegisterSamples.stock;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.plan.common.Answer;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Verdict;

/**
 * The register's rules, case by case. Expected verdicts are the rules of rental houses (common
 * practice): damaged, recalled or unknown batteries stay in.
 */
class RegisterRulesTest {
  private static RegisterResults.BatteryResult battery(Ranges ranges, int row) {
    return ranges.calculate().rows(RegisterResults.BATTERIES).get(row - 1);
  }

  /** What Check-out says of its first serial; the issue list has it only where it may go out. */
  private static RegisterResults.CheckoutResult slip(Ranges ranges) {
    PlanResult result = ranges.calculate();
    RegisterResults.CheckoutResult first = result.rows(RegisterResults.CHECKOUT).get(0);
    if (ranges.rows("checkout").size() == 1) {
      assertThat(result.rows(RegisterResults.SLIP)).hasSize(first.mayGoOut() ? 1 : 0);
    }
    return first;
  }

  private static RegisterResults.Slip paper(Ranges ranges) {
    return ranges.calculate().rows(RegisterResults.SLIP).get(0);
  }

  private static RegisterResults.Summary summary(Ranges ranges) {
    return ranges.calculate().rows(RegisterResults.SUMMARY).get(0);
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  /** No paper, count or proposal takes the first battery for fit. */
  private static void assertWithheld(Ranges ranges, Status status) {
    PlanResult result = ranges.calculate();
    RegisterResults.BatteryResult battery = result.rows(RegisterResults.BATTERIES).get(0);
    assertThat(battery.verdict()).isEqualTo(Verdict.STOP);
    assertThat(battery.status()).isEqualTo(status);
    assertThat(battery.fit()).isFalse();
    RegisterResults.CheckoutResult slip = result.rows(RegisterResults.CHECKOUT).get(0);
    assertThat(slip.mayGoOut()).isFalse();
    assertThat(slip.verdict()).isEqualTo(Verdict.STOP);
    assertThat(slip.reasons()).isNotEmpty();
    assertThat(result.rows(RegisterResults.SLIP)).isEmpty();
    assertThat(result.rows(RegisterResults.SUMMARY).get(0).fit()).isZero();
    assertThat(result.rows(RegisterResults.TYPES).get(0).fit()).isZero();
    assertThat(result.rows(RegisterResults.STOCKTAKE)).noneMatch(RegisterResults.StocktakeRow::fit);
    assertThat(result.rows(RegisterResults.ISSUES).get(0).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void a_sound_battery_goes_out() {
    assertThat(battery(sound(), 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(battery(sound(), 1).status()).isEqualTo(Status.KEEP);
    assertThat(battery(sound(), 1).health()).isCloseTo(93.0 / 98, within(1e-12));
    assertThat(slip(sound()).mayGoOut()).isTrue();
    assertThat(paper(sound()).energy()).isEqualTo(98.0);
    assertThat(summary(sound()).fit()).isEqualTo(1);
    assertThat(summary(sound()).verdict()).isEqualTo(Verdict.OK);
    assertThat(sound().calculate().rows(RegisterResults.TYPES).get(0).toBuy()).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource({
    "dropped,keep",
    "wet,watch",
    "swollen,service",
    "dropped,",
    "leaking,keep",
    "hot,keep",
    "burnt,keep",
    "recalled,keep",
    "puffed,keep",
    "SWOLLEN ,keep",
    "'wet, dropped',keep",
    "dented,keep",
    "fine?,keep",
    "finee,keep",
    "0,keep"
  })
  void damage_is_quarantined_whatever_was_decided(String condition, String decided) {
    assertWithheld(
        sound()
            .set("batteries", 1, "condition", condition)
            .set("batteries", 1, "decided", decided == null ? "" : decided),
        Status.QUARANTINE);
    assertThat(summary(sound().set("batteries", 1, "condition", condition)).quarantine())
        .isEqualTo(1);
  }

  /** Two are required. A second one that only wants a test comes back, a dropped one does not. */
  @Test
  void what_only_awaits_a_test_is_not_bought() {
    Ranges two = sound();
    two.row("batteries", RegisterSamples.fine("P1-02"));
    assertThat(battery(two, 2).status()).isEqualTo(Status.NOT_TESTED);
    assertThat(battery(two, 2).fit()).isFalse();
    assertThat(two.calculate().rows(RegisterResults.TYPES).get(0).toBuy()).isZero();
    two.set("batteries", 2, "condition", "");
    assertThat(two.calculate().rows(RegisterResults.TYPES).get(0).toBuy()).isZero();
    two.set("batteries", 2, "condition", "dropped");
    assertThat(two.calculate().rows(RegisterResults.TYPES).get(0).toBuy()).isEqualTo(1);
    assertThat(sound().calculate().rows(RegisterResults.TYPES).get(0).toBuy()).isEqualTo(1);
  }

  @Test
  void a_swollen_battery_in_service_is_not_counted_as_coming_back() {
    Ranges swollen = sound().set("batteries", 1, "condition", "swollen", "decided", "service");
    RegisterResults.TypeResult type = swollen.calculate().rows(RegisterResults.TYPES).get(0);
    assertThat(type.service()).isZero();
    assertThat(type.quarantine()).isEqualTo(1);
    assertThat(type.toBuy()).isEqualTo(2);
    assertThat(battery(swollen, 1).action()).isEqualTo(Action.RETIRE);
    assertThat(keys(battery(swollen, 1).reasons())).contains(RegisterFinding.DECISION_MILDER);
  }

  @ParameterizedTest
  @ValueSource(strings = {"P1-01", "p1-01 ", "P1\u201101", "P1- 01", "P1-01\u200b"})
  void a_serial_twice_stops_both(String again) {
    Ranges twice = add(sound(), again, 92, 55);
    assertWithheld(twice, Status.QUARANTINE);
    assertThat(battery(twice, 2).fit()).isFalse();
    twice.set("batteries", 2, "condition", "swollen");
    assertWithheld(twice, Status.QUARANTINE);
  }

  @ParameterizedTest
  @CsvSource({
    "Li-ion,1.2",
    "Li-ion,4.6",
    "Li-ion,0",
    "Li-ion,-0.2",
    "Li-ion,2.49",
    "LFP,4.15",
    "NiMH,0.5",
    "lead,1.2"
  })
  void a_cell_outside_its_hard_limits_is_quarantined(String chemistry, double volts) {
    Ranges ranges = sound().set("types", 1, "chemistry", chemistry);
    for (int cell = 1; cell <= 4; cell++) {
      ranges.set("tests", 1, "cell" + cell, volts);
    }
    assertWithheld(ranges, Status.QUARANTINE);
    assertThat(keys(battery(ranges, 1).reasons())).contains(RegisterFinding.CELL_OUTSIDE);
  }

  @Test
  void a_cell_outside_counts_in_any_test() {
    Ranges cold = sound().row("tests", "serial", "P1-01", "temperature", 4, "cell1", 1.2);
    assertWithheld(cold, Status.QUARANTINE);
  }

  @Test
  void resistance_far_above_its_type_goes_to_service() {
    Ranges ranges = sound().set("tests", 1, "resistance", 500);
    for (int i = 2; i <= 5; i++) {
      add(ranges, "P1-0" + i, 92, 50 + 2 * i);
    }
    assertWithheldFirst(ranges);
    // median of 500, 54, 56, 58, 60 by hand
    assertThat(battery(ranges, 1).timesType()).isCloseTo(500.0 / 58, within(1e-12));
    assertThat(battery(ranges, 2).fit()).isTrue();
    assertThat(battery(ranges, 2).compared()).isTrue();
  }

  private static void assertWithheldFirst(Ranges ranges) {
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.SERVICE);
    assertThat(battery(ranges, 1).fit()).isFalse();
    assertThat(slip(ranges).mayGoOut()).isFalse();
  }

  @Test
  void four_of_a_type_are_not_compared() {
    Ranges ranges = sound().set("tests", 1, "resistance", 500);
    for (int i = 2; i <= 4; i++) {
      add(ranges, "P1-0" + i, 92, 55);
    }
    assertThat(battery(ranges, 1).compared()).isFalse();
    assertThat(battery(ranges, 1).timesType()).isNull();
    assertThat(battery(ranges, 1).fit()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"temperature,26", "charge,0.5", "charge,"})
  void unlike_tests_are_not_compared(String key, Double value) {
    Ranges ranges = sound().set("tests", 1, "resistance", 500);
    for (int i = 2; i <= 6; i++) {
      add(ranges, "P1-0" + i, 92, 55);
    }
    assertThat(battery(ranges, 1).compared()).isTrue();
    ranges.set("tests", 1, key, value == null ? "" : value);
    assertThat(battery(ranges, 1).compared()).isFalse();
  }

  @Test
  void health_far_below_its_type_is_watched() {
    Ranges ranges = sound().set("tests", 1, "measured", 84);
    for (int i = 2; i <= 7; i++) {
      add(ranges, "P1-0" + i, 92 + i / 10.0, 55);
    }
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.WATCH);
    assertThat(keys(battery(ranges, 1).reasons())).containsExactly(RegisterFinding.BELOW_TYPE);
    assertThat(battery(ranges, 1).fit()).isTrue();
  }

  @Test
  void not_inspected_does_not_go_out_and_is_no_quarantine() {
    Ranges blank = sound().set("batteries", 1, "condition", "");
    assertWithheld(blank, Status.NOT_INSPECTED);
    assertThat(summary(blank).quarantine()).isZero();
    assertThat(summary(blank).notInspected()).isEqualTo(1);
  }

  @Test
  void a_new_register_of_blank_conditions_is_one_issue() {
    Ranges ranges = sound().set("checkout", 1, "serial", "");
    for (int i = 100; i < 400; i++) {
      ranges.row("batteries", "serial", "P1-" + i, "type", "P1", "energy", 98);
    }
    List<IssueRow> issues = ranges.calculate().rows(RegisterResults.ISSUES);
    assertThat(issues).hasSize(1);
    assertThat(issues.get(0).rows()).isEqualTo(300);
    assertThat(issues.get(0).where().toString())
        .startsWith("Batteries: P1-100, P1-101")
        .endsWith(", … (+292)");
    assertThat(summary(ranges).notInspected()).isEqualTo(300);
    Object[][] german =
        ranges
            .calculate()
            .matrix(
                new Answer(List.of("issues.where", "issues.reasons"), 400),
                Messages.in("de"),
                Locale.GERMAN);
    assertThat(german[1][0].toString()).startsWith("Akkus: P1-100");
    assertThat(german[1][1].toString()).startsWith("Der Akku ist nicht geprüft");
  }

  @ParameterizedTest
  @CsvSource({"contacts", "label unreadable"})
  void worn_parts_go_to_service(String condition) {
    assertWithheld(sound().set("batteries", 1, "condition", condition), Status.SERVICE);
  }

  @Test
  void imbalance_goes_to_service_and_low_health_to_retirement() {
    assertWithheld(sound().set("tests", 1, "cell3", 4.05), Status.SERVICE);
    assertWithheld(sound().set("tests", 1, "measured", 78), Status.RETIRE);
    // 0.80 and 0.85 of 98 Wh are 78.4 and 83.3 Wh
    assertThat(battery(sound().set("tests", 1, "measured", 78.5), 1).status())
        .isEqualTo(Status.WATCH);
    assertThat(battery(sound().set("tests", 1, "measured", 83.4), 1).status())
        .isEqualTo(Status.KEEP);
    assertThat(battery(sound().set("tests", 1, "measured", 78.5), 1).fit()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "date,46200",
    "temperature,4",
    "temperature,40",
    "rested,0.5",
    "load,60",
    "measured,120",
    "date,''",
    "measured,''",
    "load,''",
    "temperature,''",
    "rested,''"
  })
  void without_a_valid_test_the_rule_of_the_house_decides(String key, String cell) {
    Ranges ranges = sound();
    ranges.set("tests", 1, key, cell.isEmpty() ? "" : (Object) Double.valueOf(cell));
    RegisterResults.BatteryResult held = battery(ranges, 1);
    assertThat(held.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(held.status()).isEqualTo(Status.NOT_TESTED);
    assertThat(held.fit()).isFalse();
    assertThat(slip(ranges).mayGoOut()).isFalse();
    ranges.set("project", 1, "untested", "goes out");
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(slip(ranges).mayGoOut()).isTrue();
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.NOT_TESTED);
    assertThat(paper(ranges).tested()).isNull();
    assertThat(paper(ranges).health()).isNull();
    assertThat(paper(ranges).state()).isEqualTo(Status.NOT_TESTED);
    ranges.set("project", 1, "untested", "sometimes");
    assertThat(slip(ranges).mayGoOut()).isFalse();
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
  }

  @Test
  void a_test_is_valid_on_its_last_day() {
    // 3 Nov 2026 and 180 days are 2 May 2027
    Ranges ranges = sound().set("project", 1, "asOf", day("2027-05-02"));
    ranges.set("batteries", 1, "inspected", day("2027-05-01"));
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.KEEP);
    ranges.set("project", 1, "asOf", day("2027-05-03"));
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.NOT_TESTED);
  }

  @Test
  void temperatures_in_fahrenheit_are_the_same_register() {
    Ranges us = sound().set("project", 1, "temperatureUnit", "°F");
    assertThat(battery(us, 1).status()).isEqualTo(Status.NOT_TESTED);
    us.set("tests", 1, "temperature", 68);
    assertThat(battery(us, 1)).isEqualTo(battery(sound(), 1));
  }

  @Test
  void a_decision_may_be_stricter() {
    assertThat(battery(sound().set("batteries", 1, "decided", "watch"), 1).status())
        .isEqualTo(Status.WATCH);
    for (String decided : List.of("service", "quarantine", "retire")) {
      Ranges ranges = sound().set("batteries", 1, "decided", decided);
      assertThat(battery(ranges, 1).status().word()).isEqualTo(decided);
      assertThat(slip(ranges).mayGoOut()).isFalse();
    }
    assertThat(slip(sound().set("batteries", 1, "decided", "perhaps")).mayGoOut()).isFalse();
  }

  @Test
  void a_retired_battery_never_returns() {
    Ranges retired = sound().set("batteries", 1, "retired", day("2026-12-01"), "decided", "keep");
    assertThat(battery(retired, 1).status()).isEqualTo(Status.RETIRE);
    assertThat(battery(retired, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(slip(retired).mayGoOut()).isFalse();
    assertThat(
            slip(sound().set("batteries", 1, "retired", "last year", "decided", "keep")).mayGoOut())
        .isFalse();
  }

  @Test
  void an_unfit_battery_that_is_out_is_called_back() {
    Ranges out = sound().set("batteries", 1, "condition", "recalled", "outTo", "music video");
    assertThat(battery(out, 1).action()).isEqualTo(Action.CALL_BACK);
    assertThat(out.calculate().rows(RegisterResults.ACTIONS).get(0).action())
        .isEqualTo(Action.CALL_BACK);
    out.set("batteries", 1, "condition", "fine", "cycles", "many");
    assertThat(battery(out, 1).action()).isEqualTo(Action.CORRECT);
  }

  @ParameterizedTest
  @ValueSource(strings = {"serial", "type", "energy", "cycles", "place", "backBy", "decided"})
  void an_unreadable_cell_hurts_only_its_row(String key) {
    Ranges ranges = add(sound(), "P1-02", 92, 55).set("batteries", 1, key, "#");
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(battery(ranges, 1).fit()).isFalse();
    assertThat(battery(ranges, 2).verdict()).isEqualTo(Verdict.OK);
    assertThat(summary(ranges).fit()).isEqualTo(1);
    assertThat(summary(ranges).withheld()).isEqualTo(1);
  }

  @Test
  void an_unreadable_test_stops_its_battery_only() {
    Ranges ranges = add(sound(), "P1-02", 92, 55).row("tests", "serial", "P1-01", "cell1", "4,15");
    assertThat(battery(ranges, 1).fit()).isFalse();
    assertThat(battery(ranges, 2).fit()).isTrue();
  }

  @Test
  void an_unreadable_setting_stops_every_battery() {
    for (String key : List.of("retireBelow", "validDays", "asOf", "untested", "temperatureUnit")) {
      assertThat(slip(sound().set("project", 1, key, "#")).mayGoOut()).as(key).isFalse();
    }
    assertThat(slip(sound().set("project", 1, "asOf", "")).mayGoOut()).isFalse();
  }

  @Test
  void a_type_that_is_not_clear_stops_its_batteries() {
    assertThat(slip(sound().set("types", 1, "chemistry", "")).mayGoOut()).isFalse();
    assertThat(slip(sound().set("batteries", 1, "type", "P7")).mayGoOut()).isFalse();
    assertThat(slip(sound().row("types", "type", "p1", "chemistry", "LFP")).mayGoOut()).isFalse();
    assertThat(slip(sound().row("limits", "chemistry", "Li-ion", "minVolts", "#")).mayGoOut())
        .isFalse();
    assertThat(slip(sound().row("limits", "chemistry", "LFP", "minVolts", "#")).mayGoOut())
        .isTrue();
  }

  @Test
  void limits_of_the_house_may_be_stricter_only() {
    Ranges strict = sound().row("limits", "chemistry", "Li-ion", "maxVolts", 4.1);
    assertWithheld(strict, Status.QUARANTINE);
    Ranges mild = sound().row("limits", "chemistry", "Li-ion", "maxVolts", 5);
    mild.set("tests", 1, "cell1", 4.4);
    assertWithheld(mild, Status.QUARANTINE);
    assertThat(keys(mild.calculate().rows(RegisterResults.LIMITS).get(0).reasons()))
        .containsExactly(RegisterFinding.LIMIT_MILD);
  }

  @Test
  void the_issue_list_needs_a_serial_that_is_there() {
    Ranges other = sound().set("checkout", 1, "serial", "P1-99");
    assertThat(slip(other).mayGoOut()).isFalse();
    assertThat(slip(other).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(slip(other).reasons())).containsExactly(RegisterFinding.SLIP_SERIAL);
    List<IssueRow> issues = other.calculate().rows(RegisterResults.ISSUES);
    assertThat(issues).anyMatch(i -> i.where().toString().contains("P1-99"));
    assertThat(sound().set("checkout", 1, "serial", "").calculate().rows(RegisterResults.SLIP))
        .isEmpty();
    assertThat(slip(sound().set("checkout", 1, "serial", "#")).mayGoOut()).isFalse();
  }

  private static Ranges checkout(Ranges ranges, String... serials) {
    ranges.rows("checkout").clear();
    for (String serial : serials) {
      ranges.row("checkout", "serial", serial);
    }
    return ranges;
  }

  /** One that may go out, one held back, one that is not there, one typed twice. */
  @Test
  void one_issue_list_takes_all_serials_of_a_job() {
    Ranges ranges = add(add(add(sound(), "P1-10", 92, 55), "P1-9", 92, 55), "P1-02", 92, 55);
    ranges.set("batteries", 4, "condition", "dropped");
    ranges.set("project", 1, "job", "documentary", "jobBack", day("2027-02-20"));
    PlanResult result =
        checkout(ranges, "P1-77", "P1-02", "P1-10", "P1-9", "p1-10", "P1-01").calculate();
    List<RegisterResults.Slip> list = result.rows(RegisterResults.SLIP);
    assertThat(list)
        .extracting(RegisterResults.Slip::serial)
        .containsExactly("P1-01", "P1-9", "P1-10");
    RegisterResults.Handover head = result.rows(RegisterResults.HANDOVER).get(0);
    assertThat(head.job()).isEqualTo("documentary");
    assertThat(head.backBy()).isEqualTo("2027-02-20");
    assertThat(head.out()).isEqualTo(3);
    assertThat(head.held()).isEqualTo(2);
    List<RegisterResults.CheckoutResult> rows = result.rows(RegisterResults.CHECKOUT);
    assertThat(rows)
        .extracting(RegisterResults.CheckoutResult::mayGoOut)
        .startsWith(false, false, true, true, true, true);
    assertThat(keys(rows.get(2).reasons())).containsExactly(RegisterFinding.SLIP_TWICE);
    assertThat(keys(rows.get(1).reasons())).contains(RegisterFinding.DAMAGED);
    assertThat(rows.subList(0, 2))
        .extracting(RegisterResults.CheckoutResult::verdict)
        .containsOnly(Verdict.STOP);
  }

  /** The list is printed again once Out to is filled in. */
  @Test
  void what_is_out_to_the_job_stays_on_its_list() {
    Ranges out = sound().set("batteries", 1, "outTo", "documentary");
    assertThat(slip(out.set("project", 1, "job", "Documentary ")).mayGoOut()).isTrue();
    assertThat(slip(out.set("project", 1, "job", "music video")).mayGoOut()).isFalse();
    assertThat(slip(out.set("project", 1, "job", "#")).mayGoOut()).isFalse();
    Ranges damaged = sound().set("batteries", 1, "outTo", "A", "condition", "wet");
    assertThat(slip(damaged.set("project", 1, "job", "A")).mayGoOut()).isFalse();
  }

  /** 10 February 2027 is the day; 90 days before is 12 November 2026: common practice. */
  @ParameterizedTest
  @CsvSource({
    "inspected,''",
    "inspectedBy,''",
    "inspected,2019-05-01",
    "inspected,2026-11-11",
    "inspected,2027-02-11",
    "returned,2027-01-16",
    "returned,2027-02-11"
  })
  void fine_needs_a_recent_inspection_after_the_last_return(String key, String cell) {
    Object typed = cell.startsWith("2") ? (Object) day(cell) : cell;
    Ranges ranges = sound().set("batteries", 1, key, typed);
    assertWithheld(ranges, Status.NOT_INSPECTED);
    assertThat(battery(ranges, 1).action()).isEqualTo(Action.INSPECT);
    assertThat(battery(ranges.set("batteries", 1, "decided", "keep"), 1).fit()).isFalse();
  }

  @Test
  void an_inspection_counts_on_its_last_day_and_on_the_day_of_the_return() {
    Ranges last = sound().set("batteries", 1, "inspected", day("2026-11-12"));
    assertThat(battery(last, 1).fit()).isTrue();
    assertThat(battery(last.set("project", 1, "inspectionDays", 89), 1).fit()).isFalse();
    Ranges returned = sound().set("batteries", 1, "returned", day("2027-01-15"));
    assertThat(battery(returned, 1).fit()).isTrue();
  }

  /** Whoever reported it neither inspects nor closes it: common practice. */
  @ParameterizedTest
  @CsvSource({
    "technician 2,technician 02",
    "technician 2,technician",
    "technician,technician 2",
    "technician no. 2,technician 2"
  })
  void a_reporter_under_another_spelling_closes_nothing(String reporter, String closer) {
    Ranges ranges = incidents().set("incidents", 1, "reportedBy", reporter, "closedBy", closer);
    assertThat(battery(ranges, 1).fit()).isFalse();
    Ranges inspected = incidents().set("incidents", 1, "reportedBy", reporter);
    inspected.set("incidents", 1, "closedBy", "technician 7");
    assertThat(battery(inspected.set("batteries", 1, "inspectedBy", closer), 1).fit()).isFalse();
  }

  @Test
  void another_numbered_technician_closes_it() {
    Ranges ranges = incidents().set("incidents", 1, "reportedBy", "technician 2");
    assertThat(battery(ranges.set("incidents", 1, "closedBy", "technician 3"), 1).fit()).isTrue();
    assertThat(battery(ranges.set("incidents", 1, "closedBy", "technician 12"), 1).fit()).isTrue();
  }

  /** Its test is of 3 November 2026. */
  @Test
  void an_incident_is_not_closed_before_the_test_it_rests_on() {
    Ranges ranges = incidents().set("incidents", 1, "closed", day("2026-11-02"));
    assertThat(battery(ranges, 1).fit()).isFalse();
    assertThat(battery(ranges.set("incidents", 1, "closed", day("2026-11-03")), 1).fit()).isTrue();
  }

  /** Rested lithium-ion cells have about 4.2 V full and 3.7 V half full: from memory. */
  @ParameterizedTest
  @CsvSource({"2.6,1", "4.15,0.4", "3.5,0.95"})
  void a_cell_that_contradicts_its_charge_holds_the_battery(double volts, double charge) {
    Ranges ranges = sound().set("tests", 1, "charge", charge);
    for (int cell = 1; cell <= 4; cell++) {
      ranges.set("tests", 1, "cell" + cell, volts);
    }
    assertThat(battery(ranges, 1).fit()).isFalse();
    assertThat(keys(battery(ranges, 1).reasons())).contains(RegisterFinding.CELLS_CHARGE);
  }

  @Test
  void a_test_with_fewer_cells_than_its_type_is_a_check() {
    Ranges two = add(sound(), "P1-02", 92, 55);
    two.set("tests", 2, "cell4", "");
    assertThat(keys(battery(two, 1).reasons())).isEmpty();
    assertThat(keys(battery(two, 2).reasons())).containsExactly(RegisterFinding.CELLS_MISSING);
    assertThat(battery(two, 2).action()).isEqualTo(Action.TEST);
  }

  /** Half of 98 Wh an hour are 49 W; nobody sets a load to the watt. */
  @Test
  void a_load_may_be_five_per_cent_high() {
    assertThat(battery(sound().set("tests", 1, "load", 50), 1).fit()).isTrue();
    assertThat(battery(sound().set("tests", 1, "load", 52), 1).fit()).isFalse();
  }

  @Test
  void what_is_overdue_with_a_job_is_not_on_its_next_list() {
    Ranges out = sound().set("batteries", 1, "outTo", "documentary", "backBy", day("2027-02-09"));
    assertThat(slip(out.set("project", 1, "job", "documentary")).mayGoOut()).isFalse();
    assertThat(slip(out.set("batteries", 1, "backBy", day("2027-02-10"))).mayGoOut()).isTrue();
    assertThat(keys(slip(out.set("project", 1, "jobBack", day("2027-02-09"))).reasons())).isEmpty();
    assertThat(keys(out.calculate().rows(RegisterResults.HANDOVER).get(0).reasons()))
        .containsExactly(RegisterFinding.SLIP_BACK_PAST);
  }

  @Test
  void an_incident_closed_as_it_should_be_releases() {
    assertThat(battery(incidents(), 1).verdict()).isEqualTo(Verdict.OK);
    assertThat(incidents().calculate().rows(RegisterResults.INCIDENTS).get(0).open()).isZero();
  }

  @ParameterizedTest
  @CsvSource({
    "closed,",
    "closedBy,",
    "closedBy,runner",
    "closedBy,camera assistant",
    "reason,",
    "reportedBy,",
    "reportedBy,technician",
    "closed,2027-03-01",
    "closed,2026-10-01",
    "date,2026-11-03",
    "date,2026-11-02",
    "date,",
    "happened,swollen",
    "happened,recalled2",
    "happened,fine",
    "happened,",
    "closed,#",
    "lastSerial,#"
  })
  void an_incident_stays_open_until_all_is_there(String key, String cell) {
    Ranges ranges = incidents().set("incidents", 1, key, cell == null ? "" : cell);
    assertWithheldQuarantine(ranges);
  }

  private static void assertWithheldQuarantine(Ranges ranges) {
    assertThat(battery(ranges, 1).fit()).isFalse();
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.QUARANTINE);
    assertThat(slip(ranges).mayGoOut()).isFalse();
  }

  @Test
  void closing_needs_a_later_inspection_and_a_later_compared_test() {
    assertWithheldQuarantine(incidents().set("batteries", 1, "inspected", ""));
    assertWithheldQuarantine(incidents().set("batteries", 1, "inspectedBy", ""));
    assertWithheldQuarantine(incidents().set("batteries", 1, "inspected", day("2026-10-01")));
    assertWithheldQuarantine(incidents().set("tests", 1, "date", day("2026-09-30")));
    assertWithheldQuarantine(incidents().set("tests", 1, "temperature", 4));
  }

  @Test
  void a_recall_is_closed_only_with_the_makers_reference() {
    assertThat(battery(incidents(), 2).status()).isEqualTo(Status.QUARANTINE);
    Ranges answered = incidents().set("incidents", 2, "reference", "letter of 3 Nov 2026");
    assertThat(battery(answered, 2).status()).isEqualTo(Status.KEEP);
  }

  @Test
  void a_recall_by_range_takes_serials_of_the_same_form() {
    // P1-010 has a digit more than P1-02 to P1-05, so nobody but the maker can say
    assertThat(keys(battery(incidents(), 3).reasons())).contains(RegisterFinding.RECALL_BY_HAND);
    assertThat(battery(incidents(), 3).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(battery(incidents(), 3).fit()).isFalse();
    Ranges same = incidents().set("batteries", 3, "serial", "P1-10");
    same.set("tests", 3, "serial", "P1-10");
    assertThat(battery(same, 3).fit()).isTrue();
    assertThat(battery(same.set("incidents", 2, "lastSerial", "P1-11"), 3).status())
        .isEqualTo(Status.QUARANTINE);
    Ranges letters = incidents().set("batteries", 3, "serial", "P1-0A");
    assertThat(keys(battery(letters, 3).reasons())).contains(RegisterFinding.RECALL_BY_HAND);
    assertThat(battery(letters, 3).fit()).isFalse();
    Ranges turned = incidents().set("incidents", 2, "serial", "P1-05", "lastSerial", "P1-02");
    assertThat(battery(turned, 2).status()).isEqualTo(Status.QUARANTINE);
    Ranges digits = incidents().set("incidents", 2, "lastSerial", "P1-100");
    assertThat(keys(digits.calculate().rows(RegisterResults.INCIDENTS).get(1).reasons()))
        .contains(RegisterFinding.INCIDENT_RANGE);
    assertThat(battery(digits, 2).fit()).isFalse();
    assertThat(battery(digits, 3).fit()).isFalse();
  }

  @Test
  void a_recall_by_type_takes_all_of_it() {
    Ranges recall = stock().set("checkout", 1, "serial", "P1-04");
    recall.row("incidents", "type", "p1", "happened", "recalled", "date", day("2027-01-01"));
    assertThat(summary(recall).quarantine()).isEqualTo(10);
    assertThat(summary(recall).fit()).isZero();
    assertThat(slip(recall).mayGoOut()).isFalse();
  }

  @Test
  void a_cell_outside_is_released_by_a_closed_incident() {
    Ranges ranges = incidents();
    ranges.row("tests", "serial", "P1-01", "date", day("2026-09-20"), "cell1", 2.4, "cell2", 4.1);
    assertThat(battery(ranges, 1).fit()).isTrue();
    ranges.set("tests", 4, "date", day("2026-10-02"));
    assertWithheldQuarantine(ranges);
  }

  /** One that can burn is not driven home: common practice of rental houses. */
  @ParameterizedTest
  @ValueSource(strings = {"swollen", "leaking", "hot", "burnt", "wet", "dropped", "scratched?"})
  void a_dangerous_battery_that_is_out_is_not_called_back(String condition) {
    Ranges out = sound().set("batteries", 1, "condition", condition, "outTo", "documentary");
    assertThat(battery(out, 1).action()).isEqualTo(Action.WARN);
    assertThat(keys(battery(out, 1).reasons()))
        .startsWith(RegisterFinding.OUT_DANGER)
        .doesNotContain(RegisterFinding.OUT_UNFIT);
    assertThat(sentences(battery(out, 1)))
        .contains("do not move it")
        .doesNotContain("Call it back");
    Ranges recalled = out.set("batteries", 1, "condition", "recalled");
    assertThat(battery(recalled, 1).action()).isEqualTo(Action.CALL_BACK);
    recalled.row("tests", "serial", "P1-01", "cell1", 0.0);
    assertThat(battery(recalled, 1).action()).isEqualTo(Action.WARN);
  }

  private static String sentences(RegisterResults.BatteryResult battery) {
    return Messages.in("en").sentences(battery.reasons(), Locale.UK);
  }

  /** A later test of a battery, bad in one cell. */
  private static Ranges later(double measured, String key, Object cell) {
    Ranges ranges = add(sound(), "P1-02", 92, 55);
    ranges.row("tests", "serial", "P1-01", "date", day("2027-02-01"), "measured", measured);
    ranges.set("tests", 3, "load", 45, "temperature", 20, "rested", 2);
    return ranges.set("tests", 3, key, cell);
  }

  @ParameterizedTest
  @CsvSource({"temperature,''", "temperature,5", "rested,0.1", "load,90"})
  void a_newer_test_that_does_not_count_is_not_passed_over(String key, String cell) {
    Object typed = cell.isEmpty() ? "" : (Object) Double.valueOf(cell);
    // 60 of 98 Wh are 61 %
    RegisterResults.BatteryResult low = battery(later(60, key, typed), 1);
    assertThat(low.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(low.fit()).isFalse();
    assertThat(low.action()).isEqualTo(Action.TEST);
    assertThat(keys(low.reasons())).containsExactly(RegisterFinding.NEWER_TEST_LOW);
    assertThat(slip(later(60, key, typed)).mayGoOut()).isFalse();
    assertThat(slip(later(60, key, typed).set("project", 1, "untested", "goes out")).mayGoOut())
        .isFalse();
    RegisterResults.BatteryResult good = battery(later(90, key, typed), 1);
    assertThat(good.verdict()).isEqualTo(Verdict.CHECK);
    assertThat(good.fit()).isTrue();
    assertThat(keys(good.reasons())).containsExactly(RegisterFinding.NEWER_TEST);
    assertThat(slip(later(90, key, typed)).verdict()).isEqualTo(Verdict.CHECK);
  }

  @Test
  void a_test_without_a_date_may_be_the_newest() {
    assertThat(keys(battery(later(60, "date", ""), 1).reasons()))
        .containsExactly(RegisterFinding.UNDATED_TEST_LOW);
    assertThat(slip(later(60, "date", "")).mayGoOut()).isFalse();
    assertThat(slip(later(90, "date", "")).verdict()).isEqualTo(Verdict.CHECK);
  }

  @Test
  void it_says_why_the_last_test_was_refused() {
    assertThat(sentences(battery(sound().set("tests", 1, "temperature", 4), 1)))
        .contains("at 4 °C is not compared");
    assertThat(sentences(battery(sound().set("batteries", 1, "energy", ""), 1)))
        .contains("Rated energy of P1-01 is blank in Batteries");
  }

  @Test
  void a_battery_that_is_out_is_not_handed_out_again() {
    Ranges out = sound().set("batteries", 1, "outTo", "documentary");
    assertThat(battery(out, 1).fit()).isTrue();
    assertThat(slip(out).mayGoOut()).isFalse();
    assertThat(slip(out).verdict()).isEqualTo(Verdict.STOP);
    assertThat(keys(slip(out).reasons())).containsExactly(RegisterFinding.SLIP_OUT);
    assertThat(summary(out).fit()).isEqualTo(1);
    assertThat(summary(out).fitIn()).isZero();
    assertThat(summary(sound()).fitIn()).isEqualTo(1);
    assertThat(out.calculate().rows(RegisterResults.TYPES).get(0).fitIn()).isZero();
  }

  @Test
  void after_a_danger_nobody_is_told_to_balance_or_to_test() {
    Ranges deep = sound().set("tests", 1, "cell1", 0.0);
    assertThat(keys(battery(deep, 1).reasons())).containsExactly(RegisterFinding.CELL_OUTSIDE);
    assertThat(sentences(battery(deep, 1))).doesNotContain("Balance", "est it");
    Ranges contacts = sound().set("tests", 1, "cell1", 0.0);
    contacts.set("batteries", 1, "condition", "contacts");
    assertThat(sentences(battery(contacts, 1))).doesNotContain("service");
    Ranges worn = sound().set("tests", 1, "measured", 70, "cell1", 3.9);
    assertThat(keys(battery(worn, 1).reasons())).containsExactly(RegisterFinding.BELOW_RETIRE);
  }

  @Test
  void no_battery_stands_under_the_words_of_another() {
    Ranges ranges = add(add(sound(), "P1-02", 70, 55), "P1-03", 71, 55);
    ranges.row("incidents", "serial", "P1-01", "happened", "dropped", "date", day("2026-12-01"));
    ranges.set("batteries", 2, "condition", "wet");
    List<IssueRow> issues = ranges.calculate().rows(RegisterResults.ISSUES);
    for (IssueRow issue : issues) {
      String where = issue.where().toString();
      if (where.startsWith("Batteries")) {
        int row = Integer.parseInt(where.substring(where.length() - 1));
        assertThat(where).isEqualTo("Batteries: P1-0" + row);
        assertThat(battery(ranges, row).reasons()).containsAll(issue.reasons());
      }
    }
    assertThat(issues).hasSizeGreaterThan(4);
  }

  @Test
  void more_issues_than_the_list_holds_are_counted_in_its_last_row() {
    Ranges ranges = sound();
    for (int i = 100; i < 400; i++) {
      add(ranges, "P1-" + i, 31 + i / 10.0, 55);
    }
    List<IssueRow> issues = ranges.calculate().rows(RegisterResults.ISSUES);
    assertThat(issues).hasSize(RegisterResults.ISSUES.rows());
    assertThat(issues.get(issues.size() - 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(issues.stream().mapToInt(IssueRow::rows).sum()).isEqualTo(300);
  }

  /** 6.6 Ah and 0.095 kWh of a battery of 98 Wh: another unit is no low health. */
  @ParameterizedTest
  @ValueSource(doubles = {6.6, 0.095, 29.3})
  void a_figure_in_another_unit_is_not_compared(double measured) {
    Ranges ranges = sound().set("tests", 1, "measured", measured);
    PlanResult result = ranges.calculate();
    assertThat(keys(result.rows(RegisterResults.TESTS).get(0).reasons()))
        .containsExactly(RegisterFinding.TEST_UNDER_RATING);
    assertThat(result.rows(RegisterResults.TESTS).get(0).compared()).isFalse();
    assertThat(result.rows(RegisterResults.TYPES).get(0).meanHealth()).isNull();
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.NOT_TESTED);
    assertThat(slip(ranges.set("project", 1, "untested", "goes out")).mayGoOut()).isFalse();
  }

  @Test
  void a_temperature_in_the_other_unit_is_asked_for() {
    assertThat(sentences(battery(sound().set("tests", 1, "temperature", 70), 1)))
        .contains("at 70 °C", "Is the figure in °F?");
    Ranges us = sound().set("project", 1, "temperatureUnit", "°F");
    assertThat(sentences(battery(us, 1))).contains("at 20 °F", "Is the figure in °C?");
    us.set("tests", 1, "temperature", 40);
    assertThat(sentences(battery(us, 1))).contains("at 40 °F", "between 59 and 86 °F");
  }

  @Test
  void what_is_overdue_or_watched_is_on_the_list_of_actions() {
    Ranges overdue = sound().set("batteries", 1, "outTo", "music video");
    overdue.set("batteries", 1, "backBy", day("2027-02-09"));
    assertThat(battery(overdue, 1).action()).isEqualTo(Action.ASK);
    assertThat(overdue.calculate().rows(RegisterResults.ACTIONS)).hasSize(1);
    assertThat(battery(sound().set("tests", 1, "measured", 80), 1).action())
        .isEqualTo(Action.WATCH);
    assertThat(battery(sound(), 1).action()).isNull();
  }

  @Test
  void a_retired_battery_leaves_counts_and_lists() {
    Ranges ranges = add(sound(), "P1-02", 70, 55);
    ranges.set("batteries", 2, "condition", "swollen", "retired", day("2027-02-01"));
    PlanResult result = ranges.calculate();
    RegisterResults.BatteryResult retired = battery(ranges, 2);
    assertThat(keys(retired.reasons())).containsExactly(RegisterFinding.RETIRED);
    assertThat(retired.fit()).isFalse();
    assertThat(retired.action()).isNull();
    assertThat(summary(ranges).batteries()).isEqualTo(1);
    assertThat(summary(ranges).retire() + summary(ranges).quarantine()).isZero();
    assertThat(summary(ranges).meanHealth()).isCloseTo(93.0 / 98, within(1e-12));
    assertThat(result.rows(RegisterResults.TYPES).get(0).batteries()).isEqualTo(1);
    assertThat(result.rows(RegisterResults.STOCKTAKE)).hasSize(1);
    assertThat(result.rows(RegisterResults.ISSUES)).isEmpty();
    ranges.set("batteries", 2, "outTo", "documentary");
    assertThat(battery(ranges, 2).action()).isEqualTo(Action.WARN);
    assertThat(ranges.calculate().rows(RegisterResults.STOCKTAKE)).hasSize(2);
  }

  @Test
  void days_to_come_are_questioned() {
    Ranges retired = sound().set("batteries", 1, "retired", day("2027-12-01"));
    assertThat(keys(battery(retired, 1).reasons())).containsExactly(RegisterFinding.RETIRED_LATER);
    assertThat(slip(retired).mayGoOut()).isFalse();
    assertThat(summary(retired).batteries()).isEqualTo(1);
    Ranges incident = sound();
    incident.row("incidents", "serial", "P1-01", "happened", "wet", "date", day("2027-11-12"));
    assertThat(keys(incident.calculate().rows(RegisterResults.INCIDENTS).get(0).reasons()))
        .contains(RegisterFinding.INCIDENT_LATER);
    assertThat(slip(incident).mayGoOut()).isFalse();
  }

  /** The source is six NMC cells: see ageing.csv. */
  @Test
  void cycles_left_only_for_the_chemistry_of_the_source() {
    Ranges ranges = sound().set("batteries", 1, "cycles", 200);
    ranges.set("tests", 1, "cell1", "", "cell2", "", "cell3", "", "cell4", "");
    assertThat(battery(ranges, 1).cyclesLeft()).isPositive();
    for (String other : List.of("LFP", "lead", "NiMH")) {
      assertThat(battery(ranges.set("types", 1, "chemistry", other), 1).cyclesLeft()).isNull();
    }
  }

  @Test
  void fewer_than_required_is_a_check_of_the_type_and_no_issue() {
    PlanResult result = sound().calculate();
    assertThat(keys(result.rows(RegisterResults.TYPES).get(0).reasons()))
        .containsExactly(RegisterFinding.TYPE_SHORT);
    assertThat(result.rows(RegisterResults.TYPES).get(0).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(result.rows(RegisterResults.ISSUES)).isEmpty();
    assertThat(sound().set("types", 1, "required", 1).calculate().rows(RegisterResults.TYPES))
        .allMatch(t -> t == null || t.verdict() == Verdict.OK);
  }

  @Test
  void a_closing_that_does_not_count_is_said_at_the_battery() {
    Ranges ranges = incidents().set("incidents", 1, "closedBy", "runner");
    assertThat(sentences(battery(ranges, 1)))
        .contains("stays open though Closed on is filled in", "Closed by is runner")
        .contains("Enter technician");
  }

  @Test
  void lists_count_serials_by_their_number() {
    Ranges ranges = add(add(add(sound(), "P1-10", 92, 55), "P1-9", 92, 55), "P1-2", 92, 55);
    assertThat(ranges.calculate().rows(RegisterResults.STOCKTAKE))
        .extracting(RegisterResults.StocktakeRow::serial)
        .containsExactly("P1-01", "P1-2", "P1-9", "P1-10");
  }

  @Test
  void a_share_out_of_range_is_told_in_percent() {
    RegisterResults.TestResult test =
        sound().set("tests", 1, "charge", 50).calculate().rows(RegisterResults.TESTS).get(0);
    assertThat(Messages.in("en").sentences(test.reasons(), Locale.UK)).contains("from 0 to 100 %");
  }
}
