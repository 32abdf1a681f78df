package org.setpower.registry.groups;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.setpower.base.CalculationStep;
import org.setpower.base.Unit;

/** The steps that a working shows between inputs and result, against {@code workings.csv}. */
class CalculationStepsTest {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setCommentMarker('#')
          .setTrim(true)
          .build();
  private static final Object[][] TWO_PACKS = {{33.6, 45.0}, {30.9, 45.0}};

  static List<CSVRecord> steps() throws IOException {
    try (var in =
        new InputStreamReader(
            CalculationStepsTest.class.getResourceAsStream("/workings.csv"),
            StandardCharsets.UTF_8)) {
      return FORMAT.parse(in).getRecords();
    }
  }

  private static List<CalculationStep> working(String function, Object... arguments) {
    return FunctionRegistry.find(function).orElseThrow().working(arguments);
  }

  @ParameterizedTest
  @MethodSource("steps")
  void a_step_shows_its_value(CSVRecord row) {
    Object expected = JsonValues.value(row.get("value"));
    assertThat(working(row.get("function"), JsonValues.arguments(row.get("arguments"))))
        .as("%s %s: %s", row.get("function"), row.get("arguments"), row.get("step"))
        .filteredOn(s -> (s.symbol() + " " + s.name()).contains(row.get("step")))
        .anySatisfy(
            s -> {
              if (expected instanceof Double number) {
                double tolerance = Double.parseDouble(row.get("tolerance"));
                assertThat((Double) s.value()).isCloseTo(number, within(tolerance));
              } else {
                assertThat((String) s.value()).contains((String) expected);
              }
            });
  }

  /** Two rows, two columns; the reserve is left out, as is the way a cable is laid. */
  @Test
  void inputs_come_first() {
    List<CalculationStep> share = working("BANK.SHARE", TWO_PACKS, 0.0);
    assertThat(share.get(0).value()).isEqualTo("2 rows × 2");
    assertThat(share.get(0).source()).isEqualTo("given");
    List<CalculationStep> runtime = working("PACK.RUNTIME", 294.0, 92.0, 1.0, 1.0, 25.0, "Li-ion");
    assertThat(runtime.get(0))
        .isEqualTo(
            new CalculationStep(
                "watt_hours", "Rated watt-hours of one battery", 294.0, Unit.WATT_HOUR, "given"));
    assertThat(runtime)
        .filteredOn(s -> s.symbol().equals("reserve"))
        .singleElement()
        .satisfies(
            s -> {
              assertThat(s.value()).isEqualTo(0.0);
              assertThat(s.unit()).isEqualTo(Unit.SHARE);
              assertThat(s.source()).isEqualTo("default");
            });
    assertThat(working("CABLE.GAUGE", 30.0, 13.0, 230.0, 0.03, "AWG", "DC", 20.0, null, 30.0))
        .filteredOn(s -> s.symbol().equals("laid"))
        .singleElement()
        .satisfies(s -> assertThat(s.value()).isEqualTo("bunched 2"));
  }

  /** 33.6 and 30.9 V behind 45 mΩ each: 2.7 V drive 30 A through both. */
  @Test
  void the_rows_of_an_array_come_last() {
    List<CalculationStep> share = working("BANK.SHARE", TWO_PACKS, 0.0);
    CalculationStep last = share.get(share.size() - 1);
    assertThat(last.symbol()).isEqualTo("row 2");
    assertThat((Double) last.value()).isCloseTo(-30, within(1e-9));
    assertThat(last.name()).isEqualTo("current (A) -30");
    assertThat(last.source()).isEqualTo("Kirchhoff's laws");
  }
}
