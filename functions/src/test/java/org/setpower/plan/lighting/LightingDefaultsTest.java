package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.setpower.plan.lighting.LightingPlans.keys;
import static org.setpower.plan.lighting.LightingPlans.run;
import static org.setpower.plan.lighting.LightingSafetyTest.onGenerator;
import static org.setpower.plan.lighting.LightingSamples.quay;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.setpower.plan.common.PlanResult;
import org.setpower.plan.common.Ranges;
import org.setpower.plan.finding.Finding;

/** A blank cell that decides safety is never silent: its row has a check. */
class LightingDefaultsTest {
  @ParameterizedTest
  @CsvSource({
    "project, installation, free, lighting.installation.open",
    "days, warmest, 25, lighting.day.temperature",
    "generators, altitude, 100, lighting.generator.altitude"
  })
  void a_blank_that_decides_safety_is_a_check(
      String table, String column, String filled, String finding) {
    Object cell = filled.matches("\\d+") ? (Object) Double.valueOf(filled) : filled;
    assertThat(met(onGenerator(50).set(table, 1, column, cell))).doesNotContain(finding);
    assertThat(met(onGenerator(50).set(table, 1, column, ""))).contains(finding);
  }

  /**
   * BS 7671, Table 4F3A: 5G16 at 60 °C carries 63 A; Table 4C1 and IEC 60364-5-52 Table B.52.17:
   * two circuits bunched, 0.80.
   */
  @Test
  void a_cable_of_which_nobody_says_how_it_lies_is_bunched_with_another() {
    Ranges open = quay().set("project", 1, "installation", "");
    assertThat(run(open, 1).rating()).isCloseTo(50.4, within(1e-9));
    assertThat(keys(run(open, 1).reasons())).contains("run.overload");
    Ranges said = quay().set("project", 1, "installation", "bunched 2");
    assertThat(run(said, 1).rating()).isEqualTo(run(open, 1).rating());
    open.set("runs", 1, "installation", "free");
    assertThat(run(open, 1).rating()).isEqualTo(63);
  }

  @Test
  void units_that_were_picked_after_figures_are_a_check_until_they_are_confirmed() {
    assertThat(met(quay().set("project", 1, "units", "US (figures are ft, °F, US gal)")))
        .contains("lighting.units.late")
        .doesNotContain("input.word");
    assertThat(met(quay().set("project", 1, "units", "US"))).doesNotContain("lighting.units.late");
    assertThat(met(quay().set("project", 1, "units", ""))).contains("input.blank");
  }

  private static Set<String> met(Ranges plan) {
    PlanResult result = plan.calculate();
    return LightingModel.MODEL.results().stream()
        .flatMap(table -> result.rows(table).stream())
        .filter(Objects::nonNull)
        .flatMap(LightingDefaultsTest::reasons)
        .map(finding -> finding.key().key())
        .collect(Collectors.toSet());
  }

  private static Stream<Finding> reasons(Record row) {
    return Arrays.stream(row.getClass().getRecordComponents())
        .filter(component -> component.getType() == List.class)
        .flatMap(component -> ((List<?>) value(row, component)).stream())
        .map(Finding.class::cast);
  }

  private static Object value(Record row, RecordComponent component) {
    try {
      return component.getAccessor().invoke(row);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }
}
