package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.EvaluationException;
import org.setpower.cable.CableSize;
import org.setpower.registry.FunctionSpec;
import org.setpower.registry.Parameter;

/**
 * Whoever leaves an argument out does not get a better result than somebody who names what is
 * usual: {@code defaults.csv} goes through every optional argument.
 */
class DefaultsTest {
  private static final double REFUSED = Double.POSITIVE_INFINITY;
  private static final double ROUNDING = 1e-9;

  private static List<CSVRecord> rows() throws IOException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .build();
    try (var in =
        new InputStreamReader(
            DefaultsTest.class.getResourceAsStream("/defaults.csv"), StandardCharsets.UTF_8)) {
      List<CSVRecord> all = format.parse(in).getRecords();
      assertThat(all.get(all.size() - 1).get(0)).as("last row").isEqualTo("END");
      return all.subList(0, all.size() - 1);
    }
  }

  static List<CSVRecord> directed() throws IOException {
    return rows().stream().filter(row -> !row.get("cautious").isEmpty()).toList();
  }

  @Test
  void every_argument_that_may_be_left_out_is_decided() throws IOException {
    assertThat(rows().stream().map(row -> row.get("function") + " " + row.get("argument")))
        .containsExactlyElementsOf(
            FunctionRegistry.all().stream()
                .flatMap(
                    f ->
                        f.parameters().stream()
                            .filter(Parameter::isOptional)
                            .map(p -> f.name() + " " + p.name()))
                .toList());
  }

  @Test
  void a_default_without_direction_has_its_reason() throws IOException {
    assertThat(rows())
        .allMatch(row -> row.get("cautious").isEmpty() != row.get("reason").isEmpty());
  }

  @ParameterizedTest
  @MethodSource("directed")
  void a_result_is_never_better_with_an_argument_left_out(CSVRecord row) {
    FunctionSpec function = FunctionRegistry.find(row.get("function")).orElseThrow();
    int place =
        function.parameters().stream().map(Parameter::name).toList().indexOf(row.get("argument"));
    Object[] arguments = JsonValues.arguments(row.get("arguments"));
    assertThat(arguments).as("left out in the call").hasSizeGreaterThan(place);
    assertThat(arguments[place]).as("left out in the call").isNull();
    double leftOut = caution(function, arguments, row.get("cautious"));
    for (Object typical : JsonValues.arguments(row.get("typical"))) {
      arguments[place] = typical;
      assertThat(caution(function, arguments, row.get("cautious")))
          .as("%s with %s = %s", function.name(), row.get("argument"), typical)
          .isNotEqualTo(Double.NaN)
          .isLessThanOrEqualTo(leftOut + ROUNDING);
    }
  }

  /** The higher, the more cautious; a refusal is the highest. */
  private static double caution(FunctionSpec function, Object[] arguments, String direction) {
    Object answer;
    try {
      answer = function.call(arguments);
    } catch (EvaluationException refusal) {
      return REFUSED;
    }
    double value = answer instanceof String size ? CableSize.parse(size).area() : (Double) answer;
    return direction.equals("more") ? value : -value;
  }
}
