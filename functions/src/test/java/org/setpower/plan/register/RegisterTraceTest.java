package org.setpower.plan.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.register.RegisterSamples.add;
import static org.setpower.plan.register.RegisterSamples.day;
import static org.setpower.plan.register.RegisterSamples.incidents;
import static org.setpower.plan.register.RegisterSamples.sound;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.IssueRow;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.CommonFinding;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.FindingKey;
import org.setpower.plan.finding.Severity;
import org.setpower.plan.finding.Verdict;

/**
 * What was once wrong with a battery stays known, and each fault is said once. Expected verdicts
 * are common practice of rental houses: damage is entered in a numbered log before the battery is
 * looked at again.
 */
class RegisterTraceTest {
  private static RegisterResults.BatteryResult battery(Ranges ranges, int row) {
    return ranges.calculate().rows(RegisterResults.BATTERIES).get(row - 1);
  }

  private static List<FindingKey> keys(List<Finding> findings) {
    return findings.stream().map(Finding::key).toList();
  }

  private static List<FindingKey> issues(Ranges ranges) {
    return ranges.calculate().rows(RegisterResults.ISSUES).stream()
        .map(i -> i.reasons().get(0).key())
        .toList();
  }

  private static List<Finding> incident(Ranges ranges, int row) {
    return ranges.calculate().rows(RegisterResults.INCIDENTS).get(row - 1).reasons();
  }

  private static Ranges wet(Ranges ranges, Object number, String serial) {
    return ranges.row(
        "incidents", "number", number, "serial", serial, "happened", "wet", "date", 46_300.0);
  }

  @ParameterizedTest
  @CsvSource({"swollen", "dropped", "contacts", "recalled", "lost", "cracked", "not charging"})
  void a_condition_that_is_not_fine_needs_an_incident_first(String condition) {
    Ranges ranges = sound().set("batteries", 1, "condition", condition);
    Finding enter =
        battery(ranges, 1).reasons().stream()
            .filter(f -> f.key() == RegisterFinding.ENTER_INCIDENT)
            .findFirst()
            .orElseThrow();
    assertThat(enter.severity()).isEqualTo(Severity.STOP);
    assertThat(enter.arguments()).containsExactly(condition, 1.0);
    assertThat(issues(ranges)).contains(RegisterFinding.ENTER_INCIDENT);
    ranges.row("incidents", "number", 1, "serial", "P1-01", "happened", condition);
    ranges.set("incidents", 1, "date", day("2027-02-01"), "reportedBy", "rental desk");
    assertThat(keys(battery(ranges, 1).reasons())).doesNotContain(RegisterFinding.ENTER_INCIDENT);
    // overtyped and inspected, the battery stays in
    ranges.set("batteries", 1, "condition", "fine", "inspected", day("2027-02-10"));
    assertThat(battery(ranges, 1).fit()).isFalse();
  }

  @Test
  void a_closed_incident_is_no_trace_of_what_happened_after_it() {
    Ranges again = incidents().set("batteries", 1, "condition", "dropped");
    assertThat(keys(battery(again, 1).reasons()))
        .contains(RegisterFinding.CONDITION_CLOSED)
        .doesNotContain(RegisterFinding.ENTER_INCIDENT);
    assertThat(battery(again, 1).fit()).isFalse();
  }

  @Test
  void a_cleared_row_of_incidents_leaves_a_gap_in_its_numbers() {
    Ranges ranges = wet(wet(wet(sound(), 1, "P1-01"), 2, "P1-01"), 5, "P1-01");
    assertThat(incident(ranges, 3)).contains(Finding.of(RegisterFinding.INCIDENT_MISSING, "3, 4"));
    assertThat(incident(ranges, 2)).noneMatch(f -> f.key() == RegisterFinding.INCIDENT_MISSING);
    assertThat(ranges.calculate().rows(RegisterResults.SUMMARY).get(0).incidentsMissing())
        .isEqualTo(2);
    assertThat(issues(ranges)).contains(RegisterFinding.INCIDENT_MISSING);
    Ranges first = wet(sound(), 2, "P1-01");
    assertThat(incident(first, 1)).contains(Finding.of(RegisterFinding.INCIDENT_MISSING, "1"));
    Ranges whole = wet(wet(sound(), 2, "P1-01"), 1, "P1-01");
    assertThat(issues(whole)).doesNotContain(RegisterFinding.INCIDENT_MISSING);
    assertThat(whole.calculate().rows(RegisterResults.SUMMARY).get(0).incidentsMissing()).isZero();
  }

  @Test
  void an_incident_needs_a_number_of_its_own() {
    Ranges ranges = wet(wet(wet(sound(), 1, "P1-01"), "", "P1-01"), 1, "P1-01");
    wet(ranges, 1.5, "P1-01");
    Finding next = Finding.of(RegisterFinding.INCIDENT_NUMBER, 2.0);
    assertThat(incident(ranges, 2)).contains(next);
    assertThat(incident(ranges, 4)).contains(next);
    assertThat(incident(ranges, 3))
        .contains(Finding.of(RegisterFinding.INCIDENT_NUMBER_TWICE, 1.0, 2.0, 2.0));
    assertThat(next.severity()).isEqualTo(Severity.CHECK);
  }

  @Test
  void cells_that_nobody_measured_are_a_check() {
    Ranges ranges = add(sound(), "P1-02", 92, 55);
    assertThat(keys(battery(ranges, 2).reasons())).isEmpty();
    ranges.set("tests", 2, "cell1", "", "cell2", "", "cell3", "", "cell4", "");
    assertThat(keys(battery(ranges, 2).reasons())).containsExactly(RegisterFinding.CELLS_NONE);
    assertThat(battery(ranges, 2).action()).isEqualTo(Action.TEST);
    assertThat(battery(ranges, 2).fit()).isTrue();
    // measured within the days of a test, though not in the one that counts
    ranges.row("tests", "serial", "P1-02", "date", day("2026-10-20"), "resistance", 55);
    ranges.set("tests", 3, "cell1", 4.15, "cell2", 4.15, "cell3", 4.15, "cell4", 4.15);
    assertThat(keys(battery(ranges, 2).reasons())).isEmpty();
    ranges.set("tests", 3, "date", day("2026-01-20"));
    assertThat(keys(battery(ranges, 2).reasons())).containsExactly(RegisterFinding.CELLS_NONE);
  }

  @Test
  void a_row_without_a_reading_is_no_test() {
    Ranges ranges = sound();
    for (String key : List.of("measured", "resistance", "cell1", "cell2", "cell3", "cell4")) {
      ranges.set("tests", 1, key, "");
    }
    RegisterResults.TestResult test = ranges.calculate().rows(RegisterResults.TESTS).get(0);
    assertThat(keys(test.reasons())).containsExactly(RegisterFinding.TEST_EMPTY);
    assertThat(test.compared()).isFalse();
    assertThat(battery(ranges, 1).tested()).isNull();
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.NOT_TESTED);
    assertThat(battery(ranges, 1).fit()).isFalse();
    Ranges bare = sound();
    bare.rows("tests").clear();
    bare.row("tests", "serial", "P1-01", "date", day("2027-02-01"));
    assertThat(keys(bare.calculate().rows(RegisterResults.TESTS).get(0).reasons()))
        .containsExactly(RegisterFinding.TEST_EMPTY);
  }

  @Test
  void a_watched_battery_that_is_due_is_one_line() {
    Ranges ranges = sound().set("tests", 1, "measured", 82, "date", day("2026-03-01"));
    assertThat(battery(ranges, 1).reasons())
        .containsExactly(Finding.of(RegisterFinding.WATCH_UNTESTED_HELD, 82.0 / 98, 0.85, 180.0));
    assertThat(battery(ranges, 1).action()).isEqualTo(Action.TEST_AND_WATCH);
    assertThat(battery(ranges, 1).fit()).isFalse();
    ranges.set("project", 1, "untested", "goes out");
    assertThat(battery(ranges, 1).reasons())
        .containsExactly(Finding.of(RegisterFinding.WATCH_UNTESTED, 82.0 / 98, 0.85, 180.0));
    assertThat(battery(ranges, 1).fit()).isTrue();
    assertThat(issues(ranges)).containsOnlyOnce(RegisterFinding.WATCH_UNTESTED);
  }

  @Test
  void one_that_is_below_watch_and_its_type_is_one_line() {
    Ranges ranges = sound().set("tests", 1, "measured", 82);
    for (int i = 2; i <= 7; i++) {
      add(ranges, "P1-0" + i, 92 + i / 10.0, 55);
    }
    assertThat(battery(ranges, 1).reasons())
        .containsExactly(Finding.of(RegisterFinding.BELOW_TYPE_AND_WATCH, 82.0 / 98, 0.85));
    assertThat(battery(ranges, 1).action()).isEqualTo(Action.TEST_AND_WATCH);
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.WATCH);
  }

  @Test
  void a_decision_to_watch_stays_when_the_test_is_due() {
    Ranges ranges = sound().set("tests", 1, "date", day("2026-03-01"));
    ranges.set("batteries", 1, "decided", "watch");
    assertThat(battery(ranges, 1).reasons())
        .containsExactly(Finding.of(RegisterFinding.DECIDED_WATCH_UNTESTED_HELD, 180.0));
    assertThat(battery(ranges, 1).action()).isEqualTo(Action.TEST_AND_WATCH);
    ranges.set("project", 1, "untested", "goes out");
    assertThat(battery(ranges, 1).reasons())
        .containsExactly(Finding.of(RegisterFinding.DECIDED_WATCH_UNTESTED, 180.0));
  }

  @ParameterizedTest
  @CsvSource({
    "cracked,QUARANTINE",
    "cracked casing,QUARANTINE",
    "not charging,SERVICE",
    "will not charge,SERVICE",
    "lost,LOST"
  })
  void conditions_of_a_technician(String condition, Status status) {
    Ranges ranges = sound().set("batteries", 1, "condition", condition, "decided", "keep");
    RegisterResults.BatteryResult battery = battery(ranges, 1);
    assertThat(battery.status()).isEqualTo(status);
    assertThat(battery.verdict()).isEqualTo(Verdict.STOP);
    assertThat(battery.fit()).isFalse();
    assertThat(ranges.calculate().rows(RegisterResults.SLIP)).isEmpty();
  }

  @Test
  void a_lost_battery_leaves_counts_and_lists_and_is_found_again_only_by_closing() {
    Ranges lost = sound().set("batteries", 1, "condition", "lost", "outTo", "documentary");
    lost.row("incidents", "number", 1, "serial", "P1-01", "happened", "lost");
    lost.set("incidents", 1, "date", day("2027-02-01"), "reportedBy", "rental desk");
    RegisterResults.Summary summary = lost.calculate().rows(RegisterResults.SUMMARY).get(0);
    assertThat(summary.batteries()).isZero();
    assertThat(summary.withheld()).isZero();
    assertThat(summary.lost()).isEqualTo(1);
    RegisterResults.TypeResult type = lost.calculate().rows(RegisterResults.TYPES).get(0);
    assertThat(type.batteries()).isZero();
    assertThat(type.out()).isZero();
    assertThat(type.toBuy()).isEqualTo(2);
    assertThat(lost.calculate().rows(RegisterResults.STOCKTAKE)).isEmpty();
    assertThat(lost.calculate().rows(RegisterResults.ACTIONS)).isEmpty();
    assertThat(keys(battery(lost, 1).reasons())).containsExactly(RegisterFinding.LOST);
    lost.set("batteries", 1, "condition", "fine", "outTo", "", "inspected", day("2027-02-09"));
    assertThat(battery(lost, 1).status()).isEqualTo(Status.QUARANTINE);
  }

  @Test
  void what_a_mark_would_write_over_is_not_marked() {
    for (String condition : List.of("lost", "not charging", "cracked", "contacts")) {
      Ranges ranges = sound().set("batteries", 1, "condition", condition);
      Inspection marked = RegisterPlan.inspections(ranges.list()).batteries().get(0);
      assertThat(marked.isPossible(java.time.LocalDate.parse("2027-02-10")))
          .as(condition)
          .isFalse();
    }
  }

  @Test
  void a_serial_typed_twice_is_said_once() {
    Ranges twice = add(sound(), "P1-01", 93, 55);
    twice.set("batteries", 1, "inspected", "").set("batteries", 2, "inspectedBy", "");
    twice.set("batteries", 1, "un383", "no").set("batteries", 2, "un383", "no");
    twice.row("checkout", "serial", "P1-01");
    assertThat(twice.calculate().rows(RegisterResults.ACTIONS)).hasSize(1);
    assertThat(keys(twice.calculate().rows(RegisterResults.CHECKOUT).get(0).reasons()))
        .containsExactly(CommonFinding.DOUBLE_IDENTITY, RegisterFinding.SLIP_TWICE);
    assertThat(issues(twice))
        .containsExactlyInAnyOrder(CommonFinding.DOUBLE_IDENTITY, RegisterFinding.SLIP_TWICE);
    Ranges unknown = sound().set("checkout", 1, "serial", "X").row("checkout", "serial", "X");
    assertThat(issues(unknown)).contains(RegisterFinding.SLIP_SERIAL);
    assertThat(issues(unknown)).doesNotContain(RegisterFinding.SLIP_TWICE);
  }

  @Test
  void one_fault_is_one_line() {
    Ranges ranges = sound().set("batteries", 1, "condition", "swollen");
    ranges.row("incidents", "number", 1, "serial", "P1-01", "happened", "swollen");
    ranges.set("incidents", 1, "date", day("2027-02-01"), "reportedBy", "rental desk");
    assertThat(battery(ranges, 1).reasons())
        .containsExactly(Finding.of(RegisterFinding.RETIRE_ONLY, "swollen"));
    List<IssueRow> issues = ranges.calculate().rows(RegisterResults.ISSUES);
    assertThat(issues).hasSize(1);
    Ranges refused = sound().row("tests", "serial", "P1-01", "date", day("2027-02-01"));
    refused.set("tests", 2, "measured", 50, "load", 45, "temperature", 4, "rested", 2);
    assertThat(issues(refused))
        .containsOnlyOnce(RegisterFinding.NEWER_TEST_LOW)
        .doesNotContain(RegisterFinding.TEST_TEMPERATURE);
    Ranges cells = sound().row("tests", "serial", "P1-01", "cell1", 1.2);
    cells.row("tests", "serial", "P1-01", "cell1", 1.1);
    assertThat(keys(battery(cells, 1).reasons())).containsOnlyOnce(RegisterFinding.CELL_OUTSIDE);
    Ranges type = sound().set("types", 1, "chemistry", "");
    assertThat(issues(type))
        .contains(CommonFinding.BLANK_CELL)
        .doesNotContain(RegisterFinding.TYPE_CHEMISTRY);
  }

  @Test
  void each_cause_has_a_sentence_of_its_own() {
    Ranges day = sound().set("batteries", 1, "inspected", "");
    assertThat(keys(battery(day, 1).reasons())).containsExactly(RegisterFinding.INSPECTION_PART);
    day.set("batteries", 1, "inspectedBy", "");
    assertThat(keys(battery(day, 1).reasons())).containsExactly(RegisterFinding.INSPECTION_BLANK);

    Ranges type = sound().set("types", 1, "chemistry", "");
    assertThat(keys(battery(type, 1).reasons())).contains(RegisterFinding.TYPE_CHEMISTRY);
    Ranges two = sound().row("types", "type", "P1", "chemistry", "Li-ion");
    assertThat(keys(battery(two, 1).reasons())).contains(RegisterFinding.TYPE_TWICE);
    Ranges limits = sound().row("limits", "chemistry", "Li-ion", "minVolts", 4, "maxVolts", 3);
    assertThat(keys(battery(limits, 1).reasons())).contains(RegisterFinding.TYPE_LIMITS);

    Ranges rating = sound().set("batteries", 1, "energy", "");
    assertThat(keys(rating.calculate().rows(RegisterResults.TESTS).get(0).reasons()))
        .containsExactly(RegisterFinding.TEST_NO_RATING);
  }

  @ParameterizedTest
  @CsvSource({
    "closed,2026-09-30,CLOSING_BEFORE",
    "closed,2027-03-01,CLOSING_LATER",
    "reportedBy,,CLOSING_UNREPORTED",
    "reportedBy,technician,CLOSING_REPORTER",
    "reportedBy,bench,CLOSING_INSPECTOR",
    "closed,2026-11-02,CLOSING_TEST_LATER"
  })
  void a_closing_says_the_one_thing_that_is_wrong(String key, String cell, String finding) {
    Object value = cell == null ? "" : cell.startsWith("20") ? (Object) day(cell) : cell;
    Ranges ranges = incidents().set("incidents", 1, key, value);
    assertThat(keys(incident(ranges, 1))).contains(RegisterFinding.valueOf(finding));
    assertThat(battery(ranges, 1).fit()).isFalse();
  }

  @Test
  void a_type_that_is_short_says_what_to_do() {
    Ranges two = sound().set("types", 1, "required", 4);
    two.row("batteries", RegisterSamples.fine("P1-02"));
    assertThat(two.calculate().rows(RegisterResults.TYPES).get(0).reasons())
        .containsExactly(Finding.of(RegisterFinding.TYPE_SHORT, 4.0, 1.0, 1.0, 2.0));
  }

  @Test
  void a_serial_that_lost_its_zeros_is_not_another_battery() {
    Ranges text = add(add(sound(), "0012", 92, 55), "12", 92, 55);
    assertThat(keys(battery(text, 2).reasons())).doesNotContain(RegisterFinding.SERIAL_ZEROS);
    assertThat(battery(text, 2).fit()).isTrue();
    Ranges number = text.copy().set("batteries", 3, "serial", 12.0);
    assertThat(battery(number, 3).reasons())
        .contains(Finding.of(RegisterFinding.SERIAL_ZEROS, "12", "0012"));
    assertThat(battery(number, 3).fit()).isFalse();
    // an incident that a number names is one of the battery with the zeros
    Ranges incident = wet(add(sound(), "0012", 92, 55), 1, "x");
    incident.set("incidents", 1, "serial", 12.0);
    assertThat(battery(incident, 2).status()).isEqualTo(Status.QUARANTINE);
    incident.set("incidents", 1, "serial", "12");
    assertThat(battery(incident, 2).fit()).isTrue();
  }

  @Test
  void an_issue_list_has_its_number() {
    Ranges ranges = sound().set("project", 1, "issue", "2027-017");
    assertThat(ranges.calculate().rows(RegisterResults.HANDOVER).get(0).issue())
        .isEqualTo("2027-017");
  }
}
