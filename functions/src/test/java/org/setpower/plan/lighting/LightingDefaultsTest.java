package org.setpower.plan.lighting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.setpower.plan.lighting.LightingSafetyTest.onGenerator;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
