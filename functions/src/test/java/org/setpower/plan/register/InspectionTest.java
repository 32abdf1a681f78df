package org.setpower.plan.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.register.RegisterSamples.day;
import static org.setpower.plan.register.RegisterSamples.sound;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.setpower.plan.common.Ranges;

/**
 * Several batteries marked as inspected at once: none that anything speaks against. What is
 * expected is common practice of rental houses: damage is looked at and entered one by one.
 */
class InspectionTest {
  private static final LocalDate DAY = LocalDate.of(2027, 2, 10);

  private static Ranges blank() {
    return sound().set("batteries", 1, "condition", "", "inspected", "", "inspectedBy", "");
  }

  private static Inspection first(Ranges ranges) {
    return RegisterPlan.inspections(ranges.list()).batteries().get(0);
  }

  private static boolean isPossible(Ranges ranges) {
    return first(ranges).isPossible(DAY);
  }

  @Test
  void a_battery_that_nobody_has_inspected_may_be_marked() {
    assertThat(isPossible(blank())).isTrue();
    assertThat(first(blank()).row()).isEqualTo(1);
    assertThat(first(blank()).serial()).isNotBlank();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "dropped",
        "wet",
        "swollen",
        "leaking",
        "hot",
        "burnt",
        "recalled",
        "contacts",
        "label unreadable",
        "cell voltage",
        "puffed",
        "fine?"
      })
  void a_condition_that_is_not_fine_stays(String condition) {
    Inspection dropped = first(blank().set("batteries", 1, "condition", condition));
    assertThat(dropped.isPossible(DAY)).isFalse();
    assertThat(dropped.against()).isNotEmpty();
  }

  @Test
  void an_open_incident_is_closed_by_its_own_inspection_only() {
    String serial = first(blank()).serial();
    Ranges open =
        blank().row("incidents", "serial", serial, "happened", "wet", "date", day("2027-01-20"));
    assertThat(isPossible(open)).isFalse();
    assertThat(first(open).against().get(0).key()).isEqualTo(RegisterFinding.INCIDENT_OPEN);
  }

  @Test
  void what_is_out_retired_nameless_or_there_twice_is_left_out() {
    assertThat(isPossible(blank().set("batteries", 1, "outTo", "Unit 2"))).isFalse();
    assertThat(isPossible(blank().set("batteries", 1, "retired", day("2027-01-01")))).isFalse();
    assertThat(isPossible(blank().set("batteries", 1, "serial", ""))).isFalse();
    Ranges twice = blank();
    twice.row("batteries", "serial", first(twice).serial(), "type", "P1", "energy", 98.0);
    assertThat(RegisterPlan.inspections(twice.list()).batteries())
        .hasSizeGreaterThan(1)
        .filteredOn(b -> b.serial().equals(first(twice).serial()))
        .noneMatch(b -> b.isPossible(DAY));
  }

  @Test
  void a_later_inspection_stays_and_an_earlier_one_is_renewed() {
    assertThat(isPossible(blank().set("batteries", 1, "inspected", day("2027-02-11")))).isFalse();
    Ranges fine = blank().set("batteries", 1, "condition", "fine");
    assertThat(isPossible(fine)).isTrue();
    assertThat(isPossible(fine.copy().set("batteries", 1, "inspected", day("2026-02-10"))))
        .isTrue();
    assertThat(isPossible(fine.copy().set("batteries", 1, "inspected", day("2027-02-10"))))
        .isFalse();
    assertThat(isPossible(blank().set("batteries", 1, "inspected", "soon"))).isFalse();
  }

  @Test
  void settings_that_cannot_be_read_are_said() {
    assertThat(RegisterPlan.inspections(blank().list()).stops()).isEmpty();
    Ranges wrong = blank().set("project", 1, "asOf", "soon");
    assertThat(RegisterPlan.inspections(wrong.list()).stops()).hasSize(1);
    assertThat(List.of(RegisterPlan.inspections(blank().list()).day())).doesNotContainNull();
  }
}
