package org.setpower.plan.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.register.RegisterSamples.add;
import static org.setpower.plan.register.RegisterSamples.day;
import static org.setpower.plan.register.RegisterSamples.fine;
import static org.setpower.plan.register.RegisterSamples.incidents;
import static org.setpower.plan.register.RegisterSamples.sound;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.plan.common.Messages;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;
import org.setpower.plan.finding.Verdict;

/**
 * Entries that contradict each other, or say too little, never let a battery out. Expected verdicts
 * and figures are common practice of battery technicians, from memory.
 */
class RegisterCautionTest {
  private static RegisterResults.BatteryResult battery(Ranges ranges, int row) {
    return ranges.calculate().rows(RegisterResults.BATTERIES).get(row - 1);
  }

  private static RegisterResults.IncidentResult incident(Ranges ranges, int row) {
    return ranges.calculate().rows(RegisterResults.INCIDENTS).get(row - 1);
  }

  private static RegisterResults.TestResult test(Ranges ranges, int row) {
    return ranges.calculate().rows(RegisterResults.TESTS).get(row - 1);
  }

  private static RegisterResults.TypeResult type(Ranges ranges, int row) {
    return ranges.calculate().rows(RegisterResults.TYPES).get(row - 1);
  }

  private static RegisterResults.CheckoutResult checkout(Ranges ranges, int row) {
    return ranges.calculate().rows(RegisterResults.CHECKOUT).get(row - 1);
  }

  private static String said(List<Finding> reasons) {
    return Messages.in("en").sentences(reasons, Locale.UK);
  }

  private static Ranges cells(Ranges ranges, int test, Object... volts) {
    for (int i = 1; i <= 4; i++) {
      ranges.set("tests", test, "cell" + i, i <= volts.length ? volts[i - 1] : "");
    }
    return ranges;
  }

  /** P1-01 was dropped on 1 October 2026 and closed by the test of 3 November. */
  @ParameterizedTest
  @ValueSource(strings = {"dropped", "wet", "cracked", "cell voltage", "lost", "not charging"})
  void energy_alone_releases_no_damaged_battery(String happened) {
    Ranges ranges = incidents().set("incidents", 1, "happened", happened);
    assertThat(battery(ranges, 1).fit()).isTrue();
    cells(ranges, 1);
    assertThat(battery(ranges, 1).fit()).isFalse();
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(said(incident(ranges, 1).reasons())).contains("Measure every cell");
    assertThat(incident(ranges, 1).open()).isEqualTo(1);
  }

  @Test
  void some_cells_release_no_damaged_battery() {
    Ranges three = cells(incidents(), 1, 4.15, 4.14, 4.15);
    assertThat(battery(three, 1).fit()).isFalse();
    assertThat(said(incident(three, 1).reasons())).contains("3 of the 4 cell voltages");
    // the cells of an earlier test say nothing of the fall
    Ranges before = cells(incidents(), 1);
    before.row("tests", "serial", "P1-01", "date", day("2026-09-20"), "resistance", 97.2);
    cells(before, 4, 4.15, 4.14, 4.15, 4.15);
    assertThat(battery(before, 1).fit()).isFalse();
    assertThat(battery(before, 1).imbalance()).isNull();
    assertThat(battery(before, 1).resistance()).isEqualTo(55.0);
    before.set("tests", 1, "resistance", "");
    assertThat(battery(before, 1).resistance()).isNull();
  }

  @Test
  void where_no_cell_of_a_type_was_ever_measured_nothing_is_released() {
    Ranges none = cells(cells(cells(incidents(), 1), 2), 3);
    assertThat(battery(none, 1).fit()).isFalse();
    assertThat(battery(cells(none, 1, 4.15), 1).fit()).isFalse();
    // worn contacts have nothing to do with cells
    Ranges contacts = cells(incidents(), 1).set("incidents", 1, "happened", "contacts");
    assertThat(battery(contacts, 1).fit()).isTrue();
  }

  @Test
  void a_test_after_an_incident_is_made_with_care() {
    Ranges untested = incidents().set("tests", 1, "date", day("2026-09-30"));
    assertThat(said(incident(untested, 1).reasons())).contains("outdoors", "attended");
  }

  /** A rested cell 0.3 V below its sisters is damaged or has a short circuit. */
  @ParameterizedTest
  @CsvSource({"Li-ion,3.72,2.6", "Li-ion,4.15,3.84", "LFP,3.3,2.31", "NiMH,1.4,1.0"})
  void a_cell_far_apart_is_quarantined_and_not_balanced(String chemistry, double v, double low) {
    Ranges ranges = sound().set("types", 1, "chemistry", chemistry).set("tests", 1, "charge", 0.6);
    cells(ranges, 1, v, v, v, low);
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.QUARANTINE);
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(battery(ranges, 1).action()).isEqualTo(Action.QUARANTINE);
    assertThat(said(battery(ranges, 1).reasons()))
        .contains("Do not charge")
        .doesNotContain("Balance the battery");
    // one who balanced it has not mended it
    add(ranges, "P1-01", 93, 55).rows("batteries").remove(1);
    ranges.set("tests", 2, "date", day("2027-01-03"), "charge", 0.6);
    cells(ranges, 2, v, v, v, v);
    assertThat(battery(ranges, 1).status()).isEqualTo(Status.QUARANTINE);
  }

  @Test
  void the_house_sets_from_which_imbalance_on_it_quarantines() {
    Ranges apart = cells(sound(), 1, 4.15, 4.15, 4.15, 3.9);
    assertThat(battery(apart, 1).status()).isEqualTo(Status.SERVICE);
    apart.row("limits", "chemistry", "Li-ion", "maxApart", 0.2);
    assertThat(battery(apart, 1).status()).isEqualTo(Status.QUARANTINE);
  }

  private static Ranges recall(String first, String last, String type) {
    Ranges ranges = add(add(sound(), "P1-02", 92, 52), "BL-04", 90, 55);
    ranges.row("types", "type", "P2", "chemistry", "LFP");
    ranges.row("checkout", "serial", "P1-02").row("checkout", "serial", "BL-04");
    ranges.row("incidents", "number", 1, "serial", first, "lastSerial", last, "type", type);
    return ranges.set("incidents", 1, "happened", "recalled", "date", day("2027-01-20"));
  }

  @Test
  void a_recall_whose_type_is_not_that_of_its_serials_holds_them() {
    Ranges range = recall("BL-03", "BL-05", "P2");
    assertThat(incident(range, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(said(incident(range, 1).reasons())).contains("serial and type disagree");
    assertThat(battery(range, 3).fit()).isFalse();
    assertThat(checkout(range, 3).mayGoOut()).isFalse();
    assertThat(said(battery(range, 3).reasons())).contains("serial and type disagree");
    assertThat(battery(range, 2).fit()).isTrue();
    Ranges one = recall("P1-02", "", "P2");
    assertThat(incident(one, 1).verdict()).isEqualTo(Verdict.STOP);
    assertThat(said(incident(one, 1).reasons()))
        .contains("serial and type disagree")
        .doesNotContain("Batteries has no serial");
    assertThat(battery(one, 2).fit()).isFalse();
    assertThat(battery(one, 3).fit()).isTrue();
  }

  /** Two types of one range of numbers: the type says which. */
  @Test
  void a_type_beside_a_range_takes_the_batteries_of_that_type_only() {
    Ranges range = recall("P1-01", "P1-09", "P2");
    range.row("batteries", fine("P1-07")).set("batteries", 4, "type", "P2");
    assertThat(battery(range, 4).status()).isEqualTo(Status.QUARANTINE);
    assertThat(battery(range, 1).fit()).isTrue();
    assertThat(incident(range, 1).batteries()).isEqualTo(1);
  }

  @Test
  void a_recall_that_meets_no_battery_is_a_check() {
    Ranges nobody = recall("P1-101", "P1-140", "");
    nobody.set("batteries", 1, "serial", "P1-001").set("batteries", 2, "serial", "P1-002");
    assertThat(incident(nobody, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(said(incident(nobody, 1).reasons())).contains("No battery");
    Ranges digits = recall("BL-3", "BL-5", "");
    assertThat(incident(digits, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(said(incident(digits, 1).reasons())).contains("1 battery is held");
    assertThat(battery(digits, 3).fit()).isFalse();
    Ranges turned = recall("BL-05", "BL-03", "");
    assertThat(said(incident(turned, 1).reasons())).contains("before the first");
    assertThat(battery(turned, 3).status()).isEqualTo(Status.QUARANTINE);
    Ranges type = recall("", "", "P2");
    assertThat(said(incident(type, 1).reasons())).contains("No battery");
  }

  /** BL-03 to BL-05 does not mean 0001 to 0010 of another maker, except 0003 to 0005. */
  @Test
  void a_range_holds_numbers_without_letters_only_where_the_number_is_in_it() {
    Ranges range = recall("BL-03", "BL-05", "");
    add(add(range, "0001", 92, 55), "0004", 92, 55);
    assertThat(battery(range, 4).fit()).isTrue();
    assertThat(battery(range, 5).fit()).isFalse();
    assertThat(said(battery(range, 5).reasons())).contains("fill in Type");
    range.set("types", 1, "required", 4);
    // five, of which one is recalled and one is held until it is compared
    assertThat(type(range, 1).fit()).isEqualTo(3);
    assertThat(type(range, 1).toBuy()).isZero();
  }

  /** Two of a type that differ are both asked for; among more, the one that differs. */
  @Test
  void a_rated_energy_unlike_its_type_is_asked_for() {
    Ranges ranges = add(add(sound(), "P1-02", 92, 52), "P1-03", 92, 52);
    ranges.set("batteries", 2, "energy", 80).set("tests", 2, "measured", 78);
    assertThat(battery(ranges, 2).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(battery(ranges, 2).fit()).isFalse();
    assertThat(battery(ranges, 2).action()).isEqualTo(Action.CORRECT);
    assertThat(said(battery(ranges, 2).reasons())).contains("80 Wh", "98 Wh");
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.OK);
    ranges.set("batteries", 2, "energy", 120).set("tests", 2, "measured", 95);
    assertThat(battery(ranges, 2).status()).isNotEqualTo(Status.KEEP);
    assertThat(said(battery(ranges, 2).reasons())).contains("120 Wh", "98 Wh");
    ranges.set("batteries", 2, "energy", 95).set("tests", 2, "measured", 90);
    assertThat(battery(ranges, 2).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void a_health_over_105_per_cent_is_asked_for() {
    Ranges ranges = sound().set("tests", 1, "measured", 104);
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(battery(ranges, 1).action()).isEqualTo(Action.CORRECT);
    assertThat(said(battery(ranges, 1).reasons())).contains("106.1", "105");
    assertThat(battery(sound().set("tests", 1, "measured", 102), 1).verdict())
        .isEqualTo(Verdict.OK);
  }

  @Test
  void a_return_that_is_half_entered_is_no_return() {
    Ranges left = sound().set("batteries", 1, "backBy", day("2027-02-09"));
    assertThat(battery(left, 1).status()).isEqualTo(Status.NOT_INSPECTED);
    assertThat(battery(left, 1).fit()).isFalse();
    assertThat(battery(left, 1).action()).isEqualTo(Action.INSPECT);
    assertThat(said(battery(left, 1).reasons())).contains("Back by is still filled in");
    // a day job: inspected in the morning, returned in the evening
    left.set("batteries", 1, "inspected", day("2027-02-10"), "returned", day("2027-02-10"));
    assertThat(battery(left, 1).fit()).isFalse();
    assertThat(battery(left.set("batteries", 1, "backBy", ""), 1).fit()).isTrue();
    Ranges both = sound().set("batteries", 1, "outTo", "A", "returned", day("2027-02-08"));
    assertThat(battery(both, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(battery(both, 1).fit()).isFalse();
    assertThat(said(battery(both, 1).reasons())).contains("Clear Out to").doesNotContain("Call");
    // it was back, was inspected and went out again
    both.set("batteries", 1, "inspected", day("2027-02-08"));
    assertThat(battery(both, 1).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void a_cleared_incident_is_a_check_of_what_goes_out() {
    Ranges ranges = add(sound(), "P1-02", 92, 52);
    ranges.row("incidents", "number", 3, "serial", "P1-02", "happened", "wet");
    ranges.set("incidents", 1, "date", day("2027-02-01"));
    assertThat(checkout(ranges, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(said(checkout(ranges, 1).reasons())).contains("Incidents", "2 numbers");
    assertThat(checkout(ranges.set("incidents", 1, "number", 1), 1).verdict())
        .isEqualTo(Verdict.OK);
  }

  @Test
  void the_issue_list_says_not_tested_in_words() {
    Ranges ranges = sound().set("project", 1, "untested", "goes out");
    assertThat(paper(ranges).get(0).state()).isNull();
    ranges.set("tests", 1, "date", day("2026-01-03"));
    assertThat(paper(ranges).get(0).state()).isEqualTo(Status.NOT_TESTED);
    assertThat(paper(ranges).get(0).health()).isNull();
  }

  private static List<RegisterResults.Slip> paper(Ranges ranges) {
    return ranges.calculate().rows(RegisterResults.SLIP);
  }

  /** 98 Wh emptied in 25 hours are 3.9 W: the slowest test in use is that of lead, 20 hours. */
  @ParameterizedTest
  @CsvSource({"load,0", "load,2", "load,3.8", "resistance,0.092", "resistance,0"})
  void a_test_with_a_figure_out_of_reason_is_not_compared(String key, double value) {
    Ranges ranges = sound().set("tests", 1, key, value);
    assertThat(test(ranges, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(test(ranges, 1).compared()).isFalse();
    assertThat(battery(ranges, 1).fit()).isFalse();
    assertThat(test(sound().set("tests", 1, "load", 4), 1).compared()).isTrue();
    assertThat(test(sound().set("tests", 1, "resistance", 2), 1).compared()).isTrue();
  }

  @Test
  void a_resistance_far_below_its_type_is_measured_again() {
    Ranges ranges = sound().set("tests", 1, "resistance", 9.2);
    for (int i = 2; i <= 6; i++) {
      add(ranges, "P1-0" + i, 92, 55);
    }
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(battery(ranges, 1).action()).isEqualTo(Action.TEST);
    assertThat(said(battery(ranges, 1).reasons())).contains("9.2 mΩ", "55 mΩ");
  }

  @Test
  void an_issue_list_without_job_number_or_with_a_day_past_is_a_check() {
    for (List<Object> wrong :
        List.<List<Object>>of(
            List.of("job", ""), List.of("issue", ""), List.of("jobBack", day("2027-02-09")))) {
      Ranges ranges = sound().set("project", 1, "job", "documentary", "issue", "2027-017");
      assertThat(handover(ranges).verdict()).isEqualTo(Verdict.OK);
      ranges.set("project", 1, (String) wrong.get(0), wrong.get(1));
      assertThat(handover(ranges).verdict()).as("%s", wrong).isEqualTo(Verdict.CHECK);
      assertThat(handover(ranges).reasons()).hasSize(1);
      assertThat(handover(ranges.set("checkout", 1, "serial", "")).verdict()).isEqualTo(Verdict.OK);
    }
  }

  private static RegisterResults.Handover handover(Ranges ranges) {
    return ranges.calculate().rows(RegisterResults.HANDOVER).get(0);
  }

  @Test
  void two_tests_of_one_day_that_differ_are_a_check() {
    Ranges ranges = sound().set("tests", 1, "measured", 84);
    ranges.row("tests", "serial", "P1-01", "date", day("2026-11-03"), "measured", 93, "load", 45);
    ranges.set("tests", 2, "temperature", 20, "rested", 2);
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.CHECK);
    assertThat(said(battery(ranges, 1).reasons())).contains("Two tests of 3 Nov 2026");
    ranges.set("tests", 2, "measured", 86);
    assertThat(battery(ranges, 1).verdict()).isEqualTo(Verdict.OK);
  }

  @Test
  void a_type_that_only_waits_buys_nothing_and_says_so() {
    Ranges two = sound();
    two.row("batteries", fine("P1-02"));
    assertThat(said(type(two, 1).reasons())).contains("None to buy").doesNotContain("Buy 0");
    assertThat(said(type(sound(), 1).reasons())).contains("Buy 1.");
  }

  /** The client reads what goes with him, the house what stays. */
  @Test
  void the_issue_list_has_only_what_goes_out() {
    Ranges ranges = add(sound(), "P1-02", 92, 52).row("checkout", "serial", "P1-02");
    ranges.set("batteries", 1, "condition", "dropped");
    assertThat(paper(ranges)).extracting(RegisterResults.Slip::serial).containsExactly("P1-02");
    assertThat(handover(ranges).out()).isEqualTo(1);
    assertThat(handover(ranges).held()).isEqualTo(1);
  }

  @Test
  void a_stocktake_counts_what_is_in_first() {
    Ranges ranges = add(add(sound(), "P1-02", 92, 52), "P1-03", 92, 52);
    ranges.set("batteries", 1, "place", "A1", "outTo", "documentary");
    ranges.set("batteries", 2, "place", "B1").set("batteries", 3, "place", "A2");
    List<RegisterResults.StocktakeRow> list = ranges.calculate().rows(RegisterResults.STOCKTAKE);
    assertThat(list)
        .extracting(RegisterResults.StocktakeRow::serial)
        .containsExactly("P1-03", "P1-02", "P1-01");
    assertThat(list.get(2).counted()).isNull();
    assertThat(list.get(2).place()).isNull();
    assertThat(list.get(0).counted()).isEqualTo("☐");
  }
}
